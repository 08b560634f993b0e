"""How a reader refuses what is beyond a bound."""

from __future__ import annotations

from spoutline.model.faults import InputFault, InputProblem


def refusal(place: str, field: str, value: str, wanted: str) -> InputFault:
    """Return the fault of one problem: where it stands, in which field, what stands there and what would be right."""
    return InputFault((InputProblem(place, field, value, wanted),))
