"""The exchange file: a whole catalogue as a Data Package, one ZIP of CSV tables and the ``datapackage.json`` on them.

Equal catalogues give equal bytes, whichever edition of whichever book they are: the file holds entries and nothing of
when and by whom they were published. A text that a spreadsheet would take for a formula stands behind an apostrophe,
and so does one that begins with such an apostrophe already; reading takes one away.
"""

from __future__ import annotations

import csv
import io
import json
import re
import zipfile
import zlib
from collections import Counter
from collections.abc import Callable, Iterable, Iterator
from contextlib import contextmanager
from pathlib import Path
from typing import IO, Any, BinaryIO, Final, cast

from pydantic import ValidationError

from spoutline.catalogue.cross_references import COLUMNS as REFERENCE_COLUMNS
from spoutline.catalogue.descriptions import COLUMNS, figure_cells
from spoutline.catalogue.entry_text import digest_of, entry_text
from spoutline.catalogue.part_files import check_handed_on
from spoutline.catalogue.price_lists import COLUMNS as PRICE_COLUMNS
from spoutline.catalogue.price_lists import price_list_of
from spoutline.catalogue.shelf import fingerprint_of_states
from spoutline.catalogue.table_schema import IDENTITY_COLUMNS, TABLE_SCHEMA, UNKNOWN_KIND, csv_resource, table_schema
from spoutline.input_bounds import BOUNDS, bounded_stream, csv_rows
from spoutline.model.catalogue_entry import CatalogueEntry, Cell, EntryPrice, FigureCell, Origin
from spoutline.model.cross_reference import CrossReference, NumberRelation
from spoutline.model.faults import InputFault, InputProblem
from spoutline.model.field_faults import FAULT_BESIDE_OTHERS
from spoutline.model.part import PartKind
from spoutline.model.part_family import PartFamily
from spoutline.model.part_file import FileMatter, MediaType, PartFile
from spoutline.model.part_ref import PartRef
from spoutline.model.pricing import PriceList
from spoutline.model.worded import Worded

DESCRIPTOR: Final = "datapackage.json"
FORMAT: Final = "spoutline-catalogue"
PACKAGE_SCHEMA: Final = "https://datapackage.org/profiles/2.0/datapackage.json"
_VERSION: Final = 1
_PRICES: Final = "prices"
_ORIGINS: Final = "origins"
_REFERENCES: Final = "cross_references"
_LISTS: Final = "price_lists"
_LIST_COLUMNS: Final = ("id", "maker", "supplier", "currency", "valid_from", "valid_to")
_LIST_PRICES: Final = "list_prices"
_LIST_PRICE_COLUMNS: Final = ("list", *PRICE_COLUMNS)
_FILES: Final = "files"
_FILE_COLUMNS: Final = ("number", "maker", "title", "matter", "media", "digest", "size")
_FILE_FOLDER: Final = "files/"
_FILE_MEMBER: Final = re.compile(r"files/[0-9a-f]{64}\.(?:png|jpg|pdf)")
_FAMILIES: Final = "families"
_FAMILY_COLUMNS: Final = ("name", "kind")
_FAMILY_FIGURES: Final = "family_figures"
_FAMILY_FIGURE_COLUMNS: Final = ("family", "column", "value")
_PRICE_COLUMNS: Final = ("number", "maker", "currency", "price_minor")
_ORIGIN_COLUMNS: Final = ("number", "maker", "column", "origin", "source")
_BESIDE: Final = {
    _PRICES: _PRICE_COLUMNS,
    _ORIGINS: _ORIGIN_COLUMNS,
    _REFERENCES: REFERENCE_COLUMNS,
    _LISTS: _LIST_COLUMNS,
    _LIST_PRICES: _LIST_PRICE_COLUMNS,
    _FAMILIES: _FAMILY_COLUMNS,
    _FAMILY_FIGURES: _FAMILY_FIGURE_COLUMNS,
    _FILES: _FILE_COLUMNS,
}
_TABLES: Final[dict[str, PartKind | None]] = {**{kind.value: kind for kind in PartKind}, UNKNOWN_KIND: None}
_MEMBERS: Final = frozenset({DESCRIPTOR, *(f"{name}.csv" for name in (*_TABLES, *_BESIDE))})
_LONG_AGO: Final = (1980, 1, 1, 0, 0, 0)  # the first day that a ZIP can name: no clock enters
_FORMULA: Final = re.compile(r"'*[=+\-@\t\r＝＋－＠]")
_TEXTS: Final = frozenset(IDENTITY_COLUMNS) - {"lead_days", "pack", "discontinued_from"}

_Tables = dict[str, tuple[tuple[str, ...], list[list[str]]]]


def exchange_bytes(
    entries: Iterable[CatalogueEntry],
    references: Iterable[CrossReference] = (),
    lists: Iterable[PriceList] = (),
    families: Iterable[PartFamily] = (),
    content_of: Callable[[str], bytes | None] = lambda _: None,
) -> bytes:
    """Return the exchange file of entries, cross-references, price lists and families; the same bytes in any order.

    ``content_of`` returns the content of a picture or document of a part by its digest.
    """
    ordered = sorted(entries, key=lambda entry: entry.ref)
    leading = sorted(references, key=lambda one: one.ref)
    tables = _tables(ordered)
    if leading:
        rows = [[_shielded(str(getattr(one, column))) for column in REFERENCE_COLUMNS] for one in leading]
        tables[_REFERENCES] = (REFERENCE_COLUMNS, rows)
    priced = sorted(lists, key=lambda one: one.id)
    if priced:
        tables |= _list_tables(priced)
    common = sorted(families, key=lambda one: one.name)
    if common:
        tables |= _family_tables(common)
    states = ((entry.number, entry.maker, digest_of(entry_text(entry))) for entry in ordered)
    descriptor = _descriptor(tables, fingerprint_of_states(states, leading, priced, common))
    target = io.BytesIO()
    with zipfile.ZipFile(target, "w", zipfile.ZIP_DEFLATED, compresslevel=6) as archive:
        _add(archive, DESCRIPTOR, json.dumps(descriptor, indent=2, ensure_ascii=False) + "\n")
        for name, (columns, rows) in tables.items():
            text = io.StringIO(newline="")
            writer = csv.writer(text, lineterminator="\n")
            writer.writerow(columns)
            writer.writerows(rows)
            _add(archive, f"{name}.csv", text.getvalue())
        for file in {one.digest: one for entry in ordered for one in entry.files}.values():
            content = content_of(file.digest)
            if content is not None:
                _add_bytes(archive, _member(file), content, zipfile.ZIP_STORED)  # packed already
    return target.getvalue()


def _list_tables(lists: Iterable[PriceList]) -> _Tables:
    heads = [[_shielded(_plain(getattr(one, column))) for column in _LIST_COLUMNS] for one in lists]
    prices = [
        [
            _shielded(text)
            for text in (one.id, row.part_number, row.discount_group, str(step.from_quantity), str(step.unit_price))
        ]
        for one in lists
        for row in sorted(one.rows, key=lambda row: row.part_number)
        for step in row.breaks
    ]
    return {_LISTS: (_LIST_COLUMNS, heads), _LIST_PRICES: (_LIST_PRICE_COLUMNS, prices)}


def _family_tables(families: Iterable[PartFamily]) -> _Tables:
    heads = [[_shielded(one.name), one.kind.value] for one in families]
    figures = [[_shielded(one.name), cell.column, _text(cell.value)] for one in families for cell in one.figures]
    return {_FAMILIES: (_FAMILY_COLUMNS, heads), _FAMILY_FIGURES: (_FAMILY_FIGURE_COLUMNS, figures)}


def _plain(value: object) -> str:
    return "" if value is None else str(value)


def _member(file: PartFile) -> str:
    return f"{_FILE_FOLDER}{file.digest}{file.media.ending}"


def _add(archive: zipfile.ZipFile, name: str, text: str) -> None:
    _add_bytes(archive, name, text.encode(), zipfile.ZIP_DEFLATED)


def _add_bytes(archive: zipfile.ZipFile, name: str, content: bytes, compression: int) -> None:
    member = zipfile.ZipInfo(name, _LONG_AGO)
    member.compress_type = compression
    member.external_attr = 0o644 << 16
    archive.writestr(member, content)


def _tables(entries: Iterable[CatalogueEntry]) -> _Tables:
    tables: _Tables = {name: (_columns(name), []) for name in (*_TABLES, _PRICES, _ORIGINS, _FILES)}
    for entry in entries:
        named = [_shielded(entry.number), _shielded(entry.maker)]
        columns, rows = tables[entry.kind.value if entry.kind else UNKNOWN_KIND]
        rows.append([_identity(entry, column) for column in IDENTITY_COLUMNS])
        given = {cell.column: cell.value for cell in entry.figures}
        rows[-1] += [_text(given.get(column)) for column in columns[len(IDENTITY_COLUMNS) :]]
        tables[_PRICES][1].extend([*named, price.currency, str(price.minor)] for price in entry.prices)
        tables[_ORIGINS][1].extend(
            [*named, cell.column, cell.origin.value, _shielded(cell.source)]
            for cell in entry.figures
            if cell.origin is not Origin.STATED or cell.source
        )
        tables[_FILES][1].extend(
            [*named, _shielded(one.title), one.matter, one.media, one.digest, str(one.size)] for one in entry.files
        )
    return {name: table for name, table in tables.items() if table[1]}


def _columns(table: str) -> tuple[str, ...]:
    if table in _BESIDE:
        return _BESIDE[table]
    kind = _TABLES[table]
    return (*IDENTITY_COLUMNS, *(() if kind is None else COLUMNS[kind]))


def _identity(entry: CatalogueEntry, column: str) -> str:
    value = getattr(entry, column)
    if value is None:
        return ""
    return _shielded(str(value)) if column in _TEXTS else str(value)


def _text(value: Cell | None) -> str:
    if value is None or isinstance(value, str):
        return value or ""
    if isinstance(value, bool):
        return "yes" if value else "no"
    if isinstance(value, tuple):
        return " ".join(value)
    return str(int(value)) if float(value).is_integer() and abs(value) < 1e15 else repr(value)


def _shielded(text: str) -> str:
    return f"'{text}" if _FORMULA.match(text) else text


def _bare(text: str) -> str:
    return text[1:] if text.startswith("'") and _FORMULA.match(text) else text


def _descriptor(tables: _Tables, fingerprint: str) -> dict[str, Any]:
    return {
        "$schema": PACKAGE_SCHEMA,
        "name": FORMAT,
        "format": FORMAT,
        "formatVersion": _VERSION,
        "fingerprint": fingerprint,
        "description": (
            "A catalog of hanging hardware for motor-fuel dispensers: one table for each kind of part, prices in minor "
            "units (cents) of their currency, where figures came from unless somebody stated them, old numbers with "
            "the parts that they lead to, and families whose figures their parts have unless they have their own. A "
            "text that a spreadsheet would take for a formula stands behind an apostrophe, which is not part of it."
        ),
        "resources": [_resource(name) for name in tables],
    }


def _resource(name: str) -> dict[str, Any]:
    return csv_resource(name, table_schema(_TABLES[name]) if name in _TABLES else _schema_beside(name))


def _schema_beside(name: str) -> dict[str, Any]:
    columns = _columns(name)
    fields: list[dict[str, Any]] = [
        {"name": column, "type": "integer" if column in ("price_minor", "size") else "string"} for column in columns
    ]
    key = _KEYS.get(name) or ["maker", "number", columns[2]]
    if name == _FILES:
        for column, choices in (("matter", FileMatter), ("media", MediaType)):
            fields[columns.index(column)]["constraints"] = {"enum": [one.value for one in choices]}
    if name == _REFERENCES:
        fields[columns.index("relation")]["constraints"] = {"enum": [one.value for one in NumberRelation]}
    return {"$schema": TABLE_SCHEMA, "fields": fields, "primaryKey": key, "missingValues": [""]}


_KEYS: Final = {
    _REFERENCES: ["maker", "number"],
    _LISTS: ["id"],
    _LIST_PRICES: ["list", "number", "from_quantity"],
    _FAMILIES: ["name"],
    _FAMILY_FIGURES: ["family", "column"],
}


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
            for row in self._table(archive, names, _PRICES):
                ref = PartRef(_bare(row["number"]), _bare(row["maker"]))
                self._prices.setdefault(ref, []).append((row["currency"], row["price_minor"]))
            for row in self._table(archive, names, _ORIGINS):
                ref = PartRef(_bare(row["number"]), _bare(row["maker"]))
                self._origins.setdefault(ref, {})[row["column"]] = (row["origin"], _bare(row["source"]))
            for row in self._table(archive, names, _FILES):
                self._read_file(row)
            for name, kind in _TABLES.items():
                for row in self._table(archive, names, name):
                    entry = self._entry(row, kind)
                    if entry is not None:
                        yield entry
            for row in self._table(archive, names, _REFERENCES):
                self._reference(row)
            self._read_lists(archive, names)
        for ref in sorted({*self._prices, *self._origins, *self._files} - self.refs):
            self._fault(
                Worded("{prices}.csv, {origins}.csv or {files}.csv", prices=_PRICES, origins=_ORIGINS, files=_FILES),
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
        member = _member(file)
        if member not in archive.namelist():
            raise _refused(
                self._path,
                member,
                Worded("the content of {title!r}, which {files}.csv names", title=file.title, files=_FILES),
            )
        with archive.open(member) as stream:
            content = bounded_stream(
                cast(BinaryIO, stream), BOUNDS.part_file_bytes, f"{self._path}, {member}", "file", "a file of a part"
            )
        check_handed_on(file, content, f"{self._path}, {member}")
        return content

    def _read_file(self, row: dict[str, str]) -> None:
        place = row.pop(_PLACE)
        ref = PartRef(_bare(row.pop("number")), _bare(row.pop("maker")))
        try:
            file = PartFile.model_validate({**row, "title": _bare(row["title"])})
        except ValidationError as fault:
            self.problems.extend(_told(place, fault))
            return
        self._files.setdefault(ref, []).append(file)

    def _read_families(self, archive: zipfile.ZipFile, names: frozenset[str]) -> None:
        figures: dict[str, dict[str, tuple[str, str]]] = {}
        for row in self._table(archive, names, _FAMILY_FIGURES):
            figures.setdefault(_bare(row["family"]), {})[row["column"]] = (row[_PLACE], row["value"])
        for row in self._table(archive, names, _FAMILIES):
            place, name, said = row[_PLACE], _bare(row["name"]), row["kind"]
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
            place = Worded("{path}, {family_figures}.csv", path=self._path, family_figures=_FAMILY_FIGURES)
            self._fault(
                place, "family", repr(name[:80]), Worded("the name of a family in {families}.csv", families=_FAMILIES)
            )

    def _read_lists(self, archive: zipfile.ZipFile, names: frozenset[str]) -> None:
        prices: dict[str, list[tuple[str, dict[str, str]]]] = {}
        for row in self._table(archive, names, _LIST_PRICES):
            place = row.pop(_PLACE)
            bare = {column: _bare(text) for column, text in row.items()}
            prices.setdefault(bare.pop("list"), []).append((place, bare))
        for row in self._table(archive, names, _LISTS):
            place = row.pop(_PLACE)
            said = {column: _bare(text) or None for column, text in row.items()}
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
                Worded("{path}, {list_prices}.csv", path=self._path, list_prices=_LIST_PRICES),
                "list",
                repr(name[:80]),
                Worded("the id of a list in {lists}.csv", lists=_LISTS),
            )

    def _reference(self, row: dict[str, str]) -> None:
        place = row.pop(_PLACE)
        try:
            one = CrossReference.model_validate({column: _bare(text) for column, text in row.items()})
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
            (name for name in names if counts[name] > 1 or not (name in _MEMBERS or _FILE_MEMBER.fullmatch(name))), None
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
            version=_VERSION,
        )
        if DESCRIPTOR not in names or archive.getinfo(DESCRIPTOR).file_size > BOUNDS.document_bytes:
            raise _refused(self._path, DESCRIPTOR, wanted)
        try:
            said = json.loads(archive.read(DESCRIPTOR))
        except (ValueError, RecursionError):
            said = None
        if not isinstance(said, dict) or (said.get("format"), said.get("formatVersion")) != (FORMAT, _VERSION):
            raise _refused(self._path, DESCRIPTOR, wanted)

    def _table(self, archive: zipfile.ZipFile, names: frozenset[str], name: str) -> Iterator[dict[str, str]]:
        file = f"{name}.csv"
        if file not in names:
            return
        with archive.open(file) as stream:
            yield from self._rows_of(stream, file, _columns(name))

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
            column: _bare(row[column]) if column in _TEXTS else row[column]
            for column in IDENTITY_COLUMNS
            if row[column]
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
                    Worded("{path}, {origins}.csv", path=self._path, origins=_ORIGINS),
                    column[:80],
                    repr(origin[:80]),
                    wanted,
                )
            elif origin == Origin.FAMILY and _bare(row["family"]) not in self.families:
                wanted = Worded("a family of {families}.csv that the part belongs to", families=_FAMILIES)
                self._fault(
                    Worded("{path}, {origins}.csv", path=self._path, origins=_ORIGINS),
                    column[:80],
                    repr(_bare(row["family"])[:80]),
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
