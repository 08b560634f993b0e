"""The layer contracts hold, and each of them notices a breach: a contract that never fails protects nothing."""

from __future__ import annotations

import json
import shutil
import subprocess
import sys
from dataclasses import dataclass
from pathlib import Path

import pytest

PROJECT = Path(__file__).resolve().parents[2]


# One process for all breaches, as it pays for its imports once: each is written into the copy, judged and taken out.
LINT = """
import contextlib, io, json, pathlib, shutil, sys
sys.path.insert(0, "app")
from importlinter.cli import lint_imports

def verdict():
    said = io.StringIO()
    with contextlib.redirect_stdout(said), contextlib.redirect_stderr(said):
        code = lint_imports(cache_dir=".cache")  # only what changed is read again
    return code, said.getvalue()

told = [verdict()]
for name, text in json.load(sys.stdin):
    module = pathlib.Path("app", "spoutline", name)
    before = module.read_text() if module.exists() else None
    module.parent.mkdir(exist_ok=True)
    module.write_text(text)
    told.append(verdict())
    if before is None:
        shutil.rmtree(module.parent)
    else:
        module.write_text(before)
json.dump(told, sys.stdout)
"""


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
    Breach(
        "gui/pages/paper/paper_pages.py",
        "import spoutline.gui.pages.installer.page",
        "the window's pages, top to bottom",
    ),
    Breach("documents/content/blocks.py", "import spoutline.documents.pdf.render", "documents, top to bottom"),
    Breach("documents/pack/cover.py", "import spoutline.documents.quotation.papers", "documents, top to bottom"),
    Breach("planning/sets/choice.py", "import spoutline.planning.refit.quote", "planning, top to bottom"),
    Breach("planning/astray/__init__.py", '"""A package without a place."""', "planning, top to bottom"),
    Breach("explain/plan/words.py", "import spoutline.explain.conversion.story", "words, top to bottom"),
    Breach("rules/declared/registry.py", "import spoutline.rules.checks.run", "rules, top to bottom"),
]


def with_line(text: str, line: str) -> str:
    """Return module text with ``line`` added inside a function, where a late import would hide it."""
    return f"{text}\n\ndef _breach() -> None:\n    {line}\n"


@pytest.fixture(scope="module")
def verdicts(tmp_path_factory: pytest.TempPathFactory) -> list[tuple[int, str]]:
    """Return exit code and words of the import linter on a copy of the program: as it is, then with each breach."""
    folder = tmp_path_factory.mktemp("copy")
    shutil.copytree(PROJECT / "app", folder / "app", ignore=shutil.ignore_patterns("__pycache__"))
    shutil.copy(PROJECT / "pyproject.toml", folder)
    texts = []
    for breach in BREACHES:
        module = folder / "app" / "spoutline" / breach.module
        broken = with_line(module.read_text(), breach.line) if module.exists() else breach.line + "\n"
        texts.append((breach.module, broken))
    command = [sys.executable, "-c", LINT]
    done = subprocess.run(command, cwd=folder, input=json.dumps(texts), capture_output=True, text=True, check=False)
    assert done.returncode == 0, done.stderr
    return [(code, said) for code, said in json.loads(done.stdout)]


def test_imports_go_one_way_only(verdicts: list[tuple[int, str]]) -> None:
    code, said = verdicts[0]
    assert code == 0, said


@pytest.mark.parametrize("breach", BREACHES, ids=lambda breach: f"{breach.module} {breach.line}")
def test_a_breach_is_reported_by_its_contract(breach: Breach, verdicts: list[tuple[int, str]]) -> None:
    code, said = verdicts[1 + BREACHES.index(breach)]
    assert code != 0
    assert f"{breach.contract} BROKEN" in said, said
