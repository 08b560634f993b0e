"""What a position and a site cost: exact sums of minor units, with what has no price named apart."""

from __future__ import annotations

from collections.abc import Iterable
from dataclasses import replace

from spoutline.frozen import frozen
from spoutline.model.part import Part, PartKind
from spoutline.model.part_ref import PartRef, told_apart
from spoutline.model.plan import PositionPlan, SitePlan

_KIND_ORDER = {kind: number for number, kind in enumerate(PartKind)}


@frozen(kw_only=True)
class BillLine:
    """A part with its quantity; prices in minor units of the currency asked, None where the catalogue has none.

    A part that hangs there already and stays is ``kept``: it costs nothing, and no time until it arrives.
    """

    part: Part
    quantity: int
    unit_minor: int | None
    kept: bool = False

    @property
    def sum_minor(self) -> int | None:
        """Quantity times unit price; None without a price."""
        return None if self.unit_minor is None else self.unit_minor * self.quantity


@frozen(kw_only=True)
class Total:
    """A sum in minor units, the parts that have no price, and the longest lead time in days."""

    minor: int
    unpriced: tuple[str, ...]
    longest_lead_time_days: int


def set_lines(plan: PositionPlan, currency: str) -> tuple[BillLine, ...]:
    """Return the parts of the chosen set in chain order, one line for each link; empty without a set."""
    if plan.chosen is None:
        return ()
    links = plan.chosen.hanging_set.links
    return tuple(
        BillLine(part=link.part, quantity=1, unit_minor=link.price_minor(currency), kept=link.kept) for link in links
    )


def accessory_lines(plan: PositionPlan, currency: str) -> tuple[BillLine, ...]:
    """Return what goes with the set, in the order planned."""
    return tuple(
        BillLine(part=line.part, quantity=line.quantity, unit_minor=line.part.price_minor(currency))
        for line in plan.accessories
    )


def position_lines(plan: PositionPlan, currency: str) -> tuple[BillLine, ...]:
    """Return all lines of a position: the set, then what goes with it."""
    return (*set_lines(plan, currency), *accessory_lines(plan, currency))


def site_lines(site_plan: SitePlan) -> tuple[BillLine, ...]:
    """Return each part of the site once, quantities added up, ordered by kind, part number and maker.

    Pieces that stay make a line of their own behind those that are bought. What comes in an article makes none: the
    article is bought under the number of its first part.
    """
    currency = site_plan.survey.site.currency
    quantities: dict[tuple[PartRef, bool], int] = {}
    lines: dict[tuple[PartRef, bool], BillLine] = {}
    for plan in site_plan.positions:
        for line in position_lines(plan, currency):
            if line.part.comes_with is not None and not line.kept:
                continue
            key = (line.part.ref, line.kept)
            quantities[key] = quantities.get(key, 0) + line.quantity
            lines[key] = line
    merged = (replace(line, quantity=quantities[key]) for key, line in lines.items())
    return tuple(sorted(merged, key=lambda line: (_KIND_ORDER[line.part.kind], line.part.ref, line.kept)))


def total_of(lines: Iterable[BillLine]) -> Total:
    """Return the exact sum of lines."""
    minor, longest = 0, 0
    unpriced: list[PartRef] = []
    for line in lines:
        longest = longest if line.kept else max(longest, line.part.lead_time_days)
        if line.sum_minor is None:
            unpriced.append(line.part.ref)
        else:
            minor += line.sum_minor
    return Total(minor=minor, unpriced=told_apart(dict.fromkeys(unpriced)), longest_lead_time_days=longest)
