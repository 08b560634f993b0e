"""A near miss breaks, at a position that its sound neighbours serve, the one rule that its remark names."""

from dataclasses import replace

import pytest

from catalogue_chains import remarks
from spoutline import assets
from spoutline.bootstrap import Workbench
from spoutline.catalogue.source import SourceCatalogue
from spoutline.model.check import CheckId
from spoutline.model.finding import Severity
from spoutline.model.part import NozzleService, Part, PartKind
from spoutline.model.port import FlowPath
from spoutline.model.requirement import Requirement, Slot
from spoutline.model.survey import Survey
from spoutline.rules.checks.run import checks_for
from spoutline.rules.declared.registry import RuleId
from spoutline.rules.derive.requirement import requirement_for
from spoutline.rules.parts.part_rules import judge_part
from spoutline.ruletables.load import load_rule_tables

# words of the remark, the rule that it names
BROKEN_MUSTS = [
    ("thicker than a gasoline spout", RuleId.SPOUT_DIAMETER),
    ("thinner than SAE J285", RuleId.SPOUT_DIAMETER),
    ("shorter than 63.5 mm", RuleId.SPOUT_STRAIGHT_LENGTH),
    ("less than 76.2 mm", RuleId.SPOUT_SPRING_DISTANCE),
    ("latch without a no-pressure", RuleId.NO_PRESSURE_DEVICE),
    ("stands only 300 kPa", RuleId.PRESSURE_RATING),
    ("range only", RuleId.TEMPERATURE_RANGE),
    ("below what a car dispenser gives", RuleId.NOZZLE_MAXIMUM_FLOW),
    ("no resistance stated", RuleId.CONTINUITY_KNOWN),
    ("no price in euros", RuleId.PART_PRICE),
    ("balance inlet but no bellows", RuleId.BELLOWS),
    ("superseded", RuleId.PART_STATUS),
    ("discontinued", RuleId.PART_STATUS),
    ("outside the US window", RuleId.SPOUT_DIAMETER),
    ("thicker than a truck spout", RuleId.SPOUT_DIAMETER),
    ("thicker than a DEF spout", RuleId.SPOUT_DIAMETER),
    ("not suitable for DEF", RuleId.MATERIAL_UNSUITABLE),
    ("is more than 0.5", RuleId.PART_RESISTANCE),
    ("more than a listed hose may have", RuleId.PART_RESISTANCE),
    ("carries no listing class", RuleId.PART_CLASS),
    ("more than the window allows", RuleId.SEPARATION_WINDOW),
    ("below the window", RuleId.SEPARATION_WINDOW),
    ("above the window", RuleId.SEPARATION_WINDOW),
    ("not above the curb hose", RuleId.BREAKAWAY_PLACEMENT),
    ("does not close the vapour path", RuleId.BREAKAWAY_CLOSES_VAPOUR),
    ("bears only 950 N", RuleId.BREAKAWAY_OWN_STRENGTH),
    ("passes 12 g/m2 a day", RuleId.HOSE_PERMEATION_RATE),
    ("no low-permeation marking", RuleId.HOSE_LOW_PERMEATION),
    ("longer than a public land site", RuleId.HOSE_SINGLE_LENGTH),
    ("a retractor asks for hardwall", RuleId.HOSE_CONSTRUCTION),
    ("without built-in swivel", RuleId.HOSE_BUILT_IN_SWIVEL),
    ("only after 120 days", RuleId.PART_LEAD_TIME),
    ("too short to turn", RuleId.WHIP_LENGTH),
    ("above 39 L/min", RuleId.NOZZLE_MINIMUM_FLOW),
]
ADVISED_AGAINST = ["with bare aluminium", "with brass: advised", "with bronze: advised"]
# no rule about the part alone: put into the set that the position gets, this one check fails
FAILING_CHECKS = [
    ("opens only at 230 kPa", CheckId.NOZZLE_OPENING_PRESSURE),
    ("though each metre passes", CheckId.RESISTANCE_TOTAL),
    ("bears only 900 N", CheckId.BREAKAWAY_DRIVE_OFF),
    ("bears only 1000 N", CheckId.BREAKAWAY_DRIVE_OFF),
]
# a set with it breaks a should that another set keeps
NEVER_CHOSEN = [
    "strangles the flow",
    "too small for the flow that a truck wants",
    "male outlet: needs an adaptor",
    "no NPT swivel mates",
    "unlisted brass",
    "unlisted zinc",
]


def traps(words: str, reviewed: SourceCatalogue) -> list[Part]:
    said = remarks()
    found = [part for part in reviewed.parts if said[part.number].startswith("trap") and words in said[part.number]]
    assert found, words
    return found


def liquid_for(part: Part) -> dict[str, object]:
    if (part.nozzle and part.nozzle.service is NozzleService.DEF) or "DEF" in part.name:
        return {"family": "def"}
    blend = {"E85": 85, "E25": 25, "E10": 10, "B100": 100, "B20": 20}
    classes = [listing for listing in blend if listing in part.listings]
    best = classes[0] if classes else "E10"
    return {"family": "gasoline" if best.startswith("E") else "diesel", "blend_percent": blend[best]}


def survey_for(part: Part) -> Survey:
    """A position for which the part would be the right one, were it not for its one fault."""
    remark = remarks()[part.number]
    coaxial = part.path is not None and part.path is not FlowPath.SINGLE
    vapour = str(part.path) if coaxial else "none"
    widens = part.kind is PartKind.ADAPTOR and part.outlet.size == "1"
    truck = (part.inlet.size == "1" and part.kind is not PartKind.ADAPTOR) or "truck" in remark or widens
    at_nozzle = part.kind is PartKind.SWIVEL_BREAKAWAY or "retractor" in remark or "18 ft" in remark
    position = {
        "label": "1",
        "liquid": liquid_for(part),
        "duty": "truck" if truck else "car",
        "vapour_today": vapour,
        "vapour_wanted": vapour,
        "retrieval": "retractor" if at_nozzle else "none",
        "outlet": {
            "thread": part.inlet.thread,
            "size": part.inlet.size,
            "path": part.inlet.path,
            "vapour_return_available": part.kind is PartKind.SPLITTER,
        },
        "hold_open_wanted": part.nozzle is not None and part.nozzle.hold_open,
        "decisions": {"longest_lead_time_days": 60},
    }
    cold = "-25 C" in remark or "-10" in remark
    site = {
        "name": "Near Miss",
        "jurisdiction": "us_vapour_rules" if "low-permeation" in remark else "us_general",
        "climate": {"low_c": -25 if cold else -15, "high_c": 40},
        "currency": "EUR" if "euros" in remark else "USD",
    }
    return Survey.model_validate({"site": site, "positions": [position]})


def broken(part: Part) -> dict[RuleId, Severity]:
    survey = survey_for(part)
    tables = load_rule_tables(survey.site.jurisdiction, resources=assets.resources_folder(), own_profiles=None)
    requirement = requirement_for(survey.positions[0], survey.site, tables)
    assert isinstance(requirement, Requirement)
    findings = judge_part(part, Slot(part.kind.value), requirement, tables)
    return {RuleId(finding.rule_id): finding.severity for finding in findings}


@pytest.mark.parametrize(("words", "rule_id"), BROKEN_MUSTS)
def test_a_near_miss_breaks_only_the_must_that_its_remark_names(reviewed, words, rule_id):
    for part in traps(words, reviewed):
        musts = {rule for rule, severity in broken(part).items() if severity is Severity.MUST}
        assert musts == {rule_id}, part.number


@pytest.mark.parametrize("words", ADVISED_AGAINST)
def test_a_listed_part_of_a_doubtful_material_is_only_advised_against(reviewed, words):
    for part in traps(words, reviewed):
        assert broken(part) == {RuleId.MATERIAL_AGAINST_LISTING: Severity.ADVICE}


@pytest.mark.parametrize(("words", "check_id"), FAILING_CHECKS)
def test_a_near_miss_of_the_whole_set_fails_the_check_that_its_remark_names(
    reviewed, words, check_id, workbench: Workbench
):
    for part in traps(words, reviewed):
        survey = survey_for(part)
        plan = workbench.plan_position(survey, "1")
        links = plan.chosen.hanging_set.links
        assert part.kind in [link.part.kind for link in links], part.number
        swapped = tuple(replace(link, part=part) if link.part.kind is part.kind else link for link in links)
        hanging_set = replace(plan.chosen.hanging_set, links=swapped)
        checks = checks_for(hanging_set, plan.requirement, workbench.jurisdictions().tables(survey.site.jurisdiction))
        failing = {check.id for check in checks if check.severity is Severity.MUST and not check.passes}
        assert failing == {check_id}, part.number


@pytest.mark.parametrize("words", NEVER_CHOSEN)
def test_a_near_miss_of_a_should_is_not_chosen_though_it_is_cheap(reviewed, words, workbench: Workbench):
    for part in traps(words, reviewed):
        plan = workbench.plan_position(survey_for(part), "1")
        assert plan.chosen is not None
        assert part.number not in plan.chosen.hanging_set.numbers


def test_every_near_miss_is_covered_here(reviewed):
    said = remarks()
    words = (
        [words for words, _rule in BROKEN_MUSTS]
        + ADVISED_AGAINST
        + [words for words, _check in FAILING_CHECKS]
        + NEVER_CHOSEN
    )
    near_misses = [part.number for part in reviewed.parts if said[part.number].startswith("trap")]
    assert [number for number in near_misses if not any(word in said[number] for word in words)] == []
