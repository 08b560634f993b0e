"""`catalogue import`: an exchange file or any supplier's table into the draft of a catalogue, all of it or nothing."""

from __future__ import annotations

import argparse
from collections.abc import Iterable, Iterator, Mapping
from pathlib import Path
from typing import TYPE_CHECKING, Any

from spoutline.cli.command import Said
from spoutline.cli.exit_code import ExitCode
from spoutline.cli.outputs import InputFile, OutputArguments
from spoutline.cli.progress import TerminalProgress
from spoutline.cli.typed import serial
from spoutline.cli.voice import said, told, words
from spoutline.documents.own_files import FileForm
from spoutline.model.faults import InputFault, InputProblem
from spoutline.model.part import PartKind
from spoutline.model.worded import Worded
from spoutline.planning.table_intake.cell_values import FaultKind

if TYPE_CHECKING:
    from spoutline.bootstrap import Workbench
    from spoutline.catalogue.changes import FieldChange
    from spoutline.planning.table_intake.column_map import MappedColumn, TableMap
    from spoutline.planning.table_intake.draft_changes import DraftChanges, PartChange, RowChange
    from spoutline.planning.table_intake.intake import CellReport, IntakeReport
    from spoutline.planning.table_intake.into_draft import OpenedTable, TableResult

NOTHING_CHANGED = Worded("nothing was changed; repair or answer what is told above")
_TOLD = 200  # lines of one list; --json prints all that are kept


def import_arguments(parser: argparse.ArgumentParser) -> None:
    """Declare what is said of the file."""
    parser.add_argument("file", metavar="FILE", type=Path, action=InputFile, words="the file to import", help=_FILE)
    parser.add_argument("--into", metavar="NAME", required=True, help="catalog whose draft takes it in")
    parser.add_argument("--dry-run", action="store_true", help="say what would change, and change nothing")
    parser.add_argument(
        "--keep-others", action="store_true", help="of an exchange file: keep what the draft has and the file has not"
    )
    table = parser.add_argument_group("a supplier's table")
    table_arguments(table)
    table.add_argument("--kind", choices=[kind.value for kind in PartKind], help="kind of rows that name none")
    table.add_argument("--currency", metavar="CODE", help="currency of prices that name none, ISO 4217")
    table.add_argument(
        "--confirm",
        metavar="PATTERN",
        action="append",
        default=[],
        help="let a pattern read figures out of the parts' texts; they are listed with what they find",
    )
    table.add_argument(
        "--take-out-missing", action="store_true", help="take out parts of the table's makers that it does not hold"
    )
    OutputArguments(parser).add("--save-map", FileForm.TOML, "write the map that reads the next such table here")


def table_arguments(table: argparse._ActionsContainer, *, of_parts: bool = True) -> None:
    """Declare what is said of any table: its columns, its sheet, its texts, and words and rows to be mended."""
    table.add_argument(
        "--map",
        metavar="MAP.toml",
        type=Path,
        action=InputFile,
        words="the map of its columns",
        help="how the tables of this supplier are read; of a folder the one that was made for these titles",
    )
    table.add_argument(
        "--column",
        metavar="COLUMN=FIELD",
        action="append",
        default=[],
        help="what a column, by letters or title, holds: number, 'bore_mm in mm', 'price in EUR'; nothing: left out",
    )
    table.add_argument("--columns", action="store_true", help="only print what the columns hold")
    table.add_argument("--sheet", metavar="NAME", help="sheet of a workbook; the first that is shown if not given")
    table.add_argument("--encoding", choices=("auto", "utf-8", "utf-16", "windows-1252"), help="of a text file")
    table.add_argument("--decimal-comma", action="store_true", default=None, help="a comma is the decimal sign")
    if of_parts:
        table.add_argument("--maker", metavar="NAME", help="maker of rows that name none")
        table.add_argument("--supplier", metavar="NAME", help="who supplies the parts")
    table.add_argument(
        "--replace",
        metavar="FIELD:WORD=BY",
        action="append",
        default=[],
        help="replace a word in every cell of a field, such as materials:aluminum=aluminium",
    )
    table.add_argument("--skip-row", metavar="ROW", type=serial, action="append", default=[], help="leave a row out")


_FILE = "exchange file of `catalogue export`, or a table that ends in .csv, .tsv, .txt or .xlsx"


def run_import(workbench: Workbench, arguments: argparse.Namespace) -> Said:
    """Do what is asked and return exit code, text lines and document."""
    from spoutline.planning.table_intake.into_draft import is_table

    return _table(workbench, arguments) if is_table(arguments.file) else _exchange(workbench, arguments)


def _exchange(workbench: Workbench, arguments: argparse.Namespace) -> Said:
    done = workbench.catalogues().import_exchange(
        arguments.file,
        arguments.into,
        TerminalProgress("{done} % of the file read"),
        keep_others=arguments.keep_others,
        dry_run=arguments.dry_run,
    )
    counts: dict[str, object] = {
        "new": done.new,
        "changed": done.changed,
        "unchanged": done.unchanged,
        "gone": done.gone,
        "price_lists": done.price_lists,
    }
    return (
        ExitCode.FITS,
        [counts_line(arguments, counts)],
        {"catalogue": arguments.into, "dry_run": arguments.dry_run, **counts},
    )


# what becomes of rows, entries and numbers, by the name that documents have for it
_COUNTED = {
    "new": "{count} new",
    "changed": "{count} changed",
    "unchanged": "{count} unchanged",
    "missing": "{count} missing",
    "gone": "{count} gone",
    "price_lists": "price lists new, changed or gone: {count}",
    "out": "{count} taken out",
}
CHANGES = {
    "new": Worded("new"),
    "changed": Worded("changed"),
    "missing": Worded("missing"),
    "gone": Worded("gone"),
    "out": Worded("taken out"),
    "astray": Worded("astray"),
}


def change_word(kind: str) -> str:
    """Return what became of something, as wide as the widest such word."""
    return f"{told(CHANGES[kind]):<{max(len(told(one)) for one in CHANGES.values())}}"


def counts_line(arguments: argparse.Namespace, counts: Mapping[str, object], subject: str = "") -> str:
    """Return what became of how many; what was only tried says so. ``subject`` stands in front, where there is one."""
    listed = ", ".join(said(_COUNTED[name], count=count) for name, count in counts.items())
    line = said("tried, nothing changed: {counts}", counts=listed) if arguments.dry_run else listed
    return said("{place}: {said}", place=subject, said=line) if subject else line


def _table(workbench: Workbench, arguments: argparse.Namespace) -> Said:
    from spoutline.planning.table_intake.column_map import map_to_toml
    from spoutline.planning.table_intake.into_draft import maps_in, open_supplier_table

    maps = maps_in(arguments.map) if arguments.map is not None else ()
    opened = open_supplier_table(arguments.file, maps, _said(arguments, maps), choices_in(arguments.column))
    opened = with_repairs(opened, arguments)
    columns = [column_document(one) for one in opened.mapping]
    if arguments.columns:
        document: dict[str, object] = {"columns": columns, "recognised": opened.is_recognised}
        result: Said = ExitCode.FITS, [column_line(one) for one in opened.mapping], document
    else:
        result = _taken_in(workbench, arguments, opened)
    if arguments.save_map is not None and result[0] is not ExitCode.BAD_INPUT:
        arguments.output_plan.write({arguments.save_map: map_to_toml(opened.remembered).encode()})
    return result


def _said(arguments: argparse.Namespace, maps: tuple[TableMap, ...]) -> dict[str, object]:
    """Return what the arguments say of the table, checked as a map is."""
    from pydantic import ValidationError

    from spoutline.planning.table_intake.column_map import TableMap
    from spoutline.planning.table_intake.text_patterns import PATTERN_IDS

    names = ("sheet", "encoding", "decimal_comma", "maker", "supplier", "kind", "currency")
    given = {name: value for name in names if (value := getattr(arguments, name)) is not None}
    for one in arguments.confirm:
        if one not in PATTERN_IDS:
            wanted = Worded("use one of: {pattern_ids}", pattern_ids=", ".join(PATTERN_IDS))
            raise InputFault((InputProblem("", "--confirm", repr(one), wanted),))
    if arguments.confirm:
        before = maps[0].pattern if len(maps) == 1 else ()
        given["pattern"] = tuple(dict.fromkeys((*before, *arguments.confirm)))
    try:
        checked = TableMap.model_validate(given)
    except ValidationError as fault:
        raise InputFault(
            tuple(
                InputProblem("", f"--{'.'.join(map(str, one['loc']))}", repr(one["input"])[:60], one["msg"])
                for one in fault.errors(include_url=False)
            )
        ) from fault
    return {name: getattr(checked, name) for name in given}


def said_of_table(arguments: argparse.Namespace) -> dict[str, object]:
    """Return what the arguments say of how any table is read, by the names of ``TableMap``."""
    names = ("sheet", "encoding", "decimal_comma")
    return {name: value for name in names if (value := getattr(arguments, name)) is not None}


def with_repairs(opened: OpenedTable, arguments: argparse.Namespace) -> OpenedTable:
    """Return the table with the words and rows that the arguments mend; raise ``InputFault``."""
    from dataclasses import replace

    from spoutline.planning.table_intake.intake_fields import fields_of
    from spoutline.planning.table_intake.repairs import Repair, ReplaceWord, SkipRow

    key = fields_of(opened.table_map.subject).key
    number = next((one for one in opened.mapping if one.field and one.field.key == key), None)
    wanted = set(arguments.skip_row)
    numbers = {
        row.number: row.cell(number.place) if number is not None else ""
        for row in (opened.table.rows() if wanted else ())
        if row.number in wanted
    }
    for row in sorted(wanted - set(numbers)):
        raise InputFault((InputProblem(opened.table.place, "--skip-row", str(row), "the table has no such row"),))
    steps: list[Repair] = [SkipRow(row=row, number=text) for row, text in sorted(numbers.items())]
    for text in arguments.replace:
        field, _, rest = text.partition(":")
        word, equals, by = rest.partition("=")
        if not equals or not word.strip() or field.strip() not in {one.slot for one in opened.mapping}:
            known = ", ".join(one.slot for one in opened.mapping if one.slot)
            wanted_words = Worded("write FIELD:WORD=BY with one of the fields {known}", known=known)
            raise InputFault((InputProblem("", "--replace", repr(text), wanted_words),))
        steps.append(ReplaceWord(field=field.strip(), word=word.strip(), by=by.strip()))
    table_map = opened.table_map
    return replace(opened, table_map=table_map.model_copy(update={"repair": (*table_map.repair, *steps)}))


def choices_in(texts: list[str]) -> dict[str, str]:
    """Return what columns hold as the arguments say; raise ``InputFault``."""
    choices: dict[str, str] = {}
    for text in texts:
        column, equals, field = text.rpartition("=")
        if not equals or not column.strip():
            wanted = "write COLUMN=FIELD, such as C=bore_mm in mm, or C= to leave the column out"
            raise InputFault((InputProblem("", "--column", repr(text), wanted),))
        choices[column.strip()] = field.strip()
    return choices


def report_lines(report: IntakeReport) -> Iterator[str]:
    """Return what is told of cells, and which words could be replaced everywhere."""
    for one in report.reports[:_TOLD]:
        yield f"  {report_line(one)}"
    if report.faults + report.questions > min(len(report.reports), _TOLD):
        counts = {"faults": report.faults, "questions": report.questions}
        yield f"  … {said('faults: {faults}, questions: {questions}', **counts)}"
    for offer in offers_of(report)[:_TOLD]:
        option = f"--replace '{offer['field']}:{offer['word']}={offer['nearest']}'"
        yield f"  {said('offered: {option} (cells: {count})', option=option, count=offer['times'])}"


def report_line(one: CellReport) -> str:
    """Return what is told of a cell: whether it is wrong or open, and what would be right."""
    kind = said("fault") if one.kind is FaultKind.FAULT else said("question")
    return said("{place}: {said}", place=kind, said=words().line(one.problem()))


def row_change_document(one: PartChange | RowChange) -> dict[str, object]:
    """Return what a table does to something, for other programs."""
    return {
        "change": one.kind.value,
        "name": one.name,
        "row": one.row or None,
        "fields": [{"field": each.field, "before": each.before, "after": each.after} for each in one.fields],
    }


def row_change_lines(changes: DraftChanges) -> Iterator[str]:
    """Return what a table changes, one line for each row."""
    for one in changes.changes[:_TOLD]:
        yield f"  {change_word(one.kind)} {one.name}  {fields_told(one.fields)}".rstrip()
    yield from _more(changes)


def fields_told(fields: Iterable[FieldChange]) -> str:
    """Return fields before and after; a field goes by its own name unless the program has words for it."""
    texts = ([_worded(text) for text in (one.field, one.before, one.after)] for one in fields)
    return "; ".join(f"{name}: {before or '–'} → {after or '–'}" for name, before, after in texts)


def _worded(text: str) -> str:
    return told(text) if isinstance(text, Worded) else text


def _more(changes: DraftChanges) -> Iterator[str]:
    if len(changes.changes) > _TOLD:
        yield f"  … {said('more: --json prints up to {count} of them', count=len(changes.changes))}"


def head_lines(arguments: argparse.Namespace, report: IntakeReport, *, is_recognised: bool) -> Iterator[str]:
    """Yield whether the map was made for other titles, then how many rows were read and which were left out."""
    if arguments.map is not None and not is_recognised:
        yield said("the titles are not those that the map was made for: look at the columns")
    yield said("rows: {rows}, of them taken: {lines}", rows=report.rows, lines=report.lines)
    left_out = {
        said("totals: {count}", count=report.totals): report.totals,
        said("repeated titles: {count}", count=report.headings): report.headings,
        said("headings: {count}", count=report.sections): report.sections,
    }
    if listed := ", ".join(text for text, count in left_out.items() if count):
        yield said("left out: {listed}", listed=listed)


def _taken_in(workbench: Workbench, arguments: argparse.Namespace, opened: OpenedTable) -> Said:
    terminal = TerminalProgress("{done} rows read")

    def progress(rows: int) -> bool:
        terminal.on_progress(rows, rows + 1)
        return True

    done = workbench.catalogues().import_table(
        arguments.into,
        opened,
        progress,
        take_out_missing=arguments.take_out_missing,
        dry_run=arguments.dry_run,
    )
    terminal.on_progress(1, 1)
    report, changes = done.report, done.changes
    counts: dict[str, object] = {
        "new": changes.new,
        "changed": changes.changed,
        "unchanged": changes.unchanged,
        "missing": changes.missing,
    }
    document = {
        "catalogue": arguments.into,
        "dry_run": arguments.dry_run,
        "taken_in": report.is_sound and not arguments.dry_run,
        "recognised": opened.is_recognised,
        "fingerprint": opened.headings.fingerprint,
        "columns": [column_document(one) for one in opened.mapping],
        "rows": _rows_document(done),
        **counts,
        "price_moves": changes.price_moves,
        "near_duplicates": changes.near_duplicates,
        "faults": report.faults,
        "questions": report.questions,
        "reports": [report_document(one) for one in report.reports],
        "offers": offers_of(report),
        "changes": [_change_document(one) for one in changes.changes],
        "text_patterns": _found_in_texts(opened),
    }
    lines = [*_lines(arguments, done, counts)]
    if report.is_sound:
        return ExitCode.FITS, lines, document
    return (ExitCode.DOES_NOT_FIT if arguments.dry_run else ExitCode.BAD_INPUT), lines, document


def _rows_document(done: TableResult) -> dict[str, int]:
    report = done.report
    names = ("rows", "lines", "blank", "totals", "headings", "sections", "skipped")
    return {name: getattr(report, name) for name in names}


def _lines(arguments: argparse.Namespace, done: TableResult, counts: dict[str, object]) -> Iterator[str]:
    report, changes = done.report, done.changes
    yield from head_lines(arguments, report, is_recognised=done.opened.is_recognised)
    yield from report_lines(report)
    for change in changes.changes[:_TOLD]:
        yield from _change_lines(change)
    yield from _more(changes)
    if not report.is_sound:
        yield said("{place}: {said}", place=arguments.into, said=NOTHING_CHANGED)
        return
    yield counts_line(arguments, counts, arguments.into)
    if changes.price_moves:
        yield said("parts whose price moves by more than 20 %: {count}", count=changes.price_moves)
    if changes.near_duplicates:
        count = changes.near_duplicates
        yield said("new numbers that differ from another only in capitals, blanks or signs: {count}", count=count)


def _change_lines(change: PartChange | RowChange) -> Iterator[str]:
    yield f"  {change_word(change.kind)} {change.ref}  {fields_told(change.fields)}".rstrip()
    for move in change.moves:
        yield f"      {said('its price in {currency} moves by {share:+.0%}', currency=move.currency, share=move.share)}"
    if change.alike:
        yield f"      {said('much like {parts}', parts=', '.join(map(str, change.alike)))}"


def offers_of(report: IntakeReport) -> list[dict[str, Any]]:
    """Return which words could be replaced everywhere by the nearest that is right."""
    return [
        {"field": field, "word": word, "nearest": nearest, "times": times}
        for (field, word, nearest), times in report.words.most_common()
    ]


def _found_in_texts(opened: OpenedTable) -> list[dict[str, object]]:
    """Return which patterns find figures in the first texts, for the keeper to confirm."""
    from spoutline.planning.table_intake.text_patterns import found_by_patterns

    name = next((one for one in opened.mapping if one.field and one.field.key == "name"), None)
    if name is None:
        return []
    texts = [row.cell(name.place) for row in opened.table.head() if row.number >= opened.headings.first_row]
    return [
        {"pattern": one.pattern, "column": one.column, "words": one.words, "confirmed": one.pattern in confirmed}
        for confirmed in (opened.table_map.pattern,)
        for one in found_by_patterns(texts, opened.table_map.kind)
    ]


def column_line(one: MappedColumn) -> str:
    """Return what a column holds."""
    from spoutline.planning.table_intake.raw_table import column_letters

    title = " / ".join(filter(None, (one.column.head, one.column.title)))
    held = said("left out") if one.field is None else one.field.key
    measured = one.currency if one.field is not None and one.field.key == "price" else one.unit
    unit = f" in {measured}" if measured else ""  # as --column takes it
    return f"{column_letters(one.place):>3}  {title or said('(no title)')}  →  {held}{unit}"


def column_document(one: MappedColumn) -> dict[str, object]:
    """Return what a column holds, for other programs."""
    from spoutline.planning.table_intake.raw_table import column_letters

    return {
        "column": column_letters(one.place),
        "title": one.column.title,
        "head": one.column.head,
        "field": None if one.field is None else one.field.key,
        "unit": one.unit,
        "currency": one.currency,
    }


def report_document(one: CellReport) -> dict[str, object]:
    """Return what is told of a cell, for other programs."""
    return {
        "kind": one.kind.value,
        "cell": one.address,
        "row": one.row,
        "field": one.field,
        "text": one.text,
        "wanted": one.wanted,
        "nearest": one.nearest,
    }


def _change_document(one: PartChange | RowChange) -> dict[str, object]:
    return {
        "change": one.kind.value,
        "number": one.ref.number,
        "maker": one.ref.maker,
        "row": one.row or None,
        "fields": [{"field": each.field, "before": each.before, "after": each.after} for each in one.fields],
        "price_moves": [{"currency": each.currency, "share": round(each.share, 4)} for each in one.moves],
        "alike": [{"number": ref.number, "maker": ref.maker} for ref in one.alike],
    }
