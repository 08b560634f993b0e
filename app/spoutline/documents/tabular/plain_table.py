"""A keeper's table as CSV or workbook, made to be taken in again: texts that look like formulas come back.

In CSV such a text stands behind an apostrophe, and so does one that begins with such an apostrophe already; whoever
reads the table takes one away (``planning.table_intake.cell_values.without_shield``). A workbook needs none.
"""

from __future__ import annotations

import csv
from collections.abc import Iterable, Sequence
from io import StringIO

from spoutline.documents.tabular.rows import Sheet
from spoutline.planning.table_intake.cell_values import with_shield


def table_csv(columns: Sequence[str], rows: Iterable[Sequence[str]]) -> bytes:
    """Return a table as CSV, UTF-8 with a byte order mark; equal tables give equal bytes."""
    stream = StringIO(newline="")
    writer = csv.writer(stream, lineterminator="\r\n")
    writer.writerow(columns)
    writer.writerows([with_shield(text) for text in row] for row in rows)
    return stream.getvalue().encode("utf-8-sig")


def table_xlsx(title: str, columns: Sequence[str], rows: Iterable[Sequence[str]]) -> bytes:
    """Return a table as a workbook of one sheet; every cell is a text."""
    from spoutline import __version__
    from spoutline.documents.tabular.workbook import workbook_bytes

    sheet = Sheet(title, tuple(columns), tuple(tuple(row) for row in rows))
    author = f"Spoutline {__version__}"
    return workbook_bytes((sheet,), title=title, author=author, comments="", currency="USD")
