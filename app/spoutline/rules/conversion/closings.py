"""Which vapour openings a decommissioning closes, and how many."""

from __future__ import annotations

from collections.abc import Iterable, Iterator, Set
from dataclasses import replace

from spoutline.model.conversion_answers import ConversionAnswers
from spoutline.model.limit import LimitStatus
from spoutline.model.plan import HangingSet
from spoutline.model.port import FlowPath
from spoutline.model.position_conversion import (
    Closing,
    ClosingPlan,
    LiveReason,
    PositionConversion,
    StaysLive,
    VapourOpening,
)
from spoutline.model.requirement import Slot
from spoutline.model.survey import VapourStatus

_Source = tuple[str, LimitStatus]

_EVERY_PATH: _Source = (
    "Connecticut, CGS 22a-174e: every path above and below ground that could release vapour or liquid",
    LimitStatus.VERIFIED,
)
_RETURN_LINE: _Source = ("Wisconsin, Wis. Stat. 285.31(6): plug in the return line", LimitStatus.VERIFIED)
_RISER: _Source = (
    "Connecticut definition; Georgia EPD slides: riser closed below the dispenser",
    LimitStatus.SECONDARY,
)
_TRAP: _Source = ("Georgia EPD slides: traps emptied and closed", LimitStatus.SECONDARY)
_TANK: _Source = ("Georgia page: close at the tank if reachable, no need to break ground", LimitStatus.SECONDARY)
_IN_USE: _Source = ("common practice, no source: a vapor path in use is not closed", LimitStatus.COMMON_PRACTICE)
_OF_SITE_UNIT = (VapourOpening.CENTRAL_UNIT,)
_USUAL: _Source = ("usual layout of a vacuum pump in a dispenser; measure on site", LimitStatus.MEMORY)


def closing_plan(positions: Iterable[PositionConversion], answers: ConversionAnswers) -> ClosingPlan:
    """Return what is closed at each position, per dispenser and once for the site, and what stays live.

    A path is closed where every hose that it serves loses recovery by this work. What also serves a hose that keeps
    recovery, gets it, or cannot be converted as asked, stays live.

    Parameters: ``positions``, converted; ``answers`` of the owner. Source: rows of the rules named; the two openings of
    a pump are the usual layout, from memory; that a path in use stays open is common practice, no source.
    """
    plan = _Closings(tuple(positions), answers)
    if not plan.losing:
        return ClosingPlan(of_position={}, shared=(), live=())
    return ClosingPlan(
        of_position={one.position.label: tuple(plan.of_position(one)) for one in plan.losing},
        shared=(*plan.of_dispensers(), *plan.of_ground()),
        live=(*plan.live_in_dispensers(), *plan.live_in_ground()),
    )


class _Closings:
    """Which hoses lose recovery, which go on recovering, and which pipes each of them uses."""

    def __init__(self, positions: tuple[PositionConversion, ...], answers: ConversionAnswers) -> None:
        self.losing = tuple(one for one in positions if one.loses_recovery)
        self.keeping = tuple(one for one in positions if one.vapour_afterwards is not VapourStatus.NONE)
        self.answers, self.follow = answers.sequence, answers.follow
        served = (*self.losing, *self.keeping)
        self._by_tank = bool(served) and all(one.position.tanks for one in served)

    def of_position(self, one: PositionConversion) -> Iterator[Closing]:
        """Yield what is closed at a hose that loses recovery; an adaptor of the new set may close its outlet."""
        position, option = one.position, one.followed(self.follow)
        coaxial = position.outlet.path is not FlowPath.SINGLE
        if not coaxial and not position.outlet.vapour_return_available:
            return
        if coaxial and not _adaptor_closes(option.judged.hanging_set if option else None):
            yield _closing(VapourOpening.OUTLET, position.dispenser, position.label, 1, _EVERY_PATH)
        shared = self._shared(self._pipes_of(one), self._at(self.keeping, position.dispenser))
        opening = VapourOpening.CABINET_BRANCH if shared else VapourOpening.CABINET_PIPE
        yield _closing(opening, position.dispenser, position.label, 1, _RETURN_LINE)

    def of_dispensers(self) -> Iterator[Closing]:
        """Yield what is closed once for a dispenser."""
        for dispenser in self._dispensers():
            here = self._at(self.losing, dispenser)
            assisted = sum(one.position.vapour_today is VapourStatus.VACUUM_ASSIST for one in here)
            if assisted and not self.answers.central_vacuum:
                yield _closing(VapourOpening.PUMP_INLET, dispenser, "", assisted, _USUAL)
                yield _closing(VapourOpening.PUMP_OUTLET, dispenser, "", assisted, _USUAL)
            free = self._pipes(here) - self._pipes(self._at(self.keeping, dispenser))
            if free:
                yield _closing(VapourOpening.RISER, dispenser, "", len(free), _RISER)

    def of_ground(self) -> Iterator[Closing]:
        """Yield what is closed once for the site."""
        if self._unit_goes() and not self._on_unit():
            yield _closing(VapourOpening.CENTRAL_UNIT, "", "", 1, _USUAL)
        if self.answers.condensate_traps and not self.keeping:
            yield _closing(VapourOpening.CONDENSATE_TRAP, "", "", self.answers.condensate_traps, _TRAP)
        free = self._pipes(self.losing) - self._pipes(self.keeping)
        if self.answers.tank_end_reachable and free:
            yield _closing(VapourOpening.TANK_END, "", "", len(free), _TANK)

    def live_in_dispensers(self) -> Iterator[StaysLive]:
        """Yield the risers and cabinet pipes that serve both kinds of hoses."""
        for dispenser in self._dispensers():
            keeping = self._at(self.keeping, dispenser)
            pipes = self._pipes(self._at(self.losing, dispenser))
            shared = self._shared(pipes, keeping)
            if shared:
                for opening in (VapourOpening.CABINET_PIPE, VapourOpening.RISER):
                    yield self._live(opening, dispenser, shared, keeping)

    def live_in_ground(self) -> Iterator[StaysLive]:
        """Yield the central unit, traps and tank ends that go on being needed."""
        if self._unit_goes() and self._on_unit():
            yield self._live(VapourOpening.CENTRAL_UNIT, "", {""}, self._on_unit())
        shared = self._shared(self._pipes(self.losing), self.keeping)
        if self.answers.condensate_traps and self.keeping:
            traps = self._live(VapourOpening.CONDENSATE_TRAP, "", shared, self.keeping)
            reason = traps.reason if shared and self.answers.dual_vapour_pipes is not True else LiveReason.TRAPS_UNKNOWN
            yield replace(
                traps,
                quantity=self.answers.condensate_traps,
                reason=reason,
                needed_by=tuple(one.position.label for one in self.keeping),
            )
        if shared:
            yield self._live(VapourOpening.TANK_END, "", shared, self.keeping)

    def _live(
        self, opening: VapourOpening, dispenser: str, pipes: Set[str], keeping: tuple[PositionConversion, ...]
    ) -> StaysLive:
        """Return a path that stays live for those hoses of ``keeping`` that use one of ``pipes``."""
        needing = [one for one in keeping if opening in _OF_SITE_UNIT or not pipes.isdisjoint(self._pipes_of(one))]
        losing = self._at(self.losing, dispenser) if dispenser else self.losing
        apart = {_grade(one) for one in needing}.isdisjoint(_grade(one) for one in losing)
        reason = LiveReason.SERVES_KEPT
        if all(_was_to_lose(one) for one in needing):
            reason = LiveReason.NOT_CONVERTED
        elif opening not in _OF_SITE_UNIT and self.answers.dual_vapour_pipes is None and apart:
            reason = LiveReason.PIPES_UNKNOWN
        text, status = _IN_USE
        return StaysLive(
            opening=opening,
            dispenser=dispenser,
            quantity=len(pipes),
            needed_by=tuple(one.position.label for one in needing),
            reason=reason,
            source=text,
            status=status,
        )

    def _dispensers(self) -> tuple[str, ...]:
        return tuple(dict.fromkeys(one.position.dispenser for one in self.losing))

    @staticmethod
    def _at(positions: tuple[PositionConversion, ...], dispenser: str) -> tuple[PositionConversion, ...]:
        return tuple(one for one in positions if one.position.dispenser == dispenser)

    def _unit_goes(self) -> bool:
        """Say whether a hose on a central vacuum unit loses recovery."""
        return self.answers.central_vacuum and any(
            one.position.vapour_today is VapourStatus.VACUUM_ASSIST for one in self.losing
        )

    def _on_unit(self) -> tuple[PositionConversion, ...]:
        return tuple(one for one in self.keeping if one.vapour_afterwards is VapourStatus.VACUUM_ASSIST)

    def _shared(self, pipes: Set[str], keeping: Iterable[PositionConversion]) -> Set[str]:
        return pipes & self._pipes(keeping)

    def _pipes(self, positions: Iterable[PositionConversion]) -> Set[str]:
        return {pipe for one in positions for pipe in self._pipes_of(one)}

    def _pipes_of(self, one: PositionConversion) -> Set[str]:
        """Return the vapour pipes of a hose: one for all; or that of its tank, where all are known, else its grade."""
        if not self.answers.dual_vapour_pipes:
            return {""}
        return set(one.position.tanks) if self._by_tank else {_grade(one)}


def _grade(one: PositionConversion) -> str:
    return one.position.grade or str(one.position.liquid.blend_percent)


def _was_to_lose(one: PositionConversion) -> bool:
    return one.position.vapour_wanted is VapourStatus.NONE


def _adaptor_closes(hanging_set: HangingSet | None) -> bool:
    if hanging_set is None:
        return False
    first = next((link for link in hanging_set.links if link.slot in (Slot.ADAPTOR, Slot.SPLITTER)), None)
    return first is not None and first.part.adaptor is not None and first.part.adaptor.closes_vapour


def _closing(opening: VapourOpening, dispenser: str, position: str, quantity: int, source: _Source) -> Closing:
    text, status = source
    return Closing(
        opening=opening, dispenser=dispenser, position=position, quantity=quantity, source=text, status=status
    )
