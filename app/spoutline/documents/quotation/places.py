"""Where the positions of a quotation stand, and what hangs there."""

from __future__ import annotations

from spoutline.explain.phrases.paper_words import PaperWord
from spoutline.explain.plan.story import Story
from spoutline.model.quotation import Quotation, QuotedPosition
from spoutline.planning.refit.dispensers import islands_of


def shown_parts(position: QuotedPosition, story: Story) -> str:
    """Return the parts of a position and what goes with them, those that hang there and stay marked so."""
    stays = story.word(PaperWord.STAYS)
    chain = [
        f"{number} ({stays})" if place in position.kept else number
        for place, number in enumerate(position.part_numbers)
    ]
    return ", ".join((*chain, *position.accessories))


def islands_by_label(quotation: Quotation) -> dict[str, str]:
    """Return the island of every position by its label; empty where the survey names none for it."""
    survey = quotation.pins.survey
    return dict(zip((position.label for position in survey.positions), islands_of(survey), strict=True))
