"""Fields of a form that a PDF reader fills in (AcroForm, ISO 32000-1 clause 12.7)."""

from __future__ import annotations

from typing import Final

from reportlab.lib.colors import white
from reportlab.platypus import Flowable, Table, TableStyle

from spoutline.documents.content.blocks import Alignment, ChoiceBox, FormTable, TextBox
from spoutline.documents.pdf import styles
from spoutline.documents.pdf.fonts import REGULAR, markup, printable
from spoutline.documents.pdf.paragraphs import Paragraph

_LINE: Final = 12.6
_SIZE: Final = 8.0
_PADDING: Final = 4.0
_SMALL: Final = 5.6
_HIDDEN: Final = 1.0


class TextField(Flowable):  # type: ignore[misc]
    """A field to write in."""

    def __init__(self, box: TextBox, width_pt: float) -> None:
        super().__init__()
        self._box = box
        self.width, self.height = width_pt, _HIDDEN if box.hidden else _LINE * box.lines

    def wrap(self, _available_width: float, _available_height: float) -> tuple[float, float]:
        """Return the size, as reportlab asks for it."""
        return self.width, self.height

    def draw(self) -> None:
        """Put the field on the page."""
        self.canv.acroForm.textfield(
            name=self._box.name,
            tooltip=printable(self._box.tip),
            value=_in_field(self._box.value),
            width=self.width,
            height=self.height,
            fontName="Helvetica",
            fontSize=_SIZE if not self._box.read_only else _SMALL,
            fieldFlags=" ".join(_flags(self._box)),
            annotationFlags="hidden" if self._box.hidden else "print",
            maxlen=4000,
            **(_UNSEEN if self._box.hidden else _FRAME),
        )


class ChoiceField(Flowable):  # type: ignore[misc]
    """A field with one of several words."""

    def __init__(self, box: ChoiceBox, width_pt: float) -> None:
        super().__init__()
        self._box = box
        self.width, self.height = width_pt, _LINE

    def wrap(self, _available_width: float, _available_height: float) -> tuple[float, float]:
        """Return the size, as reportlab asks for it."""
        return self.width, self.height

    def draw(self) -> None:
        """Put the field on the page."""
        options = [(_in_field(word), value) for value, word in self._box.options]
        self.canv.acroForm.choice(
            name=self._box.name,
            tooltip=printable(self._box.tip),
            value=self._box.value,
            options=options,
            width=self.width,
            height=self.height,
            fontName="Helvetica",
            fontSize=_SIZE,
            fieldFlags="combo",
            **_FRAME,
        )


_FRAME: Final = {
    "relative": True,
    "borderColor": styles.GREY,
    "borderWidth": 0.6,
    "fillColor": white,
    "textColor": styles.BLACK,
    "forceBorder": True,
}


_UNSEEN: Final = {"relative": True, "borderWidth": 0, "borderColor": None, "fillColor": None, "forceBorder": False}


def _flags(box: TextBox) -> list[str]:
    return [name for name, wanted in (("multiline", box.lines > 1), ("readOnly", box.read_only)) if wanted]


def _in_field(text: str) -> str:
    """Return a text for the inside of a field: the standard fonts of forms hold Latin-1 only."""
    return printable(text).encode("latin-1", errors="replace").decode("latin-1")


def form_table(block: FormTable, width_pt: float) -> Flowable:
    """Return the table with its fields."""
    if all(isinstance(cell, TextBox) and cell.hidden for row in block.rows for cell in row):
        return _unseen(block, width_pt)
    shares = sum(column.share for column in block.columns)
    widths = [width_pt * column.share / shares for column in block.columns]
    head = [Paragraph(markup(column.title), styles.HEAD_CELLS[Alignment.LEFT]) for column in block.columns]
    body = [[_cell(cell, width) for cell, width in zip(row, widths, strict=True)] for row in block.rows]
    rules = [
        ("FONTNAME", (0, 0), (-1, -1), REGULAR),
        ("VALIGN", (0, 0), (-1, -1), "MIDDLE"),
        ("LINEBELOW", (0, 0), (-1, 0), 0.9, styles.BLACK),
        ("LINEBELOW", (0, 1), (-1, -1), 0.3, styles.RULE),
        ("LEFTPADDING", (0, 0), (-1, -1), 0),
        ("RIGHTPADDING", (0, 0), (-1, -1), _PADDING),
        ("TOPPADDING", (0, 0), (-1, -1), 1.7),
        ("BOTTOMPADDING", (0, 0), (-1, -1), 1.7),
    ]
    return Table([head, *body], colWidths=widths, repeatRows=1, style=TableStyle(rules), hAlign="LEFT")


def _unseen(block: FormTable, width_pt: float) -> Flowable:
    """Return fields that nobody sees, side by side, without head or rules."""
    cells = [[_cell(cell, width_pt / len(row)) for cell in row] for row in block.rows]
    rules = [("TOPPADDING", (0, 0), (-1, -1), 0), ("BOTTOMPADDING", (0, 0), (-1, -1), 0)]
    return Table(cells, style=TableStyle(rules), hAlign="LEFT")


def _cell(cell: str | TextBox | ChoiceBox, width_pt: float) -> Flowable:
    if isinstance(cell, TextBox):
        return TextField(cell, width_pt - _PADDING)
    if isinstance(cell, ChoiceBox):
        return ChoiceField(cell, width_pt - _PADDING)
    return Paragraph(markup(cell), styles.WIDE_TABLE.plain[Alignment.LEFT])
