"""Load the tables that a plan is given: the jurisdictions, the material table, the tables on vapour recovery.

What a text means is read by modules that are loaded only where nothing of it is kept from an earlier start.
"""

from __future__ import annotations

from collections.abc import Callable, Hashable, Sequence
from functools import lru_cache
from pathlib import Path
from typing import Protocol, TypeVar

from spoutline.model.faults import InputFault, StoreFault
from spoutline.model.limit import Jurisdiction, RuleTables
from spoutline.model.material import MaterialTable
from spoutline.model.vapour_figures import VapourTables
from spoutline.ruletables.files import read_text
from spoutline.ruletables.profile_files import own_profile_ids
from spoutline.ruletables.table_text import TableText

_LIMITS = Path("rules", "limits")
_JURISDICTIONS = Path("rules", "jurisdictions")
_MATERIALS = Path("rules", "materials.toml")
_VAPOUR = Path("rules", "vapour")
_VAPOUR_TABLES = ("figures.toml", "onboard_shares.toml", "agencies.toml")

_T = TypeVar("_T")


class Keep(Hashable, Protocol):
    """Returns what texts mean: what was kept of these very texts, else what ``read`` makes of them."""

    def __call__(self, name: str, texts: Sequence[str], read: Callable[[], _T]) -> _T:
        """Return it; raise what ``read`` raises. ``name`` says which reader it is."""
        ...


def read_anew(name: str, texts: Sequence[str], read: Callable[[], _T]) -> _T:
    """Return what ``read`` makes of texts of which nothing is kept."""
    return read()


def load_rule_tables(
    jurisdiction_id: str, *, resources: Path, own_profiles: Path | None, keep: Keep = read_anew
) -> RuleTables:
    """Return the jurisdiction and the material table.

    Parameters
    ----------
    jurisdiction_id
        Id of a built-in or own profile.
    resources
        The resources folder.
    own_profiles
        Folder of the person's own profiles; None where there is none.
    keep
        What is kept of tables that were read before.

    Raises
    ------
    InputFault
        The id is unknown (with the nearest known ones), or a file has faults (all of them).
    StoreFault
        A file cannot be read.
    """
    built_in = {profile.id: profile for profile in built_in_profiles(resources, keep)}
    jurisdiction = built_in.get(jurisdiction_id) or _own(jurisdiction_id, tuple(built_in), own_profiles)
    materials = resources / _MATERIALS
    return RuleTables(jurisdiction, _materials(read_text(materials), materials.name, keep))


def built_in_profiles(resources: Path, keep: Keep = read_anew) -> tuple[Jurisdiction, ...]:
    """Return the built-in profiles sorted by id; raise ``InputFault`` with every fault of every file."""
    return _profiles(_texts(resources / _LIMITS), _texts(resources / _JURISDICTIONS), keep)


def load_vapour_tables(resources: Path, keep: Keep = read_anew) -> VapourTables:
    """Return the tables on vapour recovery.

    Parameters
    ----------
    resources
        The resources folder.
    keep
        What is kept of tables that were read before.

    Raises
    ------
    InputFault
        With every fault of every file.
    StoreFault
        A file cannot be read.
    """
    texts = tuple(read_text(resources / _VAPOUR / name) for name in _VAPOUR_TABLES)

    def read() -> VapourTables:
        from spoutline.ruletables.vapour import vapour_tables_from_toml

        return vapour_tables_from_toml(*texts)

    return keep("vapour", texts, read)


@lru_cache(maxsize=4)
def _materials(text: str, place: str, keep: Keep) -> MaterialTable:
    def read() -> MaterialTable:
        from spoutline.ruletables.materials import materials_from_toml

        return materials_from_toml(text, place)

    return keep("materials", (text, place), read)


@lru_cache(maxsize=4)
def _profiles(
    limits: tuple[TableText, ...], jurisdictions: tuple[TableText, ...], keep: Keep
) -> tuple[Jurisdiction, ...]:
    """Return the profiles of these texts; the same texts are read once."""

    def read() -> tuple[Jurisdiction, ...]:
        from spoutline.ruletables.built_in import profiles_of

        return profiles_of(limits, jurisdictions)

    if any(one.problems for one in (*limits, *jurisdictions)):
        return read()  # which tells of them
    told = [part for tables in (limits, jurisdictions) for one in tables for part in (one.path.name, one.text)]
    return keep("jurisdictions", (str(len(limits)), *told), read)


def _own(jurisdiction_id: str, built_in: Sequence[str], folder: Path | None) -> Jurisdiction:
    from spoutline.ruletables.own_profiles import own_profile
    from spoutline.ruletables.profiles import unknown_profile

    own_ids = own_profile_ids(folder) if folder is not None else ()
    if folder is None or jurisdiction_id not in own_ids:
        raise unknown_profile(jurisdiction_id, [*built_in, *own_ids])
    return own_profile(folder, jurisdiction_id)


def _texts(folder: Path) -> tuple[TableText, ...]:
    files = sorted(folder.glob("*.toml"))
    if not files:
        raise StoreFault(f"No rule tables in {folder}. Install the program again, or name the right resources folder.")
    return tuple(map(_text, files))


def _text(path: Path) -> TableText:
    try:
        return TableText(path, read_text(path))
    except InputFault as fault:
        return TableText(path, "", fault.problems)
