"""A plan as it comes, in the order of need: the set or that there is none, counts, why there is none, other sets."""

from __future__ import annotations

from dataclasses import replace
from typing import Final

from spoutline.frozen import frozen
from spoutline.model.finding import Finding
from spoutline.model.plan import Alternative, AlternativeKind, Conflict, PositionPlan, SlotCount

# what differs in kind comes before the plain next cheapest, which is named only where it differs in no other way
LOOKED_FOR_IN_TURN: Final = (
    AlternativeKind.RECONNECTABLE,
    AlternativeKind.SINGLE_USE,
    AlternativeKind.LOW_PERMEATION,
    AlternativeKind.WITHOUT_ADAPTOR,
    AlternativeKind.LIGHTER,
    AlternativeKind.LOWER_PRESSURE_LOSS,
    AlternativeKind.LOWEST_PRICE,
    AlternativeKind.SHORTER_LEAD_TIME,
    AlternativeKind.ONE_MAKER,
    AlternativeKind.NEXT_CHEAPEST,
)


@frozen(kw_only=True)
class StagedPlan:
    """What is known of one position so far; a later value of the same question says what this one says, and more.

    ``plan`` has the set with its checks and what goes with it, or says that there is none; counts and alternatives are
    never in it, nor what of these was ``left_open``, so that nothing made of it is out of date when they come.
    ``is_explained`` is False while it is not yet known why no set fits and all that would free one; until then
    ``obstacle`` is what is in the way, with the ways out found so far. ``counts`` and ``alternatives`` are None until
    they are worked out; until then ``found`` are the other sets known so far and ``sought`` the kinds of which it is
    not yet known whether there is one, both in turn: nothing ever comes before what was found.
    """

    plan: PositionPlan
    is_explained: bool = True
    obstacle: Conflict | None = None
    counts: tuple[SlotCount, ...] | None = None
    alternatives: tuple[Alternative, ...] | None = None
    found: tuple[Alternative, ...] = ()
    sought: tuple[AlternativeKind, ...] = ()
    left_open: tuple[Finding, ...] = ()

    @staticmethod
    def of(whole: PositionPlan) -> StagedPlan:
        """Return a plan that came all at once."""
        plan = replace(whole, counts=(), alternatives=(), left_open=())
        return StagedPlan(plan=plan, counts=whole.counts, alternatives=whole.alternatives, left_open=whole.left_open)

    @property
    def is_whole(self) -> bool:
        """Whether nothing is to come any more."""
        return self.is_explained and self.counts is not None and self.alternatives is not None

    @property
    def whole(self) -> PositionPlan:
        """The plan with all that has come so far."""
        others = self.found if self.alternatives is None else self.alternatives
        return replace(self.plan, counts=self.counts or (), alternatives=others, left_open=self.left_open)

    @property
    def others(self) -> tuple[Alternative, ...]:
        """The other sets that are known, in turn: those that come later stand behind those that came before."""
        known = self.found if self.alternatives is None else self.alternatives
        return tuple(sorted(known, key=lambda one: LOOKED_FOR_IN_TURN.index(one.kind)))
