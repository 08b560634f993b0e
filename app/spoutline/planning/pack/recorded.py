"""What is recorded, held against the catalogue and the set: unknown parts asked again, replacements judged."""

from __future__ import annotations

from collections.abc import Sequence
from datetime import date

from spoutline.model.day_of_work import wanted_day
from spoutline.model.faults import InputFault, InputProblem
from spoutline.model.part import PartKind
from spoutline.model.part_ref import PartRef, told_apart
from spoutline.model.plan import PositionPlan
from spoutline.model.record import CommissioningRecord, UnreadField, WearEntry
from spoutline.model.worded import Worded
from spoutline.planning.pack.as_built import built_position, hanging_now
from spoutline.planning.part_names import wrong_refs
from spoutline.planning.protocols import PartStore
from spoutline.planning.sets.context import PlanningContext
from spoutline.planning.sets.pool import SLOT_KINDS

_CHAIN_KINDS = frozenset(SLOT_KINDS.values())


def with_known_parts(record: CommissioningRecord, parts: PartStore) -> CommissioningRecord:
    """Return a record whose changes name parts of the catalogue; a field that names none is asked for again.

    So is one that names an accessory, which is no part of the chain.
    """
    fitted = [ref for change in record.changes for ref in change.fitted]
    if not fitted:
        return record
    wrong = wrong_refs(fitted, parts)
    for part in parts.parts([ref for ref in fitted if ref not in wrong]):
        if part.kind not in _CHAIN_KINDS:
            kind = part.kind.value.replace("_", " ")
            said = Worded("a {kind} is no part of the chain; leave it out of the fitted parts", kind=kind)
            wrong |= {ref: said for ref in fitted if ref.names(part.ref)}
    kept, unread = [], list(record.unread)
    for change in record.changes:
        told = "; ".join(dict.fromkeys(wrong[ref] for ref in change.fitted if ref in wrong))
        if not told:
            kept.append(change)
            continue
        place = next((at for at, ref in enumerate(record.parts, start=1) if change.planned.names(ref)), 0)
        value = ", ".join(map(str, change.fitted))
        unread.append(UnreadField(field=f"part{place}_fitted", value=value, wanted=told))
    return record.model_copy(update={"changes": tuple(kept), "unread": tuple(unread)})


def with_past_day(record: CommissioningRecord, latest: date) -> CommissioningRecord:
    """Return a record without a day after ``latest``, which is asked for again: nobody has worked in days to come."""
    if record.done_on is None or record.done_on <= latest:
        return record
    asked = UnreadField(field="done_on", value=record.done_on.isoformat(), wanted=str(wanted_day(latest)))
    return record.model_copy(update={"done_on": None, "unread": (*record.unread, asked)})


def check_kinds(entry: WearEntry, parts: PartStore) -> None:
    """Raise ``InputFault`` where a replacement is of another kind than what it replaces, or no part of a chain."""
    removed = parts.part(entry.removed)
    fitted = parts.part(entry.fitted) if entry.fitted else removed
    problems = []
    if removed is not None and removed.kind not in _CHAIN_KINDS:
        wanted = Worded(
            "a {named} is no part of a chain; name the hose, coupling or nozzle that came off",
            named=_named(removed.kind),
        )
        problems.append(InputProblem("", "part taken off", repr(str(entry.removed)), wanted))
    elif removed is not None and fitted is not None and fitted.kind is not removed.kind:
        wanted = Worded(
            "a {named} came off, and this is a {named2}", named=_named(removed.kind), named2=_named(fitted.kind)
        )
        problems.append(InputProblem("", "part put on", repr(str(entry.fitted)), wanted))
    if problems:
        raise InputFault(tuple(problems))


def replaced(
    entry: WearEntry,
    plan: PositionPlan,
    records: Sequence[CommissioningRecord],
    wear: Sequence[WearEntry],
    context: PlanningContext,
) -> PositionPlan:
    """Return the position as it hangs after a replacement, judged by every rule and check.

    Parameters
    ----------
    entry
        The replacement.
    plan
        The position with the set that was agreed or planned.
    records, wear
        What the book knows of the site, oldest first.
    context
        Rule tables and catalogue.

    Raises
    ------
    InputFault
        The position has no set, the part taken off does not hang there, or the part put on is of another kind.
    """
    check_kinds(entry, context.parts)
    label = plan.position.label
    if plan.chosen is None:
        wanted = "by its plan nothing hangs there"
        raise InputFault((InputProblem("", "position", repr(label), wanted),))
    record = next((one for one in reversed(records) if one.position == label), None)
    before = hanging_parts(plan, records, wear, context)
    if not any(entry.removed.names(ref) for ref in before):
        wanted = Worded(
            "it must be a part that hangs at {label}: {told_apart}",
            label=label,
            told_apart=", ".join(told_apart(before)),
        )
        raise InputFault((InputProblem("", "part taken off", repr(str(entry.removed)), wanted),))
    after = hanging_now(plan, record, (*wear, entry), context) or before
    base = record or CommissioningRecord(site=entry.site, position=label, plan_revision="0" * 16)
    return built_position(plan, base.model_copy(update={"parts": after, "changes": ()}), context)


def hanging_parts(
    plan: PositionPlan, records: Sequence[CommissioningRecord], wear: Sequence[WearEntry], context: PlanningContext
) -> tuple[PartRef, ...]:
    """Return the parts that hang at a position now, dispenser first.

    The newest record and the wear log after it say it. Where neither does, it is what the survey found there, by
    number, and the set of ``plan``, which may be fitted by now. Parameters as of ``replaced``.
    """
    label = plan.position.label
    record = next((one for one in reversed(records) if one.position == label), None)
    recorded = hanging_now(plan, record, wear, context)
    if recorded is not None:
        return recorded
    surveyed = tuple(item.ref for item in plan.position.installed if item.ref is not None)
    planned = plan.chosen.hanging_set.refs if plan.chosen is not None else ()
    left, found = list(planned), list(surveyed)
    for ref in surveyed:
        same = next((one for one in left if ref.names(one)), None)
        if same is not None:
            left.remove(same)
            found[found.index(ref)] = same
    return (*found, *left)


def _named(kind: PartKind) -> str:
    return kind.value.replace("_", " ")
