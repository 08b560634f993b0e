"""What the command line says of itself, in every language: nothing left in English, nothing that nobody says."""

from __future__ import annotations

import argparse
import ast
import re
import sys
import tomllib
from collections.abc import Iterator
from pathlib import Path
from string import ascii_letters

import pytest

from program_runs import Spoutline
from spoutline import assets
from spoutline.cli import main
from spoutline.cli.command import DiscreetParser
from spoutline.model.language import Language

FOLDER = assets.resources_folder() / "commands"
TOLD = [language for language in Language if language is not Language.ENGLISH]
# what of argparse a person sees; the rest it says to programmers who declare arguments wrongly
_TO_PROGRAMMERS = re.compile(
    r"not callable|not defined|is an invalid argument|must be optional|cannot (merge|have)|conflict|dest= is|"
    r"must start with|can't open|argument \"-\"",
)
_ARGPARSE = (3, 11)  # the Python whose argparse the tables tell word by word
_FILLED = re.compile(r"%(?:\((\w+)\))?([sr%])")
_NAMES_LEFT = re.compile(r"`[^`]+`|--[a-z]+(?:-[a-z]+)*|@[a-z0-9]+|\.[a-z]{3,4}\b|\b[a-z]+_[a-z_]+\b|\bquotation:ID")


def parsers(language: Language) -> Iterator[DiscreetParser]:
    """Yield the parser of the program and those of all commands and actions, each declared and put into words."""

    def below(parser: DiscreetParser) -> Iterator[DiscreetParser]:
        parser.declared()
        yield parser
        for action in parser._actions:
            if isinstance(action, argparse._SubParsersAction):
                for inner in dict.fromkeys(action.choices.values()):
                    yield from below(inner)

    return below(main._parser(language))


def names_of(parser: argparse.ArgumentParser) -> set[str]:
    """Return what stands for values in the help of a parser."""
    return {action.metavar for action in parser._actions if isinstance(action.metavar, str)}


def texts_of(parser: argparse.ArgumentParser) -> set[str]:
    """Return descriptions, headings and helps of a parser and of what it lists."""
    listed = [
        command.help
        for action in parser._actions
        if isinstance(action, argparse._SubParsersAction)
        for command in action._choices_actions
    ]
    groups = [text for group in parser._action_groups for text in (group.title, group.description)]
    helps = [action.help for action in parser._actions]
    said = {parser.description, parser.epilog, *groups, *helps, *listed}
    return {text for text in said if text and text != argparse.SUPPRESS}


def said_by_argparse() -> set[str]:
    """Return the words that argparse of this Python has for a person, read from its source."""
    calls = [
        node
        for node in ast.walk(ast.parse(Path(argparse.__file__).read_text(encoding="utf-8")))
        if isinstance(node, ast.Call) and isinstance(node.func, ast.Name) and node.func.id in ("_", "ngettext")
    ]
    texts = {word.value for call in calls for word in call.args if isinstance(word, ast.Constant)}
    said = {text for text in texts if isinstance(text, str) and not _TO_PROGRAMMERS.search(text)}
    return {*said, "show program's version number and exit"}  # the one that its source leaves out


def table(language: Language) -> dict[str, dict[str, str]]:
    return tomllib.loads((FOLDER / f"{language}.toml").read_text(encoding="utf-8"))


@pytest.mark.parametrize("language", TOLD)
def test_every_text_of_every_command_is_told_and_no_other(language: Language) -> None:
    words = table(language)
    english = list(parsers(Language.ENGLISH))
    names = {name for parser in english for name in names_of(parser)}
    texts = {text for parser in english for text in texts_of(parser)} - words["argparse"].keys()
    assert (sorted(names - words["names"].keys()), sorted(words["names"].keys() - names)) == ([], [])
    assert (sorted(texts - words["texts"].keys()), sorted(words["texts"].keys() - texts)) == ([], [])


@pytest.mark.parametrize("language", TOLD)
def test_argparse_has_every_word(language: Language) -> None:
    """The argparse of another Python says what is new in it in English."""
    told = table(language)["argparse"].keys()
    apart = (sorted(said_by_argparse() - told), sorted(told - said_by_argparse()))
    assert apart == ([], []) or sys.version_info[:2] != _ARGPARSE


@pytest.mark.parametrize("language", TOLD)
def test_what_gets_filled_in_and_names_are_kept(language: Language) -> None:
    for section in table(language).values():
        for english, told in section.items():
            assert sorted(_FILLED.findall(told)) == sorted(_FILLED.findall(english)), english
            assert told.count("%") == 2 * told.count("%%") + len(_FILLED.findall(told.replace("%%", ""))), told
            assert told.count("{") == told.count("}") == english.count("{")
            assert sorted(_NAMES_LEFT.findall(told)) == sorted(_NAMES_LEFT.findall(english)), english
            assert told.endswith("\n") == english.endswith("\n")


@pytest.mark.parametrize("language", TOLD)
def test_a_text_put_into_words_twice_stays(language: Language) -> None:
    """Options that commands share are put into words by each of them."""
    words = {english: told for section in table(language).values() for english, told in section.items()}
    assert [told for told in words.values() if words.get(told, told) != told] == []


@pytest.mark.parametrize("language", TOLD)
def test_every_help_is_printed_in_the_language(language: Language) -> None:
    words = table(language)
    same = {told for section in words.values() for told in section.values()}
    said = {text for section in words.values() for text in section if len(text) > 1} - same
    for parser in parsers(language):
        assert parser.format_help()  # argparse would trip over a stray % here
        assert (texts_of(parser) | names_of(parser)) & said == set()


def test_every_value_has_a_name_that_can_be_told() -> None:
    """Where none is given argparse makes one of the option, which no table could tell."""
    unnamed = [
        (parser.prog, action.dest)
        for parser in parsers(Language.ENGLISH)
        for action in parser._actions
        if action.nargs != 0 and not action.choices and action.metavar is None
    ]
    assert unnamed == []


def test_help_and_refusals_are_in_the_language_asked_for(spoutline: Spoutline, monkeypatch: pytest.MonkeyPatch) -> None:
    german = spoutline("--language", "de", "quote", "--help")
    assert german.code == 0
    assert german.out.startswith("Aufruf: spoutline quote")
    assert "das Angebot zu einer Aufnahme schreiben" in " ".join(german.out.split())
    assert "es fehlen: AUFNAHME, --terms" in spoutline("quote", "--language=de").err
    assert "faltan estos argumentos: LEVANTAMIENTO" in spoutline("--language", "es", "plan").err
    assert "choix non valable" in spoutline("--language", "fr", "plan", "a.json", "--units", "furlong").err
    monkeypatch.setenv("LANG", "fr_CA.UTF-8")
    assert spoutline("--help").out.startswith("utilisation")
    assert spoutline("--language", "en", "--help").out.startswith("usage: ")
    assert "choisir parmi 'en', 'es', 'de', 'fr'" in spoutline("--language", "pt", "plan").err


def test_names_of_commands_and_options_are_the_same_in_every_language() -> None:
    def declared(language: Language) -> list[tuple[str, list[list[str]]]]:
        return [(parser.prog, [action.option_strings for action in parser._actions]) for parser in parsers(language)]

    assert all(declared(language) == declared(Language.ENGLISH) for language in TOLD)
    assert all(set(parser.prog) <= {*ascii_letters, " ", "-"} for parser in parsers(Language.ENGLISH))
