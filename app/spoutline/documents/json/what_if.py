"""Another answer as a stable JSON document: what `whatif --json` prints."""

from __future__ import annotations

from typing import Literal

from pydantic import Field

from spoutline.documents.json.head import HeadedDocument, ProvenanceRecord, Record
from spoutline.explain.plan.what_if_text import answer_written
from spoutline.model.agreed_sets import SetsFrom
from spoutline.model.check import Check, CheckId, Outcome
from spoutline.model.finding import Severity
from spoutline.model.part import Part
from spoutline.model.plan import PlanStatus, PositionPlan
from spoutline.model.requirement import RequirementId, Slot
from spoutline.model.what_if import (
    CheckChange,
    PartChange,
    PartCount,
    PartFate,
    WhatIfEffect,
    WhatIfPosition,
    WhatIfQuestion,
    WhatIfResult,
)


class SetRecord(Record):
    """A set of one time; empty and null where there is none."""

    status: PlanStatus
    parts: tuple[str, ...]
    makers: tuple[str, ...]
    price_minor: int | None


class PartChangeRecord(Record):
    """One place of the chain; null where that set has no part there."""

    slot: Slot
    before: str | None
    before_maker: str | None
    after: str | None
    after_maker: str | None
    fate: PartFate
    breaks: tuple[str, ...] = Field(description="Rules whose must the part of today breaks under the other answer.")


class CheckRecord(Record):
    """A check of one set; figures in SI units."""

    outcome: Outcome
    severity: Severity
    value: float | None
    text: str
    lower: float | None
    upper: float | None


class CheckChangeRecord(Record):
    """A check that differs; null where that set has no such check."""

    id: CheckId
    before: CheckRecord | None
    after: CheckRecord | None


class PositionRecord(Record):
    """One position; amounts in minor units (cents)."""

    label: str
    effect: WhatIfEffect
    before: SetRecord
    after: SetRecord
    difference_minor: int | None
    parts: tuple[PartChangeRecord, ...]
    checks: tuple[CheckChangeRecord, ...]
    gives_up: tuple[RequirementId, ...]
    keeps: tuple[RequirementId, ...]


class PartCountRecord(Record):
    """A part with the number of places that it leaves or takes."""

    part_number: str
    maker: str
    quantity: int
    unit_price_minor: int | None


class TotalsRecord(Record):
    """Sums in minor units: before + gained - lost + difference is after."""

    before_minor: int
    after_minor: int
    difference_minor: int
    gained_minor: int
    lost_minor: int


class WhatIfDocument(HeadedDocument):
    """What `whatif --json` prints. Fields are added in later versions, never renamed.

    The provenance at the head is that of the sets of today; ``then`` that of the survey with the other answer.
    """

    format: Literal["spoutline-what-if"] = "spoutline-what-if"
    jurisdiction: str
    sets_from: SetsFrom
    question: WhatIfQuestion
    answer: str = Field(description="As it is written on the command line.")
    lasting: bool = Field(False, description="Sets of today's answers that keep every must of this one too.")
    labels: tuple[str, ...] = Field(description="Positions looked at; empty is the whole station.")
    currency: str
    then: ProvenanceRecord
    then_jurisdiction: str
    positions: tuple[PositionRecord, ...]
    untouched: int
    totals: TotalsRecord
    leaving: tuple[PartCountRecord, ...]
    coming: tuple[PartCountRecord, ...]


def what_if_json(found: WhatIfResult) -> str:
    """Return the document as indented JSON, the same text for the same result."""
    before, totals = found.before, found.totals
    document = WhatIfDocument(
        **ProvenanceRecord.of(before.provenance).model_dump(),
        jurisdiction=before.jurisdiction.id,
        sets_from=before.sets_from,
        question=found.asked.question,
        answer=answer_written(found.asked),
        lasting=found.asked.lasting,
        labels=found.asked.labels,
        currency=found.currency,
        then=ProvenanceRecord.of(found.made_from),
        then_jurisdiction=found.jurisdiction.id,
        positions=tuple(map(_position, found.positions)),
        untouched=found.untouched,
        totals=TotalsRecord(
            before_minor=totals.before_minor,
            after_minor=totals.after_minor,
            difference_minor=totals.difference_minor,
            gained_minor=totals.gained_minor,
            lost_minor=totals.lost_minor,
        ),
        leaving=tuple(_count(one, found.currency) for one in found.leaving),
        coming=tuple(_count(one, found.currency) for one in found.coming),
    )
    return document.model_dump_json(indent=2) + "\n"


def _position(one: WhatIfPosition) -> PositionRecord:
    return PositionRecord(
        label=one.label,
        effect=one.effect,
        before=_set(one.before),
        after=_set(one.after),
        difference_minor=one.difference_minor,
        parts=tuple(map(_part, one.parts)),
        checks=tuple(record for change in one.checks if (record := _check_change(change)) is not None),
        gives_up=one.given_up,
        keeps=one.kept,
    )


def _set(plan: PositionPlan) -> SetRecord:
    hanging_set = plan.chosen.hanging_set if plan.chosen else None
    return SetRecord(
        status=plan.status,
        parts=hanging_set.numbers if hanging_set else (),
        makers=tuple(ref.maker for ref in hanging_set.refs) if hanging_set else (),
        price_minor=hanging_set.price_minor if hanging_set else None,
    )


def _part(change: PartChange) -> PartChangeRecord:
    before, before_maker = _named(change.before)
    after, after_maker = _named(change.after)
    return PartChangeRecord(
        slot=change.slot,
        before=before,
        before_maker=before_maker,
        after=after,
        after_maker=after_maker,
        fate=change.fate,
        breaks=tuple(dict.fromkeys(one.rule_id for one in change.findings)),
    )


def _named(part: Part | None) -> tuple[str | None, str | None]:
    return (None, None) if part is None else (part.number, part.maker)


def _check_change(change: CheckChange) -> CheckChangeRecord | None:
    one = change.after or change.before
    if one is None:
        return None
    return CheckChangeRecord(id=one.id, before=_check(change.before), after=_check(change.after))


def _check(check: Check | None) -> CheckRecord | None:
    if check is None:
        return None
    return CheckRecord(
        outcome=check.outcome,
        severity=check.severity,
        value=check.value,
        text=check.text,
        lower=check.lower.value if check.lower else None,
        upper=check.upper.value if check.upper else None,
    )


def _count(one: PartCount, currency: str) -> PartCountRecord:
    return PartCountRecord(
        part_number=one.part.number,
        maker=one.part.maker,
        quantity=one.quantity,
        unit_price_minor=one.part.price_minor(currency),
    )
