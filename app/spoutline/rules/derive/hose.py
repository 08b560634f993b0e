"""How long and of what kind the hose is: reach over every filler, length limit, construction, permeation."""

from __future__ import annotations

from spoutline.frozen import frozen
from spoutline.model.finding import Verdict
from spoutline.model.limit import Jurisdiction, LimitId
from spoutline.model.liquid import LiquidFamily
from spoutline.model.part import HoseConstruction
from spoutline.model.port import FlowPath
from spoutline.model.quantity import Dimension, Fact, Quantity
from spoutline.model.requirement import RefusalStatus, WayOut, Window
from spoutline.model.survey import Duty, Filler, Position, Retrieval, Site
from spoutline.rules.declared.registry import RuleId
from spoutline.rules.derive.reach_needed import ReachNeeded, reach_needed
from spoutline.rules.derive.refusal import Refused
from spoutline.rules.verdicts import Derivation, yes_no

ANY_CONSTRUCTION = "any"


@frozen(kw_only=True)
class HoseAsked:
    """What the position asks of its hoses. Lengths in m, permeation in kg/(m2.s)."""

    length: Window
    reach: ReachNeeded
    construction: HoseConstruction | None
    low_permeation: bool
    permeation_max_kg_m2_s: float | None


def is_on_reel(position: Position) -> bool:
    """Say whether the hose winds onto a reel, by its duty or by the way it is retrieved.

    Parameters: ``position``, its duty and retrieval.
    """
    return position.duty is Duty.REEL or position.retrieval is Retrieval.REEL


def length_limit_id(position: Position, site: Site) -> LimitId:
    """Return the row that limits the hose length here: marina, fenced site, or the general row.

    Parameters: ``position``, its duty; ``site``, whether fenced. Source: NIST HB 44; Okla. 165:26-2-92(a).
    """
    if position.duty is Duty.MARINE:
        return LimitId.HOSE_LENGTH_MAX_MARINE
    return LimitId.HOSE_LENGTH_MAX_FENCED if site.fenced else LimitId.HOSE_LENGTH_MAX


def construction_limit_id(position: Position) -> LimitId:
    """Return the row that says how the curb hose is built here: on a reel, with a retractor, or hanging free.

    Parameters: ``position``, its liquid and retrieval. Source: common practice; DEF carries no listing.
    """
    is_def = position.liquid.family is LiquidFamily.DEF
    if is_on_reel(position):
        return LimitId.HOSE_CONSTRUCTION_DEF_REEL if is_def else LimitId.HOSE_CONSTRUCTION_REEL
    if position.retrieval is Retrieval.RETRACTOR:
        return LimitId.HOSE_CONSTRUCTION_RETRACTOR
    return LimitId.HOSE_CONSTRUCTION_DEF if is_def else LimitId.HOSE_CONSTRUCTION_PLAIN


def impossible_fillers(notes: Derivation) -> tuple[Refused, ...]:
    """Return a refusal for each filler whose legs in plan are shorter than the straight way.

    Parameters: ``notes``, the derivation under way. Source: the straight line is the shortest way.
    """
    refused: list[Refused] = []
    for filler in notes.position.fillers:
        legs_m = sum(filler.plan_legs_m)
        if filler.plan_legs_m and legs_m < filler.distance_m - 1e-9:
            found = notes.find(
                RuleId.GEOMETRY_IMPOSSIBLE,
                Fact("filler", filler.label),
                Quantity("legs_sum", legs_m, Dimension.LENGTH),
                Quantity("distance", filler.distance_m, Dimension.LENGTH),
                verdict=Verdict.BROKEN,
            )
            refused.append(Refused(RefusalStatus.OUT_OF_RANGE, found, (WayOut.CORRECT_GEOMETRY,)))
    return tuple(refused)


def derive_hose(notes: Derivation, path: FlowPath) -> HoseAsked:
    """Add the lines of length, reach, clearance, construction and permeation, and return what they ask.

    The window of lengths: the hoses together stay within its maximum; the hoses and the rigid parts together come to
    its minimum. The two sides therefore count different sums, and a set is held to each by a check of its own.

    Parameters: ``notes``, the derivation under way, its geometry already found possible; ``path``, that of the set.
    """
    jurisdiction = notes.tables.jurisdiction
    needed = worst_reach(notes.position, jurisdiction)
    limit_row = length_limit_id(notes.position, notes.site)
    maximum = jurisdiction.optional_number(limit_row)
    _derive_length(notes, limit_row, maximum)
    _derive_reach(notes, needed, limit_row, maximum)
    clearance = jurisdiction.number(LimitId.GROUND_CLEARANCE)
    notes.line(
        RuleId.ASKS_GROUND_CLEARANCE,
        Quantity("clearance", clearance, Dimension.LENGTH),
        limits=(LimitId.GROUND_CLEARANCE,),
    )
    low_permeation, permeation = _derive_permeation(notes, path)
    return HoseAsked(
        length=Window(minimum=needed.needed_m, maximum=maximum),
        reach=needed,
        construction=_derive_construction(notes),
        low_permeation=low_permeation,
        permeation_max_kg_m2_s=permeation,
    )


def worst_reach(position: Position, jurisdiction: Jurisdiction) -> ReachNeeded:
    """Return the filler that asks for the longest chain, with that length.

    Parameters: ``position``, outlet and fillers; ``jurisdiction``, the slack.
    """
    reaches = [filler_reach(filler, position, jurisdiction) for filler in position.fillers]
    return max(reaches, key=lambda reach: reach.needed_m)


def filler_reach(filler: Filler, position: Position, jurisdiction: Jurisdiction) -> ReachNeeded:
    """Return the length (m) that one filler asks of the chain, taut and with slack.

    Parameters: ``filler``; ``position``, its outlet; ``jurisdiction``, the slack.
    """
    return reach_needed(
        filler,
        outlet_height_m=position.outlet.height_m,
        slack_fraction=jurisdiction.number(LimitId.REACH_SLACK_FRACTION),
        slack_minimum_m=jurisdiction.number(LimitId.REACH_SLACK_MIN),
    )


def _derive_length(notes: Derivation, limit_row: LimitId, maximum: float | None) -> None:
    facts = (Fact("duty", notes.position.duty), Fact("fenced", yes_no(notes.site.fenced)))
    if maximum is None:
        notes.line(RuleId.ASKS_HOSE_LENGTH, *facts, limits=(limit_row,))
        notes.find(RuleId.HOSE_LIMIT_UNKNOWN, facts[0], verdict=Verdict.QUESTION, limits=(limit_row,))
        return
    notes.line(
        RuleId.ASKS_HOSE_LENGTH, *facts, Quantity("length_maximum", maximum, Dimension.LENGTH), limits=(limit_row,)
    )


def _derive_reach(notes: Derivation, needed: ReachNeeded, limit_row: LimitId, maximum: float | None) -> None:
    filler = Fact("filler", needed.filler)
    length = Quantity("needed_length", needed.needed_m, Dimension.LENGTH)
    notes.line(
        RuleId.ASKS_REACH,
        filler,
        Quantity("taut_length", needed.taut_m, Dimension.LENGTH),
        length,
        limits=(LimitId.REACH_SLACK_FRACTION, LimitId.REACH_SLACK_MIN),
    )
    if maximum is not None and needed.needed_m > maximum:
        notes.find(
            RuleId.REACH_BEYOND_LIMIT,
            filler,
            length,
            Quantity("length_maximum", maximum, Dimension.LENGTH),
            verdict=Verdict.NOTE,
            limits=(limit_row,),
        )
    protect_above = notes.tables.jurisdiction.optional_number(LimitId.HOSE_MARINE_PROTECT_ABOVE)
    if notes.position.duty is Duty.MARINE and protect_above is not None and needed.needed_m > protect_above:
        notes.find(
            RuleId.MARINE_HOSE_PROTECTION,
            length,
            Quantity("protect_above", protect_above, Dimension.LENGTH),
            verdict=Verdict.NOTE,
            limits=(LimitId.HOSE_MARINE_PROTECT_ABOVE,),
        )


def _derive_construction(notes: Derivation) -> HoseConstruction | None:
    position = notes.position
    row = construction_limit_id(position)
    asked = notes.tables.jurisdiction.text(row)
    notes.line(
        RuleId.ASKS_HOSE_CONSTRUCTION,
        Fact("retrieval", position.retrieval),
        Fact("construction", asked),
        limits=(row,),
    )
    return None if asked == ANY_CONSTRUCTION else HoseConstruction(asked)


def _derive_permeation(notes: Derivation, path: FlowPath) -> tuple[bool, float | None]:
    """Gasoline only: other liquids leave no vapour worth limiting at the hose wall.

    What an agency asks for with the removal of recovery is asked of hoses without vapour path.
    """
    if notes.position.liquid.family is not LiquidFamily.GASOLINE:
        return False, None
    if path is not FlowPath.SINGLE and LimitId.HOSE_LOW_PERMEATION in notes.tables.asked_with_removal:
        notes.line(RuleId.ASKS_LOW_PERMEATION, Fact("low_permeation", yes_no(False)))
        return False, None
    jurisdiction = notes.tables.jurisdiction
    wanted = jurisdiction.flag(LimitId.HOSE_LOW_PERMEATION)
    maximum = jurisdiction.optional_number(LimitId.HOSE_PERMEATION_MAX) if wanted else None
    most = () if maximum is None else (Quantity("permeation_maximum", maximum, Dimension.PERMEATION),)
    rows = (LimitId.HOSE_LOW_PERMEATION,) + ((LimitId.HOSE_PERMEATION_MAX,) if maximum is not None else ())
    notes.line(RuleId.ASKS_LOW_PERMEATION, Fact("low_permeation", yes_no(wanted)), *most, limits=rows)
    return wanted, maximum
