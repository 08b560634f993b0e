"""The person's own rule profiles: one TOML file each, written whole or not at all."""

from __future__ import annotations

from functools import lru_cache
from pathlib import Path

from spoutline.model.faults import InputFault, InputProblem, StoreFault
from spoutline.model.limit import Jurisdiction
from spoutline.model.worded import Worded
from spoutline.ruletables.files import read_text
from spoutline.ruletables.profile_files import SUFFIX, own_profile_ids
from spoutline.ruletables.profiles import profile_from_toml, profile_to_toml, unknown_profile
from spoutline.whole_files import write_file


def own_profiles(folder: Path) -> tuple[Jurisdiction, ...]:
    """Return every own profile sorted by id; raise ``InputFault`` with the faults of all files together."""
    profiles: list[Jurisdiction] = []
    problems: list[InputProblem] = []
    for profile_id in own_profile_ids(folder):
        try:
            profiles.append(own_profile(folder, profile_id))
        except InputFault as fault:
            problems.extend(fault.problems)
    if problems:
        raise InputFault(tuple(problems))
    return tuple(profiles)


def own_profile(folder: Path, profile_id: str) -> Jurisdiction:
    """Return one own profile.

    Raises
    ------
    InputFault
        No such profile, or its file has faults.
    StoreFault
        The file cannot be read.
    """
    if profile_id not in own_profile_ids(folder):
        raise unknown_profile(profile_id, own_profile_ids(folder))
    path = folder / f"{profile_id}{SUFFIX}"
    profile = _read(read_text(path), path.name)
    if profile.id != profile_id:
        wanted = Worded(
            "the file is named {path_name}, so the id must be {profile_id}", path_name=path.name, profile_id=profile_id
        )
        raise InputFault((InputProblem(path.name, "profile, id", repr(profile.id), wanted),))
    return profile


@lru_cache(maxsize=32)
def _read(text: str, place: str) -> Jurisdiction:
    """Return the profile of a text; one that did not change since is not read again."""
    return profile_from_toml(text, place)


def save_own_profile(folder: Path, profile: Jurisdiction) -> Path:
    """Write ``profile`` to its file and return the path; a failure leaves the former file as it was.

    Raises
    ------
    InputFault
        The profile is a built-in one.
    StoreFault
        The file cannot be written.
    """
    if profile.built_in:
        wanted = "built-in profiles stay as they are; copy the profile and save the copy"
        raise InputFault((InputProblem("", "profile", repr(profile.id), wanted),))
    path = folder / f"{profile.id}{SUFFIX}"
    try:
        folder.mkdir(parents=True, exist_ok=True)
    except OSError as fault:
        raise StoreFault(
            Worded("The rule profile {path} cannot be written: {reason}.", path=path, reason=fault.strerror)
        ) from fault
    write_file(path, profile_to_toml(profile).encode("utf-8"))
    return path


def remove_own_profile(folder: Path, profile_id: str) -> None:
    """Delete one own profile.

    Raises
    ------
    InputFault
        No such profile.
    StoreFault
        The file cannot be deleted.
    """
    own = own_profile_ids(folder)
    if profile_id not in own:
        known = Worded("those are {own}", own=", ".join(own)) if own else "there is none yet"
        wanted = Worded("no such rule profile of your own; only your own can be removed, and {known}", known=known)
        raise InputFault((InputProblem("", "jurisdiction", repr(profile_id), wanted),))
    path = folder / f"{profile_id}{SUFFIX}"
    try:
        path.unlink()
    except OSError as fault:
        raise StoreFault(
            Worded("The rule profile {path} cannot be deleted: {reason}.", path=path, reason=fault.strerror)
        ) from fault
