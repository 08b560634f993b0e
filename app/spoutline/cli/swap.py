"""`swap`: what else of a stock list would do in place of a part that is not on the van."""

from __future__ import annotations

import argparse
from collections.abc import Iterator
from pathlib import Path
from typing import TYPE_CHECKING

from spoutline.cli.command import CommandWork, add_survey, display_of
from spoutline.cli.exit_code import ExitCode
from spoutline.cli.files import read_survey, write_standard_output
from spoutline.cli.outputs import InputFile
from spoutline.cli.sets import add_sets, sets_of
from spoutline.cli.voice import said
from spoutline.model.finding import Severity, Verdict
from spoutline.model.part_ref import told_apart
from spoutline.model.stock import SwapOption

if TYPE_CHECKING:
    from spoutline.bootstrap import Workbench
    from spoutline.explain.plan.story import Story


def _arguments(parser: argparse.ArgumentParser) -> None:
    add_survey(parser)
    add_sets(parser)
    parser.add_argument("position", metavar="POSITION", help="label of the position")
    parser.add_argument(
        "missing", metavar="PARTNUMBER", help="part of its set that is not at hand: number, or maker and number"
    )
    parser.add_argument(
        "--stock",
        metavar="STOCK.csv",
        type=Path,
        required=True,
        action=InputFile,
        words="the stock list",
        help="stock list: columns part_number, quantity, maybe maker",
    )


def _run(workbench: Workbench, arguments: argparse.Namespace) -> ExitCode:
    from spoutline.planning.pack.picked import only_positions

    service = workbench.packing()
    stock = service.read_stock(arguments.stock)
    survey = read_survey(arguments.survey)
    planned = sets_of(workbench, survey, arguments, with_alternatives=False)
    site_plan = only_positions(planned, (arguments.position,))
    plan = site_plan.positions[0]
    missing, trace = workbench.parts().found_ref(arguments.missing, survey)
    options = service.swap_options(survey, plan, missing, stock)
    story = workbench.story(display_of(arguments, workbench, survey.site.jurisdiction))
    lines = [] if trace is None else [story.number_trace(trace)]
    lines += [line for option in options for line in option_lines(option, survey.site.currency, story)]
    if not options:
        lines += [said("The stock list holds no other part of this kind.")]
    write_standard_output("".join(f"{line}\n" for line in lines))
    return ExitCode.FITS if any(option.judged is not None for option in options) else ExitCode.DOES_NOT_FIT


def _shown(option: SwapOption) -> tuple[str, str]:
    """Return what goes and what comes, numbers with their makers where both have one number."""
    shown = told_apart((*option.taken_out, *option.put_in))
    return ", ".join(shown[: len(option.taken_out)]), ", ".join(shown[len(option.taken_out) :])


def option_lines(option: SwapOption, currency: str, story: Story) -> Iterator[str]:
    """Return a swap option as text: the part, what changes and what it costs, what it breaks, or what is left open."""
    part = story.part(option.part)
    if option.is_undecided:
        yield said(
            "? {part}, {count} at hand: it is not decided whether it would do.", part=part, count=option.quantity
        )
        yield from (f"    {story.finding(finding).sentence}" for finding in option.left_open)
        return
    if option.judged is None:
        yield said("✗ {part}, {count} at hand: would not do.", part=part, count=option.quantity)
        for finding in option.findings:
            if finding.verdict is Verdict.BROKEN and finding.severity is Severity.MUST:
                text = story.finding(finding)
                yield f"    {text.sentence} [{text.source}]"
        if option.misfit.finding is None:
            reasons = [story.finding(finding).sentence for finding in option.left_open]
            yield from (f"    {text}" for text in reasons or (story.misfit(option.misfit),))
        return
    price = story.money(option.judged.hanging_set.price_minor, currency)
    out, put_in = _shown(option)
    yield said(
        "✓ {part}, {count} at hand: would do. Take out {out}; put in {put_in}. Set: {price}.",
        part=part,
        count=option.quantity,
        out=out,
        put_in=put_in,
        price=price,
    )
    for check in option.judged.checks:
        if not check.passes:
            cells = story.check(check)
            outcome = f"{cells.value}, {cells.limit} ({cells.outcome_word}, {cells.severity_word})"
            yield f"    {cells.title}{story.writing.colon} {outcome}"


WORK = CommandWork(_arguments, _run)
