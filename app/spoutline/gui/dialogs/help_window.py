"""The manual inside the program: pages for each user, a search through all of them, links between them."""

from __future__ import annotations

from typing import TYPE_CHECKING

from PySide6.QtCore import Qt, QTimer, QUrl
from PySide6.QtGui import QTextCursor
from PySide6.QtWidgets import (
    QDialog,
    QHBoxLayout,
    QLineEdit,
    QPushButton,
    QSplitter,
    QTextBrowser,
    QVBoxLayout,
    QWidget,
)

from spoutline.bootstrap.manual import HelpHit, HelpTopic, HelpUser
from spoutline.explain.phrases.manual_words import ManualWord
from spoutline.gui.models.record_table import Column, RecordTable
from spoutline.gui.widgets.cards import plain_label
from spoutline.gui.widgets.lists import Table
from spoutline.gui.widgets.still_box import StillBox
from spoutline.gui.wording import told, tr
from spoutline.model.faults import InputFault, StoreFault

if TYPE_CHECKING:
    from spoutline.bootstrap.manual import Manual
    from spoutline.explain.plan.story import Story

_WORDS = {
    HelpUser.DISTRIBUTOR: "For a distributor",
    HelpUser.OWNER: "For a station owner",
    HelpUser.INSTALLER: "For an installer",
}
_PAUSE_MS = 200
_LONGEST_TOLD = 120
Row = HelpTopic | HelpHit


class HelpWindow(QDialog):
    """Stays open beside the work; F1 brings another page into it."""

    def __init__(self, manual: Manual, story: Story, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.setWindowTitle(tr("Help"))
        self.setWindowFlag(Qt.WindowType.WindowMaximizeButtonHint)
        self._manual, self._story = manual, story
        self._back: list[str] = []
        self._shown = ""
        column = QVBoxLayout(self)
        column.setContentsMargins(12, 12, 12, 12)
        column.addLayout(self._search_row())
        splitter = QSplitter(Qt.Orientation.Horizontal, self)
        splitter.setChildrenCollapsible(False)
        self.model: RecordTable[Row] = RecordTable((Column(title=tr("Page"), text=_row_text, hint=_row_hint),), self)
        self.table = Table(tr("Pages of help"), splitter, shares=(1,))
        self.table.horizontalHeader().hide()
        self.table.setModel(self.model)
        self.table.picked.connect(self._go)
        self.browser = QTextBrowser(splitter)
        self.browser.setAccessibleName(tr("Page of help"))
        self.browser.setOpenLinks(False)
        self.browser.anchorClicked.connect(self._follow)
        splitter.addWidget(self.table)
        splitter.addWidget(self.browser)
        splitter.setSizes([260, 620])
        splitter.setStretchFactor(1, 1)
        column.addWidget(splitter, 1)
        self.told_label = plain_label("", "quiet", wraps=True)
        column.addWidget(self.told_label)
        self._later = QTimer(self)
        self._later.setSingleShot(True)
        self._later.setInterval(_PAUSE_MS)
        self._later.timeout.connect(self._show_rows)
        self.resize(920, 600)
        self._show_rows()

    @property
    def topic(self) -> str:
        """The page in view."""
        return self._shown

    def show_topic(self, name: str, words: str = "") -> None:
        """Bring a page into view, at the first place where ``words`` stand."""
        try:
            page = self._manual.page(name)
        except (InputFault, StoreFault, OSError) as fault:
            self.told_label.setText(told(str(fault)))
            return
        if self._shown and self._shown != page.topic.name:
            self._back.append(self._shown)
            self.back_button.setEnabled(True)
        self._shown = page.topic.name
        is_foreign = page.language != self._story.phrases.language
        self.told_label.setText(self._story.word(ManualWord.ONLY_ENGLISH) if is_foreign else "")
        self.browser.setMarkdown(page.text)
        self.browser.moveCursor(QTextCursor.MoveOperation.Start)
        if words:
            self.browser.find(words)
            self.browser.ensureCursorVisible()
        row = next((row for row, one in enumerate(self.model.records) if one == page.topic), -1)
        if row >= 0:
            self.table.blockSignals(True)  # the page is in view already
            self.table.pick_row(row)
            self.table.blockSignals(False)

    def go_back(self) -> None:
        """Bring the page before into view."""
        if self._back:
            name = self._back.pop()
            self._shown = ""
            self.show_topic(name)
            self.back_button.setEnabled(bool(self._back))

    def _search_row(self) -> QHBoxLayout:
        row = QHBoxLayout()
        self.back_button = QPushButton(tr("&Back"), self)
        self.back_button.setEnabled(False)
        self.back_button.setAutoDefault(False)
        self.back_button.clicked.connect(lambda _=False: self.go_back())
        self.user_box = StillBox(self)
        self.user_box.setAccessibleName(tr("Whose pages"))
        self.user_box.addItem(tr("For everybody"), None)
        for user, words in _WORDS.items():
            self.user_box.addItem(tr(words), user)
        self.user_box.currentIndexChanged.connect(lambda _: self._show_rows())
        self.edit = QLineEdit(self)
        self.edit.setPlaceholderText(tr("Search the manual"))
        self.edit.setAccessibleName(tr("Search the manual"))
        self.edit.setClearButtonEnabled(True)
        self.edit.textChanged.connect(lambda _: self._later.start())
        self.edit.returnPressed.connect(self._show_rows)
        row.addWidget(self.back_button)
        row.addWidget(self.edit, 1)
        row.addWidget(self.user_box)
        return row

    def _show_rows(self) -> None:
        self._later.stop()
        user, words = self.user_box.currentData(), self.edit.text().strip()
        rows: list[Row] = list(self._manual.search(words)) if words else list(self._manual.topics)
        wanted = [one for one in rows if user is None or user in _topic(one).users]
        self.model.show_records(wanted)
        self.table.fit_columns()
        nothing = words and not wanted
        self.told_label.setText(self._story.word(ManualWord.NOTHING_FOUND) if nothing else "")

    def _go(self, record: object) -> None:
        if isinstance(record, HelpTopic):
            self.show_topic(record.name)
        elif isinstance(record, HelpHit):
            self.show_topic(record.topic.name, record.heading if record.is_heading else self.edit.text().split()[0])

    def _follow(self, link: QUrl) -> None:
        """Go along a link to another page; nothing outside of the manual is opened."""
        name = link.fileName()
        if name.endswith(".md"):
            self.show_topic(name.removesuffix(".md"))


def _topic(row: Row) -> HelpTopic:
    return row if isinstance(row, HelpTopic) else row.topic


def _row_text(row: Row) -> str:
    if isinstance(row, HelpTopic):
        return row.title
    return f"{row.topic.title}: {row.heading}" if row.is_heading else f"{row.topic.title}: {row.told[:_LONGEST_TOLD]}"


def _row_hint(row: Row) -> str:
    return row.title if isinstance(row, HelpTopic) else row.told
