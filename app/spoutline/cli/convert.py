"""`convert`: plan the conversion of a site and write the owner's report, the JSON document, calendar and tables."""

from __future__ import annotations

import argparse
import sys
from datetime import date
from pathlib import Path
from typing import TYPE_CHECKING

from spoutline.cli.command import CommandWork, add_survey, display_of
from spoutline.cli.exit_code import ExitCode
from spoutline.cli.files import noted, read_survey, write_standard_output
from spoutline.cli.mail import add_mail, mail_of, paper_file
from spoutline.cli.outputs import OutputArguments
from spoutline.cli.progress import TerminalProgress
from spoutline.cli.sets import add_sets
from spoutline.cli.typed import day_of
from spoutline.cli.voice import told
from spoutline.documents.own_files import FileForm
from spoutline.documents.paper_form import PaperForm
from spoutline.model.faults import InputFault, InputProblem
from spoutline.model.language import Language
from spoutline.model.worded import Worded

if TYPE_CHECKING:
    from spoutline.bootstrap import Workbench
    from spoutline.model.conversion import SiteConversion
    from spoutline.model.conversion_case import ConversionCase
    from spoutline.model.survey import Survey
    from spoutline.planning.conversion.cases import CaseResult


def _arguments(parser: argparse.ArgumentParser) -> None:
    add_survey(parser)
    add_sets(parser)
    outputs = OutputArguments(parser)
    outputs.add("--pdf", FileForm.PDF, "write the owner's report with the installer's sheets here")
    outputs.add("--html", FileForm.HTML, "write the report as one HTML page for screen readers and mails here")
    add_mail(
        outputs,
        "write a mail with the report attached, or with --one-page that page (PDF), not sent yet, here",
    )
    outputs.add_paper("--one-page", "write the station on one page, for a bank or an agency, here")
    outputs.add("--ics", FileForm.ICS, "write the sequence as a calendar (iCalendar) here")
    outputs.add("--csv", FileForm.CSV, "write tasks and days to keep as a table here")
    outputs.add("--xlsx", FileForm.XLSX, "write tasks, closings, tanks and costs as a workbook here")
    _add_cases(parser)
    parser.add_argument("--json", action="store_true", help="print the conversion document instead of a text")
    parser.add_argument("--start", metavar="YYYY-MM-DD", help="first day of the plan; goes before the survey's")
    parser.add_argument("--dated", metavar="YYYY-MM-DD", help="date printed on the paper; none where not given")


def _add_cases(parser: argparse.ArgumentParser) -> None:
    parser.add_argument(
        "--case",
        metavar="NAME=CHANGES",
        action="append",
        default=[],
        help="a case beside it: keep:ISLAND+ISLAND, retention, E15, B20 or sold:5, parted by commas; may be repeated",
    )
    parser.add_argument("--cases", action="store_true", help="work out the cases of the survey too")
    parser.add_argument("--of-case", metavar="NAME", help="print and write this case instead of what the survey asks")


def _run(workbench: Workbench, arguments: argparse.Namespace) -> ExitCode:
    dated, start = day_of(arguments.dated, "--dated"), day_of(arguments.start, "--start")
    survey = _started(read_survey(arguments.survey), start)
    service, display = workbench.converting(), display_of(arguments, workbench, survey.site.jurisdiction)
    wanted = _cases(arguments, survey)
    if arguments.ics:
        service.require_first_day(survey)  # said before a big station is worked out for nothing
    base, notes = service.convert_shown(survey, arguments.sets, TerminalProgress())
    for note in notes:
        sys.stderr.write(f"{noted(told(note))}\n")
    cases = service.cases(survey, base, wanted, TerminalProgress()) if wanted else ()
    conversion = _shown(cases, arguments.of_case) or base
    contents: dict[Path, bytes] = {}
    if arguments.pdf:
        contents[arguments.pdf] = service.pdf(conversion, display, dated, cases=cases)
    if arguments.mail and arguments.one_page:
        page = service.one_page(conversion, display, dated)
        contents[arguments.mail] = mail_of(workbench, arguments.mail, page)
    elif arguments.mail:
        report = service.pdf(conversion, display, dated, cases=cases)
        contents[arguments.mail] = mail_of(workbench, arguments.mail, report)
    if arguments.html:
        contents[arguments.html] = service.pdf(conversion, display, dated, form=PaperForm.HTML, cases=cases)
    if arguments.one_page:
        contents[arguments.one_page] = paper_file(
            workbench, arguments.one_page, lambda form: service.one_page(conversion, display, dated, form=form)
        )
    if arguments.ics:
        contents[arguments.ics] = service.calendar(conversion, display)
    if arguments.csv:
        contents[arguments.csv] = service.tasks_csv(conversion, display)
    if arguments.xlsx:
        contents[arguments.xlsx] = service.tasks_xlsx(conversion, display)
    arguments.output_plan.write(contents)
    if arguments.json:
        from spoutline.documents.json.conversion_export import conversion_json

        write_standard_output(conversion_json(conversion, service.words(display, Language.ENGLISH), cases))
    else:
        from spoutline.cli.convert_text import conversion_text

        write_standard_output(conversion_text(conversion, service.words(display), cases))
    return ExitCode.FITS if conversion.plan_complete else ExitCode.DOES_NOT_FIT


def _cases(arguments: argparse.Namespace, survey: Survey) -> tuple[ConversionCase, ...]:
    """Return the cases asked for; one of the command line goes before one of the survey of the same name."""
    from spoutline.planning.conversion.typed_cases import typed_cases

    typed = typed_cases(arguments.case, "--case")
    names = {one.name for one in typed}
    kept = tuple(one for one in survey.conversion.cases if one.name not in names) if arguments.cases else ()
    found = (*kept, *typed)
    if arguments.of_case is not None and arguments.of_case not in {one.name for one in found}:
        known = ", ".join(one.name for one in found) or Worded("none; state one with --case, or add --cases")
        wanted = Worded("name one of the cases: {known}", known=known)
        raise InputFault((InputProblem("", "--of-case", repr(arguments.of_case), wanted),))
    return found


def _shown(cases: tuple[CaseResult, ...], name: str | None) -> SiteConversion | None:
    return next((one.conversion for one in cases if one.case is not None and one.case.name == name), None)


def _started(survey: Survey, start: date | None) -> Survey:
    """Return the survey with another first day of the plan."""
    if start is None:
        return survey
    sequence = survey.conversion.sequence.model_copy(update={"start_date": start})
    return survey.model_copy(update={"conversion": survey.conversion.model_copy(update={"sequence": sequence})})


WORK = CommandWork(_arguments, _run)
