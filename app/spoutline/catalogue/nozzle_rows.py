"""The source rows of nozzles: what a nozzle adds to the common columns."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import replace

from pydantic import Field

from spoutline.catalogue.cells import LiquidCells, YesNo
from spoutline.catalogue.rows import CrossFault, RigidRow, metres
from spoutline.model.liquid import DIESEL_CLASSES, GASOLINE_CLASSES, LiquidFamily, ListingClass
from spoutline.model.part import NozzleData, NozzleOperation, NozzleService, Part, PartKind
from spoutline.model.port import FlowPath

_LITRES_PER_MINUTE = 1 / 60_000  # m3/s

_LIQUIDS_OF_SERVICE: dict[NozzleService, frozenset[LiquidFamily]] = {
    NozzleService.GASOLINE: frozenset({LiquidFamily.GASOLINE}),
    NozzleService.DIESEL_CAR: frozenset({LiquidFamily.DIESEL, LiquidFamily.KEROSENE, LiquidFamily.FUEL_OIL}),
    NozzleService.DIESEL_TRUCK: frozenset({LiquidFamily.DIESEL, LiquidFamily.KEROSENE, LiquidFamily.FUEL_OIL}),
    NozzleService.DEF: frozenset({LiquidFamily.DEF}),
}
_CLASSES_OF_SERVICE: dict[NozzleService, tuple[ListingClass, ...]] = {
    NozzleService.GASOLINE: GASOLINE_CLASSES,
    NozzleService.DIESEL_CAR: DIESEL_CLASSES,
    NozzleService.DIESEL_TRUCK: DIESEL_CLASSES,
    NozzleService.DEF: (),
}


class NozzleRow(RigidRow):
    """A row of ``nozzles.csv``."""

    operation: NozzleOperation = Field(description="whether it closes by itself at a full tank")
    service: NozzleService = Field(description="the filler it is made for")
    liquids: LiquidCells = Field(min_length=1, description="liquid families it may deliver, separated by blanks")
    spout_od_mm: float = Field(ge=5, le=60, description="outside diameter of the spout, mm")
    spout_straight_mm: float = Field(gt=0, le=400, description="straight length at the spout's end, mm")
    spring_distance_mm: float | None = Field(None, gt=0, le=400, description="end of the spout spring from the tip, mm")
    hold_open: YesNo = Field(description="hold-open latch, yes or no")
    no_pressure_device: YesNo = Field(description="closes by itself without pressure, yes or no")
    attitude_device: YesNo = Field(description="closes when held upwards, yes or no")
    bellows: YesNo = Field(description="bellows over the spout, yes or no")
    misfill_interlock: YesNo = Field(description="opens only inside the magnetic filler insert, yes or no")
    enhanced_conventional: YesNo = Field(description="low-spillage single-path nozzle with boot interlock, yes or no")
    def_zone_evaluated: YesNo = Field(description="evaluated for use in a flammable zone, yes or no")
    min_flow_l_min: float | None = Field(None, gt=0, le=400, description="least flow at which it shuts off, L/min")
    max_flow_l_min: float = Field(gt=0, le=400, description="greatest flow, L/min")
    opening_pressure_kpa: float | None = Field(None, gt=0, le=400, description="pressure at which it opens, kPa")

    @property
    def part_kind(self) -> PartKind:
        """A nozzle."""
        return PartKind.NOZZLE

    def cross_faults(self) -> Iterator[CrossFault]:
        """Add: flows in order, devices with their figures, service with liquids and classes."""
        yield from super().cross_faults()
        if (self.operation is NozzleOperation.AUTOMATIC) != (self.min_flow_l_min is not None):
            yield "min_flow_l_min", "an automatic nozzle states it, a manual one does not"
        if self.min_flow_l_min is not None and self.min_flow_l_min > self.max_flow_l_min:
            yield "min_flow_l_min", f"it must not exceed max_flow_l_min ({self.max_flow_l_min:g})"
        if self.no_pressure_device != (self.opening_pressure_kpa is not None):
            yield "opening_pressure_kpa", "a nozzle with a no-pressure device states it, and no other"
        if self.bellows and self.inlet.path is not FlowPath.BALANCE:
            yield "bellows", "only a balance nozzle has bellows"
        if self.enhanced_conventional and (self.coaxial or self.service is not NozzleService.GASOLINE):
            yield "enhanced_conventional", "only a single-path gasoline nozzle can be one"
        if self.coaxial and self.service is not NozzleService.GASOLINE:
            yield "inlet", "only a gasoline nozzle recovers vapour"
        yield from self._service_faults()

    def _service_faults(self) -> Iterator[CrossFault]:
        for_service = _LIQUIDS_OF_SERVICE[self.service]
        if not set(self.liquids) <= for_service:
            yield "liquids", f"service {self.service} delivers {', '.join(sorted(for_service))}"
        classes = _CLASSES_OF_SERVICE[self.service]
        if not set(self.listings) <= set(classes):
            yield "listings", f"service {self.service} carries {', '.join(classes) or 'none'}"
        if self.service is not NozzleService.DEF:
            for column, said in (
                ("misfill_interlock", self.misfill_interlock),
                ("def_zone_evaluated", self.def_zone_evaluated),
            ):
                if said:
                    yield column, "only a DEF nozzle has it"

    def to_part(self, maker: str) -> Part:
        """Return the nozzle in SI units."""
        data = NozzleData(
            operation=self.operation,
            service=self.service,
            liquids=frozenset(self.liquids),
            spout_outside_diameter_m=self.spout_od_mm / 1000,
            spout_straight_length_m=self.spout_straight_mm / 1000,
            spring_distance_m=metres(self.spring_distance_mm),
            hold_open=self.hold_open,
            no_pressure_device=self.no_pressure_device,
            attitude_device=self.attitude_device,
            bellows=self.bellows,
            misfill_interlock=self.misfill_interlock,
            enhanced_conventional=self.enhanced_conventional,
            def_zone_evaluated=self.def_zone_evaluated,
            minimum_flow_m3_s=None if self.min_flow_l_min is None else self.min_flow_l_min * _LITRES_PER_MINUTE,
            maximum_flow_m3_s=self.max_flow_l_min * _LITRES_PER_MINUTE,
            opening_pressure_pa=None if self.opening_pressure_kpa is None else self.opening_pressure_kpa * 1000,
        )
        return replace(self.rigid_part(maker), nozzle=data)
