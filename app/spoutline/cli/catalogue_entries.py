"""`catalogue entry` and `catalogue family`: parts of a draft and what they inherit, found, shown and changed."""

from __future__ import annotations

import argparse
import difflib
from collections.abc import Callable, Iterator, Sequence
from pathlib import Path
from typing import TYPE_CHECKING

from spoutline.cli.command import Said, display_of
from spoutline.cli.exit_code import ExitCode
from spoutline.cli.outputs import InputFile, OutputArguments
from spoutline.cli.voice import counted, said, told
from spoutline.documents.own_files import FileForm
from spoutline.model.catalogue_edition import EditionRef
from spoutline.model.catalogue_entry import Origin
from spoutline.model.faults import InputFault, InputProblem
from spoutline.model.part import PartKind
from spoutline.model.part_file import FileMatter
from spoutline.model.worded import Worded

if TYPE_CHECKING:
    from spoutline.bootstrap import Workbench
    from spoutline.bootstrap.catalogues import EntryLine
    from spoutline.catalogue.shelf_lookup import EntryChange
    from spoutline.explain.plan.story import Story
    from spoutline.model.catalogue_entry import CatalogueEntry
    from spoutline.model.part_family import PartFamily
    from spoutline.model.part_file import PartFile
    from spoutline.model.part_ref import PartRef

_LISTED = 100
_MATTERS = {
    FileMatter.PICTURE: Worded("picture"),
    FileMatter.INSTRUCTIONS: Worded("instructions"),
    FileMatter.DATA_SHEET: Worded("data sheet"),
    FileMatter.CERTIFICATE: Worded("certificate"),
}
_ORIGINS = {
    Origin.STATED: Worded("stated"),
    Origin.SIMILAR: Worded("similar"),
    Origin.FAMILY: Worded("family"),
    Origin.TEXT: Worded("text"),
}
_EDITION = "NAME, NAME@3 or NAME@draft; the draft where none is said"
_FIELDS = "FIELD=VALUE as the form of a part reads it, such as price='12.50 USD' or length_m=9ft; FIELD= leaves it open"
_Shared = Callable[[], argparse.ArgumentParser]


def _adding(
    parser: argparse.ArgumentParser, dest: str, shared: _Shared, epilog: str
) -> Callable[[str, str], argparse.ArgumentParser]:
    actions = parser.add_subparsers(dest=dest, metavar="ACTION", required=True)

    def add(name: str, words: str) -> argparse.ArgumentParser:
        made = actions.add_parser(name, help=words, description=words, parents=[shared()], epilog=epilog)
        made.add_argument("--json", action="store_true", help="print a JSON document instead of a text")
        return made

    return add


def entry_arguments(parser: argparse.ArgumentParser, shared: _Shared, epilog: str) -> None:
    """Declare the actions on entries."""
    add = _adding(parser, "entry_action", shared, epilog)
    find = add("find", "find entries by what they are known by: exact numbers first, then their beginnings, then words")
    find.add_argument("edition", metavar="NAME", help=_EDITION)
    find.add_argument("text", metavar="TEXT", nargs="?", default="", help="what is known of them; all where not said")
    find.add_argument("--limit", metavar="N", type=int, default=_LISTED, help=f"how many are told; default: {_LISTED}")
    find.add_argument("--not-described", action="store_true", help="only those that lack figures")
    show = add("show", "say all that is known of an entry, and where each figure came from")
    show.add_argument("edition", metavar="NAME", help=_EDITION)
    show.add_argument("part", metavar="PART", help="number, or maker and number")
    put = add("set", "fill fields of one or several parts of a draft: all of them, or nothing")
    put.add_argument("name", metavar="NAME", help="catalog")
    put.add_argument("fields", metavar="FIELD=VALUE", nargs="+", help=_FIELDS)
    put.add_argument("--part", metavar="PART", action="append", required=True, help="part; may be given more than once")
    new = add("add", "put a new part into a draft")
    for name, words in (("name", "catalog"), ("maker", "its maker"), ("number", "its number as the maker writes it")):
        new.add_argument(name, metavar=name.upper(), help=words)
    new.add_argument("fields", metavar="FIELD=VALUE", nargs="*", help=_FIELDS)
    attach = add("attach", "keep a picture or document with a part of a draft, in the place of one of the same title")
    attach.add_argument("name", metavar="NAME", help="catalog")
    attach.add_argument("part", metavar="PART", help="number, or maker and number")
    attach.add_argument(
        "file",
        metavar="FILE",
        type=Path,
        action=InputFile,
        words="the file that is kept",
        help="picture (PNG, JPEG) or document (PDF)",
    )
    attach.add_argument("--title", metavar="TEXT", default="", help="what it is called; default: as the file is")
    attach.add_argument(
        "--matter", choices=[one.value for one in FileMatter], help="what it is; default: picture or data_sheet"
    )
    detach = add("detach", "take a picture or document from a part of a draft")
    detach.add_argument("name", metavar="NAME", help="catalog")
    detach.add_argument("part", metavar="PART", help="number, or maker and number")
    detach.add_argument("title", metavar="TITLE", help="what the file is called")
    written = add("file", "write a picture or document of a part to a file")
    written.add_argument("edition", metavar="NAME", help=_EDITION)
    written.add_argument("part", metavar="PART", help="number, or maker and number")
    written.add_argument("title", metavar="TITLE", help="what the file is called")
    OutputArguments(written).add("--out", FileForm.FOREIGN, "the file")
    out = add("remove", "take parts out of a draft")
    out.add_argument("name", metavar="NAME", help="catalog")
    out.add_argument("--part", metavar="PART", action="append", required=True, help="part; may be given more than once")


def family_arguments(parser: argparse.ArgumentParser, shared: _Shared, epilog: str) -> None:
    """Declare the actions on families."""
    add = _adding(parser, "family_action", shared, epilog)
    listed = add("list", "list the families of an edition with their figures")
    listed.add_argument("edition", metavar="NAME", help=_EDITION)
    put = add("set", "set figures of a family of a draft, which every part of it has that has none of its own")
    put.add_argument("name", metavar="NAME", help="catalog")
    put.add_argument("family", metavar="FAMILY", help="as the field family of its parts says")
    put.add_argument("fields", metavar="FIELD=VALUE", nargs="+", help=_FIELDS)
    put.add_argument("--kind", metavar="KIND", choices=[kind.value for kind in PartKind], help="needed of a new family")
    renamed = add("rename", "call a family of a draft otherwise; its parts go with it")
    renamed.add_argument("name", metavar="NAME", help="catalog")
    renamed.add_argument("family", metavar="FAMILY")
    renamed.add_argument("to", metavar="NEW_NAME")
    out = add("remove", "take a family out of a draft; its parts lose what they inherit")
    out.add_argument("name", metavar="NAME", help="catalog")
    out.add_argument("family", metavar="FAMILY")


def run_entry(workbench: Workbench, arguments: argparse.Namespace) -> Said:
    """Do what is asked of entries and return exit code, text lines and document."""
    return _ENTRY_ACTIONS[arguments.entry_action](workbench, arguments)


def run_family(workbench: Workbench, arguments: argparse.Namespace) -> Said:
    """Do what is asked of families and return exit code, text lines and document."""
    return _FAMILY_ACTIONS[arguments.family_action](workbench, arguments)


def _edition(text: str) -> EditionRef:
    from spoutline.model.catalogue_edition import DEMONSTRATION

    ref = EditionRef.from_text(text)
    is_said = ref.is_draft or ref.number is not None or ref.catalogue.casefold() == DEMONSTRATION.casefold()
    return ref if is_said else EditionRef(ref.catalogue, is_draft=True)


def _texts(fields: Sequence[str]) -> dict[str, str]:
    texts: dict[str, str] = {}
    for one in fields:
        key, equals, value = one.partition("=")
        if not equals or not key.strip():
            raise InputFault((InputProblem("", "field", repr(one), "write FIELD=VALUE, or FIELD= to leave it open"),))
        texts[key.strip()] = value
    return texts


def _check_fields(texts: dict[str, str], kind: PartKind | None, place: str) -> None:
    from spoutline.planning.keeping.entry_fields import entry_fields

    known = [field.key for field in entry_fields(kind)]
    problems = []
    for key, text in texts.items():
        if key not in known:
            near = difflib.get_close_matches(key, known, n=1)
            hint = (
                Worded("did you mean {near}?", near=near[0])
                if near
                else Worded("one of {known}", known=", ".join(known))
            )
            problems.append(
                InputProblem(
                    place,
                    key,
                    repr(text),
                    Worded("a {kind} has no such field; {hint}", kind=kind or "part of no kind", hint=hint),
                )
            )
    if problems:
        raise InputFault(tuple(problems))


def _edited(entry: CatalogueEntry, texts: dict[str, str]) -> CatalogueEntry:
    from spoutline.planning.keeping.entry_editing import edited

    kind = texts.get("kind", "" if entry.kind is None else entry.kind.value)
    if kind and kind not in set(PartKind):
        wanted = Worded("one of {partkind}", partkind=", ".join(PartKind))
        raise InputFault((InputProblem(str(entry.ref), "kind", repr(kind), wanted),))
    _check_fields(texts, PartKind(kind) if kind else None, str(entry.ref))
    try:
        return edited(entry, {**texts, "kind": kind})
    except InputFault as fault:
        told = (InputProblem(str(entry.ref), one.field, one.value, one.wanted) for one in fault.problems)
        raise InputFault(tuple(told)) from fault


def _held(workbench: Workbench, ref: EditionRef, texts: Sequence[str]) -> Iterator[CatalogueEntry]:
    service = workbench.catalogues()
    for text in texts:
        entry = service.shelf().entry(ref, service.named_part(ref, text))
        if entry is not None:
            yield entry


def _find(workbench: Workbench, arguments: argparse.Namespace) -> Said:
    ref = _edition(arguments.edition)
    limit = max(arguments.limit, 0)
    found = workbench.catalogues().find(ref, arguments.text, limit=limit, only_not_described=arguments.not_described)
    story = workbench.story(display_of(arguments, workbench))
    if found.is_all:
        entries = counted("no entries", "{count} entry", "{count:,} entries", count=found.count)
    else:
        entries = said("more than {count:,} entries", count=found.count)
    if len(found.lines) < found.count or not found.is_all:
        entries = said("{entries}, the first {told} told", entries=entries, told=len(found.lines))
    lines = [said("{place}: {said}", place=ref, said=entries), *(f"  {_line(one, story)}" for one in found.lines)]
    document = {
        "edition": str(ref),
        "count": found.count,
        "is_all": found.is_all,
        "entries": [_document(one.entry) | {"lacking": list(one.lacking)} for one in found.lines],
    }
    return ExitCode.FITS, lines, document


def _line(line: EntryLine, story: Story) -> str:
    entry = line.entry
    lacking = f"  {said('lacks {columns}', columns=', '.join(line.lacking))}" if line.lacking else ""
    kind = said("no kind") if entry.kind is None else story.word(entry.kind)
    return f"{entry.ref}  {kind}  {entry.name}{lacking}"


def _show(workbench: Workbench, arguments: argparse.Namespace) -> Said:
    ref = _edition(arguments.edition)
    (entry,) = _held(workbench, ref, [arguments.part])
    files = [f"  {file_line(one)} ({one.media}, {said('{count} bytes', count=one.size)})" for one in entry.files]
    return ExitCode.FITS, [str(entry.ref), *_field_lines(entry), *files], _document(entry)


def _attach(workbench: Workbench, arguments: argparse.Namespace) -> Said:
    part = workbench.catalogues().named_part(EditionRef(arguments.name, is_draft=True), arguments.part)
    matter = None if arguments.matter is None else FileMatter(arguments.matter)
    done = (
        workbench.catalogues()
        .files()
        .attach(arguments.name, part, arguments.file, title=arguments.title, matter=matter)
    )
    return _files_told(arguments.name, done)


def _detach(workbench: Workbench, arguments: argparse.Namespace) -> Said:
    part = workbench.catalogues().named_part(EditionRef(arguments.name, is_draft=True), arguments.part)
    return _files_told(arguments.name, workbench.catalogues().files().detach(arguments.name, part, arguments.title))


def _files_told(name: str, done: EntryChange) -> Said:
    files = done.after.files if done.after is not None else ()
    count = counted("no files", "{count} file", "{count} files", count=len(files))
    lines = [said("{place}: {said}", place=f"{name}@draft, {done.ref}", said=count)]
    lines += [f"  {file_line(one)}" for one in files]
    return ExitCode.FITS, lines, {"catalogue": name, "part": _named(done.ref), "files": _file_documents(files)}


def file_line(one: PartFile) -> str:
    """Return what a file is and what it is called."""
    return said("{place}: {said}", place=told(_MATTERS[one.matter]), said=one.title)


def _file(workbench: Workbench, arguments: argparse.Namespace) -> Said:
    ref = _edition(arguments.edition)
    (entry,) = _held(workbench, ref, [arguments.part])
    wanted = arguments.title.strip().casefold()
    file = next((one for one in entry.files if one.title.casefold() == wanted), None)
    content = None if file is None else workbench.catalogues().files().content(file)
    if file is None or content is None:
        known = ", ".join(one.title for one in entry.files) or "the part has no file"
        raise InputFault(
            (InputProblem(str(entry.ref), "title", repr(arguments.title), Worded("one of: {known}", known=known)),)
        )
    if arguments.out is None:
        raise InputFault((InputProblem("", "--out", "nothing", "name the file to write"),))
    with arguments.output_plan.staged({arguments.out: content}) as files:
        files.place()
    return (
        ExitCode.FITS,
        [said("{name}: written to {files}", name=file.title, files=arguments.out)],
        {"files": _file_documents((file,))},
    )


def _named(ref: PartRef) -> dict[str, str]:
    return {"number": ref.number, "maker": ref.maker}


def _file_documents(files: Sequence[PartFile]) -> list[dict[str, object]]:
    return [one.model_dump(mode="json") for one in files]


def _field_lines(entry: CatalogueEntry) -> Iterator[str]:
    from spoutline.planning.keeping.entry_fields import shown_texts

    origins = {cell.column: cell for cell in entry.figures if cell.origin is not Origin.STATED}
    for key, text in shown_texts(entry).items():
        if text:
            cell = origins.get(key)
            yield f"  {key}={text}" + ("" if cell is None else f"  ({told(_ORIGINS[cell.origin])}: {cell.source})")


def _document(entry: CatalogueEntry) -> dict[str, object]:
    from spoutline.planning.keeping.entry_fields import shown_texts

    origins = {cell.column: {"origin": cell.origin.value, "source": cell.source} for cell in entry.figures}
    fields = {key: text for key, text in shown_texts(entry).items() if text}
    return {"number": entry.number, "maker": entry.maker, "fields": fields, "origins": origins} | (
        {"files": _file_documents(entry.files)} if entry.files else {}
    )


def _set(workbench: Workbench, arguments: argparse.Namespace) -> Said:
    from spoutline.catalogue.shelf_lookup import EntryChange

    texts = _texts(arguments.fields)
    held = _held(workbench, EditionRef(arguments.name, is_draft=True), arguments.part)
    entries = {entry.ref: entry for entry in held}
    changes = [EntryChange(ref, entry, _edited(entry, texts)) for ref, entry in entries.items()]
    return _changed(workbench, arguments.name, changes)


def _add(workbench: Workbench, arguments: argparse.Namespace) -> Said:
    from spoutline.catalogue.shelf_lookup import EntryChange
    from spoutline.model.catalogue_entry import CatalogueEntry

    try:
        entry = CatalogueEntry(number=arguments.number, maker=arguments.maker)
    except ValueError as fault:
        told = str(fault).splitlines()[2].strip() if len(str(fault).splitlines()) > 2 else str(fault)
        shown = repr(f"{arguments.maker} {arguments.number}")
        raise InputFault((InputProblem("", "maker and number", shown, told.partition(" [type")[0]),)) from fault
    after = _edited(entry, _texts(arguments.fields))
    return _changed(workbench, arguments.name, [EntryChange(entry.ref, None, after)])


def _remove(workbench: Workbench, arguments: argparse.Namespace) -> Said:
    from spoutline.catalogue.shelf_lookup import EntryChange

    held = _held(workbench, EditionRef(arguments.name, is_draft=True), arguments.part)
    entries = {entry.ref: entry for entry in held}
    return _changed(workbench, arguments.name, [EntryChange(ref, entry, None) for ref, entry in entries.items()])


def _changed(workbench: Workbench, name: str, changes: Sequence[EntryChange]) -> Said:
    from spoutline.cli.catalogue_text import change_document, change_line

    done = [one for one in workbench.catalogues().change_entries(name, changes) if one.before != one.after]
    count = counted("no parts changed", "{count} part changed", "{count} parts changed", count=len(done))
    lines = [said("{place}: {said}", place=f"{name}@draft", said=count), *(f"  {change_line(one)}" for one in done)]
    return ExitCode.FITS, lines, {"catalogue": name, "changes": [change_document(one) for one in done]}


def _families(workbench: Workbench, arguments: argparse.Namespace) -> Said:
    ref = _edition(arguments.edition)
    families = workbench.catalogues().families(ref)
    story = workbench.story(display_of(arguments, workbench))
    count = counted("no families", "{count} family", "{count} families", count=len(families))
    lines = [said("{place}: {said}", place=ref, said=count)]
    for one in families:
        lines += [
            f"  {one.name}  {story.word(one.kind)}",
            *(f"    {key}={text}" for key, text in _figures(one).items()),
        ]
    return ExitCode.FITS, lines, {"edition": str(ref), "families": [_family_document(one) for one in families]}


def family_changes(before: Sequence[PartFamily], after: Sequence[PartFamily]) -> list[tuple[str, str]]:
    """Return what became of families from one edition to another, as a word and their names."""
    old, new = {one.name: one for one in before}, {one.name: one for one in after}
    return [
        ("new" if name not in old else "gone" if name not in new else "changed", name)
        for name in sorted({*old, *new})
        if old.get(name) != new.get(name)
    ]


def _figures(family: PartFamily) -> dict[str, str]:
    from spoutline.planning.keeping.family_editing import family_texts

    return family_texts(family)


def _family_document(family: PartFamily) -> dict[str, object]:
    return {"name": family.name, "kind": family.kind.value, "figures": _figures(family)}


def _set_family(workbench: Workbench, arguments: argparse.Namespace) -> Said:
    from spoutline.planning.keeping.family_editing import edited_family

    service = workbench.catalogues()
    known = {one.name: one for one in service.families(EditionRef(arguments.name, is_draft=True))}
    before = known.get(arguments.family)
    kind = PartKind(arguments.kind) if arguments.kind else before.kind if before is not None else None
    if kind is None:
        near = ", ".join(known) or "the draft has none yet"
        wanted = Worded("say the --kind of a new family, or name one that there is ({near})", near=near)
        raise InputFault((InputProblem("", "family", repr(arguments.family), wanted),))
    texts = _texts(arguments.fields)
    _check_fields(texts, kind, arguments.family)
    family = edited_family(before, arguments.family, kind, texts)
    count = service.put_family(arguments.name, family)
    return _put_family(workbench, arguments, family, count)


def _rename_family(workbench: Workbench, arguments: argparse.Namespace) -> Said:
    from spoutline.planning.keeping.family_editing import edited_family

    service = workbench.catalogues()
    known = {one.name: one for one in service.families(EditionRef(arguments.name, is_draft=True))}
    before = known.get(arguments.family)
    if before is None:
        wanted = Worded("one of: {known}", known=", ".join(known) or "the draft has no family")
        raise InputFault((InputProblem("", "family", repr(arguments.family), wanted),))
    family = edited_family(before, arguments.to, before.kind, {})
    count = service.put_family(arguments.name, family, renamed_from=before.name)
    return _put_family(workbench, arguments, family, count)


def _put_family(workbench: Workbench, arguments: argparse.Namespace, family: PartFamily, count: int) -> Said:
    story, name = workbench.story(display_of(arguments, workbench)), arguments.name
    place = f"{name}@draft, {family.name}, {story.word(family.kind)}"
    inheriting = counted(
        "no parts have its figures", "{count} part has its figures", "{count} parts have its figures", count=count
    )
    lines = [said("{place}: {said}", place=place, said=inheriting)]
    lines += [f"  {key}={text}" for key, text in _figures(family).items()]
    return ExitCode.FITS, lines, {"catalogue": name, "parts": count, **_family_document(family)}


def _remove_family(workbench: Workbench, arguments: argparse.Namespace) -> Said:
    workbench.catalogues().remove_family(arguments.name, arguments.family)
    line = said("{name}: {part} taken out", name=f"{arguments.name}@draft", part=arguments.family)
    return ExitCode.FITS, [line], {"catalogue": arguments.name, "removed": arguments.family}


_ENTRY_ACTIONS: dict[str, Callable[[Workbench, argparse.Namespace], Said]] = {
    "find": _find,
    "show": _show,
    "set": _set,
    "add": _add,
    "remove": _remove,
    "attach": _attach,
    "detach": _detach,
    "file": _file,
}
_FAMILY_ACTIONS: dict[str, Callable[[Workbench, argparse.Namespace], Said]] = {
    "list": _families,
    "set": _set_family,
    "rename": _rename_family,
    "remove": _remove_family,
}
