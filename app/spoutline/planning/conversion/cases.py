"""Named cases of a conversion: the survey as each would have it, and what comes of it."""

from __future__ import annotations

from collections.abc import Callable, Iterator
from dataclasses import replace
from decimal import ROUND_HALF_UP, Decimal
from typing import Final

from spoutline.frozen import frozen
from spoutline.model.conversion import SiteConversion
from spoutline.model.conversion_case import ConversionCase
from spoutline.model.faults import InputFault, InputProblem
from spoutline.model.liquid import LiquidFamily
from spoutline.model.survey import Duty, Position, Survey, VapourStatus
from spoutline.model.worded import Worded

_CENT: Final = Decimal("0.01")


@frozen(kw_only=True)
class CaseResult:
    """What comes of a case; ``case`` is None for what the survey asks. ``changed`` are labels of changed positions."""

    case: ConversionCase | None
    changed: tuple[str, ...]
    conversion: SiteConversion


def case_results(
    survey: Survey, base: SiteConversion, cases: tuple[ConversionCase, ...], convert: Callable[[Survey], SiteConversion]
) -> tuple[CaseResult, ...]:
    """Return what the survey asks, and then each case worked out whole.

    Parameters
    ----------
    survey
        As the owner answered it.
    base
        Its conversion.
    cases
        In the order in which they are told.
    convert
        Works a survey out.

    Raises
    ------
    InputFault
        A case cannot be had at this station; every problem names its case.
    """
    surveys = tuple(survey_of_case(survey, one) for one in cases)  # all faults before the first is worked out
    found = [CaseResult(case=None, changed=(), conversion=base)]
    for case, other in zip(cases, surveys, strict=True):
        found.append(
            CaseResult(case=case, changed=_changed(survey, other), conversion=replace(convert(other), case=case))
        )
    return tuple(found)


def survey_of_case(survey: Survey, case: ConversionCase) -> Survey:
    """Return the survey as a case would have it; raise ``InputFault`` where the station has nothing of the kind."""
    problems = tuple(_problems(survey, case))
    if problems:
        raise InputFault(problems)
    data = survey.model_dump(mode="json")
    data["conversion"]["cases"] = []
    if case.sold_after_years is not None:
        data["conversion"]["money"]["years"] = case.sold_after_years
    data["conversion"]["money"]["upkeep_after_per_year"] = _upkeep_after(survey, case)
    for position, values in zip(survey.positions, data["positions"], strict=True):
        if _keeps(position, case):
            values["vapour_wanted"] = position.vapour_today.value
        percent = _new_blend(position, case)
        if percent is not None:
            if position.exists_today and position.liquid_today is None:
                values["liquid_today"] = values["liquid"]
            values["liquid"] = {**values["liquid"], "blend_percent": percent}
    return Survey.model_validate(data)


def _upkeep_after(survey: Survey, case: ConversionCase) -> Decimal | None:
    """Return the upkeep when all is done: what recovery costs is saved by the share of hoses that still lose it.

    Common practice, no source; where all keep it, nothing is saved.
    """
    money = survey.conversion.money
    losing = sum(_loses(one) for one in survey.positions)
    kept = sum(_keeps(one, case) for one in survey.positions)
    today, after = money.upkeep_today_per_year, money.upkeep_after_per_year
    if today is None or after is None or not kept:
        return after
    return (after + (today - after) * kept / losing).quantize(_CENT, rounding=ROUND_HALF_UP)


def _problems(survey: Survey, case: ConversionCase) -> Iterator[InputProblem]:
    islands = tuple(dict.fromkeys(map(island_of, survey.positions)))
    field = Worded("case {name}", name=case.name)
    for island in case.keep_islands:
        if island not in islands:
            wanted = Worded("name an island of the station: {islands}", islands=", ".join(islands))
            yield InputProblem("", field, island, wanted)
    kept = [one for one in survey.positions if _keeps(one, case)]
    if (case.retention or (case.keep_islands and set(case.keep_islands) <= set(islands))) and not kept:
        yield InputProblem("", field, "keep recovery", "no hose there is to lose recovery by the survey")
    families = (
        (LiquidFamily.GASOLINE, case.ethanol_percent, "no hose is to sell gasoline with less ethanol"),
        (LiquidFamily.DIESEL, case.biodiesel_percent, "no hose is to sell diesel with less biodiesel"),
    )
    for family, percent, words in families:
        changed = (one for one in survey.positions if one.liquid.family is family and _new_blend(one, case) is not None)
        if percent is not None and next(changed, None) is None:
            yield InputProblem("", field, f"{percent:g} %", words)


def island_of(position: Position) -> str:
    """Return where a position stands: its island, or the dispenser where it names none."""
    return position.island or position.dispenser


def _keeps(position: Position, case: ConversionCase) -> bool:
    """Say whether a case lets a position keep the recovery that the survey takes from it."""
    return _loses(position) and (case.retention or island_of(position) in case.keep_islands)


def _loses(position: Position) -> bool:
    """Say whether a position is to lose the recovery of today by the survey."""
    recovers, goes = position.vapour_today is not VapourStatus.NONE, position.vapour_wanted is VapourStatus.NONE
    return position.exists_today and recovers and goes


def _new_blend(position: Position, case: ConversionCase) -> float | None:
    """Return the blend that a case lets a position sell; None where it stays.

    Gasoline without ethanol is sold so on purpose, and E15 is not for boats (40 CFR 1090.1510, from memory).
    """
    liquid = position.liquid
    if liquid.family is LiquidFamily.GASOLINE and case.ethanol_percent is not None and position.duty is not Duty.MARINE:
        return case.ethanol_percent if 0 < liquid.blend_percent < case.ethanol_percent else None
    if liquid.family is LiquidFamily.DIESEL and case.biodiesel_percent is not None:
        return case.biodiesel_percent if liquid.blend_percent < case.biodiesel_percent else None
    return None


def _changed(before: Survey, after: Survey) -> tuple[str, ...]:
    pairs = zip(before.positions, after.positions, strict=True)
    return tuple(one.label for one, other in pairs if one != other)
