"""Why a part has no price on the day of a quotation."""

from __future__ import annotations

from enum import StrEnum


class GapReason(StrEnum):
    """Why a part has no price on the day of the quotation. Never hidden: it blocks the issue."""

    NO_LIST = "no_list"  # no price list of the maker is at hand
    NOT_YET_VALID = "not_yet_valid"
    EXPIRED = "expired"
    NOT_LISTED = "not_listed"  # the valid list does not name the part
    BELOW_LEAST_QUANTITY = "below_least_quantity"
    NO_EXCHANGE_RATE = "no_exchange_rate"
    ROUNDS_TO_NOTHING = "rounds_to_nothing"  # the step of unit prices is too coarse for this part
