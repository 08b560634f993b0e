"""The lines of a quotation as CSV (RFC 4180) for an order system: one row for each line of each option.

Column names are fixed and in English, since programs read them; UTF-8 with a byte order mark, decimal point, no
grouping.
"""

from __future__ import annotations

import csv
from io import StringIO

from spoutline.documents.tabular.cells import shielded, without_controls
from spoutline.model.quotation import Quotation

COLUMNS = (
    "quotation",
    "revision",
    "option",
    "line",
    "part_number",
    "maker",
    "description",
    "quantity",
    "unit_price",
    "currency",
    "amount",
    "price_list",
    "lead_time_days",
    "sets",
)


def quotation_csv(quotation: Quotation, revision: int, ordered: str = "") -> bytes:
    """Return the rows; a price that is missing or follows is an empty cell. Equal bytes for equal input.

    ``ordered`` is the title of the option that was ordered: its rows alone. Empty gives those of every option.
    """
    buffer = StringIO(newline="")
    writer = csv.writer(buffer, lineterminator="\r\n")
    writer.writerow(COLUMNS)
    word = "ordered" if ordered else "offered"
    heading, currency = quotation.terms.heading, quotation.terms.currency
    for place, option in enumerate(quotation.options, start=1):
        if ordered and option.title != ordered:
            continue
        for number, line in enumerate(option.lines, start=1):
            row = (
                heading.number,
                revision,
                option.title,
                number,
                line.part_number,
                line.maker,
                line.name,
                line.ordered,
                "" if line.unit_price is None else f"{line.unit_price:f}",
                currency,
                "" if line.amount is None else f"{line.amount:f}",
                line.list_id,
                line.lead_time_days,
                f"as {word} in quotation {heading.number} revision {revision}, option {place}",
            )
            writer.writerow([_text(cell) for cell in row])
    return buffer.getvalue().encode("utf-8-sig")


def _text(cell: str | int) -> str:
    return shielded(without_controls(cell)) if isinstance(cell, str) else str(cell)
