"""A fault of the program told plainly, with the report that can be handed on shown before it is copied."""

from __future__ import annotations

from PySide6.QtGui import QFontDatabase, QGuiApplication
from PySide6.QtWidgets import QCheckBox, QPlainTextEdit, QPushButton, QWidget

from spoutline.bootstrap.fault_log import fault_report
from spoutline.gui.dialogs.form import FormDialog
from spoutline.gui.widgets.cards import plain_label
from spoutline.gui.wording import tr


class FaultDialog(FormDialog):
    """Says in ``words`` what happened; shows the report and copies exactly what is shown."""

    def __init__(self, words: str, fault: BaseException, parent: QWidget | None = None) -> None:
        super().__init__(tr("A fault of the program"), parent)
        self._fault = fault
        self.words_label = plain_label(words, wraps=True)
        self.body.addWidget(self.words_label)
        lead = tr("The report below is what is copied; nothing is sent. Read it before you hand it on.")
        self.body.addWidget(plain_label(lead, "quiet", wraps=True))
        self.report_edit = QPlainTextEdit(self)
        self.report_edit.setReadOnly(True)
        self.report_edit.setAccessibleName(tr("Report of the fault"))
        self.report_edit.setFont(QFontDatabase.systemFont(QFontDatabase.SystemFont.FixedFont))
        self.report_edit.setLineWrapMode(QPlainTextEdit.LineWrapMode.NoWrap)
        self.body.addWidget(self.report_edit, 1)
        self.words_box = QCheckBox(tr("Add the &words of the fault; they may hold values of your survey"), self)
        self.words_box.toggled.connect(self._show_report)
        self.body.addWidget(self.words_box)
        self.copy_button = QPushButton(tr("Co&py report"), self)
        self.copy_button.setAutoDefault(False)
        self.copy_button.clicked.connect(self._copy)
        self.foot.addWidget(self.copy_button)
        self.add_close()
        self._show_report()
        self.resize(720, 420)

    def _show_report(self) -> None:
        self.report_edit.setPlainText(fault_report(self._fault, with_words=self.words_box.isChecked()))

    def _copy(self) -> None:
        QGuiApplication.clipboard().setText(self.report_edit.toPlainText())
        self.copy_button.setText(tr("Copied"))
