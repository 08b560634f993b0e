"""Reads the exchange file of a catalogue: every fault of it is told, nothing in it is run, fetched or followed."""

from __future__ import annotations

from collections.abc import Iterator
from functools import cached_property
from pathlib import Path
from types import TracebackType
from typing import Final, Self

from pydantic import ValidationError

from spoutline.catalogue.descriptions import COLUMNS, figure_cells
from spoutline.catalogue.entry_cells import entry_of_cells
from spoutline.catalogue.entry_text import known_figure
from spoutline.catalogue.exchange_archive import ExchangeArchive, TableRow, Watch, refused, told_faults
from spoutline.catalogue.exchange_format import (
    FAMILIES,
    FAMILY_FIGURES,
    FILES,
    ORIGINS,
    PRICES,
    REFERENCES,
    TABLES,
    TEXTS,
    bare,
    member_of,
)
from spoutline.catalogue.exchange_prices import PriceListReader
from spoutline.catalogue.part_files import check_handed_on
from spoutline.catalogue.table_schema import IDENTITY_COLUMNS
from spoutline.input_bounds.bounds import BOUNDS
from spoutline.model.catalogue_entry import CatalogueEntry, EntryPrice, FigureCell, Origin
from spoutline.model.cross_reference import CrossReference
from spoutline.model.faults import InputProblem
from spoutline.model.field_faults import FAULT_BESIDE_OTHERS
from spoutline.model.part import PartKind
from spoutline.model.part_family import PartFamily
from spoutline.model.part_file import PartFile
from spoutline.model.part_ref import PartRef
from spoutline.model.pricing import PriceList
from spoutline.model.worded import Worded


class ExchangeReader:
    """Reads what an exchange file holds, one after the other, and gathers what is wrong in ``problems``.

    Nothing in the file is run, fetched or followed. An unsound row yields no entry. Use it as a context manager: the
    file is open inside. Whatever is read raises ``InputFault`` where the file is no exchange file or beyond its bounds.
    """

    def __init__(self, path: Path, watch: Watch = lambda _done, _total: None) -> None:
        self._path = path
        self._watch = watch
        self.problems: list[InputProblem] = []
        self.refs: set[PartRef] = set()
        self._prices: dict[PartRef, tuple[str, ...]] = {}  # currency and minor units by turns
        self._origins: dict[PartRef, dict[str, tuple[str, str]]] = {}
        self._files: dict[PartRef, tuple[PartFile, ...]] = {}

    def __enter__(self) -> Self:
        """Open the file."""
        with told_faults(self._path):
            self._archive = ExchangeArchive(self._path, self.problems, self._watch)
        return self

    def __exit__(
        self, _kind: type[BaseException] | None, _fault: BaseException | None, _at: TracebackType | None
    ) -> None:
        """Close it."""
        self._archive.close()

    @cached_property
    def families(self) -> dict[str, PartFamily]:
        """The sound families, by name."""
        with told_faults(self._path):
            return self._read_families()

    @cached_property
    def references(self) -> dict[PartRef, CrossReference]:
        """The sound cross-references, by old number."""
        with told_faults(self._path):
            found: dict[PartRef, CrossReference] = {}
            for row in self._archive.rows(REFERENCES):
                place = self._archive.place(REFERENCES, row.line)
                try:
                    one = CrossReference.model_validate({column: bare(text) for column, text in row.cells.items()})
                except ValidationError as fault:
                    self.problems.extend(_told(place, fault))
                    continue
                if one.ref in found:
                    self._fault(place, "number", repr(str(one.ref)), "each old number of a maker may stand once")
                found[one.ref] = one
            return found

    def entries(self) -> Iterator[CatalogueEntry]:
        """Yield every sound entry; when all were taken ``refs`` holds their numbers and makers."""
        with told_faults(self._path):
            known = self.families  # what a part has of its family is told by it
            self._read_beside()
            for name, kind in TABLES.items():
                for row in self._archive.rows(name):
                    entry = self._entry(name, row, kind, known)
                    if entry is not None:
                        yield entry
        for ref in sorted({*self._prices, *self._origins, *self._files} - self.refs):
            self._fault(
                Worded("{prices}.csv, {origins}.csv or {files}.csv", prices=PRICES, origins=ORIGINS, files=FILES),
                "number",
                str(ref),
                "the number and maker of a part above",
            )

    def price_lists(self) -> Iterator[PriceList]:
        """Yield every sound price list, one at a time: no more than one is held where its prices stand together."""
        with told_faults(self._path):
            yield from PriceListReader(self._archive, self.problems).lists()

    def contents(self) -> Iterator[tuple[PartFile, bytes]]:
        """Yield every picture and document of the entries with its content; taken after them."""
        for file in {one.digest: one for held in self._files.values() for one in held}.values():
            with told_faults(self._path):
                content = self._content(file)
            yield file, content

    def _content(self, file: PartFile) -> bytes:
        member = member_of(file)
        content = self._archive.content(member, BOUNDS.part_file_bytes, "a file of a part")
        if content is None:
            wanted = Worded("the content of {title!r}, which {files}.csv names", title=file.title, files=FILES)
            raise refused(self._path, member, wanted)
        check_handed_on(file, content, f"{self._path}, {member}")
        return content

    def _read_beside(self) -> None:
        """Read what other tables say of the parts: prices, where figures came from, files."""
        for row in self._archive.rows(PRICES):
            ref = _ref(row)
            self._prices[ref] = (*self._prices.get(ref, ()), row.cells["currency"], row.cells["price_minor"])
        for row in self._archive.rows(ORIGINS):
            from_where = row.cells["origin"], bare(row.cells["source"])
            self._origins.setdefault(_ref(row), {})[row.cells["column"]] = from_where
        for row in self._archive.rows(FILES):
            said = {column: text for column, text in row.cells.items() if column not in ("number", "maker")}
            try:
                file = PartFile.model_validate({**said, "title": bare(said["title"])})
            except ValidationError as fault:
                self.problems.extend(_told(self._archive.place(FILES, row.line), fault))
                continue
            ref = _ref(row)
            self._files[ref] = (*self._files.get(ref, ()), file)

    def _read_families(self) -> dict[str, PartFamily]:
        found: dict[str, PartFamily] = {}
        figures: dict[str, dict[str, str]] = {}
        for row in self._archive.rows(FAMILY_FIGURES):
            figures.setdefault(bare(row.cells["family"]), {})[row.cells["column"]] = row.cells["value"]
        for row in self._archive.rows(FAMILIES):
            place = self._archive.place(FAMILIES, row.line)
            name, said = bare(row.cells["name"]), row.cells["kind"]
            if name in found:
                self._fault(place, "name", repr(name), "each family stands once")
            if said not in set(PartKind):
                self._fault(place, "kind", repr(said[:80]), Worded("one of {partkind}", partkind=", ".join(PartKind)))
                continue
            cells, wrong = figure_cells(PartKind(said), figures.pop(name, {}))
            self.problems.extend(InputProblem(place, *one) for one in wrong)
            try:
                found[name] = PartFamily(name=name, kind=PartKind(said), figures=cells)
            except ValidationError as fault:
                self.problems.extend(_told(place, fault))
        for name in sorted(figures):
            place = Worded("{path}, {family_figures}.csv", path=self._path, family_figures=FAMILY_FIGURES)
            self._fault(
                place, "family", repr(name[:80]), Worded("the name of a family in {families}.csv", families=FAMILIES)
            )
        return found

    def _entry(
        self, table: str, row: TableRow, kind: PartKind | None, families: dict[str, PartFamily]
    ) -> CatalogueEntry | None:
        cells = row.cells
        identity = {
            column: bare(text) if column in TEXTS else text for column in IDENTITY_COLUMNS if (text := cells[column])
        }
        ref = PartRef(identity.get("number", ""), identity.get("maker", ""))
        before = len(self.problems)
        figures = self._figures(table, row, kind, ref, families) if kind is not None else ()
        said = self._prices.get(ref, ())
        try:
            prices = tuple(
                EntryPrice(currency=currency, minor=int(minor))
                for currency, minor in sorted(zip(said[::2], said[1::2], strict=True))
            )
            entry = entry_of_cells(identity, kind=kind, prices=prices, figures=figures, files=self._files.get(ref, ()))
        except ValidationError as fault:
            self.problems.extend(_told(self._archive.place(table, row.line), fault))
            return None
        except ValueError:
            wanted = "whole numbers of minor units are needed"
            self._fault(self._archive.place(table, row.line), "price_minor", ", ".join(said)[:80], wanted)
            return None
        known_by = entry.ref
        if known_by in self.refs:
            wanted = "each number of a maker may stand once"
            self._fault(self._archive.place(table, row.line), "number", repr(str(known_by)), wanted)
        self.refs.add(known_by)
        self._prices.pop(ref, None)
        return entry if len(self.problems) == before else None

    def _figures(
        self, table: str, row: TableRow, kind: PartKind, ref: PartRef, families: dict[str, PartFamily]
    ) -> tuple[FigureCell, ...]:
        cells = row.cells
        figures, wrong = figure_cells(kind, {column: text for column in COLUMNS[kind] if (text := cells[column])})
        if wrong:
            place = self._archive.place(table, row.line)
            self.problems.extend(InputProblem(place, *one) for one in wrong)
        from_where = self._origins.get(ref)
        if from_where is None:
            return figures
        for column, (origin, _source) in from_where.items():
            if origin not in _ORIGINS or cells.get(column, "") == "":
                wanted = Worded("one of {origin}, for a figure that is there", origin=", ".join(Origin))
                self._fault(self._archive.place(ORIGINS), column[:80], repr(origin[:80]), wanted)
            elif origin == Origin.FAMILY and bare(cells["family"]) not in families:
                wanted = Worded("a family of {families}.csv that the part belongs to", families=FAMILIES)
                self._fault(self._archive.place(ORIGINS), column[:80], repr(bare(cells["family"])[:80]), wanted)
        return tuple(_from_there(cell, from_where.get(cell.column)) for cell in figures)

    def _fault(self, place: str, field: str, value: str, wanted: str) -> None:
        self.problems.append(InputProblem(place, field, value, wanted))


_ORIGINS: Final = frozenset(Origin)


def _ref(row: TableRow) -> PartRef:
    return PartRef(bare(row.cells["number"]), bare(row.cells["maker"]))


def _told(place: str, fault: ValidationError) -> Iterator[InputProblem]:
    for error in fault.errors(include_url=False):
        if error["type"] == FAULT_BESIDE_OTHERS:
            context = error["ctx"]
            yield InputProblem(place, context["field"], context["value"], context["wanted"])
            continue
        field = ".".join(str(step) for step in error["loc"]) or "row"
        said = error["msg"].removeprefix("Value error, ").replace("Input should", "it should")
        missing = error["type"] == "missing"
        yield InputProblem(place, field, "nothing" if missing else repr(error["input"])[:80], said)


def _from_there(cell: FigureCell, where: tuple[str, str] | None) -> FigureCell:
    if where is None or where[0] not in _ORIGINS:
        return cell
    return known_figure(cell.column, cell.value, where[0], where[1][:200])
