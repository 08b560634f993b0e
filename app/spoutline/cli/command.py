"""What a command is: a name, its arguments, and a function that does it."""

from __future__ import annotations

import argparse
from collections.abc import Callable, Iterator, Mapping
from contextlib import contextmanager
from functools import partial
from importlib import import_module
from pathlib import Path
from typing import TYPE_CHECKING, Any, NoReturn

from spoutline.cli.exit_code import ExitCode
from spoutline.explain.phrases.command_words import ENGLISH_WORDS, CommandWords
from spoutline.frozen import frozen
from spoutline.model.faults import InputNote
from spoutline.model.language import Language

if TYPE_CHECKING:
    from spoutline.bootstrap import Workbench
    from spoutline.model.quotation_terms import Terms
    from spoutline.model.survey import Survey
    from spoutline.units.accepted import UnitSystem
    from spoutline.units.display import Display

DEFAULT_JURISDICTION = "us_general"  # whose units are usual where no site is named


# how a step of a command ended, what it says line by line, and the same as a document
Said = tuple[ExitCode, list[str], Mapping[str, object]]


@frozen
class CommandWork:
    """What a command does: ``arguments`` declares them on a parser, ``run`` does what was parsed with the use cases."""

    arguments: Callable[[argparse.ArgumentParser], None]
    run: Callable[[Workbench, argparse.Namespace], ExitCode]


@frozen
class Command:
    """One command of the command line.

    ``module`` of this package holds its work under the name ``work``; it is imported when the command is asked for.
    ``also`` is another name that is understood too.
    """

    name: str
    summary: str
    module: str
    work: str = "WORK"
    also: str = ""

    def arguments(self, parser: argparse.ArgumentParser) -> None:
        """Declare the arguments on a parser."""
        self._work().arguments(parser)

    def run(self, workbench: Workbench, arguments: argparse.Namespace) -> ExitCode:
        """Do what is asked."""
        return self._work().run(workbench, arguments)

    def _work(self) -> CommandWork:
        work: CommandWork = getattr(import_module(f"spoutline.cli.{self.module}"), self.work)
        return work


class DiscreetParser(argparse.ArgumentParser):
    """Tells what is wrong with arguments without the passwords in them.

    With ``declare`` its arguments are declared when it is first asked to parse, so that a command that is not asked
    for costs nothing. Arguments are declared in English; ``words`` are what they are told in, by this parser and the
    parsers of its commands.
    """

    def __init__(
        self,
        *,
        declare: Callable[[argparse.ArgumentParser], None] | None = None,
        words: CommandWords = ENGLISH_WORDS,
        **named: Any,  # noqa: ANN401 - argparse's own
    ) -> None:
        super().__init__(**named)
        self._declare, self._words = declare, words

    def add_subparsers(self, **named: Any) -> Any:  # noqa: ANN401
        """Add commands whose parsers speak as this one does."""
        return super().add_subparsers(**{"parser_class": partial(DiscreetParser, words=self._words), **named})

    def declared(self) -> None:
        """Declare what is still to be declared, and put it into words."""
        declare, self._declare = self._declare, None
        if declare is not None:
            declare(self)
        self.description, self.epilog = self._told(self.description), self._told(self.epilog)
        for group in self._action_groups:
            group.title, group.description = self._told(group.title), self._told(group.description)
        for action in self._actions:
            self._put_into_words(action)

    def _put_into_words(self, action: argparse.Action) -> None:
        action.help = self._told(action.help)
        if isinstance(action.metavar, str):
            action.metavar = self._words.of(action.metavar)
        if isinstance(action, argparse._SubParsersAction):
            for command in action._choices_actions:  # the only way to what it lists
                command.help = self._told(command.help)

    def _told(self, text: str | None) -> str | None:
        return text if text is None or text == argparse.SUPPRESS else self._words.of(text)

    def parse_known_args(self, args: Any = None, namespace: Any = None) -> Any:  # noqa: ANN401
        """Parse, as argparse calls it for the command that was named."""
        self.declared()
        return super().parse_known_args(args, namespace)

    def error(self, message: str) -> NoReturn:
        """Leave with the message, as argparse calls it."""
        from spoutline.discretion import discreet

        super().error(discreet(message))


@contextmanager
def speaking(words: CommandWords) -> Iterator[None]:
    """Let argparse speak these words meanwhile.

    It asks the gettext functions of its own module, whose catalogs follow the machine and never ``--language``; they
    are put back at the end.
    """
    module = vars(argparse)
    kept = {name: module[name] for name in ("_", "ngettext")}
    module.update(_=words.of, ngettext=words.counted)
    try:
        yield
    finally:
        module.update(kept)


def shared_options() -> DiscreetParser:
    """Return the options that may also stand behind a command, as a parent parser."""
    parser = DiscreetParser(add_help=False, argument_default=argparse.SUPPRESS)
    add_shared(parser, units_default=argparse.SUPPRESS)
    return parser


def add_shared(parser: argparse.ArgumentParser, *, units_default: str | None) -> None:
    """Declare the options that may stand before or behind a command."""
    suppress = argparse.SUPPRESS
    parser.add_argument(
        "--database", metavar="PATH_OR_URL", default=suppress, help="surveys and catalog; a file or a database URL"
    )
    parser.add_argument(
        "--catalogue",
        "--catalog",
        metavar="NAME[@EDITION]",
        dest="planned_with",
        default=suppress,
        help="catalog to plan with, of an edition or @draft; default: what the survey says, then the book",
    )
    parser.add_argument(
        "--profiles", metavar="DIR", type=Path, default=suppress, help="folder of the own jurisdictions"
    )
    parser.add_argument(
        "--language",
        choices=[language.value for language in Language],
        default=suppress,
        help="language of texts and papers; default: that of the machine where it is one of these, else en",
    )
    parser.add_argument(
        "--units",
        choices=("si", "us"),
        default=units_default,
        help="units of texts and paper; default: those usual under the jurisdiction of the site; JSON is always SI",
    )


def add_survey(parser: argparse.ArgumentParser) -> None:
    """Declare the survey argument."""
    from spoutline.cli.outputs import InputFile

    parser.add_argument(
        "survey",
        metavar="SURVEY",
        action=InputFile,
        words="the survey itself",
        help="survey file in JSON, or - for standard input",
    )


def add_terms(parser: argparse.ArgumentParser, *, required: bool = True) -> None:
    """Declare the file of the terms of a quotation."""
    from spoutline.cli.outputs import InputFile

    parser.add_argument(
        "--terms",
        metavar="TERMS.toml",
        type=Path,
        required=required,
        action=InputFile,
        words="the file of the terms",
        help="terms of the quotation",
    )
    asked = parser.add_mutually_exclusive_group()
    asked.add_argument(
        "--customer", metavar="NAME", default="", help="customer of the book to quote to; default: that of the site"
    )
    asked.add_argument(
        "--customer-of-terms",
        action="store_true",
        help="quote to the customer that the terms name, whichever of the book the site has",
    )


def read_terms(workbench: Workbench, arguments: argparse.Namespace, survey: Survey) -> Terms:
    """Return the terms named, for a customer of the book: the one named too, else that of the survey's site.

    Where neither is there, the terms name theirs. Raise ``InputFault``.
    """
    service = workbench.customers()
    terms = workbench.quoting().terms().read_terms(arguments.terms)
    if arguments.customer:
        return service.terms_for(terms, arguments.customer)
    customer = None if arguments.customer_of_terms else service.of_site(survey)
    if customer is None:
        return terms
    from spoutline.cli.files import tell_note
    from spoutline.model.customer import folded_customer_name, with_customer

    if folded_customer_name(customer.name) != folded_customer_name(terms.customer.name):
        done = f"gives way to {customer.name}, the site's customer in the book; --customer-of-terms quotes to this one"
        tell_note(InputNote("terms", "customer.name", repr(terms.customer.name), done))
    return with_customer(terms, customer)


def display_of(
    arguments: argparse.Namespace, workbench: Workbench, jurisdiction: str = DEFAULT_JURISDICTION
) -> Display:
    """Return the display in the units that the person asked for, else in those usual under ``jurisdiction``."""
    from spoutline.units.display import Display

    return Display(units_of(arguments, workbench, jurisdiction))


def units_of(arguments: argparse.Namespace, workbench: Workbench, jurisdiction: str) -> UnitSystem:
    """Return the units that the person asked for, else those usual under ``jurisdiction``."""
    from spoutline.units.accepted import UnitSystem

    if arguments.units is not None:
        return UnitSystem(arguments.units.upper())
    return workbench.jurisdictions().usual_units(jurisdiction)


def json_display() -> Display:
    """Return the display of documents for other programs: SI, whatever a person asks for."""
    from spoutline.units.accepted import UnitSystem
    from spoutline.units.display import Display

    return Display(UnitSystem.SI)
