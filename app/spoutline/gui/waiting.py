"""A call to a store from the window's thread: done on another thread while the window goes on painting."""

from __future__ import annotations

import threading
from collections.abc import Callable
from typing import Generic, TypeVar

from PySide6.QtCore import QCoreApplication, QEventLoop, Qt, QTimer
from PySide6.QtWidgets import QApplication, QProgressDialog

from spoutline.gui.wording import tr
from spoutline.model.faults import StoreFault

ValueT = TypeVar("ValueT")

_AT_ONCE_S = 0.03  # an answer within two frames of the screen needs no loop of events
_POLL_MS = 15
_SHOWN_AFTER_MS = 400


class _Call(Generic[ValueT]):
    """One call on a thread of its own, with its value or what it raised.

    It holds nothing of Qt: whichever thread lets go of it last, no object of the window is deleted there.
    """

    def __init__(self, work: Callable[[], ValueT]) -> None:
        self._work: Callable[[], ValueT] | None = work
        self.value: ValueT | None = None
        self.fault: BaseException | None = None
        self.done = threading.Event()
        # a daemon: a server that never answers must not keep the program from ending
        threading.Thread(target=self._run, name="store call", daemon=True).start()

    def _run(self) -> None:
        work = self._work
        assert work is not None  # noqa: S101  (set until it has run)
        try:
            self.value = work()
        except BaseException as fault:  # raised again where it was asked for
            self.fault = fault
        self._work = None
        del work  # what it closes over may be part of the window
        self.done.set()


def wait_for(work: Callable[[], ValueT]) -> ValueT:
    """Return the value of ``work``, done on another thread; raise what it raises.

    The window paints meanwhile and takes no input. What lasts shows that the book is waited for and can be given up:
    ``StoreFault`` then, and whether the book took it is unknown.
    """
    call = _Call(work)
    if not call.done.wait(_AT_ONCE_S) and not _waited(call):
        raise StoreFault(tr("The book did not answer and was waited for no longer. Look whether the step was taken."))
    if call.fault is not None:
        raise call.fault
    return call.value  # type: ignore[return-value]  # set where nothing was raised


def _waited(call: _Call[ValueT]) -> bool:
    """Run events until the call is done or the person gives up; say which."""
    if QCoreApplication.instance() is None:
        call.done.wait()
        return True
    loop = QEventLoop()
    poll = QTimer()
    poll.timeout.connect(lambda: loop.quit() if call.done.is_set() else None)
    poll.start(_POLL_MS)
    QTimer.singleShot(_SHOWN_AFTER_MS, loop, loop.quit)
    loop.exec(QEventLoop.ProcessEventsFlag.ExcludeUserInputEvents)
    if call.done.is_set():
        return True
    dialog = QProgressDialog(tr("Waiting for the book…"), tr("Wait no &longer"), 0, 0, QApplication.activeWindow())
    dialog.setWindowTitle("Spoutline")
    dialog.setWindowModality(Qt.WindowModality.ApplicationModal)
    dialog.setMinimumDuration(0)
    dialog.canceled.connect(loop.quit)
    dialog.show()
    while not call.done.is_set() and not dialog.wasCanceled():
        loop.exec()
    dialog.canceled.disconnect(loop.quit)
    dialog.close()
    return call.done.is_set()
