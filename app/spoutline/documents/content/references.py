"""Numbered references of one document: limit rows and other sources, in the order in which they are first named."""

from __future__ import annotations

from collections import defaultdict
from collections.abc import Iterable

from spoutline.explain.plan.story import Story
from spoutline.explain.writing.numbering import number_ranges
from spoutline.model.check import Bound
from spoutline.model.finding import Finding
from spoutline.model.limit import Limit, LimitId, LimitStatus
from spoutline.model.requirement import RequirementLine
from spoutline.rules.verdicts import limit_source

_LIMIT_SIGN = "L"
_SOURCE_SIGN = "S"


class References:
    """Gives limit rows the numbers L1, L2 and so on, other sources S1, S2 and so on.

    Content must be made in reading order for the numbers to count upwards.
    """

    def __init__(self, limits: Iterable[Limit], story: Story) -> None:
        self._story = story
        self._limits = {limit.id: limit for limit in limits}
        self._by_source: dict[str, list[Limit]] = defaultdict(list)
        for limit in self._limits.values():
            self._by_source[limit_source(limit)].append(limit)
        self._limit_numbers: dict[LimitId, int] = {}
        self._source_numbers: dict[str, int] = {}

    def of_asked(self, asked: RequirementLine | Finding) -> str:
        """Return the mark of a requirement line or finding: its limit rows, or its source where it used none."""
        rows = [limit_id for limit_id in asked.limit_ids if limit_id in self._limits]
        keys: list[LimitId | str] = [*rows] if rows else [self._key(asked.source)]
        return self._mark(keys)

    def of_bounds(self, bounds: Iterable[Bound | None]) -> str:
        """Return the mark of the limits of a check."""
        return self._mark([self._bound_key(bound) for bound in bounds if bound is not None])

    def of_text(self, source: str) -> str:
        """Return the mark of a source that stands as a text."""
        return self._mark([self._key(source)])

    def limits(self) -> tuple[tuple[str, Limit], ...]:
        """Return the limit rows that were referred to, each with its number."""
        return tuple((f"{_LIMIT_SIGN}{number}", self._limits[key]) for key, number in self._limit_numbers.items())

    def sources(self) -> tuple[tuple[str, str], ...]:
        """Return the sources that were referred to and are no limit row, each with its number."""
        told = ((f"{_SOURCE_SIGN}{number}", text) for text, number in self._source_numbers.items())
        return tuple((mark, self._story.cited(text)) for mark, text in told)

    def _mark(self, keys: Iterable[LimitId | str]) -> str:
        rows: set[int] = set()
        texts: set[int] = set()
        for key in keys:
            if isinstance(key, LimitId):
                rows.add(self._limit_numbers.setdefault(key, len(self._limit_numbers) + 1))
            elif key:
                texts.add(self._source_numbers.setdefault(key, len(self._source_numbers) + 1))
        told = [number_ranges(rows, _LIMIT_SIGN), number_ranges(texts, _SOURCE_SIGN)]
        return ", ".join(text for text in told if text)

    def _bound_key(self, bound: Bound) -> LimitId | str:
        same = [limit for limit in self._by_source.get(bound.source, ()) if limit.value == bound.value]
        return same[0].id if same else self._key(_as_told(bound))

    def _key(self, source: str) -> LimitId | str:
        """Return the limit row that a source text belongs to where there is just one, else the text."""
        rows = self._by_source.get(source, [])
        return rows[0].id if len(rows) == 1 else source


def _as_told(bound: Bound) -> str:
    """Return the source of a bound as rules tell it: with its status behind, unless the published text was read."""
    if bound.status is LimitStatus.VERIFIED or bound.status.value in bound.source:
        return bound.source
    return f"{bound.source} [{bound.status}]" if bound.source else f"[{bound.status}]"
