"""The program's entry: the window without a command, the command line with one."""

from __future__ import annotations

import gc
import os
import sys
from typing import TYPE_CHECKING, Final

if TYPE_CHECKING:
    from spoutline.bootstrap import Workbench
    from spoutline.bootstrap.preferences import OpenWith
    from spoutline.model.survey import Survey


# read by libraries while they load: no plugins of pydantic are looked for among all packages that are installed, and
# numpy, whose matrix products are not used, starts no threads for them
_SETTINGS: Final = {"PYDANTIC_DISABLE_PLUGINS": "__all__", "OPENBLAS_NUM_THREADS": "1"}
_GARBAGE_OF_A_WINDOW: Final = gc.get_threshold()
# of a command, most of whose objects live until it ends: a short one, which loads and plans with some 250,000, never
# looks for any
GARBAGE_OF_A_COMMAND: Final = (400_000, 20, 50)
_QT: Final = "PySide6"


def main() -> int:
    """Run the program on the process's arguments and return its exit code."""
    for name, value in _SETTINGS.items():
        os.environ.setdefault(name, value)
    if getattr(sys, "frozen", False):  # a worker starts the program anew, and is no command
        from multiprocessing import freeze_support

        freeze_support()
    gc.set_threshold(*GARBAGE_OF_A_COMMAND)
    try:
        from spoutline.cli.main import run

        return run(sys.argv[1:], open_window)
    except KeyboardInterrupt:  # while the program was still starting
        sys.stderr.write("\nspoutline: stopped\n")
        return 130
    finally:
        if _QT not in sys.modules:  # whose objects know an order in which they go
            gc.freeze()  # nothing is looked through for garbage at the end, which takes a fifth of a short command


def open_window(
    workbench: Workbench, survey: Survey | None, trouble: str = "", open_with: OpenWith | None = None
) -> int:
    """Open the window, which tells of ``trouble``; on what is preferred where neither ``survey`` nor a view is named.

    Where none can open, say why and how the command line does the job, and return 2.
    """
    from spoutline.cli.display_server import COMMAND_LINE_FORM, reason_against_window
    from spoutline.cli.exit_code import ExitCode

    reason = reason_against_window(os.environ)
    if reason is not None:
        sys.stderr.write(f"spoutline: no window can open. {reason}\n{COMMAND_LINE_FORM}")
        return ExitCode.BAD_INPUT
    gc.disable()  # while the window loads; then it is collected from Qt's loop, by these thresholds
    gc.set_threshold(*_GARBAGE_OF_A_WINDOW)
    from spoutline.gui.plain_imports import leave_sources_unread

    leave_sources_unread()
    from spoutline.gui.window.start import run

    return run(lambda: workbench, survey, [sys.argv[0]], workbench.language, trouble, open_with=open_with)


if __name__ == "__main__":
    sys.exit(main())
