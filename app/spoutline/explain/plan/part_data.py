"""The data of a part as labelled texts, in an order a practitioner reads them."""

from __future__ import annotations

from collections.abc import Iterator
from enum import StrEnum

from spoutline.explain.phrases.part_words import PartWord as Word
from spoutline.explain.plan.texts import Named
from spoutline.explain.plan.words import Words
from spoutline.model.part import BreakawayData, HoseData, NozzleData, Part
from spoutline.model.quantity import Dimension

_PERMEATION_TEST_C = 38.0  # the temperature at which HoseData states permeation


def part_data(part: Part, story: Words) -> tuple[Named, ...]:
    """Return what the catalogue states about ``part``; a figure that it does not state reads as not stated."""
    return tuple(_rows(part, story))


def _rows(part: Part, story: Words) -> Iterator[Named]:
    yield Named(story.word(Word.KIND), story.word(part.kind))
    status = story.word(part.status)
    yield Named(story.word(Word.STATUS), story.superseded(status, part.superseded_by))
    for label, port in ((Word.INLET, part.inlet), (Word.OUTLET, part.outlet)):
        if port is not None:
            yield Named(story.word(label), story.port(port))
    if part.listings:
        yield Named(story.word(Word.LISTING_CLASSES), ", ".join(sorted(part.listings)))
    if part.schemes:
        yield Named(story.word(Word.LISTING_SCHEMES), _words(part.schemes, story))
    yield from _kind_rows(part, story)
    yield from _common_rows(part, story)


def _common_rows(part: Part, story: Words) -> Iterator[Named]:
    if part.wetted_materials:
        yield Named(
            story.word(Word.WETTED_MATERIALS), ", ".join(story.word(material) for material in part.wetted_materials)
        )
    low = story.show(part.temperature_minimum_c, Dimension.TEMPERATURE)
    high = story.show(part.temperature_maximum_c, Dimension.TEMPERATURE)
    yield Named(story.word(Word.TEMPERATURE), story.phrases.fill("between", low=low, high=high))
    yield Named(story.word(Word.GREATEST_PRESSURE), story.show(part.maximum_pressure_pa, Dimension.PRESSURE))
    if part.hose is None and part.accessory is None:
        yield Named(story.word(Word.FLOW_COEFFICIENT), story.show(part.flow_coefficient_kv, Dimension.FLOW_COEFFICIENT))
        yield Named(story.word(Word.LENGTH), story.show(part.length_m, Dimension.LENGTH))
    yield Named(story.word(Word.MASS), story.show(part.mass_kg, Dimension.MASS))
    if part.accessory is None:
        yield Named(story.word(Word.RESISTANCE), story.show(part.resistance_ohm, Dimension.RESISTANCE))
        yield Named(story.word(Word.PULL_STRENGTH), story.show(part.pull_strength_n, Dimension.FORCE))
    yield Named(story.word(Word.LEAD_TIME), story.days(part.lead_time_days))


def _kind_rows(part: Part, story: Words) -> Iterator[Named]:
    if part.nozzle is not None:
        yield from _nozzle_rows(part.nozzle, story)
    if part.hose is not None:
        yield from _hose_rows(part.hose, story)
    if part.breakaway is not None:
        yield from _breakaway_rows(part.breakaway, story)
    if part.swivel is not None:
        yield Named(story.word(Word.PLANES_OF_ROTATION), str(part.swivel.planes))
    if part.adaptor is not None:
        yield Named(story.word(Word.CLOSES_THE_VAPOUR_PATH), story.yes_no(part.adaptor.closes_vapour))
        yield Named(story.word(Word.NEEDS_A_VAPOUR_RETURN), story.yes_no(part.adaptor.needs_vapour_return))


def _nozzle_rows(nozzle: NozzleData, story: Words) -> Iterator[Named]:
    yield Named(story.word(Word.OPERATION), story.word(nozzle.operation))
    yield Named(story.word(Word.MADE_FOR), story.word(nozzle.service))
    yield Named(story.word(Word.LIQUIDS), _words(nozzle.liquids, story))
    yield Named(
        story.word(Word.SPOUT_OUTSIDE_DIAMETER), story.show(nozzle.spout_outside_diameter_m, Dimension.DIAMETER)
    )
    yield Named(
        story.word(Word.STRAIGHT_END_OF_THE_SPOUT), story.show(nozzle.spout_straight_length_m, Dimension.DIAMETER)
    )
    if nozzle.spring_distance_m is not None:
        yield Named(
            story.word(Word.SPRING_ENDS_BEFORE_THE_TIP), story.show(nozzle.spring_distance_m, Dimension.DIAMETER)
        )
    for label, present in (
        (Word.HOLD_OPEN_LATCH, nozzle.hold_open),
        (Word.NO_PRESSURE_DEVICE, nozzle.no_pressure_device),
        (Word.ATTITUDE_DEVICE, nozzle.attitude_device),
        (Word.BELLOWS, nozzle.bellows),
        (Word.MISFILL_INTERLOCK, nozzle.misfill_interlock),
        (Word.ENHANCED_CONVENTIONAL, nozzle.enhanced_conventional),
        (Word.EVALUATED_FOR_THE_FLAMMABLE_ZONE, nozzle.def_zone_evaluated),
    ):
        yield Named(story.word(label), story.yes_no(present))
    yield Named(story.word(Word.LEAST_FLOW_FOR_SHUT_OFF), story.show(nozzle.minimum_flow_m3_s, Dimension.FLOW))
    yield Named(story.word(Word.GREATEST_FLOW), story.show(nozzle.maximum_flow_m3_s, Dimension.FLOW))
    if nozzle.no_pressure_device:
        yield Named(story.word(Word.OPENING_PRESSURE), story.show(nozzle.opening_pressure_pa, Dimension.PRESSURE))


def _hose_rows(hose: HoseData, story: Words) -> Iterator[Named]:
    yield Named(story.word(Word.CONSTRUCTION), story.word(hose.construction))
    yield Named(story.word(Word.BORE), story.show(hose.bore_m, Dimension.DIAMETER))
    yield Named(story.word(Word.LENGTH), story.show(hose.length_m, Dimension.LENGTH))
    yield Named(story.word(Word.OUTSIDE_DIAMETER), story.show(hose.outside_diameter_m, Dimension.DIAMETER))
    yield Named(story.word(Word.LEAST_BEND_RADIUS), story.show(hose.minimum_bend_radius_m, Dimension.DIAMETER))
    yield Named(story.word(Word.MASS_PER_LENGTH), story.show(hose.mass_kg_m, Dimension.MASS_PER_LENGTH))
    yield Named(
        story.word(Word.RESISTANCE_PER_LENGTH), story.show(hose.resistance_ohm_m, Dimension.RESISTANCE_PER_LENGTH)
    )
    yield Named(story.word(Word.PERMEATION), _permeation(hose, story))
    yield Named(story.word(Word.LOW_PERMEATION), story.yes_no(hose.low_permeation))
    if hose.inner_tube_bore_m is not None and hose.inner_tube_outside_diameter_m is not None:
        yield Named(story.word(Word.INNER_TUBE_BORE), story.show(hose.inner_tube_bore_m, Dimension.DIAMETER))
        yield Named(
            story.word(Word.INNER_TUBE_OUTSIDE_DIAMETER),
            story.show(hose.inner_tube_outside_diameter_m, Dimension.DIAMETER),
        )
        yield Named(story.word(Word.SWIVEL_BUILT_IN), story.yes_no(hose.built_in_swivel))


def _permeation(hose: HoseData, story: Words) -> str:
    if hose.permeation_kg_m2_s is None:
        return story.phrases.text["no_answer"]
    value = story.show(hose.permeation_kg_m2_s, Dimension.PERMEATION)
    condition = story.show(_PERMEATION_TEST_C, Dimension.TEMPERATURE)
    return story.phrases.fill("at_condition", value=value, condition=condition)


def _breakaway_rows(breakaway: BreakawayData, story: Words) -> Iterator[Named]:
    low = story.show(breakaway.separation_minimum_n, Dimension.FORCE)
    high = story.show(breakaway.separation_maximum_n, Dimension.FORCE)
    yield Named(story.word(Word.PARTS_AT_A_PULL), story.phrases.fill("between", low=low, high=high))
    yield Named(story.word(Word.CAN_BE_RECONNECTED), story.yes_no(breakaway.reconnectable))
    yield Named(story.word(Word.CLOSES_THE_VAPOUR_PATH), story.yes_no(breakaway.closes_vapour))
    yield Named(story.word(Word.PARTS_AT_ANY_ANGLE), story.yes_no(breakaway.omnidirectional))
    yield Named(story.word(Word.PLACE), _words(breakaway.placements, story))
    if breakaway.seal_diameter_m is not None:
        yield Named(story.word(Word.SEAL_DIAMETER), story.show(breakaway.seal_diameter_m, Dimension.DIAMETER))


def _words(terms: frozenset[StrEnum], story: Words) -> str:
    return ", ".join(sorted(story.word(term) for term in terms))
