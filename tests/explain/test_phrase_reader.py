"""One reader for every phrase table: the guard in each language and paper, English for what a language lacks."""

from __future__ import annotations

import re
import tomllib
from collections.abc import Callable, Iterator, Mapping
from pathlib import Path

import pytest

from spoutline import assets
from spoutline.bootstrap.phrase_tables import PhraseTables
from spoutline.explain.conversion.phrases import conversion_phrases_from_toml
from spoutline.explain.pack.phrases import own_pack_phrases_from_toml
from spoutline.explain.phrases.phrasebook_table import phrasebook_from_toml
from spoutline.explain.phrases.reader import placeholders
from spoutline.model.claims import claim_in
from spoutline.model.faults import InputFault
from spoutline.model.language import Language
from spoutline.model.survey import Duty
from spoutline.ruletables.cautions import cautions_from_toml

RESOURCES = assets.resources_folder()
FROM_TOML: dict[str, Callable[[str, str, str], object]] = {
    "phrases": phrasebook_from_toml,
    "conversion": conversion_phrases_from_toml,
    "pack": own_pack_phrases_from_toml,
}
CLAIMS = {"en": "It is approved.", "es": "Está aprobado.", "de": "Es ist zugelassen.", "fr": "C'est approuvé."}


def english(folder: str) -> str:
    return (RESOURCES / folder / "en.toml").read_text(encoding="utf-8")


def texts_of(value: object) -> Iterator[str]:
    if isinstance(value, str):
        yield value
    for item in value.values() if isinstance(value, dict) else value if isinstance(value, list) else ():
        yield from texts_of(item)


@pytest.mark.parametrize("folder", FROM_TOML)
@pytest.mark.parametrize("language", CLAIMS)
def test_a_claim_is_refused_in_every_paper_and_language(folder: str, language: str) -> None:
    path = RESOURCES / folder / f"{language}.toml"
    text = path.read_text(encoding="utf-8") if path.is_file() else english(folder)
    name = re.findall(r'(?m)^(\w+) = "[^{}]*"$', text)[-1]
    claiming = re.sub(rf'(?m)^{name} = "[^{{}}]*"$', f'{name} = "{CLAIMS[language]}"', text)
    with pytest.raises(InputFault) as caught:
        FROM_TOML[folder](claiming, path.name, english(folder))
    assert all("never claims" in problem.wanted for problem in caught.value.problems)
    assert any(problem.field.endswith(f".{name}") for problem in caught.value.problems)


@pytest.mark.parametrize("language", CLAIMS)
def test_a_caution_that_claims_is_refused(language: str) -> None:
    text = (RESOURCES / "cautions" / f"{language}.toml").read_text(encoding="utf-8")
    claiming = re.sub(r'(?m)^why = ".*"$', f'why = "{CLAIMS[language]}"', text, count=1)
    with pytest.raises(InputFault, match="never claims"):
        cautions_from_toml(claiming, "here.toml")


def test_no_table_of_texts_claims_anything() -> None:
    tables = [*RESOURCES.glob("*/*.toml"), *RESOURCES.glob("rules/*/*.toml")]
    worded = [path for path in tables if path.parent.name not in ("limits", "jurisdictions", "vapour", "rules")]
    assert worded
    found = {
        path.name: text
        for path in worded
        for text in texts_of(tomllib.loads(path.read_text(encoding="utf-8")))
        if claim_in(text)
    }
    assert found == {}


def missing_phrases(text: str, english: str) -> tuple[str, ...]:
    """Return the dotted names of the English phrases that a table of another language lacks, in order."""
    own = set(dotted(tomllib.loads(text)))
    return tuple(name for name in dotted(tomllib.loads(english)) if name not in own)


def dotted(table: Mapping[str, object], prefix: str = "") -> Iterator[str]:
    for name, value in table.items():
        if isinstance(value, dict):
            yield from dotted(value, f"{prefix}{name}.")
        else:
            yield f"{prefix}{name}"


def test_english_stands_in_for_what_a_language_lacks(tmp_path: Path) -> None:
    (tmp_path / "phrases").mkdir()
    (tmp_path / "phrases" / "en.toml").write_text(english("phrases"), encoding="utf-8")
    own = '[text]\nlanguage = "de"\nyes = "ja"\n[words.Duty]\ncar = "Pkw"\n'
    (tmp_path / "phrases" / "de.toml").write_text(own, encoding="utf-8")
    tables = PhraseTables(lambda: tmp_path)
    book, base = tables.plan(Language.GERMAN), tables.plan(Language.ENGLISH)
    assert (book.language, book.text["yes"], book.word(Duty.CAR)) == ("de", "ja", "Pkw")
    assert (book.text["no"], book.word(Duty.TRUCK)) == (base.text["no"], base.word(Duty.TRUCK))
    assert tables.plan(Language.FRENCH).language == "en"  # no table at all: the paper is English throughout
    missing = missing_phrases(own, english("phrases"))
    assert "text.no" in missing
    assert "words.Duty.truck" in missing
    assert not {"text.yes", "words.Duty.car"} & set(missing)


def test_a_table_that_does_not_name_its_language_is_refused() -> None:
    with pytest.raises(InputFault) as caught:
        phrasebook_from_toml('[text]\nyes = "ja"\n', "de.toml", english("phrases"))
    assert [problem.field for problem in caught.value.problems] == ["text.language"]


@pytest.mark.parametrize("folder", [*FROM_TOML, "cautions"])
@pytest.mark.parametrize("language", ["es", "de", "fr"])
def test_a_language_lacks_no_phrase_of_any_table(folder: str, language: str) -> None:
    path = RESOURCES / folder / f"{language}.toml"
    assert missing_phrases(path.read_text(encoding="utf-8"), english(folder)) == ()


@pytest.mark.parametrize("language", ["es", "de", "fr"])
def test_every_step_of_a_conversion_has_a_title_in_every_language(language: str) -> None:
    steps = tomllib.loads((RESOURCES / "conversion" / "steps.toml").read_text(encoding="utf-8"))["step"]
    own = tomllib.loads((RESOURCES / "conversion" / f"{language}.toml").read_text(encoding="utf-8"))["steps"]
    assert sorted(own) == sorted(step["id"] for step in steps)
    assert not [step["id"] for step in steps if own[step["id"]] == step["title"]]


@pytest.mark.parametrize(
    ("sentence", "names"),
    [("{a} of {b}", {"a", "b"}), ("none", set()), ("{", {"{"}), ("{}", {""}), ("{a.b}", {"a.b"})],
)
def test_placeholders_are_read_as_they_get_filled(sentence: str, names: set[str]) -> None:
    assert placeholders(sentence) == names


@pytest.mark.parametrize(("folder", "table"), [("phrases", "text"), ("conversion", "sentences"), ("pack", "text")])
def test_every_sentence_is_asked_for_somewhere(folder: str, table: str) -> None:
    declared = {"sentences.py", "vocabulary.py", "asked_cases.py"}
    app = RESOURCES.parent / "app" / "spoutline"
    files = [path for path in app.rglob("*.py") if path.name not in declared and path.parent.name != "pack"]
    files += list((app / "documents" / "pack").glob("*.py"))
    code = "\n".join(path.read_text(encoding="utf-8") for path in files)
    parts = tuple(re.findall(r'f"(\w+_)\{', code))  # names put together from a part and a value
    known = set(re.findall(r"[\"'](\w+)[\"']", code))
    asked = [name for name in tomllib.loads(english(folder))[table] if name not in known and not name.startswith(parts)]
    assert asked == []
