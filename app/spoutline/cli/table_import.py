"""`import`: make a survey of a table (CSV or workbook), its columns mapped to fields, its faults told cell by cell."""

from __future__ import annotations

import argparse
from pathlib import Path
from typing import TYPE_CHECKING

from spoutline.book.survey_text import read_survey, survey_to_json
from spoutline.cli.command import CommandWork, units_of
from spoutline.cli.exit_code import ExitCode
from spoutline.cli.files import tell_note, write_standard_output
from spoutline.cli.outputs import InputFile, OutputArguments
from spoutline.documents.own_files import FileForm
from spoutline.model.faults import InputFault, InputProblem

if TYPE_CHECKING:
    from spoutline.bootstrap import Workbench
    from spoutline.model.survey import Position, Site
    from spoutline.planning.survey_import.mapping import ColumnMapping


def _arguments(parser: argparse.ArgumentParser) -> None:
    parser.add_argument(
        "table",
        metavar="TABLE",
        type=Path,
        action=InputFile,
        words="the table itself",
        help="a file that ends in .csv or .xlsx; titles come first",
    )
    parser.add_argument("--sheet", metavar="NAME", help="sheet of a workbook; the first where not given")
    parser.add_argument(
        "--map",
        metavar="COLUMN=FIELD",
        action="append",
        default=[],
        help="map a column, by letters or title, to a field; FIELD empty leaves it out; may be repeated",
    )
    parser.add_argument(
        "--decimal-comma", action="store_true", help="a comma in a figure of the table is the decimal sign"
    )
    parser.add_argument("--columns", action="store_true", help="only print how the columns are mapped")
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
    OutputArguments(parser).add("--out", FileForm.JSON, "write to this file instead of standard output")


def _run(workbench: Workbench, arguments: argparse.Namespace) -> ExitCode:
    from spoutline.model.survey import Survey
    from spoutline.planning.survey_import.mapping import corrected, suggested
    from spoutline.planning.survey_import.positions import positions_from
    from spoutline.planning.survey_import.sheet import read_sheet

    sheet = read_sheet(arguments.table, arguments.sheet)
    mapping = corrected(suggested(sheet), _choices(arguments.map), sheet.place)
    if arguments.columns:
        write_standard_output("".join(f"{_line(one)}\n" for one in mapping))
        return ExitCode.FITS
    site, template = _site(arguments)
    system = units_of(arguments, workbench, site.jurisdiction)
    positions = positions_from(sheet, mapping, system, template, decimal_comma=arguments.decimal_comma, tell=tell_note)
    text = survey_to_json(Survey(site=site, positions=positions))
    if arguments.out is None:
        write_standard_output(text)
    else:
        arguments.output_plan.write({arguments.out: text.encode("utf-8")})
    return ExitCode.FITS


def _site(arguments: argparse.Namespace) -> tuple[Site, Position | None]:
    from pydantic import ValidationError

    from spoutline.book.survey_faults import problems_of
    from spoutline.model.survey import Site

    if arguments.like is not None:
        like = read_survey(arguments.like)
        named = {"name": arguments.site} if arguments.site else {}
        return like.site.model_copy(update=named), like.positions[0]
    if arguments.site is None:
        raise InputFault((InputProblem("", "--site", "nothing", "the name of the site is needed, or --like SURVEY"),))
    fields = {"name": arguments.site, "jurisdiction": arguments.jurisdiction, "currency": arguments.currency}
    try:
        return Site.model_validate(fields), None
    except ValidationError as fault:
        raise InputFault(problems_of(fault, Site, "")) from fault


def _choices(texts: list[str]) -> dict[str, str]:
    choices: dict[str, str] = {}
    for text in texts:
        column, equals, field = text.partition("=")
        if not equals or not column.strip():
            wanted = "write COLUMN=FIELD, such as C=outlet.height_m, or C= to leave the column out"
            raise InputFault((InputProblem("", "--map", repr(text), wanted),))
        choices[column.strip()] = field.strip()
    return choices


def _line(one: ColumnMapping) -> str:
    from spoutline.planning.survey_import.sheet import column_name

    unit = f" in {one.unit}" if one.unit and one.field is not None and one.field.dimension else ""
    return f"{column_name(one.column):>3}  {one.title}  →  {one.field.key if one.field else 'left out'}{unit}"


WORK = CommandWork(_arguments, _run)
