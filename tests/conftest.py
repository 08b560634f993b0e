"""What every test shares: no test touches the person's own data, and all of them share one compiled catalogue."""

from __future__ import annotations

import os
from collections.abc import Iterator
from pathlib import Path

import pytest

from postgresql_server import server_programs

os.environ.setdefault("QT_QPA_PLATFORM", "offscreen")


def pytest_collection_modifyitems(config: pytest.Config, items: list[pytest.Item]) -> None:
    """Leave out the tests that need a PostgreSQL server where none is installed."""
    if server_programs() is not None:
        return
    left_out = [item for item in items if item.get_closest_marker("postgres")]
    config.hook.pytest_deselected(items=left_out)
    items[:] = [item for item in items if item not in left_out]


@pytest.fixture(autouse=True)
def own_data_folder(tmp_path_factory: pytest.TempPathFactory, monkeypatch: pytest.MonkeyPatch) -> Path:
    """Point the user's data folder at an empty one, so that no test reads or writes real surveys."""
    folder = tmp_path_factory.mktemp("user_data")
    monkeypatch.setenv("XDG_DATA_HOME", str(folder))
    return folder


@pytest.fixture(scope="session")
def shared_database(tmp_path_factory: pytest.TempPathFactory) -> Path:
    """Return a database with the whole catalogue, compiled once per run; tests only read it."""
    from spoutline.bootstrap import Settings, open_workbench

    path = tmp_path_factory.mktemp("shared") / "shared.sqlite3"
    bench = open_workbench(Settings(database=str(path)))
    bench.search_parts("")
    bench.close()
    return path


@pytest.fixture(scope="session")
def workbench(shared_database: Path, tmp_path_factory: pytest.TempPathFactory) -> Iterator[object]:
    """Yield the program's use cases over the shared catalogue. Leave its book of surveys alone."""
    from spoutline.bootstrap import Settings, open_workbench

    bench = open_workbench(Settings(database=str(shared_database), profiles=tmp_path_factory.mktemp("shared_profiles")))
    yield bench
    bench.close()
