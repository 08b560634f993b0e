"""Every paper of the window is printed as it is shown, and handed to mail with the PDF attached."""

from __future__ import annotations

from collections.abc import Callable
from datetime import date
from email import message_from_bytes, policy
from email.message import EmailMessage
from itertools import pairwise
from pathlib import Path

import pytest
from PySide6.QtGui import QImage
from PySide6.QtPrintSupport import QPrintDialog, QPrinter
from PySide6.QtWidgets import QFileDialog, QMessageBox
from pytestqt.qtbot import QtBot

from paper_text import pages_of, text_of
from planning.quoting_terms import DAY
from spoutline.gui.actions import ActionId
from spoutline.gui.dialogs import printing
from spoutline.gui.dialogs.customers import CustomersDialog
from spoutline.gui.dialogs.handing import PaperHands
from spoutline.gui.dialogs.local_rules import LocalRulesDialog
from spoutline.gui.dialogs.printing import pages_asked_for
from spoutline.gui.dialogs.weighing import WeighingDialog
from spoutline.gui.dialogs.weighing_tools import WeighingTools
from spoutline.gui.jobs import JobKind
from spoutline.gui.pages.quotation.book import BookPanel
from spoutline.gui.pages.quotation.page import QuotationPage
from spoutline.gui.pages.result.measure_panel import MeasurePanel
from spoutline.gui.widgets.page_images import page_shapes, printed_images
from spoutline.gui.window.main_window import MainWindow
from spoutline.gui.window.workplace import Workplace
from spoutline.model.survey import Survey

TERMS = """
[seller]
name = "Hedgerow Supply"
[customer]
name = "Hollow Ford Fuels"
contact = "Ana Hollow"
email = "ana@hollow-ford.example"
[heading]
number = "HAND-1"
dated = 2026-11-25
[[options]]
title = "Single-use"
"""

Shown = tuple[PaperHands, Callable[[], bytes | None]]


@pytest.fixture
def survey(survey: Survey) -> Survey:
    """Return a station of a name of its own, as nobody writes into a header."""
    return survey.model_copy(update={"site": survey.site.model_copy(update={"name": "Hand & Söhne: Bcc"})})


def shown_papers(qtbot: QtBot, window: MainWindow, workplace: Workplace, folder: Path) -> dict[str, Shown]:
    """Return the papers of the window, each made and shown."""
    terms = folder / "terms.toml"
    terms.write_text(TERMS, encoding="utf-8")
    quotation = QuotationPage(workplace.context, window.notify, today=lambda: date(2026, 11, 25))
    workplace.__dict__["quotation_page"] = quotation
    workplace.views.addWidget(quotation)
    workplace.show_bill()
    window.actions_by_id[ActionId.CONVERSION].trigger()
    window.actions_by_id[ActionId.INSTALLER].trigger()
    window.actions_by_id[ActionId.QUOTATIONS].trigger()
    quotation.terms.use_file(terms)
    quotation.panel.offer.make_button.click()
    bill, conversion, pack = workplace.bill_page, workplace.conversion_page, workplace.installer_page.pack_panel
    papers: dict[str, Shown] = {
        "bill": (bill.hands, lambda: bill.document),
        "conversion": (conversion.hands, lambda: conversion.document),
        "pack": (pack.hands, lambda: pack.document),
        "quotation": (quotation.hands, lambda: quotation.paper.document),
    }
    assert not any(one.isEnabled() for hands, _ in papers.values() for one in hands.buttons)
    qtbot.waitUntil(lambda: all(document() is not None for _, document in papers.values()), timeout=90_000)
    return papers


def read(path: Path) -> EmailMessage:
    message = message_from_bytes(path.read_bytes(), policy=policy.default)
    assert isinstance(message, EmailMessage)
    return message


def test_every_paper_is_handed_to_mail_as_it_is_shown(
    qtbot: QtBot, window: MainWindow, workplace: Workplace, tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    opened: list[Path] = []
    asked: list[str] = []

    def choose(_parent: object, _title: str, name: str, kinds: str) -> tuple[str, str]:
        assert kinds == "EML (*.eml)"
        asked.append(name)
        return str(tmp_path / name), kinds

    monkeypatch.setattr(QFileDialog, "getSaveFileName", choose)
    for name, (hands, document) in shown_papers(qtbot, window, workplace, tmp_path).items():
        hands.open_file = lambda path: opened.append(path) or len(opened) < 4  # type: ignore[func-returns-value]
        assert hands.mail_button.isEnabled(), name
        hands.mail_button.click()
        path = tmp_path / asked[-1]
        qtbot.waitUntil(lambda wanted=path: wanted in opened, timeout=20_000)
        told = window.notices.text
        assert str(path) in told
        assert ("no program here opens it" in told) is (len(opened) == 4)
        message = read(path)
        (paper,) = message.iter_attachments()
        assert isinstance(paper, EmailMessage)
        assert paper.get_content() == document(), name
        assert paper.get_filename() == f"{path.stem}.pdf"
        assert message["Bcc"] is None
        expected = ["ana@hollow-ford.example"] if name == "quotation" else []
        assert [one.addr_spec for one in (message["To"].addresses if "To" in message else ())] == expected, name
        assert "Hand & Söhne: Bcc" in message["Subject"], name
    assert asked == [
        "Hand-Söhne-Bcc.eml",
        "Hand-Söhne-Bcc-conversion.eml",
        "Hand-Söhne-Bcc-pack-en.eml",
        "HAND-1-r1.eml",
    ]


def test_a_mail_of_somebody_is_not_replaced_unasked_and_a_refused_file_is_told(
    qtbot: QtBot, window: MainWindow, workplace: Workplace, tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    workplace.show_bill()
    page = workplace.bill_page
    qtbot.waitUntil(lambda: page.document is not None, timeout=60_000)
    opened: list[Path] = []
    page.hands.open_file = lambda path: bool(opened.append(path)) or True  # type: ignore[func-returns-value]
    path = tmp_path / "mine.eml"
    path.write_bytes(b"Subject: mine\r\n\r\nmine\r\n")
    monkeypatch.setattr(QFileDialog, "getSaveFileName", lambda *_: (str(path), ""))
    questions: list[str] = []

    def refuse(*arguments: object) -> QMessageBox.StandardButton:
        questions.append(str(arguments[2]))
        return QMessageBox.StandardButton.No

    monkeypatch.setattr(QMessageBox, "question", refuse)
    page.hands.mail_button.click()
    assert len(questions) == 1
    assert path.read_bytes().startswith(b"Subject: mine")
    page.hands.mail_to(tmp_path / "no such folder" / "a.eml")
    qtbot.waitUntil(lambda: "Nothing was saved" in window.notices.text, timeout=20_000)
    assert opened == []
    own = tmp_path / "own.eml"
    page.hands.mail_to(own)
    qtbot.waitUntil(lambda: own in opened, timeout=20_000)
    monkeypatch.setattr(QFileDialog, "getSaveFileName", lambda *_: (str(own), ""))
    page.hands.mail_button.click()  # the program's own, written over without a question
    qtbot.waitUntil(lambda: len(opened) == 2, timeout=20_000)
    assert len(questions) == 1


class PrintsIntoFile:
    """Stands for the dialog of the desktop: prints into a file, pages ``first`` to ``last`` where they are given."""

    target: Path
    first = last = 0
    names: list[str]

    def __init__(self, printer: QPrinter, _parent: object) -> None:
        self._printer = printer
        self.names.append(printer.docName())

    def setMinMax(self, least: int, most: int) -> None:  # noqa: N802 - Qt's name
        assert least == 1
        self._most = most

    def exec(self) -> QPrintDialog.DialogCode:
        self._printer.setOutputFormat(QPrinter.OutputFormat.PdfFormat)
        self._printer.setOutputFileName(str(self.target))
        if self.first:
            self._printer.setPrintRange(QPrinter.PrintRange.PageRange)
            self._printer.setFromTo(self.first, self.last)
        return QPrintDialog.DialogCode.Accepted

    DialogCode = QPrintDialog.DialogCode


def grey(image: QImage) -> list[int]:
    """Return a page as grey values on a coarse grid: what is printed where, whatever the resolution."""
    small = image.convertToFormat(QImage.Format.Format_Grayscale8)
    cells = [
        [small.pixelColor(x * small.width() // 60, y * small.height() // 80).value() for x in range(60)]
        for y in range(80)
    ]
    return [sum(row) // len(row) for row in cells]


def test_what_is_printed_are_the_pages_of_the_paper_shown(
    qtbot: QtBot, window: MainWindow, workplace: Workplace, tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    monkeypatch.setattr(printing, "QPrintDialog", PrintsIntoFile)
    monkeypatch.setattr(printing, "_DOTS_PER_INCH", 50)
    PrintsIntoFile.names = []
    for name, (hands, document) in shown_papers(qtbot, window, workplace, tmp_path).items():
        pdf = document()
        assert pdf is not None
        count = len(pages_of(pdf))
        first, last = (1, count) if name == "quotation" else (2, min(3, count))
        PrintsIntoFile.target = tmp_path / f"{name}.pdf"
        PrintsIntoFile.first, PrintsIntoFile.last = (0, 0) if name == "quotation" else (first, last)
        assert hands.print_button.isEnabled(), name
        hands.print_button.click()
        printed = PrintsIntoFile.target.read_bytes()
        assert len(page_shapes(printed)) == last - first + 1, name
        assert page_shapes(printed)[0] == pytest.approx(page_shapes(pdf)[0], rel=0.01), name
        wanted = [grey(one) for one in printed_images(pdf, 50, range(first - 1, last))]
        for page, one in zip(printed_images(printed, 50), wanted, strict=True):
            apart = [abs(before - after) for before, after in zip(grey(page), one, strict=True)]
            assert sum(apart) / len(apart) < 6, name
        if name == "conversion":
            assert all(before != after for before, after in pairwise(wanted))
    assert PrintsIntoFile.names == ["Hand & Söhne: Bcc"] * 3 + ["HAND-1"]


def further_papers(qtbot: QtBot, window: MainWindow, workplace: Workplace) -> dict[str, tuple[PaperHands, str]]:
    """Return the papers that panels and dialogs make when they are asked for, each with words that stand on it."""
    window.actions_by_id[ActionId.INSTALLER].trigger()
    installer, session = workplace.installer_page, workplace.session
    for panel in (installer.record_panel, installer.inspection_panel, installer.stations_panel, installer.stock_panel):
        installer.tabs.setCurrentWidget(panel)
    inspections, stations = installer.inspection_panel, installer.stations_panel
    qtbot.waitUntil(lambda: inspections._site_plan is not None and stations._work is not None, timeout=90_000)
    installer.tabs.setCurrentWidget(installer.record_panel)
    installer.record_panel.refresh()
    window.actions_by_id[ActionId.CATALOGUES].trigger()
    catalogues = workplace.catalogues_page
    qtbot.waitUntil(lambda: catalogues.prices_panel._in_hand.row is not None, timeout=60_000)
    measure = MeasurePanel(workplace.context, window)
    rules = LocalRulesDialog(session.workbench, "us_general", window)
    book = BookPanel(workplace.context, lambda: DAY, window)
    people = CustomersDialog(
        session.workbench, window.jobs, may_choose=False, display=session.display, today=DAY, parent=window
    )
    weighing = WeighingDialog(
        session.survey,
        session.label,
        WeighingTools(session.workbench, window.jobs, workplace.context.story),
        window,
    )
    qtbot.waitUntil(lambda: weighing.hands.save_button.isEnabled() and not window.jobs.is_busy(JobKind.WEIGH))
    return {
        "record": (installer.record_panel.hands, "Commissioning"),
        "as built": (installer.record_panel.bill_hands, "Bill of materials as built"),
        "inspections": (inspections.hands, "nspection"),
        "all stations": (stations.hands, "Work due at all stations"),
        "stock": (installer.stock_panel.hands, ""),
        "price lists": (catalogues.prices_panel.hands, ""),
        "visit": (measure.hands, "What to measure on site"),
        "rules": (rules.editions.hands, "jurisdiction"),
        "quotations": (book.hands, "Internal, not for the customer"),
        "customers": (people.hands, "Customers"),
        "weighing": (weighing.hands, "Hand & Söhne"),
    }


def test_papers_of_panels_and_dialogs_are_printed_and_handed_to_mail_too(
    qtbot: QtBot, window: MainWindow, workplace: Workplace, tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    monkeypatch.setattr(printing, "QPrintDialog", PrintsIntoFile)
    monkeypatch.setattr(printing, "_DOTS_PER_INCH", 30)
    PrintsIntoFile.names, PrintsIntoFile.first = [], 0
    for name, (hands, words) in further_papers(qtbot, window, workplace).items():
        opened: list[Path] = []
        hands.open_file = lambda path, into=opened: bool(into.append(path)) or True  # type: ignore[misc]
        mail, printed = tmp_path / f"{name}.eml", tmp_path / f"{name}.pdf"
        hands.mail_to(mail)
        qtbot.waitUntil(lambda wanted=opened: bool(wanted), timeout=60_000)
        (paper,) = read(mail).iter_attachments()
        assert isinstance(paper, EmailMessage)
        pdf = paper.get_content()
        assert words in " ".join(text_of(pdf).split()), name
        PrintsIntoFile.target = printed
        hands.print_shown()
        qtbot.waitUntil(printed.exists, timeout=60_000)
        assert len(page_shapes(printed.read_bytes())) == len(pages_of(pdf)), name
        hands.save_to(tmp_path / f"{name}.html")
        qtbot.waitUntil((tmp_path / f"{name}.html").exists, timeout=60_000)
    assert all(PrintsIntoFile.names)


def test_a_menu_of_the_hands_has_the_words_of_the_three_buttons(
    qtbot: QtBot, workplace: Workplace, window: MainWindow
) -> None:
    row, menu = workplace.bill_page.hands.buttons, workplace.installer_page.record_panel.paper_button.menu()
    assert [one.text() for one in menu.actions()] == [one.text() for one in row]
    tips = [one.toolTip() for one in row]
    assert [one.toolTip() for one in menu.actions()][::2] == tips[::2]
    assert all(tips[::2])


@pytest.mark.parametrize(("chosen", "places"), [((0, 0), range(5)), ((2, 3), range(1, 3)), ((4, 9), range(3, 5))])
def test_the_pages_that_the_dialog_chose_are_printed(chosen: tuple[int, int], places: range) -> None:
    printer = QPrinter(QPrinter.PrinterMode.ScreenResolution)
    if chosen[0]:
        printer.setPrintRange(QPrinter.PrintRange.PageRange)
        printer.setFromTo(*chosen)
    assert pages_asked_for(printer, 5) == places


@pytest.mark.qt_log_ignore("QPainter::begin")
def test_a_printer_that_takes_nothing_is_told(
    qtbot: QtBot, window: MainWindow, workplace: Workplace, tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    workplace.show_bill()
    page = workplace.bill_page
    qtbot.waitUntil(lambda: page.document is not None, timeout=60_000)
    monkeypatch.setattr(printing, "QPrintDialog", PrintsIntoFile)
    monkeypatch.setattr(printing, "_DOTS_PER_INCH", 20)
    PrintsIntoFile.names, PrintsIntoFile.first = [], 0
    PrintsIntoFile.target = tmp_path / "no such folder" / "printed.pdf"
    monkeypatch.setattr(printing.Saving, "may_write", lambda *_: True)  # the folder goes after it was asked for
    page.hands.print_button.click()
    assert "Nothing was printed" in window.notices.text


def test_the_words_of_a_mail_are_those_of_the_paper(
    qtbot: QtBot, window: MainWindow, workplace: Workplace, tmp_path: Path
) -> None:
    window.actions_by_id[ActionId.INSTALLER].trigger()
    page = workplace.installer_page
    page.language_box.setCurrentIndex(page.language_box.findData("fr"))
    panel = page.pack_panel
    panel.refresh()
    qtbot.waitUntil(lambda: panel.document is not None, timeout=60_000)
    opened: list[Path] = []
    panel.hands.open_file = lambda path: bool(opened.append(path)) or True  # type: ignore[func-returns-value]
    panel.hands.mail_to(tmp_path / "dossier.eml")
    qtbot.waitUntil(lambda: bool(opened), timeout=20_000)
    body = read(opened[0]).get_body(("plain",))
    assert body is not None
    assert "autorité compétente" in body.get_content()
    assert "Dossier" in text_of(panel.document or b"")
