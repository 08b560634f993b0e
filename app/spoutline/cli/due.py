"""`due`: the inspections due at all stations of the book, overdue first, as a list and as a calendar."""

from __future__ import annotations

import argparse
import sys
from datetime import date
from typing import TYPE_CHECKING

from spoutline.cli.command import CommandWork, display_of, json_display
from spoutline.cli.exit_code import ExitCode
from spoutline.cli.files import noted, write_standard_output
from spoutline.cli.mail import add_paper, paper_files
from spoutline.cli.outputs import OutputArguments
from spoutline.cli.progress import TerminalProgress
from spoutline.cli.typed import day_of
from spoutline.cli.voice import said, told
from spoutline.documents.own_files import FileForm
from spoutline.model.due_work import DueWork, StationDue, Uncounted, UncountedReason
from spoutline.model.inspection import InspectionInterval
from spoutline.model.language import Language
from spoutline.model.worded import Worded
from spoutline.units.accepted import UnitSystem

if TYPE_CHECKING:
    from pathlib import Path

    from spoutline.bootstrap import Workbench
    from spoutline.explain.plan.story import Story

_REASONS = {
    UncountedReason.NO_RECORD: Worded("no dated record to count from; name a day of handing over with --in-service"),
    UncountedReason.NO_SET: Worded("no set to inspect"),
}


def _arguments(parser: argparse.ArgumentParser) -> None:
    parser.add_argument("--until", metavar="YYYY-MM-DD", help="only what is due by this day")
    parser.add_argument("--on", metavar="YYYY-MM-DD", help="day as of which overdue is counted; default: today")
    parser.add_argument(
        "--in-service", metavar="YYYY-MM-DD", help="day of handing over of positions without a dated record"
    )
    parser.add_argument(
        "--every",
        action="append",
        default=[],
        choices=[one.value for one in InspectionInterval],
        help="only what comes round so; may be repeated",
    )
    parser.add_argument("--json", action="store_true", help="print a JSON document instead of a text")
    outputs = OutputArguments(parser)
    outputs.add("--csv", FileForm.CSV, "write the list as a table for other programs here")
    add_paper(outputs, "write the list as a paper here, overdue work first")
    outputs.add("--html", FileForm.HTML, "write the list as one HTML page for screen readers and mails here")
    outputs.add("--ics", FileForm.ICS, "write the list as a calendar (iCalendar) here; overdue work stands on the day")


def _run(workbench: Workbench, arguments: argparse.Namespace) -> ExitCode:
    """Print what is due, longest overdue first; exit 1 where something is overdue."""
    service, packing = workbench.due_work(), workbench.packing()
    work = service.due(
        day_of(arguments.on, "--on") or date.today(),
        until=day_of(arguments.until, "--until"),
        in_service=day_of(arguments.in_service, "--in-service"),
        every=frozenset(map(InspectionInterval, arguments.every)),
        progress=TerminalProgress("{done} of {total} stations looked at"),
    )
    display = display_of(arguments, workbench)
    words = packing.words(workbench.language, display)
    story, on_letter = words.story, display.system is UnitSystem.US
    english = packing.words(Language.ENGLISH, json_display()).story
    contents: dict[Path, bytes] = {}
    if arguments.csv:
        contents[arguments.csv] = service.csv(work, english)
    contents |= paper_files(
        workbench, arguments, lambda form: service.paper(work, words, on_letter=on_letter, form=form)
    )
    if arguments.ics:
        contents[arguments.ics] = service.calendar(work, story)
    arguments.output_plan.write(contents)
    if arguments.json:
        write_standard_output(service.json(work, english).decode())
    else:
        lines = [_line(row, work, story) for row in work.rows] or [said("nothing that the book knows of is due")]
        write_standard_output("".join(f"{line}\n" for line in lines))
    sys.stderr.write("".join(f"{noted(_left_out(one))}\n" for one in work.uncounted))
    return ExitCode.DOES_NOT_FIT if work.overdue else ExitCode.FITS


def _line(row: StationDue, work: DueWork, story: Story) -> str:
    from spoutline.cli.answer import printable
    from spoutline.documents.pack.inspection_sheet import item_text

    due, late = row.due, row.overdue_days(work.on)
    state = said("overdue {days} d", days=late) if late else said("due")
    last = said("last done: {day}", day=due.last_done) if due.last_done else said("last done: never")
    where = f"{row.site.name}, {due.position}"
    return printable(f"{due.next_due}  {state:<14}  {where}  {due.item.id}  {item_text(due, story)}  {last}")


def _left_out(one: Uncounted) -> str:
    from spoutline.cli.answer import printable

    why = told(one.told if one.reason is UncountedReason.FAULT else _REASONS[one.reason])
    where = f"{one.site}, {', '.join(one.positions)}" if one.positions else one.site
    return printable(said("{place}: {said}", place=where, said=" ".join(why.split())))


WORK = CommandWork(_arguments, _run)
