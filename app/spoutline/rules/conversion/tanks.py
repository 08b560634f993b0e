"""Which tanks change their liquid, with which positions, in which way, and what the law asks for it."""

from __future__ import annotations

from collections.abc import Iterable, Iterator, Mapping

from spoutline.model.conversion_step import StepFigure, StepFigureId
from spoutline.model.liquid import LiquidFamily, ListingScheme
from spoutline.model.position_conversion import ConversionKind, PositionConversion, PositionOutcome
from spoutline.model.survey import Position, Survey, SurveyLiquid
from spoutline.model.tank_change import ChangeWay, Hindrance, TankChange, TankProblem

_Key = tuple[tuple[str, ...], SurveyLiquid, SurveyLiquid]


def tank_changes(
    survey: Survey,
    positions: Iterable[PositionConversion],
    hindrances: Mapping[str, tuple[Hindrance, ...]],
    figures: Mapping[StepFigureId, StepFigure],
    scheme: ListingScheme,
) -> tuple[TankChange, ...]:
    """Return one change for each tank and liquid, in the order of the positions.

    Hardware goes first where every new set on the tank serves both liquids; else it is hung within the shutdown of the
    change. Positions whose tank nobody knows are put together by their liquids, and the tank is asked for.

    Parameters: ``survey``; ``positions``, converted; ``hindrances``, by label, why a new set does not serve the liquid
    of today; ``figures`` of the steps; ``scheme``, whose labels and notices hold. Source: common practice, no source,
    for the order; rows of ``figures`` for notice and labels.
    """
    groups: dict[_Key, list[PositionConversion]] = {}
    for one in positions:
        if _changes_liquid(one.position):
            key = (one.position.tanks, one.position.liquid_today or one.position.liquid, one.position.liquid)
            groups.setdefault(key, []).append(one)
    worked_on = [(key, group) for key, group in groups.items() if any(map(_is_converted, group))]
    american = scheme is ListingScheme.UL
    return tuple(
        _change(number, key, group, survey, hindrances, figures if american else {})
        for number, (key, group) in enumerate(worked_on, start=1)
    )


def notice_row(liquid: SurveyLiquid, figures: Mapping[StepFigureId, StepFigure]) -> StepFigure | None:
    """Return the row after which the tank agency is told of a blend; None where it need not be told.

    Parameters: ``liquid`` that comes; ``figures`` of the steps. Source: 40 CFR 280.32(b), from memory.
    """
    row = {
        LiquidFamily.GASOLINE: figures.get(StepFigureId.ETHANOL_NOTICE_ABOVE),
        LiquidFamily.DIESEL: figures.get(StepFigureId.BIODIESEL_NOTICE_ABOVE),
    }.get(liquid.family)
    return row if row is not None and liquid.blend_percent > row.value else None


def label_row(liquid: SurveyLiquid, figures: Mapping[StepFigureId, StepFigure]) -> StepFigure | None:
    """Return the row of the label that the law asks for at the pump; None where it asks for none of those known.

    Parameters: ``liquid`` that comes; ``figures`` of the steps. Source: 40 CFR 1090.1510; 16 CFR 306.
    """
    rows = {
        LiquidFamily.GASOLINE: (StepFigureId.FLEX_FUEL_LABEL, StepFigureId.E15_LABEL),
        LiquidFamily.DIESEL: (StepFigureId.BIODIESEL_LABEL,),
    }.get(liquid.family, ())
    known = (figures[row] for row in rows if row in figures)
    return next((row for row in known if liquid.blend_percent > row.value), None)


def _change(  # noqa: PLR0917  (what a change is made of)
    number: int,
    key: _Key,
    group: list[PositionConversion],
    survey: Survey,
    hindrances: Mapping[str, tuple[Hindrance, ...]],
    figures: Mapping[StepFigureId, StepFigure],
) -> TankChange:
    tanks, today, wanted = key
    found = tuple(hindrance for one in group for hindrance in hindrances.get(one.position.label, ()))
    others = tuple(one.label for one in survey.positions if tanks and one.tanks == tanks and one.liquid != wanted)
    blended = notice_row(wanted, figures)
    notice = blended if underground(survey) is not False else None
    days = figures.get(StepFigureId.TANK_NOTICE_DAYS)
    return TankChange(
        number=number,
        tank=" + ".join(tanks),
        today=today,
        wanted=wanted,
        positions=tuple(one.position.label for one in group),
        dispensers=tuple(dict.fromkeys(one.position.dispenser for one in group)),
        way=ChangeWay.WITHIN_CHANGE if found else ChangeWay.HARDWARE_FIRST,
        hindered_by=found,
        others=others,
        problems=tuple(_problems(tanks, group, others, asks=notice is not None and underground(survey) is None)),
        notice=notice,
        notice_days=round(days.value) if days is not None else 0,
        proof=blended is not None,
        label=label_row(wanted, figures),
    )


def underground(survey: Survey) -> bool | None:
    """Say whether the tanks lie underground; None where nobody knows. A fenced site is surveyed as above ground.

    Parameters: ``survey``. Source: survey.
    """
    answered = survey.conversion.sequence.tanks_underground
    return False if answered is None and survey.site.fenced else answered


def _problems(
    tanks: tuple[str, ...], group: list[PositionConversion], others: tuple[str, ...], *, asks: bool
) -> Iterator[TankProblem]:
    if not tanks:
        yield TankProblem.TANK_UNKNOWN
    if asks:
        yield TankProblem.UNDERGROUND_UNKNOWN
    if others:
        yield TankProblem.MIXED
    if not all(map(_is_converted, group)):
        yield TankProblem.NO_SET


def _changes_liquid(position: Position) -> bool:
    return position.exists_today and position.liquid_today is not None and position.liquid_today != position.liquid


def _is_converted(one: PositionConversion) -> bool:
    return one.outcome is PositionOutcome.CONVERTS and ConversionKind.CHANGE_LIQUID in one.kinds
