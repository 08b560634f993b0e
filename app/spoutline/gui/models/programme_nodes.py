"""Rows of a programme of several sites: the years with their visits, what is in no year, what is not ready."""

from __future__ import annotations

from collections.abc import Iterator

from spoutline.explain.conversion.programme_words import ProgrammeWords
from spoutline.gui.models.node_tree import Node
from spoutline.gui.roles import Tone
from spoutline.gui.wording import tr
from spoutline.model.programme import Programme, ProgrammeYear, RankedSite, SiteOutcome, SiteResult, Visit

_TONES = {
    SiteOutcome.NOTHING_TO_DO: Tone.NOTE,
    SiteOutcome.NOT_ALLOWED: Tone.BAD,
    SiteOutcome.OPEN: Tone.BAD,
    SiteOutcome.FAULT: Tone.BAD,
}


def programme_nodes(words: ProgrammeWords) -> tuple[Node, ...]:
    """Return one head for each year with a row for each visit, then what is left out; the record is the file."""
    return tuple(_nodes(words.programme, words))


def _nodes(programme: Programme, words: ProgrammeWords) -> Iterator[Node]:
    for year in programme.years:
        yield _year(year, programme, words)
    left = tuple(_site(one, words) for one in programme.ranked if one.year is None)
    if left:
        yield Node(cells=(tr("In no year"), f"{len(left)}", "", ""), children=left, is_head=True)
    others = tuple(_other(one, words) for one in programme.others)
    if others:
        yield Node(cells=(tr("Not ready"), f"{len(others)}", "", ""), children=others, is_head=True)


def _year(year: ProgrammeYear, programme: Programme, words: ProgrammeWords) -> Node:
    here = [(one, visit) for one in programme.ranked for visit in _visits(one) if visit.year == year.year]
    cells = (words.year(year.year), f"{year.sites}", words.money(year.spent), "")
    return Node(
        cells=cells,
        children=tuple(_site(one, words, visit) for one, visit in here),
        is_head=True,
        hint=words.year_line(year),
    )


def _visits(one: RankedSite) -> tuple[Visit, ...]:
    """Return the visits of a site; of a programme of an older version, which has none, the one of its year."""
    if one.visits or one.year is None:
        return one.visits
    return (Visit(year=one.year, cash=one.site.known_cost),)


def _site(one: RankedSite, words: ProgrammeWords, visit: Visit | None = None) -> Node:
    site, cash = one.site, visit.cash if visit is not None else one.site.cost
    parts = f" – {words.dispensers(visit)}" if visit is not None and visit.dispensers else ""
    waiting = one.waiting.money if one.waiting is not None else None
    tone = Tone.GOOD if one.year is not None and one.in_time is not False else Tone.CAUTION
    return Node(
        cells=(
            str(one.rank),
            f"{site.name}{parts}",
            words.words.money(cash, site.currency),
            "" if waiting is None else words.words.money(waiting, site.currency),
        ),
        record=site.place,
        tone=tone,
        hint=site.place,
    )


def _other(one: SiteResult, words: ProgrammeWords) -> Node:
    return Node(
        cells=("", f"{one.name} – {words.words.word(one.outcome)}", "", ""),
        record=one.place,
        tone=_TONES.get(one.outcome, Tone.NOTE),
        hint=f"{one.place} {one.message}".strip(),
    )
