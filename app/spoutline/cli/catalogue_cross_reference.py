"""`catalogue cross-reference`: old numbers and the parts that they lead to, in a draft or an edition."""

from __future__ import annotations

import argparse
from collections.abc import Callable, Iterator
from pathlib import Path
from typing import TYPE_CHECKING, Any

from spoutline.cli.catalogue_import import (
    NOTHING_CHANGED,
    change_word,
    choices_in,
    column_document,
    column_line,
    counts_line,
    report_document,
    report_lines,
    table_arguments,
    with_repairs,
)
from spoutline.cli.command import Said, display_of
from spoutline.cli.exit_code import ExitCode
from spoutline.cli.outputs import InputFile, OutputArguments
from spoutline.cli.voice import counted, said
from spoutline.documents.own_files import FileForm
from spoutline.model.catalogue_edition import EditionRef
from spoutline.model.cross_reference import CrossReference, NumberRelation
from spoutline.model.faults import InputFault, InputProblem
from spoutline.model.language import Language
from spoutline.model.part_ref import PartRef

if TYPE_CHECKING:
    from spoutline.bootstrap import Workbench
    from spoutline.catalogue.shelf_lookup import ReferenceChange
    from spoutline.explain.plan.story import Story
    from spoutline.model.cross_reference import NumberTrace
    from spoutline.planning.table_intake.into_draft import OpenedTable
    from spoutline.planning.table_intake.into_references import ReferenceResult

_TOLD = 200
_SAID = ("sheet", "encoding", "decimal_comma", "maker", "supplier")


def cross_reference_arguments(
    parser: argparse.ArgumentParser, shared: Callable[[], argparse.ArgumentParser], epilog: str
) -> None:
    """Declare the actions."""
    actions = parser.add_subparsers(dest="reference_action", metavar="ACTION", required=True)

    def add(name: str, words: str) -> argparse.ArgumentParser:
        made = actions.add_parser(name, help=words, description=words, parents=[shared()], epilog=epilog)
        made.add_argument("--json", action="store_true", help="print a JSON document instead of a text")
        return made

    listed = add("list", "list the old numbers of an edition and the parts that they lead to")
    listed.add_argument("edition", metavar="NAME", help="NAME, NAME@3 or NAME@draft; the newest edition if not said")
    listed.add_argument("--search", metavar="TEXT", default="", help="only those that hold every word of it")
    find = add("find", "follow a number to the part that it leads to: old number, item number or GTIN")
    find.add_argument("number", metavar="NUMBER", help="number, or maker and number; --catalog says of which edition")
    put = add("add", "put an old number into the draft of a catalog, in the place of what it led to")
    for name, words in (
        ("name", "catalog"),
        ("old_maker", "maker of the old number"),
        ("old_number", "old number"),
        ("part_maker", "maker of the part that it leads to"),
        ("part_number", "number of that part"),
    ):
        put.add_argument(name, metavar=name.upper(), help=words)
    put.add_argument(
        "--relation",
        choices=[one.value for one in NumberRelation],
        default=NumberRelation.EQUIVALENT.value,
        help="the very part under another number, or another part that is offered in its place; default: equivalent",
    )
    put.add_argument("--remark", metavar="TEXT", default="")
    out = add("remove", "take an old number out of the draft of a catalog")
    out.add_argument("name", metavar="NAME")
    out.add_argument("old_number", metavar="OLD_NUMBER")
    out.add_argument("--old-maker", metavar="MAKER", default="", help="needed where several makers have the number")
    taken = add("import", "take a table of old numbers into the draft of a catalog: all of it, or nothing")
    taken.add_argument(
        "file", metavar="FILE", type=Path, action=InputFile, words="the file to import", help="CSV or XLSX table"
    )
    taken.add_argument("--into", metavar="NAME", required=True, help="catalog whose draft takes it in")
    taken.add_argument("--dry-run", action="store_true", help="say what would change, and change nothing")
    taken.add_argument(
        "--take-out-missing", action="store_true", help="take out old numbers of its makers that it does not hold"
    )
    table_arguments(taken.add_argument_group("the table"))
    OutputArguments(taken).add("--save-map", FileForm.TOML, "write the map that reads the next such table here")
    export = add("export", "write the old numbers of an edition as a table")
    export.add_argument("edition", metavar="NAME", help="NAME, NAME@3 or NAME@draft; the newest edition if not said")
    outputs = OutputArguments(export)
    outputs.add("--csv", FileForm.CSV, "CSV in UTF-8")
    outputs.add("--xlsx", FileForm.XLSX, "workbook")


def run_cross_reference(workbench: Workbench, arguments: argparse.Namespace) -> Said:
    """Do what is asked and return exit code, text lines and document."""
    return _ACTIONS[arguments.reference_action](workbench, arguments)


def _list(workbench: Workbench, arguments: argparse.Namespace) -> Said:
    ref = EditionRef.from_text(arguments.edition)
    words = arguments.search.casefold().split()
    found = [
        one
        for one in workbench.catalogues().shelf().references(ref)
        if all(word in f"{one.ref} {one.leads_to} {one.remark}".casefold() for word in words)
    ]
    count = counted("no old numbers", "{count} old number", "{count} old numbers", count=len(found))
    head = said("{place}: {said}", place=ref, said=count)
    lines = [head, *(f"  {reference_line(one)}" for one in found)]
    return ExitCode.FITS, lines, {"edition": str(ref), "cross_references": [reference_document(one) for one in found]}


def _find(workbench: Workbench, arguments: argparse.Namespace) -> Said:
    story = workbench.story(display_of(arguments, workbench), Language.ENGLISH if arguments.json else None)
    traces = workbench.parts().number_traces(arguments.number)
    current = {one.current for one in traces if one.current is not None}
    document: dict[str, object] = {"number": arguments.number, "ways": [trace_document(one, story) for one in traces]}
    if not traces:
        part = workbench.parts().part(arguments.number)
        line = said("{part}: a part of the catalog itself, {name}", part=part.ref, name=story.part_name(part))
        return ExitCode.FITS, [line], {**document, "part": _ref_document(part.ref)}
    lines = [story.number_trace(one) for one in traces]
    if len(current) > 1:
        makers = ", ".join(dict.fromkeys(one.maker or said("item number") for one in traces))
        lines.append(said("several parts: name the maker too, one of: {makers}", makers=makers))
        return ExitCode.BAD_INPUT, lines, document
    if not current:
        lines.append(said("the part that it leads to is not in this edition of the catalog"))
        return ExitCode.DOES_NOT_FIT, lines, document
    return ExitCode.FITS, lines, {**document, "part": _ref_document(next(iter(current)))}


def _add(workbench: Workbench, arguments: argparse.Namespace) -> Said:
    from pydantic import ValidationError

    try:
        one = CrossReference(
            number=arguments.old_number,
            maker=arguments.old_maker,
            part_number=arguments.part_number,
            part_maker=arguments.part_maker,
            relation=NumberRelation(arguments.relation),
            remark=arguments.remark,
        )
    except ValidationError as fault:
        raise InputFault(tuple(_problem(error) for error in fault.errors(include_url=False))) from fault
    workbench.catalogues().old_numbers().put(arguments.name, one)
    return ExitCode.FITS, [f"{arguments.name}: {reference_line(one)}"], reference_document(one)


def _problem(error: Any) -> InputProblem:  # noqa: ANN401 - details of a validation error
    context = error.get("ctx") or {}
    field = str(context.get("field") or ".".join(map(str, error["loc"])))
    wanted = str(context.get("wanted") or error["msg"]).removeprefix("Value error, ")
    return InputProblem("", field, repr(error["input"])[:80] if "field" not in context else context["value"], wanted)


def _remove(workbench: Workbench, arguments: argparse.Namespace) -> Said:
    named = PartRef(arguments.old_number, arguments.old_maker)
    gone = workbench.catalogues().old_numbers().take_out(arguments.name, named)
    return (
        ExitCode.FITS,
        [said("{name}: {part} taken out", name=arguments.name, part=gone)],
        {"removed": _ref_document(gone)},
    )


def _import(workbench: Workbench, arguments: argparse.Namespace) -> Said:
    from spoutline.planning.table_intake.column_map import map_to_toml
    from spoutline.planning.table_intake.intake_fields import TableSubject
    from spoutline.planning.table_intake.into_draft import maps_in, open_supplier_table

    maps = maps_in(arguments.map) if arguments.map is not None else ()
    given: dict[str, object] = {name: value for name in _SAID if (value := getattr(arguments, name)) is not None}
    given["subject"] = TableSubject.CROSS_REFERENCES
    opened = with_repairs(open_supplier_table(arguments.file, maps, given, choices_in(arguments.column)), arguments)
    if arguments.columns:
        columns = [column_document(one) for one in opened.mapping]
        return ExitCode.FITS, [column_line(one) for one in opened.mapping], {"columns": columns}
    service = workbench.catalogues().old_numbers()
    done = service.import_table(
        arguments.into, opened, take_out_missing=arguments.take_out_missing, dry_run=arguments.dry_run
    )
    if arguments.save_map is not None and done.report.is_sound:
        arguments.output_plan.write({arguments.save_map: map_to_toml(opened.remembered).encode()})
    sound = ExitCode.FITS if done.report.is_sound else None
    code = sound if sound is not None else ExitCode.DOES_NOT_FIT if arguments.dry_run else ExitCode.BAD_INPUT
    return code, list(_import_lines(arguments, done)), _import_document(arguments, opened, done)


def _import_lines(arguments: argparse.Namespace, done: ReferenceResult) -> Iterator[str]:
    yield from report_lines(done.report)
    for was, now in done.changes[:_TOLD]:
        yield f"  {change_word('new' if was is None else 'changed')} {reference_line(now)}{_before(was)}"
    if not done.report.is_sound:
        yield said("{place}: {said}", place=arguments.into, said=NOTHING_CHANGED)
        return
    for astray in done.astray[:_TOLD]:
        line = reference_line(astray)
        untold = said("{line}: no such part in the draft; it cannot be published so", line=line)
        yield f"  {change_word('astray')} {untold}"
    names = ("new", "changed", "unchanged", "missing")
    yield counts_line(arguments, {name: getattr(done, name) for name in names}, arguments.into)


def _before(was: CrossReference | None) -> str:
    return "" if was is None else f" ({said('before: {part}', part=was.leads_to)})"


def _import_document(arguments: argparse.Namespace, opened: OpenedTable, done: ReferenceResult) -> dict[str, object]:
    return {
        "catalogue": arguments.into,
        "dry_run": arguments.dry_run,
        "taken_in": done.report.is_sound and not arguments.dry_run,
        "columns": [column_document(one) for one in opened.mapping],
        "new": done.new,
        "changed": done.changed,
        "unchanged": done.unchanged,
        "missing": done.missing,
        "faults": done.report.faults,
        "questions": done.report.questions,
        "reports": [report_document(one) for one in done.report.reports],
        "changes": [
            {"before": None if was is None else reference_document(was), "after": reference_document(now)}
            for was, now in done.changes
        ],
        "astray": [reference_document(one) for one in done.astray],
    }


def _export(workbench: Workbench, arguments: argparse.Namespace) -> Said:
    from spoutline.documents.tabular.plain_table import table_csv, table_xlsx
    from spoutline.model.cross_reference import COLUMNS

    ref = EditionRef.from_text(arguments.edition)
    if arguments.csv is None and arguments.xlsx is None:
        raise InputFault((InputProblem("", "--csv, --xlsx", "nothing", "name the file to write"),))
    found = workbench.catalogues().shelf().references(ref)
    rows = [[str(getattr(one, column)) for column in COLUMNS] for one in found]
    contents: dict[Path, bytes] = {}
    if arguments.csv is not None:
        contents[arguments.csv] = table_csv(COLUMNS, rows)
    if arguments.xlsx is not None:
        contents[arguments.xlsx] = table_xlsx("Cross-references", COLUMNS, rows)
    arguments.output_plan.write(contents)
    files = [str(path) for path in contents]
    return (
        ExitCode.FITS,
        [said("{name}: written to {files}", name=ref, files=", ".join(files))],
        {"edition": str(ref), "files": files},
    )


_ACTIONS: dict[str, Callable[[Workbench, argparse.Namespace], Said]] = {
    "list": _list,
    "find": _find,
    "add": _add,
    "remove": _remove,
    "import": _import,
    "export": _export,
}


def reference_line(one: CrossReference) -> str:
    """Return a cross-reference as a line of text."""
    arrow = "=" if one.relation is NumberRelation.SAME else "→"
    return f"{one.ref} {arrow} {one.leads_to}{f'  ({one.remark})' if one.remark else ''}"


def reference_document(one: CrossReference) -> dict[str, object]:
    """Return a cross-reference for other programs."""
    return one.model_dump(mode="json")


def reference_change_line(change: ReferenceChange) -> str:
    """Return what became of a cross-reference as a line of text."""
    if change.after is None:
        return said("old number gone: {number}", number=change.ref)
    line = reference_line(change.after)
    if change.before is None:
        return said("old number new: {line}", line=line)
    return f"{said('old number changed: {line}', line=line)}{_before(change.before)}"


def reference_change_document(change: ReferenceChange) -> dict[str, object]:
    """Return what became of a cross-reference for other programs."""
    return {
        name: None if one is None else reference_document(one)
        for name, one in (("before", change.before), ("after", change.after))
    }


def trace_document(trace: NumberTrace, story: Story) -> dict[str, object]:
    """Return the way of a number for other programs."""
    return {
        "maker": trace.maker,
        "said": story.number_trace(trace),
        "steps": [
            {"kind": one.kind.value, "before": one.before, "after": _ref_document(one.after), "remark": one.remark}
            for one in trace.steps
        ],
        "item": None if trace.item is None else _ref_document(trace.item),
        "current": None if trace.current is None else _ref_document(trace.current),
    }


def _ref_document(ref: PartRef) -> dict[str, str]:
    return {"number": ref.number, "maker": ref.maker}
