"""What is kept from run to run rests on the very code that decides: a changed rule is not answered of before."""

from __future__ import annotations

import re
import shutil
from functools import partial
from pathlib import Path
from random import Random

import pytest

import spoutline
from bench.generated_sites_conversion import small_site
from spoutline import assets
from spoutline.bootstrap import Settings, deciding_code
from spoutline.bootstrap.deciding_code import DECIDING, fingerprint_of
from spoutline.bootstrap.kept_answers import answers_for_run
from spoutline.bootstrap.run_basis import rule_files_digest
from spoutline.bootstrap.workbench import open_converting
from spoutline.planning.conversion.counted_positions import CountedPositions
from spoutline.planning.conversion.folder import convert_files

PACKAGE = Path(spoutline.__file__).parent
RULE = Path("rules") / "parts" / "nozzles.py"


@pytest.fixture
def copied(tmp_path: Path) -> Path:
    """Return a copy of the packages that decide."""
    for name in DECIDING:
        shutil.copytree(PACKAGE / name, tmp_path / "copy" / name, ignore=shutil.ignore_patterns("__pycache__"))
    return tmp_path / "copy"


def change(package: Path) -> None:
    """Turn a comparison of a rule round, as somebody at work on it may."""
    path = package / RULE
    text = path.read_text("utf-8")
    assert "< at_least - _TOLERANCE_M" in text
    path.write_text(text.replace("< at_least - _TOLERANCE_M", "< at_least - 2 * _TOLERANCE_M"), "utf-8")


def test_it_is_that_of_the_sources_wherever_they_lie(copied: Path) -> None:
    found = fingerprint_of(copied)
    assert found == fingerprint_of(PACKAGE)
    (copied / "gui").mkdir()
    (copied / "gui" / "colours.py").write_text("RED = 1\n", "utf-8")
    (copied / RULE).write_bytes((copied / RULE).read_bytes().replace(b"\n", b"\r\n"))
    assert fingerprint_of(copied) == found


def test_nothing_that_decides_imports_what_does_not_count() -> None:
    # beside stores and readers, which hand over what is answered about or refuse it, and how values are declared
    beside = {"book", "database", "frozen", "input_bounds", "whole_files"}
    imported = {
        name
        for package in DECIDING
        for path in (PACKAGE / package).rglob("*.py")
        for name in re.findall(r"(?:from|import) spoutline[. ](?:import )?(\w+)", path.read_text("utf-8"))
    }
    assert imported - set(DECIDING) <= beside


def test_whatever_decides_changes_it(copied: Path) -> None:
    found = {fingerprint_of(copied)}
    change(copied)
    found.add(fingerprint_of(copied))
    for name in DECIDING:
        (copied / name / "one_more.py").write_text("", "utf-8")
        found.add(fingerprint_of(copied))
    (copied / "rules" / "one_more.py").rename(copied / "rules" / "another.py")
    found.add(fingerprint_of(copied))
    assert len(found) == 3 + len(DECIDING)


def test_a_frozen_program_has_that_of_the_sources_it_was_made_from(
    copied: Path, tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    shutil.rmtree(copied / "rules")
    assert fingerprint_of(copied) == ""
    monkeypatch.setattr(deciding_code, "__file__", str(copied / "bootstrap" / "deciding_code.py"))
    unknown = {deciding_code.deciding_code.__wrapped__() for _ in range(2)}
    assert len(unknown) == 2  # nothing kept counts where nobody knows what made it
    stamp = tmp_path / "code_stamp"
    stamp.write_text(fingerprint_of(PACKAGE), encoding="ascii")
    monkeypatch.setattr(assets, "code_stamp", lambda: stamp)
    assert deciding_code.deciding_code.__wrapped__() == fingerprint_of(PACKAGE)
    recipe = (PACKAGE.parents[1] / "packaging" / "spoutline.spec").read_text(encoding="utf-8")
    assert "stamp.write_text(fingerprint_of(PACKAGE)" in recipe
    assert '(str(stamp), "spoutline/_data")' in recipe


def test_a_changed_rule_is_not_answered_of_before(
    shared_database: Path, copied: Path, tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    worked: list[str] = []
    own = CountedPositions._worked_out

    def noted(self: CountedPositions, position: object, **named: object) -> object:
        worked.append("one")
        return own(self, position, **named)  # type: ignore[arg-type]

    monkeypatch.setattr(CountedPositions, "_worked_out", noted)
    monkeypatch.setattr(deciding_code, "deciding_code", lambda: fingerprint_of(copied))
    path = tmp_path / "1.json"
    path.write_text(small_site(1, Random(3)).model_dump_json(), encoding="utf-8")
    asked = []
    with answers_for_run(tmp_path / "kept") as answers:
        run = partial(
            convert_files,
            (path,),
            partial(open_converting, Settings(database=str(shared_database))),
            processes=1,
            answers=answers,
        )
        run()
        asked.append(len(worked))
        run()
        asked.append(len(worked))
        basis = rule_files_digest(())
        change(copied)
        run()
        asked.append(len(worked))
    assert asked[0] > 0
    assert asked == [asked[0], asked[0], 2 * asked[0]]
    assert rule_files_digest(()) != basis  # finished stations and needs are kept by it as well
