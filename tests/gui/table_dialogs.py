"""The view of a table in its dialog, driven as a person drives it while the dialog is open."""

from __future__ import annotations

from collections.abc import Callable
from pathlib import Path

import pytest
from PySide6.QtCore import Qt
from pytestqt.qtbot import QtBot

from spoutline.gui.dialogs.table_intake import TableIntakeDialog

Act = Callable[[TableIntakeDialog], None]


def looked(qtbot: QtBot, dialog: TableIntakeDialog) -> None:
    """Wait until the table was read as it stands now."""
    qtbot.waitUntil(lambda: dialog.panel.look is not None, timeout=20_000)


def take(qtbot: QtBot, dialog: TableIntakeDialog) -> None:
    """Take the table over, and wait until the dialog was left by it."""
    looked(qtbot, dialog)
    qtbot.waitUntil(dialog.panel.take_button.isEnabled, timeout=20_000)
    qtbot.mouseClick(dialog.panel.take_button, Qt.MouseButton.LeftButton)
    qtbot.waitUntil(lambda: dialog.taken is not None, timeout=20_000)


def drive(monkeypatch: pytest.MonkeyPatch, qtbot: QtBot, path: Path | None = None, act: Act | None = None) -> None:
    """Let the next such dialog open ``path`` and do ``act``, which takes it over where None."""

    def run(dialog: TableIntakeDialog) -> int:
        dialog.show()
        if path is not None:
            dialog.open_file(path)
        looked(qtbot, dialog)
        if act is None:
            take(qtbot, dialog)
        else:
            act(dialog)
        if dialog.taken is None:
            dialog.reject()
        return int(dialog.result())

    monkeypatch.setattr(TableIntakeDialog, "exec", run)
