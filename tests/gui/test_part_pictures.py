"""The picture of the part in hand on the set page: of an own catalogue, read off the window's thread."""

from __future__ import annotations

import shutil
from collections.abc import Iterator
from datetime import date
from pathlib import Path

import pytest
from PySide6.QtGui import QImage
from pytestqt.qtbot import QtBot

from gui.conftest import wait_for_plans
from paper_text import text_of
from spoutline.bootstrap import Settings, Workbench, open_workbench
from spoutline.gui.edits.question import Step
from spoutline.gui.session import Session
from spoutline.gui.window.main_window import MainWindow
from spoutline.gui.window.verbs import Verbs
from spoutline.gui.window.workplace import Workplace
from spoutline.model.catalogue_edition import DEMONSTRATION, EditionRef
from spoutline.model.language import Language
from spoutline.model.pack import PackJob
from spoutline.model.part_file import FileMatter
from spoutline.model.survey import Survey
from spoutline.units.accepted import UnitSystem
from spoutline.units.display import Display

NAME = "Pictured list"


@pytest.fixture
def own(database_to_copy: Path, tmp_path: Path) -> Iterator[Workbench]:
    """Yield a book with a catalogue of its own that holds the parts of the demonstration."""
    shutil.copy(database_to_copy, tmp_path / "own.sqlite3")
    bench = open_workbench(Settings(database=str(tmp_path / "own.sqlite3"), profiles=tmp_path / "profiles"))
    service = bench.catalogues()
    service.create(NAME)
    with service.shelf().draft(NAME) as desk:
        desk.put(service.shelf().entries(EditionRef(DEMONSTRATION)))
    yield bench
    bench.close()


def test_the_set_page_and_the_pack_show_what_the_catalogue_keeps(
    qtbot: QtBot, own: Workbench, survey: Survey, tmp_path: Path
) -> None:
    service = own.catalogues()
    nozzle = service.named_part(EditionRef(NAME, is_draft=True), "QW-N103")
    QImage(900, 600, QImage.Format.Format_RGB32).save(str(tmp_path / "front.png"))
    (tmp_path / "how.pdf").write_bytes(_document())
    service.files().attach(NAME, nozzle, tmp_path / "front.png", title="Seen from the lever")
    service.files().attach(NAME, nozzle, tmp_path / "how.pdf", title="How to hang it", matter=FileMatter.INSTRUCTIONS)
    service.shelf().publish(NAME, notes="first", publisher="Ada", on=date(2026, 1, 2))
    service.choose(EditionRef(NAME))
    window = MainWindow()
    qtbot.addWidget(window)
    workplace: Workplace = window.attach(Session(own, own.book().create(survey), UnitSystem.SI))
    window.verbs = Verbs(window, workplace)  # type: ignore[attr-defined]
    window.show()
    wait_for_plans(qtbot, workplace)
    workplace.show_step(Step.SET)
    workplace.set_page.show_panel(workplace.set_page.part_panel)
    workplace.session.look_at_part(nozzle)
    pictures = workplace.set_page.part_panel.pictures
    qtbot.waitUntil(lambda: len(pictures.pictures) == 1, timeout=20_000)
    assert pictures.pictures[0].accessibleName() == "Seen from the lever"
    assert 0 < pictures.pictures[0].pixmap().width() <= 220
    assert [one.text() for one in pictures.buttons] == ["How to hang it (instructions)"]
    other = next(link.part.ref for link in workplace.context.plan.chosen.hanging_set.links)  # type: ignore[union-attr]
    workplace.session.look_at_part(other)
    qtbot.waitUntil(lambda: not pictures.pictures, timeout=20_000)
    site_plan = own.plan_site(workplace.session.survey)
    pack = own.packing().pack(site_plan, Language.ENGLISH, Display(UnitSystem.SI), PackJob())
    text = text_of(pack)
    assert "Pictures and documents" in text
    assert "QW-N103: Seen from the lever" in text
    assert "QW-N103: How to hang it (instructions)" in text
    window.jobs.close()


def _document() -> bytes:
    from io import BytesIO

    import pypdf

    writer, target = pypdf.PdfWriter(), BytesIO()
    writer.add_blank_page(200, 200)
    writer.write(target)
    return target.getvalue()
