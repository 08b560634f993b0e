"""Reads the exchange file of a catalogue: every fault of it is told, nothing in it is run, fetched or followed."""

from __future__ import annotations

import csv
import io
import json
import zipfile
import zlib
from collections import Counter
from collections.abc import Iterator
from contextlib import contextmanager
from pathlib import Path
from typing import IO, BinaryIO, Final, cast

from pydantic import ValidationError

from spoutline.catalogue.descriptions import COLUMNS, figure_cells
from spoutline.catalogue.exchange_format import (
    DESCRIPTOR,
    FAMILIES,
    FAMILY_FIGURES,
    FILE_MEMBER,
    FILES,
    FORMAT,
    LIST_PRICES,
    LISTS,
    MEMBERS,
    ORIGINS,
    PRICES,
    REFERENCES,
    TABLES,
    TEXTS,
    VERSION,
    bare,
    columns_of,
    member_of,
)
from spoutline.catalogue.part_files import check_handed_on
from spoutline.catalogue.price_lists import price_list_of
from spoutline.catalogue.table_schema import IDENTITY_COLUMNS
from spoutline.input_bounds.bounds import BOUNDS
from spoutline.input_bounds.reading import bounded_stream
from spoutline.input_bounds.tables import csv_rows
from spoutline.model.catalogue_entry import CatalogueEntry, EntryPrice, FigureCell, Origin
from spoutline.model.cross_reference import CrossReference
from spoutline.model.faults import InputFault, InputProblem
from spoutline.model.field_faults import FAULT_BESIDE_OTHERS
from spoutline.model.part import PartKind
from spoutline.model.part_family import PartFamily
from spoutline.model.part_file import PartFile
from spoutline.model.part_ref import PartRef
from spoutline.model.pricing import PriceList
from spoutline.model.worded import Worded


class ExchangeReader:
    """Reads the entries of an exchange file one after the other, and gathers what is wrong in ``problems``.

    Nothing in the file is run, fetched or followed. An unsound row yields no entry.
    """

    def __init__(self, path: Path) -> None:
        self._path = path
        self.problems: list[InputProblem] = []
        self.refs: set[PartRef] = set()
        self.references: dict[PartRef, CrossReference] = {}
        self.price_lists: dict[str, PriceList] = {}
        self.families: dict[str, PartFamily] = {}
        self._prices: dict[PartRef, list[tuple[str, str]]] = {}
        self._origins: dict[PartRef, dict[str, tuple[str, str]]] = {}
        self._files: dict[PartRef, list[PartFile]] = {}
        self._rows = 0

    def entries(self) -> Iterator[CatalogueEntry]:
        """Yield every sound entry; raise ``InputFault`` where the file is no exchange file or beyond its bounds.

        When the first is taken ``families`` holds the sound families, when all were taken ``references`` and
        ``price_lists`` hold theirs.
        """
        with self._opened() as archive:
            names = self._checked_names(archive)
            self._read_families(archive, names)
            for row in self._table(archive, names, PRICES):
                ref = PartRef(bare(row["number"]), bare(row["maker"]))
                self._prices.setdefault(ref, []).append((row["currency"], row["price_minor"]))
            for row in self._table(archive, names, ORIGINS):
                ref = PartRef(bare(row["number"]), bare(row["maker"]))
                self._origins.setdefault(ref, {})[row["column"]] = (row["origin"], bare(row["source"]))
            for row in self._table(archive, names, FILES):
                self._read_file(row)
            for name, kind in TABLES.items():
                for row in self._table(archive, names, name):
                    entry = self._entry(row, kind)
                    if entry is not None:
                        yield entry
            for row in self._table(archive, names, REFERENCES):
                self._reference(row)
            self._read_lists(archive, names)
        for ref in sorted({*self._prices, *self._origins, *self._files} - self.refs):
            self._fault(
                Worded("{prices}.csv, {origins}.csv or {files}.csv", prices=PRICES, origins=ORIGINS, files=FILES),
                "number",
                str(ref),
                "the number and maker of a part above",
            )

    def contents(self) -> Iterator[tuple[PartFile, bytes]]:
        """Yield every picture and document of the entries with its content; taken after them. Raise ``InputFault``."""
        files = {one.digest: one for held in self._files.values() for one in held}
        if not files:
            return
        with self._opened() as archive:
            for file in files.values():
                yield file, self._content(archive, file)

    def _content(self, archive: zipfile.ZipFile, file: PartFile) -> bytes:
        member = member_of(file)
        if member not in archive.namelist():
            raise _refused(
                self._path,
                member,
                Worded("the content of {title!r}, which {files}.csv names", title=file.title, files=FILES),
            )
        with archive.open(member) as stream:
            content = bounded_stream(
                cast(BinaryIO, stream), BOUNDS.part_file_bytes, f"{self._path}, {member}", "file", "a file of a part"
            )
        check_handed_on(file, content, f"{self._path}, {member}")
        return content

    def _read_file(self, row: dict[str, str]) -> None:
        place = row.pop(_PLACE)
        ref = PartRef(bare(row.pop("number")), bare(row.pop("maker")))
        try:
            file = PartFile.model_validate({**row, "title": bare(row["title"])})
        except ValidationError as fault:
            self.problems.extend(_told(place, fault))
            return
        self._files.setdefault(ref, []).append(file)

    def _read_families(self, archive: zipfile.ZipFile, names: frozenset[str]) -> None:
        figures: dict[str, dict[str, tuple[str, str]]] = {}
        for row in self._table(archive, names, FAMILY_FIGURES):
            figures.setdefault(bare(row["family"]), {})[row["column"]] = (row[_PLACE], row["value"])
        for row in self._table(archive, names, FAMILIES):
            place, name, said = row[_PLACE], bare(row["name"]), row["kind"]
            if name in self.families:
                self._fault(place, "name", repr(name), "each family stands once")
            if said not in set(PartKind):
                self._fault(place, "kind", repr(said[:80]), Worded("one of {partkind}", partkind=", ".join(PartKind)))
                continue
            cells, wrong = figure_cells(
                PartKind(said), {column: value for column, (_place, value) in figures.pop(name, {}).items()}
            )
            self.problems.extend(InputProblem(place, *one) for one in wrong)
            try:
                self.families[name] = PartFamily(name=name, kind=PartKind(said), figures=cells)
            except ValidationError as fault:
                self.problems.extend(_told(place, fault))
        for name in sorted(figures):
            place = Worded("{path}, {family_figures}.csv", path=self._path, family_figures=FAMILY_FIGURES)
            self._fault(
                place, "family", repr(name[:80]), Worded("the name of a family in {families}.csv", families=FAMILIES)
            )

    def _read_lists(self, archive: zipfile.ZipFile, names: frozenset[str]) -> None:
        prices: dict[str, list[tuple[str, dict[str, str]]]] = {}
        for row in self._table(archive, names, LIST_PRICES):
            place = row.pop(_PLACE)
            cells = {column: bare(text) for column, text in row.items()}
            prices.setdefault(cells.pop("list"), []).append((place, cells))
        for row in self._table(archive, names, LISTS):
            place = row.pop(_PLACE)
            said = {column: bare(text) or None for column, text in row.items()}
            name = str(said["id"])
            if name in self.price_lists:
                self._fault(place, "id", repr(name), "each price list stands once")
            try:
                made = price_list_of({**said, "supplier": said["supplier"] or ""}, prices.pop(name, ()))
                self.price_lists[name] = made
            except InputFault as fault:
                self.problems.extend(fault.problems)
        for name in sorted(prices):
            self._fault(
                Worded("{path}, {list_prices}.csv", path=self._path, list_prices=LIST_PRICES),
                "list",
                repr(name[:80]),
                Worded("the id of a list in {lists}.csv", lists=LISTS),
            )

    def _reference(self, row: dict[str, str]) -> None:
        place = row.pop(_PLACE)
        try:
            one = CrossReference.model_validate({column: bare(text) for column, text in row.items()})
        except ValidationError as fault:
            self.problems.extend(_told(place, fault))
            return
        if one.ref in self.references:
            self._fault(place, "number", repr(str(one.ref)), "each old number of a maker may stand once")
        self.references[one.ref] = one

    @contextmanager
    def _opened(self) -> Iterator[zipfile.ZipFile]:
        needed = "an exchange file that `spoutline catalog export` wrote is needed"
        try:
            size = self._path.stat().st_size
            if size > BOUNDS.exchange_bytes:
                wanted = Worded("{needed}; at most {most} bytes are read", needed=needed, most=BOUNDS.exchange_bytes)
                raise _refused(self._path, Worded("{size} bytes", size=size), wanted)
            with zipfile.ZipFile(self._path) as archive:
                yield archive
        except (OSError, ValueError) as fault:
            raise _refused(
                self._path,
                "this path",
                Worded("{needed} ({reason})", needed=needed, reason=getattr(fault, "strerror", None) or fault),
            ) from fault
        except (zipfile.BadZipFile, NotImplementedError, RuntimeError, EOFError, zlib.error) as fault:
            raise _refused(
                self._path, "the archive", Worded("{needed} ({reason})", needed=needed, reason=fault)
            ) from fault

    def _checked_names(self, archive: zipfile.ZipFile) -> frozenset[str]:
        members = archive.infolist()
        names = [member.filename for member in members]
        counts = Counter(names)
        strange = next(
            (name for name in names if counts[name] > 1 or not (name in MEMBERS or FILE_MEMBER.fullmatch(name))), None
        )
        if strange is not None:
            wanted = Worded(
                "an exchange file holds each of {descriptor} and its tables once, and nothing else",
                descriptor=DESCRIPTOR,
            )
            raise _refused(self._path, repr(strange[:80]), wanted)
        unpacked = sum(member.file_size for member in members)
        if unpacked > BOUNDS.exchange_unpacked_bytes:
            wanted = Worded("at most {most} bytes, unpacked, are read", most=BOUNDS.exchange_unpacked_bytes)
            raise _refused(self._path, Worded("{unpacked} bytes", unpacked=unpacked), wanted)
        self._check_descriptor(archive, frozenset(names))
        return frozenset(names)

    def _check_descriptor(self, archive: zipfile.ZipFile, names: frozenset[str]) -> None:
        wanted = Worded(
            "its {descriptor} must say format {format}, version {version}",
            descriptor=DESCRIPTOR,
            format=FORMAT,
            version=VERSION,
        )
        if DESCRIPTOR not in names or archive.getinfo(DESCRIPTOR).file_size > BOUNDS.document_bytes:
            raise _refused(self._path, DESCRIPTOR, wanted)
        try:
            said = json.loads(archive.read(DESCRIPTOR))
        except (ValueError, RecursionError):
            said = None
        if not isinstance(said, dict) or (said.get("format"), said.get("formatVersion")) != (FORMAT, VERSION):
            raise _refused(self._path, DESCRIPTOR, wanted)

    def _table(self, archive: zipfile.ZipFile, names: frozenset[str], name: str) -> Iterator[dict[str, str]]:
        file = f"{name}.csv"
        if file not in names:
            return
        with archive.open(file) as stream:
            yield from self._rows_of(stream, file, columns_of(name))

    def _rows_of(self, stream: IO[bytes], file: str, known: tuple[str, ...]) -> Iterator[dict[str, str]]:
        text = io.TextIOWrapper(stream, encoding="utf-8-sig", newline="")
        reader = csv.reader(text, strict=True)

        def place() -> str:
            return Worded("{path}, {file}, line {line_num}", path=self._path, file=file, line_num=reader.line_num)

        try:
            head: list[str] | None = None
            for cells in csv_rows(reader, place):
                if head is None:
                    head = cells
                    if sorted(head) != sorted(known):
                        lacking = ", ".join(sorted(set(known) - set(head)) or sorted(set(head) - set(known)))
                        self.problems.append(
                            InputProblem(
                                place(),
                                "columns",
                                lacking[:200],
                                Worded("name exactly: {known}", known=", ".join(known)),
                            )
                        )
                        return
                    continue
                self._rows += 1
                if self._rows > BOUNDS.exchange_rows:
                    raise _refused(
                        self._path,
                        Worded("more than {most} rows", most=BOUNDS.exchange_rows),
                        Worded("at most {most} rows are read", most=BOUNDS.exchange_rows),
                    )
                if len(self.problems) > BOUNDS.problems:
                    return
                if len(cells) != len(head):
                    self._fault(
                        place(),
                        "row",
                        Worded("{count} cells", count=len(cells)),
                        Worded("{count} cells, one for each column", count=len(head)),
                    )
                    continue
                yield dict(zip(head, cells, strict=True)) | {_PLACE: place()}
        except UnicodeDecodeError as fault:
            raise _refused(
                self._path, Worded("{file}, byte {start}", file=file, start=fault.start), "its tables are UTF-8"
            ) from fault

    def _entry(self, row: dict[str, str], kind: PartKind | None) -> CatalogueEntry | None:
        place = row.pop(_PLACE)
        identity = {
            column: bare(row[column]) if column in TEXTS else row[column] for column in IDENTITY_COLUMNS if row[column]
        }
        ref = PartRef(identity.get("number", ""), identity.get("maker", ""))
        before = len(self.problems)
        figures = self._figures(place, row, kind, ref)
        try:
            prices = tuple(
                EntryPrice(currency=currency, minor=int(minor)) for currency, minor in sorted(self._prices.get(ref, ()))
            )
            files = tuple(self._files.get(ref, ()))
            entry = CatalogueEntry(kind=kind, prices=prices, figures=figures, files=files, **identity)
        except ValidationError as fault:
            self.problems.extend(_told(place, fault))
            return None
        except ValueError:
            self._fault(place, "price_minor", str(self._prices[ref])[:80], "whole numbers of minor units are needed")
            return None
        if entry.ref in self.refs:
            self._fault(place, "number", repr(str(entry.ref)), "each number of a maker may stand once")
        self.refs.add(entry.ref)
        return entry if len(self.problems) == before else None

    def _figures(self, place: str, row: dict[str, str], kind: PartKind | None, ref: PartRef) -> tuple[FigureCell, ...]:
        if kind is None:
            return ()
        figures, wrong = figure_cells(kind, {column: row[column] for column in COLUMNS[kind]})
        self.problems.extend(InputProblem(place, *one) for one in wrong)
        from_where = self._origins.get(ref, {})
        for column, (origin, _source) in from_where.items():
            if origin not in set(Origin) or row.get(column, "") == "":
                wanted = Worded("one of {origin}, for a figure that is there", origin=", ".join(Origin))
                self._fault(
                    Worded("{path}, {origins}.csv", path=self._path, origins=ORIGINS),
                    column[:80],
                    repr(origin[:80]),
                    wanted,
                )
            elif origin == Origin.FAMILY and bare(row["family"]) not in self.families:
                wanted = Worded("a family of {families}.csv that the part belongs to", families=FAMILIES)
                self._fault(
                    Worded("{path}, {origins}.csv", path=self._path, origins=ORIGINS),
                    column[:80],
                    repr(bare(row["family"])[:80]),
                    wanted,
                )
        return tuple(_from_there(cell, from_where.get(cell.column)) for cell in figures)

    def _fault(self, place: str, field: str, value: str, wanted: str) -> None:
        self.problems.append(InputProblem(place, field, value, wanted))


_PLACE: Final = "\0place"  # no column is called so


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
    if where is None or where[0] not in set(Origin):
        return cell
    return cell.model_copy(update={"origin": Origin(where[0]), "source": where[1][:200]})


def _refused(path: Path, value: str, wanted: str) -> InputFault:
    return InputFault((InputProblem(str(path), "file", value, wanted),))
