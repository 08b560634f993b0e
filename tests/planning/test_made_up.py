"""Sets sold made up: one article of several parts, weighed exactly against parts sold one by one."""

from __future__ import annotations

from dataclasses import replace
from datetime import date
from decimal import Decimal

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from planning.enumeration import small_catalogue
from planning.stores import ListStore
from planning.surveys import ALL_THAT_FIT
from planning.test_exact import enumerated_best
from spoutline.catalogue.descriptions import describe, entry_of
from spoutline.catalogue.store import CatalogueStore
from spoutline.model.catalogue_entry import CatalogueEntry
from spoutline.model.faults import InputFault
from spoutline.model.limit import RuleTables
from spoutline.model.part import Part, PartKind, Price
from spoutline.model.part_columns import columns_of
from spoutline.model.part_ref import PartRef
from spoutline.model.plan import PositionPlan
from spoutline.model.requirement import Requirement
from spoutline.model.survey import Position, Site
from spoutline.planning.keeping.health import Matter, health_of
from spoutline.planning.keeping.made_up import MadeUpSet, made_up_changes, made_up_entries
from spoutline.planning.protocols import CandidateFilter, PartStore
from spoutline.planning.sets.context import PlanningContext
from spoutline.planning.sets.plan_position import plan_position
from spoutline.rules.chain.accessories import joints_to_seal
from spoutline.rules.chain.joints import mates
from spoutline.rules.derive.requirement import requirement_for
from spoutline.rules.parts.prices import middle_price, middle_price_of, price_question


def planned(position: Position, site: Site, tables: RuleTables, store: PartStore, **options: bool) -> PositionPlan:
    return plan_position(position, site, PlanningContext(tables, store), **options)


@pytest.fixture(scope="module")
def pieces(catalogue: CatalogueStore, us_tables: RuleTables) -> tuple[Part, ...]:
    """Return the parts of the set that the demonstration gives a car's gasoline hose, dispenser first."""
    survey = ALL_THAT_FIT["car"]
    chosen = planned(survey.positions[0], survey.site, us_tables, catalogue, with_alternatives=False).chosen
    assert chosen is not None
    return tuple(link.part for link in chosen.hanging_set.links)


def article(parts: tuple[Part, ...], price: str = "100", **said: object) -> MadeUpSet:
    usual: dict[str, object] = {"number": "KIT 7", "prices": {"USD": Decimal(price)}}
    return MadeUpSet(parts=tuple(map(entry_of, parts)), **(usual | said))  # type: ignore[arg-type]


def made_parts(made: MadeUpSet) -> list[Part]:
    parts = [describe(one).part for one in made_up_entries(made)]
    assert None not in parts
    return [part for part in parts if part is not None]


def test_the_first_part_is_the_article_and_the_others_come_with_it(pieces: tuple[Part, ...]) -> None:
    made = made_parts(article(pieces, maker="Quillwort Works"))
    whole = PartRef("KIT 7", "Quillwort Works")
    assert [part.number for part in made] == ["KIT 7", *(f"KIT 7 part {at}" for at in range(2, len(pieces) + 1))]
    assert [part.comes_with for part in made] == [None, *[whole] * (len(pieces) - 1)]
    assert {part.article for part in made} == {whole}
    assert [part.price_minor("USD") for part in made] == [10000, *[0] * (len(pieces) - 1)]
    for part, piece in zip(made, pieces, strict=True):
        same = replace(
            part, number=piece.number, maker=piece.maker, name=piece.name, prices=piece.prices, inlet=piece.inlet,
            outlet=piece.outlet, lead_time_days=piece.lead_time_days, pack_quantity=piece.pack_quantity,
        )  # fmt: skip
        assert same == piece
    assert (made[0].inlet, made[-1].outlet) == (pieces[0].inlet, pieces[-1].outlet)
    assert {part.lead_time_days for part in made} == {max(piece.lead_time_days for piece in pieces)}


def test_a_part_of_an_article_goes_nowhere_else(pieces: tuple[Part, ...], us_tables: RuleTables) -> None:
    """All other pieces are taken away one by one: a set with the article's parts holds all of them, in order."""
    survey = ALL_THAT_FIT["car"]
    made = made_parts(article(pieces[:2]))
    rest = pieces[2:]
    plan = planned(survey.positions[0], survey.site, us_tables, ListStore((*made, *rest)), with_alternatives=False)
    assert plan.chosen is not None
    assert [link.part.number for link in plan.chosen.hanging_set.links][:2] == ["KIT 7", "KIT 7 part 2"]
    assert joints_to_seal(plan.chosen) == sum(
        joint.seal == "sealant" and not joint.downstream_port.made_up_in for joint in plan.chosen.joints
    )
    for kept in made:
        lone = ListStore((kept, *(piece for piece in pieces if piece.kind is not kept.kind)))
        assert planned(survey.positions[0], survey.site, us_tables, lone, with_alternatives=False).chosen is None


def test_no_joint_of_an_article_is_taken_for_another(pieces: tuple[Part, ...], us_tables: RuleTables) -> None:
    """By hand: two makers give one number to articles of their own, and a part in the middle cannot be left out."""
    survey = ALL_THAT_FIT["car"]
    short = made_parts(article(pieces[:2], "1", maker="Aster Works"))
    longer = made_parts(article(pieces[:3], "2", maker="Beech Works"))
    store = ListStore((*pieces, *short, *longer))
    plan = planned(survey.positions[0], survey.site, us_tables, store)
    assert plan.chosen is not None
    # one piece more at the short article's side: dearer than the article that holds it too
    assert (pieces[2].price_minor("USD") or 0) > 100
    for judged in (plan.chosen, *(one.judged for one in plan.alternatives)):
        held = [part for part in judged.hanging_set.bought if part.article is not None]
        assert held in ([], short, longer)
    assert list(plan.chosen.hanging_set.bought[:3]) == longer
    # a swivel takes the hose at one end and the nozzle at the other: without it the two would join
    hose, swivel, nozzle = made_parts(article(pieces[2:]))
    assert [one.kind for one in (hose, swivel, nozzle)] == [PartKind.CURB_HOSE, PartKind.SWIVEL, PartKind.NOZZLE]
    for upper, lower, is_joint in ((hose, swivel, True), (swivel, nozzle, True), (hose, nozzle, False)):
        assert upper.outlet is not None
        assert lower.inlet is not None
        assert mates(upper.outlet, lower.inlet) is is_joint
        assert mates(replace(upper.outlet, made_up_in=""), replace(lower.inlet, made_up_in=""))


def test_the_article_is_known_by_every_part_whatever_its_number(pieces: tuple[Part, ...]) -> None:
    for number, maker in (
        ("KIT 7 part 2", "Aster Works"),
        ("Aster Works 1", "Aster Works"),
        ("KIT e\u0301", "Cafe\u0301 & Sons, Ltd."),
        ("K" * 60, "M" * 120),
    ):
        made = made_parts(article(pieces, number=number, maker=maker))
        assert {part.article for part in made} == {made[0].ref}
        assert [part.comes_with for part in made] == [None, *[made[0].ref] * (len(pieces) - 1)]
        for part in made:
            assert describe(entry_of(part)).part == part


def test_what_cannot_be_an_article_is_told(pieces: tuple[Part, ...]) -> None:
    for parts, said, told in (
        (pieces[:1], {}, "2 to 8 parts"),
        (pieces * 4, {}, "2 to 8 parts"),
        (pieces[::-1], {}, "nothing can be joined|must join"),
        (pieces, {"number": ""}, "1 to 60 characters"),
        (pieces, {"number": "KIT\x07"}, "number"),
        (pieces, {"number": "K" * 70}, "1 to 60 characters"),
        (pieces, {"prices": {}}, "price of the whole article"),
        (pieces, {"prices": {"USD": Decimal("1.005")}}, "no whole number of 0.01"),
        (pieces, {"prices": {"XXQ": Decimal(-1)}}, "price|minor|currency"),
    ):
        with pytest.raises(InputFault, match=told):
            made_up_entries(article(parts, **said))
    with pytest.raises(InputFault, match="sold by itself"):
        made_up_entries(article(tuple(made_parts(article(pieces)))))
    bare = article(pieces)
    lacking = bare.parts[0].model_copy(update={"figures": bare.parts[0].figures[:3]})
    with pytest.raises(InputFault, match="it lacks"):
        made_up_entries(replace(bare, parts=(lacking, *bare.parts[1:])))


def test_a_changed_article_changes_adds_and_takes_out(pieces: tuple[Part, ...]) -> None:
    before = made_up_entries(article(pieces))
    assert made_up_changes(article(pieces), before) == ()
    shorter = made_up_changes(article(pieces[:-1]), (*before, entry_of(pieces[0])))
    gone = [was.number for was, now in shorter if was is not None and now is None]
    assert gone == [f"KIT 7 part {len(pieces)}"]
    dearer = made_up_changes(article(pieces, "120"), before)
    assert [(was and was.number, now and now.prices[0].minor) for was, now in dearer] == [("KIT 7", 12000)]
    foreign = entry_of(replace(pieces[0], number="KIT 7"))
    with pytest.raises(InputFault, match="has this one already"):
        made_up_changes(article(pieces), (foreign,))


def test_at_another_price_pieces_are_chosen(pieces: tuple[Part, ...], us_tables: RuleTables) -> None:
    """By hand: the sum of the pieces' prices is the price at which neither is cheaper."""
    survey = ALL_THAT_FIT["car"]
    together = sum(part.price_minor("USD") or 0 for part in pieces)
    for minor, is_article in ((together - 1, True), (together + 1, False)):
        price = str(Decimal(minor) / 100)
        store = ListStore((*pieces, *made_parts(article(pieces, price))))
        plan = planned(survey.positions[0], survey.site, us_tables, store)
        assert plan.chosen is not None
        assert (plan.chosen.hanging_set.links[0].part.number == "KIT 7") is is_article
        assert plan.chosen.hanging_set.price_minor == min(minor, together)
        others = [one.judged.hanging_set for one in plan.alternatives]
        assert all(len({link.part.article for link in one.links}) == 1 for one in others)


@settings(max_examples=12, deadline=None)
@given(
    name=st.sampled_from(sorted(ALL_THAT_FIT)),
    seed=st.integers(0, 50),
    percent=st.integers(40, 120),
    start=st.integers(0, 3),
    length=st.integers(2, 5),
)
def test_the_search_weighs_articles_against_pieces_exactly(
    name: str,
    seed: int,
    percent: int,
    start: int,
    length: int,
    catalogue: CatalogueStore,
    us_tables: RuleTables,
) -> None:
    """The best of all chains of a small catalogue, tried one by one; see ``planning/enumeration.py``."""
    survey = ALL_THAT_FIT[name]
    position, site = survey.positions[0], survey.site
    requirement = requirement_for(position, site, us_tables)
    assert isinstance(requirement, Requirement)
    drawn = small_catalogue(catalogue, requirement, us_tables, seed)
    found = planned(position, site, us_tables, drawn, with_alternatives=False).chosen
    if found is None:
        return
    parts = tuple(link.part for link in found.hanging_set.links)[start : start + length]
    if len(parts) < 2:
        return
    pieces_minor = sum(part.price_minor(site.currency) or 0 for part in parts)
    price = Decimal(pieces_minor * percent // 100) / 100
    made = made_parts(article(parts, prices={site.currency: price}))
    store = ListStore((*drawn.all, *made))
    plan = planned(position, site, us_tables, store, with_alternatives=False)
    best = enumerated_best(requirement, us_tables, store)
    assert best is not None
    assert plan.chosen is not None
    assert plan.chosen.hanging_set.price_minor == best[1]
    if percent < 100:
        assert plan.chosen.hanging_set.price_minor < found.hanging_set.price_minor
        assert any(part.article for part in plan.chosen.hanging_set.bought)
    assert made[0].prices == (Price(currency=site.currency, minor=int(price * 100)),)


def test_at_an_equal_price_the_first_set_by_its_numbers_is_chosen(
    pieces: tuple[Part, ...], us_tables: RuleTables
) -> None:
    """Sets of one price stand in the order of their parts' keys, articles and pieces alike: no chance decides."""
    survey = ALL_THAT_FIT["car"]
    together = Decimal(sum(part.price_minor("USD") or 0 for part in pieces)) / 100
    for number in ("AA 1", "ZZ 9"):
        made = made_parts(article(pieces, str(together), number=number))
        by_key = min(([part.ref.key for part in parts] for parts in (pieces, made)), key=lambda keys: keys)
        for store in (ListStore((*pieces, *made)), ListStore((*made, *pieces))):
            plan = planned(survey.positions[0], survey.site, us_tables, store, with_alternatives=False)
            assert plan.chosen is not None
            assert [link.part.ref.key for link in plan.chosen.hanging_set.links] == by_key


def test_an_article_that_lost_a_part_is_told_before_publishing(pieces: tuple[Part, ...], us_tables: RuleTables) -> None:
    whole, day = made_up_entries(article(pieces[:3])), date(2026, 11, 29)
    others = tuple(map(entry_of, pieces))

    def lonely(entries: tuple[CatalogueEntry, ...]) -> list[str]:
        notes = health_of((*entries, *others), (us_tables,), (), day)
        return [note.ref.number for note in notes if note.matter is Matter.NO_MATE and note.ref is not None]

    assert lonely(whole) == []
    assert lonely((whole[0], whole[2])) == ["KIT 7", "KIT 7 part 3"]
    assert lonely(whole[1:]) == ["KIT 7 part 2"]


def test_the_price_of_an_article_is_compared_with_no_kind(
    pieces: tuple[Part, ...], catalogue: CatalogueStore, us_tables: RuleTables
) -> None:
    """An article is of parts of several kinds: it puts no question, and moves no middle price of a kind."""
    made = made_parts(article(pieces[:3], "9999"))
    kind = made[0].kind
    alike = catalogue.candidates(CandidateFilter(kind=kind))
    middle = middle_price(alike, "USD")
    assert price_question(replace(made[0], inlet=pieces[0].inlet, outlet=pieces[0].outlet), "USD", middle, us_tables)
    assert price_question(made[0], "USD", middle, us_tables) is None
    assert middle_price((*alike, *[made[0]] * len(alike)), "USD") == middle
    many = tuple(replace(made[0], number=f"KIT {at}") for at in range(len(alike)))
    assert middle_price_of(columns_of(kind, (*alike, *many)), "USD") == middle
