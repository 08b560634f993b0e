"""Cost and margin of a quotation as CSV and as a workbook; both say on every row or page that they are internal.

The columns of the CSV are fixed and in English, since programs read them; amounts are exact, with a decimal point.
"""

from __future__ import annotations

import csv
from decimal import Decimal
from io import StringIO

from spoutline.documents.quotation.margin_figures import line_margin, option_margin
from spoutline.documents.tabular.cells import Cell, shielded, without_controls
from spoutline.documents.tabular.rows import Sheet
from spoutline.explain.phrases.quotation_words import QuotationWord as Word
from spoutline.explain.plan.story import Story
from spoutline.model.margin import percent_of
from spoutline.model.quotation import Quotation
from spoutline.model.quoted_option import QuotedOption

COLUMNS = (
    "internal",
    "quotation",
    "revision",
    "option",
    "part_number",
    "maker",
    "description",
    "quantity",
    "list_price",
    "list_currency",
    "buying_percent",
    "unit_cost",
    "unit_price",
    "currency",
    "cost",
    "amount",
    "margin",
    "margin_percent",
    "low_margin",
)
_INTERNAL = "internal, not for the customer"
_MOST_SIGNS = 31  # of a sheet's name, by the format


def margin_csv(quotation: Quotation, revision: int) -> bytes:
    """Return one row for each line of each option; what is not known is an empty cell. Equal bytes for equal input."""
    buffer = StringIO(newline="")
    writer = csv.writer(buffer, lineterminator="\r\n")
    writer.writerow(COLUMNS)
    terms = quotation.terms
    for option in quotation.options:
        low = {line.part: why.value for line, why in option.low_lines(terms.selling.least_margin_percent)}
        for line in option.lines:
            margin = line.margin
            texts = (terms.heading.number, str(revision), option.title, line.part_number, line.maker, line.name)
            figures = (
                line.ordered,
                line.list_price,
                line.list_currency,
                line.buying_percent,
                line.cost,
                line.unit_price,
                terms.currency,
                None if margin is None else margin.cost,
                None if margin is None else margin.sold,
                None if margin is None else margin.amount,
                percent_of(margin),
                low.get(line.part, ""),
            )
            cells = (shielded(without_controls(text)) for text in texts)
            writer.writerow((_INTERNAL, *cells, *map(_plain, figures)))
    return buffer.getvalue().encode("utf-8-sig")


def _plain(figure: Cell) -> str:
    if figure is None:
        return ""
    return f"{figure:f}" if isinstance(figure, Decimal) else str(figure)


def margin_xlsx(quotation: Quotation, revision: int, story: Story) -> bytes:
    """Return a sheet of the options and one for each of them; equal bytes for equal arguments."""
    from spoutline import __version__
    from spoutline.documents.tabular.workbook import workbook_bytes

    internal, number = story.word(Word.INTERNAL), quotation.terms.heading.number
    sheets = [_options(quotation, story)]
    sheets += [_lines(place, option, quotation, story) for place, option in enumerate(quotation.options, start=1)]
    title = f"{internal}{story.writing.colon} {story.word(Word.MARGIN_SHEET)} {number} r{revision}"
    return workbook_bytes(
        sheets,
        title=title,
        author=f"Spoutline {__version__}",
        comments=story.word(Word.MARGIN_NOTE),
        currency=quotation.terms.currency,
        notice=internal,
    )


def _options(quotation: Quotation, story: Story) -> Sheet:
    words = (Word.OPTION, Word.CURRENCY, Word.GOODS, Word.COST, Word.MARGIN, Word.MARGIN_PERCENT, Word.COST_UNKNOWN)
    rows = tuple(
        (
            option.title,
            quotation.terms.currency,
            *(margin.sold, margin.cost, margin.amount, percent_of(margin)),
            len(option.uncosted_lines),
            story.word(Word.INTERNAL),
        )
        for option in quotation.options
        for margin in (option_margin(option, quotation.terms),)
    )
    titles = (*(story.word(word) for word in words), story.word(Word.INTERNAL))
    return Sheet(story.word(Word.MARGIN_SHEET)[:_MOST_SIGNS], titles, rows, frozenset({2, 3, 4}))


def _lines(place: int, option: QuotedOption, quotation: Quotation, story: Story) -> Sheet:
    words = (
        Word.PART_NUMBER,
        Word.MAKER,
        Word.PART_NAME,
        Word.ORDERED,
        Word.BUYING_DISCOUNT,
        Word.UNIT_COST,
        Word.UNIT_PRICE,
        Word.AMOUNT,
        Word.COST,
        Word.MARGIN,
        Word.MARGIN_PERCENT,
        Word.INTERNAL,
    )
    rows = tuple(
        (
            line.part_number,
            line.maker,
            line.name_in(story.phrases.language),
            line.ordered,
            line.buying_percent,
            line.cost,
            line.unit_price,
            *((None,) * 3 if margin is None else (margin.sold, margin.cost, margin.amount)),
            percent_of(margin),
            story.word(Word.INTERNAL),
        )
        for line in option.lines
        for margin in (line_margin(line, quotation.terms),)
    )
    titles = tuple(story.word(word) for word in words)
    return Sheet(f"{story.word(Word.OPTION)} {place}", titles, rows, frozenset({5, 6, 7, 8, 9}))
