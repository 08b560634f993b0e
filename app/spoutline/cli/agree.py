"""`agree` and `agreed`: agree on the sets of a survey, and read what was agreed."""

from __future__ import annotations

import argparse
import json
import sys
from collections.abc import Iterator, Mapping, Sequence
from typing import TYPE_CHECKING

from spoutline.cli.command import CommandWork, add_survey, display_of
from spoutline.cli.exit_code import ExitCode
from spoutline.cli.files import read_survey, write_standard_output
from spoutline.cli.progress import TerminalProgress
from spoutline.cli.voice import counted, said
from spoutline.model.faults import InputFault, InputProblem
from spoutline.model.part_ref import told_apart
from spoutline.model.worded import Worded

if TYPE_CHECKING:
    from spoutline.bootstrap import Workbench
    from spoutline.bootstrap.agreements import AgreementService
    from spoutline.explain.plan.story import Story
    from spoutline.model.agreed_sets import AgreedSets
    from spoutline.model.survey import Survey
    from spoutline.planning.agreement.comparison import SetsByLabel
    from spoutline.planning.agreement.matching import AgreementLine


def _agree_arguments(parser: argparse.ArgumentParser) -> None:
    add_survey(parser)
    parser.add_argument(
        "--from", dest="source", metavar="SETS", help="sets to agree on: plan, convert or quotation:ID[:OPTION]"
    )
    parser.add_argument("--undo", action="store_true", help="take the last agreement back instead")
    parser.add_argument("--by", metavar="NAME", required=True, help="who agrees")
    parser.add_argument("--reason", metavar="TEXT", default="", help="why; kept with the agreement")
    parser.add_argument(
        "--position", metavar="LABEL", action="append", default=[], help="only this position; may be repeated"
    )


def _agree(workbench: Workbench, arguments: argparse.Namespace) -> ExitCode:
    service, survey = workbench.agreeing(), read_survey(arguments.survey)
    if arguments.undo == (arguments.source is not None):
        raise InputFault((InputProblem("", "--from", "nothing", "name the sets with --from, or write --undo"),))
    if arguments.undo:
        entry = service.withdraw(survey, arguments.by, arguments.reason)
    else:
        entry = service.agree(
            survey,
            arguments.source,
            by=arguments.by,
            reason=arguments.reason,
            only=tuple(arguments.position),
            progress=TerminalProgress(),
        )
    write_standard_output(f"{entry_line(entry, _story(workbench, arguments, survey))}\n")
    return ExitCode.FITS


def _story(workbench: Workbench, arguments: argparse.Namespace, survey: Survey) -> Story:
    return workbench.story(display_of(arguments, workbench, survey.site.jurisdiction))


def entry_line(entry: AgreedSets, story: Story) -> str:
    """Return an entry of the history in one line."""
    from spoutline.explain.plan.agreed_words import entry_source, entry_word

    count = sum(bool(one.set) for one in entry.positions)
    sets = counted("no sets", "{count} set", "{count} sets", count=count) if entry.positions else ""
    told = "; ".join(text for text in (entry_source(entry, story), sets, entry.origin.reason) if text)
    head = f"{entry.serial:>3}  {entry_word(entry, story)}  {entry.agreed_at:%Y-%m-%d %H:%M} UTC  {entry.origin.by}"
    return f"{head}{story.writing.colon} {told}" if told else head


def _agreed_arguments(parser: argparse.ArgumentParser) -> None:
    add_survey(parser)
    shown = parser.add_mutually_exclusive_group()
    shown.add_argument("--json", action="store_true", help="print the agreed sets as a document for --sets file:PATH")
    shown.add_argument("--history", action="store_true", help="list every agreement and withdrawal")
    shown.add_argument(
        "--compare",
        nargs="+",
        metavar="SETS",
        help="print sets side by side where they differ: numbers of the history, plan, agreed, built, "
        "quotation:ID[:OPTION] or file:PATH; two or more",
    )


def _agreed(workbench: Workbench, arguments: argparse.Namespace) -> ExitCode:
    service, survey = workbench.agreeing(), read_survey(arguments.survey)
    matched = service.match(survey)
    if arguments.compare:
        columns = _columns(service, survey, matched.line, arguments.compare)
        write_standard_output("".join(f"{line}\n" for line in difference_lines(columns, survey)))
        return ExitCode.FITS
    if matched.line is None:
        told = (
            said("sets were agreed for a survey of this name, but it is not sure that it is this one")
            if matched.doubtful
            else said("nothing was agreed for this survey")
        )
        sys.stderr.write(f"spoutline: {told}\n")
        return ExitCode.DOES_NOT_FIT
    if arguments.history:
        story = _story(workbench, arguments, survey)
        write_standard_output("".join(f"{entry_line(one, story)}\n" for one in matched.line.entries))
        return ExitCode.FITS
    agreed = matched.line.agreed
    if agreed is None:
        sys.stderr.write(f"spoutline: {said('what was agreed for this survey was taken back')}\n")
        return ExitCode.DOES_NOT_FIT
    if arguments.json:
        write_standard_output(agreed_json(agreed))
    else:
        lines = [entry_line(agreed, _story(workbench, arguments, survey))]
        station = [part.ref for part in agreed.parts]
        for one in agreed.positions:
            hanging = told_apart((link.ref for link in one.set), station)
            lines.append(f"  {one.label}: {', '.join(hanging) or '-'}")
        write_standard_output("".join(f"{line}\n" for line in lines))
    return ExitCode.FITS


def agreed_json(agreed: AgreedSets) -> str:
    """Return agreed sets as an indented JSON text."""
    return json.dumps(agreed.model_dump(mode="json"), indent=2, ensure_ascii=False) + "\n"


def difference_lines(columns: Mapping[str, SetsByLabel], survey: Survey) -> Iterator[str]:
    """Return the sets of each position that differ, a line for each column, then how many positions do."""
    from spoutline.planning.agreement.comparison import compared

    found = compared(tuple(columns.values()), [one.label for one in survey.positions])
    width = max(map(len, columns))
    for position in found:
        if not position.differs:
            continue
        yield f"{position.label}:"
        all_parts = [link.ref for links in position.sets for link in links or ()]
        for name, links in zip(columns, position.sets, strict=True):
            hanging = links or ()
            shown = told_apart((link.ref for link in hanging), all_parts)
            marked = (
                said("{part} (stays)", part=text) if link.kept else text
                for text, link in zip(shown, hanging, strict=True)
            )
            yield f"  {name:<{width}}  {', '.join(marked) or '-'}"
    differing = sum(one.differs for one in found)
    yield said("{count} of {all} positions differ.", count=differing, all=len(found))


def _columns(
    service: AgreementService, survey: Survey, line: AgreementLine | None, names: Sequence[str]
) -> dict[str, SetsByLabel]:
    """Return the sets of each name: a number of the history, or a source as ``--sets`` takes it."""
    from spoutline.planning.agreement.comparison import agreed_sets_by_label, planned_sets

    if len(names) < 2:
        raise InputFault((InputProblem("", "--compare", names[0], "name two or more, for example plan agreed built"),))
    return {
        name: agreed_sets_by_label(_entry(line, int(name)))
        if name.isdecimal() and len(name) < 10
        else planned_sets(service.sets_for(survey, name, TerminalProgress()).site_plan)
        for name in names
    }


def _entry(line: AgreementLine | None, serial: int) -> AgreedSets:
    entries = line.entries if line is not None else ()
    found = next((one for one in entries if one.serial == serial), None)
    if found is None:
        known = ", ".join(str(one.serial) for one in entries) or Worded("nothing")
        raise InputFault((InputProblem("", "--compare", str(serial), Worded("the history has {known}", known=known)),))
    return found


AGREE = CommandWork(_agree_arguments, _agree)
AGREED = CommandWork(_agreed_arguments, _agreed)
