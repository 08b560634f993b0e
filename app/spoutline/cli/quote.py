"""`quote`: write the quotation of a survey on the terms of a file; all files asked for, or none; tell it in short."""

from __future__ import annotations

import argparse
from pathlib import Path
from typing import TYPE_CHECKING

from spoutline.cli.command import CommandWork, add_survey, add_terms, display_of, read_terms
from spoutline.cli.files import read_survey, write_standard_output
from spoutline.cli.mail import add_mail, mail_of, paper_file
from spoutline.cli.open_positions import tell_open
from spoutline.cli.outputs import OutputArguments
from spoutline.cli.progress import TerminalProgress
from spoutline.documents.own_files import FileForm
from spoutline.documents.paper_form import PaperForm
from spoutline.model.faults import InputFault, InputProblem
from spoutline.model.worded import Worded
from spoutline.whole_files import InUse

if TYPE_CHECKING:
    from collections.abc import Callable

    from spoutline.bootstrap import Workbench
    from spoutline.cli.exit_code import ExitCode
    from spoutline.model.quotation import Quotation
    from spoutline.planning.refit.quote import Quoted
    from spoutline.units.display import Display

_FIRST_REVISION = 1
_SENT = frozenset({"--pdf", "--html", "--mail", "--xlsx"})  # what the customer gets; the others stay in the house


def _arguments(parser: argparse.ArgumentParser) -> None:
    add_survey(parser)
    add_terms(parser)
    outputs = OutputArguments(parser)
    outputs.add("--pdf", FileForm.PDF, "write the quotation here")
    outputs.add("--html", FileForm.HTML, "write the quotation as one HTML page for screen readers and mails here")
    add_mail(outputs)
    outputs.add("--xlsx", FileForm.XLSX, "write the workbook with formulas here")
    outputs.add("--csv", FileForm.CSV, "write the lines for an order system here")
    outputs.add_paper("--pick-list", "write the pick list by maker here")
    outputs.add_paper("--bill", "write the bill of the option with its cautions here")
    parser.add_argument(
        "--option", metavar="N", type=int, default=1, help="option of pick list and bill, counted from 1 (default 1)"
    )
    parser.add_argument(
        "--price-lists",
        metavar="DIR",
        type=Path,
        action="append",
        help="folder of further price lists; may be repeated",
    )
    parser.add_argument(
        "--draft", action="store_true", help="write a draft even where prices are missing; it says so on its face"
    )


def _run(workbench: Workbench, arguments: argparse.Namespace) -> ExitCode:
    from spoutline.cli.quotation_text import quotation_text

    outputs = {
        option: path
        for option, path in (
            ("--pdf", arguments.pdf),
            ("--html", arguments.html),
            ("--mail", arguments.mail),
            ("--xlsx", arguments.xlsx),
            ("--csv", arguments.csv),
            ("--pick-list", arguments.pick_list),
            ("--bill", arguments.bill),
        )
        if path is not None
    }
    if not outputs:
        wanted = "name at least one file: --pdf, --html, --mail, --xlsx, --csv, --pick-list or --bill"
        raise InputFault((InputProblem("", "--pdf", "nothing", wanted),))
    service = workbench.quoting()
    survey = read_survey(arguments.survey)
    terms = read_terms(workbench, arguments, survey)
    option = _option(arguments.option, len(terms.options))
    display = display_of(arguments, workbench, survey.site.jurisdiction)
    picture = service.terms().picture(terms.seller.logo, arguments.terms.parent)
    arguments.output_plan.check((InUse(picture, "the picture of the letterhead"),) if picture is not None else ())
    logo = service.terms().logo(terms, arguments.terms.parent)
    quoted = service.quote(survey, terms, display, logo=logo, progress=TerminalProgress())
    quotation = quoted.quotation
    if not arguments.draft:
        service.check_prices(quotation)
    if not _SENT.isdisjoint(outputs):
        service.life().check_unsent(quotation, _FIRST_REVISION)
    contents = _papers(workbench, arguments, quoted, option, display)
    arguments.output_plan.write({path: contents[name]() for name, path in outputs.items()})
    write_standard_output(quotation_text(quotation, workbench.story(display)))
    return _outcome(quotation)


def _papers(
    workbench: Workbench, arguments: argparse.Namespace, quoted: Quoted, option: int, display: Display
) -> dict[str, Callable[[], bytes]]:
    """Return what makes each paper, by the option that asks for it."""
    service, quotation = workbench.quoting(), quoted.quotation
    return {
        "--pdf": lambda: service.papers().pdf(quotation, _FIRST_REVISION, display),
        "--html": lambda: service.papers().pdf(quotation, _FIRST_REVISION, display, PaperForm.HTML),
        "--mail": lambda: mail_of(
            workbench,
            arguments.mail,
            service.papers().pdf(quotation, _FIRST_REVISION, display),
            quotation.terms.customer,
        ),
        "--xlsx": lambda: service.papers().workbook(quotation, _FIRST_REVISION, display),
        "--csv": lambda: service.papers().order_csv(quotation, _FIRST_REVISION),
        "--pick-list": lambda: paper_file(
            workbench,
            arguments.pick_list,
            lambda form: service.papers().pick_list(quotation, option, _FIRST_REVISION, display, form),
        ),
        "--bill": lambda: paper_file(
            workbench,
            arguments.bill,
            lambda form: workbench.bills().pdf(
                quoted.plans[option].site_plan, display, quotation.terms.heading.dated, form=form
            ),
        ),
    }


def _option(number: int, count: int) -> int:
    if 1 <= number <= count:
        return number - 1
    wanted = (
        Worded("the terms have the options 1 to {count}", count=count) if count > 1 else "the terms have option 1 only"
    )
    raise InputFault((InputProblem("", "--option", str(number), wanted),))


def _outcome(quotation: Quotation) -> ExitCode:
    """Tell of positions without a sound set, and return the code that says so."""
    return tell_open(
        (f"{position.label} ({option.title})", position.status)
        for option in quotation.options
        for position in option.positions
        if not position.keeps_every_must
    )


WORK = CommandWork(_arguments, _run)
