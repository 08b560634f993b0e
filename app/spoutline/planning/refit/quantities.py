"""How many pieces of each part a station takes: fitted, spares, and the rest of the last pack."""

from __future__ import annotations

from collections import Counter
from collections.abc import Iterable

from spoutline.frozen import frozen
from spoutline.model.part import Part, PartKind
from spoutline.model.part_ref import PartRef
from spoutline.model.plan import PositionPlan
from spoutline.model.quotation_terms import Terms
from spoutline.planning.refit.spares import spread_spares
from spoutline.rules.chain.accessories import joints_to_seal

_KIND_ORDER = {kind: number for number, kind in enumerate(PartKind)}


@frozen(kw_only=True)
class PartQuantity:
    """Pieces of one part number; ``mass_kg`` is of one piece, of an article with all that comes in it."""

    part: Part
    mass_kg: float
    fitted: int
    spares: int
    pack_rest: int

    @property
    def ordered(self) -> int:
        """Pieces in all: a whole number of packs."""
        return self.fitted + self.spares + self.pack_rest


def part_quantities(plans: Iterable[PositionPlan], terms: Terms) -> tuple[PartQuantity, ...]:
    """Return the quantities of every part that the positions need, ordered by kind and number.

    A part that hangs there already and stays is not ordered.

    Sealant is counted in containers: by joints where the terms say how far one goes, else one for each set. Spares are
    a percentage of the pieces of a kind fitted at the station (``refit.spares``); each sum becomes whole packs.
    """
    fitted: Counter[PartRef] = Counter()
    sealed: Counter[PartRef] = Counter()
    parts: dict[PartRef, Part] = {}
    masses: dict[PartRef, float] = {}
    for plan in plans:
        for part, pieces in _pieces(plan):
            parts[part.ref] = part
            masses[part.ref] = _mass_kg(part, plan)
            fitted[part.ref] += pieces
            if part.kind is PartKind.SEALANT:
                sealed[part.ref] += _sealed_joints(plan)
    reach = terms.consumables.sealant_joints
    if reach is not None:
        for ref, joints in sealed.items():
            fitted[ref] = -(-joints // reach)
    spares: dict[PartRef, int] = {}
    for rule in terms.spares:
        spares |= spread_spares({ref: fitted[ref] for ref, part in parts.items() if part.kind is rule.kind}, rule)
    return tuple(
        _quantity(parts[ref], masses[ref], fitted[ref], spares.get(ref, 0))
        for ref in sorted(parts, key=lambda ref: (_KIND_ORDER[parts[ref].kind], ref))
    )


def _mass_kg(part: Part, plan: PositionPlan) -> float:
    """Return the mass of a part and of what comes with it under its number."""
    bought = plan.chosen.hanging_set.bought if plan.chosen and part.article is not None else ()
    return part.mass_kg + sum(one.mass_kg for one in bought if one.comes_with == part.ref)


def _quantity(part: Part, mass_kg: float, fitted: int, spares: int) -> PartQuantity:
    pack_rest = -(fitted + spares) % part.pack_quantity
    return PartQuantity(part=part, mass_kg=mass_kg, fitted=fitted, spares=spares, pack_rest=pack_rest)


def _pieces(plan: PositionPlan) -> Iterable[tuple[Part, int]]:
    if plan.chosen is None:
        return
    for part in plan.chosen.hanging_set.bought:
        if part.comes_with is None:  # else it comes in the article that another part of the set stands for
            yield part, 1
    for line in plan.accessories:
        yield line.part, line.quantity


def _sealed_joints(plan: PositionPlan) -> int:
    return joints_to_seal(plan.chosen) if plan.chosen else 0
