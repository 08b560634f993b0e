"""Whether a window can open here, found out before Qt is loaded: Qt itself would end the program without a word."""

from __future__ import annotations

import ctypes
import os
import socket
import sys
from collections.abc import Mapping
from importlib.util import find_spec
from pathlib import Path

_WITHOUT_DISPLAY = ("offscreen", "minimal", "vnc", "linuxfb", "eglfs")
_TIMEOUT_S = 3.0

COMMAND_LINE_FORM = (
    "The command line does the same job without a window:\n"
    "  spoutline demo small_town --out station.json\n"
    "  spoutline plan station.json\n"
    "  spoutline bill station.json --pdf bill.pdf\n"
)


def reason_against_window(environment: Mapping[str, str], platform: str = sys.platform) -> str | None:
    """Return why no window can open, as a sentence; None where nothing speaks against one.

    Arguments: the environment variables; the platform as ``sys.platform`` names it.
    """
    if find_spec("PySide6") is None:
        return "The window needs the package PySide6-Essentials, which is not installed."
    if platform in ("win32", "darwin") or environment.get("QT_QPA_PLATFORM", "").split(":")[0] in _WITHOUT_DISPLAY:
        return None
    if environment.get("WAYLAND_DISPLAY"):
        return None
    name = environment.get("DISPLAY", "")
    if not name:
        return "There is no display here (neither DISPLAY nor WAYLAND_DISPLAY is set)."
    if not _answers(name):
        return f"The display {name} does not answer."
    return _missing_library()


def _answers(display: str) -> bool:
    """Say whether an X server listens at ``display``, written ``host:number.screen``; an empty host is this machine."""
    host, _, numbers = display.rpartition(":")
    number = numbers.partition(".")[0]
    if not number.isdigit():
        return False
    # X.Org's convention: display n listens on the socket X<n>, or on TCP port 6000 + n.
    try:
        if host in ("", "unix"):
            if os.path.exists(f"/tmp/.X11-unix/X{number}"):  # noqa: S108, PTH110  (the server's own fixed place)
                return _connects(socket.AF_UNIX, f"/tmp/.X11-unix/X{number}")  # noqa: S108
            return _connects(socket.AF_UNIX, f"\0/tmp/.X11-unix/X{number}")
        with socket.create_connection((host, 6000 + int(number)), timeout=_TIMEOUT_S):
            return True
    except OSError:
        return False


def _connects(family: int, address: str) -> bool:
    with socket.socket(family, socket.SOCK_STREAM) as probe:
        probe.settimeout(_TIMEOUT_S)
        return probe.connect_ex(address) == 0


def _missing_library() -> str | None:
    """Return which system library Qt's X11 plugin lacks; None where it loads."""
    spec = find_spec("PySide6")
    for folder in spec.submodule_search_locations or () if spec else ():
        plugin = Path(folder) / "Qt" / "plugins" / "platforms" / "libqxcb.so"
        if plugin.is_file():
            try:
                ctypes.CDLL(str(plugin))
            except OSError as fault:
                return (
                    f"A system library that the window needs is missing ({fault}). On Debian and Ubuntu this installs "
                    "all of them: apt-get install --no-install-recommends libgl1 libegl1 libglib2.0-0 libdbus-1-3 "
                    "libfontconfig1 libxkbcommon0 libxcb-cursor0 libxcb-icccm4 libxcb-keysyms1 libxcb-shape0 "
                    "libxkbcommon-x11-0"
                )
    return None
