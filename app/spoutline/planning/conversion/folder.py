"""All surveys of a folder converted side by side, one process for each core; a survey that fails stops no other."""

from __future__ import annotations

import multiprocessing
import os
import signal
from collections.abc import Callable, Iterator, Sequence
from concurrent.futures import FIRST_COMPLETED, Future, ProcessPoolExecutor, wait
from concurrent.futures.process import BrokenProcessPool
from pathlib import Path
from typing import Protocol

from spoutline.book.survey_text import read_survey
from spoutline.model.conversion import SiteConversion
from spoutline.model.faults import InputFault, InputProblem, StoreFault
from spoutline.model.programme import SiteOutcome, SiteResult
from spoutline.model.survey import Survey
from spoutline.planning.conversion.programme import site_result
from spoutline.planning.protocols import Progress

_WAIT_SECONDS = 0.2  # how long a request to stop may go unnoticed
_BATCHES_PER_PROCESS = 8
_MOST_IN_BATCH = 25


class Converter(Protocol):
    """Converts one site after another, wired to stores of its own."""

    def close(self) -> None:
        """Close the stores that it was opened over."""
        ...

    def remember_positions(self) -> None:
        """Remember conversions of positions from here on."""
        ...

    def convert_shown(self, survey: Survey) -> tuple[SiteConversion, tuple[str, ...]]:
        """Return the conversion of a site to the sets that its papers show, and notes; raise ``InputFault``."""
        ...


OpenConverter = Callable[[], Converter]
_converter: Converter | None = None  # one for each worker process, opened at its start


def surveys_of(folder: Path) -> tuple[Path, ...]:
    """Return the survey files of a folder, sorted; raise ``InputFault`` where there is none."""
    if not folder.is_dir():
        raise InputFault((InputProblem("", "folder", f"'{folder}'", "name a folder that holds surveys in JSON"),))
    found = tuple(sorted(folder.glob("*.json")))
    if not found:
        raise InputFault((InputProblem("", "folder", f"'{folder}'", "it holds no survey: put *.json files there"),))
    return found


def convert_files(
    paths: Sequence[Path],
    open_converter: OpenConverter,
    progress: Progress | None = None,
    *,
    processes: int | None = None,
) -> tuple[tuple[SiteResult, ...], bool]:
    """Convert the surveys of files over several processes.

    Parameters
    ----------
    paths
        Survey files.
    open_converter
        Opens the use cases in a worker; must be picklable.
    progress
        Told after each batch; may ask to stop.
    processes
        Worker processes; None takes one for each core, 1 works in this process.

    Returns
    -------
    results, stopped
        Results of all surveys looked at, in the order of ``paths``; and whether the run was stopped before the end.
    """
    count = min(processes or os.cpu_count() or 1, max(len(paths), 1))
    worked = (
        _in_this_process(paths, open_converter, progress)
        if count == 1
        else _over(paths, open_converter, progress, count)
    )
    found = dict(worked)
    results = tuple(found[index] for index in sorted(found))
    return results, len(results) < len(paths)


def _in_this_process(
    paths: Sequence[Path], open_converter: OpenConverter, progress: Progress | None
) -> Iterator[tuple[int, SiteResult]]:
    converter = open_converter()
    converter.remember_positions()
    try:
        for index, path in enumerate(paths):
            if progress is not None:
                progress.on_progress(index, len(paths))
                if progress.should_stop():
                    return
            yield index, _converted(path, converter)
    finally:
        converter.close()
    if progress is not None:
        progress.on_progress(len(paths), len(paths))


def _over(
    paths: Sequence[Path], open_converter: OpenConverter, progress: Progress | None, count: int
) -> Iterator[tuple[int, SiteResult]]:
    size = max(1, min(_MOST_IN_BATCH, len(paths) // (count * _BATCHES_PER_PROCESS)))
    batches = [tuple(enumerate(paths))[start : start + size] for start in range(0, len(paths), size)]
    # spawned workers share nothing with a window or its threads
    pool = ProcessPoolExecutor(
        count, mp_context=multiprocessing.get_context("spawn"), initializer=_open, initargs=(open_converter,)
    )
    try:
        waiting: set[Future[list[tuple[int, SiteResult]]]] = {pool.submit(_batch, batch) for batch in batches}
        done = 0
        while waiting:
            if progress is not None:
                progress.on_progress(done, len(paths))
                if progress.should_stop():
                    return
            finished, waiting = wait(waiting, timeout=_WAIT_SECONDS, return_when=FIRST_COMPLETED)
            for future in finished:
                found = future.result()
                done += len(found)
                yield from found
        if progress is not None:
            progress.on_progress(done, len(paths))
    except BrokenProcessPool as fault:
        raise StoreFault("A worker process ended before its work was done; start the program again.") from fault
    finally:
        pool.shutdown(wait=True, cancel_futures=True)


def _open(open_converter: OpenConverter) -> None:
    global _converter  # noqa: PLW0603  (a worker process has one converter for its whole life)
    signal.signal(signal.SIGINT, signal.SIG_IGN)  # the process that the person started ends the work
    _converter = open_converter()
    _converter.remember_positions()


def _batch(batch: tuple[tuple[int, Path], ...]) -> list[tuple[int, SiteResult]]:
    if _converter is None:
        raise StoreFault("A worker process has not been opened.")
    return [(index, _converted(path, _converter)) for index, path in batch]


def _converted(path: Path, converter: Converter) -> SiteResult:
    """Convert one file; what is wrong with it is its result, so that the others go on."""
    name = path.stem
    try:
        survey = read_survey(path)
        name = survey.site.name
        return site_result(converter.convert_shown(survey)[0], path.name)
    except (InputFault, StoreFault) as fault:
        return SiteResult(place=path.name, name=name, outcome=SiteOutcome.FAULT, message=str(fault))
