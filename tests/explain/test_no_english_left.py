"""No English is left in what commands and papers say in another language: no frequent English word stands there.

Sources are cited in the language in which they are published, and what a person or a catalog wrote is data: both are
left out by ending before the list of sources and by a survey and terms without texts of their own.
"""

from __future__ import annotations

import json
import re
from pathlib import Path

import pytest

from paper_text import text_of
from program_runs import Spoutline
from spoutline.model.language import Language

TOLD = [language for language in Language if language is not Language.ENGLISH]
# the words that English texts of any length hold (the most frequent of the Brown corpus, from memory)
_FREQUENT = """
the and of with is are were not for which that this from by each have been be when where what how until done written
at or would should could there their them they these those into than then only other both yes has its it was no nothing
but if one two all some more must may can after before between over under
"""
_ENGLISH = frozenset(_FREQUENT.split())
_OWN = {
    Language.SPANISH: frozenset({"has", "no", "han"}),
    Language.GERMAN: frozenset({"was", "not", "all"}),
    Language.FRENCH: frozenset({"or", "for", "has", "but"}),
}
_SOURCES = re.compile(r"^\s*\[1\] ", re.MULTILINE)
_QUOTED = re.compile(r"`[^`]*`|\"[^\"]*\"|--[a-z-]+|'[^']*'")


def english_in(text: str, language: Language) -> set[str]:
    """Return the frequent English words in a text that are no words of the language, sources and quotes left out."""
    told = _QUOTED.sub(" ", _SOURCES.split(text)[0])
    return (set(re.findall(r"(?<![\w'’.-])[a-z]+(?![\w'’.-])", told)) & _ENGLISH) - _OWN[language]


@pytest.fixture
def survey(tmp_path: Path) -> Path:
    path = tmp_path / "station.json"
    positions = [
        {"label": "1", "liquid": {"family": "gasoline", "blend_percent": 10}, "retrieval": "retractor"},
        {"label": "2", "liquid": {"family": "diesel", "blend_percent": 20}, "duty": "truck"},
        {"label": "3", "liquid": {"family": "def", "blend_percent": 0}},
        {"label": "4", "liquid": {"family": "gasoline", "blend_percent": 85}, "vapour_wanted": "balance"},
    ]
    path.write_text(json.dumps({"site": {"name": "Fernau"}, "positions": positions}))
    return path


@pytest.mark.parametrize("language", TOLD)
def test_what_commands_say_holds_no_english(spoutline: Spoutline, survey: Path, language: Language) -> None:
    said = [
        spoutline("--language", language.value, *command)
        for command in (
            ("plan", str(survey)),
            ("why", str(survey), "1"),
            ("substitutes", str(survey), "1", "nozzle", "--misfits"),
            ("drawing", str(survey), "1"),
            ("measure", str(survey), "1"),
            ("site", str(survey)),
            ("--help",),
            ("catalogue", "import", "--help"),
        )
    ]
    assert [english_in(done.out + done.err, language) for done in said] == [set()] * len(said)
    assert all(done.out for done in said)


@pytest.mark.parametrize("language", TOLD)
def test_papers_hold_no_english(spoutline: Spoutline, survey: Path, tmp_path: Path, language: Language) -> None:
    bill, pack = tmp_path / "bill.pdf", tmp_path / "pack.pdf"
    spoutline("--language", language.value, "bill", str(survey), "--short", "--pdf", str(bill))
    spoutline("--language", language.value, "pack", str(survey), "--pdf", str(pack))
    assert [english_in(text_of(paper), language) for paper in (bill, pack)] == [set(), set()]


def test_the_list_would_find_english(spoutline: Spoutline, survey: Path) -> None:
    assert len(english_in(spoutline("plan", str(survey)).out, Language.SPANISH)) > 5
