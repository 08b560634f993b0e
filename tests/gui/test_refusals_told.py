"""What the window refuses is told in its language, as its other texts are."""

from __future__ import annotations

from collections.abc import Iterator

import pytest
from PySide6.QtWidgets import QApplication, QWidget

from spoutline.gui.widgets.notice_bar import NoticeBar
from spoutline.gui.window.language import WindowLanguage
from spoutline.gui.wording import told
from spoutline.model.faults import InputFault, InputProblem, StoreFault
from spoutline.model.language import Language
from spoutline.model.worded import Worded


@pytest.fixture
def spanish(qapp: QApplication) -> Iterator[None]:
    """Let the window speak Spanish, and English again afterwards."""
    words = WindowLanguage()
    words.use(Language.SPANISH)
    yield
    words.use(Language.ENGLISH)


@pytest.mark.usefixtures("spanish")
def test_a_fault_is_told_in_the_language_of_the_window(qapp: QApplication) -> None:
    wanted = Worded("write at most {most} characters", most=60)
    both = InputFault(
        (InputProblem("", "name", "nothing", wanted), InputProblem("", "price", "'x'", "write a number, such as 12.50"))
    )
    holder = QWidget()
    bar = NoticeBar(holder)
    bar.notify(str(both))
    assert bar.text.splitlines() == [
        "nombre: nada no sirve; escriba a lo sumo 60 caracteres",
        "precio: 'x' no sirve; escriba un número, como 12.50",
    ]
    gone = StoreFault(Worded("{path} cannot be written: {reason}. Nothing was written.", path="a.pdf", reason="full"))
    assert told(str(gone)) == "No se puede escribir a.pdf: full. No se escribió nada."


@pytest.mark.usefixtures("spanish")
def test_what_the_window_says_itself_and_what_people_typed_stays(qapp: QApplication) -> None:
    assert told("Hoja guardada.") == "Hoja guardada."
    named = Worded("the book has these catalogs: {known}", known="name")  # a catalog that somebody called so
    assert told(named) == "el libro tiene estos catálogos: name"


def test_the_window_refuses_in_english_again_where_it_speaks_it(qapp: QApplication) -> None:
    assert told(str(InputFault((InputProblem("", "name", "nothing", "write a number"),)))) == (
        "name: nothing is not usable; write a number"
    )
