"""`whatif`: show what another answer would do, today and then side by side, before anybody accepts it."""

from __future__ import annotations

import argparse
import sys
from functools import partial
from typing import TYPE_CHECKING

from spoutline.cli.command import CommandWork, add_survey, display_of
from spoutline.cli.exit_code import ExitCode
from spoutline.cli.files import read_survey, write_standard_output
from spoutline.cli.mail import add_paper, paper_files
from spoutline.cli.outputs import OutputArguments
from spoutline.cli.progress import TerminalProgress
from spoutline.cli.sets import add_sets, sets_of
from spoutline.cli.typed import day_of
from spoutline.cli.voice import said
from spoutline.documents.own_files import FileForm
from spoutline.model.faults import InputFault, InputProblem
from spoutline.model.what_if import WhatIf, WhatIfQuestion
from spoutline.model.worded import Worded

if TYPE_CHECKING:
    from collections.abc import Sequence

    from spoutline.bootstrap import Workbench
    from spoutline.explain.plan.story import Story
    from spoutline.model.what_if import WhatIfResult

_OPTIONS = {
    WhatIfQuestion.BLEND: (
        "--blend",
        "BLEND",
        "another blend: E15, E85, B20; given again, answers stand side by side",
    ),
    WhatIfQuestion.DUTY: ("--duty", "DUTY", "another duty: car, truck, marine, reel"),
    WhatIfQuestion.OUTLET: (
        "--outlet",
        "OUTLET",
        "another outlet of the dispenser: npt_1, coaxial_balance, or such as '1 1/2 NPT male'",
    ),
    WhatIfQuestion.VAPOUR: ("--vapor", "STATUS", "other vapor recovery: none, balance, vacuum_assist"),
    WhatIfQuestion.JURISDICTION: ("--jurisdiction", "ID", "other local rules; see `profile list`"),
    WhatIfQuestion.CATALOGUE: ("--edition", "NAME[@EDITION]", "another catalog, or another edition of it"),
}


def _arguments(parser: argparse.ArgumentParser) -> None:
    add_survey(parser)
    for question, (option, shown, words) in _OPTIONS.items():
        parser.add_argument(option, metavar=shown, dest=f"if_{question.value}", action="append", default=[], help=words)
    parser.add_argument(
        "--position",
        metavar="LABEL",
        action="append",
        default=[],
        help="change the answer of this position alone; may be given more than once; default: the whole station",
    )
    parser.add_argument(
        "--lasting",
        action="store_true",
        help="find the cheapest sets for the answers of today that keep every must of the blend named too",
    )
    add_sets(parser)
    parser.add_argument(
        "--json",
        action="store_true",
        help="print the document; `schema --output` describes it: whatif, of several answers whatif-matrix",
    )
    outputs = OutputArguments(parser)
    add_paper(outputs, "write today and then side by side here, several answers on one page")
    outputs.add("--accept", FileForm.JSON, "write the survey with the other answer here")
    parser.add_argument("--dated", metavar="YYYY-MM-DD", help="date printed on the paper; none where not given")


def _run(workbench: Workbench, arguments: argparse.Namespace) -> ExitCode:
    from spoutline.planning.what_if.answer import WhatIfListening

    asked = answers_of(arguments)
    if len(asked) > 1:
        return _compare(workbench, asked, arguments)
    dated = day_of(arguments.dated, "--dated")
    survey = read_survey(arguments.survey)
    before = sets_of(workbench, survey, arguments)
    service = workbench.what_if()
    found = service.ask(before, asked[0], WhatIfListening(TerminalProgress("{done} of {total} positions looked at")))
    story = workbench.story(display_of(arguments, workbench, survey.site.jurisdiction))
    contents = paper_files(workbench, arguments, partial(service.paper, found, story, dated))
    if arguments.accept is not None:
        from spoutline.book.survey_text import survey_to_json

        contents[arguments.accept] = survey_to_json(found.changed).encode()
    with arguments.output_plan.staged(contents) as files:
        files.place()
    _print(found, story, as_json=arguments.json)
    for path in contents:
        sys.stderr.write(f"{said('written to {path}', path=path)}\n")
    kept = all(one.after.keeps_every_must for one in found.positions)
    return ExitCode.FITS if kept else ExitCode.DOES_NOT_FIT


def _compare(workbench: Workbench, asked: Sequence[WhatIf], arguments: argparse.Namespace) -> ExitCode:
    """Tell several answers side by side."""
    from spoutline.planning.what_if.matrix import check_several

    if arguments.lasting:
        raise InputFault(
            (InputProblem("", "--lasting", Worded("{count} answers", count=len(asked)), "name one blend alone"),)
        )
    if arguments.accept is not None:
        wanted = "name one answer alone to write the survey with it"
        raise InputFault((InputProblem("", "--accept", Worded("{count} answers", count=len(asked)), wanted),))
    check_several(asked)
    dated = day_of(arguments.dated, "--dated")
    survey = read_survey(arguments.survey)
    service, before = workbench.what_if(), sets_of(workbench, survey, arguments)
    found = service.ask_several(before, asked, TerminalProgress("{done} of {total} positions looked at"))
    story = workbench.story(display_of(arguments, workbench, survey.site.jurisdiction))
    contents = paper_files(workbench, arguments, partial(service.matrix_paper, found, story, dated))
    with arguments.output_plan.staged(contents) as files:
        files.place()
    for path in contents:
        sys.stderr.write(f"{said('written to {path}', path=path)}\n")
    if arguments.json:
        from spoutline.documents.json.what_if_matrix import what_if_matrix_json

        write_standard_output(what_if_matrix_json(found))
    else:
        from spoutline.cli.answer import printable
        from spoutline.cli.what_if_matrix_text import matrix_lines

        write_standard_output("".join(f"{printable(line)}\n" for line in matrix_lines(found, story)))
    return ExitCode.DOES_NOT_FIT if any(one.without_set for one in found.sums) else ExitCode.FITS


def answers_of(arguments: argparse.Namespace) -> tuple[WhatIf, ...]:
    """Return the other answers to one question that were named; raise ``InputFault`` for none, or one that is none."""
    from spoutline.planning.what_if.answers import value_named

    named = {question: getattr(arguments, f"if_{question.value}") for question in _OPTIONS}
    given = {question: texts for question, texts in named.items() if texts}
    if len(given) != 1:
        options = ", ".join(option for option, _, _ in _OPTIONS.values())
        told = ", ".join(_OPTIONS[question][0] for question in given) or "nothing"
        needed = Worded("name one other answer, or several to one question: {options}", options=options)
        raise InputFault((InputProblem("", "answer", told, needed),))
    ((question, texts),) = given.items()
    if arguments.lasting and question is not WhatIfQuestion.BLEND:
        told, wanted = _OPTIONS[question][0], "sets last for a later liquid: name it with --blend"
        raise InputFault((InputProblem("", "--lasting", told, wanted),))
    option, labels, lasting = _OPTIONS[question][0], tuple(arguments.position), bool(arguments.lasting)
    return tuple(WhatIf(question, value_named(question, text, option), labels, lasting) for text in texts)


def _print(found: WhatIfResult, story: Story, *, as_json: bool) -> None:
    if as_json:
        from spoutline.documents.json.what_if import what_if_json

        write_standard_output(what_if_json(found))
        return
    from spoutline.cli.answer import printable
    from spoutline.cli.what_if_text import what_if_lines

    write_standard_output("".join(f"{printable(line)}\n" for line in what_if_lines(found, story)))


WORK = CommandWork(_arguments, _run)
