"""A station's plan as text for a terminal."""

from __future__ import annotations

from collections.abc import Iterator
from decimal import Decimal

from spoutline.cli.commonality_text import commonality_lines, wrapped
from spoutline.documents.json.site import SiteCommonality, SiteDocument, SitePosition, document_of
from spoutline.model.part_ref import PartRef, told_apart
from spoutline.model.refit import RefitPlan


def site_text(refit: RefitPlan) -> str:
    """Return the plan as text for a terminal."""
    return "\n".join(_text_lines(document_of(refit))) + "\n"


def _text_lines(document: SiteDocument) -> Iterator[str]:
    yield f"{document.site}: {len(document.positions)} positions, {document.currency}"
    yield ""
    station = [PartRef(part.number, part.maker) for part in document.parts]
    for position in document.positions:
        mark = "✓" if position.keeps_every_must else "✗"
        hanging = map(PartRef, position.parts, position.makers)
        shown = " ".join(told_apart(hanging, station)) or position.status.value.replace("_", " ")
        yield from wrapped(f"{mark} {position.label}  {position.set_price or '–'}  {shown}{_good_practice(position)}")
    yield ""
    for part, number in zip(document.parts, told_apart(station), strict=True):
        yield from wrapped(f"{part.quantity:>5} × {number:<10} {part.amount or 'no price':>12}  {part.name}")
    yield f"{'':>8}{document.part_numbers} part numbers {document.total:>12}"
    if document.without_price:
        yield from wrapped(f"Without a price: {', '.join(document.without_price)}")
    for one in document.supersessions:
        replaced = PartRef(one.number_before, one.maker_before), PartRef(one.number_now, one.maker_now)
        before, now = told_apart(replaced)
        labels = ", ".join(one.positions)
        yield from wrapped(f"Superseded: {before} replaced by {now} at {labels}")
    if document.commonality is not None:
        yield from _commonality_lines(document.commonality)


def _good_practice(position: SitePosition) -> str:
    """Return what a set leaves open of good practice, to stand behind its parts; empty where it leaves nothing."""
    met, shown = position.shoulds_not_met, position.shoulds_not_shown
    texts = (f"good-practice lines not met: {met}" if met else "", f"not shown: {shown}" if shown else "")
    return "".join(f"; {text}" for text in texts if text)


def _commonality_lines(found: SiteCommonality) -> Iterator[str]:
    yield ""
    counts = (found.part_numbers_alone, found.part_numbers_together)
    amounts = (Decimal(found.costs), Decimal(found.saves), Decimal(found.left_open))
    yield from commonality_lines(counts, *amounts, found.changed)
