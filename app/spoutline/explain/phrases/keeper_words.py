"""What the keeper's papers say: price lists and tables of rules."""

from __future__ import annotations

from enum import StrEnum


class KeeperWord(StrEnum):
    """Every fixed text of these papers; some hold places that are named in braces."""

    PRICE_LISTS = "keeper_price_lists"
    PRICE_LISTS_SUBJECT = "keeper_price_lists_subject"
    NO_LISTS = "keeper_no_lists"
    SUPPLIER = "keeper_supplier"
    VALID = "keeper_valid"
    VALID_SPAN = "keeper_valid_span"
    VALID_OPEN = "keeper_valid_open"
    GROUP = "keeper_group"
    FROM_QUANTITY = "keeper_from_quantity"
    RULE_TABLE = "keeper_rule_table"
    RULE_TABLE_SUBJECT = "keeper_rule_table_subject"
    COPIED_FROM = "keeper_copied_from"
    BEFORE = "keeper_before"
    CHANGED_ROWS = "keeper_changed_rows"
    TO_ASK = "keeper_to_ask"
