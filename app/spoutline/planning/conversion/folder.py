"""All surveys of a folder converted side by side, one process for each core; a survey that fails stops no other."""

from __future__ import annotations

import multiprocessing
import os
import signal
from collections.abc import Callable, Iterator, Sequence
from concurrent.futures import FIRST_COMPLETED, Future, ProcessPoolExecutor, wait
from concurrent.futures.process import BrokenProcessPool
from contextlib import AbstractContextManager
from multiprocessing.synchronize import Event
from pathlib import Path
from typing import Protocol

from spoutline.book.survey_text import read_survey
from spoutline.frozen import frozen
from spoutline.model.conversion import SiteConversion
from spoutline.model.faults import Cancelled, InputFault, InputProblem, StoreFault
from spoutline.model.programme import SiteOutcome, SiteResult
from spoutline.model.survey import Survey
from spoutline.planning.conversion.run_log import RunLog
from spoutline.planning.conversion.site_result import site_result
from spoutline.planning.protocols import Progress
from spoutline.whole_files.environment import files_in

_WAIT_SECONDS = 0.2  # how long a request to stop may go unnoticed
_BATCHES_PER_PROCESS = 8
_MOST_IN_BATCH = 5
_TURNS = 256  # locks over the questions: two that differ rarely wait for each other


class Converter(Protocol):
    """Converts one site after another, wired to stores of its own."""

    def close(self) -> None:
        """Close the stores that it was opened over."""
        ...

    def count_only(self, answers: Path | None = None, turns: Sequence[AbstractContextManager[object]] = ()) -> None:
        """Find what a programme counts from here on; ``answers`` is a file of answers, ``turns`` are locks over it."""
        ...

    def convert_shown(
        self, survey: Survey, choice: str | None = None, progress: Progress | None = None
    ) -> tuple[SiteConversion, tuple[str, ...]]:
        """Return the conversion of a site to the sets that its papers show, and notes.

        Raise ``InputFault``, or ``Cancelled`` where ``progress`` asks to stop.
        """
        ...


OpenConverter = Callable[[], Converter]


def surveys_of(folder: Path) -> tuple[Path, ...]:
    """Return the survey files of a folder, sorted; raise ``InputFault`` where there is none."""
    if not folder.is_dir():
        raise InputFault((InputProblem("", "folder", f"'{folder}'", "name a folder that holds surveys in JSON"),))
    found = tuple(files_in(folder, "*.json"))
    if not found:
        raise InputFault((InputProblem("", "folder", f"'{folder}'", "it holds no survey: put *.json files there"),))
    return found


def convert_files(
    paths: Sequence[Path],
    open_converter: OpenConverter,
    progress: Progress | None = None,
    *,
    processes: int | None = None,
    log: RunLog | None = None,
    answers: Path | None = None,
) -> tuple[tuple[SiteResult, ...], bool]:
    """Convert the surveys of files over several processes.

    Parameters
    ----------
    paths
        Survey files.
    open_converter
        Opens the use cases in a worker; must be picklable.
    progress
        Told of sites as they are done; may ask to stop.
    processes
        Worker processes; None takes one for each core, 1 works in this process.
    log
        What an earlier run has worked out, and where this one writes down what it does; opened by the caller.
    answers
        File in which answers to what positions ask are kept; none is worked out by two processes then.

    Returns
    -------
    results, stopped
        Results of all surveys looked at, in the order of ``paths``; and whether the run was stopped before the end.
    """
    found = log.known(paths) if log is not None else {}
    left = [(index, path) for index, path in enumerate(paths) if index not in found]
    count = min(processes or os.cpu_count() or 1, max(len(left), 1))
    told = _From(progress, len(found), len(paths))
    if count == 1:
        worked = _in_this_process(left, open_converter, told, answers)
    else:
        worked = _over(left, open_converter, told, count, answers)
    for index, result in worked:
        found[index] = result
        if log is not None:
            log.keep(result)
    return tuple(found[index] for index in sorted(found)), len(found) < len(paths)


@frozen
class _From:
    """Tells how far a run is that began with ``known`` of ``total`` sites done."""

    progress: Progress | None
    known: int
    total: int

    def is_to_stop(self, done: int) -> bool:
        """Tell that ``done`` more sites are done, and say whether to stop."""
        if self.progress is None:
            return False
        self.progress.on_progress(self.known + done, self.total)
        return self.known + done < self.total and self.progress.should_stop()

    def on_progress(self, done: int, total: int) -> None:
        """Say nothing of the positions of a site."""

    def should_stop(self) -> bool:
        """Say whether to stop within a site."""
        return self.progress is not None and self.progress.should_stop()


def _in_this_process(
    left: Sequence[tuple[int, Path]], open_converter: OpenConverter, told: _From, answers: Path | None
) -> Iterator[tuple[int, SiteResult]]:
    converter = open_converter()
    converter.count_only(answers)
    try:
        for done, (index, path) in enumerate(left):
            if told.is_to_stop(done):
                return
            result = _converted(path, converter, told)
            if result is None:
                return
            yield index, result
    finally:
        converter.close()
    told.is_to_stop(len(left))


def _over(
    left: Sequence[tuple[int, Path]], open_converter: OpenConverter, told: _From, count: int, answers: Path | None
) -> Iterator[tuple[int, SiteResult]]:
    size = max(1, min(_MOST_IN_BATCH, len(left) // (count * _BATCHES_PER_PROCESS)))
    batches = [tuple(left[start : start + size]) for start in range(0, len(left), size)]
    spawning = multiprocessing.get_context("spawn")  # spawned workers share nothing with a window or its threads
    stop, turns = spawning.Event(), tuple(spawning.Lock() for _ in range(_TURNS))
    pool = ProcessPoolExecutor(
        count, mp_context=spawning, initializer=_open, initargs=(open_converter, answers, turns, stop)
    )
    try:
        waiting: set[Future[list[tuple[int, SiteResult]]]] = {pool.submit(_batch, batch) for batch in batches}
        done = 0
        while waiting:
            if told.is_to_stop(done):
                stop.set()
                break
            finished, waiting = wait(waiting, timeout=_WAIT_SECONDS, return_when=FIRST_COMPLETED)
            for future in finished:
                found = future.result()
                done += len(found)
                yield from found
        pool.shutdown(wait=True, cancel_futures=True)
        yield from (one for future in waiting if not future.cancelled() for one in future.result())
        told.is_to_stop(done)
    except BrokenProcessPool as fault:
        raise StoreFault("A worker process ended before its work was done; start the program again.") from fault
    finally:
        stop.set()
        pool.shutdown(wait=True, cancel_futures=True)


@frozen
class _Worker:
    """What a worker process works with for its whole life."""

    converter: Converter
    stop: Event

    def on_progress(self, done: int, total: int) -> None:
        """Say nothing of the positions of a site."""

    def should_stop(self) -> bool:
        """Say whether the run is to stop."""
        return self.stop.is_set()


_worker: _Worker | None = None


def _open(
    open_converter: OpenConverter, answers: Path | None, turns: Sequence[AbstractContextManager[object]], stop: Event
) -> None:
    global _worker  # noqa: PLW0603  (a worker process has one converter for its whole life)
    signal.signal(signal.SIGINT, signal.SIG_IGN)  # the process that the person started ends the work
    _worker = _Worker(open_converter(), stop)
    _worker.converter.count_only(answers, turns)


def _batch(batch: tuple[tuple[int, Path], ...]) -> list[tuple[int, SiteResult]]:
    """Convert some files; of a run that is stopped meanwhile, those that were done before."""
    if _worker is None:
        raise StoreFault("A worker process has not been opened.")
    found = []
    for index, path in batch:
        result = None if _worker.should_stop() else _converted(path, _worker.converter, _worker)
        if result is None:
            break
        found.append((index, result))
    return found


def _converted(path: Path, converter: Converter, progress: Progress) -> SiteResult | None:
    """Convert one file; what is wrong with it is its result, so that the others go on. None where the run stops."""
    name = path.stem
    try:
        survey = read_survey(path)
        name = survey.site.name
        return site_result(converter.convert_shown(survey, None, progress)[0], path.name)
    except (InputFault, StoreFault) as fault:
        return SiteResult(place=path.name, name=name, outcome=SiteOutcome.FAULT, message=str(fault))
    except Cancelled:
        return None
