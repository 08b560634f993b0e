"""`stock`: what lies on van and in store: counted by scanning, taken for jobs, short, to be ordered."""

from __future__ import annotations

import argparse
import sys
from collections.abc import Callable, Iterator, Mapping
from datetime import date
from typing import TYPE_CHECKING

from spoutline.cli.answer import write_answer
from spoutline.cli.command import CommandWork, add_survey, display_of, shared_options
from spoutline.cli.exit_code import ExitCode
from spoutline.cli.files import STANDARD_INPUT, noted, read_survey
from spoutline.cli.mail import add_paper, paper_files
from spoutline.cli.order_files import WrittenOrder, add_folder, order_document, order_lines, write_orders
from spoutline.cli.outputs import OutputArguments
from spoutline.cli.sets import add_sets, sets_of
from spoutline.cli.voice import said
from spoutline.documents.own_files import FileForm
from spoutline.documents.paper_form import PaperForm
from spoutline.input_bounds.bounds import BOUNDS
from spoutline.model.faults import InputFault, InputProblem
from spoutline.model.stock_entry import MOST_PIECES, Movement, StockEntry, StockLine, StoredEntry, UncountedLine
from spoutline.model.worded import Worded
from spoutline.units.accepted import UnitSystem

if TYPE_CHECKING:
    from pathlib import Path

    from spoutline.bootstrap import Workbench

_MOVES = {
    "count": (Movement.COUNTED, "count what lies at a place, piece by piece or with --quantity"),
    "receive": (Movement.RECEIVED, "note what came to a place"),
    "take": (Movement.TAKEN, "note what was taken from a place"),
    "return": (Movement.RETURNED, "note what came back to a place from a job"),
}
_PLACE = "van or store, as the firm names it"


def _arguments(parser: argparse.ArgumentParser) -> None:
    actions = parser.add_subparsers(dest="action", metavar="ACTION", required=True)

    def add(name: str, words: str) -> argparse.ArgumentParser:
        made = actions.add_parser(name, help=words, description=words, parents=[shared_options()])
        made.add_argument("--json", action="store_true", help="print a JSON document instead of a text")
        return made

    for name, (movement, words) in _MOVES.items():
        _move_arguments(add(name, words), movement)
    undone = add("undo", "let an entry count no more, by another entry")
    undone.add_argument("entry", metavar="N", type=_pieces, help="number of the entry: `stock entries` lists them")
    undone.add_argument("--by", metavar="WHO", default="", help="who did the work")
    entries = add("entries", "list the entries, oldest first")
    entries.add_argument("--place", metavar="PLACE", help="only this place")
    OutputArguments(entries).add("--csv", FileForm.CSV, "write the list as a table for other programs here")
    level = add("level", "say how many pieces of a part a place keeps at least, and how many are ordered at once")
    level.add_argument("place", metavar="PLACE", help=_PLACE)
    level.add_argument("part", metavar="PARTNUMBER", help="part: number, or maker and number; a scanned code too")
    level.add_argument("--least", metavar="N", type=_pieces, required=True, help="pieces below which more are ordered")
    level.add_argument("--lot", metavar="N", type=_pieces, default=1, help="pieces of one order; default: 1")
    closed = add("close", "list what a count did not find at a place, and count it as none with --confirm")
    closed.add_argument("place", metavar="PLACE", help=_PLACE)
    closed.add_argument("--count", metavar="NAME", default="", help="name of the count; default: the day")
    closed.add_argument("--confirm", action="store_true", help="count as none what is listed; entries are only added")
    closed.add_argument("--by", metavar="WHO", default="", help="who did the work")
    closed.add_argument("--note", metavar="TEXT", default="")
    _list_arguments(add("list", "list what lies at the places, and what is to be ordered"))
    reorder = add("reorder", "list what is to be ordered alone; exit code 1 where something is")
    _list_arguments(reorder)
    _order_arguments(reorder)
    job = add("job", "list what the job of a survey takes, what is short, and what is to be ordered")
    add_survey(job)
    add_sets(job)
    _list_arguments(job)
    _order_arguments(job)
    job.add_argument(
        "--job", metavar="NAME", default="", help="name of the job, by which entries belong to it; default: the site"
    )
    job.add_argument(
        "--spares",
        metavar="SPARES",
        default="",
        help="spares that go with the job: quotation:ID[:OPTION] those quoted, file:TERMS.toml by its rules",
    )
    job.add_argument("--take", action="store_true", help="note what it takes as taken from the places")
    job.add_argument(
        "--again", action="store_true", help="take everything once more, whatever was taken for the job already"
    )
    job.add_argument("--by", metavar="WHO", default="", help="who did the work")


def _move_arguments(parser: argparse.ArgumentParser, movement: Movement) -> None:
    parser.add_argument("place", metavar="PLACE", help=_PLACE)
    parser.add_argument(
        "codes",
        metavar="CODE",
        nargs="+",
        help="scanned code (GTIN, GS1 element strings) or part number; - reads them from standard input, one a line",
    )
    parser.add_argument(
        "--quantity", metavar="N", type=_pieces, help="pieces of each code; default: what it says, else 1"
    )
    parser.add_argument("--by", metavar="WHO", default="", help="who did the work")
    parser.add_argument("--note", metavar="TEXT", default="")
    if movement is Movement.COUNTED:
        parser.add_argument(
            "--count", metavar="NAME", default="", help="name of the count, whose pieces add up; default: the day"
        )
    else:
        parser.add_argument("--job", metavar="SITE", default="", help="name of the site")


def _list_arguments(parser: argparse.ArgumentParser) -> None:
    parser.add_argument(
        "--place", metavar="PLACE", action="append", default=[], help="only this place; may be repeated, in order"
    )
    outputs = OutputArguments(parser)
    outputs.add("--csv", FileForm.CSV, "write the list as a table for other programs here")
    add_paper(outputs, "write the list as a paper here")
    outputs.add("--html", FileForm.HTML, "write the list as one HTML page for screen readers and mails here")


def _order_arguments(parser: argparse.ArgumentParser) -> None:
    add_folder(parser, "--orders", "write what is to be ordered as one file for each supplier here", required=False)
    parser.add_argument("--number", metavar="TEXT", default="", help="number of the order; default: the day")


def _pieces(text: str) -> int:
    if not (text.isascii() and text.isdigit()) or len(text) > len(str(MOST_PIECES)) or int(text) > MOST_PIECES:
        raise InputFault(
            (InputProblem("", "N", repr(text), Worded("a whole number from 0 to {most} is needed", most=MOST_PIECES)),)
        )
    return int(text)


def _run(workbench: Workbench, arguments: argparse.Namespace) -> ExitCode:
    action = arguments.action
    return _move(workbench, arguments) if action in _MOVES else _ACTIONS[action](workbench, arguments)


def _move(workbench: Workbench, arguments: argparse.Namespace) -> ExitCode:
    """Add an entry for each code, all or none, and tell them with what then lies there."""
    from spoutline.bootstrap.stock import Asked

    service, movement = workbench.stock(), _MOVES[arguments.action][0]
    entries: list[StockEntry] = []
    problems: list[InputProblem] = []
    for code in _codes(arguments.codes):
        asked = Asked(
            place=arguments.place,
            movement=movement,
            code=code,
            quantity=arguments.quantity,
            count=(arguments.count or date.today().isoformat()) if movement is Movement.COUNTED else "",
            job="" if movement is Movement.COUNTED else arguments.job[:200],
            done_by=arguments.by[:200],
            note=arguments.note[:200],
        )
        try:
            entries.append(service.entry(asked))
        except InputFault as fault:
            problems.extend(fault.problems)
    if problems:
        raise InputFault(tuple(problems))
    numbers = service.add(entries)
    there = {(one.place, one.part): one.quantity for one in service.balances((entries[0].place,))}
    lines, documents = [], []
    for number, entry in zip(numbers, entries, strict=True):
        held = there[entry.place, entry.part]
        there_now = said("at hand {pieces}", pieces=held)
        lines.append("  ".join((str(number), entry.place, str(entry.part), _moved(entry), there_now)))
        documents.append({"entry": number, "part": str(entry.part), "pieces": entry.quantity, "at_hand": held})
    return _say(arguments, lines, {"place": entries[0].place, "movement": movement.value, "entries": documents})


def _codes(written: list[str]) -> Iterator[str]:
    """Yield the codes that were written, or that stand on the lines of standard input."""
    for code in written:
        if code != STANDARD_INPUT:
            yield code
            continue
        text = sys.stdin.read(BOUNDS.stock_bytes + 1)
        found = [line for line in text.splitlines() if line.strip()] if len(text) <= BOUNDS.stock_bytes else []
        if not 0 < len(found) <= BOUNDS.stock_lines:
            wanted = Worded("write one code a line, 1 to {most} lines", most=BOUNDS.stock_lines)
            raise InputFault((InputProblem("", "CODE", Worded("{count} lines", count=len(found)), wanted),))
        yield from found


def _undo(workbench: Workbench, arguments: argparse.Namespace) -> ExitCode:
    made = workbench.stock().undo(arguments.entry, arguments.by[:200])
    return _say(arguments, [_entry_line(made)], {"entries": [_entry(made)]})


def _entries(workbench: Workbench, arguments: argparse.Namespace) -> ExitCode:
    service = workbench.stock()
    found = service.entries(arguments.place)
    if arguments.csv:
        arguments.output_plan.write({arguments.csv: service.entries_csv(found)})
    lines = [_entry_line(one) for one in found] or [said("no entries")]
    return _say(arguments, lines, {"entries": [_entry(one) for one in found]})


def _level(workbench: Workbench, arguments: argparse.Namespace) -> ExitCode:
    level = workbench.stock().set_level(arguments.place, arguments.part, arguments.least, arguments.lot)
    line = said(
        "{place}  {part}  at least {least}, ordered in lots of {lot}",
        place=level.place,
        part=level.part,
        least=level.least,
        lot=level.lot,
    )
    return _say(arguments, [line], level.model_dump(mode="json"))


def _close(workbench: Workbench, arguments: argparse.Namespace) -> ExitCode:
    """Tell what a count did not find, exit 1 where that is something; with --confirm count it as none."""
    service, place = workbench.stock(), arguments.place
    count = arguments.count.strip() or date.today().isoformat()
    found = service.uncounted(place, count)
    numbers = service.close_count(place, count, found, arguments.by, arguments.note) if arguments.confirm else ()
    lines = [
        "  ".join((place, str(one.part), said("at hand {pieces}", pieces=one.quantity), _after_closing(one)))
        for one in found
    ]
    documents = [{"part": str(one.part), "at_hand": one.quantity, "counted_as": one.came} for one in found]
    done = {"place": place, "count": count, "not_found": documents, "entries": list(numbers)}
    if numbers:
        lines.append(
            said(
                "The count {count} is closed: entries {first} to {last}",
                count=count,
                first=numbers[0],
                last=numbers[-1],
            )
        )
    elif found:
        lines.append(said("look for them; --confirm counts them so and closes the count {count}", count=count))
    else:
        lines.append(said("the count {count} found everything", count=count))
    _say(arguments, lines, done)
    return ExitCode.DOES_NOT_FIT if found and not numbers else ExitCode.FITS


def _after_closing(line: UncountedLine) -> str:
    if line.came:
        return said("not found; {pieces} came since the count began", pieces=line.came)
    return said("not found, none from now on")


def _list(workbench: Workbench, arguments: argparse.Namespace) -> ExitCode:
    return _told(workbench, arguments, workbench.stock().lines(arguments.place))


def _reorder(workbench: Workbench, arguments: argparse.Namespace) -> ExitCode:
    lines = tuple(line for line in workbench.stock().lines(arguments.place) if line.order)
    _told(workbench, arguments, lines, orders=_written(workbench, arguments, lines))
    return ExitCode.DOES_NOT_FIT if lines else ExitCode.FITS


def _job(workbench: Workbench, arguments: argparse.Namespace) -> ExitCode:
    """Tell what a job takes; exit 1 where something is short."""
    from spoutline.bootstrap.stock import Job, job_name

    service, survey = workbench.stock(), read_survey(arguments.survey)
    site_plan = sets_of(workbench, survey, arguments, with_alternatives=False)
    spares = service.spares(arguments.spares, site_plan) if arguments.spares else {}
    name = job_name(arguments.job or survey.site.name)
    job = Job(name=name, site_plan=site_plan, spares=spares, again=arguments.again)
    lines = tuple(line for line in service.lines(arguments.place, job) if line.needed or line.taken)
    _told(workbench, arguments, lines, name, _written(workbench, arguments, lines, name))
    if arguments.take:
        service.take(lines, name, arguments.by)
    return ExitCode.DOES_NOT_FIT if any(line.short for line in lines) else ExitCode.FITS


def _written(
    workbench: Workbench, arguments: argparse.Namespace, lines: tuple[StockLine, ...], job: str = ""
) -> tuple[WrittenOrder, ...] | None:
    """Write the orders of what is to be ordered where a folder was named, and return them; None where none was."""
    if arguments.orders is None:
        return None
    made = workbench.stock_orders().order(lines, number=arguments.number, dated=date.today(), site=job)
    for ref in made.left_out:
        sys.stderr.write(f"{noted(said('{part} is not in the catalog and in no order file', part=str(ref)))}\n")
    orders = workbench.supplier_orders().shared_out(made.lines)
    return write_orders(workbench, arguments, "--orders", orders, made.head)


def _told(
    workbench: Workbench,
    arguments: argparse.Namespace,
    lines: tuple[StockLine, ...],
    job: str = "",
    orders: tuple[WrittenOrder, ...] | None = None,
) -> ExitCode:
    """Write the files asked for, then tell the lines, and the orders that were written where a folder was named."""
    from spoutline.documents.pack.stock_paper import StockSheet
    from spoutline.documents.pack.stock_tables import line_values

    service, display = workbench.stock(), display_of(arguments, workbench)
    parts = service.parts([line.balance.part for line in lines])
    sheet = StockSheet(lines=lines, parts=parts, job=job)
    contents: dict[Path, bytes] = {}
    if arguments.csv:
        contents[arguments.csv] = service.csv(lines)

    def paper(form: PaperForm) -> bytes:
        story, on_letter = workbench.packing().words(workbench.language, display).story, display.system
        return service.paper(sheet, story, on_letter=on_letter is UnitSystem.US, form=form)

    contents |= paper_files(workbench, arguments, paper)
    arguments.output_plan.write(contents)
    document: dict[str, object] = {"job": job, "lines": [line_values(line, parts) for line in lines]}
    texts = [_line(line) for line in lines] or [said("nothing")]
    if orders is not None:
        document["orders"] = [order_document(one) for one in orders]
        texts += order_lines(orders)
    return _say(arguments, texts, document)


def _line(line: StockLine) -> str:
    there = line.balance
    told = [there.place, str(there.part), said("at hand {pieces}", pieces=there.quantity)]
    if there.level is not None:
        told.append(said("at least {pieces}", pieces=there.level.least))
    if line.needed:
        told.append(said("needed {needed}, take {takes}", needed=line.needed, takes=line.takes))
    if line.taken:
        told.append(said("taken already {pieces}", pieces=line.taken))
    if line.too_many:
        told.append(said("bring back {pieces}", pieces=line.too_many))
    if line.short:
        told.append(said("short {pieces}", pieces=line.short))
    if line.order:
        told.append(said("order {pieces}", pieces=line.order))
    return "  ".join(told)


def _moved(entry: StockEntry) -> str:
    if entry.undoes is not None:
        return said("undoes {entry}", entry=entry.undoes)
    match entry.movement:
        case Movement.COUNTED:
            return said("counted {pieces}", pieces=entry.quantity)
        case Movement.RECEIVED:
            return said("received {pieces}", pieces=entry.quantity)
        case Movement.TAKEN:
            return said("taken {pieces}", pieces=entry.quantity)
        case _:
            return said("returned {pieces}", pieces=entry.quantity)


def _entry_line(stored: StoredEntry) -> str:
    entry = stored.entry
    lot = said("lot {lot}", lot=entry.lot) if entry.lot else ""
    serial = said("serial number {serial}", serial=entry.serial) if entry.serial else ""
    undone = said("counts no more") if stored.is_undone else ""
    told = (_moved(entry), lot, serial, entry.count, entry.job, entry.done_by, entry.note, undone)
    day = stored.recorded_at.strftime("%Y-%m-%d %H:%M UTC")
    return "  ".join((str(stored.id), day, entry.place, str(entry.part), *filter(None, told)))


def _entry(stored: StoredEntry) -> Mapping[str, object]:
    from spoutline.documents.pack.stock_tables import entry_values

    return entry_values(stored)


def _say(arguments: argparse.Namespace, lines: list[str], document: Mapping[str, object]) -> ExitCode:
    return write_answer(arguments, lines, {"format": "spoutline-stock", "version": 1, **document})


_ACTIONS: dict[str, Callable[[Workbench, argparse.Namespace], ExitCode]] = {
    "undo": _undo,
    "entries": _entries,
    "level": _level,
    "close": _close,
    "list": _list,
    "reorder": _reorder,
    "job": _job,
}

WORK = CommandWork(_arguments, _run)
