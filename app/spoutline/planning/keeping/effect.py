"""What an edition does to stations: sets that break, that come about, that change, that cost less or more, and why."""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from enum import StrEnum

from spoutline.catalogue.shelf_lookup import EntryChange
from spoutline.frozen import frozen
from spoutline.model.part_ref import PartRef
from spoutline.model.plan import PositionPlan, SitePlan


class Effect(StrEnum):
    """What becomes of the set of a position."""

    BREAKS = "breaks"  # a set that keeps every must before, none after
    COMES_ABOUT = "comes_about"
    CHANGES = "changes"  # other parts
    CHEAPER = "cheaper"  # the same parts
    DEARER = "dearer"
    SAME = "same"


@frozen(kw_only=True)
class PositionEffect:
    """One position planned with two editions; a set is empty where there was none, its price then None.

    ``because`` are the changed entries that touch the sets: of parts that left the set, that came into it, or that it
    keeps at another price. ``plan`` is that of the later edition, with its conflict where it has no set.
    """

    site: str
    label: str
    effect: Effect
    currency: str
    before: tuple[PartRef, ...]
    after: tuple[PartRef, ...]
    price_before_minor: int | None
    price_after_minor: int | None
    because: tuple[EntryChange, ...]
    plan: PositionPlan

    @property
    def difference_minor(self) -> int | None:
        """What the later set costs more, in minor units; None where one of them has no price."""
        if self.price_before_minor is None or self.price_after_minor is None:
            return None
        return self.price_after_minor - self.price_before_minor


def effects(before: SitePlan, after: SitePlan, changes: Sequence[EntryChange]) -> tuple[PositionEffect, ...]:
    """Return what becomes of every position of a survey that was planned with two editions, in survey order."""
    changed = {change.ref: change for change in changes}
    pairs = zip(before.positions, after.positions, strict=True)
    return tuple(_effect(one, other, before, changed) for one, other in pairs)


def _effect(
    before: PositionPlan, after: PositionPlan, site_plan: SitePlan, changed: dict[PartRef, EntryChange]
) -> PositionEffect:
    old, new = _parts(before), _parts(after)
    price_before, price_after = _price(before), _price(after)
    return PositionEffect(
        site=site_plan.survey.site.name,
        label=before.position.label,
        effect=_kind(old, new, price_before, price_after),
        currency=site_plan.survey.site.currency,
        before=old,
        after=new,
        price_before_minor=price_before,
        price_after_minor=price_after,
        because=tuple(_because(old, new, changed)),
        plan=after,
    )


def _kind(
    old: tuple[PartRef, ...], new: tuple[PartRef, ...], price_before: int | None, price_after: int | None
) -> Effect:
    if not old or not new:
        return Effect.SAME if old == new else Effect.BREAKS if old else Effect.COMES_ABOUT
    if old != new:
        return Effect.CHANGES
    if price_before == price_after:
        return Effect.SAME
    return Effect.CHEAPER if (price_after or 0) < (price_before or 0) else Effect.DEARER


def _because(
    old: tuple[PartRef, ...], new: tuple[PartRef, ...], changed: dict[PartRef, EntryChange]
) -> Iterator[EntryChange]:
    for ref in dict.fromkeys((*old, *new)):
        if ref in changed:
            yield changed[ref]


def _parts(plan: PositionPlan) -> tuple[PartRef, ...]:
    return tuple(link.part.ref for link in plan.chosen.hanging_set.links) if plan.chosen is not None else ()


def _price(plan: PositionPlan) -> int | None:
    return plan.chosen.hanging_set.price_minor if plan.chosen is not None else None
