"""`copy-answers`: give answers of one position of a survey to others, as *Copy answers* of the window does."""

from __future__ import annotations

import argparse
import json
from typing import TYPE_CHECKING

from spoutline.book.survey_text import survey_to_json
from spoutline.cli.command import CommandWork, add_survey
from spoutline.cli.exit_code import ExitCode
from spoutline.cli.files import read_survey, write_standard_output
from spoutline.cli.outputs import OutputArguments
from spoutline.cli.voice import said
from spoutline.documents.own_files import FileForm
from spoutline.model.copied_answers import AnswerGroup
from spoutline.model.faults import InputFault, InputProblem

if TYPE_CHECKING:
    from spoutline.bootstrap import Workbench
    from spoutline.model.survey import Survey


def _arguments(parser: argparse.ArgumentParser) -> None:
    add_survey(parser)
    parser.add_argument("position", metavar="POSITION", help="label of the position whose answers are copied")
    parser.add_argument(
        "--answers",
        choices=[group.value for group in AnswerGroup],
        action="append",
        required=True,
        help="group of answers that is copied; may be repeated",
    )
    parser.add_argument(
        "--to", metavar="POSITION", action="append", default=[], help="position that gets them; may be repeated"
    )
    targets = parser.add_mutually_exclusive_group()
    targets.add_argument(
        "--same-product", action="store_true", help="to every position of the same liquid and blend, as answered"
    )
    targets.add_argument("--all", action="store_true", help="to every other position")
    parser.add_argument("--json", action="store_true", help="print what changes as a JSON document")
    OutputArguments(parser).add("--out", FileForm.JSON, "write the survey with the answers here; else nothing is kept")


def _run(_workbench: Workbench, arguments: argparse.Namespace) -> ExitCode:
    from spoutline.model.copied_answers import changed_positions, copy_answers

    survey = read_survey(arguments.survey)
    groups = frozenset(AnswerGroup(one) for one in arguments.answers)
    after = copy_answers(survey, _known(survey, arguments.position, "POSITION"), groups, _targets(survey, arguments))
    changed = changed_positions(survey, after)
    if arguments.out is not None:
        arguments.output_plan.write({arguments.out: survey_to_json(after).encode("utf-8")})
    if arguments.json:
        document = {
            "format": "spoutline-copied-answers",
            "version": 1,
            "position": arguments.position,
            "answers": sorted(groups),
            "changed": list(changed),
            "written": arguments.out is not None,
        }
        write_standard_output(json.dumps(document, indent=2, ensure_ascii=False) + "\n")
    else:
        _tell(changed, is_written=arguments.out is not None)
    return ExitCode.FITS


def _tell(changed: tuple[str, ...], *, is_written: bool) -> None:
    from spoutline.cli.answer import printable

    lines = [*changed, said("{count} positions change", count=len(changed))]
    if changed and not is_written:
        lines.append(said("nothing was written: --out names the file for the survey"))
    write_standard_output("".join(f"{printable(line)}\n" for line in lines))


def _targets(survey: Survey, arguments: argparse.Namespace) -> frozenset[str]:
    """Return the labels of the positions that get the answers; raise ``InputFault`` where there are none."""
    from spoutline.model.copied_answers import same_product

    found = {_known(survey, label, "--to") for label in arguments.to}
    if arguments.all:
        found |= {position.label for position in survey.positions}
    if arguments.same_product:
        alike = same_product(survey, arguments.position)
        if not alike:
            wanted = "no other position was answered to sell the same liquid and blend: name positions with --to"
            raise InputFault((InputProblem("", "--same-product", repr(arguments.position), wanted),))
        found |= alike
    found.discard(arguments.position)
    if not found:
        wanted = "name who gets the answers: --to POSITION, --same-product or --all"
        raise InputFault((InputProblem("", "--to", "nothing", wanted),))
    return frozenset(found)


def _known(survey: Survey, label: str, field: str) -> str:
    from spoutline.book.choices import not_one_of

    if survey.position(label) is None:
        raise not_one_of(label, tuple(position.label for position in survey.positions), field=field)
    return label


WORK = CommandWork(_arguments, _run)
