"""From a written row to a ``Limit``: form, unit, range, and the SI value beside what the source prints."""

from __future__ import annotations

import math
from decimal import Decimal, InvalidOperation

from spoutline.model.faults import InputProblem
from spoutline.model.limit import Limit, LimitId, LimitValue
from spoutline.model.quantity import Dimension
from spoutline.model.worded import Worded
from spoutline.ruletables.kinds import CASE_PARTS, KINDS, Form, Kind
from spoutline.ruletables.nearness import nearest
from spoutline.ruletables.schema import LimitRow
from spoutline.units.accepted import ACCEPTED
from spoutline.units.unit_lines import from_core, to_core

WrittenValue = bool | Decimal | str | tuple[str, ...] | None
_YES_NO = {"yes": True, "no": False, "true": True, "false": False}


class _Refused(Exception):
    """A row's value cannot be used: which field, what it held, what would be right."""

    def __init__(self, field: str, value: str, wanted: str) -> None:
        self.field, self.value, self.wanted = field, value, wanted
        super().__init__(wanted)


def limit_of(row: LimitRow, *, title: str, place: str, row_label: str, problems: list[InputProblem]) -> Limit | None:
    """Return the limit of a written row; where its value cannot stand, add the fault to ``problems``, return None."""
    kind = KINDS[row.id]
    try:
        value = _value_of(row.value, row.unit, kind)
    except _Refused as refused:
        problems.append(InputProblem(place, f"{row_label}, {refused.field}", refused.value, refused.wanted))
        return None
    return Limit(
        id=row.id,
        title=title,
        value=value,
        dimension=kind.dimension,
        printed=printed_form(row.value),
        printed_unit=row.unit if row.value is not None else "",
        source=row.source,
        clause=row.clause,
        edition=row.edition,
        status=row.status,
        note=row.note,
    )


def printed_form(value: WrittenValue) -> str:
    """Return a written value as one line of text: digits as printed, yes or no, cases with commas, empty for none."""
    if value is None:
        return ""
    if isinstance(value, bool):
        return "yes" if value else "no"
    return ", ".join(value) if isinstance(value, tuple) else str(value)


def written_value(limit_id: LimitId, printed: str) -> WrittenValue:
    """Return the written value that ``printed`` stands for: the inverse of ``printed_form``.

    A text that is no value of the row's form comes back as it is; ``limit_of`` then says what would be right.
    """
    text = printed.strip()
    form = KINDS[limit_id].form
    if form is Form.CASES:
        return tuple(part.strip() for part in text.split(",") if part.strip())
    if not text:
        return None
    if form is Form.YES_NO:
        return _YES_NO.get(text.casefold(), text)
    if form is Form.NUMBER:
        try:
            return Decimal(text)
        except InvalidOperation:
            return text
    return text


def _value_of(value: WrittenValue, unit: str, kind: Kind) -> LimitValue:
    if value is None:
        if kind.may_be_empty:
            return None
        raise _Refused("value", "nothing", Worded("this row must hold a {form}", form=kind.form))
    if kind.form is Form.NUMBER:
        return _number_of(value, unit, kind)
    if unit:
        raise _Refused("unit", repr(unit), Worded("leave the unit out: the value is a {form}", form=kind.form))
    if kind.form is Form.YES_NO:
        if isinstance(value, bool):
            return value
        raise _Refused("value", repr(printed_form(value)), "write true or false")
    if kind.form is Form.CASES:
        return _cases_of(value)
    if isinstance(value, str) and value in kind.words:
        return value
    raise _Refused("value", repr(printed_form(value)), Worded("write one of {words}", words=", ".join(kind.words)))


def _number_of(value: WrittenValue, unit: str, kind: Kind) -> float:
    dimension = kind.dimension
    if dimension is None or isinstance(value, bool) or not isinstance(value, Decimal):
        raise _Refused("value", repr(printed_form(value)), "write a number with a decimal point, without its unit")
    if unit not in ACCEPTED[dimension]:
        spellings = [spelling for spelling in ACCEPTED[dimension] if spelling]
        wanted = (
            Worded(
                "use a unit of {dimension}: {spellings}",
                dimension=dimension.value.replace("_", " "),
                spellings=", ".join(spellings),
            )
            if spellings
            else "no unit"
        )
        raise _Refused("unit", repr(unit), wanted)
    number = float(value)
    core = to_core(number, unit, dimension) if math.isfinite(number) else number
    if not kind.minimum <= core <= kind.maximum:
        raise _Refused("value", f"{printed_form(value)} {unit}".strip(), _range_phrase(kind, unit, dimension))
    if kind.whole and core != round(core):
        raise _Refused("value", printed_form(value), "write a whole number")
    return core


def _range_phrase(kind: Kind, unit: str, dimension: Dimension) -> str:
    high = f"{from_core(kind.maximum, unit, dimension):.6g} {unit}".strip()
    if 0.0 < kind.minimum < 1e-9:
        return Worded("write more than 0 and at most {high}", high=high)
    low = f"{from_core(kind.minimum, unit, dimension):.6g} {unit}".strip()
    return Worded("write a value from {low} to {high}", low=low, high=high)


def _cases_of(value: WrittenValue) -> tuple[str, ...]:
    if not isinstance(value, tuple):
        raise _Refused("value", repr(printed_form(value)), "write a list of cases such as attended:reel:diesel")
    for case in value:
        parts = case.split(":")
        if len(parts) != len(CASE_PARTS):
            raise _Refused("value", repr(case), "write service:duty:family, for example attended:reel:diesel")
        for part, (name, words) in zip(parts, CASE_PARTS, strict=True):
            if part not in words:
                raise _Refused(
                    "value",
                    repr(case),
                    Worded("{part!r} is no {name}; {nearest}", part=part, name=name, nearest=nearest(part, words)),
                )
    return value
