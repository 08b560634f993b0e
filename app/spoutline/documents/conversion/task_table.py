"""The sequence of a conversion for spreadsheets: tasks and days to keep; in a workbook closings, tanks, costs too."""

from __future__ import annotations

import csv
from collections.abc import Iterator
from datetime import date, timedelta
from io import StringIO
from typing import Final

from spoutline.documents.tabular.cells import Cell, shielded, without_controls
from spoutline.documents.tabular.rows import Sheet
from spoutline.explain.conversion.case_words import titled
from spoutline.explain.conversion.story import ConversionStory
from spoutline.model.conversion import SiteConversion
from spoutline.model.conversion_sequence import Deadline, Moment, PlannedTask, Sequence
from spoutline.model.removal_standing import Standing

COLUMNS: Final = (
    "kind",
    "task",
    "who",
    "phase",
    "tank",
    "where",
    "start",
    "finish",
    "start_day",
    "finish_day",
    "work_minutes",
    "waits_days",
    "critical",
    "may_wait_minutes",
    "stops_sales",
    "id",
    "after",
    "source",
    "status",
)
_CLOSINGS: Final = ("what", "opening", "dispenser", "position", "quantity", "needed_by", "why", "source", "status")
_TANKS: Final = ("tank", "positions", "today", "wanted", "how", "why", "notice_days", "label", "asked_for")
_COSTS: Final = ("item", "amount", "currency", "grant")


def tasks_csv(conversion: SiteConversion, words: ConversionStory) -> bytes:
    """Return tasks in the order of their start, then the days to keep; UTF-8 with a byte order mark.

    Where recovery has to stay the table says so in one row.
    """
    stream = StringIO(newline="")
    writer = csv.writer(stream, lineterminator="\r\n")
    writer.writerow(COLUMNS)
    writer.writerows([_text(cell) for cell in row] for row in _task_rows(conversion, words))
    return stream.getvalue().encode("utf-8-sig")


def tasks_xlsx(conversion: SiteConversion, words: ConversionStory) -> bytes:
    """Return the workbook: tasks, closings with what stays live, tanks that change their liquid, costs."""
    from spoutline.documents.tabular.workbook import workbook_bytes

    return workbook_bytes(
        (
            Sheet("Tasks", COLUMNS, tuple(_task_rows(conversion, words))),
            Sheet("Closings", _CLOSINGS, tuple(_closing_rows(conversion, words))),
            Sheet("Tanks", _TANKS, tuple(_tank_rows(conversion, words))),
            Sheet("Costs", _COSTS, tuple(_cost_rows(conversion, words)), frozenset({1})),
        ),
        title=titled(words.say("report_title", site=conversion.survey.site.name), conversion, words),
        author=f"Spoutline {conversion.provenance.program_version}",
        comments=words.say("defers"),
        currency=conversion.survey.site.currency,
    )


def _text(cell: Cell) -> str:
    if cell is None:
        return ""
    return shielded(without_controls(cell)) if isinstance(cell, str) else str(cell)


def _task_rows(conversion: SiteConversion, words: ConversionStory) -> Iterator[tuple[Cell, ...]]:
    sequence = conversion.sequence
    if conversion.standing.standing is Standing.NOT_ALLOWED:
        yield _plain_row("retention", words.standing(conversion.standing), None)
    if sequence is None:
        return
    order = sorted(sequence.tasks, key=lambda task: (task.start.day, task.start.minute, task.id))
    yield from (_task_row(task, sequence, words) for task in order)
    yield from (_deadline_row(one, sequence, words) for one in sequence.deadlines)


def _task_row(task: PlannedTask, sequence: Sequence, words: ConversionStory) -> tuple[Cell, ...]:
    first = sequence.first_day
    return (
        "wait" if task.waits_days else "task",
        words.task(task),
        words.word(task.role),
        task.phase,
        task.tank,
        ", ".join(task.places),
        words.table_time(task.start, first),
        words.table_time(task.finish, first),
        task.start.day,
        task.finish.day,
        task.work_minutes,
        task.waits_days,
        "yes" if task.critical else "no",
        task.slack_minutes,
        "yes" if task.stops_sales else "no",
        task.id,
        " ".join(task.after),
        task.source,
        task.status.value,
    )


def _deadline_row(one: Deadline, sequence: Sequence, words: ConversionStory) -> tuple[Cell, ...]:
    row = _plain_row("day to keep", words.deadline(one, sequence.first_day), one.day, sequence.first_day)
    return (*row[:-2], one.source, one.status.value)


def _plain_row(kind: str, text: str, day: int | None, first_day: date | None = None) -> tuple[Cell, ...]:
    when = ""
    if day is not None:
        moment = Moment(day=day, minute=0)
        when = (first_day + timedelta(days=moment.day)).isoformat() if first_day else ""
    empty = len(COLUMNS) - 10
    return (kind, text, "", None, "", "", when, when, day, day, *([""] * empty))


def _closing_rows(conversion: SiteConversion, words: ConversionStory) -> Iterator[tuple[Cell, ...]]:
    for one in conversion.closings:
        where = (one.dispenser, one.position, one.quantity)
        yield ("close", words.word(one.opening), *where, "", "", one.source, one.status.value)
    for live in conversion.stays_live:
        needed = ", ".join(live.needed_by)
        why = words.word(live.reason)
        place = (words.word(live.opening), live.dispenser, "", live.quantity)
        yield ("stays live", *place, needed, why, live.source, live.status.value)


def _tank_rows(conversion: SiteConversion, words: ConversionStory) -> Iterator[tuple[Cell, ...]]:
    for one in conversion.tank_changes:
        yield (
            words.tank_of(one),
            ", ".join(one.positions),
            *words.liquids(one).split(" → "),
            words.word(one.way),
            " ".join(words.why_within(one)),
            one.notice_days if one.notice else None,
            one.label.title if one.label else "",
            "; ".join(words.asked_by_change(one)),
        )


def _cost_rows(conversion: SiteConversion, words: ConversionStory) -> Iterator[tuple[Cell, ...]]:
    money = conversion.money
    for line in money.costs:
        name = f"{words.title(line.kind)} {line.label}".strip()
        yield (name, line.amount, money.currency, "yes" if line.eligible else "no")
    total = words.say("total") if money.complete else words.say("total_known")
    yield (total, money.total, money.currency, "")
