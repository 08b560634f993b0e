"""The data of a part as labelled texts, in an order a practitioner reads them."""

from __future__ import annotations

from collections.abc import Iterator
from enum import StrEnum
from typing import TYPE_CHECKING

from spoutline.explain.texts import Named
from spoutline.model.part import BreakawayData, HoseData, NozzleData, Part
from spoutline.model.port import Port
from spoutline.model.quantity import Dimension

if TYPE_CHECKING:
    from spoutline.explain.story import Story


def part_data(part: Part, story: Story) -> tuple[Named, ...]:
    """Return what the catalogue states about ``part``; a figure that it does not state reads as not stated."""
    return tuple(_rows(part, story))


def port_text(port: Port, story: Story) -> str:
    """Return a port as the trade writes it: size, thread, gender, path."""
    return f"{port.size} {story.word(port.thread)} {story.word(port.gender)}, {story.word(port.path)}"


def _rows(part: Part, story: Story) -> Iterator[Named]:
    yield Named("Kind", story.word(part.kind))
    status = story.word(part.status)
    yield Named("Status", f"{status} by {part.superseded_by}" if part.superseded_by else status)
    for label, port in (("Inlet", part.inlet), ("Outlet", part.outlet)):
        if port is not None:
            yield Named(label, port_text(port, story))
    if part.listings:
        yield Named("Listing classes", ", ".join(sorted(part.listings)))
    if part.schemes:
        yield Named("Listing schemes", _words(part.schemes, story))
    yield from _kind_rows(part, story)
    yield from _common_rows(part, story)


def _common_rows(part: Part, story: Story) -> Iterator[Named]:
    if part.wetted_materials:
        yield Named("Wetted materials", ", ".join(story.word(material) for material in part.wetted_materials))
    low = story.show(part.temperature_minimum_c, Dimension.TEMPERATURE)
    high = story.show(part.temperature_maximum_c, Dimension.TEMPERATURE)
    yield Named("Temperature", story.phrases.fill("between", low=low, high=high))
    yield Named("Greatest pressure", story.show(part.maximum_pressure_pa, Dimension.PRESSURE))
    if part.hose is None and part.accessory is None:
        yield Named("Flow coefficient", story.show(part.flow_coefficient_kv, Dimension.FLOW_COEFFICIENT))
        yield Named("Length", story.show(part.length_m, Dimension.LENGTH))
    yield Named("Mass", story.show(part.mass_kg, Dimension.MASS))
    if part.accessory is None:
        yield Named("Resistance", story.show(part.resistance_ohm, Dimension.RESISTANCE))
        yield Named("Pull strength", story.show(part.pull_strength_n, Dimension.FORCE))
    yield Named("Lead time", story.days(part.lead_time_days))


def _kind_rows(part: Part, story: Story) -> Iterator[Named]:
    if part.nozzle is not None:
        yield from _nozzle_rows(part.nozzle, story)
    if part.hose is not None:
        yield from _hose_rows(part.hose, story)
    if part.breakaway is not None:
        yield from _breakaway_rows(part.breakaway, story)
    if part.swivel is not None:
        yield Named("Planes of rotation", str(part.swivel.planes))
    if part.adaptor is not None:
        yield Named("Closes the vapour path", story.yes_no(part.adaptor.closes_vapour))
        yield Named("Needs a vapour return", story.yes_no(part.adaptor.needs_vapour_return))


def _nozzle_rows(nozzle: NozzleData, story: Story) -> Iterator[Named]:
    yield Named("Operation", story.word(nozzle.operation))
    yield Named("Made for", story.word(nozzle.service))
    yield Named("Liquids", _words(nozzle.liquids, story))
    yield Named("Spout outside diameter", story.show(nozzle.spout_outside_diameter_m, Dimension.DIAMETER))
    yield Named("Straight end of the spout", story.show(nozzle.spout_straight_length_m, Dimension.DIAMETER))
    if nozzle.spring_distance_m is not None:
        yield Named("Spring ends before the tip", story.show(nozzle.spring_distance_m, Dimension.DIAMETER))
    for label, present in (
        ("Hold-open latch", nozzle.hold_open),
        ("No-pressure device", nozzle.no_pressure_device),
        ("Attitude device", nozzle.attitude_device),
        ("Bellows", nozzle.bellows),
        ("Misfill interlock", nozzle.misfill_interlock),
        ("Enhanced conventional", nozzle.enhanced_conventional),
        ("Evaluated for the flammable zone", nozzle.def_zone_evaluated),
    ):
        yield Named(label, story.yes_no(present))
    yield Named("Least flow for shut-off", story.show(nozzle.minimum_flow_m3_s, Dimension.FLOW))
    yield Named("Greatest flow", story.show(nozzle.maximum_flow_m3_s, Dimension.FLOW))
    if nozzle.no_pressure_device:
        yield Named("Opening pressure", story.show(nozzle.opening_pressure_pa, Dimension.PRESSURE))


def _hose_rows(hose: HoseData, story: Story) -> Iterator[Named]:
    yield Named("Construction", story.word(hose.construction))
    yield Named("Bore", story.show(hose.bore_m, Dimension.DIAMETER))
    yield Named("Length", story.show(hose.length_m, Dimension.LENGTH))
    yield Named("Outside diameter", story.show(hose.outside_diameter_m, Dimension.DIAMETER))
    yield Named("Least bend radius", story.show(hose.minimum_bend_radius_m, Dimension.DIAMETER))
    yield Named("Mass per length", story.show(hose.mass_kg_m, Dimension.MASS_PER_LENGTH))
    yield Named("Resistance per length", story.show(hose.resistance_ohm_m, Dimension.RESISTANCE_PER_LENGTH))
    yield Named("Permeation at 38 °C", story.show(hose.permeation_kg_m2_s, Dimension.PERMEATION))
    yield Named("Low permeation", story.yes_no(hose.low_permeation))
    if hose.inner_tube_bore_m is not None and hose.inner_tube_outside_diameter_m is not None:
        yield Named("Inner tube bore", story.show(hose.inner_tube_bore_m, Dimension.DIAMETER))
        yield Named("Inner tube outside diameter", story.show(hose.inner_tube_outside_diameter_m, Dimension.DIAMETER))
        yield Named("Swivel built in", story.yes_no(hose.built_in_swivel))


def _breakaway_rows(breakaway: BreakawayData, story: Story) -> Iterator[Named]:
    low = story.show(breakaway.separation_minimum_n, Dimension.FORCE)
    high = story.show(breakaway.separation_maximum_n, Dimension.FORCE)
    yield Named("Parts at a pull", story.phrases.fill("between", low=low, high=high))
    yield Named("Can be reconnected", story.yes_no(breakaway.reconnectable))
    yield Named("Closes the vapour path", story.yes_no(breakaway.closes_vapour))
    yield Named("Parts at any angle", story.yes_no(breakaway.omnidirectional))
    yield Named("Place", _words(breakaway.placements, story))
    if breakaway.seal_diameter_m is not None:
        yield Named("Seal diameter", story.show(breakaway.seal_diameter_m, Dimension.DIAMETER))


def _words(terms: frozenset[StrEnum], story: Story) -> str:
    return ", ".join(sorted(story.word(term) for term in terms))
