"""`whatif`: show what another answer would do, today and then side by side, before anybody accepts it."""

from __future__ import annotations

import argparse
import sys
from typing import TYPE_CHECKING

from spoutline.cli.command import CommandWork, add_survey, display_of
from spoutline.cli.exit_code import ExitCode
from spoutline.cli.files import read_survey, write_standard_output
from spoutline.cli.outputs import OutputArguments
from spoutline.cli.progress import TerminalProgress
from spoutline.cli.sets import add_sets, sets_of
from spoutline.cli.typed import day_of
from spoutline.documents.own_files import FileForm
from spoutline.documents.paper_form import form_of
from spoutline.model.faults import InputFault, InputProblem
from spoutline.model.what_if import WhatIf, WhatIfQuestion

if TYPE_CHECKING:
    from pathlib import Path

    from spoutline.bootstrap import Workbench
    from spoutline.explain.plan.story import Story
    from spoutline.model.what_if import WhatIfResult

_OPTIONS = {
    WhatIfQuestion.BLEND: ("--blend", "BLEND", "another blend: E15, E85, B20"),
    WhatIfQuestion.DUTY: ("--duty", "DUTY", "another duty: car, truck, marine, reel"),
    WhatIfQuestion.OUTLET: ("--outlet", "OUTLET", "another usual outlet of the dispenser: npt_1, coaxial_balance"),
    WhatIfQuestion.VAPOUR: ("--vapor", "STATUS", "other vapor recovery: none, balance, vacuum_assist"),
    WhatIfQuestion.JURISDICTION: ("--jurisdiction", "ID", "other local rules; see `profile list`"),
    WhatIfQuestion.CATALOGUE: ("--edition", "NAME[@EDITION]", "another catalog, or another edition of it"),
}


def _arguments(parser: argparse.ArgumentParser) -> None:
    add_survey(parser)
    for question, (option, shown, words) in _OPTIONS.items():
        parser.add_argument(option, metavar=shown, dest=f"if_{question.value}", help=words)
    parser.add_argument(
        "--position",
        metavar="LABEL",
        action="append",
        default=[],
        help="change the answer of this position alone; may be given more than once; default: the whole station",
    )
    add_sets(parser)
    parser.add_argument("--json", action="store_true", help="print the document; `schema --output whatif` describes it")
    outputs = OutputArguments(parser)
    outputs.add_paper("--pdf", "write today and then side by side here")
    outputs.add("--accept", FileForm.JSON, "write the survey with the other answer here")
    parser.add_argument("--dated", metavar="YYYY-MM-DD", help="date printed on the paper; none where not given")


def _run(workbench: Workbench, arguments: argparse.Namespace) -> ExitCode:
    from spoutline.planning.what_if.answer import WhatIfListening

    dated = day_of(arguments.dated, "--dated")
    asked = asked_of(arguments)
    survey = read_survey(arguments.survey)
    before = sets_of(workbench, survey, arguments)
    service = workbench.what_if()
    found = service.ask(before, asked, WhatIfListening(TerminalProgress("positions looked at")))
    story = workbench.story(display_of(arguments, workbench, survey.site.jurisdiction))
    contents: dict[Path, bytes] = {}
    if arguments.pdf is not None:
        contents[arguments.pdf] = service.paper(found, story, dated, form_of(arguments.pdf))
    if arguments.accept is not None:
        from spoutline.book.survey_text import survey_to_json

        contents[arguments.accept] = survey_to_json(found.changed).encode()
    with arguments.output_plan.staged(contents) as files:
        files.place()
    _print(found, story, as_json=arguments.json)
    for path in contents:
        sys.stderr.write(f"written to {path}\n")
    kept = all(one.after.keeps_every_must for one in found.positions)
    return ExitCode.FITS if kept else ExitCode.DOES_NOT_FIT


def asked_of(arguments: argparse.Namespace) -> WhatIf:
    """Return the one other answer that was named; raise ``InputFault`` for none, several, or one that is none."""
    from spoutline.planning.what_if.answers import value_named

    named = {question: getattr(arguments, f"if_{question.value}") for question in _OPTIONS}
    given = {question: text for question, text in named.items() if text is not None}
    if len(given) != 1:
        options = ", ".join(option for option, _, _ in _OPTIONS.values())
        told = ", ".join(_OPTIONS[question][0] for question in given) or "nothing"
        raise InputFault((InputProblem("", "answer", told, f"name one other answer: {options}"),))
    ((question, text),) = given.items()
    return WhatIf(question, value_named(question, text, _OPTIONS[question][0]), tuple(arguments.position))


def _print(found: WhatIfResult, story: Story, *, as_json: bool) -> None:
    if as_json:
        from spoutline.documents.json.what_if import what_if_json

        write_standard_output(what_if_json(found))
        return
    from spoutline.cli.plan_text import printable
    from spoutline.cli.what_if_text import what_if_lines

    write_standard_output("".join(f"{printable(line)}\n" for line in what_if_lines(found, story)))


WORK = CommandWork(_arguments, _run)
