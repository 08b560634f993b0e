"""No module imports itself by way of others, not even inside a function or for type checking only."""

from __future__ import annotations

import ast
from collections.abc import Iterator
from pathlib import Path

SOURCE = Path(__file__).resolve().parents[2] / "app"


def modules(source: Path) -> dict[str, Path]:
    """Return every module under ``source`` by its dotted name."""
    found = {}
    for path in sorted(source.rglob("*.py")):
        parts = path.relative_to(source).with_suffix("").parts
        found[".".join(parts[:-1] if parts[-1] == "__init__" else parts)] = path
    return found


def statements(tree: ast.Module) -> Iterator[ast.stmt]:
    """Yield every statement of a module, those inside others too; expressions, which hold no import, are passed by."""
    waiting: list[ast.AST] = [tree]
    while waiting:
        node = waiting.pop()
        if isinstance(node, ast.stmt):
            yield node
        for field in ("body", "orelse", "finalbody", "handlers", "cases"):
            inner = getattr(node, field, None)
            if isinstance(inner, list):
                waiting.extend(inner)


def imports(text: str, known: frozenset[str]) -> set[str]:
    """Return the known modules that a module text imports anywhere: at the top, in functions, for types only."""
    found: set[str] = set()
    for node in statements(ast.parse(text)):
        if isinstance(node, ast.Import):
            found.update(alias.name for alias in node.names)
        elif isinstance(node, ast.ImportFrom) and node.module is not None and node.level == 0:
            inner = {f"{node.module}.{alias.name}" for alias in node.names}
            found.update(inner & known if inner & known else {node.module})
            if inner - known:
                found.add(node.module)
    return found & known


def circles(graph: dict[str, set[str]]) -> list[list[str]]:
    """Return every group of modules that reach one another, each sorted (strongly connected components, Tarjan)."""
    order: dict[str, int] = {}
    low: dict[str, int] = {}
    stack: list[str] = []
    found: list[list[str]] = []

    def visit(name: str) -> None:
        order[name] = low[name] = len(order)
        stack.append(name)
        for target in sorted(graph[name]):
            if target not in order:
                visit(target)
                low[name] = min(low[name], low[target])
            elif target in stack:
                low[name] = min(low[name], order[target])
        if low[name] == order[name]:
            group = stack[stack.index(name) :]
            del stack[stack.index(name) :]
            if len(group) > 1 or name in graph[name]:
                found.append(sorted(group))

    for name in sorted(graph):
        if name not in order:
            visit(name)
    return found


def graph_of(texts: dict[str, str]) -> dict[str, set[str]]:
    known = frozenset(texts)
    return {name: imports(text, known) for name, text in texts.items()}


def test_no_modules_import_one_another() -> None:
    texts = {name: path.read_text(encoding="utf-8") for name, path in modules(SOURCE).items()}
    assert len(texts) > 400  # the walk found the program
    assert circles(graph_of(texts)) == []


def test_a_circle_is_found_however_it_is_hidden() -> None:
    late = "def later() -> None:\n    from house.cellar import stairs\n"
    typed = "from typing import TYPE_CHECKING\nif TYPE_CHECKING:\n    from house import attic\n"
    texts = {"house": "", "house.attic": late, "house.cellar": "import house.hall\n", "house.hall": typed}
    assert circles(graph_of(texts)) == [["house.attic", "house.cellar", "house.hall"]]
    assert circles(graph_of({**texts, "house.hall": ""})) == []
