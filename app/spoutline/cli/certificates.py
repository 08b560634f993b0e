"""`record certificate`: certificates of bond and leak tests, made of what the book holds."""

from __future__ import annotations

import argparse
from typing import TYPE_CHECKING

from spoutline.cli.command import add_survey, display_of, json_display
from spoutline.cli.exit_code import ExitCode
from spoutline.cli.files import read_survey, write_standard_output
from spoutline.cli.mail import MakePaper, paper_file
from spoutline.cli.outputs import OutputArguments
from spoutline.cli.sets import add_sets, sets_of
from spoutline.cli.typed import day_of
from spoutline.model.agreed_sets import SetsSource
from spoutline.model.certificate import CertifiedTest
from spoutline.model.faults import InputFault, InputProblem
from spoutline.model.language import Language
from spoutline.model.record import ReadingVerdict

if TYPE_CHECKING:
    from pathlib import Path

    from spoutline.bootstrap import Workbench
    from spoutline.model.plan import SitePlan


def certificate_arguments(parser: argparse.ArgumentParser) -> None:
    """Declare the arguments."""
    add_survey(parser)
    add_sets(parser)
    outputs = OutputArguments(parser)
    outputs.add_paper("--bond", "write what was measured in the bond test here, a page for each dispenser")
    outputs.add_paper("--leak", "write what was found in the leak test here, a page for each dispenser")
    parser.add_argument("--json", action="store_true", help="print a JSON document instead of a text")
    parser.add_argument(
        "--position", metavar="LABEL", action="append", default=[], help="only this position; may be repeated"
    )
    parser.add_argument(
        "--dispenser", metavar="NAME", action="append", default=[], help="only this dispenser; may be repeated"
    )
    parser.add_argument("--dated", metavar="YYYY-MM-DD", help="date printed on the paper; none where not given")


def write_certificates(workbench: Workbench, arguments: argparse.Namespace) -> ExitCode:
    """Write the certificates asked for, with ``--json`` print them; exit 1 where a reading is out of its limit."""
    from spoutline.documents.pack.certificate import certificates_json

    outputs: dict[CertifiedTest, Path | None] = {
        CertifiedTest.BOND: arguments.bond,
        CertifiedTest.LEAK: arguments.leak,
    }
    asked = tuple(test for test, path in outputs.items() if path is not None)
    if not asked and not arguments.json:
        raise InputFault((InputProblem("", "--bond", "nothing", "name a file with --bond or --leak, or --json"),))
    dated = day_of(arguments.dated, "--dated")
    survey = read_survey(arguments.survey)
    arguments.sets = arguments.sets or SetsSource.BUILT.value
    site_plan = _chosen(sets_of(workbench, survey, arguments, with_alternatives=False), arguments)
    service, display = workbench.packing(), display_of(arguments, workbench, survey.site.jurisdiction)
    found = [one for test in asked or tuple(CertifiedTest) for one in service.certificates(site_plan, test)]
    language = workbench.language

    def making(test: CertifiedTest) -> MakePaper:
        return lambda form: service.certificate(site_plan, test, language, display, dated, form=form)

    contents = {path: paper_file(workbench, path, making(test)) for test, path in outputs.items() if path is not None}
    arguments.output_plan.write(contents)
    if arguments.json:
        english = service.words(Language.ENGLISH, json_display()).story
        write_standard_output(certificates_json(found, site_plan, english).decode())
    is_outside = any(row.judged.verdict is ReadingVerdict.OUTSIDE for one in found for row in one.rows)
    return ExitCode.DOES_NOT_FIT if is_outside else ExitCode.FITS


def _chosen(site_plan: SitePlan, arguments: argparse.Namespace) -> SitePlan:
    """Return the plan with the positions and dispensers named alone; raise ``InputFault`` for one that is none."""
    from spoutline.book.choices import not_one_of
    from spoutline.planning.pack.picked import only_positions

    labels = list(arguments.position)
    for name in arguments.dispenser:
        inside = [plan.position.label for plan in site_plan.positions if plan.position.dispenser == name]
        if not inside:
            known = tuple(dict.fromkeys(plan.position.dispenser for plan in site_plan.positions))
            raise not_one_of(name, known, field="dispenser")
        labels.extend(inside)
    return only_positions(site_plan, tuple(labels))
