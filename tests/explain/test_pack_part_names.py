"""Parts are named in the language of the paper, from what the catalogue declares about them."""

from __future__ import annotations

import re

import pytest

from documents.pack_words import words
from spoutline.catalogue.store import CatalogueStore
from spoutline.documents.pack.setting_words import written
from spoutline.explain.plan.part_name import part_name
from spoutline.model.language import Language
from spoutline.model.part import Part, PartKind
from spoutline.model.part_ref import PartRef
from spoutline.model.requirement import RequirementId
from spoutline.rules.declared.derivation import DERIVATION_RULES

OTHERS = tuple(one for one in Language if one is not Language.ENGLISH)


@pytest.fixture(scope="module")
def parts(catalogue_store: CatalogueStore) -> tuple[Part, ...]:
    return catalogue_store.search("", None, 100_000)


def _words_in(texts: tuple[str, ...]) -> set[str]:
    return {word for text in texts for word in re.findall(r"[^\W\d_]{4,}", text.casefold())}


@pytest.mark.parametrize("language", OTHERS)
def test_no_word_of_an_english_name_stands_in_the_name_of_another_language(
    language: Language, parts: tuple[Part, ...]
) -> None:
    story = words(language).story
    own = _words_in(tuple(word for table in story.phrases.words.values() for word in table.values()))
    for part in parts:
        named = part_name(part, story)
        assert _words_in((named,)) & _words_in((part.name,)) <= own, named
        assert named.startswith(story.title(part.kind))


def test_english_papers_keep_the_name_of_the_catalogue(parts: tuple[Part, ...]) -> None:
    story = words(Language.ENGLISH).story
    assert [part_name(part, story) for part in parts] == [part.name for part in parts]


@pytest.mark.parametrize(
    ("number", "language", "name"),
    [
        # read off the catalogue's own table: NPT 3/4, single use, 445 N to 890 N, E10 B5 B20
        ("LS-B101", Language.SPANISH, "Válvula de ruptura 3/4 NPT, un solo uso, 445 N – 890 N, E10 B5 B20"),
        # NPT 3/4, two planes
        ("LS-S103", Language.FRENCH, "Raccord tournant 3/4 NPT, deux plans, E10 B5 B20"),
        # hardwall, 2.4384 m
        ("TH-H101", Language.GERMAN, "Zapfschlauch 3/4 NPT, formstabile Wand, 2,438 m, E10 B5 B20"),
    ],
)
def test_a_name_says_what_tells_the_part_from_its_neighbours(
    number: str, language: Language, name: str, parts: tuple[Part, ...]
) -> None:
    part = next(one for one in parts if PartRef(number).names(one.ref))
    assert part_name(part, words(language).story) == name


def test_labels_of_every_language_say_what_they_name(parts: tuple[Part, ...]) -> None:
    labels = [part for part in parts if part.kind is PartKind.LABEL]
    for language in OTHERS:
        named = [part_name(part, words(language).story) for part in labels]
        assert len(set(named)) == len({part.name for part in labels}), named


@pytest.mark.parametrize("language", OTHERS)
def test_what_the_survey_decided_is_sourced_in_the_language_of_the_paper(language: Language) -> None:
    (source,) = {one.source for one in DERIVATION_RULES if one.requirement is RequirementId.RECONNECTABLE}
    story = words(language).story
    assert written(source, story) == story.phrases.text["source_decision"] != source
