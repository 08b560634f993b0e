"""Names in a survey that only the stores know: jurisdiction, currency, and the part numbers a person decided on."""

from __future__ import annotations

from collections.abc import Callable, Iterator, Mapping

from spoutline.book.choices import choice_of, unknown_number
from spoutline.model.faults import InputFault, InputProblem
from spoutline.model.survey import Survey


def check_names(
    survey: Survey,
    *,
    jurisdictions: tuple[str, ...],
    currencies: tuple[str, ...],
    unknown_parts: Callable[[tuple[str, ...]], Mapping[str, tuple[str, ...]]],
) -> None:
    """Raise ``InputFault`` with every name in the survey that nothing stands behind.

    Arguments: ids of all jurisdictions; currencies in which the catalogue has prices; a function that returns, of the
    part numbers given to it, the ones that the catalogue does not hold, each with known numbers close to it.
    """
    problems = [
        InputProblem("", field, repr(value), choice_of(value, known))
        for field, value, known in (
            ("site.jurisdiction", survey.site.jurisdiction, jurisdictions),
            ("site.currency", survey.site.currency, currencies),
        )
        if value not in known
    ]
    decided = tuple(_decided_numbers(survey))
    missing = unknown_parts(tuple(sorted({number for _, number in decided}))) if decided else {}
    problems += [
        InputProblem("", field, repr(number), unknown_number(number, missing[number]))
        for field, number in decided
        if number in missing
    ]
    if problems:
        raise InputFault(tuple(problems))


def _decided_numbers(survey: Survey) -> Iterator[tuple[str, str]]:
    """Yield the field path and number of every part that a person pinned or refused."""
    for place, position in enumerate(survey.positions):
        for name, numbers in (("pinned", position.decisions.pinned), ("refused", position.decisions.refused)):
            for index, number in enumerate(numbers):
                yield f"positions[{place}].decisions.{name}[{index}]", number
