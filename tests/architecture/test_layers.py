"""The layer contracts hold, and each of them notices a breach: a contract that never fails protects nothing."""

from __future__ import annotations

import shutil
import subprocess
import sys
from dataclasses import dataclass
from pathlib import Path

import pytest

PROJECT = Path(__file__).resolve().parents[2]


LINT = """
import sys
sys.path.insert(0, "app")
from importlinter.cli import lint_imports
sys.exit(lint_imports(no_cache=True))
"""


def lint(folder: Path) -> tuple[int, str]:
    """Run the import linter on the package under ``folder``; return its exit code and what it says."""
    done = subprocess.run([sys.executable, "-c", LINT], cwd=folder, capture_output=True, text=True, check=False)
    return done.returncode, done.stdout + done.stderr


@pytest.fixture(scope="module")
def copy(tmp_path_factory: pytest.TempPathFactory) -> Path:
    folder = tmp_path_factory.mktemp("copy")
    shutil.copytree(PROJECT / "app", folder / "app", ignore=shutil.ignore_patterns("__pycache__"))
    shutil.copy(PROJECT / "pyproject.toml", folder)
    return folder


def test_imports_go_one_way_only() -> None:
    code, said = lint(PROJECT)
    assert code == 0, said


@dataclass(frozen=True)
class Breach:
    """A line that must not stand in a module, and the contract that must say so."""

    module: str
    line: str
    contract: str


BREACHES = [
    Breach("search/walk.py", "import spoutline.catalogue", "one direction"),
    Breach("calc/ranges.py", "import spoutline.rules.declared.registry", "one direction"),
    Breach("cli/main.py", "import spoutline.gui", "one direction"),
    Breach("explain/plan/story.py", "import spoutline.planning", "one direction"),
    Breach("unplaced/__init__.py", '"""A package without a place."""', "one direction"),
    Breach("book/book.py", "import spoutline.rules", "stores know the model, not the trade"),
    Breach("ruletables/load.py", "import spoutline.calc", "stores know the model, not the trade"),
    Breach("model/port.py", "import pint", "the core is pure"),
    Breach("rules/declared/registry.py", "import sqlalchemy", "the core is pure"),
    Breach("documents/__init__.py", "import PySide6.QtCore", "Qt only in the window"),
    Breach("bootstrap/workbench.py", "import PySide6.QtCore", "Qt only in the window"),
    Breach("cli/plan.py", "import sqlalchemy", "SQL only in the stores"),
    Breach("planning/sets/context.py", "import alembic", "SQL only in the stores"),
    Breach("gui/widgets/__init__.py", "import spoutline.gui.pages", "the window, top to bottom"),
]


def with_line(text: str, line: str) -> str:
    """Return module text with ``line`` added inside a function, where a late import would hide it."""
    return f"{text}\n\ndef _breach() -> None:\n    {line}\n"


@pytest.mark.parametrize("breach", BREACHES, ids=lambda breach: f"{breach.module} {breach.line}")
def test_a_breach_is_reported_by_its_contract(breach: Breach, copy: Path) -> None:
    module = copy / "app" / "spoutline" / breach.module
    before = module.read_text() if module.exists() else None
    module.parent.mkdir(exist_ok=True)
    module.write_text(with_line(before, breach.line) if before is not None else breach.line + "\n")
    try:
        code, said = lint(copy)
    finally:
        if before is None:
            shutil.rmtree(module.parent)
        else:
            module.write_text(before)
    assert code != 0
    assert f"{breach.contract} BROKEN" in said, said
