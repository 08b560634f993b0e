"""Which fields were answered goes with a survey wherever it goes; equal values stay equal questions.

Nothing here rests on outside figures: the property held is that reading what was written gives the same answers.
"""

from __future__ import annotations

import copy
import json
from pathlib import Path
from typing import Any

import pytest
from hypothesis import HealthCheck, given, settings
from hypothesis import strategies as st

from call_count import calls_counted
from examples import up_to
from spoutline.book.book import open_book
from spoutline.book.survey_text import survey_from_json, survey_to_json
from spoutline.gui.edits.answers import set_answer
from spoutline.gui.edits.place_questions import OUTLET_QUESTIONS
from spoutline.gui.edits.positions import add_alike, duplicate_position
from spoutline.model.answered import answered, assumed_fields, same_answers, unanswered
from spoutline.model.copied_answers import AnswerGroup, copy_answers
from spoutline.model.survey import Position, Survey
from spoutline.planning.refit.dispensers import with_copies
from spoutline.planning.refit.survey_merge import merged
from spoutline.planning.sets.plan_site import fingerprint_of
from spoutline.planning.survey_import.cells import with_cells
from spoutline.units.accepted import UnitSystem
from spoutline.units.display import Display

SI = Display(UnitSystem.SI)
# usual and other values alike: an answer may well be the usual one
GIVEN: dict[str, st.SearchStrategy[Any]] = {
    "duty": st.sampled_from(["car", "truck"]),
    "prepay": st.booleans(),
    "island": st.sampled_from(["", "North"]),
    "notes": st.sampled_from(["", "seen"]),
    "liquid_today": st.sampled_from([None, {}, {"family": "gasoline"}]),
}
OUTLET: dict[str, st.SearchStrategy[Any]] = {
    "height_m": st.sampled_from([2.1, 2.4]),
    "gender": st.sampled_from(["female", "male"]),
    "size": st.sampled_from(["3/4", "1"]),
    "pull_strength_n": st.sampled_from([None, 1800.0]),
}
FILLER: dict[str, st.SearchStrategy[Any]] = {"distance_m": st.sampled_from([2.0, 3.0])}


def position_document(label: str) -> st.SearchStrategy[dict[str, Any]]:
    nested = {
        "outlet": st.fixed_dictionaries({}, optional=OUTLET),
        "filler": st.fixed_dictionaries({}, optional=FILLER),
        "other_fillers": st.lists(st.fixed_dictionaries({}, optional=FILLER), max_size=2),
    }
    return st.fixed_dictionaries({"label": st.just(label)}, optional=GIVEN | nested)


DOCUMENTS = st.tuples(position_document("A"), position_document("B")).map(
    lambda pair: {"site": {"name": "Fern Hollow"}, "positions": list(pair)}
)


def survey_of(document: dict[str, Any]) -> Survey:
    return survey_from_json(json.dumps(document), "survey.json")


SURVEYS = DOCUMENTS.map(survey_of)


@given(SURVEYS)
def test_a_file_keeps_what_was_answered(survey: Survey) -> None:
    text = survey_to_json(survey)
    again = survey_from_json(text, "again")
    assert same_answers(survey, again)
    assert survey_to_json(again) == text


@given(DOCUMENTS, st.data())
def test_two_surveys_are_the_same_where_values_and_answered_fields_are(
    document: dict[str, Any], data: st.DataObject
) -> None:
    """One answer taken back may leave every value as it was; a position may be shared or read for itself."""
    less = copy.deepcopy(document)
    place = less["positions"][data.draw(st.integers(0, 1))]
    if fields := sorted(set(place) - {"label"}):
        del place[data.draw(st.sampled_from(fields))]
    one, other = survey_of(document), survey_of(less)
    if data.draw(st.booleans()):
        shared = (one.positions[0], other.positions[1])
        other = other.model_copy(update={"positions": shared})
    assert same_answers(one, other) == (one == other and answered(one) == answered(other))


def test_what_two_surveys_share_is_not_walked_through() -> None:
    """At a station of a thousand positions the window would stand still after every edit."""
    positions = tuple(Position(label=f"P{number}", notes="seen") for number in range(1_000))
    survey = survey_of({"site": {"name": "Fern Hollow"}, "positions": [{"label": "A"}]})
    survey = survey.model_copy(update={"positions": positions})
    edited = positions[7].model_copy(update={"notes": "seen again"})
    after = survey.model_copy(update={"positions": (*positions[:7], edited, *positions[8:])})
    back = after.model_copy(update={"positions": (*positions[:7], positions[7].model_copy(), *positions[8:])})
    with calls_counted() as calls:
        found = [same_answers(survey, survey), same_answers(survey, after), same_answers(survey, back)]
    assert found == [True, False, True]
    assert calls.total() < 5 * len(positions)


@given(DOCUMENTS)
def test_answered_and_assumed_part_the_fields_of_a_position(document: dict[str, Any]) -> None:
    position = survey_of(document).positions[0]
    given_fields, assumed = answered(position), assumed_fields(position)
    assert not given_fields & assumed
    written = document["positions"][0]
    for name in OUTLET:
        path = ("outlet", name)
        assert (path in given_fields) == (name in written.get("outlet", {}))
        assert (path in assumed) == (name not in written.get("outlet", {}))
    assert (("duty",) in given_fields) == ("duty" in written)


@settings(suppress_health_check=[HealthCheck.function_scoped_fixture], max_examples=up_to(25), deadline=None)
@given(SURVEYS)
def test_the_book_keeps_what_was_answered(tmp_path: Path, survey: Survey) -> None:
    book = open_book(f"sqlite:///{tmp_path / 'book.db'}")
    try:
        stored = book.create(survey)
        assert same_answers(book.stored(stored.id).survey, survey)
    finally:
        book.close()


@given(SURVEYS, SURVEYS, SURVEYS)
def test_a_merge_takes_each_answer_from_who_changed_it(base: Survey, mine: Survey, theirs: Survey) -> None:
    untouched, taken = merged(base, base, theirs).survey, merged(base, mine, base).survey
    assert untouched is not None
    assert same_answers(untouched, theirs)
    assert taken is not None
    assert same_answers(taken, mine)
    both = merged(base, mine, theirs).survey
    assert both is not None
    for place in range(2):
        old, own, other, found = (answered(one.positions[place]) for one in (base, mine, theirs, both))
        plain = {path for path in own | other | old | found if path[0] not in {"other_fillers", "liquid_today"}}
        for path in plain:
            wanted = (path in other) if (path in own) == (path in old) else (path in own)
            # a value that is not the usual one was answered by somebody
            assert path in found or not wanted


@given(SURVEYS)
def test_equal_values_are_equal_questions_whatever_was_answered(survey: Survey) -> None:
    spelled_out = Survey.model_validate_json(survey.model_dump_json())
    assert spelled_out == survey
    assert hash(spelled_out) == hash(survey)
    assert fingerprint_of(spelled_out) == fingerprint_of(survey)


SPARSE = survey_of(
    {"site": {"name": "A"}, "positions": [{"label": "1A", "dispenser": "1", "prepay": False, "notes": "seen"}]}
)


def test_an_answer_in_the_window_is_answered_even_where_it_is_the_usual_one() -> None:
    question = next(one for one in OUTLET_QUESTIONS if one.name == "outlet.height_m")
    after = set_answer(SPARSE, "1A", question, 2.1, SI)
    assert after == SPARSE
    assert answered(after) - answered(SPARSE) == {("positions", 0, "outlet", "height_m")}


def test_another_thread_leaves_its_size_to_be_answered() -> None:
    thread = next(one for one in OUTLET_QUESTIONS if one.name == "outlet.thread")
    size = next(one for one in OUTLET_QUESTIONS if one.name == "outlet.size")
    sized = set_answer(SPARSE, "1A", size, "1", SI)
    after = set_answer(sized, "1A", thread, "M", SI).positions[0]
    assert after.outlet.size == "34x1.5"
    assert ("outlet", "thread") in answered(after)
    assert ("outlet", "size") in assumed_fields(after)


def test_an_emptied_cell_is_answered_by_nobody() -> None:
    written = with_cells(SPARSE, {("1A", "outlet.height_m"): "2.4 m", ("1A", "outlet.size"): "DN 25"}, SI)
    assert {("outlet", "height_m"), ("outlet", "size")} <= answered(written.positions[0])
    emptied = with_cells(written, {("1A", "outlet.height_m"): "", ("1A", "outlet.size"): ""}, SI)
    assert same_answers(emptied, SPARSE)


def test_copies_take_the_answers_and_leave_decisions_unanswered() -> None:
    twin, label = duplicate_position(SPARSE, "1A")
    copy = twin.position(label)
    assert copy is not None
    assert answered(copy) == answered(SPARSE.positions[0])
    grown, (new,) = add_alike(SPARSE, "1A", 1)
    alike = grown.position(new)
    assert alike is not None
    assert answered(alike) == answered(SPARSE.positions[0]) - {("notes",)}
    repeated = with_copies(SPARSE, "1", ("2",)).positions[1]
    assert answered(repeated) == answered(SPARSE.positions[0]) - {("notes",)}


def test_copied_answers_are_answered_only_where_the_source_was() -> None:
    two = SPARSE.model_copy(update={"positions": (*SPARSE.positions, Position(label="2A", overhead=True, prepay=True))})
    after = copy_answers(two, "1A", frozenset({AnswerGroup.DUTY}), frozenset({"2A"})).positions[1]
    assert (after.overhead, after.prepay) == (False, False)
    assert answered(after) == {("label",), ("prepay",)}


@pytest.mark.parametrize("name", ["prepay", "notes"])
def test_an_answer_can_be_taken_back(name: str) -> None:
    back = unanswered(SPARSE.positions[0], name)
    assert (name,) in assumed_fields(back)
    assert getattr(back, name) == getattr(Position(label="x"), name)


class Asked(str):
    """A label that counts what it is compared with."""

    compared = 0
    __hash__ = str.__hash__

    def __eq__(self, other: object) -> bool:
        Asked.compared += 1
        return str(self) == other


def test_a_position_is_found_by_its_label_without_looking_at_all_the_others() -> None:
    positions = tuple(Position(label=f"P{number}") for number in range(1_000))
    survey = survey_of({"site": {"name": "Fern Hollow"}, "positions": [{"label": "A"}]})
    station = survey.model_copy(update={"positions": positions})
    edited = positions[7].model_copy(update={"notes": "seen"})
    after = station.model_copy(update={"positions": (*positions[:7], edited, *positions[8:-1])})
    assert all(station.position(Asked(one.label)) is one for one in positions)
    assert all(after.position(Asked(one.label)) is one for one in after.positions)
    assert survey.position("A") is survey.positions[0]
    assert after.position("P999") is station.position("nobody") is survey.position("P7") is None
    assert Asked.compared < 10 * len(positions)
