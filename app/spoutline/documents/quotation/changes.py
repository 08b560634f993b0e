"""What changed between two revisions of a quotation, value by value, as people read it."""

from __future__ import annotations

from typing import Final

from pydantic import BaseModel

from spoutline.explain.plan.changed_values import changed_value
from spoutline.explain.plan.story import Story
from spoutline.model.quotation_terms import Terms
from spoutline.model.survey import Position, Site
from spoutline.planning.refit.revision_changes import Changed, RevisionChange

# what holds the fields that are told by their paths, and under which name their titles are kept
FIELDS_OF: Final[dict[Changed, tuple[str, type[BaseModel]]]] = {
    Changed.POSITION: ("position", Position),
    Changed.SITE: ("site", Site),
    Changed.TERMS: ("terms", Terms),
}


def told_values(change: RevisionChange, story: Story) -> tuple[str, str]:
    """Return what was and what is; empty where there was or is nothing."""
    found = FIELDS_OF.get(change.changed)
    if found is None:
        return change.before, change.after
    before, after = (changed_value(text, change.subject, found[1], story) for text in (change.before, change.after))
    return before, after
