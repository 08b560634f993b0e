from __future__ import annotations

import pytest

from spoutline.gui.edits.decisions import keep_part, keep_parts, refuse_part, release_all, release_part
from spoutline.gui.edits.positions import (
    MOST_POSITIONS,
    add_position,
    duplicate_position,
    duplicate_positions,
    free_label,
    remove_position,
    remove_positions,
    rename_position,
)
from spoutline.gui.edits.remedies import after_relaxation, after_way_out
from spoutline.model.copied_answers import GROUP_FIELDS, AnswerGroup, copy_answers
from spoutline.model.faults import InputFault
from spoutline.model.liquid import LiquidFamily
from spoutline.model.part_ref import PartRef
from spoutline.model.plan import Relaxation
from spoutline.model.quantity import Dimension
from spoutline.model.requirement import RequirementId, WayOut
from spoutline.model.survey import Decisions, Position, Site, Survey, SurveyLiquid, VapourStatus

DIESEL = SurveyLiquid(family=LiquidFamily.DIESEL, blend_percent=45.0)
SURVEY = Survey(
    site=Site(name="Invented Corner"),
    positions=(
        Position(
            label="Hose 9",
            liquid=DIESEL,
            hold_open_wanted=True,
            vapour_today=VapourStatus.BALANCE,
            decisions=Decisions(longest_lead_time_days=2),
        ),
        Position(label="Hose 10"),
    ),
)


def labels(survey: Survey) -> list[str]:
    return [position.label for position in survey.positions]


def test_new_position_stands_at_the_end_with_usual_answers() -> None:
    after = add_position(SURVEY, "B1", "2")
    assert after.positions[-1] == Position(label="B1", dispenser="2")


def test_duplicate_stands_below_with_the_next_free_name() -> None:
    after, label = duplicate_position(SURVEY, "Hose 9")
    assert label == "Hose 11"
    assert labels(after) == ["Hose 9", "Hose 11", "Hose 10"]
    assert after.positions[1].model_copy(update={"label": "Hose 9"}) == SURVEY.positions[0]


@pytest.mark.parametrize(("label", "expected"), [("Hose 9", "Hose 11"), ("Hose 10", "Hose 11"), ("pump", "pump 2")])
def test_free_name_follows_the_pattern_and_skips_taken_ones(label: str, expected: str) -> None:
    assert free_label(SURVEY, label) == expected


@pytest.mark.parametrize("label", ["Hose 10", "", "  ", "x" * 61])
def test_name_that_cannot_be_is_refused(label: str) -> None:
    with pytest.raises(InputFault):
        add_position(SURVEY, label, "1")
    with pytest.raises(InputFault):
        rename_position(SURVEY, "Hose 9", label, "1")


def test_rename_keeps_answers_and_place() -> None:
    after = rename_position(SURVEY, "Hose 9", " Pump A ", "7")
    assert after.positions[0] == SURVEY.positions[0].model_copy(update={"label": "Pump A", "dispenser": "7"})


def test_only_the_dispenser_can_change_too() -> None:
    assert rename_position(SURVEY, "Hose 9", "Hose 9", "7").positions[0].dispenser == "7"


def test_last_position_cannot_go() -> None:
    after, focus = remove_position(SURVEY, "Hose 9")
    assert (labels(after), focus) == (["Hose 10"], "Hose 10")
    with pytest.raises(InputFault, match="at least one position"):
        remove_position(after, "Hose 10")


def test_copies_of_several_stand_together_below_the_last_of_them() -> None:
    survey = add_position(SURVEY, "Pump", "2")
    after, copies = duplicate_positions(survey, frozenset({"Hose 9", "Hose 10"}))
    assert copies == ("Hose 11", "Hose 12")
    assert labels(after) == ["Hose 9", "Hose 10", "Hose 11", "Hose 12", "Pump"]
    assert after.positions[2].model_copy(update={"label": "Hose 9"}) == SURVEY.positions[0]
    assert after.positions[3].model_copy(update={"label": "Hose 10"}) == SURVEY.positions[1]


def test_several_go_together_and_one_stays() -> None:
    survey = add_position(SURVEY, "Pump", "2")
    after, focus = remove_positions(survey, frozenset({"Hose 9", "Pump"}))
    assert (labels(after), focus) == (["Hose 10"], "Hose 10")
    assert remove_positions(survey, frozenset({"Hose 9", "Hose 10"}))[1] == "Pump"
    with pytest.raises(InputFault, match="at least one position"):
        remove_positions(survey, frozenset(labels(survey)))


def test_a_survey_takes_no_more_copies_than_it_has_room_for() -> None:
    full = SURVEY.model_copy(update={"positions": tuple(Position(label=f"H{at}") for at in range(MOST_POSITIONS - 1))})
    assert len(duplicate_positions(full, frozenset({"H0"}))[0].positions) == MOST_POSITIONS
    with pytest.raises(InputFault, match=f"at most {MOST_POSITIONS}"):
        duplicate_positions(full, frozenset({"H0", "H1"}))


def test_copy_gives_only_the_chosen_answers_to_the_chosen_positions() -> None:
    survey = add_position(SURVEY, "Hose 11", "1")
    after = copy_answers(survey, "Hose 9", frozenset({AnswerGroup.LIQUID}), frozenset({"Hose 10"}))
    assert after.positions[1].liquid == DIESEL
    assert after.positions[1].hold_open_wanted is False
    assert after.positions[2] == survey.positions[2]


def test_groups_cover_every_answer_of_a_position_once() -> None:
    fields = [field for group in GROUP_FIELDS.values() for field in group]
    assert sorted(fields) == sorted(set(Position.model_fields) - {"label", "dispenser", "island", "dispenser_type"})


def test_kept_part_takes_the_place_of_the_one_it_replaces() -> None:
    survey = keep_parts(SURVEY, "Hose 9", (PartRef("N-1"), PartRef("H-1")))
    after = keep_part(survey, "Hose 9", PartRef("N-2"), instead_of=(PartRef("N-1"),))
    assert after.positions[0].decisions.pinned == (PartRef("H-1"), PartRef("N-2"))


def test_a_part_is_never_kept_and_refused_at_once() -> None:
    survey = refuse_part(keep_part(SURVEY, "Hose 9", PartRef("N-1")), "Hose 9", PartRef("N-1"))
    assert survey.positions[0].decisions.pinned == ()
    assert survey.positions[0].decisions.refused == (PartRef("N-1"),)
    kept = keep_part(survey, "Hose 9", PartRef("N-1"))
    assert kept.positions[0].decisions.refused == ()
    assert release_part(survey, "Hose 9", PartRef("N-1")) == SURVEY


def test_letting_all_parts_go_keeps_the_lead_time() -> None:
    survey = keep_parts(SURVEY, "Hose 9", (PartRef("N-1"), PartRef("H-1")))
    assert release_all(survey, "Hose 9") == SURVEY


@pytest.mark.parametrize(
    ("way", "percent"),
    # B20 and B100 are the classes on either side of the gap: scopes of UL 2586B, 567B and 330B
    [(WayOut.USE_B20_OR_LESS, 20.0), (WayOut.USE_B100, 100.0), (WayOut.USE_E85_OR_LESS, 85.0)],
)
def test_way_out_sets_the_blend(way: WayOut, percent: float) -> None:
    after = after_way_out(SURVEY, "Hose 9", way)
    assert after is not None
    assert after.positions[0].liquid.blend_percent == percent


def test_way_out_that_is_no_answer_or_no_change_offers_nothing() -> None:
    assert after_way_out(SURVEY, "Hose 9", WayOut.ASK_AUTHORITY_AND_MAKER) is None
    assert after_way_out(SURVEY, "Hose 10", WayOut.DROP_HOLD_OPEN) is None


def relaxation(requirement: RequirementId, to_value: float | None, *also: RequirementId) -> Relaxation:
    return Relaxation(
        requirement=requirement,
        from_value=None,
        to_value=to_value,
        dimension=Dimension.DAYS,
        price_minor=None,
        parts=(),
        also=also,
    )


def test_relaxed_lead_time_is_rounded_up_to_whole_days() -> None:
    after = after_relaxation(SURVEY, "Hose 9", relaxation(RequirementId.LEAD_TIME, 6.2))
    assert after is not None
    assert after.positions[0].decisions.longest_lead_time_days == 7


def test_relaxed_flow_is_rounded_down_so_that_the_set_delivers_it() -> None:
    # 37.99 L/min, so that the wish must become 37.9
    after = after_relaxation(SURVEY, "Hose 10", relaxation(RequirementId.FLOW, 37.99e-3 / 60))
    assert after is not None
    assert after.positions[1].supply.wanted_flow_l_min == 37.9


def test_lines_that_help_only_together_are_changed_together_or_not_at_all() -> None:
    both = relaxation(RequirementId.LEAD_TIME, 9, RequirementId.HOLD_OPEN)
    after = after_relaxation(SURVEY, "Hose 9", both)
    assert after is not None
    assert after.positions[0].hold_open_wanted is False
    assert after.positions[0].decisions.longest_lead_time_days == 9
    assert after_relaxation(SURVEY, "Hose 9", relaxation(RequirementId.LEAD_TIME, 9, RequirementId.SPOUT)) is None


def test_rule_of_the_site_is_not_relaxed_by_an_answer() -> None:
    assert after_relaxation(SURVEY, "Hose 9", relaxation(RequirementId.SEPARATION_FORCE, 1.0)) is None
