"""One search over commands, positions, surveys, quotations, parts and help."""

from __future__ import annotations

from collections.abc import Callable, Sequence

import pytest
from PySide6.QtCore import Qt
from PySide6.QtTest import QTest
from pytestqt.qtbot import QtBot

from planning.quoting_terms import DAY, terms_of
from spoutline.bootstrap import Workbench
from spoutline.gui.dialogs.command_search import CommandSearchDialog
from spoutline.gui.edits.question import Step
from spoutline.gui.models.command_search import Found, FoundKind, fitting
from spoutline.gui.places import Place
from spoutline.gui.window.main_window import MainWindow
from spoutline.gui.window.workplace import Workplace
from spoutline.model.survey import Survey
from spoutline.units.accepted import UnitSystem
from spoutline.units.display import Display


def thing(title: str, told: str = "", kind: FoundKind = FoundKind.COMMAND, more: str = "") -> Found:
    return Found(kind=kind, title=title, told=told, go=lambda: None, more_words=more)


def titles(text: str, *offered: Found) -> list[str]:
    return [one.title for one in fitting(text, offered)]


def test_better_fits_come_first() -> None:
    offered = (
        thing("Print", "sets of the position"),
        thing("All sets"),
        thing("Setting"),
        thing("Reset"),
        thing("Go"),
    )
    assert titles("set", *offered) == ["Setting", "All sets", "Reset", "Print"]


def test_every_word_has_to_be_found_whatever_its_accents_and_capitals() -> None:
    offered = (thing("Añadir posición", "una manguera"), thing("Quitar posición"))
    assert titles("POSICION anadir", *offered) == ["Añadir posición"]
    assert titles("posicion", *offered) == ["Quitar posición", "Añadir posición"][::-1]
    assert titles("nothing", *offered) == []
    assert titles("gas", thing("Help", more="gasoline")) == ["Help"]


def test_no_kind_drowns_the_others_and_without_a_word_commands_are_listed() -> None:
    many = [thing(f"A{number}", kind=FoundKind.POSITION) for number in range(30)]
    command = thing("Add")
    assert titles("a", *many, command)[0] == "Add"
    assert len(titles("a", *many, command)) == 9
    assert titles(" ", *many, command) == ["Add"]


@pytest.fixture
def search(qtbot: QtBot, window: MainWindow) -> Callable[[str], CommandSearchDialog]:
    """Return a way to open the search over the window and to type into it."""
    seeking = window.verbs.seeking  # type: ignore[attr-defined]

    def opened(text: str) -> CommandSearchDialog:
        dialog = CommandSearchDialog(seeking.offered(), seeking.seek, window)
        qtbot.addWidget(dialog)
        dialog.show()
        QTest.keyClicks(dialog.edit, text)
        return dialog

    return opened


Search = Callable[[str], CommandSearchDialog]


def go(dialog: CommandSearchDialog, title: str) -> None:
    """Choose by keyboard what has this title, and go there."""
    row = [one.title for one in dialog.found].index(title)
    for _ in range(row):
        QTest.keyClick(dialog.edit, Qt.Key.Key_Down)
    QTest.keyClick(dialog.edit, Qt.Key.Key_Return)
    assert dialog.chosen is not None
    dialog.chosen.go()


def test_a_command_is_given_by_keyboard_alone(search: Search, workplace: Workplace) -> None:
    go(search("installer"), "Installer's work")
    assert workplace.place is Place.INSTALLER


def test_a_position_is_turned_to(search: Search, workplace: Workplace) -> None:
    workplace.show_grid()
    go(search("a2"), "A2")
    assert workplace.session.label == "A2"
    assert workplace.place is Place.SURVEY


def waits_for(qtbot: QtBot, dialog: CommandSearchDialog, title: str) -> None:
    qtbot.waitUntil(lambda: title in [one.title for one in dialog.found], timeout=20_000)


def test_a_survey_and_a_quotation_of_the_book_are_found(
    qtbot: QtBot, search: Search, workplace: Workplace, bench: Workbench, survey: Survey
) -> None:
    site = survey.site.model_copy(update={"name": "Heather Gate"})
    other = bench.book().create(survey.model_copy(update={"site": site}))
    made = bench.quoting().quote(
        other.survey, terms_of(heading={"number": "FIND-1", "dated": DAY}), Display(UnitSystem.SI)
    )
    kept = bench.quoting().life().keep(made.quotation)
    dialog = search("heather")
    waits_for(qtbot, dialog, "Heather Gate")
    assert {one.kind for one in dialog.found} == {FoundKind.SURVEY, FoundKind.QUOTATION}
    go(dialog, "Heather Gate")
    assert workplace.session.stored.id == other.id
    dialog = search("find-1")
    waits_for(qtbot, dialog, "FIND-1")
    go(dialog, "FIND-1")
    assert workplace.place is Place.QUOTATION
    page = workplace.quotation_page
    qtbot.waitUntil(lambda: page.stored is not None and page.stored.id == kept.id, timeout=20_000)


def test_a_part_is_found_and_asked_about(qtbot: QtBot, search: Search, workplace: Workplace) -> None:
    plan = workplace.plans.plan("A1")
    assert plan is not None
    assert plan.chosen is not None
    number = plan.chosen.hanging_set.links[0].part.number
    dialog = search(number)
    waits_for(qtbot, dialog, number)
    go(dialog, number)
    assert workplace.step is Step.SET
    assert workplace.set_page.why_not.search_edit.text() == number


def test_what_comes_late_for_another_text_is_dropped(qtbot: QtBot, window: MainWindow) -> None:
    asked: list[tuple[str, Callable[[Sequence[Found]], None]]] = []
    dialog = CommandSearchDialog((), lambda text, take: asked.append((text, take)), window)
    qtbot.addWidget(dialog)
    dialog.edit.setText("one")
    qtbot.waitUntil(lambda: len(asked) == 1)
    dialog.edit.setText("two")
    asked[0][1]([thing("late")])
    assert dialog.found == ()
    assert dialog.told_label.text() != ""
    qtbot.waitUntil(lambda: len(asked) == 2)
    asked[1][1]([thing("in time")])
    assert [one.title for one in dialog.found] == ["in time"]
