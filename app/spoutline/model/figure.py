"""What is declared of one figure of a part: dimension, bounds, table column, label, place beside other figures."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass
from decimal import Decimal
from enum import Enum, StrEnum

from annotated_types import Ge, Gt, Le, MinLen
from pydantic import GetJsonSchemaHandler
from pydantic.json_schema import JsonSchemaValue
from pydantic_core import CoreSchema

from spoutline.frozen import frozen
from spoutline.model.quantity import Dimension

_LITRES_PER_MINUTE = 1 / 60_000  # m3/s
_SECONDS_PER_DAY = 86_400
# how descriptions name the unit in which the core keeps a number
_SI_UNIT: dict[Dimension, str] = {
    Dimension.DIAMETER: "m",
    Dimension.LENGTH: "m",
    Dimension.MASS: "kg",
    Dimension.MASS_PER_LENGTH: "kg/m",
    Dimension.FORCE: "N",
    Dimension.TORQUE: "N.m",
    Dimension.PRESSURE: "Pa",
    Dimension.FLOW: "m3/s",
    Dimension.TEMPERATURE: "degrees Celsius",
    Dimension.RESISTANCE: "ohm",
    Dimension.RESISTANCE_PER_LENGTH: "ohm/m",
    Dimension.PERMEATION: "kg/(m2.s)",
    Dimension.FLOW_COEFFICIENT: "m3/h of water at 1 bar",
}


class TableUnit(Enum):
    """The unit in which a source table writes a figure; its bounds are declared in it too."""

    SI = ""  # as in the core
    MILLIMETRE = "mm"
    KILOPASCAL = "kPa"
    LITRE_PER_MINUTE = "L/min"
    GRAM_PER_SQUARE_METRE_DAY = "g/(m2.day)"

    def to_si(self, value: float) -> float:
        """Return a value written in this unit in the SI unit of the core; a greater value stays the greater one."""
        match self:
            case TableUnit.MILLIMETRE:
                return value / 1000
            case TableUnit.KILOPASCAL:
                return value * 1000
            case TableUnit.LITRE_PER_MINUTE:
                return value * _LITRES_PER_MINUTE
            case TableUnit.GRAM_PER_SQUARE_METRE_DAY:
                return value / 1000 / _SECONDS_PER_DAY
        return value


@frozen
class Bounds:
    """The range of a number; ``above`` and ``least`` are its lower end, itself left out or taken in."""

    above: float | None = None
    least: float | None = None
    most: float | None = None

    def admit(self, value: float) -> bool:
        """Say whether ``value`` lies in the range."""
        return (
            (self.above is None or value > self.above)
            and (self.least is None or value >= self.least)
            and (self.most is None or value <= self.most)
        )

    @property
    def constraints(self) -> tuple[Gt | Ge | Le, ...]:
        """The range as pydantic and the JSON Schema take it."""
        found: list[Gt | Ge | Le] = []
        if self.above is not None:
            found.append(Gt(self.above))
        if self.least is not None:
            found.append(Ge(self.least))
        if self.most is not None:
            found.append(Le(self.most))
        return tuple(found)

    @property
    def words(self) -> str:
        """The range as a person reads it, bare numbers."""
        ends = (("above", self.above), ("at least", self.least), ("at most", self.most))
        return " and ".join(f"{word} {plain_number(bound)}" for word, bound in ends if bound is not None)


def plain_number(value: float) -> str:
    """Return a number to six digits without an exponent."""
    return format(Decimal(f"{value:.6g}"), "f")


@frozen
class Described:
    """Puts a description into the JSON Schema of what it annotates."""

    text: str

    def __get_pydantic_json_schema__(self, schema: CoreSchema, handler: GetJsonSchemaHandler) -> JsonSchemaValue:
        """Add the description, the first letter capital."""
        made = handler(schema)
        made.setdefault("description", f"{self.text[:1].upper()}{self.text[1:]}.")
        return made


@dataclass(frozen=True, kw_only=True)
class Figure:
    """One figure of a part, declared as the annotation of its field.

    Name and type are those of the field; a type that admits None is a figure that a maker may leave out.
    """

    holds: str  # what it is, in trade words and without unit: descriptions of columns and of the JSON Schema
    note: str = ""  # what else the description says, after the unit
    kinds: tuple[StrEnum, ...] = ()  # kinds that have it; none named: every kind that has the block
    column: str = ""  # of the source tables; empty: no table writes it
    unit: TableUnit = TableUnit.SI
    dimension: Dimension | None = None  # of a number
    asked_as: Dimension | None = None  # where the window asks for it in other units than it shows
    above: float | None = None  # bounds in ``unit``
    least: float | None = None
    most: float | None = None
    up_to: str = ""  # figure of the same block that it must not exceed
    below: str = ""  # figure of the same block that it must stay below
    at_least_one: bool = False  # of a list of words
    stated: bool = False  # every part of these kinds states it, although the type admits None
    label: str = ""  # key of its label among the phrases; empty: the name of the field
    range_label: str = ""  # key under which it is shown together with the figure in ``up_to``
    leads: bool = False  # shown before what the kind adds
    shown: bool = True
    where_stated: bool = False  # shown only where it is stated
    coaxial_only: bool = False  # of a hose with two tubes
    at_c: float | None = None  # temperature at which it is measured, degrees Celsius
    follows: str = ""  # path of the figure that it repeats: it is neither shown nor asked for
    tells: int = 0  # rank among the figures by which people tell parts of a kind apart; 0: only where no other does
    bare: bool = False  # there its value alone says what it is, without its label

    __is_annotated_types_grouped_metadata__ = True

    @property
    def bounds(self) -> Bounds:
        """The bounds in the table's unit."""
        return Bounds(self.above, self.least, self.most)

    @property
    def bounds_si(self) -> Bounds:
        """The bounds in the SI unit of the core."""
        return Bounds(
            *(None if bound is None else self.unit.to_si(bound) for bound in (self.above, self.least, self.most))
        )

    def __iter__(self) -> Iterator[object]:
        """Yield what validation and JSON Schema take from the declaration."""
        yield from self.bounds_si.constraints
        if self.at_least_one:
            yield MinLen(1)
        yield Described(self.meaning)

    @property
    def meaning(self) -> str:
        """What it is, with the SI unit of the core."""
        return self._described(_SI_UNIT.get(self.dimension, "") if self.dimension else "")

    @property
    def column_meaning(self) -> str:
        """What it is, with the unit of the source tables."""
        unit = self.unit.value or (_SI_UNIT.get(self.dimension, "") if self.dimension else "")
        return self._described(unit)

    def _described(self, unit: str) -> str:
        said = f"{self.holds}, {unit}" if unit else self.holds
        return f"{said}; {self.note}" if self.note else said
