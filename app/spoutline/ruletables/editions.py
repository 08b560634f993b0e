"""Own jurisdictions held against their parent, and published as numbered editions that never change any more."""

from __future__ import annotations

from collections.abc import Iterator
from datetime import date
from pathlib import Path
from typing import Final

from pydantic import BaseModel, ConfigDict

from spoutline.frozen import frozen
from spoutline.model.faults import InputFault, InputProblem, StoreFault
from spoutline.model.limit import Jurisdiction, Limit, LimitId, LimitStatus
from spoutline.model.worded import Worded
from spoutline.ruletables.files import read_text
from spoutline.ruletables.profile_files import EDITIONS, SUFFIX, published_refs, split_ref
from spoutline.ruletables.profiles import profile_from_toml, profile_to_toml
from spoutline.ruletables.schema import Line, read_toml, validated
from spoutline.ruletables.tomltext import quoted
from spoutline.whole_files import write_file

GENERAL: Final = "us_general"  # whose rows the other built-in jurisdictions override
_HEAD: Final = "published"
_WELL_FOUNDED: Final = frozenset({LimitStatus.VERIFIED, LimitStatus.SECONDARY})


@frozen
class RowChange:
    """A row of a jurisdiction and the row of its parent."""

    before: Limit
    after: Limit

    @property
    def id(self) -> LimitId:
        """Which limit it is."""
        return self.after.id

    @property
    def changes_value(self) -> bool:
        """Whether the figure itself differs, not only how it is founded."""
        return self.before.value != self.after.value


@frozen(kw_only=True)
class RuleEdition:
    """A published edition of an own jurisdiction."""

    number: int
    published_on: date
    publisher: str
    note: str
    jurisdiction: Jurisdiction


class _Published(BaseModel):
    model_config = ConfigDict(frozen=True, extra="forbid")

    number: int
    published_on: date
    publisher: Line
    note: Line


def parent_id(profile: Jurisdiction) -> str:
    """Return the id of the jurisdiction that this one was copied from; empty for the general one."""
    if profile.built_in:
        return "" if profile.id == GENERAL else GENERAL
    return profile.edition.split(" ", maxsplit=1)[0]


def row_changes(parent: Jurisdiction, profile: Jurisdiction) -> tuple[RowChange, ...]:
    """Return the rows that differ from those of the parent, in the order of the limits."""
    return tuple(
        RowChange(before, after)
        for before, after in zip(parent.limits, profile.limits, strict=True)
        if _told(before) != _told(after)
    )


def _told(limit: Limit) -> tuple[object, ...]:
    return limit.value, limit.source, limit.clause, limit.edition, limit.status, limit.note


def weakly_founded(changes: tuple[RowChange, ...]) -> tuple[RowChange, ...]:
    """Return the changed figures that nobody read in a published text or had reported: to look at before publishing."""
    return tuple(one for one in changes if one.changes_value and one.after.status not in _WELL_FOUNDED)


def editions_of(folder: Path, profile_id: str) -> Iterator[RuleEdition]:
    """Yield the published editions of an own jurisdiction from the first on; raise ``InputFault`` for a faulty file."""
    numbers = sorted(
        ref[1] for ref in map(split_ref, published_refs(folder)) if ref is not None and ref[0] == profile_id
    )
    for number in numbers:
        yield read_edition(folder, profile_id, number)


def read_edition(folder: Path, profile_id: str, number: int) -> RuleEdition:
    """Return a published edition; raise ``InputFault`` where there is none or its file has faults."""
    path = _path(folder, profile_id, number)
    published = published_refs(folder)
    if f"{profile_id}@{number}" not in published:
        known = ", ".join(one for one in published if one.startswith(f"{profile_id}@"))
        wanted = Worded("a published edition: {known}", known=known or Worded("none is published yet"))
        raise InputFault((InputProblem("", "jurisdiction", repr(f"{profile_id}@{number}"), wanted),))
    text = read_text(path)
    rows, _, head = text.rpartition(f"\n[{_HEAD}]\n")
    problems: list[InputProblem] = []
    said = validated(_Published, read_toml(head, path.name), place=path.name, row=_HEAD, problems=problems)
    if said is None or not rows:
        raise InputFault(
            tuple(problems) or (InputProblem(path.name, _HEAD, "nothing", Worded("the table [{name}]", name=_HEAD)),)
        )
    profile = profile_from_toml(rows + "\n", path.name)
    return RuleEdition(
        number=said.number,
        published_on=said.published_on,
        publisher=said.publisher,
        note=said.note,
        jurisdiction=profile,
    )


def publish(folder: Path, profile: Jurisdiction, *, publisher: str, note: str, on: date) -> RuleEdition:
    """Write an own jurisdiction as its next edition.

    Raises
    ------
    InputFault
        It is built in, nobody signs it, no note says what is new, or nothing changed since the newest edition.
    StoreFault
        It cannot be written.
    """
    before = list(editions_of(folder, profile.id))
    problems = [
        InputProblem("", field, "nothing", wanted)
        for field, text, wanted in (
            ("publisher", publisher, "say who publishes it"),
            ("note", note, "say what is new in this edition"),
        )
        if not text.strip()
    ]
    if profile.built_in:
        problems.append(
            InputProblem("", "jurisdiction", repr(profile.id), "copy the built-in rules and publish the copy")
        )
    if before and before[-1].jurisdiction == profile:
        wanted = Worded("nothing changed in it since edition {number}", number=before[-1].number)
        problems.append(InputProblem("", "jurisdiction", repr(profile.id), wanted))
    if problems:
        raise InputFault(tuple(problems))
    number = before[-1].number + 1 if before else 1
    path = _path(folder, profile.id, number)
    head = (
        f"\n[{_HEAD}]\nnumber = {number}\npublished_on = {on.isoformat()}\n"
        f"publisher = {quoted(publisher.strip())}\nnote = {quoted(note.strip())}\n"
    )
    try:
        path.parent.mkdir(parents=True, exist_ok=True)
    except OSError as fault:
        reason = fault.strerror or fault
        raise StoreFault(Worded("The edition {path} cannot be written: {reason}.", path=path, reason=reason)) from fault
    write_file(path, (profile_to_toml(profile) + head).encode())
    return read_edition(folder, profile.id, number)


def _path(folder: Path, profile_id: str, number: int) -> Path:
    return folder / EDITIONS / f"{profile_id}@{number}{SUFFIX}"
