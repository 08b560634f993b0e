"""The marks by which a bill refers to groups of like positions (G1, G2 …) and to calculations (B1, B2 …).

A long list of groups, as a bill with many of them has in many places, has a mark too (C1, C2 …): it is told once.
"""

from __future__ import annotations

import re
from collections.abc import Iterable, Iterator, Sequence
from dataclasses import field

from spoutline.documents.content.blocks import Link
from spoutline.documents.content.grouping import LikePositions
from spoutline.explain.writing.numbering import number_ranges
from spoutline.frozen import frozen
from spoutline.model.check import CheckId

_GROUP_SIGN = "G"
_CALCULATION_SIGN = "B"  # of annex B
_GROUP = re.compile(rf"(?:{_GROUP_SIGN}|(?<=–))(\d+)")  # alone, or the end of a range
_LIST_SIGN = "C"
_LONGEST_LIST = 40  # signs of the marks of groups that stand where they are needed; more are a list with a mark
_TOLD_BY_GROUP = 2  # groups whose calculations are read one after the other without repeating much


@frozen
class GroupList:
    """A long list of groups: its mark and anchor, and the marks of the groups with the links to their sections."""

    mark: str
    anchor: str
    text: str
    links: tuple[Link, ...]


@frozen
class AnnexMarks:
    """Marks and anchors of ``groups``, counted from 0, and of the ``calculations`` that annex B tells.

    The long lists of groups get their marks in the order in which they are first named.
    """

    groups: tuple[LikePositions, ...]
    calculations: tuple[CheckId, ...]
    _lists: dict[str, GroupList] = field(default_factory=dict, compare=False)

    @property
    def lists(self) -> tuple[GroupList, ...]:
        """The long lists that were named so far."""
        return tuple(self._lists.values())

    def group(self, number: int) -> str:
        """Return the mark of a group."""
        return f"{_GROUP_SIGN}{number + 1}"

    def group_anchor(self, number: int) -> str:
        """Return the anchor of the section of a group."""
        return _group_anchor(number + 1)

    def groups_told(self, numbers: Iterable[int]) -> tuple[str, tuple[Link, ...]]:
        """Return the marks of groups as one text, ranges drawn together, and the links to their sections.

        More than a line holds are one mark, which leads to their list.
        """
        text = number_ranges((number + 1 for number in numbers), _GROUP_SIGN)
        if len(text) <= _LONGEST_LIST:
            return text, tuple(_group_links(text))
        if text not in self._lists:
            counted = len(self._lists) + 1
            links = tuple(_group_links(text))
            self._lists[text] = GroupList(f"{_LIST_SIGN}{counted}", f"groups{counted}", text, links)
        named = self._lists[text]
        return named.mark, (Link(0, len(named.mark), named.anchor),)

    def calculation(self, check_id: CheckId) -> str:
        """Return the mark of a calculation; empty where the annex does not tell it."""
        if check_id not in self.calculations:
            return ""
        return f"{_CALCULATION_SIGN}{self.calculations.index(check_id) + 1}"

    def calculation_anchor(self, check_id: CheckId) -> str:
        """Return the anchor of a calculation that the annex tells."""
        return f"calculation{self.calculations.index(check_id) + 1}"


@frozen
class GroupMark:
    """The mark of one group, as its own section carries it."""

    marks: AnnexMarks
    number: int

    @property
    def text(self) -> str:
        """The mark."""
        return self.marks.group(self.number)

    @property
    def anchor(self) -> str:
        """The anchor of the section."""
        return self.marks.group_anchor(self.number)


def annex_marks(groups: Sequence[LikePositions]) -> AnnexMarks | None:
    """Return the marks of a bill whose annex B tells every calculation once for all groups; None for a short one.

    Up to two groups with a set are told one after the other, each line with its figures, and need no marks.
    """
    chosen = [like.plan.chosen for like in groups if like.plan.chosen is not None]
    worked = {check.id for judged in chosen for check in judged.checks if check.lines}
    if len(chosen) <= _TOLD_BY_GROUP or not worked:
        return None
    return AnnexMarks(tuple(groups), tuple(check_id for check_id in CheckId if check_id in worked))


def _group_links(text: str) -> Iterator[Link]:
    for found in _GROUP.finditer(text):
        yield Link(found.start(), found.end(), _group_anchor(int(found[1])))


def _group_anchor(counted: int) -> str:
    return f"group{counted}"
