"""`quotation`: the quotations in the book, from draft to answer: keep, issue, revise, compare, print again."""

from __future__ import annotations

import argparse
from collections.abc import Callable, Iterator
from contextlib import AbstractContextManager
from functools import partial
from typing import TYPE_CHECKING

from spoutline.cli.command import CommandWork, add_survey, add_terms, display_of, read_terms, shared_options
from spoutline.cli.exit_code import ExitCode
from spoutline.cli.files import read_survey, write_standard_output
from spoutline.cli.mail import add_mail, add_paper, mail_of, paper_files
from spoutline.cli.outputs import OutputArguments
from spoutline.cli.progress import TerminalProgress
from spoutline.cli.quotation_changes import print_changes, print_touched
from spoutline.cli.quotation_list import add_listing, list_quotations
from spoutline.cli.quotation_names import revision_text, state_line, story_of
from spoutline.cli.typed import day, serial
from spoutline.cli.voice import said
from spoutline.documents.own_files import FileForm
from spoutline.model.faults import InputFault, InputProblem
from spoutline.model.quotation_status import QuotationStatus
from spoutline.whole_files import OutputPlan, Staged

if TYPE_CHECKING:
    from pathlib import Path

    from spoutline.book.quotation_records import IssuedPapers, StoredQuotation
    from spoutline.bootstrap import Workbench
    from spoutline.explain.plan.story import Story
    from spoutline.model.quotation import Quotation
    from spoutline.model.quoted_option import QuotedAlternate

_Action = Callable[["Workbench", argparse.Namespace], ExitCode]


def _arguments(parser: argparse.ArgumentParser) -> None:
    actions = parser.add_subparsers(dest="action", required=True, metavar="ACTION")

    def add(name: str, words: str) -> argparse.ArgumentParser:
        return actions.add_parser(name, help=words, parents=[shared_options()])

    add_listing(add("list", "list quotations, last changed first"))
    follow = add("follow-up", "keep the day on which to ask the customer again, until the answer comes")
    follow.add_argument("id", metavar="ID", help="id in the book, or the number printed on the paper")
    until = follow.add_mutually_exclusive_group(required=True)
    until.add_argument("day", metavar="YYYY-MM-DD", nargs="?", type=day, help="the day")
    until.add_argument("--none", action="store_true", help="no such day any more")
    keep = add("keep", "quote a survey and keep it as a draft")
    _quoted(keep)
    _previewed(add("preview", "print what quoting a changed survey again would mean in money; keeps nothing"))
    _taken(add("alternate", "take an alternate in the place of its part: quote so and keep it as a new revision"))
    show = add("show", "print a quotation's options, amounts and history")
    issue = add("issue", "issue a draft; its papers are kept byte for byte")
    answer = add("answer", "note the customer's answer")
    revise = add("revise", "quote again as a new revision; a draft is saved over")
    reprint = add("print", "write the papers of an issued revision again")
    changes = add("changes", "print what changed between two revisions")
    margin = add("margin", "print cost and margin of every line and option, which no paper of the customer shows")
    margin.add_argument("--json", action="store_true", help="print a JSON document instead of a text")
    for one in (show, issue, answer, revise, reprint, changes, margin):
        one.add_argument("id", metavar="ID", help="id in the book, or the number printed on the paper")
    _issued(issue)
    _answered(answer)
    _quoted(revise)
    for one in (issue, answer):
        one.add_argument("--by", metavar="NAME", required=True, help="who takes this step")
    _papers_of(issue)
    reprinted = _papers_of(reprint)
    add_mail(reprinted)
    reprinted.add("--csv", FileForm.CSV, "write the lines for an order system, of the option ordered, here")
    _margin_papers(margin)
    for one in (reprint, margin):
        one.add_argument("--revision", metavar="N", type=serial, help="the newest one where not given")
    changes.add_argument("before", metavar="BEFORE", type=serial)
    changes.add_argument("after", metavar="AFTER", type=serial)
    touched = add("touched", "list open quotations that a change of catalog or price list touches")
    expire = add("expire", "let issued quotations expire whose last day is over")
    for one in (touched, expire):
        one.add_argument("--today", metavar="YYYY-MM-DD", required=True, type=day)


def _issued(issue: argparse.ArgumentParser) -> None:
    issue.add_argument(
        "--incomplete",
        metavar="REASON",
        default="",
        help="why options that leave hoses out are issued all the same; stands on the paper with the name",
    )
    issue.add_argument(
        "--low-margin",
        metavar="REASON",
        default="",
        help="why lines below cost or the least margin are issued all the same; kept with the name, on no paper",
    )


def _answered(answer: argparse.ArgumentParser) -> None:
    answer.add_argument("answer", choices=[QuotationStatus.ACCEPTED.value, QuotationStatus.DECLINED.value])
    answer.add_argument("--note", metavar="TEXT", default="")
    answer.add_argument("--option", metavar="TITLE", default="", help="option ordered, where there are several")


def _papers_of(parser: argparse.ArgumentParser) -> OutputArguments:
    outputs = OutputArguments(parser)
    outputs.add("--pdf", FileForm.PDF, "write the quotation here")
    outputs.add("--html", FileForm.HTML, "write the quotation as one HTML page for screen readers and mails here")
    outputs.add("--xlsx", FileForm.XLSX, "write the workbook with formulas here")
    return outputs


def _margin_papers(margin: argparse.ArgumentParser) -> None:
    outputs = OutputArguments(margin)
    add_paper(outputs, "write the internal sheet here")
    outputs.add("--xlsx", FileForm.XLSX, "write the internal sheet as a workbook here")
    outputs.add("--csv", FileForm.CSV, "write the lines with cost and margin here")


def _previewed(parser: argparse.ArgumentParser) -> None:
    parser.add_argument("id", metavar="ID", help="id in the book, or the number printed on the paper")
    add_survey(parser)
    add_terms(parser, required=False)
    parser.add_argument("--json", action="store_true", help="print a JSON document instead of a text")


def _taken(parser: argparse.ArgumentParser) -> None:
    parser.add_argument("id", metavar="ID", help="id in the book, or the number printed on the paper")
    parser.add_argument("part", metavar="PART", help="number of the alternate, or its maker and number")
    parser.add_argument("--by", metavar="NAME", default="", help="who quotes")
    parser.add_argument("--preview", action="store_true", help="print what it means in money; keep nothing")
    parser.add_argument("--json", action="store_true", help="print a JSON document instead of a text")


def _quoted(parser: argparse.ArgumentParser) -> None:
    add_survey(parser)
    add_terms(parser)
    parser.add_argument("--by", metavar="NAME", default="", help="who quotes")


def _run(workbench: Workbench, arguments: argparse.Namespace) -> ExitCode:
    if hasattr(arguments, "id"):
        arguments.id = workbench.quoting().life().named(arguments.id).id
    return _ACTIONS[arguments.action](workbench, arguments)


def _follow_up(workbench: Workbench, arguments: argparse.Namespace) -> ExitCode:
    stored = workbench.quoting().life().follow_up(arguments.id, arguments.day)
    follow = said("follow up {day}", day=stored.follow_up) if stored.follow_up else said("no follow-up")
    write_standard_output(f"{state_line(stored, story_of(workbench, arguments, stored))}  {follow}\n")
    return ExitCode.FITS


def _made(workbench: Workbench, arguments: argparse.Namespace) -> Quotation:
    service = workbench.quoting()
    survey = read_survey(arguments.survey)
    terms = read_terms(workbench, arguments, survey)
    logo = service.terms().logo(terms, arguments.terms.parent)
    display = display_of(arguments, workbench, survey.site.jurisdiction)
    origin = None
    if (kept := workbench.book().numbered(survey)) is not None:
        survey, origin = kept.survey, (kept.id, kept.revision)
    return service.quote(survey, terms, display, origin=origin, logo=logo, progress=TerminalProgress()).quotation


def _preview(workbench: Workbench, arguments: argparse.Namespace) -> ExitCode:
    from spoutline.documents.quotation.money_change import money_lines

    service = workbench.quoting()
    stored, survey = service.life().stored(arguments.id), read_survey(arguments.survey)
    before = stored.quotation
    terms = before.terms if arguments.terms is None else read_terms(workbench, arguments, survey)
    logo = "" if arguments.terms is None else service.terms().logo(terms, arguments.terms.parent)
    display = display_of(arguments, workbench, survey.site.jurisdiction)
    found = service.foresee(before, survey, terms, display, logo=logo, progress=TerminalProgress())
    if arguments.json:
        write_standard_output(service.papers().money_json(found.change, before, stored.revision))
    else:
        write_standard_output("\n".join(money_lines(found.change, workbench.story(display))) + "\n")
    return ExitCode.FITS


def _take_alternate(workbench: Workbench, arguments: argparse.Namespace) -> ExitCode:
    from spoutline.documents.quotation.money_change import money_lines

    service = workbench.quoting()
    stored = service.life().stored(arguments.id)
    before = stored.quotation
    taken = service.alternate(before, arguments.part)
    display = display_of(arguments, workbench, before.pins.jurisdiction_id)
    found = service.with_alternate(before, taken, display, TerminalProgress())
    if arguments.json:
        write_standard_output(service.papers().money_json(found.change, before, stored.revision))
    else:
        write_standard_output("\n".join(money_lines(found.change, workbench.story(display))) + "\n")
    if arguments.preview:
        return ExitCode.FITS
    quotation = _with_survey_kept(workbench, before, found.quotation, taken)
    if stored.status is QuotationStatus.DRAFT:
        kept = service.life().save_draft(stored, quotation, arguments.by)
    else:
        is_order = stored.status is QuotationStatus.ACCEPTED
        kept = service.life().revise(stored, quotation, arguments.by, changes_order=is_order)
    return ExitCode.FITS if arguments.json else _print_state(workbench, arguments, kept)


def _with_survey_kept(workbench: Workbench, before: Quotation, made: Quotation, taken: QuotedAlternate) -> Quotation:
    """Save the survey with the alternate where the book has it as it was quoted; else the quotation alone has it.

    Values decide what is as it was quoted; what was answered since stays answered.
    """
    from spoutline.model.answered import surveyed_only
    from spoutline.planning.refit.alternates import with_alternate

    number = before.pins.survey_id
    known = {entry.id for entry in workbench.book().entries()}
    if number is None or number not in known:
        return made
    stored = workbench.book().stored(number)
    if before.pins.survey not in (stored.survey, surveyed_only(stored.survey)):
        return made
    kept = workbench.book().save(stored, with_alternate(stored.survey, before, taken))
    as_quoted = kept.survey if before.pins.survey == stored.survey else surveyed_only(kept.survey)
    return made.of_survey_revision(kept.revision, as_quoted or kept.survey)


def _keep(workbench: Workbench, arguments: argparse.Namespace) -> ExitCode:
    return _print_state(
        workbench, arguments, workbench.quoting().life().keep(_made(workbench, arguments), arguments.by)
    )


def _revise(workbench: Workbench, arguments: argparse.Namespace) -> ExitCode:
    service = workbench.quoting()
    stored, quotation = service.life().stored(arguments.id), _made(workbench, arguments)
    if stored.status is QuotationStatus.DRAFT:
        return _print_state(workbench, arguments, service.life().save_draft(stored, quotation, arguments.by))
    return _print_state(workbench, arguments, service.life().revise(stored, quotation, arguments.by))


def _issue(workbench: Workbench, arguments: argparse.Namespace) -> ExitCode:
    service = workbench.quoting()
    plan: OutputPlan = arguments.output_plan

    def write(papers: IssuedPapers) -> AbstractContextManager[Staged]:
        return plan.staged(_papers(arguments, papers))

    stored = service.life().stored(arguments.id)
    display = display_of(arguments, workbench, stored.quotation.pins.jurisdiction_id)
    issued = service.life().issue(
        stored, arguments.by, display, write, arguments.incomplete, low_margin=arguments.low_margin
    )
    return _print_state(workbench, arguments, issued)


def _answer(workbench: Workbench, arguments: argparse.Namespace) -> ExitCode:
    service = workbench.quoting()
    answer = QuotationStatus(arguments.answer)
    stored = service.life().stored(arguments.id)
    done = service.life().answer(stored, answer, arguments.by, arguments.note, arguments.option)
    return _print_state(workbench, arguments, done)


def _print(workbench: Workbench, arguments: argparse.Namespace) -> ExitCode:
    if not any((arguments.pdf, arguments.html, arguments.mail, arguments.xlsx, arguments.csv)):
        wanted = "name at least one file: --pdf, --html, --mail, --xlsx or --csv"
        raise InputFault((InputProblem("", "--pdf", "nothing", wanted),))
    service = workbench.quoting()
    revision = arguments.revision or service.life().stored(arguments.id).revision
    papers = service.life().issued_papers(arguments.id, revision)
    contents = _papers(arguments, papers)
    if arguments.html is not None:
        display = display_of(
            arguments, workbench, service.life().at_revision(arguments.id, revision).pins.jurisdiction_id
        )
        contents[arguments.html] = service.life().issued_html(arguments.id, revision, display)
    if arguments.mail is not None:
        customer = service.life().at_revision(arguments.id, revision).terms.customer
        contents[arguments.mail] = mail_of(workbench, arguments.mail, papers.pdf, customer)
    if arguments.csv is not None:
        ordered = next(
            (one.option for one in reversed(service.life().history(arguments.id)) if one.revision == revision), ""
        )
        contents[arguments.csv] = service.papers().order_csv(
            service.life().at_revision(arguments.id, revision), revision, ordered
        )
    arguments.output_plan.write(contents)
    return ExitCode.FITS


def _papers(arguments: argparse.Namespace, papers: IssuedPapers) -> dict[Path, bytes]:
    """Return the papers that are asked for, by the file that each goes into."""
    named = ((arguments.pdf, papers.pdf), (arguments.html, papers.html), (arguments.xlsx, papers.workbook))
    return {path: content for path, content in named if path is not None}


def _margin(workbench: Workbench, arguments: argparse.Namespace) -> ExitCode:
    from spoutline.cli.quotation_text import margin_lines

    service = workbench.quoting()
    revision = arguments.revision or service.life().stored(arguments.id).revision
    quotation = service.life().at_revision(arguments.id, revision)
    display = display_of(arguments, workbench, quotation.pins.jurisdiction_id)
    contents = paper_files(workbench, arguments, partial(service.papers().margin_sheet, quotation, revision, display))
    if arguments.xlsx is not None:
        contents[arguments.xlsx] = service.papers().margin_workbook(quotation, revision, display)
    if arguments.csv is not None:
        contents[arguments.csv] = service.papers().margin_csv(quotation, revision)
    arguments.output_plan.write(contents)
    if arguments.json:
        write_standard_output(service.papers().margin_json(quotation, revision))
    else:
        write_standard_output("\n".join(margin_lines(quotation, revision, workbench.story(display))) + "\n")
    return ExitCode.FITS


def _show(workbench: Workbench, arguments: argparse.Namespace) -> ExitCode:
    service = workbench.quoting()
    stored = service.life().stored(arguments.id)
    story = story_of(workbench, arguments, stored)
    write_standard_output("\n".join((*_shown(stored, story), *_history(workbench, arguments.id, story))) + "\n")
    return ExitCode.FITS


def _shown(stored: StoredQuotation, story: Story) -> Iterator[str]:
    from spoutline.cli.quotation_text import option_lines

    quotation = stored.quotation
    heading = quotation.terms.heading
    span = said("{first} until {last}", first=heading.dated, last=quotation.valid_to)
    yield f"{revision_text(heading.number, stored.revision)}  {story.word(stored.status)}  {span}"
    yield f"{quotation.terms.customer.name}; {quotation.pins.survey.site.name}"
    if stored.follow_up is not None:
        yield said("follow up {day}", day=stored.follow_up)
    yield from option_lines(quotation, story)


def _history(workbench: Workbench, quotation_id: int, story: Story) -> Iterator[str]:
    for event in workbench.quoting().life().history(quotation_id):
        noted = "; ".join(text for text in (event.option, event.note) if text)
        note = f"{story.writing.colon} {noted}" if noted else ""
        state = f"{said('r{revision}', revision=event.revision)} {story.word(event.status)}"
        yield f"  {event.at:%Y-%m-%d %H:%M} UTC  {state}  {event.by}{note}"


def _expire(workbench: Workbench, arguments: argparse.Namespace) -> ExitCode:
    ids = workbench.quoting().life().expire(arguments.today)
    write_standard_output("".join(f"{one}\n" for one in ids))
    return ExitCode.FITS


def _print_state(workbench: Workbench, arguments: argparse.Namespace, stored: StoredQuotation) -> ExitCode:
    write_standard_output(f"{state_line(stored, story_of(workbench, arguments, stored))}\n")
    ordered = workbench.quoting().life().ordered_revision(stored.id)
    if ordered is not None and ordered != stored.revision:
        write_standard_output(f"{said('revision {revision} is ordered and stands as it is', revision=ordered)}\n")
    return ExitCode.FITS


_ACTIONS: dict[str, _Action] = {
    "list": list_quotations,
    "follow-up": _follow_up,
    "keep": _keep,
    "preview": _preview,
    "alternate": _take_alternate,
    "show": _show,
    "issue": _issue,
    "answer": _answer,
    "revise": _revise,
    "print": _print,
    "margin": _margin,
    "changes": print_changes,
    "touched": print_touched,
    "expire": _expire,
}

WORK = CommandWork(_arguments, _run)
