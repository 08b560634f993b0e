"""What imports cannot show: the core opens no file, reads no clock, draws no lots and sees no environment."""

from __future__ import annotations

import ast
from collections.abc import Iterator
from pathlib import Path

import pytest

PACKAGE = Path(__file__).resolve().parents[2] / "app" / "spoutline"
PURE = ("model", "calc", "rules", "search")

FORBIDDEN_MODULES = {
    "io",
    "locale",
    "logging",
    "os",
    "pathlib",
    "random",
    "secrets",
    "shutil",
    "socket",
    "subprocess",
    "tempfile",
    "time",
    "uuid",
}
FORBIDDEN_CALLS = {"open", "input", "print", "eval", "exec", "id", "hash"}
FORBIDDEN_ATTRIBUTES = {"now", "today", "utcnow", "read_text", "read_bytes", "write_text", "write_bytes", "environ"}


def impurities(text: str) -> Iterator[str]:
    """Yield what in a module's text reaches outside, with its line."""
    for node in ast.walk(ast.parse(text)):
        if isinstance(node, ast.Import):
            names = [alias.name.partition(".")[0] for alias in node.names]
        elif isinstance(node, ast.ImportFrom):
            names = [(node.module or "").partition(".")[0]]
        elif isinstance(node, ast.Call) and isinstance(node.func, ast.Name) and node.func.id in FORBIDDEN_CALLS:
            yield f"line {node.lineno}: {node.func.id}()"
            continue
        elif isinstance(node, ast.Attribute) and node.attr in FORBIDDEN_ATTRIBUTES:
            yield f"line {node.lineno}: .{node.attr}"
            continue
        else:
            continue
        yield from (f"line {node.lineno}: import {name}" for name in names if name in FORBIDDEN_MODULES)


@pytest.mark.parametrize("layer", PURE)
def test_the_core_reaches_nothing_outside(layer: str) -> None:
    modules = sorted((PACKAGE / layer).rglob("*.py"))
    assert modules
    found = [f"{module.relative_to(PACKAGE)} {word}" for module in modules for word in impurities(module.read_text())]
    assert found == []


@pytest.mark.parametrize(
    "text",
    [
        "import os",
        "from os import environ",
        "from pathlib import Path",
        "def f():\n    import time",
        "open('x')",
        "datetime.now()",
        "date.today()",
        "somewhere.read_text()",
        "hash('x')",
        "os.environ['HOME']",
    ],
)
def test_each_kind_of_impurity_is_seen(text: str) -> None:
    assert list(impurities(text))
