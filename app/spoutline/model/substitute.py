"""What else could hang in a place of a chosen set, and what its taking that place would change."""

from __future__ import annotations

from spoutline.frozen import frozen
from spoutline.model.finding import Finding
from spoutline.model.part import Part
from spoutline.model.plan import HangingSet, JudgedSet
from spoutline.model.requirement import RequirementId, Slot


@frozen(kw_only=True)
class SlotChange:
    """What else changes: a part that goes, a part that comes; None where nothing goes, or nothing comes."""

    slot: Slot
    taken_out: Part | None
    put_in: Part | None


@frozen(kw_only=True)
class Substitute:
    """A part that could hang in the place, with the best set that holds it: fewest broken shoulds, then price.

    ``price_difference_minor`` is what that set costs more than the chosen one. ``changes`` are the other places that
    change. ``given_up`` are the should-lines that the set breaks and the chosen one keeps, ``kept`` the reverse; a line
    stands once for each part or check that breaks it.
    """

    part: Part
    judged: JudgedSet
    price_difference_minor: int
    changes: tuple[SlotChange, ...]
    given_up: tuple[RequirementId, ...]
    kept: tuple[RequirementId, ...]


@frozen(kw_only=True)
class Misfit:
    """A part that could not hang in the place: the first must that it breaks, or the lines that no set with it keeps.

    ``finding`` is None where no rule forbids the part itself. ``lines`` are then the requirement lines that cannot hold
    together with it, fewest possible; empty where only a full check of a set turns each of its sets down.
    """

    part: Part
    finding: Finding | None
    lines: tuple[RequirementId, ...]


@frozen(kw_only=True)
class Substitutes:
    """Everything that could hang in place of ``part``: fewest shoulds given up first, then price, then number.

    ``misfits`` are the other catalogue parts of the kind, by number; None where they were not asked for. Of those
    ``not_decided`` it takes too much work to say whether they could.
    """

    slot: Slot
    part: Part
    chosen: HangingSet
    fitting: tuple[Substitute, ...]
    misfits: tuple[Misfit, ...] | None
    not_decided: tuple[Part, ...] = ()
