"""`programme`: convert every survey of a folder over all cores and rank the sites over years under a yearly budget."""

from __future__ import annotations

import argparse
from collections.abc import Iterator
from contextlib import AbstractContextManager
from decimal import Decimal, InvalidOperation
from functools import partial
from pathlib import Path
from typing import TYPE_CHECKING

from spoutline.cli.command import CommandWork
from spoutline.cli.exit_code import ExitCode
from spoutline.cli.files import write_standard_output
from spoutline.cli.outputs import InputFile, OutputArguments
from spoutline.cli.progress import TerminalProgress
from spoutline.documents.own_files import FileForm
from spoutline.model.faults import InputFault, InputProblem
from spoutline.model.programme import Programme, SiteOutcome
from spoutline.units.writing import Writing
from spoutline.whole_files import OutputPlan, Staged

if TYPE_CHECKING:
    from spoutline.bootstrap import Workbench

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
    parser.add_argument("--budget", metavar="AMOUNT", help="money of one year; without it everything is done at once")
    parser.add_argument("--years", metavar="N", type=int, default=5, help="years of the program (default 5)")
    parser.add_argument("--name", metavar="NAME", help="name of the program in the book; default the folder's")
    parser.add_argument("--processes", metavar="N", type=int, help="worker processes; default one for each core")
    parser.add_argument(
        "--resume",
        metavar="FILE",
        type=Path,
        action=InputFile,
        words="the file of the run",
        help="write each finished site down here, and take over what an earlier run wrote where nothing changed",
    )
    parser.add_argument("--json", action="store_true", help="print the program document instead of a text")
    outputs = OutputArguments(parser)
    outputs.add("--csv", FileForm.CSV, "write one line for each site here")


def _run(workbench: Workbench, arguments: argparse.Namespace) -> ExitCode:
    from spoutline.planning.conversion.programme import ProgrammeTerms

    _check(arguments)
    folder: Path = arguments.folder
    name = arguments.name or folder.resolve().name
    terms = ProgrammeTerms(name=name, budget=_budget(arguments.budget), years=arguments.years)
    kept_as, programme = workbench.converting().convert_folder(
        folder,
        terms,
        TerminalProgress("sites converted"),
        arguments.processes,
        partial(_staged, arguments),
        resume=arguments.resume,
    )
    if arguments.json:
        write_standard_output(programme.model_dump_json(indent=2) + "\n")
    else:
        write_standard_output("\n".join(_text(programme, kept_as, Writing(workbench.language))) + "\n")
    good = (SiteOutcome.READY, SiteOutcome.NOTHING_TO_DO)
    bad = any(one.outcome not in good for one in programme.others) or any(one.left_out for one in programme.ranked)
    return ExitCode.DOES_NOT_FIT if bad else ExitCode.FITS


def _staged(arguments: argparse.Namespace, programme: Programme) -> AbstractContextManager[Staged]:
    from spoutline.documents.conversion.programme_table import programme_csv

    contents = {arguments.csv: programme_csv(programme)} if arguments.csv else {}
    plan: OutputPlan = arguments.output_plan
    return plan.staged(contents)


def _check(arguments: argparse.Namespace) -> None:
    problems = []
    if not 1 <= arguments.years <= _MOST_YEARS:
        problems.append(InputProblem("", "--years", str(arguments.years), f"write 1 to {_MOST_YEARS}"))
    processes = arguments.processes
    if processes is not None and not 1 <= processes <= _MOST_PROCESSES:
        problems.append(InputProblem("", "--processes", str(processes), f"write 1 to {_MOST_PROCESSES}"))
    resume: Path | None = arguments.resume
    if resume is not None and resume.suffix == ".json" and resume.resolve().parent == arguments.folder.resolve():
        problems.append(
            InputProblem("", "--resume", f"'{resume}'", "its surveys end in .json: name a file such as a.run")
        )
    if problems:
        raise InputFault(tuple(problems))


def _budget(text: str | None) -> Decimal | None:
    if text is None:
        return None
    try:
        value = Decimal(text)
    except InvalidOperation:
        value = Decimal(0)
    if not value.is_finite() or value <= 0:
        raise InputFault((InputProblem("", "--budget", repr(text), "write an amount above 0, such as 120000"),))
    return value


def _text(programme: Programme, kept_as: int | None, writing: Writing) -> Iterator[str]:
    kept = "not kept: the book may only be read" if kept_as is None else f"program {kept_as} of the book"
    yield f"{programme.name} ({kept})"
    yield "Advice, no permission: each site's agency decides before its work begins."
    if programme.stopped:
        yield "Stopped before all sites were looked at."
    budget = (
        "no limit" if programme.budget is None else f"{writing.amount(programme.budget)} {programme.currency} a year"
    )
    yield f"Budget: {budget}"
    for year in programme.years:
        yield ""
        spent, change = writing.amount(year.spent), writing.decimal(year.change_kg, 0, signed=True)
        yield f"Year {year.year}: {year.sites} sites, {spent} {programme.currency}, {change} kg a year"
        for one in programme.ranked:
            if one.year == year.year:
                cost = (
                    "cost not known"
                    if one.site.cost is None
                    else f"{writing.amount(one.site.cost)} {one.site.currency}"
                )
                value = one.site.net_present_value
                worth = "" if value is None else f", net present value {writing.amount(value)}"
                yield f"  {one.rank:4} {one.site.name} ({one.site.place}): {cost}{worth}"
    left = [one for one in programme.ranked if one.left_out]
    if left:
        yield ""
        yield "Ready, but in no year:"
        yield from (f"  {one.rank:4} {one.site.name}: {_words(one.left_out)}" for one in left)
    if programme.others:
        yield ""
        yield "Not in the program:"
        yield from (
            f"       {one.name} ({one.place}): {_words(one.outcome)}{': ' + one.message if one.message else ''}"
            for one in programme.others
        )


def _words(value: object) -> str:
    return str(value).replace("_", " ")


WORK = CommandWork(_arguments, _run)
