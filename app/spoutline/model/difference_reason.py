"""Why a part of today stays, goes or changes in a conversion."""

from __future__ import annotations

from enum import StrEnum


class DifferenceReason(StrEnum):
    """Why it happens."""

    STILL_FITS = "still_fits"
    NO_PLACE = "no_place"
    BREAKS_RULE = "breaks_rule"
    DAMAGED = "damaged"
    TOO_OLD = "too_old"
    AGE_UNKNOWN = "age_unknown"
    SUPERSEDED = "superseded"
    FIGURES_UNKNOWN = "figures_unknown"
    NUMBER_UNKNOWN = "number_unknown"
    NOT_RECONNECTABLE = "not_reconnectable"
    REFUSED = "refused"
    RENEWED = "renewed"
    CHEAPER_WITHOUT = "cheaper_without"
    NOT_DECIDED = "not_decided"  # breaks no rule by itself; it takes too much work to say whether it could stay
    NO_SET_WITH_IT = "no_set_with_it"
    NO_SET_AT_ALL = "no_set_at_all"
    NOT_RECORDED = "not_recorded"
    ASKED_FOR = "asked_for"
    ACCESSORY = "accessory"
