"""Every maker with a part in at least one set of a question."""

from __future__ import annotations

from collections.abc import Iterable

import numpy as np

from spoutline.frozen import frozen
from spoutline.model.part_columns import Mask
from spoutline.model.plan import HangingSet
from spoutline.model.requirement import Slot
from spoutline.planning.sets.assembly import ChainSearch
from spoutline.planning.sets.narrower import Hung, admits
from spoutline.planning.sets.pool import SlotParts
from spoutline.planning.sets.set_query import SetQuery
from spoutline.search.effort import Exhausted
from spoutline.search.listener import Listener


@frozen
class KnownMakers:
    """Makers, sorted, and chains that show each of them in a set; ``is_all`` says that there is no other."""

    names: tuple[str, ...]
    shown: tuple[Hung, ...]
    is_all: bool = True


def makers_of(
    search: ChainSearch,
    query: SetQuery,
    chosen: HangingSet,
    wider: KnownMakers | None = None,
    listener: Listener | None = None,
) -> KnownMakers:
    """Return every maker with a part in a set of ``query``; any set with a part of another tells of one more.

    Where that takes too much work, those that were found.

    Parameters
    ----------
    search, query
        Whose sets.
    chosen
        One of them.
    wider
        All makers of a question that admits every set of this one; None where they are not known.
    listener
        May stop the searches.

    Raises
    ------
    Cancelled
        If the listener asks to stop.
    """
    hung: Hung = tuple((link.slot, link.part.ref) for link in chosen.links)
    found, shown = _makers(hung), [hung]
    for other in wider.shown if wider else ():
        if not _makers(other) <= found and admits(search, query, other):
            found |= _makers(other)
            shown.append(other)

    def is_of_others(parts: SlotParts) -> Mask:
        wanted = parts.free & ~_by_any(parts, found)
        return wanted if wider is None else wanted & _by_any(parts, wider.names)

    for slot in (*search.requirement.chain, Slot.ADAPTOR, Slot.SPLITTER):
        if wider is not None and found.issuperset(wider.names):
            break
        try:
            while (path := search.any_path_with(query, slot, is_of_others, listener)) is not None:
                hung = tuple((parts.slot, parts.columns.ref_at(row)) for parts, row in search.paths.places_of(path))
                found |= _makers(hung)
                shown.append(hung)
        except Exhausted:
            return KnownMakers(tuple(sorted(found)), tuple(shown), is_all=False)
    return KnownMakers(tuple(sorted(found)), tuple(shown))


def _makers(hung: Hung) -> set[str]:
    return {ref.maker for _, ref in hung}


def _by_any(parts: SlotParts, makers: Iterable[str]) -> Mask:
    known = [parts.columns.by_maker(maker) for maker in sorted(makers)]
    return np.asarray(np.logical_or.reduce(known)) if known else np.zeros(len(parts.columns), np.bool_)
