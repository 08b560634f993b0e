"""What the coverage map of an edition says, on paper and in the window."""

from __future__ import annotations

from enum import StrEnum


class CoverageWord(StrEnum):
    """Every fixed text of the coverage map; some hold places that are named in braces."""

    TITLE = "map_title"
    SUBJECT = "map_subject"
    LEGEND = "map_legend"
    ASKED_AS = "map_asked_as"
    SUMMARY = "map_summary"
    FITS = "map_fits"
    NOTHING_FITS = "map_nothing_fits"
    NOT_DECIDED = "map_not_decided"
    LEFT_OPEN = "map_left_open"
    NOT_ASKED = "map_not_asked"
    SETS = "map_sets"
    MAKERS = "map_makers"
    TO_STOCK = "map_to_stock"
    TO_STOCK_NOTE = "map_to_stock_note"
    COMBINATIONS = "map_combinations"
    ALONE = "map_alone"
    WHY_NOTHING = "map_why_nothing"
    LACKS = "map_lacks"
    UNJOINED = "map_unjoined"
    TOGETHER = "map_together"
    JOINING = "map_joining"
    DEGREES = "map_degrees"
