"""How a table with faults is taken back whole: a draft that it would have changed stays as it was."""

from __future__ import annotations


class NotTakenIn(Exception):
    """Takes back what a table with faults would have done."""
