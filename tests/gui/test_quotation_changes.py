"""The changes between two revisions in the words of the window."""

from __future__ import annotations

import re
from collections.abc import Iterator
from xml.etree import ElementTree

import pytest
from PySide6.QtWidgets import QApplication

from spoutline import assets
from spoutline.explain.phrases.field_words import field_words_from_toml
from spoutline.explain.phrases.phrasebook_table import phrasebook_from_toml
from spoutline.explain.plan.story import Story
from spoutline.gui.edits.conversion_questions import position_conversion_questions
from spoutline.gui.edits.field_titles import declared_titles, position_field, site_field, terms_field, undo_words
from spoutline.gui.edits.place_questions import OUTLET_QUESTIONS, filler_questions
from spoutline.gui.edits.question import Entry, Question
from spoutline.gui.edits.questions import DUTY_QUESTIONS, LIQUID_QUESTIONS, SET_QUESTIONS, VAPOUR_QUESTIONS
from spoutline.gui.edits.site_questions import site_questions
from spoutline.gui.edits.terms_subjects import SUBJECTS
from spoutline.gui.models.quotation_changes import change_nodes
from spoutline.gui.window.language import WindowLanguage
from spoutline.gui.wording import tr
from spoutline.model.language import Language
from spoutline.planning.refit.revision_changes import Changed, RevisionChange
from spoutline.units.accepted import UnitSystem
from spoutline.units.display import Display

OF_POSITION = (
    *LIQUID_QUESTIONS,
    *DUTY_QUESTIONS,
    *VAPOUR_QUESTIONS,
    *OUTLET_QUESTIONS,
    *filler_questions(None),
    *filler_questions(1),
    *SET_QUESTIONS,
    *position_conversion_questions(),
)


@pytest.fixture
def spanish(qapp: QApplication) -> Iterator[dict[str, str]]:
    """Let the window speak Spanish; yield its texts by the English ones, without letters for Alt."""
    words = WindowLanguage()
    words.use(Language.SPANISH)
    root = ElementTree.parse(assets.resources_folder() / "translations" / "window_es.ts").getroot()
    yield {one.findtext("source", ""): one.findtext("translation", "").replace("&", "") for one in root.iter("message")}
    words.use(Language.ENGLISH)


def told(language: Language = Language.ENGLISH) -> Story:
    path = assets.resources_folder() / "phrases" / f"{language}.toml"
    phrases = phrasebook_from_toml(path.read_text(encoding="utf-8"), path.name)
    return Story(phrases, Display(UnitSystem.SI).written(language))


def _path(question: Question) -> str:
    """Return the path of a question's field as a list of changes has it: ``other_fillers[1].height_m``."""
    path = re.sub(r"\.(\d+)", r"[\1]", question.name)
    return f"{path}[2]" if question.entry is Entry.QUANTITIES else path


def _row(changed: Changed, path: str, position: str = "") -> str:
    change = RevisionChange(changed=changed, option="", subject=path, before="1", after="2", position=position)
    (head,) = change_nodes((change,), told())
    return head.children[0].cells[0]


def _words(*texts: str) -> set[str]:
    return {word for text in texts for word in re.findall(r"[^\W\d_]+", text.lower())}


@pytest.mark.parametrize("label", ["site", "fingerprint", "3A: diesel, site: address"])
def test_no_label_of_a_position_is_taken_for_anything_else(label: str) -> None:
    dropped = RevisionChange(changed=Changed.POSITION_DROPPED, option="", subject=label, before="", after="")
    changed = RevisionChange(
        changed=Changed.POSITION, option="", subject="filler.distance_m", before="1.8", after="2.5", position=label
    )
    (head,) = change_nodes((dropped, changed), told())
    assert [node.cells for node in head.children] == [
        (f"Position {label}", "there", "–"),
        (f"Position {label}: Vehicle filler · Outlet to filler, level", "1.8 m", "2.5 m"),
    ]


@pytest.mark.parametrize("changed", Changed)
def test_every_kind_of_change_has_words(changed: Changed) -> None:
    option = "Single-use" if changed in OF_AN_OPTION else ""
    change = RevisionChange(changed=changed, option=option, subject="X-1", before="1", after="2")
    (head,) = change_nodes((change,), told())
    assert head.cells[0]
    assert head.children[0].cells[0]


@pytest.mark.parametrize("question", OF_POSITION, ids=lambda one: one.name)
def test_a_field_of_a_position_is_told_by_its_question(question: Question, spanish: dict[str, str]) -> None:
    row = _row(Changed.POSITION, _path(question), "7")
    assert spanish[question.title] in row
    assert not (_words(row) - _words(spanish[question.title])) & _words(question.name, question.title, question.group)


@pytest.mark.parametrize("question", site_questions((), ()), ids=lambda one: one.name)
def test_a_field_of_the_site_is_told_by_its_question(question: Question, spanish: dict[str, str]) -> None:
    row = _row(Changed.SITE, _path(question))
    assert row == f"Estación: {spanish[question.group]} · {spanish[question.title]}"


def test_every_entry_of_the_terms_is_told_by_its_title(spanish: dict[str, str]) -> None:
    for subject in SUBJECTS:
        for field in subject.fields:
            assert _row(Changed.TERMS, field.path) == f"{spanish[subject.title]} · {spanish[field.title]}"
        for table in subject.tables:
            for column in table.columns:
                row = _row(Changed.TERMS, f"{table.path}[1].{column.name}".rstrip("."))
                assert spanish[column.title] in row
                assert spanish[table.title] in row
                assert "2" in row


@pytest.mark.parametrize(
    ("changed", "path", "words"),
    [
        (
            Changed.POSITION,
            "other_fillers[1].plan_legs_m[2]",
            "Position 1A: Further filler 2 · Way round the vehicle 3",
        ),
        (Changed.POSITION, "liquid_today.blend_percent", "Position 1A: Liquid sold today · Blend"),
        (Changed.POSITION, "dispenser_type.outlet.height_m", "Position 1A: Dispenser type · Outlet height"),
        (Changed.POSITION, "island", "Position 1A: Island"),
        (Changed.POSITION, "installed[1].path", "Position 1A: Part there today 2 · Path, where known"),
        (Changed.TERMS, "labour.hourly_rate", "Labor · Rate of an hour"),
        (Changed.TERMS, "labour.tasks[1].hours", "Tasks 2 · Hours"),
        (Changed.TERMS, "heading.exclusions[0]", "Not included · What is not included 1"),
    ],
)
def test_places_in_lists_count_from_one(changed: Changed, path: str, words: str) -> None:
    assert _row(changed, path, "1A") == words


def test_a_field_of_the_conversion_is_told_by_its_question(spanish: dict[str, str]) -> None:
    assert site_field("deadline_year") == f"{spanish['Agency']} · {spanish['Year in which the agency wants it done']}"


def test_the_undo_menu_names_an_answer_in_the_language_of_the_window(spanish: dict[str, str]) -> None:
    family = LIQUID_QUESTIONS[0]
    assert f"¿{undo_words(family)}?" == spanish[family.title]


OF_AN_OPTION = {
    Changed.OPTION_ADDED,
    Changed.OPTION_DROPPED,
    Changed.PART_ADDED,
    Changed.PART_DROPPED,
    Changed.QUANTITY,
    Changed.UNIT_PRICE,
    Changed.TOTAL,
    Changed.POSITION_SET,
}


@pytest.mark.parametrize("language", Language)
def test_the_command_line_names_fields_as_the_window_does(language: Language, qapp: QApplication) -> None:
    """The tables are written from the declared titles; run packaging/translations.py where they differ."""
    words = WindowLanguage()
    words.use(language)
    path = assets.resources_folder() / "fields" / f"{language}.toml"
    table = field_words_from_toml(path.read_text(encoding="utf-8"), path.name)
    try:
        for subject, titles in declared_titles(tr).items():
            assert getattr(table, subject) == titles
        for field, told_by in (
            ("other_fillers[1].plan_legs_m[2]", position_field),
            ("decisions.pinned[0]", position_field),
            ("not_asked.at[1].all", position_field),
        ):
            assert table.told("position", field) == told_by(field)
        assert table.told("terms", "labour.tasks[1].hours") == terms_field("labour.tasks[1].hours")
        assert table.told("site", "deadline_year") == site_field("deadline_year")
    finally:
        words.use(Language.ENGLISH)


@pytest.mark.parametrize(
    ("language", "recovery", "yes"),
    [
        (Language.ENGLISH, "balance", "yes"),
        (Language.GERMAN, "passive Gasrückführung", "ja"),
        (Language.SPANISH, "equilibrio", "sí"),
        (Language.FRENCH, "équilibrage", "oui"),
    ],
)
def test_values_are_told_in_words(language: Language, recovery: str, yes: str) -> None:
    def cells(path: str, before: str, after: str) -> tuple[str, ...]:
        change = RevisionChange(
            changed=Changed.POSITION, option="", subject=path, before=before, after=after, position="7"
        )
        (head,) = change_nodes((change,), told(language))
        return head.children[0].cells[1:]

    assert recovery in cells("vapour_wanted", "none", "balance")[1]
    assert cells("prepay", "", "True") == ("–", yes)
    assert cells("label", "balance", "True") == ("balance", "True")  # names that a person gave stay as they are
