"""When what is done: bars, phases, tasks with who does them, what cannot be kept."""

from __future__ import annotations

from collections.abc import Iterator

from spoutline.documents.content.blocks import (
    Alignment,
    Block,
    Bullets,
    Column,
    Emphasis,
    Figure,
    Heading,
    PageBreak,
    Paragraph,
    Role,
    Row,
    Table,
    Worked,
)
from spoutline.documents.conversion.gantt import gantt_drawings
from spoutline.explain.conversion.story import ConversionStory
from spoutline.explain.phrases.paper_words import PaperWord
from spoutline.model.conversion import SiteConversion
from spoutline.model.conversion_sequence import Phase, PlannedTask, Sequence

_FEW = 16  # positions of a tank whose names a narrow column holds


def sequence_blocks(conversion: SiteConversion, words: ConversionStory) -> Iterator[Block]:
    """Return the chapter on the sequence; nothing where nothing is done."""
    sequence = conversion.sequence
    if sequence is None:
        return
    yield PageBreak()
    yield Heading(words.say("sequence"), 1)
    yield Paragraph(words.say("sequence_lead"), Role.LEAD)
    yield Paragraph(words.span(sequence))
    if sequence.notes:
        yield Heading(words.say("sequence_notes"), 2)
        yield Bullets(tuple(words.note(note) for note in sequence.notes))
    if sequence.deadlines:
        yield Heading(words.say("deadlines"), 2)
        yield Bullets(
            tuple(
                f"{words.deadline(one, sequence.first_day)} {words.story.sourced(one.source, one.status)}"
                for one in sequence.deadlines
            )
        )
    yield from _tank_changes(conversion, words)
    yield Heading(words.say("gantt_title"), 2)
    for drawing in gantt_drawings(sequence, words):
        yield Figure(drawing, drawing.description)
    yield Heading(words.say("phases"), 2)
    yield _phase_table(sequence, words)
    yield Heading(words.say("tasks"), 2)
    yield _task_table(sequence, words)
    if conversion.decay is not None:
        yield Worked(
            title=words.say("decay_title"),
            outcome=words.say("decay_outcome"),
            lines=(words.story.worked_line(conversion.decay),),
            limit=words.say("decay_limit"),
            sources=(words.story.cited(conversion.decay.source),),
        )


def _tank_changes(conversion: SiteConversion, words: ConversionStory) -> Iterator[Block]:
    if not conversion.tank_changes:
        return
    yield Heading(words.say("tank_changes"), 2)
    yield Paragraph(words.say("tank_changes_lead"), Role.NOTE)
    most = max((len(change.positions) for change in conversion.tank_changes), default=0)
    columns = (
        Column(words.say("tank"), 0.9),
        Column(words.story.word(PaperWord.POSITIONS), 1.2 if most <= _FEW else 4.0),  # here all of them are named
        Column(words.story.word(PaperWord.LIQUID), 1.7),
        Column(words.say("change_how"), 3.0),
        Column(words.say("change_asks"), 3.2),
    )
    rows = tuple(
        Row(
            (
                words.tank_of(change),
                ", ".join(change.positions),
                words.liquids(change),
                " ".join((f"{words.title(change.way)}.", *words.why_within(change))),
                "; ".join(words.asked_by_change(change)),
            )
        )
        for change in conversion.tank_changes
    )
    yield Table(columns, rows, whole=True)


def _phase_table(sequence: Sequence, words: ConversionStory) -> Table:
    columns = (
        Column(words.say("phase"), 0.6),
        Column(words.say("dispensers"), 1.2),
        Column(words.say("out_of_service"), 3.6),
        Column(words.say("from"), 1.6),
        Column(words.say("to"), 1.6),
    )
    return Table(columns, tuple(_phase_row(phase, sequence, words) for phase in sequence.phases), whole=True)


def _phase_row(phase: Phase, sequence: Sequence, words: ConversionStory) -> Row:
    out = ", ".join(words.say("out_of", grade=grade, count=count, of=of) for grade, count, of in phase.out_of_service)
    first = sequence.first_day
    cells = (
        str(phase.number),
        ", ".join(phase.dispensers),
        out or words.say("none_out"),
        words.time(phase.start, first),
        words.time(phase.finish, first),
    )
    return Row(cells)


def _task_table(sequence: Sequence, words: ConversionStory) -> Table:
    columns = (
        Column(words.say("task"), 2.7),
        Column(words.say("who"), 1.2),
        Column(words.say("where"), 1.5),
        Column(words.say("from"), 1.35),
        Column(words.say("to"), 1.35),
        Column(words.say("slack"), 0.8, Alignment.RIGHT),
        Column(words.story.word(PaperWord.SOURCE), 2.0),
    )
    tasks = sorted(sequence.tasks, key=lambda task: (task.start.day, task.start.minute, task.id))
    return Table(columns, tuple(_task_row(task, sequence, words) for task in tasks))


def _task_row(task: PlannedTask, sequence: Sequence, words: ConversionStory) -> Row:
    first = sequence.first_day
    name = words.task(task)
    waits = words.say("waits", days=task.waits_days) if task.waits_days else ""
    cells = (
        f"{name} {waits}".strip(),
        words.word(task.role),
        words.places(task.places),
        words.time(task.start, first),
        words.time(task.finish, first),
        words.say("critical") if task.critical else words.hours(task.slack_minutes),
        words.story.sourced(task.source, task.status),
    )
    return Row(cells, Emphasis.NONE)
