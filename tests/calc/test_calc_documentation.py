"""Every public function of the calculations is described: arguments, units, source; every constant has an origin."""

from __future__ import annotations

import ast
import importlib
import inspect
import pkgutil
import re
import types
from collections.abc import Callable, Iterator

import pytest

import spoutline.calc
from spoutline.calc.constants import Constant

UNIT_SUFFIX = re.compile(r"_(m|m2|m3|m_s|m3_s|m2_s|kg|kg_m|kg_m3|kg_m2_s|n|n_m|pa|c|rad|ohm|ohm_m|s|s_m|f|percent)$")
MODULES = tuple(
    importlib.import_module(f"spoutline.calc.{module.name}") for module in pkgutil.iter_modules(spoutline.calc.__path__)
)
FORBIDDEN_IMPORTS = {"os", "io", "pathlib", "datetime", "time", "random", "socket", "subprocess", "logging"}


def _functions() -> Iterator[tuple[str, Callable[..., object]]]:
    for module in MODULES:
        for name, function in inspect.getmembers(module, inspect.isfunction):
            if function.__module__ == module.__name__ and not name.startswith("_"):
                yield f"{module.__name__.rpartition('.')[2]}.{name}", function


FUNCTIONS = dict(_functions())


def _described(function: Callable[..., object]) -> dict[str, str]:
    """Argument names with their descriptions, in the order of the docstring."""
    text = inspect.getdoc(function) or ""
    found = re.search(r"Parameters\n-+\n(.*?)(?=\n\n|\Z)", text, re.S)
    if found is None:
        return {}
    return dict(re.findall(r"^(\w+) : .*\n((?:    .*\n?)+)", found[1] + "\n", re.M))


def test_the_walk_finds_the_calculations() -> None:
    assert {"flow.solve_flow", "catenary.hang", "bond.series_resistance", "pull.drive_off"} <= set(FUNCTIONS)
    assert len(FUNCTIONS) > 30


@pytest.mark.parametrize("function", FUNCTIONS.values(), ids=FUNCTIONS)
def test_every_argument_is_described_in_order(function: Callable[..., object]) -> None:
    assert list(_described(function)) == list(inspect.signature(function).parameters)


@pytest.mark.parametrize("function", FUNCTIONS.values(), ids=FUNCTIONS)
def test_every_number_carries_its_unit_in_name_and_description(function: Callable[..., object]) -> None:
    for name, parameter in inspect.signature(function).parameters.items():
        if "float" not in str(parameter.annotation):
            continue
        description = _described(function)[name]
        assert re.search(r"\[[^\]]+\]", description), name
        assert UNIT_SUFFIX.search(name) or re.search(r"\[(-|unit of|any unit|US gallons|m3/s)", description), name


@pytest.mark.parametrize("function", FUNCTIONS.values(), ids=FUNCTIONS)
def test_every_function_tells_its_source(function: Callable[..., object]) -> None:
    assert re.search(r"^Source: \S+", inspect.getdoc(function) or "", re.M)


@pytest.mark.parametrize("module", MODULES, ids=lambda module: module.__name__.rpartition(".")[2])
def test_module_constants_carry_unit_and_source(module: types.ModuleType) -> None:
    for name, value in vars(module).items():
        assert isinstance(value, bool) or not isinstance(value, int | float), name
        if isinstance(value, Constant):
            assert value.name
            assert value.unit
            assert value.source
            assert value.origin.startswith(value.source)


@pytest.mark.parametrize("module", MODULES, ids=lambda module: module.__name__.rpartition(".")[2])
def test_calculations_touch_no_file_clock_or_chance(module: types.ModuleType) -> None:
    tree = ast.parse(inspect.getsource(module))
    for node in ast.walk(tree):
        if isinstance(node, ast.Import):
            assert FORBIDDEN_IMPORTS.isdisjoint(alias.name.partition(".")[0] for alias in node.names)
        if isinstance(node, ast.ImportFrom):
            assert (node.module or "").partition(".")[0] not in FORBIDDEN_IMPORTS
        if isinstance(node, ast.Call) and isinstance(node.func, ast.Name):
            assert node.func.id not in {"open", "input", "print"}


@pytest.mark.parametrize("module", MODULES, ids=lambda module: module.__name__.rpartition(".")[2])
def test_heavy_libraries_are_imported_only_inside_functions(module: types.ModuleType) -> None:
    for node in ast.parse(inspect.getsource(module)).body:
        if isinstance(node, ast.ImportFrom):
            assert (node.module or "").partition(".")[0] not in {"fluids", "numpy", "scipy"}
        if isinstance(node, ast.Import):
            assert {"fluids", "numpy", "scipy"}.isdisjoint(alias.name.partition(".")[0] for alias in node.names)
