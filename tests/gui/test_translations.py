"""The window in other languages: sources complete, compiled files fresh, the language exchanged at run time."""

from __future__ import annotations

import importlib.util
import re
import sys
from collections.abc import Iterator
from pathlib import Path
from types import ModuleType

import pytest
import shiboken6
from PySide6.QtCore import QCoreApplication, QTranslator
from PySide6.QtWidgets import QApplication
from pytestqt.qtbot import QtBot

from spoutline import assets
from spoutline.bootstrap import Settings, open_workbench
from spoutline.bootstrap.demos import demo_survey
from spoutline.bootstrap.languages import language_of_environment, remembered_language
from spoutline.gui.actions import ACTIONS, MenuId
from spoutline.gui.window.language import WindowLanguage
from spoutline.gui.window.start import ShownWindow
from spoutline.gui.wording import tr
from spoutline.model.claims import claim_in
from spoutline.model.language import Language

FOLDER = assets.resources_folder() / "translations"
OTHERS = ["de", "es", "fr"]


@pytest.fixture(scope="module")
def tool() -> ModuleType:
    path = Path(__file__).resolve().parents[2] / "packaging" / "translations.py"
    spec = importlib.util.spec_from_file_location("translations", path)
    assert spec is not None
    assert spec.loader is not None
    module = importlib.util.module_from_spec(spec)
    spec.loader.exec_module(module)
    return module


@pytest.fixture(autouse=True)
def english_again(qapp: QApplication) -> Iterator[None]:
    hook = sys.excepthook
    yield
    sys.excepthook = hook
    WindowLanguage().use(Language.ENGLISH)


@pytest.mark.parametrize("language", OTHERS)
def test_no_text_is_left_in_english(tool: ModuleType, language: str) -> None:
    known = tool.translated(language)
    assert [text for text in tool.texts() if text not in known] == []


@pytest.mark.parametrize("language", OTHERS)
def test_no_translation_is_of_a_text_that_is_gone(tool: ModuleType, language: str) -> None:
    texts = set(tool.texts())
    assert [text for text in tool.translated(language) if text not in texts] == []


@pytest.mark.parametrize("language", OTHERS)
def test_the_compiled_file_holds_what_its_source_holds(tool: ModuleType, language: str, tmp_path: Path) -> None:
    translator = QTranslator()
    assert translator.load(str(FOLDER / f"window_{language}.qm"))
    assert tool.translated(language)
    for source, text in tool.translated(language).items():
        assert translator.translate("window", source) == text
    fresh = tmp_path / "fresh.qm"
    tool.compile_into(FOLDER / f"window_{language}.ts", fresh)
    assert fresh.read_bytes() == (FOLDER / f"window_{language}.qm").read_bytes()


@pytest.mark.parametrize("language", OTHERS)
def test_a_translation_keeps_placeholders_and_claims_nothing(tool: ModuleType, language: str) -> None:
    for source, text in tool.translated(language).items():
        assert sorted(re.findall(r"\{[^{}]*\}", text)) == sorted(re.findall(r"\{[^{}]*\}", source)), source
        assert claim_in(text.replace("&", "")) is None
        # a letter for Alt may be left out where another control in view has it: see `test_mnemonics.py`
        assert text.replace("&&", "").count("&") <= 1, source


@pytest.mark.parametrize("language", OTHERS)
def test_no_two_menus_share_a_key(tool: ModuleType, language: str) -> None:
    known = tool.translated(language)
    titles = [known[text] for text in ("&Survey", "&Edit", "&Position", "&Go", "&View", "&Help")]
    keys = [title[title.index("&") + 1].lower() for title in titles]
    assert len(set(keys)) == len(keys), titles


@pytest.mark.parametrize("language", OTHERS)
@pytest.mark.parametrize("menu", list(MenuId))
def test_no_two_commands_of_a_menu_share_a_key(tool: ModuleType, language: str, menu: MenuId) -> None:
    known = tool.translated(language)
    titles = [known[record.title] for record in ACTIONS if record.menu is menu]
    keys = [title[title.index("&") + 1].lower() for title in titles]
    assert len(set(keys)) == len(keys), titles


def test_texts_of_records_are_gathered_like_those_in_calls(tool: ModuleType) -> None:
    texts = set(tool.texts())
    assert {"&Survey", "&All surveys…", "Liquid and blend", "Gasoline", "Advice only: local codes and the authority "
            "having jurisdiction decide."} <= texts  # fmt: skip


def test_the_window_is_exchanged_for_one_in_another_language(
    qtbot: QtBot, qapp: QApplication, database_to_copy: Path, tmp_path: Path
) -> None:
    import shutil

    shutil.copy(database_to_copy, tmp_path / "own.sqlite3")
    bench = open_workbench(Settings(database=str(tmp_path / "own.sqlite3"), profiles=tmp_path / "profiles"))
    if not bench.book().entries():
        bench.book().create(demo_survey())
    shown = ShownWindow(lambda: bench, None, Language.ENGLISH)
    first = shown.window
    qtbot.waitUntil(lambda: first.workplace is not None, timeout=20_000)
    assert first.workplace is not None
    labels = [position.label for position in first.workplace.session.survey.positions]
    first.workplace.session.look_at(labels[1])
    german = next(one for one in first.language_menu.actions() if one.text() == "Deutsch")
    german.trigger()
    qtbot.waitUntil(lambda: shown.window.workplace is not None, timeout=20_000)
    second = shown.window
    assert second is not first
    assert second.workplace is not None
    assert second.menuBar().actions()[0].text().replace("&", "") == "Aufnahme"
    assert second.workplace.session.label == labels[1]
    assert not shiboken6.isValid(first) or not first.isVisible()
    assert remembered_language() is Language.GERMAN
    assert bench.language is Language.GERMAN
    second.jobs.close()
    second.close()
    shown.opening.close()
    shown.translations.use(Language.ENGLISH)


def test_a_text_without_translation_stays_english(qapp: QApplication) -> None:
    translations = WindowLanguage()
    translations.use(Language.FRENCH)
    assert tr("&Quit") == "&Quitter"
    assert tr("a text that nobody translates") == "a text that nobody translates"
    # Qt's own buttons speak the language too
    assert QCoreApplication.translate("QPlatformTheme", "Cancel") == "Annuler"
    translations.use(Language.ENGLISH)
    assert tr("&Quit") == "&Quit"


# POSIX base definitions 8.2 and gettext's manual, "Locale Environment Variables": LANGUAGE, LC_ALL, LC_MESSAGES, LANG
@pytest.mark.parametrize(
    ("environment", "language"),
    [
        ({"LANG": "de_DE.UTF-8"}, "de"),
        ({"LANG": "de_DE.UTF-8", "LC_MESSAGES": "es_MX.UTF-8"}, "es"),
        ({"LANG": "de_DE.UTF-8", "LC_ALL": "fr_FR"}, "fr"),
        ({"LANG": "de_DE.UTF-8", "LANGUAGE": "pt:fr"}, "fr"),
        ({"LANG": "C", "LANGUAGE": "fr"}, "en"),
        ({"LANG": "pt_BR.UTF-8"}, "en"),
        ({}, "en"),
    ],
)
def test_the_language_of_the_machine_is_followed(environment: dict[str, str], language: str) -> None:
    assert language_of_environment(environment) == language
