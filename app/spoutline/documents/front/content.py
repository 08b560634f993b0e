"""Sets weighed against each other as a document: chart, what it says of itself, and the table of its points."""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from datetime import date

from spoutline.documents.content.bill_frame import paper_for
from spoutline.documents.content.blocks import (
    Alignment,
    Block,
    Bullets,
    Column,
    Document,
    Emphasis,
    Figure,
    Heading,
    KeyValues,
    Paragraph,
    Role,
    Row,
    Table,
)
from spoutline.documents.drawing.front_chart import Charted, charted_front, charted_station, front_chart
from spoutline.explain.phrases.front_words import FrontWord as Word
from spoutline.explain.phrases.paper_words import PaperWord
from spoutline.explain.plan.front_text import (
    axes_text,
    axis_notes,
    figure_text,
    front_sentences,
    remark_text,
    set_text,
    station_sentences,
    taken_text,
    title_text,
)
from spoutline.explain.plan.story import Story
from spoutline.explain.plan.texts import Named
from spoutline.model.front import FrontAxis, PositionFront, StationFront
from spoutline.model.plan import Provenance
from spoutline.model.survey import Survey
from spoutline.planning.weighing.station_front import points_taken

_FINGERPRINT_SHOWN = 12
MOST_ROWS = 200  # of a station's combinations on paper


def front_content(
    found: PositionFront | StationFront,
    survey: Survey,
    made_from: Provenance,
    story: Story,
    dated: date | None = None,
) -> Document:
    """Return the paper; ``dated`` is printed where given, and no clock is read."""
    site, is_station = survey.site, isinstance(found, StationFront)
    foot = f"{story.word(PaperWord.FINGERPRINT)} {made_from.survey_fingerprint[:_FINGERPRINT_SHOWN]}"
    blocks = _station_blocks(found, story) if isinstance(found, StationFront) else _position_blocks(found, story)
    return Document(
        title=f"{title_text(found, story)} · {site.name}" if not is_station else title_text(found, story),
        subject=story.word(Word.STATION_SUBJECT if is_station else Word.SUBJECT),
        author=f"Spoutline {made_from.program_version}",
        language=story.phrases.language,
        paper=paper_for(made_from.jurisdiction_id),
        running_head=site.name,
        running_foot=f"{story.day(dated)} · {foot}" if dated else foot,
        page_phrase=story.word(PaperWord.PAGE_OF),
        blocks=(
            Heading(title_text(found, story), 1),
            KeyValues(tuple(_head(found, survey, made_from, story, dated))),
            *blocks,
            Paragraph(story.phrases.text["advice"], Role.NOTE),
        ),
        notice=story.phrases.text["demonstration_notice"] if made_from.is_demonstration else "",
    )


def _axes(found: PositionFront | StationFront) -> Sequence[FrontAxis]:
    return (FrontAxis.PRICE, found.axis) if isinstance(found, StationFront) else found.axes


def _head(
    found: PositionFront | StationFront, survey: Survey, made_from: Provenance, story: Story, dated: date | None
) -> Iterator[Named]:
    yield Named(story.word(PaperWord.SITE), survey.site.name)
    yield Named(story.word(Word.AXES), axes_text(_axes(found), story))
    yield Named(story.word(PaperWord.CATALOGUE), made_from.catalogue_edition)
    if dated is not None:
        yield Named(story.word(PaperWord.DATE), story.day(dated))


def _chart(charted: Charted | None, story: Story) -> Iterator[Block]:
    if charted is not None:
        drawing = front_chart(charted, story)
        yield Figure(drawing, f"{drawing.title}. {drawing.description}")


def _position_blocks(found: PositionFront, story: Story) -> Iterator[Block]:
    yield from _chart(charted_front(found), story)
    yield Bullets(tuple(front_sentences(found, story)))
    if found.points:
        yield _position_table(found, story)
    yield from (Paragraph(note, Role.NOTE) for note in axis_notes(found, story))


def _position_table(found: PositionFront, story: Story) -> Table:
    columns = (
        Column(story.word(Word.NUMBER), 0.5, Alignment.RIGHT),
        *(Column(story.title(axis), 1.2, Alignment.RIGHT) for axis in found.axes),
        Column(story.word(Word.SET), 5.0),
    )
    rows = []
    for at, point in enumerate(found.points):
        told = story.writing.listed(filter(None, (set_text(point.judged.hanging_set), remark_text(found, at, story))))
        figures = (
            figure_text(axis, figure, found.currency, story)
            for axis, figure in zip(found.axes, point.figures, strict=True)
        )
        emphasis = Emphasis.TOTAL if at == found.planned else Emphasis.NONE
        rows.append(Row((str(at + 1), *figures, told), emphasis))
    return Table(columns, tuple(rows), tight=True)


def _station_blocks(found: StationFront, story: Story) -> Iterator[Block]:
    yield from _chart(charted_station(found), story)
    yield Bullets(tuple(station_sentences(found, story)))
    axes = (FrontAxis.PRICE, found.axis)
    columns = (
        Column(story.word(Word.NUMBER), 0.5, Alignment.RIGHT),
        *(Column(story.title(axis), 1.4, Alignment.RIGHT) for axis in axes),
        *(Column(", ".join(group.labels), 2.0) for group in found.groups[:_GROUP_COLUMNS]),
    )
    shown = found.points[:MOST_ROWS]
    rows = tuple(
        Row(
            (
                str(at + 1),
                *(
                    figure_text(axis, figure, found.currency, story)
                    for axis, figure in zip(axes, (point.price, point.other), strict=True)
                ),
                *(str(choice + 1) for choice in point.choices[:_GROUP_COLUMNS]),
            )
        )
        for at, point in enumerate(shown)
    )
    if rows:
        yield Table(columns, rows, tight=True)
    yield from _station_sets(found, story)
    yield from (Paragraph(note, Role.NOTE) for note in axis_notes(found, story))


_GROUP_COLUMNS = 6


def _station_sets(found: StationFront, story: Story) -> Iterator[Block]:
    """Yield the sets that the shown combinations take, position by position."""
    taken = [points_taken(found, point) for point in found.points[:MOST_ROWS]]
    for at, group in enumerate(found.groups):
        used = sorted({point.choices[at] for point in found.points[:MOST_ROWS]})
        if not taken or not used:
            continue
        yield Heading(", ".join(group.labels), 2)
        columns = (
            Column(story.word(Word.NUMBER), 0.5, Alignment.RIGHT),
            *(Column(story.title(axis), 1.4, Alignment.RIGHT) for axis in group.front.axes),
            Column(story.word(Word.SET), 5.0),
        )
        rows = tuple(
            Row(
                (
                    str(number + 1),
                    *(
                        figure_text(axis, figure, found.currency, story)
                        for axis, figure in zip(group.front.axes, group.front.points[number].figures, strict=True)
                    ),
                    taken_text(group.front.points[number], found, story),
                )
            )
            for number in used
        )
        yield Table(columns, rows, tight=True)
