"""Orders by supplier: how each wants its file, what stands in it, and the files themselves."""

from __future__ import annotations

from collections.abc import Callable
from pathlib import Path
from typing import Self

from PySide6.QtCore import Qt
from PySide6.QtWidgets import (
    QCheckBox,
    QComboBox,
    QFileDialog,
    QGridLayout,
    QLineEdit,
    QListWidget,
    QPushButton,
    QSplitter,
    QVBoxLayout,
    QWidget,
)

from spoutline.bootstrap.supplier_orders import SupplierOrderService, layout_of, option_of
from spoutline.catalogue.price_lists import PriceListNames
from spoutline.documents.own_files import FileForm
from spoutline.frozen import frozen
from spoutline.gui.dialogs.form import FormDialog
from spoutline.gui.dialogs.saving import FilesInUse, Saving
from spoutline.gui.dialogs.terms_page import TableSection
from spoutline.gui.edits.order_columns import (
    DAYS,
    DECIMALS,
    ENCODINGS,
    FILES,
    ORDER_COLUMNS,
    SEPARATORS,
    column_fields,
    column_rows,
)
from spoutline.gui.edits.question import Option
from spoutline.gui.models.record_table import Column, RecordTable
from spoutline.gui.waiting import wait_for
from spoutline.gui.widgets.cards import plain_label
from spoutline.gui.widgets.lists import Table
from spoutline.gui.widgets.still_box import StillBox
from spoutline.gui.wording import tr
from spoutline.model.faults import InputFault, StoreFault
from spoutline.model.quotation import Quotation
from spoutline.model.quoted_option import QuotedLine
from spoutline.model.supplier_layout import OrderFileForm, SupplierLayout, folded_supplier_name
from spoutline.planning.refit.supplier_orders import OrderHead, SupplierOrder, head_of
from spoutline.whole_files import write_files

_PARTED = ";"
_COLUMN_WIDTH = 130  # pixels of a column of the preview
_WORDS = {
    "separator": "Between cells",
    "decimal_sign": "Decimal sign",
    "encoding": "Encoding",
    "day_form": "Days as",
    "file_form": "Read as",
}
_BOXES: dict[str, tuple[Option, ...]] = {
    "separator": SEPARATORS,
    "decimal_sign": DECIMALS,
    "encoding": ENCODINGS,
    "day_form": DAYS,
    "file_form": FILES,
}


@frozen
class OrderedFrom:
    """The lines that are ordered, under a title, and what they share."""

    title: str
    lines: tuple[QuotedLine, ...]
    head: OrderHead

    @classmethod
    def of_option(cls, quotation: Quotation, revision: int, option: str) -> Self:
        """Return what an option of a quotation orders."""
        return cls(option, option_of(quotation, option).lines, head_of(quotation, revision))


class SupplierOrdersDialog(FormDialog):
    """Keeps how suppliers want their files, shows what would stand in them, and writes one or all of them."""

    help_topic = "quotations"

    def __init__(
        self,
        service: SupplierOrderService,
        ordered: OrderedFrom,
        in_use: FilesInUse,
        parent: QWidget | None = None,
    ) -> None:
        super().__init__(tr("Orders by supplier: {0}").format(ordered.title), parent)
        self._service, self._ordered = service, ordered
        self._saving = Saving(in_use, self)
        self._orders: tuple[SupplierOrder, ...] = ()
        self._kept: SupplierLayout | None = None  # as it was read; None where the book has none for this supplier
        self._rows: tuple[tuple[str, ...], ...] = ()
        self._is_showing = False
        parts = QSplitter(Qt.Orientation.Horizontal, self)
        parts.setChildrenCollapsible(False)
        parts.addWidget(self._list_side())
        parts.addWidget(self._form_side())
        parts.setStretchFactor(1, 1)
        self.body.addWidget(parts, 1)
        for words, act in (
            (tr("Save &text…"), lambda: self._save_one(FileForm.CSV)),
            (tr("Save &XLSX…"), lambda: self._save_one(FileForm.XLSX)),
            (tr("Save &all…"), self._ask_folder),
        ):
            self.foot.addWidget(self._button(words, act))
        self.add_close()
        self.resize(1060, 640)
        self.refresh("")

    @property
    def said(self) -> dict[str, object]:
        """What stands in the form, field by field."""
        makers = [one.strip() for one in self.makers_edit.text().split(_PARTED) if one.strip()]
        return {
            "supplier": self.name_edit.text(),
            "makers": makers,
            "columns": column_fields(self._rows),
            "headings": self.headings_box.isChecked(),
            **{field: box.currentData() for field, box in self.boxes.items()},
        }

    def refresh(self, supplier: str) -> None:
        """Show the suppliers of the order, and the one of this name among them."""
        ordered = self._ordered
        try:
            self._orders = wait_for(lambda: self._service.shared_out(ordered.lines))
        except (InputFault, StoreFault) as fault:
            self.show_fault(str(fault))
            return
        self.list.blockSignals(True)
        self.list.clear()
        words = tr("{0}; lines: {1}, pieces: {2}")
        self.list.addItems([words.format(one.supplier, len(one.lines), one.pieces) for one in self._orders])
        self.list.blockSignals(False)
        wanted = folded_supplier_name(supplier)
        places = [at for at, one in enumerate(self._orders) if folded_supplier_name(one.supplier) == wanted]
        self.list.setCurrentRow(places[0] if places else 0)
        self._show(self.list.currentRow())

    def save_all(self, folder: Path) -> int:
        """Write one file for each supplier into a folder, all or none; return how many; 0 where they may not be.

        Each is the file that its supplier reads, as the book keeps it.
        """
        contents = {}
        names = self._service.file_names(self._orders, self._ordered.head)
        for order, name in zip(self._orders, names, strict=True):
            path, form = folder / name, order.layout.file_form
            if not self._saving.may_write(path, FileForm(form)):
                return 0
            contents[path] = self._maker(order, form)
        if not self._write(contents):
            return 0
        self.state_label.setText(tr("{0} files are in {1}").format(len(contents), folder))
        return len(contents)

    def save(self, path: Path, form: FileForm) -> None:
        """Write the file of the supplier in view, as the form says it now."""
        order = self._previewed()
        if order is not None and self._write({path: self._maker(order, OrderFileForm(form))}):
            self.state_label.setText(tr("Saved as {path}").format(path=path))

    # building

    def _list_side(self) -> QWidget:
        side = QWidget(self)
        column = QVBoxLayout(side)
        column.setContentsMargins(0, 0, 0, 0)
        self.list = QListWidget(side)
        self.list.setAccessibleName(tr("Suppliers of the order"))
        self.list.setWordWrap(True)
        self.list.currentRowChanged.connect(self._show)
        column.addWidget(self.list, 1)
        self.keep_button = self._button(tr("&Keep for this supplier"), self._keep)
        self.keep_button.setToolTip(tr("The book keeps these columns for every later order"))
        self.forget_button = self._button(tr("&Forget"), self._forget)
        self.forget_button.setToolTip(tr("Take what is kept for this supplier out of the book"))
        self.state_label = plain_label("", "quiet", wraps=True)
        column.addWidget(self.state_label)
        column.addWidget(self.keep_button)
        column.addWidget(self.forget_button)
        return side

    def _form_side(self) -> QWidget:
        side = QWidget(self)
        column = QVBoxLayout(side)
        column.setContentsMargins(0, 0, 0, 0)
        column.addLayout(self._entries(side))
        self.columns = TableSection(ORDER_COLUMNS, PriceListNames(), side)
        self.columns.written.connect(self._take_rows)
        column.addWidget(self.columns, 3)
        self.preview: RecordTable[tuple[str, ...]] = RecordTable((), self)
        self.preview_table = Table(tr("What the file holds"), side)
        self.preview_table.setModel(self.preview)
        self.preview_table.setMinimumHeight(90)
        column.addWidget(self.preview_table, 2)
        return side

    def _entries(self, side: QWidget) -> QGridLayout:
        grid = QGridLayout()
        grid.setHorizontalSpacing(10)
        self.name_edit, self.makers_edit = QLineEdit(side), QLineEdit(side)
        self.makers_edit.setToolTip(tr("Makers whose parts are ordered there, parted by semicolons"))
        self.headings_box = QCheckBox(tr("&Headings in the first row"), side)
        for place, (words, edit) in enumerate(
            ((tr("Supplier"), self.name_edit), (tr("Makers ordered there"), self.makers_edit))
        ):
            edit.setAccessibleName(words)
            edit.textEdited.connect(lambda _: self._preview())
            grid.addWidget(plain_label(words), place, 0)
            grid.addWidget(edit, place, 1, 1, 3)
        self.headings_box.toggled.connect(lambda _: self._preview())
        self.boxes: dict[str, QComboBox] = {}
        for place, (field, options) in enumerate(_BOXES.items()):
            box, words = StillBox(side), tr(_WORDS[field])
            box.setAccessibleName(words)
            for option in options:
                box.addItem(tr(option.words), option.value)
            box.activated.connect(lambda _: self._preview())
            self.boxes[field] = box
            row, at = divmod(place, 2)
            grid.addWidget(plain_label(words), 2 + row, 2 * at)
            grid.addWidget(box, 2 + row, 2 * at + 1)
        grid.addWidget(self.headings_box, 4, 2, 1, 2)
        grid.setColumnStretch(1, 1)
        grid.setColumnStretch(3, 1)
        return grid

    def _button(self, words: str, act: Callable[[], object]) -> QPushButton:
        button = QPushButton(words, self)
        button.setAutoDefault(False)
        button.clicked.connect(lambda _=False: act())
        return button

    # what is shown

    def _show(self, row: int) -> None:
        if not 0 <= row < len(self._orders):
            return
        order = self._orders[row]
        layout = order.layout
        self._kept = None if order.is_usual else layout
        self._is_showing = True
        self.name_edit.setText(layout.supplier)
        self.name_edit.setReadOnly(self._kept is not None)
        self.makers_edit.setText(f"{_PARTED} ".join(layout.ordered_makers))
        self.headings_box.setChecked(layout.headings)
        for field, box in self.boxes.items():
            box.setCurrentIndex(box.findData(getattr(layout, field)))
        self._rows = column_rows(layout.columns)
        self.columns.show_rows(self._rows)
        self._is_showing = False
        self.forget_button.setEnabled(self._kept is not None)
        self.state_label.setText("" if self._kept is not None else tr("Nothing is kept; these are the usual columns."))
        self._preview()

    def _take_rows(self, rows: tuple[tuple[str, ...], ...]) -> None:
        self._rows = rows
        self.columns.show_rows(rows)
        self._preview()

    def _previewed(self) -> SupplierOrder | None:
        """Return the order as the form would have it; None, and why, where the form holds something unusable."""
        ordered, said = self._ordered, self.said
        try:
            found = wait_for(lambda: self._service.foreseen(ordered.lines, layout_of(said)))
        except (InputFault, StoreFault) as fault:
            self.show_fault(str(fault))
            return None
        self.show_fault("")
        return found

    def _preview(self) -> None:
        if self._is_showing:
            return
        order, ordered = self._previewed(), self._ordered
        self.keep_button.setEnabled(order is not None)
        if order is None:
            self.preview.show_records(())
            return
        headings = [column.heading for column in order.layout.columns]
        rows = self._service.shown(order, ordered.head)
        self.preview.replace_columns([_shown_column(at, words) for at, words in enumerate(headings)])
        self.preview.show_records(rows)
        for at in range(len(headings)):
            self.preview_table.setColumnWidth(at, _COLUMN_WIDTH)

    # steps

    def _keep(self) -> None:
        self.columns.table.finish_editing()
        said, before = self.said, self._kept
        try:
            kept = wait_for(lambda: self._service.keep(said, before))
        except (InputFault, StoreFault) as fault:
            self.show_fault(str(fault))
            return
        self.refresh(kept.supplier)
        self.state_label.setText(tr("The book keeps this for {0}.").format(kept.supplier))

    def _forget(self) -> None:
        kept = self._kept
        if kept is None:
            return
        try:
            wait_for(lambda: self._service.remove(kept.supplier))
        except (InputFault, StoreFault) as fault:
            self.show_fault(str(fault))
            return
        self.refresh(kept.supplier)

    def _maker(self, order: SupplierOrder, form: OrderFileForm) -> Callable[[], bytes]:
        head = self._ordered.head
        return lambda: self._service.file(order, head, form)

    def _write(self, makers: dict[Path, Callable[[], bytes]]) -> bool:
        try:
            wait_for(lambda: write_files({path: make() for path, make in makers.items()}))
        except (InputFault, StoreFault) as fault:
            self.show_fault(str(fault))
            return False
        self.show_fault("")
        return True

    def _save_one(self, form: FileForm) -> None:
        order = self._previewed()
        if order is None:
            return
        (name,) = self._service.file_names((order,), self._ordered.head)
        path = self._saving.ask(tr("Save"), str(Path(name).with_suffix(f".{form}")), form)
        if path is not None:
            self.save(path, form)

    def _ask_folder(self) -> None:
        """Write the files of all suppliers, each as the book keeps it, into a folder."""
        folder = QFileDialog.getExistingDirectory(self, tr("Folder for the orders of all suppliers"))
        if folder:
            self.save_all(Path(folder))


def _shown_column(at: int, heading: str) -> Column[tuple[str, ...]]:
    return Column(title=heading, text=lambda row: row[at], hint=lambda row: row[at])
