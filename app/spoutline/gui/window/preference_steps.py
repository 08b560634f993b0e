"""What a person prefers, asked for and put into effect."""

from __future__ import annotations

from collections.abc import Callable
from typing import TYPE_CHECKING

from PySide6.QtWidgets import QDialog

from spoutline.book.records import SettingName
from spoutline.frozen import frozen
from spoutline.gui.session import Session
from spoutline.gui.waiting import wait_for
from spoutline.gui.window.main_window import MainWindow
from spoutline.model.catalogue_edition import EditionRef
from spoutline.model.faults import InputFault, StoreFault
from spoutline.units.accepted import UnitSystem

if TYPE_CHECKING:
    from spoutline.bootstrap.preferences import OpenWith
    from spoutline.gui.dialogs.preferences import Preferred


@frozen
class Effects:
    """What the window does where units or rules are others from now on, and what leads to the backups."""

    use_units: Callable[[UnitSystem], None]
    rules_changed: Callable[[], None]
    open_backups: Callable[[], None]


class PreferenceSteps:
    """Asks for language, units, look, opening, catalog and local rules, and puts each into effect."""

    def __init__(self, window: MainWindow, session: Session, effects: Effects) -> None:
        self._window, self._session, self._effects = window, session, effects

    def open_preferences(self) -> None:
        """Show what is preferred and put other choices into effect."""
        from spoutline.bootstrap.data_folder import use_data_folder
        from spoutline.bootstrap.preferences import preferred_opening
        from spoutline.gui.dialogs.preferences import PreferencesDialog, Preferred

        workbench, window = self._session.workbench, self._window
        try:
            now = Preferred(
                language=window.language,
                units=self._session.display.system,
                theme=window.theme,
                open_with=preferred_opening(),
                catalogue=str(wait_for(lambda: workbench.catalogues().chosen())),
                jurisdiction=wait_for(workbench.usual_jurisdiction),
            )
        except (InputFault, StoreFault) as fault:
            window.show_trouble(str(fault))
            return
        dialog = PreferencesDialog(workbench, now, use_data_folder, self._effects.open_backups, window)
        if dialog.exec() == QDialog.DialogCode.Accepted:
            self.prefer(now, dialog.preferred)

    def prefer(self, before: Preferred, after: Preferred) -> None:
        """Put choices into effect; the language last, for that builds the window anew."""
        workbench = self._session.workbench
        if after.units is not before.units:
            self._effects.use_units(after.units)
        if after.theme is not before.theme:
            self._window.theme_wanted.emit(after.theme.value)
        if after.open_with is not before.open_with:
            self._open_with(after.open_with)
        if after.jurisdiction != before.jurisdiction:
            self._session.remember(SettingName.JURISDICTION, after.jurisdiction)
        if after.catalogue != before.catalogue:
            try:
                wait_for(lambda: workbench.catalogues().choose(EditionRef.from_text(after.catalogue)))
            except (InputFault, StoreFault) as fault:
                self._window.show_trouble(str(fault))
            else:
                self._effects.rules_changed()
        if after.language is not before.language:
            self._window.language_wanted.emit(after.language.value)

    def _open_with(self, wanted: OpenWith) -> None:
        from spoutline.bootstrap.preferences import Preference, keep_preference

        try:
            keep_preference(Preference.OPEN_WITH, wanted.value)
        except StoreFault as fault:
            self._window.show_trouble(str(fault))
