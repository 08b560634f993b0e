"""What keeps a draft from being issued: prices, hoses and margins for which nobody gives a word."""

from __future__ import annotations

from spoutline.model.faults import InputFault, InputProblem
from spoutline.model.margin import LowMargin
from spoutline.model.part_ref import PartRef
from spoutline.model.quotation import Quotation
from spoutline.model.worded import Worded


def check_prices(quotation: Quotation) -> None:
    """Raise ``InputFault`` naming every part without a price for which nobody answers."""
    found: dict[PartRef, InputProblem] = {}
    for _, line in quotation.open_lines:
        reason = line.gap.value.replace("_", " ") if line.gap else "no price"
        detail = f" ({line.gap_detail})" if line.gap_detail else ""
        wanted = "add it to a price list, or to [[overrides]] of the terms with the name of who answers for it"
        found[line.part] = InputProblem(
            "", line.part_number, Worded("{reason}{detail}", reason=reason, detail=detail), wanted
        )
    if found:
        raise InputFault(tuple(found[part] for part in sorted(found)))


def check_coverage(quotation: Quotation) -> None:
    """Raise ``InputFault`` naming every option that leaves hoses out and for which nobody gives a word."""
    problems = [
        InputProblem(
            "",
            Worded("option {title}", title=option.title),
            Worded("covers {covered} of {count} hoses", covered=option.covered, count=len(option.positions)),
            Worded(
                "nothing is offered for {without_set}; who issues it all the same says why (--incomplete REASON)",
                without_set=", ".join(one.label for one in option.without_set),
            ),
        )
        for option in quotation.unanswered_options
    ]
    if problems:
        raise InputFault(tuple(problems))


def check_margins(quotation: Quotation) -> None:
    """Raise ``InputFault`` naming every line below cost or the least margin for which nobody gives a word."""
    least, currency = quotation.terms.selling.least_margin_percent, quotation.terms.currency
    problems = [
        InputProblem(
            "",
            Worded("option {title}, {part_number}", title=option.title, part_number=line.part_number),
            Worded(
                "sold at {unit_price:f} {currency}, cost {cost:f} {currency}",
                unit_price=line.unit_price,
                currency=currency,
                cost=line.cost,
            ),
            (
                "that is below its cost"
                if low is LowMargin.BELOW_COST
                else Worded("that is below the least margin of {least} %", least=least)
            )
            + "; who issues it all the same says why (--low-margin REASON)",
        )
        for option, lines in quotation.unanswered_margins
        for line, low in lines
    ]
    if problems:
        raise InputFault(tuple(problems))
