"""Colours, palette and style sheet of the window, for light and dark desktops."""

from __future__ import annotations

from dataclasses import fields
from enum import StrEnum

from PySide6.QtCore import Qt
from PySide6.QtGui import QColor, QFont, QFontDatabase, QPalette
from PySide6.QtWidgets import QApplication

from spoutline import assets
from spoutline.frozen import frozen
from spoutline.gui.roles import Tone
from spoutline.gui.wording import tr

FONT_FAMILY = "DejaVu Sans"
_BODY_PT = 9.5


@frozen(kw_only=True)
class Colours:
    """Named colours as ``#rrggbb``. Text pairs reach a contrast of 4.5, marks and frames of 3 (WCAG 2.2, AA)."""

    backdrop: str  # behind the cards
    card: str
    text: str
    quiet_text: str
    line: str  # decoration only
    frame: str  # borders that tell where a field is
    accent: str
    on_accent: str
    soft: str  # chosen tiles, hovered rows
    stripe: str
    good: str
    caution: str
    bad: str
    question: str
    note: str
    hose: str
    hose_at_rest: str
    fitting: str
    vehicle: str
    water: str
    cold: str
    hot: str
    sheet: str  # the drawing's own ground


LIGHT = Colours(
    backdrop="#eef2f1",
    card="#ffffff",
    text="#16262b",
    quiet_text="#4c5d62",
    line="#d5dedd",
    frame="#6f8287",
    accent="#0b5f6b",
    on_accent="#ffffff",
    soft="#dcedee",
    stripe="#f5f8f7",
    good="#1b7340",
    caution="#8a5200",
    bad="#b3261e",
    question="#6a3fa0",
    note="#4c5d62",
    hose="#1f2f36",
    hose_at_rest="#7d8f93",
    fitting="#0b5f6b",
    vehicle="#72868c",
    water="#3f7fa6",
    cold="#1f5fa8",
    hot="#b3461e",
    sheet="#fbfdfc",
)

DARK = Colours(
    backdrop="#131b1e",
    card="#1b262a",
    text="#e6eeee",
    quiet_text="#a5b6b9",
    line="#2f3e43",
    frame="#7f959b",
    accent="#5cc4cf",
    on_accent="#06262b",
    soft="#1f4248",
    stripe="#202d31",
    good="#6fce93",
    caution="#efb355",
    bad="#ff8f85",
    question="#c6a5f2",
    note="#a5b6b9",
    hose="#dfe8e8",
    hose_at_rest="#71868b",
    fitting="#5cc4cf",
    vehicle="#8b9ea3",
    water="#7db8dc",
    cold="#82b4f0",
    hot="#f3a07c",
    sheet="#172125",
)


LIGHT_CONTRAST = Colours(
    backdrop="#ffffff",
    card="#ffffff",
    text="#000000",
    quiet_text="#1f1f1f",
    line="#3d3d3d",
    frame="#3d3d3d",
    accent="#00304a",
    on_accent="#ffffff",
    soft="#d5ebf5",
    stripe="#f2f2f2",
    good="#00461f",
    caution="#5c3300",
    bad="#8a0000",
    question="#43107e",
    note="#1f1f1f",
    hose="#000000",
    hose_at_rest="#4a4a4a",
    fitting="#00304a",
    vehicle="#4a4a4a",
    water="#00466e",
    cold="#003a7d",
    hot="#7a2400",
    sheet="#ffffff",
)

DARK_CONTRAST = Colours(
    backdrop="#000000",
    card="#000000",
    text="#ffffff",
    quiet_text="#e6e6e6",
    line="#c4c4c4",
    frame="#c4c4c4",
    accent="#ffe14d",
    on_accent="#000000",
    soft="#2b2b00",
    stripe="#141414",
    good="#7dff9b",
    caution="#ffd24a",
    bad="#ffa59c",
    question="#dcc4ff",
    note="#e6e6e6",
    hose="#ffffff",
    hose_at_rest="#bdbdbd",
    fitting="#ffe14d",
    vehicle="#bdbdbd",
    water="#8fd3ff",
    cold="#9cc9ff",
    hot="#ffb894",
    sheet="#000000",
)

READY = (LIGHT, DARK, LIGHT_CONTRAST, DARK_CONTRAST)


class ThemeChoice(StrEnum):
    """Which colours a person wants."""

    DESKTOP = "desktop"
    LIGHT = "light"
    DARK = "dark"
    CONTRAST = "contrast"


_WORDS = {
    ThemeChoice.DESKTOP: "As the desktop",
    ThemeChoice.LIGHT: "Light",
    ThemeChoice.DARK: "Dark",
    ThemeChoice.CONTRAST: "High contrast",
}


def theme_words(choice: ThemeChoice) -> str:
    """Return what a theme is called."""
    return tr(_WORDS[choice])


def colours_of_desktop(palette: QPalette) -> Colours:
    """Return colours made of a desktop's own high-contrast palette: its text, grounds and highlight, and no others.

    Marks keep their shapes and take the colour of text: a person who set the colours of the desktop wants no others.
    """
    role = QPalette.ColorRole

    def of(one: QPalette.ColorRole) -> str:
        return palette.color(QPalette.ColorGroup.Active, one).name()

    text, ground = of(role.WindowText), of(role.Window)
    chosen, on_chosen = of(role.Highlight), of(role.HighlightedText)
    inks = dict.fromkeys(("good", "caution", "bad", "question", "note", "water", "cold", "hot"), text)
    lines = dict.fromkeys(("hose", "hose_at_rest", "fitting", "vehicle", "line", "frame", "quiet_text"), text)
    grounds = dict.fromkeys(("backdrop", "card", "soft", "stripe", "sheet"), ground)
    return Colours(text=text, accent=chosen, on_accent=on_chosen, **inks, **lines, **grounds)


def wants_contrast(app: QApplication) -> bool:
    """Say whether the desktop asks for high contrast; Qt tells it from 6.10 on."""
    hints = getattr(app.styleHints(), "accessibility", None)
    wanted = getattr(Qt, "ContrastPreference", None)
    return hints is not None and wanted is not None and hints().contrastPreference() is wanted.HighContrast


def colours_for(app: QApplication, choice: ThemeChoice) -> Colours:
    """Return the colours of a choice, as the desktop is set now."""
    match choice:
        case ThemeChoice.LIGHT:
            return LIGHT
        case ThemeChoice.DARK:
            return DARK
        case ThemeChoice.CONTRAST:
            return DARK_CONTRAST if is_dark(app) else LIGHT_CONTRAST
        case ThemeChoice.DESKTOP:
            if wants_contrast(app):
                app.setPalette(QPalette())  # else it would be asked for the one that was set here
                return colours_of_desktop(app.palette())
            return DARK if is_dark(app) else LIGHT


def is_dark(app: QApplication) -> bool:
    """Say whether the desktop asks for a dark window."""
    return app.styleHints().colorScheme() is Qt.ColorScheme.Dark


class _Worn:
    """The colours that the application was dressed in last."""

    colours: Colours = LIGHT


def colours_now() -> Colours:
    """Return the colours in use, those that ``dress`` has set."""
    return _Worn.colours


def tone_colour(tone: Tone, colours: Colours) -> QColor:
    """Return the colour of a mark."""
    named = {
        Tone.GOOD: colours.good,
        Tone.CAUTION: colours.caution,
        Tone.BAD: colours.bad,
        Tone.QUESTION: colours.question,
        Tone.NOTE: colours.note,
        Tone.WORKING: colours.frame,
        Tone.OPEN: colours.frame,
    }
    return QColor(named[tone])


def dress(app: QApplication, choice: ThemeChoice = ThemeChoice.DESKTOP, *, dark: bool | None = None) -> None:
    """Give the application its font, palette and style sheet; ``dark`` goes before the choice where it is given."""
    if dark is not None:
        choice = ThemeChoice.DARK if dark else ThemeChoice.LIGHT
    colours = _Worn.colours = colours_for(app, choice)
    sheet = style_sheet(colours)
    if app.styleSheet() == sheet:
        return  # a sheet that is set again polishes every widget that there is anew
    _load_fonts()
    app.setStyle("Fusion")
    font = QFont(FONT_FAMILY)
    font.setPointSizeF(_BODY_PT)
    app.setFont(font)
    app.setPalette(palette_of(colours))
    app.setStyleSheet(sheet)


def _load_fonts() -> None:
    folder = assets.resources_folder() / "fonts"
    for name in ("DejaVuSans.ttf", "DejaVuSans-Bold.ttf"):
        path = folder / name
        if path.is_file():
            QFontDatabase.addApplicationFont(str(path))


def palette_of(colours: Colours) -> QPalette:
    """Return Qt's palette for these colours; highlight and placeholder are set, Qt's own lack contrast."""
    role, group = QPalette.ColorRole, QPalette.ColorGroup
    palette = QPalette()
    for target, name in (
        (role.Window, colours.backdrop),
        (role.WindowText, colours.text),
        (role.Base, colours.card),
        (role.AlternateBase, colours.stripe),
        (role.Text, colours.text),
        (role.Button, colours.card),
        (role.ButtonText, colours.text),
        (role.BrightText, colours.bad),
        (role.ToolTipBase, colours.card),
        (role.ToolTipText, colours.text),
        (role.Highlight, colours.accent),
        (role.HighlightedText, colours.on_accent),
        (role.PlaceholderText, colours.quiet_text),
        (role.Link, colours.accent),
        (role.LinkVisited, colours.accent),
        (role.Mid, colours.frame),
        (role.Light, colours.card),
        (role.Midlight, colours.line),
        (role.Dark, colours.frame),
        (role.Shadow, colours.text),
    ):
        palette.setColor(target, QColor(name))
    for target in (role.WindowText, role.Text, role.ButtonText):
        palette.setColor(group.Disabled, target, QColor(colours.frame))
    return palette


def style_sheet(colours: Colours) -> str:
    """Return the style sheet: flat cards, tiles and steps, one accent, a clear focus frame."""
    sheet = _SHEET
    for field in sorted(fields(Colours), key=lambda item: len(item.name), reverse=True):
        sheet = sheet.replace(f"@{field.name}@", getattr(colours, field.name))
    for name in ("unfold", "fold", "tick"):
        icon = assets.resources_folder() / "icons" / f"{name}.svg"
        sheet = sheet.replace(f"@{name}@", f'"{icon.as_posix()}"')
    return sheet


_SHEET = """
QMainWindow, QDialog { background: @backdrop@; }
QToolTip { background: @card@; color: @text@; border: 1px solid @frame@; padding: 4px; }
QMenuBar { background: @card@; border-bottom: 1px solid @line@; padding: 2px; }
QMenuBar::item { padding: 4px 10px; border-radius: 4px; }
QMenuBar::item:selected { background: @soft@; color: @text@; }
QMenu { background: @card@; border: 1px solid @frame@; padding: 4px; }
QMenu::item { padding: 5px 26px 5px 22px; border-radius: 4px; }
QMenu::item:selected { background: @accent@; color: @on_accent@; }
QMenu::item:disabled { color: @frame@; }
QMenu::separator { height: 1px; background: @line@; margin: 4px 8px; }
QStatusBar { background: @card@; border-top: 1px solid @line@; color: @quiet_text@; }
QStatusBar QLabel { color: @quiet_text@; padding: 0 6px; }
QSplitter::handle { background: @backdrop@; }
QScrollArea, QScrollArea > QWidget > QWidget#page { background: transparent; border: none; }

QFrame#card, QFrame#drawingCard { background: @card@; border: 1px solid @line@; border-radius: 8px; }
QFrame#notice { background: @card@; border: 2px solid @frame@; border-radius: 8px; }
QFrame#head { background: @card@; border-bottom: 1px solid @line@; }
QLabel#cardTitle { font-weight: bold; color: @text@; font-size: 10.5pt; }
QLabel#pageTitle { font-weight: bold; font-size: 14pt; color: @text@; }
QLabel#siteTitle { font-weight: bold; font-size: 12pt; color: @text@; }
QLabel#price { font-weight: bold; font-size: 15pt; color: @text@; }
QLabel#question { font-weight: bold; color: @text@; }
QLabel#help, QLabel#quiet { color: @quiet_text@; }
QLabel#help { font-size: 8.5pt; }
QLabel#fault { color: @bad@; font-weight: bold; }

QLineEdit, QPlainTextEdit, QComboBox, QSpinBox {
  background: @card@; color: @text@; border: 1px solid @frame@; border-radius: 5px; padding: 4px 7px;
  selection-background-color: @accent@; selection-color: @on_accent@; min-height: 18px;
}
QLineEdit { placeholder-text-color: @quiet_text@; }
QLineEdit:focus, QPlainTextEdit:focus, QComboBox:focus, QSpinBox:focus { border: 2px solid @accent@; padding: 3px 6px; }
QLineEdit[faulty="true"], QPlainTextEdit[faulty="true"], QComboBox[faulty="true"] {
  border: 2px solid @bad@; padding: 3px 6px;
}
QSpinBox::up-button, QSpinBox::down-button { border: none; width: 18px; background: transparent; }
QSpinBox::up-arrow { image: url(@fold@); width: 10px; height: 10px; }
QSpinBox::down-arrow { image: url(@unfold@); width: 10px; height: 10px; }
QComboBox { combobox-popup: 0; }
QComboBox::drop-down { border: none; width: 22px; }
QComboBox::down-arrow { image: url(@unfold@); width: 12px; height: 12px; }
QComboBox QLineEdit, QComboBox QLineEdit:focus { border: none; padding: 0; min-height: 0; }
QComboBox QAbstractItemView {
  background: @card@; color: @text@; border: 1px solid @frame@;
  selection-background-color: @accent@; selection-color: @on_accent@;
}
QComboBox QAbstractItemView::item { padding: 2px 6px; min-height: 18px; }
QComboBox QAbstractItemView::item:selected { background: @accent@; color: @on_accent@; }

QPushButton {
  background: @card@; color: @text@; border: 1px solid @frame@; border-radius: 6px; padding: 5px 14px; min-height: 18px;
}
QPushButton:hover { background: @soft@; }
QPushButton:focus { border: 2px solid @accent@; padding: 4px 13px; }
QPushButton:disabled { color: @frame@; border-color: @line@; }
QPushButton#primary { background: @accent@; color: @on_accent@; border-color: @accent@; font-weight: bold; }
QPushButton#primary:hover { background: @text@; color: @card@; }
QPushButton#primary:focus { border: 2px solid @text@; }
QPushButton#primary:disabled { background: @stripe@; color: @quiet_text@; border-color: @frame@; }
QPushButton#step {
  border: none; border-bottom: 3px solid transparent; border-radius: 0; padding: 8px 12px 6px 12px; color: @quiet_text@;
}
QPushButton#step:hover { background: @soft@; color: @text@; }
QPushButton#step:checked { color: @text@; font-weight: bold; border-bottom: 3px solid @accent@; }
QPushButton#step:focus { background: @soft@; color: @text@; }
QToolButton { background: transparent; color: @text@; border: 1px solid transparent; border-radius: 5px; padding: 4px; }
QToolButton:hover { background: @soft@; }
QToolButton:focus { border: 1px solid @accent@; }
QToolButton:checked { background: @soft@; border: 1px solid @accent@; }

QRadioButton#tile {
  background: @card@; border: 1px solid @frame@; border-radius: 7px; padding: 7px 10px; color: @text@;
}
QRadioButton#tile:hover { background: @soft@; }
QRadioButton#tile:checked { background: @soft@; border: 2px solid @accent@; padding: 6px 9px; }
QRadioButton#tile:focus { border: 2px solid @text@; padding: 6px 9px; }
QCheckBox { spacing: 8px; border: 1px solid transparent; border-radius: 4px; padding: 1px 3px; }
QCheckBox:focus { border: 1px solid @accent@; color: @accent@; }
QRadioButton:focus { color: @accent@; }
QCheckBox::indicator, QListView::indicator {
  width: 13px; height: 13px; border: 1px solid @frame@; border-radius: 3px; background: @card@;
}
QCheckBox::indicator:checked, QListView::indicator:checked { border: 1px solid @accent@; image: url(@tick@); }
QCheckBox::indicator:disabled { border: 1px solid @line@; }

QTreeView, QTableView, QListView {
  background: @card@; alternate-background-color: @stripe@; border: 1px solid @frame@; border-radius: 6px;
  color: @text@; selection-background-color: @accent@; selection-color: @on_accent@; outline: none;
}
QTableView#heldColumn { border: none; border-radius: 0; border-right: 1px solid @frame@; }
QTreeView:focus, QTableView:focus, QListView:focus { border: 1px solid @accent@; }
QTreeView::item, QTableView::item { padding: 3px 4px; border: none; }
QTreeView::item:hover, QTableView::item:hover { background: @soft@; color: @text@; }
QTreeView::item:selected, QTableView::item:selected { background: @accent@; color: @on_accent@; }
QHeaderView::section {
  background: @stripe@; color: @quiet_text@; border: none; border-bottom: 1px solid @line@; padding: 5px 6px;
}
QHeaderView::down-arrow, QHeaderView::up-arrow {
  subcontrol-origin: padding; subcontrol-position: top center; width: 10px; height: 10px;
}
QHeaderView::down-arrow { image: url(@unfold@); }
QHeaderView::up-arrow { image: url(@fold@); }
QTabWidget::pane { border: 1px solid @line@; border-radius: 6px; background: @card@; top: -1px; }
QTabBar::tab { background: transparent; color: @quiet_text@; padding: 7px 8px; border: 1px solid transparent; }
QTabBar::tab:selected { color: @text@; font-weight: bold; border-bottom: 3px solid @accent@; }
QTabBar::tab:hover { color: @text@; background: @soft@; }
QTabBar:focus { border: none; }
QTabBar::tab:focus { color: @accent@; }
QProgressBar { background: @line@; border: none; border-radius: 3px; max-height: 6px; }
QProgressBar::chunk { background: @accent@; border-radius: 3px; }
QScrollBar:vertical { background: transparent; width: 12px; margin: 0; }
QScrollBar:horizontal { background: transparent; height: 12px; margin: 0; }
QScrollBar::handle { background: @frame@; border-radius: 4px; min-height: 28px; min-width: 28px; margin: 2px; }
QScrollBar::add-line, QScrollBar::sub-line { width: 0; height: 0; }
QScrollBar::add-page, QScrollBar::sub-page { background: transparent; }
"""
