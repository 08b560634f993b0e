"""Terms of a quotation as short as a test needs them, in the form that their file has."""

from __future__ import annotations

HEAD = """
[seller]
name = "Hedgerow Supply"
[customer]
name = "Hollow Ford Fuels"
[heading]
number = "{number}"
dated = 2026-11-25
"""
SINGLE_USE = """
[[options]]
title = "Single-use"
breakaway = "single_use"
"""
RECONNECTABLE = """
[[options]]
title = "Reconnectable"
breakaway = "reconnectable"
"""


def short_terms(number: str, *tables: str) -> str:
    """Return terms under a number of quotation, with the tables of TOML that a test adds to seller and customer."""
    return HEAD.replace("{number}", number) + "".join(tables)
