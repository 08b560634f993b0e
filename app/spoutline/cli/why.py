"""`why`: say place by place how the catalogue comes down to the part of a position's set."""

from __future__ import annotations

import argparse
import textwrap
from collections.abc import Iterator
from typing import TYPE_CHECKING

from spoutline.cli.command import CommandWork, add_survey, display_of
from spoutline.cli.exit_code import ExitCode
from spoutline.cli.files import read_survey, write_standard_output
from spoutline.cli.progress import TerminalProgress

if TYPE_CHECKING:
    from spoutline.bootstrap import Workbench
    from spoutline.explain.plan.story import Story
    from spoutline.model.funnel import SetReasons
    from spoutline.model.plan import PositionPlan

_WIDTH = 110


def _arguments(parser: argparse.ArgumentParser) -> None:
    add_survey(parser)
    parser.add_argument("position", metavar="POSITION", help="label of a position of the survey")
    parser.add_argument("--json", action="store_true", help="print the document; `schema --output why` describes it")


def _run(workbench: Workbench, arguments: argparse.Namespace) -> ExitCode:
    survey = read_survey(arguments.survey)
    plan = workbench.plan_position(survey, arguments.position)
    found = None
    if plan.chosen is not None:
        found = workbench.set_reasons(survey, plan, TerminalProgress("places looked at"))
    if arguments.json:
        from spoutline.documents.json.why import why_json

        provenance = workbench.provenance(survey)
        write_standard_output(why_json(plan.position.label, found, survey.site.currency, provenance))
    else:
        from spoutline.cli.plan_text import printable

        lines = reasons_text(plan, found, workbench.story(display_of(arguments, workbench, survey.site.jurisdiction)))
        write_standard_output("".join(f"{printable(line)}\n" for line in lines))
    return ExitCode.FITS if found is not None else ExitCode.DOES_NOT_FIT


def reasons_text(plan: PositionPlan, found: SetReasons | None, story: Story) -> Iterator[str]:
    """Yield the reasons of a set line by line, or why there is none; ``found`` is None without a set."""
    if found is None:
        yield f"✗ {story.phrases.fill('terminal_no_set', position=plan.position.label)}"
        if plan.refusal is not None:
            yield from story.refusal(plan.refusal)
        elif plan.conflict is not None:
            yield from story.conflict(plan.conflict)
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


WORK = CommandWork(_arguments, _run)
