"""Every command answers in the language asked for: no word of an English answer is left in another language.

Every command and action runs on a demonstration book in English and in the language; a word that stands in both
answers is English left behind, unless it is stated here that it may stay. Comparing the program with itself in two
languages needs no word list of a language; what is a word of both was written down by hand.
"""

from __future__ import annotations

import re
import shutil
from pathlib import Path

import pytest

from command_tour import NAMES, Step, commands, tour
from program_runs import Spoutline
from spoutline.model.language import Language

TOLD = [
    pytest.param(language, marks=() if language is Language.SPANISH else pytest.mark.at_length)
    for language in Language
    if language is not Language.ENGLISH
]
# what other programs read, and the manual, whose pages ``test_manual`` holds: their words are no answer's
_DOCUMENTS = (("schema",), ("catalogue", "schema"), ("book", "roles"), ("demo",), ("help",), ("window",))
# names: makers, address and catalog of the demonstration, the program, its files, a place and a code that sources name
_DATA = """
larkspindle couplings quillmere forgeworks mossglimmer hose guild thistledown hosewrights grimbleton fittings
pebblecap road station invented filler demonstration spoutline sites maine oklahoma administrative code
colorado division of oil and public safety international fire state handbook near side
"""
# what is typed to the program as it stands: names of fields and of their values, of a jurisdiction, of --sets
_TYPED = """
name maker kind number part price label labels text supplier certificate alternate relation remark
description inlet outlet materials planes overhead retrieval retractor reel none single balance male female
down sideways continuity gasoline diesel kerosene def yes no comma point europe file path hardwall softwall
any ask csv
"""
# signs of units, currencies, clocks, threads, materials, standards, agencies and papers
_SIGNS = """
ft in kg kpa lb lbf gpm mm psi cv usd utc bytes npt un epdm fkm ptfe mω kω
ul en iec iso ts nfpa nist pei carb sae epa cfr cmr fr def
"""
# words that the language has too
_OWN = {
    Language.SPANISH: """
    axial coaxial en federal general manual marina material no nominal normal nov plan restrictor retractor
    selector total un urea use usual vapor
    """,
    Language.GERMAN: """
    adapter an biodiesel budget ethanol filter frost hand in mail marine material mild permeation plan
    revision so stand tank tanks was zone
    """,
    Language.FRENCH: """
    air an angle association axes biodiesel catalogue change charge client coaxial coefficient
    compression construction contact conversion date distance ignition information inspection interface joint joints
    long lots non normal note nov on option phases place plan range relaxation service site source
    sources stock total type types verdict zone
    """,
}
_ID = re.compile(r"[\d@_./\\=]")
_QUOTED = re.compile(r"`[^`]*`|«[^»]*»|“[^”]*”|„[^“]*“|\"[^\"]*\"|'[^']*'|--[a-z-]+")
_SOURCES = re.compile(r"^\s*\[1\] .*", re.MULTILINE | re.DOTALL)


# what the keeper of the demonstration catalog wrote of its edition, and who surveyed the station of what hangs there
_WRITTEN = (
    "First edition. Every maker, part, number and price in it is invented.",
    "coaxial hose without a plate, wide",
    "nozzle with torn bellows",
    "breakaway, plate painted over",
)


def words_of(text: str) -> set[str]:
    """Return the words of an answer: quotes, options, ids, paths, figures and the list of sources hold none."""
    for note in _WRITTEN:
        text = text.replace(note, " ")
    plain = _QUOTED.sub(" ", _SOURCES.sub("", text))
    parts = (part.strip("()[],;:.!?¿«»“”…✓✗×→–") for part in plain.split())
    kept = (part for part in parts if part and not _ID.search(part))
    return {word.lower() for part in kept for word in re.findall(r"[^\W\d_]{2,}", part)}


def answers(steps: list[Step]) -> list[tuple[str, set[str]]]:
    """Return the words that each command answered, without the documents among the answers."""
    return [
        (" ".join(words), words_of(done.out + done.err))
        for words, done in steps
        if not any(words[: len(one)] == one for one in _DOCUMENTS)
    ]


def steps_in(language: Language, spoutline: Spoutline, compiled: Path, folder: Path) -> list[Step]:
    """Run every command in a language, on a book of its own."""
    folder = folder / language.value
    folder.mkdir()
    database = Path(shutil.copy(compiled, folder / "book.sqlite3"))
    chosen = ("--language", language.value, "--database", str(database), "--profiles", str(folder / "profiles"))
    return tour(lambda *words: spoutline(*chosen, *words), database, folder)


@pytest.mark.parametrize("language", TOLD)
def test_no_word_of_an_english_answer_is_left(
    spoutline: Spoutline, database_to_copy: Path, tmp_path: Path, language: Language
) -> None:
    spoken = steps_in(Language.ENGLISH, spoutline, database_to_copy, tmp_path)
    told = steps_in(language, spoutline, database_to_copy, tmp_path)
    run = {words for words, _ in spoken}
    named = {one for one in commands() if one not in _DOCUMENTS}
    assert sorted(one for one in named if not any(words[: len(one)] == one for words in run)) == []
    english = {word for _, found in answers(spoken) for word in found}
    assert len(english) > 500  # the answers are there
    free = {*NAMES, *_DATA.split(), *_TYPED.split(), *_SIGNS.split(), *_OWN[language].split()}
    left = {word: command for command, found in answers(told) for word in (found & english) - free}
    assert left == {}
    seen = {word for _, found in answers(told) for word in found}
    assert sorted({*_OWN[language].split()} - seen) == []  # no word is free that nobody says


def test_a_line_in_english_would_be_found() -> None:
    assert words_of("Zorlist: 3 parts differ, see `plan`, 'typed', a.txt, mass_kg") >= {"parts", "differ", "see"}
    assert not words_of("`plan` 'typed' a.txt mass_kg --sets 12 ft3") & {"plan", "typed", "txt", "mass", "sets"}
