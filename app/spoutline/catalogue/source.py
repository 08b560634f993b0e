"""The catalogue's source tables read to the end, with every fault reported together."""

from __future__ import annotations

import csv
import difflib
from collections.abc import Iterable, Iterator
from dataclasses import dataclass, field, replace
from pathlib import Path
from typing import Any, TypeVar, get_origin

from pydantic import BaseModel, ConfigDict, Field, ValidationError
from pydantic_core import ErrorDetails

from spoutline.catalogue.rows import CROSS_FAULT, TABLES, PartRow
from spoutline.catalogue.source_files import EDITION_FILE, MAKERS_FILE, REFERENCES_FILE, bytes_of, fingerprint_of
from spoutline.frozen import frozen
from spoutline.input_bounds.toml_text import toml_table
from spoutline.model.cross_reference import CrossReference
from spoutline.model.faults import InputFault, InputProblem
from spoutline.model.part import Part
from spoutline.model.part_ref import PartRef
from spoutline.model.plain_values import PlainValues

_Model = TypeVar("_Model", bound=BaseModel)


@frozen(kw_only=True)
class Maker:
    """A maker and the prefix of its part numbers."""

    prefix: str
    name: str


@frozen(kw_only=True)
class SourceCatalogue:
    """A whole catalogue, sound and in SI units, with the fingerprint of the text that it was read from."""

    edition: str
    notes: str
    fingerprint: str
    makers: tuple[Maker, ...]
    parts: tuple[Part, ...]
    references: tuple[CrossReference, ...] = ()


class _MakerEntry(PlainValues):
    model_config = ConfigDict(extra="forbid", frozen=True, defer_build=True)

    prefix: str = Field(pattern=r"^[A-Z]{2}$", description="two capital letters, the start of its part numbers")
    name: str = Field(min_length=1, max_length=120, description="name of the maker")
    about: str = Field("", max_length=300, description="what it makes")


class _MakersFile(BaseModel):
    model_config = ConfigDict(extra="forbid", frozen=True, defer_build=True)

    maker: tuple[_MakerEntry, ...] = Field(min_length=1, description="one [[maker]] table for each maker")


class _EditionFile(PlainValues):
    model_config = ConfigDict(extra="forbid", frozen=True, defer_build=True)

    edition: str = Field(min_length=1, max_length=100, description="name of this edition of the catalog")
    notes: str = Field("", max_length=2000, description="what changed")


@dataclass(slots=True)
class _Reading:
    """What has been read so far, and what was wrong with it."""

    problems: list[InputProblem] = field(default_factory=list)
    rows: list[tuple[str, PartRow]] = field(default_factory=list)  # place, row
    unsound: set[str] = field(default_factory=set)  # numbers of bad rows: whoever names one is not to blame

    def fault(self, place: str, column: str, value: str, wanted: str) -> None:
        self.problems.append(InputProblem(place, column, value, wanted))


def read_source(source: Path) -> SourceCatalogue:
    """Read and check every source table in the folder ``source``.

    Raise ``InputFault`` with all problems of all files: place (file and line), column, value, what would be right.
    """
    reading = _Reading()
    edition = _toml(source / EDITION_FILE, _EditionFile, reading)
    makers_file = _toml(source / MAKERS_FILE, _MakersFile, reading)
    for name, row_type in TABLES.items():
        _read_table(source / name, row_type, reading)
    references = _references(source / REFERENCES_FILE, reading)
    makers = makers_file.maker if makers_file else ()
    _check_makers(makers, reading)
    _check_numbers(reading)
    if makers:
        _check_prefixes({maker.prefix for maker in makers}, reading)
    if reading.problems or edition is None:
        raise InputFault(tuple(reading.problems))
    names = {maker.prefix: maker.name for maker in makers}
    parts = (_part(row, names) for _place, row in reading.rows)
    return SourceCatalogue(
        edition=edition.edition,
        notes=edition.notes,
        fingerprint=fingerprint_of(source),
        makers=tuple(Maker(prefix=maker.prefix, name=maker.name) for maker in makers),
        parts=tuple(sorted(parts, key=lambda part: part.ref)),
        references=references,
    )


def _references(path: Path, reading: _Reading) -> tuple[CrossReference, ...]:
    """Return the old numbers of the folder; none where it has no table of them."""
    text = _text_of(path, reading) if path.exists() else None
    if text is None:
        return ()
    found: dict[PartRef, CrossReference] = {}
    reader = csv.DictReader(text.splitlines(), strict=True)
    for row in reader:
        place = f"{path.name}:{reader.line_num}"
        try:
            one = CrossReference.model_validate({name: value for name, value in row.items() if value})
        except ValidationError as fault:
            reading.fault(place, "row", str(list(row.values())), f"an old number ({fault.errors()[0]['msg']})")
            continue
        if one.ref in found:
            reading.fault(place, "number", repr(str(one.ref)), "each old number of a maker once")
        found[one.ref] = one
    return tuple(sorted(found.values(), key=lambda one: one.ref))


def _part(row: PartRow, names: dict[str, str]) -> Part:
    """Return the part of a row; ``names`` are the makers by prefix."""
    part = row.to_part(names[row.source_ref.maker])
    successor = row.successor
    if successor is None or successor.maker == row.source_ref.maker:
        return part
    return replace(part, superseded_by_maker=names[successor.maker])


def _read_table(path: Path, row_type: type[PartRow], reading: _Reading) -> None:
    text = _text_of(path, reading)
    if text is None:
        return
    # A comment line becomes an empty one, so that the reader's line numbers stay those of the file.
    lines = ("\n" if line.startswith("#") else line for line in text.splitlines(keepends=True))
    reader = csv.reader(lines, strict=True)
    try:
        header = next((row for row in reader if row), None)
        if header is None:
            reading.fault(path.name, "header", "nothing", f"the first row names the columns: {_columns(row_type)}")
        elif _header_is_right(path.name, reader.line_num, header, row_type, reading):
            for cells in reader:
                if cells:
                    _read_row(f"{path.name}:{reader.line_num}", header, cells, row_type, reading)
    except csv.Error as fault:
        reading.fault(
            f"{path.name}:{reader.line_num}", "row", str(fault), "write comma-separated cells, quotes in pairs"
        )


def _header_is_right(name: str, line: int, header: list[str], row_type: type[PartRow], reading: _Reading) -> bool:
    place = f"{name}:{line}"
    known = row_type.model_fields
    before = len(reading.problems)
    for column in header:
        if column not in known:
            near = difflib.get_close_matches(column, known, n=1)
            hint = f"the nearest known column is {near[0]}" if near else f"known columns are {_columns(row_type)}"
            reading.fault(place, "header", repr(column), hint)
        elif header.count(column) > 1:
            reading.fault(place, "header", repr(column), "name each column once")
    for column, info in known.items():
        if info.is_required() and column not in header:
            reading.fault(place, "header", "missing", f"a column {column}: {info.description}")
    return len(reading.problems) == before


def _read_row(place: str, header: list[str], cells: list[str], row_type: type[PartRow], reading: _Reading) -> None:
    if len(cells) != len(header):
        reading.fault(place, "row", f"{len(cells)} cells", f"{len(header)} cells, one for each column")
        return
    filled = {column: cell.strip() for column, cell in zip(header, cells, strict=True) if cell.strip()}
    try:
        reading.rows.append((place, row_type.model_validate(filled)))
    except ValidationError as fault:
        reading.unsound.add(filled.get("number", ""))
        for error in fault.errors(include_url=False):
            reading.problems.extend(_problems(place, row_type, filled, error))


def _problems(
    place: str, row_type: type[BaseModel], filled: dict[str, Any], error: ErrorDetails
) -> Iterator[InputProblem]:
    """Turn one pydantic error into problems that name column, value and what would be right."""
    if error["type"] == CROSS_FAULT:
        for column, wanted in error["ctx"]["faults"]:
            yield InputProblem(place, column, _shown(filled.get(column)), wanted)
        return
    location = [str(step) for step in error["loc"]]
    column = location[0] if location else "row"
    info = row_type.model_fields.get(column)
    description = f"{info.description}: " if info and info.description else ""
    said = error["msg"].removeprefix("Value error, ").replace("Input should", "it should")
    if error["type"] == "missing":
        said = "name at least one word" if info and get_origin(info.annotation) is tuple else "a value is needed"
    if error["type"] == "extra_forbidden":
        said = f"known names are {_columns(row_type)}"
    yield InputProblem(place, ".".join(location) or "row", _shown(filled.get(column)), f"{description}{said}")


def _shown(value: object) -> str:
    return "an empty cell" if value is None else repr(value)


def _columns(row_type: type[BaseModel]) -> str:
    return ", ".join(row_type.model_fields)


def _check_makers(makers: Iterable[_MakerEntry], reading: _Reading) -> None:
    prefixes: set[str] = set()
    names: set[str] = set()
    for maker in makers:
        if maker.prefix in prefixes:
            reading.fault(MAKERS_FILE, "prefix", repr(maker.prefix), "a prefix of its own for each maker")
        if maker.name in names:
            reading.fault(MAKERS_FILE, "name", repr(maker.name), "a name of its own for each maker")
        prefixes.add(maker.prefix)
        names.add(maker.name)


def _check_numbers(reading: _Reading) -> None:
    """Every number of a maker stands for one part, and a successor is a part of the same kind."""
    places: dict[PartRef, str] = {}
    rows: dict[PartRef, PartRow] = {}
    for place, row in reading.rows:
        ref = row.source_ref
        if ref in places:
            reading.fault(place, "number", repr(row.number), f"a number of its own; {places[ref]} has this one")
        places.setdefault(ref, place)
        rows.setdefault(ref, row)
    for place, row in reading.rows:
        if row.successor is None or row.superseded_by in reading.unsound:
            continue
        successor = rows.get(row.successor)
        if successor is None:
            near = difflib.get_close_matches(row.successor.number, [ref.number for ref in rows], n=1)
            hint = f"; the nearest is {near[0]}" if near else ""
            reading.fault(place, "superseded_by", repr(row.superseded_by), f"the number of a part in the catalog{hint}")
        elif successor.part_kind is not row.part_kind:
            wanted = f"a part of the same kind ({row.part_kind}); this is a {successor.part_kind}"
            reading.fault(place, "superseded_by", repr(row.superseded_by), wanted)


def _check_prefixes(prefixes: set[str], reading: _Reading) -> None:
    for place, row in reading.rows:
        known = ", ".join(sorted(prefixes))
        if row.maker is None and row.number[:2] not in prefixes:
            reading.fault(place, "number", repr(row.number), f"a number that starts with a maker's prefix: {known}")
        for column, prefix in (("maker", row.maker), ("superseded_by_maker", row.superseded_by_maker)):
            if prefix is not None and prefix not in prefixes:
                reading.fault(place, column, repr(prefix), f"a maker's prefix: {known}")


def _toml(path: Path, model: type[_Model], reading: _Reading) -> _Model | None:
    text = _text_of(path, reading)
    if text is None:
        return None
    try:
        content = toml_table(text, path.name, "file")
        return model.model_validate(content)
    except InputFault as fault:
        reading.problems.extend(fault.problems)
    except ValidationError as fault:
        for error in fault.errors(include_url=False):
            reading.problems.extend(_problems(path.name, model, content, error))
    return None


def _text_of(path: Path, reading: _Reading) -> str | None:
    try:
        return bytes_of(path).decode("utf-8")
    except UnicodeDecodeError as fault:
        reading.fault(path.name, "file", f"byte {fault.start}", "save the file as UTF-8")
    except InputFault as fault:
        reading.problems.extend(fault.problems)
    return None
