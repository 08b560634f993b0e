"""Tables of a content tree as flowables, their rows measured."""

from __future__ import annotations

from collections.abc import Iterable, Iterator, Sequence
from typing import Final

from reportlab.lib.styles import ParagraphStyle

from spoutline.documents.content import blocks
from spoutline.documents.content.blocks import Alignment, Emphasis
from spoutline.documents.pdf import styles
from spoutline.documents.pdf.cells import Cell, linked_cell, text_cell
from spoutline.documents.pdf.column_widths import column_widths
from spoutline.documents.pdf.row_table import RowTable, SetRow, row_height, text_edges

_LEAST_FOLDED: Final = 6  # rows of a narrow table that is worth setting in two
_FOLD_GAP: Final = 14.0

_Edges = Sequence[tuple[float, float]]  # left edge and width of the text of each column


def set_table(block: blocks.Table, width_pt: float) -> RowTable:
    """Return a table for a frame of ``width_pt`` points; a narrow one has its rows two beside each other."""
    setting = styles.table_setting(block)
    if block.folded and len(block.rows) >= _LEAST_FOLDED:
        half = column_widths(block, (width_pt - _FOLD_GAP) / 2)
        edges = tuple(text_edges((*half, _FOLD_GAP, *half), setting))
        sides = (edges[: len(half)], edges[len(half) + 1 :])
        cells = [tuple(_cells(row, block, sides[place % 2], setting)) for place, row in enumerate(block.rows)]
        rows = [_set_row((*left, *right), setting) for left, right in _in_pairs(cells)]
        head = [cell for side in sides for cell in _titles(block, side, setting)]
    else:
        edges = tuple(text_edges(column_widths(block, width_pt), setting))
        rows = [_row(row, block, edges, setting) for row in block.rows]
        head = list(_titles(block, edges, setting))
    return RowTable(_set_row(head, setting), rows, width_pt, setting)


def _in_pairs(
    cells: Sequence[tuple[tuple[float, Cell], ...]],
) -> Iterator[tuple[tuple[tuple[float, Cell], ...], tuple[tuple[float, Cell], ...]]]:
    """Yield the rows two and two; a last odd one stands alone."""
    yield from zip(cells[::2], [*cells[1::2], ()], strict=False)


def _set_row(
    cells: Iterable[tuple[float, Cell]], setting: styles.TableSetting, *, total: bool = False, anchor: str = ""
) -> SetRow:
    told = tuple(cells)
    return SetRow(told, row_height(told, setting), total, anchor)


def _titles(block: blocks.Table, edges: _Edges, setting: styles.TableSetting) -> Iterator[tuple[float, Cell]]:
    for column, (left, width) in zip(block.columns, edges, strict=True):
        cell = text_cell(column.title, setting.heads[column.alignment], width, formula=column.formula)
        if cell is not None:
            yield left, cell


def _row(row: blocks.Row, block: blocks.Table, edges: _Edges, setting: styles.TableSetting) -> SetRow:
    if row.emphasis is not Emphasis.TOTAL:
        return _set_row(_cells(row, block, edges, setting), setting, anchor=row.anchor)
    # what a total is of goes on over the empty columns beside it
    filled = next((place for place, cell in enumerate(row.cells[1:], start=1) if cell), 1)
    left = edges[0][0]
    last, width = edges[filled - 1]
    wide = ((left, last + width - left), *edges[1:])
    return _set_row(_cells(row, block, wide, setting), setting, total=True, anchor=row.anchor)


def _cells(
    row: blocks.Row, block: blocks.Table, edges: _Edges, setting: styles.TableSetting
) -> Iterator[tuple[float, Cell]]:
    styled = _styled(row.emphasis, setting)
    for place, (column, text, (left, width)) in enumerate(zip(block.columns, row.cells, edges, strict=True)):
        style = styled[column.alignment]
        if row.links and place == row.linked:
            yield left, linked_cell(row.linked_pieces(), style, width)
        elif (cell := text_cell(text, style, width, formula=column.formula)) is not None:
            yield left, cell


def _styled(emphasis: Emphasis, setting: styles.TableSetting) -> dict[Alignment, ParagraphStyle]:
    if emphasis is Emphasis.TOTAL:
        return setting.strong
    return setting.fault if emphasis is Emphasis.FAULT else setting.plain
