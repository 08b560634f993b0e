"""What the figures of a part in a reviewed table must keep between each other, beside what every part must.

A survey may describe a part from a worn plate; a table is reviewed, so a row is complete and agrees with itself.
"""

from __future__ import annotations

from collections.abc import Iterator

from spoutline.model.liquid import DIESEL_CLASSES, GASOLINE_CLASSES, LiquidFamily, ListingClass
from spoutline.model.part import AccessoryData, HoseData, NozzleData, NozzleOperation, NozzleService, Part, PartKind
from spoutline.model.part_figures import FigureFault, disordered_figures
from spoutline.model.port import FlowPath

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


def table_faults(part: Part) -> Iterator[FigureFault]:
    """Yield what is wrong between the figures of a part that are each right by themselves."""
    yield from disordered_figures(part, part.kind)
    yield from _path_faults(part)
    if part.nozzle is not None:
        yield from _nozzle_faults(part, part.nozzle)
    if part.hose is not None:
        yield from _hose_faults(part, part.hose)
    elif part.accessory is None and part.flow_coefficient_kv is None:
        yield FigureFault("flow_coefficient_kv", "a part with a fixed body states its flow coefficient")
    if part.breakaway is not None and part.breakaway.closes_vapour and not _coaxial(part):
        yield FigureFault("breakaway.closes_vapour", "a single-path breakaway has no vapor path")
    if part.accessory is not None:
        yield from _accessory_faults(part, part.accessory)


def _coaxial(part: Part) -> bool:
    return part.inlet is not None and part.inlet.path is not FlowPath.SINGLE


def _path_faults(part: Part) -> Iterator[FigureFault]:
    if part.inlet is None or part.outlet is None:
        return
    coaxial, single_out = _coaxial(part), part.outlet.path is FlowPath.SINGLE
    if part.kind is PartKind.ADAPTOR:
        if part.adaptor is not None and part.adaptor.closes_vapour != (coaxial and single_out):
            wanted = "yes exactly where the inlet is coaxial and the outlet is single"
            yield FigureFault("adaptor.closes_vapour", wanted)
        if not coaxial and not single_out:
            yield FigureFault("outlet", "an adapter cannot make a vapor path; that is a splitter")
    elif part.kind is PartKind.SPLITTER:
        if coaxial or single_out:
            wanted = "a splitter joins a single-path inlet and a vapor return to a coaxial outlet"
            yield FigureFault("outlet", wanted)
    elif part.outlet.path is not part.inlet.path:
        yield FigureFault("outlet", f"both ends carry one path; the inlet has {part.inlet.path}")


def _nozzle_faults(part: Part, nozzle: NozzleData) -> Iterator[FigureFault]:
    if (nozzle.operation is NozzleOperation.AUTOMATIC) != (nozzle.minimum_flow_m3_s is not None):
        yield FigureFault("nozzle.minimum_flow_m3_s", "an automatic nozzle states it, a manual one does not")
    if nozzle.no_pressure_device != (nozzle.opening_pressure_pa is not None):
        wanted = "a nozzle with a no-pressure device states it, and no other"
        yield FigureFault("nozzle.opening_pressure_pa", wanted)
    if nozzle.bellows and (part.inlet is None or part.inlet.path is not FlowPath.BALANCE):
        yield FigureFault("nozzle.bellows", "only a balance nozzle has bellows")
    if nozzle.enhanced_conventional and (_coaxial(part) or nozzle.service is not NozzleService.GASOLINE):
        yield FigureFault("nozzle.enhanced_conventional", "only a single-path gasoline nozzle can be one")
    if _coaxial(part) and nozzle.service is not NozzleService.GASOLINE:
        yield FigureFault("inlet", "only a gasoline nozzle recovers vapor")
    for_service = _LIQUIDS_OF_SERVICE[nozzle.service]
    if not nozzle.liquids <= for_service:
        yield FigureFault("nozzle.liquids", f"service {nozzle.service} delivers {', '.join(sorted(for_service))}")
    classes = _CLASSES_OF_SERVICE[nozzle.service]
    if not part.listings <= set(classes):
        yield FigureFault("listings", f"service {nozzle.service} carries {', '.join(classes) or 'none'}")
    if nozzle.service is not NozzleService.DEF:
        for name in ("misfill_interlock", "def_zone_evaluated"):
            if getattr(nozzle, name):
                yield FigureFault(f"nozzle.{name}", "only a DEF nozzle has it")


def _hose_faults(part: Part, hose: HoseData) -> Iterator[FigureFault]:
    alone_kg = hose.mass_kg_m * hose.length_m
    if part.mass_kg < alone_kg:
        yield FigureFault("mass_kg", f"hose alone has {alone_kg:.2f} kg; couplings come on top")
    if hose.low_permeation and hose.permeation_kg_m2_s is None:
        yield FigureFault("hose.permeation_kg_m2_s", "a low-permeation hose states its figure")
    if hose.built_in_swivel and not _coaxial(part):
        yield FigureFault("hose.built_in_swivel", "only a coaxial hose has one")
    for name in ("inner_tube_bore_m", "inner_tube_outside_diameter_m"):
        if _coaxial(part) != (getattr(hose, name) is not None):
            yield FigureFault(f"hose.{name}", "a coaxial hose states it, a single-path hose does not")


def _accessory_faults(part: Part, accessory: AccessoryData) -> Iterator[FigureFault]:
    ranged = part.kind in (PartKind.HOSE_CLAMP, PartKind.CAP)
    for name in ("fits_diameter_minimum_m", "fits_diameter_maximum_m"):
        if ranged != (getattr(accessory, name) is not None):
            yield FigureFault(f"accessory.{name}", "a clamp or cap states what it fits, and no other accessory")
    if (part.kind is PartKind.LABEL) != bool(accessory.label_classes or accessory.label_def):
        yield FigureFault("accessory.label_classes", "a label names classes or DEF, and no other accessory")
    if (part.kind is PartKind.CAP) != (part.inlet is not None):
        yield FigureFault("inlet", "a cap states the port that it closes, and no other accessory")
