"""`demo`: list the ready demo surveys, or print one."""

from __future__ import annotations

import argparse
from typing import TYPE_CHECKING

from spoutline.book.survey_text import survey_to_json
from spoutline.bootstrap.demos import demo_names, demo_survey
from spoutline.cli.command import CommandWork
from spoutline.cli.exit_code import ExitCode
from spoutline.cli.files import write_standard_output
from spoutline.cli.outputs import OutputArguments
from spoutline.documents.own_files import FileForm

if TYPE_CHECKING:
    from spoutline.bootstrap import Workbench


def _arguments(parser: argparse.ArgumentParser) -> None:
    parser.add_argument("name", metavar="NAME", nargs="?", help="which demo survey; without it their names are listed")
    parser.add_argument("--terms", action="store_true", help="print ready terms for `quote` instead of a survey")
    parser.add_argument(
        "--dispenser-types", action="store_true", help="print a table of invented dispenser types to import"
    )
    OutputArguments(parser).add("--out", _form, "write to this file instead of standard output")


def _form(arguments: argparse.Namespace) -> FileForm:
    if arguments.terms:
        return FileForm.TOML
    if arguments.dispenser_types:
        return FileForm.CSV
    return FileForm.TEXT if arguments.name is None else FileForm.JSON


def _run(workbench: Workbench, arguments: argparse.Namespace) -> ExitCode:
    if arguments.terms:
        text = workbench.quoting().terms().demo_terms().read_text(encoding="utf-8")
    elif arguments.dispenser_types:
        text = workbench.dispenser_types().demo_table().read_text(encoding="utf-8")
    elif arguments.name is None:
        text = "".join(f"{name}\n" for name in demo_names())
    else:
        text = survey_to_json(demo_survey(arguments.name))
    if arguments.out is None:
        write_standard_output(text)
    else:
        arguments.output_plan.write({arguments.out: text.encode("utf-8")})
    return ExitCode.FITS


WORK = CommandWork(_arguments, _run)
