"""A station's plan as a stable JSON document; amounts are exact decimals written as texts."""

from __future__ import annotations

from typing import Literal

from pydantic import Field

from spoutline.documents.content.totals import site_lines, total_of
from spoutline.documents.json.head import HeadedDocument, ProvenanceRecord, Record
from spoutline.explain.writing.money import amount
from spoutline.model.agreed_sets import SetsFrom
from spoutline.model.part import PartKind
from spoutline.model.plan import PlanStatus, PositionPlan
from spoutline.model.refit import Commonality, RefitPlan


class SitePosition(Record):
    """One position: its outcome, and the part numbers of its set, dispenser first."""

    label: str
    dispenser: str
    status: PlanStatus
    keeps_every_must: bool
    shoulds_not_met: int = Field(description="Lines of good practice that the set breaks.")
    shoulds_not_shown: int = Field(description="Checks of good practice that cannot be shown for want of data.")
    parts: tuple[str, ...]
    makers: tuple[str, ...] = Field(description="Of the parts, one each.")
    accessories: tuple[str, ...]
    accessory_makers: tuple[str, ...]
    set_price: str | None


class SitePart(Record):
    """One part number of the site with its pieces; amounts are null without a price."""

    number: str
    maker: str
    kind: PartKind
    name: str
    quantity: int
    unit_price: str | None
    amount: str | None
    lead_time_days: int
    kept: bool = Field(False, description="These pieces hang there today and stay: nobody buys them.")


class SiteSupersession(Record):
    """A part named in the survey and the one that took its place."""

    number_before: str
    number_now: str
    maker_before: str
    maker_now: str
    positions: tuple[str, ...]


class SiteCommonality(Record):
    """Sets chosen one by one against sets chosen together."""

    stock_price: str
    sets_alone: str
    sets_together: str
    part_numbers_alone: int
    part_numbers_together: int
    costs: str = Field(description="What the common sets cost more; below 0 where bought together they cost less.")
    saves: str = Field(description="What the part numbers no longer stocked are worth.")
    changed: tuple[str, ...]
    left_open: str = Field(description="What a better choice could at most still save; 0 where this is proved best.")
    floor: str | None = Field(
        None,
        description="What no choice costs less than, sets and stocked part numbers; null where this is proved best.",
    )


class SiteDocument(HeadedDocument):
    """What `site --json` prints. Fields are added in later versions, never renamed."""

    format: Literal["spoutline-site"] = "spoutline-site"
    site: str
    jurisdiction: str
    currency: str
    sets_from: SetsFrom = Field(SetsFrom(), description="Which sets the document shows.")
    positions: tuple[SitePosition, ...]
    parts: tuple[SitePart, ...]
    total: str
    without_price: tuple[str, ...]
    part_numbers: int
    supersessions: tuple[SiteSupersession, ...]
    commonality: SiteCommonality | None


def site_json(refit: RefitPlan) -> str:
    """Return the document as indented JSON, the same text for the same plan."""
    return document_of(refit).model_dump_json(indent=2) + "\n"


def document_of(refit: RefitPlan) -> SiteDocument:
    """Return the document of a plan."""
    plan = refit.site_plan
    currency = plan.survey.site.currency
    lines = site_lines(plan)
    total = total_of(lines)
    return SiteDocument(
        **ProvenanceRecord.of(plan.provenance).model_dump(),
        site=plan.survey.site.name,
        jurisdiction=plan.jurisdiction.id,
        currency=currency,
        positions=tuple(_position(one, currency) for one in plan.positions),
        parts=tuple(
            SitePart(
                number=line.part.number,
                maker=line.part.maker,
                kind=line.part.kind,
                name=line.part.name,
                quantity=line.quantity,
                unit_price=_amount(line.unit_minor, currency),
                amount=_amount(line.sum_minor, currency),
                lead_time_days=line.part.lead_time_days,
                kept=line.kept,
            )
            for line in lines
        ),
        total=f"{amount(total.minor, currency):f}",
        without_price=total.unpriced,
        part_numbers=len(lines),
        supersessions=tuple(
            SiteSupersession(
                number_before=one.before.number,
                number_now=one.now.number,
                maker_before=one.before.maker,
                maker_now=one.now.maker,
                positions=one.positions,
            )
            for one in refit.supersessions
        ),
        commonality=_commonality(refit.commonality, currency),
    )


def _position(plan: PositionPlan, currency: str) -> SitePosition:
    chosen = plan.chosen.hanging_set if plan.chosen else None
    return SitePosition(
        label=plan.position.label,
        dispenser=plan.position.dispenser,
        status=plan.status,
        keeps_every_must=plan.keeps_every_must,
        shoulds_not_met=plan.shoulds_not_met,
        shoulds_not_shown=plan.shoulds_not_shown,
        parts=chosen.numbers if chosen else (),
        makers=tuple(part.maker for part in chosen.refs) if chosen else (),
        accessories=tuple(line.part.number for line in plan.accessories),
        accessory_makers=tuple(line.part.maker for line in plan.accessories),
        set_price=_amount(chosen.price_minor, currency) if chosen else None,
    )


def _amount(minor: int | None, currency: str) -> str | None:
    return None if minor is None else f"{amount(minor, currency):f}"


def _commonality(found: Commonality | None, currency: str) -> SiteCommonality | None:
    if found is None:
        return None

    def text(minor: int) -> str:
        return f"{amount(minor, currency):f}"

    return SiteCommonality(
        stock_price=text(found.stock_price_minor),
        sets_alone=text(found.alone.sets_minor),
        sets_together=text(found.together.sets_minor),
        part_numbers_alone=found.alone.part_numbers,
        part_numbers_together=found.together.part_numbers,
        costs=text(found.costs_minor),
        saves=text(found.saves_minor),
        changed=tuple(change.label for change in found.changed),
        left_open=text(found.open_minor),
        floor=None if found.floor_minor is None else text(found.floor_minor),
    )
