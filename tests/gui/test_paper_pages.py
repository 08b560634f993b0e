"""The pages of a paper: an image that comes late belongs to no other paper, and one that takes long can be stopped."""

from __future__ import annotations

import threading

import shiboken6
from PySide6.QtCore import Qt
from PySide6.QtGui import QImage
from pytestqt.qtbot import QtBot

from spoutline.documents.content.blocks import Document, PaperSize, Paragraph
from spoutline.documents.paper_form import PaperForm
from spoutline.documents.pdf.render import pdf_bytes
from spoutline.gui.jobs import Jobs, Ticket
from spoutline.gui.pages.paper.paper_pages import PaperPages
from spoutline.model.faults import Cancelled


def test_an_image_of_an_older_paper_is_dropped(qtbot: QtBot) -> None:
    jobs = Jobs()
    pages = PaperPages("trial", "Pages", jobs, lambda _: None)
    qtbot.addWidget(pages)
    shown: list[int] = []
    pages.show_page = lambda place, _: shown.append(place)  # type: ignore[method-assign,assignment]
    older, newer = b"older paper", b"newer paper"
    pages._document = newer
    pages._show_image(older, 3, QImage())
    assert shown == []
    pages._show_image(newer, 4, QImage())
    assert shown == [4]
    pages.forget_document()
    pages._show_image(newer, 5, QImage())
    assert shown == [4]
    jobs.close()


def test_an_image_that_comes_when_the_pages_are_gone_is_dropped(qtbot: QtBot) -> None:
    jobs = Jobs()
    pages = PaperPages("trial", "Pages", jobs, lambda _: None)
    paper = one_page()
    pages._document = paper
    pages.show_pages((1.4,))
    shiboken6.delete(pages)
    pages._show_image(paper, 0, QImage())
    jobs.close()


def one_page() -> bytes:
    """Return a paper of one page."""
    document = Document(
        title="Trial",
        subject="",
        author="",
        language="en",
        paper=PaperSize.A4,
        running_head="",
        running_foot="",
        page_phrase="{page}/",
        blocks=(Paragraph("One line"),),
    )
    return pdf_bytes(document)


def test_a_paper_that_takes_long_says_how_far_it_is_and_can_be_stopped_and_made_later(qtbot: QtBot) -> None:
    """The pack of a station of a thousand positions takes minutes."""
    jobs, is_quick, turn = Jobs(), threading.Event(), threading.Event()
    failed: list[Exception] = []
    pages = PaperPages("trial", "Pages", jobs, failed.append)
    qtbot.addWidget(pages)
    pages.resize(600, 400)
    pages.show()

    def make(ticket: Ticket, form: PaperForm) -> bytes:
        assert form is PaperForm.PDF
        ticket.on_progress(7, 1_000)
        while not is_quick.is_set():
            if ticket.should_stop():
                raise Cancelled
            turn.wait(0.01)
        return one_page()

    pages.show_document(make)
    progress = pages.progress
    assert progress.isHidden(), "most papers are there at once"
    qtbot.waitUntil(progress.isVisible)
    assert pages.rect().contains(progress.geometry())
    jobs.progressed.emit(pages._key, 8, 1_000)
    assert (progress.row.bar.value(), progress.row.bar.maximum()) == (8, 1_000)
    assert pages.is_in_hand
    with qtbot.waitSignal(pages.stopped):
        qtbot.mouseClick(progress.row.stop_button, Qt.MouseButton.LeftButton)
    assert progress.label.text() == "Stopped."
    assert progress.row.bar.isHidden()
    assert pages.document is None
    assert pages.is_in_hand, "it is not made again before a person asks for it"

    is_quick.set()
    with qtbot.waitSignal(pages.document_shown) as shown:
        qtbot.mouseClick(progress.again_button, Qt.MouseButton.LeftButton)
    assert shown.args == [1]
    assert progress.isHidden()
    assert failed == []
    jobs.close()


def test_a_paper_that_is_outdated_while_it_is_made_is_never_shown(qtbot: QtBot) -> None:
    """Else it could be saved and sent as that of the answers in hand."""
    jobs = Jobs()
    pages = PaperPages("trial", "Pages", jobs, lambda _: None)
    qtbot.addWidget(pages)
    shown: list[int] = []
    pages.document_shown.connect(shown.append)
    begun, go_on = threading.Event(), threading.Event()

    def make(_: Ticket, _form: PaperForm) -> bytes:
        begun.set()
        go_on.wait(20)
        return one_page()

    pages.show_document(make)
    assert begun.wait(20)
    pages.forget_document()
    go_on.set()
    qtbot.waitUntil(lambda: not jobs._waiting)
    assert (pages.document, shown) == (None, [])
    pages.show_document(make)
    qtbot.waitUntil(lambda: shown == [1])
    jobs.close()
