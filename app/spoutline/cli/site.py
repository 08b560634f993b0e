"""`site`: plan a whole station together and print positions, parts of the site, and what commonality does."""

from __future__ import annotations

import argparse
from decimal import Decimal, InvalidOperation
from typing import TYPE_CHECKING

from spoutline.cli.command import CommandWork, add_survey, display_of
from spoutline.cli.exit_code import ExitCode
from spoutline.cli.files import read_survey, write_standard_output
from spoutline.cli.plan import outcome_of
from spoutline.cli.progress import TerminalProgress
from spoutline.model.faults import InputFault, InputProblem
from spoutline.model.worded import Worded

if TYPE_CHECKING:
    from spoutline.bootstrap import Workbench

_OPTION = "--stock-price"


def _arguments(parser: argparse.ArgumentParser) -> None:
    add_survey(parser)
    parser.add_argument("--json", action="store_true", help="print a JSON document instead of a text")
    parser.add_argument(
        _OPTION,
        metavar="AMOUNT",
        help="what stocking one more part number is worth, in the survey's currency; sets are then chosen together",
    )


def _run(workbench: Workbench, arguments: argparse.Namespace) -> ExitCode:
    from spoutline.cli.site_text import site_text
    from spoutline.documents.json.site import site_json

    survey = read_survey(arguments.survey)
    price = _stock_price(arguments.stock_price, survey.site.currency)
    refit = workbench.quoting().plan_refit(survey, price, TerminalProgress())
    story = workbench.story(display_of(arguments, workbench, survey.site.jurisdiction))
    write_standard_output(site_json(refit) if arguments.json else site_text(refit, story))
    return outcome_of(refit.site_plan)


def _stock_price(text: str | None, currency: str) -> int | None:
    """Return the amount in the smallest units of ``currency``; raise ``InputFault`` for what is no such amount."""
    from spoutline.planning.pricing.rounding import minor_units

    if text is None:
        return None
    try:
        amount = Decimal(text)
        if amount.is_finite() and 0 <= amount <= 10**9:
            return minor_units(amount, currency)
    except (InvalidOperation, ValueError):
        pass
    wanted = Worded("write an amount of {currency}, not negative, such as 35.00", currency=currency)
    raise InputFault((InputProblem("", _OPTION, repr(text), wanted),))


WORK = CommandWork(_arguments, _run)
