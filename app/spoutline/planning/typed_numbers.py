"""Numbers that people type, followed to the part of the catalogue that is meant today."""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from typing import TYPE_CHECKING, Protocol

from spoutline.frozen import frozen
from spoutline.model.cross_reference import NumberTrace
from spoutline.model.faults import InputFault, InputProblem
from spoutline.model.part import Part
from spoutline.model.part_ref import PartRef
from spoutline.model.worded import Worded
from spoutline.planning.protocols import PartStore

if TYPE_CHECKING:
    from spoutline.model.quotation_terms import Terms


@frozen
class OldNumber:
    """An old number, the part that is offered in its place today, and the way there."""

    old: PartRef
    part: Part
    trace: NumberTrace


class NumberedParts(PartStore, Protocol):
    """A catalogue that knows old numbers."""

    def traces(self, asked: PartRef) -> tuple[NumberTrace, ...]:
        """Return every way that an item number, a GTIN or an old number leads to a part of the catalogue."""
        ...


def followed(asked: PartRef, parts: NumberedParts, field: str = "part number") -> tuple[PartRef, NumberTrace | None]:
    """Return the part that a number means today, and how it was found; None for a number of the catalogue itself.

    A number that leads nowhere comes back as it is. Raise ``InputFault`` where it leads to several parts, by maker.
    """
    if parts.parts((asked,)):
        return asked, None
    traces = tuple(one for one in parts.traces(asked) if one.current is not None)
    current = {one.current for one in traces}
    if len(current) > 1:
        raise InputFault((InputProblem("", field, repr(str(asked)), several_ways(traces)),))
    found = traces[0].current if traces else None
    return (asked, None) if found is None else (found, traces[0])


def several_ways(traces: Sequence[NumberTrace]) -> str:
    """Return what would be right in place of a number that leads to several parts."""
    ways = ", ".join(
        Worded("{maker} (now {current})", maker=one.maker or "item number", current=one.current) for one in traces
    )
    makers = sorted({one.maker for one in traces if one.maker})
    first = next((one for one in traces if one.maker), traces[0])
    if len(makers) > 1:
        number = first.written.number
        return Worded(
            "several makers have this number: {ways}; name the maker too: '{maker} {number}'",
            ways=ways,
            maker=first.maker,
            number=number,
        )
    return Worded("it leads to several parts: {ways}; write the number of the part that is meant", ways=ways)


def with_old_numbers(wrong: Mapping[PartRef, str], parts: NumberedParts) -> dict[PartRef, str]:
    """Return what would be right in place of unknown numbers; of an old one, the part that it leads to."""
    told = dict(wrong)
    for ref in wrong:
        current = sorted({one.current for one in parts.traces(ref) if one.current is not None})
        if current:
            told[ref] = Worded(
                "it is an old number; write the one that it leads to: {current}", current=" or ".join(map(str, current))
            )
    return told


def with_current_parts(terms: Terms, parts: NumberedParts) -> Terms:
    """Return terms whose single prices and alternates name parts of the catalogue where an old number leads to them."""

    def current(part: PartRef, field: str) -> PartRef:
        found, trace = followed(part, parts, field)
        return part if trace is None else found

    overrides = tuple(
        one.model_copy(update={"part": current(one.part, f"overrides[{place}].part")})
        for place, one in enumerate(terms.overrides)
    )
    alternates = tuple(
        one.model_copy(
            update={
                "part": current(one.part, f"alternates[{place}].part"),
                "by": current(one.by, f"alternates[{place}].by"),
            }
        )
        for place, one in enumerate(terms.alternates)
    )
    if (overrides, alternates) == (terms.overrides, terms.alternates):
        return terms
    return terms.model_copy(update={"overrides": overrides, "alternates": alternates})
