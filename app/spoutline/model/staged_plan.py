"""A plan as it comes, in the order of need: the set or that there is none, counts, why there is none, other sets."""

from __future__ import annotations

from dataclasses import replace

from spoutline.frozen import frozen
from spoutline.model.finding import Finding
from spoutline.model.plan import Alternative, Conflict, PositionPlan, SlotCount


@frozen(kw_only=True)
class StagedPlan:
    """What is known of one position so far; a later value of the same question says what this one says, and more.

    ``plan`` has the set with its checks and what goes with it, or says that there is none; counts and alternatives are
    never in it, nor what of these was ``left_open``, so that nothing made of it is out of date when they come.
    ``is_explained`` is False while it is not yet known why no set fits and all that would free one; until then
    ``obstacle`` is what is in the way, with the ways out found so far. ``counts`` and ``alternatives`` are None until
    they are worked out.
    """

    plan: PositionPlan
    is_explained: bool = True
    obstacle: Conflict | None = None
    counts: tuple[SlotCount, ...] | None = None
    alternatives: tuple[Alternative, ...] | None = None
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
        return replace(
            self.plan, counts=self.counts or (), alternatives=self.alternatives or (), left_open=self.left_open
        )
