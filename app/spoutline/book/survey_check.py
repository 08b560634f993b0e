"""Names in a survey that only the stores know: jurisdiction, currency, and the parts it names."""

from __future__ import annotations

from collections.abc import Callable, Iterator, Mapping

from spoutline.book.choices import choice_of
from spoutline.model.faults import InputFault, InputProblem
from spoutline.model.part_ref import PartRef
from spoutline.model.survey import Survey


def check_names(
    survey: Survey,
    *,
    jurisdictions: tuple[str, ...],
    currencies: tuple[str, ...],
    wrong_parts: Callable[[tuple[PartRef, ...]], Mapping[PartRef, str]],
    shared_numbers: Callable[[tuple[PartRef, ...]], Mapping[PartRef, str]],
) -> None:
    """Raise ``InputFault`` with every name in the survey that nothing stands behind.

    Arguments: ids of all jurisdictions; currencies in which the catalogue has prices; a function that returns, of the
    parts named to it, those that are not one part of the catalogue, each with what would be right; and one that returns
    the bare numbers that several makers have, for a part that hangs there need be in no catalogue.
    """
    problems = [
        InputProblem("", field, repr(value), choice_of(value, known) if known else _NO_PRICES)
        for field, value, known in (
            ("site.jurisdiction", survey.site.jurisdiction, jurisdictions),
            ("site.currency", survey.site.currency, currencies),
        )
        if value not in known
    ]
    decided = tuple(_decided_parts(survey))
    wrong = wrong_parts(tuple(sorted({part for _, part in decided}))) if decided else {}
    problems += [InputProblem("", field, repr(str(part)), wrong[part]) for field, part in decided if part in wrong]
    installed = tuple(_installed_parts(survey))
    shared = shared_numbers(tuple(sorted({part for _, part in installed}))) if installed else {}
    problems += [InputProblem("", field, repr(str(part)), shared[part]) for field, part in installed if part in shared]
    if problems:
        raise InputFault(tuple(problems))


_NO_PRICES = "the catalog that it is planned with holds no price of a described part yet"


def _installed_parts(survey: Survey) -> Iterator[tuple[str, PartRef]]:
    """Yield the field path of every number that the survey gives of a part that hangs there."""
    for place, position in enumerate(survey.positions):
        for index, item in enumerate(position.installed):
            if item.ref is not None:
                yield f"positions[{place}].installed[{index}].number", item.ref


def _decided_parts(survey: Survey) -> Iterator[tuple[str, PartRef]]:
    """Yield the field path of every part that a person pinned or refused."""
    for place, position in enumerate(survey.positions):
        for name, parts in (("pinned", position.decisions.pinned), ("refused", position.decisions.refused)):
            for index, part in enumerate(parts):
                yield f"positions[{place}].decisions.{name}[{index}]", part
