"""What to measure on site as tree rows: figures with what they could change, and the margins that they leave."""

from __future__ import annotations

from spoutline.explain.plan.doubt_words import VisitText, first_and_others, margin_texts, visit_texts
from spoutline.explain.plan.story import Story
from spoutline.gui.models.node_tree import Node
from spoutline.gui.roles import Tone
from spoutline.model.doubt import PositionDoubts, StationDoubts


def doubt_titles(story: Story) -> tuple[str, ...]:
    """Return the column titles of figures that nobody measured."""
    return story.phrases.text["measure_what"], story.phrases.text["measure_range"]


def doubt_nodes(doubts: StationDoubts, story: Story, *, with_margins: bool) -> tuple[Node, ...]:
    """Return what to measure first and what then, and for one position the margins of its checks behind them."""
    text, lines = story.phrases.text, visit_texts(doubts, story)
    first, others = first_and_others(len(lines))
    groups = [
        Node(cells=(text[heading],), spans=True, is_head=True, children=tuple(_line_node(lines[at]) for at in places))
        for heading, places in (("measure_first", first), ("measure_then", others))
        if places
    ]
    if with_margins:
        groups.extend(_margins_node(one, story) for one in doubts.positions)
    shown = tuple(group for group in groups if group.children)
    if not shown:
        return ()
    caution, note = text["measure_caution"], text["measure_note"]
    return (
        *shown,
        Node(cells=(caution,), spans=True, tone=Tone.CAUTION),
        Node(cells=(note,), spans=True, tone=Tone.NOTE),
    )


def _line_node(line: VisitText) -> Node:
    alone = len(line.cases) == 1
    children: list[Node] = []
    for case in line.cases:
        effects = tuple(Node(cells=(effect,), spans=True) for effect in case.text.effects)
        child = Node(cells=(case.positions, case.text.assumed), children=effects, positions=case.labels)
        children += effects if alone else [child]
    assumed = line.cases[0].text.assumed if alone else line.positions
    tone = Tone.CAUTION if line.musts else Tone.QUESTION if line.flips else Tone.NOTE
    return Node(
        cells=(line.title, assumed),
        children=tuple(children),
        tone=tone,
        hint=line.positions,
        positions=line.labels,
        names_at=1,
    )


def _margins_node(doubts: PositionDoubts, story: Story) -> Node:
    text = story.phrases.text
    rows = tuple(
        Node(
            cells=(one.title, f"{one.margin} → {one.least}  ({one.figure})"),
            tone=Tone.CAUTION if one.flips else Tone.GOOD,
        )
        for one in margin_texts(doubts, story)
    )
    return Node(cells=(text["measure_margins"],), spans=True, is_head=True, children=rows)
