"""Every price of a quotation with where it comes from: a list, a person's word, or nowhere yet."""

from __future__ import annotations

from collections.abc import Iterable

from spoutline.documents.quotation.figures import money
from spoutline.documents.quotation.margin_figures import in_coin
from spoutline.documents.quotation.option_sections import gap_text
from spoutline.explain.phrases.quotation_words import QuotationWord as Word
from spoutline.explain.plan.story import Story
from spoutline.frozen import frozen
from spoutline.gui.escaping import tip
from spoutline.gui.models.record_table import Column
from spoutline.gui.roles import Tone
from spoutline.gui.wording import tr
from spoutline.model.margin import percent_of
from spoutline.model.part_ref import PartRef
from spoutline.model.quotation import Quotation
from spoutline.model.quotation_terms import PriceOverride
from spoutline.model.quoted_option import QuotedLine


@frozen
class PricedPart:
    """One part: the prices of the options that hold it, where they come from, and who answers for them.

    ``is_open`` where no price stands and nobody answers for that; ``gap`` says why there is none in a list.
    ``override`` is what the terms in hand say about the part.
    ``is_low`` where it is sold below cost or the least margin.
    """

    part: PartRef
    name: str
    prices: tuple[str, ...]
    gap: str
    lists: tuple[str, ...]
    is_open: bool
    override: PriceOverride | None
    costs: tuple[str, ...] = ()
    margins: tuple[str, ...] = ()  # in percent of the price
    is_low: bool = False

    @property
    def price_text(self) -> str:
        """The prices; one where all options agree."""
        return " / ".join(self.prices)

    @property
    def source_text(self) -> str:
        """Where the price comes from."""
        if self.override is not None:
            reason = f": {self.override.reason}" if self.override.reason else ""
            return f"{self.override.by}{reason}"
        return self.gap or ", ".join(self.lists)


def priced_parts(quotation: Quotation, overrides: Iterable[PriceOverride], story: Story) -> tuple[PricedPart, ...]:
    """Return every part: those without a price first, then those with a person's word, then those of the lists.

    Parameters
    ----------
    quotation
        The quotation whose lines are told.
    overrides
        What the terms in hand say; one of a part that the quotation does not hold is told as well, so that it can be
        taken back.
    story
        The words.
    """
    answers = tuple(overrides)
    lines: dict[PartRef, list[QuotedLine]] = {}
    for option in quotation.options:
        for line in option.lines:
            lines.setdefault(line.part, []).append(line)
    said = {part: next((one for one in answers if one.part.names(part)), None) for part in lines}
    found = [_part(part, own, said[part], quotation, story) for part, own in lines.items()]
    found += [
        PricedPart(one.part, tr("not chosen in any option"), ("–",), "", (), False, one)
        for one in answers
        if not any(map(one.part.names, lines))
    ]
    return tuple(sorted(found, key=lambda one: (not one.is_open, one.override is None, one.part)))


def price_columns(currency: str) -> tuple[Column[PricedPart], ...]:
    """Return the columns of the prices."""
    return (
        Column(title=tr("Part"), text=lambda one: one.part.number, hint=lambda one: tip(str(one.part)), tone=_tone),
        Column(title=tr("Name"), text=lambda one: one.name, hint=lambda one: tip(one.name)),
        Column(title=_in_currency(tr("Price, {0}"), currency), text=lambda one: one.price_text, is_number=True),
        Column(title=_in_currency(tr("Cost, {0}"), currency), text=lambda one: " / ".join(one.costs), is_number=True),
        Column(title=tr("Margin, %"), text=lambda one: " / ".join(one.margins), is_number=True, tone=_low_tone),
        Column(title=tr("From"), text=lambda one: one.source_text, hint=lambda one: tip(one.source_text)),
    )


def _in_currency(title: str, currency: str) -> str:
    """Return the head of a column of amounts; without a quotation no currency is known yet."""
    return title.format(currency).rstrip(", ")


def _part(
    part: PartRef, lines: list[QuotedLine], override: PriceOverride | None, quotation: Quotation, story: Story
) -> PricedPart:
    least = quotation.terms.selling.least_margin_percent
    gaps = sorted({gap_text(line, story).removeprefix(f"{part.number}: ") for line in lines if line.gap})
    return PricedPart(
        part=part,
        name=lines[0].name,
        prices=tuple(dict.fromkeys(_price(line, quotation.terms.currency, story) for line in lines)),
        gap="; ".join(gaps),
        lists=tuple(sorted({line.list_id for line in lines if line.list_id})),
        is_open=any(line.is_open for line in lines),
        override=override,
        costs=tuple(dict.fromkeys(_cost(line, quotation, story) for line in lines)),
        margins=tuple(dict.fromkeys(_margin(line, story) for line in lines)),
        is_low=any(line.margin is not None and line.margin.low(least) is not None for line in lines),
    )


def _cost(line: QuotedLine, quotation: Quotation, story: Story) -> str:
    terms = quotation.terms
    return "–" if line.cost is None else money(in_coin(line.cost, terms), terms.currency, story.writing)


def _margin(line: QuotedLine, story: Story) -> str:
    percent = percent_of(line.margin)
    return "–" if percent is None else story.writing.decimal(percent, 2)


def _low_tone(one: PricedPart) -> Tone | None:
    return Tone.BAD if one.is_low else None


def _price(line: QuotedLine, currency: str, story: Story) -> str:
    if line.unit_price is None:
        return story.word(Word.NO_PRICE if line.is_open else Word.PRICE_FOLLOWS)
    return money(line.unit_price, currency, story.writing)


def _tone(one: PricedPart) -> Tone | None:
    if one.is_open:
        return Tone.BAD
    return Tone.CAUTION if one.override is not None else None
