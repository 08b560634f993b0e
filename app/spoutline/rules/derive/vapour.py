"""Which path the set has, and whether the profile lets the vapour status be what is wanted."""

from __future__ import annotations

from spoutline.model.finding import Verdict
from spoutline.model.limit import LimitId
from spoutline.model.liquid import LiquidFamily
from spoutline.model.port import FlowPath
from spoutline.model.quantity import Fact
from spoutline.model.requirement import RefusalStatus, WayOut
from spoutline.model.survey import Duty, Position, VapourStatus
from spoutline.rules.declared.registry import RuleId
from spoutline.rules.derive.refusal import Refused
from spoutline.rules.verdicts import Derivation, yes_no

RECOVERY_REQUIRED, RECOVERY_PROHIBITED, RECOVERY_TO_ASK = "required", "prohibited", "ask"
REMOVAL_NOT_ALLOWED, REMOVAL_TO_ASK = "not_allowed", "ask"

_PATH_OF = {
    VapourStatus.NONE: FlowPath.SINGLE,
    VapourStatus.BALANCE: FlowPath.BALANCE,
    VapourStatus.VACUUM_ASSIST: FlowPath.VACUUM_ASSIST,
}


def path_of(status: VapourStatus) -> FlowPath:
    """Return the path that parts of a vapour status have.

    Parameters: ``status``. Source: UL 330 clause 4 note (paths).
    """
    return _PATH_OF[status]


def path_for(position: Position) -> FlowPath:
    """Return the path that the wanted vapour status asks of every part.

    Parameters: ``position``, its ``vapour_wanted``. Source: UL 330 clause 4 note (paths); never mixed.
    """
    return _PATH_OF[position.vapour_wanted]


def derive_path(notes: Derivation) -> tuple[Refused, ...]:
    """Add the lines of path and vapour parts; return what forbids the wanted vapour status.

    Parameters: ``notes``, the derivation under way. Result: refusals, empty where the wish may stand.
    """
    position, jurisdiction = notes.position, notes.tables.jurisdiction
    path = path_for(position)
    facts = (
        Fact("vapour_today", position.vapour_today),
        Fact("vapour_wanted", position.vapour_wanted),
    )
    gasoline = position.liquid.family is LiquidFamily.GASOLINE
    used = (LimitId.VAPOUR_RECOVERY, LimitId.VAPOUR_REMOVAL) if gasoline else ()
    notes.line(RuleId.ASKS_PATH, *facts, Fact("path", path), limits=used)
    notes.line(
        RuleId.ASKS_VAPOUR_PARTS,
        Fact("path", path),
        Fact("bellows", yes_no(path is FlowPath.BALANCE)),
        Fact("outlet_path", position.outlet.path),
    )
    if not gasoline:
        return _never_on_other_liquids(notes)
    if position.vapour_wanted is not VapourStatus.NONE:
        if jurisdiction.text(LimitId.VAPOUR_RECOVERY) != RECOVERY_PROHIBITED:
            return ()
        found = notes.find(
            RuleId.VAPOUR_RECOVERY_PROHIBITED, *facts, verdict=Verdict.BROKEN, limits=(LimitId.VAPOUR_RECOVERY,)
        )
        return (Refused(RefusalStatus.NOT_ALLOWED, found, (WayOut.DROP_VAPOUR_RECOVERY,)),)
    return _without_recovery(notes, facts)


def _never_on_other_liquids(notes: Derivation) -> tuple[Refused, ...]:
    position = notes.position
    if position.vapour_wanted is VapourStatus.NONE:
        return ()
    found = notes.find(
        RuleId.VAPOUR_FOR_NON_GASOLINE,
        Fact("family", position.liquid.family),
        Fact("vapour_wanted", position.vapour_wanted),
        verdict=Verdict.BROKEN,
    )
    return (Refused(RefusalStatus.CONTRADICTION, found, (WayOut.DROP_VAPOUR_RECOVERY,)),)


def _without_recovery(notes: Derivation, facts: tuple[Fact, ...]) -> tuple[Refused, ...]:
    """Gasoline without recovery: may it go, or may it be absent.

    A position that has none today under a profile that requires it can only be one of an exempt station, so the
    exemption is asked for and the set is planned as for an exempt station.
    """
    position, jurisdiction = notes.position, notes.tables.jurisdiction
    recovery = jurisdiction.text(LimitId.VAPOUR_RECOVERY)
    removal = jurisdiction.text(LimitId.VAPOUR_REMOVAL)
    both = (LimitId.VAPOUR_RECOVERY, LimitId.VAPOUR_REMOVAL)
    if position.vapour_today is not VapourStatus.NONE:
        if recovery != RECOVERY_PROHIBITED and removal == REMOVAL_NOT_ALLOWED:
            found = notes.find(RuleId.VAPOUR_REMOVAL_NOT_ALLOWED, *facts, verdict=Verdict.BROKEN, limits=both)
            ways = (WayOut.KEEP_VAPOUR_RECOVERY, WayOut.ASK_AUTHORITY_AND_MAKER)
            return (Refused(RefusalStatus.NOT_ALLOWED, found, ways),)
        if recovery != RECOVERY_PROHIBITED and removal == REMOVAL_TO_ASK:
            notes.find(RuleId.VAPOUR_REMOVAL_TO_ASK, *facts, verdict=Verdict.QUESTION, limits=both)
    if position.duty is Duty.CAR:
        _ask_about_absence(notes, recovery, facts)
    return ()


def _ask_about_absence(notes: Derivation, recovery: str, facts: tuple[Fact, ...]) -> None:
    rule_id = {
        RECOVERY_REQUIRED: RuleId.VAPOUR_EXEMPTION_TO_SHOW,
        RECOVERY_TO_ASK: RuleId.VAPOUR_RECOVERY_TO_ASK,
    }.get(recovery)
    if rule_id is not None:
        notes.find(rule_id, *facts, verdict=Verdict.QUESTION, limits=(LimitId.VAPOUR_RECOVERY,))
