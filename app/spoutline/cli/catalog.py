"""`catalog`: say which prices of the catalogue lie so far from the usual that they are asked about."""

from __future__ import annotations

import argparse
from typing import TYPE_CHECKING

from spoutline.cli.command import Command, display_of
from spoutline.cli.exit_code import ExitCode
from spoutline.cli.files import write_standard_output

if TYPE_CHECKING:
    from spoutline.bootstrap import Workbench


def _arguments(parser: argparse.ArgumentParser) -> None:
    parser.add_argument("--jurisdiction", metavar="ID", default="us_general", help="whose row says how far is far")


def _run(workbench: Workbench, arguments: argparse.Namespace) -> ExitCode:
    from spoutline.cli.plan_text import printable

    story = workbench.story(display_of(arguments))
    found = workbench.price_questions(arguments.jurisdiction)
    lines = [workbench.catalogue_edition(), f"Prices asked about: {len(found) or 'none'}"]
    for one in found:
        price = story.money(one.part.price_minor(one.currency), one.currency)
        lines.append(
            f"  {one.part.number}  {story.part_name(one.part)}: {price}. {story.finding(one.finding).sentence}"
        )
    write_standard_output("".join(f"{printable(line)}\n" for line in lines))
    return ExitCode.DOES_NOT_FIT if found else ExitCode.FITS


CATALOG = Command("catalog", "check the prices of the catalog against what parts of their kind cost", _arguments, _run)
