"""Labels of a part's data, as a list of words of the phrasebook: those of its declared figures, and a few more."""

from __future__ import annotations

from enum import StrEnum
from typing import TYPE_CHECKING

from spoutline.model.part_figures import FIGURES

if TYPE_CHECKING:

    class PartWord(StrEnum):
        """Every label under which the data of a part are shown; a figure brings its own, see ``label_of``."""

        KIND = "kind"
        STATUS = "status"
        LEAD_TIME = "lead_time"

else:
    _LABELS = dict.fromkeys(
        label for figure in FIGURES if figure.is_labelled for label in (figure.label, figure.declared.range_label)
    )
    PartWord = StrEnum(
        "PartWord",
        {label.upper(): label for label in ("kind", "status", "lead_time", *_LABELS) if label},
        module=__name__,
    )


def label_of(label: str) -> PartWord:
    """Return the word of the label that a figure declares."""
    return PartWord(label)
