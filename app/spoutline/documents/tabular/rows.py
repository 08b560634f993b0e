"""The rows of a bill, of its positions and of its checks, as cells under column titles."""

from __future__ import annotations

from collections.abc import Iterator, Sequence

from spoutline.documents.content.site_sections import position_liquid
from spoutline.documents.content.totals import BillLine, accessory_lines, position_lines, set_lines, total_of
from spoutline.documents.tabular.cells import Cell
from spoutline.explain.phrases.paper_words import PaperWord as Word
from spoutline.explain.plan.sets_head import sets_head
from spoutline.explain.plan.story import Story
from spoutline.explain.writing.money import amount
from spoutline.frozen import frozen
from spoutline.model.check import Check
from spoutline.model.plan import PlanStatus, PositionPlan, SitePlan
from spoutline.model.quantity import Dimension
from spoutline.model.record import CommissioningRecord
from spoutline.planning.refit.dispensers import islands_of

_ISLAND_COLUMN = 2  # behind position and dispenser


@frozen
class Sheet:
    """A table: its name, column titles and rows. Columns of ``money`` hold prices."""

    name: str
    titles: tuple[str, ...]
    rows: tuple[tuple[Cell, ...], ...]
    money: frozenset[int] = frozenset()


def bill_titles(story: Story) -> tuple[str, ...]:
    """Return the column titles of a bill without islands."""
    return (
        story.word(Word.POSITION),
        story.word(Word.DISPENSER),
        story.word(Word.PLACE),
        story.word(Word.PART_NUMBER),
        story.word(Word.MAKER),
        story.word(Word.PART_NAME),
        story.word(Word.QUANTITY),
        story.word(Word.CURRENCY),
        story.word(Word.UNIT_PRICE),
        story.word(Word.SUM),
        story.word(Word.LEAD_TIME_DAYS),
        story.word(Word.REASON),
        story.phrases.text["sets_title"],
        story.word(Word.RECALLED_LIMITS),
        story.word(Word.RECORDED_WRONG),
    )


def bill_titles_ever(story: Story) -> tuple[tuple[str, ...], ...]:
    """Return the column titles of every bill that the program has written, without islands, the newest first."""
    titles = bill_titles(story)
    return titles, titles[:-2]


def bill_sheet(site_plan: SitePlan, story: Story, records: Sequence[CommissioningRecord] = ()) -> Sheet:
    """Return every part of every position, one row each, without sums of rows so that filters and totals stay right.

    Behind them stand the checks of the position that rest on a recalled limit, and what its newest record found wrong.
    """
    titles = bill_titles(story)
    head = sets_head(site_plan, story)
    newest = {record.position: record for record in records}
    rows = tuple(
        (*row, head, _recalled(plan, story), _found_wrong(newest.get(plan.position.label)))
        for plan in site_plan.positions
        for row in _bill_rows(plan, site_plan, story)
    )
    return _with_islands(Sheet(story.word(Word.SHEET_BILL), titles, rows, frozenset({8, 9})), site_plan, story)


def _recalled(plan: PositionPlan, story: Story) -> str:
    checks = plan.chosen.checks if plan.chosen is not None else ()
    return "; ".join(story.check(one).title for one in checks if story.check(one).footing)


def _found_wrong(record: CommissioningRecord | None) -> str:
    return "; ".join(record.found) if record is not None else ""


def position_sheet(site_plan: SitePlan, story: Story) -> Sheet:
    """Return one row for each position: what it is, the result, the price."""
    currency = site_plan.survey.site.currency
    titles = (
        story.word(Word.POSITION),
        story.word(Word.DISPENSER),
        story.word(Word.LIQUID),
        story.word(Word.DUTY),
        story.word(Word.VAPOUR),
        story.word(Word.STATUS),
        story.word(Word.CURRENCY),
        story.word(Word.PRICE),
        story.word(Word.LEAD_TIME_DAYS),
        story.word(Word.UNPRICED),
    )
    rows = tuple(_position_row(plan, currency, story) for plan in site_plan.positions)
    return _with_islands(Sheet(story.word(Word.SHEET_POSITIONS), titles, rows, frozenset({7})), site_plan, story)


def check_sheet(site_plan: SitePlan, story: Story) -> Sheet:
    """Return one row for each check of each set, figures in the shown unit."""
    titles = (
        story.word(Word.POSITION),
        story.word(Word.CHECK),
        story.word(Word.WEIGHT),
        story.word(Word.VALUE),
        story.word(Word.UNIT),
        story.word(Word.LOWER_LIMIT),
        story.word(Word.UPPER_LIMIT),
        story.word(Word.MARGIN),
        story.word(Word.OUTCOME),
        story.word(Word.SOURCE),
        story.word(Word.LIMIT_FOOTING),
    )
    rows = tuple(
        _check_row(plan.position.label, check, story)
        for plan in site_plan.positions
        if plan.chosen is not None
        for check in plan.chosen.checks
    )
    return Sheet(story.word(Word.SHEET_CHECKS), titles, rows)


def _with_islands(sheet: Sheet, site_plan: SitePlan, story: Story) -> Sheet:
    """Return a sheet that begins with position and dispenser with the island behind them, where the survey names any.

    A survey without islands gives the sheet as it is, so that no column stands empty.
    """
    survey = site_plan.survey
    labels = (position.label for position in survey.positions)
    island_at = dict(zip(labels, islands_of(survey), strict=True))
    if not any(island_at.values()):
        return sheet
    return Sheet(
        sheet.name,
        with_island_title(sheet.titles, story),
        tuple((*row[:_ISLAND_COLUMN], island_at[str(row[0])], *row[_ISLAND_COLUMN:]) for row in sheet.rows),
        frozenset(column + (column >= _ISLAND_COLUMN) for column in sheet.money),
    )


def _bill_rows(plan: PositionPlan, site_plan: SitePlan, story: Story) -> Iterator[tuple[Cell, ...]]:
    currency = site_plan.survey.site.currency
    if plan.chosen is None:
        return
    links = plan.chosen.hanging_set.links
    for link, line in zip(links, set_lines(plan, currency), strict=True):
        remark = story.word(Word.STAYS) if link.kept else ""
        yield _line_row(plan, line, currency, story, place=story.word(link.slot), reason=remark)
    for accessory, line in zip(plan.accessories, accessory_lines(plan, currency), strict=True):
        reason = story.accessory_reason(accessory.reason)
        yield _line_row(plan, line, currency, story, place=story.word(accessory.part.kind), reason=reason)


def _line_row(
    plan: PositionPlan, line: BillLine, currency: str, story: Story, *, place: str, reason: str
) -> tuple[Cell, ...]:
    return (
        plan.position.label,
        plan.position.dispenser,
        place,
        line.part.number,
        line.part.maker,
        story.part_name(line.part),
        line.quantity,
        currency,
        None if line.unit_minor is None else amount(line.unit_minor, currency),
        None if line.sum_minor is None else amount(line.sum_minor, currency),
        None if line.kept else line.part.lead_time_days,
        reason,
    )


def _position_row(plan: PositionPlan, currency: str, story: Story) -> tuple[Cell, ...]:
    position = plan.position
    total = total_of(position_lines(plan, currency))
    fits = plan.status is PlanStatus.FITS
    return (
        position.label,
        position.dispenser,
        position_liquid(position, story),
        story.word(position.duty),
        story.word(position.vapour_wanted),
        story.verdict(plan),
        currency,
        amount(total.minor, currency) if fits else None,
        total.longest_lead_time_days if fits else None,
        ", ".join(total.unpriced),
    )


def _check_row(label: str, check: Check, story: Story) -> tuple[Cell, ...]:
    text = story.check(check)
    difference = Dimension.TEMPERATURE_DIFFERENCE if check.dimension is Dimension.TEMPERATURE else check.dimension
    return (
        label,
        text.title,
        text.severity_word,
        text.value if check.value is None else story.display.number(check.value, check.dimension),
        "" if check.value is None else story.display.unit(check.dimension),
        None if check.lower is None else story.display.number(check.lower.value, check.dimension),
        None if check.upper is None else story.display.number(check.upper.value, check.dimension),
        None if check.margin is None else story.display.number(check.margin, difference),
        text.outcome_word,
        "; ".join(text.sources),
        text.footing,
    )


def with_island_title(titles: tuple[str, ...], story: Story) -> tuple[str, ...]:
    """Return column titles with the island's behind those of position and dispenser."""
    return (*titles[:_ISLAND_COLUMN], story.word(Word.ISLAND), *titles[_ISLAND_COLUMN:])
