"""What the program answers, refuses and notes, in every language: nothing left in English, nothing that nobody says."""

from __future__ import annotations

import ast
import errno
import os
import re
import tomllib
from collections.abc import Iterator
from pathlib import Path

import pytest

from program_runs import Spoutline
from spoutline import assets
from spoutline.model.language import Language

RESOURCES = assets.resources_folder()
APP = RESOURCES.parent / "app" / "spoutline"
TOLD = [language for language in Language if language is not Language.ENGLISH]
_FAULTS = {"InputProblem", "InputNote", "StoreFault", "ReadOnlyStore", "DamagedStore", "BusyStore"}
# what fills a template, and how many templates it takes: of refusals and notes, and of lines that commands answer
_FILLED = {"Worded": 1, "said": 1, "counted": 3, "TerminalProgress": 1}
_FAULTS_OF_FIELDS = {"EntryFault", "CellFault", "fault_in"}
_SENTENCE = re.compile(r"[a-z]{2,} [a-z({]|[a-z{}\])] [a-z]{2,}")
_SAID_BY = {"wanted", "needed", "told", "hint", "right", "noted", "said"}  # names under which a fault is worded
# the window's own texts go through ``tr``; tables and phrases that come with the program are refused to who edits them
_NOT_FOR_A_USER = (
    "gui/",
    "explain/",
    "catalogue/source.py",
    "catalogue/rows.py",
    "ruletables/built_in.py",
    "ruletables/caution",
    "ruletables/conversion_steps.py",
    "ruletables/inspection_items.py",
    "ruletables/load.py",
    "ruletables/materials.py",
    "ruletables/vapour.py",
    "ruletables/schema.py",
    "ruletables/site_ranges.py",
)
_NAMES = re.compile(r"\{[^}]*\}|--?[a-z-]+")
_WORD = re.compile(r"(?<![.\w])[a-z]{2}")
# what the machine says of a file, passed on as the reason
_OF_THE_MACHINE = {os.strerror(code) for code in errno.errorcode}


def called(node: ast.AST) -> str:
    """Return the name of what a call calls; empty for any other node."""
    function = node.func if isinstance(node, ast.Call) else None
    return (
        function.id if isinstance(function, ast.Name) else function.attr if isinstance(function, ast.Attribute) else ""
    )


def name_of(node: ast.Assign | ast.AnnAssign) -> str:
    """Return the last word of the name that an assignment gives."""
    target = node.targets[0] if isinstance(node, ast.Assign) else node.target
    return target.id.lower().rpartition("_")[2] if isinstance(target, ast.Name) else ""


def modules() -> Iterator[ast.Module]:
    for path in sorted(APP.rglob("*.py")):
        if not path.relative_to(APP).as_posix().startswith(_NOT_FOR_A_USER):
            yield ast.parse(path.read_text(encoding="utf-8"))


def texts_in(node: ast.AST) -> Iterator[str]:
    """Yield the texts that an expression may be, without what only selects between them."""
    if isinstance(node, ast.Constant) and isinstance(node.value, str):
        yield node.value
    elif isinstance(node, ast.IfExp):
        yield from (*texts_in(node.body), *texts_in(node.orelse))
    elif isinstance(node, ast.BoolOp):
        for each in node.values:
            yield from texts_in(each)


def said() -> set[str]:
    """Return what faults and notes say: templates with figures, and plain texts of more than a word."""
    found: set[str] = set()
    for module in modules():
        for node in ast.walk(module):
            if called(node) in _FILLED and isinstance(node, ast.Call):
                found.update(text for each in node.args[: _FILLED[called(node)]] for text in texts_in(each))
            elif called(node) in _FAULTS and isinstance(node, ast.Call):
                plain = {text for each in node.args[-2:] for text in texts_in(each)}
                found |= {text for text in plain if " " in text}
            elif isinstance(node, ast.Assign | ast.AnnAssign) and node.value is not None and name_of(node) in _SAID_BY:
                found |= {text for text in texts_in(node.value) if " " in text}
    return {text for text in found if _WORD.search(_NAMES.sub("", text))}


def unworded() -> Iterator[str]:
    """Yield what faults say in f-strings: their figures are lost in the words, and no table can tell them."""
    for module in modules():
        for node in ast.walk(module):
            if called(node) in {*_FAULTS, *_FAULTS_OF_FIELDS} and isinstance(node, ast.Call):
                given = node.args[1:] or node.args
            elif isinstance(node, ast.Assign | ast.AnnAssign) and node.value is not None and name_of(node) in _SAID_BY:
                given = [node.value]
            else:
                continue
            yield from (
                text for each in given for text in joined_in(each) if "<" not in text and _SENTENCE.search(text)
            )


def joined_in(node: ast.AST) -> Iterator[str]:
    """Yield the words of the f-strings that an expression may be."""
    if isinstance(node, ast.JoinedStr):
        yield "{}".join(str(each.value) for each in node.values if isinstance(each, ast.Constant))
    elif isinstance(node, ast.IfExp):
        yield from (*joined_in(node.body), *joined_in(node.orelse))
    elif isinstance(node, ast.BoolOp):
        for each in node.values:
            yield from joined_in(each)


def test_no_fault_is_said_in_an_f_string() -> None:
    assert list(unworded()) == []


def constants() -> set[str]:
    """Return every text that stands in the program, as it may be said somewhere."""
    trees = [ast.parse(path.read_text(encoding="utf-8")) for path in APP.rglob("*.py")]
    return {
        node.value
        for tree in trees
        for node in ast.walk(tree)
        if isinstance(node, ast.Constant) and isinstance(node.value, str)
    }


def table(language: Language) -> dict[str, str]:
    tables = tomllib.loads((RESOURCES / "refusals" / f"{language}.toml").read_text(encoding="utf-8"))
    return {**tables["texts"], **tables["answers"]}


@pytest.mark.parametrize("language", TOLD)
def test_every_refusal_is_told_and_no_other(language: Language) -> None:
    told = table(language).keys()
    assert sorted(said() - told) == []
    assert sorted(told - constants() - _OF_THE_MACHINE) == []


@pytest.mark.parametrize("language", TOLD)
def test_figures_and_names_are_kept(language: Language) -> None:
    names = re.compile(r"\{[^}]*\}|--[a-z]+(?:-[a-z]+)*")
    for english, told in table(language).items():
        assert sorted(names.findall(told)) == sorted(names.findall(english)), english
        assert (told[:1] == " ", told[-1:] == " ") == (english[:1] == " ", english[-1:] == " "), english


def test_a_survey_is_refused_in_the_language_asked_for(spoutline: Spoutline, tmp_path: Path) -> None:
    """The refusals that people meet most: no file, a wrong field, an unknown part and a name that is none."""
    survey = tmp_path / "survey.json"
    survey.write_text('{"site": {"name": ""}, "positions": [{"label": "1"}], "surplus": 1}')
    spanish = spoutline("--language", "es", "plan", str(survey))
    assert spanish.code == 2
    assert "site.name: '' no sirve; se necesita un texto de al menos 1 y a lo sumo 60 caracteres" in spanish.err
    assert "surplus: 1 no sirve; aquí no hay tal campo; use uno de: catalogue, " in spanish.err
    missing = spoutline("--language", "de", "plan", str(tmp_path / "none.json"))
    assert "dieser Pfad ist nicht verwendbar; eine lesbare Datei einer Aufnahme wird gebraucht" in missing.err
    assert "(Datei oder Ordner nicht gefunden)" in missing.err
    assert "le livre n'a pas ce devis" in spoutline("--language", "fr", "quotation", "show", "99").err
    assert "no es un día" in spoutline("--language", "es", "catalogue", "price", "X", "--on", "soon").err


def test_a_file_in_the_way_is_told_of(spoutline: Spoutline, tmp_path: Path) -> None:
    survey, there = tmp_path / "station.json", tmp_path / "there.csv"
    assert spoutline("demo", "small_town", "--out", str(survey)).code == 0
    there.write_text("mine\n")
    refused = spoutline("--language", "de", "bill", str(survey), "--csv", str(there))
    assert refused.code == 2
    assert "diese Datei gibt es schon" in refused.err
    assert "--force ersetzt sie" in refused.err
    assert there.read_text() == "mine\n"
