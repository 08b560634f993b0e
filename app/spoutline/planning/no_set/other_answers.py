"""Other answers that a position could have in the place of some of its own, the nearest first."""

from __future__ import annotations

import itertools
from collections.abc import Iterator

from spoutline.frozen import frozen
from spoutline.model.limit import LimitId, RuleTables
from spoutline.model.liquid import LiquidFamily
from spoutline.model.no_set import AskedAnswer, OtherAnswer
from spoutline.model.port_sizes import path_of_thread
from spoutline.model.requirement import Refusal, Requirement
from spoutline.model.survey import Climate, Filler, Position, Site, SurveyLiquid, VapourStatus
from spoutline.rules.derive.requirement import requirement_for

_CLASS_ENDS = {
    LiquidFamily.GASOLINE: (LimitId.LISTING_E10_MAX, LimitId.LISTING_E25_MAX, LimitId.LISTING_E85_MAX),
    LiquidFamily.DEF: (),
}
_DIESEL_ENDS = (LimitId.LISTING_B5_MAX, LimitId.LISTING_B20_MAX)
_PURE_PERCENT = 100.0


@frozen
class Variant:
    """A position with some other answers, and what it asks then; without any, the position as it was answered."""

    changed: frozenset[AskedAnswer]
    answers: tuple[OtherAnswer, ...]
    position: Position
    requirement: Requirement


def variants_of(position: Position, site: Site, tables: RuleTables) -> tuple[Variant, ...]:
    """Return the position as answered, unless that is refused, and with other answers; fewest and nearest first.

    Where nothing is refused, only what is sold and what is recovered may be another, to ask for less than today.
    Where something is, the answers that can contradict each other may be, each put right by itself.
    """
    is_refused = isinstance(requirement_for(position, site, tables), Refusal)
    choices: list[tuple[AskedAnswer, tuple[OtherAnswer, ...]]] = [
        (AskedAnswer.LIQUID, tuple(_liquids(position, tables, is_refused=is_refused))),
        (AskedAnswer.VAPOUR, tuple(_vapours(position))),
    ]
    if is_refused:
        alone = (AskedAnswer.OUTLET, AskedAnswer.CLIMATE, AskedAnswer.FILLERS)
        choices += [(answer, (OtherAnswer(answer=answer),)) for answer in alone]
    found: list[Variant] = []
    for size in range(len(choices) + 1):
        for group in itertools.combinations(choices, size):
            for answers in itertools.product(*(others for _, others in group)):
                made = _variant(position, site, tables, answers)
                if made is not None:
                    found.append(made)
    return tuple(found)


def put_right(position: Position, site: Site, other: OtherAnswer) -> tuple[Position, Site]:
    """Return the position and its site with another answer."""
    match other.answer:
        case AskedAnswer.LIQUID if other.liquid is not None:
            return position.model_copy(update={"liquid": other.liquid}), site
        case AskedAnswer.VAPOUR if other.vapour is not None:
            return position.model_copy(update={"vapour_wanted": other.vapour}), site
        case AskedAnswer.OUTLET:
            path = path_of_thread(position.outlet.thread)
            return position.model_copy(update={"outlet": position.outlet.model_copy(update={"path": path})}), site
        case AskedAnswer.CLIMATE:
            return position, site.model_copy(update={"climate": Climate()})
        case AskedAnswer.FILLERS:
            changes = {
                "filler": _straight(position.filler),
                "other_fillers": tuple(map(_straight, position.other_fillers)),
            }
            return position.model_copy(update=changes), site
        case _:
            return position, site


def _variant(position: Position, site: Site, tables: RuleTables, answers: tuple[OtherAnswer, ...]) -> Variant | None:
    """Return a variant; None where its answers are refused too."""
    for other in answers:
        position, site = put_right(position, site, other)
    requirement = requirement_for(position, site, tables)
    if isinstance(requirement, Refusal):
        return None
    return Variant(frozenset(other.answer for other in answers), answers, position, requirement)


def _liquids(position: Position, tables: RuleTables, *, is_refused: bool) -> Iterator[OtherAnswer]:
    """Yield blends of less demanding classes, the nearest first; where the answer is refused, of the others too."""
    own, jurisdiction = position.liquid, tables.jurisdiction
    ends = [jurisdiction.number(end) for end in _CLASS_ENDS.get(own.family, _DIESEL_ENDS)]
    below = sorted((end for end in ends if end < own.blend_percent), reverse=True)
    above = [end for end in ends if end > own.blend_percent]
    if own.family not in (LiquidFamily.GASOLINE, LiquidFamily.DEF) and own.blend_percent < _PURE_PERCENT:
        above.append(_PURE_PERCENT)
    for percent in (*below, *(above if is_refused else ())):
        liquid = SurveyLiquid(family=own.family, blend_percent=percent)
        yield OtherAnswer(answer=AskedAnswer.LIQUID, liquid=liquid)
    if is_refused and own.family is not LiquidFamily.GASOLINE and position.vapour_wanted is not VapourStatus.NONE:
        gasoline = SurveyLiquid(
            family=LiquidFamily.GASOLINE, blend_percent=jurisdiction.number(LimitId.LISTING_E10_MAX)
        )
        yield OtherAnswer(answer=AskedAnswer.LIQUID, liquid=gasoline)


def _vapours(position: Position) -> Iterator[OtherAnswer]:
    """Yield what is recovered today, and nothing, where something else is wanted."""
    for status in dict.fromkeys((position.vapour_today, VapourStatus.NONE)):
        if status is not position.vapour_wanted:
            yield OtherAnswer(answer=AskedAnswer.VAPOUR, vapour=status)


def _straight(filler: Filler) -> Filler:
    return filler.model_copy(update={"plan_legs_m": ()})
