"""Words that a person reads are American English: tables of phrases, texts of the window, help and messages.

Names of files, fields, values and ids keep their own spelling, and so do titles and clauses of somebody else's text.
The pairs of spellings are those of Webster's dictionary against Oxford's (from memory).
"""

from __future__ import annotations

import ast
import re
import tomllib
from collections.abc import Iterator
from pathlib import Path

import pytest

from spoutline import assets

APP = Path(assets.__file__).parent
RESOURCES = assets.resources_folder()
BRITISH = re.compile(
    r"\b(?:non-|un)?(?:vapours?|(?:centi|milli|kilo)?metres?|litres?|programmes?|centres?|centred|grey(?:ed)?|licen[c]es?"
    r"|catalogues?|adaptors?|callipers?|colou?red?(?<=oured)|colours?|labour|aluminium|kerbs?|tyres?|fibres?|moulds?"
    r"|travell(?:ed|ing)|cancell(?:ed|ing)|labell(?:ed|ing)|(?:re)?fuell(?:ed|ing)|behaviours?|favours?|neighbours?"
    r"|sulphur|analyse[ds]?|defence|whilst|lorr(?:y|ies)|petrol|spanners?|cheques?|tonnes?|fulfils?|authoris\w+"
    r"|organis\w+|recognis\w+|demineralis\w+|minimis\w+|maximis\w+|standardis\w+|summaris\w+|quays?)\b",
    re.IGNORECASE,
)
# what is quoted, computed with or named by others: spelled as it stands there
FOREIGN_KEYS = {"source", "clause", "edition", "id", "status", "applies", "adopted", "note"}
NAMED = re.compile(r"`[^`]*`|\b\w+:\w+=\w+")  # commands, and values of fields as they are typed
QUOTED = ("SELECT ", "Connecticut, CGS")
OTHERS = {
    "spoutline catalogue",  # the name of a lock of the store
    "EPA displacement model: diesel displaces no vapour (secondary)",
    "catalogue number",  # titles of columns that other people's tables carry
    "mass per metre",
    "resistance per metre",
    "vapour recovery",
    "vapour return",
    "vapour return available",
    "vapour today",
    "vapour wanted",
}


def worded_tables() -> Iterator[Path]:
    yield from (RESOURCES / folder / "en.toml" for folder in ("phrases", "conversion", "pack", "cautions"))
    yield RESOURCES / "conversion" / "steps.toml"
    yield from sorted((RESOURCES / "rules").rglob("*.toml"))


def values(table: object, key: str = "") -> Iterator[tuple[str, str]]:
    if isinstance(table, str):
        yield key, table
    elif isinstance(table, dict):
        for name, value in table.items():
            yield from values(value, name)
    elif isinstance(table, list):
        for value in table:
            yield from values(value, key)


def sentences(code: str) -> Iterator[str]:
    """Yield the texts of a module that a person may read, no docstrings, no identifiers, where it has such a word."""
    if not BRITISH.search(code.replace("&", "")):
        return
    tree = ast.parse(code)
    loose = {id(node.value) for node in ast.walk(tree) if isinstance(node, ast.Expr)}
    for node in ast.walk(tree):
        if isinstance(node, ast.Constant) and isinstance(node.value, str) and id(node) not in loose:
            text = node.value.strip()
            if " " in text or (text[:1].isupper() and text.isalpha() and not re.search(r"[a-z][A-Z]", text)):
                yield text.replace("&", "")


@pytest.mark.parametrize("path", list(worded_tables()), ids=lambda path: f"{path.parent.name}/{path.name}")
def test_a_table_spells_as_americans_do(path: Path) -> None:
    found = [
        (key, text)
        for key, text in values(tomllib.loads(path.read_text(encoding="utf-8")))
        if key not in FOREIGN_KEYS and " " in text and BRITISH.search(re.sub(r"\{\w+\}", "", text))
    ]
    assert found == []


def test_the_words_of_the_phrase_tables_spell_as_americans_do() -> None:
    folders = ("phrases", "conversion", "pack")
    tables = (tomllib.loads((RESOURCES / one / "en.toml").read_text("utf-8")) for one in folders)
    found = [text for table in tables for key, text in values(table) if BRITISH.fullmatch(text)]
    assert found == []


def test_window_commands_and_messages_spell_as_americans_do() -> None:
    found = {
        str(path.relative_to(APP)): text
        for path in sorted(APP.rglob("*.py"))
        for text in sentences(path.read_text(encoding="utf-8"))
        if BRITISH.search(NAMED.sub("", text)) and text not in OTHERS and not text.startswith(QUOTED)
    }
    assert found == {}


@pytest.mark.parametrize(
    "text", ["Vapour pipe", "refuelling", "two metres", "the catalogue", "coloured", "a programme"]
)
def test_the_word_list_finds_what_it_is_for(text: str) -> None:
    assert BRITISH.search(text)


def test_names_of_the_invented_catalogue_are_american() -> None:
    from spoutline.catalogue.source import read_source

    source = read_source(assets.catalogue_folder())
    texts = [source.edition, source.notes, *(part.name for part in source.parts)]
    assert [text for text in texts if BRITISH.search(text)] == []
