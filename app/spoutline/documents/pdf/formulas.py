"""Formulas with raised powers and lowered indices."""

from __future__ import annotations

from typing import Final

from spoutline.documents.pdf.fonts import markup
from spoutline.documents.text_forms import FORMULA_INDEX, FORMULA_POWER

# points; small and near the base line, so that an index never reaches the line below, nor a power the one above
_INDEX_SET: Final = 'rise="1.7" size="5.2"'
_POWER_SET: Final = 'rise="2.8" size="5.2"'


def formula_markup(text: str) -> str:
    """Return a formula with raised powers and lowered indices, escaped."""
    lowered = FORMULA_INDEX.sub(rf"\1<sub {_INDEX_SET}>\2</sub>", markup(text))
    return FORMULA_POWER.sub(rf"<super {_POWER_SET}>\1</super>", lowered)


def is_formed(text: str) -> bool:
    """Say whether a formula has anything raised or lowered."""
    return FORMULA_INDEX.search(text) is not None or FORMULA_POWER.search(text) is not None
