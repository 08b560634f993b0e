"""`plan`: print requirement, set, alternatives, findings and checks of every position."""

from __future__ import annotations

import argparse
from typing import TYPE_CHECKING

from spoutline.cli.command import CommandWork, add_survey, display_of, json_display
from spoutline.cli.exit_code import ExitCode
from spoutline.cli.files import read_survey, write_standard_output
from spoutline.cli.progress import TerminalProgress
from spoutline.model.language import Language

if TYPE_CHECKING:
    from spoutline.bootstrap import Workbench
    from spoutline.model.plan import SitePlan


def _arguments(parser: argparse.ArgumentParser) -> None:
    add_survey(parser)
    parser.add_argument("--json", action="store_true", help="print the plan document; `schema --output` describes it")


def _run(workbench: Workbench, arguments: argparse.Namespace) -> ExitCode:
    survey = read_survey(arguments.survey)
    site_plan = workbench.plan_site(survey, TerminalProgress())
    if arguments.json:
        from spoutline.documents.json.plan_export import plan_json

        write_standard_output(plan_json(site_plan, workbench.story(json_display(), Language.ENGLISH)))
    else:
        from spoutline.cli.plan_text import site_text

        story = workbench.story(display_of(arguments, workbench, survey.site.jurisdiction))
        namesakes = workbench.parts().namesakes(site_plan.refs, site_plan.survey)
        write_standard_output(site_text(site_plan, story, namesakes))
    return outcome_of(site_plan)


def outcome_of(site_plan: SitePlan) -> ExitCode:
    """Return whether every position has a set without a broken must."""
    kept = all(plan.keeps_every_must for plan in site_plan.positions)
    return ExitCode.FITS if kept else ExitCode.DOES_NOT_FIT


WORK = CommandWork(_arguments, _run)
