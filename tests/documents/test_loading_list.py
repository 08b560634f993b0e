"""The loading list of many positions: those that take the same parts share a kit, and nothing is lost by it."""

from __future__ import annotations

import re

import pytest

from documents import plan_factory as factory
from documents.pack_words import words
from spoutline.documents.content.blocks import Block, Table
from spoutline.documents.pack.loading_list import loading_blocks
from spoutline.model.language import Language
from spoutline.model.plan import PositionPlan, SitePlan
from spoutline.planning.pack.pick_list import kits_of, pick_list

WITH_LABELS, WITHOUT = 40, 26


def many(with_labels: int = WITH_LABELS, without: int = WITHOUT) -> SitePlan:
    """Return a station of two kinds of positions by turns: a chain with two labels, and the same chain with none."""
    plans: list[PositionPlan] = []
    for number in range(with_labels):
        plans.append(factory.fitting_plan(factory.position(f"L{number}")))
        if number < without:
            plans.append(factory.fitting_plan(factory.position(f"P{number}"), accessories=()))
    return factory.site_plan(*plans)


def tables(plan: SitePlan, language: Language = Language.ENGLISH) -> list[Table]:
    blocks: tuple[Block, ...] = tuple(loading_blocks(plan, words(language).story))
    return [block for block in blocks if isinstance(block, Table)]


def rows_of(table: Table) -> list[tuple[str, ...]]:
    return [tuple(str(cell) for cell in row.cells) for row in table.rows]


@pytest.mark.parametrize("language", Language)
def test_many_positions_are_named_once_by_their_kit_and_parts_by_kits(language: Language) -> None:
    *boxes, kits, _tools = tables(many(), language)
    first, second = rows_of(kits)
    assert (first[0], first[1]) == ("K1", str(WITH_LABELS))
    assert (second[0], second[1]) == ("K2", str(WITHOUT))
    assert first[3].split(", ") == [f"L{number}" for number in range(WITH_LABELS)]
    assert second[3].split(", ") == [f"P{number}" for number in range(WITHOUT)]
    assert set(first[2].split(", ")) - set(second[2].split(", ")) == {"QW-L1 (2)"}
    lines = {row[1]: row for box in boxes for row in rows_of(box)}
    for number in ("QW-W18", "QW-B7", "QW-C12", "QW-S2", "QW-N101"):
        assert (lines[number][0], lines[number][3]) == (str(WITH_LABELS + WITHOUT), "K1, K2")
    assert (lines["QW-L1"][0], lines["QW-L1"][3]) == (str(2 * WITH_LABELS), "K1 (2)")


def test_positions_are_named_beside_their_parts_where_they_are_few_or_all_unlike() -> None:
    *boxes, _tools = tables(many(34, 26))  # sixty
    assert not any(re.search(r"\bK\d", row[3]) for box in boxes for row in rows_of(box))
    assert len(boxes) == len(pick_list(many(34, 26)))
    unlike = [
        factory.fitting_plan(factory.position(f"P{number}"), accessories=factory.fitting_plan().accessories * number)
        for number in range(70)
    ]
    *boxes, _tools = tables(factory.site_plan(*unlike))
    assert not any(re.search(r"\bK\d", row[3]) for box in boxes for row in rows_of(box))


def test_kits_hold_every_piece_of_the_boxes_and_every_position_once() -> None:
    boxes = pick_list(many())
    kits = kits_of(boxes)
    packed: dict[str, int] = {}
    for kit in kits:
        for part, count in kit.parts:
            packed[part.number] = packed.get(part.number, 0) + count * len(kit.positions)
    assert packed == {line.part.number: line.quantity for box in boxes for line in box.lines}
    labels = [label for kit in kits for label in kit.positions]
    assert sorted(labels) == sorted(plan.position.label for plan in many().positions)
