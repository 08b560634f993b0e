"""Cost and margin of a quotation as an internal paper: what never goes to the customer."""

from __future__ import annotations

from collections.abc import Iterator

from spoutline.documents.content.bill_frame import paper_for
from spoutline.documents.content.blocks import (
    Alignment,
    Block,
    Column,
    Document,
    Emphasis,
    Heading,
    KeyValues,
    Paragraph,
    Role,
    Row,
    Table,
)
from spoutline.documents.quotation.figures import money, plain
from spoutline.documents.quotation.margin_figures import (
    in_coin,
    line_margin,
    option_margin,
)
from spoutline.explain.phrases.paper_words import PaperWord
from spoutline.explain.phrases.quotation_words import QuotationWord as Word
from spoutline.explain.plan.story import Story
from spoutline.explain.plan.texts import Named
from spoutline.model.catalogue_edition import DEMONSTRATION
from spoutline.model.margin import LowMargin, Margin, percent_of
from spoutline.model.quotation import Quotation
from spoutline.model.quoted_option import QuotedLine, QuotedOption

_RIGHT = Alignment.RIGHT
_UNKNOWN = "–"
_LOW = {LowMargin.BELOW_COST: Word.BELOW_COST, LowMargin.BELOW_FLOOR: Word.BELOW_FLOOR}


def margin_content(quotation: Quotation, revision: int, story: Story) -> Document:
    """Return cost and margin of every line, option and the quotation; equal documents for equal arguments."""
    terms, internal = quotation.terms, story.word(Word.INTERNAL)
    mark = f"{story.word(Word.MARGIN_SHEET)} {terms.heading.number}, {story.word(Word.REVISION)} {revision}"
    blocks: list[Block] = [Heading(f"{story.word(Word.MARGIN_SHEET)} {terms.heading.number}", 1)]
    blocks.append(Paragraph(internal, Role.LEAD))
    blocks.append(KeyValues(tuple(_head(quotation, revision, story))))
    blocks.append(_side_by_side(quotation, story))
    blocks.append(Paragraph(story.word(Word.MARGIN_NOTE), Role.NOTE))
    for option in quotation.options:
        blocks.extend(_option(option, quotation, story))
    return Document(
        title=f"{internal}{story.writing.colon} {mark}",
        subject=internal,
        author=terms.seller.name,
        language=story.phrases.language,
        paper=paper_for(quotation.pins.jurisdiction_id),
        running_head=f"{internal} · {mark}",
        running_foot=f"{internal} · {story.day(terms.heading.dated)}",
        page_phrase=story.word(PaperWord.PAGE_OF),
        blocks=tuple(blocks),
        notice=story.phrases.text["demonstration_notice"] if quotation.pins.catalogue == DEMONSTRATION else "",
    )


def _head(quotation: Quotation, revision: int, story: Story) -> Iterator[Named]:
    terms = quotation.terms
    yield Named(story.word(Word.CUSTOMER), terms.customer.name)
    yield Named(story.word(Word.SITE), quotation.pins.survey.site.name)
    yield Named(story.word(Word.NUMBER), f"{terms.heading.number}, {story.word(Word.REVISION)} {revision}")
    yield Named(story.word(Word.DATED), story.day(terms.heading.dated))
    yield Named(story.word(Word.CURRENCY), terms.currency)
    least = terms.selling.least_margin_percent
    if least is not None:
        yield Named(story.word(Word.LEAST_MARGIN), plain(least, story.writing))
    for word in quotation.margin_words:
        told = story.phrases.fill("incomplete_word", by=word.by, reason=word.reason)
        yield Named(word.option, f"{told} ({'; '.join(word.lines)})")


def _side_by_side(quotation: Quotation, story: Story) -> Table:
    titles = (Word.GOODS, Word.COST, Word.MARGIN, Word.MARGIN_PERCENT)
    columns = (
        Column(story.word(Word.OPTION), 2.2),
        *(Column(story.word(word), 1.5, _RIGHT) for word in titles),
        Column(story.title(Word.COST_UNKNOWN), 1.0, _RIGHT),
    )
    rows = [
        Row((one.title, *_amounts(option_margin(one, quotation.terms), quotation, story), str(len(one.uncosted_lines))))
        for one in quotation.options
    ]
    if len(quotation.options) > 1:
        rows.append(Row((story.word(Word.LOWEST_TO_HIGHEST), *_ranges(quotation, story), ""), Emphasis.TOTAL))
    return Table(columns, tuple(rows))


def _ranges(quotation: Quotation, story: Story) -> Iterator[str]:
    """Return the lowest and the highest of each column: options are alternatives, of which one is ordered."""
    currency, writing = quotation.terms.currency, story.writing
    margins = [option_margin(one, quotation.terms) for one in quotation.options]
    for amounts in ([one.sold for one in margins], [one.cost for one in margins], [one.amount for one in margins]):
        yield _range(money(min(amounts), currency, writing), money(max(amounts), currency, writing))
    shares = [percent for percent in map(percent_of, margins) if percent is not None]
    yield _range(writing.decimal(min(shares), 2), writing.decimal(max(shares), 2)) if shares else _UNKNOWN


def _range(low: str, high: str) -> str:
    return low if low == high else f"{low} –\n{high}"


def _amounts(margin: Margin | None, quotation: Quotation, story: Story) -> tuple[str, str, str, str]:
    """Return what is sold, its cost, the margin and its percentage."""
    if margin is None:
        return (_UNKNOWN,) * 4
    currency, writing = quotation.terms.currency, story.writing
    percent = percent_of(margin)
    return (
        money(margin.sold, currency, writing),
        money(margin.cost, currency, writing),
        money(margin.amount, currency, writing),
        _UNKNOWN if percent is None else writing.decimal(percent, 2),
    )


def _option(option: QuotedOption, quotation: Quotation, story: Story) -> Iterator[Block]:
    low = {line.part: why for line, why in option.low_lines(quotation.terms.selling.least_margin_percent)}
    yield Heading(option.title, 2)
    columns = (
        Column(story.word(Word.PART_NUMBER), 1.3),
        Column(story.word(Word.PART_NAME), 2.2),
        Column(story.word(Word.ORDERED), 0.8, _RIGHT),
        Column(story.word(Word.BUYING_DISCOUNT), 0.9, _RIGHT),
        Column(story.word(Word.UNIT_COST), 0.9, _RIGHT),
        Column(story.word(Word.UNIT_PRICE), 0.9, _RIGHT),
        Column(story.word(Word.AMOUNT), 1.0, _RIGHT),
        Column(story.word(Word.COST), 1.0, _RIGHT),
        Column(story.word(Word.MARGIN), 1.0, _RIGHT),
        Column(story.word(Word.MARGIN_PERCENT), 0.8, _RIGHT),
    )
    rows = [_line(line, low.get(line.part), quotation, story) for line in option.lines]
    total = _amounts(option_margin(option, quotation.terms), quotation, story)
    rows.append(Row((story.word(Word.GOODS), *("",) * 5, *total), Emphasis.TOTAL))
    yield Table(columns, tuple(rows), dense=True)


def _line(line: QuotedLine, low: LowMargin | None, quotation: Quotation, story: Story) -> Row:
    terms, writing = quotation.terms, story.writing
    remark = "" if low is None else f" ({story.word(_LOW[low])})"
    if line.unit_price is None:
        remark = f" ({story.word(Word.PRICE_FOLLOWS if line.override_by else Word.NO_PRICE)})"
    elif line.cost is None:
        remark = f" ({story.word(Word.COST_UNKNOWN)})"
    cells = (
        line.part_number,
        f"{story.word(line.kind)}{remark}",
        str(line.ordered),
        _UNKNOWN if line.buying_percent is None else plain(line.buying_percent, writing),
        _UNKNOWN if line.cost is None else money(in_coin(line.cost, terms), terms.currency, writing),
        _UNKNOWN if line.unit_price is None else money(line.unit_price, terms.currency, writing),
        *_amounts(line_margin(line, terms), quotation, story),
    )
    return Row(cells, Emphasis.NONE if low is None else Emphasis.FAULT)
