from __future__ import annotations

import csv
import io
import threading
from pathlib import Path

import pytest
from pypdf import PdfReader
from PySide6.QtCore import Qt
from PySide6.QtGui import QImage
from PySide6.QtPrintSupport import QPrinter
from pytestqt.qtbot import QtBot

from paper_text import pages_of
from spoutline.gui.dialogs.printing import paint_pages
from spoutline.gui.edits.command import make_edit
from spoutline.gui.pages.paper.file_stem import file_stem
from spoutline.gui.widgets.page_images import page_image, page_shapes, printed_images
from spoutline.gui.window.main_window import MainWindow
from spoutline.gui.window.workplace import Workplace
from spoutline.model.faults import Cancelled, StoreFault
from spoutline.model.plan import SitePlan
from spoutline.planning.protocols import Progress


@pytest.fixture
def bill(qtbot: QtBot, workplace: Workplace) -> Workplace:
    workplace.show_bill()
    qtbot.waitUntil(lambda: workplace.bill_page.document is not None, timeout=60_000)
    return workplace


def ink(image: QImage) -> int:
    """Return how many of a thousand sampled pixels are not white."""
    grey = image.convertToFormat(QImage.Format.Format_Grayscale8)
    return sum(
        grey.pixelColor(x * grey.width() // 32, y * grey.height() // 32).value() < 200
        for x in range(32)
        for y in range(32)
    )


def test_bill_shows_pages_sum_and_positions_and_saves_what_it_shows(
    qtbot: QtBot, window: MainWindow, bill: Workplace, tmp_path: Path
) -> None:
    page = bill.bill_page
    document = page.document
    assert document is not None
    reader = PdfReader(io.BytesIO(document))
    assert len(page.paper.images()) == len(reader.pages)
    qtbot.waitUntil(lambda: page.paper.images()[0] is not None, timeout=20_000)
    first = page.paper.images()[0]
    assert first is not None
    assert ink(first) > 3
    assert page.positions_model.rowCount() == 2

    # the sum is made anew from the rows shown: quantity times price, in cents
    cents = sum(line.quantity * (line.unit_minor or 0) for line in page.model.records)
    assert f"{cents // 100:,}.{cents % 100:02d}" in page.total_label.text()

    for suffix in ("pdf", "csv", "xlsx"):
        path = tmp_path / f"bill.{suffix}"
        if suffix == "pdf":
            page.hands.save_to(path)
        else:
            page.save_to(path, suffix)
        qtbot.waitUntil(path.exists, timeout=20_000)
        qtbot.waitUntil(lambda wanted=path: str(wanted) in window.notices.text)
    assert (tmp_path / "bill.pdf").read_bytes() == document
    rows = list(csv.reader(io.StringIO((tmp_path / "bill.csv").read_text("utf-8-sig"))))
    numbers = {line.part.number for line in page.model.records}
    assert numbers <= {cell for row in rows for cell in row}
    assert (tmp_path / "bill.xlsx").read_bytes()[:2] == b"PK"

    # the same paper as one page of HTML, by the ending of the name
    page.hands.save_to(tmp_path / "bill.html")
    qtbot.waitUntil((tmp_path / "bill.html").exists, timeout=20_000)
    text = (tmp_path / "bill.html").read_text(encoding="utf-8")
    assert text.startswith("<!DOCTYPE html>")
    assert all(number in text for number in numbers)

    page.hands.save_to(tmp_path / "nowhere" / "bill.pdf")
    qtbot.waitUntil(lambda: "Nothing was saved" in window.notices.text)


def test_bill_is_made_anew_only_when_something_changed(qtbot: QtBot, bill: Workplace) -> None:
    page = bill.bill_page
    first = page.document
    bill.move_step(-1)
    bill.show_bill()
    assert page.document is first
    bill.session.undo_stack.clear()
    survey = bill.session.survey
    site = survey.site.model_copy(update={"customer": "Invented Customer"})
    bill.context.edit(survey.model_copy(update={"site": site}), "Customer")
    assert page.document is None
    qtbot.waitUntil(lambda: page.document is not None, timeout=60_000)
    assert page.document != first
    assert "Invented Customer" in "".join(pages_of(page.document)[:2])


def test_printed_sheets_carry_the_pages_and_keep_their_shape(qtbot: QtBot, bill: Workplace, tmp_path: Path) -> None:
    document = bill.bill_page.document
    assert document is not None
    shapes = page_shapes(document)
    # US Letter is 8.5 by 11 in; the station lies in a US jurisdiction
    assert shapes[0] == pytest.approx(11 / 8.5, rel=1e-3)
    assert page_image(document, 0, 500).width() == pytest.approx(500, abs=1)
    images = tuple(page_image(document, place, 400) for place in range(2))
    printer = QPrinter(QPrinter.PrinterMode.ScreenResolution)
    printer.setOutputFormat(QPrinter.OutputFormat.PdfFormat)
    target = tmp_path / "printed.pdf"
    printer.setOutputFileName(str(target))
    paint_pages(printer, images)
    printed = PdfReader(target)
    assert len(printed.pages) == 2
    box = printed.pages[0].mediabox
    assert (float(box.width), float(box.height)) == pytest.approx((612, 792), abs=1)  # 72 pt to the inch
    assert ink(next(printed_images(target.read_bytes(), 50))) > 3


@pytest.mark.parametrize(
    ("name", "stem"), [("Maple Ferry Fuels", "Maple-Ferry-Fuels"), ("../../etc/x", "etc-x"), ("***", "site")]
)
def test_file_name_of_a_site_is_harmless(name: str, stem: str) -> None:
    assert file_stem(name) == stem


def test_the_plan_of_the_bill_says_how_far_it_is_and_can_be_stopped(
    qtbot: QtBot, workplace: Workplace, monkeypatch: pytest.MonkeyPatch
) -> None:
    """A station of a thousand positions takes minutes to be planned."""
    go_on = threading.Event()

    def slow(watching: Progress | None) -> SitePlan:
        assert watching is not None
        watching.on_progress(3, 1_000)
        while not watching.should_stop():
            go_on.wait(0.01)
        raise Cancelled

    monkeypatch.setattr(workplace.context.sets, "whole_site", lambda: slow)
    workplace.show_bill()
    page = workplace.bill_page
    row = page.progress_row
    qtbot.waitUntil(lambda: (row.bar.value(), row.bar.maximum()) == (3, 1_000))
    qtbot.mouseClick(row.stop_button, Qt.MouseButton.LeftButton)
    assert row.bar.isHidden()
    assert row.stop_button.isHidden()
    assert page.state_label.text() == "Stopped."
    assert row.again_button.isVisible()
    monkeypatch.undo()
    qtbot.mouseClick(row.again_button, Qt.MouseButton.LeftButton)
    assert row.again_button.isHidden()
    qtbot.waitUntil(lambda: page.document is not None, timeout=60_000)
    assert row.bar.isHidden()
    assert row.again_button.isHidden()


@pytest.mark.parametrize("ends", ["stopped", "fails"])
def test_nothing_of_former_answers_stays_where_no_new_list_is_made(
    qtbot: QtBot, bill: Workplace, monkeypatch: pytest.MonkeyPatch, ends: str
) -> None:
    page, session = bill.bill_page, bill.session
    go_on = threading.Event()

    def slow(_: Progress | None) -> SitePlan:
        go_on.wait(20)
        raise StoreFault("the disk is gone")

    monkeypatch.setattr(bill.context.sets, "whole_site", lambda: slow)
    site = session.survey.site.model_copy(update={"address": "2 Quarry Road"})
    make_edit(session, session.survey.model_copy(update={"site": site}), "address")
    if ends == "stopped":
        page.progress_row.stop_button.click()
    go_on.set()
    qtbot.waitUntil(page.progress_row.bar.isHidden)
    assert (page.model.rowCount(), page.positions_model.rowCount(), page.total_label.text()) == (0, 0, "")
    assert page.document is None
    assert page.paper.images() == ()
    assert not any(button.isEnabled() for button in page.buttons.values())
