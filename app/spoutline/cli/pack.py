"""`pack`: write the installer's pack of a survey, in one of four languages; all files asked for, or none."""

from __future__ import annotations

import argparse
from pathlib import Path
from typing import TYPE_CHECKING

from spoutline.cli.command import CommandWork, add_survey, display_of
from spoutline.cli.files import read_survey
from spoutline.cli.mail import add_mail, mail_of, paper_file
from spoutline.cli.open_positions import tell_open_of
from spoutline.cli.outputs import InputFile, OutputArguments
from spoutline.cli.sets import add_sets, sets_of
from spoutline.cli.typed import day_of
from spoutline.documents.own_files import FileForm
from spoutline.documents.paper_form import PaperForm
from spoutline.model.faults import InputFault, InputProblem
from spoutline.model.pack import PackJob
from spoutline.model.worded import Worded

if TYPE_CHECKING:
    from spoutline.bootstrap import Workbench
    from spoutline.cli.exit_code import ExitCode

_PAPERS = ("pdf", "html", "mail", "cautions", "form", "tablet", "inspection", "ics")


def _arguments(parser: argparse.ArgumentParser) -> None:
    add_survey(parser)
    add_sets(parser)
    outputs = OutputArguments(parser)
    outputs.add("--pdf", FileForm.PDF, "write the pack here: loading list, position sheets")
    outputs.add("--html", FileForm.HTML, "write the pack as one HTML page for screen readers and mails here")
    add_mail(outputs)
    outputs.add_paper("--cautions", "write the caution sheet by itself here")
    outputs.add("--form", FileForm.PDF, "write the commissioning form (fillable PDF) here")
    outputs.add("--tablet", FileForm.HTML, "write the form as one HTML page that a tablet fills in offline here")
    outputs.add_paper("--inspection", "write the inspection plan here")
    outputs.add("--ics", FileForm.ICS, "write the inspections as a calendar (iCalendar) here")
    parser.add_argument(
        "--in-service", metavar="YYYY-MM-DD", help="day of handing over, from which inspections are counted"
    )
    parser.add_argument(
        "--job",
        metavar="JOB.toml",
        type=Path,
        action=InputFile,
        words="the file of the job",
        help="days, contacts, authority, codes, permit",
    )
    parser.add_argument(
        "--position", metavar="LABEL", action="append", default=[], help="only this position; may be repeated"
    )
    parser.add_argument("--dated", metavar="YYYY-MM-DD", help="date printed on the paper; none where not given")


def _run(workbench: Workbench, arguments: argparse.Namespace) -> ExitCode:
    from spoutline.planning.pack.picked import only_positions

    outputs = {f"--{name}": path for name in _PAPERS if (path := getattr(arguments, name)) is not None}
    if not outputs:
        wanted: str = Worded("name at least one file: {papers}", papers=", ".join(f"--{name}" for name in _PAPERS))
        raise InputFault((InputProblem("", "--pdf", "nothing", wanted),))
    dated, in_service = day_of(arguments.dated, "--dated"), day_of(arguments.in_service, "--in-service")
    if in_service is None and (arguments.inspection or arguments.ics):
        wanted = "write the day of handing over as YYYY-MM-DD: inspections are counted from it"
        raise InputFault((InputProblem("", "--in-service", "nothing", wanted),))
    service = workbench.packing()
    job = service.read_job(arguments.job) if arguments.job else PackJob()
    survey = read_survey(arguments.survey)
    display = display_of(arguments, workbench, survey.site.jurisdiction)
    planned = sets_of(workbench, survey, arguments, with_alternatives=False)
    site_plan = only_positions(planned, tuple(arguments.position))
    language = workbench.language
    due = service.due(site_plan, in_service) if in_service is not None else ()
    makers = {
        "--pdf": lambda: service.pack(site_plan, language, display, job, dated),
        "--mail": lambda: mail_of(workbench, arguments.mail, service.pack(site_plan, language, display, job, dated)),
        "--html": lambda: service.pack(site_plan, language, display, job, dated, form=PaperForm.HTML),
        "--cautions": lambda: paper_file(
            workbench,
            arguments.cautions,
            lambda form: service.caution_sheet(site_plan, language, display, dated, form=form),
        ),
        "--form": lambda: service.form(site_plan, language, display, dated),
        "--tablet": lambda: service.tablet_page(site_plan, language, display),
        "--inspection": lambda: paper_file(
            workbench,
            arguments.inspection,
            lambda form: service.inspection_plan(site_plan, due, language, display, dated, form=form),
        ),
        "--ics": lambda: service.inspection_calendar(site_plan, due, language, display),
    }
    arguments.output_plan.write({path: makers[option]() for option, path in outputs.items()})
    return tell_open_of(site_plan)


WORK = CommandWork(_arguments, _run)
