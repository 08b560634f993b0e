"""TrueType fonts of the machine or the person for scripts that the embedded typeface lacks, such as Chinese."""

from __future__ import annotations

import os
import sys
from collections.abc import Iterator
from functools import lru_cache
from pathlib import Path
from typing import Final

from spoutline.model.faults import InputNote
from spoutline.model.worded import Worded

# outlines must be TrueType: reportlab embeds no others. The first file that is there and can be read is taken.
_KNOWN: Final = (
    "DroidSansFallbackFull.ttf",
    "DroidSansFallback.ttf",
    "wqy-zenhei.ttc",
    "wqy-microhei.ttc",
    "uming.ttc",
    "ukai.ttc",
    "NanumGothic.ttf",
    "NanumBarunGothic.ttf",
    "UnDotum.ttf",
    "unifont.ttf",
    "msyh.ttc",
    "simsun.ttc",
    "malgun.ttf",
    "meiryo.ttc",
    "msgothic.ttc",
    "Arial Unicode.ttf",
    "AppleGothic.ttf",
)
_LINUX: Final = ("/usr/share/fonts", "/usr/local/share/fonts")
_MAC: Final = ("/System/Library/Fonts", "/Library/Fonts")
_NAME: Final = "SpoutlineOther"
_MOST_OWN: Final = 8  # fonts in the person's folder that are looked at
_NOTED: Final = 20  # characters that a note names


def own_folder() -> Path:
    """Return the folder where a person puts further fonts."""
    import platformdirs

    return Path(platformdirs.user_data_dir("spoutline", appauthor=False)) / "fonts"


@lru_cache(maxsize=1)
def other_fonts() -> tuple[str, ...]:
    """Return the names under which reportlab knows the further fonts, the person's own first."""
    from reportlab.pdfbase import pdfmetrics
    from reportlab.pdfbase.ttfonts import TTFError, TTFont

    names: list[str] = []
    for path in (*_own(), *_installed()):
        name = f"{_NAME}{len(names)}-{path.stem}"
        try:
            pdfmetrics.registerFont(TTFont(name, str(path)))
        except (TTFError, OSError, ValueError, KeyError, IndexError):
            continue  # PostScript outlines, or a damaged file: the next one may do
        names.append(name)
    return tuple(names)


def _own() -> Iterator[Path]:
    try:
        found = sorted(path for path in own_folder().glob("*") if path.suffix.lower() in (".ttf", ".ttc"))
    except OSError:
        return
    yield from found[:_MOST_OWN]


def _installed() -> Iterator[Path]:
    """Yield the first of the known fonts of each folder of the system."""
    found: dict[str, Path] = {}
    for folder in _folders():
        for place, _, files in os.walk(folder):
            for name in files:
                if name in _KNOWN:
                    found.setdefault(name, Path(place, name))
    yield from (found[name] for name in _KNOWN if name in found)


def _folders() -> tuple[str, ...]:
    if sys.platform == "win32":
        return (str(Path(os.environ.get("WINDIR", r"C:\Windows"), "Fonts")),)
    return _MAC if sys.platform == "darwin" else _LINUX


@lru_cache(maxsize=4096)
def font_for(character: str) -> str | None:
    """Return the further font that holds a character; None where there is none."""
    from reportlab.pdfbase import pdfmetrics

    code = ord(character)
    return next((name for name in other_fonts() if code in pdfmetrics.getFont(name).face.charToGlyph), None)


class MissingCharacters:
    """Characters that no font has, gathered while papers are set and told once."""

    def __init__(self) -> None:
        self._waiting: dict[str, None] = {}
        self._told: set[str] = set()

    def add(self, character: str) -> None:
        """Note a character that was printed by its number."""
        if character not in self._told:
            self._waiting[character] = None

    def take(self) -> tuple[InputNote, ...]:
        """Return a note of what is missing and what helps; nothing where all was printed."""
        found = sorted(self._waiting)
        self._waiting.clear()
        if not found:
            return ()
        self._told.update(found)
        named = "".join(found[:_NOTED]) + ("…" if len(found) > _NOTED else "")
        told = Worded(
            "stand on the paper by their Unicode numbers, because no installed TrueType font has them. Install one "
            "(on Debian and Ubuntu: apt-get install fonts-droid-fallback fonts-nanum), or put its file into "
            "{folder}; the same paper as HTML needs none.",
            folder=own_folder(),
        )
        return (InputNote("", "characters", named, told),)


missing_characters: Final = MissingCharacters()
