"""Rule profiles as text and as values: read one, write one, copy one, change a row of one."""

from __future__ import annotations

import dataclasses
import hashlib
from collections.abc import Mapping, Sequence
from typing import Any

from spoutline.frozen import frozen
from spoutline.model.faults import InputFault, InputProblem
from spoutline.model.limit import Jurisdiction, Limit, LimitId, LimitStatus
from spoutline.model.worded import Worded
from spoutline.ruletables.consistency import contradictions
from spoutline.ruletables.kinds import KINDS, Form
from spoutline.ruletables.nearness import nearest
from spoutline.ruletables.rows import limit_of, written_value
from spoutline.ruletables.schema import LimitRow, ProfileHead, read_toml, row_name, validated
from spoutline.ruletables.tomltext import quoted, quoted_list

_ROW_TABLE = "limit"
_OVERRIDE_TABLE = "override"
_FINGERPRINT_MARK = " / "


@frozen(kw_only=True)
class WrittenRow:
    """A row as a person writes it: the value as the source prints it, and where it comes from.

    ``printed`` is digits, ``yes`` / ``no``, a word, or cases separated by commas; empty for no value. ``unit`` is
    that of a number, empty for everything else.
    """

    id: LimitId
    printed: str
    unit: str
    source: str
    clause: str
    edition: str
    status: LimitStatus
    note: str = ""


def profile_from_toml(text: str, place: str) -> Jurisdiction:
    """Return the profile that a self-contained file holds (every limit row is in it).

    Parameters
    ----------
    text
        The TOML text as ``profile_to_toml`` writes it.
    place
        File name for the messages.

    Raises
    ------
    InputFault
        With every fault of the file: syntax, fields, units, ranges, missing rows, rows that contradict each other.
    """
    document = read_toml(text, place)
    problems: list[InputProblem] = []
    head = read_head(document, place, tables=(_ROW_TABLE,), problems=problems)
    limits = read_rows(document.get(_ROW_TABLE, []), place=place, titles={}, problems=problems)
    problems.extend(_missing(limits, place, already_faulty=bool(problems)))
    if head is None or problems:
        raise InputFault(tuple(problems))
    profile = _stamped(Jurisdiction(head.id, head.title, head.edition, False, ordered(limits), tuple(head.questions)))
    return _consistent(profile, place)


def overriding_profile(text: str, place: str, base: Mapping[LimitId, Limit]) -> Jurisdiction:
    """Return a built-in profile: the general rows of ``base`` with the overrides that ``text`` lists.

    Raises
    ------
    InputFault
        With every fault of the file, and those that only show once base and overrides stand together.
    """
    document = read_toml(text, place)
    problems: list[InputProblem] = []
    head = read_head(document, place, tables=(_OVERRIDE_TABLE,), problems=problems)
    titles = {limit_id: limit.title for limit_id, limit in base.items()}
    overrides = read_rows(document.get(_OVERRIDE_TABLE, []), place=place, titles=titles, problems=problems)
    if head is None or problems:
        raise InputFault(tuple(problems))
    limits = ordered({**base, **overrides})
    return _consistent(Jurisdiction(head.id, head.title, head.edition, True, limits, tuple(head.questions)), place)


def profile_to_toml(profile: Jurisdiction) -> str:
    """Return the profile as self-contained TOML text, the same text for the same profile."""
    lines = [
        f"id = {quoted(profile.id)}",
        f"title = {quoted(profile.title)}",
        f"edition = {quoted(profile.edition)}",
        f"questions = {quoted_list(profile.questions)}",
    ]
    for limit in profile.limits:
        lines += ["", f"[[{_ROW_TABLE}]]", *_row_lines(limit)]
    return "\n".join(lines) + "\n"


def copy_profile(base: Jurisdiction, new_id: str, title: str) -> Jurisdiction:
    """Return an own profile with the rows of ``base`` under a new id and title.

    Raises
    ------
    InputFault
        The id or title is not usable, or the id is that of ``base``.
    """
    problems: list[InputProblem] = []
    edition = f"{base.id} {base.edition}"
    head = validated(
        ProfileHead, {"id": new_id, "title": title, "edition": edition}, place="", row="profile", problems=problems
    )
    if head is not None and head.id == base.id:
        problems.append(InputProblem("", "profile, id", repr(new_id), "give the copy an id of its own"))
    if head is None or problems:
        raise InputFault(tuple(problems))
    return _stamped(dataclasses.replace(base, id=head.id, title=head.title, edition=edition, built_in=False))


def with_row(profile: Jurisdiction, written: WrittenRow) -> Jurisdiction:
    """Return ``profile`` with one row changed.

    Raises
    ------
    InputFault
        The profile is a built-in one, the value or unit does not fit the row, or the row contradicts another.
    """
    if profile.built_in:
        wanted = "copy the profile first and change the copy"
        raise InputFault((InputProblem("", "profile", repr(profile.id), wanted),))
    problems: list[InputProblem] = []
    data = {
        "id": written.id,
        "value": written_value(written.id, written.printed),
        "unit": written.unit.strip(),
        "source": written.source,
        "clause": written.clause,
        "edition": written.edition,
        "status": written.status,
        "note": written.note,
    }
    row = validated(LimitRow, data, place="", row=str(written.id), problems=problems)
    title = profile.limit(written.id).title
    limit = limit_of(row, title=title, place="", row_label=str(written.id), problems=problems) if row else None
    if limit is None:
        raise InputFault(tuple(problems))
    limits = tuple(limit if old.id is written.id else old for old in profile.limits)
    return _consistent(_stamped(dataclasses.replace(profile, limits=limits)), "")


def read_head(
    document: Mapping[str, Any], place: str, *, tables: Sequence[str], problems: list[InputProblem]
) -> ProfileHead | None:
    """Return the head of a profile document; add every fault to ``problems``."""
    head = {name: value for name, value in document.items() if name not in tables}
    return validated(ProfileHead, head, place=place, row="profile", problems=problems)


def read_rows(
    rows: object, *, place: str, titles: Mapping[LimitId, str], problems: list[InputProblem]
) -> dict[LimitId, Limit]:
    """Return the limits of a list of written rows; add every fault to ``problems``.

    ``titles`` lends a title to rows that override another; a row without either is a fault.
    """
    if not isinstance(rows, list):
        problems.append(InputProblem(place, _ROW_TABLE, repr(rows), "write the rows as [[limit]] tables"))
        return {}
    limits: dict[LimitId, Limit] = {}
    for index, data in enumerate(rows, start=1):
        label = row_name(data, index)
        row = validated(LimitRow, data, place=place, row=label, problems=problems)
        if row is None:
            continue
        title = row.title or titles.get(row.id)
        if title is None:
            problems.append(InputProblem(place, f"{label}, title", "nothing", "give the row a title"))
            continue
        if row.id in limits:
            problems.append(InputProblem(place, f"{label}, id", repr(row.id.value), "each limit stands once"))
            continue
        limit = limit_of(row, title=title, place=place, row_label=label, problems=problems)
        if limit is not None:
            limits[row.id] = limit
    return limits


def ordered(limits: Mapping[LimitId, Limit]) -> tuple[Limit, ...]:
    """Return the limits in the order in which the ids are declared."""
    return tuple(limits[limit_id] for limit_id in LimitId if limit_id in limits)


def missing_rows(limits: Mapping[LimitId, Limit], place: str) -> list[InputProblem]:
    """Return one problem for each limit that no row holds."""
    return [
        InputProblem(place, limit_id, "nothing", "this limit must have a row")
        for limit_id in LimitId
        if limit_id not in limits
    ]


def unknown_profile(profile_id: str, known: Sequence[str], place: str = "") -> InputFault:
    """Return the fault for a profile id that nobody knows, with the nearest known ones."""
    wanted = Worded("no such rule profile; {nearest}", nearest=nearest(profile_id, known))
    return InputFault((InputProblem(place, "jurisdiction", repr(profile_id), wanted),))


def _missing(limits: Mapping[LimitId, Limit], place: str, *, already_faulty: bool) -> list[InputProblem]:
    # a row that failed on its own is reported there; to call it missing as well would send the reader astray
    return [] if already_faulty else missing_rows(limits, place)


def _consistent(profile: Jurisdiction, place: str) -> Jurisdiction:
    problems = contradictions(profile, place)
    if problems:
        raise InputFault(tuple(problems))
    return profile


def _stamped(profile: Jurisdiction) -> Jurisdiction:
    """Return an own profile whose edition ends with a fingerprint of its rows, so that each edit shows on paper."""
    origin = profile.edition.split(_FINGERPRINT_MARK, maxsplit=1)[0]
    rows = "\n".join("\n".join(_row_lines(limit)) for limit in profile.limits)
    fingerprint = hashlib.sha256(rows.encode()).hexdigest()[:8]
    return dataclasses.replace(profile, edition=f"{origin}{_FINGERPRINT_MARK}{fingerprint}")


def _row_lines(limit: Limit) -> list[str]:
    lines = [f"id = {quoted(limit.id)}", f"title = {quoted(limit.title)}"]
    if limit.value is not None:
        lines.append(f"value = {_toml_value(limit)}")
    if limit.printed_unit:
        lines.append(f"unit = {quoted(limit.printed_unit)}")
    lines += [
        f"source = {quoted(limit.source)}",
        f"clause = {quoted(limit.clause)}",
        f"edition = {quoted(limit.edition)}",
        f"status = {quoted(limit.status)}",
    ]
    if limit.note:
        lines.append(f"note = {quoted(limit.note)}")
    return lines


def _toml_value(limit: Limit) -> str:
    form = KINDS[limit.id].form
    if form is Form.NUMBER:
        return limit.printed
    if form is Form.YES_NO:
        return "true" if limit.value else "false"
    return quoted_list(limit.value) if isinstance(limit.value, tuple) else quoted(limit.printed)
