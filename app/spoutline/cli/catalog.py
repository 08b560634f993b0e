"""`catalogue`: keep the catalogues of the book; without an action, say which of its prices are asked about."""

from __future__ import annotations

import argparse
import json
from collections.abc import Callable, Sequence
from pathlib import Path
from typing import TYPE_CHECKING

from spoutline.cli.answer import write_answer
from spoutline.cli.catalogue_coverage import coverage_arguments, run_coverage
from spoutline.cli.catalogue_cross_reference import cross_reference_arguments, run_cross_reference
from spoutline.cli.catalogue_cut import cut_arguments, run_cut
from spoutline.cli.catalogue_entries import (
    entry_arguments,
    family_arguments,
    family_changes,
    run_entry,
    run_family,
)
from spoutline.cli.catalogue_import import change_word, import_arguments, run_import
from spoutline.cli.catalogue_made_up import made_up_arguments, run_made_up
from spoutline.cli.catalogue_prices import (
    price_arguments,
    price_list_arguments,
    price_list_changes,
    run_price,
    run_price_list,
)
from spoutline.cli.command import CommandWork, Said, display_of, json_display, shared_options
from spoutline.cli.exit_code import ExitCode
from spoutline.cli.files import read_survey, write_standard_output
from spoutline.cli.outputs import InputFile, OutputArguments
from spoutline.cli.progress import TerminalProgress
from spoutline.cli.voice import counted, said, words
from spoutline.documents.own_files import FileForm
from spoutline.model.catalogue_edition import DEMONSTRATION, EditionRef
from spoutline.model.faults import InputProblem
from spoutline.model.language import Language
from spoutline.whole_files.environment import files_in

if TYPE_CHECKING:
    from spoutline.bootstrap import Workbench
    from spoutline.catalogue.descriptions import EntryFault
    from spoutline.catalogue.shelf_lookup import CatalogueFacts
    from spoutline.explain.plan.story import Story
    from spoutline.model.catalogue_edition import CatalogueEdition
    from spoutline.model.survey import Survey

_Action = Callable[["Workbench", argparse.Namespace], ExitCode]
_EPILOG = "Exit codes: 0 done, 1 faults were found, 2 refused and nothing changed."


def _arguments(parser: argparse.ArgumentParser) -> None:
    _price_check(parser)
    actions = parser.add_subparsers(dest="action", metavar="ACTION")

    def add(name: str, words: str) -> argparse.ArgumentParser:
        made = actions.add_parser(name, help=words, description=words, parents=[shared_options()], epilog=_EPILOG)
        made.add_argument("--json", action="store_true", help="print a JSON document instead of a text")
        return made

    add("list", "list the catalogs of the book with their editions, and the one that it plans with")
    new = add("new", "begin an empty catalog")
    new.add_argument("name", metavar="NAME", help="its name; @ may not stand in it")
    check = add("check", "say what keeps the draft of a catalog from being published")
    check.add_argument("edition", metavar="NAME", help=_DRAFT_FIRST)
    health = add("health", "say what to look at before an edition is published")
    health.add_argument("edition", metavar="NAME", help=_DRAFT_FIRST)
    health.add_argument(
        "--jurisdiction",
        metavar="ID",
        default="",
        help="whose questions are asked; default: those of all",
    )
    _diff_arguments(add("diff", "say what differs between two editions, and with --surveys what becomes of stations"))
    _publish_arguments(add("publish", "publish the draft of a catalog as its next edition"))
    discard = add("discard", "let the draft of a catalog be as its newest edition again")
    discard.add_argument("name", metavar="NAME")
    export = add("export", "write an edition to an exchange file, a Data Package")
    export.add_argument("edition", metavar="NAME", help=_NAMED)
    OutputArguments(export).add("--out", FileForm.CATALOGUE, "the file")
    import_arguments(add("import", "take an exchange file or a supplier's table into a draft: all of it, or nothing"))
    add("schema", "print the Data Package that describes tables of parts and prices, for other tools to check them by")
    coverage_arguments(add("coverage", "say which combinations of liquid, duty, outlet and climate it has sets for"))
    price_arguments(add("price", "say which price of a part applies on a day, of which price list, and why"))
    price_list_arguments(
        add("price-list", "price lists with validity, of an edition or a draft"), shared_options, _EPILOG
    )
    use = add("use", "let the book plan with a catalog or one of its editions, unasked")
    use.add_argument("edition", metavar="NAME", help=_NAMED)
    cut_arguments(add("cut", "put hose that is cut to length into a draft, one part for each length"))
    made_up_arguments(add("made-up", "put a set that is sold made up into a draft, one article of several parts"))
    cross_reference_arguments(
        add("cross-reference", "old numbers and the parts that they lead to"), shared_options, _EPILOG
    )
    entry_arguments(
        add("entry", "entries of an edition found and shown, parts of a draft changed"), shared_options, _EPILOG
    )
    family_arguments(add("family", "figures set once for a family of parts of a draft"), shared_options, _EPILOG)
    demonstration = add("demonstration", "do without the invented catalog in this book, or take it in again")
    demonstration.add_argument("wanted", choices=("on", "off"))


_NAMED = "NAME, NAME@3 or NAME@draft; the newest edition where none is said"
_DRAFT_FIRST = "NAME, NAME@3 or NAME@draft; the draft where none is said"


def _diff_arguments(diff: argparse.ArgumentParser) -> None:
    diff.add_argument("before", metavar="A", help=_NAMED)
    diff.add_argument("after", metavar="B", help=_NAMED)
    diff.add_argument(
        "--surveys",
        metavar="PATH",
        type=Path,
        action=InputFile,
        words="a survey",
        several=True,
        help="survey file, or folder of them, that is planned with both; may be given more than once",
    )


def _publish_arguments(publish: argparse.ArgumentParser) -> None:
    publish.add_argument("name", metavar="NAME")
    publish.add_argument("--note", metavar="TEXT", required=True, help="what is new in it")
    publish.add_argument("--by", metavar="WHO", required=True, help="who publishes it")


def _price_check(parser: argparse.ArgumentParser) -> None:
    parser.add_argument("--jurisdiction", metavar="ID", default="us_general", help="whose row says how far is far")


def _run(workbench: Workbench, arguments: argparse.Namespace) -> ExitCode:
    return _ACTIONS[arguments.action](workbench, arguments)


def _prices(workbench: Workbench, arguments: argparse.Namespace) -> ExitCode:
    from spoutline.cli.answer import printable

    story = workbench.story(display_of(arguments, workbench, arguments.jurisdiction))
    found = workbench.parts().price_questions(arguments.jurisdiction)
    asked = said("Prices asked about: {count}", count=len(found)) if found else said("Prices asked about: none")
    lines = [story.edition(workbench.parts().catalogue_edition()), asked]
    for one in found:
        price = story.money(one.part.price_minor(one.currency), one.currency)
        named = f"{one.part.number}  {story.part_name(one.part)}{story.writing.colon} {price}"
        lines.append(f"  {named}. {story.finding(one.finding).sentence}")
    write_standard_output("".join(f"{printable(line)}\n" for line in lines))
    return ExitCode.DOES_NOT_FIT if found else ExitCode.FITS


def _list(workbench: Workbench, arguments: argparse.Namespace) -> ExitCode:
    service = workbench.catalogues()
    chosen, known = service.chosen(), service.all()
    story = workbench.story(display_of(arguments, workbench))
    lines = []
    for one in known:
        mark = "* " if one.name == chosen.catalogue else "  "
        note = said("invented, only read") if one.is_demonstration else _draft_words(one)
        lines.append(f"{mark}{one.name}  ({note})")
        lines += [f"    {_edition_line(edition, story)}" for edition in reversed(one.editions)]
    lines.append(said("planned with unasked: {edition}", edition=chosen))
    document = {"planned_with": str(chosen), "catalogues": [_facts_document(one) for one in known]}
    return write_answer(arguments, lines, document)


def _new(workbench: Workbench, arguments: argparse.Namespace) -> ExitCode:
    made = workbench.catalogues().create(arguments.name)
    return write_answer(arguments, [said("{name}: begun, its draft is empty", name=made.name)], _facts_document(made))


def _check(workbench: Workbench, arguments: argparse.Namespace) -> ExitCode:
    ref = _draft_first(arguments.edition)
    faults = workbench.catalogues().check(ref)
    count = counted("no faults", "{count} fault", "{count} faults", count=len(faults))
    lines = [said("{place}: {said}", place=ref, said=count)]
    lines += [f"  {words().line(InputProblem(str(one.ref), one.column, one.value, one.wanted))}" for one in faults]
    write_answer(arguments, lines, {"edition": str(ref), "faults": [_fault_document(one) for one in faults]})
    return ExitCode.DOES_NOT_FIT if faults else ExitCode.FITS


def _draft_first(text: str) -> EditionRef:
    """Return what a person names: the draft where no edition is said, or the newest edition of what is only read."""
    ref = EditionRef.from_text(text)
    is_named = ref.is_draft or ref.number is not None or ref.catalogue.casefold() == DEMONSTRATION.casefold()
    return ref if is_named else EditionRef(ref.catalogue, is_draft=True)


def _health(workbench: Workbench, arguments: argparse.Namespace) -> ExitCode:
    from datetime import date

    from spoutline.cli.catalogue_text import health_document, health_lines

    ref = _draft_first(arguments.edition)
    notes = workbench.catalogues().health(ref, date.today(), arguments.jurisdiction)
    story = workbench.story(display_of(arguments, workbench, arguments.jurisdiction))
    count = counted("nothing to look at", "{count} note to look at", "{count} notes to look at", count=len(notes))
    lines = [said("{place}: {said}", place=ref, said=count), *health_lines(notes, story)]
    english = workbench.story(json_display(), Language.ENGLISH)
    write_answer(arguments, lines, {"edition": str(ref), "notes": health_document(notes, english)})
    return ExitCode.DOES_NOT_FIT if notes else ExitCode.FITS


def _diff(workbench: Workbench, arguments: argparse.Namespace) -> ExitCode:
    from spoutline.cli.catalogue_cross_reference import reference_change_document, reference_change_line
    from spoutline.cli.catalogue_text import change_document, change_line, effect_document, effect_lines

    service = workbench.catalogues()
    before, after = EditionRef.from_text(arguments.before), EditionRef.from_text(arguments.after)
    found = service.changes(before, after)
    count = counted("no parts differ", "{count} part differs", "{count} parts differ", count=len(found))
    lines = [said("{place}: {said}", place=f"{before} → {after}", said=count)]
    lines += [f"  {change_line(one)}" for one in found]
    leading = service.shelf().reference_changes(before, after)
    lines += [f"  {reference_change_line(one)}" for one in leading]
    document: dict[str, object] = {"before": str(before), "after": str(after)}
    document["changes"] = [change_document(one) for one in found]
    document["cross_references"] = [reference_change_document(one) for one in leading]
    priced = price_list_changes(service.shelf().price_lists(before), service.shelf().price_lists(after))
    lines += [f"  {change_word(kind)} {said('price list {name}', name=name)}" for kind, name in priced]
    document["price_lists"] = [{"change": kind, "id": name} for kind, name in priced]
    common = family_changes(service.families(before), service.families(after))
    lines += [f"  {change_word(kind)} {said('family {name}', name=name)}" for kind, name in common]
    document["families"] = [{"change": kind, "name": name} for kind, name in common]
    if arguments.surveys:
        effects = service.effects(before, after, _surveys(arguments.surveys), TerminalProgress())
        lines += effect_lines(effects, workbench.story(display_of(arguments, workbench)))
        document["positions"] = effect_document(effects, workbench.story(json_display(), Language.ENGLISH))
    return write_answer(arguments, lines, document)


def _surveys(paths: Sequence[Path]) -> tuple[Survey, ...]:
    """Return the surveys in files and folders, each folder by name; raise ``InputFault`` where one is none."""
    files = [one for path in paths for one in (files_in(path, "*.json") if path.is_dir() else [path])]
    return tuple(read_survey(str(file)) for file in files)


def _publish(workbench: Workbench, arguments: argparse.Namespace) -> ExitCode:
    from datetime import date

    progress = TerminalProgress("{done} of {total} parts checked")
    said_of_it = {"notes": arguments.note, "publisher": arguments.by}
    done = workbench.catalogues().publish(arguments.name, progress, on=date.today(), **said_of_it)
    story = workbench.story(display_of(arguments, workbench))
    return write_answer(
        arguments, [said("published: {edition}", edition=_edition_line(done, story))], _edition_document(done)
    )


def _discard(workbench: Workbench, arguments: argparse.Namespace) -> ExitCode:
    workbench.catalogues().discard_draft(arguments.name)
    facts = workbench.catalogues().shelf().catalogue(arguments.name)
    return write_answer(
        arguments, [said("{place}: {said}", place=facts.name, said=_draft_words(facts))], _facts_document(facts)
    )


def _export(workbench: Workbench, arguments: argparse.Namespace) -> ExitCode:
    from spoutline.model.faults import InputFault

    ref = EditionRef.from_text(arguments.edition)
    if arguments.out is None:
        raise InputFault((InputProblem("", "--out", "nothing", "name the file to write"),))
    content = workbench.catalogues().export(ref)
    with arguments.output_plan.staged({arguments.out: content}) as files:
        files.place()
    document = {"edition": str(ref), "file": str(arguments.out), "size_bytes": len(content)}
    return write_answer(arguments, [said("{name}: written to {files}", name=ref, files=arguments.out)], document)


def _schema(_workbench: Workbench, _arguments: argparse.Namespace) -> ExitCode:
    from spoutline.planning.table_intake.open_schema import table_package

    write_standard_output(json.dumps(table_package(), indent=2, ensure_ascii=False) + "\n")
    return ExitCode.FITS


def _use(workbench: Workbench, arguments: argparse.Namespace) -> ExitCode:
    chosen = workbench.catalogues().choose(EditionRef.from_text(arguments.edition))
    return write_answer(
        arguments, [said("planned with unasked: {edition}", edition=chosen)], {"planned_with": str(chosen)}
    )


def _demonstration(workbench: Workbench, arguments: argparse.Namespace) -> ExitCode:
    service = workbench.catalogues()
    service.leave_demonstration_out(left_out=arguments.wanted == "off")
    names = [one.name for one in service.all()]
    return write_answer(
        arguments, [said("catalogs of the book: {names}", names=", ".join(names))], {"catalogues": names}
    )


def _draft_words(facts: CatalogueFacts) -> str:
    parts = counted("draft without parts", "draft of {count} part", "draft of {count} parts", count=facts.draft_parts)
    references = counted("", "{count} old number", "{count} old numbers", count=facts.references)
    if facts.has_changes:
        state = said("put: {put}, replaced or taken out: {gone}", put=facts.draft_put, gone=facts.draft_gone)
    else:
        state = said("as published")
    beside = (
        said("old numbers changed") if facts.references_changed else "",
        said("price lists changed") if facts.price_lists_changed else "",
        said("families changed") if facts.families_changed else "",
    )
    return ", ".join(text for text in (parts, references, state, *beside) if text)


def _edition_line(edition: CatalogueEdition, story: Story) -> str:
    day = f"  {edition.published_on.isoformat()}" if edition.published_on else ""
    by = f"  {said('by {name}', name=edition.publisher)}" if edition.publisher else ""
    parts = counted("no parts", "{count} part", "{count} parts", count=edition.parts_count)
    open_count = edition.parts_count - edition.described_count
    rest = f", {said('{count} not yet described', count=open_count)}" if open_count else ""
    note = f"  {edition.notes}" if edition.notes else ""
    return f"{edition.ref}  {story.edition(edition.title)}{day}{by}  {parts}{rest}{note}"


def _fault_document(fault: EntryFault) -> dict[str, str]:
    return {
        "number": fault.ref.number,
        "maker": fault.ref.maker,
        "column": fault.column,
        "value": fault.value,
        "wanted": fault.wanted,
    }


def _facts_document(facts: CatalogueFacts) -> dict[str, object]:
    return {
        "name": facts.name,
        "read_only": facts.is_demonstration,
        "draft": {"parts": facts.draft_parts, "put": facts.draft_put, "replaced_or_gone": facts.draft_gone},
        "cross_references": {"draft": facts.references, "changed": facts.references_changed},
        "price_lists": {"changed": facts.price_lists_changed},
        "families": {"changed": facts.families_changed},
        "editions": [_edition_document(one) for one in facts.editions],
    }


def _edition_document(edition: CatalogueEdition) -> dict[str, object]:
    return {
        "edition": str(edition.ref),
        "number": edition.number,
        "title": edition.title,
        "published_on": None if edition.published_on is None else edition.published_on.isoformat(),
        "publisher": edition.publisher,
        "notes": edition.notes,
        "parts": edition.parts_count,
        "described": edition.described_count,
        "fingerprint": edition.fingerprint,
    }


def _saying(run: Callable[[Workbench, argparse.Namespace], Said]) -> _Action:
    """Return the action that does ``run`` and says what it returns."""

    def act(workbench: Workbench, arguments: argparse.Namespace) -> ExitCode:
        code, lines, document = run(workbench, arguments)
        write_answer(arguments, lines, document)
        return code

    return act


_ACTIONS: dict[str | None, _Action] = {
    None: _prices,
    "list": _list,
    "new": _new,
    "check": _check,
    "health": _health,
    "diff": _diff,
    "publish": _publish,
    "discard": _discard,
    "export": _export,
    "import": _saying(run_import),
    "schema": _schema,
    "coverage": _saying(run_coverage),
    "price": _saying(run_price),
    "price-list": _saying(run_price_list),
    "use": _use,
    "cross-reference": _saying(run_cross_reference),
    "cut": _saying(run_cut),
    "made-up": _saying(run_made_up),
    "entry": _saying(run_entry),
    "family": _saying(run_family),
    "demonstration": _demonstration,
}

WORK = CommandWork(_arguments, _run)
