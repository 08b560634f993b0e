"""`drawing`: the drawing of one position as a picture, with its words for those who cannot see it."""

from __future__ import annotations

import argparse
from typing import TYPE_CHECKING

from spoutline.cli.command import CommandWork, add_survey, display_of
from spoutline.cli.exit_code import ExitCode
from spoutline.cli.files import read_survey, write_standard_output
from spoutline.cli.outputs import OutputArguments
from spoutline.documents.own_files import FileForm
from spoutline.model.faults import InputFault, InputProblem
from spoutline.model.worded import Worded

if TYPE_CHECKING:
    from spoutline.bootstrap import Workbench

_FORMS = {".svg": FileForm.SVG, ".png": FileForm.PNG}
_COARSEST, _FINEST = 36, 600  # dots per inch


def _arguments(parser: argparse.ArgumentParser) -> None:
    add_survey(parser)
    parser.add_argument("position", metavar="POSITION", help="label of a position of the survey")
    outputs = OutputArguments(parser)
    outputs.add("--out", _form, "write the drawing to a file that ends with .svg or .png")
    parser.add_argument(
        "--dpi",
        metavar="N",
        type=int,
        default=150,
        help=f"dots per inch of a PNG, from {_COARSEST} to {_FINEST}; default 150",
    )


def _run(workbench: Workbench, arguments: argparse.Namespace) -> ExitCode:
    from spoutline.cli.answer import printable
    from spoutline.documents.drawing.position import position_drawing

    if not _COARSEST <= arguments.dpi <= _FINEST:
        wanted = Worded("a whole number from {coarsest} to {finest}", coarsest=_COARSEST, finest=_FINEST)
        raise InputFault((InputProblem("", "--dpi", str(arguments.dpi), wanted),))
    survey = read_survey(arguments.survey)
    plan = workbench.plan_position(survey, arguments.position)
    story = workbench.story(display_of(arguments, workbench, survey.site.jurisdiction))
    drawing = position_drawing(plan, story)
    if arguments.out is not None:
        if _form(arguments) is FileForm.SVG:
            from spoutline.documents.html.svg import drawing_file

            content = drawing_file(drawing)
        else:
            from spoutline.documents.pdf.picture import drawing_png

            content = drawing_png(drawing, arguments.dpi)
        arguments.output_plan.write({arguments.out: content})
    lines = (f"{drawing.title}: {story.marked_verdict(plan)}", drawing.description, *drawing.notes)
    write_standard_output("".join(f"{printable(line)}\n" for line in lines))
    return ExitCode.FITS if plan.keeps_every_must else ExitCode.DOES_NOT_FIT


def _form(arguments: argparse.Namespace) -> FileForm:
    form = _FORMS.get(arguments.out.suffix.lower())
    if form is None:
        raise InputFault((InputProblem("", "--out", str(arguments.out), "a name that ends with .svg or .png"),))
    return form


WORK = CommandWork(_arguments, _run)
