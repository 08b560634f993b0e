"""`catalogue coverage`: what an edition has sets for, how many, of how many makers, and why it has none."""

from __future__ import annotations

import argparse
from collections.abc import Iterator, Sequence
from datetime import date
from enum import StrEnum
from functools import partial
from typing import TYPE_CHECKING, TypeVar

from spoutline.cli.command import Said, display_of, json_display
from spoutline.cli.exit_code import ExitCode
from spoutline.cli.mail import paper_file
from spoutline.cli.outputs import OutputArguments
from spoutline.cli.progress import TerminalProgress
from spoutline.cli.voice import said
from spoutline.documents.own_files import FileForm
from spoutline.model.catalogue_edition import EditionRef
from spoutline.model.coverage_kinds import ClimateBand, OutletKind
from spoutline.model.coverage_map import CellState, CoverageMap, CoverageScope, LiquidClass
from spoutline.model.faults import InputFault, InputProblem
from spoutline.model.language import Language
from spoutline.model.survey import Duty, VapourStatus
from spoutline.model.worded import Worded

if TYPE_CHECKING:
    from spoutline.bootstrap import Workbench
    from spoutline.explain.plan.story import Story

_FORMS = {
    ".csv": FileForm.CSV,
    ".pdf": FileForm.PDF,
    ".html": FileForm.HTML,
    ".eml": FileForm.MAIL,
    ".json": FileForm.JSON,
}
_MOST = 10_000
_Axis = TypeVar("_Axis", bound=StrEnum)


def coverage_arguments(parser: argparse.ArgumentParser) -> None:
    """Declare what is asked and where it goes."""
    parser.add_argument("edition", metavar="NAME", help="NAME, NAME@3 or NAME@draft; default: the newest edition")
    parser.add_argument("--jurisdiction", metavar="ID", default="us_general", help="whose rules decide")
    parser.add_argument(
        "--currency", metavar="CODE", default="", help="default: USD, or the first that it has prices in"
    )
    for option, members, words in (
        ("--liquid", LiquidClass, "only this liquid; may be given more than once"),
        ("--duty", Duty, "only this duty; may be given more than once"),
        ("--vapor", VapourStatus, "only this vapor status; may be given more than once"),
        ("--outlet", OutletKind, "only this outlet; may be given more than once"),
        ("--climate", ClimateBand, "only this climate band; may be given more than once"),
    ):
        parser.add_argument(option, choices=[one.value for one in members], action="append", default=[], help=words)
    parser.add_argument("--most", metavar="N", type=int, default=100, help="sets counted of a combination; default 100")
    outputs = OutputArguments(parser)
    outputs.add("--out", _form, "write the map to a file that ends with .csv, .pdf, .html, .eml or .json")


def run_coverage(workbench: Workbench, arguments: argparse.Namespace) -> Said:
    """Make the map, write it where wanted, and return what to say."""
    from spoutline.bootstrap.coverage import CoverageAsked
    from spoutline.documents.coverage.papers import coverage_document

    if not 1 <= arguments.most <= _MOST:
        wanted = Worded("a whole number from 1 to {most}", most=_MOST)
        raise InputFault((InputProblem("", "--most", str(arguments.most), wanted),))
    asked = CoverageAsked(
        edition=EditionRef.from_text(arguments.edition),
        jurisdiction=arguments.jurisdiction,
        scope=_scope(arguments),
        currency=arguments.currency.upper(),
    )
    service = workbench.covering()
    found = service.map(asked, TerminalProgress("{done} of {total} combinations asked"))
    story = workbench.story(display_of(arguments, workbench, arguments.jurisdiction))
    english = workbench.story(json_display(), Language.ENGLISH)
    lines = list(_lines(found, story))
    if arguments.out is not None:
        form = _form(arguments)
        content = (
            paper_file(workbench, arguments.out, partial(service.pdf, found, story, date.today()))
            if form in (FileForm.PDF, FileForm.HTML, FileForm.MAIL)
            else service.csv(found, english)
            if form is FileForm.CSV
            else service.json(found, english)
        )
        with arguments.output_plan.staged({arguments.out: content}) as files:
            files.place()
        lines.append(said("written to {path}", path=arguments.out))
    gaps = found.count(CellState.NOTHING_FITS) + found.count(CellState.NOT_DECIDED)
    code = ExitCode.DOES_NOT_FIT if gaps else ExitCode.FITS
    return code, lines, coverage_document(found, english)


def _form(arguments: argparse.Namespace) -> FileForm:
    ending = arguments.out.suffix.lower()
    if ending not in _FORMS:
        raise InputFault(
            (
                InputProblem(
                    "", "--out", str(arguments.out), Worded("a name that ends with {forms}", forms=", ".join(_FORMS))
                ),
            )
        )
    return _FORMS[ending]


def _scope(arguments: argparse.Namespace) -> CoverageScope:
    return CoverageScope(
        liquids=_members(LiquidClass, arguments.liquid),
        duties=_members(Duty, arguments.duty),
        vapours=_members(VapourStatus, arguments.vapor),
        outlets=_members(OutletKind, arguments.outlet),
        climates=_members(ClimateBand, arguments.climate),
        most_counted=arguments.most,
    )


def _members(axis: type[_Axis], named: Sequence[str]) -> tuple[_Axis, ...]:
    return tuple(one for one in axis if not named or one.value in named)


def _lines(found: CoverageMap, story: Story) -> Iterator[str]:
    from spoutline.explain.phrases.coverage_words import CoverageWord
    from spoutline.explain.plan.coverage_text import gap_text, spoken_text, summary_text
    from spoutline.model.coverage_map import stock_gaps
    from spoutline.planning.keeping.coverage_map import climate_of

    yield f"{story.edition(found.edition.title)} ({found.edition.ref}), {found.jurisdiction.id}"
    yield summary_text(found, story)
    gaps = stock_gaps(found.cells)
    if gaps:
        yield f"{story.word(CoverageWord.TO_STOCK)}{story.writing.colon}"
        yield from (f"  {gap_text(gap, story)}: {gap.combinations} ({gap.alone})" for gap in gaps)
    for cell in found.cells:
        if cell.state is not CellState.NOT_ASKED:
            yield f"  {spoken_text(cell, climate_of(cell.combination.climate), story)}"
