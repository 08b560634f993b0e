"""`programme`: convert every survey of a folder over all cores and rank the sites over years under a yearly budget."""

from __future__ import annotations

import argparse
from contextlib import AbstractContextManager
from functools import partial
from pathlib import Path
from typing import TYPE_CHECKING

from spoutline.cli.command import CommandWork, display_of
from spoutline.cli.exit_code import ExitCode
from spoutline.cli.files import write_standard_output
from spoutline.cli.mail import add_paper, paper_files
from spoutline.cli.outputs import InputFile, OutputArguments
from spoutline.cli.progress import TerminalProgress
from spoutline.cli.typed import day_of
from spoutline.documents.own_files import FileForm
from spoutline.model.faults import InputFault, InputProblem
from spoutline.model.programme import Programme, SiteOutcome
from spoutline.model.worded import Worded
from spoutline.whole_files import OutputPlan, Staged

if TYPE_CHECKING:
    from spoutline.bootstrap import Workbench
    from spoutline.planning.conversion.programme_terms import ProgrammeTerms

_MOST_YEARS = 50
_MOST_PROCESSES = 256


def _arguments(parser: argparse.ArgumentParser) -> None:
    parser.add_argument(
        "folder",
        metavar="FOLDER",
        type=Path,
        action=InputFile,
        words="a survey of the folder",
        pattern="*.json",
        help="folder of survey files in JSON",
    )
    _add_terms(parser)
    parser.add_argument("--name", metavar="NAME", help="name of the program in the book; default the folder's")
    parser.add_argument("--processes", metavar="N", type=int, help="worker processes; default one for each core")
    parser.add_argument(
        "--resume",
        metavar="FILE",
        type=Path,
        action=InputFile,
        words="the file of the run",
        help="write each finished site down here, and take over what an earlier run wrote where nothing changed; "
        "default a file of the program's own for each folder",
    )
    parser.add_argument("--json", action="store_true", help="print the program document instead of a text")
    outputs = OutputArguments(parser)
    add_paper(outputs, "write the program as a paper with its chart here")
    outputs.add("--html", FileForm.HTML, "write the program as one HTML page for screen readers and mails here")
    outputs.add("--csv", FileForm.CSV, "write one line for each site here")
    outputs.add("--xlsx", FileForm.XLSX, "write years, sites, visits and terms as a workbook here")
    outputs.add("--ics", FileForm.ICS, "write visits and deadlines as a calendar (iCalendar) here; needs --from")
    parser.add_argument("--dated", metavar="YYYY-MM-DD", help="date printed on the paper; none where not given")


def _add_terms(parser: argparse.ArgumentParser) -> None:
    parser.add_argument("--budget", metavar="AMOUNT", help="money of one year; without it everything is done at once")
    parser.add_argument("--years", metavar="N", type=int, default=5, help="years of the program (default 5)")
    parser.add_argument("--from", metavar="YEAR", dest="first_year", help="calendar year of the first year")
    parser.add_argument(
        "--carry-over", action="store_true", help="what a year does not spend goes to the next (default: it does not)"
    )
    parser.add_argument("--price-rise", metavar="PERCENT", help="rise of prices a year; without it none is counted")
    parser.add_argument("--interest", metavar="PERCENT", help="interest a year; without it none is counted")
    parser.add_argument(
        "--deadline",
        metavar="SITE=YEAR",
        action="append",
        default=[],
        help="year by whose end a site is to be done, by file or name; goes before the survey's; may be repeated",
    )


def _run(workbench: Workbench, arguments: argparse.Namespace) -> ExitCode:
    from spoutline.cli.programme_text import programme_text

    _check(arguments)
    service = workbench.converting()
    kept_as, programme = service.convert_folder(
        arguments.folder,
        _terms(arguments),
        TerminalProgress("{done} of {total} sites converted"),
        arguments.processes,
        partial(_staged, arguments, workbench),
        resume=arguments.resume or service.run_file(arguments.folder),
    )
    if arguments.json:
        write_standard_output(programme.model_dump_json(indent=2) + "\n")
    else:
        words = service.words(display_of(arguments, workbench))
        key = "program_not_kept" if kept_as is None else "program_kept"
        kept = words.say(key, number=kept_as or 0)
        write_standard_output(programme_text(programme, kept, words))
    good = (SiteOutcome.READY, SiteOutcome.NOTHING_TO_DO)
    bad = any(one.outcome not in good for one in programme.others) or any(one.left_out for one in programme.ranked)
    return ExitCode.DOES_NOT_FIT if bad else ExitCode.FITS


def _terms(arguments: argparse.Namespace) -> ProgrammeTerms:
    from spoutline.planning.conversion.programme_terms import ProgrammeTerms
    from spoutline.planning.conversion.typed_terms import typed_budget, typed_deadlines, typed_percent, typed_year

    return ProgrammeTerms(
        name=arguments.name or arguments.folder.resolve().name,
        budget=typed_budget(arguments.budget or "", "--budget"),
        years=arguments.years,
        first_year=typed_year(arguments.first_year or "", "--from"),
        carry_over=arguments.carry_over,
        price_rise_percent=typed_percent(arguments.price_rise or "", "--price-rise"),
        interest_percent=typed_percent(arguments.interest or "", "--interest"),
        deadlines=typed_deadlines(arguments.deadline, "--deadline"),
    )


def _staged(
    arguments: argparse.Namespace, workbench: Workbench, programme: Programme
) -> AbstractContextManager[Staged]:
    service, display = workbench.converting(), display_of(arguments, workbench)
    dated = day_of(arguments.dated, "--dated")
    contents = paper_files(
        workbench, arguments, lambda form: service.programme_pdf(programme, display, dated, form=form)
    )
    if arguments.csv:
        contents[arguments.csv] = service.programme_csv(programme)
    if arguments.xlsx:
        contents[arguments.xlsx] = service.programme_xlsx(programme, display)
    if arguments.ics:
        contents[arguments.ics] = service.programme_calendar(programme, display)
    plan: OutputPlan = arguments.output_plan
    return plan.staged(contents)


def _check(arguments: argparse.Namespace) -> None:
    problems = []
    if not 1 <= arguments.years <= _MOST_YEARS:
        problems.append(
            InputProblem("", "--years", str(arguments.years), Worded("write 1 to {most_years}", most_years=_MOST_YEARS))
        )
    processes = arguments.processes
    if processes is not None and not 1 <= processes <= _MOST_PROCESSES:
        problems.append(
            InputProblem(
                "", "--processes", str(processes), Worded("write 1 to {most_processes}", most_processes=_MOST_PROCESSES)
            )
        )
    resume: Path | None = arguments.resume
    if resume is not None and resume.suffix == ".json" and resume.resolve().parent == arguments.folder.resolve():
        problems.append(
            InputProblem("", "--resume", f"'{resume}'", "its surveys end in .json: name a file such as a.run")
        )
    if arguments.ics and not arguments.first_year:
        problems.append(InputProblem("", "--ics", "no first year", "name it too: --from 2027; a calendar needs dates"))
    if problems:
        raise InputFault(tuple(problems))
    day_of(arguments.dated, "--dated")


WORK = CommandWork(_arguments, _run)
