"""A programme of several sites as a paper: terms, chart, years, each site with its reason, what waiting costs."""

from __future__ import annotations

from collections.abc import Iterator
from datetime import date
from decimal import Decimal

from spoutline import __version__
from spoutline.documents.content.blocks import (
    Alignment,
    Block,
    Bullets,
    Column,
    Document,
    Emphasis,
    Figure,
    Heading,
    PaperSize,
    Paragraph,
    Role,
    Row,
    Table,
)
from spoutline.documents.conversion.programme_chart import programme_chart
from spoutline.explain.conversion.programme_words import ProgrammeWords
from spoutline.explain.conversion.story import ConversionStory
from spoutline.explain.phrases.paper_words import PaperWord
from spoutline.model.programme import Programme, ProgrammeYear, RankedSite, SiteResult

_AMERICAN = "USD"
_RIGHT = Alignment.RIGHT


def programme_content(programme: Programme, words: ConversionStory, *, dated: date | None = None) -> Document:
    """Return the paper.

    Parameters
    ----------
    programme
        As it was worked out, or as the book keeps it.
    words
        Sentences and unit system.
    dated
        Printed where given; no clock is read.
    """
    told = ProgrammeWords(programme, words)
    title, advice = words.say("program_title", name=programme.name), words.say("program_advice")
    sites = (*(one.site for one in programme.ranked), *programme.others)
    invented = any(one.invented_prices for one in sites)
    return Document(
        title=title,
        subject=words.say("program_subject"),
        author=f"Spoutline {__version__}",
        language=words.story.phrases.language,
        paper=PaperSize.LETTER if programme.currency == _AMERICAN else PaperSize.A4,
        running_head=title,
        running_foot=f"{words.story.day(dated)} · {advice}" if dated else advice,
        page_phrase=words.story.word(PaperWord.PAGE_OF),
        blocks=tuple(_blocks(told)),
        notice=words.story.phrases.text["demonstration_notice"] if invented else "",
    )


def _blocks(words: ProgrammeWords) -> Iterator[Block]:
    programme, say = words.programme, words.words.say
    yield Heading(say("program_title", name=programme.name), 1)
    yield Paragraph(say("program_advice"), Role.LEAD)
    if programme.stopped:
        yield Paragraph(say("program_stopped"), Role.LEAD)
    yield Heading(say("program_terms"), 2)
    yield Bullets(words.terms())
    chart = programme_chart(words)
    if chart is not None:
        yield Heading(say("program_years"), 2)
        yield Figure(chart, chart.description)
        yield _year_table(words)
    yield from _sites(words)
    yield from _visits(words)
    yield from _left_out(words)
    yield from _later(words)
    yield Heading(say("program_rules"), 2)
    yield Bullets(words.rules())


def _year_table(words: ProgrammeWords) -> Table:
    programme, say = words.programme, words.words.say
    worth = say("program_worth", year=words.year(1))
    columns = [
        Column(say("year"), 1.0),
        Column(say("program_count"), 0.8, _RIGHT),
        Column(say("program_cash"), 1.5, _RIGHT),
        *((Column(say("program_rest"), 1.5, _RIGHT),) if programme.budget is not None else ()),
        *((Column(worth, 1.5, _RIGHT),) if programme.interest_percent is not None else ()),
        Column(say("program_margin"), 1.3, _RIGHT),
        Column(say("program_hours"), 0.9, _RIGHT),
        Column(say("program_then"), 1.3, _RIGHT),
    ]
    return Table(tuple(columns), tuple(_year_row(one, words) for one in programme.years))


def _year_row(year: ProgrammeYear, words: ProgrammeWords) -> Row:
    programme = words.programme
    return Row(
        (
            words.year(year.year),
            str(year.sites),
            words.money(year.spent),
            *((words.money(year.left),) if programme.budget is not None else ()),
            *((words.money(year.present_value),) if programme.interest_percent is not None else ()),
            words.money(year.lost_margin),
            words.words.decimal_hours(year.own_minutes),
            words.words.mass(year.after_kg),
        )
    )


def _sites(words: ProgrammeWords) -> Iterator[Block]:
    say = words.words.say
    done = [one for one in words.programme.ranked if one.year is not None]
    if not done:
        return
    columns = (
        Column(say("program_rank"), 0.6, _RIGHT),
        Column(say("program_site"), 2.2),
        Column(say("year"), 0.7),
        Column(say("program_cash"), 1.5, _RIGHT),
        Column(say("program_margin"), 1.2, _RIGHT),
        Column(say("program_hours"), 0.8, _RIGHT),
        Column(say("program_reason"), 4.2),
    )
    yield Heading(say("program_sites"), 2)
    yield Table(columns, tuple(_site_row(one, words) for one in done))


def _site_row(one: RankedSite, words: ProgrammeWords) -> Row:
    lost = [visit.lost_margin for visit in one.visits if visit.lost_margin is not None]
    told = " ".join(text for text in (words.why(one), words.deadline(one)) if text)
    cells = (
        str(one.rank),
        _named(one.site),
        words.year(one.year or 1),
        words.words.money(one.cash, one.site.currency),
        words.words.money(sum(lost, Decimal(0)), one.site.currency) if lost else words.words.say("not_known"),
        words.words.decimal_hours(sum(visit.own_minutes for visit in one.visits)),
        told,
    )
    return Row(cells, Emphasis.FAULT if one.in_time is False else Emphasis.NONE)


def _named(site: SiteResult) -> str:
    return f"{site.name} ({site.place})"


def _visits(words: ProgrammeWords) -> Iterator[Block]:
    say = words.words.say
    split = [one for one in words.programme.ranked if len(one.visits) > 1]
    if not split:
        return
    columns = (
        Column(say("program_site"), 2.4),
        Column(say("program_visit_of"), 0.8, _RIGHT),
        Column(say("year"), 0.8),
        Column(say("dispensers"), 2.0),
        Column(say("program_cash"), 1.4, _RIGHT),
        Column(say("program_margin"), 1.2, _RIGHT),
        Column(say("program_hours"), 0.9, _RIGHT),
    )
    rows = tuple(
        Row(
            (
                _named(one.site),
                f"{number}/{len(one.visits)}",
                words.year(visit.year),
                ", ".join(visit.dispensers),
                words.words.money(visit.cash, one.site.currency),
                words.words.money(visit.lost_margin, one.site.currency),
                words.words.decimal_hours(visit.own_minutes),
            )
        )
        for one in split
        for number, visit in enumerate(one.visits, start=1)
    )
    yield Heading(say("program_visits"), 2)
    yield Table(columns, rows)


def _left_out(words: ProgrammeWords) -> Iterator[Block]:
    say = words.words.say
    left = [one for one in words.programme.ranked if one.year is None]
    if left:
        columns = (
            Column(say("program_rank"), 0.6, _RIGHT),
            Column(say("program_site"), 2.6),
            Column(say("cost"), 1.6, _RIGHT),
            Column(say("program_reason"), 4.6),
        )
        rows = tuple(
            Row(
                (
                    str(one.rank),
                    _named(one.site),
                    words.words.money(one.site.cost, one.site.currency),
                    " ".join(text for text in (words.left_out(one), words.deadline(one)) if text),
                ),
                Emphasis.FAULT if one.in_time is False else Emphasis.NONE,
            )
            for one in left
        )
        yield Heading(say("program_left_out"), 2)
        yield Table(columns, rows)
    if words.programme.others:
        yield Heading(say("program_others"), 2)
        yield Bullets(
            tuple(
                f"{_named(one)}{words.words.story.writing.colon} {words.other(one)}" for one in words.programme.others
            )
        )


def _later(words: ProgrammeWords) -> Iterator[Block]:
    say = words.words.say
    told = tuple(_later_row(one, words) for one in words.programme.ranked if one.waiting is not None)
    if not told:
        return
    columns = (
        Column(say("program_site"), 2.4),
        Column(say("year"), 0.8),
        Column(say("program_prices"), 1.3, _RIGHT),
        Column(say("program_upkeep"), 1.4, _RIGHT),
        Column(say("program_earned"), 1.3, _RIGHT),
        Column(say("program_sum"), 1.5, _RIGHT),
        Column(say("program_in_year"), 1.3, _RIGHT),
    )
    yield Heading(say("program_later"), 2)
    yield Table(columns, told)
    yield Paragraph(say("program_later_note"), Role.NOTE)


def _later_row(one: RankedSite, words: ProgrammeWords) -> Row:
    waiting, currency, money = one.waiting, one.site.currency, words.words.money
    if waiting is None:
        return Row(("",) * 7)
    return Row(
        (
            _named(one.site),
            words.year(waiting.year),
            money(waiting.price, currency),
            money(waiting.upkeep, currency),
            money(-waiting.interest, currency),
            money(waiting.money, currency),
            words.words.mass(waiting.kg),
        )
    )
