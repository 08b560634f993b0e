"""Edits of the named cases of a conversion, row by row."""

from __future__ import annotations

from pydantic import ValidationError

from spoutline.frozen import frozen
from spoutline.model.conversion_case import ConversionCase
from spoutline.model.faults import InputFault, InputProblem
from spoutline.model.survey import Survey

_MOST = 12
_WANTED = {
    "name": "write a name of 1 to 60 characters, and fill in what would be otherwise",
    "keep_islands": "write names of islands or dispensers, parted by semicolons",
    "ethanol_percent": "write percent ethanol above 0 to 100, such as 15",
    "biodiesel_percent": "write percent biodiesel above 0 to 100, such as 20",
    "sold_after_years": "write whole years from 1 to 50, such as 5",
}


@frozen(kw_only=True)
class TypedCase:
    """A case as typed into the fields; an empty text changes nothing."""

    name: str
    keep_islands: str = ""
    ethanol_percent: str = ""
    biodiesel_percent: str = ""
    sold_after_years: str = ""
    retention: bool = False


def with_case(survey: Survey, place: int | None, typed: TypedCase) -> Survey:
    """Return the survey with a case at a place, from 0; None adds one at the end.

    Raises
    ------
    InputFault
        A text is not usable, or another case has the name; every problem names its field.
    """
    case, cases = _case(typed), survey.conversion.cases
    if any(old.name == case.name for at, old in enumerate(cases) if at != place):
        raise InputFault((InputProblem("", "name", case.name, "choose the row of that name and change it"),))
    if place is None and len(cases) >= _MOST:
        raise InputFault((InputProblem("", "name", str(len(cases) + 1), f"at most {_MOST} cases are kept"),))
    if place is None:
        return _with(survey, (*cases, case))
    return _with(survey, (*cases[:place], case, *cases[place + 1 :]))


def without_case(survey: Survey, place: int) -> Survey:
    """Return the survey without the case at a place."""
    return _with(survey, tuple(one for at, one in enumerate(survey.conversion.cases) if at != place))


def _case(typed: TypedCase) -> ConversionCase:
    values = {
        "name": typed.name,
        "keep_islands": tuple(one.strip() for one in typed.keep_islands.split(";") if one.strip()),
        "retention": typed.retention,
        "ethanol_percent": typed.ethanol_percent.strip() or None,
        "biodiesel_percent": typed.biodiesel_percent.strip() or None,
        "sold_after_years": typed.sold_after_years.strip() or None,
    }
    try:
        return ConversionCase.model_validate(values)
    except ValidationError as error:
        names = dict.fromkeys(str(one["loc"][0]) if one["loc"] else "name" for one in error.errors(include_url=False))
        raise InputFault(
            tuple(
                InputProblem("", name, str(getattr(typed, name)).strip() or "nothing", _WANTED[name]) for name in names
            )
        ) from error


def _with(survey: Survey, cases: tuple[ConversionCase, ...]) -> Survey:
    return survey.model_copy(update={"conversion": survey.conversion.model_copy(update={"cases": cases})})
