"""Exact best-first walk over a problem of items: complete chains, cheapest first, within the limits."""

from __future__ import annotations

from collections.abc import Iterator

from spoutline.search.dominance import reduced
from spoutline.search.effort import Effort
from spoutline.search.graph import Path, Problem
from spoutline.search.listener import Listener
from spoutline.search.ways import Ways, walked


def best_first(problem: Problem, listener: Listener | None = None, most_labels: int | None = None) -> Iterator[Path]:
    """Yield every complete chain within the limits, cheapest first.

    Parameters
    ----------
    problem
        The chain to fill; the order of rows does not matter.
    listener
        Watches and may stop the walk.
    most_labels
        Labels that may be expanded; None for as many as the listener's work allows.

    Yields
    ------
    Path
        Equal costs come in the order of their keys along the chain, an empty layer before any key.

    Raises
    ------
    Cancelled
        If the listener asks to stop.
    Exhausted
        If more labels would have to be expanded.
    """
    found = walked(_ways_of(problem), Effort(listener or Listener(), most_labels), every=True)
    yield from (Path(cost, items) for cost, items in found)


def cheapest(
    problem: Problem, listener: Listener | None = None, most_labels: int | None = None, most_cost: int | None = None
) -> Path | None:
    """Return the first chain of ``best_first``; None where no chain exists, or none that costs ``most_cost`` at most.

    Chains that another dominates are not followed, so that a problem without a chain is known as such soon: its cost
    grows with the number of unlike sums of the binding loads, not with the number of chains. The items of the path
    carry the loads of those limits only that can bind.

    Parameters and errors are those of ``best_first``.
    """
    effort = Effort(listener or Listener(), most_labels)
    found = next(walked(_ways_of(reduced(problem)), effort, most_cost, every=False), None)
    return None if found is None else Path(*found)


def _ways_of(problem: Problem) -> Ways:
    layers = [
        (
            [
                (item.key, item.cost, item.entry, item.exit, item.loads, item.bears, item.demands, item)
                for item in layer.items
            ],
            layer.optional,
        )
        for layer in problem.layers
    ]
    return Ways(problem.start, layers, problem.mates, problem.limits, "", problem.start_bears)
