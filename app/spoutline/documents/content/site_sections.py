"""The sections about the whole site: its head, its positions at a glance, and the consolidated parts."""

from __future__ import annotations

from collections.abc import Iterable, Iterator, Mapping
from datetime import date

from spoutline.documents.content.blocks import (
    Alignment,
    Block,
    Bullets,
    Column,
    Emphasis,
    Heading,
    KeyValues,
    Paragraph,
    Role,
    Row,
    Table,
)
from spoutline.documents.content.references import References
from spoutline.documents.content.totals import BillLine, Total, position_lines, site_lines, total_of
from spoutline.explain.phrases.paper_words import PaperWord as Word
from spoutline.explain.plan.assumed import station_lines
from spoutline.explain.plan.sets_head import sets_head
from spoutline.explain.plan.story import Story
from spoutline.explain.plan.texts import Named
from spoutline.model.liquid import Liquid
from spoutline.model.plan import PlanStatus, PositionPlan, SitePlan
from spoutline.model.quantity import Dimension
from spoutline.model.record import CommissioningRecord
from spoutline.model.survey import Position


def site_blocks(
    site_plan: SitePlan,
    story: Story,
    references: References,
    *,
    dated: date | None,
    left_out: tuple[str, ...] = (),
    records: tuple[CommissioningRecord, ...] = (),
) -> Iterator[Block]:
    """Return the head of the bill: site, what the plan was made from, positions, parts of the whole site.

    ``left_out`` names what this copy does not hold; ``records`` are those that a plan as built was made from.
    """
    yield Heading(bill_title(records, story), 1)
    yield Paragraph(story.phrases.text["advice"], Role.LEAD)
    for text in left_out:
        yield Paragraph(text)
    yield KeyValues((*_site_rows(site_plan, story, dated), *built_rows(site_plan, records, story)))
    found = found_in(records)
    for plan in site_plan.positions:
        yield from found_blocks((plan.position,), found, story)
    yield Heading(story.word(Word.POSITIONS), 2)
    yield _positions_table(site_plan, found, story)
    for line in station_lines(site_plan.positions, story):
        yield Paragraph(f"{line.text} ({references.of_asked(line.finding)})", Role.NOTE)
    yield Heading(story.word(Word.WHOLE_SITE), 2)
    yield from consolidated_blocks(site_plan, story)


def found_in(records: tuple[CommissioningRecord, ...]) -> Mapping[str, tuple[str, ...]]:
    """Return what the newest record of each position found wrong, by label; clear ones are left out."""
    newest = {record.position: record for record in records}
    return {label: record.found for label, record in newest.items() if record.found}


def found_blocks(
    positions: tuple[Position, ...], found: Mapping[str, tuple[str, ...]], story: Story
) -> Iterator[Block]:
    """Return what was recorded as wrong at positions, and that they stay closed; nothing where all is clear."""
    for position in positions:
        if position.label in found:
            yield Paragraph(f"✗ {position.label}{story.writing.colon} {story.word(Word.STAYS_CLOSED)}")
            yield Bullets(found[position.label])


def bill_title(records: tuple[CommissioningRecord, ...], story: Story) -> str:
    """Return the title of a bill; with ``records`` that of a bill as built."""
    return story.word(Word.BILL_AS_BUILT if records else Word.BILL)


def position_liquid(position: Position, story: Story) -> str:
    """Return the liquid of a position with its blend."""
    return story.liquid(Liquid(position.liquid.family, position.liquid.blend_percent))


def price_columns(currency: str, story: Story) -> tuple[Column, ...]:
    """Return the last columns of every parts table: quantity, unit price, sum, lead time."""
    return (
        Column(story.word(Word.QUANTITY), 0.5, Alignment.RIGHT),
        Column(f"{story.word(Word.UNIT_PRICE)}, {currency}", 1.05, Alignment.RIGHT),
        Column(f"{story.word(Word.SUM)}, {currency}", 1.15, Alignment.RIGHT),
        Column(story.word(Word.LEAD_TIME), 1.05, Alignment.RIGHT),
    )


def price_cells(line: BillLine, currency: str, story: Story) -> tuple[str, ...]:
    """Return the cells under ``price_columns``."""
    if line.unit_minor is None or line.sum_minor is None:
        each, total = story.word(Word.NO_PRICE), ""
    else:
        each = story.bare_money(line.unit_minor, currency)
        total = story.bare_money(line.sum_minor, currency)
    return (str(line.quantity), each, total, "–" if line.kept else story.days(line.part.lead_time_days))


def named(line: BillLine, story: Story) -> str:
    """Return the name of a part as parts tables print it: one that hangs there already is said to stay."""
    name = story.part_name(line.part)
    return story.writing.listed((name, story.word(Word.STAYS))) if line.kept else name


def total_row(total: Total, currency: str, columns: int, story: Story) -> Row:
    """Return the closing row of a parts table of ``columns`` columns that ends in ``price_columns``."""
    cells = [""] * columns
    cells[0] = story.word(Word.TOTAL)
    cells[-2] = story.bare_money(total.minor, currency)
    cells[-1] = story.days(total.longest_lead_time_days)
    return Row(tuple(cells), Emphasis.TOTAL)


def unpriced_note(total: Total, story: Story) -> Iterator[Block]:
    """Return the note that names parts without a price; nothing where all have one."""
    if total.unpriced:
        yield Paragraph(f"{story.word(Word.UNPRICED)}{story.writing.colon} {', '.join(total.unpriced)}.", Role.NOTE)


def _site_rows(site_plan: SitePlan, story: Story, dated: date | None) -> Iterator[Named]:
    site, made_from = site_plan.survey.site, site_plan.provenance
    jurisdiction = site_plan.jurisdiction
    low = story.show(site.climate.low_c, Dimension.TEMPERATURE)
    high = story.show(site.climate.high_c, Dimension.TEMPERATURE)
    yield Named(story.word(Word.NAME), site.name)
    if site.address.strip():
        yield Named(story.word(Word.ADDRESS), site.address.strip())
    if site.customer:
        yield Named(story.word(Word.CUSTOMER), site.customer)
    if dated is not None:
        yield Named(story.word(Word.DATE), story.day(dated))
    yield Named(story.phrases.text["sets_title"], sets_head(site_plan, story))
    yield Named(story.word(Word.JURISDICTION), f"{story.phrases.tell(jurisdiction.title)}, {jurisdiction.edition}")
    yield Named(story.word(Word.CLIMATE), story.phrases.fill("between", low=low, high=high))
    yield Named(story.word(Word.SERVICE), story.word(site.service))
    yield Named(story.word(Word.FENCED), story.yes_no(site.fenced))
    yield Named(story.word(Word.CATALOGUE), story.edition(made_from.catalogue_edition))
    yield Named(story.word(Word.RULES), made_from.rules_edition)
    yield Named(story.word(Word.FINGERPRINT), made_from.survey_fingerprint)
    yield Named(story.word(Word.PROGRAM), made_from.program_version)


def short_site_rows(site_plan: SitePlan, story: Story, dated: date | None) -> Iterator[Named]:
    """Return the head of the site in few lines: whose it is, where the sets are from, what they were made from."""
    site, made_from = site_plan.survey.site, site_plan.provenance
    whose = [text for text in (site.name, site.address.strip(), site.customer) if text]
    yield Named(story.word(Word.SITE), story.writing.listed(whose))
    if dated is not None:
        yield Named(story.word(Word.DATE), story.day(dated))
    yield Named(story.phrases.text["sets_title"], sets_head(site_plan, story))
    title = story.phrases.tell(site_plan.jurisdiction.title)
    yield Named(story.word(Word.JURISDICTION), f"{title}, {site_plan.jurisdiction.edition}")
    editions = (
        story.edition(made_from.catalogue_edition),
        made_from.rules_edition,
        f"Spoutline {made_from.program_version}",
    )
    yield Named(story.word(Word.CATALOGUE), story.writing.listed(editions))


def built_rows(site_plan: SitePlan, records: tuple[CommissioningRecord, ...], story: Story) -> Iterator[Named]:
    """Return who built which positions on which day, then the positions that no record speaks of."""
    if not records:
        return
    built: dict[tuple[str, str], list[str]] = {}
    labels = [plan.position.label for plan in site_plan.positions]
    newest = {record.position: record for record in records}
    for label in labels:
        if label in newest:
            record = newest[label]
            day = story.day(record.done_on) if record.done_on else story.word(Word.NO_DAY)
            built.setdefault((day, record.done_by or story.word(Word.NO_NAME)), []).append(label)
    for (day, by), positions in built.items():
        text = story.phrases.fill("built_by", day=day, by=by, positions=", ".join(positions))
        yield Named(story.word(Word.AS_BUILT), text)
    others = ", ".join(label for label in labels if label not in newest)
    if others:
        yield Named(story.word(Word.AS_PLANNED), others)


def _positions_table(site_plan: SitePlan, found: Mapping[str, tuple[str, ...]], story: Story) -> Table:
    currency = site_plan.survey.site.currency
    columns = (
        Column(story.word(Word.POSITION), 1.6),
        Column(story.word(Word.DISPENSER), 1.1),
        Column(story.word(Word.LIQUID), 1.9),
        Column(story.word(Word.DUTY), 0.8),
        Column(story.word(Word.STATUS), 1.7),
        Column(story.word(Word.PRICE), 1.3, Alignment.RIGHT),
    )
    rows = [_position_row(plan, currency, story, closed=plan.position.label in found) for plan in site_plan.positions]
    total = total_of(_all_lines(site_plan))
    rows.append(Row((story.word(Word.TOTAL), "", "", "", "", story.money(total.minor, currency)), Emphasis.TOTAL))
    return Table(columns, tuple(rows), dense=True)


def _position_row(plan: PositionPlan, currency: str, story: Story, *, closed: bool) -> Row:
    position = plan.position
    fits = plan.status is PlanStatus.FITS
    price = story.money(total_of(position_lines(plan, currency)).minor, currency) if fits else "–"
    cells = (
        position.label,
        position.dispenser,
        position_liquid(position, story),
        story.word(position.duty),
        f"✗ {story.word(Word.CLOSED)}" if closed else story.marked_verdict(plan),
        price,
    )
    return Row(cells, Emphasis.NONE if plan.keeps_every_must and not closed else Emphasis.FAULT)


def consolidated_blocks(site_plan: SitePlan, story: Story, *, close: bool = False) -> Iterator[Block]:
    """Return each part of the site once with its quantity, and the sum.

    ``close`` spends the least room on it: without notes, and without what hangs there and stays.
    """
    lines = tuple(line for line in site_lines(site_plan) if not (close and line.kept))
    if not lines:
        yield Paragraph(story.word(Word.NO_PARTS))
        return
    currency = site_plan.survey.site.currency
    number, maker, name = (1.0, 2.7, 7.8) if close else (1.25, 2.1, 3.7)
    columns = (
        Column(story.word(Word.PART_NUMBER), number),
        Column(story.word(Word.MAKER), maker),
        Column(story.word(Word.PART_NAME), name),
        *price_columns(currency, story),
    )
    rows = [
        Row((line.part.number, line.part.maker, named(line, story), *price_cells(line, currency, story)))
        for line in lines
    ]
    total = total_of(lines)
    yield Table(columns, (*rows, total_row(total, currency, len(columns), story)), dense=True, tight=close)
    if not close:
        yield Paragraph(story.word(Word.TOTAL_NOTE), Role.NOTE)
    yield from unpriced_note(total, story)
    if left_open := story.still_to_save(site_plan):
        yield Paragraph(left_open, Role.NOTE)


def _all_lines(site_plan: SitePlan) -> Iterable[BillLine]:
    currency = site_plan.survey.site.currency
    return (line for plan in site_plan.positions for line in position_lines(plan, currency))
