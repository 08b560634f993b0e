"""The coverage map as bytes: PDF for people, CSV and JSON for other programs, whose words never change."""

from __future__ import annotations

import csv
import json
from collections.abc import Mapping
from datetime import date
from io import StringIO
from typing import Any

from spoutline.documents.paper_form import PaperForm
from spoutline.documents.tabular.cells import shielded, without_controls
from spoutline.explain.plan.coverage_text import reason_text
from spoutline.explain.plan.story import Story
from spoutline.explain.writing.money import amount
from spoutline.model.coverage_map import CoverageCell, CoverageMap, stock_gaps

COLUMNS = (
    *("liquid", "duty", "vapour", "outlet", "climate", "state", "sets", "counted_all", "makers_count", "makers"),
    *("price", "currency", "parts", "missing", "unjoined", "reason"),
)


def coverage_pdf(found: CoverageMap, story: Story, dated: date | None = None, form: PaperForm = PaperForm.PDF) -> bytes:
    """Return the map as PDF, or in another ``form``; equal arguments give equal bytes.

    Raise ``StoreFault`` where a font is missing.
    """
    from spoutline.documents.coverage.content import coverage_content
    from spoutline.documents.paper import paper_bytes

    return paper_bytes(coverage_content(found, story, dated), form)


def coverage_csv(found: CoverageMap, english: Story) -> bytes:
    """Return one row for each combination as CSV (RFC 4180), UTF-8 with byte order mark."""
    buffer = StringIO(newline="")
    writer = csv.writer(buffer, lineterminator="\r\n")
    writer.writerow(COLUMNS)
    for cell in found.cells:
        writer.writerow([shielded(without_controls(text)) for text in _cells(cell, english)])
    return buffer.getvalue().encode("utf-8-sig")


def coverage_json(found: CoverageMap, english: Story) -> bytes:
    """Return the map as a JSON document."""
    return (json.dumps(coverage_document(found, english), indent=2, ensure_ascii=False) + "\n").encode()


def coverage_document(found: CoverageMap, english: Story) -> dict[str, Any]:
    """Return the map as JSON values; prices in minor units."""
    return {
        "format": "spoutline-coverage",
        "version": 1,
        "edition": str(found.edition.ref),
        "edition_title": found.edition.title,
        "jurisdiction": found.jurisdiction.id,
        "rules_edition": found.rules_edition,
        "currency": found.currency,
        "most_counted": found.scope.most_counted,
        "to_stock": [
            {
                "place": gap.slot.value,
                "joins": gap.joins,
                "combinations": gap.combinations,
                "lacking_nothing_else": gap.alone,
            }
            for gap in stock_gaps(found.cells)
        ],
        "combinations": [_cell_document(cell, english) for cell in found.cells],
    }


def _cell_document(cell: CoverageCell, english: Story) -> Mapping[str, Any]:
    asked, conflict = cell.combination, cell.conflict
    return {
        "liquid": asked.liquid.value,
        "duty": asked.duty.value,
        "vapour": asked.vapour.value,
        "outlet": asked.outlet.value,
        "climate": asked.climate.value,
        "state": cell.state.value,
        "sets": cell.sets_count,
        "counted_all": cell.counted_all,
        "is_open": cell.is_open,
        "makers": list(cell.makers),
        "price_minor": cell.price_minor,
        "parts": [{"number": ref.number, "maker": ref.maker} for ref in cell.parts],
        "places": [
            {
                "place": one.slot.value,
                "in_catalogue": one.in_catalogue,
                "remaining": one.remaining,
                "makers": list(one.makers),
            }
            for one in cell.slots
        ],
        "missing": [slot.value for slot in cell.missing],
        "unjoined": None if cell.unjoined is None else cell.unjoined.value,
        "conflict": [] if conflict is None else [one.value for one in conflict.requirements],
        "reason": reason_text(cell, english),
    }


def _cells(cell: CoverageCell, english: Story) -> tuple[str, ...]:
    asked = cell.combination
    price = "" if cell.price_minor is None else str(amount(cell.price_minor, cell.currency))
    return (
        asked.liquid.value,
        asked.duty.value,
        asked.vapour.value,
        asked.outlet.value,
        asked.climate.value,
        cell.state.value,
        str(cell.sets_count),
        "yes" if cell.counted_all else "no",
        str(len(cell.makers)),
        "; ".join(cell.makers),
        price,
        cell.currency,
        "; ".join(map(str, cell.parts)),
        "; ".join(slot.value for slot in cell.missing),
        "" if cell.unjoined is None else cell.unjoined.value,
        reason_text(cell, english),
    )
