"""Why a set: in each of its places, how the catalogue came down to the part that hangs there."""

from __future__ import annotations

from spoutline.frozen import frozen
from spoutline.model.cuts import Cut, Decider
from spoutline.model.part import Part
from spoutline.model.plan import HangingSet, JudgedSet
from spoutline.model.requirement import RequirementId, Slot
from spoutline.model.substitute import Substitute


@frozen(kw_only=True)
class FunnelStep:
    """How many parts one cut takes out; ``line`` names the requirement line where a must of the part alone does."""

    cut: Cut
    removed: int
    line: RequirementId | None = None


@frozen(kw_only=True)
class Rival:
    """A part that was left, with the best set that holds it and what that set costs or gains against the chosen one.

    ``mass_kg`` and ``lead_time_days`` say how much more the set has than the chosen one; ``flow_m3_s`` how much more
    it delivers, hot or cold, whichever is less; None where either is not known.
    """

    substitute: Substitute
    mass_kg: float
    lead_time_days: int
    flow_m3_s: float | None

    @property
    def part(self) -> Part:
        """The part in this place."""
        return self.substitute.part

    @property
    def price_difference_minor(self) -> int:
        """What the set costs more than the chosen one, in minor units."""
        return self.substitute.price_difference_minor


@frozen(kw_only=True)
class PlaceFunnel:
    """One place of the chosen set.

    ``there`` counts the catalogue's parts of the kind and those recorded at the position that may stay:
    ``there == sum(step.removed for step in steps) + left``. ``rivals`` are the parts besides the chosen one that were
    left, the best set first. ``runner_up`` would be taken next; a part that another outmatches may be it. ``left``
    counts the rivals, and the chosen part where the search knows it (one that was agreed or built may be gone from the
    catalogue). ``cheaper`` is the cheapest set that costs less because it departs from good practice more often.
    """

    slot: Slot
    chosen: Part
    there: int
    steps: tuple[FunnelStep, ...]
    left: int
    rivals: tuple[Rival, ...]
    runner_up: Rival | None
    cheaper: Substitute | None

    @property
    def decider(self) -> Decider:
        """What puts the chosen part before the runner-up."""
        if self.runner_up is None:
            return Decider.ALONE
        difference = self.runner_up.price_difference_minor
        if difference < 0:
            return Decider.WHOLE
        return Decider.PRICE if difference else Decider.NUMBER


@frozen(kw_only=True)
class SetReasons:
    """Why the set of a position: the places of its chain, dispenser first, fittings between them left out."""

    chosen: JudgedSet
    places: tuple[PlaceFunnel, ...]

    @property
    def hanging_set(self) -> HangingSet:
        """The chosen set."""
        return self.chosen.hanging_set
