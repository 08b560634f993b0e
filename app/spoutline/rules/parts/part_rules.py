"""Every rule that a part can break by itself, gathered by kind; a verdict names the broken ones only."""

from __future__ import annotations

from collections.abc import Iterator
from functools import cache

import numpy as np

from spoutline.model.finding import Finding, Severity, Verdict
from spoutline.model.limit import LimitId, RuleTables
from spoutline.model.liquid import LiquidFamily
from spoutline.model.material import Material, MaterialColumn, MaterialTable, Suitability
from spoutline.model.part import Part, PartKind, PartStatus
from spoutline.model.part_columns import ENDS, LEAD_TIME, STATUS, Mask, PartColumns
from spoutline.model.quantity import Dimension
from spoutline.model.requirement import Requirement, Slot
from spoutline.rules.declared.registry import RULES, RuleId
from spoutline.rules.parts.devices import (
    ADAPTOR_RULES,
    BREAKAWAY_RULES,
    SPLITTER_RULES,
    SWIVEL_BREAKAWAY_RULES,
    SWIVEL_RULES,
)
from spoutline.rules.parts.hoses import HOSE_RULES
from spoutline.rules.parts.look import (
    EVERYWHERE,
    Breach,
    Look,
    PartRule,
    Shown,
    each_finding,
    figure,
    finding_of,
    members_with,
    quantity,
    word,
    words_of,
)
from spoutline.rules.parts.nozzles import NOZZLE_RULES
from spoutline.rules.parts.sums import has_flow_data, is_hose, resistance_ohm

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
    Result: broken rules, in the order of the rules. A part of a kind that this place does not take gets that one
    finding only, since the other rules would compare what cannot be compared.
    """
    return tuple(_findings(part, slot, requirement, tables))


def first_forbidding(part: Part, slot: Slot, requirement: Requirement, tables: RuleTables) -> Finding | None:
    """Return the first *must* that the part breaks in this place, as ``judge_part`` finds it; None where it may serve.

    Parameters: ``part``; ``slot`` in the chain; ``requirement`` of the position; ``tables``. No rule after it is asked.
    """
    found = _findings(part, slot, requirement, tables)
    return next((one for one in found if one.severity is Severity.MUST and one.verdict is Verdict.BROKEN), None)


def _findings(part: Part, slot: Slot, requirement: Requirement, tables: RuleTables) -> Iterator[Finding]:
    if part.kind is KIND_OF_SLOT[slot]:
        yield from each_finding(part, slot, requirement, tables, part_rules_for(part.kind))
        return
    kind = word("kind", part.kind), word("slot", slot)
    wrong = Breach(RuleId.PART_IN_SLOT, EVERYWHERE, kind, RULES[RuleId.PART_IN_SLOT].severity, ())
    yield finding_of(wrong, part, tables)


def breaches(parts: PartColumns, slot: Slot, requirement: Requirement, tables: RuleTables) -> tuple[Breach, ...]:
    """Return where parts of the kind that a place takes break rules, as ``judge_part`` finds them one by one.

    Parameters: ``parts`` of the kind of ``slot``; ``requirement`` of the position; ``tables``, limits and materials.
    """
    look = Look(parts, slot, requirement, tables)
    return tuple(breach for rule in part_rules_for(parts.kind) for breach in rule(look))


def part_rules_for(kind: PartKind) -> tuple[PartRule, ...]:
    """Return the rules that judge a part of this kind; none for an accessory.

    Parameters: ``kind`` of part.
    """
    return _RULES.get(kind, ())


def still_sold(look: Look) -> Iterator[Breach]:
    """Ask: the maker still sells the part. Source: catalogue."""
    shown = words_of("status", "status"), words_of("superseded_by", "superseded_by")
    yield look.broken(RuleId.PART_STATUS, ~look.part.has(STATUS, PartStatus.ACTIVE), *shown)


def priced(look: Look) -> Iterator[Breach]:
    """Ask: the part has a list price in the site's currency. Source: catalogue."""
    currency = look.requirement.site.currency
    yield look.broken(RuleId.PART_PRICE, np.isnan(look.part.price_minor(currency)), word("currency", currency))


def not_refused(look: Look) -> Iterator[Breach]:
    """Ask: a person has not refused the part. Source: decision in the survey."""
    refused = look.requirement.position.decisions.refused
    if refused:
        yield look.broken(RuleId.PART_REFUSED, look.part.named(refused), words_of("part", "number"))


def in_time(look: Look) -> Iterator[Breach]:
    """Ask: the part arrives within the longest lead time (days). Source: decision in the survey."""
    longest = look.requirement.position.decisions.longest_lead_time_days
    if longest is not None:
        yield look.broken(
            RuleId.PART_LEAD_TIME,
            look.part.number(LEAD_TIME) > longest,
            figure("lead_time", LEAD_TIME, Dimension.DAYS),
            quantity("longest_lead_time", longest, Dimension.DAYS),
        )


def _is_fitting(look: Look) -> bool:
    return look.part.kind in (PartKind.ADAPTOR, PartKind.SPLITTER)


def listed(look: Look) -> Iterator[Breach]:
    """Ask: the part's listing counts here and covers the class; DEF has no class. Source: UL 2586, 330, 567 scopes.

    An adaptor or splitter that claims no listing is judged by its materials instead.
    """
    part, requirement = look.part, look.requirement
    if requirement.listing_class is None:
        return
    counts = ~part.empty("listings") if _is_fitting(look) else EVERYWHERE
    yield look.broken(
        RuleId.PART_SCHEME,
        counts & ~part.has("schemes", requirement.scheme),
        words_of("schemes", "schemes"),
        word("scheme", requirement.scheme),
        limits=(LimitId.LISTING_SCHEME,),
    )
    yield look.broken(
        RuleId.PART_CLASS,
        counts & ~part.has("listings", requirement.listing_class),
        words_of("listings", "listings"),
        word("listing_class", requirement.listing_class),
    )


def offered_for_def(look: Look) -> Iterator[Breach]:
    """Ask: the maker offers the part for DEF; a nozzle names its liquids and is judged by them.

    Traces of fuel, or of what fuel parts are made of, spoil DEF. Silence of the maker is no offer. Source: ISO 22241-3
    (memory).
    """
    if look.requirement.liquid.family is LiquidFamily.DEF and look.part.kind is not PartKind.NOZZLE:
        stated = Shown("offered_for_def", path="offered_for_def", answer=True)
        yield look.broken(RuleId.PART_DEF_OFFER, ~look.part.flag("offered_for_def"), stated)


def materials_suit(look: Look) -> Iterator[Breach]:
    """Ask: wetted materials against the table; a listing for the class goes before it. Source: table of materials."""
    part, requirement = look.part, look.requirement
    column = requirement.material_column
    unsuitable = _with_verdict(look.tables.materials, column, Suitability.UNSUITABLE)
    doubtful = _with_verdict(look.tables.materials, column, Suitability.CAUTION)
    asked = requirement.listing_class
    is_listed = ~EVERYWHERE if asked is None else part.has("listings", asked)
    against_it = word("column", column), word("suitability", Suitability.UNSUITABLE)
    doubted = word("column", column), word("suitability", Suitability.CAUTION)
    for place, codes in enumerate(part.places("wetted_materials")):
        material = _material_at(place)
        against, caution = np.take(unsuitable, codes), np.take(doubtful, codes)
        if against.any():
            yield look.broken(RuleId.MATERIAL_AGAINST_LISTING, against & is_listed, material, *against_it)
            yield look.broken(RuleId.MATERIAL_UNSUITABLE, against & ~is_listed, material, *against_it)
        if caution.any():
            severity = _caution_severity(requirement)
            yield look.broken(RuleId.MATERIAL_CAUTION, caution & ~is_listed, material, *doubted, severity=severity)


@cache  # as many as a part has materials
def _material_at(place: int) -> Shown:
    return Shown("material", path="wetted_materials", place=place)


def _with_verdict(table: MaterialTable, column: MaterialColumn, suitability: Suitability) -> Mask:
    """Return by the code of a material whether the table has this verdict on it; worked out once."""
    if (column, suitability) not in table.derived:
        found = members_with(Material, lambda one: table.verdict(one, column).suitability is suitability)
        table.derived[column, suitability] = found
    known: Mask = table.derived[column, suitability]
    return known


def _caution_severity(requirement: Requirement) -> Severity:
    """Return should for DEF, whose purity a wrong grade spoils and which no listing covers; advice for fuels."""
    return Severity.SHOULD if requirement.liquid.family is LiquidFamily.DEF else Severity.ADVICE


def stands_the_climate(look: Look) -> Iterator[Breach]:
    """Ask: the part's range (degrees Celsius) covers the climate. Source: part data."""
    part, low, high = look.part, look.requirement.temperature_low_c, look.requirement.temperature_high_c
    cold = part.number("temperature_minimum_c") > low + _TEMPERATURE_TOLERANCE_K
    yield look.broken(
        RuleId.TEMPERATURE_RANGE,
        cold | (part.number("temperature_maximum_c") < high - _TEMPERATURE_TOLERANCE_K),
        figure("part_low", "temperature_minimum_c", Dimension.TEMPERATURE),
        figure("part_high", "temperature_maximum_c", Dimension.TEMPERATURE),
        quantity("temperature_low", low, Dimension.TEMPERATURE),
        quantity("temperature_high", high, Dimension.TEMPERATURE),
    )


def stands_the_pressure(look: Look) -> Iterator[Breach]:
    """Ask: the part's rating (Pa) covers the listing minimum and the supply. Source: UL 2586A 1.1, UL 330 1.4."""
    asked = look.requirement.pressure_pa
    yield look.broken(
        RuleId.PRESSURE_RATING,
        look.part.number("maximum_pressure_pa") < asked * (1.0 - _PRESSURE_ROUNDING),
        figure("maximum_pressure", "maximum_pressure_pa", Dimension.PRESSURE),
        quantity("pressure", asked, Dimension.PRESSURE),
        limits=(LimitId.PART_PRESSURE_MIN,),
    )


def has_the_path(look: Look) -> Iterator[Breach]:
    """Ask: both ends have the path of the set; adaptors and splitters have a rule of their own. Source: UL 330 note."""
    if _is_fitting(look):
        return
    part, path = look.part, look.requirement.path
    told = ~EVERYWHERE
    for end in ENDS:
        wrong = part.has_port(end) & ~part.on_path(end, path)
        shown = words_of("part_path", f"{end}.path"), word("path", path)
        yield look.broken(RuleId.PART_PATH, wrong & ~told, *shown)
        told = wrong


def states_its_figures(look: Look) -> Iterator[Breach]:
    """Ask: resistance, pull strength and flow data are stated: unknown is never taken as good.

    Source: NFPA 77; statics.
    """
    part, number = look.part, words_of("part", "number")
    unknown = np.isnan(resistance_ohm(part))
    yield look.broken(RuleId.CONTINUITY_KNOWN, unknown, number, severity=look.requirement.bonding_severity)
    yield look.broken(RuleId.PULL_STRENGTH_KNOWN, np.isnan(part.number("pull_strength_n")), number)
    missing = "liquid_passage" if is_hose(part) else "flow_coefficient"
    has_data = has_flow_data(part, look.slot, look.requirement)
    yield look.broken(RuleId.FLOW_DATA_KNOWN, ~has_data, word("missing", missing))


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
