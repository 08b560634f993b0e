from __future__ import annotations

import pytest

from spoutline.gui.edits.answers import read_answer, set_answer, shown_answer, told_of, with_filler, without_filler
from spoutline.gui.edits.question import WALK, Entry, Question, Step, answer_in
from spoutline.gui.edits.questions import questions_of
from spoutline.gui.edits.site_questions import site_questions
from spoutline.model.faults import InputFault
from spoutline.model.survey import Position, Site, Survey
from spoutline.units.accepted import UnitSystem
from spoutline.units.display import Display

SI, US = Display(UnitSystem.SI), Display(UnitSystem.US)
SURVEY = Survey(site=Site(name="Invented Corner"), positions=(Position(label="A1"), Position(label="A2")))


def question(name: str, survey: Survey = SURVEY) -> Question:
    asked = [q for step in WALK for q in questions_of(step, survey.positions[0])]
    asked += site_questions((), ())
    return next(q for q in asked if q.name == name)


def answered(name: str, text: str, display: Display, survey: Survey = SURVEY) -> Survey:
    asked = question(name, survey)
    return set_answer(survey, "A1", asked, read_answer(text, asked, display), display)


@pytest.mark.parametrize(
    ("name", "text", "display", "stored"),
    [
        ("outlet.height_m", "8 ft", SI, 2.4384),  # NIST SP 811 B.8: 1 ft = 0.3048 m exactly
        ("outlet.height_m", "8", US, 2.4384),
        ("outlet.height_m", "2.1", SI, 2.1),
        ("supply.pressure_kpa", "30 psi", SI, 206.842719),  # NIST SP 811 B.8: 1 psi = 6.894 757 kPa
        ("supply.maximum_flow_l_min", "10", US, 37.85411784),  # NIST SP 811 B.8: 1 gal = 3.785 411 784 L
        ("outlet.pull_strength_n", "350 lbf", SI, 1556.877566),  # NIST SP 811 B.8: 1 lbf = 4.448 222 N
        ("climate.low_c", "14", US, -10.0),  # NIST SP 811 B.7: t/°C = (t/°F - 32)/1.8
        ("liquid.blend_percent", "15", SI, 15.0),
        ("decisions.longest_lead_time_days", "2 weeks", SI, 14),
    ],
)
def test_typed_quantity_lands_in_the_survey_in_its_own_unit(
    name: str, text: str, display: Display, stored: float
) -> None:
    after = answered(name, text, display)
    owner: Position | Site = after.site if name.startswith("climate") else after.positions[0]
    assert answer_in(owner, question(name)) == pytest.approx(stored, rel=1e-6)


def test_a_shown_answer_reads_back_as_itself() -> None:
    for display in (SI, US):
        text = shown_answer(2.1, question("outlet.height_m"), display)
        read = read_answer(text, question("outlet.height_m"), display)
        assert read == pytest.approx(2.1, rel=1e-3)


@pytest.mark.parametrize(
    ("name", "text", "told"),
    [
        ("outlet.height_m", "-2", "more than"),
        ("outlet.height_m", "9", "at most"),
        ("outlet.height_m", "tall", "number and a unit"),
        ("outlet.height_m", "", "number and a unit"),
        ("outlet.height_m", "5 psi", "use one of the units"),
        ("liquid.blend_percent", "120", "at most"),
        ("decisions.longest_lead_time_days", "2.5", "whole number"),
        ("outlet.size", "", "the sizes of NPT threads"),
        ("outlet.size", "7/8", "it is a size of G threads"),
        ("outlet.size", "34x1.5", "this thread is NPT"),
        ("climate.low_c", "55", "must not exceed"),
    ],
)
def test_unusable_answer_is_refused_and_says_what_would_be_right(name: str, text: str, told: str) -> None:
    with pytest.raises(InputFault) as caught:
        answered(name, text, SI)
    sentence = told_of(caught.value, question(name), text)
    assert told in sentence
    assert (f"“{text}”" if text else "nothing") in sentence


def test_range_is_told_in_the_units_in_use() -> None:
    with pytest.raises(InputFault) as in_metres:
        answered("outlet.height_m", "9", SI)
    with pytest.raises(InputFault) as in_feet:
        answered("outlet.height_m", "30", US)
    assert "6 m" in str(in_metres.value)
    # 6 m / 25.4 mm = 236.22 in; 19 ft 8 1/4 in would be more than 6 m and be refused
    assert "19 ft 8 3/16 in" in str(in_feet.value)


def test_nothing_is_clamped() -> None:
    with pytest.raises(InputFault):
        answered("filler.height_m", "5.0001", SI)
    assert answered("filler.height_m", "5", SI).positions[0].filler.height_m == 5.0


def test_empty_supply_pressure_means_the_usual_figure() -> None:
    given = answered("supply.pressure_kpa", "200", SI)
    assert answered("supply.pressure_kpa", " ", SI, given).positions[0].supply.pressure_kpa is None


def test_choosing_def_takes_the_blend_back_and_asks_about_the_zone() -> None:
    with_blend = answered("liquid.blend_percent", "10", SI)
    after = answered("liquid.family", "def", SI, with_blend)
    assert after.positions[0].liquid.blend_percent == 0.0
    names = [q.name for q in questions_of(Step.LIQUID, after.positions[0])]
    assert "in_flammable_zone" in names
    assert "liquid.blend_percent" not in names


def test_legs_round_the_vehicle_are_read_one_by_one() -> None:
    after = answered("filler.plan_legs_m", "1.2; 6 ft; 80 cm", SI)
    assert after.positions[0].filler.plan_legs_m == pytest.approx((1.2, 1.8288, 0.8))
    assert answered("filler.plan_legs_m", "", SI, after).positions[0].filler.plan_legs_m == ()
    with pytest.raises(InputFault, match="more than"):
        answered("filler.plan_legs_m", "1; 0", SI)


def test_other_positions_and_their_answers_stay() -> None:
    after = answered("outlet.height_m", "2.5", SI)
    assert after.positions[1] == SURVEY.positions[1]
    assert after.positions[0].filler == SURVEY.positions[0].filler


def test_fillers_are_added_up_to_the_survey_limit_and_taken_away() -> None:
    survey = SURVEY
    for _ in range(12):
        survey = with_filler(survey, "A1")
    assert len(survey.positions[0].fillers) == 13
    with pytest.raises(InputFault, match="at most 12"):
        with_filler(survey, "A1")
    asked = question("other_fillers.3.distance_m", survey)
    changed = set_answer(survey, "A1", asked, 4.5, SI)
    assert changed.positions[0].other_fillers[3].distance_m == 4.5
    assert without_filler(changed, "A1", 3).positions[0].other_fillers == survey.positions[0].other_fillers[1:]


def test_every_question_has_words_help_and_a_source() -> None:
    asked = [q for step in WALK for q in questions_of(step, SURVEY.positions[0])] + list(site_questions((), ()))
    for one in asked:
        assert one.title
        assert one.help
        assert one.source
        assert one.entry is not Entry.QUANTITY or one.measure is not None


def test_mnemonics_of_one_page_do_not_clash() -> None:
    for step in (Step.LIQUID, Step.DUTY, Step.VAPOUR, Step.PLACE):
        letters = [
            q.title[q.title.index("&") + 1].lower() for q in questions_of(step, SURVEY.positions[0]) if "&" in q.title
        ]
        assert len(letters) == len(set(letters)), (step, letters)
