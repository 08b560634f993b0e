"""The pages of a paper: an image that comes late belongs to no other paper."""

from __future__ import annotations

from PySide6.QtGui import QImage
from pytestqt.qtbot import QtBot

from spoutline.gui.jobs import Jobs
from spoutline.gui.pages.paper.paper_pages import PaperPages


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
