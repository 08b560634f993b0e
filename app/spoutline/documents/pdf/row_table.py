"""A table for reportlab's pages, whose rows were measured before: a part of it on a page only names its rows."""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from typing import Final

from reportlab.platypus import Flowable

from spoutline.documents.pdf.cells import Cell, LineWriter
from spoutline.documents.pdf.styles import BLACK, RULE, TEXT_HEIGHT_LEAST, TableSetting
from spoutline.frozen import frozen

ROWS_TOGETHER: Final = 2  # rows that stay with the column titles, and with the last row
RIGHT_PT: Final = 3.0  # points left of a cell's right edge
_ENDS_SHARE: Final = 0.5  # of a page: rows that are higher together are left to break
_HEAVY: Final = 0.9
_LIGHT: Final = 0.3
_ROUND_CAP: Final = 1
_HAIR: Final = 1e-6  # points; what sums of heights differ by


@frozen
class SetRow:
    """Cells, each with the left edge of its text in points from that of the table, and the height of the row.

    A ``total`` has a heavy line above it; links lead to an ``anchor``.
    """

    cells: tuple[tuple[float, Cell], ...]
    height: float
    total: bool = False
    anchor: str = ""


class RowTable(Flowable):  # type: ignore[misc]
    """Rows under a head that repeats on each page; neither the first rows nor the last, a total, stand alone."""

    def __init__(self, head: SetRow, rows: Sequence[SetRow], width_pt: float, setting: TableSetting) -> None:
        super().__init__()
        self.head, self.rows = head, tuple(rows)
        self.width = width_pt
        self.height = head.height + sum(row.height for row in self.rows)
        self._setting = setting

    @property
    def opening_height(self) -> float:
        """The height in points of the head and the rows that stay with it."""
        return self.head.height + sum(row.height for row in self.rows[:ROWS_TOGETHER])

    def wrap(self, _available_width: float, _available_height: float) -> tuple[float, float]:
        """Return the size, as reportlab asks for it."""
        return self.width, self.height

    def split(self, _available_width: float, available_height: float) -> list[Flowable]:
        """Return what fits and what goes on on the next page, or nothing where it is better to begin there."""
        room = available_height - self.head.height + _HAIR
        fitting, used = 0, 0.0
        while fitting < len(self.rows) and used + self.rows[fitting].height <= room:
            used += self.rows[fitting].height
            fitting += 1
        if fitting == len(self.rows):
            return [self]
        first, last = self._kept_together()
        count = min(fitting, len(self.rows) - last)
        if count >= max(first, 1):
            return [self._part(self.rows[:count]), self._part(self.rows[count:])]
        row = self.rows[0]
        if self.head.height + row.height <= TEXT_HEIGHT_LEAST:
            return []
        return self._parted_row(row, room)

    def draw(self) -> None:
        """Write the rows from the top, then the lines between them."""
        canvas, setting = self.canv, self._setting
        writer = LineWriter(canvas)
        bottom = self.height - self.head.height
        for left, cell in self.head.cells:  # titles stand on the line below them
            cell.draw(writer, left, bottom + setting.below_pt + cell.height)
        heavy, light = [bottom], []
        for row in self.rows:
            if row.total:
                heavy.append(bottom)
            if row.anchor:
                canvas.bookmarkPage(row.anchor, fit="XYZ", top=canvas.absolutePosition(0, bottom)[1])
            for left, cell in row.cells:
                cell.draw(writer, left, bottom - setting.above_pt)
            bottom -= row.height
            light.append(bottom)
        writer.close()
        canvas.saveState()
        canvas.setLineCap(_ROUND_CAP)
        for weight, colour, heights in ((_HEAVY, BLACK, heavy), (_LIGHT, RULE, light)):
            canvas.setLineWidth(weight)
            canvas.setStrokeColor(colour)
            canvas.lines([(0.0, y, self.width, y) for y in heights])
        canvas.restoreState()

    def _part(self, rows: Sequence[SetRow]) -> RowTable:
        return RowTable(self.head, rows, self.width, self._setting)

    def _kept_together(self) -> tuple[int, int]:
        """Return how many rows stay together at the start and at the end; high ones are left to break."""
        if len(self.rows) < ROWS_TOGETHER:
            return 0, 0
        last = sum(row.height for row in self.rows[-1 - ROWS_TOGETHER :])
        if max(self.opening_height, last) > TEXT_HEIGHT_LEAST * _ENDS_SHARE:
            return 0, 0
        return ROWS_TOGETHER, 1 + ROWS_TOGETHER

    def _parted_row(self, row: SetRow, room_pt: float) -> list[Flowable]:
        """Return a first row that no page holds in two parts, and the others behind its rest."""
        setting = self._setting
        padding = setting.above_pt + setting.below_pt
        parts = [(left, cell.parted(room_pt - padding)) for left, cell in row.cells]
        above = tuple((left, first) for left, (first, _) in parts if first is not None)
        below = tuple((left, rest) for left, (_, rest) in parts if rest is not None)
        if not above or not below:
            return []
        first, rest = (
            SetRow(cells, max(cell.height for _, cell in cells) + padding, total, anchor)
            for cells, total, anchor in ((above, row.total, row.anchor), (below, False, ""))
        )
        return [self._part((first,)), self._part((rest, *self.rows[1:]))]


def row_height(cells: Sequence[tuple[float, Cell]], setting: TableSetting) -> float:
    """Return the height of a row of cells in points."""
    return max((cell.height for _, cell in cells), default=0.0) + setting.above_pt + setting.below_pt


def text_edges(widths: Sequence[float], setting: TableSetting) -> Iterator[tuple[float, float]]:
    """Yield the left edge and the width of the text in each column; the outer columns have no room beside them."""
    left = 0.0
    for place, width in enumerate(widths):
        before = setting.left_pt if place else 0.0
        behind = RIGHT_PT if place < len(widths) - 1 else 0.0
        yield left + before, width - before - behind
        left += width
