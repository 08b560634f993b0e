"""HiGHS in a process of its own: it ends as soon as somebody stops, takes bounded memory, and prints nothing.

scipy hands on no call from within HiGHS, which would run on for minutes in a thread that nobody waits for any more; and
HiGHS writes some lines to the output of its process whatever it is told. The process is kept for the next program.
"""

from __future__ import annotations

import contextlib
import math
import multiprocessing
import os
import signal
import sys
import threading
from collections.abc import Callable, Iterator
from multiprocessing import resource_tracker
from multiprocessing.connection import Connection
from multiprocessing.process import BaseProcess

import numpy as np

from spoutline.frozen import frozen
from spoutline.model.faults import Cancelled, StoreFault
from spoutline.model.part_columns import Floats, Ints
from spoutline.model.worded import Worded
from spoutline.planning.refit.waiting import waited_for

_MOST_MEMORY = 4 << 30  # bytes of addresses, of which some hundred megabytes are taken by libraries
_ASKED_EVERY_S = 0.1
_PROVED = 0  # status of scipy.optimize.milp
_OUT_OF_NODES = "Solution limit reached"  # how HiGHS says so, in a message: scipy has no status for it


@frozen
class Program:
    """A mixed-integer program: the least sum of ``costs`` over columns from 0 to ``upper``.

    ``rows``, ``columns`` and ``values`` are the entries of the rows, which lie between ``low`` and ``high``; ``whole``
    is 1 for a column of whole numbers.
    """

    costs: Floats
    upper: Floats
    whole: Ints
    rows: Ints
    columns: Ints
    values: Floats
    low: Floats
    high: Floats
    node_limit: int


@frozen
class Solved:
    """The best solution found, None for none, and what none costs less than; ``fault`` says why it is none at all."""

    solution: Floats | None
    is_proved: bool
    floor: float
    nodes: int
    fault: str = ""


def solved_by_highs(program: Program, should_stop: Callable[[], bool]) -> Solved | None:
    """Return what HiGHS finds; None where it would take more memory than it may.

    ``should_stop`` is asked several times a second.

    Raises
    ------
    Cancelled
        If ``should_stop`` says so; HiGHS has ended then.
    StoreFault
        scipy is missing, or HiGHS finds the program faulty.
    """
    worker = _worker()
    found = waited_for(lambda: _solved(program), should_stop) if worker is None else worker.asked(program, should_stop)
    if found is not None and found.fault:
        raise StoreFault(Worded("The common sets of the station could not be found: {reason}", reason=found.fault))
    return found


def _solved(program: Program) -> Solved:
    try:
        from scipy.optimize import Bounds, LinearConstraint, milp
        from scipy.sparse import csr_array
    except ImportError as fault:
        raise StoreFault(
            Worded("Commonality needs the package scipy, which cannot be loaded: {reason}", reason=fault)
        ) from fault
    shape = len(program.low), len(program.costs)
    matrix = csr_array((program.values, (program.rows, program.columns)), shape=shape)
    solved = milp(
        program.costs,
        constraints=LinearConstraint(matrix, program.low, program.high),
        integrality=program.whole,
        bounds=Bounds(0.0, program.upper),
        options={"mip_rel_gap": 0.0, "node_limit": program.node_limit},
    )
    is_proved = solved.status == _PROVED
    floor = -math.inf if solved.mip_dual_bound is None else float(solved.mip_dual_bound)
    return Solved(
        solution=None if solved.x is None else np.asarray(solved.x),
        is_proved=is_proved,
        floor=floor,
        nodes=int(solved.mip_node_count or 0),
        fault="" if is_proved or _OUT_OF_NODES in solved.message else solved.message,
    )


class _Worker:
    """The process and the line to it."""

    def __init__(self) -> None:
        spawning = multiprocessing.get_context("spawn")  # shares nothing with a window or its threads
        self._line, far_end = spawning.Pipe()
        self.process: BaseProcess = spawning.Process(target=_serve, args=(far_end,), name="solver", daemon=True)
        with _no_interrupt():
            self.process.start()
        far_end.close()

    def asked(self, program: Program, should_stop: Callable[[], bool]) -> Solved | None:
        """Return the answer, and keep the process for the next program; it ends with whatever is no answer."""
        is_done = False
        try:
            self._line.send(program)
            while not self._line.poll(_ASKED_EVERY_S):
                if should_stop():
                    raise Cancelled
            found: Solved | StoreFault = self._line.recv()
            is_done = True
        except (EOFError, OSError):  # it ended by itself, as what asks for too much memory does
            return None
        finally:
            if is_done:
                _keep(self)
            else:
                self.end()
        if isinstance(found, StoreFault):
            raise found
        return found

    def end(self) -> None:
        """End the process, whatever it does."""
        self.process.kill()
        self.process.join()
        self._line.close()


@contextlib.contextmanager
def _no_interrupt() -> Iterator[None]:
    """Hold Ctrl-C back while a process is started, which then never hears of it; who starts it hears of it afterwards.

    A terminal sends it to all processes, and one that still loads its modules would end with a traceback.
    """
    if sys.platform == "win32":
        yield
        return
    with _heard_afterwards():
        resource_tracker.ensure_running()  # it would let the signal through where it is started with the process
        before = signal.pthread_sigmask(signal.SIG_BLOCK, {signal.SIGINT})
        try:
            yield
        finally:
            signal.pthread_sigmask(signal.SIG_SETMASK, before)


@contextlib.contextmanager
def _heard_afterwards() -> Iterator[None]:
    """Answer Ctrl-C at the end alone: a library's thread may take what is blocked in this one, and interrupt it here.

    Python answers in its main thread, so that nothing is to be done in any other.
    """
    answer = signal.getsignal(signal.SIGINT)
    if answer is None or threading.current_thread() is not threading.main_thread():
        yield
        return
    heard: list[int] = []
    signal.signal(signal.SIGINT, lambda number, _: heard.append(number))
    try:
        yield
    finally:
        signal.signal(signal.SIGINT, answer)
        if heard:
            signal.raise_signal(signal.SIGINT)


_turns = threading.Lock()
_idle: list[_Worker] = []  # one at most


def _worker() -> _Worker | None:
    """Return the process that is kept, or else a new one; None where none can be started."""
    with _turns:
        if _idle:
            return _idle.pop()
    try:
        return _Worker()
    except OSError:
        return None


def _keep(worker: _Worker) -> None:
    with _turns:
        if not _idle:
            _idle.append(worker)
            return
    worker.end()


def _serve(line: Connection) -> None:
    """Solve what comes over the line, until it is closed."""
    signal.signal(signal.SIGINT, signal.SIG_IGN)  # who asks is stopped, and ends this process
    nowhere = os.open(os.devnull, os.O_WRONLY)
    for output in (1, 2):
        os.dup2(nowhere, output)
    _bound_memory()
    threading.Thread(target=_end_with_parent, name="parent", daemon=True).start()
    with contextlib.suppress(EOFError, OSError):
        while True:
            program = line.recv()
            try:
                line.send(_solved(program))
            except StoreFault as fault:
                line.send(fault)


def _end_with_parent() -> None:
    """End the process, whatever it does, once the one that asks has ended in any way."""
    parent = multiprocessing.parent_process()
    if parent is not None:
        parent.join()
        os._exit(0)


def _bound_memory() -> None:
    if sys.platform != "win32":
        import resource

        with contextlib.suppress(ValueError, OSError):
            resource.setrlimit(resource.RLIMIT_AS, (_MOST_MEMORY, resource.getrlimit(resource.RLIMIT_AS)[1]))
