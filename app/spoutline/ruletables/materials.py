"""The material table: every wetted material against every class of liquid, each cell with its basis."""

from __future__ import annotations

from spoutline.model.faults import InputFault, InputProblem
from spoutline.model.material import Material, MaterialColumn, MaterialEntry, MaterialTable
from spoutline.ruletables.schema import MaterialRow, read_toml, row_name, validated


def materials_from_toml(text: str, place: str) -> MaterialTable:
    """Return the material table of a TOML text.

    Raises
    ------
    InputFault
        With every fault: unknown materials, columns or verdicts, and every cell that has no verdict.
    """
    document = read_toml(text, place)
    problems: list[InputProblem] = []
    edition = document.get("edition")
    if not isinstance(edition, str) or not edition.strip():
        problems.append(InputProblem(place, "edition", repr(edition), "write the edition of the table in quotes"))
    for name in sorted(set(document) - {"edition", "material"}):
        problems.append(InputProblem(place, name, "a table", "only edition and [[material]] rows stand here"))
    entries: dict[Material, tuple[MaterialEntry, ...]] = {}
    rows = document.get("material", [])
    for index, data in enumerate(rows if isinstance(rows, list) else [], start=1):
        label = row_name(data, index)
        row = validated(MaterialRow, data, place=place, row=label, problems=problems)
        if row is None:
            continue
        if row.id in entries:
            problems.append(InputProblem(place, f"{label}, id", repr(row.id.value), "each material stands once"))
        entries[row.id] = _entries_of(row, place, label, problems)
    if not problems:
        problems.extend(
            InputProblem(place, material, "nothing", "this material must have a row")
            for material in Material
            if material not in entries
        )
    if problems:
        raise InputFault(tuple(problems))
    return MaterialTable(str(edition), tuple(entry for material in Material for entry in entries[material]))


def _entries_of(row: MaterialRow, place: str, label: str, problems: list[InputProblem]) -> tuple[MaterialEntry, ...]:
    origin = dict.fromkeys(MaterialColumn, (row.source, row.status))
    for basis in row.basis:
        origin.update(dict.fromkeys(basis.columns, (basis.source, basis.status)))
    entries: list[MaterialEntry] = []
    for column in MaterialColumn:
        verdict = row.verdicts.get(column)
        if verdict is None:
            wanted = f"give a verdict for {column}: suitable, caution or unsuitable"
            problems.append(InputProblem(place, f"{label}, verdicts", "nothing", wanted))
            continue
        source, status = origin[column]
        entries.append(MaterialEntry(row.id, column, verdict, source, status.value))
    return tuple(entries)
