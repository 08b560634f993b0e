"""Contrast by WCAG 2.2: relative luminance and contrast ratio as its glossary defines them."""

from __future__ import annotations

import itertools
import re
from dataclasses import fields
from pathlib import Path

import pytest
from PySide6.QtCore import QRectF
from PySide6.QtGui import QColor, QFontMetrics, QImage, QPainter, QPalette
from PySide6.QtWidgets import QApplication, QComboBox
from pytestqt.qtbot import QtBot

from spoutline.gui.roles import Tone
from spoutline.gui.widgets import theme
from spoutline.gui.widgets.marks import paint_mark
from spoutline.gui.widgets.theme import (
    DARK,
    DARK_CONTRAST,
    LIGHT,
    LIGHT_CONTRAST,
    READY,
    Colours,
    ThemeChoice,
    colours_now,
    colours_of_desktop,
    dress,
    palette_of,
    style_sheet,
)

NAMES = ["light", "dark", "light contrast", "dark contrast"]
TEXT_MINIMUM = 4.5  # WCAG 2.2, success criterion 1.4.3, level AA
TEXT_ENHANCED = 7.0  # WCAG 2.2, success criterion 1.4.6, level AAA: what high contrast is for
MARK_MINIMUM = 3.0  # WCAG 2.2, success criterion 1.4.11, level AA


def luminance(colour: QColor) -> float:
    def channel(value: float) -> float:
        return value / 12.92 if value <= 0.04045 else ((value + 0.055) / 1.055) ** 2.4

    return 0.2126 * channel(colour.redF()) + 0.7152 * channel(colour.greenF()) + 0.0722 * channel(colour.blueF())


def contrast(one: str | QColor, other: str | QColor) -> float:
    bright, dim = sorted((luminance(QColor(one)), luminance(QColor(other))), reverse=True)
    return (bright + 0.05) / (dim + 0.05)


def test_the_formula_gives_the_published_extremes() -> None:
    assert contrast("#ffffff", "#000000") == pytest.approx(21.0)  # WCAG 2.2 glossary: ratios range from 1 to 21
    assert contrast("#777777", "#777777") == 1.0


@pytest.mark.parametrize("colours", READY, ids=NAMES)
def test_every_text_pair_can_be_read(colours: Colours) -> None:
    grounds = (colours.backdrop, colours.card, colours.stripe, colours.sheet)
    texts = (colours.text, colours.quiet_text, colours.bad, colours.accent, colours.caution, colours.good)
    for text, ground in itertools.product(texts, grounds):
        assert contrast(text, ground) >= TEXT_MINIMUM, (text, ground)
    assert contrast(colours.on_accent, colours.accent) >= TEXT_MINIMUM
    assert contrast(colours.text, colours.soft) >= TEXT_MINIMUM
    assert contrast(colours.quiet_text, colours.soft) >= TEXT_MINIMUM or colours in (LIGHT, DARK)


@pytest.mark.parametrize("colours", [LIGHT_CONTRAST, DARK_CONTRAST], ids=NAMES[2:])
def test_high_contrast_is_more_than_the_least(colours: Colours) -> None:
    for text in (colours.text, colours.quiet_text, colours.bad, colours.accent, colours.caution, colours.good):
        for ground in (colours.backdrop, colours.card, colours.stripe, colours.sheet, colours.soft):
            assert contrast(text, ground) >= TEXT_ENHANCED, (text, ground)
    for frame in (colours.frame, colours.line):
        for ground in (colours.backdrop, colours.card):
            assert contrast(frame, ground) >= TEXT_MINIMUM, (frame, ground)


@pytest.mark.parametrize("colours", READY, ids=NAMES)
def test_frames_and_chosen_icons_can_be_seen_on_every_ground(colours: Colours) -> None:
    for ground in (colours.backdrop, colours.card, colours.stripe, colours.sheet):
        assert contrast(colours.frame, ground) >= MARK_MINIMUM, ground
        assert contrast(colours.accent, ground) >= MARK_MINIMUM, ground  # frame of the focus, bar of the chosen tab
    # a mark on a chosen row stands on a plate of the card's colour, which stands out from the row
    assert contrast(colours.card, colours.accent) >= MARK_MINIMUM
    # icons of a tool that is switched on lie on the soft ground
    assert contrast(colours.text, colours.soft) >= MARK_MINIMUM
    for mark in (colours.good, colours.caution, colours.bad, colours.question, colours.note, colours.frame):
        assert contrast(mark, colours.soft) >= MARK_MINIMUM, mark  # marks of the place in view on the switcher


def test_the_colours_of_a_desktop_with_high_contrast_are_taken_as_they_are() -> None:
    palette, role = QPalette(), QPalette.ColorRole
    wanted = {role.WindowText: "#ffff00", role.Window: "#000000", role.Highlight: "#00ff00",
              role.HighlightedText: "#000000"}  # fmt: skip
    for one, name in wanted.items():
        palette.setColor(one, QColor(name))
    colours = colours_of_desktop(palette)
    assert {getattr(colours, field.name) for field in fields(Colours)} == set(wanted.values())
    assert (colours.text, colours.backdrop, colours.accent) == ("#ffff00", "#000000", "#00ff00")
    assert "@" not in style_sheet(colours)


def test_a_desktop_that_asks_for_high_contrast_gets_its_own_colours(
    qapp: QApplication, monkeypatch: pytest.MonkeyPatch
) -> None:
    monkeypatch.setattr(theme, "wants_contrast", lambda _: True)
    dress(qapp, ThemeChoice.DESKTOP)
    used = colours_now()
    assert used.frame == used.text
    assert used not in READY
    assert qapp.palette().color(QPalette.ColorRole.WindowText).name() == used.text
    dress(qapp, dark=False)
    assert colours_now() is LIGHT


def test_each_choice_of_a_theme_has_its_colours(qapp: QApplication) -> None:
    for choice, colours in ((ThemeChoice.LIGHT, LIGHT), (ThemeChoice.DARK, DARK)):
        dress(qapp, choice)
        assert colours_now() is colours
    dress(qapp, ThemeChoice.CONTRAST)
    assert colours_now() in (LIGHT_CONTRAST, DARK_CONTRAST)
    dress(qapp, dark=False)


@pytest.mark.parametrize("colours", READY, ids=NAMES)
def test_frames_marks_and_lines_of_the_drawing_can_be_seen(colours: Colours) -> None:
    for mark in (colours.good, colours.caution, colours.bad, colours.question, colours.note, colours.frame):
        assert contrast(mark, colours.card) >= MARK_MINIMUM, mark
    for line in (colours.hose, colours.hose_at_rest, colours.fitting, colours.vehicle, colours.cold, colours.hot):
        assert contrast(line, colours.sheet) >= MARK_MINIMUM, line


@pytest.mark.parametrize("colours", READY, ids=NAMES)
def test_palette_has_own_highlight_and_placeholder(qapp: QApplication, colours: Colours) -> None:
    palette, role = palette_of(colours), QPalette.ColorRole
    for group in (QPalette.ColorGroup.Active, QPalette.ColorGroup.Inactive):
        for text, ground in (
            (role.WindowText, role.Window),
            (role.Text, role.Base),
            (role.ButtonText, role.Button),
            (role.HighlightedText, role.Highlight),
            (role.PlaceholderText, role.Base),
            (role.ToolTipText, role.ToolTipBase),
        ):
            assert palette.color(group, text).alpha() == 255
            assert contrast(palette.color(group, text), palette.color(group, ground)) >= TEXT_MINIMUM, (text, group)


def test_style_sheet_has_no_open_place() -> None:
    for colours in READY:
        assert "@" not in style_sheet(colours)


def test_marks_differ_in_shape_and_not_in_colour_alone(qapp: QApplication) -> None:
    shapes: dict[Tone, bytes] = {}
    for tone in Tone:
        image = QImage(40, 40, QImage.Format.Format_Grayscale8)
        image.fill(255)
        painter = QPainter(image)
        paint_mark(painter, QRectF(2, 2, 36, 36), tone, LIGHT)
        painter.end()
        # black and white only: what remains is shape
        shapes[tone] = bytes(0 if byte < 200 else 1 for byte in bytes(image.constBits()))
    for one, other in itertools.combinations(Tone, 2):
        differing = sum(a != b for a, b in zip(shapes[one], shapes[other], strict=True))
        assert differing > 60, (one, other)


def test_bundled_font_has_the_signs_of_the_trade(qapp: QApplication) -> None:
    dress(qapp, dark=False)
    metrics = QFontMetrics(qapp.font())
    assert qapp.font().family() == "DejaVu Sans"
    assert all(metrics.inFontUcs4(ord(sign)) for sign in "Ω°²³µ→·–“”…")


def test_style_sheet_points_to_a_drawing_that_is_there() -> None:
    """Qt draws nothing, and says nothing, where the file behind a url is missing."""
    for sheet in (style_sheet(LIGHT), style_sheet(DARK)):
        places = re.findall(r'url\("([^"]+)"\)', sheet)
        assert places
        assert all(Path(place).is_file() for place in places)


@pytest.mark.qt_log_ignore("grabbing the keyboard", extend=True)  # a popup without a screen
@pytest.mark.parametrize("count", [2, 4, 8])
def test_a_short_list_of_choices_drops_down_whole(qtbot: QtBot, qapp: QApplication, count: int) -> None:
    """Every choice can be seen at once: nothing of the list lies outside its view."""
    if not qapp.styleSheet():
        dress(qapp, dark=False)
    box = QComboBox()
    qtbot.addWidget(box)
    box.addItems([f"choice {place}" for place in range(count)])
    box.show()
    box.showPopup()
    view = box.view()
    assert view.verticalScrollBar().maximum() == 0
    last = view.visualRect(view.model().index(count - 1, 0))
    assert view.viewport().rect().contains(last)
    box.hidePopup()
