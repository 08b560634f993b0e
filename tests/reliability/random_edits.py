"""A window's session that is edited at random, telling each state that it shows as saved: what the trials kill.

Every line on the pipe is ``REVISION SHA256``: the revision that the book was said to hold, and the survey shown then.
"""

from __future__ import annotations

import hashlib
import json
import os
import random
import sys
from pathlib import Path

from PySide6.QtCore import QCoreApplication, QTimer

from spoutline.bootstrap import Settings, open_workbench
from spoutline.gui.edits.command import make_edit
from spoutline.gui.edits.positions import add_position, remove_position
from spoutline.gui.session import SaveState, Session
from spoutline.model.answered import answered_document
from spoutline.model.survey import Position, Site, Survey
from spoutline.units.accepted import UnitSystem

START = b"start\n"


def first_survey() -> Survey:
    """Return the survey that a trial begins with."""
    return Survey(site=Site(name="Invented Corner"), positions=(Position(label="A1"), Position(label="A2")))


def digest(survey: Survey) -> str:
    """Return the fingerprint of a survey as the book writes it."""
    written = json.dumps(answered_document(survey), ensure_ascii=False, separators=(",", ":"))
    return hashlib.sha256(written.encode()).hexdigest()


class RandomEditor:
    """Edits, undoes and redoes at random moments, as fast as a hand never could."""

    def __init__(self, session: Session, rng: random.Random, pipe: int, edits: int | None) -> None:
        self._session, self._rng, self._pipe, self._edits = session, rng, pipe, edits
        self._serial = 0
        session.save_state_changed.connect(self._show)

    def step(self) -> None:
        """Do one thing and come back at a random moment."""
        self._serial += 1
        if self._edits is not None and self._serial > self._edits:
            self._session.settle(10_000)
            QCoreApplication.quit()
            return
        session, chance = self._session, self._rng.random()
        if chance < 0.12 and session.undo_stack.canUndo():
            session.undo_stack.undo()
        elif chance < 0.18 and session.undo_stack.canRedo():
            session.undo_stack.redo()
        else:
            make_edit(session, self._edited(chance), "Edit")
        QTimer.singleShot(self._rng.choice((0, 1, 3, 9, 40, 80)), self.step)

    def _edited(self, chance: float) -> Survey:
        survey = self._session.survey
        if chance < 0.3 and len(survey.positions) < 40:
            return add_position(survey, f"N{self._serial}-{self._rng.randrange(10**6)}", "2")
        if chance < 0.4 and len(survey.positions) > 2:
            return remove_position(survey, self._rng.choice(survey.positions).label)[0]
        at = self._rng.randrange(len(survey.positions))
        notes = f"edit {self._serial} " + "x" * self._rng.randrange(400)
        changed = survey.positions[at].model_copy(update={"notes": notes})
        return survey.model_copy(update={"positions": (*survey.positions[:at], changed, *survey.positions[at + 1 :])})

    def _show(self, state: SaveState, _: str) -> None:
        if state is SaveState.SAVED:
            line = f"{self._session.stored.revision} {digest(self._session.survey)}\n"
            os.write(self._pipe, line.encode())


def edit(database: Path, survey_id: int, seed: int, pipe: int, edits: int | None = None) -> None:
    """Edit a survey until killed, or so many times."""
    application = QCoreApplication(["trial"])
    bench = open_workbench(Settings(database=str(database)))
    stored = bench.saving_book().stored(survey_id)
    session = Session(bench, stored, UnitSystem.SI)
    editor = RandomEditor(session, random.Random(seed), pipe, edits)
    os.write(pipe, START)
    QTimer.singleShot(0, editor.step)
    application.exec()
    session.close()
    bench.close()


if __name__ == "__main__":
    edit(Path(sys.argv[1]), int(sys.argv[2]), int(sys.argv[3]), 1, int(sys.argv[4]))
