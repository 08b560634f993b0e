"""`record`: read filled commissioning forms, keep wear and inspections, list what the book holds."""

from __future__ import annotations

import argparse
import sys
from collections.abc import Iterator, Sequence
from pathlib import Path
from typing import TYPE_CHECKING

from spoutline.book.survey_faults import made
from spoutline.cli.certificates import certificate_arguments, write_certificates
from spoutline.cli.command import DEFAULT_JURISDICTION, CommandWork, add_survey, display_of, shared_options
from spoutline.cli.exit_code import ExitCode
from spoutline.cli.files import read_survey, write_standard_output
from spoutline.cli.mail import add_paper, paper_file, paper_files
from spoutline.cli.outputs import InputFile, OutputArguments
from spoutline.cli.sets import add_sets, sets_of
from spoutline.cli.typed import day_of
from spoutline.cli.voice import said
from spoutline.model.faults import InputFault, InputProblem
from spoutline.model.inspection import InspectionItemId
from spoutline.model.part_ref import PartRef, told_apart
from spoutline.model.quantity import Dimension
from spoutline.model.record import (
    MEASURED_ITEMS,
    WEAR_REASONS,
    ChangeReason,
    CommissioningRecord,
    InspectionEntry,
    ItemResult,
    JudgedRecord,
    WearEntry,
)
from spoutline.model.worded import Worded
from spoutline.units.accepted import UnitSystem
from spoutline.units.meter_readings import MeterReading, parse_reading

if TYPE_CHECKING:
    from datetime import date

    from spoutline.bootstrap import Workbench
    from spoutline.bootstrap.installer import InstallerService
    from spoutline.explain.plan.story import Story
    from spoutline.model.language import Language
    from spoutline.model.plan import SitePlan
    from spoutline.model.survey import Survey


def _arguments(parser: argparse.ArgumentParser) -> None:
    actions = parser.add_subparsers(dest="action", required=True, metavar="ACTION")
    _read_arguments(actions.add_parser("read", help="read a filled commissioning form", parents=[shared_options()]))
    _wear_arguments(actions.add_parser("wear", help="note a replaced part in the wear log", parents=[shared_options()]))
    _inspected_arguments(actions.add_parser("inspected", help="note an inspection as done", parents=[shared_options()]))
    _due_arguments(actions.add_parser("due", help="list what is due at each position", parents=[shared_options()]))
    certifying = "write certificates of the bond and leak tests that the book holds"
    certificate_arguments(actions.add_parser("certificate", help=certifying, parents=[shared_options()]))
    finding = actions.add_parser(
        "find", help="find the survey of the book that a scanned code names", parents=[shared_options()]
    )
    finding.add_argument("code", metavar="CODE", help="text of the code on a position sheet or form")
    listing = actions.add_parser("list", help="list the records of a site", parents=[shared_options()])
    listing.add_argument("site", metavar="SITE", help="name of the site")


def _read_arguments(parser: argparse.ArgumentParser) -> None:
    parser.add_argument(
        "form",
        metavar="FILLED",
        type=Path,
        action=InputFile,
        words="the filled form",
        help="the form as a PDF reader saved it, or as the page for a tablet did (.json)",
    )
    parser.add_argument(
        "--survey",
        metavar="SURVEY",
        required=True,
        action=InputFile,
        words="the survey itself",
        help="the survey that the form was printed from",
    )
    add_sets(parser)
    outputs = OutputArguments(parser)
    add_paper(outputs, "write the records read here, each from a new page on")
    outputs.add_paper("--bill", "write the bill as built here")
    parser.add_argument(
        "--photo",
        metavar="F",
        type=Path,
        action=InputFile,
        words="a photo of the record",
        several=True,
        default=[],
        help="photo of the position; may be repeated; on a form of several, name it with --position",
    )
    parser.add_argument("--position", metavar="LABEL", help="take only this position of the form, instead of all")
    parser.add_argument("--dry-run", action="store_true", help="check the form and keep nothing in the book")


def _wear_arguments(parser: argparse.ArgumentParser) -> None:
    parser.add_argument("site", metavar="SITE", help="name of the site")
    parser.add_argument("position", metavar="POSITION")
    parser.add_argument("removed", metavar="PARTNUMBER", help="part taken off: number, or maker and number")
    parser.add_argument("--fitted", metavar="PARTNUMBER", default="", help="part put on: number, or maker and number")
    parser.add_argument(
        "--survey",
        metavar="SURVEY",
        action=InputFile,
        words="the survey itself",
        help="survey of the site; without it the last one that the book holds",
    )
    add_sets(parser)
    parser.add_argument("--reason", choices=[reason.value for reason in WEAR_REASONS], required=True)
    parser.add_argument("--on", metavar="YYYY-MM-DD", required=True, help="day of the work")
    parser.add_argument("--note", metavar="TEXT", default="")
    parser.add_argument("--by", metavar="WHO", default="", help="who did the work")


def _inspected_arguments(parser: argparse.ArgumentParser) -> None:
    parser.add_argument("site", metavar="SITE", help="name of the site")
    parser.add_argument("position", metavar="POSITION")
    parser.add_argument("item", choices=[item.value for item in InspectionItemId], metavar="ITEM")
    parser.add_argument("--on", metavar="YYYY-MM-DD", required=True, help="day of the inspection")
    parser.add_argument("--result", choices=[result.value for result in ItemResult], default=ItemResult.PASSED.value)
    parser.add_argument("--note", metavar="TEXT", default="")
    parser.add_argument("--by", metavar="WHO", default="", help="who looked")
    parser.add_argument(
        "--resistance", metavar="READING", help="resistance measured, such as '1.2 kohm', or OL for an open circuit"
    )
    parser.add_argument("--with", dest="instruments", metavar="TEXT", default="", help="instruments used, with numbers")


def _due_arguments(parser: argparse.ArgumentParser) -> None:
    add_survey(parser)
    add_sets(parser)
    parser.add_argument(
        "--in-service", metavar="YYYY-MM-DD", required=True, help="day of handing over, from which is counted"
    )
    parser.add_argument("--by", dest="until", metavar="YYYY-MM-DD", help="only what is due by this day")


def _run(workbench: Workbench, arguments: argparse.Namespace) -> ExitCode:
    service = workbench.packing()
    match arguments.action:
        case "read":
            return _read(workbench, service, arguments)
        case "wear":
            return _wear(workbench, service, arguments)
        case "inspected":
            service.records().add_inspection(_inspected(arguments, workbench.language))
        case "due":
            return _due(workbench, service, arguments)
        case "certificate":
            return write_certificates(workbench, arguments)
        case "find":
            found = service.find(arguments.code)
            state = said("as printed") if found.is_as_printed else said("changed since it was printed")
            survey, name = said("survey {number}", number=found.stored.id), found.stored.survey.site.name
            write_standard_output(f"{survey}  {name}  {found.position}  {state}\n")
        case _:
            return _list(
                service, arguments.site, service.words(workbench.language, display_of(arguments, workbench)).story
            )
    return ExitCode.FITS


def _inspected(arguments: argparse.Namespace, language: Language) -> InspectionEntry:
    """Return an inspection as it was noted; raise ``InputFault``."""
    reading = MeterReading(value=None)
    if arguments.resistance is not None:
        if InspectionItemId(arguments.item) not in MEASURED_ITEMS:
            items = " or ".join(sorted(MEASURED_ITEMS))
            wanted = Worded("a resistance is read for {items}", items=items)
            raise InputFault((InputProblem("", "--resistance", repr(arguments.resistance), wanted),))
        written = arguments.resistance
        reading = parse_reading(written, Dimension.RESISTANCE, UnitSystem.SI, language, field="--resistance")
    return made(
        InspectionEntry,
        site=_name(arguments.site, "SITE"),
        position=_name(arguments.position, "POSITION"),
        item=InspectionItemId(arguments.item),
        done_on=_day(arguments.on),
        result=ItemResult(arguments.result),
        note=arguments.note[:200],
        done_by=arguments.by[:200],
        instruments=arguments.instruments[:200],
        reading=reading.value,
        over_range=reading.over_range,
    )


def _wear(workbench: Workbench, service: InstallerService, arguments: argparse.Namespace) -> ExitCode:
    entry = made(
        WearEntry,
        site=_name(arguments.site, "SITE"),
        position=_name(arguments.position, "POSITION"),
        done_on=_day(arguments.on),
        removed=workbench.parts().part(arguments.removed).ref,
        fitted=workbench.parts().part(arguments.fitted).ref if arguments.fitted else "",
        reason=ChangeReason(arguments.reason),
        note=arguments.note[:200],
        done_by=arguments.by[:200],
        catalogue_edition=workbench.parts().catalogue_edition(),
    )
    survey = _survey_of(workbench, entry, arguments.survey)
    plan = None
    if survey is None:
        unjudged = said(
            "kept, but not judged: the book holds no survey of {site}; "
            "name the survey of the site with --survey, or keep it in the book with the window",
            site=entry.site,
        )
        sys.stderr.write(f"spoutline: {unjudged}\n")
    else:
        from spoutline.planning.pack.picked import only_positions

        planned = sets_of(workbench, survey, arguments, with_alternatives=False)
        plan = only_positions(planned, (entry.position,)).positions[0]
    jurisdiction = DEFAULT_JURISDICTION if survey is None else survey.site.jurisdiction
    story = workbench.story(display_of(arguments, workbench, jurisdiction))
    judged = service.judge_wear(entry, plan, survey, story)
    service.records().add_wear(judged)
    write_standard_output("".join(f"✗ {text}\n" for text in judged.found))
    return ExitCode.DOES_NOT_FIT if judged.found or survey is None else ExitCode.FITS


def _due(workbench: Workbench, service: InstallerService, arguments: argparse.Namespace) -> ExitCode:
    """Print what is due, earliest first; exit 1 where work left something to be done before a position is used."""
    from spoutline.documents.pack.inspection_sheet import item_text
    from spoutline.model.inspection import InspectionInterval

    in_service, until = day_of(arguments.in_service, "--in-service"), day_of(arguments.until, "--by")
    site_plan = sets_of(workbench, read_survey(arguments.survey), arguments, with_alternatives=False)
    found = service.due(site_plan, in_service) if in_service is not None else ()
    shown = [one for one in found if until is None or one.next_due <= until]
    shown.sort(key=lambda one: (one.next_due, one.position, list(InspectionItemId).index(one.item.id)))
    display = display_of(arguments, workbench, site_plan.survey.site.jurisdiction)
    story = service.words(workbench.language, display).story
    lines = (f"{one.next_due}  {one.position}  {one.item.id}  {item_text(one, story)}\n" for one in shown)
    write_standard_output("".join(lines))
    left = any(one.item.interval is InspectionInterval.ONCE for one in found)
    return ExitCode.DOES_NOT_FIT if left else ExitCode.FITS


def _survey_of(workbench: Workbench, entry: WearEntry, path: str | None) -> Survey | None:
    """Return the survey that a replacement is judged by: the one named, else the book's last one of that site."""
    if path is not None:
        survey = read_survey(path)
        if survey.site.name != entry.site:
            wanted = Worded("the survey is of {site_name}", site_name=survey.site.name)
            raise InputFault((InputProblem("", "SITE", repr(entry.site), wanted),))
        return survey
    book = workbench.book()
    named = (one.id for one in book.entries() if one.name == entry.site)
    return next((book.stored(one).survey for one in named), None)


def _read(workbench: Workbench, service: InstallerService, arguments: argparse.Namespace) -> ExitCode:
    from spoutline.planning.pack.picked import plan_of

    form = service.read_form(arguments.form, workbench.language)
    records = form.records
    if arguments.position is not None:
        records = tuple(record for record in records if record.position == arguments.position)
        if not records:
            wanted = "the form holds no such position"
            raise InputFault((InputProblem("", "--position", repr(arguments.position), wanted),))
    if len(records) > 1 and arguments.photo:
        wanted = "the form holds several positions; name the one of the photo with --position"
        raise InputFault((InputProblem("", "--photo", "several positions", wanted),))
    pictures = [service.read_photo(path) for path in arguments.photo]
    photos = {**form.photos, **{note.sha256: content for note, content in pictures}}
    added = tuple(note for note, _ in pictures if note.sha256 not in form.photos)
    records = tuple(record.model_copy(update={"photos": (*record.photos, *added)}) for record in records)
    survey = read_survey(arguments.survey)
    site_plan = sets_of(workbench, survey, arguments)
    _check_sets(records, site_plan)
    language, display = workbench.language, display_of(arguments, workbench, survey.site.jurisdiction)
    words, story = service.words(language, display), workbench.story(display)
    plans = {record.position: plan_of(record, site_plan) for record in records}
    judged = tuple(service.judge_built(one, plans[one.position], survey, words, story) for one in records)
    contents: dict[Path, bytes] = {}
    if arguments.pdf or arguments.mail:
        written = tuple(one for one in judged if one.record.is_filled)
        if not written:
            wanted = "the form is empty; a record needs at least one entry, a day or a name"
            raise InputFault((InputProblem("", "form", "nothing entered", wanted),))
        contents |= paper_files(
            workbench,
            arguments,
            lambda form: service.record_sheet(written, site_plan, photos, language, display, form=form),
        )
    if arguments.bill:
        filled = [one.record for one in judged if one.record.is_filled]
        built = service.as_built(site_plan, filled)
        contents[arguments.bill] = paper_file(
            workbench,
            arguments.bill,
            lambda form: workbench.bills().pdf(built, display, records=filled, form=form),
        )
    with arguments.output_plan.staged(contents) as files:
        if arguments.dry_run:
            files.place()
        else:
            kept = [(one.record, photos) for one in judged if one.record.is_filled]
            service.records().add_commissionings(kept, files.place)
    write_standard_output("".join(f"{line}\n" for one in judged for line in record_lines(one, words.story)))
    return ExitCode.FITS if all(one.is_clear for one in judged) else ExitCode.DOES_NOT_FIT


def _check_sets(records: Sequence[CommissioningRecord], site_plan: SitePlan) -> None:
    """Raise ``InputFault`` where a form was printed for other sets than those that it is held against."""
    shown = {one.position.label: one.chosen.hanging_set.refs for one in site_plan.positions if one.chosen}
    problems = []
    for record in records:
        expected = shown.get(record.position, ())
        same = len(record.parts) == len(expected) and all(map(PartRef.names, record.parts, expected))
        if record.parts and expected and not same:
            wanted = Worded(
                "the sets shown here hold {parts}: name those that the form was printed for with --sets",
                parts=", ".join(told_apart(expected)),
            )
            problems.append(
                InputProblem(
                    "",
                    Worded("form, {position}", position=record.position),
                    ", ".join(told_apart(record.parts)),
                    wanted,
                )
            )
    if problems:
        raise InputFault(tuple(problems))


def record_lines(judged: JudgedRecord, story: Story) -> Iterator[str]:
    """Return a record as lines of text: position, then each item with reading, limit and verdict."""
    from spoutline.documents.pack.commissioning_form import limit_text
    from spoutline.documents.pack.record_sheet import entered_text, unread_text, verdict_text
    from spoutline.explain.pack.words import PackWord

    record = judged.record
    yield f"{record.site}, {record.position} ({record.plan_revision})"
    for one in judged.entries:
        if one.item.applies or one.entry is not None:
            limit = limit_text(one.item, story)
            shown = f"{entered_text(one, story)} ({limit})" if limit else entered_text(one, story)
            yield f"  {verdict_text(one.verdict, story)}: {story.word(one.item.id)}: {shown}"
    for field in record.unread:
        yield f"  ? {story.word(PackWord.ASKED_AGAIN)}: {unread_text(field, story)}"
    for text in judged.faults:
        yield f"  ✗ {text}"
    for change in record.changes:
        yield f"  {change.planned} → {', '.join(map(str, change.fitted)) or '–'}: {story.word(change.reason)}"


def _list(service: InstallerService, site: str, story: Story) -> ExitCode:
    """Print the records of a site, each with what was found wrong; what a newer record put right does not count."""
    records = service.records()
    newest = {stored.record.position: stored.record for stored in records.commissioning(site)}
    write_standard_output("".join(f"{line}\n" for line in _listed(service, site, story)))
    wrong = any(_found(one, story) for one in newest.values()) or any(one.found for one in records.wear(site))
    return ExitCode.DOES_NOT_FIT if wrong else ExitCode.FITS


def _found(record: CommissioningRecord, story: Story) -> tuple[str, ...]:
    """Return what was found wrong in a record; one of old tells only whether it is signed and dated."""
    from spoutline.documents.pack.record_faults import paper_faults

    return record.found or tuple(paper_faults(record, story))


def _listed(service: InstallerService, site: str, story: Story) -> Iterator[str]:
    records = service.records()
    commissioned = records.commissioning(site)
    known = [ref for stored in commissioned for ref in (*stored.record.parts, *stored.record.as_built)]
    for stored in commissioned:
        record = stored.record
        when = record.done_on or stored.recorded_at.date()
        shown = ", ".join(told_apart(record.as_built, known))
        yield f"{when}  {said('commissioning')}  {record.position}  {record.done_by}  {shown}"
        yield from (f"  ✗ {text}" for text in _found(record, story))
    for entry in records.wear(site):
        change = f"{entry.removed} → {entry.fitted or '–'}"
        yield f"{entry.done_on}  {said('wear')}  {entry.position}  {change}  {story.word(entry.reason)}"
        yield from (f"  ✗ {text}" for text in entry.found)
    for done in records.inspections(site):
        yield f"{done.done_on}  {said('inspection')}  {done.position}  {done.item}  {story.word(done.result)}"


def _name(text: str, field: str) -> str:
    if not 1 <= len(text.strip()) <= 60:
        raise InputFault((InputProblem("", field, repr(text), "a name of 1 to 60 characters is needed"),))
    return text.strip()


def _day(text: str) -> date:
    found = day_of(text, "--on")
    if found is None:
        raise InputFault((InputProblem("", "--on", "nothing", "write a date of the calendar as YYYY-MM-DD"),))
    return found


WORK = CommandWork(_arguments, _run)
