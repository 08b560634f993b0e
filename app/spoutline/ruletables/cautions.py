"""The cautions of the installer's sheet: what may go wrong, why, and what to do, under which conditions."""

from __future__ import annotations

from collections.abc import Set as AbstractSet
from dataclasses import replace
from pathlib import Path

from spoutline.frozen import frozen
from spoutline.model.caution import CautionCondition, CautionSeverity
from spoutline.model.claims import ADVICE_ONLY, claim_in
from spoutline.model.faults import InputFault, InputProblem
from spoutline.model.limit import LimitStatus
from spoutline.ruletables.caution_signs import CautionSign, load_caution_signs
from spoutline.ruletables.files import read_text
from spoutline.ruletables.schema import CautionHead, CautionRow, read_toml, row_name, validated

_FOLDER = "cautions"


@frozen(kw_only=True)
class Caution:
    """One caution. It is printed, with its sign, when every condition in ``applies`` holds."""

    id: str
    severity: CautionSeverity
    hazard: str
    why: str
    what_to_do: str
    applies: frozenset[CautionCondition]
    source: str
    status: LimitStatus
    sign: CautionSign | None = None

    def applies_to(self, conditions: AbstractSet[CautionCondition]) -> bool:
        """Say whether the caution belongs on the sheet of a job with these conditions; ``always`` need not be named."""
        return self.applies <= {CautionCondition.ALWAYS, *conditions}


@frozen
class CautionTable:
    """The reviewed cautions of one language, in the order of the work."""

    language: str
    edition: str
    cautions: tuple[Caution, ...]

    def chosen(self, conditions: AbstractSet[CautionCondition]) -> tuple[Caution, ...]:
        """Return the cautions that belong on the sheet of a job with these conditions, in order."""
        return tuple(caution for caution in self.cautions if caution.applies_to(conditions))


def load_cautions(resources: Path, language: str = "en") -> tuple[Caution, ...]:
    """Return the cautions of a language in the order of the work.

    Raises
    ------
    InputFault
        With every fault of the file.
    StoreFault
        The file cannot be read, or there is none for this language.
    """
    return load_caution_table(resources, language).cautions


def load_caution_table(resources: Path, language: str = "en") -> CautionTable:
    """Return the cautions with language and edition; fails as ``load_cautions`` does."""
    path = resources / _FOLDER / f"{language}.toml"
    table, signs = cautions_from_toml(read_text(path), path.name), load_caution_signs(resources)
    return replace(table, cautions=tuple(replace(one, sign=signs.get(one.id)) for one in table.cautions))


def cautions_from_toml(text: str, place: str) -> CautionTable:
    """Return the caution table of a TOML text; raise ``InputFault`` with every fault of it."""
    document = read_toml(text, place)
    problems: list[InputProblem] = []
    head_data = {name: value for name, value in document.items() if name != "caution"}
    head = validated(CautionHead, head_data, place=place, row="head", problems=problems)
    cautions: dict[str, Caution] = {}
    rows = document.get("caution")
    if not isinstance(rows, list) or not rows:
        problems.append(InputProblem(place, "caution", repr(rows), "write the cautions as [[caution]] tables"))
        rows = []
    for index, data in enumerate(rows, start=1):
        label = row_name(data, index)
        row = validated(CautionRow, data, place=place, row=label, problems=problems)
        if row is None:
            continue
        if row.id in cautions:
            problems.append(InputProblem(place, f"{label}, id", repr(row.id), "each caution stands once"))
        for field in ("hazard", "why", "what_to_do"):
            if claim_in(text := getattr(row, field)):
                problems.append(InputProblem(place, f"{label}, {field}", repr(text), ADVICE_ONLY))
        cautions[row.id] = _caution_of(row)
    if head is None or problems:
        raise InputFault(tuple(problems))
    return CautionTable(head.language, head.edition, tuple(cautions.values()))


def _caution_of(row: CautionRow) -> Caution:
    return Caution(
        id=row.id,
        severity=row.severity,
        hazard=row.hazard,
        why=row.why,
        what_to_do=row.what_to_do,
        applies=frozenset(row.applies),
        source=row.source,
        status=row.status,
    )
