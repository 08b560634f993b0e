"""What a breakaway is expected to cost in a year at one position, by the figures of terms."""

from __future__ import annotations

from decimal import ROUND_HALF_UP, Decimal, localcontext

from spoutline.model.faults import InputFault, InputProblem
from spoutline.model.part import Part
from spoutline.model.worded import Worded
from spoutline.planning.pricing.rounding import EXACT, coin
from spoutline.planning.pricing.selling import Pricer
from spoutline.planning.protocols import PartStore
from spoutline.planning.refit.drive_off import yearly_cost_of
from spoutline.planning.weighing.measures import YearlyCost


def yearly_cost(pricer: Pricer, parts: PartStore, currency: str) -> YearlyCost:
    """Return what tells the yearly cost of a breakaway in minor units of ``currency``.

    Raises
    ------
    InputFault
        The terms say nothing of drive-offs, or are in another currency.
    """
    terms = pricer.terms
    drive_offs = terms.drive_offs
    if drive_offs is None:
        right = "state how often drive-offs happen: a table drive_offs with per_position_year"
        raise InputFault((InputProblem("terms", "drive_offs", "nothing", right),))
    if terms.currency != currency:
        right = Worded("weigh a yearly cost on terms in {currency}, the currency of the site", currency=currency)
        raise InputFault((InputProblem("terms", "currency", repr(terms.currency), right),))
    step = coin(currency)

    def cost_of(part: Part) -> int | None:
        bought = part if part.comes_with is None else parts.part(part.comes_with)
        with localcontext(EXACT):
            cost = None if bought is None else yearly_cost_of(part, bought, drive_offs, pricer)
            return None if cost is None else int((cost / step).quantize(Decimal(1), rounding=ROUND_HALF_UP))

    return cost_of
