"""What every test shares: no test touches the person's own data, and all of them share one compiled catalogue.

The fast way is the fixture: ``workbench`` over the shared catalogue, ``own_database`` or ``own_workbench`` for a test
that writes, ``spoutline`` for a command, ``plans_once`` where a plan is the means and not the matter.
"""

from __future__ import annotations

import gc
import io
import os
import shutil
from collections.abc import Generator, Iterator
from contextlib import contextmanager
from pathlib import Path
from typing import TYPE_CHECKING, Any

# pydantic imports these two when they are first wanted; collecting some files alone that would be inside the import
# hook that PySide puts in, and the two meet in a circle
import pydantic._internal._validators
import pydantic.fields  # noqa: F401
import pytest
from hypothesis import settings
from hypothesis.internal.conjecture import providers

from examples import QUICK, WHOLE
from postgresql_server import server_programs
from program_runs import Done, Run, Spoutline

if TYPE_CHECKING:
    from open_stores import OpenStores
    from plan_memo import PlanMemo
    from spoutline.bootstrap import Workbench
    from spoutline.catalogue.store import CatalogueStore

os.environ.setdefault("QT_QPA_PLATFORM", "offscreen")
# the program follows the language of the machine; the tests read English wherever they run
for variable in ("LANGUAGE", "LC_ALL", "LC_MESSAGES"):
    os.environ.pop(variable, None)
os.environ["LANG"] = "C.UTF-8"

# What collecting the tests makes stays to the end of the run: looking through it for garbage is work for nothing.
gc.disable()

# Property tests count no time: a busy machine is no defect of the program. They try all their examples where the run is
# one at length, and a part of them for a quick answer; a test that names their number says so by ``up_to``.
settings.register_profile("quick", deadline=None, max_examples=QUICK)
settings.register_profile("at_length", deadline=None, max_examples=WHOLE)
settings.load_profile("quick")


def pytest_addoption(parser: pytest.Parser) -> None:
    """Let a run ask for everything, also what takes minutes and is done in part without it."""
    parser.addoption("--at-length", action="store_true", help="run whole what otherwise runs in part")


def pytest_configure(config: pytest.Config) -> None:
    """Try as many examples as the run asks for."""
    if config.getoption("--at-length"):
        settings.load_profile("at_length")
    else:
        # To draw values that stand in the program, Hypothesis parses every module of it and of the tests, in each
        # worker; a quick answer does without. Where a later version looks elsewhere for them, this changes nothing.
        providers._get_local_constants = lambda: providers._local_constants


@pytest.hookimpl(wrapper=True)
def pytest_make_collect_report(
    collector: pytest.Collector,
) -> Generator[None, pytest.CollectReport, pytest.CollectReport]:
    """Let every second worker read the files from the last to the first.

    Where nothing is compiled yet, as in a fresh checkout, pytest rewrites each file as it comes. Workers that go the
    same way rewrite them all, each for itself; those that meet half-way find the other half done.
    """
    report = yield
    if _is_second_worker() and isinstance(collector, pytest.Session | pytest.Directory):
        report.result.reverse()
    return report


def _is_second_worker() -> bool:
    return int(os.environ.get("PYTEST_XDIST_WORKER", "gw0").removeprefix("gw")) % 2 == 1


def pytest_collection_finish() -> None:
    """Leave what was collected out of every later search for garbage, and search from here on, but not so often.

    What was left out no longer counts as known, and the fewer the objects known, the sooner a whole search is made.
    """
    gc.freeze()
    gc.set_threshold(20_000, 20, 20)
    gc.enable()


_tried_again: list[str] = []


@pytest.hookimpl(optionalhook=True)
def pytest_handlecrashitem(crashitem: str, report: pytest.TestReport, sched: Any) -> None:
    """Give the test at which a worker process died one more try, in a new worker; a second death is a failure.

    A worker that dies says nothing of the reason, and what the test would have shown is lost; the run tells its end.
    """
    if crashitem not in _tried_again:
        _tried_again.append(crashitem)
        sched.mark_test_pending(crashitem)
        report.outcome = "rerun"  # type: ignore[assignment]  # the word that xdist takes for it


def pytest_terminal_summary(terminalreporter: pytest.TerminalReporter) -> None:
    """Name the tests at which a worker died: each is a defect to look for, whether or not its second try passed."""
    if _tried_again:
        terminalreporter.section("a worker died, the test was tried once more")
        terminalreporter.write_line("\n".join(_tried_again))


@pytest.hookimpl(tryfirst=True)
def pytest_collection_modifyitems(config: pytest.Config, items: list[pytest.Item]) -> None:
    """Put the files in the one order of all workers, whichever way each read them, and leave out what is not to run.

    That is what needs a PostgreSQL server where there is none, and one of a study and its representative part.
    """
    if "PYTEST_XDIST_WORKER" in os.environ:
        items.sort(key=lambda item: item.path)
    unwanted = set() if server_programs() is not None else {"postgres"}
    unwanted.add("in_part" if config.getoption("--at-length") else "at_length")
    left_out = [item for item in items if any(map(item.get_closest_marker, unwanted))]
    if left_out:
        config.hook.pytest_deselected(items=left_out)
        items[:] = [item for item in items if item not in left_out]


@pytest.fixture(scope="session", autouse=True)
def own_home(tmp_path_factory: pytest.TempPathFactory) -> Iterator[Path]:
    """Give the run, and each worker of a parallel run, a home of its own: settings, caches and logs go there."""
    home = tmp_path_factory.mktemp("home")
    with pytest.MonkeyPatch.context() as patch:
        patch.setenv("HOME", str(home))
        for name in ("CONFIG", "STATE", "CACHE", "DATA"):
            patch.setenv(f"XDG_{name}_HOME", str(home / name.lower()))
        yield home


@pytest.fixture(autouse=True)
def own_data_folder(tmp_path_factory: pytest.TempPathFactory, monkeypatch: pytest.MonkeyPatch) -> Path:
    """Point the user's data folder at an empty one, so that no test reads or writes real surveys."""
    folder = tmp_path_factory.mktemp("user_data")
    monkeypatch.setenv("XDG_DATA_HOME", str(folder))
    monkeypatch.setenv("XDG_STATE_HOME", str(folder / "state"))
    return folder


@pytest.fixture(scope="session")
def database_to_copy(tmp_path_factory: pytest.TempPathFactory) -> Path:
    """Return a database with the whole catalogue and an empty book, compiled once for all workers; only copy it.

    No store is ever opened over this file. Reading a file that a connection of the same process has open, as a copy
    does, takes the connection's locks away (POSIX drops all locks of a process with any descriptor that it closes;
    sqlite.org/howtocorrupt, 2.2): another process may then clear the log under it.
    """
    if "PYTEST_XDIST_WORKER" not in os.environ:
        path = tmp_path_factory.mktemp("compiled") / "compiled.sqlite3"
        compile_into(path)
        return path
    compiled = tmp_path_factory.getbasetemp().parent / "compiled.sqlite3"
    with alone(compiled.with_suffix(".lock")):
        if not compiled.exists():
            path = tmp_path_factory.mktemp("compiled") / "compiled.sqlite3"
            compile_into(path)
            shutil.move(path, compiled)
    return compiled


@pytest.fixture(scope="session")
def shared_database(database_to_copy: Path, tmp_path_factory: pytest.TempPathFactory) -> Path:
    """Return the database that the tests of this worker share: opened by many, only read, never copied."""
    return Path(shutil.copy(database_to_copy, tmp_path_factory.mktemp("shared") / "shared.sqlite3"))


def compile_into(path: Path) -> None:
    """Compile the catalogue into a new database, with an empty book beside it."""
    from spoutline.bootstrap import Settings, open_workbench

    bench = open_workbench(Settings(database=str(path)))
    bench.parts().search("")
    bench.book().entries()
    bench.close()


@contextmanager
def alone(lock: Path) -> Iterator[None]:
    """Keep the other workers of this run out meanwhile; where the system has no such lock, each works for itself."""
    try:
        import fcntl
    except ImportError:
        yield
        return
    with lock.open("a") as held:
        fcntl.flock(held, fcntl.LOCK_EX)
        yield


@pytest.fixture(scope="session")
def catalogue_store(shared_database: Path) -> Iterator[CatalogueStore]:
    """Yield the compiled catalogue as planning sees it; tests only read it."""
    from spoutline.catalogue.shelf import CatalogueShelf
    from spoutline.database.engine import open_engine
    from spoutline.model.catalogue_edition import DEMONSTRATION, EditionRef

    store = CatalogueShelf(open_engine(f"sqlite:///{shared_database}")).parts(EditionRef(DEMONSTRATION))
    yield store
    store.close()


@pytest.fixture(scope="session")
def empty_book(tmp_path_factory: pytest.TempPathFactory) -> Path:
    """Return the file of a book in which nothing stands yet, to copy: its migrations run once per run."""
    from spoutline.book.book import open_book

    path = tmp_path_factory.mktemp("book") / "empty.sqlite3"
    open_book(f"sqlite:///{path}").close()
    return path


@pytest.fixture(scope="session")
def workbench(shared_database: Path, tmp_path_factory: pytest.TempPathFactory) -> Iterator[object]:
    """Yield the program's use cases over the shared catalogue. Leave its book of surveys alone."""
    from spoutline.bootstrap import Settings, open_workbench

    bench = open_workbench(Settings(database=str(shared_database), profiles=tmp_path_factory.mktemp("shared_profiles")))
    yield bench
    bench.close()


@pytest.fixture
def own_database(database_to_copy: Path, tmp_path: Path) -> Path:
    """Return a copy of the compiled database that the test may write to: a millisecond instead of a compilation."""
    return Path(shutil.copy(database_to_copy, tmp_path / "own_database.sqlite3"))


@pytest.fixture
def own_workbench(own_database: Path, tmp_path: Path) -> Iterator[Workbench]:
    """Yield the program's use cases over a book and profiles of the test's own."""
    from spoutline.bootstrap import Settings, open_workbench

    bench = open_workbench(Settings(database=str(own_database), profiles=tmp_path / "own_profiles"))
    yield bench
    bench.close()


@pytest.fixture(scope="session")
def plan_memo() -> PlanMemo:
    """Return the plans that were made so far in this run."""
    from plan_memo import PlanMemo

    return PlanMemo()


@pytest.fixture
def plans_once(request: pytest.FixtureRequest, plan_memo: PlanMemo, monkeypatch: pytest.MonkeyPatch) -> None:
    """Answer each question of planning once per run, but for a test marked ``plans_anew``."""
    if request.node.get_closest_marker("plans_anew") is None:
        plan_memo.serve(monkeypatch)


@pytest.fixture(scope="session")
def open_stores(shared_database: Path) -> Iterator[OpenStores]:
    """Yield what keeps the stores of the shared database open from command to command."""
    from open_stores import OpenStores

    stores = OpenStores(shared_database)
    yield stores
    stores.close()


@pytest.fixture
def spoutline(
    shared_database: Path,
    open_stores: OpenStores,
    tmp_path: Path,
    capfd: pytest.CaptureFixture[str],
    monkeypatch: pytest.MonkeyPatch,
    plans_once: None,
) -> Spoutline:
    """Return a function that runs the program in this process with the arguments given, ``stdin`` as its input."""
    from spoutline.bootstrap import workbench
    from spoutline.cli.main import run

    monkeypatch.setattr(workbench, "Stores", open_stores)

    def no_window(_workbench: object, _survey: object, _trouble: str) -> int:
        raise AssertionError("this command must not open a window")

    def go(*arguments: object, stdin: bytes = b"") -> Done:
        monkeypatch.setattr("sys.stdin", io.TextIOWrapper(io.BytesIO(stdin)))
        options = ["--database", str(shared_database), "--profiles", str(tmp_path / "profiles")]
        code = run([*options, *map(str, arguments)], no_window)
        out, err = capfd.readouterr()
        assert "Traceback" not in err
        assert "Traceback" not in out
        return Done(int(code), out, err)

    return go


@pytest.fixture
def own_run(spoutline: Spoutline, own_database: Path, tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> Run:
    """Return a function that runs commands on a book of the test's own, in its folder, and returns what they say.

    A command that ends with another code than ``expect`` fails the test.
    """
    monkeypatch.chdir(tmp_path)

    def go(*arguments: object, expect: int = 0) -> str:
        done = spoutline("--database", own_database, *arguments)
        assert done.code == expect, done.err
        return done.out + done.err

    return go
