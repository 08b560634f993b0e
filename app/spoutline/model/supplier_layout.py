"""How a supplier wants order lines: the columns of its file in their order, and how texts and numbers are written."""

from __future__ import annotations

from enum import StrEnum
from typing import Annotated, Self

from pydantic import ConfigDict, Field, StringConstraints, model_validator

from spoutline.model.field_faults import fault_in
from spoutline.model.plain_values import PlainValues
from spoutline.model.quotation_terms import Label
from spoutline.model.worded import Worded

Heading = Annotated[str, StringConstraints(strip_whitespace=True, max_length=80)]
FixedText = Annotated[str, StringConstraints(strip_whitespace=True, max_length=200)]


class OrderContent(StrEnum):
    """What a column holds. The price that the customer pays is none of them: no supplier is to learn it."""

    LINE = "line"
    PART_NUMBER = "part_number"
    MAKER = "maker"
    DESCRIPTION = "description"
    QUANTITY = "quantity"
    PACK = "pack"
    LIST_PRICE = "list_price"
    LIST_CURRENCY = "list_currency"
    UNIT_COST = "unit_cost"
    COST = "cost"
    CURRENCY = "currency"
    LEAD_DAYS = "lead_days"
    MASS = "mass"
    ORDER = "order"  # number of the quotation, under which the supplier's papers are to come back
    REVISION = "revision"
    SITE = "site"
    DATED = "dated"
    FIXED = "fixed"


class OrderUnit(StrEnum):
    """In what a column counts or weighs; ``none`` where it does neither."""

    NONE = "none"
    PIECES = "pieces"
    PACKS = "packs"
    KILOGRAMS = "kilograms"
    POUNDS = "pounds"


class Separator(StrEnum):
    """What stands between two cells of a text file."""

    COMMA = "comma"
    SEMICOLON = "semicolon"
    TAB = "tab"
    BAR = "bar"


class DecimalSign(StrEnum):
    """What parts whole numbers from fractions in a text file."""

    POINT = "point"
    COMMA = "comma"


class TextEncoding(StrEnum):
    """How the signs of a text file are written; the value is the name in the register of character sets (IANA)."""

    UTF_8 = "utf-8"
    UTF_8_MARKED = "utf-8-sig"  # UTF-8 behind a byte order mark
    WINDOWS_1252 = "windows-1252"
    ISO_8859_1 = "iso-8859-1"


class DayForm(StrEnum):
    """How a day is written."""

    YEAR_FIRST = "year_first"  # 2026-11-25, ISO 8601
    MONTH_FIRST = "month_first"  # 11/25/2026
    DAY_FIRST = "day_first"  # 25.11.2026


class OrderFileForm(StrEnum):
    """What kind of file the supplier reads; the value is the ending of its name."""

    TEXT = "csv"
    WORKBOOK = "xlsx"


_UNITS: dict[OrderContent, tuple[OrderUnit, ...]] = {
    OrderContent.QUANTITY: (OrderUnit.PIECES, OrderUnit.PACKS),
    OrderContent.MASS: (OrderUnit.KILOGRAMS, OrderUnit.POUNDS),
}


def units_of(content: OrderContent) -> tuple[OrderUnit, ...]:
    """Return the units that a column of this content may have, the usual one first."""
    return _UNITS.get(content, (OrderUnit.NONE,))


class OrderColumn(PlainValues):
    """A column: its heading, its content, the unit of that, and the text of a fixed one, the same in every row."""

    model_config = ConfigDict(frozen=True, extra="forbid")

    heading: Heading = ""
    content: OrderContent
    unit: OrderUnit = OrderUnit.NONE
    text: FixedText = ""

    @model_validator(mode="after")
    def _unit_and_text_suit(self) -> Self:
        units = units_of(self.content)
        if self.unit is OrderUnit.NONE and units[0] is not OrderUnit.NONE:
            self.__dict__["unit"] = units[0]  # the usual one; the model is not handed out yet
        if self.unit not in units:
            wanted = Worded("a column of {content} has one of: {units}", content=self.content, units=", ".join(units))
            raise fault_in("unit", repr(self.unit.value), wanted)
        if self.text and self.content is not OrderContent.FIXED:
            wanted = Worded("only a column of {fixed} holds a text of its own", fixed=OrderContent.FIXED)
            raise fault_in("text", repr(self.text), wanted)
        return self


class SupplierLayout(PlainValues):
    """What one supplier's order file looks like. ``makers`` are those whose parts are ordered there."""

    model_config = ConfigDict(frozen=True, extra="forbid")

    supplier: Label
    makers: tuple[Label, ...] = Field((), max_length=100)
    columns: tuple[OrderColumn, ...] = Field(min_length=1, max_length=60)
    headings: bool = True
    separator: Separator = Separator.COMMA
    decimal_sign: DecimalSign = DecimalSign.POINT
    encoding: TextEncoding = TextEncoding.UTF_8_MARKED
    day_form: DayForm = DayForm.YEAR_FIRST
    file_form: OrderFileForm = OrderFileForm.TEXT

    @model_validator(mode="after")
    def _signs_are_told_apart(self) -> Self:
        if self.separator is Separator.COMMA and self.decimal_sign is DecimalSign.COMMA:
            wanted = "a decimal comma needs another sign between cells: semicolon, tab or bar"
            raise fault_in("separator", repr(self.separator.value), wanted)
        return self

    @property
    def ordered_makers(self) -> tuple[str, ...]:
        """The makers whose parts are ordered there: the supplier itself where none is named."""
        return self.makers or (self.supplier,)


_USUAL = (
    ("Line", OrderContent.LINE),
    ("Part number", OrderContent.PART_NUMBER),
    ("Description", OrderContent.DESCRIPTION),
    ("Quantity", OrderContent.QUANTITY),
    ("Unit cost", OrderContent.UNIT_COST),
    ("Currency", OrderContent.CURRENCY),
    ("Our order", OrderContent.ORDER),
)


def usual_layout(maker: str) -> SupplierLayout:
    """Return the layout for a maker for whom the firm keeps none."""
    columns = tuple(OrderColumn(heading=heading, content=content) for heading, content in _USUAL)
    return SupplierLayout(supplier=maker, columns=columns)


def folded_supplier_name(name: str) -> str:
    """Return a name as it is told apart from others: capitals and runs of blanks do not count."""
    return " ".join(name.split()).casefold()
