"""A station's plan as text for a terminal."""

from __future__ import annotations

from collections.abc import Iterator
from decimal import Decimal

from spoutline.cli.commonality_text import commonality_lines, wrapped
from spoutline.documents.json.site import SiteCommonality, SiteDocument, SitePosition, document_of
from spoutline.explain.phrases.paper_words import PaperWord
from spoutline.explain.plan.story import Story
from spoutline.model.part_ref import PartRef, told_apart
from spoutline.model.refit import RefitPlan


def site_text(refit: RefitPlan, story: Story) -> str:
    """Return the plan as text for a terminal."""
    return "\n".join(_text_lines(document_of(refit), _names(refit, story), story)) + "\n"


def _names(refit: RefitPlan, story: Story) -> dict[PartRef, str]:
    """Return the names of the parts of a station in the language of ``story``."""
    plans = refit.site_plan.positions
    hanging = (link.part for plan in plans if plan.chosen for link in plan.chosen.hanging_set.links)
    beside = (line.part for plan in plans for line in plan.accessories)
    return {part.ref: story.part_name(part) for part in (*hanging, *beside)}


def _text_lines(document: SiteDocument, names: dict[PartRef, str], story: Story) -> Iterator[str]:
    phrases, colon = story.phrases, story.writing.colon
    positions = phrases.fill("terminal_positions_many", count=len(document.positions))
    yield f"{document.site}{colon} {positions}, {document.currency}"
    yield ""
    station = [PartRef(part.number, part.maker) for part in document.parts]
    for position in document.positions:
        mark = "✓" if position.keeps_every_must else "✗"
        hanging = map(PartRef, position.parts, position.makers)
        shown = " ".join(told_apart(hanging, station)) or story.word(position.status)
        price = _amount(position.set_price, story) or "–"
        yield from wrapped(f"{mark} {position.label}  {price}  {shown}{_good_practice(position, story)}")
    yield ""
    for part, number in zip(document.parts, told_apart(station), strict=True):
        amount = _amount(part.amount, story) or story.word(PaperWord.NO_PRICE)
        name = names.get(PartRef(part.number, part.maker), part.name)
        yield from wrapped(f"{part.quantity:>5} × {number:<10} {amount:>12}  {name}")
    numbers = phrases.fill("terminal_numbers_many", count=document.part_numbers)
    yield f"{'':>8}{numbers} {_amount(document.total, story):>12}"
    if document.without_price:
        yield from wrapped(phrases.fill("terminal_without_price", numbers=", ".join(document.without_price)))
    for one in document.supersessions:
        replaced = PartRef(one.number_before, one.maker_before), PartRef(one.number_now, one.maker_now)
        before, now = told_apart(replaced)
        labels = ", ".join(one.positions)
        yield from wrapped(phrases.fill("terminal_superseded", before=before, now=now, positions=labels))
    if document.commonality is not None:
        yield from _commonality_lines(document.commonality, story)


def _amount(text: str | None, story: Story) -> str:
    return story.writing.figure(text) if text else ""


def _good_practice(position: SitePosition, story: Story) -> str:
    """Return what a set leaves open of good practice, to stand behind its parts; empty where it leaves nothing."""
    counts = {"shoulds_not_met": position.shoulds_not_met, "shoulds_not_shown": position.shoulds_not_shown}
    return "".join(f"; {story.phrases.fill(key, count=count)}" for key, count in counts.items() if count)


def _commonality_lines(found: SiteCommonality, story: Story) -> Iterator[str]:
    yield ""
    counts = (found.part_numbers_alone, found.part_numbers_together)
    amounts = (Decimal(found.costs), Decimal(found.saves), Decimal(found.left_open))
    best = Decimal(found.sets_together) + Decimal(found.stock_price) * found.part_numbers_together
    yield from commonality_lines(counts, amounts, best, found.changed, story)
