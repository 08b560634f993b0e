"""Several other answers to one question side by side: what each costs, and what must be changed when."""

from __future__ import annotations

from dataclasses import dataclass
from functools import cached_property

from spoutline.frozen import frozen
from spoutline.model.part import Part
from spoutline.model.plan import PositionPlan, SitePlan
from spoutline.model.requirement import Slot
from spoutline.model.what_if import PartFate, WhatIfEffect, WhatIfPosition, WhatIfQuestion, WhatIfResult


@frozen(kw_only=True)
class MatrixCell:
    """A position under one answer; ``effect`` is None where the answer is not for it, so that it stays as it is."""

    effect: WhatIfEffect | None
    price_minor: int | None


@frozen(kw_only=True)
class MatrixRow:
    """A position under every answer, in the order of the columns."""

    label: str
    price_today_minor: int | None
    cells: tuple[MatrixCell, ...]


@frozen(kw_only=True)
class PartRow:
    """A part of today under every answer: whether it stays or must go; None where an answer tells nothing of it."""

    label: str
    slot: Slot
    part: Part
    fates: tuple[PartFate | None, ...]


@frozen(kw_only=True)
class MatrixSum:
    """A column in figures: prices in minor units, counts of positions and pieces.

    ``difference_minor`` is against today, of the positions that have a set both times. ``must_change`` counts positions
    whose set of today breaks a must and that get another, ``may_stay`` those whose set may stay although a new plan
    would take another; ``without_set`` those that have none.
    """

    price_minor: int
    difference_minor: int
    must_change: int
    may_stay: int
    without_set: int
    parts_coming: int


@dataclass(frozen=True, eq=False, kw_only=True)
class WhatIfMatrix:
    """Several answers to one question for the same positions, in the order in which they were asked.

    The rows are the positions that any of the answers is for, in survey order.
    """

    question: WhatIfQuestion
    before: SitePlan
    columns: tuple[WhatIfResult, ...]

    @property
    def currency(self) -> str:
        """The currency of every price."""
        return self.before.survey.site.currency

    @cached_property
    def shown(self) -> tuple[PositionPlan, ...]:
        """The positions shown, as they are today."""
        touched = {one.label for column in self.columns for one in column.positions}
        return tuple(plan for plan in self.before.positions if plan.position.label in touched)

    @cached_property
    def _by_label(self) -> tuple[dict[str, WhatIfPosition], ...]:
        return tuple({one.label: one for one in column.positions} for column in self.columns)

    @cached_property
    def rows(self) -> tuple[MatrixRow, ...]:
        """Every position shown."""
        return tuple(map(self._row, self.shown))

    @cached_property
    def today(self) -> MatrixSum:
        """The column of today."""
        prices = [_price(plan) for plan in self.shown]
        return MatrixSum(
            price_minor=sum(price or 0 for price in prices),
            difference_minor=0,
            must_change=0,
            may_stay=0,
            without_set=sum(price is None for price in prices),
            parts_coming=0,
        )

    @cached_property
    def sums(self) -> tuple[MatrixSum, ...]:
        """The column of each answer."""
        return tuple(self._sum(place) for place in range(len(self.columns)))

    @cached_property
    def part_rows(self) -> tuple[PartRow, ...]:
        """Every part of today's sets, position by position, dispenser first."""
        return tuple(
            PartRow(
                label=plan.position.label,
                slot=link.slot,
                part=link.part,
                fates=tuple(_fate(known.get(plan.position.label), link.slot, link.part) for known in self._by_label),
            )
            for plan in self.shown
            if plan.chosen is not None
            for link in plan.chosen.hanging_set.links
        )

    def _row(self, plan: PositionPlan) -> MatrixRow:
        label, price = plan.position.label, _price(plan)
        found = [known.get(label) for known in self._by_label]
        cells = (
            MatrixCell(effect=None, price_minor=price)
            if one is None
            else MatrixCell(effect=one.effect, price_minor=one.price_after_minor)
            for one in found
        )
        return MatrixRow(label=label, price_today_minor=price, cells=tuple(cells))

    def _sum(self, place: int) -> MatrixSum:
        column, cells = self.columns[place], [row.cells[place] for row in self.rows]
        return MatrixSum(
            price_minor=sum(cell.price_minor or 0 for cell in cells),
            difference_minor=column.totals.difference_minor,
            must_change=column.count(WhatIfEffect.MUST_CHANGE),
            may_stay=column.count(WhatIfEffect.MAY_STAY),
            without_set=sum(cell.price_minor is None for cell in cells),
            parts_coming=sum(one.quantity for one in column.coming),
        )


def _price(plan: PositionPlan) -> int | None:
    return plan.chosen.hanging_set.price_minor if plan.chosen is not None else None


def _fate(found: WhatIfPosition | None, slot: Slot, part: Part) -> PartFate | None:
    """Return what becomes of a part of today; one of which an answer is not asked stays."""
    if found is None:
        return PartFate.STAYS
    fates = (
        one.fate for one in found.parts if one.before is not None and one.slot is slot and one.before.ref == part.ref
    )
    return next(fates, None)
