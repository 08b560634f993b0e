"""The composition root: settings in, one `Workbench` out that the window, the command line and the tests call."""

from __future__ import annotations

from spoutline.bootstrap.demos import DEFAULT_DEMO
from spoutline.bootstrap.settings import Settings
from spoutline.bootstrap.workbench import Workbench, open_workbench

__all__ = ["DEFAULT_DEMO", "Settings", "Workbench", "open_workbench"]
