"""Where the positions of a quotation stand, and what hangs there."""

from __future__ import annotations

from collections.abc import Iterable

from spoutline.explain.phrases.paper_words import PaperWord
from spoutline.explain.plan.story import Story
from spoutline.model.part_ref import PartRef, told_apart
from spoutline.model.quotation import Quotation, QuotedPosition
from spoutline.planning.refit.dispensers import islands_of


def shown_parts(position: QuotedPosition, story: Story, among: Iterable[PartRef]) -> str:
    """Return the parts of a position and what goes with them, those that hang there and stay marked so.

    A number has its maker before it where another part of ``among`` has the same number.
    """
    stays = story.word(PaperWord.STAYS)
    shown = told_apart((*position.parts, *position.accessory_parts), among)
    return ", ".join(f"{text} ({stays})" if place in position.kept else text for place, text in enumerate(shown))


def islands_by_label(quotation: Quotation) -> dict[str, str]:
    """Return the island of every position by its label; empty where the survey names none for it."""
    survey = quotation.pins.survey
    return dict(zip((position.label for position in survey.positions), islands_of(survey), strict=True))
