"""Listed parts are told by what they differ in, what tells most first; unlike parts never by one text.

Figures in pounds-force are converted by hand: 1 lbf = 4.4482216152605 N exactly (NIST SP 811, appendix B.8).
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import replace
from itertools import combinations

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from examples import up_to
from rules.invented_parts import FEMALE, adaptor, breakaway, hose, nozzle, swivel, swivel_breakaway
from spoutline import assets
from spoutline.explain.phrases.phrasebook_table import phrasebook_from_toml
from spoutline.explain.plan.story import Story
from spoutline.explain.plan.what_differs import ListedParts, what_differs
from spoutline.model.language import Language
from spoutline.model.liquid import ListingClass
from spoutline.model.material import Material
from spoutline.model.part import Part
from spoutline.model.part_figures import PartFigure, figures_of, value_at
from spoutline.model.port import FlowPath, Gender, Port, ThreadStandard
from spoutline.units.accepted import UnitSystem
from spoutline.units.display import Display

LBF = 4.4482216152605
E10, E25 = ListingClass.E10, ListingClass.E25


def story(language: Language = Language.ENGLISH, system: UnitSystem = UnitSystem.US) -> Story:
    path = assets.resources_folder() / "phrases" / f"{language}.toml"
    phrases = phrasebook_from_toml(path.read_text(encoding="utf-8"), path.name)
    return Story(phrases, Display(system).written(language))


def told(*parts: Part, words: Story | None = None, with_kind: bool = True) -> list[str]:
    texts = what_differs(parts, words or story(), with_kind=with_kind)
    return [texts[part.ref] for part in parts]


def parting(number: str, low_lbf: float, high_lbf: float, **fields: object) -> Part:
    return breakaway(number, separation_minimum_n=low_lbf * LBF, separation_maximum_n=high_lbf * LBF, **fields)


def test_breakaways_are_told_by_pull_and_class_and_not_by_what_they_share() -> None:
    parts = (
        parting("B1", 135, 240),
        parting("B2", 180, 300),
        parting("B3", 135, 240, listings=frozenset({E10, E25})),
    )
    assert told(*parts) == ["135–240 lbf, E10", "180–300 lbf, E10", "135–240 lbf, E10 E25"]


def test_units_and_words_follow_the_reader() -> None:
    single, again = breakaway("B1"), breakaway("B2", separation_minimum_n=600.0, reconnectable=True)
    metric = story(Language.GERMAN, UnitSystem.SI)
    assert told(single, again, words=metric) == [
        "500–900 N, Einmalausführung",
        "600–900 N, wiederverbindbar",
    ]
    hoses = (hose("H1", length_m=3.5), hose("H2", length_m=4.0))
    assert told(*hoses, words=story(Language.ENGLISH, UnitSystem.SI)) == ["3.5 m", "4 m"]
    for language in (Language.GERMAN, Language.FRENCH):  # decimal comma, as CLDR has it for both
        assert told(*hoses, words=story(language, UnitSystem.SI)) == ["3,5 m", "4 m"]


@pytest.mark.parametrize(
    ("language", "latch"),
    [
        (Language.ENGLISH, ["hold-open latch", "no latch"]),
        (Language.GERMAN, ["mit Raste", "ohne Raste"]),
    ],
)
def test_a_device_is_told_by_the_words_of_the_trade(language: Language, latch: list[str]) -> None:
    assert told(nozzle("N1", hold_open=True), nozzle("N2", hold_open=False), words=story(language)) == latch


def test_where_the_telling_figures_are_equal_the_first_other_figure_parts_only_those_that_are_alike() -> None:
    parts = (
        swivel("S1", maximum_pressure_pa=350e3, mass_kg=0.5),
        swivel("S2", maximum_pressure_pa=520e3, mass_kg=0.6),
        swivel("S3", planes=1),
    )
    assert told(*parts, words=story(system=UnitSystem.SI)) == [
        "two-plane, greatest pressure: 350 kPa",
        "two-plane, greatest pressure: 520 kPa",
        "single-plane",
    ]


def test_figures_that_read_alike_are_told_to_their_last_digit() -> None:
    near = (breakaway("B1", separation_maximum_n=900.01), breakaway("B2", separation_maximum_n=900.02))
    first, second = told(*near, words=story(system=UnitSystem.SI))
    assert "900.01 N" in first
    assert "900.02 N" in second


def test_ends_that_differ_only_in_gender_are_told_with_it() -> None:
    male = Port(ThreadStandard.NPT, "3/4", Gender.MALE, FlowPath.SINGLE)
    assert told(breakaway("B1"), breakaway("B2", outlet=male)) == ["outlet: 3/4 NPT female", "outlet: 3/4 NPT male"]


def test_parts_alike_in_every_figure_are_told_by_number_and_by_maker_where_that_is_one_too() -> None:
    assert told(nozzle("N1"), nozzle("N2")) == ["invented part, N1", "invented part, N2"]
    same = replace(nozzle("N1"), maker="Wickettarn Supply")
    assert told(nozzle("N1"), same) == ["invented part, Thistledown Brass N1", "invented part, Wickettarn Supply N1"]
    listed = ListedParts((nozzle("N1"), same, nozzle("N2", hold_open=True)), story())
    assert listed.of(same).startswith("Wickettarn Supply N1 (no latch")
    assert listed.of(nozzle("N2", hold_open=True)) == "N2 (hold-open latch)"
    for number, shown in (("N2", "Wickettarn Supply N2"), ("N3", "N3")):  # that are not listed
        assert listed.of(replace(nozzle(number), maker="Wickettarn Supply")) == f"{shown} (invented part)"


def test_a_part_alone_has_its_name_and_kinds_stand_before_parts_of_several() -> None:
    assert told(nozzle("N1")) == ["invented part"]
    mixed = (parting("B1", 135, 240), parting("B2", 180, 300), nozzle("N1"))
    assert told(*mixed) == ["breakaway, 135–240 lbf", "breakaway, 180–300 lbf", "invented part"]
    assert told(*mixed, with_kind=False)[0] == "135–240 lbf"
    assert what_differs((), story()) == {}


# unlike parts, whatever they differ in

BASES = (breakaway(), swivel(), swivel_breakaway(), hose(), nozzle(), adaptor())
LARGE = Port(ThreadStandard.NPT, "1", Gender.FEMALE, FlowPath.SINGLE)
COAXIAL = Port(ThreadStandard.UN, "1-7/8-12", Gender.FEMALE, FlowPath.BALANCE)


def other_values(figure: PartFigure, value: object) -> list[object]:
    """Return values of the figure's own type that a part may have instead, near ones and far ones."""
    if isinstance(value, bool):
        return [not value]
    if isinstance(value, int):
        return [value % 3 + 1]
    if isinstance(value, float):
        return [value * 1.000001, value * 1.2, *([None] if figure.may_lack else [])]
    if isinstance(value, Port):
        return [FEMALE, LARGE, COAXIAL, replace(FEMALE, made_up_in="Wickettarn Supply W-1 part 2")]
    if isinstance(value, tuple):
        return [tuple(reversed(value)), (Material.STAINLESS_STEEL,)]
    if figure.choices:
        return [frozenset({one}) if figure.many else one for one in figure.choices]
    return [value]


def changed(part: Part, figure: PartFigure, value: object) -> Part:
    if not figure.block:
        return replace(part, **{figure.name: value})
    return replace(part, **{figure.block: replace(getattr(part, figure.block), **{figure.name: value})})


@st.composite
def lists(draw: st.DrawFn) -> list[Part]:
    base = draw(st.sampled_from(BASES))
    figures = [figure for figure in figures_of(base.kind) if figure.declared.tells or figure.is_labelled]
    parts: list[Part] = []
    for serial in range(draw(st.integers(2, 7))):
        part = replace(draw(st.sampled_from(parts)) if parts and draw(st.booleans()) else base, number=f"ZZ-{serial}")
        for figure in draw(st.lists(st.sampled_from(figures), max_size=3)):
            part = changed(part, figure, draw(st.sampled_from(other_values(figure, value_at(part, figure.path)))))
        parts.append(part)
    return parts


def alike(one: Part, other: Part) -> bool:
    return all(value_at(one, figure.path) == value_at(other, figure.path) for figure in figures_of(one.kind))


def without_number(text: str, part: Part) -> str:
    return text.removesuffix(f", {part.number}")


@settings(max_examples=up_to(300), deadline=None)
@given(lists(), st.sampled_from(list(Language)), st.sampled_from(list(UnitSystem)))
def test_unlike_parts_never_read_alike(parts: Sequence[Part], language: Language, system: UnitSystem) -> None:
    texts = what_differs(parts, story(language, system))
    assert len(set(texts.values())) == len(parts)
    for one, other in combinations(parts, 2):
        mine, its = texts[one.ref], texts[other.ref]
        if alike(one, other):
            assert mine.endswith(one.number)
            assert its.endswith(other.number)
        else:
            assert without_number(mine, one) != without_number(its, other)


@settings(max_examples=up_to(60), deadline=None)
@given(lists(), st.randoms(use_true_random=False))
def test_texts_do_not_hang_on_the_order_of_the_list(parts: list[Part], random: object) -> None:
    before = what_differs(parts, story())
    mixed = list(parts)
    random.shuffle(mixed)  # type: ignore[attr-defined]
    assert what_differs(mixed, story()) == before
