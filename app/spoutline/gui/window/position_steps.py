"""Positions added, renamed, copied and taken away, dispensers repeated, types and tables taken in: a person's steps."""

from __future__ import annotations

from pathlib import Path

from PySide6.QtWidgets import QDialog, QFileDialog

from spoutline.gui.edits.positions import duplicate_position, free_label, remove_position
from spoutline.gui.waiting import wait_for
from spoutline.gui.widgets.notice_bar import Offer
from spoutline.gui.window.main_window import TABLE_ENDINGS, MainWindow
from spoutline.gui.window.workplace import Workplace
from spoutline.gui.wording import tr
from spoutline.model.faults import InputFault, StoreFault


class PositionSteps:
    """Takes the steps that change which positions the survey has, each as one edit that can be undone."""

    def __init__(self, window: MainWindow, workplace: Workplace) -> None:
        self._window, self._workplace, self._session = window, workplace, workplace.session

    def add_position(self) -> None:
        """Ask for names and add a position."""
        survey, position = self._session.survey, self._session.position
        proposal = free_label(survey, position.label)
        self._ask_names("", proposal, position.dispenser, tr("Add a position"))

    def rename_position(self) -> None:
        """Ask for other names of the position."""
        position = self._session.position
        self._ask_names(position.label, position.label, position.dispenser, tr("Rename {0}").format(position.label))

    def _ask_names(self, label: str, proposal: str, dispenser: str, text: str) -> None:
        from spoutline.gui.dialogs.position_name import PositionNameDialog

        dialog = PositionNameDialog(
            self._session.survey, label, proposal=proposal, dispenser=dispenser, parent=self._window
        )
        if dialog.exec() == QDialog.DialogCode.Accepted and dialog.after is not None:
            self._workplace.context.edit(dialog.after, text, dialog.new_label)

    def duplicate_position(self) -> None:
        """Add a position with the same answers and turn to it."""
        label = self._session.label
        try:
            after, new_label = duplicate_position(self._session.survey, label)
        except InputFault as fault:
            self._window.show_trouble(str(fault))
            return
        self._workplace.context.edit(after, tr("Duplicate {0}").format(label), new_label)

    def remove_position(self) -> None:
        """Take the position off the site; undo brings it back, so nothing is asked."""
        label = self._session.label
        try:
            after, focus = remove_position(self._session.survey, label)
        except InputFault as fault:
            self._window.show_trouble(str(fault))
            return
        self._workplace.context.edit(after, tr("Remove {0}").format(label), focus)

    def copy_answers(self) -> None:
        """Ask which answers go to which positions and copy them."""
        from spoutline.gui.dialogs.copy_answers import CopyAnswersDialog

        dialog = CopyAnswersDialog(self._session.survey, self._session.label, self._window)
        if dialog.exec() == QDialog.DialogCode.Accepted and dialog.after is not None:
            self._workplace.context.edit(dialog.after, tr("Copy answers of {0}").format(self._session.label))

    def open_dispenser_types(self) -> None:
        """Show the types of the book; one that is chosen there answers for the positions of a dispenser."""
        from spoutline.gui.dialogs.dispenser_types import DispenserTypesDialog

        dialog = DispenserTypesDialog(self._session, self._workplace.context.intake, self._window)
        if dialog.exec() == QDialog.DialogCode.Accepted and dialog.after is not None:
            self._workplace.context.edit(dialog.after, dialog.said)
        self.tell_changed_types()

    def tell_changed_types(self) -> None:
        """Say where the book knows a type of the survey otherwise now, and offer its figures."""
        session = self._session
        if all(position.dispenser_type is None for position in session.survey.positions):
            return
        try:
            found = wait_for(lambda: session.workbench.dispenser_types().changed(session.survey))
        except (InputFault, StoreFault):
            return  # what cannot be read is told where it is asked for
        renewed = [one for one in found if one.current is not None]
        if not renewed:
            return
        named = ", ".join(dict.fromkeys(one.before.name for one in renewed))
        words = tr("Changed in the book since they were chosen: dispenser type {0}. The survey stays as it is.")
        offer = Offer(tr("Take the new &figures"), self._take_new_figures)
        self._window.notify(words.format(named), offers=(offer,))

    def _take_new_figures(self) -> None:
        session = self._session
        try:
            after = wait_for(lambda: session.workbench.dispenser_types().with_current(session.survey))
        except (InputFault, StoreFault) as fault:
            self._window.show_trouble(str(fault))
            return
        self._workplace.context.edit(after, tr("Take the new figures of dispenser types"))

    def repeat_dispenser(self) -> None:
        """Ask for names and repeat the dispenser under them."""
        from spoutline.gui.dialogs.dispensers import RepeatDialog

        dispenser = self._session.position.dispenser
        dialog = RepeatDialog(self._session.survey, dispenser, self._window)
        if dialog.exec() == QDialog.DialogCode.Accepted and dialog.after is not None:
            self._workplace.context.edit(dialog.after, tr("Repeat dispenser {0}").format(dispenser))

    def mirror_dispenser(self) -> None:
        """Ask for the sides and repeat the positions of one on the other."""
        from spoutline.gui.dialogs.dispensers import MirrorDialog

        dispenser = self._session.position.dispenser
        dialog = MirrorDialog(self._session.survey, dispenser, self._window)
        if dialog.exec() == QDialog.DialogCode.Accepted and dialog.after is not None:
            self._workplace.context.edit(dialog.after, tr("Other side of dispenser {0}").format(dispenser))

    def import_table(self) -> None:
        """Ask for a table, show what its positions would change, and take them in one step."""
        path, _ = QFileDialog.getOpenFileName(
            self._window, tr("Read positions from a table"), "", f"CSV, XLSX (*{' *'.join(TABLE_ENDINGS)})"
        )
        if path:
            self.read_table(Path(path))

    def read_table(self, path: Path) -> None:
        """Show a table of positions and take them in one step."""
        from spoutline.gui.dialogs.table_intake import TableIntakeDialog
        from spoutline.gui.intake.works import PositionsWork

        session = self._session
        work = PositionsWork(session.workbench.position_tables(), session.survey, session.display.system)
        dialog = TableIntakeDialog(
            tr("Read positions from a table"), self._workplace.context.intake, work, self._window
        )
        dialog.open_file(path)
        taken = dialog.taken if dialog.exec() == QDialog.DialogCode.Accepted else None
        if taken is not None and taken.survey is not None:
            self._workplace.context.edit(taken.survey, tr("Read positions from {0}").format(path.name))
            self._window.notify(dialog.told)
