"""Worked lines of many calculations put together to stages: formulas that always follow each other, told once."""

from __future__ import annotations

from collections import defaultdict
from collections.abc import Callable, Iterable, Iterator, Sequence
from itertools import pairwise

from spoutline.model.check import WorkedLine
from spoutline.model.quantity import Quantity

Stage = tuple[str, ...]  # the formulas of a stage, in their order
Run = tuple[WorkedLine, ...]  # one passing through a stage: a line for each formula

_MOST_SIGNS = 92.0  # of the figures of one line that a sheet has room for
_BETWEEN = 1.8  # signs; what is left between two figures
_START = ""  # stands before the first and after the last formula of a calculation


class Stages:
    """Divides calculations into runs, so that as many as possible pass through the same stages.

    Two formulas belong to one stage where each is the other's only neighbour in every calculation, where no symbol
    means two figures in them, and where a sheet has room for their figures in one line. ``shown`` is a figure as it
    will be read; one that is the same in all runs of a stage takes no room.
    """

    def __init__(self, calculations: Iterable[Sequence[WorkedLine]], shown: Callable[[Quantity], str]) -> None:
        told = [tuple(lines) for lines in calculations]
        self._joined = set(_only_neighbours(told))
        for lines in told:
            for run in self._parted(lines):
                for at, line in enumerate(run[1:], start=1):
                    if not _agree(run[:at], line):
                        self._joined.discard((run[at - 1].formula, line.formula))
        first: dict[Stage, Run] = {}
        figures: dict[Stage, dict[str, set[Quantity]]] = defaultdict(lambda: defaultdict(set))
        for lines in told:
            for run in self._parted(lines):
                for name, figure in figures_of(run).items():
                    figures[stage_of(run)][name].add(figure)
                first.setdefault(stage_of(run), run)
        self._ends = {
            stage: tuple(_ends(first[stage], {name: _signs(found, shown) for name, found in by_name.items()}))
            for stage, by_name in figures.items()
        }

    def runs(self, lines: Sequence[WorkedLine]) -> Iterator[Run]:
        """Yield the runs of a calculation in its order."""
        for run in self._parted(lines):
            start = 0
            for end in self._ends[stage_of(run)]:
                yield run[start:end]
                start = end

    def _parted(self, lines: Sequence[WorkedLine]) -> Iterator[Run]:
        start = 0
        for at, (before, after) in enumerate(pairwise(lines), start=1):
            if (before.formula, after.formula) not in self._joined:
                yield tuple(lines[start:at])
                start = at
        if lines:
            yield tuple(lines[start:])


def stage_of(run: Run) -> Stage:
    """Return the formulas that a run passes through."""
    return tuple(line.formula for line in run)


def figures_of(run: Run) -> dict[str, Quantity]:
    """Return the figures of a run by their symbol, in the order in which they are met."""
    return {figure.name: figure for line in run for figure in (*line.inputs, line.result)}


def _only_neighbours(calculations: Iterable[Run]) -> Iterator[tuple[str, str]]:
    before: dict[str, set[str]] = defaultdict(set)
    after: dict[str, set[str]] = defaultdict(set)
    for lines in calculations:
        for first, second in pairwise((_START, *(line.formula for line in lines), _START)):
            after[first].add(second)
            before[second].add(first)
    for first, following in after.items():
        for second in following:
            if _START not in (first, second) and len(following) == len(before[second]) == 1:
                yield first, second


def _agree(run: Run, line: WorkedLine) -> bool:
    """Say whether no symbol of ``line`` means another figure in ``run``."""
    known = figures_of(run)
    return all(known.get(figure.name, figure) == figure for figure in (*line.inputs, line.result))


def _signs(figures: set[Quantity], shown: Callable[[Quantity], str]) -> float:
    """Return the room that the figures of a symbol take in a line; none where they are one and the same."""
    return max(len(shown(figure)) for figure in figures) + _BETWEEN if len(figures) > 1 else 0.0


def _ends(run: Run, signs: dict[str, float]) -> Iterator[int]:
    """Yield after which lines a stage is parted, so that the figures of every part have room; the last is its end."""
    start = 0
    for end in range(1, len(run) + 1):
        if end - start > 1 and sum(signs[name] for name in figures_of(run[start:end])) > _MOST_SIGNS:
            yield end - 1
            start = end - 1
    yield len(run)
