"""Hose cut to length: which lengths there are, what they cost and weigh, and that the search weighs them exactly."""

from __future__ import annotations

import itertools
from dataclasses import replace
from decimal import Decimal
from fractions import Fraction

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from planning.enumeration import small_catalogue
from planning.stores import ListStore
from planning.surveys import ALL_THAT_FIT
from planning.test_exact import enumerated_best
from spoutline.catalogue.descriptions import describe, entry_of
from spoutline.catalogue.store import CatalogueStore
from spoutline.model.faults import InputFault
from spoutline.model.limit import RuleTables
from spoutline.model.part import Part, PartKind
from spoutline.model.requirement import Requirement
from spoutline.planning.keeping.cut_lengths import (
    CutHose,
    LengthUnit,
    cut_changes,
    cut_entries,
    length_words,
    lengths_of,
    price_minor,
)
from spoutline.planning.keeping.cut_texts import read_amounts, read_length
from spoutline.planning.protocols import CandidateFilter
from spoutline.planning.sets.context import PlanningContext
from spoutline.planning.sets.plan_position import plan_position
from spoutline.rules.derive.requirement import requirement_for


@pytest.fixture
def hose(catalogue: CatalogueStore) -> Part:
    return next(part for part in catalogue.candidates(CandidateFilter(kind=PartKind.CURB_HOSE)) if part.hose)


def article(hose: Part, **said: object) -> CutHose:
    usual: dict[str, object] = {
        "number": "CH-20",
        "unit": LengthUnit.FOOT,
        "shortest": Fraction(8),
        "longest": Fraction(10),
        "step": Fraction(1, 2),
        "by_length": {"USD": Decimal("4.25")},
        "fitted": {"USD": Decimal(18)},
    }
    return CutHose(base=entry_of(hose), **(usual | said))  # type: ignore[arg-type]


def test_every_length_is_a_described_part_with_its_price_and_mass(hose: Part) -> None:
    made = cut_entries(article(hose))
    assert [one.number for one in made] == [
        "CH-20 8 ft",
        "CH-20 8 ft 6 in",
        "CH-20 9 ft",
        "CH-20 9 ft 6 in",
        "CH-20 10 ft",
    ]
    # by hand: 8.5 ft at 4.25 and 18.00 fitted is 54.125, half a cent up; 1 ft = 0.3048 m exactly
    assert [one.prices[0].minor for one in made] == [5200, 5413, 5625, 5838, 6050]
    parts = [describe(one).part for one in made]
    assert all(part is not None and part.hose is not None for part in parts)
    first, last = parts[0], parts[-1]
    assert first is not None
    assert last is not None
    assert hose.hose is not None
    assert (first.length_m, last.length_m) == (pytest.approx(2.4384), pytest.approx(3.048))
    assert last.mass_kg - first.mass_kg == pytest.approx(0.6096 * hose.hose.mass_kg_m, abs=1e-6)
    assert first.mass_kg - hose.mass_kg == pytest.approx((2.4384 - hose.length_m) * hose.hose.mass_kg_m, abs=1e-5)
    kept = (first.inlet, first.outlet, first.listings, first.pull_strength_n, first.hose and first.hose.bore_m)
    assert kept == (hose.inlet, hose.outlet, hose.listings, hose.pull_strength_n, hose.hose.bore_m)


@given(
    unit=st.sampled_from(LengthUnit),
    shortest=st.fractions(Fraction(1, 2), 9, max_denominator=48),
    span=st.fractions(0, 9, max_denominator=48),
    step=st.fractions(Fraction(1, 24), 3, max_denominator=48),
)
def test_lengths_are_exact_and_have_names_of_their_own(
    unit: LengthUnit, shortest: Fraction, span: Fraction, step: Fraction
) -> None:
    cut = CutHose(
        number="C",
        base=entry_of_nothing(),
        unit=unit,
        shortest=shortest,
        longest=shortest + span,
        step=step,
        by_length={},
    )
    lengths = lengths_of(cut)
    assert lengths[0] == shortest
    assert all(after - before == step for before, after in itertools.pairwise(lengths))
    assert lengths[-1] <= shortest + span < lengths[-1] + step
    assert len({length_words(one, unit) for one in lengths}) == len(lengths)


def entry_of_nothing():
    from spoutline.model.catalogue_entry import CatalogueEntry

    return CatalogueEntry(number="B", maker="Quillwort Works")


@given(price=st.decimals(0, 500, places=2), fitted=st.decimals(0, 500, places=2), inches=st.integers(1, 400))
def test_a_price_is_that_of_its_length_to_half_a_cent(price: Decimal, fitted: Decimal, inches: int) -> None:
    cut = replace(article_of_nothing(), by_length={"USD": price}, fitted={"USD": fitted})
    exact = Fraction(price) * Fraction(inches, 12) * 100 + Fraction(fitted) * 100
    assert abs(price_minor(cut, Fraction(inches, 12), "USD") - exact) <= Fraction(1, 2)


def article_of_nothing() -> CutHose:
    one = Fraction(1)
    return CutHose(
        number="C",
        base=entry_of_nothing(),
        unit=LengthUnit.FOOT,
        shortest=one,
        longest=one,
        step=one,
        by_length={},
    )


def test_a_changed_article_changes_adds_and_takes_out(hose: Part) -> None:
    before = cut_entries(article(hose))
    others = (entry_of(hose),)
    assert cut_changes(article(hose), (*before, *others)) == ()
    changes = cut_changes(article(hose, step=Fraction(1), by_length={"USD": Decimal(5)}), (*before, *others))
    kinds = {(was or now).number: (was is not None, now is not None) for was, now in changes}  # type: ignore[union-attr]
    assert kinds == {
        "CH-20 8 ft": (True, True),
        "CH-20 8 ft 6 in": (True, False),
        "CH-20 9 ft": (True, True),
        "CH-20 9 ft 6 in": (True, False),
        "CH-20 10 ft": (True, True),
    }
    foreign = before[0].model_copy(update={"figures": entry_of(hose).figures})
    with pytest.raises(InputFault, match="has this one already"):
        cut_changes(article(hose), (foreign,))


def test_what_cannot_be_an_article_is_told(hose: Part, catalogue: CatalogueStore) -> None:
    for said, told in (
        ({"step": Fraction(0)}, "above 0"),
        ({"longest": Fraction(1)}, "at least the shortest, 8"),
        ({"step": Fraction(1, 1000)}, "at most 400 lengths"),
        ({"by_length": {}}, "price of one unit of length"),
        ({"longest": Fraction(200), "step": Fraction(10)}, "length"),
        ({"number": "CH\x07"}, "number"),
        ({"number": ""}, "1 to 40 characters"),
        ({"number": "C" * 300}, "1 to 40 characters"),
    ):
        with pytest.raises(InputFault, match=told):
            cut_entries(article(hose, **said))
    swivel = catalogue.candidates(CandidateFilter(kind=PartKind.SWIVEL))[0]
    with pytest.raises(InputFault, match="a described hose is needed"):
        cut_entries(article(swivel))
    bare = article(hose)
    with pytest.raises(InputFault, match="it lacks"):
        cut_entries(replace(bare, base=bare.base.model_copy(update={"figures": bare.base.figures[:4]})))


def test_lengths_and_amounts_are_read_as_people_write_them() -> None:
    assert read_length("8 ft 6 in", LengthUnit.FOOT, "x") == Fraction(17, 2)
    assert read_length("6 in", LengthUnit.FOOT, "x") == Fraction(1, 2)
    assert read_length("8.5", LengthUnit.FOOT, "x") == Fraction(17, 2)
    assert read_length("2.75 m", LengthUnit.METRE, "x") == Fraction(11, 4)
    assert read_amounts("12.50 USD; 11 eur", "x") == {"USD": Decimal("12.50"), "EUR": Decimal(11)}
    for text in ("", "long", "2,5", "-1", "nan", "1e5", "9 m"):
        with pytest.raises(InputFault):
            read_length(text, LengthUnit.FOOT, "x")
    for text in ("12", "12 dollars", "1,50 USD", "-1 USD", "nan USD"):
        with pytest.raises(InputFault):
            read_amounts(text, "x")


@settings(max_examples=12, deadline=None)
@given(
    name=st.sampled_from(sorted(ALL_THAT_FIT)),
    seed=st.integers(0, 50),
    price=st.decimals(0, 6, places=2),
    fitted=st.decimals(0, 30, places=0),
    shortest=st.integers(6, 12),
)
def test_the_search_weighs_cut_lengths_against_pieces_exactly(
    name: str,
    seed: int,
    price: Decimal,
    fitted: Decimal,
    shortest: int,
    catalogue: CatalogueStore,
    us_tables: RuleTables,
) -> None:
    """The best of all chains of a small catalogue, tried one by one; see ``planning/enumeration.py``."""
    survey = ALL_THAT_FIT[name]
    position, site = survey.positions[0], survey.site
    requirement = requirement_for(position, site, us_tables)
    assert isinstance(requirement, Requirement)
    drawn = small_catalogue(catalogue, requirement, us_tables, seed)
    hoses = [part for part in drawn.all if part.kind is PartKind.CURB_HOSE]
    cut = article(
        hoses[seed % len(hoses)],
        shortest=Fraction(shortest),
        longest=Fraction(shortest + 6),
        step=Fraction(3, 2),
        by_length={site.currency: price},
        fitted={site.currency: fitted},
    )
    lengths = [describe(one).part for one in cut_entries(cut)]
    store = ListStore((*drawn.all, *(part for part in lengths if part is not None)))
    plan = plan_position(position, site, PlanningContext(us_tables, store), with_alternatives=False)
    best = enumerated_best(requirement, us_tables, store)
    alone = enumerated_best(requirement, us_tables, drawn)
    if best is None:
        assert plan.chosen is None
        return
    assert alone is None or best <= alone
    assert plan.chosen is not None
    assert plan.chosen.hanging_set.price_minor == best[1]
