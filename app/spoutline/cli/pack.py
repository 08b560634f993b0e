"""`pack`: write the installer's pack of a survey, in one of four languages; all files asked for, or none."""

from __future__ import annotations

import argparse
import sys
from datetime import date
from pathlib import Path
from typing import TYPE_CHECKING

from spoutline.cli.command import Command, add_survey, display_of
from spoutline.cli.exit_code import ExitCode
from spoutline.cli.files import check_outputs, read_survey, write_whole
from spoutline.cli.plan import outcome_of
from spoutline.cli.progress import TerminalProgress
from spoutline.model.faults import InputFault, InputProblem
from spoutline.model.pack import PackJob, PackLanguage

if TYPE_CHECKING:
    from spoutline.bootstrap import Workbench


def _arguments(parser: argparse.ArgumentParser) -> None:
    add_survey(parser)
    parser.add_argument("--pdf", metavar="F", type=Path, help="write the pack here: loading list, position sheets")
    parser.add_argument("--cautions", metavar="F", type=Path, help="write the caution sheet by itself (PDF) here")
    parser.add_argument(
        "--language",
        choices=tuple(PackLanguage),
        default=PackLanguage.ENGLISH.value,
        help="language of the papers (default en)",
    )
    parser.add_argument("--job", metavar="JOB.toml", type=Path, help="days, contacts, authority, codes, permit")
    parser.add_argument(
        "--position", metavar="LABEL", action="append", default=[], help="only this position; may be repeated"
    )
    parser.add_argument("--dated", metavar="YYYY-MM-DD", help="date printed on the paper; none where not given")


def _run(workbench: Workbench, arguments: argparse.Namespace) -> ExitCode:
    from spoutline.packing import only_positions

    outputs = {
        option: path
        for option, path in (("--pdf", arguments.pdf), ("--cautions", arguments.cautions))
        if path is not None
    }
    if not outputs:
        raise InputFault((InputProblem("", "--pdf", "nothing", "name at least one file: --pdf or --cautions"),))
    check_outputs(outputs, arguments.survey)
    dated = day(arguments.dated, "--dated")
    desk, display = workbench.packing(), display_of(arguments)
    job = desk.read_job(arguments.job) if arguments.job else PackJob()
    survey = read_survey(workbench, arguments.survey)
    site_plan = only_positions(workbench.plan_site(survey, TerminalProgress()), tuple(arguments.position))
    language = PackLanguage(arguments.language)
    contents = {
        "--pdf": lambda: desk.pack(site_plan, language, display, job, dated),
        "--cautions": lambda: desk.caution_sheet(site_plan, language, display, dated),
    }
    write_whole({path: contents[option]() for option, path in outputs.items()})
    outcome = outcome_of(site_plan)
    if outcome is ExitCode.DOES_NOT_FIT:
        open_positions = ", ".join(plan.position.label for plan in site_plan.positions if not plan.keeps_every_must)
        sys.stderr.write(f"Written, but without a set that keeps every must: {open_positions}\n")
    return outcome


def day(text: str | None, option: str) -> date | None:
    """Return the day that ``text`` names; None for None. Raise ``InputFault`` for what is no day."""
    if text is None:
        return None
    try:
        return date.fromisoformat(text)
    except ValueError as fault:
        wanted = "write a date of the calendar as YYYY-MM-DD"
        raise InputFault((InputProblem("", option, repr(text), wanted),)) from fault


PACK = Command("pack", "write the installer's pack of a survey as PDF", _arguments, _run)
