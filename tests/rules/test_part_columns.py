"""Part rules over columns and over one part are the same rules: held together on every rule and random surveys.

What either way says is held against the standards elsewhere (``test_part_rules.py``, ``tests/oracle``); the quantities
of ``rules.parts.sums`` are held against the worked lines of the checks.
"""

from __future__ import annotations

import random
from collections.abc import Iterable
from dataclasses import fields, replace
from functools import cache
from typing import Any

import numpy as np
import pytest
from hypothesis import given
from hypothesis import strategies as st

from bench.generated_parts import generated_parts
from rules.invented_parts import adaptor, breakaway, hose, nozzle, splitter, swivel, swivel_breakaway, whip
from rules.stations import tables
from spoutline.catalogue.store import CatalogueStore
from spoutline.model.candidate_filter import CandidateFilter
from spoutline.model.material import Material
from spoutline.model.part import HANGING_KINDS, Part, PartKind, PartStatus
from spoutline.model.part_columns import OnePart, PartColumns, columns_of
from spoutline.model.part_ref import PartRef
from spoutline.model.requirement import Requirement, Slot
from spoutline.model.survey import Survey
from spoutline.rules.declared.rule_ids import RuleId
from spoutline.rules.derive.requirement import requirement_for
from spoutline.rules.parts import figures, sums
from spoutline.rules.parts.part_rules import KIND_OF_SLOT, breaches, judge_part
from sweep.combinations import BLENDS, DUTIES, FILLERS, JURISDICTIONS, RETRIEVALS, VAPOUR

_LOOKED_AT = 12  # rows of each slot and survey that are judged one by one as well
_LACKING = ("flow_coefficient_kv", "resistance_ohm", "pull_strength_n", "offered_for_def")


def _changed(part: Part, chance: random.Random) -> Part:
    """Return a part with some figures unknown, turned round or moved, so that every rule meets both sides of it."""
    own: dict[str, Any] = {name: None for name in _LACKING if chance.random() < 0.15}
    if chance.random() < 0.2:
        own["wetted_materials"] = tuple(chance.choices(list(Material), k=chance.randint(0, 4)))
    if chance.random() < 0.1:
        own["status"] = chance.choice(list(PartStatus))
    if chance.random() < 0.2:
        own["offered_for_def"] = chance.random() < 0.5
    for block in ("nozzle", "hose", "breakaway", "swivel", "adaptor"):
        data = getattr(part, block)
        if data is not None:
            own[block] = replace(data, **_changed_figures(data, chance))
    return replace(part, **own)


def _changed_figures(data: Any, chance: random.Random) -> dict[str, Any]:
    found: dict[str, Any] = {}
    for one in fields(data):
        value = getattr(data, one.name)
        if isinstance(value, bool) and chance.random() < 0.3:
            found[one.name] = not value
        elif isinstance(value, float) and chance.random() < 0.2:
            found[one.name] = value * chance.choice((0.5, 0.8, 0.97, 1.03, 1.3, 2.0))
            if "None" in str(one.type) and chance.random() < 0.5:
                found[one.name] = None
    return found


@cache
def _invented() -> dict[PartKind, tuple[tuple[Part, ...], PartColumns]]:
    chance = random.Random(11)
    made = [nozzle(), hose(), whip(), breakaway(), swivel(), swivel_breakaway(), adaptor(), splitter()]
    sound = [*generated_parts(500, seed=3), *made]
    parts = [*sound, *(replace(_changed(part, chance), number=f"{part.number} changed") for part in sound)]
    by_kind = {kind: sorted((one for one in parts if one.kind is kind), key=_by_ref) for kind in HANGING_KINDS}
    return {kind: (tuple(own), columns_of(kind, own)) for kind, own in by_kind.items()}


def _by_ref(part: Part) -> PartRef:
    return part.ref


@st.composite
def requirements(draw: st.DrawFn) -> Requirement | None:
    """Draw a survey of one position as a person may answer it; None where it is refused."""
    family = draw(st.sampled_from(sorted(BLENDS)))
    duty, vapour = draw(st.sampled_from(DUTIES)), draw(st.sampled_from(VAPOUR))
    jurisdiction = draw(st.sampled_from(JURISDICTIONS))
    outlet: dict[str, Any] = {"height_m": draw(st.sampled_from((0.6, 2.1, 2.6)))}
    if vapour == "balance":
        outlet |= {"thread": "UN", "size": "1-7/8-12", "path": "balance"}
    elif vapour == "vacuum_assist":
        outlet |= {"thread": "M", "size": "34x1.5", "path": "vacuum_assist"}
    document = {
        "site": {
            "name": "Drawn",
            "jurisdiction": jurisdiction,
            "currency": draw(st.sampled_from(("USD", "EUR"))),
            "climate": {"low_c": draw(st.sampled_from((-25, -5, 0))), "high_c": draw(st.sampled_from((30, 50)))},
        },
        "positions": [
            {
                "label": "1",
                "liquid": {"family": family, "blend_percent": draw(st.sampled_from(BLENDS[family]))},
                "duty": duty,
                "vapour_today": vapour,
                "vapour_wanted": vapour,
                "outlet": outlet,
                "filler": FILLERS[duty],
                "retrieval": draw(st.sampled_from(RETRIEVALS)),
                "hold_open_wanted": draw(st.booleans()),
                "prepay": draw(st.booleans()),
                "overhead": draw(st.booleans()),
                "reconnectable_wanted": draw(st.booleans()),
                "in_flammable_zone": draw(st.booleans()) if family == "def" else None,
                "supply": {"pressure_kpa": draw(st.sampled_from((60, 200, 345)))},
                "decisions": {
                    "longest_lead_time_days": draw(st.sampled_from((None, 7, 30))),
                    "refused": draw(st.sampled_from(([], ["XX-N1", "GP-C000012"]))),
                },
            }
        ],
    }
    survey = Survey.model_validate(document)
    found = requirement_for(survey.positions[0], survey.site, tables(jurisdiction))
    return found if isinstance(found, Requirement) else None


def _over_columns(columns: PartColumns, slot: Slot, asked: Requirement) -> list[list[tuple[str, str]]]:
    """Return for each row what the columns say is broken: rule and severity, in the order of the rules."""
    found: list[list[tuple[str, str]]] = [[] for _ in range(len(columns))]
    for breach in breaches(columns, slot, asked, tables(asked.site.jurisdiction)):
        for row in np.flatnonzero(np.broadcast_to(breach.where, len(columns))).tolist():
            found[row].append((breach.rule_id, breach.severity))
    return found


def _one_by_one(part: Part, slot: Slot, asked: Requirement) -> list[tuple[str, str]]:
    findings = judge_part(part, slot, asked, tables(asked.site.jurisdiction))
    return [(one.rule_id, one.severity) for one in findings]


def _differing(parts: Iterable[tuple[int, Part]], columns: PartColumns, slot: Slot, asked: Requirement) -> list[str]:
    over = _over_columns(columns, slot, asked)
    return [
        f"{slot} {part.ref}: {over[row]} over columns, {own} by itself"
        for row, part in parts
        if over[row] != (own := _one_by_one(part, slot, asked))
    ]


@given(asked=requirements(), chance=st.randoms(use_true_random=False))
def test_rules_say_the_same_of_a_kind_and_of_each_part(asked: Requirement | None, chance: random.Random) -> None:
    if asked is None:
        return
    for slot in (*asked.chain, Slot.ADAPTOR, Slot.SPLITTER):
        parts, columns = _invented()[KIND_OF_SLOT[slot]]
        looked_at = chance.sample(list(enumerate(parts)), min(_LOOKED_AT, len(parts)))
        assert _differing(looked_at, columns, slot, asked) == []


def _stations() -> list[Requirement]:
    documents: list[dict[str, Any]] = [
        {"liquid": {"family": "gasoline", "blend_percent": 10}, "hold_open_wanted": True, "prepay": True},
        {"liquid": {"family": "diesel", "blend_percent": 20}, "duty": "reel", "retrieval": "reel"},
        {"liquid": {"family": "def"}, "duty": "truck", "in_flammable_zone": True},
        {
            "liquid": {"family": "gasoline", "blend_percent": 10},
            "vapour_today": "balance",
            "vapour_wanted": "balance",
            "outlet": {"thread": "UN", "size": "1-7/8-12", "path": "balance"},
        },
    ]
    found = []
    for document in documents:
        site = {"name": "Every part", "jurisdiction": "us_vapour_rules", "climate": {"low_c": -5, "high_c": 40}}
        survey = Survey.model_validate({"site": site, "positions": [{"label": "1"} | document]})
        asked = requirement_for(survey.positions[0], survey.site, tables(survey.site.jurisdiction))
        assert isinstance(asked, Requirement)
        found.append(asked)
    return found


def test_every_part_of_the_demonstration_is_judged_alike_both_ways(catalogue_store: CatalogueStore) -> None:
    for asked in _stations():
        for slot in (*asked.chain, Slot.ADAPTOR, Slot.SPLITTER):
            kind = KIND_OF_SLOT[slot]
            parts = catalogue_store.candidates(CandidateFilter(kind=kind))
            assert _differing(enumerate(parts), catalogue_store.columns(kind), slot, asked) == []


def test_random_parts_and_surveys_meet_the_rules() -> None:
    # a rule that no invented part breaks anywhere is not held by the tests above
    met: set[str] = set()
    for asked in _stations():
        for slot in (*asked.chain, Slot.ADAPTOR, Slot.SPLITTER):
            for row in _over_columns(_invented()[KIND_OF_SLOT[slot]][1], slot, asked):
                met.update(rule for rule, _ in row)
    assert {RuleId.LATCH_MISSING, RuleId.DEF_ZONE_NOZZLE, RuleId.HOSE_DRUM, RuleId.MATERIAL_CAUTION} <= met
    assert len(met) > 35


@pytest.mark.parametrize("kind", HANGING_KINDS)
def test_columns_of_the_tables_are_those_of_the_parts(catalogue_store: CatalogueStore, kind: PartKind) -> None:
    read, made = catalogue_store.columns(kind), columns_of(kind, catalogue_store.candidates(CandidateFilter(kind=kind)))
    assert (read.makers, read.ports) == (made.makers, made.ports)
    assert set(read.arrays) == set(made.arrays)
    for name, array in made.arrays.items():
        assert read.arrays[name].dtype == array.dtype, name
        np.testing.assert_array_equal(read.arrays[name], array, err_msg=name)


def test_sums_are_those_of_the_checks() -> None:
    for asked in _stations():
        rules, states = tables(asked.site.jurisdiction), figures.states_for(asked)
        for slot in asked.chain:
            parts, columns = _invented()[KIND_OF_SLOT[slot]]
            worked = [figures.part_figures(part, slot, asked, rules, states.cold) for part in parts]
            loss = [figures.loss_pa(part, slot, asked, 6e-4, states.cold) for part in parts]
            told = [one.resistance_ohm for one in worked]
            over = {
                "weight": (sums.filled_weight_n(columns, states.cold), [one.filled_weight_n for one in worked]),
                "demand": (sums.pull_demand_n(columns, slot, asked, rules), [one.pull_demand_n for one in worked]),
                "loss": (sums.loss_pa(columns, slot, asked, 6e-4, states.cold), loss),
                "resistance": (sums.resistance_ohm(columns), [np.nan if one is None else one for one in told]),
            }
            for name, (found, wanted) in over.items():
                np.testing.assert_allclose(found, wanted, rtol=1e-12, err_msg=f"{name} of {slot}")
                alone = OnePart(parts[0])
                if name == "weight":
                    assert float(sums.filled_weight_n(alone, states.cold)) == pytest.approx(wanted[0], rel=1e-12)


def test_a_part_is_found_by_maker_and_number_and_by_a_bare_number() -> None:
    both = [nozzle("N 1"), replace(nozzle("N 1"), maker="Zephyr Brass"), nozzle("N 10"), nozzle("É 2")]
    columns = columns_of(PartKind.NOZZLE, both)
    assert [columns.ref_at(row) for row in range(4)] == sorted(part.ref for part in both)
    assert columns.rows_of(PartRef("N 1")) == [0, 1]
    assert columns.rows_of(PartRef("N 1", "Zephyr Brass")) == [1]
    assert columns.row_of(PartRef("N 1")) is None
    assert columns.rows_of(PartRef("N 2")) == []
    assert columns.named([PartRef("É 2"), PartRef("N 10", "nobody")]).tolist() == [False, False, False, True]
    some = columns.take(np.array([1, 3]))
    assert [some.ref_at(row) for row in range(2)] == [both[1].ref, both[3].ref]


def test_a_part_without_what_its_kind_adds_is_refused() -> None:
    with pytest.raises(ValueError, match="XX-H1 is a curb_hose but carries no hose data"):
        columns_of(PartKind.CURB_HOSE, [replace(hose(), hose=None)])
