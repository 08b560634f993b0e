"""The command line: arguments in, a command or the window, an exit code out; never a traceback."""

from __future__ import annotations

import argparse
import os
import sys
from collections.abc import Callable, Sequence
from functools import lru_cache, partial
from typing import TYPE_CHECKING, Final

import spoutline
from spoutline.cli.command import DiscreetParser, add_shared, shared_options, speaking
from spoutline.cli.commands import COMMANDS
from spoutline.cli.exit_code import ExitCode
from spoutline.cli.voice import refusing_in, told, words
from spoutline.model.faults import InputFault, InputProblem, StoreFault, Undecided
from spoutline.model.language import Language, language_of
from spoutline.model.worded import Worded

if TYPE_CHECKING:
    from spoutline.bootstrap import Settings, Workbench
    from spoutline.bootstrap.preferences import OpenWith
    from spoutline.explain.phrases.command_words import CommandWords
    from spoutline.explain.phrases.refusal_words import RefusalWords
    from spoutline.model.catalogue_edition import EditionRef
    from spoutline.model.survey import Survey

WINDOW = "window"
_FIRST_DEMO: Final = object()  # where none is named; which that is, is known to the demos
_SURVEY_ENDING: Final = ".json"
_OPTIONS_OF_ALL: Final = ("--database", "--catalogue", "--catalog", "--profiles", "--language", "--units")
_FILES: Final = ("database", "survey")

OpenWindow = Callable[["Workbench", "Survey | None", str, "OpenWith | None"], int]

_EPILOG = (
    "Without a command the window opens, on a survey where a file FILE.json is named. "
    "Exit codes: 0 every position has a set that keeps every must, "
    "1 some position has none, 2 the input is bad (the message names the field)."
)


def run(argv: Sequence[str], open_window: OpenWindow) -> int:
    """Do what ``argv`` asks and return the exit code.

    ``open_window`` opens the window on a workbench, on a survey where one was named, and tells in it what was wrong
    with a file; it is passed in because commands know nothing of windows.
    """
    language = _spoken_language(argv)
    with refusing_in(partial(_refusals, language)):
        return _run(argv, open_window, language)


def _run(argv: Sequence[str], open_window: OpenWindow, language: Language) -> int:
    whole = _with_window(argv)
    try:
        arguments = _arguments(whole, language)
        arguments.from_desktop = whole is not argv and len(argv) == 1
        settings = _settings(arguments)
    except SystemExit as leave:
        return leave.code if isinstance(leave.code, int) else ExitCode.BAD_INPUT
    except (InputFault, StoreFault) as fault:
        return _end(_lines(fault), ExitCode.BAD_INPUT)
    from spoutline.bootstrap import open_workbench

    workbench = open_workbench(settings)
    try:
        code = _guarded(workbench, arguments, open_window)
        _tell_notes(workbench)
        return code
    finally:
        workbench.close()


def _tell_notes(workbench: Workbench) -> None:
    notes = workbench.reading_notes()
    if notes:
        from spoutline.cli.files import tell_note

        for note in notes:
            tell_note(note)


def _with_window(argv: Sequence[str]) -> Sequence[str]:
    """Return the arguments with the command that opens a survey where its file is all that is named behind options.

    So does a desktop that opens a file.
    """
    at = 0
    while at < len(argv) and argv[at].partition("=")[0] in _OPTIONS_OF_ALL:
        at += 1 if "=" in argv[at] else 2
    only = argv[at] if len(argv) == at + 1 else ""
    opens = only.lower().endswith(_SURVEY_ENDING) and not only.startswith("-")
    return [*argv[:at], WINDOW, only] if opens else argv


def _arguments(argv: Sequence[str], language: Language) -> argparse.Namespace:
    """Read the arguments; leave with ``SystemExit`` where they ask for help or are wrong."""
    with speaking(_words(language)):
        return _parser(language).parse_args(argv)


def _spoken_language(argv: Sequence[str]) -> Language:
    """Return the language in which is explained and refused, known before the arguments are read whole."""
    from spoutline.bootstrap.languages import language_of_environment

    looking = argparse.ArgumentParser(add_help=False, exit_on_error=False)
    looking.add_argument("--language", default="")
    try:
        named = looking.parse_known_args(argv)[0].language
    except argparse.ArgumentError:  # nothing behind it; the parser of all arguments says so
        named = ""
    return language_of(named) or language_of_environment(os.environ)


@lru_cache(maxsize=len(Language))
def _words(language: Language) -> CommandWords:
    from spoutline.assets import resources_folder
    from spoutline.bootstrap.phrase_tables import PhraseTables

    return PhraseTables(resources_folder).commands(language)


def _refusals(language: Language) -> RefusalWords:
    from spoutline.bootstrap.phrase_tables import refusals_in

    return refusals_in(language)


def _settings(arguments: argparse.Namespace) -> Settings:
    from spoutline.bootstrap import Settings

    return Settings(
        database=getattr(arguments, "database", None),
        profiles=getattr(arguments, "profiles", None),
        price_lists=tuple(getattr(arguments, "price_lists", None) or ()),
        language=_language(arguments),
        catalogue=_edition(arguments),
    )


def _edition(arguments: argparse.Namespace) -> EditionRef | None:
    planned_with: str | None = getattr(arguments, "planned_with", None)
    if planned_with is None:
        return None
    from spoutline.model.catalogue_edition import EditionRef

    return EditionRef.from_text(planned_with, "--catalogue")


def _language(arguments: argparse.Namespace) -> Language:
    from spoutline.bootstrap.languages import language_of_environment, remembered_language

    named: str | None = getattr(arguments, "language", None)
    if named is not None:
        return Language(named)
    kept = remembered_language() if arguments.command in (None, WINDOW) else None  # a script is told, never surprised
    return kept or language_of_environment(os.environ)


def _guarded(workbench: Workbench, arguments: argparse.Namespace, open_window: OpenWindow) -> int:
    try:
        return _done(workbench, arguments, open_window)
    except (InputFault, StoreFault) as fault:
        return _end(_lines(fault), ExitCode.BAD_INPUT)
    except Undecided as fault:
        return _end(_lines(fault), ExitCode.DOES_NOT_FIT)
    except BrokenPipeError:
        return _reader_left()
    except KeyboardInterrupt:
        return _end(f"\nspoutline: {told('stopped; nothing more was written')}\n", ExitCode.INTERRUPTED)
    except Exception as fault:
        foreseen = _foreseen(fault)
        return _defect(fault) if foreseen is None else _end(foreseen, ExitCode.BAD_INPUT)


def _lines(fault: InputFault | StoreFault | Undecided) -> str:
    return "".join(f"spoutline: {line}\n" for line in words().lines(fault))


def _foreseen(fault: Exception) -> str | None:
    """Return what is said of a newer draft of a quotation, and of a place that cannot be used; None of a defect."""
    from spoutline.book.quotation_records import StaleQuotation
    from spoutline.whole_files.environment import fault_of_place

    if isinstance(fault, StaleQuotation):
        return f"spoutline: {told(fault.args[0])}\n"
    of_place = fault_of_place(fault) if isinstance(fault, OSError) else None
    return None if of_place is None else _lines(of_place)


def _check_words(arguments: argparse.Namespace) -> None:
    """Refuse a text with bytes that are none in the encoding of the shell; a file or an address may have any name."""
    for name, value in vars(arguments).items():
        texts = value if isinstance(value, list) else [value]
        for text in texts if name not in _FILES else ():
            if isinstance(text, str) and _is_unreadable(text) and not text.startswith("file:"):
                wanted = "write it in the encoding of this shell"
                raise InputFault((InputProblem("", name.replace("_", " "), ascii(text[:60]), wanted),))


def _is_unreadable(text: str) -> bool:
    """Say whether an argument has bytes that are no text, which Python keeps as signs that cannot be written."""
    try:
        text.encode()
    except UnicodeEncodeError:
        return True
    return False


def _done(workbench: Workbench, arguments: argparse.Namespace, open_window: OpenWindow) -> int:
    if arguments.command in (None, WINDOW):
        return _open(workbench, arguments, open_window)
    from spoutline.cli.outputs import output_plan

    _check_words(arguments)
    command = next(command for command in COMMANDS if arguments.command in (command.name, command.also))
    arguments.output_plan = output_plan(arguments, workbench.files_in_use)
    return command.run(workbench, arguments)


def _open(workbench: Workbench, arguments: argparse.Namespace, open_window: OpenWindow) -> int:
    """Open the window; whoever opened a file from the desktop sees no shell, and is told in it what was wrong."""
    try:
        return open_window(workbench, _named_survey(arguments), "", _named_opening(arguments))
    except (InputFault, StoreFault) as fault:
        if not arguments.from_desktop:
            raise
        return open_window(workbench, None, str(fault), None)


def _named_opening(arguments: argparse.Namespace) -> OpenWith | None:
    from spoutline.bootstrap.preferences import OpenWith

    named: str | None = getattr(arguments, "open_with", None)
    return None if named is None else OpenWith(named)


def _named_survey(arguments: argparse.Namespace) -> Survey | None:
    """Return the survey that the window is to open on; None for the one that was open last."""
    if getattr(arguments, "demo", None) is not None:
        from spoutline.bootstrap.demos import DEFAULT_DEMO, demo_survey

        return demo_survey(DEFAULT_DEMO if arguments.demo is _FIRST_DEMO else arguments.demo)
    if getattr(arguments, "survey", None) is None:
        return None
    from spoutline.cli.files import read_survey

    return read_survey(arguments.survey)


@lru_cache(maxsize=len(Language))
def _parser(language: Language = Language.ENGLISH) -> DiscreetParser:
    from spoutline.bootstrap.preferences import OpenWith

    parser = DiscreetParser(prog="spoutline", description=spoutline.__doc__, epilog=_EPILOG, words=_words(language))
    add_shared(parser, units_default=None)
    parser.add_argument("--version", action="version", version=f"spoutline {spoutline.__version__}")
    commands = parser.add_subparsers(dest="command", metavar="COMMAND")
    shared = shared_options()
    window = commands.add_parser(WINDOW, help="open the window (also without a command)", parents=[shared])
    opened = window.add_mutually_exclusive_group()
    opened.add_argument("survey", metavar="SURVEY.json", nargs="?", help="open on this survey, put into the book")
    opened.add_argument(
        "--demo", metavar="NAME", nargs="?", const=_FIRST_DEMO, help="open on a ready demo survey, put into the book"
    )
    opened.add_argument(
        "--open-with",
        choices=[one.value for one in OpenWith],
        help="what to show first: the survey that was open last, or the start view; else as preferred in the window",
    )
    for command in COMMANDS:
        commands.add_parser(
            command.name,
            aliases=[command.also] if command.also else [],
            help=command.summary,
            description=command.summary,
            parents=[shared],
            epilog=_EPILOG,
            declare=command.arguments,
        )
    return parser


def _end(text: str, code: ExitCode) -> int:
    if sys.stderr is not None:
        sys.stderr.write(text)
    return code


def _reader_left() -> int:
    """End quietly where whoever read our output has left, as `head` does; Python must not write at exit either."""
    os.dup2(os.open(os.devnull, os.O_WRONLY), sys.stdout.fileno())
    return ExitCode.FITS


def _defect(fault: Exception) -> int:
    """Note an unforeseen fault in a file; the person gets a sentence, not a traceback."""
    from spoutline.bootstrap.fault_log import FaultLog, log_folder

    path = FaultLog(log_folder()).write(fault)
    noted = (
        "Please report it with the command you gave."
        if path is None
        else Worded(
            "Where in the program is noted in {path}, without your data; please report it with that file.", path=path
        )
    )
    stopped = Worded("a fault of the program stopped this command. {noted}", noted=noted)
    return _end(f"spoutline: {told(stopped)}\n", ExitCode.DEFECT)
