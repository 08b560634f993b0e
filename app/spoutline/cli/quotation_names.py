"""How commands name a quotation on one line, and the words that they tell it in."""

from __future__ import annotations

import argparse
from typing import TYPE_CHECKING

from spoutline.cli.command import display_of
from spoutline.cli.voice import said

if TYPE_CHECKING:
    from spoutline.book.quotation_records import StoredQuotation
    from spoutline.bootstrap import Workbench
    from spoutline.explain.plan.story import Story


def revision_text(number: str, revision: int) -> str:
    """Return a number with its revision."""
    return f"{number} {said('r{revision}', revision=revision)}"


def story_of(workbench: Workbench, arguments: argparse.Namespace, stored: StoredQuotation) -> Story:
    """Return the words of a command about a quotation, in the units of its jurisdiction where none are asked for."""
    return workbench.story(display_of(arguments, workbench, stored.quotation.pins.jurisdiction_id))


def state_line(stored: StoredQuotation, story: Story) -> str:
    """Return a quotation on one line: its id, number, revision and status."""
    number = revision_text(stored.quotation.terms.heading.number, stored.revision)
    return f"{stored.id}  {number}  {story.word(stored.status)}"
