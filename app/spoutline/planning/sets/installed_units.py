"""The parts that hang at a position today, as parts that the rules can judge, and which of them may stay."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import replace

from spoutline.frozen import frozen
from spoutline.model.conversion_answers import ConversionAnswers
from spoutline.model.difference_reason import DifferenceReason
from spoutline.model.finding import Finding, Severity, SubjectKind, Verdict
from spoutline.model.installed import InstalledCondition, InstalledPart, missing_figures
from spoutline.model.limit import RuleTables
from spoutline.model.part import HANGING_KINDS, Part, PartStatus, Price
from spoutline.model.part_figures import BLOCKS_OF_KIND, figures_in
from spoutline.model.part_ref import PartRef, any_names
from spoutline.model.port import Port
from spoutline.model.quantity import Fact
from spoutline.model.requirement import Requirement, Slot
from spoutline.model.survey import Position, Retrieval
from spoutline.model.worded import Worded
from spoutline.planning.sets.pool import SLOT_KINDS, JudgedPart, judged, slots_of
from spoutline.rules.declared.registry import RuleId
from spoutline.rules.derive.outlet import contradicting
from spoutline.rules.derive.requirement import chain_for
from spoutline.rules.derive.vapour import path_of
from spoutline.rules.parts.part_rules import judge_part
from spoutline.rules.verdicts import finding

# figures that a part and the survey's description of it keep under the same name and type
_SAME_NAMES = (
    *(figure.name for figure in figures_in("") if figure.many is not frozenset and figure.value_type is not Port),
    *dict.fromkeys(block for kind in HANGING_KINDS for block in BLOCKS_OF_KIND[kind]),
)
_HANGS = "hanging "  # stands before the joint of an article that hangs there; a stand-in of the search alone has it
NOT_RECORDED = "not recorded"  # stands for a part that must be there; the survey says nothing of it


@frozen(kw_only=True)
class InstalledUnit:
    """One installed part.

    ``part`` is what it is (the catalogue's row, or one made of the surveyed figures), None where that is not known;
    ``missing`` names what is not known. ``key`` is its number in the search, unlike any catalogue number.
    """

    index: int
    installed: InstalledPart
    part: Part | None
    key: str
    missing: tuple[str, ...]


@frozen(kw_only=True)
class UnitVerdict:
    """Whether a unit may stay: ``candidates`` are its judged stand-ins, empty where ``reason`` forbids it."""

    unit: InstalledUnit
    candidates: tuple[JudgedPart, ...]
    reason: DifferenceReason | None
    findings: tuple[Finding, ...] = ()


def installed_units(position: Position, known: Mapping[PartRef, Part]) -> tuple[InstalledUnit, ...]:
    """Return the installed parts of a position; ``known`` are the catalogue parts by what names them.

    Where the survey records none, the kinds that must hang there stand in for them, with nothing known but the path.
    """
    found = position.installed or _not_recorded(position)
    return tuple(_unit(index, item, known) for index, item in enumerate(found))


def _not_recorded(position: Position) -> tuple[InstalledPart, ...]:
    """Return the chain that must hang there where nothing was recorded; none at a position that is new."""
    if not position.exists_today:
        return ()
    path = path_of(position.vapour_today)
    at_nozzle = position.retrieval is not Retrieval.NONE
    return tuple(
        InstalledPart(kind=SLOT_KINDS[slot], description=NOT_RECORDED, path=path)
        for slot in chain_for(path, breakaway_at_nozzle=at_nozzle)
    )


def _unit(index: int, item: InstalledPart, known: Mapping[PartRef, Part]) -> InstalledUnit:
    key = Worded("installed {index}: {item_number}", index=index + 1, item_number=item.number or item.description)
    if item.ref is not None:
        part = known.get(item.ref)
        if part is not None and part.kind is not item.kind:
            part = None
        unknown = ("number",) if part is None else ()
        return InstalledUnit(index=index, installed=item, part=part, key=key, missing=unknown)
    missing = missing_figures(item)
    return InstalledUnit(
        index=index, installed=item, part=None if missing else _described(item), key=key, missing=missing
    )


def _described(item: InstalledPart) -> Part | None:
    figures = item.figures
    if figures is None:
        return None
    return Part(
        number=item.description[:60],
        maker="",
        kind=item.kind,
        name=item.description,
        status=PartStatus.ACTIVE,
        superseded_by=None,
        inlet=figures.inlet.port,
        outlet=figures.outlet.port if figures.outlet else None,
        listings=frozenset(item.listings or ()),
        schemes=frozenset(figures.schemes),
        prices=(),
        lead_time_days=0,
        pack_quantity=1,
        **{name: getattr(figures, name) for name in _SAME_NAMES},
    )


def unit_verdict(
    unit: InstalledUnit, requirement: Requirement, tables: RuleTables, answers: ConversionAnswers
) -> UnitVerdict:
    """Return whether an installed part may stay at a position with this requirement, and why not."""
    reason = _known_reason(unit, requirement, answers)
    slots = tuple(slot for slot in slots_of(requirement) if SLOT_KINDS[slot] is unit.installed.kind)
    if unit.part is None:
        return _unknown_part(unit, reason or DifferenceReason.FIGURES_UNKNOWN, requirement, tables)
    contradiction = _path_on_thread(unit.part, tables)
    if contradiction:
        return UnitVerdict(unit=unit, candidates=(), reason=DifferenceReason.BREAKS_RULE, findings=contradiction)
    if not slots:
        findings = judge_part(unit.part, requirement.chain[-1], requirement, tables)[:1]
        return UnitVerdict(unit=unit, candidates=(), reason=DifferenceReason.NO_PLACE, findings=findings)
    stand_in = replace(
        unit.part,
        number=_key_in_search(unit, requirement),
        status=PartStatus.ACTIVE,
        prices=(Price(currency=requirement.site.currency, minor=0),),
        lead_time_days=0,
        inlet=_hanging(unit.part.inlet),
        outlet=_hanging(unit.part.outlet),
    )
    candidates = tuple(_judged(stand_in, slot, unit, requirement, tables) for slot in slots)
    fitting = tuple(candidate for candidate in candidates if not candidate.forbidden_by)
    if not fitting:
        broken = tuple(finding for finding in candidates[0].findings if _is_broken_must(finding))
        single_use = all(one.rule_id == RuleId.BREAKAWAY_RECONNECTABLE for one in broken)
        why = DifferenceReason.NOT_RECONNECTABLE if single_use else DifferenceReason.BREAKS_RULE
        return UnitVerdict(unit=unit, candidates=(), reason=why, findings=broken)
    return UnitVerdict(unit=unit, candidates=() if reason else fitting, reason=reason)


def _hanging(port: Port | None) -> Port | None:
    """Return a port of a part that hangs there: inside an article it joins what came with it, never parts of a new one.

    Else what is bought anew would come with an article that nobody buys.
    """
    return replace(port, made_up_in=f"{_HANGS}{port.made_up_in}") if port is not None and port.made_up_in else port


def _path_on_thread(part: Part, tables: RuleTables) -> tuple[Finding, ...]:
    """Return what is wrong with a described part whose thread does not carry the path that was answered."""
    told = (contradicting(port.thread, port.path) for port in (part.inlet, part.outlet) if port is not None)
    return tuple(
        finding(RuleId.PATH_ON_THREAD, tables, SubjectKind.PART, part.number, *facts) for facts in told if facts
    )


def _unknown_part(
    unit: InstalledUnit, reason: DifferenceReason, requirement: Requirement, tables: RuleTables
) -> UnitVerdict:
    """Judge what little is known: a path that the new set does not have excludes the part whatever else it is."""
    path = unit.installed.path
    if path is None or path is requirement.path:
        return UnitVerdict(unit=unit, candidates=(), reason=reason)
    wrong = finding(
        RuleId.PART_PATH,
        tables,
        SubjectKind.PART,
        unit.installed.number or unit.installed.description,
        Fact("part_path", path),
        Fact("path", requirement.path),
    )
    return UnitVerdict(unit=unit, candidates=(), reason=DifferenceReason.BREAKS_RULE, findings=(wrong,))


def _judged(
    stand_in: Part, slot: Slot, unit: InstalledUnit, requirement: Requirement, tables: RuleTables
) -> JudgedPart:
    candidate = judged(stand_in, slot, requirement, tables)
    worn = unit.installed.condition is InstalledCondition.WORN
    return replace(candidate, regrets=candidate.regrets + 1) if worn else candidate


def _is_broken_must(finding: Finding) -> bool:
    return finding.severity is Severity.MUST and finding.verdict is Verdict.BROKEN


def _key_in_search(unit: InstalledUnit, requirement: Requirement) -> str:
    """Return the unit's key; a pinned number stays as it is, so that the pin counts the installed part too."""
    is_pinned = _is_among(requirement.position.decisions.pinned, unit)
    number = unit.installed.number if unit.part is None else unit.part.number
    return number if is_pinned else unit.key


def _is_among(refs: tuple[PartRef, ...], unit: InstalledUnit) -> bool:
    """Say whether one of ``refs`` names the installed part: by the catalogue's maker where it is known there."""
    if unit.installed.ref is None:
        return False
    return any_names(refs, unit.installed.ref if unit.part is None else unit.part.ref)


def _known_reason(unit: InstalledUnit, requirement: Requirement, answers: ConversionAnswers) -> DifferenceReason | None:
    """Return what forbids the part whatever the rules say of it; None where nothing does."""
    item, part = unit.installed, unit.part
    longest = answers.longest_age_years
    superseded = part is not None and part.status is not PartStatus.ACTIVE
    told = (
        (item.condition is InstalledCondition.DAMAGED, DifferenceReason.DAMAGED),
        (longest is not None and item.age_years is None, DifferenceReason.AGE_UNKNOWN),
        (longest is not None and (item.age_years or 0.0) > (longest or 0.0), DifferenceReason.TOO_OLD),
        (answers.retire_superseded and superseded, DifferenceReason.SUPERSEDED),
        (bool(item.number) and part is None, DifferenceReason.NUMBER_UNKNOWN),
        (item.description == NOT_RECORDED, DifferenceReason.NOT_RECORDED),
        (bool(unit.missing), DifferenceReason.FIGURES_UNKNOWN),
        (_is_among(requirement.position.decisions.refused, unit), DifferenceReason.REFUSED),
        (not answers.keep_parts, DifferenceReason.RENEWED),
    )
    return next((reason for holds, reason in told if holds), None)
