"""Sets side by side as tree rows: a head for each position, its places below, what differs marked."""

from __future__ import annotations

from collections.abc import Iterator, Sequence

from spoutline.explain.plan.story import Story
from spoutline.gui.models.node_tree import Node
from spoutline.gui.roles import Tone
from spoutline.gui.wording import tr
from spoutline.model.part_ref import told_apart
from spoutline.planning.agreement.comparison import ComparedPart, ComparedPosition


def compared_nodes(positions: Sequence[ComparedPosition], story: Story) -> tuple[Node, ...]:
    """Return one row for each position, its places below it."""
    return tuple(
        Node(
            cells=(one.label, *(tr("no set") if column is None else "" for column in one.sets)),
            record=one.label,
            tone=Tone.CAUTION if one.differs else Tone.GOOD,
            hint=tr("{0}: the sets differ").format(one.label) if one.differs else tr("{0}: the same").format(one.label),
            is_head=True,
            children=part_nodes(one, story),
            positions=(one.label,),
        )
        for one in positions
    )


def part_nodes(position: ComparedPosition, story: Story) -> tuple[Node, ...]:
    """Return one row for each place of the chains of a position."""
    return tuple(
        Node(
            cells=(
                f"◆ {story.title(one.slot)}" if one.differs else story.title(one.slot),
                *_parts_words(one),
            ),
            record=position.label,
            hint=tr("Another part hangs here.") if one.differs else "",
        )
        for one in position.parts
    )


def _parts_words(place: ComparedPart) -> Iterator[str]:
    """Yield what hangs here in each column; a number that two makers have with its maker before it."""
    links = [link for link in place.parts if link is not None]
    shown = iter(told_apart(link.ref for link in links))
    for link in place.parts:
        yield "–" if link is None else tr("{0} (stays)").format(next(shown)) if link.kept else next(shown)
