"""The lines of an option shared out to the suppliers from whom its parts are ordered."""

from __future__ import annotations

from collections.abc import Iterable
from datetime import date
from decimal import Decimal

from spoutline.frozen import frozen
from spoutline.model.quotation import Quotation
from spoutline.model.quoted_option import QuotedLine
from spoutline.model.supplier_layout import SupplierLayout, folded_supplier_name, usual_layout


@frozen(kw_only=True)
class OrderHead:
    """What all lines of an order share; ``number`` is that under which the supplier's papers are to come back.

    ``currency`` is that of the costs, ``revision`` that of the quotation, None for an order that comes from none.
    """

    number: str
    dated: date
    currency: str
    site: str
    revision: int | None = None


def head_of(quotation: Quotation, revision: int) -> OrderHead:
    """Return the head of what a revision of a quotation orders."""
    heading = quotation.terms.heading
    return OrderHead(
        number=heading.number,
        dated=heading.dated,
        currency=quotation.terms.currency,
        site=quotation.pins.survey.site.name,
        revision=revision,
    )


@frozen
class SupplierOrder:
    """What is ordered from one supplier: ``is_usual`` where the firm keeps no layout for it."""

    layout: SupplierLayout
    lines: tuple[QuotedLine, ...]
    is_usual: bool

    @property
    def supplier(self) -> str:
        """Name of the supplier."""
        return self.layout.supplier

    @property
    def pieces(self) -> int:
        """Pieces in all."""
        return sum(line.ordered for line in self.lines)

    @property
    def cost(self) -> Decimal:
        """What the lines cost whose cost is known, in the currency of the order."""
        return sum((line.cost * line.ordered for line in self.lines if line.cost is not None), Decimal(0))

    @property
    def uncosted(self) -> int:
        """How many lines have no known cost."""
        return sum(line.cost is None for line in self.lines)


def supplier_orders(ordered: Iterable[QuotedLine], layouts: Iterable[SupplierLayout]) -> tuple[SupplierOrder, ...]:
    """Return the orders by name of the supplier; each line stands in exactly one of them.

    A maker that no layout names is a supplier of its own, with the usual layout.
    """
    by_maker = {folded_supplier_name(maker): layout for layout in layouts for maker in layout.ordered_makers}
    lines: dict[str, list[QuotedLine]] = {}
    found: dict[str, tuple[SupplierLayout, bool]] = {}
    for line in ordered:
        kept = by_maker.get(folded_supplier_name(line.maker))
        layout = kept or usual_layout(line.maker)
        key = folded_supplier_name(layout.supplier)
        found.setdefault(key, (layout, kept is None))
        lines.setdefault(key, []).append(line)
    return tuple(SupplierOrder(found[key][0], tuple(lines[key]), found[key][1]) for key in sorted(found))
