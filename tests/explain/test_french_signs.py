"""French sets a space before a colon, a semicolon, a question and an exclamation mark, and inside its quotation marks.

It must not break there, or a line begins with the sign (Lexique des règles typographiques en usage à l'Imprimerie
nationale, chapter on punctuation; from memory).
"""

from __future__ import annotations

import re
import tomllib
from collections.abc import Iterator
from pathlib import Path
from xml.etree import ElementTree

import pytest

from spoutline import assets

BREAKING = re.compile(r"(?<=[^\s`]) (?=[:;?!»](?:\s|$))|(?<=«) ")
TABLES = sorted(assets.resources_folder().glob("*/fr.toml"))
WINDOW = assets.resources_folder() / "translations" / "window_fr.ts"


def texts(value: object) -> Iterator[str]:
    if isinstance(value, str):
        yield value
    for one in value.values() if isinstance(value, dict) else value if isinstance(value, list) else ():
        yield from texts(one)


@pytest.mark.parametrize("table", TABLES, ids=lambda path: path.parent.name)
def test_no_line_of_a_paper_begins_with_a_sign(table: Path) -> None:
    assert [text for text in texts(tomllib.loads(table.read_text(encoding="utf-8"))) if BREAKING.search(text)] == []


def test_no_line_of_the_window_begins_with_a_sign() -> None:
    told = ["".join(one.itertext()) for one in ElementTree.parse(WINDOW).iter("translation")]
    assert len(told) > 1_000
    assert [text for text in told if BREAKING.search(text)] == []


def test_a_sign_that_may_begin_a_line_is_found() -> None:
    assert BREAKING.search("Ensembles : deux")
    assert not BREAKING.search("Ensembles\u00a0: deux, à 12:30, « \u00a0»".replace("« ", "«"))
