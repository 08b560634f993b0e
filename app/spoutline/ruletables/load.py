"""Load the rule tables that a plan is given: one jurisdiction and the material table."""

from __future__ import annotations

from functools import lru_cache
from pathlib import Path

from spoutline.frozen import frozen
from spoutline.model.faults import InputFault, InputProblem, StoreFault
from spoutline.model.limit import Jurisdiction, Limit, LimitId, RuleTables
from spoutline.model.material import MaterialTable
from spoutline.ruletables.files import read_text
from spoutline.ruletables.materials import materials_from_toml
from spoutline.ruletables.own_profiles import own_profile, own_profile_ids
from spoutline.ruletables.profiles import missing_rows, overriding_profile, read_rows, unknown_profile
from spoutline.ruletables.schema import read_toml

_LIMITS = Path("rules", "limits")
_JURISDICTIONS = Path("rules", "jurisdictions")
_MATERIALS = Path("rules", "materials.toml")


def load_rule_tables(jurisdiction_id: str, *, resources: Path, own_profiles: Path | None) -> RuleTables:
    """Return the jurisdiction and the material table.

    Parameters
    ----------
    jurisdiction_id
        Id of a built-in or own profile.
    resources
        The resources folder.
    own_profiles
        Folder of the person's own profiles; None where there is none.

    Raises
    ------
    InputFault
        The id is unknown (with the nearest known ones), or a file has faults (all of them).
    StoreFault
        A file cannot be read.
    """
    built_in = {profile.id: profile for profile in built_in_profiles(resources)}
    jurisdiction = built_in.get(jurisdiction_id)
    if jurisdiction is None:
        own_ids = own_profile_ids(own_profiles) if own_profiles is not None else ()
        if own_profiles is None or jurisdiction_id not in own_ids:
            raise unknown_profile(jurisdiction_id, [*built_in, *own_ids])
        jurisdiction = own_profile(own_profiles, jurisdiction_id)
    materials = resources / _MATERIALS
    return RuleTables(jurisdiction, _materials(read_text(materials), materials.name))


def built_in_profiles(resources: Path) -> tuple[Jurisdiction, ...]:
    """Return the built-in profiles sorted by id; raise ``InputFault`` with every fault of every file."""
    return _profiles(_texts(resources / _LIMITS), _texts(resources / _JURISDICTIONS))


@frozen
class _Text:
    """A table as it lies in its file, or why it cannot be read as text."""

    path: Path
    text: str
    problems: tuple[InputProblem, ...] = ()


@lru_cache(maxsize=4)
def _materials(text: str, place: str) -> MaterialTable:
    return materials_from_toml(text, place)


@lru_cache(maxsize=4)
def _profiles(limits: tuple[_Text, ...], jurisdictions: tuple[_Text, ...]) -> tuple[Jurisdiction, ...]:
    """Return the profiles of these texts; the same texts are read once."""
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


def _general_rows(texts: tuple[_Text, ...]) -> dict[LimitId, Limit]:
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


def _texts(folder: Path) -> tuple[_Text, ...]:
    files = sorted(folder.glob("*.toml"))
    if not files:
        raise StoreFault(f"No rule tables in {folder}. Install the program again, or name the right resources folder.")
    return tuple(map(_text, files))


def _text(path: Path) -> _Text:
    try:
        return _Text(path, read_text(path))
    except InputFault as fault:
        return _Text(path, "", fault.problems)
