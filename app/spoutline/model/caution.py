"""The words of the caution table: signal words and the conditions under which a caution applies."""

from __future__ import annotations

from enum import StrEnum


class CautionSeverity(StrEnum):
    """Signal words after ISO 3864-2 and ANSI Z535.4, gravest first."""

    DANGER = "danger"  # death or serious injury if not avoided
    WARNING = "warning"  # death or serious injury possible
    CAUTION = "caution"  # minor or moderate injury possible
    NOTICE = "notice"  # no injury


class CautionCondition(StrEnum):
    """What is true of a job."""

    ALWAYS = "always"
    FLAMMABLE = "flammable"  # any liquid but DEF
    GASOLINE = "gasoline"
    DIESEL_FAMILY = "diesel_family"  # diesel, kerosene, fuel oil
    DEF = "def"
    ETHANOL_ABOVE_10 = "ethanol_above_10"
    BIODIESEL_ABOVE_20 = "biodiesel_above_20"
    VAPOUR_PRESENT = "vapour_present"  # the set recovers vapour
    VAPOUR_REMOVED = "vapour_removed"  # vapour was recovered, and the new set does not
    BREAKAWAY = "breakaway"
    SINGLE_USE_BREAKAWAY = "single_use_breakaway"
    RECONNECTABLE_BREAKAWAY = "reconnectable_breakaway"
    REEL = "reel"
    RETRACTOR = "retractor"
    OVERHEAD = "overhead"
    MARINE = "marine"
    HOLD_OPEN = "hold_open"
    LOW_TEMPERATURE = "low_temperature"  # the site's lowest temperature is below freezing
