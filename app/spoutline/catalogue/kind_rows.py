"""The source rows of each kind of part: what the kind adds to the common columns."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import replace
from typing import ClassVar

from pydantic import Field

from spoutline.catalogue.cells import ListingCells, PlacementCells, PortCell, YesNo
from spoutline.catalogue.nozzle_rows import NozzleRow
from spoutline.catalogue.rows import CrossFault, PartRow, RigidRow, WettedRow, metres
from spoutline.model.liquid import LiquidFamily
from spoutline.model.part import (
    AccessoryData,
    AdaptorData,
    BreakawayData,
    HoseConstruction,
    HoseData,
    Part,
    PartKind,
    SwivelData,
)
from spoutline.model.port import FlowPath, Port

_SECONDS_PER_DAY = 86_400


class ThroughRow(RigidRow):
    """A rigid part with an inlet and an outlet."""

    outlet: PortCell = Field(description="port that faces the vehicle: thread standard, size, gender, path")

    @property
    def outlet_port(self) -> Port | None:
        """The port that faces the vehicle."""
        return self.outlet


class SwivelRow(ThroughRow):
    """A row of ``swivels.csv``."""

    planes: int = Field(ge=1, le=3, description="planes in which it turns")

    @property
    def part_kind(self) -> PartKind:
        """A swivel."""
        return PartKind.SWIVEL

    def to_part(self, maker: str) -> Part:
        """Return the swivel in SI units."""
        return replace(self.rigid_part(maker), swivel=SwivelData(planes=self.planes))


class BreakawayRow(ThroughRow):
    """A row of ``breakaways.csv``."""

    separation_min_n: float = Field(gt=0, le=20_000, description="least pull that separates it, N")
    separation_max_n: float = Field(gt=0, le=20_000, description="greatest pull that it needs to separate, N")
    reconnectable: YesNo = Field(description="can be put together again after a separation, yes or no")
    closes_vapour: YesNo = Field(description="closes the vapour path when it separates, yes or no")
    omnidirectional: YesNo = Field(description="separates at any angle of pull, yes or no")
    seal_diameter_mm: float | None = Field(
        None, gt=0, le=100, description="diameter that the pressure acts on, mm; empty for a balanced coupling"
    )
    placements: PlacementCells = Field(min_length=1, description="where it may sit: dispenser_end, nozzle_end")

    @property
    def part_kind(self) -> PartKind:
        """A breakaway."""
        return PartKind.BREAKAWAY

    def cross_faults(self) -> Iterator[CrossFault]:
        """Add: the window is in order, and only a coaxial breakaway closes a vapour path."""
        yield from super().cross_faults()
        if self.separation_min_n > self.separation_max_n:
            yield "separation_min_n", f"it must not exceed separation_max_n ({self.separation_max_n:g})"
        if self.closes_vapour and not self.coaxial:
            yield "closes_vapour", "a single-path breakaway has no vapour path"

    def breakaway_data(self) -> BreakawayData:
        """Return what a breakaway adds."""
        return BreakawayData(
            separation_minimum_n=self.separation_min_n,
            separation_maximum_n=self.separation_max_n,
            reconnectable=self.reconnectable,
            closes_vapour=self.closes_vapour,
            omnidirectional=self.omnidirectional,
            seal_diameter_m=metres(self.seal_diameter_mm),
            placements=frozenset(self.placements),
        )

    def to_part(self, maker: str) -> Part:
        """Return the breakaway in SI units."""
        return replace(self.rigid_part(maker), breakaway=self.breakaway_data())


class SwivelBreakawayRow(BreakawayRow):
    """A row of ``swivel_breakaways.csv``."""

    planes: int = Field(ge=1, le=3, description="planes in which it turns")

    @property
    def part_kind(self) -> PartKind:
        """A swivel-breakaway."""
        return PartKind.SWIVEL_BREAKAWAY

    def to_part(self, maker: str) -> Part:
        """Return the swivel-breakaway in SI units."""
        return replace(super().to_part(maker), swivel=SwivelData(planes=self.planes))


class HoseRow(WettedRow):
    """A row of ``curb_hoses.csv`` or ``whip_hoses.csv``."""

    outlet: PortCell = Field(description="port that faces the vehicle: thread standard, size, gender, path")
    construction: HoseConstruction = Field(description="hardwall keeps its round bore; softwall lies flat on a reel")
    bore_mm: float = Field(gt=5, le=80, description="bore of the hose, of the outer tube if coaxial, mm")
    length_m: float = Field(gt=0, le=40, description="length, m")
    outside_diameter_mm: float = Field(gt=5, le=120, description="outside diameter, mm")
    min_bend_radius_mm: float = Field(gt=0, le=1000, description="smallest bend radius, mm")
    mass_kg_m: float = Field(gt=0, le=5, description="mass of the empty hose, kg/m")
    resistance_ohm_m: float | None = Field(None, ge=0, le=1e8, description="electrical resistance, ohm/m")
    permeation_g_m2_day: float | None = Field(None, ge=0, le=1000, description="permeation at 38 C, g/(m2.day)")
    low_permeation: YesNo = Field(description="marked low-permeation, yes or no")
    built_in_swivel: YesNo = Field(description="turns at its end without a separate swivel, yes or no")
    inner_tube_bore_mm: float | None = Field(None, gt=0, le=60, description="bore of the inner tube, mm; coaxial only")
    inner_tube_od_mm: float | None = Field(None, gt=0, le=60, description="outside diameter of the inner tube, mm")

    hose_kind: ClassVar[PartKind] = PartKind.CURB_HOSE

    @property
    def part_kind(self) -> PartKind:
        """A curb hose or a whip hose."""
        return self.hose_kind

    @property
    def outlet_port(self) -> Port | None:
        """The port that faces the vehicle."""
        return self.outlet

    def cross_faults(self) -> Iterator[CrossFault]:
        """Add: diameters one inside the other, a second tube exactly where the path is coaxial."""
        yield from super().cross_faults()
        if self.kv_m3_h is not None:
            yield "kv_m3_h", "leave it empty: the loss of a hose follows from bore and length"
        if self.resistance_ohm is not None:
            yield "resistance_ohm", "leave it empty: it follows from resistance_ohm_m and length_m"
        if self.bore_mm >= self.outside_diameter_mm:
            yield "bore_mm", f"it must be less than outside_diameter_mm ({self.outside_diameter_mm:g})"
        if self.mass_kg < self.mass_kg_m * self.length_m:
            yield "mass_kg", f"hose alone has {self.mass_kg_m * self.length_m:.2f} kg; couplings come on top"
        if self.low_permeation and self.permeation_g_m2_day is None:
            yield "permeation_g_m2_day", "a low-permeation hose states its figure"
        if self.built_in_swivel and not self.coaxial:
            yield "built_in_swivel", "only a coaxial hose has one"
        yield from self._tube_faults()

    def _tube_faults(self) -> Iterator[CrossFault]:
        bore_mm, od_mm = self.inner_tube_bore_mm, self.inner_tube_od_mm
        for column, value in (("inner_tube_bore_mm", bore_mm), ("inner_tube_od_mm", od_mm)):
            if self.coaxial != (value is not None):
                yield column, "a coaxial hose states it, a single-path hose does not"
        if od_mm is not None and od_mm >= self.bore_mm:
            yield "inner_tube_od_mm", f"it must be less than bore_mm ({self.bore_mm:g})"
        if bore_mm is not None and od_mm is not None and bore_mm >= od_mm:
            yield "inner_tube_bore_mm", f"it must be less than inner_tube_od_mm ({od_mm:g})"

    def to_part(self, maker: str) -> Part:
        """Return the hose in SI units."""
        permeation = self.permeation_g_m2_day
        data = HoseData(
            construction=self.construction,
            bore_m=self.bore_mm / 1000,
            length_m=self.length_m,
            outside_diameter_m=self.outside_diameter_mm / 1000,
            minimum_bend_radius_m=self.min_bend_radius_mm / 1000,
            mass_kg_m=self.mass_kg_m,
            resistance_ohm_m=self.resistance_ohm_m,
            permeation_kg_m2_s=None if permeation is None else permeation / 1000 / _SECONDS_PER_DAY,
            low_permeation=self.low_permeation,
            built_in_swivel=self.built_in_swivel,
            inner_tube_bore_m=metres(self.inner_tube_bore_mm),
            inner_tube_outside_diameter_m=metres(self.inner_tube_od_mm),
        )
        resistance = None if self.resistance_ohm_m is None else self.resistance_ohm_m * self.length_m
        base = self.base_part(maker, length_m=self.length_m, kv_m3_h=None, resistance_ohm=resistance)
        return replace(base, hose=data)


class CurbHoseRow(HoseRow):
    """A row of ``curb_hoses.csv``."""


class WhipHoseRow(HoseRow):
    """A row of ``whip_hoses.csv``."""

    hose_kind: ClassVar[PartKind] = PartKind.WHIP_HOSE


class AdaptorRow(ThroughRow):
    """A row of ``adaptors.csv``."""

    accepts_other_path: ClassVar[bool] = True

    closes_vapour: YesNo = Field(description="closes the vapour port of a coaxial end, yes or no")

    @property
    def part_kind(self) -> PartKind:
        """An adaptor."""
        return PartKind.ADAPTOR

    def cross_faults(self) -> Iterator[CrossFault]:
        """Add: what closes a vapour port goes from a coaxial to a single path."""
        yield from super().cross_faults()
        if self.closes_vapour != (self.coaxial and self.outlet.path is FlowPath.SINGLE):
            yield "closes_vapour", "yes exactly where the inlet is coaxial and the outlet is single"
        if not self.coaxial and self.outlet.path is not FlowPath.SINGLE:
            yield "outlet", "an adaptor cannot make a vapour path; that is a splitter"

    def to_part(self, maker: str) -> Part:
        """Return the adaptor in SI units."""
        data = AdaptorData(closes_vapour=self.closes_vapour, needs_vapour_return=False)
        return replace(self.rigid_part(maker), adaptor=data)


class SplitterRow(ThroughRow):
    """A row of ``splitters.csv``."""

    accepts_other_path: ClassVar[bool] = True

    @property
    def part_kind(self) -> PartKind:
        """A splitter."""
        return PartKind.SPLITTER

    def cross_faults(self) -> Iterator[CrossFault]:
        """Add: a splitter goes from a single to a coaxial path."""
        yield from super().cross_faults()
        if self.coaxial or self.outlet.path is FlowPath.SINGLE:
            yield "outlet", "a splitter joins a single-path inlet and a vapour return to a coaxial outlet"

    def to_part(self, maker: str) -> Part:
        """Return the splitter in SI units."""
        data = AdaptorData(closes_vapour=False, needs_vapour_return=True)
        return replace(self.rigid_part(maker), adaptor=data)


class AccessoryRow(PartRow):
    """A row of ``accessories.csv``."""

    kind: PartKind = Field(description="cap, hose_clamp, sealant or label")
    inlet: PortCell | None = Field(None, description="port that a cap closes; empty for the other kinds")
    listings: ListingCells = Field((), description="listing classes that a sealant or cap is made for")
    fits_min_mm: float | None = Field(None, gt=0, le=200, description="smallest diameter that it fits, mm")
    fits_max_mm: float | None = Field(None, gt=0, le=200, description="greatest diameter that it fits, mm")
    label_classes: ListingCells = Field((), description="classes that a label names, separated by blanks")
    label_def: YesNo = Field(description="label for DEF, yes or no")
    label_family: LiquidFamily | None = Field(
        None, description="kerosene or fuel_oil where the label names it; empty for gasoline and diesel"
    )

    @property
    def part_kind(self) -> PartKind:
        """The kind named in the row."""
        return self.kind

    def cross_faults(self) -> Iterator[CrossFault]:
        """Add: an accessory kind, and the figures that this kind needs and no other."""
        kinds = (PartKind.CAP, PartKind.HOSE_CLAMP, PartKind.SEALANT, PartKind.LABEL)
        if self.kind not in kinds:
            yield "kind", f"one of {', '.join(kinds)}"
            return
        yield from super().cross_faults()
        ranged = self.kind in (PartKind.HOSE_CLAMP, PartKind.CAP)
        for column, value in (("fits_min_mm", self.fits_min_mm), ("fits_max_mm", self.fits_max_mm)):
            if ranged != (value is not None):
                yield column, "a clamp or cap states what it fits, and no other accessory"
        if self.fits_min_mm is not None and self.fits_max_mm is not None and self.fits_min_mm > self.fits_max_mm:
            yield "fits_min_mm", f"it must not exceed fits_max_mm ({self.fits_max_mm:g})"
        if (self.kind is PartKind.LABEL) != bool(self.label_classes or self.label_def):
            yield "label_classes", "a label names classes or DEF, and no other accessory"
        if (self.kind is PartKind.CAP) != (self.inlet is not None):
            yield "inlet", "a cap states the port that it closes, and no other accessory"

    def to_part(self, maker: str) -> Part:
        """Return the accessory in SI units."""
        return Part(
            number=self.number,
            maker=maker,
            kind=self.kind,
            name=self.name,
            status=self.status,
            superseded_by=self.superseded_by,
            inlet=self.inlet,
            outlet=None,
            listings=frozenset(self.listings),
            schemes=frozenset(),
            wetted_materials=self.materials,
            temperature_minimum_c=self.temp_min_c,
            temperature_maximum_c=self.temp_max_c,
            maximum_pressure_pa=self.max_pressure_kpa * 1000,
            flow_coefficient_kv=None,
            mass_kg=self.mass_kg,
            resistance_ohm=None,
            length_m=0.0,
            pull_strength_n=None,
            prices=self.prices,
            lead_time_days=self.lead_days,
            pack_quantity=self.pack,
            accessory=AccessoryData(
                fits_diameter_minimum_m=metres(self.fits_min_mm),
                fits_diameter_maximum_m=metres(self.fits_max_mm),
                label_classes=frozenset(self.label_classes),
                label_def=self.label_def,
                label_family=self.label_family,
            ),
        )


TABLES: dict[str, type[PartRow]] = {
    "nozzles.csv": NozzleRow,
    "swivels.csv": SwivelRow,
    "swivel_breakaways.csv": SwivelBreakawayRow,
    "curb_hoses.csv": CurbHoseRow,
    "whip_hoses.csv": WhipHoseRow,
    "breakaways.csv": BreakawayRow,
    "adaptors.csv": AdaptorRow,
    "splitters.csv": SplitterRow,
    "accessories.csv": AccessoryRow,
}
