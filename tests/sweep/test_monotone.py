"""Relations that need no oracle: what must hold between two plans whatever the right answer is."""

from __future__ import annotations

import json
import os
import subprocess
import sys
from pathlib import Path

import pytest

from spoutline.bootstrap import Workbench
from spoutline.model.finding import Severity, SubjectKind, Verdict
from spoutline.model.plan import PlanStatus, PositionPlan
from spoutline.model.survey import Survey
from sweep.places import PLACES, place_survey

pytestmark = pytest.mark.usefixtures("plans_once")  # the same place is asked about again and again


def _changed(
    survey: Survey, *, site: dict[str, object] | None = None, position: dict[str, object] | None = None
) -> Survey:
    document = survey.model_dump(mode="json")
    document["site"] |= site or {}
    document["positions"][0] |= position or {}
    return Survey.model_validate(document)


def _cost(plan: PositionPlan) -> tuple[int, int]:
    """Return what the choice keeps small: first the shoulds that the set breaks, then its price."""
    assert plan.chosen is not None
    broken = [f for f in plan.chosen.findings if f.severity is Severity.SHOULD and f.verdict is Verdict.BROKEN]
    of_parts = [f for f in broken if f.subject_kind is not SubjectKind.POSITION]
    failing = [c for c in plan.chosen.checks if c.severity is Severity.SHOULD and not c.passes]
    return len(of_parts) + len(failing), plan.chosen.hanging_set.price_minor


@pytest.mark.parametrize("name", PLACES)
def test_a_milder_climate_never_costs_the_set(workbench: Workbench, name: str) -> None:
    survey = place_survey(name)
    harsh = workbench.plan_position(survey, "P")
    mild = workbench.plan_position(_changed(survey, site={"climate": {"low_c": 5, "high_c": 25}}), "P")
    assert harsh.status is PlanStatus.FITS
    assert mild.status is PlanStatus.FITS
    assert _cost(mild) <= _cost(harsh)


@pytest.mark.parametrize("name", PLACES)
def test_refusing_a_part_never_makes_the_set_better(workbench: Workbench, name: str) -> None:
    survey = place_survey(name)
    free = workbench.plan_position(survey, "P")
    assert free.chosen is not None
    for number in free.chosen.hanging_set.numbers:
        without = workbench.plan_position(_changed(survey, position={"decisions": {"refused": [number]}}), "P")
        if without.status is PlanStatus.FITS:
            assert without.chosen is not None
            assert number not in without.chosen.hanging_set.numbers
            assert _cost(without) >= _cost(free)
        else:
            assert without.status is PlanStatus.DOES_NOT_FIT


@pytest.mark.parametrize("name", PLACES)
def test_pinning_the_chosen_parts_changes_nothing(workbench: Workbench, name: str) -> None:
    survey = place_survey(name)
    free = workbench.plan_position(survey, "P")
    assert free.chosen is not None
    numbers = list(free.chosen.hanging_set.numbers)
    pinned = workbench.plan_position(_changed(survey, position={"decisions": {"pinned": numbers}}), "P")
    assert pinned.chosen is not None
    assert pinned.chosen.hanging_set.numbers == free.chosen.hanging_set.numbers


@pytest.mark.parametrize("name", PLACES)
def test_a_longer_way_never_costs_less(workbench: Workbench, name: str) -> None:
    survey = place_survey(name)
    near, filler = workbench.plan_position(survey, "P"), survey.positions[0].filler
    farther = {"distance_m": filler.distance_m + 0.6, "height_m": filler.height_m}
    far = workbench.plan_position(_changed(survey, position={"filler": farther}), "P")
    if far.status is PlanStatus.FITS:
        assert _cost(far) >= _cost(near)


@pytest.mark.plans_anew
def test_the_order_of_positions_changes_no_set(workbench: Workbench) -> None:
    here = [name for name in PLACES if PLACES[name][0] is PLACES["town gasoline"][0]]
    site = PLACES[here[0]][0]
    positions = [{"label": name} | PLACES[name][1] for name in here]
    forward = Survey.model_validate({"site": {"name": "All"} | site, "positions": positions})
    backward = Survey.model_validate({"site": {"name": "All"} | site, "positions": positions[::-1]})
    chosen_forward = {p.position.label: p.chosen for p in workbench.plan_site(forward).positions}
    chosen_backward = {p.position.label: p.chosen for p in workbench.plan_site(backward).positions}
    assert chosen_forward == chosen_backward
    alone = {name: workbench.plan_position(place_survey(name), "P").chosen for name in here}
    for name in here:
        ours, theirs = chosen_forward[name], alone[name]
        assert ours is not None
        assert theirs is not None
        assert ours.hanging_set == theirs.hanging_set


@pytest.mark.at_length  # another station is held so each time, in tests/cli/test_output_files.py
def test_two_hash_seeds_print_the_same_bytes(shared_database: Path, tmp_path: Path) -> None:
    document = tmp_path / "survey.json"
    document.write_text(place_survey("town gasoline").model_dump_json(), encoding="utf-8")
    command = [sys.executable, "-m", "spoutline", "plan", str(document), "--json", "--database", str(shared_database)]
    outputs = []
    for seed in ("1", "4711"):
        environment = os.environ | {"PYTHONHASHSEED": seed}
        run = subprocess.run(command, capture_output=True, env=environment, check=True, timeout=120)
        outputs.append(run.stdout)
    assert json.loads(outputs[0])
    assert outputs[0] == outputs[1]
