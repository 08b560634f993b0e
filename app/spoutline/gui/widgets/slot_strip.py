"""A strip that shows, place by place, how many parts still come into question."""

from __future__ import annotations

from PySide6.QtCore import QRectF, QSize, Qt
from PySide6.QtGui import QColor, QFont, QFontMetricsF, QPainter, QPaintEvent
from PySide6.QtWidgets import QSizePolicy, QWidget

from spoutline.frozen import frozen
from spoutline.gui.widgets.theme import colours_now
from spoutline.gui.wording import tr


@frozen
class SlotFigure:
    """One place of the chain: its name, the parts of its kind, those left, and those left before the last change."""

    name: str
    total: int
    left: int
    before: int | None = None

    @property
    def change(self) -> int:
        """How many parts the last answer took away (negative) or brought back."""
        return 0 if self.before is None else self.left - self.before


class SlotStrip(QWidget):
    """Shows one cell per place: name, parts left, the change by the last answer and a bar."""

    _HEIGHT = 66

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._figures: tuple[SlotFigure, ...] = ()
        self._note = ""
        self.setSizePolicy(QSizePolicy.Policy.Expanding, QSizePolicy.Policy.Fixed)
        self.setAccessibleName(tr("Parts left per place"))

    @property
    def figures(self) -> tuple[SlotFigure, ...]:
        """The figures shown."""
        return self._figures

    def show_figures(self, figures: tuple[SlotFigure, ...], note: str = "") -> None:
        """Show other figures; ``note`` stands in their place where there are none."""
        if (figures, note) == (self._figures, self._note):
            return
        self._figures, self._note = figures, note
        said = "; ".join(f"{figure.name}: {figure.left} {tr('of {0}').format(figure.total)}" for figure in figures)
        self.setAccessibleDescription(said or note)
        self.setToolTip(said or note)
        self.update()

    def paintEvent(self, event: QPaintEvent) -> None:
        """Qt: paint."""
        painter = QPainter(self)
        painter.setRenderHint(QPainter.RenderHint.Antialiasing)
        colours = colours_now()
        if not self._figures:
            painter.setPen(QColor(colours.quiet_text))
            painter.drawText(
                self.rect().adjusted(8, 0, -8, 0), Qt.AlignmentFlag.AlignVCenter | Qt.TextFlag.TextWordWrap, self._note
            )
            return
        gap = 6.0
        width = (self.width() - gap * (len(self._figures) - 1)) / len(self._figures)
        for place, figure in enumerate(self._figures):
            self._paint_cell(painter, QRectF(place * (width + gap), 0.0, width, self.height() - 1.0), figure)

    def _paint_cell(self, painter: QPainter, box: QRectF, figure: SlotFigure) -> None:
        colours = colours_now()
        inside = box.adjusted(8, 5, -8, -8)
        painter.setPen(QColor(colours.line))
        painter.setBrush(QColor(colours.card))
        painter.drawRoundedRect(box.adjusted(0.5, 0.5, -0.5, -0.5), 6, 6)
        small = QFont(self.font())
        small.setPointSizeF(8.0)
        painter.setFont(_fitting(small, figure.name, inside.width()))
        painter.setPen(QColor(colours.quiet_text))
        name = painter.fontMetrics().elidedText(figure.name, Qt.TextElideMode.ElideRight, int(inside.width()))
        painter.drawText(inside, Qt.AlignmentFlag.AlignTop | Qt.AlignmentFlag.AlignLeft, name)
        large = QFont(self.font())
        large.setPointSizeF(13.0)
        large.setBold(True)
        painter.setFont(large)
        painter.setPen(QColor(colours.bad if figure.left == 0 else colours.text))
        middle = inside.adjusted(0, 13, 0, -7)
        used = painter.boundingRect(middle, Qt.AlignmentFlag.AlignVCenter, str(figure.left)).width()
        painter.drawText(middle, Qt.AlignmentFlag.AlignVCenter, str(figure.left))
        painter.setFont(small)
        painter.setPen(QColor(colours.quiet_text))
        of_all = tr("of {0}").format(figure.total)
        painter.drawText(middle.adjusted(used + 5, 4, 0, 0), Qt.AlignmentFlag.AlignVCenter, of_all)
        if figure.change:
            painter.setPen(QColor(colours.accent))
            painter.drawText(
                middle.adjusted(0, 4, 0, 0),
                Qt.AlignmentFlag.AlignVCenter | Qt.AlignmentFlag.AlignRight,
                f"{figure.change:+d}",
            )
        bar = QRectF(inside.left(), box.bottom() - 9, inside.width(), 4)
        painter.setPen(Qt.PenStyle.NoPen)
        painter.setBrush(QColor(colours.line))
        painter.drawRoundedRect(bar, 2, 2)
        share = figure.left / figure.total if figure.total else 0.0
        painter.setBrush(QColor(colours.bad if figure.left == 0 else colours.accent))
        painter.drawRoundedRect(QRectF(bar.left(), bar.top(), max(bar.width() * share, 3.0), bar.height()), 2, 2)

    def sizeHint(self) -> QSize:
        """Qt: return the size that suits best."""
        return QSize(480, self._HEIGHT)

    def minimumSizeHint(self) -> QSize:
        """Qt: return the least useful size."""
        return QSize(300, self._HEIGHT)


def _fitting(font: QFont, text: str, width: float) -> QFont:
    """Return the font, up to an eighth smaller where ``text`` needs it to stand whole in ``width`` pixels."""
    fitting = QFont(font)
    for share in (1.0, 15 / 16, 7 / 8):
        fitting.setPointSizeF(font.pointSizeF() * share)
        if QFontMetricsF(fitting).horizontalAdvance(text) <= width:
            break
    return fitting
