"""`weigh`: the sets that no other outdoes on the axes named, of a position, or the price of a station against one."""

from __future__ import annotations

import argparse
import sys
from pathlib import Path
from typing import TYPE_CHECKING

from spoutline.cli.command import CommandWork, add_survey, display_of
from spoutline.cli.exit_code import ExitCode
from spoutline.cli.files import read_survey, write_standard_output
from spoutline.cli.mail import add_paper, paper_files
from spoutline.cli.outputs import InputFile, OutputArguments
from spoutline.cli.progress import TerminalProgress
from spoutline.cli.typed import day_of
from spoutline.cli.voice import said
from spoutline.documents.own_files import FileForm
from spoutline.model.faults import InputFault, InputProblem
from spoutline.model.worded import Worded

if TYPE_CHECKING:
    from spoutline.bootstrap import Workbench
    from spoutline.model.front import FrontAxis, PositionFront, StationFront
    from spoutline.model.plan import SitePlan
    from spoutline.model.quotation_terms import Terms
    from spoutline.model.survey import Survey

_AXES = "price,lead,flow"


def _arguments(parser: argparse.ArgumentParser) -> None:
    add_survey(parser)
    parser.add_argument(
        "position", metavar="POSITION", nargs="?", help="label of a position; without one, the whole station"
    )
    parser.add_argument(
        "--axes",
        metavar="AXES",
        default="",
        help="up to three of price, lead, flow, mass, permeation, yearly, practice with commas between; "
        "of a station, price and one other; default: price,lead,flow, of a station price,lead",
    )
    parser.add_argument(
        "--free",
        action="store_true",
        help="leave aside the parts asked for there, so that others can take their places",
    )
    parser.add_argument(
        "--terms",
        metavar="TERMS.toml",
        type=Path,
        action=InputFile,
        words="the file of the terms",
        help="terms whose figures the axis yearly takes: drive-offs, service lives, price of the liquid, spares",
    )
    parser.add_argument(
        "--json",
        action="store_true",
        help="print the document; `schema --output` describes it: weigh, of a station weigh-station",
    )
    parser.add_argument(
        "--take", metavar="NUMBER", type=int, help="number of a line: --accept then asks for the parts of that set"
    )
    parser.add_argument(
        "--agree", metavar="NUMBER", type=int, help="number of a line: its sets are agreed on in the book"
    )
    parser.add_argument("--by", metavar="NAME", default="", help="who agrees")
    parser.add_argument("--reason", metavar="TEXT", default="", help="why; kept with the agreement")
    outputs = OutputArguments(parser)
    add_paper(outputs, "write chart and table here")
    outputs.add("--accept", FileForm.JSON, "write the survey that asks for the parts of the set taken here")
    parser.add_argument("--dated", metavar="YYYY-MM-DD", help="date printed on the paper; none where not given")


def _check_wishes(arguments: argparse.Namespace) -> None:
    """Refuse what a set is taken or agreed on by where half of it is missing, or both are wanted."""
    wrong = []
    if (arguments.take is None) != (arguments.accept is None):
        wanted = "name the number of a line with --take and the file for the survey with --accept"
        wrong.append(InputProblem("", "--take", repr(arguments.take), wanted))
    if (arguments.agree is None) != (not arguments.by):
        wanted = "name the number of a line with --agree and who agrees with --by"
        wrong.append(InputProblem("", "--agree", repr(arguments.agree), wanted))
    if arguments.take is not None and arguments.agree is not None:
        wrong.append(InputProblem("", "--agree", str(arguments.agree), "write either --take or --agree, not both"))
    if wrong:
        raise InputFault(tuple(wrong))


def _run(workbench: Workbench, arguments: argparse.Namespace) -> ExitCode:
    _check_wishes(arguments)
    dated = day_of(arguments.dated, "--dated")
    survey = read_survey(arguments.survey)
    terms = None if arguments.terms is None else workbench.quoting().terms().read_terms(arguments.terms)
    found = _found(workbench, survey, arguments, terms)
    story = workbench.story(display_of(arguments, workbench, survey.site.jurisdiction))
    picked = None if arguments.agree is None else _picked(workbench, survey, found, arguments.agree)
    contents = paper_files(
        workbench, arguments, lambda form: workbench.weighing().paper(survey, found, story, dated, form)
    )
    if arguments.accept is not None:
        from spoutline.book.survey_text import survey_to_json

        contents[arguments.accept] = survey_to_json(_taken(survey, found, arguments.take)).encode()
    told = [said("written to {path}", path=path) for path in contents]
    with arguments.output_plan.staged(contents) as files:
        if picked is not None:
            from spoutline.cli.agree import entry_line

            entry = workbench.agreeing().agree_picked(picked, by=arguments.by, reason=arguments.reason)
            told.append(entry_line(entry, story))
        files.place()
    if arguments.json:
        _print_json(workbench, survey, found)
    else:
        from spoutline.cli.answer import printable
        from spoutline.cli.weigh_text import weigh_lines

        write_standard_output("".join(f"{printable(line)}\n" for line in weigh_lines(found, story)))
    sys.stderr.write("".join(f"{line}\n" for line in told))
    return ExitCode.FITS if found.points else ExitCode.DOES_NOT_FIT


def _found(
    workbench: Workbench, survey: Survey, arguments: argparse.Namespace, terms: Terms | None
) -> PositionFront | StationFront:
    from spoutline.planning.weighing.asking import axes_named

    service = workbench.weighing()
    if arguments.position is not None:
        axes = axes_named(arguments.axes or _AXES, "--axes")
        listening = TerminalProgress("{done} of {total} sets looked at")
        return service.position(survey, arguments.position, axes, free=arguments.free, terms=terms, progress=listening)
    axis = _other_axis(axes_named(arguments.axes or "price,lead", "--axes"), arguments.axes)
    listening = TerminalProgress("{done} of {total} positions looked at")
    return service.station(survey, axis, free=arguments.free, terms=terms, progress=listening)


def _other_axis(axes: tuple[FrontAxis, ...], written: str) -> FrontAxis:
    """Return the axis beside the price; raise ``InputFault`` where not exactly one is named."""
    from spoutline.model.front import FrontAxis

    others = [axis for axis in axes if axis is not FrontAxis.PRICE]
    if len(axes) != 2 or len(others) != 1:
        wanted = "of a station name price and one other, such as price,lead; or name a position"
        raise InputFault((InputProblem("", "--axes", repr(written), wanted),))
    return others[0]


def _taken(survey: Survey, found: PositionFront | StationFront, number: int) -> Survey:
    from spoutline.model.front import PositionFront
    from spoutline.planning.weighing.taking import station_taking, survey_taking

    _check_number(found, number, "--take")
    if isinstance(found, PositionFront):
        return survey_taking(survey, (found.label,), found.points[number - 1])
    return station_taking(found, found.points[number - 1])


def _picked(workbench: Workbench, survey: Survey, found: PositionFront | StationFront, number: int) -> SitePlan:
    _check_number(found, number, "--agree")
    return workbench.weighing().picked_sets(survey, found, number - 1)


def _check_number(found: PositionFront | StationFront, number: int, option: str) -> None:
    if not 1 <= number <= len(found.points):
        wanted = Worded("use a number from 1 to {count}", count=len(found.points))
        raise InputFault((InputProblem("", option, str(number), wanted),))


def _print_json(workbench: Workbench, survey: Survey, found: PositionFront | StationFront) -> None:
    from spoutline.documents.json.front import front_json, station_front_json
    from spoutline.model.front import PositionFront

    if isinstance(found, PositionFront):
        write_standard_output(front_json(found, workbench.provenance(survey)))
    else:
        write_standard_output(station_front_json(found))


WORK = CommandWork(_arguments, _run)
