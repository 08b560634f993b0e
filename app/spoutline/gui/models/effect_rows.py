"""Rows and columns of what an edition does: parts that differ between two editions, and sets of stations."""

from __future__ import annotations

from collections import Counter
from collections.abc import Iterable, Iterator, Sequence

from spoutline.bootstrap.catalogues import SurveyEffect
from spoutline.catalogue.changes import changed_fields
from spoutline.catalogue.shelf_lookup import EntryChange
from spoutline.explain.plan.story import Story
from spoutline.frozen import frozen
from spoutline.gui.models.record_table import Column
from spoutline.gui.roles import Tone
from spoutline.gui.wording import tr
from spoutline.planning.keeping.effect import Effect, PositionEffect


@frozen
class EffectRow:
    """What becomes of one position, or why a survey cannot be planned where ``position`` is None."""

    site: str
    position: PositionEffect | None
    fault: str = ""


_TONES = {
    Effect.BREAKS: Tone.BAD,
    Effect.COMES_ABOUT: Tone.GOOD,
    Effect.CHANGES: Tone.CAUTION,
    Effect.CHEAPER: Tone.GOOD,
    Effect.DEARER: Tone.CAUTION,
}
_ORDER = tuple(Effect)


def effect_words(effect: Effect) -> str:
    """Return what becomes of a set."""
    words = {
        Effect.BREAKS: tr("loses its set"),
        Effect.COMES_ABOUT: tr("gets a set"),
        Effect.CHANGES: tr("gets other parts"),
        Effect.CHEAPER: tr("costs less"),
        Effect.DEARER: tr("costs more"),
        Effect.SAME: tr("as before"),
    }
    return words[effect]


def effect_rows(found: SurveyEffect, site: str) -> Iterator[EffectRow]:
    """Yield a row for each position of a survey, or the one that says why there is none."""
    if found.fault:
        yield EffectRow(site, None, found.fault)
    yield from (EffectRow(one.site, one) for one in found.positions)


def differing(rows: Iterable[EffectRow]) -> list[EffectRow]:
    """Return the rows that are not as before: surveys that cannot be planned and lost sets first."""
    told = [row for row in rows if row.position is None or row.position.effect is not Effect.SAME]
    return sorted(told, key=_place)


def _place(row: EffectRow) -> int:
    return -1 if row.position is None else _ORDER.index(row.position.effect)


def summary(rows: Sequence[EffectRow]) -> str:
    """Return how many positions come to what."""
    counts = Counter(row.position.effect for row in rows if row.position is not None)
    told = ", ".join(f"{effect_words(effect)}: {counts[effect]}" for effect in Effect if counts[effect])
    words = tr("{count} positions: {told}.").format(count=counts.total(), told=told) if counts else ""
    failed = sum(row.position is None for row in rows)
    return " ".join(
        filter(None, (words, tr("{0} surveys cannot be planned with both.").format(failed) if failed else ""))
    )


def effect_columns(story: Story) -> tuple[Column[EffectRow], ...]:
    """Return the columns of what becomes of positions."""

    def what(row: EffectRow) -> str:
        return tr("cannot be planned") if row.position is None else effect_words(row.position.effect)

    def tone(row: EffectRow) -> Tone | None:
        return Tone.QUESTION if row.position is None else _TONES.get(row.position.effect)

    def why(row: EffectRow) -> str:
        return row.fault if row.position is None else "; ".join(map(change_words, row.position.because))

    return (
        Column(title=tr("Effect"), text=what, sort=_place, tone=tone),
        Column(title=tr("Site"), text=lambda row: row.site, hint=lambda row: row.site),
        Column(title=tr("Position"), text=lambda row: row.position.label if row.position else ""),
        Column(
            title=tr("Difference"),
            text=lambda row: difference_words(row.position, story),
            sort=lambda row: (row.position.difference_minor if row.position else None) or 0,
            is_number=True,
        ),
        Column(title=tr("Because"), text=why, hint=why),
    )


def difference_words(effect: PositionEffect | None, story: Story) -> str:
    """Return by how much a set is cheaper or dearer; empty where it is neither, or one of the sets has no price."""
    difference = None if effect is None else effect.difference_minor
    if effect is None or not difference:
        return ""
    return f"{'+' if difference > 0 else '−'}{story.money(abs(difference), effect.currency)}"


def effect_lines(row: EffectRow, story: Story) -> Iterator[str]:
    """Yield all that is known of one row: both sets, the entries that made the difference, the conflict."""
    effect = row.position
    if effect is None:
        yield row.fault
        return
    for words, refs, price in (
        (tr("Before: {0}"), effect.before, effect.price_before_minor),
        (tr("After: {0}"), effect.after, effect.price_after_minor),
    ):
        told = " – ".join(map(str, refs)) or tr("no set")
        yield words.format(told if price is None else f"{told}  ({story.money(price, effect.currency)})")
    yield from (tr("Because: {0}").format(change_words(change)) for change in effect.because)
    if effect.effect is Effect.BREAKS and effect.plan.conflict is not None:
        yield from story.conflict(effect.plan.conflict)


def change_words(change: EntryChange) -> str:
    """Return what became of an entry in one line."""
    if change.before is None:
        return tr("{0} is new").format(change.ref)
    if change.after is None:
        return tr("{0} is gone").format(change.ref)
    return f"{change.ref}: {_fields(change)}"


def _fields(change: EntryChange) -> str:
    return "; ".join(f"{one.field}: {one.before or '–'} → {one.after or '–'}" for one in changed_fields(change))


def difference_columns() -> tuple[Column[EntryChange], ...]:
    """Return the columns of the parts that differ between two editions."""

    def what(change: EntryChange) -> str:
        return tr("new") if change.before is None else tr("gone") if change.after is None else tr("changed")

    def name(change: EntryChange) -> str:
        entry = change.after or change.before
        return "" if entry is None else entry.name

    return (
        Column(title=tr("Part"), text=lambda change: f"{change.ref.number}  {change.ref.maker}"),
        Column(title=tr("Name"), text=name, hint=name),
        Column(title=tr("What happens"), text=what, tone=lambda change: None if change.after else Tone.CAUTION),
        Column(title=tr("Before → after"), text=_fields, hint=_fields),
    )
