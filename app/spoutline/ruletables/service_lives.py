"""The table of service lives by kind of part: resources/terms/service_lives.toml."""

from __future__ import annotations

from decimal import Decimal
from pathlib import Path
from typing import Final

from pydantic import BaseModel, ConfigDict, Field

from spoutline.model.faults import InputFault, InputProblem
from spoutline.model.limit import LimitStatus
from spoutline.model.part_kind import HANGING_KINDS, PartKind
from spoutline.model.yearly_cost import ServiceLife
from spoutline.ruletables.files import read_text
from spoutline.ruletables.schema import Line, read_toml, validated

_FILE: Final = Path("terms", "service_lives.toml")


class _LifeRow(BaseModel):
    model_config = ConfigDict(frozen=True, extra="forbid", defer_build=True, allow_inf_nan=False)

    kind: PartKind
    years: Decimal = Field(gt=0, le=100)
    source: Line
    status: LimitStatus


def load_service_lives(resources: Path) -> tuple[ServiceLife, ...]:
    """Return the table; raise ``InputFault`` with every fault in it, ``StoreFault`` where it cannot be read."""
    path = resources / _FILE
    return service_lives_from_toml(read_text(path), path.name)


def service_lives_from_toml(text: str, place: str) -> tuple[ServiceLife, ...]:
    """Return the table of a TOML text: each kind that hangs in a chain once. Raise ``InputFault`` with every fault."""
    problems: list[InputProblem] = []
    found: list[ServiceLife] = []
    for index, data in enumerate(read_toml(text, place).get("life", []), start=1):
        name = f"row {index} ({data.get('kind', '?')})"
        row = validated(_LifeRow, data, place=place, row=name, problems=problems)
        if row is not None:
            found.append(ServiceLife(kind=row.kind, years=row.years, source=row.source, status=row.status))
    kinds = [one.kind for one in found]
    for kind in HANGING_KINDS:
        if kinds.count(kind) != 1 and not problems:
            problems.append(InputProblem(place, kind.value, str(kinds.count(kind)), "each kind stands once"))
    if problems:
        raise InputFault(tuple(problems))
    return tuple(found)
