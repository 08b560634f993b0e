"""Imports without a search of each module's source.

PySide reads the whole source of every module that is imported after it, to learn whether the module uses PySide: only
there can a module switch to other names of Qt's methods (``from __feature__ import snake_case``). No module here does,
and reading some eight hundred sources takes a tenth of the window's start. Where a program is frozen there are no
sources, and PySide takes every module as one that switches nothing: the same is told to it here.
"""

from __future__ import annotations

import sys
from types import ModuleType

import PySide6.QtCore  # noqa: F401 - loads what searches

_SEARCHING, _SEARCH = "shibokensupport.feature", "_mod_uses_pyside"


def leave_sources_unread() -> None:
    """Search no source from here on; where this version of PySide searches otherwise, nothing is changed."""
    searching = sys.modules.get(_SEARCHING)
    if searching is not None and hasattr(searching, _SEARCH):
        setattr(searching, _SEARCH, _switches_nothing)


def _switches_nothing(_module: ModuleType) -> bool:
    return False
