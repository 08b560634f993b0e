"""Part rules over columns and over one part are the same rules: held together on every rule, part and drawn survey.

Rules and parts are taken from what is declared, so that a new rule or figure is held without being named here; what
both ways say is held against a third, written once more from the statements of the rules (``plain_judge.py``). The
quantities of ``rules.parts.sums`` are held against the worked lines of the checks.
"""

from __future__ import annotations

import random
from collections import Counter
from collections.abc import Iterable, Iterator, Sequence
from dataclasses import replace
from functools import cache

import numpy as np
import pytest
from hypothesis import given
from hypothesis import strategies as st

from bench.generated_parts import generated_parts
from rules.asking_surveys import ASKING, asking, requirements
from rules.invented_parts import (
    adaptor,
    breakaway,
    hose,
    nozzle,
    on_path,
    splitter,
    swivel,
    swivel_breakaway,
    whip,
)
from rules.plain_judge import plainly_broken
from rules.stations import tables
from rules.varied_parts import (
    by_kind,
    changed_at_random,
    ends_of_range,
    numbers_of,
    varied_one_by_one,
    with_figure,
)
from spoutline.catalogue.store import CatalogueStore
from spoutline.model.candidate_filter import CandidateFilter
from spoutline.model.finding import Severity
from spoutline.model.part import HANGING_KINDS, Part, PartKind
from spoutline.model.part_columns import OnePart, PartColumns, columns_of
from spoutline.model.part_figures import number_at
from spoutline.model.part_ref import PartRef
from spoutline.model.port import FlowPath
from spoutline.model.requirement import Requirement, Slot
from spoutline.rules.declared.part import PART_RULES
from spoutline.rules.declared.registry import RULES
from spoutline.rules.declared.rule_ids import RuleId
from spoutline.rules.parts import figures, sums
from spoutline.rules.parts.part_rules import KIND_OF_SLOT, breaches, first_forbidding, judge_part
from spoutline.rules.parts.prices import middle_price, middle_price_of, price_question

_LOOKED_AT = 12  # rows of each slot and survey that are judged one by one as well
_OF_ONE_ALONE = frozenset({RuleId.PART_IN_SLOT, RuleId.PRICE_UNUSUAL})  # kinds compared; a price among its like

Judged = tuple[RuleId, Severity]


def _sound() -> list[Part]:
    made = [nozzle(), hose(), whip(), breakaway(), swivel(), swivel_breakaway(), adaptor(), splitter()]
    tubed = [replace(one, hose=replace(one.hose, **_TUBE)) for one in (hose(), whip()) if one.hose is not None]
    coaxial = [on_path(one, path) for one in (*made, *tubed) for path in (FlowPath.BALANCE, FlowPath.VACUUM_ASSIST)]
    return [*made, *tubed, *coaxial]


_TUBE = {"inner_tube_bore_m": 0.012, "inner_tube_outside_diameter_m": 0.016}


@cache
def _invented() -> dict[PartKind, tuple[tuple[Part, ...], PartColumns]]:
    """Return sound parts, each changed in one figure at a time, and generated ones changed at random."""
    chance = random.Random(11)
    sound = _sound()
    varied = [one for part in sound[:8] for one in varied_one_by_one(part)]
    drawn = [*generated_parts(120, seed=3)]
    many = [changed_at_random(part, chance) for part in (*drawn, *sound) for _ in range(2)]
    parts = by_kind([*sound, *varied, *drawn, *many])
    return {kind: (own, columns_of(kind, own)) for kind, own in parts.items()}


def _over_columns(columns: PartColumns, slot: Slot, asked: Requirement) -> list[list[Judged]]:
    """Return for each row what the columns say is broken: rule and severity, in the order of the rules."""
    found: list[list[Judged]] = [[] for _ in range(len(columns))]
    for breach in breaches(columns, slot, asked, tables(asked.site.jurisdiction)):
        for row in np.flatnonzero(np.broadcast_to(breach.where, len(columns))).tolist():
            found[row].append((breach.rule_id, breach.severity))
    return found


def _one_by_one(part: Part, slot: Slot, asked: Requirement) -> list[Judged]:
    findings = judge_part(part, slot, asked, tables(asked.site.jurisdiction))
    forbidding = next((one for one in findings if one.severity is Severity.MUST), None)
    assert first_forbidding(part, slot, asked, tables(asked.site.jurisdiction)) == forbidding
    for one in findings:
        names = [fact.name for fact in one.facts]
        assert names == [name for name in RULES[RuleId(one.rule_id)].facts if name in names], one.rule_id
    return [(RuleId(one.rule_id), one.severity) for one in findings]


def _differing(
    parts: Iterable[tuple[int, Part]], columns: PartColumns, slot: Slot, asked: Requirement, *, plainly: bool = True
) -> list[str]:
    """Return what is not judged the same over columns, by itself and, where asked, plainly."""
    over, rules, found = _over_columns(columns, slot, asked), tables(asked.site.jurisdiction), []
    for row, part in parts:
        alone = _one_by_one(part, slot, asked)
        if over[row] != alone:
            found.append(f"{slot} {part.ref}: {_less(over[row], alone)} over columns, {_less(alone, over[row])} alone")
        plain = [*plainly_broken(part, slot, asked, rules)] if plainly else alone
        if Counter(plain) != Counter(alone):
            found.append(f"{slot} {part.ref}: {_less(plain, alone)} plainly, {_less(alone, plain)} by the rules")
    return found


def _less(some: Sequence[Judged], others: Sequence[Judged]) -> list[str]:
    return [f"{rule} ({severity})" for rule, severity in (Counter(some) - Counter(others)).elements()]


def _slots(asked: Requirement) -> tuple[Slot, ...]:
    return (*asked.chain, Slot.ADAPTOR, Slot.SPLITTER)


@given(asked=requirements(), chance=st.randoms(use_true_random=False))
def test_rules_say_the_same_of_a_kind_and_of_each_part(asked: Requirement | None, chance: random.Random) -> None:
    if asked is None:
        return
    for slot in _slots(asked):
        parts, columns = _invented()[KIND_OF_SLOT[slot]]
        looked_at = chance.sample(list(enumerate(parts)), min(_LOOKED_AT, len(parts)))
        assert _differing(looked_at, columns, slot, asked) == []


@pytest.mark.parametrize("name", ASKING)
def test_every_invented_part_is_judged_alike(name: str) -> None:
    asked = asking(name)
    for slot in Slot:
        parts, columns = _invented()[KIND_OF_SLOT[slot]]
        assert _differing(enumerate(parts), columns, slot, asked) == []


@pytest.mark.parametrize("name", ASKING)
def test_every_part_of_the_demonstration_is_judged_alike(catalogue_store: CatalogueStore, name: str) -> None:
    asked = asking(name)
    for slot in _slots(asked):
        kind = KIND_OF_SLOT[slot]
        parts = catalogue_store.candidates(CandidateFilter(kind=kind))
        assert _differing(enumerate(parts), catalogue_store.columns(kind), slot, asked) == []


def _at_the_limit(part: Part, slot: Slot, asked: Requirement, known: set[tuple[RuleId, str]]) -> Iterator[Part]:
    """Yield the part with a figure on either side of where a rule turns, for each rule and figure not ``known``."""

    def broken(path: str, value: float) -> set[RuleId]:
        return {rule for rule, _ in _one_by_one(with_figure(part, path, value), slot, asked)}

    for figure in numbers_of(part):
        own = number_at(part, figure.path)
        if own is None or figure.value_type is not float:
            continue
        kept = broken(figure.path, own)
        for end in ends_of_range(figure):
            for rule in sorted(broken(figure.path, end) ^ kept):
                if (rule, figure.path) not in known:
                    known.add((rule, figure.path))
                    inside, outside = own, end
                    while (middle := (inside + outside) / 2) not in (inside, outside):
                        flips = (rule in broken(figure.path, middle)) != (rule in kept)
                        inside, outside = (inside, middle) if flips else (middle, outside)
                    yield from (with_figure(part, figure.path, value) for value in (inside, outside))


def test_parts_at_the_very_limit_are_judged_alike() -> None:
    # the limits are sought by halving, so that those of a new rule are met too; the plain judge rounds otherwise there
    known: set[tuple[RuleId, str]] = set()
    for name in ASKING:
        asked = asking(name)
        for slot in _slots(asked):
            sound = [part for part in _sound()[:8] if part.kind is KIND_OF_SLOT[slot]]
            parts = by_kind([one for part in sound for one in _at_the_limit(part, slot, asked, known)])
            own = parts[KIND_OF_SLOT[slot]]
            assert _differing(enumerate(own), columns_of(KIND_OF_SLOT[slot], own), slot, asked, plainly=False) == []
    assert {(RuleId.PRESSURE_RATING, "maximum_pressure_pa"), (RuleId.HOSE_VELOCITY, "hose.bore_m")} <= known


def test_every_rule_of_a_part_is_broken_and_kept_by_some_part() -> None:
    # what no part breaks anywhere, or every part does, is not held by the tests above
    broken: set[RuleId] = set()
    kept: set[RuleId] = set()
    for name in ASKING:
        asked = asking(name)
        for slot in Slot:
            columns = _invented()[KIND_OF_SLOT[slot]][1]
            for breach in breaches(columns, slot, asked, tables(asked.site.jurisdiction)):
                where = np.broadcast_to(breach.where, len(columns))
                broken |= {breach.rule_id} if where.any() else set()
                kept |= {breach.rule_id} if not where.all() else set()
    declared = {rule.id for rule in PART_RULES} - _OF_ONE_ALONE
    assert declared - broken == set(), "break them: a part in varied_parts.py, a position in asking_surveys.py"
    assert declared - kept == {RuleId.ADAPTOR_ADDS_JOINT}  # which every adaptor breaks, so that fewest come first
    assert broken <= declared, "declare them as rules of a part: rules/declared/part.py"


def test_a_part_of_another_kind_breaks_that_rule_alone() -> None:
    asked = asking(ASKING[0])
    for slot in Slot:
        for part in _sound()[:8]:
            wrong = [(RuleId.PART_IN_SLOT, Severity.MUST)]
            assert (_one_by_one(part, slot, asked) == wrong) is (part.kind is not KIND_OF_SLOT[slot])


def test_a_price_far_from_its_like_is_asked_about_both_ways() -> None:
    asked_about = 0
    for parts, columns in _invented().values():
        for currency in ("USD", "EUR"):
            middle = middle_price(parts, currency)
            told = middle_price_of(columns, currency)
            assert told == (None if middle is None else pytest.approx(middle, rel=1e-12))
            found = [price_question(part, currency, middle, tables()) for part in parts]
            assert {one.rule_id for one in found if one} <= {RuleId.PRICE_UNUSUAL}
            asked_about += sum(one is not None for one in found)
    assert asked_about > 0


@pytest.mark.parametrize("kind", HANGING_KINDS)
def test_columns_of_the_tables_are_those_of_the_parts(catalogue_store: CatalogueStore, kind: PartKind) -> None:
    read, made = catalogue_store.columns(kind), columns_of(kind, catalogue_store.candidates(CandidateFilter(kind=kind)))
    assert (read.makers, read.ports) == (made.makers, made.ports)
    assert set(read.arrays) == set(made.arrays)
    for name, array in made.arrays.items():
        assert read.arrays[name].dtype == array.dtype, name
        np.testing.assert_array_equal(read.arrays[name], array, err_msg=name)


def test_sums_are_those_of_the_checks() -> None:
    for asked in map(asking, ASKING):
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


def test_a_coaxial_hose_whose_tubes_leave_hardly_a_way_has_no_flow_data_and_stops_no_plan() -> None:
    # a mistyped size of one hose once ended the plan of every position
    asked = asking("vacuum assist")
    mistyped = replace(_sound()[-1], kind=PartKind.CURB_HOSE)
    assert mistyped.hose is not None
    mistyped = replace(mistyped, hose=replace(mistyped.hose, inner_tube_outside_diameter_m=0.019))  # bore 0.01905 m
    assert (RuleId.FLOW_DATA_KNOWN, Severity.MUST) in _one_by_one(mistyped, Slot.CURB_HOSE, asked)
    columns = columns_of(PartKind.CURB_HOSE, [mistyped, *(one for one in _sound() if one.kind is PartKind.CURB_HOSE)])
    lost = sums.loss_pa(columns, Slot.CURB_HOSE, asked, 6e-4, figures.states_for(asked).cold)
    assert np.isinf(lost[[columns.ref_at(row) == mistyped.ref for row in range(len(columns))]]).all()
    assert figures.loss_pa(mistyped, Slot.CURB_HOSE, asked, 6e-4, figures.states_for(asked).cold) == np.inf


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


def test_what_is_kept_of_columns_cannot_be_changed() -> None:
    columns = columns_of(PartKind.CURB_HOSE, [hose()])
    for kept in (columns.has("listings"), columns.has_port("inlet"), columns.on_path("inlet", FlowPath.SINGLE)):
        with pytest.raises(ValueError, match="read-only"):
            kept[0] = True


def test_a_part_without_what_its_kind_adds_is_refused() -> None:
    with pytest.raises(ValueError, match="XX-H1 is a curb_hose but carries no hose data"):
        columns_of(PartKind.CURB_HOSE, [replace(hose(), hose=None)])
