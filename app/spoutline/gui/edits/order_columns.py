"""The columns of a supplier's order file as rows that a person writes, and how the file is written as choices."""

from __future__ import annotations

from collections.abc import Iterable

from spoutline.gui.edits.question import Option
from spoutline.gui.edits.terms_fields import TermsColumn, TermsEntry, TermsTable
from spoutline.model.supplier_layout import (
    DayForm,
    DecimalSign,
    OrderColumn,
    OrderContent,
    OrderFileForm,
    OrderUnit,
    Separator,
    TextEncoding,
)

ORDER_COLUMNS = TermsTable(
    path="columns",
    title="Columns of the file",
    row="column",
    help="One row for each column, from left to right. The customer's price is none of them.",
    columns=(
        TermsColumn(name="heading", title="Heading", help="What stands above the column.", share=5),
        TermsColumn(
            name="content", title="Content", help="What the column holds.", share=6, entry=TermsEntry.CHOICE,
            initial=OrderContent.FIXED,
            options=(
                Option(OrderContent.LINE, "Number of the line"),
                Option(OrderContent.PART_NUMBER, "Part number"),
                Option(OrderContent.MAKER, "Maker"),
                Option(OrderContent.DESCRIPTION, "Description"),
                Option(OrderContent.QUANTITY, "Quantity"),
                Option(OrderContent.PACK, "Pieces in a pack"),
                Option(OrderContent.LIST_PRICE, "List price"),
                Option(OrderContent.LIST_CURRENCY, "Currency of the list"),
                Option(OrderContent.UNIT_COST, "Cost of one piece"),
                Option(OrderContent.COST, "Cost of the line"),
                Option(OrderContent.CURRENCY, "Currency of the cost"),
                Option(OrderContent.LEAD_DAYS, "Lead time in days"),
                Option(OrderContent.MASS, "Mass of the line"),
                Option(OrderContent.ORDER, "Number of the quotation"),
                Option(OrderContent.REVISION, "Revision of the quotation"),
                Option(OrderContent.SITE, "Site"),
                Option(OrderContent.DATED, "Day of the quotation"),
                Option(OrderContent.FIXED, "Text of your own"),
            ),
        ),
        TermsColumn(
            name="unit", title="Unit", help="For quantities and masses.", share=4, entry=TermsEntry.CHOICE,
            initial=OrderUnit.NONE,
            options=(
                Option(OrderUnit.NONE, "–"),
                Option(OrderUnit.PIECES, "Pieces"),
                Option(OrderUnit.PACKS, "Packs"),
                Option(OrderUnit.KILOGRAMS, "Kilograms"),
                Option(OrderUnit.POUNDS, "Pounds"),
            ),
        ),
        TermsColumn(name="text", title="Your text", help="The same in every row: an account number, a unit.", share=5),
    ),
)  # fmt: skip

SEPARATORS = (
    Option(Separator.COMMA, "Comma ( , )"),
    Option(Separator.SEMICOLON, "Semicolon ( ; )"),
    Option(Separator.TAB, "Tabulator"),
    Option(Separator.BAR, "Bar ( | )"),
)
DECIMALS = (Option(DecimalSign.POINT, "Point (1.50)"), Option(DecimalSign.COMMA, "Comma (1,50)"))
ENCODINGS = (
    Option(TextEncoding.UTF_8_MARKED, "UTF-8 with byte order mark"),
    Option(TextEncoding.UTF_8, "UTF-8 without a mark"),
    Option(TextEncoding.WINDOWS_1252, "Windows-1252"),
    Option(TextEncoding.ISO_8859_1, "ISO 8859-1"),
)
DAYS = (
    Option(DayForm.YEAR_FIRST, "2026-12-31"),
    Option(DayForm.MONTH_FIRST, "12/31/2026"),
    Option(DayForm.DAY_FIRST, "31.12.2026"),
)
FILES = (Option(OrderFileForm.TEXT, "Text (CSV)"), Option(OrderFileForm.WORKBOOK, "Workbook (XLSX)"))


def column_rows(columns: Iterable[OrderColumn]) -> tuple[tuple[str, ...], ...]:
    """Return columns as rows of texts."""
    return tuple((one.heading, one.content.value, one.unit.value, one.text) for one in columns)


def column_fields(rows: Iterable[tuple[str, ...]]) -> list[dict[str, str]]:
    """Return what rows of texts say of columns, each as the fields of its document."""
    names = tuple(column.name for column in ORDER_COLUMNS.columns)
    return [dict(zip(names, row, strict=True)) for row in rows]
