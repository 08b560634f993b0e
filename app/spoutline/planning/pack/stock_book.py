"""What entries of a stock add up to, what a job takes of it, what is short, and what to order."""

from __future__ import annotations

from collections.abc import Iterable, Mapping, Sequence
from dataclasses import dataclass

from spoutline.model.part_ref import PartRef
from spoutline.model.plan import SitePlan
from spoutline.model.stock_entry import Movement, StockBalance, StockLevel, StockLine, StoredEntry
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


def stock_lines(
    known: Sequence[StockBalance], needed: Mapping[PartRef, int], places: Sequence[str]
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
    """
    by_key = {(one.place, one.part): one for one in known if one.place in places}
    parts = sorted({*needed, *(part for _, part in by_key)})
    lines: list[StockLine] = []
    for part in parts:
        wanted = needed.get(part, 0)
        takes: dict[str, int] = {}
        left = wanted
        for place in places:
            there = by_key.get((place, part))
            takes[place] = min(left, max(0, there.quantity)) if there is not None else 0
            left -= takes[place]
        for number, place in enumerate(places):
            there = by_key.get((place, part))
            short = left if number == 0 else 0
            if there is None and not short:
                continue
            there = there or StockBalance(place=place, part=part, quantity=0, count="")
            order = to_order(there, takes[place], short)
            lines.append(StockLine(balance=there, needed=wanted, takes=takes[place], short=short, order=order))
    return tuple(lines)


def to_order(there: StockBalance, takes: int = 0, short: int = 0) -> int:
    """Return how many pieces are to be ordered for a place so that it keeps its least when a job took its pieces.

    Whole lots are ordered, and only where less than the least is left. Source: common practice, no source.
    """
    level = there.level
    least, lot = (level.least, level.lot) if level is not None else (0, 1)
    lacking = short + max(0, least - (there.quantity - takes)) if least else short
    return -(-lacking // lot) * lot
