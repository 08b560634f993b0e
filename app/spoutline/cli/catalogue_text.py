"""What the keeper's commands say of an edition: what differs, what becomes of stations, what to look at."""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from typing import TYPE_CHECKING, Final

from spoutline.catalogue.changes import changed_fields
from spoutline.catalogue.shelf_lookup import EntryChange
from spoutline.cli.catalogue_import import change_word, fields_told
from spoutline.cli.voice import counted, said, told
from spoutline.model.worded import Worded
from spoutline.planning.keeping.effect import Effect, PositionEffect
from spoutline.planning.keeping.health import HealthNote, Matter

if TYPE_CHECKING:
    from spoutline.explain.plan.story import Story

_MATTERS: Final[dict[Matter, str]] = {
    Matter.FAULTY: Worded("Figures that are wrong (the draft cannot be published)"),
    Matter.NOT_DESCRIBED: Worded("Not yet described (never chosen by the search)"),
    Matter.NO_MATE: Worded("Ends that no other part of the edition joins"),
    Matter.NEVER_CHOSEN: Worded("Parts that no question can choose under the rules at hand"),
    Matter.NO_SCHEME: Worded("Listing classes without a listing scheme"),
    Matter.NO_PRICE: Worded("Parts without a price"),
    Matter.PRICE_UNUSUAL: Worded("Prices far from what their kind costs"),
    Matter.LIST_EXPIRED: Worded("Price lists that have ended"),
    Matter.LIST_EXPIRES: Worded("Price lists that end within thirty days"),
}
_EFFECTS: Final[dict[Effect, str]] = {
    Effect.BREAKS: Worded("loses its set"),
    Effect.COMES_ABOUT: Worded("gets a set"),
    Effect.CHANGES: Worded("gets other parts"),
    Effect.CHEAPER: Worded("costs less"),
    Effect.DEARER: Worded("costs more"),
    Effect.SAME: Worded("as before"),
}


def change_line(change: EntryChange) -> str:
    """Return what became of an entry in one line."""
    if change.before is None:
        return f"{change_word('new')} {change.ref}"
    if change.after is None:
        return f"{change_word('gone')} {change.ref}"
    moved = fields_told(changed_fields(change))
    return f"{change_word('changed')} {change.ref}  {moved}"


def change_document(change: EntryChange) -> dict[str, object]:
    """Return what became of an entry for another program."""
    kind = "new" if change.before is None else "gone" if change.after is None else "changed"
    fields = [{"field": one.field, "before": one.before, "after": one.after} for one in changed_fields(change)]
    return {"number": change.ref.number, "maker": change.ref.maker, "change": kind, "fields": fields}


def effect_lines(effects: Sequence[PositionEffect], story: Story) -> Iterator[str]:
    """Yield how many sets come to what, then each that is not as before, with the reason."""
    counts = [(words, sum(one.effect is effect for one in effects)) for effect, words in _EFFECTS.items()]
    listed = ", ".join(f"{count} {told(words)}" for words, count in counts if count)
    positions = counted("no positions", "{count} position", "{count} positions", count=len(effects))
    yield said("{place}: {said}", place=positions, said=listed)
    for one in effects:
        if one.effect is Effect.SAME:
            continue
        effect = f"{told(_EFFECTS[one.effect])}{_difference(one, story)}"
        yield f"  {said('{place}: {said}', place=f'{one.site}, {one.label}', said=effect)}"
        if one.effect is Effect.CHANGES:
            yield f"    {' – '.join(map(str, one.before))}  →  {' – '.join(map(str, one.after))}"
        yield from (f"    {said('because: {change}', change=change_line(change))}" for change in one.because)
        if one.effect is Effect.BREAKS and one.plan.conflict is not None:
            yield from (f"    {line}" for line in story.conflict(one.plan.conflict))


def _difference(one: PositionEffect, story: Story) -> str:
    difference = one.difference_minor
    if not difference:
        return ""
    return f", {'+' if difference > 0 else '−'}{story.money(abs(difference), one.currency)}"


def effect_document(effects: Sequence[PositionEffect], story: Story) -> list[dict[str, object]]:
    """Return what becomes of every position for another program."""
    return [
        {
            "site": one.site,
            "position": one.label,
            "effect": one.effect.value,
            "before": [{"number": ref.number, "maker": ref.maker} for ref in one.before],
            "after": [{"number": ref.number, "maker": ref.maker} for ref in one.after],
            "currency": one.currency,
            "price_before_minor": one.price_before_minor,
            "price_after_minor": one.price_after_minor,
            "because": [change_document(change) for change in one.because],
            "conflict": [] if one.plan.conflict is None else list(story.conflict(one.plan.conflict)),
        }
        for one in effects
    ]


def health_lines(notes: Sequence[HealthNote], story: Story) -> Iterator[str]:
    """Yield the notes under the matter that each is about."""
    for matter, title in _MATTERS.items():
        mine = [note for note in notes if note.matter is matter]
        if mine:
            yield said("{place}: {said}", place=told(title), said=len(mine))
            yield from (f"  {_subject(note)}{_said(note, story)}" for note in mine)


def _subject(note: HealthNote) -> str:
    return f"{note.ref}  {note.name}" if note.ref is not None else f"{note.price_list}  {note.name}"


def _said(note: HealthNote, story: Story) -> str:
    texts = [
        *((said("lacks {columns}", columns=", ".join(note.columns)),) if note.columns else ()),
        *(said("{place}: {said}", place=f"{one.column} {one.value}", said=one.wanted) for one in note.faults),
        *map(story.port, note.ports),
        *(story.finding(finding).sentence for finding in note.findings),
        *((note.day.isoformat(),) if note.day else ()),
    ]
    return f"{story.writing.colon} {'; '.join(texts)}" if texts else ""


def health_document(notes: Sequence[HealthNote], story: Story) -> list[dict[str, object]]:
    """Return the notes for another program."""
    return [
        {
            "matter": note.matter.value,
            "number": None if note.ref is None else note.ref.number,
            "maker": note.name if note.ref is None else note.ref.maker,
            "lacking": list(note.columns),
            "faults": [{"column": fault.column, "value": fault.value, "wanted": fault.wanted} for fault in note.faults],
            "ports": [str(port) for port in note.ports],
            "reasons": [story.finding(finding).sentence for finding in note.findings],
            "rules": [str(finding.rule_id) for finding in note.findings],
            "currency": note.currency,
            "price_list": note.price_list,
            "ends_on": None if note.day is None else note.day.isoformat(),
        }
        for note in notes
    ]
