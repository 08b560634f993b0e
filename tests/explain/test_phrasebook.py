"""The phrasebook is complete, and a faulty one is refused with every fault at once."""

from __future__ import annotations

import re

import pytest

from documents.readers import phrasebook
from spoutline import assets
from spoutline.explain.phrases.phrasebook_table import phrasebook_from_toml
from spoutline.explain.phrases.vocabulary import VOCABULARY
from spoutline.model.faults import InputFault
from spoutline.rules.declared.registry import RULES
from spoutline.rules.declared.rule_ids import RuleId


def source_text() -> str:
    return (assets.resources_folder() / "phrases" / "en.toml").read_text(encoding="utf-8")


def fields_of(text: str) -> dict[str, str]:
    with pytest.raises(InputFault) as caught:
        phrasebook_from_toml(text, "here.toml")
    assert all(problem.place == "here.toml" for problem in caught.value.problems)
    return {problem.field: problem.wanted for problem in caught.value.problems}


@pytest.mark.parametrize("list_name", sorted(VOCABULARY))
def test_every_member_of_a_list_has_a_word(list_name: str) -> None:
    words = [phrasebook().word(member) for member in VOCABULARY[list_name]]
    assert all(word.strip() for word in words)


@pytest.mark.parametrize("rule_id", list(RuleId))
def test_every_rule_has_a_title_and_a_sentence_without_a_full_stop(rule_id: RuleId) -> None:
    phrase = phrasebook().rule(rule_id)
    assert phrase.title
    assert phrase.says
    assert not phrase.says.endswith((".", ":"))


def test_every_fact_that_a_rule_carries_reads_without_an_underscore() -> None:
    names = {name for rule in RULES.values() for name in rule.facts}
    assert names
    assert not [name for name in names if "_" in phrasebook().fact_name(name)]


def test_no_phrase_claims_that_something_is_approved() -> None:
    text = source_text().lower()
    assert not re.findall(r"\b(approved|compliant|complies|certified)\b", text)


def test_a_missing_rule_and_a_missing_word_are_reported_together() -> None:
    text = source_text().replace("[rules.class_gap]", "[rules.class_gop]").replace('balance = "balance coaxial"\n', "")
    faults = fields_of(text)
    assert "rules.class_gap" in faults
    assert "words.FlowPath.balance" in faults
    assert "did you mean 'class_gap'?" in faults["rules.class_gop"]


def test_an_empty_phrase_is_refused() -> None:
    faults = fields_of(source_text().replace('nozzle = "nozzle"', 'nozzle = "  "', 1))
    assert faults == {"words.Slot.nozzle": "write a text that is not empty"}


def test_a_sentence_with_a_wrong_placeholder_is_refused() -> None:
    faults = fields_of(source_text().replace("{low} to {high}", "{low} to {hihg}"))
    assert faults == {"text.between": "use {high}, {low}"}


def test_a_sentence_of_a_requirement_line_with_a_wrong_placeholder_is_refused() -> None:
    faults = fields_of(source_text().replace("class {listing_class}.", "class {listing}."))
    assert faults == {"asks.class_asked": "use {liquid}, {listing_class}"}


def test_a_phrase_that_claims_approval_is_refused() -> None:
    faults = fields_of(source_text().replace('fits = "a set fits"', 'fits = "approved"'))
    assert list(faults) == ["words.PlanStatus.fits"]


def test_broken_toml_is_refused_with_its_place() -> None:
    assert list(fields_of("[text\n")) == ["table"]


def test_liquids_of_a_nozzle_are_told_in_words_and_never_by_code() -> None:
    assert phrasebook().fact_value("liquids", "diesel, fuel_oil, kerosene") == "diesel, fuel oil, kerosene"
