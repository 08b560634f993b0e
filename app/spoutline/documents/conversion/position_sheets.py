"""A sheet for each position: what stays, goes and comes, and why; what to close; the installer's list."""

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
from spoutline.documents.content.set_sections import check_blocks
from spoutline.documents.conversion.summary import why_open
from spoutline.explain.conversion.story import ConversionStory
from spoutline.explain.phrases.paper_words import PaperWord
from spoutline.explain.plan.assumed import assumed_sentence, inherited_sentence
from spoutline.explain.plan.texts import Named
from spoutline.model.conversion import SiteConversion
from spoutline.model.part import Part
from spoutline.model.part_ref import told_apart
from spoutline.model.position_conversion import (
    Closing,
    ConversionOption,
    DifferenceAction,
    DifferenceLine,
    PositionConversion,
    PositionOutcome,
    StaysLive,
)
from spoutline.planning.protocols import Progress
from spoutline.planning.watched import watched


def position_sheets(
    conversion: SiteConversion, words: ConversionStory, progress: Progress | None = None
) -> Iterator[Block]:
    """Return one sheet for each position; what is closed once for the site follows at the end.

    ``progress`` hears how many sheets are written; raise ``Cancelled`` where it asks to stop.
    """
    for one in watched(conversion.positions, progress):
        yield PageBreak()
        yield Heading(words.say("sheet_title", position=one.position.label), 1)
        yield Paragraph(words.say("sheet_lead"), Role.LEAD)
        yield KeyValues(tuple(_head(one, words)))
        yield from _sheet(one, conversion, words)
    yield from _site_closings(conversion, words)


def _head(one: PositionConversion, words: ConversionStory) -> Iterator[Named]:
    position, story = one.position, words.story
    yield Named(story.word(PaperWord.DISPENSER), position.dispenser)
    yield Named(words.say("kinds"), ", ".join(map(words.word, one.kinds)) or words.say("no_kind"))
    yield Named(words.say("outcome"), words.word(one.outcome))
    yield Named(story.word(PaperWord.LIQUID), words.liquid_change(position))
    yield Named(story.word(PaperWord.VAPOUR), words.vapour_change(position))
    if position.tanks:
        yield Named(words.say("tank"), " + ".join(position.tanks))
    yield from basis_rows(one, words)


def basis_rows(one: PositionConversion, words: ConversionStory) -> Iterator[Named]:
    """Yield how well the limits behind a position are founded, and from where answers are that nobody gave for it."""
    if one.renewal.requirement is not None:
        yield Named(words.story.word(PaperWord.FOOTING), words.story.footing(one.renewal.requirement))
    inherited = inherited_sentence(one.position, words.story)
    if inherited:
        yield Named(words.story.word(PaperWord.DISPENSER_TYPE), inherited)
    assumed = assumed_sentence(one.position, words.story)
    if assumed:
        yield Named(words.story.word(PaperWord.ASSUMED), assumed)


def _sheet(one: PositionConversion, conversion: SiteConversion, words: ConversionStory) -> Iterator[Block]:
    if one.outcome in (
        PositionOutcome.NO_SET,
        PositionOutcome.NOT_DECIDED,
        PositionOutcome.NOT_ALLOWED,
        PositionOutcome.REFUSED,
    ):
        yield Heading(words.say("why_open"), 2)
        yield Paragraph(why_open(one, words))
        return
    currency = conversion.survey.site.currency
    option = one.followed(conversion.survey.conversion.follow)
    if option is None:
        yield Paragraph(words.say("left_alone"))
        return
    yield from _removal(one, currency, words)
    yield from _closings(one.closings, words)
    here = [live for live in conversion.stays_live if live.dispenser == one.position.dispenser]
    if one.closings and here:
        yield Paragraph(f"{words.say('live_here')}:", Role.NOTE)
        yield Bullets(tuple(map(words.live, here)))
    yield from _fitting(one, option, currency, words)
    yield from _ways(one, currency, words)
    yield from check_blocks(option.judged, words.story)


def _removal(one: PositionConversion, currency: str, words: ConversionStory) -> Iterator[Block]:
    lines = [line for line in one.differences if line.action in (DifferenceAction.REMOVE, DifferenceAction.KEEP)]
    if not lines:
        return
    yield Heading(words.say("removal_list"), 2)
    columns = (
        Column("☐", 0.3),
        Column(words.say("action"), 0.8),
        Column(words.story.word(PaperWord.PLACE), 1.0),
        Column(words.say("installed"), 1.6),
        Column(words.say("why"), 3.3),
        Column(words.story.word(PaperWord.SOURCE), 2.8),
    )
    yield Table(columns, tuple(_removal_row(line, currency, words) for line in lines), whole=True)


def _removal_row(line: DifferenceLine, currency: str, words: ConversionStory) -> Row:
    kind = words.story.word(line.installed.kind) if line.installed is not None else ""
    cells = (
        "☐",
        words.title(line.action),
        kind,
        words.installed(line.installed),
        words.difference(line, currency),
        words.difference_source(line),
    )
    return Row(cells, Emphasis.NONE)


def _closings(closings: tuple[Closing, ...], words: ConversionStory) -> Iterator[Block]:
    if not closings:
        return
    yield Heading(words.say("closing_list"), 2)
    yield _closing_table(closings, words)


def _closing_table(closings: tuple[Closing, ...], words: ConversionStory) -> Table:
    columns = (
        Column("☐", 0.3),
        Column(words.say("opening"), 3.4),
        Column(words.story.word(PaperWord.QUANTITY), 0.6, Alignment.RIGHT),
        Column(words.story.word(PaperWord.SOURCE), 4.2),
    )
    rows = tuple(
        Row(("☐", words.closing(one), str(one.quantity), words.story.sourced(one.source, one.status)))
        for one in closings
    )
    return Table(columns, rows)


def _named(part: Part, words: ConversionStory) -> str:
    name = words.story.part_name(part)
    return f"{name}; {part.maker}" if part.maker else name


def _fitting(
    one: PositionConversion, option: ConversionOption, currency: str, words: ConversionStory
) -> Iterator[Block]:
    """Return the new chain in the order of the work, dispenser first; kept parts stand in their places."""
    yield Heading(words.say("fitting_list"), 2)
    columns = (
        Column("☐", 0.3),
        Column(words.story.word(PaperWord.NUMBER), 0.5),
        Column(words.story.word(PaperWord.PLACE), 1.0),
        Column(words.story.word(PaperWord.PART_NUMBER), 1.2),
        Column(words.story.word(PaperWord.PART_NAME), 2.1),
        Column(words.say("why"), 3.0),
        Column(words.story.word(PaperWord.PRICE), 1.1, Alignment.RIGHT),
    )
    added = {line.slot: line for line in one.differences if line.action is DifferenceAction.ADD and line.slot}
    rows: list[Row] = []
    for number, link in enumerate(option.judged.hanging_set.links, start=1):
        kept = number - 1 in option.kept
        line = added.get(link.slot)
        why = words.say("stays") if kept else (words.difference(line, currency) if line else "")
        price = "–" if kept else words.story.money(link.part.price_minor(currency), currency)
        rows.append(
            Row(("☐", str(number), words.story.word(link.slot), link.part.number, _named(link.part, words), why, price))
        )
    for accessory in option.accessories:
        part = accessory.part
        price = words.story.money(part.price_minor(currency), currency)
        why = words.story.accessory_reason(accessory.reason)
        rows.append(Row(("☐", "", words.story.word(part.kind), part.number, _named(part, words), why, price)))
    yield Table(columns, tuple(rows))


def _ways(one: PositionConversion, currency: str, words: ConversionStory) -> Iterator[Block]:
    yield Heading(words.say("ways"), 2)
    columns = (
        Column(words.say("way"), 2.0),
        Column(words.say("parts"), 4.0),
        Column(words.say("bought"), 1.3, Alignment.RIGHT),
        Column(words.say("kept_value"), 1.3, Alignment.RIGHT),
        Column(words.say("departures"), 1.0, Alignment.RIGHT),
    )
    ways = [ref for option in one.options for ref in option.judged.hanging_set.refs]
    rows = tuple(
        Row(
            (
                words.way(option.kind),
                ", ".join(told_apart(option.judged.hanging_set.refs, ways)),
                words.story.money(option.bought_minor, currency),
                words.story.money(option.kept_minor, currency),
                str(option.departures),
            )
        )
        for option in (*((one.shown,) if one.shown else ()), *one.options)
    )
    yield Table(columns, rows, whole=True)
    yield Paragraph(words.say("ways_note"), Role.NOTE)


def _site_closings(conversion: SiteConversion, words: ConversionStory) -> Iterator[Block]:
    shared = tuple(closing for closing in conversion.closings if not closing.position)
    if not shared and not conversion.stays_live:
        return
    yield PageBreak()
    yield Heading(words.say("site_closings"), 1)
    if shared:
        yield Paragraph(words.say("site_closings_lead"), Role.LEAD)
        yield _closing_table(shared, words)
    if conversion.stays_live:
        yield Heading(words.say("live_title"), 2)
        yield Paragraph(words.say("live_lead"))
        yield _live_table(conversion.stays_live, words)
    yield Heading(words.say("unchanged"), 2)
    yield Bullets(
        (words.say("unchanged_text"), words.say("decay_limit_unknown"))
        if conversion.decay is None
        else (words.say("unchanged_text"),)
    )


def _live_table(live: tuple[StaysLive, ...], words: ConversionStory) -> Table:
    columns = (
        Column(words.say("opening"), 3.4),
        Column(words.story.word(PaperWord.QUANTITY), 0.8, Alignment.RIGHT),
        Column(words.say("needed_by"), 1.6),
        Column(words.say("why"), 3.0),
    )
    rows = tuple(
        Row((words.live_place(one), str(one.quantity), ", ".join(one.needed_by), words.word(one.reason)))
        for one in live
    )
    return Table(columns, rows, whole=True)
