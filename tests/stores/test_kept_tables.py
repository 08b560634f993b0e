"""What is kept of the program's tables counts for the very texts and code alone; damaged, it does no harm."""

from __future__ import annotations

import hashlib
import os
import pickle
import shutil
import subprocess
import sys
from collections.abc import Callable
from pathlib import Path
from typing import NoReturn

import pytest

from spoutline import assets
from spoutline.book.survey_text import survey_to_json
from spoutline.bootstrap import kept_tables, phrase_tables
from spoutline.bootstrap.demos import demo_survey
from spoutline.bootstrap.kept_tables import READING, kept, reading_code
from spoutline.bootstrap.phrase_tables import PhraseTables
from spoutline.bootstrap.settings import Settings
from spoutline.explain.phrases.phrasebook import RulePhrase
from spoutline.model.claims import claim_in
from spoutline.model.faults import Cancelled, InputFault, InputProblem
from spoutline.model.language import Language
from spoutline.ruletables import load

VALUE = {"one": RulePhrase("a rule", "it says so"), "two": RulePhrase("another", "so does it")}
SPOILT = "spoilt"


@pytest.fixture(autouse=True)
def folder(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> Path:
    """Return the folder of what is kept, one of the test's own."""
    monkeypatch.setattr(kept_tables, "cache_folder", lambda: tmp_path / "cache")
    return tmp_path / "cache" / "tables"


class Reader:
    """Counts how often texts were read."""

    def __init__(self, made: object = VALUE) -> None:
        self.made, self.times = made, 0

    def __call__(self) -> object:
        self.times += 1
        return self.made


def asked(reader: Reader, *texts: str, name: str = "words") -> object:
    return kept(name, texts or ("a text",), reader)


def test_the_same_texts_are_read_once_and_mean_the_same_afterwards() -> None:
    reader = Reader()
    assert [asked(reader) for _ in range(3)] == [VALUE] * 3
    assert reader.times == 1


@pytest.mark.parametrize("texts", [("another text",), ("a text", ""), ("a textb", "elow"), ("a textbelow",), ()])
def test_other_texts_are_read(texts: tuple[str, ...]) -> None:
    asked(Reader(), "a text", "below")
    reader = Reader()
    kept("words", texts, reader)
    assert reader.times == 1


def test_another_reader_and_another_code_read_anew(monkeypatch: pytest.MonkeyPatch) -> None:
    asked(Reader())
    reader = Reader()
    asked(reader, name="other_words")
    monkeypatch.setattr(kept_tables, "reading_code", lambda: "another state of the code")
    asked(reader)
    assert reader.times == 2


def test_a_program_whose_code_cannot_be_told_keeps_nothing(folder: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    monkeypatch.setattr(kept_tables, "reading_code", lambda: None)
    reader = Reader()
    assert [asked(reader), asked(reader)] == [VALUE, VALUE]
    assert reader.times == 2
    assert not folder.exists()


def test_code_counts_as_another_once_a_source_is_written(tmp_path: Path) -> None:
    for name in READING:
        path = tmp_path / name
        path.parent.mkdir(parents=True, exist_ok=True)
        if path.suffix:
            path.write_text("x = 1", encoding="utf-8")
        else:
            (path / "below").mkdir(parents=True)
            (path / "below" / "one.py").write_text("x = 1", encoding="utf-8")
    before = kept_tables._states(tmp_path)
    assert kept_tables._states(tmp_path) == before
    source = tmp_path / "model" / "below" / "one.py"
    day = source.stat().st_mtime_ns
    source.write_text("x = 22", encoding="utf-8")
    os.utime(source, ns=(day, day))
    assert kept_tables._states(tmp_path) != before  # by its size
    source.write_text("x = 2", encoding="utf-8")
    os.utime(source, ns=(0, 1))  # whatever the clock of the file system tells apart
    assert kept_tables._states(tmp_path) != before
    source.unlink()
    with pytest.raises(FileNotFoundError):
        kept_tables._states(tmp_path)


def test_a_program_whose_code_lies_in_one_file_is_told_by_that_file(
    tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    program = tmp_path / "program"
    monkeypatch.setattr(sys, "frozen", True, raising=False)
    monkeypatch.setattr(sys, "executable", str(program))
    code_now = reading_code.__wrapped__
    assert code_now() is None
    found = []
    for content, day in (("one", 1), ("other", 1), ("other", 2)):
        program.write_text(content, encoding="utf-8")
        os.utime(program, ns=(day, day))
        found.append(code_now())
    for name, value in (("sys.version", "another Python"), ("spoutline.__version__", "another version")):
        monkeypatch.setattr(name, value)
        found.append(code_now())
    assert None not in found
    assert len(set(found)) == len(found)


def spoilt_files() -> list[Callable[[bytes], bytes]]:
    return [
        lambda _: b"",
        lambda whole: whole[:20],
        lambda whole: whole[:-1],
        lambda whole: whole + b"\0",
        lambda whole: whole[:-30] + bytes([whole[-30] ^ 1]) + whole[-29:],
        lambda whole: bytes([whole[0] ^ 1]) + whole[1:],
    ]


@pytest.mark.parametrize("spoil", spoilt_files())
def test_a_torn_file_counts_as_none_and_is_written_anew(folder: Path, spoil: Callable[[bytes], bytes]) -> None:
    asked(Reader())
    (path,) = folder.iterdir()
    sound = path.read_bytes()
    path.write_bytes(spoil(sound))
    reader = Reader()
    assert asked(reader) == VALUE
    assert (reader.times, path.read_bytes()) == (1, sound)


class _Calls:
    """Something that a file could ask to be called while it is read."""

    def __init__(self, called: Callable[..., object], *arguments: object) -> None:
        self.called, self.arguments = called, arguments

    def __reduce__(self) -> tuple[Callable[..., object], tuple[object, ...]]:
        return self.called, self.arguments


@pytest.mark.parametrize(
    "content",
    [
        pickle.dumps(Settings()),
        pickle.dumps(Cancelled()),
        pickle.dumps(_Calls(claim_in, "it is approved")),
        b"cspoutline.model.nowhere\nName\n.",
        b"cspoutline.model.limit\nNoName\n.",
    ],
)
def test_what_is_no_value_of_a_table_counts_as_none(folder: Path, content: bytes) -> None:
    asked(Reader())
    (path,) = folder.iterdir()
    path.write_bytes(b"SPOUTTAB" + hashlib.sha256(content).digest() + content)
    assert asked(Reader()) == VALUE


@pytest.mark.parametrize("called", [os.mkdir, Path, eval])
def test_nothing_but_values_of_the_program_is_made_of_a_file(
    folder: Path, tmp_path: Path, called: Callable[..., object]
) -> None:
    asked(Reader())
    (path,) = folder.iterdir()
    made = str(tmp_path / SPOILT) if called is not eval else f"__import__('os').mkdir({str(tmp_path / SPOILT)!r})"
    content = pickle.dumps(_Calls(called, made))
    path.write_bytes(b"SPOUTTAB" + hashlib.sha256(content).digest() + content)
    reader = Reader()
    assert asked(reader) == VALUE
    assert reader.times == 1
    assert not (tmp_path / SPOILT).exists()


def test_a_folder_that_cannot_be_used_is_done_without(folder: Path) -> None:
    folder.parent.mkdir()
    folder.write_text("no folder", encoding="utf-8")
    reader = Reader()
    assert [asked(reader), asked(reader)] == [VALUE, VALUE]
    assert reader.times == 2


def test_what_cannot_be_kept_is_read_each_time(folder: Path) -> None:
    reader = Reader({"a function": lambda: None})
    assert [asked(reader), asked(reader)] == [reader.made] * 2
    assert not list(folder.glob("*"))


def test_a_fault_is_told_each_time() -> None:
    fault = InputFault((InputProblem("en.toml", "text.yes", "nothing", "write this phrase"),))

    def read() -> object:
        raise fault

    for _ in range(2):
        with pytest.raises(InputFault) as told:
            kept("words", ("a text",), read)
        assert told.value is fault


def test_files_of_texts_long_gone_are_removed(folder: Path) -> None:
    known: set[Path] = set()
    for number in range(kept_tables._KEPT + 5):
        asked(Reader(), f"text {number}")
        for path in set(folder.iterdir()) - known:
            os.utime(path, (number, number))
            known.add(path)
    asked(Reader(), name="others")
    assert len(list(folder.glob("words-*"))) == kept_tables._KEPT
    assert len(list(folder.glob("others-*"))) == 1
    reader = Reader()
    for number in range(5, kept_tables._KEPT + 5):  # the newest
        asked(reader, f"text {number}")
    assert reader.times == 0


def test_what_was_never_finished_is_removed_in_the_end(folder: Path) -> None:
    asked(Reader(), "one text")
    stale, fresh = folder / "stale.part", folder / "fresh.part"
    for path in (stale, fresh):
        path.write_bytes(b"half")
    long_ago = fresh.stat().st_mtime - 7_200
    os.utime(stale, (long_ago, long_ago))
    asked(Reader(), "another text")
    assert [path.name for path in folder.glob("*.part")] == ["fresh.part"]


def test_what_cannot_be_put_in_its_place_leaves_nothing(folder: Path) -> None:
    asked(Reader())
    (path,) = folder.iterdir()
    path.unlink()
    (path / "in the way").mkdir(parents=True)
    reader = Reader()
    assert asked(reader) == VALUE
    assert reader.times == 1
    assert list(folder.iterdir()) == [path]


def every_table() -> list[object]:
    """Return what every table means to a program that has only just started."""
    for remembered in (phrase_tables._made, load._profiles, load._materials):
        remembered.cache_clear()
    resources = assets.resources_folder()
    words = PhraseTables(lambda: resources)
    one_of = (words.plan, words.conversion, words.pack, words.commands, words.fields, words.refusals)
    return [
        *(one(language) for one in one_of for language in Language),
        load.built_in_profiles(resources, kept),
        load.load_rule_tables("europe", resources=resources, own_profiles=None, keep=kept),
        load.load_vapour_tables(resources, kept),
    ]


def test_every_table_means_the_same_when_it_was_kept(monkeypatch: pytest.MonkeyPatch) -> None:
    before = every_table()
    with monkeypatch.context() as only_kept:
        only_kept.setattr("spoutline.explain.phrases.reader.PhraseReader.__init__", not_read)
        only_kept.setattr("spoutline.input_bounds.toml_text.toml_table", not_read)
        only_kept.setattr("spoutline.ruletables.schema.toml_table", not_read)
        after = every_table()
    assert after == before
    assert repr(after) == repr(before)  # a yes is no 1


def not_read(*_: object, **__: object) -> NoReturn:
    raise AssertionError("this table is kept")


def test_an_unreadable_table_is_told_of_though_the_others_are_kept(tmp_path: Path) -> None:
    resources = tmp_path / "resources"
    shutil.copytree(assets.resources_folder() / "rules", resources / "rules")
    (resources / "rules" / "limits" / "more.toml").write_text("", encoding="utf-8")
    assert load.built_in_profiles(resources, kept)
    (resources / "rules" / "limits" / "more.toml").write_bytes(b"\xff")
    with pytest.raises(InputFault) as told:
        load.built_in_profiles(resources, kept)
    assert [(one.place, one.field) for one in told.value.problems] == [("more.toml", "file")]


def test_all_code_that_reads_tables_counts() -> None:
    code = (
        "import sys, spoutline.ruletables.built_in, spoutline.ruletables.vapour, spoutline.ruletables.materials;"
        "import spoutline.explain.phrases.phrasebook_table, spoutline.explain.conversion.phrases;"
        "import spoutline.explain.pack.phrases, spoutline.explain.phrases.command_words;"
        "import spoutline.explain.phrases.field_words, spoutline.explain.phrases.refusal_words;"
        "print(*(name for name, module in sys.modules.items()"
        " if name.startswith('spoutline.') and not hasattr(module, '__path__')))"
    )
    said = subprocess.run([sys.executable, "-c", code], capture_output=True, text=True, check=True).stdout.split()
    counted = tuple("spoutline." + name.removesuffix(".py").replace("/", ".") for name in READING)
    assert [name for name in said if not name.startswith(counted)] == []
    assert reading_code() is not None


def test_a_second_plan_reads_no_table(own_database: Path, tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    monkeypatch.setenv("XDG_CACHE_HOME", str(tmp_path / "cache"))
    survey = tmp_path / "survey.json"
    survey.write_text(survey_to_json(demo_survey("small_town")), encoding="utf-8")
    code = (
        "import sys; from spoutline.cli.main import run;"
        f"code = run(['plan', {str(survey)!r}, '--database', {str(own_database)!r}, '--language', 'de'], None);"
        "print(code, *sys.modules, file=sys.stderr)"
    )
    said = [subprocess.run([sys.executable, "-c", code], capture_output=True, text=True, check=True) for _ in range(2)]
    assert said[0].stdout == said[1].stdout
    code_of, *loaded = said[1].stderr.splitlines()[-1].split()
    assert code_of == "0"
    reading = {"tomllib", "spoutline.explain.phrases.vocabulary", "spoutline.ruletables.schema"}
    assert reading.isdisjoint(loaded)
    assert reading <= set(said[0].stderr.split())
