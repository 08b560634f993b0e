"""The quotations in the book as a list: which, in which order, and as lines, a document or a paper."""

from __future__ import annotations

import argparse
import json
from collections.abc import Callable
from dataclasses import asdict
from datetime import date
from functools import partial
from typing import TYPE_CHECKING

from spoutline.cli.command import display_of
from spoutline.cli.exit_code import ExitCode
from spoutline.cli.files import write_standard_output
from spoutline.cli.mail import add_paper, paper_files
from spoutline.cli.outputs import OutputArguments
from spoutline.cli.quotation_names import revision_text
from spoutline.cli.typed import day
from spoutline.cli.voice import said
from spoutline.model.quotation_status import QuotationStatus

if TYPE_CHECKING:
    from decimal import Decimal

    from spoutline.book.quotation_records import QuotationEntry
    from spoutline.bootstrap import Workbench
    from spoutline.explain.plan.story import Story

_SORTS: dict[str, Callable[[QuotationEntry], tuple[object, ...]]] = {
    "number": lambda one: (one.number,),
    "customer": lambda one: (one.customer.casefold(), one.id),
    "site": lambda one: (one.site.casefold(), one.id),
    "status": lambda one: (one.status.value, one.id),
    "day": lambda one: (one.dated is not None, one.dated, one.id),
    "valid-until": lambda one: (one.valid_to, one.id),
    "total": lambda one: (one.total_low is not None, one.total_low, one.id),
    "margin": lambda one: (one.margin_low is not None, one.margin_low, one.id),
    "follow-up": lambda one: (one.follow_up is None, one.follow_up, one.id),
}


def add_listing(parser: argparse.ArgumentParser) -> None:
    """Declare what is listed, in which order and as what."""
    parser.add_argument("text", metavar="TEXT", nargs="?", default="", help="words of number, customer, site or part")
    parser.add_argument("--json", action="store_true", help="print a JSON document instead of a text")
    parser.add_argument("--sort", choices=tuple(_SORTS), help="sort by this, the least first; default: last changed")
    parser.add_argument("--status", choices=[status.value for status in QuotationStatus])
    parser.add_argument("--due", action="store_true", help="those alone that are to be followed up by today")
    parser.add_argument("--on", metavar="YYYY-MM-DD", type=day, help="to be followed up by this day instead of today")
    add_paper(OutputArguments(parser), "write the list as an internal paper here")


def list_quotations(workbench: Workbench, arguments: argparse.Namespace) -> ExitCode:
    """Print the quotations that are asked for."""
    status = QuotationStatus(arguments.status) if arguments.status else None
    due_by = (arguments.on or date.today()) if arguments.due or arguments.on else None
    found = workbench.quoting().life().quotations(arguments.text, status, due_by)
    if arguments.sort:
        found = tuple(sorted(found, key=_SORTS[arguments.sort]))
    display, on = display_of(arguments, workbench), arguments.on or date.today()
    make = partial(workbench.book_lists().quotations, found, display, on)
    arguments.output_plan.write(paper_files(workbench, arguments, make))
    if arguments.json:
        document = {"quotations": [_listed(one) for one in found]}
        write_standard_output(json.dumps(document, indent=2, ensure_ascii=False) + "\n")
        return ExitCode.FITS
    story = workbench.story(display_of(arguments, workbench))
    write_standard_output("".join(f"{_list_line(one, story)}\n" for one in found))
    return ExitCode.FITS


def _list_line(one: QuotationEntry, story: Story) -> str:
    span = said("{first} until {last}", first=one.dated or "–", last=one.valid_to)
    margin = said("margin {percent} %", percent=_range(one.margin_low, one.margin_high))
    follow = f"; {said('follow up {day}', day=one.follow_up)}" if one.follow_up else ""
    return (
        f"{one.id:>5}  {revision_text(one.number, one.revision)}  {story.word(one.status):<8}  {span}  "
        f"{_range(one.total_low, one.total_high)} {one.currency}  {margin}  {one.customer}; {one.site}{follow}"
    )


def _range(low: Decimal | None, high: Decimal | None) -> str:
    if low is None or high is None:
        return "–"
    return f"{low:f}" if low == high else f"{low:f}…{high:f}"


def _listed(entry: QuotationEntry) -> dict[str, object]:
    told = asdict(entry)
    return {name: one if one is None or isinstance(one, int) else str(one) for name, one in told.items()}
