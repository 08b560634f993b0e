"""Every rule that a part can break by itself, gathered by kind; a verdict names the broken ones only."""

from __future__ import annotations

from collections.abc import Iterator

from spoutline.model.finding import Finding, Severity
from spoutline.model.limit import LimitId, RuleTables
from spoutline.model.liquid import LiquidFamily
from spoutline.model.material import Material, Suitability
from spoutline.model.part import Part, PartKind, PartStatus
from spoutline.model.part_ref import any_names
from spoutline.model.quantity import Dimension, Fact, Quantity
from spoutline.model.requirement import Requirement, Slot
from spoutline.rules.declared.registry import RuleId
from spoutline.rules.parts.candidate import Candidate, PartRule
from spoutline.rules.parts.devices import (
    ADAPTOR_RULES,
    BREAKAWAY_RULES,
    SPLITTER_RULES,
    SWIVEL_BREAKAWAY_RULES,
    SWIVEL_RULES,
)
from spoutline.rules.parts.figures import elements_of, part_resistance_ohm
from spoutline.rules.parts.hoses import HOSE_RULES
from spoutline.rules.parts.nozzles import NOZZLE_RULES
from spoutline.rules.verdicts import yes_no

KIND_OF_SLOT: dict[Slot, PartKind] = {
    Slot.WHIP_HOSE: PartKind.WHIP_HOSE,
    Slot.BREAKAWAY: PartKind.BREAKAWAY,
    Slot.CURB_HOSE: PartKind.CURB_HOSE,
    Slot.SWIVEL: PartKind.SWIVEL,
    Slot.SWIVEL_BREAKAWAY: PartKind.SWIVEL_BREAKAWAY,
    Slot.NOZZLE: PartKind.NOZZLE,
    Slot.ADAPTOR: PartKind.ADAPTOR,
    Slot.SPLITTER: PartKind.SPLITTER,
}

_TEMPERATURE_TOLERANCE_K = 1e-6  # binary rounding of degrees Fahrenheit
_PRESSURE_ROUNDING = 1e-6  # binary rounding of psi and bar


def judge_part(part: Part, slot: Slot, requirement: Requirement, tables: RuleTables) -> tuple[Finding, ...]:
    """Return every rule that the part breaks in this place; empty where it could serve.

    Parameters: ``part``; ``slot`` in the chain; ``requirement`` of the position; ``tables``, limits and materials.
    Result: broken rules and questions, in the order of the rules. A part of a kind that this place does not take gets
    that one finding only, since the other rules would compare what cannot be compared.
    """
    candidate = Candidate(part, slot, requirement, tables)
    if part.kind is not KIND_OF_SLOT[slot]:
        return (candidate.broken(RuleId.PART_IN_SLOT, Fact("kind", part.kind), Fact("slot", slot)),)
    return tuple(found for rule in part_rules_for(part.kind) for found in rule(candidate))


def part_rules_for(kind: PartKind) -> tuple[PartRule, ...]:
    """Return the rules that judge a part of this kind; none for an accessory.

    Parameters: ``kind`` of part.
    """
    return _RULES.get(kind, ())


def still_sold(candidate: Candidate) -> Iterator[Finding]:
    """Ask: the maker still sells the part. Source: catalogue."""
    part = candidate.part
    if part.status is not PartStatus.ACTIVE:
        yield candidate.broken(
            RuleId.PART_STATUS, Fact("status", part.status), Fact("superseded_by", part.superseded_by or "")
        )


def priced(candidate: Candidate) -> Iterator[Finding]:
    """Ask: the part has a list price in the site's currency. Source: catalogue."""
    currency = candidate.requirement.site.currency
    if candidate.part.price_minor(currency) is None:
        yield candidate.broken(RuleId.PART_PRICE, Fact("currency", currency))


def not_refused(candidate: Candidate) -> Iterator[Finding]:
    """Ask: a person has not refused the part. Source: decision in the survey."""
    if any_names(candidate.requirement.position.decisions.refused, candidate.part.ref):
        yield candidate.broken(RuleId.PART_REFUSED, Fact("part", candidate.part.number))


def in_time(candidate: Candidate) -> Iterator[Finding]:
    """Ask: the part arrives within the longest lead time (days). Source: decision in the survey."""
    longest = candidate.requirement.position.decisions.longest_lead_time_days
    if longest is not None and candidate.part.lead_time_days > longest:
        yield candidate.broken(
            RuleId.PART_LEAD_TIME,
            Quantity("lead_time", candidate.part.lead_time_days, Dimension.DAYS),
            Quantity("longest_lead_time", longest, Dimension.DAYS),
        )


def _is_unlisted_fitting(part: Part) -> bool:
    """Say whether this is an adaptor or splitter that claims no listing: its materials are judged instead."""
    return part.kind in (PartKind.ADAPTOR, PartKind.SPLITTER) and not part.listings


def listed(candidate: Candidate) -> Iterator[Finding]:
    """Ask: the part's listing counts here and covers the class; DEF has no class. Source: UL 2586, 330, 567 scopes."""
    part, requirement = candidate.part, candidate.requirement
    if requirement.listing_class is None or _is_unlisted_fitting(part):
        return
    if requirement.scheme not in part.schemes:
        schemes = Fact("schemes", ", ".join(sorted(part.schemes)))
        yield candidate.broken(
            RuleId.PART_SCHEME, schemes, Fact("scheme", requirement.scheme), limits=(LimitId.LISTING_SCHEME,)
        )
    if requirement.listing_class not in part.listings:
        listings = Fact("listings", ", ".join(sorted(part.listings)))
        yield candidate.broken(RuleId.PART_CLASS, listings, Fact("listing_class", requirement.listing_class))


def offered_for_def(candidate: Candidate) -> Iterator[Finding]:
    """Ask: the maker offers the part for DEF; a nozzle names its liquids and is judged by them.

    Traces of fuel, or of what fuel parts are made of, spoil DEF. Silence of the maker is no offer. Source: ISO 22241-3
    (memory).
    """
    part = candidate.part
    if candidate.requirement.liquid.family is not LiquidFamily.DEF or part.kind is PartKind.NOZZLE:
        return
    if not part.offered_for_def:
        stated = "not_stated" if part.offered_for_def is None else yes_no(False)
        yield candidate.broken(RuleId.PART_DEF_OFFER, Fact("offered_for_def", stated))


def materials_suit(candidate: Candidate) -> Iterator[Finding]:
    """Ask: wetted materials against the table; a listing for the class goes before it. Source: table of materials."""
    requirement = candidate.requirement
    is_listed = requirement.listing_class is not None and requirement.listing_class in candidate.part.listings
    for material in candidate.part.wetted_materials:
        rule_id = _material_rule(material, candidate, is_listed=is_listed)
        if rule_id is not None:
            verdict = candidate.tables.materials.verdict(material, requirement.material_column)
            yield candidate.broken(
                rule_id,
                Fact("material", material),
                Fact("column", requirement.material_column),
                Fact("suitability", verdict.suitability),
                severity=_caution_severity(candidate) if rule_id is RuleId.MATERIAL_CAUTION else None,
            )


def _caution_severity(candidate: Candidate) -> Severity:
    """Return should for DEF, whose purity a wrong grade spoils and which no listing covers; advice for fuels."""
    return Severity.SHOULD if candidate.requirement.liquid.family is LiquidFamily.DEF else Severity.ADVICE


def _material_rule(material: Material, candidate: Candidate, *, is_listed: bool) -> RuleId | None:
    suitability = candidate.tables.materials.verdict(material, candidate.requirement.material_column).suitability
    if suitability is Suitability.UNSUITABLE:
        return RuleId.MATERIAL_AGAINST_LISTING if is_listed else RuleId.MATERIAL_UNSUITABLE
    if suitability is Suitability.CAUTION and not is_listed:
        return RuleId.MATERIAL_CAUTION
    return None


def stands_the_climate(candidate: Candidate) -> Iterator[Finding]:
    """Ask: the part's range (degrees Celsius) covers the climate. Source: part data."""
    part, requirement = candidate.part, candidate.requirement
    low, high = requirement.temperature_low_c, requirement.temperature_high_c
    cold = part.temperature_minimum_c > low + _TEMPERATURE_TOLERANCE_K
    if cold or part.temperature_maximum_c < high - _TEMPERATURE_TOLERANCE_K:
        yield candidate.broken(
            RuleId.TEMPERATURE_RANGE,
            Quantity("part_low", part.temperature_minimum_c, Dimension.TEMPERATURE),
            Quantity("part_high", part.temperature_maximum_c, Dimension.TEMPERATURE),
            Quantity("temperature_low", low, Dimension.TEMPERATURE),
            Quantity("temperature_high", high, Dimension.TEMPERATURE),
        )


def stands_the_pressure(candidate: Candidate) -> Iterator[Finding]:
    """Ask: the part's rating (Pa) covers the listing minimum and the supply. Source: UL 2586A 1.1, UL 330 1.4."""
    asked = candidate.requirement.pressure_pa
    if candidate.part.maximum_pressure_pa < asked * (1.0 - _PRESSURE_ROUNDING):
        yield candidate.broken(
            RuleId.PRESSURE_RATING,
            Quantity("maximum_pressure", candidate.part.maximum_pressure_pa, Dimension.PRESSURE),
            Quantity("pressure", asked, Dimension.PRESSURE),
            limits=(LimitId.PART_PRESSURE_MIN,),
        )


def has_the_path(candidate: Candidate) -> Iterator[Finding]:
    """Ask: both ends have the path of the set; adaptors and splitters have a rule of their own. Source: UL 330 note."""
    part, path = candidate.part, candidate.requirement.path
    if part.kind in (PartKind.ADAPTOR, PartKind.SPLITTER):
        return
    paths = [port.path for port in (part.inlet, part.outlet) if port is not None]
    wrong = next((found for found in paths if found is not path), None)
    if wrong is not None:
        yield candidate.broken(RuleId.PART_PATH, Fact("part_path", wrong), Fact("path", path))


def states_its_figures(candidate: Candidate) -> Iterator[Finding]:
    """Ask: resistance, pull strength and flow data are stated: unknown is never taken as good.

    Source: NFPA 77; statics.
    """
    part, requirement = candidate.part, candidate.requirement
    number = Fact("part", part.number)
    if part_resistance_ohm(part) is None:
        yield candidate.broken(RuleId.CONTINUITY_KNOWN, number, severity=requirement.bonding_severity)
    if part.pull_strength_n is None:
        yield candidate.broken(RuleId.PULL_STRENGTH_KNOWN, number)
    if elements_of(part, candidate.slot, requirement) is None:
        missing = "flow_coefficient" if part.hose is None else "liquid_passage"
        yield candidate.broken(RuleId.FLOW_DATA_KNOWN, Fact("missing", missing))


_COMMON_RULES: tuple[PartRule, ...] = (
    still_sold,
    priced,
    not_refused,
    in_time,
    listed,
    offered_for_def,
    materials_suit,
    stands_the_climate,
    stands_the_pressure,
    has_the_path,
    states_its_figures,
)

_OWN_RULES: dict[PartKind, tuple[PartRule, ...]] = {
    PartKind.NOZZLE: NOZZLE_RULES,
    PartKind.SWIVEL: SWIVEL_RULES,
    PartKind.SWIVEL_BREAKAWAY: SWIVEL_BREAKAWAY_RULES,
    PartKind.CURB_HOSE: HOSE_RULES,
    PartKind.WHIP_HOSE: HOSE_RULES,
    PartKind.BREAKAWAY: BREAKAWAY_RULES,
    PartKind.ADAPTOR: ADAPTOR_RULES,
    PartKind.SPLITTER: SPLITTER_RULES,
}

_RULES: dict[PartKind, tuple[PartRule, ...]] = {kind: (*_COMMON_RULES, *own) for kind, own in _OWN_RULES.items()}
