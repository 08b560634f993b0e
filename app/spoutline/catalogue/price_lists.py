"""Makers' price lists read from a folder to the end, with every fault reported together.

``lists.toml`` names the lists; the rows of each stand in ``<id>.csv`` beside it, one row for each quantity break.
"""

from __future__ import annotations

import csv
import re
from collections.abc import Callable, Iterable, Iterator, Mapping, Sequence
from datetime import date
from decimal import Decimal
from functools import cache
from pathlib import Path
from typing import Annotated, Final, NamedTuple, Self

from pydantic import BaseModel, ConfigDict, Field, StringConstraints, TypeAdapter, ValidationError, model_validator

from spoutline.frozen import frozen
from spoutline.input_bounds.bounds import BOUNDS
from spoutline.input_bounds.reading import bounded_text
from spoutline.input_bounds.toml_text import toml_table
from spoutline.model.faults import InputFault, InputProblem
from spoutline.model.plain_values import PlainValues, hidden_sign
from spoutline.model.pricing import PriceBreak, PriceList, PriceRow
from spoutline.model.worded import Worded

LISTS_FILE = "lists.toml"
COLUMNS = ("number", "group", "from_quantity", "unit_price")

PlaceOf = Callable[[int], str]  # where the row of a number stands, as a person is told

_Word = Annotated[str, StringConstraints(strip_whitespace=True, min_length=1, max_length=120)]


class PriceListHead(PlainValues):
    """What a price list says of itself."""

    model_config = ConfigDict(extra="forbid", frozen=True, defer_build=True)

    id: Annotated[str, StringConstraints(pattern=r"^[A-Za-z0-9][A-Za-z0-9._-]{0,59}$")]
    maker: _Word
    currency: Annotated[str, StringConstraints(pattern=r"^[A-Z]{3}$")]
    valid_from: date
    valid_to: date | None = None
    supplier: Annotated[str, StringConstraints(strip_whitespace=True, max_length=120)] = ""

    @model_validator(mode="after")
    def _begins_before_it_ends(self) -> Self:
        if self.valid_to is not None and self.valid_to < self.valid_from:
            raise ValueError(
                Worded(
                    "valid_to ({valid_to}) must not lie before valid_from ({valid_from})",
                    valid_to=self.valid_to,
                    valid_from=self.valid_from,
                )
            )
        return self


class _Lists(BaseModel):
    model_config = ConfigDict(extra="forbid", frozen=True, defer_build=True)

    price_list: tuple[PriceListHead, ...] = Field(min_length=1)


_Number = Annotated[str, StringConstraints(strip_whitespace=True, min_length=1, max_length=40)]
_Group = Annotated[str, StringConstraints(strip_whitespace=True, max_length=120)]
_Quantity = Annotated[int, Field(ge=1, le=1_000_000)]
_UnitPrice = Annotated[Decimal, Field(gt=0, le=Decimal("1e7"), max_digits=14)]


class _Row(PlainValues):
    model_config = ConfigDict(extra="forbid", frozen=True, defer_build=True, allow_inf_nan=False)

    number: _Number
    group: _Group = ""
    from_quantity: _Quantity
    unit_price: _UnitPrice


class _Checked(NamedTuple):
    """A sound row of a price list, in the order of ``COLUMNS``."""

    number: str
    group: str
    from_quantity: int
    unit_price: Decimal


@cache
def _cells_of_row() -> TypeAdapter[tuple[str, str, int, Decimal]]:
    """Return what reads the cells of a row as ``_Row`` does, without making one: a list may have 100,000 of them."""
    return TypeAdapter(
        tuple[_Number, _Group, _Quantity, _UnitPrice], config=ConfigDict(allow_inf_nan=False, defer_build=False)
    )


def _checked_row(cells: Mapping[str, object]) -> _Checked:
    """Return a sound row; raise ``ValidationError`` with everything that is wrong in it."""
    if len(cells) == len(COLUMNS):
        plain = _plain_row(cells)
        if plain is not None:
            return plain
        try:
            row = _Checked(*_cells_of_row().validate_python([cells[column] for column in COLUMNS]))
        except (KeyError, ValidationError):
            pass
        else:
            if not (hidden_sign(row.number) or hidden_sign(row.group)):
                return row
    read = _Row.model_validate(cells)
    return _Checked(read.number, read.group, read.from_quantity, read.unit_price)


_PLAIN_QUANTITY: Final = re.compile("[1-9][0-9]{0,5}")
_PLAIN_PRICE: Final = re.compile(r"[0-9]{1,7}(?:\.[0-9]{1,7})?")  # no more digits than a price may have


def _plain_row(cells: Mapping[str, object]) -> _Checked | None:
    """Return the row of texts as nearly every list has them; None for what the model is to read."""
    number, group = cells.get("number"), cells.get("group")
    quantity, price = cells.get("from_quantity"), cells.get("unit_price")
    if not (type(number) is type(group) is type(quantity) is type(price) is str):
        return None
    if not (_PLAIN_TEXT.fullmatch(number) and (group == "" or _PLAIN_TEXT.fullmatch(group))):
        return None
    if not (_PLAIN_QUANTITY.fullmatch(quantity) and _PLAIN_PRICE.fullmatch(price)):
        return None
    unit_price = Decimal(price)
    return _Checked(number, group, int(quantity), unit_price) if unit_price else None


_PLAIN_TEXT: Final = re.compile("[!-~](?:[ -~]{0,38}[!-~])?")  # no blank at its ends, nothing hidden, short enough


def price_list_files(folder: Path) -> tuple[Path, ...]:
    """Return the files that the price lists of ``folder`` are read from, whether they are there and sound or not."""
    lists = folder / LISTS_FILE
    return (lists, *(folder / f"{entry.id}.csv" for entry in _entries(lists, [])))


def read_price_lists(folder: Path) -> tuple[PriceList, ...]:
    """Return every price list in ``folder``, sorted by id; raise ``InputFault`` with all problems of all files."""
    problems: list[InputProblem] = []
    entries = _entries(folder / LISTS_FILE, problems)
    found = []
    for entry in entries:
        rows = _rows(folder / f"{entry.id}.csv", problems)
        found.append(
            PriceList(
                id=entry.id,
                maker=entry.maker,
                currency=entry.currency,
                valid_from=entry.valid_from,
                valid_to=entry.valid_to,
                rows=rows,
                supplier=entry.supplier,
            )
        )
    if problems:
        raise InputFault(tuple(problems))
    return tuple(sorted(found, key=lambda one: one.id))


def joined(own: Iterable[PriceList], others: Iterable[PriceList]) -> tuple[PriceList, ...]:
    """Return the lists of an edition and those beside it, by id; one of the same id gives way to the edition's."""
    return tuple(one for _, one in sorted(({one.id: one for one in others} | {one.id: one for one in own}).items()))


def is_price_table(path: Path) -> bool:
    """Say whether a file is a table with just the columns of a price list."""
    try:
        text = bounded_text(path, BOUNDS.price_bytes, "file", "a readable UTF-8 file is needed")
    except InputFault:
        return False
    first = next(csv.reader(text.removeprefix("\ufeff").splitlines()[:1]), [])
    return sorted(cell.strip() for cell in first) == sorted(COLUMNS)


def price_list_from_file(path: Path, said: Mapping[str, object]) -> PriceList:
    """Return the price list whose rows stand in a file and whose head is ``said``; raise ``InputFault``."""
    problems: list[InputProblem] = []
    head = _head(said, problems)
    rows = _rows(path, problems)
    return _made(head, rows, problems)


def price_list_of(
    said: Mapping[str, object],
    rows: Iterable[tuple[int, Mapping[str, object]]],
    place_of: PlaceOf,
) -> PriceList:
    """Return a price list of rows, each with its number and its cells by column; raise ``InputFault`` with every fault.

    ``place_of`` says where the row of a number stands.
    """
    found: list[InputProblem] = []
    head = _head(said, found)

    def checked() -> Iterator[tuple[int, _Checked]]:
        for number, cells in rows:
            try:
                yield number, _checked_row(cells)
            except ValidationError as fault:
                found.extend(_problems(place_of(number), fault))

    return _made(head, _grouped(checked(), place_of, found), found)


def _head(said: Mapping[str, object], problems: list[InputProblem]) -> PriceListHead | None:
    try:
        return PriceListHead.model_validate(said)
    except ValidationError as fault:
        problems.extend(_problems("price list", fault))
        return None


def _made(head: PriceListHead | None, rows: tuple[PriceRow, ...], problems: list[InputProblem]) -> PriceList:
    if not rows and not problems:
        problems.append(InputProblem("price list", "rows", "none", "at least one part with a price"))
    if head is None or problems:
        raise InputFault(tuple(problems))
    return PriceList(**head.model_dump(), rows=rows)


@frozen
class PriceListNames:
    """What price lists know, each sorted."""

    makers: tuple[str, ...] = ()
    groups: tuple[str, ...] = ()
    currencies: tuple[str, ...] = ()
    part_numbers: tuple[str, ...] = ()


def names_in(lists: Sequence[PriceList]) -> PriceListNames:
    """Return the makers, discount groups, currencies and part numbers of price lists."""
    rows = [row for one in lists for row in one.rows]
    return PriceListNames(
        makers=tuple(sorted({one.maker for one in lists})),
        groups=tuple(sorted({row.discount_group for row in rows if row.discount_group})),
        currencies=tuple(sorted({one.currency for one in lists})),
        part_numbers=tuple(sorted({row.part_number for row in rows})),
    )


def _entries(path: Path, problems: list[InputProblem]) -> tuple[PriceListHead, ...]:
    text = _text(path, problems)
    if text is None:
        return ()
    try:
        entries = _Lists.model_validate(toml_table(text, str(path), "price lists")).price_list
    except InputFault as fault:
        problems.extend(fault.problems)
        return ()
    except ValidationError as fault:
        problems.extend(_problems(str(path), fault))
        return ()
    ids = [entry.id for entry in entries]
    for twice in sorted({one for one in ids if ids.count(one) > 1}):
        problems.append(InputProblem(str(path), "id", repr(twice), "every list needs an id of its own"))
    return entries


def _rows(path: Path, problems: list[InputProblem]) -> tuple[PriceRow, ...]:
    text = _text(path, problems)
    if text is None:
        return ()
    return _grouped(_checked(path, text, problems), _lines_of(path), problems)


def _lines_of(path: Path) -> PlaceOf:
    return lambda line: Worded("{path}, line {line_num}", path=path, line_num=line)


def _grouped(
    rows: Iterable[tuple[int, _Checked]], place_of: PlaceOf, problems: list[InputProblem]
) -> tuple[PriceRow, ...]:
    """Return the breaks of each part together, by number; note what stands twice."""
    known: dict[str, tuple[str, dict[int, Decimal]]] = {}
    for place, row in rows:
        group, breaks = known.setdefault(row.number, (row.group, {}))
        if group != row.group:
            problems.append(
                InputProblem(
                    place_of(place), "group", repr(row.group), Worded("the part stands in {group!r} above", group=group)
                )
            )
        if row.from_quantity in breaks:
            wanted = "each quantity of a part may stand once"
            problems.append(InputProblem(place_of(place), "from_quantity", str(row.from_quantity), wanted))
        breaks[row.from_quantity] = row.unit_price
    return tuple(
        PriceRow(
            part_number=number,
            discount_group=group,
            breaks=tuple(PriceBreak(quantity, price) for quantity, price in sorted(breaks.items())),
        )
        for number, (group, breaks) in sorted(known.items())
    )


def _checked(path: Path, text: str, problems: list[InputProblem]) -> Iterator[tuple[int, _Checked]]:
    """Yield every sound row with its line; note what is wrong with the others."""
    reader, place_of = csv.reader(text.removeprefix("\ufeff").splitlines(), strict=True), _lines_of(path)
    try:
        head = [cell.strip() for cell in next(reader, [])]
        if sorted(head) != sorted(COLUMNS):
            shown = ", ".join(head) or "nothing"
            problems.append(
                InputProblem(
                    Worded("{path}, line 1", path=path),
                    "columns",
                    shown,
                    Worded("name exactly: {columns}", columns=", ".join(COLUMNS)),
                )
            )
            return
        for cells in reader:
            if len(problems) > BOUNDS.problems:
                return
            if not any(cell.strip() for cell in cells):
                continue
            if len(cells) != len(head):
                problems.append(
                    InputProblem(
                        place_of(reader.line_num),
                        "row",
                        Worded("{count} cells", count=len(cells)),
                        Worded("{count} cells are needed", count=len(head)),
                    )
                )
                continue
            try:
                yield reader.line_num, _checked_row(dict(zip(head, cells, strict=True)))
            except ValidationError as fault:
                problems.extend(_problems(place_of(reader.line_num), fault))
    except csv.Error as fault:
        problems.append(
            InputProblem(
                place_of(reader.line_num),
                "row",
                "the text",
                Worded("write valid CSV ({reason})", reason=fault),
            )
        )


def _problems(place: str, fault: ValidationError) -> Iterator[InputProblem]:
    for one in fault.errors(include_url=False):
        field = ".".join(str(step) for step in one["loc"]) or "price list"
        yield InputProblem(place, field, repr(one["input"])[:60], _wanted(one["msg"]))


def _wanted(message: str) -> str:
    said = message.removeprefix("Value error, ")
    return said[:1].lower() + said[1:]


def _text(path: Path, problems: list[InputProblem]) -> str | None:
    try:
        return bounded_text(path, BOUNDS.price_bytes, "file", "a readable UTF-8 file is needed")
    except InputFault as fault:
        problems.extend(fault.problems)
        return None
