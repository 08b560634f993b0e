"""What it costs and saves, year by year, with every assumption to be seen and changed."""

from __future__ import annotations

from collections.abc import Iterator

from spoutline.documents.content.blocks import (
    Alignment,
    Block,
    Bullets,
    Column,
    Emphasis,
    Heading,
    KeyValues,
    PageBreak,
    Paragraph,
    Role,
    Row,
    Table,
)
from spoutline.explain.conversion.story import ConversionStory
from spoutline.explain.plan.texts import Named
from spoutline.model.conversion import SiteConversion
from spoutline.model.conversion_money import CostKind, CostLine, MoneySheet


def money_blocks(conversion: SiteConversion, words: ConversionStory) -> Iterator[Block]:
    """Return the chapter on money."""
    money = conversion.money
    yield PageBreak(opening=4)  # with the cost: the summary above may end with a few lines on a page
    yield Heading(words.say("money"), 1)
    yield Paragraph(words.say("money_lead"), Role.LEAD)
    yield Heading(words.say("cost"), 2)
    yield _cost_table(money, words)
    if money.gaps:
        yield Heading(words.say("money_gaps"), 2)
        yield Bullets(tuple(words.word(gap) for gap in money.gaps))
    yield Heading(words.say("comparison"), 2)
    yield KeyValues(tuple(_comparison(conversion, words)))
    if money.years:
        yield _year_table(money, words)
    yield Heading(words.say("assumptions"), 2)
    yield Bullets(tuple(_assumptions(conversion, words)))


def cost_name(line: CostLine, words: ConversionStory) -> str:
    """Return the kind of a cost with its label: hours in the writing of the language, words of a person as they are."""
    counted = line.kind in (CostKind.LABOUR, CostKind.LOST_MARGIN)
    label = words.story.writing.figure(line.label) if counted else line.label
    return f"{words.title(line.kind)} {label}".strip()


def _cost_table(money: MoneySheet, words: ConversionStory) -> Table:
    columns = (
        Column(words.say("item"), 4.0),
        Column(words.say("eligible"), 1.0),
        Column(words.say("amount"), 1.6, Alignment.RIGHT),
    )
    rows = [
        Row(
            (
                cost_name(line, words),
                words.story.yes_no(line.eligible),
                words.money(line.amount, money.currency),
            ),
            Emphasis.FAULT if line.amount is None else Emphasis.NONE,
        )
        for line in money.costs
    ]
    total = words.money(money.total, money.currency)
    title = words.say("total") if money.complete else words.say("total_known")
    return Table(columns, (*rows, Row((title, "", total), Emphasis.TOTAL)), whole=True)


def _comparison(conversion: SiteConversion, words: ConversionStory) -> Iterator[Named]:
    money = conversion.money
    currency = money.currency
    yield Named(words.say("yearly_saving"), words.money(money.yearly_saving, currency))
    if money.payback_years is not None:
        yield Named(
            words.say("simple_payback"), words.say("years", years=words.story.writing.figure(f"{money.payback_years}"))
        )
    else:
        yield Named(words.say("simple_payback"), words.say("payback_unknown"))
    if money.years:
        found = money.discounted_payback_years
        text = words.say("not_within") if found is None else words.say("years", years=found)
        yield Named(words.say("discounted_payback"), text)
        value = words.money(money.net_present_value, currency)
        horizon = conversion.survey.conversion.money.years
        percent = f"{money.discount_percent.normalize():f}"
        yield Named(words.say("net_present_value"), words.say("value_text", value=value, years=horizon, rate=percent))
    yield Named(words.say("renewal_cost"), words.money(money.renewal_total, currency))
    if money.grant_possible is not None:
        yield Named(
            words.say("grant_possible"), words.say("grant_text", amount=words.money(money.grant_possible, currency))
        )


def _year_table(money: MoneySheet, words: ConversionStory) -> Table:
    columns = (
        Column(words.say("year"), 1.0),
        Column(words.say("flow"), 1.6, Alignment.RIGHT),
        Column(words.say("discounted"), 1.6, Alignment.RIGHT),
        Column(words.say("balance"), 1.6, Alignment.RIGHT),
    )
    rows = tuple(
        Row((str(one.year), *(words.money(value, money.currency) for value in (one.flow, one.discounted, one.balance))))
        for one in money.years
    )
    return Table(columns, rows)


def _assumptions(conversion: SiteConversion, words: ConversionStory) -> Iterator[str]:
    answers, currency = conversion.survey.conversion.money, conversion.money.currency
    yield words.say("assume_prices")
    yield words.say("assume_labour", rate=words.money(answers.labour_rate_per_hour, currency))
    yield words.say(
        "assume_upkeep",
        today=words.money(answers.upkeep_today_per_year, currency),
        after=words.money(answers.upkeep_after_per_year, currency),
    )
    yield words.say("assume_flow")
    yield words.say("assume_minutes")
    yield words.say("assume_kept")
    if conversion.emissions is not None:
        yield words.say("assume_plausible")
