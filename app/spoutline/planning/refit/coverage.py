"""Two options that do not cover the same hoses, held against each other on the hoses that both cover."""

from __future__ import annotations

from collections.abc import Sequence
from decimal import Decimal

from spoutline.model.plan import PositionPlan
from spoutline.model.quoted_option import CommonAmounts
from spoutline.planning.pricing.charges import amounts_of, labour_lines
from spoutline.planning.pricing.selling import Pricer
from spoutline.planning.refit.priced_lines import quoted_line
from spoutline.planning.refit.quantities import part_quantities


def common_amounts(first: Sequence[PositionPlan], own: Sequence[PositionPlan], pricer: Pricer) -> CommonAmounts | None:
    """Return what both come to for the hoses that both cover; None where they cover the same ones.

    The sets are those of the options; quantities, price breaks, spares, labour, freight, taxes and rounding are
    reckoned anew for these hoses alone.
    """
    covered, mine = _covered(first), _covered(own)
    if covered == mine:
        return None
    both = [label for label in covered if label in set(mine)]
    return CommonAmounts(
        labels=tuple(both),
        first_total=_total([one for one in first if one.position.label in both], pricer),
        own_total=_total([one for one in own if one.position.label in both], pricer),
    )


def _covered(plans: Sequence[PositionPlan]) -> list[str]:
    return [plan.position.label for plan in plans if plan.chosen is not None]


def _total(plans: Sequence[PositionPlan], pricer: Pricer) -> Decimal:
    if not plans:
        return Decimal(0)
    lines = tuple(quoted_line(quantity, pricer) for quantity in part_quantities(plans, pricer.terms))
    return amounts_of(lines, labour_lines(plans, pricer.terms), pricer.terms).total
