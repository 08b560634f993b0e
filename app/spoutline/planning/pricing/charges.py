"""Labour, freight and tax of an option, exactly."""

from __future__ import annotations

from collections.abc import Sequence
from decimal import Decimal, localcontext

from spoutline.frozen import frozen
from spoutline.model.charge import Charge, Per
from spoutline.model.plan import PositionPlan
from spoutline.model.quotation_terms import FreightMethod, LabourTask, Tax, TaxRounding, Terms
from spoutline.model.quoted_option import LabourLine, QuotedLine, TaxLine
from spoutline.planning.pricing.rounding import EXACT, coin, exact_sum, rounded

_HUNDRED = Decimal(100)


@frozen(kw_only=True)
class Amounts:
    """What an option costs, step by step; ``total`` is what is payable."""

    goods: Decimal
    labour: Decimal
    freight: Decimal
    taxes: tuple[TaxLine, ...]
    rounding: Decimal
    total: Decimal


def labour_lines(plans: Sequence[PositionPlan], terms: Terms) -> tuple[LabourLine, ...]:
    """Return one line for each task of the table that anything is to be done for."""
    worked = [plan for plan in plans if plan.chosen is not None]
    lines = []
    for task in terms.labour.tasks:
        count = _count(task, worked)
        if count:
            hours = task.hours * count
            amount = rounded(hours * terms.labour.hourly_rate, coin(terms.currency), terms.rounding.mode)
            lines.append(
                LabourLine(
                    title=task.title,
                    per=task.per,
                    count=count,
                    hours_each=task.hours,
                    hours=hours,
                    hourly_rate=terms.labour.hourly_rate,
                    amount=amount,
                )
            )
    return tuple(lines)


def amounts_of(lines: Sequence[QuotedLine], labour: Sequence[LabourLine], terms: Terms) -> Amounts:
    """Return goods, labour, freight, taxes and total; a line without a price adds nothing and is named elsewhere."""
    goods = exact_sum(line.amount for line in lines if line.amount is not None)
    work = exact_sum(line.amount for line in labour)
    freight = _freight(lines, goods, terms)
    each = {
        Charge.GOODS: [line.amount for line in lines if line.amount is not None],
        Charge.LABOUR: [line.amount for line in labour],
        Charge.FREIGHT: [freight],
    }
    taxes = tuple(_tax(tax, each, terms) for tax in terms.taxes)
    exact = exact_sum((goods, work, freight, *(tax.amount for tax in taxes)))
    total = rounded(exact, terms.rounding.total_step, terms.rounding.mode)
    return Amounts(goods=goods, labour=work, freight=freight, taxes=taxes, rounding=total - exact, total=total)


def _count(task: LabourTask, worked: Sequence[PositionPlan]) -> int:
    concerned = [plan for plan in worked if not task.kinds or _holds(plan, task)]
    match task.per:
        case Per.POSITION:
            return len(concerned)
        case Per.DISPENSER:
            return len({plan.position.dispenser for plan in concerned})
        case Per.SITE:
            return 1 if concerned else 0


def _holds(plan: PositionPlan, task: LabourTask) -> bool:
    fitted = plan.chosen.hanging_set.bought if plan.chosen else ()
    kinds = {part.kind for part in fitted} | {line.part.kind for line in plan.accessories}
    return not kinds.isdisjoint(task.kinds)


def _freight(lines: Sequence[QuotedLine], goods: Decimal, terms: Terms) -> Decimal:
    amount = terms.freight.amount
    with localcontext(EXACT):
        match terms.freight.method:
            case FreightMethod.FIXED:
                exact = amount
            case FreightMethod.PERCENT_OF_GOODS:
                exact = goods * amount / _HUNDRED
            case FreightMethod.PER_KILOGRAM:
                exact = amount * exact_sum(Decimal(str(line.mass_kg)) * line.ordered for line in lines)
    return rounded(exact, coin(terms.currency), terms.rounding.mode)


def _tax(tax: Tax, each: dict[Charge, list[Decimal]], terms: Terms) -> TaxLine:
    step, mode = coin(terms.currency), terms.rounding.mode
    taxed = [amount for charge in Charge if charge in tax.on for amount in each[charge]]
    with localcontext(EXACT):
        base = exact_sum(taxed)
        if terms.rounding.tax is TaxRounding.WHOLE:
            amount = rounded(base * tax.percent / _HUNDRED, step, mode)
        else:
            amount = exact_sum(rounded(one * tax.percent / _HUNDRED, step, mode) for one in taxed)
    return TaxLine(
        name=tax.name, percent=tax.percent, on=tuple(c for c in Charge if c in tax.on), base=base, amount=amount
    )
