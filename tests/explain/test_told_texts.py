"""Texts of rule tables and calculations in the languages that tell them: none left in English, none out of date."""

from __future__ import annotations

import ast
import re
import tomllib
from collections.abc import Iterator

import pytest

from spoutline import assets
from spoutline.bootstrap.phrase_tables import PhraseTables
from spoutline.model.language import Language
from spoutline.rules.declared.registry import RULES

RESOURCES = assets.resources_folder()
# languages that tell rule tables and calculations too; one joins when its table is complete
TELLING = ("de", "es", "fr")


_SHORTEST_SENTENCE = 12  # letters; a shorter note is a formula
_FORMULA = "sinh"


def told_texts() -> set[str]:
    """Return what tables and calculations say in English: titles, questions, agencies, notes of rows and of lines."""
    folders = ("limits", "jurisdictions", "vapour")
    tables = [path for folder in folders for path in RESOURCES.glob(f"rules/{folder}/*.toml")]
    tables.append(RESOURCES / "conversion" / "steps.toml")  # its figures; its steps are told by their ids
    texts = built_in_notes()
    for path in tables:
        table = tomllib.loads(path.read_text(encoding="utf-8"))
        texts |= {table["title"], *table.get("questions", ())} if "title" in table else set()
        rows = (*table.get("limit", ()), *table.get("figure", ()))
        texts |= {row["title"] for row in rows if "title" in row}
        for agency in table.get("agency", ()):
            tests = (*agency.get("tests", ()), *agency.get("further_tests", ()))
            texts |= {*tests, *(agency[key] for key in ("title", "note", "checklist") if key in agency)}
    app = RESOURCES.parent / "app" / "spoutline"
    for path in (*app.glob("calc/*.py"), *app.glob("rules/checks/*.py")):
        texts |= notes_in(ast.parse(path.read_text(encoding="utf-8")))
    return texts


def built_in_notes() -> set[str]:
    """Return the notes beside the rows of every rule table that comes with the program."""
    tables = [tomllib.loads(path.read_text(encoding="utf-8")) for path in (RESOURCES / "rules").rglob("*.toml")]
    rows = (row for table in tables for part in table.values() if isinstance(part, list) for row in part)
    return {row["note"] for row in rows if isinstance(row, dict) and "note" in row}


def notes_in(tree: ast.Module) -> set[str]:
    """Return the notes that a module gives its worked lines, written in place or under a name."""
    given = [node.value for node in ast.walk(tree) if isinstance(node, ast.keyword) and node.arg == "note"]
    names = {node.id for node in given if isinstance(node, ast.Name)}
    for node in ast.walk(tree):
        target = node.targets[0] if isinstance(node, ast.Assign) else None
        if isinstance(node, ast.Assign) and isinstance(target, ast.Name) and target.id in names:
            given.append(node.value)
    found = {text for node in given for text in sentences(node)}
    return {text for text in found if len(text) > _SHORTEST_SENTENCE and _FORMULA not in text}


def sentences(node: ast.expr) -> Iterator[str]:
    """Yield the texts of a note: itself, or what it is in either case."""
    if isinstance(node, ast.IfExp):
        yield from (*sentences(node.body), *sentences(node.orelse))
    elif isinstance(node, ast.Constant) and isinstance(node.value, str):
        yield node.value


@pytest.mark.parametrize("language", TELLING)
def test_rule_tables_and_calculations_are_told_in_full(language: str) -> None:
    told = tomllib.loads((RESOURCES / "phrases" / f"{language}.toml").read_text(encoding="utf-8"))["told"]
    assert sorted(told_texts() - told.keys()) == []
    assert sorted(told.keys() - told_texts()) == []  # what nobody says any more


@pytest.mark.parametrize("language", TELLING)
def test_every_note_beside_a_rule_is_told_in_its_own_words(language: str) -> None:
    told = tomllib.loads((RESOURCES / "phrases" / f"{language}.toml").read_text(encoding="utf-8"))["told"]
    notes = built_in_notes()
    assert "Some places forbid the latch; ask." in notes  # one that limits/nozzle.toml holds: they were found
    assert sorted(note for note in notes if told.get(note, note) == note) == []
    figures = re.compile(r"\d+(?:[.,]\d+)?")
    for note in notes:  # a translation takes no figure away and brings none in
        said, meant = (sorted(one.replace(",", ".") for one in figures.findall(text)) for text in (told[note], note))
        assert said == meant, note


@pytest.mark.parametrize("language", [Language(one) for one in TELLING])
def test_note_of_a_rule_is_told_and_the_keepers_stays(language: Language) -> None:
    told = PhraseTables(assets.resources_folder).plan(language)
    assert told.tell(typed := "Some places forbid the latch; ask the fire marshal.") == typed
    assert told.tell("Some places forbid the latch; ask.") != "Some places forbid the latch; ask."


@pytest.mark.parametrize("language", TELLING)
def test_every_fact_of_a_rule_has_a_name(language: str) -> None:
    facts = tomllib.loads((RESOURCES / "phrases" / f"{language}.toml").read_text(encoding="utf-8"))["facts"]
    assert sorted({name for rule in RULES.values() for name in rule.facts} - facts.keys()) == []


def cited_texts() -> str:
    """Return all that tables and the program cite: sources, clauses and editions of rows, and every text of a rule."""
    found = [path.read_text(encoding="utf-8") for path in (RESOURCES / "rules").rglob("*.toml")]
    found += [path.read_text(encoding="utf-8") for path in (RESOURCES / "inspection").glob("*.toml")]
    found += [path.read_text(encoding="utf-8") for path in (RESOURCES / "conversion").glob("steps.toml")]
    found += [path.read_text(encoding="utf-8") for path in (RESOURCES / "cautions").glob("en.toml")]
    app = RESOURCES.parent / "app" / "spoutline"
    for folder in ("rules", "calc", "planning"):
        found += [path.read_text(encoding="utf-8") for path in (app / folder).rglob("*.py")]
    return "\n".join(found)


@pytest.mark.parametrize("language", TELLING)
def test_pieces_of_citations_are_those_that_are_cited(language: str) -> None:
    pieces = tomllib.loads((RESOURCES / "phrases" / f"{language}.toml").read_text(encoding="utf-8"))["cited"]
    cited = cited_texts()
    assert sorted(piece for piece in pieces if piece not in cited) == []
    english = tomllib.loads((RESOURCES / "phrases" / "es.toml").read_text(encoding="utf-8"))["cited"]
    assert pieces.keys() == english.keys()
