"""Texts of rule tables and calculations in the languages that tell them: none left in English, none out of date."""

from __future__ import annotations

import ast
import tomllib
from collections.abc import Iterator

import pytest

from spoutline import assets
from spoutline.rules.declared.registry import RULES

RESOURCES = assets.resources_folder()
# languages that tell rule tables and calculations too; one joins when its table is complete
TELLING = ("es",)


def told_texts() -> set[str]:
    """Return what tables and calculations say in English: titles, questions of jurisdictions, notes of worked lines."""
    tables = [*RESOURCES.glob("rules/limits/*.toml"), *RESOURCES.glob("rules/jurisdictions/*.toml")]
    texts: set[str] = set()
    for table in (tomllib.loads(path.read_text(encoding="utf-8")) for path in tables):
        texts |= {table["title"], *table.get("questions", ())} if "title" in table else set()
        texts |= {row["title"] for row in table.get("limit", ()) if "title" in row}
    app = RESOURCES.parent / "app" / "spoutline"
    for path in (*app.glob("calc/*.py"), *app.glob("rules/checks/*.py")):
        for node in ast.walk(ast.parse(path.read_text(encoding="utf-8"))):
            if isinstance(node, ast.keyword) and node.arg == "note":
                texts |= {
                    one.value for one in _sentences(node.value) if len(one.value) > 12 and "sinh" not in one.value
                }
    return texts


def _sentences(node: ast.expr) -> Iterator[ast.Constant]:
    """Yield the texts of a note: itself, or what it is in either case."""
    if isinstance(node, ast.IfExp):
        yield from (*_sentences(node.body), *_sentences(node.orelse))
    elif isinstance(node, ast.Constant) and isinstance(node.value, str):
        yield node


@pytest.mark.parametrize("language", TELLING)
def test_rule_tables_and_calculations_are_told_in_full(language: str) -> None:
    told = tomllib.loads((RESOURCES / "phrases" / f"{language}.toml").read_text(encoding="utf-8"))["told"]
    assert sorted(told_texts() - told.keys()) == []
    assert sorted(told.keys() - told_texts()) == []  # what nobody says any more


@pytest.mark.parametrize("language", TELLING)
def test_every_fact_of_a_rule_has_a_name(language: str) -> None:
    facts = tomllib.loads((RESOURCES / "phrases" / f"{language}.toml").read_text(encoding="utf-8"))["facts"]
    assert sorted({name for rule in RULES.values() for name in rule.facts} - facts.keys()) == []
