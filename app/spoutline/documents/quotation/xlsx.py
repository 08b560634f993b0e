"""The quotation as a workbook whose formulas recompute every amount. Texts are written as texts, never as formulas."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from datetime import datetime
from decimal import Decimal
from io import BytesIO
from typing import Any, Final

import xlsxwriter
from xlsxwriter.utility import xl_rowcol_to_cell as cell_name

from spoutline.documents.marks import xlsx_mark
from spoutline.documents.quotation.coverage import covers_text
from spoutline.documents.quotation.formulas import rounded_formula
from spoutline.documents.quotation.places import islands_by_label, liquids_by_label, sets_of_option, shown_parts
from spoutline.documents.tabular.cells import without_controls
from spoutline.explain.phrases.quotation_words import QuotationWord as Word
from spoutline.explain.plan.story import Story
from spoutline.explain.writing.money import decimals
from spoutline.model.catalogue_edition import DEMONSTRATION
from spoutline.model.charge import Charge
from spoutline.model.delivery import delivery_of
from spoutline.model.quotation import Quotation
from spoutline.model.quotation_terms import FreightMethod, TaxRounding
from spoutline.model.quoted_option import QuotedLine, QuotedOption

# a workbook must carry a date of creation; a fixed one keeps equal quotations equal, and is no date of the quotation
_CREATED: Final = datetime(2000, 1, 1)
_LONGEST_TEXT: Final = 32767  # characters a cell holds, by the format
_LONGEST_SHEET_NAME: Final = 31
_LINE_WIDTHS: Final = (6, 16, 22, 46, 9, 9, 12, 10, 14, 16, 10)
_HEADS_BELOW: Final = 4  # rows of title, currency, sets and the heads of the lines
_COVERED, _ORDERED, _UNIT_PRICE, _AMOUNT, _LEAD, _MASS = 3, 7, 8, 9, 10, 11


def quotation_xlsx(quotation: Quotation, revision: int, story: Story) -> bytes:
    """Return the workbook: a sheet for each option, then positions and pick list; equal bytes for equal input."""
    buffer = BytesIO()
    options = {"in_memory": True, "strings_to_formulas": False, "strings_to_urls": False, "strings_to_numbers": False}
    workbook = xlsxwriter.Workbook(buffer, options)
    heading = quotation.terms.heading
    title = f"{story.word(Word.QUOTATION)} {heading.number}, {story.word(Word.REVISION)} {revision}"
    workbook.set_properties(
        {
            "title": without_controls(title),
            "author": without_controls(quotation.terms.seller.name),
            "comments": story.phrases.text["advice"],
            "created": _CREATED,
        }
    )
    workbook.set_custom_property(*xlsx_mark())
    formats = _Formats(workbook, quotation.terms.currency)
    for number, option in enumerate(quotation.options, start=1):
        name = f"{story.word(Word.OPTION)} {number}"
        sheet = workbook.add_worksheet(name[:_LONGEST_SHEET_NAME])
        sets = sets_of_option(quotation, number - 1, revision, story)
        _OptionSheet(sheet, formats, quotation, option, story).write(title, sets)
    _positions(workbook.add_worksheet(story.word(Word.SHEET_POSITIONS)), formats, quotation, story)
    _pick_list(workbook.add_worksheet(story.word(Word.SHEET_PICK_LIST)), formats, quotation, story)
    if quotation.pins.catalogue == DEMONSTRATION:
        for sheet in workbook.worksheets():
            sheet.set_header(f"&R{story.phrases.text['demonstration_notice']}")
    workbook.close()
    return buffer.getvalue()


class _Formats:
    def __init__(self, workbook: xlsxwriter.Workbook, currency: str) -> None:
        places = decimals(currency)
        money = f"#,##0.{'0' * places}" if places else "#,##0"
        self.title = workbook.add_format({"bold": True, "font_size": 13})
        self.head = workbook.add_format({"bold": True, "bottom": 1, "text_wrap": True, "valign": "top"})
        self.text = workbook.add_format({"text_wrap": True, "valign": "top"})
        self.number = workbook.add_format({"valign": "top"})
        self.money = workbook.add_format({"num_format": money, "valign": "top"})
        self.right = workbook.add_format({"valign": "top", "align": "right"})
        self.total = workbook.add_format({"num_format": money, "bold": True, "top": 1})
        self.strong = workbook.add_format({"bold": True, "top": 1})


@dataclass
class _Place:
    """The next free row of a sheet."""

    row: int = 0

    def next(self) -> int:
        self.row += 1
        return self.row - 1


class _OptionSheet:
    """Writes one option: lines, labour, amounts; each sum is a formula over the cells above it."""

    def __init__(self, sheet: Any, formats: _Formats, quotation: Quotation, option: QuotedOption, story: Story) -> None:  # noqa: ANN401 - XlsxWriter has no types
        self.sheet, self.formats, self.option, self.story = sheet, formats, option, story
        self.terms, self._first_title = quotation.terms, quotation.options[0].title
        self.place = _Place()

    def write(self, title: str, sets: str) -> None:
        for column, width in enumerate(_LINE_WIDTHS):
            self.sheet.set_column(column, column, width)
        self._text(self.place.next(), 0, f"{title}{self.story.writing.colon} {self.option.title}", self.formats.title)
        row = self.place.next()
        self._text(
            row,
            0,
            f"{self.story.word(Word.CURRENCY)}{self.story.writing.colon} {self.terms.currency}",
            self.formats.text,
        )
        self._text(row, _COVERED, covers_text(self.option, self.story), self.formats.text)
        self._text(
            self.place.next(),
            0,
            f"{self.story.phrases.text['sets_title']}{self.story.writing.colon} {sets}",
            self.formats.text,
        )
        goods, priced = self._lines()
        labour, worked = self._labour()
        self._amounts(goods, labour, priced, worked)
        self._common()
        self._delivery()
        self._alternates()
        self.sheet.freeze_panes(_HEADS_BELOW, 2)
        self.sheet.repeat_rows(0, _HEADS_BELOW - 1)
        self.sheet.set_landscape()
        self.sheet.fit_to_pages(1, 0)

    def _text(self, row: int, column: int, text: str, kind: Any) -> None:  # noqa: ANN401 - a format
        self.sheet.write_string(row, column, without_controls(text)[:_LONGEST_TEXT], kind)

    def _head(self, words: Sequence[Word]) -> None:
        row = self.place.next()
        for column, word in enumerate(words):
            self._text(row, column, self.story.word(word), self.formats.head)

    def _formula(self, row: int, column: int, formula: str, value: Decimal | int, kind: Any) -> str:  # noqa: ANN401
        self.sheet.write_formula(row, column, f"={formula}", kind, float(value))
        return str(cell_name(row, column))

    def _named(self, line: QuotedLine) -> str:
        return line.name_in(self.story.phrases.language)

    def _lines(self) -> tuple[str, list[str]]:
        """Return the cell of the goods, and the cells of the amounts of all priced lines."""
        words = (Word.LINE, Word.PART_NUMBER, Word.MAKER, Word.PART_NAME, Word.FITTED, Word.SPARES, Word.PACK_REST)
        self._head((*words, Word.ORDERED, Word.UNIT_PRICE, Word.AMOUNT, Word.LEAD_DAYS))
        first, priced = self.place.row, []
        for number, line in enumerate(self.option.lines, start=1):
            row = self.place.next()
            self.sheet.write_number(row, 0, number, self.formats.number)
            for column, text in ((1, line.part_number), (2, line.maker), (3, self._named(line))):
                self._text(row, column, text, self.formats.text)
            for column, pieces in ((4, line.fitted), (5, line.spares), (6, line.pack_rest)):
                self.sheet.write_number(row, column, pieces, self.formats.number)
            total = f"SUM({cell_name(row, 4)}:{cell_name(row, 6)})"
            ordered = self._formula(row, _ORDERED, total, line.ordered, self.formats.number)
            self.sheet.write_number(row, _LEAD, line.lead_time_days, self.formats.number)
            self.sheet.write_number(row, _MASS, line.mass_kg, self.formats.number)
            if line.unit_price is None or line.amount is None:
                word = Word.NO_PRICE if line.is_open else Word.PRICE_FOLLOWS
                self._text(row, _UNIT_PRICE, self.story.word(word), self.formats.text)
                continue
            self.sheet.write_number(row, _UNIT_PRICE, float(line.unit_price), self.formats.money)
            product = f"{ordered}*{cell_name(row, _UNIT_PRICE)}"
            priced.append(self._formula(row, _AMOUNT, product, line.amount, self.formats.money))
        self.sheet.set_column(_MASS, _MASS, 8, None, {"hidden": True})
        self._line_rows = (first, self.place.row - 1)
        return self._sum(Word.GOODS, first, self.option.goods_amount), priced

    def _labour(self) -> tuple[str, list[str]]:
        self.place.next()
        self._head((Word.LINE, Word.TASK, Word.COUNT, Word.HOURS_EACH, Word.HOURS, Word.RATE))
        first, worked = self.place.row, []
        for number, line in enumerate(self.option.labour, start=1):
            row = self.place.next()
            self.sheet.write_number(row, 0, number, self.formats.number)
            self._text(row, 1, line.title, self.formats.text)
            for column, figure in ((2, line.count), (3, line.hours_each), (5, line.hourly_rate)):
                self.sheet.write_number(row, column, float(figure), self.formats.number)
            hours = self._formula(row, 4, f"{cell_name(row, 2)}*{cell_name(row, 3)}", line.hours, self.formats.number)
            exact = f"{hours}*{cell_name(row, 5)}"
            worked.append(self._formula(row, _AMOUNT, self._to_coin(exact), line.amount, self.formats.money))
        return self._sum(Word.LABOUR, first, self.option.labour_amount), worked

    def _sum(self, word: Word, first: int, value: Decimal) -> str:
        last = self.place.row - 1
        row = self.place.next()
        self._text(row, 0, self.story.word(word), self.formats.strong)
        formula = f"SUM({cell_name(first, _AMOUNT)}:{cell_name(last, _AMOUNT)})" if last >= first else "0"
        return self._formula(row, _AMOUNT, formula, value, self.formats.total)

    def _amounts(self, goods: str, labour: str, priced: list[str], worked: list[str]) -> None:
        self.place.next()
        freight = self._amount(self.story.word(Word.FREIGHT), self._freight(goods), self.option.freight_amount)
        net = self._amount(self.story.word(Word.NET), f"{goods}+{labour}+{freight}", self.option.net_amount)
        whole = {Charge.GOODS: goods, Charge.LABOUR: labour, Charge.FREIGHT: freight}
        each = {Charge.GOODS: priced, Charge.LABOUR: worked, Charge.FREIGHT: [freight]}
        taxes = []
        for tax in self.option.taxes:
            factor = f"*{tax.percent}/100"
            if self.terms.rounding.tax is TaxRounding.WHOLE:
                base = "+".join(whole[charge] for charge in tax.on) or "0"
                formula = self._to_coin(f"({base}){factor}")
            else:
                formula = "+".join(self._to_coin(f"{one}{factor}") for charge in tax.on for one in each[charge]) or "0"
            taxes.append(self._amount(f"{tax.name}, {tax.percent} %", formula, tax.amount))
        exact = "+".join((net, *taxes))
        rounding = self.terms.rounding
        payable = rounded_formula(exact, rounding.total_step, rounding.mode)
        rest = self._amount(self.story.word(Word.ROUNDING), f"{payable}-({exact})", self.option.rounding_amount)
        row = self.place.next()
        self._text(row, 0, f"{self.story.word(Word.TOTAL)}, {self.terms.currency}", self.formats.strong)
        self._formula(row, _AMOUNT, f"{exact}+{rest}", self.option.total, self.formats.total)

    def _common(self) -> None:
        """Write both totals for the hoses that this option and the first one cover, and their difference."""
        common, words = self.option.on_common, self.story
        if common is None or not common.labels:
            return
        self.place.next()
        hoses = f"{words.word(Word.TOTAL_ON_COMMON)} ({len(common.labels)})"
        cells = []
        for title, total in ((self.option.title, common.own_total), (self._first_title, common.first_total)):
            row = self.place.next()
            self._text(row, 0, f"{hoses}{self.story.writing.colon} {title}", self.formats.text)
            self.sheet.write_number(row, _AMOUNT, float(total), self.formats.money)
            cells.append(str(cell_name(row, _AMOUNT)))
        self._amount(words.word(Word.DIFFERENCE), "-".join(cells), common.difference)

    def _alternates(self) -> None:
        """Write the parts offered in place of those of lines, with what they change; no sum counts them."""
        if not self.option.offered_alternates:
            return
        self.place.next()
        self._text(self.place.next(), 0, self.story.word(Word.ALTERNATES), self.formats.strong)
        for one in self.option.offered_alternates:
            row = self.place.next()
            name = "; ".join(text for text in (one.name_in(self.story.phrases.language), one.note) if text)
            for column, text in ((1, one.part_number), (2, one.maker), (3, name)):
                self._text(row, column, text, self.formats.text)
            self._text(row, _UNIT_PRICE, f"{self.story.word(Word.INSTEAD_OF)} {one.line_number}", self.formats.text)
            self.sheet.write_number(row, _ORDERED, one.ordered, self.formats.number)
            if one.difference is None:
                self._text(row, _AMOUNT, self.story.word(Word.NO_PRICE), self.formats.right)
            else:
                self.sheet.write_number(row, _AMOUNT, float(one.difference), self.formats.money)
        self._text(self.place.next(), 1, self.story.word(Word.ALTERNATES_NOTE), self.formats.text)

    def _delivery(self) -> None:
        """Write the longest lead time, and the day that it ends if ordered on the day of the quotation."""
        found = delivery_of(self.option.lines, self.terms.heading.dated)
        if found is None:
            return
        self.place.next()
        for word, told in (
            (Word.LONGEST_LEAD, self.story.days(found.lead_days)),
            (Word.EARLIEST_DELIVERY, self.story.day(found.earliest)),
        ):
            row = self.place.next()
            self._text(row, 0, self.story.word(word), self.formats.text)
            self._text(row, _AMOUNT, told, self.formats.right)

    def _amount(self, title: str, formula: str, value: Decimal) -> str:
        row = self.place.next()
        self._text(row, 0, title, self.formats.text)
        return self._formula(row, _AMOUNT, formula, value, self.formats.money)

    def _freight(self, goods: str) -> str:
        amount, (first, last) = self.terms.freight.amount, self._line_rows
        match self.terms.freight.method:
            case FreightMethod.FIXED:
                exact = str(amount)
            case FreightMethod.PERCENT_OF_GOODS:
                exact = f"{goods}*{amount}/100"
            case FreightMethod.PER_KILOGRAM:
                ordered = f"{cell_name(first, _ORDERED)}:{cell_name(last, _ORDERED)}"
                masses = f"{cell_name(first, _MASS)}:{cell_name(last, _MASS)}"
                exact = f"{amount}*SUMPRODUCT({ordered},{masses})" if last >= first else "0"
        return self._to_coin(exact)

    def _to_coin(self, formula: str) -> str:
        return rounded_formula(formula, Decimal(1).scaleb(-decimals(self.terms.currency)), self.terms.rounding.mode)


def _positions(sheet: Any, formats: _Formats, quotation: Quotation, story: Story) -> None:  # noqa: ANN401
    island_at = islands_by_label(quotation)
    liquids = liquids_by_label(quotation, story)
    is_told = any(island_at.values())
    words = (Word.OPTION, Word.POSITION, Word.DISPENSER, *((Word.ISLAND,) if is_told else ()), Word.LIQUID, Word.SET)
    rows = [
        (
            option.title,
            one.label,
            one.dispenser,
            *((island_at[one.label],) if is_told else ()),
            liquids.get(one.label, one.liquid),
            shown_parts(one, story, quotation.parts),
        )
        for option in quotation.options
        for one in option.positions
    ]
    widths = (24, 18, 12, *((12,) if is_told else ()), 24, 90)
    _table(sheet, formats, [story.word(word) for word in words], rows, widths)


def _pick_list(sheet: Any, formats: _Formats, quotation: Quotation, story: Story) -> None:  # noqa: ANN401
    words = (Word.OPTION, Word.MAKER, Word.PART_NUMBER, Word.PART_NAME, Word.ORDERED, Word.LEAD_DAYS)
    rows = [
        (
            option.title,
            line.maker,
            line.part_number,
            line.name_in(story.phrases.language),
            line.ordered,
            line.lead_time_days,
        )
        for option in quotation.options
        for line in sorted(option.lines, key=lambda line: (line.maker, line.part_number))
    ]
    _table(sheet, formats, [story.word(word) for word in words], rows, (24, 24, 16, 46, 10, 12))


def _table(
    sheet: Any,  # noqa: ANN401 - XlsxWriter has no types
    formats: _Formats,
    titles: Sequence[str],
    rows: Sequence[Sequence[str | int]],
    widths: Sequence[int],
) -> None:
    for column, (title, width) in enumerate(zip(titles, widths, strict=True)):
        sheet.write_string(0, column, title, formats.head)
        sheet.set_column(column, column, width)
    for number, row in enumerate(rows, start=1):
        for column, cell in enumerate(row):
            if isinstance(cell, str):
                sheet.write_string(number, column, without_controls(cell)[:_LONGEST_TEXT], formats.text)
            else:
                sheet.write_number(number, column, cell, formats.number)
    sheet.freeze_panes(1, 0)
    sheet.autofilter(0, 0, max(len(rows), 1), len(titles) - 1)
