"""Cases that the model cannot tell apart, taken together: as many units of flow through one graph.

A flow of whole units parts into as many ways, so that like cases may still get different sets. What rows ask of each
way by itself, they ask of the units together then, which admits a little more; cases whose ways do not stand for that
reason are told apart from there on, and the model is solved again.
"""

from __future__ import annotations

from collections import defaultdict
from collections.abc import Callable, Sequence

from spoutline.planning.refit.case_graphs import CaseGraphs, Way
from spoutline.planning.refit.mixed_integer import Likes


class LikeCases:
    """All cases of a station by what tells them apart; ``forbid`` parts those that were taken together."""

    def __init__(self, cases: Sequence[CaseGraphs]) -> None:
        self._cases = tuple(cases)
        self._likeness = [_likeness(case) for case in cases]
        self._forbidden: list[frozenset[Way]] = [frozenset()] * len(cases)
        self._alone: set[int] = set()
        self._numbers: tuple[tuple[int, ...], ...] = ()

    def over(self, cases: Sequence[CaseGraphs]) -> LikeCases:
        """Return the same of other graphs of the same cases, in which all their ways are found again."""
        other = LikeCases(cases)
        other._alone = set(self._alone)
        other._forbidden = [
            frozenset(way.among(before, after) for way in ways)
            for ways, before, after in zip(self._forbidden, self._cases, cases, strict=True)
        ]
        return other

    def groups(self) -> tuple[Likes, ...]:
        """Return the cases as they are taken together now, in the order of the first of each group."""
        found: dict[object, list[int]] = defaultdict(list)
        for number, likeness in enumerate(self._likeness):
            key = number if number in self._alone else (likeness, self._forbidden[number])
            found[key].append(number)
        self._numbers = tuple(map(tuple, found.values()))
        return tuple(
            Likes(self._cases[numbers[0]], len(numbers), self._forbidden[numbers[0]]) for numbers in self._numbers
        )

    def shared_out(self, ways: Sequence[Sequence[Way]]) -> tuple[Way, ...]:
        """Return the way of each case from those of the groups, in the order of ``groups``."""
        found = {
            number: way
            for numbers, of_group in zip(self._numbers, ways, strict=True)
            for number, way in zip(numbers, of_group, strict=True)
        }
        return tuple(found[number] for number in range(len(self._cases)))

    def forbid(
        self,
        turned_down: Sequence[Way | None],
        stands: Callable[[int, Way], bool],
        keeps: Callable[[int, Way], bool] = lambda _number, _way: True,
    ) -> None:
        """Leave out the ways that do not stand, one or none of each case.

        What does not stand for one of like cases is looked at for the others as well: ``stands`` says whether a way
        does for a case. Cases are told apart where a way was left out before and yet was given, or where one does not
        keep by itself what rows ask, as ``keeps`` says: rows ask of them only what they ask together, and among near
        copies there would be no end of such ways.
        """
        for numbers in self._numbers:
            refused = {number: way for number in numbers if (way := turned_down[number]) is not None}
            if any(way in self._forbidden[number] or not keeps(number, way) for number, way in refused.items()):
                self._alone.update(numbers)
            for way in dict.fromkeys(refused.values()):
                for number in numbers:
                    if refused.get(number) == way or not stands(number, way):
                        self._forbidden[number] |= {way}


def _likeness(case: CaseGraphs) -> object:
    """Return everything that the model knows of a case."""
    arcs = tuple(
        tuple(
            (arc.layer, arc.before, arc.after, arc.regrets)
            + (() if arc.item is None else (arc.item.key, arc.item.bears, arc.item.demands))
            for arc in graph.arcs
        )
        for graph in case.graphs
    )
    return case.positions, case.most_regrets, case.installed, case.limits, case.states, arcs
