"""The cheapest chain of a problem in columns, and all chains in order: fewest majors first, each number a problem."""

from __future__ import annotations

import math
from collections.abc import Callable, Iterator
from dataclasses import replace

import numpy as np

from spoutline.frozen import frozen
from spoutline.search.chain import Chain, Named
from spoutline.search.columns import Columns
from spoutline.search.effort import Effort, Exhausted
from spoutline.search.enumeration import ChainTest
from spoutline.search.ground import Ground
from spoutline.search.level_order import LevelOrder
from spoutline.search.level_search import LevelSearch
from spoutline.search.listener import Listener
from spoutline.search.multipliers import priced
from spoutline.search.passes import Passes
from spoutline.search.stand_ins import any_by_labels, without_outdone

_LABELS_OF_ALL = 200_000  # with which it is asked whether there is a chain of any number of majors


@frozen
class Answer:
    """The best chain found, and a cost that no chain goes below.

    ``is_proved`` says that no chain comes before it, or that there is none. It is False only where the work that the
    search may do was used up; ``floor_major`` and ``floor_cost`` then say how good any chain could still be.
    """

    chain: Chain | None
    is_proved: bool
    floor_major: int
    floor_cost: float

    @property
    def is_bounded(self) -> bool:
        """Whether a cost is known that no chain goes below."""
        return math.isfinite(self.floor_cost)


def best_chain(
    columns: Columns,
    names: Named,
    listener: Listener | None = None,
    most_labels: int | None = None,
    *,
    most: tuple[int, int] | None = None,
    fewest: int = 0,
    any_of_equals: bool = False,
    lowest: Callable[[], Ground] | None = None,
) -> Answer:
    """Return the first of all chains within the limits: fewest majors, then least cost, then by the items' names.

    Parameters
    ----------
    columns
        The chain to fill; ``is_exact`` must hold.
    names
        Names of the items as ``Columns.row`` counts them. Names are compared layer by layer from the start, an empty
        layer before any item.
    listener
        Told of the labels looked at; may stop the search.
    most_labels
        Labels that may be looked at; None for as many as the listener's work allows.
    most
        Majors and cost that a chain may have: of so many majors, chains that cost more do not count, nor do any of
        more. None for all.
    fewest
        Majors; it is known that no chain has fewer.
    any_of_equals
        Whether any of the chains of fewest majors and least cost will do, whatever its names.
    lowest
        Returns what is known of the items ``without_majors``; None where it is worked out here.

    Raises
    ------
    Cancelled
        If the listener asks to stop.
    """
    effort = Effort(listener or Listener(), most_labels)
    for major, level in _levels(columns, fewest, None if most is None else most[0], lowest=lowest):
        most_cost = most[1] if most is not None and major == most[0] else None
        search = LevelSearch(level, names, effort, most_cost=most_cost, any_of_equals=any_of_equals)
        try:
            chain = search.first()
        except Exhausted:
            best = search.best_so_far()
            chain = best and replace(best, major=major)
            return Answer(chain, is_proved=False, floor_major=major, floor_cost=search.floor)
        if chain is not None:
            return Answer(replace(chain, major=major), is_proved=True, floor_major=major, floor_cost=chain.cost)
        if search.met_many_labels and _is_empty(columns, effort):
            break  # as would be found once more at each number of majors
    return Answer(None, is_proved=True, floor_major=0, floor_cost=math.inf)


def any_chain(columns: Columns, names: Named, listener: Listener | None = None) -> Chain | None:
    """Return any chain within the limits, whatever it costs; None for none. Mostly much quicker than ``best_chain``.

    Its majors are not counted.

    Parameters as of ``best_chain``.

    Raises
    ------
    Cancelled
        If the listener asks to stop.
    Exhausted
        If none was found and it would take more work to say that there is none.
    """
    if np.isneginf(columns.limits).any():
        return None
    return LevelSearch(Ground.of(columns), names, Effort(listener or Listener()), any_will_do=True).any()


def chains_in_order(
    columns: Columns,
    names: Named,
    listener: Listener | None = None,
    test: ChainTest | None = None,
    most_labels: int | None = None,
    *,
    least: tuple[int, int] | None = None,
    lowest: Callable[[], Ground] | None = None,
) -> Iterator[Chain]:
    """Yield every chain within the limits in the order of ``best_chain``.

    Parameters
    ----------
    columns, names, listener, lowest
        As of ``best_chain``.
    test
        Says which chains count, by what no sum of loads tells; None for all.
    most_labels
        Labels that may be looked at; None for as many as the listener's work allows.
    least
        Majors and cost that no chain is known to go below; None where nothing is known.

    Raises
    ------
    Cancelled
        If the listener asks to stop.
    Exhausted
        If more labels would have to be looked at.
    """
    effort = Effort(listener or Listener(), most_labels)
    for major, level in _levels(columns, 0 if least is None else least[0], exactly=True, lowest=lowest):
        least_cost = least[1] if least is not None and major == least[0] else None
        for chain in LevelOrder(level, names, effort, test, least_cost=least_cost).in_order():
            yield replace(chain, major=major)


def without_majors(columns: Columns) -> Columns:
    """Return the items that cost no major: what is looked at first."""
    return columns.only(columns.major == 0)


def _is_empty(columns: Columns, effort: Effort) -> bool:
    """Say whether it is soon known that no chain keeps the limits, whatever it costs."""
    few = effort.portion(_LABELS_OF_ALL)
    try:
        return any_by_labels(without_outdone(columns.at_no_cost().trimmed(), few), few) is None
    except Exhausted:
        return False
    finally:
        effort.go_on_from(few)


def _levels(
    columns: Columns,
    fewest: int = 0,
    most: int | None = None,
    *,
    exactly: bool = False,
    lowest: Callable[[], Ground] | None = None,
) -> Iterator[tuple[int, Ground]]:
    """Yield the problems with no major, with at most one, and so on; with ``exactly`` no chain is in two of them.

    No chain has less than ``fewest`` majors; of those with more than ``most`` none is asked for.
    """
    if np.isneginf(columns.limits).any():
        return
    if fewest <= 0 and (most is None or most >= 0):
        yield 0, Ground.of(without_majors(columns)) if lowest is None else lowest()
    if not columns.major.any():
        return
    low, high = max(1, fewest), most
    if high is None or low < high:  # else there is one level, which tells as soon by itself
        counted = replace(columns, cost=columns.major).trimmed()
        bound = priced(counted, Passes(counted)).bound
        if bound == np.inf:
            return
        low = max(low, math.ceil(bound - 1e-6))
        high = counted.most_cost() if high is None else min(high, counted.most_cost())
    for level in range(low, high + 1):
        at_most = columns.only(columns.major <= level)
        limited = at_most.with_load(at_most.major, level)
        yield level, Ground.of(limited.with_load(-at_most.major, -level) if exactly else limited)
