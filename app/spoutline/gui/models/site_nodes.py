"""The site as a tree: dispensers with their positions and marks."""

from __future__ import annotations

from collections.abc import Callable

from spoutline.explain.plan.story import Story
from spoutline.frozen import frozen
from spoutline.gui.models.marks import tone_of_plan
from spoutline.gui.models.node_tree import Node
from spoutline.gui.roles import Tone
from spoutline.gui.wording import tr
from spoutline.model.plan import PlanStatus, PositionPlan
from spoutline.model.survey import Survey

_WORDS = {
    Tone.GOOD: "fits",
    Tone.CAUTION: "fits, good practice not met in full",
    Tone.BAD: "no set",
    Tone.QUESTION: "a question is open",
    Tone.NOTE: "fits",
    Tone.WORKING: "being planned",
    Tone.OPEN: "not surveyed yet",
}


def tone_words(tone: Tone) -> str:
    """Return in words what the mark of a position says."""
    return tr(_WORDS[tone])


def plan_words(plan: PositionPlan | None, story: Story) -> str:
    """Return in words what the mark of a position says, with the lines of good practice that its set leaves open."""
    words = tone_words(tone_of_plan(plan))
    if plan is not None and plan.status is PlanStatus.NOT_DECIDED:
        return story.word(plan.status)
    return words if plan is None else story.writing.listed((words, *story.good_practice(plan)))


@frozen(kw_only=True)
class RowWords:
    """What the rows of positions show, by label.

    ``tone`` is the mark, ``liquid`` the liquid and blend, ``told`` what stands below a position; nothing where it is
    empty. What a mark says is asked of each row when it is looked at (``NodeTree``): at once it would be told a
    thousand times after every edit.
    """

    tone: Callable[[str], Tone]
    liquid: Callable[[str], str]
    told: Callable[[str], str] = lambda _: ""


def site_nodes(survey: Survey, words: RowWords) -> tuple[Node, ...]:
    """Return one head per dispenser in the order of first mention, its positions below; the record is the label."""
    dispensers: dict[str, list[str]] = {}
    for position in survey.positions:
        dispensers.setdefault(position.dispenser, []).append(position.label)
    return tuple(
        Node(
            cells=(tr("Dispenser {0}").format(name), ""),
            is_head=True,
            children=tuple(position_node(label, words) for label in labels),
        )
        for name, labels in dispensers.items()
    )


def position_node(label: str, words: RowWords) -> Node:
    """Return the row of a position; the record is its label."""
    return Node(
        cells=(label, words.liquid(label)),
        record=label,
        tone=words.tone(label),
        children=_told_rows(label, words.told(label)),
    )


def _told_rows(label: str, words: str) -> tuple[Node, ...]:
    return (Node(cells=(words,), record=label, hint=f"{label}: {words}", spans=True),) if words else ()
