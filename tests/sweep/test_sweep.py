"""Every combination yields a set that the independent inspector accepts, or a reason in words; none may raise."""

from __future__ import annotations

from collections import Counter
from itertools import combinations as combinations_of
from operator import attrgetter

import pytest

from oracle.need import refusals_owed
from oracle.set_inspection import inspect_set
from spoutline.bootstrap import Workbench
from spoutline.explain.plan.story import Story
from spoutline.model.finding import Severity, Verdict
from spoutline.model.plan import HangingSet, PlanStatus, PositionPlan
from spoutline.model.survey import Survey
from spoutline.rules.chain.order import vehicle_side
from spoutline.units.accepted import UnitSystem
from spoutline.units.display import Display
from sweep.combinations import BLENDS, JURISDICTIONS, Combination, combinations, representative, survey_of

ANSWERS = ("blend_percent", "in_flammable_zone", "duty", "vapour", "retrieval")
PAIRS = tuple(attrgetter(*pair) for pair in combinations_of(ANSWERS, 2))
CELLS = [(family, jurisdiction) for jurisdiction in JURISDICTIONS for family in BLENDS]


@pytest.mark.in_part
@pytest.mark.parametrize(("family", "jurisdiction"), CELLS)
def test_every_pair_of_answers_yields_an_accepted_set_or_a_reason(
    workbench: Workbench, family: str, jurisdiction: str
) -> None:
    check_cells(workbench, representative(list(combinations(family, jurisdiction))))


@pytest.mark.at_length
@pytest.mark.parametrize(("family", "jurisdiction"), CELLS)
def test_every_combination_yields_an_accepted_set_or_a_reason(
    workbench: Workbench, family: str, jurisdiction: str
) -> None:
    check_cells(workbench, list(combinations(family, jurisdiction)))


@pytest.mark.parametrize(("family", "jurisdiction"), CELLS)
def test_the_representative_cells_hold_every_pair_of_answers(family: str, jurisdiction: str) -> None:
    cells = list(combinations(family, jurisdiction))
    for pick in PAIRS:
        assert {pick(cell) for cell in representative(cells)} == {pick(cell) for cell in cells}


def check_cells(workbench: Workbench, cells: list[Combination]) -> None:
    """Plan every cell and look at what comes of it."""
    survey = survey_of(cells)
    story = workbench.story(Display(UnitSystem.SI))
    statuses: Counter[str] = Counter()
    wrong = []
    for cell, position in zip(cells, survey.positions, strict=True):
        plan = workbench.plan_position(survey, position.label)
        statuses[plan.status.value] += 1
        wrong += [f"{cell}: {complaint}" for complaint in complaints(plan, survey, story)]
    print(f"\n{cells[0].family} in {cells[0].jurisdiction}: {dict(sorted(statuses.items()))}")
    assert not wrong, "\n".join(wrong)


def complaints(plan: PositionPlan, survey: Survey, story: Story) -> list[str]:
    """Return what is wrong with the answer for one position; empty where it is sound."""
    owed = refusals_owed(plan.position)
    if plan.status is PlanStatus.FITS:
        return [f"a set although {sorted(owed)} is owed"] if owed else _of_set(plan, survey)
    if plan.chosen is not None:
        return [f"a chosen set with status {plan.status}"]
    if plan.status is PlanStatus.DOES_NOT_FIT:
        if owed:
            return [f"searched although {sorted(owed)} is owed"]
        worded = story.conflict(plan.conflict) if plan.conflict else ()
        return [] if worded and all(worded) else ["no set and no conflict in words"]
    if owed and plan.status.value not in owed:
        return [f"{plan.status} instead of {sorted(owed)}"]
    worded = story.refusal(plan.refusal) if plan.refusal else ()
    return [] if worded and all(worded) else ["a refusal without words"]


def _of_set(plan: PositionPlan, survey: Survey) -> list[str]:
    if plan.chosen is None:
        return ["fits without a set"]
    chosen = plan.chosen.hanging_set
    found = [
        f"{b.requirement} ({b.subject}): {b.text}" for b in inspect_set(plan.position, survey.site, chosen.links).musts
    ]
    sum_of_prices = sum(link.part.price_minor(survey.site.currency) or 0 for link in chosen.links)
    if chosen.price_minor != sum_of_prices:
        found.append(f"price {chosen.price_minor} is not the sum of its parts, {sum_of_prices}")
    found += _faces_what_hangs_below(chosen)
    broken = [
        f.rule_id
        for f in plan.chosen.findings
        if f.verdict is Verdict.BROKEN and f.severity is Severity.MUST and f.subject_kind.value != "position"
    ]
    found += [f"the program itself finds {rule_id} broken" for rule_id in broken]
    found += [f"{c.id} fails" for c in plan.chosen.checks if c.severity is Severity.MUST and not c.passes]
    return [f"{text} in {chosen.numbers}" for text in found]


def _faces_what_hangs_below(chosen: HangingSet) -> list[str]:
    """The vehicle end faces the curb hose where one hangs below the breakaway, else the nozzle; common practice."""
    found = []
    slots = [link.slot.value for link in chosen.links]
    for place, slot in enumerate(slots):
        if slot in ("breakaway", "swivel_breakaway"):
            owed = "curb_hose" if "curb_hose" in slots[place:] else "nozzle"
            toward = vehicle_side(chosen, place)
            if toward is None or toward <= place or slots[toward] != owed:
                found.append(f"the vehicle end of {slot} does not face the {owed}")
    return found
