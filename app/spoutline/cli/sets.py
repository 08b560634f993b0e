"""The option that names the sets which papers and commands show, and the plan that it gives."""

from __future__ import annotations

import argparse
import sys
from collections.abc import Iterator
from typing import TYPE_CHECKING

from spoutline.cli.command import display_of
from spoutline.cli.files import noted
from spoutline.cli.progress import TerminalProgress
from spoutline.cli.voice import told

if TYPE_CHECKING:
    from spoutline.bootstrap import Workbench
    from spoutline.explain.plan.story import Story
    from spoutline.model.plan import SitePlan
    from spoutline.model.survey import Survey


def add_sets(parser: argparse.ArgumentParser) -> None:
    """Declare which sets are shown."""
    parser.add_argument(
        "--sets",
        metavar="SETS",
        help="sets to show: plan, agreed, built, quotation:ID[:OPTION] or file:PATH; "
        "without it those agreed where the book has them, else the plan",
    )


def sets_of(
    workbench: Workbench, survey: Survey, arguments: argparse.Namespace, *, with_alternatives: bool = True
) -> SitePlan:
    """Return the plan of a survey with the sets that were named; what was not used is told on standard error.

    ``with_alternatives`` is for what shows other sets beside those.
    """
    shown = workbench.agreeing().sets_for(
        survey, arguments.sets, TerminalProgress(), with_alternatives=with_alternatives
    )
    for note in shown.notes:
        sys.stderr.write(f"{noted(told(note))}\n")
    story = workbench.story(display_of(arguments, workbench, survey.site.jurisdiction))
    for line in edited_lines(shown.site_plan, story):
        sys.stderr.write(f"{noted(line)}\n")
    return shown.site_plan


def edited_lines(site_plan: SitePlan, story: Story) -> Iterator[str]:
    """Return, for each position edited since its set was agreed, whether the set keeps every must, and if not, why."""
    from spoutline.explain.plan.agreed_words import broken_musts

    for plan in site_plan.positions:
        if not plan.asks_otherwise:
            continue
        label = plan.position.label
        if plan.keeps_every_must:
            yield story.phrases.fill("terminal_edited_keeps", position=label)
            continue
        reasons = " ".join(broken_musts(plan, story))
        yield story.phrases.fill("terminal_edited_breaks", position=label, reasons=reasons)
