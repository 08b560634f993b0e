"""The work due at all stations as bytes for other programs, whose words never change: CSV and JSON."""

from __future__ import annotations

import csv
import json
from io import StringIO
from typing import Any

from spoutline.documents.pack.inspection_sheet import item_text
from spoutline.documents.pack.setting_words import sourced
from spoutline.documents.tabular.cells import shielded, without_controls
from spoutline.explain.plan.story import Story
from spoutline.model.due_work import DueWork, StationDue

COLUMNS = (
    *("site", "address", "position", "item", "what", "every", "last_done", "counted_from", "due"),
    *("overdue_days", "source"),
)


def due_csv(work: DueWork, english: Story) -> bytes:
    """Return one row for each item as CSV (RFC 4180), UTF-8 with byte order mark; empty where never done."""
    buffer = StringIO(newline="")
    writer = csv.writer(buffer, lineterminator="\r\n")
    writer.writerow(COLUMNS)
    for row in work.rows:
        cells = _values(row, work, english)
        texts = ("" if cells[name] is None else str(cells[name]) for name in COLUMNS)
        writer.writerow([shielded(without_controls(text)) for text in texts])
    return buffer.getvalue().encode("utf-8-sig")


def due_json(work: DueWork, english: Story) -> bytes:
    """Return the list as a JSON document; days as YYYY-MM-DD."""
    return (json.dumps(due_document(work, english), indent=2, ensure_ascii=False) + "\n").encode()


def due_document(work: DueWork, english: Story) -> dict[str, Any]:
    """Return the list as JSON values, with the positions that could not be counted."""
    return {
        "format": "spoutline-due",
        "version": 1,
        "on": work.on.isoformat(),
        "overdue": work.overdue,
        "due": [{"survey": row.survey_id, **_values(row, work, english)} for row in work.rows],
        "uncounted": [
            {"site": one.site, "positions": list(one.positions), "reason": one.reason.value, "told": one.told}
            for one in work.uncounted
        ],
    }


def _values(row: StationDue, work: DueWork, english: Story) -> dict[str, Any]:
    due = row.due
    return {
        "site": row.site.name,
        "address": row.site.address.strip().replace("\n", ", "),
        "position": due.position,
        "item": due.item.id.value,
        "what": item_text(due, english),
        "every": due.item.interval.value,
        "last_done": due.last_done.isoformat() if due.last_done else None,
        "counted_from": row.counted_from.isoformat(),
        "due": due.next_due.isoformat(),
        "overdue_days": row.overdue_days(work.on),
        "source": sourced(due.item.source, due.item.status, english),
    }
