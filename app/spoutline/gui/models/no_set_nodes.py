"""Why a position has no set as tree rows: obstacles with what stands behind them, then the ways out with their sets."""

from __future__ import annotations

from collections.abc import Sequence

from spoutline.explain.plan.no_set_text import Reason
from spoutline.explain.plan.story import Story
from spoutline.gui.models.node_tree import Node
from spoutline.gui.roles import Tone
from spoutline.gui.wording import tr
from spoutline.model.no_set import ConflictReasons, NoSetReasons, Trial
from spoutline.model.survey import Position


def no_set_titles() -> tuple[str, ...]:
    """Return the column titles of obstacles and ways out."""
    return tr("Reason or way out"), tr("Price of the set")


def no_set_nodes(
    conflicts: Sequence[ConflictReasons], trials: Sequence[Trial], position: Position, story: Story
) -> tuple[Node, ...]:
    """Return two groups: what cannot be had together, and what would free a set; a group without rows is left out.

    The record of a way out, and of all rows below it, is its trial.
    """
    text = story.phrases.text
    obstacles = tuple(_reason_node(story.conflict_reason(one), Tone.BAD) for one in conflicts)
    ways = tuple(_trial_node(one, position, story) for one in trials)
    return tuple(
        Node(cells=(text[title],), children=rows, is_head=True, spans=True)
        for title, rows in (("no_set_cannot", obstacles), ("no_set_ways", ways))
        if rows
    )


def short_nodes(found: NoSetReasons, story: Story) -> tuple[Node, ...]:
    """Return the first obstacle with its numbers, how many more there are, and whether that is all."""
    text, more = story.phrases, len(found.conflicts) - 1
    rows = [_reason_node(story.conflict_reason(one), Tone.BAD) for one in found.conflicts[:1]]
    if more > 0:
        told = text.fill("no_set_more_one" if more == 1 else "no_set_more_many", count=more)
        rows.append(Node(cells=(told,), spans=True, tone=Tone.BAD))
    rows += [Node(cells=(one,), spans=True, tone=Tone.NOTE) for one in story.no_set_closing(found)]
    return tuple(rows)


def _reason_node(reason: Reason, tone: Tone | None = None) -> Node:
    return Node(cells=(reason.text,), children=tuple(map(_reason_node, reason.behind)), tone=tone, spans=True)


def _trial_node(trial: Trial, position: Position, story: Story) -> Node:
    told = story.trial(trial, position)
    below = tuple(
        Node(cells=(part,), record=trial, spans=True) for part in (story.sentence(told.concession), *told.parts)
    )
    tone = Tone.GOOD if trial.after is not None else Tone.QUESTION
    return Node(cells=(told.text, told.price), record=trial, children=below, tone=tone, hint=told.concession)
