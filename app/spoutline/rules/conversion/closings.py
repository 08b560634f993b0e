"""Which vapour openings a decommissioning closes, and how many."""

from __future__ import annotations

from collections.abc import Iterable, Iterator

from spoutline.model.conversion_answers import SequenceAnswers
from spoutline.model.limit import LimitStatus
from spoutline.model.plan import HangingSet
from spoutline.model.port import FlowPath
from spoutline.model.position_conversion import Closing, VapourOpening
from spoutline.model.requirement import Slot
from spoutline.model.survey import Position, VapourStatus

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
_USUAL: _Source = ("usual layout of a vacuum pump in a dispenser; measure on site", LimitStatus.MEMORY)


def position_closings(position: Position, hanging_set: HangingSet | None) -> tuple[Closing, ...]:
    """Return what is closed at a position that loses recovery.

    A coaxial outlet stays open unless an adaptor of the new set closes its vapour port.

    Parameters: ``position``; ``hanging_set`` that comes, None where there is none. Source: rows of the rules named.
    """
    if position.outlet.path is FlowPath.SINGLE:
        if not position.outlet.vapour_return_available:
            return ()
        return (_closing(VapourOpening.CABINET_PIPE, position.dispenser, position.label, 1, _RETURN_LINE),)
    found: list[Closing] = []
    if not _adaptor_closes(hanging_set):
        found.append(_closing(VapourOpening.OUTLET, position.dispenser, position.label, 1, _EVERY_PATH))
    found.append(_closing(VapourOpening.CABINET_PIPE, position.dispenser, position.label, 1, _RETURN_LINE))
    return tuple(found)


def site_closings(positions: Iterable[Position], answers: SequenceAnswers) -> tuple[Closing, ...]:
    """Return what is closed per dispenser and once for the site.

    Parameters: ``positions`` that lose recovery; ``answers`` on pipes, pumps and traps. Source: rows of the rules
    named; the two openings of a pump are the usual layout, from memory.
    """
    concerned = tuple(positions)
    if not concerned:
        return ()
    return (*_dispenser_closings(concerned, answers), *_ground_closings(concerned, answers))


def _dispenser_closings(positions: tuple[Position, ...], answers: SequenceAnswers) -> Iterator[Closing]:
    for dispenser in dict.fromkeys(position.dispenser for position in positions):
        here = [position for position in positions if position.dispenser == dispenser]
        assisted = sum(position.vapour_today is VapourStatus.VACUUM_ASSIST for position in here)
        if assisted and not answers.central_vacuum:
            yield _closing(VapourOpening.PUMP_INLET, dispenser, "", assisted, _USUAL)
            yield _closing(VapourOpening.PUMP_OUTLET, dispenser, "", assisted, _USUAL)
        yield _closing(VapourOpening.RISER, dispenser, "", _pipes(here, answers), _RISER)


def _ground_closings(positions: tuple[Position, ...], answers: SequenceAnswers) -> Iterator[Closing]:
    if answers.central_vacuum and any(one.vapour_today is VapourStatus.VACUUM_ASSIST for one in positions):
        yield _closing(VapourOpening.CENTRAL_UNIT, "", "", 1, _USUAL)
    if answers.condensate_traps:
        yield _closing(VapourOpening.CONDENSATE_TRAP, "", "", answers.condensate_traps, _TRAP)
    if answers.tank_end_reachable:
        yield _closing(VapourOpening.TANK_END, "", "", _pipes(positions, answers), _TANK)


def _pipes(positions: Iterable[Position], answers: SequenceAnswers) -> int:
    """Return how many vapour pipes end at these positions: one, or one for each grade."""
    grades = {position.grade or str(position.liquid.blend_percent) for position in positions}
    return len(grades) if answers.dual_vapour_pipes else 1


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
