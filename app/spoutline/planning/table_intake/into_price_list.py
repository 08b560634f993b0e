"""A supplier's table of prices as a price list: one price for each part, from the first piece on."""

from __future__ import annotations

from collections.abc import Mapping

from spoutline.catalogue.price_lists import price_list_of
from spoutline.explain.writing.money import amount
from spoutline.frozen import frozen
from spoutline.model.pricing import PriceList
from spoutline.model.worded import Worded
from spoutline.planning.table_intake.cell_values import Money
from spoutline.planning.table_intake.draft_changes import DraftChanges, row_changes
from spoutline.planning.table_intake.intake import Intake, IntakeReport, PartLine, Progress, Seen
from spoutline.planning.table_intake.into_draft import OpenedTable, report_of_row


@frozen
class PriceTableResult:
    """A price list out of a table; None where ``report`` is not sound. ``prices`` are its rows, numbers and amounts."""

    report: IntakeReport
    price_list: PriceList | None
    prices: tuple[tuple[int, str, str], ...] = ()


def price_list_in(
    opened: OpenedTable, head: Mapping[str, object], progress: Progress | None = None, *, seen: Seen | None = None
) -> PriceTableResult:
    """Return the price list that a table states; a price in another currency or of another maker is a fault.

    Raise ``InputFault`` where ``head`` is faulty or no row has a price, ``Stopped`` where the progress asks to stop.
    """
    intake = Intake(opened.table, opened.headings, opened.mapping, opened.table_map, progress, seen=seen)
    found: list[tuple[int, str, str]] = []
    for line in intake.lines():
        if not line.is_sound:
            continue
        if line.maker != head["maker"]:
            wanted = Worded(
                "a price list is of one maker: {head}; or skip the row", head=head["maker"] or "name it with --maker"
            )
            intake.report.add(report_of_row(opened, line.row, "maker", line.maker, wanted))
        for money in line.prices:
            if money.currency != head["currency"]:
                wanted = Worded(
                    "a price list is in one currency: {head}; or leave the column out", head=head["currency"]
                )
                text = _written(line, money)
                intake.report.add(report_of_row(opened, line.row, f"price_{money.currency.lower()}", text, wanted))
            elif money.minor is not None:
                found.append((line.row, line.number, str(amount(money.minor, money.currency))))
    prices = tuple(found)
    if not intake.report.is_sound:
        return PriceTableResult(intake.report, None, prices)
    rows = ((row, {"number": number, "from_quantity": 1, "unit_price": price}) for row, number, price in prices)
    made = price_list_of(head, rows, lambda row: Worded("{place}, row {row}", place=opened.table.place, row=row))
    return PriceTableResult(intake.report, made, prices)


def _written(line: PartLine, money: Money) -> str:
    return line.texts.get(f"price_{money.currency.lower()}") or line.texts.get("price") or money.currency


def price_changes(result: PriceTableResult, before: PriceList | None) -> DraftChanges:
    """Return what a table changes in the list of its name; ``before`` is that list, None where there is none.

    Only prices from the first piece on are told; a list is replaced as a whole, with its breaks.
    """
    was = {}
    for row in () if before is None else before.rows:
        first = row.price_at(1)
        if first is not None:
            was[row.part_number] = str(first.unit_price)
    came = {number for _row, number, _price in result.prices}
    rows = (
        (row, number, {"price": was[number]} if number in was else None, {"price": price})
        for row, number, price in result.prices
    )
    return row_changes(rows, sorted(set(was) - came))
