"""`whynot`: say which rules a catalogue part breaks at a position, or how it could serve there."""

from __future__ import annotations

import argparse
from typing import TYPE_CHECKING

from spoutline.cli.command import CommandWork, add_survey, display_of
from spoutline.cli.exit_code import ExitCode
from spoutline.cli.files import read_survey, write_standard_output
from spoutline.model.finding import Severity, Verdict

if TYPE_CHECKING:
    from spoutline.bootstrap import Workbench
    from spoutline.model.plan import PartVerdict


def _arguments(parser: argparse.ArgumentParser) -> None:
    add_survey(parser)
    parser.add_argument("position", metavar="POSITION", help="label of a position of the survey")
    parser.add_argument(
        "part_number", metavar="PARTNUMBER", help="part: number, or maker and number; an old number too"
    )


def _run(workbench: Workbench, arguments: argparse.Namespace) -> ExitCode:
    from spoutline.cli.answer import printable

    survey = read_survey(arguments.survey)
    named, trace = workbench.parts().found_ref(arguments.part_number, survey)
    verdict = workbench.why_not(survey, arguments.position, named)
    story = workbench.story(display_of(arguments, workbench, survey.site.jurisdiction))
    way = () if trace is None else (story.number_trace(trace),)
    write_standard_output("".join(f"{printable(sentence)}\n" for sentence in (*way, *story.part_verdict(verdict))))
    return ExitCode.FITS if could_serve(verdict) else ExitCode.DOES_NOT_FIT


def could_serve(verdict: PartVerdict) -> bool:
    """Say whether the part is in the chosen set, or in some set that keeps every must."""
    if verdict.in_chosen_set:
        return True
    broken = any(
        finding.severity is Severity.MUST and finding.verdict is Verdict.BROKEN for finding in verdict.findings
    )
    return not broken and verdict.best_set_with_it is not None


WORK = CommandWork(_arguments, _run)
