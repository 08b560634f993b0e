"""Edits of the lists of a conversion: the owner's own cost lines and own onboard shares, row by row."""

from __future__ import annotations

from decimal import Decimal, InvalidOperation
from typing import TypeVar

from pydantic import BaseModel, ValidationError

from spoutline.model.conversion_answers import ConversionAnswers, EmissionAnswers, MoneyAnswers, OwnCost, YearShare
from spoutline.model.faults import InputFault, InputProblem
from spoutline.model.survey import Survey

_MOST = 100
_RowT = TypeVar("_RowT", bound=BaseModel)
_WANTED = {
    "label": "write what it pays for, in 1 to 120 characters",
    "amount": "write an amount of 0 or more, with a decimal point and at most three decimals, such as 1250.50",
    "year": "write a year from 1990 to 2200",
    "share": "write a share between 0 and 1, such as 0.85",
}


def with_own_cost(survey: Survey, place: int | None, label: str, amount: str, *, eligible: bool) -> Survey:
    """Return the survey with one of the owner's cost lines.

    Parameters
    ----------
    survey
        The survey before the edit.
    place
        Place of the line to replace, from 0; None adds one at the end.
    label
        What it pays for, as typed.
    amount
        Amount in the site's currency, as typed.
    eligible
        Whether the line counts towards a grant.

    Raises
    ------
    InputFault
        A text is not usable; every problem names its field, ``label`` or ``amount``.
    """
    typed: dict[str, object] = {"label": label, "amount": _decimal(amount), "eligible": eligible}
    row = _row(OwnCost, typed, {"label": label, "amount": amount})
    return _with_costs(survey, _placed(survey.conversion.money.own_costs, place, row, "label"))


def without_own_cost(survey: Survey, place: int) -> Survey:
    """Return the survey without one of the owner's cost lines."""
    return _with_costs(survey, _left(survey.conversion.money.own_costs, place))


def with_own_share(survey: Survey, place: int | None, year: str, share: str) -> Survey:
    """Return the survey with one of the owner's onboard shares, in the order of the years.

    Parameters
    ----------
    survey
        The survey before the edit.
    place
        Place of the row to replace, from 0; None adds one.
    year
        The year, as typed.
    share
        Share of gasoline into vehicles with onboard recovery at the end of the year, 0 to 1, as typed.

    Raises
    ------
    InputFault
        A text is not usable, or the year has a row already; every problem names its field, ``year`` or ``share``.
    """
    row = _row(YearShare, {"year": year.strip(), "share": share.strip()}, {"year": year, "share": share})
    known = survey.conversion.emissions.own_shares
    if any(old.year == row.year for at, old in enumerate(known) if at != place):
        raise InputFault((InputProblem("", "year", year.strip(), "choose the row of that year and change it"),))
    return _with_shares(survey, _placed(known, place, row, "year"))


def without_own_share(survey: Survey, place: int) -> Survey:
    """Return the survey without one of the owner's onboard shares."""
    return _with_shares(survey, _left(survey.conversion.emissions.own_shares, place))


def _decimal(text: str) -> Decimal | str:
    try:
        return Decimal(text.strip())
    except InvalidOperation:
        return text  # refused where the row is validated, beside the other faults


def _row(kind: type[_RowT], values: dict[str, object], typed: dict[str, str]) -> _RowT:
    try:
        return kind.model_validate(values)
    except ValidationError as error:
        names = dict.fromkeys(str(one["loc"][0]) for one in error.errors(include_url=False))
        raise InputFault(
            tuple(InputProblem("", name, typed[name].strip() or "nothing", _WANTED[name]) for name in names)
        ) from error


def _placed(rows: tuple[_RowT, ...], place: int | None, row: _RowT, field: str) -> tuple[_RowT, ...]:
    if place is not None:
        return (*rows[:place], row, *rows[place + 1 :])
    if len(rows) >= _MOST:
        raise InputFault((InputProblem("", field, str(len(rows) + 1), f"the list holds at most {_MOST} rows"),))
    return (*rows, row)


def _left(rows: tuple[_RowT, ...], place: int) -> tuple[_RowT, ...]:
    return tuple(row for at, row in enumerate(rows) if at != place)


def _with_costs(survey: Survey, costs: tuple[OwnCost, ...]) -> Survey:
    money: MoneyAnswers = survey.conversion.money.model_copy(update={"own_costs": costs})
    return _with(survey, survey.conversion.model_copy(update={"money": money}))


def _with_shares(survey: Survey, shares: tuple[YearShare, ...]) -> Survey:
    rising = tuple(sorted(shares, key=lambda row: row.year))
    emissions: EmissionAnswers = survey.conversion.emissions.model_copy(update={"own_shares": rising})
    return _with(survey, survey.conversion.model_copy(update={"emissions": emissions}))


def _with(survey: Survey, answers: ConversionAnswers) -> Survey:
    return survey.model_copy(update={"conversion": answers})
