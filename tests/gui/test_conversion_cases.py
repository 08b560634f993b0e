"""The cases on the conversion page: typed, worked out, one of them reported, taken back."""

from __future__ import annotations

from pathlib import Path

import pytest
from PySide6.QtWidgets import QApplication
from pytestqt.qtbot import QtBot

from paper_text import text_of
from spoutline.bootstrap.demos import demo_survey
from spoutline.gui.actions import ActionId
from spoutline.gui.pages.conversion.cases import CasesSide
from spoutline.gui.pages.conversion.page import ConversionPage
from spoutline.gui.window.language import WindowLanguage
from spoutline.gui.window.main_window import MainWindow
from spoutline.gui.window.workplace import Workplace
from spoutline.model.conversion_case import ConversionCase
from spoutline.model.language import Language
from spoutline.model.survey import Survey


@pytest.fixture
def survey() -> Survey:
    """Return a station of two positions: one loses vapour recovery, one gets another liquid."""
    demo = demo_survey("conversion_assist")
    return demo.model_copy(update={"positions": (demo.positions[0], demo.positions[-1])})


@pytest.fixture
def page(qtbot: QtBot, window: MainWindow, workplace: Workplace) -> ConversionPage:
    window.actions_by_id[ActionId.CONVERSION].trigger()
    shown = workplace.conversion_page
    qtbot.waitUntil(lambda: shown.document is not None, timeout=60_000)
    shown.tabs.setCurrentWidget(shown.cases)
    return shown


def typed(page: ConversionPage, *, retention: bool = False, **texts: str) -> None:
    panel = page.cases.panel
    for name, field in panel.fields.items():
        field.editor.setText(texts.get(name, ""))
    panel.retention_box.setChecked(retention)
    panel.add_button.click()


def test_cases_are_kept_worked_out_and_reported(
    qtbot: QtBot, workplace: Workplace, page: ConversionPage, tmp_path: Path
) -> None:
    before = workplace.session.survey
    typed(page, name="Kept here", keep_islands="1", ethanol_percent="15")
    typed(page, name="Sold early", sold_after_years="5")
    assert workplace.session.survey.conversion.cases == (
        ConversionCase(name="Kept here", keep_islands=("1",), ethanol_percent=15),
        ConversionCase(name="Sold early", sold_after_years=5),
    )
    side = page.cases
    qtbot.waitUntil(side.compare_button.isEnabled, timeout=60_000)
    side.compare_button.click()
    qtbot.waitUntil(lambda: side.model.rowCount() == 3, timeout=60_000)
    names = [side.model.index(row, 0).data() for row in range(3)]
    assert names == ["As the survey asks", "Kept here", "Sold early"]
    below = [[side.model.index(at, 0, side.model.index(row, 0)).data() for at in range(5)] for row in (1, 2)]
    assert "Lose recovery: 0/2" in below[0]
    assert "Lose recovery: 1/2" in below[1]
    assert below[0][-1].startswith("Kept here: recovery stays on 1; gasoline becomes E15.")
    days = [int(side.model.index(row, 2).data()) for row in (0, 1, 2)]
    assert days[0] == days[2] > 0
    qtbot.waitUntil(lambda: page.document is not None, timeout=60_000)
    assert "The cases side by side" in text_of(page.document or b"")
    side.tree.setCurrentIndex(side.model.index(1, 0))
    side.report_button.click()
    qtbot.waitUntil(lambda: page.document is not None, timeout=60_000)
    assert "Case: Kept here" in text_of(page.document or b"")
    path = tmp_path / "case.ics"
    page.save_to(path, "ics")
    qtbot.waitUntil(path.exists, timeout=20_000)
    assert "Kept here" in path.read_text(encoding="utf-8")
    for _ in range(2):
        workplace.session.undo_stack.undo()
    assert workplace.session.survey == before
    qtbot.waitUntil(lambda: page.document is not None, timeout=60_000)
    assert side.model.rowCount() == 0  # worked out beside what is no more
    told = text_of(page.document or b"")
    assert "Case:" not in told
    assert "The cases side by side" not in told


def test_a_case_that_the_station_cannot_have_is_told(qtbot: QtBot, workplace: Workplace, page: ConversionPage) -> None:
    typed(page, name="Elsewhere", keep_islands="9")
    side = page.cases
    qtbot.waitUntil(side.compare_button.isEnabled, timeout=60_000)
    side.compare_button.click()
    qtbot.waitUntil(lambda: "name an island of the station: 1, 4" in side.state_label.text(), timeout=60_000)
    assert side.model.rowCount() == 0
    side.panel.table.pick_row(0)
    side.panel.remove_button.click()
    assert workplace.session.survey.conversion.cases == ()


@pytest.mark.parametrize(
    ("texts", "field"),
    [
        ({"name": "x"}, "name"),  # nothing is otherwise
        ({"name": "", "ethanol_percent": "15"}, "name"),
        ({"name": "x", "ethanol_percent": "much"}, "ethanol_percent"),
        ({"name": "x", "biodiesel_percent": "120"}, "biodiesel_percent"),
        ({"name": "x", "sold_after_years": "0"}, "sold_after_years"),
    ],
)
def test_what_cannot_be_a_case_is_told_at_its_field(
    texts: dict[str, str], field: str, workplace: Workplace, page: ConversionPage
) -> None:
    typed(page, **texts)
    assert workplace.session.survey.conversion.cases == ()
    assert page.cases.panel.fields[field].fault


def test_two_cases_have_two_names(workplace: Workplace, page: ConversionPage) -> None:
    typed(page, name="x", retention=True)
    typed(page, name="x", sold_after_years="5")
    assert len(workplace.session.survey.conversion.cases) == 1
    assert page.cases.panel.fields["name"].fault


@pytest.mark.parametrize("language", list(Language))
def test_the_page_of_cases_is_no_wider_than_a_small_window_has_room_for(
    language: Language, page: ConversionPage, qapp: QApplication
) -> None:
    """The page scrolls upright only: at 1280 pixels it has 510 of them, measured in the window."""
    WindowLanguage().use(language)
    try:
        side = CasesSide(page._context)
        assert side.widget().minimumSizeHint().width() <= 510
        side.deleteLater()
    finally:
        WindowLanguage().use(Language.ENGLISH)
