"""What changed between two revisions of a quotation, in plain words, grouped by what it concerns."""

from __future__ import annotations

from collections.abc import Iterable

from spoutline.documents.quotation.changes import told_values
from spoutline.explain.plan.story import Story
from spoutline.gui.edits.field_titles import position_field, site_field, terms_field
from spoutline.gui.escaping import tip
from spoutline.gui.models.node_tree import Node
from spoutline.gui.roles import Tone
from spoutline.gui.wording import tr
from spoutline.planning.refit.revision_changes import Changed, RevisionChange

_GROUPS = {
    Changed.SURVEY: "Survey",
    Changed.SITE: "Survey",
    Changed.POSITION: "Survey",
    Changed.POSITION_ADDED: "Survey",
    Changed.POSITION_DROPPED: "Survey",
    Changed.CATALOGUE: "Catalog",
    Changed.PRICE_LIST: "Price lists",
    Changed.RULES: "Rule tables",
    Changed.TERMS: "Terms",
}
_KINDS = {
    Changed.OPTION_ADDED: "New option, total",
    Changed.OPTION_DROPPED: "Option left out, total",
    Changed.PART_ADDED: "New part {0}, pieces",
    Changed.PART_DROPPED: "Part {0} left out, pieces",
    Changed.QUANTITY: "Pieces of {0}",
    Changed.UNIT_PRICE: "Unit price of {0}",
    Changed.TOTAL: "Total",
    Changed.POSITION_SET: "Set of position {0}",
    Changed.SURVEY: "Fingerprint of the survey",
    Changed.CATALOGUE: "Edition",
    Changed.POSITION_ADDED: "Position {0}",
    Changed.POSITION_DROPPED: "Position {0}",
}
_SHOWN = 12  # signs of a fingerprint, as on paper


def change_titles(before: str, after: str) -> tuple[str, str, str]:
    """Return the titles of the three columns for two revisions as they are named."""
    return tr("What"), before, after


def change_nodes(changes: Iterable[RevisionChange], story: Story) -> tuple[Node, ...]:
    """Return a head for each source that changed, then one for each option, its total first, its details below."""
    groups: dict[str, list[RevisionChange]] = {}
    for change in changes:
        groups.setdefault(_group(change), []).append(change)
    return tuple(
        Node(
            cells=(title, "", ""),
            is_head=True,
            spans=True,
            children=tuple(_node(one, story) for one in sorted(rows, key=lambda one: one.changed is not Changed.TOTAL)),
        )
        for title, rows in groups.items()
    )


def _group(change: RevisionChange) -> str:
    if change.option:
        return tr("Option “{0}”").format(change.option)
    return tr(_GROUPS[change.changed])


def _node(change: RevisionChange, story: Story) -> Node:
    what = _what(change)
    before, after = _values(change, story)
    tone = Tone.NOTE if change.changed in (Changed.TOTAL, Changed.OPTION_ADDED, Changed.OPTION_DROPPED) else None
    hint = f"{what}\n{before} → {after}"
    return Node(cells=(what, before, after), record=change, tone=tone, hint=tip(hint), positions=_positions(change))


def _positions(change: RevisionChange) -> tuple[str, ...]:
    """Return the positions that a row names and that are still there."""
    named = change.subject if change.changed in (Changed.POSITION_SET, Changed.POSITION_ADDED) else change.position
    return (named,) if named else ()


def _what(change: RevisionChange) -> str:
    match change.changed:
        case Changed.SITE:
            return f"{tr('Site')}: {site_field(change.subject)}"
        case Changed.POSITION:
            return f"{tr('Position {0}').format(change.position)}: {position_field(change.subject)}"
        case Changed.RULES:
            return tr("Rules of") if change.subject == "jurisdiction" else tr("Edition")
        case Changed.PRICE_LIST:
            return change.subject
        case Changed.TERMS:
            return terms_field(change.subject)
    return tr(_KINDS[change.changed]).format(change.subject)


def _values(change: RevisionChange, story: Story) -> tuple[str, str]:
    """Return what was and what is, a dash for nothing."""
    match change.changed:
        case Changed.POSITION_ADDED:
            return "–", tr("there")
        case Changed.POSITION_DROPPED:
            return tr("there"), "–"
        case Changed.SURVEY:
            return change.before[:_SHOWN], change.after[:_SHOWN]
    before, after = told_values(change, story)
    return before or "–", after or "–"
