"""The registry of the book's tables with every one of them in it; ``tables`` alone holds those loaded so far."""

from __future__ import annotations

from spoutline.book import (  # noqa: F401 - their tables belong to the book
    agreements,
    customers,
    dispenser_types,
    quotation_tables,
    record_tables,
    stock,
    supplier_layouts,
)
from spoutline.book.tables import BookTable

__all__ = ["BookTable"]
