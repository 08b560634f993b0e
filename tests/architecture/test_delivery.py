"""What goes out of the house: the wheel, the Debian package, the file type, what a frozen program goes without."""

from __future__ import annotations

import importlib.util
import json
import os
import re
import shutil
import subprocess
import sys
import tomllib
import zipfile
from pathlib import Path
from types import ModuleType
from typing import Any
from xml.etree import ElementTree

import pytest

import spoutline
from spoutline.model.language import Language
from spoutline.model.survey import Survey

PROJECT = Path(__file__).resolve().parents[2]
PACKAGING = PROJECT / "packaging"
LINUX = PACKAGING / "linux"
MIME = "{http://www.freedesktop.org/standards/shared-mime-info}"
SURVEY_TYPE = "application/x-spoutline-survey+json"


def needs(*tools: str) -> pytest.MarkDecorator:
    """Leave a test out where the system lacks a tool that it holds the project's files against."""
    lacking = [tool for tool in tools if shutil.which(tool) is None]
    return pytest.mark.skipif(bool(lacking), reason=f"not installed here: {', '.join(lacking)}")


def loaded(name: str, monkeypatch: pytest.MonkeyPatch) -> ModuleType:
    monkeypatch.syspath_prepend(str(PACKAGING))
    spec = importlib.util.spec_from_file_location(name, PACKAGING / f"{name}.py")
    assert spec is not None
    assert spec.loader is not None
    module = importlib.util.module_from_spec(spec)
    monkeypatch.setitem(sys.modules, name, module)
    spec.loader.exec_module(module)
    return module


@pytest.fixture(scope="module")
def wheel(tmp_path_factory: pytest.TempPathFactory) -> Path:
    """Build the wheel with the build back end that the lock pins; nothing is fetched."""
    folder = tmp_path_factory.mktemp("wheel")
    code = "import sys; from hatchling.build import build_wheel; print(build_wheel(sys.argv[1]))"
    done = subprocess.run(
        [sys.executable, "-c", code, str(folder)], cwd=PROJECT, capture_output=True, text=True, check=True
    )
    return folder / done.stdout.strip().splitlines()[-1]


def shipped(folder: Path) -> set[str]:
    """Return the files below a folder of the project that a person's copy needs, by their path in it."""
    paths = (path for path in folder.rglob("*") if path.is_file() and "__pycache__" not in path.parts)
    return {path.relative_to(folder).as_posix() for path in paths}


def test_the_wheel_holds_every_module_migration_resource_and_table(wheel: Path) -> None:
    with zipfile.ZipFile(wheel) as archive:
        names = set(archive.namelist())
    for there, inside in (
        (PROJECT / "app" / "spoutline", "spoutline"),
        (PROJECT / "resources", "spoutline/_data/resources"),
        (PROJECT / "catalog", "spoutline/_data/catalog"),
    ):
        assert {f"{inside}/{name}" for name in shipped(there)} - names == set()
    assert any(name.startswith("spoutline/book/migrations/versions/book_0001") for name in names)
    assert any(name.endswith("window_es.qm") for name in names)
    assert not any(name.startswith(("tests/", "packaging/")) for name in names)
    entry = next(name for name in names if name.endswith("entry_points.txt"))
    with zipfile.ZipFile(wheel) as archive:
        assert "spoutline = spoutline.__main__:main" in archive.read(entry).decode()


def test_the_program_runs_from_its_wheel_outside_the_checkout(
    wheel: Path, tmp_path: Path, database_to_copy: Path
) -> None:
    installed, work = tmp_path / "installed", tmp_path / "work"
    work.mkdir()
    with zipfile.ZipFile(wheel) as archive:
        archive.extractall(installed)
    settings = {**os.environ, "PYTHONPATH": str(installed), "XDG_DATA_HOME": str(tmp_path / "data")}
    where = "import spoutline; from spoutline import assets; print(spoutline.__file__, assets.resources_folder())"
    found = subprocess.run(
        [sys.executable, "-P", "-c", where], cwd=work, env=settings, capture_output=True, text=True, check=True
    )
    assert all(path.startswith(str(installed)) for path in found.stdout.split())
    database = shutil.copy(database_to_copy, tmp_path / "book.sqlite3")  # compiling the catalog takes seconds
    survey = json.loads((PROJECT / "resources" / "demo" / "small_town.json").read_text(encoding="utf-8"))
    survey["positions"] = survey["positions"][:1]
    (work / "one.json").write_text(json.dumps(survey), encoding="utf-8")
    command = [sys.executable, "-P", "-m", "spoutline", "--database", str(database), "--language", "es", "bill"]
    done = subprocess.run(
        [*command, "one.json", "--csv", "bill.csv"], cwd=work, env=settings, capture_output=True, text=True, check=False
    )
    assert done.returncode == 0, done.stderr
    assert (work / "bill.csv").read_bytes().startswith("\ufeff".encode())


def magic_of_survey(root: ElementTree.Element) -> tuple[str, set[str]]:
    outer = root.find(f".//{MIME}magic/{MIME}match")
    assert outer is not None
    return outer.attrib["value"], {match.attrib["value"] for match in outer.findall(f"{MIME}match")}


def test_the_file_type_is_that_of_surveys_alone() -> None:
    """After the Shared MIME-info Database specification 0.21: globs, then magic."""
    root = ElementTree.parse(LINUX / "spoutline.xml").getroot()
    kind = root.find(f"{MIME}mime-type")
    assert kind is not None
    assert kind.attrib["type"] == SURVEY_TYPE
    assert [glob.attrib["pattern"] for glob in kind.findall(f"{MIME}glob")] == ["*.spoutline.json"]
    first, inner = magic_of_survey(root)
    text = Survey.model_fields["format"].default
    written = (PROJECT / "resources" / "demo" / "small_town.json").read_text(encoding="utf-8")
    assert written.startswith(first)
    assert f'"format": "{text}"' in inner
    assert f'"format": "{text}"' in written[1:96]


@needs("update-mime-database", "gio")
def test_a_desktop_knows_surveys_by_their_ending_or_their_first_lines_and_no_other_file(tmp_path: Path) -> None:
    written = (PROJECT / "resources" / "demo" / "small_town.json").read_text(encoding="utf-8")
    packages = tmp_path / "data" / "mime" / "packages"
    packages.mkdir(parents=True)
    shutil.copy(LINUX / "spoutline.xml", packages)
    usual = Path("/usr/share/mime/packages/freedesktop.org.xml")
    shutil.copy(usual, packages)
    subprocess.run(["update-mime-database", str(packages.parent)], check=True, capture_output=True)
    other = '{"format": "letter"}'
    files = {"a.spoutline.json": written, "bare": written, "plain.json": written, "other.json": other}
    for name, content in files.items():
        (tmp_path / name).write_text(content, encoding="utf-8")
    settings = {**os.environ, "XDG_DATA_HOME": str(tmp_path / "data"), "XDG_DATA_DIRS": str(tmp_path / "data")}

    def told(name: str) -> str:
        command = ["gio", "info", "-a", "standard::content-type", name]
        done = subprocess.run(command, cwd=tmp_path, env=settings, capture_output=True, text=True, check=True)
        return done.stdout.rpartition(": ")[2].strip()

    assert {name: told(name) for name in files} == {
        "a.spoutline.json": SURVEY_TYPE,
        "bare": SURVEY_TYPE,
        "plain.json": "application/json",
        "other.json": "application/json",
    }


def test_the_metadata_for_software_centres_are_of_this_version() -> None:
    path = LINUX / "spoutline.metainfo.xml"
    root = ElementTree.parse(path).getroot()
    release = root.find("releases/release")
    assert release is not None
    assert release.attrib["version"] == spoutline.__version__
    assert root.findtext("launchable") == "spoutline.desktop"
    assert root.findtext("provides/mediatype") == SURVEY_TYPE


@needs("appstreamcli")
def test_the_metadata_are_valid_to_the_tool_of_software_centres() -> None:
    path = LINUX / "spoutline.metainfo.xml"
    done = subprocess.run(
        ["appstreamcli", "validate", "--no-net", str(path)], capture_output=True, text=True, check=False
    )
    assert done.returncode == 0, done.stdout


@needs("dpkg-deb")
def test_the_debian_package_brings_everything_to_its_place(
    monkeypatch: pytest.MonkeyPatch, tmp_path: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    bundle = tmp_path / "bundle"
    (bundle / "_internal").mkdir(parents=True)
    (bundle / "spoutline").write_text("#!/bin/sh\necho ran\n", encoding="utf-8")
    for name in ("spoutline.cdx.json", "libGL.so.1"):
        (bundle / "_internal" / name).write_text("{}", encoding="utf-8")
    deb: Any = loaded("deb", monkeypatch)
    monkeypatch.setattr(sys, "argv", ["deb.py", str(bundle), str(tmp_path)])
    assert deb.main() == 0
    package = next(tmp_path.glob("spoutline_*.deb"))
    first = package.read_bytes()
    assert deb.main() == 0
    assert package.read_bytes() == first  # the same bundle gives the same bytes
    listed = subprocess.run(["dpkg-deb", "--contents", str(package)], capture_output=True, text=True, check=True).stdout
    for name in (
        "./usr/bin/spoutline -> ../lib/spoutline/spoutline",
        "./usr/share/applications/spoutline.desktop",
        "./usr/share/mime/packages/spoutline.xml",
        "./usr/share/metainfo/invalid.spoutline.spoutline.metainfo.xml",
        "./usr/share/icons/hicolor/scalable/apps/spoutline.svg",
        "./usr/share/icons/hicolor/scalable/mimetypes/application-x-spoutline-survey.svg",
        "./usr/share/icons/hicolor/48x48/apps/spoutline.png",
    ):
        assert name in listed
    assert re.search(r"-rwxr-xr-x root/root .* \./usr/lib/spoutline/spoutline\n", listed)
    depends = subprocess.run(
        ["dpkg-deb", "--field", str(package), "Depends"], capture_output=True, text=True, check=True
    ).stdout
    assert "libegl1" in depends
    assert "libgl1" not in depends  # the bundle brings it
    subprocess.run(["dpkg-deb", "--extract", str(package), str(tmp_path / "root")], check=True)
    ran = subprocess.run([str(tmp_path / "root/usr/bin/spoutline")], capture_output=True, text=True, check=True)
    assert ran.stdout == "ran\n"


@pytest.mark.parametrize(
    ("place", "stays_away"),
    [
        ("babel/locale-data/zu.dat", True),
        ("babel/locale-data/root.dat", False),
        ("PySide6/Qt/plugins/platforms/libqxcb.so", False),
        ("PySide6/Qt/plugins/platforms/libqeglfs.so", True),
        ("PySide6\\Qt\\plugins\\sqldrivers\\qsqlite.dll", True),
        ("scipy/optimize/_highspy/_core.so", False),
        *((f"babel/locale-data/{one.value}.dat", False) for one in Language),
        *((f"babel/locale-data/{one.value}_XX.dat", False) for one in Language),
    ],
)
def test_the_bundle_goes_without_what_nobody_opens(
    place: str, stays_away: bool, monkeypatch: pytest.MonkeyPatch
) -> None:
    left_out: Any = loaded("left_out", monkeypatch)
    assert left_out.is_left_out(place) is stays_away


def test_the_bundle_leaves_out_no_module_that_the_program_imports(monkeypatch: pytest.MonkeyPatch) -> None:
    left_out: Any = loaded("left_out", monkeypatch)
    texts = [path.read_text(encoding="utf-8") for path in (PROJECT / "app").rglob("*.py")]
    imported = {found for text in texts for found in re.findall(r"^\s*(?:from|import) ([\w.]+)", text, re.MULTILINE)}
    away = tuple(left_out.LEFT_OUT_MODULES)
    assert {name for name in imported if any(name == one or name.startswith(f"{one}.") for one in away)} == set()


def test_the_icons_for_each_system_are_pictures_of_its_form() -> None:
    """First bytes: PNG (ISO/IEC 15948), ICO (Windows icon directory), ICNS (Apple icon family); sizes of the PNG."""
    folder = PACKAGING / "icons"
    assert (folder / "spoutline.ico").read_bytes()[:4] == b"\x00\x00\x01\x00"
    assert (folder / "spoutline.icns").read_bytes()[:4] == b"icns"
    for size in (48, 64, 128, 256):
        content = (folder / f"spoutline-{size}.png").read_bytes()
        assert content[:8] == b"\x89PNG\r\n\x1a\n"
        assert int.from_bytes(content[16:20]) == int.from_bytes(content[20:24]) == size


def test_the_recipe_has_a_windowed_program_for_windows_and_an_application_for_macos() -> None:
    recipe = (PACKAGING / "spoutline.spec").read_text(encoding="utf-8")
    assert 'console=sys.platform == "linux"' in recipe
    assert '"win32": "spoutline.ico"' in recipe
    assert 'name="Spoutline.app"' in recipe
    assert "never run" in recipe


def test_the_version_is_written_once_more_only_where_it_is_held() -> None:
    project = tomllib.loads((PROJECT / "pyproject.toml").read_text(encoding="utf-8"))["project"]
    assert project["version"] == spoutline.__version__
