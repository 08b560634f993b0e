"""A quotation in short, for a terminal: what each option comes to, and what a person has to know before sending it."""

from __future__ import annotations

from collections import defaultdict
from collections.abc import Iterator

from spoutline.cli.commonality_text import commonality_lines, wrapped
from spoutline.documents.quotation.alternates import alternate_texts
from spoutline.documents.quotation.coverage import common_text, covers_text
from spoutline.documents.quotation.delivery import delivery_text
from spoutline.documents.quotation.figures import money
from spoutline.documents.quotation.margin_figures import line_margin, option_margin
from spoutline.documents.quotation.option_sections import gap_text, unlike_text
from spoutline.explain.phrases.quotation_words import QuotationWord as Word
from spoutline.explain.plan.story import Story
from spoutline.model.margin import Margin, percent_of
from spoutline.model.part_ref import told_apart
from spoutline.model.quotation import Quotation
from spoutline.model.quoted_option import QuotedOption


def quotation_text(quotation: Quotation, story: Story) -> str:
    """Return number, site and every option as text that ends in a line break."""
    heading, site = quotation.terms.heading, quotation.pins.survey.site
    dated, until = story.day(heading.dated), story.day(quotation.valid_to)
    head = story.phrases.fill("terminal_quotation", number=heading.number, dated=dated, until=until, site=site.name)
    count = len(quotation.pins.survey.positions)
    positions = story.phrases.fill(_key(count, "terminal_positions_one", "terminal_positions_many"), count=count)
    lines = [f"{head}, {positions}"]
    lines.extend(option_lines(quotation, story))
    return "\n".join(lines) + "\n"


def option_lines(quotation: Quotation, story: Story) -> Iterator[str]:
    """Return the lines of every option: its total, then what is missing, replaced or chosen together."""
    for option in quotation.options:
        numbers = len(option.lines)
        counted = story.phrases.fill(_key(numbers, "terminal_numbers_one", "terminal_numbers_many"), count=numbers)
        total = f"{story.writing.figure(f'{option.total:f}')} {quotation.terms.currency}"
        yield f"  {option.title}{story.writing.colon} {total}, {counted}, {covers_text(option, story)}"
        if option.on_common is not None:
            common = common_text(option.on_common, quotation.terms.currency, story)
            yield from (f"    {line}" for line in wrapped(common))
        for word in quotation.incomplete_words:
            if word.option == option.title:
                told = story.phrases.fill("incomplete_word", by=word.by, reason=word.reason)
                yield from (f"    {line}" for line in wrapped(told))
        if told := delivery_text(option, quotation, story):
            yield from (f"    {line}" for line in wrapped(told))
        for text in alternate_texts(option, quotation.terms.currency, story):
            yield from (f"    {line}" for line in wrapped(text))
        for text in _notes(option, story):
            yield f"    {text}"


def margin_lines(quotation: Quotation, revision: int, story: Story) -> Iterator[str]:
    """Return cost and margin of every line and option, with the mark that they are internal."""
    terms, writing = quotation.terms, story.writing
    yield f"{story.word(Word.INTERNAL)}{writing.colon} {terms.heading.number} r{revision}, {terms.currency}"
    for option in quotation.options:
        low = {line.part: why for line, why in option.low_lines(terms.selling.least_margin_percent)}
        yield f"  {option.title}{writing.colon} {_margin_text(option_margin(option, terms), terms.currency, story)}"
        told = told_apart(line.part for line in option.lines)
        for name, line in zip(told, option.lines, strict=True):
            margin, why = line_margin(line, terms), low.get(line.part)
            text = story.word(Word.COST_UNKNOWN) if margin is None else _margin_text(margin, terms.currency, story)
            mark = "" if why is None else f" – {story.word(Word(why.value))}"
            yield f"    {line.ordered} × {name}{writing.colon} {text}{mark}"
    yield from wrapped(story.word(Word.MARGIN_NOTE))


def _margin_text(margin: Margin, currency: str, story: Story) -> str:
    percent = percent_of(margin)
    told = "–" if percent is None else story.writing.decimal(percent, 2)
    figures = (
        (Word.AMOUNT, money(margin.sold, currency, story.writing)),
        (Word.COST, money(margin.cost, currency, story.writing)),
        (Word.MARGIN, money(margin.amount, currency, story.writing)),
        (Word.MARGIN_PERCENT, told),
    )
    return "; ".join(f"{story.word(word)} {figure}" for word, figure in figures)


def _key(count: int, one: str, many: str) -> str:
    return one if count == 1 else many


def _notes(option: QuotedOption, story: Story) -> Iterator[str]:
    for line in option.open_lines:
        yield from wrapped(story.phrases.fill("terminal_no_price", gap=gap_text(line, story)))
    if option.following_lines:
        numbers = ", ".join(told_apart(line.part for line in option.following_lines))
        yield from wrapped(f"{story.word(Word.PRICE_FOLLOWS).capitalize()}: {numbers}")
    for part in option.superseded:
        replaced = " → ".join(told_apart((part.before, part.now)))
        yield from wrapped(f"{story.word(Word.SUPERSEDED)}: {replaced} ({', '.join(part.positions)})")
    if option.unlike_plan:
        yield from wrapped(unlike_text(option, story))
    if (found := option.commonality) is not None:
        counts = (found.part_numbers_alone, found.part_numbers_together)
        amounts = (found.costs, found.saves, found.left_open)
        best = found.sets_together + found.stock_price * found.part_numbers_together
        yield from commonality_lines(counts, amounts, best, found.changed, story)
    lacking: dict[str, list[str]] = defaultdict(list)
    for position in option.without_set:
        lacking[story.word(position.status)].append(position.label)
    for reason, labels in lacking.items():
        yield from wrapped(f"{story.word(Word.NOT_OFFERED)}: {', '.join(labels)} ({reason})")
