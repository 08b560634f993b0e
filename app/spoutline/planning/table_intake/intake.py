"""The way of a table from rows of texts to lines of typed values, every fault and question told by its cell."""

from __future__ import annotations

import unicodedata
from collections import Counter
from collections.abc import Callable, Iterator, Mapping
from dataclasses import dataclass, field
from enum import StrEnum
from functools import lru_cache
from typing import Final

from spoutline.frozen import frozen
from spoutline.input_bounds.bounds import BOUNDS
from spoutline.model.faults import InputFault, InputProblem
from spoutline.model.part import PartKind
from spoutline.model.worded import Worded
from spoutline.planning.table_intake.cell_values import CellFault, FaultKind, Money, Value, read_cell, read_money
from spoutline.planning.table_intake.column_map import MappedColumn, TableMap, unit_in_use
from spoutline.planning.table_intake.headings import Headings, is_total
from spoutline.planning.table_intake.intake_fields import CellKind, IntakeField, fields_of, kind_words
from spoutline.planning.table_intake.raw_table import RawRow, RawTable
from spoutline.planning.table_intake.repairs import Repairs

Progress = Callable[[int], bool]  # rows read so far; False asks to stop
_TOLD_EVERY: Final = 500
_REMEMBERED: Final = 50_000  # cells whose reading is kept: tables repeat themselves


class Stopped(Exception):
    """Somebody asked to stop; nothing was kept."""


@frozen(kw_only=True)
class CellReport:
    """What is wrong, or open, in one cell.

    ``nearest`` would be right in the place of ``word``, which is the whole text or a part of it; empty where nothing is
    near.
    """

    kind: FaultKind
    address: str
    row: int
    field: str
    text: str
    wanted: str
    nearest: str = ""
    word: str = ""

    def problem(self) -> InputProblem:
        """Return it as a problem of the input."""
        return InputProblem(self.address, self.field, repr(self.text) if self.text else "nothing", self.wanted)


@frozen(kw_only=True)
class PartLine:
    """One row as typed values by slot.

    ``kind`` is what the row, its section or the map says, None where none does; only what the row itself says goes
    before what is known of the part.
    """

    row: int
    number: str
    maker: str
    kind: PartKind | None
    says_kind: bool
    values: Mapping[str, Value]
    prices: tuple[Money, ...]
    is_sound: bool
    texts: Mapping[str, str]  # after all repairs


class RowKind(StrEnum):
    """What a row of a table is."""

    PART = "part"
    BLANK = "blank"
    TOTAL = "total"
    HEADINGS = "headings"
    SECTION = "section"
    SKIPPED = "skipped"  # a repair leaves it out


@frozen(kw_only=True)
class SeenRow:
    """A row as it was read, by slot: texts of the file, texts after all repairs, values of the cells that have one."""

    number: int
    kind: RowKind
    written: Mapping[str, str]
    texts: Mapping[str, str]
    values: Mapping[str, Value | Money]


Seen = Callable[[SeenRow], None]


@dataclass(slots=True)
class IntakeReport:
    """What was seen on the way; ``reports`` holds the first ones of ``faults`` and ``questions``."""

    rows: int = 0
    blank: int = 0
    totals: int = 0
    headings: int = 0
    sections: int = 0
    skipped: int = 0
    lines: int = 0
    faults: int = 0
    questions: int = 0
    reports: list[CellReport] = field(default_factory=list)
    words: Counter[tuple[str, str, str]] = field(default_factory=Counter)  # field, word, nearest

    def add(self, report: CellReport) -> None:
        """Count a report, and keep it while there is room."""
        if report.kind is FaultKind.FAULT:
            self.faults += 1
        else:
            self.questions += 1
        if len(self.reports) < BOUNDS.intake_faults:
            self.reports.append(report)
        if report.nearest and (len(self.words) < BOUNDS.intake_faults or (_key(report) in self.words)):
            self.words[_key(report)] += 1

    @property
    def is_sound(self) -> bool:
        """Whether no cell is wrong or open."""
        return not (self.faults or self.questions)


def _key(report: CellReport) -> tuple[str, str, str]:
    return report.field, report.word, report.nearest


class Intake:
    """Reads the lines of one table. ``report`` grows while ``lines`` is walked."""

    def __init__(
        self,
        table: RawTable,
        headings: Headings,
        mapping: tuple[MappedColumn, ...],
        table_map: TableMap,
        progress: Progress | None = None,
        *,
        seen: Seen | None = None,
        alone_is_row: Callable[[str], bool] = lambda _: False,
    ) -> None:
        self._alone_is_row = alone_is_row
        self._table, self._headings, self._map = table, headings, table_map
        self._columns = tuple(one for one in mapping if one.field is not None)
        self._slots = {one.slot: one for one in self._columns}
        self._fields = fields_of(table_map.subject)
        self._repairs = Repairs(table_map.repair, self._fields.key)
        self._maker = unicodedata.normalize("NFC", table_map.maker.strip())
        self._progress = progress
        self._seen: dict[tuple[str, str], int] = {}
        self._tell_row = seen
        self.report = IntakeReport()
        self._read = lru_cache(maxsize=_REMEMBERED)(self._read_uncached)
        self._check_columns()

    def _check_columns(self) -> None:
        problems: list[tuple[str, str]] = []
        key = self._fields.key
        if key not in self._slots:
            problems.append((key, Worded("map one column to {key}, {what}", key=key, what=self._fields.what)))
        if self._fields.has_maker and "maker" not in self._slots and not self._map.maker:
            problems.append(("maker", "map one column to maker, or name the maker of all rows"))
        if problems:
            raise InputFault(
                tuple(
                    InputProblem(self._table.place, Worded("mapping, {name}", name=name), "nothing", wanted)
                    for name, wanted in problems
                )
            )

    def lines(self) -> Iterator[PartLine]:
        """Yield a line for every row that is a part, sound or not; raise ``Stopped`` where the progress asks to."""
        section: PartKind | None = None
        for row in self._table.rows():
            if row.number < self._headings.first_row:
                continue
            self.report.rows += 1
            if self._progress is not None and self.report.rows % _TOLD_EVERY == 0:
                self._tell()
            named = self._section(row)
            if named is not None:
                section = named.kind
                self.report.sections += 1
                self._show_row(row, RowKind.SECTION)
                continue
            no_part = self._no_part(row)
            if no_part is not None:
                self._show_row(row, no_part)
                continue
            line = self._line(row, section)
            if line is not None:
                self.report.lines += 1
                yield line
        if self._progress is not None:
            self._tell()

    def _tell(self) -> None:
        if self._progress is not None and not self._progress(self.report.rows):
            raise Stopped

    def _section(self, row: RawRow) -> _Section | None:
        """Return what a heading between rows says: a text that stands alone and is no number of a part."""
        filled = [(place, text) for place, text in enumerate(row.cells) if text]
        if len(filled) != 1 or is_total(row):
            return None
        if not self._fields.has_maker:  # a row may have a name and nothing else, where nothing else is needed
            is_heading = self._fields.alone_is_heading in self._slots and not self._alone_is_row(filled[0][1])
            return _Section(None) if is_heading else None
        place, text = filled[0]
        kind = kind_words().get(" ".join(text.casefold().replace("-", " ").split()).rstrip(":"))
        if kind is None and (len(self._columns) < 2 or any(map(str.isdigit, text))):
            return None
        others = {one.place for slot, one in self._slots.items() if slot not in (self._fields.key, "name")}
        return None if place in others else _Section(kind)

    def _no_part(self, row: RawRow) -> RowKind | None:
        """Return what a row is that holds no part; None for one that may."""
        report = self.report
        if row.is_blank:
            kind = RowKind.BLANK
        elif self._headings.repeats(row):
            kind = RowKind.HEADINGS
        elif is_total(row) and (not row.cell(self._slots[self._fields.key].place) or self._number_is_total(row)):
            kind = RowKind.TOTAL
        elif not any(row.cell(one.place) for one in self._columns):
            kind = RowKind.BLANK
        else:
            return None
        report.blank += kind is RowKind.BLANK
        report.headings += kind is RowKind.HEADINGS
        report.totals += kind is RowKind.TOTAL
        return kind

    def _show_row(self, row: RawRow, kind: RowKind) -> None:
        if self._tell_row is not None:
            texts = {one.slot: text for one in self._columns if (text := row.cell(one.place))}
            self._tell_row(SeenRow(number=row.number, kind=kind, written=texts, texts=texts, values={}))

    def _number_is_total(self, row: RawRow) -> bool:
        return is_total(RawRow(row.number, (row.cell(self._slots[self._fields.key].place),)))

    def _line(self, row: RawRow, section: PartKind | None) -> PartLine | None:
        texts = {one.slot: text for one in self._columns if (text := row.cell(one.place))}
        repaired = self._repairs.done(row.number, texts)
        if repaired is None:
            self.report.skipped += 1
            self._show_row(row, RowKind.SKIPPED)
            return None
        before = self.report.faults + self.report.questions
        values, prices, typed = self._cells(row, texts, repaired)
        number = str(values.pop(self._fields.key, ""))
        maker = str(values.pop("maker", "") or self._maker) if self._fields.has_maker else ""
        self._check_identity(row, number, maker, repaired)
        said = values.pop("kind", None) if "kind" in self._fields.by_key else None
        if self._tell_row is not None:
            shown = SeenRow(number=row.number, kind=RowKind.PART, written=texts, texts=repaired, values=typed)
            self._tell_row(shown)
        kind = PartKind(str(said)) if said else section or self._map.kind
        return PartLine(
            row=row.number,
            number=number,
            maker=maker,
            kind=kind,
            says_kind=bool(said),
            values=values,
            prices=tuple(prices),
            is_sound=self.report.faults + self.report.questions == before,
            texts=repaired,
        )

    def _cells(
        self, row: RawRow, texts: dict[str, str], repaired: dict[str, str]
    ) -> tuple[dict[str, Value], list[Money], dict[str, Value | Money]]:
        """Return the values, prices and both together of a row by slot; what cannot be read is reported."""
        values: dict[str, Value] = {}
        prices: list[Money] = []
        typed: dict[str, Value | Money] = {}
        untrusted = dict(row.faults)
        for slot, text in repaired.items():
            if not text.strip():
                continue
            mapped = self._slots.get(slot)
            kept = self._fields.by_key.get(slot) if mapped is None else mapped.field
            if kept is None:
                continue
            if (
                mapped is not None
                and mapped.place in untrusted
                and texts.get(slot) == text
                and kept.cell is not CellKind.DATE
                and kept.key != "notes"  # a person reads them: a date among them is no fault
            ):
                self._report(row, mapped, kept, text, CellFault(FaultKind.FAULT, untrusted[mapped.place]))
                continue
            found = self._read(slot, text)
            if isinstance(found, CellFault):
                self._report(row, mapped, kept, text, found)
            elif isinstance(found, Money):
                prices.append(found)
                typed[slot] = found
            else:
                values[slot] = typed[slot] = found
        return values, prices, typed

    def _read_uncached(self, slot: str, text: str) -> Value | Money | CellFault:
        mapped = self._slots.get(slot)
        kept = self._fields.by_key[slot] if mapped is None or mapped.field is None else mapped.field
        comma = self._map.decimal_comma
        try:
            if kept.cell is CellKind.MONEY:
                currency = (mapped.currency if mapped is not None else "") or self._map.currency
                return read_money(text, currency, decimal_comma=comma)
            return read_cell(text, kept, unit_in_use(mapped, kept, self._map), decimal_comma=comma)
        except CellFault as fault:
            return fault

    def _check_identity(self, row: RawRow, number: str, maker: str, texts: Mapping[str, str]) -> None:
        column = self._slots[self._fields.key]
        kept = self._fields.by_key[self._fields.key]
        if not number and not texts.get(self._fields.key, "").strip():
            wanted: str = Worded("write {what}, or skip the row", what=self._fields.what)
            self._report(row, column, kept, "", CellFault(FaultKind.FAULT, wanted))
        elif number:
            first = self._seen.setdefault((maker, number), row.number)
            if first != row.number:
                whose = Worded("this number of {maker}", maker=maker) if self._fields.has_maker else "it"
                wanted = Worded("row {first} has {whose} too; skip one of the two rows", first=first, whose=whose)
                self._report(row, column, kept, number, CellFault(FaultKind.FAULT, wanted))
        if not maker and self._fields.has_maker:
            wanted = "name the maker, in the row or for all rows"
            self._report(
                row, self._slots.get("maker"), self._fields.by_key["maker"], "", CellFault(FaultKind.FAULT, wanted)
            )

    def _report(self, row: RawRow, mapped: MappedColumn | None, kept: IntakeField, text: str, fault: CellFault) -> None:
        place = mapped.place if mapped is not None else self._slots[self._fields.key].place
        self.report.add(
            CellReport(
                kind=fault.kind,
                address=self._table.address(row.number, place),
                row=row.number,
                field=mapped.slot if mapped is not None else kept.key,
                text=text,
                wanted=fault.wanted,
                nearest=fault.nearest,
                word=fault.word or text,
            )
        )


@frozen
class _Section:
    """A heading between rows; the kind of the parts below it, None where it says none."""

    kind: PartKind | None
