"""What is counted, named and marked of a station's positions: all of it as it is, with a look at what changed alone."""

from __future__ import annotations

import re

import pytest
from PySide6.QtCore import QCoreApplication

from spoutline.gui.models import plans as plans_module
from spoutline.gui.models import standings as standings_module
from spoutline.gui.models.marks import tone_of_position
from spoutline.gui.models.standings import SurveyedCount
from spoutline.gui.pages.survey import forecourt
from spoutline.gui.pages.survey.forecourt import Tiles, islands
from spoutline.gui.position_links import named_in
from spoutline.gui.roles import Tone
from spoutline.gui.session import Session
from spoutline.gui.window.workplace import Workplace
from spoutline.model.answered import is_surveyed, unanswered
from spoutline.model.survey import Position, Survey


def many_of(survey: Survey) -> tuple[Position, ...]:
    first = survey.positions[0]
    return tuple(
        first.model_copy(update={"label": f"{number}{'AB '[number % 3]}", "dispenser": str(number // 4)})
        for number in range(80)
    )


def test_surveyed_positions_are_counted_as_each_of_them_says(survey: Survey, monkeypatch: pytest.MonkeyPatch) -> None:
    many = many_of(survey)
    bare = unanswered(many[3], "liquid", "duty", "vapour_today", "vapour_wanted")
    assert is_surveyed(many[3])
    assert not is_surveyed(bare)
    looked_at: list[str] = []

    def noted(position: Position) -> bool:
        looked_at.append(position.label)
        return is_surveyed(position)

    monkeypatch.setattr(standings_module, "is_surveyed", noted)
    count = SurveyedCount()
    without = (*many[:3], bare, *many[4:])
    for positions, looks in ((many, 80), (many, 0), (without, 1), (many[:10], 1), (many[:12], 2), (many[1:], 79)):
        looked_at.clear()
        assert count.of(positions) == sum(map(is_surveyed, positions))
        assert len(looked_at) == looks


def test_marks_of_all_positions_are_those_of_each(
    workplace: Workplace, session: Session, monkeypatch: pytest.MonkeyPatch
) -> None:
    plans, sets = workplace.plans, workplace.sets
    assert sets.tones() == {one.label: plans.tone(one.label) for one in session.survey.positions}
    assert Tone.WORKING not in sets.tones().values()
    worked_out: list[str] = []

    def noted(position: Position, plan: object) -> Tone:
        worked_out.append(position.label)
        return tone_of_position(position, plan)  # type: ignore[arg-type]

    monkeypatch.setattr(plans_module, "tone_of_position", noted)
    monkeypatch.setattr(plans, "_fetch", lambda: None)
    many = many_of(session.survey)
    workplace.context.edit(session.survey.model_copy(update={"positions": many}), "Many", focus="7B")
    QCoreApplication.processEvents()
    assert set(plans.tones().values()) == {Tone.WORKING}
    worked_out.clear()
    nearer = many[5].filler.model_copy(update={"distance_m": 1.01})
    edited = (*many[:5], many[5].model_copy(update={"filler": nearer}), *many[6:])
    workplace.context.edit(session.survey.model_copy(update={"positions": edited}), "Move the filler")
    assert plans.tones() == {one.label: Tone.WORKING for one in edited}
    assert worked_out == [many[5].label]


def test_the_forecourt_shown_again_is_the_forecourt_made_anew(survey: Survey, monkeypatch: pytest.MonkeyPatch) -> None:
    many, made, tiles = many_of(survey), [], Tiles()
    tile = forecourt._tile

    def noted(position: Position, tone: Tone) -> object:
        made.append(position.label)
        return tile(position, tone)

    monkeypatch.setattr(forecourt, "_tile", noted)
    tones = dict.fromkeys((one.label for one in many), Tone.GOOD)
    shown = survey.model_copy(update={"positions": many})
    first = islands(shown, tones.__getitem__, 2, tiles)
    assert len(made) == len(many)
    assert islands(shown, tones.__getitem__, 2, tiles) == first
    assert len(made) == len(many)
    tones[many[7].label] = Tone.BAD
    renamed = many[9].model_copy(update={"label": "9B"})
    tones["9B"] = Tone.GOOD
    changed = shown.model_copy(update={"positions": (*many[:9], renamed, *many[10:])})
    again = islands(changed, tones.__getitem__, 2, tiles)
    assert made[len(many) :] == [many[7].label, "9B"]
    assert again == islands(changed, tones.__getitem__, 2)
    assert again != first


def test_of_a_thousand_names_a_text_names_those_that_stand_in_it() -> None:
    labels = [f"{number}/{number % 7}A" for number in range(1_000)]
    text = "Not surveyed yet: 12/5A, 2/5A and 999/5A; 12/5AB is no position, nor is 112/0."
    plain = re.finditer(rf"(?<!\w)(?:{'|'.join(sorted(map(re.escape, labels), key=len, reverse=True))})(?!\w)", text)
    assert named_in(text, labels) == tuple(dict.fromkeys(one.group() for one in plain))
    assert named_in("", labels) == ()
