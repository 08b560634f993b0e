"""`schema`: print the JSON Schema of a survey, or of a document that a command prints."""

from __future__ import annotations

import argparse
import json
from importlib import import_module
from typing import TYPE_CHECKING

from spoutline.cli.command import CommandWork
from spoutline.cli.exit_code import ExitCode
from spoutline.cli.files import write_standard_output

if TYPE_CHECKING:
    from pydantic import BaseModel

    from spoutline.bootstrap import Workbench

DIALECT = "https://json-schema.org/draft/2020-12/schema"


# what other commands print, by the name that --output takes: where its document is declared
_DOCUMENTS = {
    "plan": ("plan", "PlanDocument"),
    "substitutes": ("substitutes", "SubstitutesDocument"),
    "why": ("why", "WhyDocument"),
    "measure": ("measure", "MeasureDocument"),
    "whatif": ("what_if", "WhatIfDocument"),
    "whatif-matrix": ("what_if_matrix", "WhatIfMatrixDocument"),
    "weigh": ("front", "FrontDocument"),
    "weigh-station": ("front", "StationFrontDocument"),
}


def _arguments(parser: argparse.ArgumentParser) -> None:
    parser.add_argument(
        "--output",
        choices=tuple(_DOCUMENTS),
        nargs="?",
        const="plan",
        help="the schema of what `plan --json`, or another command with --json, prints",
    )


def _run(_workbench: Workbench, arguments: argparse.Namespace) -> ExitCode:
    if arguments.output:
        module, name = _DOCUMENTS[arguments.output]
        write_standard_output(schema_text(getattr(import_module(f"spoutline.documents.json.{module}"), name)))
    else:
        from spoutline.model.survey import Survey

        write_standard_output(schema_text(Survey))
    return ExitCode.FITS


def schema_text(model: type[BaseModel]) -> str:
    """Return the JSON Schema of ``model`` as indented text."""
    return json.dumps({"$schema": DIALECT, **model.model_json_schema()}, indent=2, ensure_ascii=False) + "\n"


WORK = CommandWork(_arguments, _run)
