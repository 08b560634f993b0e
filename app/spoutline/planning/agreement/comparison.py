"""Sets of a station side by side: planned, agreed, built, or two agreements, with what differs."""

from __future__ import annotations

from collections.abc import Mapping, Sequence

from spoutline.frozen import frozen
from spoutline.model.agreed_sets import AgreedLink, AgreedSets
from spoutline.model.part_ref import PartRef
from spoutline.model.plan import SitePlan
from spoutline.model.requirement import Slot
from spoutline.planning.agreement.making import sets_of_plan

SetsByLabel = Mapping[str, tuple[AgreedLink, ...]]


@frozen(kw_only=True)
class ComparedPart:
    """One place of a chain: its part in each column, None where that set has none there."""

    slot: Slot
    parts: tuple[AgreedLink | None, ...]

    @property
    def differs(self) -> bool:
        """Whether any column hangs another part here than the first."""
        return len({_ref(one) for one in self.parts}) > 1


@frozen(kw_only=True)
class ComparedPosition:
    """The sets of one position, one for each column; None where a column does not know it or leaves it out."""

    label: str
    sets: tuple[tuple[AgreedLink, ...] | None, ...]

    @property
    def differs(self) -> bool:
        """Whether any column hangs another set than the first."""
        return len({None if one is None else tuple(map(_ref, one)) for one in self.sets}) > 1

    @property
    def parts(self) -> tuple[ComparedPart, ...]:
        """The places of all sets, dispenser first: a slot that a set has twice stands twice."""
        placed = [_placed(one or ()) for one in self.sets]
        order: list[tuple[Slot, int]] = []
        for column in placed:
            at = 0
            for key in column:
                if key in order:
                    at = order.index(key) + 1
                else:
                    order.insert(at, key)
                    at += 1
        return tuple(ComparedPart(slot=key[0], parts=tuple(column.get(key) for column in placed)) for key in order)


def planned_sets(site_plan: SitePlan) -> SetsByLabel:
    """Return the sets that a plan shows, by position."""
    return {one.label: one.set for one in sets_of_plan(site_plan)[0]}


def agreed_sets_by_label(agreed: AgreedSets) -> SetsByLabel:
    """Return the sets of an agreement, by position; positions that it leaves out are left out."""
    return {one.label: one.set for one in agreed.positions if one.set}


def compared(columns: Sequence[SetsByLabel], labels: Sequence[str] = ()) -> tuple[ComparedPosition, ...]:
    """Return every position of any column; ``labels`` come first, in their order."""
    known = dict.fromkeys((*labels, *(label for column in columns for label in column)))
    return tuple(
        ComparedPosition(label=label, sets=tuple(column.get(label) for column in columns))
        for label in known
        if any(label in column for column in columns)
    )


def _ref(link: AgreedLink | None) -> PartRef | None:
    return None if link is None else link.ref


def _placed(links: Sequence[AgreedLink]) -> dict[tuple[Slot, int], AgreedLink]:
    found: dict[tuple[Slot, int], AgreedLink] = {}
    for link in links:
        count = sum(slot is link.slot for slot, _ in found)
        found[link.slot, count] = link
    return found
