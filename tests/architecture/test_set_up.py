"""The two commands of the README: what they need, what they say where something is missing, what they run."""

from __future__ import annotations

import ast
import configparser
import importlib.util
import json
import re
import shutil
import subprocess
import sys
import tomllib
from pathlib import Path
from types import ModuleType
from typing import Any

import pytest

from spoutline.book.address import DEFAULT_FILE

PROJECT = Path(__file__).resolve().parents[2]
PACKAGING = PROJECT / "packaging"


def loaded(name: str, monkeypatch: pytest.MonkeyPatch) -> ModuleType:
    """Load a script of packaging/ as it loads itself, with that folder first on the path."""
    monkeypatch.syspath_prepend(str(PACKAGING))
    spec = importlib.util.spec_from_file_location(name, PACKAGING / f"{name}.py")
    assert spec is not None
    assert spec.loader is not None
    module = importlib.util.module_from_spec(spec)
    monkeypatch.setitem(sys.modules, name, module)
    spec.loader.exec_module(module)
    return module


@pytest.fixture
def environment(monkeypatch: pytest.MonkeyPatch) -> Any:
    return loaded("environment", monkeypatch)


@pytest.mark.parametrize(
    "name", ["bundle", "deb", "environment", "launch", "left_out", "locked", "verify", "vulnerabilities"]
)
def test_the_scripts_need_nothing_but_the_standard_library(name: str) -> None:
    tree = ast.parse((PACKAGING / f"{name}.py").read_text())
    imported = {
        alias.name.partition(".")[0] for node in ast.walk(tree) if isinstance(node, ast.Import) for alias in node.names
    } | {(node.module or "").partition(".")[0] for node in ast.walk(tree) if isinstance(node, ast.ImportFrom)}
    assert imported - set(sys.stdlib_module_names) <= {"environment", "locked"}


def test_the_readme_names_the_two_commands_and_ci_runs_the_second() -> None:
    readme = (PROJECT / "README.md").read_text()
    assert "python3 packaging/launch.py" in readme
    assert "python3 packaging/verify.py" in readme
    assert "python3 packaging/verify.py" in (PROJECT / ".ci" / "run").read_text()


def test_an_old_python_is_told_what_is_needed(environment: Any, monkeypatch: pytest.MonkeyPatch) -> None:
    monkeypatch.setattr(environment.sys, "version_info", (3, 9, 2, "final", 0))
    with pytest.raises(environment.SetUpFailed, match=r"Python 3\.11 or newer is needed; this is 3\.9\.2"):
        environment.set_up(with_tests=False)


def test_a_python_without_ensurepip_is_told_the_line_that_installs_it(
    environment: Any, monkeypatch: pytest.MonkeyPatch, tmp_path: Path
) -> None:
    monkeypatch.setattr(environment, "ENVIRONMENT", tmp_path / "venv")
    find_spec = importlib.util.find_spec
    monkeypatch.setattr(
        environment.importlib.util, "find_spec", lambda name: None if name == "ensurepip" else find_spec(name)
    )
    with pytest.raises(environment.SetUpFailed, match="apt-get install python3-venv"):
        environment.set_up(with_tests=False)
    assert not (tmp_path / "venv").exists()


def test_missing_libraries_are_named_with_the_line_that_installs_them(
    environment: Any, monkeypatch: pytest.MonkeyPatch, tmp_path: Path
) -> None:
    qt = tmp_path / "lib" / "python3.11" / "site-packages" / "PySide6"
    qt.mkdir(parents=True)
    monkeypatch.setattr(environment, "ENVIRONMENT", tmp_path)
    ldd = tmp_path / "ldd"
    # the form in which ldd of glibc 2.36 reports
    ldd.write_text(
        "#!/bin/sh\n"
        "printf '\\tlibxcb-cursor.so.0 => not found\\n\\tlibc.so.6 => /lib/libc.so.6 (0x1)\\n"
        "\\tlibGL.so.1 => not found\\n\\tlibodd.so.9 => not found\\n'\n"
    )
    ldd.chmod(0o755)
    monkeypatch.setattr(environment.shutil, "which", lambda _name: str(ldd))
    missing = environment.missing_libraries(for_screen=True)
    assert missing == ("libGL.so.1", "libodd.so.9", "libxcb-cursor.so.0")
    assert environment.installing_line(missing) == (
        "  apt-get install --no-install-recommends libgl1 libxcb-cursor0\n  and the packages that hold libodd.so.9"
    )


def test_this_machine_lacks_no_library_for_the_tests(environment: Any) -> None:
    assert environment.missing_libraries(for_screen=False) == ()


@pytest.fixture
def compiled(own_data_folder: Path, database_to_copy: Path) -> None:
    """Put a compiled catalogue where the program looks for its own; tests of the store compile one anew."""
    (own_data_folder / "spoutline").mkdir()
    shutil.copy(database_to_copy, own_data_folder / "spoutline" / DEFAULT_FILE)


def test_launch_without_a_display_plans_the_demo_and_shows_how(
    monkeypatch: pytest.MonkeyPatch, capfd: pytest.CaptureFixture[str], compiled: None
) -> None:
    launch: Any = loaded("launch", monkeypatch)
    monkeypatch.setattr(launch.environment, "set_up", lambda *, with_tests: Path(sys.executable))
    monkeypatch.delenv("DISPLAY", raising=False)
    monkeypatch.delenv("WAYLAND_DISPLAY", raising=False)
    assert launch.main() == 0
    out = capfd.readouterr().out
    assert "no display" in out
    assert "spoutline plan station.json" in out
    assert "Chosen set, dispenser first" in out


def test_launch_with_a_display_but_without_its_libraries_says_which(
    monkeypatch: pytest.MonkeyPatch, capfd: pytest.CaptureFixture[str]
) -> None:
    launch: Any = loaded("launch", monkeypatch)
    ran: list[list[str]] = []

    def run(command: list[str], **_options: object) -> Any:
        ran.append(command[1:])
        return subprocess.CompletedProcess(command, 0, b"a survey")

    monkeypatch.setattr(launch.subprocess, "run", run)  # that it plans is tested above
    monkeypatch.setattr(launch.environment, "set_up", lambda *, with_tests: Path(sys.executable))
    monkeypatch.setattr(launch.environment, "missing_libraries", lambda *, for_screen: ("libxcb-cursor.so.0",))
    monkeypatch.setenv("DISPLAY", ":54321")
    assert launch.main() == 2
    done = capfd.readouterr()
    assert "apt-get install --no-install-recommends libxcb-cursor0" in done.err
    assert ran == [["-m", "spoutline", "demo", "small_town"], ["-m", "spoutline", "plan", "-"]]


def test_verify_hands_its_arguments_to_pytest_and_returns_its_code(monkeypatch: pytest.MonkeyPatch) -> None:
    verify: Any = loaded("verify", monkeypatch)
    ran: list[list[str]] = []

    def run(command: list[str], **_options: object) -> Any:
        if "pytest" in command:
            ran.append(command)
        return subprocess.CompletedProcess(command, 5)

    monkeypatch.setattr(verify.environment, "set_up", lambda *, with_tests: Path("python"))
    monkeypatch.setattr(verify.environment, "missing_libraries", lambda *, for_screen: ())
    monkeypatch.setattr(verify.subprocess, "run", run)
    monkeypatch.setattr(verify.sys, "argv", ["verify.py", "-q", "tests/cli"])
    assert verify.main() == 5
    monkeypatch.setattr(verify.sys, "argv", ["verify.py", "core", "-x"])
    assert verify.main() == 5
    parallel = ["python", "-m", "pytest", "-n", "auto", "--dist", "worksteal"]
    assert ran == [[*parallel, "-q", "tests/cli"], [*parallel, *verify.CORE, verify.NOT_CORE, "-x"]]
    assert all((PROJECT / folder).is_dir() for folder in verify.CORE)
    assert (PROJECT / verify.NOT_CORE.removeprefix("--ignore=")).is_file()


def test_the_lock_file_pins_everything_once_with_hashes_and_covers_what_the_project_asks_for(
    monkeypatch: pytest.MonkeyPatch,
) -> None:
    locked: Any = loaded("locked", monkeypatch)
    packages = locked.read_lock(PROJECT / "requirements.lock")
    without = [one.name for one in packages if not one.hashes]
    assert without == [], "run: python packaging/lock.py"
    names = [one.name for one in packages]
    assert len(names) == len(set(names))
    project = tomllib.loads((PROJECT / "pyproject.toml").read_text())
    delivered = [*project["project"]["dependencies"], *project["project"]["optional-dependencies"]["office"]]
    asked = [*delivered, *project["build-system"]["requires"]]
    asked += [text for extra in project["project"]["optional-dependencies"].values() for text in extra]
    assert {re.split(r"[\[>=]", text)[0].lower() for text in asked} <= set(names)
    with_program = {one.name for one in packages if one.section == locked.PROGRAM}
    assert {re.split(r"[\[>=]", text)[0].lower() for text in delivered} <= with_program
    assert "pytest" not in with_program


def test_only_packages_with_the_hashes_of_the_lock_are_installed(
    environment: Any, monkeypatch: pytest.MonkeyPatch, tmp_path: Path
) -> None:
    commands: list[list[str]] = []
    asked: list[str] = []

    def run(command: list[str], **_options: object) -> Any:
        commands.append(command)
        if "--requirement" in command:
            asked.append(Path(command[command.index("--requirement") + 1]).read_text())
        return subprocess.CompletedProcess(command, 0)

    monkeypatch.setattr(environment.subprocess, "run", run)
    environment._install(with_tests=False)
    assert {"--require-hashes", "--no-deps", "--only-binary"} <= set(commands[0])
    assert "--no-deps" in commands[1]
    assert "sqlalchemy==" in asked[0]
    assert "hatchling==" in asked[0]
    assert "pytest==" not in asked[0]
    assert asked[0].count("--hash=sha256:") > asked[0].count("==")
    bare = tmp_path / "requirements.lock"
    bare.write_text("sqlalchemy==2.1.9\n")
    monkeypatch.setattr(environment, "LOCK", bare)
    with pytest.raises(environment.SetUpFailed, match=r"no hashes of sqlalchemy: run packaging/lock\.py"):
        environment._install(with_tests=False)


def test_the_bill_of_materials_keeps_the_published_schema(monkeypatch: pytest.MonkeyPatch) -> None:
    """The schema of CycloneDX 1.6 and those that it refers to, as the standard's own Python library carries them."""
    from importlib.resources import files

    from jsonschema import Draft7Validator
    from referencing import Registry, Resource

    schemas = {
        name: json.loads((files("cyclonedx.schema") / "_res" / f"{name}.SNAPSHOT.schema.json").read_text())
        for name in ("bom-1.6", "spdx", "jsf-0.82")
    }
    registry: Any = Registry().with_resources(
        (schema["$id"], Resource.from_contents(schema)) for schema in schemas.values()
    )
    materials: Any = loaded("bill_of_materials", monkeypatch)
    document = materials.bill_of_materials()
    faults = list(Draft7Validator(schemas["bom-1.6"], registry=registry).iter_errors(document))
    assert faults == []
    assert document == materials.bill_of_materials()
    names = {one["name"] for one in document["components"]}
    assert {"sqlalchemy", "reportlab", "pyside6-essentials", "DejaVuSans.ttf"} <= names
    assert "pytest" not in names
    references = {one["bom-ref"] for one in document["components"]} | {document["metadata"]["component"]["bom-ref"]}
    assert {one["ref"] for one in document["dependencies"]} <= references
    assert {ref for one in document["dependencies"] for ref in one["dependsOn"]} <= references


@pytest.mark.parametrize(
    ("told", "code", "words"),
    [
        ("", 3, "NOT CHECKED for known vulnerabilities: offline"),
        ('{"dependencies": [{"name": "a", "version": "1", "vulns": []}]}', 0, "1 packages checked, 0 known"),
        (
            '{"dependencies": [{"name": "a", "version": "1", "vulns": [{"id": "PYSEC-0", "fix_versions": ["2"]}]}]}',
            1,
            "a 1: PYSEC-0, mended in 2",
        ),
        ('{"dependencies": [{"name": "a", "skip_reason": "not found"}]}', 3, "NOT CHECKED: a"),
    ],
)
def test_the_check_for_vulnerabilities_says_when_it_could_not_be_made(
    told: str, code: int, words: str, monkeypatch: pytest.MonkeyPatch, capfd: pytest.CaptureFixture[str]
) -> None:
    check: Any = loaded("vulnerabilities", monkeypatch)
    answer = subprocess.CompletedProcess([], 1, told, "ERROR: no route to host")
    monkeypatch.setattr(check.subprocess, "run", lambda *_, **__: answer)
    assert check.main() == code
    done = capfd.readouterr()
    assert words in done.out + done.err


def test_the_desktop_entry_is_valid_and_its_icon_is_there() -> None:
    path = PACKAGING / "linux" / "spoutline.desktop"
    parser = configparser.ConfigParser(interpolation=None)
    parser.optionxform = str  # type: ignore[assignment,method-assign]
    parser.read(path)
    entry = parser["Desktop Entry"]
    # keys that the Desktop Entry Specification 1.5 requires of an application
    assert entry["Type"] == "Application"
    assert entry["Name"]
    assert entry["Exec"] == "spoutline %f"
    assert (path.parent / f"{entry['Icon']}.svg").is_file()
    validator = shutil.which("desktop-file-validate")
    if validator is not None:
        assert subprocess.run([validator, str(path)], check=False, capture_output=True, text=True).stdout == ""


def test_the_freeze_recipe_names_folders_that_exist() -> None:
    recipe = (PACKAGING / "spoutline.spec").read_text()
    compile(recipe, "spoutline.spec", "exec")
    for store in ("book", "catalogue"):
        assert f'"{store}"' in recipe
        assert (PROJECT / "app" / "spoutline" / store / "migrations").is_dir()
