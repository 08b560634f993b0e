"""What is told of another answer to one question, on paper, in the window and on the command line."""

from __future__ import annotations

from enum import StrEnum


class WhatIfWord(StrEnum):
    """Every fixed text of a trial; some hold places that are named in braces."""

    TITLE = "what_if"
    SUBJECT = "what_if_subject"
    WHOLE_STATION = "what_if_whole_station"
    TODAY = "what_if_today"
    THEN = "what_if_then"
    PRICE_TODAY = "what_if_price_today"
    PRICE_THEN = "what_if_price_then"
    DIFFERENCE = "what_if_difference"
    EFFECT = "what_if_effect"
    NO_SET = "what_if_no_set"
    UNTOUCHED = "what_if_untouched"
    LOST_AND_GAINED = "what_if_lost_and_gained"
    LEAVING = "what_if_leaving"
    COMING = "what_if_coming"
    NOTHING_LEAVES = "what_if_nothing_leaves"
    CHECKS = "what_if_checks"
    CHECKS_HELD = "what_if_checks_held"
    NO_CHECKS = "what_if_no_checks"
    BROKEN_AS_A_WHOLE = "what_if_broken_as_a_whole"
    GIVEN_UP = "what_if_given_up"
    KEPT = "what_if_kept"
    ONE_OF = "what_if_one_of"
    NOTE = "what_if_note"
    TITLE_LASTING = "what_if_title_lasting"
    LASTING = "what_if_lasting"
    PRICE_LASTING = "what_if_price_lasting"
    LASTING_NOTE = "what_if_lasting_note"
    PRICE_OF_SETS = "what_if_price_of_sets"
    HOW_MANY_MUST = "what_if_how_many_must"
    HOW_MANY_MAY = "what_if_how_many_may"
    HOW_MANY_WITHOUT = "what_if_how_many_without"
    PIECES_COMING = "what_if_pieces_coming"
    WHEN = "what_if_when"
    PARTS_LEGEND = "what_if_parts_legend"
