"""Stock as bytes for other programs, whose words never change: CSV, and values for JSON."""

from __future__ import annotations

import csv
from collections.abc import Iterable, Iterator, Mapping, Sequence
from io import StringIO
from typing import Any

from spoutline.documents.tabular.cells import shielded, without_controls
from spoutline.model.part import Part
from spoutline.model.part_ref import PartRef
from spoutline.model.stock_entry import StockLine, StoredEntry

COLUMNS = (
    *("place", "part_number", "maker", "name", "quantity", "least", "lot", "count"),
    *("needed", "takes", "short", "order", "taken"),
)
ENTRY_COLUMNS = (
    *("entry", "recorded_at", "place", "movement", "part_number", "maker", "pieces", "count"),
    *("lot", "serial", "job", "done_by", "note", "undoes", "undone"),
)


def lines_csv(lines: Sequence[StockLine], parts: Mapping[PartRef, Part]) -> bytes:
    """Return one row for each part at each place (RFC 4180), UTF-8 with byte order mark; ``quantity`` lies there."""
    return _csv(COLUMNS, (line_values(line, parts) for line in lines))


def entries_csv(entries: Sequence[StoredEntry]) -> bytes:
    """Return one row for each entry, oldest first; times in UTC."""
    return _csv(ENTRY_COLUMNS, map(entry_values, entries))


def line_values(line: StockLine, parts: Mapping[PartRef, Part]) -> dict[str, Any]:
    """Return a line as JSON values; pieces are whole numbers, null where a place keeps no least of a part."""
    there = line.balance
    part = parts.get(there.part)
    return {
        "place": there.place,
        "part_number": there.part.number,
        "maker": there.part.maker,
        "name": part.name if part is not None else "",
        "quantity": there.quantity,
        "least": there.level.least if there.level is not None else None,
        "lot": there.level.lot if there.level is not None else None,
        "count": there.count,
        "needed": line.needed,
        "takes": line.takes,
        "short": line.short,
        "order": line.order,
        "taken": line.taken,
    }


def entry_values(stored: StoredEntry) -> dict[str, Any]:
    """Return an entry as JSON values; ``recorded_at`` in UTC, ISO 8601."""
    entry = stored.entry
    return {
        "entry": stored.id,
        "recorded_at": stored.recorded_at.isoformat(timespec="seconds"),
        "place": entry.place,
        "movement": entry.movement.value,
        "part_number": entry.part.number,
        "maker": entry.part.maker,
        "pieces": entry.quantity,
        "count": entry.count,
        "lot": entry.lot,
        "serial": entry.serial,
        "job": entry.job,
        "done_by": entry.done_by,
        "note": entry.note,
        "undoes": entry.undoes,
        "undone": stored.is_undone,
    }


def _csv(columns: tuple[str, ...], rows: Iterable[Mapping[str, Any]]) -> bytes:
    buffer = StringIO(newline="")
    writer = csv.writer(buffer, lineterminator="\r\n")
    writer.writerow(columns)
    for row in rows:
        writer.writerow(list(_cells(row, columns)))
    return buffer.getvalue().encode("utf-8-sig")


def _cells(row: Mapping[str, Any], columns: tuple[str, ...]) -> Iterator[str]:
    for name in columns:
        value = row[name]
        # numbers stand as they are: a piece too many taken is less than nothing, and no formula
        yield str(value) if isinstance(value, int) else shielded(without_controls(value or ""))
