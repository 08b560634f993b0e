"""What became of quotations: changed from one revision to another, or by catalog and price lists since."""

from __future__ import annotations

import argparse
from collections.abc import Iterable
from typing import TYPE_CHECKING

from spoutline.cli.exit_code import ExitCode
from spoutline.cli.files import write_standard_output
from spoutline.cli.quotation_names import state_line, story_of
from spoutline.cli.voice import said, told
from spoutline.model.part_ref import PartRef, told_apart
from spoutline.model.worded import Worded
from spoutline.planning.refit.revision_changes import Changed
from spoutline.planning.refit.touched import Touch, TouchedPart

if TYPE_CHECKING:
    from spoutline.bootstrap import Workbench
    from spoutline.explain.plan.story import Story

_CHANGED: dict[Changed, Worded] = {
    Changed.OPTION_ADDED: Worded("option added"),
    Changed.OPTION_DROPPED: Worded("option left out"),
    Changed.PART_ADDED: Worded("part added"),
    Changed.PART_DROPPED: Worded("part left out"),
    Changed.QUANTITY: Worded("pieces of"),
    Changed.UNIT_PRICE: Worded("unit price of"),
    Changed.TOTAL: Worded("total of"),
    Changed.POSITION_SET: Worded("set of position"),
    Changed.TERMS: Worded("terms"),
    Changed.SURVEY: Worded("fingerprint of the survey"),
    Changed.SITE: Worded("site"),
    Changed.POSITION: Worded("position"),
    Changed.POSITION_ADDED: Worded("position added"),
    Changed.POSITION_DROPPED: Worded("position left out"),
    Changed.CATALOGUE: Worded("catalog"),
    Changed.PRICE_LIST: Worded("price list of"),
    Changed.RULES: Worded("rules"),
}
_WHOLE = (Changed.POSITION_ADDED, Changed.POSITION_DROPPED)
_TOUCHED: dict[Touch, Worded] = {
    Touch.GONE: Worded("no longer in the catalog"),
    Touch.SUPERSEDED: Worded("replaced by its maker"),
    Touch.DISCONTINUED: Worded("no longer made"),
    Touch.DATA: Worded("stated otherwise in the catalog"),
    Touch.PRICE: Worded("other list price"),
    Touch.PRICE_GONE: Worded("without a list price"),
}


def print_changes(workbench: Workbench, arguments: argparse.Namespace) -> ExitCode:
    """Print what changed between two revisions."""
    from spoutline.documents.quotation.changes import FIELDS_OF, told_values

    story, titles = (
        story_of(workbench, arguments, workbench.quoting().life().stored(arguments.id)),
        workbench.field_words(),
    )
    lines = []
    for one in workbench.quoting().life().changes(arguments.id, arguments.before, arguments.after):
        option = f"[{one.option}] " if one.option else ""
        name = titles.told(FIELDS_OF[one.changed][0], one.subject) if one.changed in FIELDS_OF else one.subject
        subject = f"{one.position}, {name}" if one.position else name
        subject = "" if one.changed is Changed.SURVEY else f" {subject}"
        changed = f"{told(_CHANGED[one.changed])}{subject}"
        if one.changed in _WHOLE:  # it is there or not: no value moved
            lines.append(f"{changed}\n")
            continue
        before, after = told_values(one, story)
        moved = f"{before or '–'} → {after or '–'}"
        lines.append(f"{option}{said('{place}: {said}', place=changed, said=moved)}\n")
    write_standard_output("".join(lines))
    return ExitCode.FITS


def _named(refs: Iterable[PartRef]) -> dict[PartRef, str]:
    distinct = tuple(dict.fromkeys(refs))
    return dict(zip(distinct, told_apart(distinct), strict=True))


def print_touched(workbench: Workbench, arguments: argparse.Namespace) -> ExitCode:
    """Print the open quotations that a change of catalog or price list touches."""
    lines = []
    for stored, parts in workbench.quoting().life().touched(arguments.today):
        story = story_of(workbench, arguments, stored)
        lines.append(f"{state_line(stored, story)}\n")
        named = _named(part.part for part in parts)
        lines += [f"         {_touched_line(named[part.part], part, story)}\n" for part in parts]
    write_standard_output("".join(lines))
    return ExitCode.FITS


def _touched_line(name: str, part: TouchedPart, story: Story) -> str:
    """Return what became of a quoted part; of a price that is gone, the reason as the paper words it."""
    from spoutline.model.price_gap import GapReason

    text, detail = f"{name} {told(_TOUCHED[part.touch])}", part.detail
    if part.touch is Touch.PRICE_GONE:
        reason, _, rest = detail.partition(": ")
        detail = f"{story.word(GapReason(reason))} ({rest})" if rest else story.word(GapReason(reason))
    return said("{place}: {said}", place=text, said=detail) if detail else text
