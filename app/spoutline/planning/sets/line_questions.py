"""Whether any set keeps a group of requirement lines, asked of the search as seldom as can be.

A set found keeps more lines than it was asked for, and what proves that there is no set mostly does so without some of
the lines: both answer further questions.
"""

from __future__ import annotations

from dataclasses import replace
from functools import cached_property

import numpy as np

from spoutline.frozen import frozen
from spoutline.model.part_columns import Floats, Mask
from spoutline.model.plan import HangingSet
from spoutline.model.requirement import RequirementId
from spoutline.planning.sets.assembly import ChainSearch
from spoutline.planning.sets.line_order import CHANGEABLE, GIVEN
from spoutline.planning.sets.loads import Load, SetLimit
from spoutline.planning.sets.pool import Lines, bits_of
from spoutline.planning.sets.port_reach import PortReach
from spoutline.planning.sets.set_query import SetQuery
from spoutline.search.bounds import within
from spoutline.search.columns import Columns
from spoutline.search.graph import Path
from spoutline.search.listener import Listener
from spoutline.search.passes import Passes
from spoutline.search.proof import Proof, proof_of_none

_Group = frozenset[RequirementId]
_GIVEN = frozenset(GIVEN)
_KEPT_BY_SEARCH = (RequirementId.JOINTS, RequirementId.DRIVE_OFF)  # no mask of a part or sum tells whether a set does


@frozen
class _Items:
    """All items that given lines allow, for nozzles of one design flow, with the lines that each breaks, as bits."""

    columns: Columns
    passes: Passes
    breaks: Lines

    def only(self, mask: Mask) -> _Items:
        columns = self.columns.only(mask)
        return _Items(columns, Passes(columns), self.breaks[mask])

    def within(self, limits: Floats) -> _Items:
        return replace(self, columns=self.columns.with_limits(tuple(limits.tolist())))

    @property
    def all_of_them(self) -> Mask:
        return np.ones((len(self.columns), 1), np.bool_)

    def allowed(self, lines: _Group) -> Mask:
        return np.asarray(self.breaks & bits_of(lines) == 0)


class LineQuestions:
    """Answers whether there is a set for some lines, and remembers what its answers tell of others.

    With ``reach`` ports are looked at before anything is made for the given lines, which tells soon where these are to
    blame.
    """

    def __init__(
        self,
        search: ChainSearch,
        limits: tuple[SetLimit, ...],
        listener: Listener | None = None,
        reach: PortReach | None = None,
    ) -> None:
        self._search, self._limits, self._listener = search, limits, listener
        self._looks_at_ports_first = reach is not None
        self._reach = reach or PortReach(search.requirement, search.pool)
        self._kept: list[_Group] = []  # the lines that a set known keeps
        self._unmet: list[_Group] = []
        self._proofs: list[tuple[Proof, ...]] = []  # one for each of ``_items``
        self._best: dict[_Group, HangingSet | None] = {}

    def query(self, lines: _Group) -> SetQuery:
        """Return the question for lines, which shares its items with others."""
        return SetQuery(lines, self._limits, common=_GIVEN if lines >= _GIVEN else None)

    def limit_of(self, line: RequirementId) -> SetLimit | None:
        """Return the first limit of a sum that a line sets; None for one without."""
        limits = (limit for limit in self._limits if limit.requirement is line and limit.load is not Load.PINNED)
        return next(limits, None)

    def has_set(self, lines: _Group) -> bool:
        """Say whether some set keeps these lines.

        Raises
        ------
        Cancelled
            If the listener asks to stop.
        """
        known = self._known(lines)
        return self._asked(lines) if known is None else known

    def best(self, lines: _Group) -> HangingSet | None:
        """Return the cheapest set that keeps these lines; None where there is none."""
        if lines not in self._best:
            is_unmet = any(one <= lines for one in self._unmet)
            self._best[lines] = None if is_unmet else self._search.cheapest(self.query(lines), self._listener)
        return self._best[lines]

    def look_ahead(self, lines: _Group, changeable: tuple[RequirementId, ...]) -> None:
        """Look for the one conflict among ``changeable`` lines where there is only one, which answers all questions.

        Whatever is in the way of all lines: what it cannot do without is a conflict if each of its lines, given up
        alone, frees a set. Then it is asked for no more than these sets. ``lines`` are all of which some are asked.
        """
        proofs = self._proved(lines)
        if proofs is None:
            return
        self._proofs.append(proofs)
        self._unmet.append(lines)
        needed = frozenset(self._needed(proofs, lines, changeable)).intersection(changeable)
        if needed and all(self.has_set(lines - {line}) for line in changeable if line in needed):
            self._is_proved(needed | (lines - frozenset(changeable)))

    def _known(self, lines: _Group) -> bool | None:
        if any(lines <= kept for kept in self._kept):
            return True
        if any(one <= lines for one in self._unmet):
            return False
        is_whole = lines >= _GIVEN
        if (self._looks_at_ports_first or not is_whole) and self._reach.first_gap(lines) is not None:
            self._unmet.append(lines)
            return False
        return False if is_whole and self._is_proved(lines) else None

    def _asked(self, lines: _Group) -> bool:
        given_up = [line for line in CHANGEABLE if line not in lines]
        limit = self.limit_of(given_up[0]) if len(given_up) == 1 else None
        path = self._search.any_path(self.query(lines), self._listener, None if limit is None else limit.load)
        if path is None:
            self._unmet.append(lines)
        else:
            self._kept.append(self._kept_by(path, lines))
        return path is not None

    def _kept_by(self, path: Path, lines: _Group) -> _Group:
        """Return the lines that a set keeps which was found for some of them."""
        broken = set(_KEPT_BY_SEARCH) - lines
        for parts, row in self._search.paths.places_of(path):
            broken |= parts.lines_of(row)
        sums = self._search.paths.sums_of(path)
        for limit in self._limits:
            if not within(float(sums[limit.load]), limit.limit):
                broken.add(limit.requirement)
        return frozenset(RequirementId) - broken | lines

    # proofs

    @cached_property
    def _items(self) -> tuple[_Items, ...] | None:
        """The items that the given lines allow, as columns; None where there are none that sums could be made of."""
        made = []
        for one, finder in self._search.finders_of(self.query(frozenset(RequirementId))):
            columns = finder.columns()
            if columns is None:
                return None
            too_strong = columns.demands > self._search.requirement.outlet_pull_strength_n
            breaks = one.breaks[columns.row] | np.where(too_strong, bits_of((RequirementId.DRIVE_OFF,)), np.uint64(0))
            made.append(_Items(columns, Passes(columns), breaks))
        return tuple(made)

    def _proved(self, lines: _Group) -> tuple[Proof, ...] | None:
        """Return why there is no set for the nozzles of each design flow; None where that is not to be had soon.

        One reason for all is better than one for each, which needs more lines.
        """
        kept = [limit.load for limit in self._limits if limit.requirement in lines]
        proofs, every = list[Proof](), list[_Items]()
        for items in self._items or ():
            limits = np.full(len(items.columns.limits), np.inf)
            limits[kept] = items.columns.limits[kept]
            allowed = items.only(items.allowed(lines)).within(limits)
            proof = proof_of_none(allowed.columns, allowed.passes)
            if proof is None:
                return None
            proofs.append(proof)
            every.append(allowed)
        for proof in proofs if len(proofs) > 1 else ():
            if all(proof.holds(one.columns, one.passes, one.all_of_them)[0] for one in every):
                return (proof,) * len(proofs)
        return tuple(proofs) or None

    def _needed(
        self, proofs: tuple[Proof, ...], lines: _Group, changeable: tuple[RequirementId, ...]
    ) -> set[RequirementId]:
        """Return the lines without which one of the proofs does not hold."""
        needed: set[RequirementId] = set()
        for items, proof in zip(self._items or (), proofs, strict=True):
            needed |= self._priced(proof) & lines
            breaks = items.breaks & bits_of(lines)
            near = items.only(np.asarray(breaks & (breaks - (breaks > 0)) == 0))  # break one line at most
            breaks = near.breaks & bits_of(lines)
            asked = [line for line in changeable if line not in needed and np.any(breaks == bits_of((line,)))]
            if asked:
                masks = np.column_stack([(breaks == 0) | (breaks == bits_of((line,))) for line in asked])
                holds = proof.holds(near.columns, near.passes, masks)
                needed |= {line for line, still in zip(asked, holds.tolist(), strict=True) if not still}
        return needed

    def _priced(self, proof: Proof) -> _Group:
        """Return the lines whose limits a proof needs."""
        return frozenset(limit.requirement for limit in self._limits if proof.prices[limit.load] > 0.0)

    def _is_proved(self, lines: _Group) -> bool:
        """Say whether a proof known shows that no set keeps these lines."""
        for proofs in self._proofs:
            if all(
                self._priced(proof) <= lines
                and proof.holds(items.columns, items.passes, items.allowed(lines)[:, None])[0]
                for items, proof in zip(self._items or (), proofs, strict=True)
            ):
                self._unmet.append(lines)
                return True
        return False
