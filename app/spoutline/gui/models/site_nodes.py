"""The site as a tree: dispensers with their positions and marks."""

from __future__ import annotations

from collections.abc import Callable

from spoutline.explain.plan.story import Story
from spoutline.gui.models.marks import tone_of_plan
from spoutline.gui.models.node_tree import Node
from spoutline.gui.roles import Tone
from spoutline.gui.wording import tr
from spoutline.model.plan import PositionPlan
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
    return words if plan is None else story.writing.listed((words, *story.good_practice(plan)))


def site_nodes(
    survey: Survey,
    tone: Callable[[str], Tone],
    liquid: Callable[[str], str],
    words: Callable[[str], str] | None = None,
    told: Callable[[str], str] | None = None,
) -> tuple[Node, ...]:
    """Return one head per dispenser in the order of first mention, its positions below; the record is the label.

    ``tone`` gives the mark of a label, ``liquid`` the liquid and blend in words, ``words`` what the mark says, where
    more is known than the mark, ``told`` what stands below a position; nothing where it is empty.
    """
    dispensers: dict[str, list[str]] = {}
    for position in survey.positions:
        dispensers.setdefault(position.dispenser, []).append(position.label)
    return tuple(
        Node(
            cells=(tr("Dispenser {0}").format(name), ""),
            is_head=True,
            children=tuple(
                Node(
                    cells=(label, liquid(label)),
                    record=label,
                    tone=tone(label),
                    hint=f"{label}: {words(label) if words else tone_words(tone(label))}",
                    children=_told_rows(label, told(label) if told else ""),
                )
                for label in labels
            ),
        )
        for name, labels in dispensers.items()
    )


def _told_rows(label: str, words: str) -> tuple[Node, ...]:
    return (Node(cells=(words,), record=label, hint=f"{label}: {words}", spans=True),) if words else ()
