"""Letters that Alt goes with: the texts in view that have one, and the views of the window to look for them in."""

from __future__ import annotations

from collections import defaultdict
from collections.abc import Iterable, Iterator

from PySide6.QtWidgets import (
    QAbstractButton,
    QGroupBox,
    QLabel,
    QMenu,
    QMenuBar,
    QStackedWidget,
    QTabBar,
    QTabWidget,
    QWidget,
)


def letter_of(text: str) -> str:
    """Return the letter behind the first ampersand that stands for one, as Qt reads a text; empty where none is."""
    _, mark, after = text.replace("&&", "").partition("&")
    return after[:1].casefold() if mark else ""


def texts_in_view(window: QWidget) -> list[str]:
    """Return what buttons, titles of fields, groups, tabs and menus in view of a window say, where it has a letter."""
    kinds = (QAbstractButton, QLabel, QGroupBox, QTabBar, QMenuBar)
    shown = [one for kind in kinds for one in window.findChildren(kind) if one.isVisible() and one.window() is window]
    return [text for one in shown for text in _texts(one) if letter_of(text)]


def _texts(one: QWidget) -> Iterable[str]:
    match one:
        case QAbstractButton():
            return [one.text()]
        case QLabel():
            return [one.text()] if one.buddy() is not None else []
        case QGroupBox():
            return [one.title()]
        case QTabBar():
            return [one.tabText(place) for place in range(one.count()) if one.isTabVisible(place)]
        case QMenuBar():
            return [action.text() for action in one.actions() if action.isVisible()]
    return []


def texts_of_menus(window: QWidget) -> Iterator[tuple[str, list[str]]]:
    """Yield the name of each menu and what the commands in it say; a menu has its letters for itself."""
    for menu in window.findChildren(QMenu):
        yield menu.title(), [one.text() for one in menu.actions() if letter_of(one.text())]


def clashes(texts: Iterable[str]) -> list[tuple[str, ...]]:
    """Return the texts that share a letter, letter by letter."""
    by_letter: dict[str, list[str]] = defaultdict(list)
    for text in texts:
        by_letter[letter_of(text)].append(text)
    return [tuple(sorted(shared)) for _, shared in sorted(by_letter.items()) if len(shared) > 1]


def with_inner_views(page: QWidget, named: str = "") -> Iterator[str]:
    """Bring each tab of a page into view, each tab in a tab, and each page of a stack; yield where we are."""
    groups = [one for one in page.findChildren(QTabWidget) if one.isVisibleTo(page)]
    stacks = [one for one in page.findChildren(QStackedWidget) if one.isVisibleTo(page)]
    stacks = [one for one in stacks if not isinstance(one.parent(), QTabWidget) and one.count() > 1]
    outer: list[QTabWidget | QStackedWidget] = [*groups, *stacks]
    here = next((one for one in outer if not any(other.isAncestorOf(one) for other in outer if other is not one)), None)
    if here is None:
        yield named
        return
    for place in range(here.count()):
        if isinstance(here, QTabWidget) and not (here.isTabEnabled(place) and here.isTabVisible(place)):
            continue
        here.setCurrentIndex(place)
        title = here.tabText(place) if isinstance(here, QTabWidget) else str(place)
        inner = here.widget(place)
        if inner is not None:
            yield from with_inner_views(inner, f"{named} / {title}")
    here.setCurrentIndex(0)
