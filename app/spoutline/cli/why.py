"""`why`: say how the catalogue comes down to the parts of a position's set, or why there is none."""

from __future__ import annotations

import argparse
import sys
import textwrap
from collections.abc import Iterator
from functools import partial
from typing import TYPE_CHECKING

from spoutline.cli.command import CommandWork, add_survey, display_of
from spoutline.cli.exit_code import ExitCode
from spoutline.cli.files import read_survey, write_standard_output
from spoutline.cli.mail import add_paper, paper_files
from spoutline.cli.outputs import OutputArguments
from spoutline.cli.progress import TerminalProgress
from spoutline.cli.typed import day_of, serial
from spoutline.cli.voice import said
from spoutline.documents.own_files import FileForm
from spoutline.model.faults import InputFault, InputProblem
from spoutline.model.worded import Worded

if TYPE_CHECKING:
    from pathlib import Path

    from spoutline.bootstrap import Workbench
    from spoutline.explain.plan.no_set_text import Reason
    from spoutline.explain.plan.story import Story
    from spoutline.model.funnel import SetReasons
    from spoutline.model.no_set import NoSetReasons
    from spoutline.model.plan import PositionPlan
    from spoutline.model.survey import Survey

_WIDTH = 110
_MOST = 24


def _arguments(parser: argparse.ArgumentParser) -> None:
    add_survey(parser)
    parser.add_argument("position", metavar="POSITION", help="label of a position of the survey")
    parser.add_argument("--json", action="store_true", help="print the document; `schema --output why` describes it")
    parser.add_argument(
        "--most", metavar="N", type=serial, default=_MOST, help="without a set: obstacles, and ways out, that are told"
    )
    parser.add_argument(
        "--seconds", metavar="N", type=serial, help="without a set: look no longer; default: to the end"
    )
    parser.add_argument("--way", metavar="N", type=serial, help="without a set: number of the way out that is accepted")
    outputs = OutputArguments(parser)
    add_paper(outputs, "write the reasons as a paper here")
    outputs.add("--accept", FileForm.JSON, "write the survey with the way out of --way here")
    parser.add_argument("--dated", metavar="YYYY-MM-DD", help="date printed on the paper; none where not given")


def _run(workbench: Workbench, arguments: argparse.Namespace) -> ExitCode:
    if (arguments.way is None) != (arguments.accept is None):
        given, missing = ("--accept", "--way") if arguments.way is None else ("--way", "--accept")
        wanted = Worded("give {missing} too: one names the way out, the other the file", missing=missing)
        raise InputFault((InputProblem("", given, "", wanted),))
    dated = day_of(arguments.dated, "--dated")
    survey = read_survey(arguments.survey)
    plan = workbench.plan_position(survey, arguments.position, with_alternatives=False)
    found, no_set = None, None
    if plan.chosen is not None:
        found = workbench.set_reasons(survey, plan, TerminalProgress("{done} of {total} places looked at"))
    else:
        no_set = _why_no_set(workbench, survey, plan, arguments)
    story = workbench.story(display_of(arguments, workbench, survey.site.jurisdiction))
    reasons = found or no_set
    contents: dict[Path, bytes] = {}
    if reasons is not None:
        make = partial(workbench.no_set().paper, survey, plan, reasons, story, dated=dated)
        contents |= paper_files(workbench, arguments, lambda form: make(form=form))
    contents |= _accepted(plan, no_set, arguments)
    with arguments.output_plan.staged(contents) as files:
        files.place()
    for path in contents:
        sys.stderr.write(f"{said('written to {path}', path=path)}\n")
    if arguments.json:
        from spoutline.documents.json.why import why_json

        provenance = workbench.provenance(survey)
        write_standard_output(why_json(plan.position.label, found, survey.site.currency, provenance, no_set))
    else:
        from spoutline.cli.answer import printable

        lines = reasons_text(plan, found, story) if no_set is None else no_set_text(plan, no_set, story)
        write_standard_output("".join(f"{printable(line)}\n" for line in lines))
    return ExitCode.FITS if found is not None else ExitCode.DOES_NOT_FIT


def _why_no_set(
    workbench: Workbench, survey: Survey, plan: PositionPlan, arguments: argparse.Namespace
) -> NoSetReasons:
    from spoutline.planning.no_set.listening import NoSetListening

    listening = NoSetListening(most=arguments.most)
    return workbench.no_set().ask(survey, plan, None, listening, seconds=arguments.seconds)


def _accepted(plan: PositionPlan, no_set: NoSetReasons | None, arguments: argparse.Namespace) -> dict[Path, bytes]:
    """Return the file of the survey in which a way out was taken; raise ``InputFault`` where that is none."""
    if arguments.way is None:
        return {}
    trials = dict(enumerate(no_set.trials if no_set is not None else (), 1))
    ways = [number for number, trial in trials.items() if trial.after is not None]
    after = trials[arguments.way].after if arguments.way in ways else None
    if after is None:
        wanted: str = Worded("no way out of position {position} is an answer", position=plan.position.label)
        if ways:
            numbers = ", ".join(map(str, ways))
            wanted = Worded("ways out that are answers: {numbers}", numbers=numbers)
        raise InputFault((InputProblem("", "--way", str(arguments.way), wanted),))
    from spoutline.book.survey_text import survey_to_json

    return {arguments.accept: survey_to_json(after).encode()}


def reasons_text(plan: PositionPlan, found: SetReasons | None, story: Story) -> Iterator[str]:
    """Yield the reasons of a set line by line; ``found`` is None without a set."""
    if found is None:
        yield f"✗ {story.phrases.fill('terminal_no_set', position=plan.position.label)}"
        return
    chosen = found.hanging_set
    yield story.marked_verdict(plan)
    yield story.phrases.fill("terminal_set_price", price=story.money(chosen.price_minor, chosen.currency))
    yield from textwrap.wrap(story.phrases.text["why_note"], _WIDTH)
    for place in found.places:
        told = story.place_reasons(place, chosen.currency)
        yield ""
        yield told.title
        width = max(len(f"{one.count}") for one in told.counts) + 1
        for one in told.counts:
            yield f"  {f'{chr(8722)}{one.count}' if one.taken else one.count:>{width}}  {one.text}"
        for sentence in told.sentences:
            yield from textwrap.wrap(sentence, _WIDTH, initial_indent="  ", subsequent_indent="    ")


def no_set_text(plan: PositionPlan, found: NoSetReasons, story: Story) -> Iterator[str]:
    """Yield why there is no set line by line, and what would free one."""
    text = story.phrases.text
    yield f"✗ {plan.position.label}{story.writing.colon} {story.verdict(plan)}"
    yield from textwrap.wrap(text["no_set_note"], _WIDTH)
    yield from ("", text["no_set_cannot"])
    for conflict in found.conflicts:
        yield from _reason(story.conflict_reason(conflict), 0)
    yield from ("", text["no_set_ways"])
    for number, trial in enumerate(found.trials, 1):
        told = story.trial(trial, found.position)
        words = f"{number}. {told.text} ({told.concession}{story.writing.colon} {told.price})"
        yield from textwrap.wrap(words, _WIDTH, initial_indent="  ", subsequent_indent="     ")
        for part in told.parts:
            yield from textwrap.wrap(part, _WIDTH, initial_indent="     ", subsequent_indent="       ")
    for sentence in story.no_set_closing(found):
        yield from textwrap.wrap(sentence, _WIDTH, initial_indent="  ", subsequent_indent="    ")


def _reason(reason: Reason, depth: int) -> Iterator[str]:
    """Yield a sentence and what stands behind it, further in."""
    indent = "  " * (depth + 1)
    yield from textwrap.wrap(f"- {reason.text}", _WIDTH, initial_indent=indent, subsequent_indent=f"{indent}  ")
    for one in reason.behind:
        yield from _reason(one, depth + 1)


WORK = CommandWork(_arguments, _run)
