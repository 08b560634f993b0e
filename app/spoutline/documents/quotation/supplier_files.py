"""A supplier's order file as its layout wants it: the rows, as text and as a workbook.

A text that a spreadsheet would take for a formula stands behind an apostrophe, as in every table of the program; a
workbook holds texts as texts.
"""

from __future__ import annotations

import csv
from collections.abc import Sequence
from datetime import date
from decimal import Decimal
from io import BytesIO, StringIO

from spoutline.documents.marks import xlsx_mark
from spoutline.documents.tabular.cells import Cell, shielded, without_controls
from spoutline.frozen import frozen
from spoutline.model.faults import InputFault, InputProblem
from spoutline.model.quantity import Dimension
from spoutline.model.quoted_option import QuotedLine
from spoutline.model.supplier_layout import (
    DayForm,
    DecimalSign,
    OrderColumn,
    OrderContent,
    OrderFileForm,
    OrderUnit,
    Separator,
    SupplierLayout,
    TextEncoding,
)
from spoutline.model.worded import Worded
from spoutline.planning.refit.supplier_orders import OrderHead, SupplierOrder
from spoutline.units.unit_lines import from_core

_SIGNS = {Separator.COMMA: ",", Separator.SEMICOLON: ";", Separator.TAB: "\t", Separator.BAR: "|"}
_DAYS = {DayForm.YEAR_FIRST: "%Y-%m-%d", DayForm.MONTH_FIRST: "%m/%d/%Y", DayForm.DAY_FIRST: "%d.%m.%Y"}
_MASSES = {OrderUnit.KILOGRAMS: "kg", OrderUnit.POUNDS: "lb"}
_GRAMS = Decimal("0.001")


@frozen
class OrderTable:
    """Headings and rows of one supplier's order; ``headings`` is empty where the file has none."""

    headings: tuple[str, ...]
    rows: tuple[tuple[Cell, ...], ...]


def order_table(order: SupplierOrder, head: OrderHead) -> OrderTable:
    """Return the rows of a supplier's order in the columns of its layout; what is not known is an empty cell."""
    layout = order.layout
    rows = tuple(
        tuple(_cell(column, _Row(number, line, head), layout.day_form) for column in layout.columns)
        for number, line in enumerate(order.lines, start=1)
    )
    headings = tuple(column.heading for column in layout.columns) if layout.headings else ()
    return OrderTable(headings, rows)


def shown_rows(table: OrderTable, layout: SupplierLayout) -> tuple[tuple[str, ...], ...]:
    """Return the rows as the text file has them, before its separators."""
    return tuple(tuple(_text(cell, layout) for cell in row) for row in table.rows)


def order_text(order: SupplierOrder, head: OrderHead) -> bytes:
    """Return a supplier's order as the bytes of its text file (RFC 4180 with the layout's separator).

    Raise ``InputFault`` naming the first text that the layout's encoding cannot write.
    """
    layout, table = order.layout, order_table(order, head)
    buffer = StringIO(newline="")
    writer = csv.writer(buffer, delimiter=_SIGNS[layout.separator], lineterminator="\r\n")
    rows = shown_rows(table, layout)
    for row in (tuple(map(_plain, table.headings)), *rows) if table.headings else rows:
        writer.writerow(row)
        _check_signs(row, layout)
    return buffer.getvalue().encode(layout.encoding)


def order_workbook(order: SupplierOrder, head: OrderHead) -> bytes:
    """Return a supplier's order as a workbook of one sheet; equal orders give equal bytes."""
    from datetime import datetime

    import xlsxwriter

    from spoutline import __version__

    table, buffer = order_table(order, head), BytesIO()
    options = {"in_memory": True, "strings_to_formulas": False, "strings_to_urls": False, "strings_to_numbers": False}
    workbook = xlsxwriter.Workbook(buffer, options)
    workbook.set_properties({"author": f"Spoutline {__version__}", "created": datetime(2000, 1, 1)})
    workbook.set_custom_property(*xlsx_mark())
    sheet, bold = workbook.add_worksheet("Order"), workbook.add_format({"bold": True})
    for column, heading in enumerate(table.headings):
        sheet.write_string(0, column, without_controls(heading), bold)
    for number, row in enumerate(table.rows, start=1 if table.headings else 0):
        for column, cell in enumerate(row):
            if isinstance(cell, str):
                sheet.write_string(number, column, without_controls(cell))
            elif cell is not None:
                sheet.write_number(number, column, float(cell))
    widths = [
        max((len(str(row[at] or "")) for row in table.rows), default=0) for at in range(len(order.layout.columns))
    ]
    for column, wide in enumerate(widths):
        title = len(table.headings[column]) if table.headings else 0
        sheet.set_column(column, column, min(60, max(8, wide, title) + 2))
    workbook.close()
    return buffer.getvalue()


def order_file(order: SupplierOrder, head: OrderHead, form: OrderFileForm | None = None) -> bytes:
    """Return a supplier's order as its layout says, or in another ``form``; see ``order_text``."""
    wanted = order.layout.file_form if form is None else form
    return order_workbook(order, head) if wanted is OrderFileForm.WORKBOOK else order_text(order, head)


def order_file_names(orders: Sequence[SupplierOrder], head: OrderHead) -> tuple[str, ...]:
    """Return a name for the file of each order, told apart: number, revision where there is one, supplier."""
    revision = "" if head.revision is None else f"-r{head.revision}"
    names: list[str] = []
    for order in orders:
        stem, tried = f"{_stem(head.number)}{revision}-{_stem(order.supplier)}", 1
        name = f"{stem}.{order.layout.file_form}"
        while name.casefold() in {one.casefold() for one in names}:
            tried += 1
            name = f"{stem}-{tried}.{order.layout.file_form}"
        names.append(name)
    return tuple(names)


def _stem(name: str) -> str:
    words = "".join(character if character.isalnum() else " " for character in name).split()
    return "-".join(words)[:60] or "order"


@frozen
class _Row:
    number: int
    line: QuotedLine
    head: OrderHead


def _cell(column: OrderColumn, row: _Row, day_form: DayForm) -> Cell:
    """Return what a line has in a column."""
    line, head = row.line, row.head
    match column.content:
        case OrderContent.QUANTITY:
            return line.ordered if column.unit is OrderUnit.PIECES else _packs(line)
        case OrderContent.COST:
            return None if line.cost is None else line.cost * line.ordered
        case OrderContent.MASS:
            mass = from_core(line.mass_kg * line.ordered, _MASSES[column.unit], Dimension.MASS)
            return Decimal(repr(mass)).quantize(_GRAMS)
        case OrderContent.DATED:
            return day_text(head.dated, day_form)
    cells: dict[OrderContent, Cell] = {
        OrderContent.LINE: row.number,
        OrderContent.PART_NUMBER: line.part_number,
        OrderContent.MAKER: line.maker,
        OrderContent.DESCRIPTION: line.name,
        OrderContent.PACK: line.pack,
        OrderContent.LIST_PRICE: line.list_price,
        OrderContent.LIST_CURRENCY: line.list_currency,
        OrderContent.UNIT_COST: line.cost,
        OrderContent.CURRENCY: head.currency,
        OrderContent.LEAD_DAYS: line.lead_time_days,
        OrderContent.ORDER: head.number,
        OrderContent.REVISION: head.revision,
        OrderContent.SITE: head.site,
        OrderContent.FIXED: column.text,
    }
    return cells[column.content]


def day_text(day: date, form: DayForm) -> str:
    """Return a day as a layout writes it."""
    return day.strftime(_DAYS[form])


def _packs(line: QuotedLine) -> Cell:
    whole, rest = divmod(line.ordered, line.pack)
    return whole if not rest else Decimal(line.ordered) / line.pack


def _text(cell: Cell, layout: SupplierLayout) -> str:
    if cell is None:
        return ""
    if isinstance(cell, str):
        return _plain(cell)
    text = f"{cell:f}" if isinstance(cell, Decimal) else str(cell)
    return text.replace(".", ",") if layout.decimal_sign is DecimalSign.COMMA else text


def _plain(text: str) -> str:
    return shielded(without_controls(text))


def _check_signs(row: Sequence[str], layout: SupplierLayout) -> None:
    for text in row:
        try:
            text.encode(layout.encoding)
        except UnicodeEncodeError as fault:
            wanted = Worded(
                "{encoding} has no sign for {sign}: write the file in {utf_8}",
                encoding=layout.encoding,
                sign=repr(text[fault.start]),
                utf_8=TextEncoding.UTF_8,
            )
            raise InputFault((InputProblem(layout.supplier, "encoding", repr(text), wanted),)) from fault
