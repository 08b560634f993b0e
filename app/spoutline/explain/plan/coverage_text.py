"""The words of a coverage map: its combinations, what each cell says, and what to stock."""

from __future__ import annotations

from spoutline.explain.phrases.coverage_words import CoverageWord as Word
from spoutline.explain.plan.story import Story
from spoutline.model.coverage_kinds import ClimateBand
from spoutline.model.coverage_map import CellState, CoverageCell, CoverageMap, LiquidClass, StockGap
from spoutline.model.liquid import LiquidFamily, ListingClass
from spoutline.model.quantity import Dimension
from spoutline.model.survey import Climate

MARKS = {CellState.FITS: "✓", CellState.NOTHING_FITS: "✗", CellState.NOT_DECIDED: "?", CellState.NOT_ASKED: "–"}
_STATES = {
    CellState.FITS: Word.FITS,
    CellState.NOTHING_FITS: Word.NOTHING_FITS,
    CellState.NOT_DECIDED: Word.NOT_DECIDED,
    CellState.NOT_ASKED: Word.NOT_ASKED,
}

_FAMILIES = frozenset(family.value for family in LiquidFamily)


def liquid_text(liquid: LiquidClass, story: Story) -> str:
    """Return what a column or row of a liquid is called."""
    if liquid.value in _FAMILIES:
        return story.title(LiquidFamily(liquid.value))
    return story.word(ListingClass(liquid.value.upper()))


def climate_text(band: ClimateBand, climate: Climate, story: Story) -> str:
    """Return the name of a band with its temperatures."""
    low, high = (story.show(value, Dimension.TEMPERATURE) for value in (climate.low_c, climate.high_c))
    return story.word(Word.DEGREES).format(band=story.title(band), low=low, high=high)


def state_text(state: CellState, story: Story) -> str:
    """Return what an answer means."""
    return story.word(_STATES[state])


def sets_text(cell: CoverageCell) -> str:
    """Return the number of sets; more than were counted are told by a sign before it."""
    if cell.is_open:
        return f"≥{cell.sets_count}"
    return str(cell.sets_count) if cell.counted_all else f">{cell.sets_count}"


def cell_text(cell: CoverageCell, story: Story) -> str:
    """Return a cell in a few signs, readable without colour."""
    mark = MARKS[cell.state]
    if cell.state is not CellState.FITS or cell.price_minor is None:
        return mark
    return f"{mark} {sets_text(cell)} · {story.bare_money(cell.price_minor, cell.currency)}"


def reason_text(cell: CoverageCell, story: Story) -> str:
    """Return why nothing fits, or why a combination is not asked; empty where a set is there."""
    if cell.refusal is not None:
        return " ".join(story.sentence(story.finding(one).sentence) for one in cell.refusal.findings)
    if cell.state is CellState.FITS:
        return ""
    told = [story.word(Word.LACKS).format(part=story.word(slot)) for slot in cell.missing]
    if cell.unjoined is not None:
        told.append(story.word(Word.UNJOINED).format(part=story.word(cell.unjoined)))
    if cell.conflict is not None and cell.conflict.requirements:
        told.append(story.word(Word.TOGETHER).format(lines=story.line_names(cell.conflict.requirements)))
    return "; ".join(told)


def gap_text(gap: StockGap, story: Story) -> str:
    """Return the kind of part that a gap asks for."""
    return story.word(Word.JOINING).format(part=story.word(gap.slot)) if gap.joins else story.title(gap.slot)


def summary_text(found: CoverageMap, story: Story) -> str:
    """Return how many combinations have a set, have none, and are not asked."""
    asked = (CellState.FITS, CellState.NOTHING_FITS, CellState.NOT_DECIDED)
    told = story.word(Word.SUMMARY).format(
        fits=found.count(CellState.FITS),
        asked=sum(map(found.count, asked)),
        open=found.count(CellState.NOTHING_FITS),
        refused=found.count(CellState.NOT_ASKED),
    )
    left_open = found.count(CellState.NOT_DECIDED)
    return f"{told} {story.word(Word.LEFT_OPEN).format(count=left_open)}" if left_open else told


def spoken_text(cell: CoverageCell, climate: Climate, story: Story) -> str:
    """Return the whole cell in words, for those who hear it."""
    asked = cell.combination
    names = (
        liquid_text(asked.liquid, story),
        story.word(asked.duty),
        story.word(asked.vapour),
        story.word(asked.outlet),
        climate_text(asked.climate, climate, story),
    )
    told = [state_text(cell.state, story), reason_text(cell, story)]
    if cell.state is CellState.FITS and cell.price_minor is not None:
        told[1:] = [
            f"{story.word(Word.SETS)}{story.writing.colon} {sets_text(cell)}",
            f"{story.word(Word.MAKERS)}{story.writing.colon} {len(cell.makers)}",
            story.money(cell.price_minor, cell.currency),
        ]
    return "; ".join(filter(None, (story.writing.listed(names), *told)))
