"""`schema`: print the JSON Schema of a survey, or of a document that a command prints."""

from __future__ import annotations

import argparse
import json
from typing import TYPE_CHECKING

from spoutline.cli.command import CommandWork
from spoutline.cli.exit_code import ExitCode
from spoutline.cli.files import write_standard_output

if TYPE_CHECKING:
    from pydantic import BaseModel

    from spoutline.bootstrap import Workbench

DIALECT = "https://json-schema.org/draft/2020-12/schema"


def _arguments(parser: argparse.ArgumentParser) -> None:
    parser.add_argument(
        "--output",
        choices=("plan", "substitutes", "why", "measure"),
        nargs="?",
        const="plan",
        help="the schema of what `plan --json`, or another command with --json, prints",
    )


def _run(_workbench: Workbench, arguments: argparse.Namespace) -> ExitCode:
    if arguments.output == "substitutes":
        from spoutline.documents.json.substitutes import SubstitutesDocument

        write_standard_output(schema_text(SubstitutesDocument))
    elif arguments.output == "why":
        from spoutline.documents.json.why import WhyDocument

        write_standard_output(schema_text(WhyDocument))
    elif arguments.output == "measure":
        from spoutline.documents.json.measure import MeasureDocument

        write_standard_output(schema_text(MeasureDocument))
    elif arguments.output:
        from spoutline.documents.json.plan import PlanDocument

        write_standard_output(schema_text(PlanDocument))
    else:
        from spoutline.model.survey import Survey

        write_standard_output(schema_text(Survey))
    return ExitCode.FITS


def schema_text(model: type[BaseModel]) -> str:
    """Return the JSON Schema of ``model`` as indented text."""
    return json.dumps({"$schema": DIALECT, **model.model_json_schema()}, indent=2, ensure_ascii=False) + "\n"


WORK = CommandWork(_arguments, _run)
