"""`measure`: what nobody measured, which verdicts that could change at which value, and what to measure first."""

from __future__ import annotations

import argparse
import textwrap
from collections.abc import Iterator
from typing import TYPE_CHECKING

from spoutline.cli.command import CommandWork, add_survey, display_of
from spoutline.cli.exit_code import ExitCode
from spoutline.cli.files import read_survey, write_standard_output
from spoutline.cli.mail import add_paper, paper_files
from spoutline.cli.outputs import OutputArguments
from spoutline.cli.plan import outcome_of
from spoutline.cli.progress import TerminalProgress
from spoutline.cli.sets import add_sets, sets_of
from spoutline.cli.typed import day_of

if TYPE_CHECKING:
    from spoutline.bootstrap import Workbench
    from spoutline.explain.plan.doubt_words import VisitText
    from spoutline.explain.plan.story import Story
    from spoutline.model.doubt import PositionDoubts, StationDoubts

_WIDTH = 110


def _arguments(parser: argparse.ArgumentParser) -> None:
    add_survey(parser)
    add_sets(parser)
    parser.add_argument(
        "position", metavar="POSITION", nargs="?", help="label of a position of the survey; none: the whole station"
    )
    parser.add_argument(
        "--json", action="store_true", help="print the document; `schema --output measure` describes it"
    )
    add_paper(OutputArguments(parser), "write the list for a visit, on one page, here")
    parser.add_argument("--dated", metavar="YYYY-MM-DD", help="date printed on the paper; none where not given")


def _run(workbench: Workbench, arguments: argparse.Namespace) -> ExitCode:
    from spoutline.planning.pack.picked import only_positions

    dated = day_of(arguments.dated, "--dated")
    survey = read_survey(arguments.survey)
    site_plan = sets_of(workbench, survey, arguments, with_alternatives=False)
    if arguments.position is not None:
        site_plan = only_positions(site_plan, (arguments.position,))
    service = workbench.site_visits()
    doubts = service.doubts(survey, site_plan.positions, TerminalProgress("{done} of {total} positions looked at"))
    display = display_of(arguments, workbench, survey.site.jurisdiction)
    papers = paper_files(workbench, arguments, lambda form: service.pdf(site_plan, doubts, display, dated, form=form))
    arguments.output_plan.write(papers)
    if arguments.json:
        from spoutline.documents.json.measure import measure_json

        write_standard_output(measure_json(doubts, site_plan.provenance))
    elif not papers:
        from spoutline.cli.answer import printable

        lines = measure_text(doubts, workbench.story(display))
        write_standard_output("".join(f"{printable(line)}\n" for line in lines))
    return outcome_of(site_plan)


def measure_text(doubts: StationDoubts, story: Story) -> Iterator[str]:
    """Yield the list for a visit line by line; for one position the margins of its checks behind it."""
    from spoutline.explain.plan.doubt_words import first_and_others, visit_texts

    lines = visit_texts(doubts, story)
    text = story.phrases.text
    for note in ("measure_note", "measure_caution" if lines else "measure_nothing"):
        yield from textwrap.wrap(text[note], _WIDTH)
    first, others = first_and_others(len(lines))
    for heading, places in (("measure_first", first), ("measure_then", others)):
        if places:
            yield from ("", text[heading])
            for at in places:
                yield from _visit_lines(at + 1, lines[at], len(doubts.positions), story)
    if len(doubts.positions) == 1:
        yield from _margin_lines(doubts.positions[0], story)


def _visit_lines(number: int, line: VisitText, positions: int, story: Story) -> Iterator[str]:
    where = f" ({line.positions})" if positions > 1 else ""
    yield from textwrap.wrap(f"{number:>2}  {line.title}{where}", _WIDTH, subsequent_indent="    ")
    for case in line.cases:
        told = case.text.assumed
        if len(line.cases) > 1:
            told = f"{case.positions}{story.writing.colon} {told}"
        yield from textwrap.wrap(told, _WIDTH, initial_indent="    ", subsequent_indent="    ")
        for effect in case.text.effects:
            mark = "!" if case.text.musts else "?" if case.text.flips else "-"
            yield from textwrap.wrap(effect, _WIDTH, initial_indent=f"      {mark} ", subsequent_indent="        ")


def _margin_lines(doubts: PositionDoubts, story: Story) -> Iterator[str]:
    from spoutline.explain.plan.doubt_words import margin_texts

    rows = [(one.title, one.margin, one.least, one.figure) for one in margin_texts(doubts, story)]
    if not rows:
        return
    text = story.phrases.text
    head = ("", text["measure_margin_now"], text["measure_margin_least"], text["measure_margin_by"])
    yield from ("", text["measure_margins"])
    widths = [max(len(row[at]) for row in (head, *rows)) for at in range(3)]
    for title, margin, least, figure in (head, *rows):
        yield f"  {title:<{widths[0]}}  {margin:>{widths[1]}}  {least:>{widths[2]}}  {figure}".rstrip()


WORK = CommandWork(_arguments, _run)
