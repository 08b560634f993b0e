"""What nobody answered is an assumption: named in the document, told on paper; nothing where all is answered."""

from __future__ import annotations

import json
from typing import Any

import pytest

from spoutline.model.answered import (
    AssumedTopic,
    assumed_topics,
    assumptions,
    is_surveyed,
    site_assumptions,
    surveyed_only,
)
from spoutline.model.survey import Position, Survey


def test_an_untouched_position_assumes_every_field_that_decides_and_is_not_surveyed() -> None:
    silent = Position(label="1A")
    found = assumptions(silent)
    assert {"liquid.family", "liquid.blend_percent", "duty", "vapour_wanted", "outlet.height_m"} <= set(found)
    assert "outlet.pull_strength_n" in found
    assert not {one for one in found if one.startswith(("reel", "retractor", "notes", "decisions", "label"))}
    assert not is_surveyed(silent)


@pytest.mark.parametrize(
    "answer",
    [
        {"liquid": {"family": "gasoline"}},
        {"liquid": {"blend_percent": 0}},
        {"duty": "car"},
        {"vapour_today": "none"},
        {"vapour_wanted": "none"},
    ],
)
def test_a_main_question_answered_with_its_usual_value_is_an_answer(answer: dict[str, Any]) -> None:
    assert is_surveyed(Position.model_validate({"label": "1A", **answer}))


def test_other_answers_leave_a_position_not_surveyed() -> None:
    assert not is_surveyed(Position.model_validate({"label": "1A", "prepay": True, "outlet": {"height_m": 2.0}}))


def test_fields_that_nothing_reads_are_no_assumptions() -> None:
    on_reel = Position.model_validate({"label": "1A", "retrieval": "reel"})
    assert "reel.drum_diameter_m" in assumptions(on_reel)
    assert not {one for one in assumptions(on_reel) if one.startswith("hook")}
    of_def = Position.model_validate({"label": "1A", "liquid": {"family": "def"}})
    assert "in_flammable_zone" in assumptions(of_def)
    assert "liquid.blend_percent" not in assumptions(of_def)


def test_what_is_asked_of_the_station_is_no_topic_of_a_position() -> None:
    topics = assumed_topics(Position(label="1A"))
    assert topics[:4] == (AssumedTopic.LIQUID, AssumedTopic.BLEND, AssumedTopic.DUTY, AssumedTopic.VAPOUR)
    whole = json.loads(Position(label="1A").model_dump_json())
    del whole["supply"], whole["outlet"]["pull_strength_n"]
    whole["supply"] = {"wanted_flow_l_min": 30}
    assert assumed_topics(Position.model_validate(whole)) == ()


def test_only_surveyed_positions_are_taken_along() -> None:
    survey = Survey.model_validate(
        {"site": {"name": "Quillmere Stop"}, "positions": [{"label": "1A", "duty": "car"}, {"label": "1B"}]}
    )
    kept = surveyed_only(survey)
    assert kept is not None
    assert [one.label for one in kept.positions] == ["1A"]
    assert surveyed_only(kept) is kept
    assert surveyed_only(survey.model_copy(update={"positions": survey.positions[1:]})) is None
    assert site_assumptions(survey.site) == (
        "jurisdiction",
        "climate.low_c",
        "climate.high_c",
        "currency",
        "service",
        "fenced",
    )
