"""`profile`: list, show, copy, change, compare, publish, export, import and remove jurisdictions."""

from __future__ import annotations

import argparse
from datetime import date
from functools import partial
from pathlib import Path
from typing import TYPE_CHECKING

from spoutline.cli.command import CommandWork, display_of, shared_options
from spoutline.cli.exit_code import ExitCode
from spoutline.cli.files import STANDARD_INPUT, read_standard_input, write_standard_output
from spoutline.cli.mail import add_paper, paper_files
from spoutline.cli.outputs import InputFile, OutputArguments
from spoutline.cli.profile_editions import RULE_ACTIONS, add_rule_actions
from spoutline.cli.voice import said
from spoutline.documents.own_files import FileForm
from spoutline.input_bounds.bounds import BOUNDS
from spoutline.input_bounds.reading import bounded_bytes
from spoutline.model.faults import InputFault, InputProblem
from spoutline.model.worded import Worded
from spoutline.ruletables.profiles import profile_from_toml, profile_to_toml

if TYPE_CHECKING:
    from spoutline.bootstrap import Workbench
    from spoutline.explain.plan.story import Story
    from spoutline.model.limit import Jurisdiction


def _arguments(parser: argparse.ArgumentParser) -> None:
    actions = parser.add_subparsers(dest="action", required=True, metavar="ACTION")
    actions.add_parser("list", help="list all jurisdictions", parents=[shared_options()])
    show = actions.add_parser(
        "show", help="print every limit of a jurisdiction with its source and status", parents=[shared_options()]
    )
    show.add_argument("id", metavar="ID")
    copy = actions.add_parser("copy", help="make an own jurisdiction from another, to edit", parents=[shared_options()])
    copy.add_argument("id", metavar="ID")
    copy.add_argument("new_id", metavar="NEW_ID")
    copy.add_argument("--title", metavar="TEXT", help="title of the copy")
    export = actions.add_parser(
        "export", help="print a jurisdiction as a file that can be edited and imported", parents=[shared_options()]
    )
    export.add_argument("id", metavar="ID")
    outputs = OutputArguments(export)
    outputs.add("--out", FileForm.TOML, "write to this file instead of standard output")
    add_paper(outputs, "write every limit with its source as a paper, instead of standard output")
    take = actions.add_parser(
        "import", help="check an edited jurisdiction file and keep it", parents=[shared_options()]
    )
    take.add_argument(
        "file",
        metavar="FILE",
        action=InputFile,
        words="the jurisdiction file",
        help="jurisdiction file, or - for standard input",
    )
    add_rule_actions(actions, shared_options)
    remove = actions.add_parser("remove", help="delete an own jurisdiction", parents=[shared_options()])
    remove.add_argument("id", metavar="ID")


def _run(workbench: Workbench, arguments: argparse.Namespace) -> ExitCode:
    service = workbench.jurisdictions()
    if arguments.action in RULE_ACTIONS:
        return RULE_ACTIONS[arguments.action](workbench, arguments)
    if arguments.action == "list":
        story = workbench.story(display_of(arguments, workbench))
        write_standard_output("".join(f"{_line(profile, story)}\n" for profile in service.all()))
    elif arguments.action == "show":
        profile = service.one(arguments.id)
        write_standard_output(_limits(profile, workbench.story(display_of(arguments, workbench, profile.id))))
    elif arguments.action == "copy":
        title = arguments.title or said("Copy of {title}", title=service.one(arguments.id).title)
        profile = service.copy(arguments.id, arguments.new_id, title)
        write_standard_output(f"{service.save(profile)}\n")
    elif arguments.action == "export":
        _export(workbench, service.one(arguments.id), arguments)
    elif arguments.action == "import":
        write_standard_output(f"{service.save(_read(arguments.file))}\n")
    else:
        service.remove(arguments.id)
    return ExitCode.FITS


def _line(profile: Jurisdiction, story: Story) -> str:
    origin = said("built in") if profile.built_in else said("own")
    title = story.phrases.tell(profile.title)
    return f"{profile.id}  ({origin})  {said('{title}, edition {edition}', title=title, edition=profile.edition)}"


def _limits(profile: Jurisdiction, story: Story) -> str:
    lines, tell = [_line(profile, story)], story.phrases.tell
    for limit in profile.limits:
        printed = f"{limit.printed} {limit.printed_unit}".strip() or said("no figure")
        lines.append(
            f"{limit.id}: {printed}  [{story.word(limit.status)}]  {tell(limit.title)}. {story.limit_source(limit)}"
        )
    lines += [said("Ask: {question}", question=tell(question)) for question in profile.questions]
    return "\n".join(lines) + "\n"


def _export(workbench: Workbench, profile: Jurisdiction, arguments: argparse.Namespace) -> None:
    written: dict[Path, bytes] = {}
    if arguments.out is not None:
        written[arguments.out] = profile_to_toml(profile).encode("utf-8")
    story, today = workbench.story(display_of(arguments, workbench, profile.id)), date.today()
    written |= paper_files(workbench, arguments, partial(workbench.jurisdictions().pdf, profile.id, story, today))
    if written:
        arguments.output_plan.write(written)
    else:
        write_standard_output(profile_to_toml(profile))


def _read(name: str) -> Jurisdiction:
    place = "standard input" if name == STANDARD_INPUT else name
    needed = "a readable jurisdiction file is needed"
    raw = (
        read_standard_input()
        if name == STANDARD_INPUT
        else bounded_bytes(Path(name), BOUNDS.toml_bytes, "file", needed)
    )
    try:
        return profile_from_toml(raw.decode("utf-8-sig"), place)
    except UnicodeDecodeError as fault:
        wanted = "the file must be UTF-8 text"
        raise InputFault(
            (InputProblem(place, "encoding", Worded("byte {start}", start=fault.start), wanted),)
        ) from fault


WORK = CommandWork(_arguments, _run)
