"""What to measure on a visit to the station, on one page: what is assumed, what it could change, room for figures."""

from __future__ import annotations

from collections.abc import Iterator
from datetime import date
from typing import Final

from spoutline.documents.content.bill_frame import bill_document
from spoutline.documents.content.blocks import Block, Column, Document, Heading, Paragraph, Role, Row, Table
from spoutline.explain.plan.doubt_words import CaseText, VisitText, first_and_others, visit_texts
from spoutline.explain.plan.story import Story
from spoutline.model.doubt import StationDoubts
from spoutline.model.plan import SitePlan

_CASES_SHOWN: Final = 2  # the gravest; a list for the pocket is no annex
_EFFECTS_SHOWN: Final = 2
_LABELS_TO_FILL_IN: Final = 8
_TO_FILL_IN: Final = "________"


def site_visit_content(
    site_plan: SitePlan, doubts: StationDoubts, story: Story, *, dated: date | None = None
) -> Document:
    """Return the list for a visit; figures that move no verdict are told after those that do.

    Parameters: ``site_plan``, whose sets were looked at; ``doubts`` about them; ``story``, words and units; ``dated``
    is printed where given.
    """
    text = story.phrases.text
    title = text["measure_title"]
    lines = visit_texts(doubts, story)
    blocks: list[Block] = [
        Heading(title, 1),
        Paragraph(text["advice"], Role.NOTE),
        Paragraph(text["measure_note"], Role.NOTE),
        Paragraph(text["measure_caution"], Role.LEAD) if lines else Paragraph(text["measure_nothing"]),
    ]
    first, others = first_and_others(len(lines))
    for heading, places in (("measure_first", first), ("measure_then", others)):
        if places:
            rows = tuple(_row(at + 1, lines[at], story, with_labels=places is first) for at in places)
            blocks += [Heading(text[heading], 2), _table(rows, story)]
    return bill_document(site_plan, story, title, blocks, dated=dated)


def _table(rows: tuple[Row, ...], story: Story) -> Table:
    text = story.phrases.text
    columns = (
        Column("", 0.3),
        Column(text["measure_what"], 1.8),
        Column(text["measure_range"], 2.0),
        Column(text["measure_effect"], 3.3),
        Column(text["measure_result"], 1.9),
    )
    return Table(columns, rows, tight=True)


def _row(number: int, line: VisitText, story: Story, *, with_labels: bool) -> Row:
    cases = line.cases[: _CASES_SHOWN if line.flips else 1]  # what changes no verdict is soon said
    assumed = dict.fromkeys(case.text.assumed for case in cases)
    effects = [_effects(case, story, with_positions=len(line.cases) > 1) for case in cases]
    if len(line.cases) > len(cases):
        effects.append(story.phrases.fill("measure_more", count=len(line.cases) - len(cases)))
    where = f"{line.title}{story.writing.colon} {line.positions}"
    return Row((str(number), where, "\n".join(assumed), "\n".join(effects), _to_fill_in(line, with_labels=with_labels)))


def _to_fill_in(line: VisitText, *, with_labels: bool) -> str:
    """Return room for what is measured, for each position where there is room for that."""
    if not with_labels or not 1 < len(line.labels) <= _LABELS_TO_FILL_IN:
        return _TO_FILL_IN
    return "\n".join(f"{_TO_FILL_IN} {label}" for label in line.labels)


def _effects(case: CaseText, story: Story, *, with_positions: bool) -> str:
    return story.writing.listed(_shown_effects(case, story, with_positions=with_positions))


def _shown_effects(case: CaseText, story: Story, *, with_positions: bool) -> Iterator[str]:
    shown = list(case.text.effects[:_EFFECTS_SHOWN])
    rest = len(case.text.effects) - len(shown)
    if with_positions:
        shown[0] = f"{case.positions}{story.writing.colon} {shown[0]}"
    yield from shown
    if rest:
        yield story.phrases.fill("measure_more", count=rest)
