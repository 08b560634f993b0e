"""A file that a page saves: written off the window's thread, and told once it is there or why it is not."""

from __future__ import annotations

from collections.abc import Callable
from pathlib import Path

from spoutline.gui.jobs import JobKey, Ticket
from spoutline.gui.pages.context import Context, Notify
from spoutline.gui.wording import tr
from spoutline.model.faults import InputFault
from spoutline.whole_files import write_file


def save_aside(
    context: Context,
    key: JobKey,
    path: Path,
    content: Callable[[], bytes],
    *,
    notify: Notify,
    refused: Callable[[Exception], None] | None = None,
    saved: Callable[[], str] | None = None,
) -> None:
    """Write what ``content`` returns into a file; see ``save_made_aside``."""
    save_made_aside(context, key, path, lambda _: content(), notify=notify, refused=refused, saved=saved)


def save_made_aside(
    context: Context,
    key: JobKey,
    path: Path,
    content: Callable[[Ticket], bytes],
    *,
    notify: Notify,
    refused: Callable[[Exception], None] | None = None,
    saved: Callable[[], str] | None = None,
) -> None:
    """Write what ``content`` returns into a file; a failure leaves a file that was there.

    Parameters
    ----------
    context, key
        Whose worker writes it, and under which name: the next file of a page waits for the one before.
    path, content
        The file, and what makes it of the job's ticket. It is made by the worker, so it must not touch the window.
    notify
        Tells that it is saved.
    refused
        Hears a fault; without it ``notify`` tells the reason.
    saved
        Called once the file is there, on the window's thread; what it returns is told in place of the usual words.
    """

    def tell(fault: Exception) -> None:
        reason = fault.problems[0].wanted if isinstance(fault, InputFault) else fault
        notify(tr("Nothing was saved: {reason}").format(reason=reason))

    context.jobs.start(
        key,
        lambda ticket: write_file(path, content(ticket)),
        lambda _: notify(saved() if saved is not None else tr("Saved as {path}").format(path=path)),
        refused or tell,
    )
