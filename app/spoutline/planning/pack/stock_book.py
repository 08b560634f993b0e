"""What entries of a stock add up to, what a job takes of it, what is short, and what to order."""

from __future__ import annotations

from collections.abc import Iterable, Mapping, Sequence
from dataclasses import dataclass

from spoutline.model.part_ref import PartRef
from spoutline.model.plan import SitePlan
from spoutline.model.stock_entry import (
    Movement,
    StockBalance,
    StockEntry,
    StockLevel,
    StockLine,
    StoredEntry,
    UncountedLine,
)
from spoutline.planning.pack.pick_list import pick_list

_Key = tuple[str, PartRef]


@dataclass(slots=True)
class _Sum:
    quantity: int = 0
    count: str = ""


def balances(entries: Iterable[StoredEntry], levels: Iterable[StockLevel]) -> tuple[StockBalance, ...]:
    """Return what the book knows of each part at each place, by place and part.

    Counted pieces of one count add up, so that several people can count at once; the first of another count begins
    anew. Later movements add to it and take from it. Undone entries do not count. A part that only has a level is
    there with none.

    Parameters
    ----------
    entries
        In the order in which they were added.
    levels
        The levels that hold, one for a part at a place.
    """
    sums: dict[_Key, _Sum] = {}
    for stored in entries:
        entry = stored.entry
        if stored.is_undone or entry.movement is Movement.UNDONE:
            continue
        found = sums.setdefault((entry.place, entry.part), _Sum())
        match entry.movement:
            case Movement.COUNTED:
                found.quantity = entry.quantity + (found.quantity if found.count == entry.count else 0)
                found.count = entry.count
            case Movement.TAKEN:
                found.quantity -= entry.quantity
            case _:
                found.quantity += entry.quantity
    held = {(level.place, level.part): level for level in levels}
    keys = sorted({*sums, *(key for key, level in held.items() if level.least)}, key=lambda key: (key[0], key[1]))
    return tuple(
        StockBalance(
            place=key[0],
            part=key[1],
            quantity=sums[key].quantity if key in sums else 0,
            count=sums[key].count if key in sums else "",
            level=held.get(key),
        )
        for key in keys
    )


def needed_by(site_plan: SitePlan) -> dict[PartRef, int]:
    """Return the pieces of each part that the job takes: those of its loading list."""
    return {line.part.ref: line.quantity for box in pick_list(site_plan) for line in box.lines}


def taken_for(entries: Iterable[StoredEntry], job: str) -> dict[PartRef, int]:
    """Return the pieces of each part that a job holds: taken for it at any place, less what came back from it."""
    held: dict[PartRef, int] = {}
    for stored in entries:
        entry = stored.entry
        if stored.is_undone or not job or entry.job != job:
            continue
        match entry.movement:
            case Movement.TAKEN:
                held[entry.part] = held.get(entry.part, 0) + entry.quantity
            case Movement.RETURNED:
                held[entry.part] = held.get(entry.part, 0) - entry.quantity
            case _:
                pass
    return {part: pieces for part, pieces in held.items() if pieces > 0}


def stock_lines(
    known: Sequence[StockBalance],
    needed: Mapping[PartRef, int],
    places: Sequence[str],
    taken: Mapping[PartRef, int] | None = None,
    *,
    again: bool = False,
) -> tuple[StockLine, ...]:
    """Return a line for each part at each of the places, held against what a job takes.

    Parameters
    ----------
    known
        What the book knows.
    needed
        Pieces of each part that a job takes; empty without a job.
    places
        At least one place; pieces are taken from the first that has any. What no place has is ordered for the first.
    taken
        What the job took already; only the rest is taken.
    again
        Take everything once more, whatever was taken.
    """
    by_key = {(one.place, one.part): one for one in known if one.place in places}
    before = taken or {}
    parts = sorted({*needed, *before, *(part for _, part in by_key)})
    lines: list[StockLine] = []
    for part in parts:
        wanted, had = needed.get(part, 0), before.get(part, 0)
        takes: dict[str, int] = {}
        left = wanted if again else max(0, wanted - had)
        for place in places:
            there = by_key.get((place, part))
            takes[place] = min(left, max(0, there.quantity)) if there is not None else 0
            left -= takes[place]
        for number, place in enumerate(places):
            there = by_key.get((place, part))
            short = left if number == 0 else 0
            lies_nowhere = not any((one, part) in by_key for one in places)
            if there is None and not short and not (number == 0 and had and lies_nowhere):
                continue
            there = there or StockBalance(place=place, part=part, quantity=0, count="")
            order = to_order(there, takes[place], short)
            lines.append(
                StockLine(balance=there, needed=wanted, takes=takes[place], short=short, order=order, taken=had)
            )
    return tuple(lines)


def uncounted(entries: Sequence[StoredEntry], place: str, count: str) -> tuple[UncountedLine, ...] | None:
    """Return the parts of a place that a count did not find and of which the book still knows some, by part.

    What came to the place, or left it, after the first entry of the count is told apart: it lay nowhere when the shelf
    was gone through. Return None where the count has no entry at the place.
    """
    mine = [one for one in entries if one.entry.place == place and not one.is_undone]
    begun = next((at for at, one in enumerate(mine) if one.entry.count == count and count), None)
    if begun is None:
        return None
    since: dict[PartRef, int] = {}
    found = {one.entry.part for one in mine[begun:] if one.entry.movement is Movement.COUNTED}
    for stored in mine[begun:]:
        entry = stored.entry
        sign = {Movement.RECEIVED: 1, Movement.RETURNED: 1, Movement.TAKEN: -1}.get(entry.movement, 0)
        since[entry.part] = since.get(entry.part, 0) + sign * entry.quantity
    lines = (
        UncountedLine(part=one.part, quantity=one.quantity, came=max(0, since.get(one.part, 0)))
        for one in balances(mine, ())
        if one.part not in found
    )
    return tuple(line for line in lines if line.quantity != line.came)


def closing(lines: Iterable[UncountedLine], place: str, count: str, done_by: str, note: str) -> list[StockEntry]:
    """Return the entries that close a count: nothing of what it did not find, but for what came since it began."""
    return [
        StockEntry(
            place=place,
            movement=Movement.COUNTED,
            part=line.part,
            quantity=line.came,
            count=count,
            done_by=done_by,
            note=note,
        )
        for line in lines
    ]


def to_order(there: StockBalance, takes: int = 0, short: int = 0) -> int:
    """Return how many pieces are to be ordered for a place so that it keeps its least when a job took its pieces.

    Whole lots are ordered, and only where less than the least is left. Source: common practice, no source.
    """
    level = there.level
    least, lot = (level.least, level.lot) if level is not None else (0, 1)
    lacking = short + max(0, least - (there.quantity - takes)) if least else short
    return -(-lacking // lot) * lot
