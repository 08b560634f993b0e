"""What could hang in a place as a stable JSON document: what `substitutes --json` prints."""

from __future__ import annotations

from typing import Literal

from pydantic import Field

from spoutline.documents.json.head import HeadedDocument, ProvenanceRecord, Record
from spoutline.explain.plan.story import Story
from spoutline.model.agreed_sets import SetsFrom
from spoutline.model.plan import Provenance
from spoutline.model.requirement import RequirementId, Slot
from spoutline.model.substitute import Misfit, SlotChange, Substitute, Substitutes


class ChangeRecord(Record):
    """What else changes in one place of the set; null where nothing goes, or nothing comes."""

    slot: Slot
    taken_out: str | None
    put_in: str | None
    taken_out_maker: str | None
    put_in_maker: str | None


class FittingRecord(Record):
    """A part that could hang in the place, with the best set that holds it; amounts in minor units (cents)."""

    part_number: str
    maker: str
    name: str
    unit_price_minor: int | None
    lead_time_days: int
    set: tuple[str, ...] = Field(description="Part numbers of the best set that holds it, dispenser first.")
    set_makers: tuple[str, ...]
    set_price_minor: int
    price_difference_minor: int = Field(description="What that set costs more than the chosen one.")
    changes: tuple[ChangeRecord, ...]
    gives_up: tuple[RequirementId, ...] = Field(description="Should-lines it breaks and the chosen set keeps.")
    keeps: tuple[RequirementId, ...] = Field(description="Should-lines it keeps and the chosen set breaks.")


class MisfitRecord(Record):
    """A part that could not: the rule it breaks, or the requirement lines that no set with it keeps together."""

    part_number: str
    maker: str
    name: str
    rule_id: str | None
    requirements: tuple[RequirementId, ...]
    reason: str


class SubstitutesDocument(HeadedDocument):
    """What `substitutes --json` prints. Fields are added in later versions, never renamed."""

    format: Literal["spoutline-substitutes"] = "spoutline-substitutes"
    jurisdiction: str
    sets_from: SetsFrom = Field(SetsFrom(), description="Which sets the document shows.")
    position: str
    slot: Slot | None = Field(description="null where the position has no set.")
    part_number: str | None = Field(description="The part that hangs there now.")
    maker: str | None
    set: tuple[str, ...]
    set_makers: tuple[str, ...]
    set_price_minor: int | None
    currency: str
    fitting: tuple[FittingRecord, ...] = Field(description="Fewest shoulds given up first, then price.")
    misfits: tuple[MisfitRecord, ...] | None = Field(description="null where they were not asked for.")
    not_decided: tuple[str, ...] = Field(
        (), description="Numbers of parts of which it takes too much work to say whether they could hang here."
    )


def substitutes_json(
    position: str, found: Substitutes | None, currency: str, provenance: Provenance, story: Story
) -> str:
    """Return the document as indented JSON, the same text for the same result; ``found`` is None without a set."""
    document = SubstitutesDocument(
        **ProvenanceRecord.of(provenance).model_dump(),
        jurisdiction=provenance.jurisdiction_id,
        position=position,
        slot=found.slot if found else None,
        part_number=found.part.number if found else None,
        maker=found.part.maker if found else None,
        set=found.chosen.numbers if found else (),
        set_makers=tuple(part.maker for part in found.chosen.refs) if found else (),
        set_price_minor=found.chosen.price_minor if found else None,
        currency=currency,
        fitting=tuple(_fitting(one, currency) for one in found.fitting) if found else (),
        misfits=_misfits(found, story),
        not_decided=tuple(one.number for one in found.not_decided) if found else (),
    )
    return document.model_dump_json(indent=2) + "\n"


def _fitting(one: Substitute, currency: str) -> FittingRecord:
    hanging_set = one.judged.hanging_set
    return FittingRecord(
        part_number=one.part.number,
        maker=one.part.maker,
        name=one.part.name,
        unit_price_minor=one.part.price_minor(currency),
        lead_time_days=one.part.lead_time_days,
        set=hanging_set.numbers,
        set_makers=tuple(part.maker for part in hanging_set.refs),
        set_price_minor=hanging_set.price_minor,
        price_difference_minor=one.price_difference_minor,
        changes=tuple(map(_change, one.changes)),
        gives_up=one.given_up,
        keeps=one.kept,
    )


def _change(change: SlotChange) -> ChangeRecord:
    return ChangeRecord(
        slot=change.slot,
        taken_out=change.taken_out.number if change.taken_out else None,
        put_in=change.put_in.number if change.put_in else None,
        taken_out_maker=change.taken_out.maker if change.taken_out else None,
        put_in_maker=change.put_in.maker if change.put_in else None,
    )


def _misfits(found: Substitutes | None, story: Story) -> tuple[MisfitRecord, ...] | None:
    if found is None or found.misfits is None:
        return None
    return tuple(_misfit(one, story) for one in found.misfits)


def _misfit(one: Misfit, story: Story) -> MisfitRecord:
    return MisfitRecord(
        part_number=one.part.number,
        maker=one.part.maker,
        name=one.part.name,
        rule_id=one.finding.rule_id if one.finding else None,
        requirements=one.lines,
        reason=story.misfit(one),
    )
