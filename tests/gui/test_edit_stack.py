"""Edits go once, whatever Python's collector takes first: where one goes twice, the process ends without a word."""

from __future__ import annotations

import subprocess
import sys

import pytest

# cycles of all shapes about stacks of edits, as windows leave them when they are closed
_SHAPES = """
import gc
import sys
from random import Random
from types import SimpleNamespace

from PySide6.QtCore import QObject
from PySide6.QtWidgets import QApplication

from spoutline.bootstrap.demos import demo_survey
from spoutline.gui.dialogs.terms import _Change
from spoutline.gui.edits.command import SwapSurvey
from spoutline.gui.edit_stack import EditStack
from spoutline.gui.session import Session
from spoutline.units.accepted import UnitSystem

gc.disable()
app = QApplication(["edits", "-platform", "offscreen"])
draw, survey = Random(int(sys.argv[1])), demo_survey("small_town")


class Form(QObject):
    def __init__(self):
        super().__init__()
        self.stack = EditStack(self)

    def show_state(self, state, page):
        pass


def session():
    one = Session(SimpleNamespace(saving_book=None), SimpleNamespace(survey=survey, id=1), UnitSystem.SI)
    one._queue.close()
    return one, one.undo_stack, lambda: SwapSurvey(one, survey, "edit", "")


def form():
    one = Form()
    return one, one.stack, lambda: _Change(one, None, None, 0)


gc.freeze()  # what stays takes no time
for _ in range(300):
    make = draw.choice((session, form))
    edits = [make()[2]() for _ in range(draw.randint(0, 3))]  # those that Python made before their stack
    owner, stack, edit_of = make()
    edits += [edit_of() for _ in range(draw.randint(1, 3))]
    gc.collect(draw.randint(0, 1))
    for edit in draw.sample(edits, len(edits)):
        stack.push(edit)
        if draw.random() < 0.3:
            edit.own = [edit]
    if draw.random() < 0.3:
        stack.undo()
    if draw.random() < 0.7:
        owner.own = [owner, *draw.sample(edits, draw.randint(0, len(edits)))]
    if draw.random() < 0.3:
        stack.own = [stack, owner]
    owner = stack = edits = edit = edit_of = None
    gc.collect()
print("all gone")
"""


@pytest.mark.parametrize("seed", range(3))
def test_edits_and_what_they_are_of_go_in_any_order(seed: int) -> None:
    command = [sys.executable, "-c", _SHAPES, str(seed)]
    done = subprocess.run(command, capture_output=True, text=True, timeout=300, check=False)
    assert (done.returncode, done.stdout.strip(), done.stderr.strip()) == (0, "all gone", "")
