"""The station on one page, for a bank or an agency: a shorter content tree of the conversion that the report tells."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import replace
from datetime import date
from enum import Enum, auto

from spoutline.documents.content.bill_frame import paper_for
from spoutline.documents.content.blocks import (
    Block,
    Column,
    Document,
    Emphasis,
    Heading,
    Paragraph,
    Role,
    Row,
    Table,
)
from spoutline.documents.conversion.money_section import cost_name
from spoutline.documents.conversion.summary import (
    agency_asks,
    assumed_rows,
    emission_rows,
    open_positions,
    others_to_tell,
    payback_row,
    sets_rows,
    site_rows,
    standing_blocks,
    time_rows,
    why_open,
)
from spoutline.documents.conversion.today_and_then import today_and_then
from spoutline.documents.conversion.way_figures import followed_way, way_figures
from spoutline.explain.conversion.case_words import case_note, titled
from spoutline.explain.conversion.story import ConversionStory
from spoutline.explain.phrases.paper_words import PaperWord
from spoutline.explain.plan.texts import Named
from spoutline.explain.writing.money import amount
from spoutline.model.conversion import SiteConversion


class Setting(Enum):
    """How close the tables of the page are set, the most readable first."""

    WIDE = auto()
    DENSE = auto()
    TIGHT = auto()


def one_page_content(
    conversion: SiteConversion, words: ConversionStory, setting: Setting = Setting.WIDE, *, dated: date | None = None
) -> Document:
    """Return the page: what hangs now, what comes, when, at what cost, what is asked of whom, what is open.

    Every figure is one of the report's (``conversion_content``), made by the same functions. ``dated`` is printed
    where given.
    """
    made_from = conversion.provenance
    title = titled(words.say("one_page_title", site=conversion.survey.site.name), conversion, words)
    foot = f"{words.say('foot')} · {made_from.survey_fingerprint[:8]}"
    return Document(
        title=title,
        subject=words.say("one_page_subject"),
        author=f"Spoutline {made_from.program_version}",
        language=words.story.phrases.language,
        paper=paper_for(conversion.jurisdiction.id),
        running_head=title,
        running_foot=f"{words.story.day(dated)} · {foot}" if dated else foot,
        page_phrase=words.story.word(PaperWord.PAGE_OF),
        blocks=tuple(_blocks(conversion, words, setting, dated)),
        notice=words.story.phrases.text["demonstration_notice"] if conversion.shows_invented_parts else "",
    )


def _blocks(
    conversion: SiteConversion, words: ConversionStory, setting: Setting, dated: date | None
) -> Iterator[Block]:
    yield Heading(words.say("one_page_heading"), 1)
    note = case_note(conversion, words)
    if note:
        yield Paragraph(note, Role.LEAD)
    yield from standing_blocks(conversion, words)
    yield Paragraph("  ·  ".join(_head(conversion, words, dated)), Role.NOTE)
    yield Heading(words.say("hangs_and_comes"), 2)
    yield _set(today_and_then(conversion, _open_labels(conversion), words), setting)
    yield Heading(words.say("time_and_cost"), 2)
    yield _set(_figure_table(conversion, words), setting)
    yield Heading(words.say("tell_whom"), 2)
    yield _set(_told_table(conversion, words), setting)
    yield Paragraph(words.say("one_page_note"), Role.NOTE)


def _open_labels(conversion: SiteConversion) -> frozenset[str]:
    return frozenset(one.position.label for one in open_positions(conversion))


def _set(table: Table, setting: Setting) -> Table:
    return replace(table, dense=setting is Setting.DENSE, tight=setting is Setting.TIGHT)


def _head(conversion: SiteConversion, words: ConversionStory, dated: date | None) -> Iterator[str]:
    for row in _head_rows(conversion, words, dated):
        yield f"{row.label}{words.story.writing.colon} {', '.join(row.text.splitlines())}"


def _head_rows(conversion: SiteConversion, words: ConversionStory, dated: date | None) -> Iterator[Named]:
    """Yield the head of the report."""
    yield from site_rows(conversion, words, dated)
    yield from sets_rows(conversion, words)
    yield from assumed_rows(conversion, words)


def _figure_table(conversion: SiteConversion, words: ConversionStory) -> Table:
    columns = (Column(words.say("what"), 1.6), Column(words.say("planned"), 6.4))
    return Table(columns, tuple(_figure_rows(conversion, words)))


def _figure_rows(conversion: SiteConversion, words: ConversionStory) -> Iterator[Row]:
    yield from (Row((row.label, row.text)) for row in _times(conversion, words))
    money = conversion.money
    total = words.money(money.total, money.currency)
    cost = total if money.complete else words.say("at_least_short", amount=total)
    yield Row((words.say("cost"), cost), Emphasis.TOTAL)
    lines = (
        f"{cost_name(line, words)}{words.story.writing.colon} {words.money(line.amount, money.currency)}"
        for line in money.costs
    )
    yield Row((words.say("made_up_of"), "; ".join(lines)))
    yield from (Row((row.label, row.text)) for row in _effects(conversion, words))
    yield from _open_rows(conversion, words)


def _times(conversion: SiteConversion, words: ConversionStory) -> Iterator[Named]:
    """Yield start, end and standing still, days to keep, and in a word each what the sequence does not know."""
    yield from time_rows(conversion, words)
    notes = conversion.sequence.notes if conversion.sequence is not None else ()
    if notes:
        yield Named(words.say("sequence_notes"), "; ".join(dict.fromkeys(words.title(note.finding) for note in notes)))


def _effects(conversion: SiteConversion, words: ConversionStory) -> Iterator[Named]:
    """Yield what the money lacks, payback, departures from good practice, what stays, emissions."""
    if conversion.money.gaps:
        yield Named(words.say("money_gaps"), " ".join(map(words.word, conversion.money.gaps)))
    if conversion.money.payback_years is not None or not conversion.money.gaps:
        yield payback_row(conversion, words)
    figures, currency = way_figures(followed_way(conversion), conversion), conversion.survey.site.currency
    yield Named(words.say("departures"), words.say("departures_text", count=figures.departures))
    if figures.kept:
        value = words.money(amount(figures.kept_minor, currency), currency)
        yield Named(words.say("kept_parts"), words.say("kept_text", count=figures.kept, value=value))
    yield from emission_rows(conversion, words)


def _open_rows(conversion: SiteConversion, words: ConversionStory) -> Iterator[Row]:
    """Yield the positions that cannot be converted as asked, equal reasons once; or that there is none."""
    label = words.say("open_positions")
    reasons: dict[str, list[str]] = {}
    for one in open_positions(conversion):
        reasons.setdefault(why_open(one, words), []).append(one.position.label)
    if not reasons:
        yield Row((label, words.say("none_open")))
    for reason, labels in reasons.items():
        yield Row((label, f"{words.places(labels)}{words.story.writing.colon} {reason}"), Emphasis.FAULT)


def _told_table(conversion: SiteConversion, words: ConversionStory) -> Table:
    """Return what is asked of whom: the agency in one row, each other office in one, each change of a tank in one."""
    asked = " ".join(agency_asks(conversion, words))
    changes = (
        f"{words.say('tank_head', tank=words.tank_of(change))} ({words.places(change.positions)})"
        f"{words.story.writing.colon} {words.liquids(change)}; {'; '.join(words.asked_by_change(change))}"
        for change in conversion.tank_changes
        if words.asked_by_change(change)
    )
    texts = (*((asked,) if asked else ()), *others_to_tell(conversion, words), *changes)
    return Table((Column(words.say("asked_for"), 1.0),), tuple(Row((text,)) for text in texts))
