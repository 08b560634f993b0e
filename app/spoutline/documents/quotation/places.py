"""Where the positions of a quotation stand, and what hangs there."""

from __future__ import annotations

from collections.abc import Iterable

from spoutline.explain.phrases.paper_words import PaperWord
from spoutline.explain.plan.story import Story
from spoutline.model.liquid import Liquid
from spoutline.model.part_ref import PartRef, told_apart
from spoutline.model.quotation import Quotation
from spoutline.model.quoted_option import QuotedPosition
from spoutline.planning.refit.dispensers import islands_of


def shown_parts(position: QuotedPosition, story: Story, among: Iterable[PartRef]) -> str:
    """Return the parts of a position and what goes with them, those that hang there and stay marked so.

    A number has its maker before it where another part of ``among`` has the same number.
    """
    stays = story.word(PaperWord.STAYS)
    shown = told_apart((*position.parts, *position.accessory_parts), among)
    return ", ".join(f"{text} ({stays})" if place in position.kept else text for place, text in enumerate(shown))


def sets_of_option(quotation: Quotation, option: int, revision: int, story: Story, *, ordered: bool = False) -> str:
    """Return which sets the lines of an option (counted from 0) are for, as the heads of papers say it."""
    heading = quotation.terms.heading
    key = "sets_ordered" if ordered else "sets_quoted"
    return story.phrases.fill(key, number=heading.number, revision=revision, option=option + 1)


def islands_by_label(quotation: Quotation) -> dict[str, str]:
    """Return the island of every position by its label; empty where the survey names none for it."""
    survey = quotation.pins.survey
    return dict(zip((position.label for position in survey.positions), islands_of(survey), strict=True))


def liquids_by_label(quotation: Quotation, story: Story) -> dict[str, str]:
    """Return what flows at every position by its label, in the language of ``story``."""
    return {
        position.label: story.liquid(Liquid(position.liquid.family, position.liquid.blend_percent))
        for position in quotation.pins.survey.positions
    }
