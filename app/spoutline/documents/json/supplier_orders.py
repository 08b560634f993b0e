"""What is ordered from each supplier as a stable JSON document: what `supplier orders --json` prints.

Costs are texts, exact and in the currency of the quotation; ``rows`` are the cells of the supplier's text file.
"""

from __future__ import annotations

from collections.abc import Sequence
from decimal import Decimal
from typing import Literal

from spoutline.documents.json.head import Record
from spoutline.frozen import frozen
from spoutline.model.quotation import Quotation
from spoutline.planning.refit.supplier_orders import SupplierOrder


class SupplierOrderRecord(Record):
    """One supplier; ``uncosted`` counts lines whose cost is not known and that are not in ``cost``."""

    supplier: str
    makers: tuple[str, ...]
    is_kept: bool
    lines: int
    pieces: int
    cost: Decimal
    uncosted: int
    headings: tuple[str, ...]
    rows: tuple[tuple[str, ...], ...]


class SupplierOrdersDocument(Record):
    """Every supplier of an option."""

    format: Literal["spoutline-supplier-orders"] = "spoutline-supplier-orders"
    version: Literal[1] = 1
    quotation: str
    revision: int
    option: str
    currency: str
    suppliers: tuple[SupplierOrderRecord, ...]


@frozen
class OrderFile:
    """What is ordered from a supplier, and its text file: headings and cells row by row."""

    order: SupplierOrder
    headings: tuple[str, ...]
    rows: tuple[tuple[str, ...], ...]


def supplier_orders_json(files: Sequence[OrderFile], quotation: Quotation, revision: int, option: str) -> str:
    """Return the document as indented text that ends in a line break; equal text for equal arguments."""
    document = SupplierOrdersDocument(
        quotation=quotation.terms.heading.number,
        revision=revision,
        option=option,
        currency=quotation.terms.currency,
        suppliers=tuple(map(_supplier, files)),
    )
    return document.model_dump_json(indent=2) + "\n"


def _supplier(file: OrderFile) -> SupplierOrderRecord:
    order = file.order
    return SupplierOrderRecord(
        supplier=order.supplier,
        makers=order.layout.ordered_makers,
        is_kept=not order.is_usual,
        lines=len(order.lines),
        pieces=order.pieces,
        cost=order.cost,
        uncosted=order.uncosted,
        headings=file.headings,
        rows=file.rows,
    )
