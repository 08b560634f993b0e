"""What a row of each source table must hold, in the units its reviewers read, and how it becomes a part in SI."""

from __future__ import annotations

from abc import abstractmethod
from collections.abc import Iterator
from typing import ClassVar, Self

from pydantic import BaseModel, ConfigDict, Field, model_validator
from pydantic_core import PydanticCustomError

from spoutline.catalogue.cells import (
    ListingCells,
    MaterialCells,
    Name,
    PartNumber,
    PortCell,
    PriceCell,
    SchemeCells,
)
from spoutline.model.part import Part, PartKind, PartStatus, Price
from spoutline.model.port import FlowPath, Port

KIND_LETTERS: dict[PartKind, str] = {
    PartKind.NOZZLE: "N",
    PartKind.SWIVEL: "S",
    PartKind.SWIVEL_BREAKAWAY: "J",
    PartKind.CURB_HOSE: "H",
    PartKind.WHIP_HOSE: "W",
    PartKind.BREAKAWAY: "B",
    PartKind.ADAPTOR: "A",
    PartKind.SPLITTER: "D",
    PartKind.CAP: "C",
    PartKind.HOSE_CLAMP: "K",
    PartKind.SEALANT: "P",
    PartKind.LABEL: "L",
}

CROSS_FAULT = "cross_fault"  # error type of a rule between cells; its context holds the faults
CrossFault = tuple[str, str]  # column, what would be right


class PartRow(BaseModel):
    """The columns that every source table has. A description says what the cell holds and in which unit."""

    model_config = ConfigDict(frozen=True, extra="forbid", allow_inf_nan=False, str_strip_whitespace=True)

    number: PartNumber = Field(description="part number: maker's prefix, hyphen, kind letter, serial")
    name: Name = Field(description="what the part is, in trade words")
    status: PartStatus = Field(description="where the part stands in its maker's range")
    superseded_by: PartNumber | None = Field(None, description="number of the part that took its place")
    materials: MaterialCells = Field((), description="wetted materials, separated by blanks")
    temp_min_c: float = Field(ge=-80, le=60, description="lowest temperature, degrees Celsius")
    temp_max_c: float = Field(ge=-20, le=200, description="highest temperature, degrees Celsius")
    max_pressure_kpa: float = Field(ge=0, le=5000, description="greatest working pressure, kPa; 0 where it holds none")
    mass_kg: float = Field(gt=0, le=100, description="mass, kg")
    price_usd: PriceCell | None = Field(None, description="list price, US dollars; empty where there is none")
    price_eur: PriceCell | None = Field(None, description="list price, euros; empty where there is none")
    lead_days: int = Field(ge=0, le=400, description="lead time, days")
    pack: int = Field(1, ge=1, le=1000, description="pieces in a pack; the price is for one piece")
    remark: str = Field("", max_length=300, description="for reviewers: why this row exists")

    @property
    @abstractmethod
    def part_kind(self) -> PartKind:
        """The kind of part that this row describes."""

    @abstractmethod
    def to_part(self, maker: str) -> Part:
        """Return the part in SI units; ``maker`` is the full name of its maker."""

    def cross_faults(self) -> Iterator[CrossFault]:
        """Yield what is wrong between cells that are each right by themselves."""
        if self.temp_min_c > self.temp_max_c:
            yield "temp_min_c", f"it must not exceed temp_max_c ({self.temp_max_c:g})"
        letter = KIND_LETTERS[self.part_kind]
        if self.number[3] != letter:
            yield "number", f"a {self.part_kind} has the letter {letter} after the hyphen"
        if (self.status is PartStatus.SUPERSEDED) != (self.superseded_by is not None):
            yield "superseded_by", "a superseded part names the part that took its place, and no other part does"
        if self.superseded_by == self.number:
            yield "superseded_by", "a part cannot take its own place"

    @model_validator(mode="after")
    def _hold_together(self) -> Self:
        faults = tuple(self.cross_faults())
        if faults:
            raise PydanticCustomError(CROSS_FAULT, "the cells do not fit together", {"faults": faults})
        return self

    @property
    def prices(self) -> tuple[Price, ...]:
        """List prices, sorted by currency."""
        listed_prices = (("EUR", self.price_eur), ("USD", self.price_usd))
        return tuple(
            Price(currency=currency, minor=int(price * 100)) for currency, price in listed_prices if price is not None
        )


class WettedRow(PartRow):
    """The columns of a part that the liquid flows through."""

    accepts_other_path: ClassVar[bool] = False  # True where inlet and outlet may carry different paths

    inlet: PortCell = Field(description="port that faces the dispenser: thread standard, size, gender, path")
    listings: ListingCells = Field((), description="listing classes that it carries, separated by blanks")
    schemes: SchemeCells = Field((), description="whose standards its maker works to, separated by blanks")
    kv_m3_h: float | None = Field(None, gt=0, le=200, description="flow coefficient Kv, m3/h of water at 1 bar")
    resistance_ohm: float | None = Field(None, ge=0, le=1e9, description="electrical resistance end to end, ohm")
    pull_strength_n: float | None = Field(None, gt=0, le=50_000, description="pull that the part bears, N")

    def cross_faults(self) -> Iterator[CrossFault]:
        """Add: something wets the liquid, and both ends carry the same path."""
        yield from super().cross_faults()
        if not self.materials:
            yield "materials", "name at least one wetted material"
        if self.max_pressure_kpa == 0:
            yield "max_pressure_kpa", "a part that liquid flows through stands some pressure"
        outlet = self.outlet_port
        if outlet is not None and outlet.path is not self.inlet.path and not self.accepts_other_path:
            yield "outlet", f"both ends carry one path; the inlet has {self.inlet.path}"

    @property
    def outlet_port(self) -> Port | None:
        """The port that faces the vehicle; None for a nozzle."""
        return None

    @property
    def coaxial(self) -> bool:
        """Whether liquid and vapour pass side by side."""
        return self.inlet.path is not FlowPath.SINGLE

    def base_part(self, maker: str, *, length_m: float, kv_m3_h: float | None, resistance_ohm: float | None) -> Part:
        """Return the part without what its kind adds."""
        return Part(
            number=self.number,
            maker=maker,
            kind=self.part_kind,
            name=self.name,
            status=self.status,
            superseded_by=self.superseded_by,
            inlet=self.inlet,
            outlet=self.outlet_port,
            listings=frozenset(self.listings),
            schemes=frozenset(self.schemes),
            wetted_materials=self.materials,
            temperature_minimum_c=self.temp_min_c,
            temperature_maximum_c=self.temp_max_c,
            maximum_pressure_pa=self.max_pressure_kpa * 1000,
            flow_coefficient_kv=kv_m3_h,
            mass_kg=self.mass_kg,
            resistance_ohm=resistance_ohm,
            length_m=length_m,
            pull_strength_n=self.pull_strength_n,
            prices=self.prices,
            lead_time_days=self.lead_days,
            pack_quantity=self.pack,
        )


class RigidRow(WettedRow):
    """The columns of a part with a body of fixed length: everything but hoses and accessories."""

    made_up_length_mm: float = Field(gt=0, le=600, description="length that it adds to the chain when made up, mm")

    def rigid_part(self, maker: str) -> Part:
        """Return the part without what its kind adds."""
        return self.base_part(
            maker,
            length_m=self.made_up_length_mm / 1000,
            kv_m3_h=self.kv_m3_h,
            resistance_ohm=self.resistance_ohm,
        )

    def cross_faults(self) -> Iterator[CrossFault]:
        """Add: the flow coefficient is known."""
        yield from super().cross_faults()
        if self.kv_m3_h is None:
            yield "kv_m3_h", "a part with a fixed body states its flow coefficient"


def metres(value_mm: float | None) -> float | None:
    """Return a length in metres; None where the row leaves it out."""
    return None if value_mm is None else value_mm / 1000
