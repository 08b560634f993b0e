"""Where the agreed set of a position stands today: whether it was edited since, and whether it keeps every must."""

from __future__ import annotations

from spoutline.model.agreed_sets import AgreedStanding, SetBasis
from spoutline.model.plan import PositionPlan

_WITHOUT_SET = {SetBasis.NOT_AGREED: AgreedStanding.NOT_AGREED, SetBasis.NOT_ORDERED: AgreedStanding.NOT_ORDERED}


def standing_of(plan: PositionPlan) -> AgreedStanding | None:
    """Return where the agreed set of a position stands; None for a set that is planned or built."""
    if plan.basis is SetBasis.AGREED:
        if plan.keeps_every_must:
            return AgreedStanding.EDITED_HOLDS if plan.asks_otherwise else AgreedStanding.HOLDS
        return AgreedStanding.EDITED_BROKEN if plan.asks_otherwise else AgreedStanding.BROKEN
    return _WITHOUT_SET.get(plan.basis)


def is_to_be_looked_at(plan: PositionPlan) -> bool:
    """Return True where a person should look at the position again: it was edited, breaks a must, or is not agreed."""
    return standing_of(plan) not in (None, AgreedStanding.HOLDS, AgreedStanding.NOT_ORDERED)
