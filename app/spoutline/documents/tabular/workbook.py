"""Sheets written as a workbook: texts as texts, never as formulas or links; equal sheets give equal bytes."""

from __future__ import annotations

from collections.abc import Iterable
from datetime import datetime
from decimal import Decimal
from io import BytesIO
from typing import Any, Final

import xlsxwriter

from spoutline.documents.marks import xlsx_mark
from spoutline.documents.tabular.cells import Cell, without_controls
from spoutline.documents.tabular.rows import Sheet
from spoutline.explain.writing.money import decimals

# a workbook must carry a date of creation; a fixed one keeps equal bills equal, and is no date of the bill
_CREATED: Final = datetime(2000, 1, 1)
_WIDEST: Final = 60
_NARROWEST: Final = 8
_LONGEST_TEXT: Final = 32767  # characters a cell holds, by the format


def workbook_bytes(
    sheets: Iterable[Sheet], *, title: str, author: str, comments: str, currency: str, notice: str = ""
) -> bytes:
    """Return a workbook of some sheets.

    Parameters
    ----------
    sheets
        In their order.
    title, author, comments
        Properties of the file.
    currency
        Of the money columns: it sets their decimals.
    notice
        Stands at the head of every printed page; empty for none.
    """
    buffer = BytesIO()
    options = {"in_memory": True, "strings_to_formulas": False, "strings_to_urls": False, "strings_to_numbers": False}
    workbook = xlsxwriter.Workbook(buffer, options)
    workbook.set_properties(
        {"title": without_controls(title), "author": author, "comments": comments, "created": _CREATED}
    )
    workbook.set_custom_property(*xlsx_mark())
    places = decimals(currency)
    formats = _Formats(workbook, f"#,##0.{'0' * places}" if places else "#,##0")
    for sheet in sheets:
        _write(workbook.add_worksheet(sheet.name), sheet, formats)
    if notice:
        for worksheet in workbook.worksheets():
            worksheet.set_header(f"&R{notice}")
    workbook.close()
    return buffer.getvalue()


class _Formats:
    """The cell formats of the workbook."""

    def __init__(self, workbook: xlsxwriter.Workbook, money_format: str) -> None:
        self.head = workbook.add_format({"bold": True, "bottom": 1, "text_wrap": True, "valign": "top"})
        self.text = workbook.add_format({"text_wrap": True, "valign": "top"})
        self.number = workbook.add_format({"valign": "top"})
        self.money = workbook.add_format({"num_format": money_format, "valign": "top"})


def _write(worksheet: Any, sheet: Sheet, formats: _Formats) -> None:  # noqa: ANN401 - XlsxWriter has no types
    for column, title in enumerate(sheet.titles):
        worksheet.write_string(0, column, title, formats.head)
        worksheet.set_column(column, column, _width(sheet, column))
    for number, row in enumerate(sheet.rows, start=1):
        for column, cell in enumerate(row):
            if isinstance(cell, str):
                worksheet.write_string(number, column, without_controls(cell)[:_LONGEST_TEXT], formats.text)
            elif cell is not None:
                # a cell holds binary numbers only; two decimals survive that
                kind = formats.money if column in sheet.money else formats.number
                worksheet.write_number(number, column, float(cell), kind)
    worksheet.freeze_panes(1, 1)
    worksheet.autofilter(0, 0, max(len(sheet.rows), 1), len(sheet.titles) - 1)
    worksheet.set_landscape()
    worksheet.fit_to_pages(1, 0)
    worksheet.repeat_rows(0)


def _width(sheet: Sheet, column: int) -> int:
    longest = max((_length(row[column]) for row in sheet.rows), default=0)
    return max(_NARROWEST, min(_WIDEST, longest + 2), min(len(sheet.titles[column]) + 4, 24))


def _length(cell: Cell) -> int:
    if cell is None:
        return 0
    return len(f"{cell:.2f}") if isinstance(cell, float | Decimal) else len(str(cell))
