"""A long call that knows no way to be stopped, waited for by somebody who may stop."""

from __future__ import annotations

import threading
from collections.abc import Callable
from concurrent.futures import Future
from typing import TypeVar

from spoutline.model.faults import Cancelled

_ASKED_EVERY_S = 0.1
_ResultT = TypeVar("_ResultT")


def waited_for(call: Callable[[], _ResultT], should_stop: Callable[[], bool]) -> _ResultT:
    """Return what ``call`` returns, or raise what it raises; ``should_stop`` is asked while it runs.

    The call runs in a thread of its own. One that is given up runs on unheard until it ends by itself, so it needs a
    time limit of its own; it does not keep the program from ending.

    Raises
    ------
    Cancelled
        If ``should_stop`` says so before the call has ended.
    """
    result: Future[_ResultT] = Future()

    def run() -> None:
        try:
            result.set_result(call())
        except BaseException as fault:  # whatever it is, it belongs to the one who waits
            result.set_exception(fault)

    threading.Thread(target=run, name="waited for", daemon=True).start()
    while True:
        try:
            return result.result(timeout=_ASKED_EVERY_S)
        except TimeoutError:
            if result.done():
                return result.result()
            if should_stop():
                raise Cancelled from None
