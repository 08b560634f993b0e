"""The repository as a whole: where things lie, and words that must not stand in it."""

from __future__ import annotations

import ast
import os
import re
import subprocess
import sys
from functools import cache
from pathlib import Path

import pytest

PROJECT = Path(__file__).resolve().parents[2]
TOP_LEVEL = {
    ".ci",
    ".gitignore",
    "DEVELOPERS.md",
    "LICENSE",
    "README.md",
    "app",
    "catalog",
    "packaging",
    "pyproject.toml",
    "requirements.lock",
    "resources",
    "tests",
}
FOLDERS = (".ci", "app", "catalog", "packaging", "resources", "tests")
TEXT_SUFFIXES = {".py", ".toml", ".md", ".csv", ".json", ".txt", ".svg", ".desktop", ".spec", ".lock", ".mako", ""}

THIS = Path(__file__)


@cache
def tracked_files() -> tuple[Path, ...]:
    """Return the files of the repository; of the folders as they are where this is no git checkout."""
    try:
        done = subprocess.run(["git", "ls-files", "-z"], cwd=PROJECT, capture_output=True, text=True, check=False)
        listed = done.stdout.split("\0") if done.returncode == 0 else []
    except FileNotFoundError:
        listed = []
    paths = [PROJECT / name for name in listed if name]
    if not paths:
        loose = [path for folder in FOLDERS for path in (PROJECT / folder).rglob("*")]
        paths = [path for path in loose if "__pycache__" not in path.parts] + list(PROJECT.glob("*.*"))
    return tuple(sorted(path for path in paths if path.is_file()))


@cache
def texts() -> tuple[tuple[Path, str], ...]:
    return tuple((path, path.read_text(encoding="utf-8")) for path in tracked_files() if path.suffix in TEXT_SUFFIXES)


@cache
def tree_of(path: Path) -> ast.Module:
    return ast.parse(path.read_text(encoding="utf-8"))


def test_the_top_level_holds_exactly_what_it_should() -> None:
    found = {path.relative_to(PROJECT).parts[0] for path in tracked_files()}
    assert found == TOP_LEVEL


def test_no_text_names_a_path_of_somebodys_machine() -> None:
    # written in parts, so that this file does not name one itself
    machine = re.compile(
        "|".join(("/" + "work/", "/" + "home/[a-z]", "/" + "Users/", "/" + "root/", "file" + ":///opt"))
    )
    found = [f"{path.relative_to(PROJECT)}: {hit.group()}" for path, text in texts() for hit in machine.finditer(text)]
    assert found == []


def test_no_text_leaves_work_for_later() -> None:
    later = re.compile(
        r"\b(" + "|".join(("TO" + "DO", "FIX" + "ME", "XX" + "X", "raise NotImplemented" + "Error")) + r")\b"
    )
    found = [f"{path.relative_to(PROJECT)}: {hit.group()}" for path, text in texts() for hit in later.finditer(text)]
    assert found == []


# What a test needs of the system itself, named in the reason: a tool that traces calls, a call that some systems lack,
# a browser, what desktops and packages are made with.
SYSTEM_MAY_LACK = {
    Path("tests/architecture/test_delivery.py"): "mark.skip",
    Path("tests/browser.py"): "mark.skip",
    Path("tests/documents/test_html.py"): "mark.skip",
    Path("tests/reliability/test_kills.py"): "mark.skip",
    Path("tests/reliability/test_power_loss.py"): "mark.skip",
}


def test_no_test_is_skipped_or_expected_to_fail() -> None:
    marks = re.compile(r"(mark\.(skip|xfail)|pytest\.(skip|xfail|importorskip)\()")
    found = [
        f"{path.relative_to(PROJECT)}: {hit.group()}"
        for path, text in texts()
        if path.is_relative_to(PROJECT / "tests") and path != THIS
        for hit in marks.finditer(text)
        if SYSTEM_MAY_LACK.get(path.relative_to(PROJECT)) != hit.group()
    ]
    assert found == []


def shown_strings(path: Path) -> list[str]:
    """Return the strings of a module that a person may see: all but the docstrings."""
    tree = tree_of(path)
    docstrings = {
        id(node.body[0].value)
        for node in ast.walk(tree)
        if isinstance(node, ast.Module | ast.ClassDef | ast.FunctionDef | ast.AsyncFunctionDef)
        and node.body
        and isinstance(node.body[0], ast.Expr)
    }
    return [
        node.value
        for node in ast.walk(tree)
        if isinstance(node, ast.Constant) and isinstance(node.value, str) and id(node) not in docstrings
    ]


def test_nothing_shown_claims_that_an_installation_is_approved() -> None:
    claim = re.compile(
        r"\b(is|are|be|been|was|fully) (approved|compliant|certified|code[- ]compliant)\b|\b(it|this|we) guarantees?\b",
        re.IGNORECASE,
    )
    # what every claim holds; a module without it, which most are, need not be parsed
    claiming = re.compile(r"approved|compliant|certified|guarantee", re.IGNORECASE)
    denial = re.compile(r"\b(not|never|nor|no|nobody|whether|cannot)\b", re.IGNORECASE)
    strings = [
        (path, text)
        for path in tracked_files()
        if path.suffix == ".py" and path.is_relative_to(PROJECT / "app") and claiming.search(path.read_text("utf-8"))
        for text in shown_strings(path)
    ]
    strings += [
        (path, line)
        for path, text in texts()
        if path.suffix in (".toml", ".json", ".csv") and path.is_relative_to(PROJECT / "resources")
        for line in text.splitlines()
    ]
    found = [
        f"{path.relative_to(PROJECT)}: {text}"
        for path, text in strings
        if claim.search(text) and not denial.search(text)
    ]
    assert found == []


@pytest.mark.parametrize("name", ["utils", "util", "helpers", "helper", "common", "misc", "base"])
def test_no_module_has_a_name_that_says_nothing(name: str) -> None:
    assert [path for path in tracked_files() if path.stem == name and path.suffix == ".py"] == []


def test_every_module_of_the_program_says_what_it_is() -> None:
    modules = [path for path in tracked_files() if path.suffix == ".py" and path.is_relative_to(PROJECT / "app")]
    assert [path for path in modules if not ast.get_docstring(tree_of(path))] == []


HEAVY = ("sqlalchemy", "alembic", "pint", "reportlab", "openpyxl", "xlsxwriter", "fluids", "numpy", "scipy", "PySide6")


@pytest.mark.parametrize("module", ["spoutline.bootstrap", "spoutline.cli.main", "spoutline.__main__"])
def test_starting_does_not_pay_for_what_is_not_used_yet(module: str) -> None:
    code = f"import sys, {module}; print(*sorted(name for name in {HEAVY!r} if name in sys.modules))"
    done = subprocess.run(
        [sys.executable, "-c", code], capture_output=True, text=True, check=True, env={**os.environ, "PYTHONPATH": ""}
    )
    assert done.stdout.split() == []


def test_the_licence_names_no_company() -> None:
    text = (PROJECT / "LICENSE").read_text()
    assert re.search(r"\b(Inc|Ltd|LLC|GmbH|Corp)\b", text) is None
