"""Where the positions of a quotation stand."""

from __future__ import annotations

from spoutline.model.quotation import Quotation
from spoutline.planning.refit.dispensers import islands_of


def islands_by_label(quotation: Quotation) -> dict[str, str]:
    """Return the island of every position by its label; empty where the survey names none for it."""
    survey = quotation.pins.survey
    return dict(zip((position.label for position in survey.positions), islands_of(survey), strict=True))
