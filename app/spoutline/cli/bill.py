"""`bill`: write the bill of a site as PDF, HTML, CSV or XLSX; all files asked for, or none."""

from __future__ import annotations

import argparse
from pathlib import Path
from typing import TYPE_CHECKING

from spoutline.cli.command import CommandWork, add_survey, display_of
from spoutline.cli.files import read_survey
from spoutline.cli.mail import add_mail, mail_of
from spoutline.cli.open_positions import tell_open_of
from spoutline.cli.outputs import OutputArguments
from spoutline.cli.progress import TerminalProgress
from spoutline.cli.sets import add_sets, sets_of
from spoutline.cli.typed import day_of
from spoutline.documents.own_files import FileForm
from spoutline.documents.paper_form import PaperForm
from spoutline.model.faults import InputFault, InputProblem
from spoutline.model.worded import Worded

if TYPE_CHECKING:
    from spoutline.bootstrap import Workbench
    from spoutline.cli.exit_code import ExitCode

_FORMATS = ("pdf", "html", "mail", "csv", "xlsx")


def _arguments(parser: argparse.ArgumentParser) -> None:
    add_survey(parser)
    add_sets(parser)
    outputs = OutputArguments(parser)
    outputs.add("--pdf", FileForm.PDF, "write the bill with checks and caution sheet here")
    outputs.add("--html", FileForm.HTML, "write the same as one HTML page for screen readers and mails here")
    add_mail(outputs)
    outputs.add("--csv", FileForm.CSV, "write the parts list here")
    outputs.add("--xlsx", FileForm.XLSX, "write the bill as a workbook here")
    parser.add_argument(
        "--without-calculations", action="store_true", help="leave the calculation sheets out of PDF and HTML"
    )
    parser.add_argument(
        "--why",
        action="store_true",
        help="say in PDF and HTML why the parts were chosen, place by place, or why no set fits",
    )
    parser.add_argument(
        "--short",
        action="store_true",
        help="write parts and verdicts alone into PDF or HTML, a page for ten hoses, and the caution sheet",
    )
    parser.add_argument("--dated", metavar="YYYY-MM-DD", help="date printed on the paper; none where not given")


def _run(workbench: Workbench, arguments: argparse.Namespace) -> ExitCode:
    outputs = {f"--{name}": path for name in _FORMATS if isinstance(path := getattr(arguments, name), Path)}
    if not outputs:
        wanted = "name at least one file: --pdf, --html, --mail, --csv or --xlsx"
        raise InputFault((InputProblem("", "--pdf", "nothing", wanted),))
    papers = {path: form for form in PaperForm if (path := getattr(arguments, form.value)) is not None}
    if arguments.mail:
        papers[arguments.mail] = PaperForm.PDF
    _check_options(arguments, has_paper=bool(papers))
    dated = day_of(arguments.dated, "--dated")
    survey = read_survey(arguments.survey)
    site_plan = sets_of(workbench, survey, arguments)
    display = display_of(arguments, workbench, survey.site.jurisdiction)
    contents: dict[Path, bytes] = {}
    records = workbench.packing().recorded(site_plan)
    reasons = (
        workbench.station_reasons(site_plan, TerminalProgress("{done} of {total} places looked at"))
        if arguments.why
        else {}
    )
    calculations = not arguments.without_calculations
    for path, form in papers.items():
        if arguments.short:
            contents[path] = workbench.bills().short_pdf(site_plan, display, dated, form=form)
            continue
        contents[path] = workbench.bills().pdf(
            site_plan, display, dated, calculations=calculations, reasons=reasons, form=form
        )
    if arguments.mail:
        contents[arguments.mail] = mail_of(workbench, arguments.mail, contents[arguments.mail])
    if arguments.csv:
        contents[arguments.csv] = workbench.bills().csv(site_plan, display, records)
    if arguments.xlsx:
        contents[arguments.xlsx] = workbench.bills().xlsx(site_plan, display, records=records)
    arguments.output_plan.write(contents)
    return tell_open_of(site_plan)


def _check_options(arguments: argparse.Namespace, *, has_paper: bool) -> None:
    """Raise ``InputFault`` for options that no file asked for can follow."""
    if not has_paper:
        for given, option, wanted in (
            (arguments.without_calculations, "--without-calculations", "the other files hold no calculation sheets"),
            (arguments.why, "--why", "it alone says why"),
            (arguments.short, "--short", "the other files hold no more than parts and verdicts"),
        ):
            if given:
                needed = Worded("name the paper with --pdf, --html or --mail: {wanted}", wanted=wanted)
                raise InputFault((InputProblem("", option, "no paper", needed),))
    if arguments.short and arguments.why:
        wanted = "the short bill says nothing of reasons: leave --short or --why out"
        raise InputFault((InputProblem("", "--short", "--why", wanted),))


WORK = CommandWork(_arguments, _run)
