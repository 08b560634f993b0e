"""Certificates of bond and leak tests: a page for each dispenser that says what was measured, and no more."""

from __future__ import annotations

import json
from collections.abc import Iterable, Iterator, Sequence
from dataclasses import replace
from typing import Any

from spoutline.documents.content.blocks import (
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
    SignatureLines,
    Table,
)
from spoutline.documents.pack.commissioning_form import limit_text
from spoutline.documents.pack.cover import sets_note
from spoutline.documents.pack.record_sheet import entered_text, verdict_text
from spoutline.explain.pack.words import PackWord as Word
from spoutline.explain.plan.story import Story
from spoutline.explain.plan.texts import Named
from spoutline.model.certificate import Certificate, CertifiedTest, Measurement
from spoutline.model.limit import LimitStatus
from spoutline.model.plan import SitePlan
from spoutline.model.record import ReadingVerdict

TITLES = {CertifiedTest.BOND: Word.BOND_CERTIFICATE, CertifiedTest.LEAK: Word.LEAK_CERTIFICATE}
_TO_WRITE = "______________"


def certificate_blocks(certificates: Iterable[Certificate], site_plan: SitePlan, story: Story) -> Iterator[Block]:
    """Return each certificate from a new page on; ``site_plan`` is the one whose checks limit the readings."""
    for number, one in enumerate(certificates):
        if number:
            yield PageBreak()
        yield from _page(one, site_plan, story)


def certificates_json(certificates: Sequence[Certificate], site_plan: SitePlan, english: Story) -> bytes:
    """Return certificates as a JSON document; readings and limits in SI, null for none."""
    document = {
        "format": "spoutline-certificates",
        "version": 1,
        "site": site_plan.survey.site.name,
        "certificates": [
            {
                "test": one.test.value,
                "dispenser": one.dispenser,
                "positions": [_row_values(row, english) for row in one.rows],
            }
            for one in certificates
        ],
    }
    return (json.dumps(document, indent=2, ensure_ascii=False) + "\n").encode()


def _page(one: Certificate, site_plan: SitePlan, story: Story) -> Iterator[Block]:
    site = site_plan.survey.site
    yield Heading(f"{story.word(TITLES[one.test])}{story.writing.colon} {one.dispenser}", 1)
    yield Paragraph(story.word(Word.CERTIFICATE_LEAD), Role.LEAD)
    head = [Named(story.word(Word.SITE), site.name)]
    if site.address.strip():
        head.append(Named(story.word(Word.ADDRESS), site.address.strip()))
    head.append(Named(story.word(Word.DISPENSER), one.dispenser))
    head.append(Named(story.word(Word.WHAT), story.word(one.rows[0].judged.item.id)))
    yield KeyValues(tuple(head))
    labels = {row.position for row in one.rows}
    here = tuple(plan for plan in site_plan.positions if plan.position.label in labels)
    yield sets_note(replace(site_plan, positions=here), story)
    yield _table(one, story)
    if any(row.judged.verdict is ReadingVerdict.OUTSIDE for row in one.rows):
        yield Paragraph(f"✗ {story.word(Word.OUT_OF_LIMIT)}")
    sources = dict.fromkeys(source for row in one.rows for source in _sources(row, story))
    yield Paragraph(f"{story.word(Word.LIMIT_SOURCE)}{story.writing.colon} {'; '.join(sources)}", Role.NOTE)
    notes = tuple(
        f"{row.position}{story.writing.colon} {row.judged.entry.note}"
        for row in one.rows
        if row.judged.entry is not None and row.judged.entry.note
    )
    if notes:
        yield Bullets(notes)
    before = ", ".join(row.position for row in one.rows if not row.is_of_today)
    if before:
        yield Paragraph(story.phrases.fill("recorded_at_revision", positions=before), Role.NOTE)
    yield SignatureLines((story.word(Word.SIGNATURE), story.word(Word.DATE)))


def _table(one: Certificate, story: Story) -> Table:
    columns = (
        Column(story.word(Word.POSITION), 1.1),
        Column(story.word(Word.MEASURED), 1.2),
        Column(story.word(Word.LIMIT), 1.3),
        Column(story.word(Word.VERDICT), 1.5),
        Column(story.word(Word.DATE), 1.0),
        Column(story.word(Word.DONE_BY), 1.5),
        Column(story.word(Word.INSTRUMENTS), 1.9),
    )
    return Table(columns, tuple(_row(row, story) for row in one.rows), dense=True)


def _row(row: Measurement, story: Story) -> Row:
    by = story.writing.listed(tuple(text for text in (row.done_by, row.licence) if text))
    return Row(
        (
            row.position,
            entered_text(row.judged, story),
            _limit(row, story),
            verdict_text(row.judged.verdict, story),
            story.day(row.done_on),
            by or _TO_WRITE,
            row.instruments or _TO_WRITE,
        ),
        Emphasis.FAULT if row.judged.verdict is ReadingVerdict.OUTSIDE else Emphasis.NONE,
    )


def _limit(row: Measurement, story: Story) -> str:
    return limit_text(row.judged.item, story) or story.word(Word.LEAK_LIMIT)


def _sources(row: Measurement, story: Story) -> Iterator[str]:
    """Yield where the limits of a reading come from; that a joint is tight has no source but practice."""
    item = row.judged.item
    if item.dimension is None:
        yield story.word(LimitStatus.COMMON_PRACTICE)
    for limit in (item.lower, item.upper):
        if limit is not None:
            yield story.sourced(limit.source, limit.status)


def _row_values(row: Measurement, english: Story) -> dict[str, Any]:
    item, entry = row.judged.item, row.judged.entry
    return {
        "position": row.position,
        "reading": entry.reading if entry is not None else None,
        "over_range": entry is not None and entry.over_range,
        "result": entry.result.value if entry is not None and entry.result is not None else None,
        "least": item.lower.value if item.lower is not None else None,
        "most": item.upper.value if item.upper is not None else None,
        "limit_sources": list(dict.fromkeys(_sources(row, english))),
        "verdict": row.judged.verdict.value,
        "done_on": row.done_on.isoformat(),
        "done_by": row.done_by,
        "license": row.licence,
        "instruments": row.instruments,
        "note": entry.note if entry is not None else "",
        "survey_is_of_today": row.is_of_today,
    }
