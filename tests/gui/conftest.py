"""What the window's tests share: a book of their own over the compiled catalogue, and a window over it."""

from __future__ import annotations

import os
import shutil
from collections.abc import Iterator
from pathlib import Path

import pytest
from PySide6.QtWidgets import QApplication
from pytestqt.qtbot import QtBot

from spoutline.bootstrap import Settings, Workbench, open_workbench
from spoutline.bootstrap.demos import demo_survey
from spoutline.gui.collection import WindowCollector
from spoutline.gui.session import Session
from spoutline.gui.widgets.theme import dress
from spoutline.gui.window.language import WindowLanguage
from spoutline.gui.window.main_window import MainWindow
from spoutline.gui.window.verbs import Verbs
from spoutline.gui.window.workplace import Workplace
from spoutline.model.language import Language
from spoutline.model.survey import Survey
from spoutline.units.accepted import UnitSystem

# Qt's own screen for tests holds 800 x 800, and the window shows less there; ours is one that people have
if os.environ.get("QT_QPA_PLATFORM") == "offscreen":
    os.environ["QT_QPA_PLATFORM"] = f"offscreen:configfile={Path(__file__).with_name('screen.json')}"


@pytest.fixture(scope="session")
def bench(database_to_copy: Path, tmp_path_factory: pytest.TempPathFactory) -> Iterator[Workbench]:
    """Yield use cases over a book for the window's tests alone; each of them puts its own survey into it."""
    folder = tmp_path_factory.mktemp("window")
    shutil.copy(database_to_copy, folder / "own.sqlite3")
    bench = open_workbench(Settings(database=str(folder / "own.sqlite3"), profiles=folder / "profiles"))
    yield bench
    bench.close()


@pytest.fixture(scope="session")
def station_name() -> str:
    """Return the name of the station that most tests show."""
    return demo_survey("small_town").site.name


@pytest.fixture
def survey() -> Survey:
    """Return a station of two positions: gasoline and diesel, both for cars."""
    demo = demo_survey("small_town")
    gasoline = next(one for one in demo.positions if one.liquid.family == "gasoline")
    diesel = next(one for one in demo.positions if one.liquid.family == "diesel" and one.duty == "car")
    positions = (gasoline.model_copy(update={"label": "A1"}), diesel.model_copy(update={"label": "A2"}))
    return demo.model_copy(update={"positions": positions})


@pytest.fixture
def session(qtbot: QtBot, bench: Workbench, survey: Survey, station_name: str) -> Iterator[Session]:
    """Yield a session over the station, in metric units.

    All tests share the book, and what was agreed for a station stays and is shown: a test that agrees or orders does so
    for a station of a name of its own.
    """
    bench.speak(Language.ENGLISH)  # whatever a test before left
    yield Session(bench, bench.book().create(survey), UnitSystem.SI)
    assert not bench.book().agreements.lines(station_name), "agreed for the station that other tests show"


@pytest.fixture
def window(qtbot: QtBot, qapp: QApplication, session: Session, plans_once: None) -> Iterator[MainWindow]:
    """Yield the whole window over the station, both positions planned."""
    dress(qapp, dark=False)
    window = MainWindow()
    qtbot.addWidget(window)
    workplace = window.attach(session)
    window.verbs = Verbs(window, workplace)  # type: ignore[attr-defined]
    window.show()
    wait_for_plans(qtbot, workplace)
    yield window
    window.jobs.close()


@pytest.fixture(params=list(Language))
def spoken(
    request: pytest.FixtureRequest,
    qtbot: QtBot,
    qapp: QApplication,
    bench: Workbench,
    survey: Survey,
    plans_once: None,
) -> Iterator[tuple[Language, MainWindow]]:
    """Yield the window in one language, both positions planned."""
    language = Language(request.param)
    before, words = bench.language, WindowLanguage()
    bench.speak(language)
    words.use(language)
    dress(qapp, dark=False)
    window = MainWindow()
    qtbot.addWidget(window)
    workplace = window.attach(Session(bench, bench.book().create(survey), UnitSystem.SI))
    window.verbs = Verbs(window, workplace)  # type: ignore[attr-defined]
    window.show()
    wait_for_plans(qtbot, workplace)
    yield language, window
    window.jobs.close()
    words.use(Language.ENGLISH)
    bench.speak(before)


@pytest.fixture
def workplace(window: MainWindow) -> Workplace:
    """Return the pages of the window."""
    assert window.workplace is not None
    return window.workplace


def wait_for_plans(qtbot: QtBot, workplace: Workplace) -> None:
    """Wait until every position has its set, and the one in focus its other sets."""
    labels = [position.label for position in workplace.session.survey.positions]
    qtbot.waitUntil(lambda: all(workplace.plans.plan(label) is not None for label in labels), timeout=120_000)
    wait_for_whole_plan(qtbot, workplace)


def wait_for_whole_plan(qtbot: QtBot, workplace: Workplace) -> None:
    """Wait until nothing more is to come of the plan of the position in focus."""
    plans, session = workplace.plans, workplace.session
    qtbot.waitUntil(lambda: (staged := plans.staged(session.label)) is not None and staged.is_whole, timeout=120_000)


@pytest.fixture(scope="session")
def collector(qapp: QApplication) -> WindowCollector:
    """Return the collector of the window, as the program starts it before anything is shown."""
    return WindowCollector(qapp)


@pytest.fixture(autouse=True)
def collected_here(collector: WindowCollector) -> Iterator[None]:
    """Let no other thread collect objects of the window; short tests leave no time for the timer, so look here too."""
    yield
    collector.look()
