"""Dispenser types: what a type answers its positions inherit, their own answers stand, a later edit changes nothing."""

from __future__ import annotations

import json
from collections.abc import Iterator
from datetime import UTC, datetime
from pathlib import Path
from typing import Any

import pytest
from hypothesis import HealthCheck, example, given, settings
from hypothesis import strategies as st
from pydantic import ValidationError

from examples import up_to
from spoutline.book.book import Book, open_book
from spoutline.book.survey_text import survey_from_json, survey_to_json
from spoutline.bootstrap.dispenser_types import DispenserTypeService
from spoutline.bootstrap.table_maps import TableMaps
from spoutline.model.answered import AssumedTopic, answers_of, assumed_topics, assumptions, same_answers
from spoutline.model.dispenser_type import (
    changed_types,
    folded_type_name,
    inherited_fields,
    inherited_topics,
    inheriting,
    overridden_fields,
    said_fields,
    with_current_types,
    with_dispenser_type,
    with_type,
)
from spoutline.model.faults import InputFault
from spoutline.model.port import FlowPath, Gender, ThreadStandard
from spoutline.model.port_sizes import sizes_of
from spoutline.model.survey import DispenserType, OutletDirection, Position, Retrieval, Survey
from spoutline.planning.agreement.making import question_of
from spoutline.planning.sets.plan_site import fingerprint_of
from spoutline.planning.sets.relabel import same_question
from spoutline.planning.table_intake.intake_fields import TableSubject
from spoutline.planning.table_intake.into_draft import open_supplier_table
from spoutline.planning.table_intake.type_answers import shown_answer, with_answers
from spoutline.units.accepted import UnitSystem
from spoutline.units.display import Display


def type_of(**said: Any) -> DispenserType:
    return DispenserType.model_validate({"name": "Snipebeck 200", **said})


TYPE = type_of(
    outlet={"thread": "G", "size": "1", "height_m": 2.5, "pull_strength_n": 3000.0},
    hook={"distance_m": 0.4},
    supply={"pressure_kpa": 200.0},
)


def survey_of(*positions: Position) -> Survey:
    documents = [answers_of(one, mode="json") for one in positions]
    return Survey.model_validate({"site": {"name": "Reedmere"}, "positions": documents})


def test_what_the_type_answers_is_inherited_and_no_assumption() -> None:
    bare = Position(label="1A")
    typed = with_type(bare, TYPE)
    assert (typed.outlet.thread, typed.outlet.size, typed.hook.distance_m) == (ThreadStandard.G, "1", 0.4)
    assert typed.supply.pressure_kpa == 200.0
    assert set(inherited_fields(typed)) == set(said_fields(TYPE))
    assert set(assumptions(bare)) - set(assumptions(typed)) == {
        "outlet.thread",
        "outlet.size",
        "outlet.height_m",
        "outlet.pull_strength_n",
        "hook.distance_m",
        "supply.pressure_kpa",
    }
    told = {AssumedTopic.OUTLET, AssumedTopic.HOOK, AssumedTopic.OUTLET_STRENGTH, AssumedTopic.SUPPLY}
    assert set(inherited_topics(typed)) == told
    assert same_answers(with_type(typed, None), bare)  # without the type its answers go


def test_an_answer_of_the_position_stands_whether_it_came_before_or_after() -> None:
    before = with_type(Position.model_validate({"label": "1A", "outlet": {"height_m": 2.0}}), TYPE)
    assert before.outlet.height_m == 2.0
    assert overridden_fields(before) == (("outlet", "height_m"),)
    outlet = with_type(Position(label="1A"), TYPE).outlet.model_copy(update={"height_m": 2.0})
    after = with_type(Position(label="1A"), TYPE).model_copy(update={"outlet": outlet})
    assert overridden_fields(after) == (("outlet", "height_m"),)
    assert with_type(before, TYPE, overrides_too=True).outlet.height_m == 2.5
    assert with_type(after, None).outlet.height_m == 2.0


def test_an_answer_taken_away_is_the_types_again() -> None:
    document = answers_of(with_type(Position.model_validate({"label": "1A", "outlet": {"height_m": 2.0}}), TYPE))
    del document["outlet"]["height_m"]
    assert Position.model_validate(document).outlet.height_m == 2.5
    bare = with_type(Position(label="1A"), TYPE)
    open_hook = bare.model_copy(update={"hook": Position(label="x").hook})
    open_hook.model_fields_set.discard("hook")
    assert inheriting(open_hook).hook.distance_m == 0.4


def test_one_type_takes_the_place_of_another() -> None:
    other = DispenserType.model_validate({"name": "Heronmere", "outlet": {"height_m": 1.9}})
    moved = with_type(with_type(Position(label="1A"), TYPE), other)
    assert (moved.outlet.height_m, moved.outlet.thread, moved.supply.pressure_kpa) == (1.9, ThreadStandard.NPT, None)
    assert inherited_fields(moved) == (("outlet", "height_m"),)


def test_a_type_that_contradicts_the_answers_is_told_by_its_name() -> None:
    held = Position.model_validate({"label": "1A", "outlet": {"size": "3/4"}})
    metric = type_of(outlet={"thread": "M", "size": "34x1.5"})
    with pytest.raises(ValidationError, match="Snipebeck 200"):
        with_type(held, metric)


def test_a_survey_says_what_changed_in_the_book_and_takes_it_only_when_asked() -> None:
    survey = survey_of(Position(label="1A", dispenser="1"), Position(label="2A", dispenser="2"))
    chosen = with_dispenser_type(survey, ["1"], TYPE)
    assert chosen.positions[1] == survey.positions[1]
    now = TYPE.model_copy(update={"outlet": TYPE.outlet.model_copy(update={"height_m": 2.75})})
    known = {folded_type_name(TYPE.name): now}
    (change,) = changed_types(chosen, known)
    assert (change.dispensers, change.fields) == (("1",), (("outlet", "height_m"),))
    assert chosen.positions[0].outlet.height_m == 2.5  # nothing moved by itself
    renewed = with_current_types(chosen, known)
    assert renewed.positions[0].outlet.height_m == 2.75
    assert changed_types(renewed, known) == ()
    (gone,) = changed_types(chosen, {})
    assert gone.current is None
    assert with_current_types(chosen, {}) == chosen


def test_the_origin_of_an_answer_has_no_bearing_on_sets_papers_and_agreements() -> None:
    typed = survey_of(with_type(Position(label="1A"), TYPE))
    document = answers_of(typed.positions[0])
    del document["dispenser_type"]
    plain = Survey.model_validate({"site": {"name": "Reedmere"}, "positions": [document]})
    assert same_question(typed.positions[0]) == same_question(plain.positions[0])
    assert question_of(typed.positions[0]) == question_of(plain.positions[0])
    assert fingerprint_of(typed) == fingerprint_of(plain)
    assert assumed_topics(typed.positions[0]) == assumed_topics(plain.positions[0])


_HEIGHT = st.floats(0.1, 6.0).map(lambda one: round(one, 6))


@st.composite
def outlets(draw: st.DrawFn) -> dict[str, Any]:
    thread = draw(st.sampled_from(ThreadStandard))
    said = {
        "thread": thread.value,
        "size": draw(st.sampled_from(sizes_of(thread))),
        "gender": draw(st.sampled_from(Gender)).value,
        "path": draw(st.sampled_from(FlowPath)).value,
        "height_m": draw(_HEIGHT),
        "direction": draw(st.sampled_from(OutletDirection)).value,
        "pull_strength_n": draw(st.floats(1.0, 20000.0).map(lambda one: round(one, 3))),
        "vapour_return_available": draw(st.booleans()),
    }
    kept = draw(st.sets(st.sampled_from(sorted(said))))
    return {name: value for name, value in said.items() if name in kept or (name == "thread" and "size" in kept)}


def plain(text: str) -> str:
    """Return a text as a table keeps it: single blanks inside, none about it."""
    return " ".join(text.split())


@st.composite
def types(draw: st.DrawFn) -> DispenserType:
    said: dict[str, Any] = {
        "name": draw(st.text("AbÄя中9='+-@;,\" ", min_size=1, max_size=12).map(lambda text: plain(f"T{text}"))),
        "maker": plain(draw(st.text("aÄ=+-@', ", max_size=8))),
        "outlet": draw(outlets()),
        "hook": {"distance_m": draw(st.floats(0.0, 3.0).map(lambda one: round(one, 6)))},
        "retrieval": draw(st.sampled_from(Retrieval)).value,
        "reel": {"turns_left": draw(st.floats(0.0, 100.0).map(lambda one: round(one, 3)))},
        "supply": {"pressure_kpa": draw(st.floats(1.0, 2000.0).map(lambda one: round(one, 3)))},
        "overhead": draw(st.booleans()),
    }
    kept = draw(st.sets(st.sampled_from(sorted(said))))
    return DispenserType.model_validate({name: said[name] for name in said if name in kept or name == "name"})


def without_empty(kind: DispenserType) -> dict[str, Any]:
    """Return what a type answers: an empty text or group answers nothing."""
    said = kind.model_dump(mode="json", exclude_unset=True, exclude_none=True)
    return {name: value for name, value in said.items() if value not in ("", {})}


@example(found=[DispenserType(name="T", maker="'="), DispenserType(name="U", maker="=1")])
@given(found=st.lists(types(), min_size=1, max_size=5, unique_by=lambda one: folded_type_name(one.name)))
@settings(max_examples=up_to(40), deadline=None, suppress_health_check=[HealthCheck.function_scoped_fixture])
def test_types_come_back_from_their_tables_as_they_were(found: list[DispenserType], tmp_path: Path) -> None:
    service = DispenserTypeService(lambda: pytest.fail("no book is needed"), TableMaps(lambda: tmp_path))
    for name, content in (("types.csv", service.csv(found)), ("types.xlsx", service.xlsx(found))):
        path = tmp_path / name
        path.write_bytes(content)
        from spoutline.planning.table_intake.into_types import read_types

        read = read_types(open_supplier_table(path, (), {"subject": TableSubject.DISPENSER_TYPES}, {}))
        assert [str(one.problem()) for one in read.report.reports] == []
        assert [without_empty(one) for one in read.kinds] == [without_empty(one) for one in found]


@given(kind=types(), own=outlets())
@settings(max_examples=up_to(60), deadline=None)
def test_a_survey_with_types_comes_back_from_its_text(kind: DispenserType, own: dict[str, Any]) -> None:
    try:
        typed = with_type(Position.model_validate({"label": "1A", "outlet": own}), kind)
    except ValidationError:
        return  # the answers contradict the type, which is told
    survey = Survey.model_validate(
        {"site": {"name": "Reedmere"}, "positions": [answers_of(typed)]},
    )
    back = survey_from_json(survey_to_json(survey), "text")
    assert same_answers(back, survey)
    assert inherited_fields(back.positions[0]) == inherited_fields(typed)


@pytest.mark.parametrize("system", UnitSystem)
def test_answers_are_written_and_read_in_the_units_in_use(system: UnitSystem) -> None:
    display = Display(system)
    made = with_answers(
        None, {"name": "X", "outlet.height_m": "7 ft", "supply.pressure_kpa": "30 psi", "overhead": "yes"}, display
    )
    # 1 ft = 0.3048 m exactly and 1 psi = 6.894757 kPa (NIST SP 811, appendix B.8)
    assert made.outlet.height_m == pytest.approx(2.1336)
    assert made.supply.pressure_kpa == pytest.approx(206.84, abs=0.01)
    from spoutline.model.type_columns import TYPE_COLUMNS

    columns = {column.key: column for column in TYPE_COLUMNS}
    assert shown_answer(made, columns["overhead"], display) == "yes"
    assert shown_answer(made, columns["hook.distance_m"], display) == ""
    emptied = with_answers(made, {"outlet.height_m": ""}, display)
    assert said_fields(emptied) == (("supply", "pressure_kpa"), ("overhead",))
    for key, text, told in (
        ("outlet.height_m", "90 m", "less than or equal to 6"),
        ("retrieval", "rel", "did you mean reel?"),
        ("outlet.hight", "2 m", "use one of: name, maker"),
        ("name", "", "a name is needed"),
    ):
        with pytest.raises(InputFault, match=told.replace("?", r"\?")):
            with_answers(made, {key: text}, display)


@pytest.fixture
def book(tmp_path: Path) -> Iterator[Book]:
    made = open_book(f"sqlite:///{tmp_path / 'book.sqlite3'}", lambda: datetime(2026, 11, 28, tzinfo=UTC))
    yield made
    made.close()


def test_the_book_keeps_types_by_name_whatever_its_capitals(book: Book) -> None:
    kept = book.dispenser_types
    assert kept.put([TYPE, DispenserType(name="Heronmere")]) == (2, 0, 0)
    changed = TYPE.model_copy(update={"name": "SNIPEBECK 200", "overhead": True})
    assert kept.put([changed, DispenserType(name="Heronmere")]) == (0, 1, 1)
    assert [one.name for one in kept.all()] == ["Heronmere", "SNIPEBECK 200"]
    assert same_answers(kept.named("snipebeck  200"), changed)
    kept.remove("heronmere")
    with pytest.raises(InputFault, match="use one of: SNIPEBECK 200"):
        kept.named("Heronmere")
    assert kept.put([DispenserType(name="Heronmere")]) == (1, 0, 0)


def test_a_type_that_only_says_more_is_another_one(book: Book) -> None:
    book.dispenser_types.put([DispenserType(name="X")])
    said = DispenserType.model_validate({"name": "X", "overhead": False})  # the usual value, now answered
    assert book.dispenser_types.put([said]) == (0, 1, 0)
    assert said_fields(book.dispenser_types.named("X")) == (("overhead",),)


def test_the_survey_document_of_a_script_needs_only_the_type() -> None:
    document = {
        "format": "spoutline-survey",
        "version": 1,
        "site": {"name": "Reedmere"},
        "positions": [{"label": "1A", "dispenser_type": json.loads(TYPE.model_dump_json(exclude_unset=True))}],
    }
    read = survey_from_json(json.dumps(document), "text")
    assert read.positions[0].outlet.height_m == 2.5
