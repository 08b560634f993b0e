"""`import`: positions of a table into a survey, new or there, its columns mapped, its faults told cell by cell."""

from __future__ import annotations

import argparse
import json
from collections.abc import Iterator
from pathlib import Path
from typing import TYPE_CHECKING

from spoutline.book.survey_text import read_survey, survey_to_json
from spoutline.cli.catalogue_import import (
    NOTHING_CHANGED,
    choices_in,
    column_document,
    column_line,
    counts_line,
    head_lines,
    offers_of,
    report_document,
    report_lines,
    row_change_document,
    row_change_lines,
    said_of_table,
    table_arguments,
    with_repairs,
)
from spoutline.cli.command import CommandWork, units_of
from spoutline.cli.exit_code import ExitCode
from spoutline.cli.files import tell_note, write_standard_output
from spoutline.cli.outputs import InputFile, OutputArguments
from spoutline.cli.voice import told
from spoutline.documents.own_files import FileForm
from spoutline.model.faults import InputFault, InputProblem

if TYPE_CHECKING:
    from spoutline.bootstrap import Workbench
    from spoutline.model.survey import Position, Site, Survey
    from spoutline.planning.table_intake.into_draft import OpenedTable
    from spoutline.planning.table_intake.into_survey import IntoSurvey, PositionsRead


def _arguments(parser: argparse.ArgumentParser) -> None:
    parser.add_argument(
        "table",
        metavar="TABLE",
        type=Path,
        action=InputFile,
        words="the table itself",
        help="a file that ends in .csv, .tsv, .txt or .xlsx",
    )
    table_arguments(parser.add_argument_group("the table"), of_parts=False)
    parser.add_argument("--dry-run", action="store_true", help="say what would change, and write no survey")
    parser.add_argument("--json", action="store_true", help="print what was read as a JSON document; needs --out")
    parser.add_argument("--site", metavar="NAME", help="name of the site")
    parser.add_argument("--jurisdiction", metavar="ID", default="us_general", help="see `profile list`")
    parser.add_argument("--currency", metavar="CODE", default="USD", help="ISO 4217 code")
    parser.add_argument(
        "--like",
        metavar="SURVEY",
        type=Path,
        action=InputFile,
        words="the survey that answers what the table leaves out",
        help="site and first position of this survey answer what the table leaves out",
    )
    parser.add_argument(
        "--into",
        metavar="SURVEY",
        type=Path,
        action=InputFile,
        words="the survey that the table goes into",
        help="take the rows into this survey: a row with the label of a position changes its answers",
    )
    parser.add_argument(
        "--take-out-missing", action="store_true", help="with --into: positions that the table does not hold go"
    )
    outputs = OutputArguments(parser)
    outputs.add("--out", FileForm.JSON, "write the survey to this file instead of standard output")
    outputs.add("--save-map", FileForm.TOML, "write the map that reads the next such table here")


def _run(workbench: Workbench, arguments: argparse.Namespace) -> ExitCode:
    from spoutline.planning.table_intake.column_map import map_to_toml

    _check(arguments)
    before, into = (None, None) if arguments.columns else _into(arguments)
    opened = _opened(workbench, arguments, before)
    if arguments.columns:
        columns = [column_document(one) for one in opened.mapping]
        lines = "".join(f"{column_line(one)}\n" for one in opened.mapping)
        write_standard_output(_text({"columns": columns}) if arguments.json else lines)
        return ExitCode.FITS
    if before is None or into is None:
        raise TypeError("nothing but the columns is read without a survey")
    done = workbench.position_tables().read(into, opened)
    survey = _survey(done, before, arguments)
    if survey is None and not (arguments.dry_run or arguments.json):
        raise InputFault(tuple(one.problem() for one in done.report.reports))
    for note in done.notes if done.report.is_sound else ():
        tell_note(note)
    written = {}
    if survey is not None and not arguments.dry_run and arguments.out is not None:
        written[arguments.out] = survey_to_json(survey).encode("utf-8")
    if survey is not None and arguments.save_map is not None:
        written[arguments.save_map] = map_to_toml(opened.remembered).encode("utf-8")
    if written:
        arguments.output_plan.write(written)
    if arguments.json:
        write_standard_output(_text(_document(arguments, done)))
    elif arguments.dry_run or survey is None:
        write_standard_output("".join(f"{line}\n" for line in _lines(arguments, done)))
    elif arguments.out is None:
        write_standard_output(survey_to_json(survey))
    if survey is not None:
        return ExitCode.FITS
    return ExitCode.DOES_NOT_FIT if arguments.dry_run else ExitCode.BAD_INPUT


def _check(arguments: argparse.Namespace) -> None:
    problems = []
    if arguments.map is not None and "=" in arguments.map.name and not arguments.map.exists():
        wanted = "a map is a TOML file; say what one column holds with --column COLUMN=FIELD"
        problems.append(InputProblem("", "--map", repr(str(arguments.map)), wanted))
    if arguments.json and arguments.out is None and not (arguments.dry_run or arguments.columns):
        wanted = "--out FILE for the survey, or --dry-run: standard output holds one document"
        problems.append(InputProblem("", "--json", "alone", wanted))
    if arguments.into is not None and (arguments.like is not None or arguments.site is not None):
        problems.append(InputProblem("", "--into", "with --site or --like", "the survey names its site itself"))
    if arguments.take_out_missing and arguments.into is None:
        problems.append(InputProblem("", "--take-out-missing", "alone", "--into SURVEY, whose positions go"))
    if problems:
        raise InputFault(tuple(problems))


def _into(arguments: argparse.Namespace) -> tuple[Survey | Site, IntoSurvey]:
    """Return the survey or the site that the rows go to, and how."""
    from spoutline.planning.table_intake.into_survey import IntoSurvey

    if arguments.into is not None:
        survey = read_survey(arguments.into)
        return survey, IntoSurvey(survey=survey, take_out_missing=arguments.take_out_missing)
    site, template = _site(arguments)
    return site, IntoSurvey(template=template)


def _opened(workbench: Workbench, arguments: argparse.Namespace, before: Survey | Site | None) -> OpenedTable:
    from spoutline.model.survey import Survey
    from spoutline.planning.table_intake.intake_fields import TableSubject
    from spoutline.planning.table_intake.into_draft import maps_in, open_supplier_table

    maps = maps_in(arguments.map) if arguments.map is not None else ()
    said = said_of_table(arguments)
    said["subject"] = TableSubject.POSITIONS
    site = before.site if isinstance(before, Survey) else before
    jurisdiction = arguments.jurisdiction if site is None else site.jurisdiction
    if arguments.units is not None or all(one.units is None for one in maps):
        said["units"] = units_of(arguments, workbench, jurisdiction)
    return with_repairs(open_supplier_table(arguments.table, maps, said, choices_in(arguments.column)), arguments)


def _survey(done: PositionsRead, before: Survey | Site, arguments: argparse.Namespace) -> Survey | None:
    """Return the survey after the table; None where a cell is wrong or open."""
    from spoutline.model.survey import Survey

    if not done.report.is_sound:
        return None
    if isinstance(before, Survey):
        return done.survey(before)
    if not done.positions:
        wanted = "at least one row below the titles that is a position"
        raise InputFault((InputProblem(str(arguments.table), "rows", "none", wanted),))
    return Survey(site=before, positions=done.positions)


def _site(arguments: argparse.Namespace) -> tuple[Site, Position | None]:
    from pydantic import ValidationError

    from spoutline.book.survey_faults import problems_of
    from spoutline.model.survey import Site

    if arguments.like is not None:
        like = read_survey(arguments.like)
        named = {"name": arguments.site} if arguments.site else {}
        return like.site.model_copy(update=named), like.positions[0]
    if arguments.site is None:
        wanted = "the name of the site is needed, or --like SURVEY, or --into SURVEY"
        raise InputFault((InputProblem("", "--site", "nothing", wanted),))
    fields = {"name": arguments.site, "jurisdiction": arguments.jurisdiction, "currency": arguments.currency}
    try:
        return Site.model_validate(fields), None
    except ValidationError as fault:
        raise InputFault(problems_of(fault, Site, "")) from fault


def _lines(arguments: argparse.Namespace, done: PositionsRead) -> Iterator[str]:
    report, changes = done.report, done.result.changes
    yield from head_lines(arguments, report, is_recognised=done.result.opened.is_recognised)
    yield from report_lines(report)
    yield from row_change_lines(changes)
    if not report.is_sound:
        yield told(NOTHING_CHANGED)
        return
    names = ("new", "changed", "unchanged", "missing")
    yield counts_line(arguments, {name: getattr(changes, name) for name in names})


def _document(arguments: argparse.Namespace, done: PositionsRead) -> dict[str, object]:
    report, changes, opened = done.report, done.result.changes, done.result.opened
    return {
        "dry_run": arguments.dry_run,
        "taken_in": report.is_sound and not arguments.dry_run,
        "recognised": opened.is_recognised,
        "fingerprint": opened.headings.fingerprint,
        "columns": [column_document(one) for one in opened.mapping],
        "new": changes.new,
        "changed": changes.changed,
        "unchanged": changes.unchanged,
        "missing": changes.missing,
        "faults": report.faults,
        "questions": report.questions,
        "reports": [report_document(one) for one in report.reports],
        "offers": offers_of(report),
        "changes": [row_change_document(one) for one in changes.changes],
        "notes": [{"cell": one.place, "field": one.field, "text": one.value, "told": one.told} for one in done.notes],
    }


def _text(document: dict[str, object]) -> str:
    return json.dumps(document, indent=2, ensure_ascii=False) + "\n"


WORK = CommandWork(_arguments, _run)
