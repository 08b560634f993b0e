"""The built-in jurisdictions: general rows, what each overrides, and every fault of their tables."""

from __future__ import annotations

from pathlib import Path

from spoutline.model.faults import InputFault, InputProblem
from spoutline.model.limit import Jurisdiction, Limit, LimitId
from spoutline.ruletables.profiles import missing_rows, overriding_profile, read_rows
from spoutline.ruletables.schema import read_toml
from spoutline.ruletables.table_text import TableText

_LIMITS = Path("rules", "limits")


def profiles_of(limits: tuple[TableText, ...], jurisdictions: tuple[TableText, ...]) -> tuple[Jurisdiction, ...]:
    """Return the profiles of these tables sorted by id; raise ``InputFault`` with every fault of every table."""
    base = _general_rows(limits)
    problems: list[InputProblem] = []
    profiles: dict[str, Jurisdiction] = {}
    for one in jurisdictions:
        path = one.path
        if one.problems:
            problems.extend(one.problems)
            continue
        try:
            profile = overriding_profile(one.text, path.name, base)
        except InputFault as fault:
            problems.extend(fault.problems)
            continue
        if profile.id != path.stem:
            wanted = f"the file is named {path.name}, so the id must be {path.stem}"
            problems.append(InputProblem(path.name, "profile, id", repr(profile.id), wanted))
        profiles[profile.id] = profile
    if problems:
        raise InputFault(tuple(problems))
    return tuple(profiles[profile_id] for profile_id in sorted(profiles))


def _general_rows(texts: tuple[TableText, ...]) -> dict[LimitId, Limit]:
    problems: list[InputProblem] = []
    rows: dict[LimitId, Limit] = {}
    for one in texts:
        path = one.path
        if one.problems:
            problems.extend(one.problems)
            continue
        try:
            document = read_toml(one.text, path.name)
        except InputFault as fault:
            problems.extend(fault.problems)
            continue
        unknown = sorted(set(document) - {"limit"})
        problems.extend(InputProblem(path.name, name, "a table", "only [[limit]] rows stand here") for name in unknown)
        found = read_rows(document.get("limit", []), place=path.name, titles={}, problems=problems)
        for limit_id in sorted(rows.keys() & found.keys()):
            problems.append(InputProblem(path.name, limit_id, "a second row", "each limit stands in one file"))
        rows.update(found)
    if not problems:
        problems.extend(missing_rows(rows, str(_LIMITS)))
    if problems:
        raise InputFault(tuple(problems))
    return rows
