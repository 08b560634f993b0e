"""Every change of liquid and of recovery: each way to convert is a set that the independent inspector accepts, or a
reason in words is given; what stays, goes and comes adds up."""

from __future__ import annotations

import itertools
from collections import Counter

import pytest

from oracle.set_inspection import inspect_set
from planning.conversion_sites import OUTLETS, PLAIN_CHAIN, installed, position, site_of
from spoutline.bootstrap import Workbench
from spoutline.documents.conversion.summary import why_open
from spoutline.model.conversion import SiteConversion
from spoutline.model.conversion_answers import OptionKind
from spoutline.model.position_conversion import DifferenceAction, PositionOutcome
from spoutline.model.survey import Survey
from spoutline.units.accepted import UnitSystem
from spoutline.units.display import Display

LIQUIDS = (
    ("gasoline", 10),
    ("gasoline", 15),
    ("gasoline", 85),
    ("diesel", 5),
    ("diesel", 20),
    ("diesel", 50),  # no listing class exists between 20 and 99.9 percent biodiesel (UL 2586B scope)
    ("diesel", 100),
    ("kerosene", 0),
    ("def", 0),
)
JURISDICTIONS = ("us_general", "us_vapour_rules", "us_without_recovery", "europe")
ENDED = (PositionOutcome.NO_SET, PositionOutcome.NOT_ALLOWED, PositionOutcome.REFUSED)


def complaints(conversion: SiteConversion, workbench: Workbench) -> list[str]:
    words = workbench.converting().words(Display(UnitSystem.SI))
    found: list[str] = []
    for one in conversion.positions:
        label = one.position.label
        if one.outcome in ENDED and not why_open(one, words).strip():
            found.append(f"{label}: no reason in words")
        for option in one.options:
            links = option.judged.hanging_set.links
            breaches = inspect_set(one.position, conversion.survey.site, links).musts
            # a part that is sold no more may stay where it hangs; the inspector looks at what can be bought
            found += [
                f"{label} {option.kind}: {breach.requirement} ({breach.subject}): {breach.text}"
                for breach in breaches
                if "status" not in breach.requirement
            ]
        found += [f"{label}: {text}" for text in _sums(conversion, label)]
    return found


def _sums(conversion: SiteConversion, label: str) -> list[str]:
    one = next(item for item in conversion.positions if item.position.label == label)
    option, least = (one.followed(kind) for kind in (conversion.survey.conversion.follow, OptionKind.LEAST_COST))
    if option is None or least is None:
        return []
    counts = Counter(line.action for line in one.differences if not line.accessory_reason)
    chain = len(option.judged.hanging_set.links)
    today = counts[DifferenceAction.KEEP] + counts[DifferenceAction.REMOVE]
    recorded = len(one.position.installed) or today
    wrong = []
    if counts[DifferenceAction.KEEP] + counts[DifferenceAction.ADD] != chain:
        wrong.append(f"kept and added parts are not the {chain} of the chain")
    if today != recorded:
        wrong.append(f"{today} parts are kept or removed, {recorded} hang there")
    dearer = one.renewal_option
    if dearer is not None and least.parts_minor > dearer.parts_minor:
        wrong.append("the least cost is dearer than a full renewal")
    return wrong


Liquids = tuple[str, float]
PAIRS: list[tuple[Liquids, Liquids]] = [pair for pair in itertools.product(LIQUIDS, LIQUIDS) if pair[0] != pair[1]]


def some_pairs(jurisdiction: str) -> list[tuple[Liquids, Liquids]]:
    """Return a quarter of the pairs: every liquid before and after, others in each jurisdiction."""
    shift = JURISDICTIONS.index(jurisdiction)
    return [pair for pair in PAIRS if sum(map(LIQUIDS.index, pair), shift) % len(JURISDICTIONS) == 0]


def survey_of_liquids(jurisdiction: str, pairs: list[tuple[Liquids, Liquids]]) -> Survey:
    """One position for each pair of liquids, the plain chain hanging there today."""
    positions = [
        position(
            f"{before[0]} {before[1]} to {after[0]} {after[1]}",
            liquid={"family": after[0], "blend_percent": after[1]},
            liquid_today={"family": before[0], "blend_percent": before[1]},
            installed=installed(*PLAIN_CHAIN),
            in_flammable_zone=False,
        )
        for before, after in pairs
    ]
    return site_of(*positions, jurisdiction=jurisdiction)


def test_some_pairs_hold_every_pair_somewhere_and_every_liquid_everywhere() -> None:
    assert {pair for one in JURISDICTIONS for pair in some_pairs(one)} == set(PAIRS)
    for jurisdiction in JURISDICTIONS:
        assert [set(side) for side in zip(*some_pairs(jurisdiction), strict=True)] == [set(LIQUIDS)] * 2


@pytest.mark.in_part
@pytest.mark.parametrize("jurisdiction", JURISDICTIONS)
def test_changes_from_and_to_every_liquid_give_accepted_sets_or_a_reason(
    jurisdiction: str, workbench: Workbench
) -> None:
    check_changes(survey_of_liquids(jurisdiction, some_pairs(jurisdiction)), workbench)


@pytest.mark.at_length
@pytest.mark.parametrize("jurisdiction", JURISDICTIONS)
def test_every_change_of_liquid_gives_accepted_sets_or_a_reason(jurisdiction: str, workbench: Workbench) -> None:
    check_changes(survey_of_liquids(jurisdiction, PAIRS), workbench)


def check_changes(survey: Survey, workbench: Workbench) -> None:
    conversion = workbench.converting().convert(survey)
    assert complaints(conversion, workbench) == []
    refused = {one.position.label for one in conversion.positions if one.outcome is PositionOutcome.REFUSED}
    assert refused == {one.position.label for one in conversion.positions if one.position.label.endswith("diesel 50")}


@pytest.mark.parametrize("jurisdiction", JURISDICTIONS)
def test_every_change_of_recovery_gives_accepted_sets_or_a_reason(jurisdiction: str, workbench: Workbench) -> None:
    kinds = tuple(OUTLETS)
    positions = [
        position(f"{today} to {wanted}", today=today, wanted=wanted)
        for today, wanted in itertools.product(kinds, repeat=2)
        if today != wanted
    ]
    conversion = workbench.converting().convert(site_of(*positions, jurisdiction=jurisdiction))
    assert complaints(conversion, workbench) == []
    gone = [one for one in conversion.positions if one.position.label.endswith("to none")]
    wanted = PositionOutcome.NOT_ALLOWED if jurisdiction == "us_vapour_rules" else PositionOutcome.CONVERTS
    assert [one.outcome for one in gone] == [wanted, wanted]
