"""What the view of a table does with it: where its rows go, for parts, old numbers, prices, types and positions."""

from __future__ import annotations

from abc import ABC, abstractmethod
from collections.abc import Callable, Mapping
from pathlib import Path
from typing import Final

from spoutline.bootstrap.catalogues import CatalogueService
from spoutline.bootstrap.dispenser_types import DispenserTypeService
from spoutline.bootstrap.position_tables import PositionTableService
from spoutline.frozen import frozen
from spoutline.gui.wording import tr
from spoutline.model.survey import Survey
from spoutline.planning.table_intake.column_map import TableMap
from spoutline.planning.table_intake.draft_changes import DraftChanges
from spoutline.planning.table_intake.intake import Progress
from spoutline.planning.table_intake.intake_fields import TableSubject
from spoutline.planning.table_intake.into_draft import OpenedTable, TableResult
from spoutline.planning.table_intake.into_survey import IntoSurvey
from spoutline.planning.table_intake.raw_table import TextEncoding
from spoutline.planning.table_intake.table_look import TableFile, TableLook
from spoutline.units.accepted import UnitSystem

_SHOWN: Final = 5  # numbers in a line


@frozen
class TakenTable:
    """A table that was taken over, or refused for a cell: what a person is told, and what it made of a survey."""

    is_sound: bool
    told: str = ""
    survey: Survey | None = None


@frozen
class WorkWords:
    """How the view names what it does."""

    file_hint: str
    take: str
    rows: str  # with {parts}, {rows}, {left}, {faults}, {questions}
    missing: str = ""  # empty: rows that are not in the table stay
    missing_hint: str = ""


class TableWork(ABC):
    """One kind of table. ``open``, ``look``, ``take`` and ``remember`` are called off the window's thread."""

    subject: TableSubject
    finds_figures: bool = False  # in the texts of its rows
    has_exchange_files: bool = False  # the program's own, which are read elsewhere

    @property
    @abstractmethod
    def words(self) -> WorkWords:
        """How the view names what it does."""

    @property
    def target(self) -> str:
        """What a look is held against; where it changes the table is looked at anew."""
        return str(self.subject)

    @property
    def not_ready(self) -> str:
        """Why no table can be taken now; empty where one can."""
        return ""

    @abstractmethod
    def open(self, path: Path, sheet: str, encoding: TextEncoding | None) -> TableFile:
        """Return a table as remembered, else as its titles suggest."""

    @abstractmethod
    def look(self, target: str, opened: OpenedTable, progress: Progress) -> TableLook:
        """Return what a table would change; change nothing."""

    @abstractmethod
    def take(self, target: str, opened: OpenedTable, progress: Progress, *, take_out_missing: bool) -> TakenTable:
        """Take a table over: all of it, or nothing."""

    @abstractmethod
    def remember(self, opened: OpenedTable) -> None:
        """Remember how the table was read."""


def _counted(words: str, changes: DraftChanges, **more: str) -> str:
    return words.format(new=changes.new, changed=changes.changed, same=changes.unchanged, **more)


def _read_only() -> str:
    return tr("Pick a catalog of your own first: Demonstration is only read.")


class PartsWork(TableWork):
    """Parts and prices into the draft of a catalogue."""

    subject = TableSubject.PARTS
    finds_figures = True
    has_exchange_files = True

    def __init__(self, service: Callable[[], CatalogueService], draft: Callable[[], str]) -> None:
        self._service, self._draft = service, draft

    @property
    def words(self) -> WorkWords:
        """How the view names what it does."""
        return WorkWords(
            file_hint=tr("CSV or XLSX, as the supplier sends it"),
            take=tr("Take over into the &draft"),
            rows=tr("{parts} parts in {rows} rows, {left} left out; {faults} faults, {questions} questions."),
            missing=tr("Take out what it does not hold"),
            missing_hint=tr("Parts of the table's makers that the draft holds and the table does not"),
        )

    @property
    def target(self) -> str:
        """The catalogue whose draft the table goes into."""
        return self._draft()

    @property
    def not_ready(self) -> str:
        """Why no table can be taken now."""
        return "" if self._draft() else _read_only()

    def open(self, path: Path, sheet: str, encoding: TextEncoding | None) -> TableFile:
        """Return a table as remembered, else as its titles suggest."""
        return self._service().open_table(path, sheet, encoding)

    def look(self, target: str, opened: OpenedTable, progress: Progress) -> TableLook:
        """Return what a table would change in the draft."""
        return self._service().look_at_table(target, opened, progress)

    def take(self, target: str, opened: OpenedTable, progress: Progress, *, take_out_missing: bool) -> TakenTable:
        """Take a table into the draft."""
        done = self._service().import_table(target, opened, progress, take_out_missing=take_out_missing)
        return _of_draft(done, target)

    def remember(self, opened: OpenedTable) -> None:
        """Remember how the table was read."""
        self._service().remember_map(opened)


def _of_draft(done: TableResult, target: str) -> TakenTable:
    words = tr("The draft of {catalog}: {new} new, {changed} changed, {same} as they were.")
    return TakenTable(done.report.is_sound, _counted(words, done.changes, catalog=target))


class ReferencesWork(PartsWork):
    """Old numbers into the draft of a catalogue."""

    subject = TableSubject.CROSS_REFERENCES
    finds_figures = False

    @property
    def words(self) -> WorkWords:
        """How the view names what it does."""
        return WorkWords(
            file_hint=tr("CSV or XLSX: old number and its maker, the part it leads to and its maker"),
            take=tr("Take over into the &draft"),
            rows=tr("{parts} old numbers in {rows} rows, {left} left out; {faults} faults, {questions} questions."),
            missing=tr("Take out what it does not hold"),
            missing_hint=tr("Old numbers of the table's makers that the draft holds and the table does not"),
        )

    def open(self, path: Path, sheet: str, encoding: TextEncoding | None) -> TableFile:
        """Return a table as remembered, else as its titles suggest."""
        return self._service().open_table(path, sheet, encoding, TableMap(subject=self.subject))

    def look(self, target: str, opened: OpenedTable, progress: Progress) -> TableLook:
        """Return what a table would change in the draft."""
        return self._service().old_numbers().look_at_table(target, opened, progress)

    def take(self, target: str, opened: OpenedTable, progress: Progress, *, take_out_missing: bool) -> TakenTable:
        """Take a table into the draft."""
        done = self._service().old_numbers().import_table(target, opened, progress, take_out_missing=take_out_missing)
        words = tr("{0} new, {1} changed, {2} as they were")
        return TakenTable(done.report.is_sound, words.format(done.new, done.changed, done.unchanged))


class PriceListWork(PartsWork):
    """Prices into one price list of the draft of a catalogue; ``head`` says which."""

    subject = TableSubject.PARTS
    finds_figures = False

    def __init__(
        self, service: Callable[[], CatalogueService], draft: Callable[[], str], head: Mapping[str, object]
    ) -> None:
        super().__init__(service, draft)
        self._head = head

    @property
    def words(self) -> WorkWords:
        """How the view names what it does."""
        return WorkWords(
            file_hint=tr("CSV or XLSX, as the supplier sends it"),
            take=tr("Take &over into the price list"),
            rows=tr("{parts} parts in {rows} rows, {left} left out; {faults} faults, {questions} questions."),
        )

    def open(self, path: Path, sheet: str, encoding: TextEncoding | None) -> TableFile:
        """Return a table as remembered, else as its titles suggest; what is said of the list goes before both."""
        said = {name: str(self._head[name]) for name in ("maker", "supplier", "currency") if self._head[name]}
        file = self._service().open_table(path, sheet, encoding, TableMap.model_validate(said))
        if file.opened is None:
            return file
        kept = file.opened.table_map.model_copy(update=said)
        return TableFile(file.path, file.sheets, _with_map(file.opened, kept))

    def look(self, target: str, opened: OpenedTable, progress: Progress) -> TableLook:
        """Return what a table would change in the list."""
        return self._service().prices().look_at_table(target, opened, self._head, progress)

    def take(self, target: str, opened: OpenedTable, progress: Progress, *, take_out_missing: bool) -> TakenTable:
        """Take a table into the draft as the list."""
        prices = self._service().prices()
        done = prices.import_table(target, opened, self._head, progress)
        told = [tr("Price list {0}: {1} prices.").format(self._head["id"], len(done.prices))]
        strange = () if done.price_list is None else prices.of_no_part(target, done.price_list)
        if strange:
            words = tr("Numbers that no part of the draft has: {0}, such as {1}.")
            told.append(words.format(len(strange), ", ".join(strange[:_SHOWN])))
        return TakenTable(done.report.is_sound, " ".join(told))


def _with_map(opened: OpenedTable, table_map: TableMap) -> OpenedTable:
    return OpenedTable(opened.table, opened.headings, opened.mapping, table_map, opened.is_recognised)


class TypesWork(TableWork):
    """Dispenser types into the book."""

    subject = TableSubject.DISPENSER_TYPES

    def __init__(self, service: DispenserTypeService, units: UnitSystem) -> None:
        self._service, self._units = service, units

    @property
    def words(self) -> WorkWords:
        """How the view names what it does."""
        return WorkWords(
            file_hint=tr("CSV or XLSX: a row for each type of dispenser"),
            take=tr("Take &over into the book"),
            rows=tr("{parts} types in {rows} rows, {left} left out; {faults} faults, {questions} questions."),
        )

    def open(self, path: Path, sheet: str, encoding: TextEncoding | None) -> TableFile:
        """Return a table as remembered, else as its titles suggest."""
        return self._service.maps.open(path, sheet, encoding, self._service.plain_map(self._units))

    def look(self, target: str, opened: OpenedTable, progress: Progress) -> TableLook:
        """Return what a table would change in the book."""
        return self._service.look_at_table(opened, progress)

    def take(self, target: str, opened: OpenedTable, progress: Progress, *, take_out_missing: bool) -> TakenTable:
        """Take the types into the book."""
        done = self._service.import_table(opened, progress)
        words = tr("{0} new, {1} changed, {2} as they were")
        return TakenTable(done.report.is_sound, words.format(done.new, done.changed, done.unchanged))

    def remember(self, opened: OpenedTable) -> None:
        """Remember how the table was read."""
        self._service.maps.remember(opened)


class PositionsWork(TableWork):
    """Positions into a survey, which is a value: what the table makes of it is handed over."""

    subject = TableSubject.POSITIONS

    def __init__(self, service: PositionTableService, survey: Survey, units: UnitSystem) -> None:
        self._service, self._survey, self._units = service, survey, units

    @property
    def words(self) -> WorkWords:
        """How the view names what it does."""
        return WorkWords(
            file_hint=tr("CSV or XLSX: a row for each position"),
            take=tr("&Take positions"),
            rows=tr("{parts} positions in {rows} rows, {left} left out; {faults} faults, {questions} questions."),
            missing=tr("These positions take the place of all that are there"),
            missing_hint=tr("Positions of the survey that the table does not hold go"),
        )

    def open(self, path: Path, sheet: str, encoding: TextEncoding | None) -> TableFile:
        """Return a table as remembered, else as its titles suggest."""
        return self._service.maps.open(path, sheet, encoding, self._service.plain_map(self._units))

    def open_rows(self, place: str, rows: list[list[str]]) -> OpenedTable:
        """Return pasted rows; raise ``InputFault``."""
        return self._service.maps.open_rows(place, rows, self._service.plain_map(self._units))

    def look(self, target: str, opened: OpenedTable, progress: Progress) -> TableLook:
        """Return what a table would change in the survey."""
        return self._service.look(IntoSurvey(survey=self._survey), opened, progress)

    def take(self, target: str, opened: OpenedTable, progress: Progress, *, take_out_missing: bool) -> TakenTable:
        """Return the survey with the positions; raise ``InputFault`` where they do not hold together."""
        into = IntoSurvey(survey=self._survey, take_out_missing=take_out_missing)
        done = self._service.read(into, opened, progress)
        if not done.report.is_sound:
            return TakenTable(is_sound=False)
        words = _counted(tr("{new} new, {changed} changed, {same} as they were."), done.result.changes)
        told = "\n".join((words, *map(str, done.notes[:8])))
        return TakenTable(is_sound=True, told=told, survey=done.survey(self._survey))

    def remember(self, opened: OpenedTable) -> None:
        """Remember how the table was read."""
        self._service.maps.remember(opened)
