"""Write a report on the window: pictures of every page, and figures of access and room.

.venv/bin/python packaging/window_report.py FOLDER

Each page, step and tab is shown over the demo station in light, dark, at 200 % and in Spanish. A variant runs in a
process of its own, because a scale is chosen when a program starts. The report is FOLDER/index.html.
"""

from __future__ import annotations

import html
import json
import os
import re
import subprocess
import sys
import tempfile
from collections.abc import Iterator
from dataclasses import asdict, dataclass, field
from pathlib import Path

os.environ.setdefault("QT_QPA_PLATFORM", "offscreen")

from PySide6.QtGui import QAccessible, QAccessibleInterface
from PySide6.QtWidgets import QApplication, QTabWidget, QWidget
from take_pictures import picture, planned_window, wait_until_quiet

from spoutline.bootstrap import Settings, open_workbench
from spoutline.gui.edits.question import WALK, Step
from spoutline.gui.places import PLACES
from spoutline.gui.widgets.theme import dress
from spoutline.gui.window.language import WindowLanguage
from spoutline.gui.window.main_window import MainWindow
from spoutline.gui.window.workplace import Workplace
from spoutline.model.language import Language

TRANSLATIONS = Path(__file__).resolve().parents[1] / "resources" / "translations"
_CONTROLS = {
    QAccessible.Role.PushButton, QAccessible.Role.CheckBox, QAccessible.Role.RadioButton, QAccessible.Role.ComboBox,
    QAccessible.Role.EditableText, QAccessible.Role.SpinBox, QAccessible.Role.Slider, QAccessible.Role.Table,
    QAccessible.Role.Tree, QAccessible.Role.List, QAccessible.Role.PageTab, QAccessible.Role.MenuItem,
    QAccessible.Role.ButtonMenu, QAccessible.Role.ButtonDropDown,
}  # fmt: skip
_CLOSED = {QAccessible.Role.Table, QAccessible.Role.Tree, QAccessible.Role.List, QAccessible.Role.ComboBox}


@dataclass(frozen=True, slots=True)
class Variant:
    """How the window is shown; the size is in the units of a screen at 100 %."""

    name: str
    title: str
    width: int
    height: int
    dark: bool = False
    scale: int = 1
    language: Language = Language.ENGLISH


VARIANTS = (
    Variant("light", "Light, 1280 x 720", 1280, 720),
    Variant("dark", "Dark, 1280 x 720", 1280, 720, dark=True),
    Variant("large", "At 200 % on a screen of 1440 x 900", 720, 450, scale=2),
    Variant("spanish", "Spanish, 1280 x 720", 1280, 720, language=Language.SPANISH),
)


@dataclass(slots=True)
class Seen:
    """What one variant showed: its pages with their pictures, and its figures."""

    pages: list[tuple[str, str]] = field(default_factory=list)
    controls: int = 0
    unnamed: list[str] = field(default_factory=list)
    too_large: list[str] = field(default_factory=list)


def main() -> int:
    """Run every variant in a process of its own, then write the page that shows them side by side."""
    if len(sys.argv) not in {2, 3}:
        print(__doc__, file=sys.stderr)
        return 2
    folder = Path(sys.argv[1])
    folder.mkdir(parents=True, exist_ok=True)
    if len(sys.argv) == 3:
        _show(next(one for one in VARIANTS if one.name == sys.argv[2]), folder)
        return 0
    for variant in VARIANTS:
        scaled = {**os.environ, "QT_SCALE_FACTOR": str(variant.scale)}
        subprocess.run([sys.executable, __file__, str(folder), variant.name], env=scaled, check=True)
    (folder / "index.html").write_text(_report(folder), encoding="utf-8")
    return 0


def _show(variant: Variant, folder: Path) -> None:
    app = QApplication(sys.argv[:1])
    dress(app, dark=variant.dark)
    words = WindowLanguage()
    words.use(variant.language)
    seen = Seen()
    with tempfile.TemporaryDirectory() as name:
        book = Path(name)
        bench = open_workbench(Settings(database=str(book / "book.sqlite3"), profiles=book / "profiles"))
        bench.speak(variant.language)
        window, place = planned_window(bench, "small_town", (variant.width, variant.height))
        for number, page in enumerate(_pages(window, place)):
            window.resize(variant.width, variant.height)
            wait_until_quiet(window)
            file = f"{variant.name}-{number:02}.png"
            picture(window, folder / file)
            seen.pages.append((page, file))
            _measure(window, page, variant, seen)
        window.jobs.close()
        bench.close()
    (folder / f"{variant.name}.json").write_text(json.dumps(asdict(seen)), encoding="utf-8")


def _pages(window: MainWindow, workplace: Workplace) -> Iterator[str]:
    """Bring every step, page and tab into view; yield its name."""
    for step in (*WALK, Step.SITE):
        workplace.show_step(step)
        yield f"survey: {step}"
        yield from _tabs(workplace.steps.stack.currentWidget(), f"survey: {step}")
    for record in PLACES:
        window.actions_by_id[record.action].trigger()
        yield str(record.place)
        yield from _tabs(workplace.views.currentWidget(), str(record.place))


def _tabs(page: QWidget, named: str) -> Iterator[str]:
    for tabs in page.findChildren(QTabWidget):
        for place in range(1, tabs.count()):
            tabs.setCurrentIndex(place)
            yield f"{named}: {place + 1}"
        tabs.setCurrentIndex(0)


def _measure(window: MainWindow, page: str, variant: Variant, seen: Seen) -> None:
    if window.width() > variant.width or window.height() > variant.height:
        seen.too_large.append(f"{page}: {window.width()} x {window.height()}")
    for one in _controls(QAccessible.queryAccessibleInterface(window)):
        seen.controls += 1
        if not one.text(QAccessible.Text.Name).strip():
            seen.unnamed.append(f"{page}: {one.role().name}")


def _controls(here: QAccessibleInterface) -> Iterator[QAccessibleInterface]:
    for place in range(here.childCount()):
        child = here.child(place)
        if child is None or not child.isValid() or child.state().invisible:
            continue
        if child.role() in _CONTROLS:
            yield child
        if child.role() not in _CLOSED:
            yield from _controls(child)


def _report(folder: Path) -> str:
    all_seen = {one: json.loads((folder / f"{one.name}.json").read_text(encoding="utf-8")) for one in VARIANTS}
    rows = "".join(
        f"<tr><th scope=row>{html.escape(one.title)}<td>{len(seen['pages'])}<td>{seen['controls']}"
        f"<td>{_listed(seen['unnamed'])}<td>{_listed(seen['too_large'])}"
        for one, seen in all_seen.items()
    )
    figures = ", ".join(f"{language} {count}" for language, count in _untranslated().items())
    parts = [
        "<!doctype html><html lang=en><meta charset=utf-8><title>The window of Spoutline</title>",
        "<style>body{font:15px sans-serif;margin:2em;max-width:1300px}img{max-width:100%;border:1px solid #777}"
        "table{border-collapse:collapse}td,th{border:1px solid #999;padding:.3em .6em;text-align:left}</style>",
        "<h1>The window of Spoutline</h1><h2>Figures</h2><table><tr><th>Shown<th>Pages<th>Controls"
        f"<th>Controls without a name<th>Larger than the window{rows}</table>",
        f"<p>Texts of the window without a translation: {html.escape(figures)}.",
        "<p>Contrast is computed in tests/gui/test_theme.py: text at least 4.5:1, frames and icons at least 3:1.",
    ]
    for number, (page, _) in enumerate(all_seen[VARIANTS[0]]["pages"]):
        parts.append(f"<h2>{html.escape(page)}</h2>")
        for one, seen in all_seen.items():
            file = html.escape(seen["pages"][number][1])
            parts.append(f"<h3>{html.escape(one.title)}</h3><img src='{file}' alt='{html.escape(page)}' loading=lazy>")
    return "\n".join(parts)


def _listed(found: list[str]) -> str:
    return f"{len(found)}" + (f": {html.escape(', '.join(sorted(set(found))))}" if found else "")


def _untranslated() -> dict[str, int]:
    """Count the texts that a translation file leaves open."""
    files = sorted(TRANSLATIONS.glob("*.ts"))
    return {file.stem: len(re.findall(r'type="unfinished"', file.read_text(encoding="utf-8"))) for file in files}


if __name__ == "__main__":
    sys.exit(main())
