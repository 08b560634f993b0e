"""Words of the pages that the program makes for its manual."""

from __future__ import annotations

from enum import StrEnum


class ManualWord(StrEnum):
    """What stands on the page of rules and their sources, and above pages in another language."""

    RULES_LEAD = "rules_lead"
    RESTS_ON = "rests_on"
    PACKAGE = "package"
    VERSION = "version"
    LICENSE = "license"
    ONLY_ENGLISH = "only_english"
    NOTHING_FOUND = "nothing_found"
