"""The composition root: settings in, one `Workbench` out that the window, the command line and the tests call.

What is named here is loaded when it is first asked for: what only the language is asked of should not load it all.
"""

from __future__ import annotations

from importlib import import_module
from typing import TYPE_CHECKING, Final

if TYPE_CHECKING:
    from spoutline.bootstrap.demos import DEFAULT_DEMO
    from spoutline.bootstrap.settings import Settings
    from spoutline.bootstrap.workbench import Workbench, open_workbench

__all__ = ["DEFAULT_DEMO", "Settings", "Workbench", "open_workbench"]
_MODULES: Final = {
    "DEFAULT_DEMO": "demos",
    "Settings": "settings",
    "Workbench": "workbench",
    "open_workbench": "workbench",
}


def __getattr__(name: str) -> object:
    """Return what is named, its module loaded for it."""
    if name not in _MODULES:
        raise AttributeError(f"module {__name__!r} has no attribute {name!r}")
    return getattr(import_module(f"{__name__}.{_MODULES[name]}"), name)
