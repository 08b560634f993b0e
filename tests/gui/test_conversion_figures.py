"""The figures of a part without a catalogue number: all can be given, none is lost, faults stand at their fields."""

from __future__ import annotations

import pytest
from PySide6.QtWidgets import QAbstractButton, QComboBox, QLineEdit
from pytestqt.qtbot import QtBot

from spoutline.bootstrap import Workbench
from spoutline.gui.dialogs.installed_figures import InstalledFiguresDialog
from spoutline.gui.edits.command import make_edit
from spoutline.gui.edits.installed_parts import with_described_part
from spoutline.gui.edits.installed_questions import FigureQuestion, described_questions
from spoutline.gui.edits.question import Entry
from spoutline.gui.jobs import Jobs
from spoutline.gui.models.plans import Plans
from spoutline.gui.models.shown_sets import ShownSets
from spoutline.gui.pages.context import Context, StoryInUse
from spoutline.gui.pages.survey.installed_panel import InstalledPanel
from spoutline.gui.session import Session
from spoutline.gui.widgets.answer_field import AnswerField, ListField, TextField
from spoutline.gui.widgets.several_field import SeveralField
from spoutline.model.installed import InstalledPart
from spoutline.model.part import HANGING_KINDS, PartKind
from spoutline.model.quantity import Dimension
from spoutline.model.survey import Survey
from spoutline.planning.sets.installed_units import missing_figures
from spoutline.units.accepted import UnitSystem
from spoutline.units.display import Display

SI = Display(UnitSystem.SI)
# invented figures of a usable size, each with its unit
TYPED = {
    Dimension.TEMPERATURE: "-10 °C",
    Dimension.PRESSURE: "50 psi",
    Dimension.MASS: "2.5 kg",
    Dimension.MASS_PER_LENGTH: "0.6 kg/m",
    Dimension.DIAMETER: "1 in",
    Dimension.LENGTH: "12 ft",
    Dimension.RESISTANCE: "20 Ω",
    Dimension.RESISTANCE_PER_LENGTH: "10 Ω/m",
    Dimension.PERMEATION: "5 g/m²·day",
    Dimension.FORCE: "200 lbf",
    Dimension.TORQUE: "40 lbf·ft",
    Dimension.FLOW: "10 gpm",
    Dimension.FLOW_COEFFICIENT: "6 Kv",
    Dimension.COUNT: "2",
}
TYPED_BY_NAME = {  # one inside the other
    "figures.hose.outside_diameter_m": "1.5 in",
    "figures.hose.inner_tube_bore_m": "0.4 in",
    "figures.hose.inner_tube_outside_diameter_m": "0.5 in",
}


def dialog_for(qtbot: QtBot, bench: Workbench, survey: Survey, kind: PartKind) -> InstalledFiguresDialog:
    label = survey.positions[0].label
    bare = survey.positions[0].model_copy(update={"installed": ()})
    there = survey.model_copy(update={"positions": (bare, *survey.positions[1:])})
    there = with_described_part(there, label, kind, "plate hard to read")
    questions = described_questions(kind, bench.story(SI).word)
    dialog = InstalledFiguresDialog(there, label, 0, questions, SI)
    qtbot.addWidget(dialog)
    return dialog


def give(field: AnswerField, text: str) -> None:
    """Answer as a person does: type, choose from the list, tick."""
    if isinstance(field, TextField):
        field.editor.setText(text)
    elif isinstance(field, ListField):
        field.show_answer(text)
        field.editor.activated.emit(field.editor.currentIndex())
    else:
        assert isinstance(field, SeveralField)
        field.boxes[text].click()


def fill(dialog: InstalledFiguresDialog, questions: tuple[FigureQuestion, ...]) -> None:
    for asked in questions:
        question, field = asked.question, dialog.fields[asked.question.name]
        if question.measure is not None:
            give(field, TYPED_BY_NAME.get(question.name, TYPED[question.measure.dimension]))
        elif question.entry is Entry.TEXT:
            give(field, "3/4")
        else:
            give(field, question.options[0].value)


def recorded(dialog: InstalledFiguresDialog) -> InstalledPart:
    assert dialog.after is not None
    return dialog.after.positions[0].installed[0]


@pytest.mark.parametrize("kind", HANGING_KINDS)
def test_a_part_of_every_kind_can_be_described_so_that_nothing_is_missing_for_a_check(
    qtbot: QtBot, bench: Workbench, survey: Survey, kind: PartKind
) -> None:
    dialog = dialog_for(qtbot, bench, survey, kind)
    fill(dialog, described_questions(kind, bench.story(SI).word))
    dialog.accept()
    assert not [(name, field.fault) for name, field in dialog.fields.items() if field.fault]
    part = recorded(dialog)
    assert missing_figures(part) == ()
    assert part.figures is not None
    assert part.figures.maximum_pressure_pa == pytest.approx(50 * 6894.757)  # NIST SP 811 B.8: 1 psi = 6894.757 Pa
    assert part.figures.pull_strength_n == pytest.approx(200 * 4.448222)  # NIST SP 811 B.8: 1 lbf = 4.448222 N
    if part.figures.hose is not None:
        assert part.figures.length_m == part.figures.hose.length_m == pytest.approx(12 * 0.3048)  # NIST SP 811 B.8
    else:
        assert part.figures.length_m == pytest.approx(0.0254)  # NIST SP 811 B.8: 1 in = 25.4 mm


def test_recording_twice_without_a_change_keeps_every_figure_to_the_last_digit(
    qtbot: QtBot, bench: Workbench, survey: Survey
) -> None:
    dialog = dialog_for(qtbot, bench, survey, PartKind.SWIVEL)
    questions = described_questions(PartKind.SWIVEL, bench.story(SI).word)
    fill(dialog, questions)
    dialog.accept()
    assert dialog.after is not None
    again = InstalledFiguresDialog(dialog.after, survey.positions[0].label, 0, questions, SI)
    qtbot.addWidget(again)
    again.accept()
    assert again.after == dialog.after
    again.empty_button.click()
    again.accept()
    assert recorded(again).figures is None


def test_what_lacks_or_is_out_of_range_is_said_at_its_field_and_nothing_is_recorded(
    qtbot: QtBot, bench: Workbench, survey: Survey
) -> None:
    dialog = dialog_for(qtbot, bench, survey, PartKind.BREAKAWAY)
    give(dialog.fields["figures.mass_kg"], "-2 kg")
    give(dialog.fields["figures.temperature_maximum_c"], "warm")
    dialog.accept()
    assert dialog.after is None
    assert "more than 0" in dialog.fields["figures.mass_kg"].fault
    assert "warm" in dialog.fields["figures.temperature_maximum_c"].fault
    assert "choose one" in dialog.fields["figures.inlet.thread"].fault
    assert "at least one" in dialog.fields["figures.wetted_materials"].fault
    assert not dialog.fields["figures.resistance_ohm"].fault
    fill(dialog, described_questions(PartKind.BREAKAWAY, bench.story(SI).word))
    give(dialog.fields["figures.breakaway.separation_maximum_n"], "100 lbf")
    dialog.accept()
    assert dialog.after is None
    fault = dialog.fields["figures.breakaway.separation_minimum_n"].fault
    assert "must not exceed" in fault
    assert "444.8 N" in fault  # 100 lbf in the units of the dialog, NIST SP 811 B.8: 1 lbf = 4.448222 N


def test_a_plate_without_a_listing_differs_from_one_that_was_not_read(
    qtbot: QtBot, bench: Workbench, survey: Survey
) -> None:
    dialog = dialog_for(qtbot, bench, survey, PartKind.NOZZLE)
    dialog.accept()
    assert recorded(dialog).listings is None
    give(dialog.fields["listings"], "none")
    dialog.accept()
    assert recorded(dialog).listings == ()
    give(dialog.fields["listings"], "E10")
    dialog.accept()
    assert "no listing alone" in dialog.fields["listings"].fault


@pytest.mark.parametrize("kind", [PartKind.NOZZLE, PartKind.CURB_HOSE, PartKind.SWIVEL_BREAKAWAY])
def test_everything_in_the_dialog_has_a_name(qtbot: QtBot, bench: Workbench, survey: Survey, kind: PartKind) -> None:
    dialog = dialog_for(qtbot, bench, survey, kind)
    inputs = [one for sort in (QLineEdit, QComboBox, QAbstractButton) for one in dialog.findChildren(sort)]
    assert not [one for one in inputs if not (one.accessibleName() or getattr(one, "text", str)())]
    titles = [asked.question.title for asked in described_questions(kind, bench.story(SI).word)]
    assert len(set(titles)) == len(titles)


def test_the_panel_opens_the_dialog_for_a_described_part_only_and_undo_takes_the_figures_back(
    qtbot: QtBot, session: Session, bench: Workbench
) -> None:
    jobs = Jobs()
    plans = Plans(session, jobs)
    sets = ShownSets(session, plans, jobs)
    panel = InstalledPanel(Context(session, plans, jobs, StoryInUse(session), sets))
    qtbot.addWidget(panel)
    make_edit(session, with_described_part(session.survey, session.label, PartKind.SWIVEL, "old swivel"), "add")
    panel.refresh()
    assert panel.figures_dialog() is None
    assert panel.fault_label.text()
    before, last = session.survey, len(session.position.installed) - 1
    panel.tree.setCurrentIndex(panel.model.index(last, 0))
    dialog = panel.figures_dialog()
    assert dialog is not None
    fill(dialog, described_questions(PartKind.SWIVEL, bench.story(SI).word))
    dialog.accept()
    panel.take_figures(dialog)
    assert session.position.installed[last].figures is not None
    session.undo_stack.undo()
    assert session.survey == before
