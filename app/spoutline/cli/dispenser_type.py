"""`dispenser-type`: the firm's types of dispensers, and their choice for the dispensers of a survey."""

from __future__ import annotations

import argparse
from collections.abc import Callable, Iterator
from enum import StrEnum
from pathlib import Path
from typing import TYPE_CHECKING

from spoutline.cli.answer import write_answer
from spoutline.cli.catalogue_import import (
    NOTHING_CHANGED,
    choices_in,
    column_document,
    column_line,
    counts_line,
    report_document,
    report_lines,
    said_of_table,
    table_arguments,
    with_repairs,
)
from spoutline.cli.command import CommandWork, add_survey, display_of, shared_options
from spoutline.cli.exit_code import ExitCode
from spoutline.cli.files import read_survey, write_standard_output
from spoutline.cli.outputs import InputFile, OutputArguments
from spoutline.cli.voice import said, told
from spoutline.documents.own_files import FileForm
from spoutline.model.faults import InputFault, InputProblem
from spoutline.model.worded import Worded

if TYPE_CHECKING:
    from spoutline.bootstrap import Workbench
    from spoutline.explain.plan.story import Story
    from spoutline.model.dispenser_type import ChangedType
    from spoutline.model.survey import DispenserType, Survey
    from spoutline.model.type_columns import TypeColumn

_EPILOG = "Exit codes: 0 done, 1 faults or changes were found, 2 refused and nothing changed."
_SET = "an answer, such as outlet.height_m=2.1m; nothing behind = takes it away; `dispenser-type fields` lists them"


def _arguments(parser: argparse.ArgumentParser) -> None:
    actions = parser.add_subparsers(dest="action", metavar="ACTION", required=True)

    def add(name: str, words: str) -> argparse.ArgumentParser:
        made = actions.add_parser(name, help=words, description=words, parents=[shared_options()], epilog=_EPILOG)
        made.add_argument("--json", action="store_true", help="print a JSON document instead of a text")
        return made

    add("list", "list the dispenser types of the book")
    add("fields", "list what a type may answer")
    add("show", "show what a type answers").add_argument("name", metavar="NAME")
    for name, words in (("add", "put a new type into the book"), ("change", "change answers of a type")):
        made = add(name, words)
        made.add_argument("name", metavar="NAME")
        made.add_argument("--set", metavar="FIELD=VALUE", action="append", default=[], dest="said", help=_SET)
    add("remove", "take a type out of the book; surveys keep what they have of it").add_argument("name", metavar="NAME")
    taken = add("import", "take a table of types into the book: all of it, or nothing")
    taken.add_argument(
        "file", metavar="FILE", type=Path, action=InputFile, words="the file to import", help="CSV or XLSX table"
    )
    taken.add_argument("--dry-run", action="store_true", help="say what would change, and change nothing")
    table_arguments(taken.add_argument_group("the table"), of_parts=False)
    OutputArguments(taken).add("--save-map", FileForm.TOML, "write the map that reads the next such table here")
    export = add("export", "write the types of the book as a table")
    outputs = OutputArguments(export)
    outputs.add("--csv", FileForm.CSV, "CSV in UTF-8")
    outputs.add("--xlsx", FileForm.XLSX, "workbook")
    choose = add("choose", "choose a type for dispensers of a survey: their positions inherit its answers")
    add_survey(choose)
    choose.add_argument("name", metavar="NAME", help="type of the book; '' for none")
    choose.add_argument(
        "--dispenser", metavar="D", action="append", default=[], help="a dispenser of the survey; default: all"
    )
    choose.add_argument(
        "--take-all", action="store_true", help="let answers of the positions go where the type has one of its own"
    )
    OutputArguments(choose).add("--out", FileForm.JSON, "the survey with it; default: standard output")
    changed = add("changed", "say which types of a survey the book knows otherwise now")
    add_survey(changed)
    renew = add("renew", "give a survey the figures that its types have in the book now")
    add_survey(renew)
    OutputArguments(renew).add("--out", FileForm.JSON, "the survey with it; default: standard output")


def _run(workbench: Workbench, arguments: argparse.Namespace) -> ExitCode:
    return _ACTIONS[arguments.action](workbench, arguments)


def _list(workbench: Workbench, arguments: argparse.Namespace) -> ExitCode:
    kinds, display = workbench.dispenser_types().all(), display_of(arguments, workbench)
    story = workbench.story(display)
    lines = [f"{one.name}{f'  ({one.maker})' if one.maker else ''}  {_short(one, story)}" for one in kinds]
    return write_answer(
        arguments, lines or [said("no dispenser types yet")], {"dispenser_types": [_document(one) for one in kinds]}
    )


def _short(kind: DispenserType, story: Story) -> str:
    from spoutline.model.type_columns import TYPE_COLUMNS

    answers = {column.key: _answer(kind, column, story) for column in TYPE_COLUMNS}
    keys = ("outlet.thread", "outlet.size", "outlet.path", "outlet.height_m", "retrieval")
    return ", ".join(answers[key] for key in keys if answers[key])


def _answer(kind: DispenserType, column: TypeColumn, story: Story) -> str:
    """Return what a type answers in a column in words; empty for no answer."""
    from spoutline.planning.table_intake.type_answers import shown_answer

    shown, value = shown_answer(kind, column, story.display), column.value(kind)
    if not shown:
        return ""
    if isinstance(value, bool):
        return story.phrases.text["yes" if value else "no"]
    return story.word(value) if column.choices is not None and isinstance(value, StrEnum) else shown


def _fields(_workbench: Workbench, arguments: argparse.Namespace) -> ExitCode:
    from spoutline.model.type_columns import TYPE_COLUMNS

    lines = [f"{one.key:<32} {told(Worded(one.title))}{_choices(one.choices)}" for one in TYPE_COLUMNS]
    return write_answer(arguments, lines, {"fields": [{"field": one.key, "title": one.title} for one in TYPE_COLUMNS]})


def _choices(choices: type | None) -> str:
    return f": {', '.join(choices)}" if choices is not None else ""  # type: ignore[arg-type]


def _show(workbench: Workbench, arguments: argparse.Namespace) -> ExitCode:
    kind = workbench.dispenser_types().named(arguments.name)
    return write_answer(
        arguments, list(_lines(kind, workbench.story(display_of(arguments, workbench)))), _document(kind)
    )


def _lines(kind: DispenserType, story: Story) -> Iterator[str]:
    from spoutline.model.type_columns import TYPE_COLUMNS

    width = max(len(told(Worded(column.title))) for column in TYPE_COLUMNS)
    for column in TYPE_COLUMNS:
        shown = _answer(kind, column, story)
        if shown:
            yield f"{told(Worded(column.title)):<{width}}  {shown}"


def _add(workbench: Workbench, arguments: argparse.Namespace) -> ExitCode:
    from spoutline.model.dispenser_type import folded_type_name
    from spoutline.planning.table_intake.type_answers import with_answers

    service = workbench.dispenser_types()
    if any(folded_type_name(one.name) == folded_type_name(arguments.name) for one in service.all()):
        wanted = "the book has a type of this name: change it, or choose another name"
        raise InputFault((InputProblem("", "name", repr(arguments.name), wanted),))
    display = display_of(arguments, workbench)
    kind = with_answers(None, {"name": arguments.name, **_answers(arguments.said)}, display)
    service.put((kind,))
    lines = [said("{name}: added", name=kind.name), *_lines(kind, workbench.story(display))]
    return write_answer(arguments, lines, _document(kind))


def _change(workbench: Workbench, arguments: argparse.Namespace) -> ExitCode:
    from spoutline.planning.table_intake.type_answers import with_answers

    service, answers = workbench.dispenser_types(), _answers(arguments.said)
    if "name" in answers:
        wanted = "a type is known by its name: add another type and remove this one"
        raise InputFault((InputProblem("", "--set", "name", wanted),))
    display = display_of(arguments, workbench)
    kind = with_answers(service.named(arguments.name), answers, display)
    service.put((kind,))
    lines = [said("{name}: changed", name=kind.name), *_lines(kind, workbench.story(display))]
    return write_answer(arguments, lines, _document(kind))


def _answers(texts: list[str]) -> dict[str, str]:
    answers = {}
    for text in texts:
        key, equals, value = text.partition("=")
        if not equals or not key.strip():
            raise InputFault((InputProblem("", "--set", repr(text), "write FIELD=VALUE"),))
        answers[key.strip()] = value
    return answers


def _remove(workbench: Workbench, arguments: argparse.Namespace) -> ExitCode:
    gone = workbench.dispenser_types().remove(arguments.name)
    return write_answer(arguments, [said("{name}: removed", name=gone.name)], {"removed": gone.name})


def _import(workbench: Workbench, arguments: argparse.Namespace) -> ExitCode:
    from spoutline.planning.table_intake.column_map import map_to_toml
    from spoutline.planning.table_intake.intake_fields import TableSubject
    from spoutline.planning.table_intake.into_draft import maps_in, open_supplier_table

    maps = maps_in(arguments.map) if arguments.map is not None else ()
    given: dict[str, object] = said_of_table(arguments)
    given["subject"] = TableSubject.DISPENSER_TYPES
    opened = with_repairs(open_supplier_table(arguments.file, maps, given, choices_in(arguments.column)), arguments)
    columns = [column_document(one) for one in opened.mapping]
    if arguments.columns:
        return write_answer(arguments, [column_line(one) for one in opened.mapping], {"columns": columns})
    done = workbench.dispenser_types().import_table(opened, dry_run=arguments.dry_run)
    report = done.report
    if arguments.save_map is not None and report.is_sound:
        arguments.output_plan.write({arguments.save_map: map_to_toml(opened.remembered).encode()})
    lines = list(report_lines(report))
    if report.is_sound:
        counts = {"new": done.new, "changed": done.changed, "unchanged": done.unchanged}
        lines.append(counts_line(arguments, counts))
    else:
        lines.append(told(NOTHING_CHANGED))
    document = {
        "dry_run": arguments.dry_run,
        "taken_in": report.is_sound and not arguments.dry_run,
        "new": done.new,
        "changed": done.changed,
        "unchanged": done.unchanged,
        "columns": columns,
        "reports": [report_document(one) for one in report.reports],
    }
    write_answer(arguments, lines, document)
    if report.is_sound:
        return ExitCode.FITS
    return ExitCode.DOES_NOT_FIT if arguments.dry_run else ExitCode.BAD_INPUT


def _export(workbench: Workbench, arguments: argparse.Namespace) -> ExitCode:
    if arguments.csv is None and arguments.xlsx is None:
        raise InputFault((InputProblem("", "--csv, --xlsx", "nothing", "name the file to write"),))
    service = workbench.dispenser_types()
    kinds = service.all()
    contents: dict[Path, bytes] = {}
    if arguments.csv is not None:
        contents[arguments.csv] = service.csv(kinds)
    if arguments.xlsx is not None:
        contents[arguments.xlsx] = service.xlsx(kinds)
    arguments.output_plan.write(contents)
    files = [str(path) for path in contents]
    return write_answer(
        arguments,
        [said("types: {count}, written to {files}", count=len(kinds), files=", ".join(files))],
        {"files": files},
    )


def _choose(workbench: Workbench, arguments: argparse.Namespace) -> ExitCode:
    from spoutline.planning.refit.dispensers import dispenser_names

    survey = read_survey(arguments.survey)
    dispensers = arguments.dispenser or dispenser_names(survey)
    after = workbench.dispenser_types().chosen(survey, dispensers, arguments.name, overrides_too=arguments.take_all)
    return _write_survey(arguments, after)


def _changed(workbench: Workbench, arguments: argparse.Namespace) -> ExitCode:
    survey = read_survey(arguments.survey)
    found = workbench.dispenser_types().changed(survey)
    display = display_of(arguments, workbench, survey.site.jurisdiction)
    document = {
        "changed": [
            {
                "dispenser_type": one.before.name,
                "dispensers": list(one.dispensers),
                "gone": one.current is None,
                "fields": [".".join(map(str, path)) for path in one.fields],
            }
            for one in found
        ]
    }
    lines = [_change_line(one, workbench.story(display)) for one in found]
    write_answer(arguments, lines or [said("every type is as in the book")], document)
    return ExitCode.DOES_NOT_FIT if found else ExitCode.FITS


def _change_line(change: ChangedType, story: Story) -> str:
    from spoutline.model.type_columns import TYPE_COLUMNS

    head = said("{name} (dispenser {dispensers})", name=change.before.name, dispensers=", ".join(change.dispensers))
    current = change.current
    if current is None:
        return said("{place}: {said}", place=head, said=Worded("the book has no type of this name now"))
    moved = (
        f"{told(Worded(one.title))} {_answer(change.before, one, story) or '–'} → {_answer(current, one, story) or '–'}"
        for one in TYPE_COLUMNS
        if one.path in change.fields
    )
    return said("{place}: {said}", place=head, said="; ".join(moved))


def _renew(workbench: Workbench, arguments: argparse.Namespace) -> ExitCode:
    return _write_survey(arguments, workbench.dispenser_types().with_current(read_survey(arguments.survey)))


def _write_survey(arguments: argparse.Namespace, survey: Survey) -> ExitCode:
    from spoutline.book.survey_text import survey_to_json

    text = survey_to_json(survey)
    if arguments.out is None:
        write_standard_output(text)
    else:
        arguments.output_plan.write({arguments.out: text.encode()})
    return ExitCode.FITS


def _document(kind: DispenserType) -> dict[str, object]:
    return kind.model_dump(mode="json", exclude_unset=True)


_ACTIONS: dict[str, Callable[[Workbench, argparse.Namespace], ExitCode]] = {
    "list": _list,
    "fields": _fields,
    "show": _show,
    "add": _add,
    "change": _change,
    "remove": _remove,
    "import": _import,
    "export": _export,
    "choose": _choose,
    "changed": _changed,
    "renew": _renew,
}

WORK = CommandWork(_arguments, _run)
