"""A supplier's table of prices as a price list: one price for each part, from the first piece on."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass

from spoutline.catalogue.price_lists import price_list_of
from spoutline.explain.writing.money import amount
from spoutline.model.faults import InputFault, InputProblem
from spoutline.model.pricing import PriceList
from spoutline.planning.table_intake.intake import Intake, IntakeReport
from spoutline.planning.table_intake.into_draft import OpenedTable


@dataclass(frozen=True, slots=True)
class PriceTableResult:
    """A price list out of a table; None where ``report`` is not sound."""

    report: IntakeReport
    price_list: PriceList | None


def price_list_in(opened: OpenedTable, head: Mapping[str, object]) -> PriceTableResult:
    """Return the price list that a table states; rows in another currency or of another maker are faults."""
    intake = Intake(opened.table, opened.headings, opened.mapping, opened.table_map)
    rows: list[tuple[str, Mapping[str, object]]] = []
    problems: list[InputProblem] = []
    for line in intake.lines():
        place = f"{opened.table.place}, row {line.row}"
        if not line.is_sound:
            continue
        if line.maker != head["maker"]:
            wanted = f"a price list is of one maker: {head['maker'] or 'name it with --maker'}"
            problems.append(InputProblem(place, "maker", repr(line.maker), wanted))
        for money in line.prices:
            if money.currency != head["currency"]:
                wanted = f"a price list is in one currency: {head['currency']}"
                problems.append(InputProblem(place, "currency", money.currency, wanted))
            elif money.minor is not None:
                price = amount(money.minor, money.currency)
                rows.append((place, {"number": line.number, "from_quantity": 1, "unit_price": price}))
    if not intake.report.is_sound:
        return PriceTableResult(intake.report, None)
    if problems:
        raise InputFault(tuple(problems))
    return PriceTableResult(intake.report, price_list_of(head, rows))
