"""Why a set as a stable JSON document: what `why --json` prints."""

from __future__ import annotations

from typing import Literal

from pydantic import Field

from spoutline.documents.json.head import HeadedDocument, ProvenanceRecord, Record
from spoutline.documents.json.no_set import NoSetRecord
from spoutline.model.cuts import Cut, Decider
from spoutline.model.funnel import PlaceFunnel, Rival, SetReasons
from spoutline.model.no_set import NoSetReasons
from spoutline.model.plan import Provenance
from spoutline.model.requirement import RequirementId, Slot
from spoutline.model.substitute import Substitute


class StepRecord(Record):
    """How many parts one cut takes out of a place; ``line`` is null except where a must of the part itself does."""

    cut: Cut
    line: RequirementId | None
    removed: int


class RivalRecord(Record):
    """Another part for the place with the best set that holds it; differences against the chosen set, amounts in cents.

    ``flow_m3_s`` is null where what a set delivers cannot be worked out.
    """

    part_number: str
    maker: str
    price_difference_minor: int
    mass_kg: float
    lead_time_days: int
    flow_m3_s: float | None
    set: tuple[str, ...]
    set_makers: tuple[str, ...]


class CheaperRecord(Record):
    """The cheapest set that costs less because it departs further from good practice."""

    part_number: str
    maker: str
    price_difference_minor: int
    gives_up: tuple[RequirementId, ...]
    set: tuple[str, ...]
    set_makers: tuple[str, ...]


class PlaceRecord(Record):
    """One place of the set; ``there`` is the sum of ``removed`` over the steps and ``left``."""

    slot: Slot
    part_number: str
    maker: str
    there: int
    steps: tuple[StepRecord, ...]
    left: int
    decided_by: Decider
    runner_up: RivalRecord | None = Field(description="What would be taken next; an outmatched part may be it.")
    rivals: tuple[RivalRecord, ...] = Field(description="The parts that were left beside the chosen one, best first.")
    cheaper: CheaperRecord | None


class WhyDocument(HeadedDocument):
    """What `why --json` prints. Fields are added in later versions, never renamed."""

    format: Literal["spoutline-why"] = "spoutline-why"
    jurisdiction: str
    position: str
    currency: str
    set: tuple[str, ...] = Field(description="Part numbers of the chosen set, dispenser first; empty without a set.")
    set_makers: tuple[str, ...]
    set_price_minor: int | None
    places: tuple[PlaceRecord, ...]
    no_set: NoSetRecord | None = Field(None, description="Why there is no set; null where there is one.")


def why_json(
    position: str,
    found: SetReasons | None,
    currency: str,
    provenance: Provenance,
    no_set: NoSetReasons | None = None,
) -> str:
    """Return the document as indented JSON, the same text for the same result.

    ``found`` is None without a set; ``no_set`` says why there is none.
    """
    chosen = found.hanging_set if found else None
    document = WhyDocument(
        **ProvenanceRecord.of(provenance).model_dump(),
        jurisdiction=provenance.jurisdiction_id,
        position=position,
        currency=currency,
        set=chosen.numbers if chosen else (),
        set_makers=tuple(part.maker for part in chosen.refs) if chosen else (),
        set_price_minor=chosen.price_minor if chosen else None,
        places=tuple(map(_place, found.places)) if found else (),
        no_set=NoSetRecord.of(no_set) if no_set else None,
    )
    return document.model_dump_json(indent=2) + "\n"


def _place(place: PlaceFunnel) -> PlaceRecord:
    return PlaceRecord(
        slot=place.slot,
        part_number=place.chosen.number,
        maker=place.chosen.maker,
        there=place.there,
        steps=tuple(StepRecord(cut=one.cut, line=one.line, removed=one.removed) for one in place.steps),
        left=place.left,
        decided_by=place.decider,
        runner_up=_rival(place.runner_up) if place.runner_up else None,
        rivals=tuple(map(_rival, place.rivals)),
        cheaper=_cheaper(place.cheaper) if place.cheaper else None,
    )


def _rival(rival: Rival) -> RivalRecord:
    hanging_set = rival.substitute.judged.hanging_set
    return RivalRecord(
        part_number=rival.part.number,
        maker=rival.part.maker,
        price_difference_minor=rival.price_difference_minor,
        mass_kg=rival.mass_kg,
        lead_time_days=rival.lead_time_days,
        flow_m3_s=rival.flow_m3_s,
        set=hanging_set.numbers,
        set_makers=tuple(part.maker for part in hanging_set.refs),
    )


def _cheaper(found: Substitute) -> CheaperRecord:
    hanging_set = found.judged.hanging_set
    return CheaperRecord(
        part_number=found.part.number,
        maker=found.part.maker,
        price_difference_minor=found.price_difference_minor,
        gives_up=found.given_up,
        set=hanging_set.numbers,
        set_makers=tuple(part.maker for part in hanging_set.refs),
    )
