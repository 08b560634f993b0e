"""The translated cautions say what the English ones say, all of them, and claim no more."""

from __future__ import annotations

import re

import pytest

from spoutline import assets
from spoutline.model.faults import InputFault
from spoutline.model.language import Language
from spoutline.ruletables.caution_signs import caution_signs_from_toml, load_caution_signs
from spoutline.ruletables.cautions import load_caution_table

RESOURCES = assets.resources_folder()
ENGLISH = load_caution_table(RESOURCES, "en")
OTHERS = [language for language in Language if language is not Language.ENGLISH]
# figures that must survive translation: percentages, temperatures, lengths, intervals
FIGURE = re.compile(r"\d+(?:[.,]\d+)?")


@pytest.mark.parametrize("language", OTHERS)
def test_every_caution_is_there_in_order_with_severity_conditions_and_status(language: Language) -> None:
    table = load_caution_table(RESOURCES, language.value)
    assert table.language == language.value
    assert table.edition == ENGLISH.edition
    keys = [(one.id, one.severity, one.applies, one.status) for one in table.cautions]
    assert keys == [(one.id, one.severity, one.applies, one.status) for one in ENGLISH.cautions]


@pytest.mark.parametrize("language", OTHERS)
def test_no_sentence_is_left_in_english_or_shortened_away(language: Language) -> None:
    for own, english in zip(load_caution_table(RESOURCES, language.value).cautions, ENGLISH.cautions, strict=True):
        assert own.hazard != english.hazard, own.id
        for mine, theirs in ((own.why, english.why), (own.what_to_do, english.what_to_do)):
            assert mine != theirs, own.id
            assert len(mine) > 0.6 * len(theirs), own.id


@pytest.mark.parametrize("language", OTHERS)
def test_figures_and_clauses_survive_translation(language: Language) -> None:
    for own, english in zip(load_caution_table(RESOURCES, language.value).cautions, ENGLISH.cautions, strict=True):
        for mine, theirs in (
            (own.why, english.why),
            (own.what_to_do, english.what_to_do),
            (own.source, english.source),
        ):
            assert sorted(one.replace(",", ".") for one in FIGURE.findall(mine)) == sorted(FIGURE.findall(theirs)), (
                own.id
            )


@pytest.mark.parametrize("language", OTHERS)
def test_a_translation_never_claims_approval_or_compliance(language: Language) -> None:
    claims = re.compile(
        r"\b(está aprobad|es conforme|certificad[oa] para|ist (zugelassen|genehmigt|konform)|est (approuvé|conforme))",
        re.IGNORECASE,
    )
    for caution in load_caution_table(RESOURCES, language.value).cautions:
        assert not claims.search(f"{caution.hazard} {caution.why} {caution.what_to_do}"), caution.id


@pytest.mark.parametrize(
    ("language", "word"),
    [
        (Language.SPANISH, "autoridad competente"),
        (Language.GERMAN, "zuständige Behörde"),
        (Language.FRENCH, "autorité compétente"),
    ],
)
def test_local_rules_and_the_authority_come_first_in_every_language(language: Language, word: str) -> None:
    first = load_caution_table(RESOURCES, language.value).cautions[0]
    assert first.id == "local_rules"
    assert word in first.what_to_do


def test_every_caution_has_a_sign_and_every_sign_a_caution() -> None:
    assert set(load_caution_signs(RESOURCES)) == {caution.id for caution in ENGLISH.cautions}


@pytest.mark.parametrize(
    ("text", "words"),
    [
        ("[signs]\nlock_out = ['mandatory', 'padlok']\n", ("signs.lock_out", "did you mean padlock")),
        ("[signs]\nlock_out = ['mandatry', 'padlock']\n", ("signs.lock_out", "did you mean mandatory")),
        ("[signs]\nlock_out = 'padlock'\n", ("signs.lock_out", "[shape, pictogram]")),
        ("signs = 3\n", ("signs", "write the table")),
    ],
)
def test_a_faulty_sign_is_named(text: str, words: tuple[str, ...]) -> None:
    with pytest.raises(InputFault) as caught:
        caution_signs_from_toml(text, "signs.toml")
    assert any(all(word in str(problem) for word in words) for problem in caught.value.problems)
