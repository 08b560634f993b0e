from __future__ import annotations

from dataclasses import dataclass, replace

import pytest
from PySide6.QtCore import QPersistentModelIndex, Qt
from PySide6.QtTest import QAbstractItemModelTester

from spoutline.gui.models.node_tree import Node, NodeTree
from spoutline.gui.models.record_table import Column, RecordTable, SortedRecords
from spoutline.gui.models.site_nodes import RowWords, site_nodes, tone_words
from spoutline.gui.roles import Role, Tone
from spoutline.model.survey import Position, Site, Survey


@dataclass(frozen=True)
class Box:
    name: str
    size: float


COLUMNS: tuple[Column[Box], ...] = (
    Column(title="Name", text=lambda box: box.name, tone=lambda box: Tone.BAD if box.size > 100 else None),
    Column(title="Size", text=lambda box: f"{box.size:g} kB", sort=lambda box: box.size, is_number=True),
)
BOXES = (Box("ten", 10.0), Box("nine", 9.0), Box("large", 1000.0))


@pytest.fixture
def table(qapp: object) -> RecordTable[Box]:
    model = RecordTable(COLUMNS)
    model.show_records(BOXES)
    return model


def test_table_obeys_the_rules_of_qt_models(table: RecordTable[Box]) -> None:
    QAbstractItemModelTester(table, QAbstractItemModelTester.FailureReportingMode.Fatal)
    table.show_records(BOXES[:1])
    table.show_records(())


def test_table_sorts_by_value_not_by_text(table: RecordTable[Box]) -> None:
    proxy = SortedRecords()
    proxy.setSourceModel(table)
    proxy.sort(1, Qt.SortOrder.AscendingOrder)
    assert [proxy.index(row, 0).data() for row in range(3)] == ["nine", "ten", "large"]


def test_every_cell_leads_to_its_record(table: RecordTable[Box]) -> None:
    for row, box in enumerate(BOXES):
        assert {table.index(row, column).data(Role.RECORD) for column in range(2)} == {box}


def test_mark_stands_in_its_column_only(table: RecordTable[Box]) -> None:
    assert table.index(2, 0).data(Role.TONE) == Tone.BAD
    assert table.index(0, 0).data(Role.TONE) is None
    assert table.index(2, 1).data(Role.TONE) is None


def test_table_has_titles_and_no_children(table: RecordTable[Box]) -> None:
    assert [table.headerData(column, Qt.Orientation.Horizontal) for column in range(2)] == ["Name", "Size"]
    assert table.rowCount(table.index(0, 0)) == 0


def tree() -> tuple[Node, ...]:
    leaf = Node(cells=("worked line",), spans=True)
    return (
        Node(cells=("first", "1"), record="one", children=(leaf, Node(cells=("b",), children=(leaf,)))),
        Node(cells=("second", "2"), record="two", tone=Tone.GOOD),
    )


def test_tree_obeys_the_rules_of_qt_models(qapp: object) -> None:
    model = NodeTree(("What", "Value"))
    QAbstractItemModelTester(model, QAbstractItemModelTester.FailureReportingMode.Fatal)
    model.show_nodes(tree())
    model.show_nodes(tree()[1:])


def _like(one: object, other: object) -> bool:
    return str(one)[0] == str(other)[0]


def test_tree_is_filled_as_its_rows_come_and_none_that_stays_is_another(qapp: object) -> None:
    """A row in waiting has one line; it goes, or comes with rows below it, and others may come behind all."""
    model = NodeTree(("What", "Value"))
    QAbstractItemModelTester(model, QAbstractItemModelTester.FailureReportingMode.Fatal)
    waiting = [Node(cells=(letter, "…"), record=letter) for letter in "abcd"]
    found = [
        Node(cells=(letter, "found"), record=f"{letter} found", children=(Node(cells=("part",), spans=True),) * count)
        for letter, count in zip("abcd", (1, 3, 2, 1), strict=True)
    ]
    anew: list[int] = []
    model.modelReset.connect(lambda: anew.append(1))
    assert not model.fill_nodes(waiting, _like)
    held = {letter: QPersistentModelIndex(model.index(row, 0)) for row, letter in enumerate("abcd")}
    stages = (
        [found[0], *waiting[1:]],
        [found[0], *waiting[2:]],
        [found[0], found[2], waiting[3]],
        [found[0], found[2]],
    )
    for stage in stages:
        assert not model.fill_nodes(stage, _like)
        assert [model.node_at(model.index(row, 0)) for row in range(model.rowCount())] == stage
        for row, node in enumerate(stage):
            index = model.index(row, 0)
            assert held[str(node.record)[0]] == index
            assert model.rowCount(index) == len(node.children)
            assert all(model.index(part, 0, index).parent() == index for part in range(len(node.children)))
    assert not held["b"].isValid()
    assert not held["d"].isValid()
    assert anew == []
    assert len(model.spanning()) == 3
    for other in ([found[2], found[0]], [found[0], replace(found[2], cells=("c", "other"))], [found[1], found[0]], []):
        is_anew = model.fill_nodes(other, _like)
        assert [model.node_at(model.index(row, 0)) for row in range(model.rowCount())] == other
        assert is_anew == bool(other)
    assert len(anew) == 3


def test_tree_finds_rows_by_their_record(qapp: object) -> None:
    model = NodeTree(("What", "Value"))
    model.show_nodes(tree())
    assert model.index_of("two").data() == "second"
    assert not model.index_of("three").isValid()
    assert not model.index_of(None).isValid()


def test_tree_names_the_rows_that_span(qapp: object) -> None:
    model = NodeTree(("What", "Value"))
    model.show_nodes(tree())
    assert [index.data() for index in model.spanning()] == ["worked line", "worked line"]


def test_site_lists_positions_below_their_dispensers_with_marks() -> None:
    survey = Survey(
        site=Site(name="Invented Corner"),
        positions=(
            Position(label="1A", dispenser="1"),
            Position(label="2A", dispenser="2"),
            Position(label="1B", dispenser="1"),
        ),
    )
    tones = {"1A": Tone.GOOD, "1B": Tone.BAD, "2A": Tone.WORKING}
    words = RowWords(tone=tones.__getitem__, liquid=lambda label: "E10")
    nodes = site_nodes(survey, words)
    assert [node.cells[0] for node in nodes] == ["Dispenser 1", "Dispenser 2"]
    assert [(child.record, child.tone) for child in nodes[0].children] == [("1A", Tone.GOOD), ("1B", Tone.BAD)]
    asked: list[str] = []

    def hint_of(label: str) -> str:
        asked.append(label)
        return tone_words(tones[label])

    model = NodeTree(("Position", "Liquid"), hint_of=hint_of)
    model.show_nodes(nodes)
    assert asked == []  # of a thousand rows nobody looks at most
    place = model.index_of("1B")
    assert place.data(Qt.ItemDataRole.ToolTipRole) == "no set"
    assert "no set" in str(place.data(Qt.ItemDataRole.AccessibleTextRole))
    assert set(asked) == {"1B"}


def test_an_index_of_a_row_that_is_gone_names_no_row_of_the_tree() -> None:
    model = NodeTree(("What", "Value"))
    model.show_nodes([Node(cells=("Group", str(n)), children=(Node(cells=("Row", str(n))),)) for n in range(600)])
    last = model.index(599, 0)
    kept = model.index(0, 1, last)
    assert model.data(kept) == "599"
    assert model.parent(kept) == last
    model.show_nodes([Node(cells=("Other", "1"), children=(Node(cells=("Row", "2")),))])
    assert model.node_at(kept) is None
    assert model.data(kept) is None
    assert model.rowCount(last) == 0
    assert not model.parent(kept).isValid()
    assert not model.index(0, 0, last).isValid()
