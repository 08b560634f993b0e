"""`catalogue made-up`: a set sold made up under one number, as one article of several parts."""

from __future__ import annotations

import argparse
from typing import TYPE_CHECKING

from spoutline.cli.catalogue_cut import change_line, read_lead_days
from spoutline.cli.catalogue_import import counts_line
from spoutline.cli.command import Said
from spoutline.cli.exit_code import ExitCode
from spoutline.model.catalogue_edition import EditionRef
from spoutline.model.faults import InputFault, InputProblem

if TYPE_CHECKING:
    from spoutline.bootstrap import Workbench
    from spoutline.model.catalogue_entry import CatalogueEntry


def made_up_arguments(parser: argparse.ArgumentParser) -> None:
    """Declare what is said of the article."""
    parser.add_argument("name", metavar="NAME", help="catalog into whose draft the article goes")
    parser.add_argument(
        "parts",
        metavar="PART",
        nargs="+",
        help="parts of the draft that it is made up from, dispenser first: number, or maker and number",
    )
    parser.add_argument("--number", required=True, metavar="NUMBER", help="number of the article")
    parser.add_argument(
        "--price", metavar="AMOUNT", action="append", default=[], help="of the whole article, such as '412.00 USD'"
    )
    parser.add_argument("--maker", metavar="NAME", default="", help="who makes it up; default: maker of the first part")
    parser.add_argument("--title", metavar="TEXT", default="", help="what it is called; default: made from its parts")
    parser.add_argument("--lead-days", type=int, metavar="DAYS", help="lead time; default: the longest of its parts")
    parser.add_argument("--supplier", metavar="NAME", help="who supplies it; default: who supplies the first part")
    parser.add_argument(
        "--price-list", metavar="ID", default="", help="price list of the draft whose row is renewed too"
    )
    parser.add_argument("--dry-run", action="store_true", help="say what would change, and change nothing")


def run_made_up(workbench: Workbench, arguments: argparse.Namespace) -> Said:
    """Put the article into the draft and return exit code, text lines and document."""
    from spoutline.planning.keeping.cut_texts import read_amounts
    from spoutline.planning.keeping.made_up import MadeUpSet

    made = MadeUpSet(
        number=arguments.number.strip(),
        parts=tuple(_entry(workbench, arguments.name, one) for one in arguments.parts),
        prices=read_amounts("; ".join(arguments.price), "price"),
        maker=arguments.maker.strip(),
        name=arguments.title.strip(),
        lead_days=read_lead_days(arguments.lead_days),
        supplier=arguments.supplier,
    )
    done = (
        workbench.catalogues()
        .articles()
        .make_up(arguments.name, made, price_list=arguments.price_list, dry_run=arguments.dry_run)
    )
    new, changed, gone = done.counts
    lines = [change_line(before, after) for before, after in done.changes]
    counts = {"new": new, "changed": changed, "out": gone}
    lines.append(counts_line(arguments, counts, f"{arguments.name}, {made.number}"))
    document = {
        "catalogue": arguments.name,
        "dry_run": arguments.dry_run,
        "number": made.number,
        "maker": made.made_by,
        "made_from": [{"number": one.number, "maker": one.maker} for one in made.parts],
        "new": new,
        "changed": changed,
        "gone": gone,
        "parts": [
            {
                "number": after.number,
                "prices": [{"currency": one.currency, "minor": one.minor} for one in after.prices],
            }
            for _before, after in done.changes
            if after is not None
        ],
    }
    return ExitCode.FITS, lines, document


def _entry(workbench: Workbench, name: str, part: str) -> CatalogueEntry:
    service, ref = workbench.catalogues(), EditionRef(name, is_draft=True)
    entry = service.shelf().entry(ref, service.named_part(ref, part))
    if entry is None:
        raise InputFault((InputProblem("", "PART", repr(part), "a part of the draft"),))
    return entry
