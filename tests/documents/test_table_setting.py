"""Tables on paper: no title breaks within a word, no single row is carried over to a page of its own."""

from __future__ import annotations

import pytest
from hypothesis import given
from hypothesis import strategies as st
from reportlab.pdfbase.pdfmetrics import stringWidth

from spoutline.documents.content.blocks import Alignment, Column, Row, Table
from spoutline.documents.pdf import styles
from spoutline.documents.pdf.column_widths import column_widths
from spoutline.documents.pdf.fonts import register_fonts
from spoutline.documents.pdf.row_table import RowTable
from spoutline.documents.pdf.setting import set_blocks

WIDTH = 480.0
WORDS = st.text(alphabet="abcdefghijklm", min_size=1, max_size=14)


@pytest.fixture(autouse=True)
def _fonts() -> None:
    register_fonts()


def needs(column: Column) -> float:
    style = styles.HEAD_CELLS[column.alignment]
    return max(float(stringWidth(word, style.fontName, style.fontSize)) for word in column.title.split()) + 9.0


@given(st.lists(st.tuples(st.lists(WORDS, min_size=1, max_size=3), st.floats(0.2, 5)), min_size=1, max_size=6))
def test_a_title_has_room_for_its_longest_word_where_the_table_has(drawn: list[tuple[list[str], float]]) -> None:
    columns = tuple(Column(" ".join(words), share, Alignment.RIGHT) for words, share in drawn)
    widths = column_widths(Table(columns, ()), WIDTH)
    assert sum(widths) == pytest.approx(WIDTH)
    if sum(map(needs, columns)) <= WIDTH - 10:
        assert all(width >= needs(column) - 1e-6 for width, column in zip(widths, columns, strict=True))


def test_columns_with_room_keep_their_share() -> None:
    columns = (Column("Way", 1.0), Column("Sum", 3.0))
    assert column_widths(Table(columns, ()), WIDTH) == [WIDTH / 4, WIDTH * 3 / 4]


def test_a_figure_is_never_parted_from_its_unit_nor_the_unit_within() -> None:
    columns = (Column("Figure", 6.0), Column("Value", 0.5, Alignment.RIGHT))
    figure = "0.02048 lb/ft²·day"
    _, width = column_widths(Table(columns, (Row(("Permeation", figure)),)), WIDTH)
    style = styles.table_setting(Table(columns, ())).plain[Alignment.RIGHT]
    assert width >= stringWidth(figure, style.fontName, style.fontSize) + 9.0  # what stands beside a cell's text


@pytest.mark.parametrize("rows", [2, 3, 7])
@pytest.mark.parametrize("words", [3, 40])
def test_no_row_is_left_alone_at_either_end_of_a_page(rows: int, words: int) -> None:
    text = " ".join(["stays"] * words)
    block = Table((Column("Number", 1.0), Column("Why", 3.0)), tuple(Row((str(n), text)) for n in range(rows)))
    (table,) = tuple(set_blocks((block,), WIDTH))
    whole = table.wrap(WIDTH, 10_000)[1]
    assert isinstance(table, RowTable)
    first, last = table.head.height + table.rows[0].height, table.rows[-1].height
    for height in (whole - 1, whole - last, first + 1):
        parts = table.split(WIDTH, height)
        body = [len(part.rows) for part in parts]
        assert not parts or all(count >= 2 for count in body), (height, body)


def test_a_cell_longer_than_a_page_goes_on_on_the_next_with_no_word_lost() -> None:
    words = [f"word{number}" for number in range(3000)]
    block = Table((Column("Number", 1.0), Column("Why", 1.0)), (Row(("1", " ".join(words))), Row(("2", "short"))))
    (table,) = tuple(set_blocks((block,), WIDTH))
    told: list[str] = []
    while table is not None:
        parts = table.split(WIDTH, styles.TEXT_HEIGHT_LEAST)
        assert parts, "a table that cannot be parted never ends"
        assert parts[0].height <= styles.TEXT_HEIGHT_LEAST + 0.01
        told += [line for row in parts[0].rows for _, cell in row.cells for line in cell.lines]
        table = parts[1] if len(parts) > 1 else None
    assert " ".join(told).split() == ["1", *words, "2", "short"]
