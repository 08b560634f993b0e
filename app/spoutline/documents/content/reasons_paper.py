"""Why a position has its set, or why none fits, as a paper of its own: what the annexes of the bill tell."""

from __future__ import annotations

from collections.abc import Iterator
from datetime import date

from spoutline.documents.content.bill_frame import bill_document
from spoutline.documents.content.blocks import Block, Document, Heading, Paragraph, Role
from spoutline.documents.content.no_set_annex import reasons_against
from spoutline.documents.content.position_section import short_labels
from spoutline.documents.content.why_annex import reasons_for
from spoutline.explain.plan.story import Story
from spoutline.model.funnel import SetReasons
from spoutline.model.no_set import NoSetReasons
from spoutline.model.plan import SitePlan


def reasons_content(
    site_plan: SitePlan, reasons: SetReasons | NoSetReasons, story: Story, *, dated: date | None = None
) -> Document:
    """Return the paper; ``reasons`` are those of the one position of ``site_plan``, ``dated`` is printed where given.

    Raises
    ------
    ValueError
        The plan does not hold exactly one position.
    """
    (plan,) = site_plan.positions
    title = story.phrases.text["no_set_title" if isinstance(reasons, NoSetReasons) else "why_title"]

    def blocks() -> Iterator[Block]:
        yield Heading(title, 1)
        yield Paragraph(story.phrases.text["advice"], Role.NOTE)
        yield Heading(short_labels((plan.position,), story), 2)
        yield Paragraph(story.marked_verdict(plan), Role.LEAD)
        if isinstance(reasons, NoSetReasons):
            yield Paragraph(story.phrases.text["no_set_note"], Role.NOTE)
            yield Heading(story.phrases.text["no_set_cannot"], 2)
            yield from reasons_against(reasons, story)
        else:
            yield Paragraph(story.phrases.text["why_note"], Role.NOTE)
            yield from reasons_for(reasons, story)

    return bill_document(site_plan, story, title, blocks(), dated=dated)
