"""`customer`: the firm's customers in the book, which quotations take their customer from."""

from __future__ import annotations

import argparse
from collections.abc import Callable
from datetime import date
from functools import partial
from typing import TYPE_CHECKING

from spoutline.cli.answer import write_answer
from spoutline.cli.command import CommandWork, display_of, shared_options
from spoutline.cli.exit_code import ExitCode
from spoutline.cli.files import read_survey, write_standard_output
from spoutline.cli.mail import add_paper, paper_files
from spoutline.cli.outputs import InputFile, OutputArguments
from spoutline.cli.typed import serial
from spoutline.cli.voice import said, told
from spoutline.documents.own_files import FileForm
from spoutline.model.faults import InputFault, InputProblem
from spoutline.model.worded import Worded

if TYPE_CHECKING:
    from spoutline.bootstrap import Workbench
    from spoutline.model.customer import Customer
    from spoutline.model.survey import Survey

_FIELDS = {
    "--address": ("address", "address, line by line"),
    "--delivery-address": ("delivery_address", "where goods go, where that is elsewhere"),
    "--contact": ("contact", "who answers questions"),
    "--telephone": ("telephone", "telephone number"),
    "--email": ("email", "e-mail address"),
    "--tax-number": ("registration", "registration or tax number"),
    "--payment": ("payment_terms", "terms of payment"),
}
_LABELS: dict[str, Worded] = {
    "name": Worded("name"),
    "address": Worded("address"),
    "contact": Worded("contact"),
    "telephone": Worded("telephone"),
    "email": Worded("e-mail"),
    "registration": Worded("registration or tax number"),
    "delivery_address": Worded("delivery address"),
    "payment_terms": Worded("payment terms"),
    "discounts": Worded("discounts"),
}


def _arguments(parser: argparse.ArgumentParser) -> None:
    actions = parser.add_subparsers(dest="action", metavar="ACTION", required=True)

    def add(name: str, words: str) -> argparse.ArgumentParser:
        made = actions.add_parser(name, help=words, description=words, parents=[shared_options()])
        made.add_argument("--json", action="store_true", help="print a JSON document instead of a text")
        return made

    listing = add("list", "list the customers of the book by name")
    listing.add_argument("text", metavar="TEXT", nargs="?", default="", help="words of name, address or contact")
    add_paper(OutputArguments(listing), "write the list as a paper here")
    add("show", "show a customer").add_argument("name", metavar="NAME")
    for name, words in (("add", "put a new customer into the book"), ("set", "change fields of a customer")):
        made = add(name, words)
        made.add_argument("name", metavar="NAME")
        for option, (field, help_text) in _FIELDS.items():
            made.add_argument(option, metavar="TEXT", dest=field, help=help_text)
        made.add_argument(
            "--discount",
            metavar="GROUP=PERCENT",
            action="append",
            dest="discounts",
            help="off the list price of a discount group; may be repeated, all take the place of those there were",
        )
        if name == "set":
            made.add_argument("--name", metavar="NAME", dest="renamed", help="another name")
    _site_arguments(add("site", "say which customer of the book the site of a survey has, or let it have another"))
    removed = add("remove", "take a customer out of the book; quotations keep what they have of it")
    removed.add_argument("name", metavar="NAME")


def _site_arguments(parser: argparse.ArgumentParser) -> None:
    parser.add_argument(
        "survey",
        metavar="SURVEY",
        nargs="?",
        action=InputFile,
        words="the survey itself",
        help="survey file in JSON, or - for standard input",
    )
    parser.add_argument("--number", metavar="N", type=serial, help="survey of the book, in place of a file")
    asked = parser.add_mutually_exclusive_group()
    asked.add_argument(
        "--set", metavar="NAME", dest="wanted", help="customer of the book that the site has from now on"
    )
    asked.add_argument(
        "--none", action="store_const", const="", dest="wanted", help="the site has no customer any more"
    )
    OutputArguments(parser).add("--out", FileForm.JSON, "the survey with it; default: standard output")


def _run(workbench: Workbench, arguments: argparse.Namespace) -> ExitCode:
    return _ACTIONS[arguments.action](workbench, arguments)


def _list(workbench: Workbench, arguments: argparse.Namespace) -> ExitCode:
    found = workbench.customers().all(arguments.text)
    lists, display, today = workbench.book_lists(), display_of(arguments, workbench), date.today()
    make = partial(lists.customers, found, display, today)
    arguments.output_plan.write(paper_files(workbench, arguments, make))
    lines = [f"{one.name}{f'  {one.contact}' if one.contact else ''}" for one in found]
    return write_answer(arguments, lines or [said("no customers")], {"customers": [_document(one) for one in found]})


def _show(workbench: Workbench, arguments: argparse.Namespace) -> ExitCode:
    return _told(arguments, workbench.customers().named(arguments.name))


def _add(workbench: Workbench, arguments: argparse.Namespace) -> ExitCode:
    return _told(arguments, workbench.customers().add({"name": arguments.name, **_said(arguments)}))


def _set(workbench: Workbench, arguments: argparse.Namespace) -> ExitCode:
    service, fields = workbench.customers(), _said(arguments)
    if arguments.renamed is not None:
        fields["name"] = arguments.renamed
    if not fields:
        raise InputFault((InputProblem("", "customer set", "nothing", "name at least one field to change"),))
    return _told(arguments, service.change(service.named(arguments.name), fields))


def _remove(workbench: Workbench, arguments: argparse.Namespace) -> ExitCode:
    gone = workbench.customers().remove(arguments.name)
    return write_answer(arguments, [said("{name}: removed", name=gone.name)], {"removed": gone.name})


def _site(workbench: Workbench, arguments: argparse.Namespace) -> ExitCode:
    if (arguments.survey is None) == (arguments.number is None):
        raise InputFault(
            (InputProblem("", "SURVEY", "nothing or both", "name a file, or a survey of the book: --number"),)
        )
    if arguments.number is not None and arguments.out is not None:
        raise InputFault((InputProblem("", "--out", "--number", "a survey of the book is saved there, into no file"),))
    service = workbench.customers()
    if arguments.survey is not None and arguments.wanted is not None:
        survey, _ = service.with_site_customer(read_survey(arguments.survey), arguments.wanted)
        return _write_survey(arguments, survey)
    if arguments.number is None:
        return _tell_site(workbench, arguments, read_survey(arguments.survey))
    stored = workbench.book().stored(arguments.number)
    if arguments.wanted is not None:
        survey, _ = service.with_site_customer(stored.survey, arguments.wanted)
        stored = workbench.book().save(stored, survey)
    return _tell_site(workbench, arguments, stored.survey)


def _tell_site(workbench: Workbench, arguments: argparse.Namespace, survey: Survey) -> ExitCode:
    """Say whom a quotation of the survey goes to: a customer of the book, or what its terms name."""
    site, customer = survey.site, workbench.customers().of_site(survey)
    if customer is not None:
        line = said("{site}: customer {customer}", site=site.name, customer=customer.name)
    elif site.customer:
        line = said(
            "{site}: no customer of the book (the survey names {customer})", site=site.name, customer=site.customer
        )
    else:
        line = said("{site}: no customer of the book", site=site.name)
    document = {
        "site": site.name,
        "survey_names": site.customer,
        "customer": None if customer is None else _document(customer),
    }
    return write_answer(arguments, [line], document)


def _write_survey(arguments: argparse.Namespace, survey: Survey) -> ExitCode:
    from spoutline.book.survey_text import survey_to_json

    text = survey_to_json(survey)
    if arguments.out is None:
        write_standard_output(text)
    else:
        arguments.output_plan.write({arguments.out: text.encode()})
    return ExitCode.FITS


def _said(arguments: argparse.Namespace) -> dict[str, str]:
    named = ((field, getattr(arguments, field)) for field, _ in _FIELDS.values())
    fields = {field: text for field, text in named if text is not None}
    if arguments.discounts is not None:
        fields["discounts"] = "\n".join(arguments.discounts)
    return fields


def _told(arguments: argparse.Namespace, customer: Customer) -> ExitCode:
    from spoutline.bootstrap.customers import fields_of

    filled = {told(_LABELS[name]): text for name, text in fields_of(customer).items() if text}
    width = max(map(len, filled))
    lines = [f"{label:<{width}}  {line}" for label, text in filled.items() for line in text.splitlines()]
    return write_answer(arguments, lines, _document(customer))


def _document(customer: Customer) -> dict[str, object]:
    return customer.model_dump(mode="json")


_ACTIONS: dict[str, Callable[[Workbench, argparse.Namespace], ExitCode]] = {
    "list": _list,
    "show": _show,
    "add": _add,
    "set": _set,
    "remove": _remove,
    "site": _site,
}

WORK = CommandWork(_arguments, _run)
