"""The cases of a conversion side by side: money, days, emissions and departures of each."""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from typing import Final

from spoutline.documents.content.blocks import (
    Alignment,
    Block,
    Bullets,
    Column,
    Emphasis,
    Heading,
    PageBreak,
    Paragraph,
    Role,
    Row,
    Table,
)
from spoutline.documents.conversion.way_figures import followed_way, way_figures
from spoutline.explain.conversion.case_words import CaseWords
from spoutline.explain.conversion.story import ConversionStory
from spoutline.model.conversion import SiteConversion
from spoutline.planning.conversion.cases import CaseResult

_TITLES: Final = (
    *("case_head", "cost", "case_value", "case_days", "case_stopped", "case_emissions", "case_loses"),
    *("departures", "without_set"),
)
_SHARES: Final = (2.0, 1.5, 1.8, 0.8, 1.2, 1.1, 1.0, 1.0, 0.8)


def case_titles(words: ConversionStory) -> tuple[str, ...]:
    """Return the titles of the figures of cases, the name first."""
    return tuple(map(words.say, _TITLES))


def case_cells(result: CaseResult, words: ConversionStory) -> tuple[str, ...]:
    """Return the figures of a case under ``case_titles``; each is one of its own report."""
    told, conversion = CaseWords(words), result.conversion
    figures = way_figures(followed_way(conversion), conversion)
    return (
        told.name(result.case),
        told.cost(conversion),
        told.value(conversion),
        told.days(conversion),
        told.stopped(conversion),
        told.emissions(conversion),
        told.loses(conversion),
        str(figures.departures),
        str(figures.without_set),
    )


def case_told(result: CaseResult, words: ConversionStory) -> str:
    """Return what is otherwise in a case and where; nothing for what the survey asks."""
    told = CaseWords(words)
    where = words.say("case_positions", positions=", ".join(result.changed)) if result.changed else ""
    colon = words.story.writing.colon
    return (
        "" if result.case is None else f"{told.name(result.case)}{colon} {told.changes(result.case)}. {where}".strip()
    )


def case_blocks(results: Sequence[CaseResult], shown: SiteConversion, words: ConversionStory) -> Iterator[Block]:
    """Return the chapter on the cases; the one that the report shows stands out. Nothing where there is none."""
    if len(results) < 2:
        return
    columns = tuple(
        Column(title, share, Alignment.LEFT if place == 0 else Alignment.RIGHT)
        for place, (title, share) in enumerate(zip(case_titles(words), _SHARES, strict=True))
    )
    rows = tuple(
        Row(case_cells(one, words), Emphasis.TOTAL if one.conversion is shown else Emphasis.NONE) for one in results
    )
    yield PageBreak()
    yield Heading(words.say("cases"), 1)
    yield Paragraph(words.say("cases_lead"), Role.LEAD)
    yield Table(columns, rows, dense=True)
    yield Bullets(tuple(case_told(one, words) for one in results if one.case is not None))
