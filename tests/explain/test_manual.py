"""The manual: every page in every language, words of the trade, the source of every rule, licenses of what is used."""

from __future__ import annotations

import re
import shlex
import tomllib
import xml.etree.ElementTree as ET
from functools import cache
from importlib.metadata import distribution, version
from pathlib import Path

import pytest

from spoutline import assets
from spoutline.bootstrap import Workbench
from spoutline.bootstrap.licenses import license_text, package_licenses
from spoutline.bootstrap.manual import HelpUser, Manual
from spoutline.model.claims import claim_in
from spoutline.model.faults import InputFault
from spoutline.model.language import Language
from spoutline.rules.declared.registry import RULES
from spoutline.units.accepted import UnitSystem
from spoutline.units.display import Display

HELP = assets.resources_folder() / "help"
GENERAL = "us_general"
TRANSLATED = sorted(HELP.glob("*/*.md"))

_MARK = re.compile(r"(?:#+ |\* |\d+\. |\|(?:-+\|)*)?")
_BLOCK = re.compile(r"^```(\w*)\n(.*?)^```$", re.MULTILINE | re.DOTALL)
_NAME = re.compile(r"\*([^*\s][^*]*)\*")
_LINK = re.compile(r"\]\(([^)#\s]+)(?:#[^)]*)?\)")


def manual(workbench: Workbench, language: Language = Language.ENGLISH) -> Manual:
    return workbench.manual(Display(UnitSystem.US), GENERAL, language)


@pytest.mark.parametrize("language", list(Language))
def test_every_page_can_be_read_in_every_language(workbench: Workbench, language: Language) -> None:
    pages = [manual(workbench, language).page(topic.name) for topic in manual(workbench, language).topics]
    assert [page.topic.name for page in pages if len(page.text) < 200] == []
    titles = [page.topic.title for page in pages]
    assert len(set(titles)) == len(titles)
    assert [page.topic.name for page in pages if page.language is not language] == []


def test_every_page_of_the_folder_is_in_the_contents(workbench: Workbench) -> None:
    files = {one.stem for one in HELP.glob("*.md")} - {"README"}
    made = {"glossary", "rules", "licenses"}
    assert {topic.name for topic in manual(workbench).topics} == files | made


@pytest.mark.parametrize("language", [one for one in Language if one is not Language.ENGLISH])
def test_every_file_of_the_manual_is_there_in_every_language(language: Language) -> None:
    assert {one.name for one in (HELP / language).glob("*.md")} == {one.name for one in HELP.glob("*.md")}


def test_each_of_the_three_users_has_pages_of_their_own(workbench: Workbench) -> None:
    topics = manual(workbench).topics
    for user, page in (
        (HelpUser.DISTRIBUTOR, "quotations"), (HelpUser.OWNER, "conversions"), (HelpUser.INSTALLER, "installer"),
    ):  # fmt: skip
        mine = {one.name for one in topics if user in one.users}
        assert {page, "first_steps", "glossary", "rules"} <= mine
        assert mine != {one.name for one in topics}


def test_every_term_is_told_in_every_language() -> None:
    table = tomllib.loads((HELP / "glossary.toml").read_text(encoding="utf-8"))
    assert len(table) >= 30
    for name, row in table.items():
        assert set(row) == set(Language), name
        for word, meaning in row.values():
            assert word
            assert meaning.endswith(".")
            assert claim_in(meaning) is None
        assert len({meaning for _, meaning in row.values()}) == len(Language), name


def test_words_that_the_trade_uses_stand_in_the_glossary(workbench: Workbench) -> None:
    words = " ".join(one.word.casefold() for one in manual(workbench).terms)
    # the places of the chain, and what NFPA 30A and UL 2586 call its functions
    for term in ("whip hose", "breakaway", "curb hose", "swivel", "nozzle", "hold-open latch", "authority having"):
        assert term in words


@pytest.mark.parametrize("language", list(Language))
def test_every_rule_is_told_with_what_it_rests_on(workbench: Workbench, language: Language) -> None:
    text = manual(workbench, language).page("rules").text
    phrases = workbench.story(Display(UnitSystem.US), language).phrases
    sections = text.split("\n### ")[1:]
    assert len(sections) == len(RULES)
    for rule in RULES.values():
        phrase = phrases.rule(rule.id)
        assert any(one.startswith(f"{phrase.title}\n") and phrase.says in one for one in sections), rule.id
    # the figures come from the rows: NFPA 30A's 18 ft for a hose, as the row of the general profile prints it
    assert "18 ft" in text
    figures = {limit for rule in RULES.values() for limit in rule.limits}
    rows = [line for line in text.splitlines() if line.startswith("- ")]
    assert len(rows) >= len(figures)
    assert all(re.search(r" – .+ \[.+\]$", row) for row in rows)


def test_words_are_found_where_they_stand_headings_first(workbench: Workbench) -> None:
    hits = manual(workbench).search("Hold-Open")
    assert {"glossary", "rules"} <= {hit.topic.name for hit in hits}
    assert [hit.is_heading for hit in hits] == sorted((hit.is_heading for hit in hits), reverse=True)
    assert manual(workbench).search("  ") == ()
    assert manual(workbench).search("no such word anywhere") == ()


@pytest.mark.parametrize("written", ["agreed_sets", "Agreed-Sets", "agreed sets", "agreed_sets.md"])
def test_a_page_is_found_however_its_name_is_joined(workbench: Workbench, written: str) -> None:
    assert manual(workbench).page(written).topic.name == "agreed_sets"


def test_a_page_that_is_none_is_refused_with_those_there_are(workbench: Workbench) -> None:
    with pytest.raises(InputFault, match="glossary"):
        manual(workbench).page("nozles")


def test_licenses_are_those_that_the_installed_packages_declare() -> None:
    found = {one.name.casefold().replace("_", "-"): one for one in package_licenses()}
    declared = {
        re.split(r"[\s\[<>=!~;]", one, maxsplit=1)[0].casefold()
        for one in distribution("spoutline").requires or []
        if "extra ==" not in one
    }
    assert declared <= set(found)
    assert found["sqlalchemy"].version == version("sqlalchemy")
    assert found["sqlalchemy"].license == "MIT"  # as its page at the Python package index says
    assert found["pyside6-essentials"].license.startswith("LGPL")
    assert "pytest" not in found  # what tests alone need is no part of the program
    assert [name for name, one in found.items() if not one.license] == []
    assert "Permission is hereby granted" in license_text("sqlalchemy")
    assert license_text("no-such-package") == ""


def shape(page: Path) -> list[str]:
    """Return the marks that a page is built of, whatever its language: headings, rows of tables, points of lists."""
    return [mark for line in page.read_text(encoding="utf-8").splitlines() if (mark := _MARK.match(line)[0].rstrip())]


def commands(page: Path) -> list[list[str]]:
    """Return what stands in the blocks of shell commands, without remarks; other blocks as they are."""
    found = []
    for kind, block in _BLOCK.findall(page.read_text(encoding="utf-8")):
        lines = block.splitlines()
        found.append([" ".join(words) for one in lines if (words := shlex.split(one, comments=True))]
                     if kind == "sh" else lines)  # fmt: skip
    return found


def links(page: Path) -> set[str]:
    """Return the pages that a page leads to, by their names."""
    return {target.rpartition("/")[2] for target in _LINK.findall(page.read_text(encoding="utf-8"))}


def bare(text: str) -> str:
    return " ".join(text.replace("&", "").rstrip("…: ").split())


def names(page: Path) -> list[str]:
    """Return what a page sets in italics: names of tabs, buttons and menus, and what they show."""
    text = re.sub(r"`[^`]*`|\*\*|^\* ", "", _BLOCK.sub("", page.read_text(encoding="utf-8")), flags=re.MULTILINE)
    return [bare(one) for one in _NAME.findall(text)]


def parts(page: Path) -> tuple[int, int, int]:
    """Return how many paragraphs, pieces of code and names of the window a page has."""
    text = _BLOCK.sub("", page.read_text(encoding="utf-8"))
    return len(re.split(r"\n\s*\n", text.strip())), len(re.findall(r"`[^`]+`", text)), len(names(page))


@cache
def window_words(language: str) -> dict[str, set[str]]:
    """Return what the texts of the window are in a language."""
    words: dict[str, set[str]] = {}
    for message in ET.parse(assets.resources_folder() / "translations" / f"window_{language}.ts").iter("message"):
        told = message.find("translation")
        assert told is not None
        own = words.setdefault(bare(message.findtext("source", "")), set())
        own.update(bare(one.text or "") for one in (told, *told))
    return words


@pytest.mark.parametrize("page", TRANSLATED, ids=lambda one: f"{one.parent.name}-{one.stem}")
def test_a_page_says_in_another_language_what_the_english_one_does(page: Path) -> None:
    english = HELP / page.name
    assert shape(page) == shape(english)
    assert commands(page) == commands(english)
    assert links(page) == links(english)
    assert parts(page) == parts(english)
    # options, fields and files keep their names; a word in place of one that the reader puts in is translated
    told = [set(re.findall(r"`(-?-?[a-z][a-z_.-]*)`", one.read_text(encoding="utf-8"))) for one in (english, page)]
    assert told[0] == told[1]


@pytest.mark.parametrize("page", TRANSLATED, ids=lambda one: f"{one.parent.name}-{one.stem}")
def test_a_page_names_what_is_in_the_window_as_the_window_does(page: Path) -> None:
    words = window_words(page.parent.name)
    pairs = [
        (english, here) for english, here in zip(names(HELP / page.name), names(page), strict=True) if english in words
    ]
    assert [(english, here) for english, here in pairs if here not in words[english]] == []


def test_some_names_of_the_window_stand_in_the_manual() -> None:
    found = {one for page in HELP.glob("*.md") for one in names(page)} & set(window_words("de"))
    assert {"Local rules", "Several answers", "Accept this answer"} <= found


@pytest.mark.parametrize("page", TRANSLATED, ids=lambda one: f"{one.parent.name}-{one.stem}")
def test_a_page_leads_to_pages_of_its_own_language(page: Path) -> None:
    assert [target for target in _LINK.findall(page.read_text(encoding="utf-8")) if "/" in target] == []
