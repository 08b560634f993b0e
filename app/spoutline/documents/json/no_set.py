"""Why a position has no set as records of a stable JSON document: what `why --json` prints where there is none."""

from __future__ import annotations

from pydantic import Field

from spoutline.documents.json.head import Record
from spoutline.model.liquid import LiquidFamily
from spoutline.model.no_set import (
    AskedAnswer,
    Concession,
    ConflictReasons,
    Demand,
    DemandKind,
    FigureReason,
    NearPart,
    NoSetEnding,
    NoSetReasons,
    OtherAnswer,
    SlotReason,
    Trial,
)
from spoutline.model.quantity import Dimension
from spoutline.model.requirement import RequirementId, Slot
from spoutline.model.survey import VapourStatus


class DemandRecord(Record):
    """What somebody could give up: a requirement line, a part asked for or refused, an answer; the others are null."""

    kind: DemandKind
    line: RequirementId | None
    part_number: str | None
    maker: str | None
    answer: AskedAnswer | None


class MissRecord(Record):
    """A must-rule that a part breaks; ``by`` is how far its figure lies from the bound, SI, null where it is none."""

    rule: str
    by: float | None
    dimension: Dimension | None


class NearRecord(Record):
    """A part that nearly serves; ``others`` counts the musts that it breaks beside those of the conflict."""

    part_number: str
    maker: str
    breaks: tuple[MissRecord, ...]
    others: int


class BrokenRecord(Record):
    """How many parts of a slot break a requirement line; a part that breaks several counts at each."""

    line: RequirementId
    count: int


class SlotRecord(Record):
    """What a conflict leaves of the parts of a slot."""

    slot: Slot
    there: int
    broken: tuple[BrokenRecord, ...]
    left: int
    nearest: tuple[NearRecord, ...]


class FigureRecord(Record):
    """A figure of the whole set: as asked, and of the set that comes nearest; SI in ``dimension``."""

    line: RequirementId
    asked: float
    attained: float
    dimension: Dimension
    set: tuple[str, ...]
    set_makers: tuple[str, ...]


class ConflictRecord(Record):
    """Demands that cannot be had together, though any of them could go."""

    demands: tuple[DemandRecord, ...]
    slots: tuple[SlotRecord, ...]
    figures: tuple[FigureRecord, ...]
    asked_for: tuple[NearRecord, ...] = Field(description="Parts asked for that break a line of it themselves.")
    contradictions: tuple[str, ...] = Field(description="Rules by which answers contradict each other.")
    by_checks: bool = Field(description="Only the full checks of whole sets found it.")
    catalog_gap: bool = Field(description="Nobody at the station could give any of them up.")


class OtherAnswerRecord(Record):
    """What another answer would be; the fields that it does not name are null."""

    answer: AskedAnswer
    family: LiquidFamily | None
    blend_percent: float | None
    vapour: VapourStatus | None


class WayRecord(Record):
    """Demands that, given up together, free a set; ``number`` is what `why --way` takes."""

    number: int
    gives_up: tuple[DemandRecord, ...]
    concession: Concession
    answers: tuple[OtherAnswerRecord, ...]
    line: RequirementId | None = Field(description="The line among them that is a figure.")
    asked: float | None
    needed: float | None
    dimension: Dimension | None
    price_minor: int
    set: tuple[str, ...]
    set_makers: tuple[str, ...]
    by_answer: bool = Field(description="An answer of the survey does it, so that it can be accepted.")


class NoSetRecord(Record):
    """Everything that keeps a position from a set; ways in the order in which people would rather give up."""

    conflicts: tuple[ConflictRecord, ...]
    ways: tuple[WayRecord, ...]
    beyond_the_station: tuple[tuple[DemandRecord, ...], ...]
    ending: NoSetEnding

    @classmethod
    def of(cls, found: NoSetReasons) -> NoSetRecord:
        """Return the record of what was found."""
        return cls(
            conflicts=tuple(map(_conflict, found.conflicts)),
            ways=tuple(_way(number, trial) for number, trial in enumerate(found.trials, 1)),
            beyond_the_station=tuple(tuple(map(_demand, one)) for one in found.lacking),
            ending=found.ending,
        )


def _demand(demand: Demand) -> DemandRecord:
    part = demand.part
    return DemandRecord(
        kind=demand.kind,
        line=demand.line,
        part_number=part.number if part else None,
        maker=part.maker if part else None,
        answer=demand.answer,
    )


def _conflict(conflict: ConflictReasons) -> ConflictRecord:
    return ConflictRecord(
        demands=tuple(map(_demand, conflict.demands)),
        slots=tuple(map(_slot, conflict.slots)),
        figures=tuple(map(_figure, conflict.figures)),
        asked_for=tuple(map(_near, conflict.asked_for)),
        contradictions=tuple(one.rule_id for one in conflict.findings),
        by_checks=conflict.by_checks,
        catalog_gap=conflict.is_gap,
    )


def _slot(reason: SlotReason) -> SlotRecord:
    return SlotRecord(
        slot=reason.slot,
        there=reason.there,
        broken=tuple(BrokenRecord(line=line, count=count) for line, count in reason.broken),
        left=reason.left,
        nearest=tuple(map(_near, reason.nearest)),
    )


def _near(near: NearPart) -> NearRecord:
    missed = {one.name: one for one in near.misses}
    breaks = tuple(
        MissRecord(
            rule=one.rule_id,
            by=missed[one.rule_id].value if one.rule_id in missed else None,
            dimension=missed[one.rule_id].dimension if one.rule_id in missed else None,
        )
        for one in near.findings
    )
    return NearRecord(part_number=near.part.number, maker=near.part.maker, breaks=breaks, others=near.others)


def _figure(reason: FigureReason) -> FigureRecord:
    return FigureRecord(
        line=reason.line,
        asked=reason.asked,
        attained=reason.attained,
        dimension=reason.dimension,
        set=reason.nearest.numbers,
        set_makers=tuple(part.maker for part in reason.nearest.refs),
    )


def _way(number: int, trial: Trial) -> WayRecord:
    return WayRecord(
        number=number,
        gives_up=tuple(map(_demand, trial.given_up)),
        concession=trial.concession,
        answers=tuple(map(_other, trial.answers)),
        line=trial.line,
        asked=trial.asked,
        needed=trial.needed,
        dimension=trial.dimension,
        price_minor=trial.freed.price_minor,
        set=trial.freed.numbers,
        set_makers=tuple(part.maker for part in trial.freed.refs),
        by_answer=trial.after is not None,
    )


def _other(other: OtherAnswer) -> OtherAnswerRecord:
    liquid = other.liquid
    return OtherAnswerRecord(
        answer=other.answer,
        family=liquid.family if liquid else None,
        blend_percent=liquid.blend_percent if liquid else None,
        vapour=other.vapour,
    )
