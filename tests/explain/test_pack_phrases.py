"""The installer's words are complete in every language, and nothing slips in from another."""

from __future__ import annotations

import re
import tomllib

import pytest

from spoutline import assets
from spoutline.bootstrap.phrase_tables import PhraseTables
from spoutline.explain.pack.phrases import own_pack_phrases_from_toml
from spoutline.explain.pack.words import PACK_SENTENCES, PACK_VOCABULARY, PackWord
from spoutline.explain.phrases.phrasebook import Phrasebook
from spoutline.explain.phrases.vocabulary import TEXT_PLACEHOLDERS
from spoutline.explain.plan.story import Story
from spoutline.model.faults import InputFault
from spoutline.model.language import Language
from spoutline.model.quantity import Dimension
from spoutline.units.accepted import UnitSystem
from spoutline.units.display import Display

FOLDER = assets.resources_folder() / "pack"
ENGLISH = (FOLDER / "en.toml").read_text(encoding="utf-8")
# words that are the same in two languages, or are standards' own signs
SAME = {
    "ThreadStandard", "text.language", "text.at_least", "text.at_most", "text.between",
    "text.each_for", "text.hose_of", "text.torque_of",
    "PackWord.notes", "PackWord.photos", "PackWord.source", "PackWord.date",
    "PackWord.signature", "PackWord.service", "PackWord.site", "PackWord.name", "PackWord.role", "PackWord.danger",
    "PackWord.caution", "PackWord.kit", "PackWord.place", "PackWord.limit", "LiquidFamily.diesel", "Slot.adaptor",
    "PartKind.adaptor", "CheckId.bend_radius", "NozzleOperation.manual", "RequirementId.joints",
}  # fmt: skip


TABLES = PhraseTables(assets.resources_folder)


def book(language: Language) -> Phrasebook:
    return TABLES.pack(language)


def own(language: Language) -> Phrasebook:
    return own_pack_phrases_from_toml((FOLDER / f"{language}.toml").read_text(encoding="utf-8"), f"{language}.toml")


def said(phrases: Phrasebook) -> dict[tuple[str, str], str]:
    words = {(name, value): word for name, table in phrases.words.items() for value, word in table.items()}
    return words | {("text", name): text for name, text in phrases.text.items()}


def test_the_pack_says_no_word_of_its_own_where_a_plan_says_the_same() -> None:
    """Two papers of one station call a thing by one name: 138 words and sentences stood twice and had drifted apart."""
    plans = said(TABLES.plan(Language.ENGLISH))
    alike = {place for place, text in said(own(Language.ENGLISH)).items() if plans.get(place) == text}
    assert alike == {("text", "language")}


@pytest.mark.parametrize("language", Language)
def test_every_language_has_the_same_words_of_its_own(language: Language) -> None:
    assert said(own(language)).keys() == said(own(Language.ENGLISH)).keys()
    assert own(language).text["language"] == language.value


@pytest.mark.parametrize("language", Language)
def test_what_the_pack_says_shorter_is_what_its_papers_say(language: Language) -> None:
    pack = said(book(language))
    assert {place: pack[place] for place in said(own(language))} == said(own(language))


@pytest.mark.parametrize("language", Language)
def test_what_both_say_alike_in_english_is_one_text_in_every_language(language: Language) -> None:
    plans, pack = said(TABLES.plan(language)), said(book(language))
    both = pack.keys() & plans.keys() - said(own(Language.ENGLISH)).keys()
    assert len(both) > 100
    assert {place: pack[place] for place in both} == {place: plans[place] for place in both}
    assert all(PACK_SENTENCES[name] == TEXT_PLACEHOLDERS[name] for kind, name in both if kind == "text")


@pytest.mark.parametrize("language", Language)
def test_a_language_has_every_word_and_sentence_and_no_other(language: Language) -> None:
    phrases = book(language)
    assert phrases.language == language.value
    assert set(phrases.text) == set(PACK_SENTENCES)
    for name, members in PACK_VOCABULARY.items():
        assert set(phrases.words[name]) == {member.value for member in members}, name


@pytest.mark.parametrize("language", [one for one in Language if one is not Language.ENGLISH])
def test_no_word_is_left_in_english(language: Language) -> None:
    english, mine = book(Language.ENGLISH), book(language)
    pairs = {f"text.{key}": (mine.text[key], english.text[key]) for key in english.text}
    for name, table in english.words.items():
        pairs |= {f"{name}.{key}": (mine.words[name][key], word) for key, word in table.items()}
    left = [
        key for key, (one, other) in pairs.items() if one == other and key not in SAME and key.split(".")[0] not in SAME
    ]
    assert left == []


@pytest.mark.parametrize("word", ["pack", "on_site", "no_set"])
def test_a_missing_word_stops_the_loading_and_is_named(word: str) -> None:
    text = re.sub(rf"(?m)^{word} = .*\n", "", ENGLISH, count=1)
    with pytest.raises(InputFault) as caught:
        own_pack_phrases_from_toml(text, "en.toml")
    assert [problem.field for problem in caught.value.problems] == [f"words.PackWord.{word}"]


@pytest.mark.parametrize(
    ("old", "new", "words"),
    [
        ('scan = "', 'scann = "', ("words.PackWord.scann", "did you mean 'scan'")),
        (
            'questions_open = "Open questions, to be settled before fitting ({count})',
            'questions_open = "Questions: {number}',
            ("{count}",),
        ),
        (
            'assumed_figure = "assumed"',
            'assumed_figure = ""',
            ("text.assumed_figure", "write a text that is not empty"),
        ),
        ("[words.Seal]", "[words.Seel]", ("words.Seel", "did you mean 'Seal'")),
        ("[text]", "[text", ("valid TOML",)),
    ],
)
def test_a_faulty_table_is_refused_with_the_place(old: str, new: str, words: tuple[str, ...]) -> None:
    assert old in ENGLISH
    with pytest.raises(InputFault) as caught:
        own_pack_phrases_from_toml(ENGLISH.replace(old, new, 1), "en.toml")
    assert any(all(word in str(problem) for word in words) for problem in caught.value.problems)


def test_every_fixed_word_is_used_by_some_paper() -> None:
    app = assets.resources_folder().parent / "app" / "spoutline"
    code = "\n".join(path.read_text(encoding="utf-8") for path in (app / "documents" / "pack").glob("*.py"))
    code += "\n".join(path.read_text(encoding="utf-8") for path in (app / "gui").rglob("*.py"))
    signals = {PackWord.DANGER, PackWord.WARNING, PackWord.CAUTION, PackWord.NOTICE}  # chosen by the caution's severity
    assert [word for word in PackWord if f"Word.{word.name}" not in code and word not in signals] == []


@pytest.mark.parametrize(
    ("language", "shown"),
    [(Language.GERMAN, "1,25 m"), (Language.FRENCH, "1,25 m"), (Language.SPANISH, "1.25 m")],
)
def test_figures_take_the_decimal_sign_of_the_language(language: Language, shown: str) -> None:
    story = Story(book(language), Display(UnitSystem.SI).written(language))
    assert story.show(1.25, Dimension.LENGTH) == shown


def test_the_tables_are_plain_toml() -> None:
    for language in Language:
        table = tomllib.loads((FOLDER / f"{language}.toml").read_text(encoding="utf-8"))
        assert set(table) == {"text", "words"}
