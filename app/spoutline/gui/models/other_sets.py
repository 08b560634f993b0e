"""Other sets in words as tree rows, as they come: what was found stays, what is still looked for stands behind it."""

from __future__ import annotations

from spoutline.explain.plan.story import Story
from spoutline.explain.plan.what_differs import ListedParts
from spoutline.gui.models.marks import lead_time_days
from spoutline.gui.models.node_tree import Node
from spoutline.gui.wording import tr
from spoutline.model.part_ref import PartRef
from spoutline.model.plan import Alternative, AlternativeKind, HangingSet, SetLink
from spoutline.model.requirement import Slot
from spoutline.model.staged_plan import StagedPlan


def other_set_titles() -> tuple[str, ...]:
    """Return the column titles of other sets."""
    return tr("Other set"), tr("Price"), tr("Difference"), tr("Lead time")


def kind_of(record: object) -> AlternativeKind | None:
    """Return in what way the set of a row differs, found or still looked for; None for the record of another row."""
    if isinstance(record, Alternative):
        return record.kind
    return record if isinstance(record, AlternativeKind) else None


def are_of_a_kind(one: object, other: object) -> bool:
    """Say whether two records are of the same row, whether or not its set has come meanwhile."""
    return kind_of(one) is not None and kind_of(one) is kind_of(other)


class OtherSetRows:
    """Rows of the other sets of one chosen set. What a row says is settled when its set comes.

    So the parts of a set are told from those in their places of the chosen set and of the sets that came before it.
    """

    def __init__(self, chosen: HangingSet, story: Story) -> None:
        self.chosen, self.story = chosen, story
        self._known: dict[AlternativeKind, Node] = {}
        self._sets: list[HangingSet] = [chosen]
        self._told: dict[tuple[Slot, PartRef], str] = {}

    def nodes(self, staged: StagedPlan) -> tuple[Node, ...]:
        """Return one row per other set, below it the parts in which it differs; then one per kind still looked for."""
        found = tuple(self._node(one) for one in staged.others)
        return (*found, *(self._sought(kind) for kind in staged.sought))

    def _sought(self, kind: AlternativeKind) -> Node:
        return Node(cells=(self.story.title(kind), tr("looking…")), record=kind)

    def _node(self, alternative: Alternative) -> Node:
        if alternative.kind not in self._known:
            self._known[alternative.kind] = self._told_of(alternative)
        return self._known[alternative.kind]

    def _told_of(self, alternative: Alternative) -> Node:
        other, story = alternative.judged.hanging_set, self.story
        self._sets.append(other)
        return Node(
            cells=(
                story.title(alternative.kind),
                story.money(other.price_minor, other.currency),
                _signed_money(alternative.price_difference_minor, other.currency, story),
                story.days(lead_time_days(alternative.judged)),
            ),
            record=alternative,
            children=tuple(self._differing(link) for link in other.links if link.part.ref not in self.chosen.refs),
            hint=story.alternative(alternative, self.chosen),
        )

    def _differing(self, link: SetLink) -> Node:
        """Return a part that the chosen set does not hold; it is told in the same words in every row."""
        story, place = self.story, (link.slot, link.part.ref)
        if place not in self._told:
            in_place = (one.part for other in self._sets for one in other.links if one.slot is link.slot)
            self._told[place] = ListedParts(in_place, story).differs(link.part)
        told = f"{link.part.number}  {self._told[place]}"
        return Node(
            cells=(f"{story.title(link.slot)}{story.writing.colon} {told}",),
            hint=story.part_name(link.part),
            record=link.part.ref,
            spans=True,
        )


def _signed_money(minor: int, currency: str, story: Story) -> str:
    """Return a price difference with its sign; no difference reads as such."""
    if minor == 0:
        return tr("same")
    return f"{'+' if minor > 0 else '-'}{story.money(abs(minor), currency)}"
