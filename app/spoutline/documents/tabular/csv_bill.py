"""The bill as CSV (RFC 4180).

UTF-8 with a byte order mark, because the spreadsheet programs of the trade take a file without one for the code page of
the computer and break every accent. Comma between cells, CR LF between rows, decimal point, no grouping. A text that a
spreadsheet would take for a formula gets an apostrophe in front.
"""

from __future__ import annotations

import csv
from collections.abc import Sequence
from io import StringIO

from spoutline.documents.tabular.cells import Cell, shielded, without_controls
from spoutline.documents.tabular.rows import bill_sheet
from spoutline.explain.plan.story import Story
from spoutline.model.plan import SitePlan
from spoutline.model.record import CommissioningRecord


def csv_bytes(site_plan: SitePlan, story: Story, records: Sequence[CommissioningRecord] = ()) -> bytes:
    """Return one row for each part of each position, in survey order; the same bytes for the same plan."""
    sheet = bill_sheet(site_plan, story, records)
    buffer = StringIO(newline="")
    writer = csv.writer(buffer, lineterminator="\r\n")
    writer.writerow(sheet.titles)
    writer.writerows([_text(cell) for cell in row] for row in sheet.rows)
    return buffer.getvalue().encode("utf-8-sig")


def _text(cell: Cell) -> str:
    if cell is None:
        return ""
    return shielded(without_controls(cell)) if isinstance(cell, str) else str(cell)
