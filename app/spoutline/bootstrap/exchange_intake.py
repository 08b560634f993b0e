"""An exchange file taken into the draft of a catalogue, and what it would do there told before."""

from __future__ import annotations

from dataclasses import replace
from pathlib import Path
from typing import TYPE_CHECKING, Final

from spoutline.catalogue.draft import DraftCounts
from spoutline.catalogue.draft_look import DraftLook, look_at
from spoutline.catalogue.exchange_archive import Watch
from spoutline.catalogue.exchange_reader import ExchangeReader
from spoutline.frozen import frozen
from spoutline.model.faults import Cancelled, InputFault

if TYPE_CHECKING:
    from spoutline.catalogue.draft import DraftDesk
    from spoutline.planning.protocols import Progress


_ALL: Final = 100  # percent


@frozen
class ExchangeCounts:
    """What a file does to a draft that keeps its other parts, and to one that holds nothing else afterwards."""

    beside: DraftCounts
    alone: DraftCounts


def look_into(desk: DraftDesk, path: Path, progress: Progress | None = None) -> ExchangeCounts:
    """Return what ``take_in`` would do, both ways, and write nothing; it raises and tells what that does."""
    with ExchangeReader(path, _watch(progress)) as reader:
        beside = DraftLook(desk, desk.families.all() | reader.families)
        same = beside.families == reader.families
        alone = beside if same else DraftLook(desk, reader.families)
        looks = (beside,) if same else (beside, alone)
        look_at(looks, reader.entries())
        _ = reader.references  # read for its faults alone
        for one in reader.price_lists():
            for look in looks:
                look.put_list(one)
        for _content in reader.contents():
            pass
        if reader.problems:
            raise InputFault(tuple(reader.problems))
    told = replace(beside.counts)
    alone.keep_only()
    _tell_end(progress)
    return ExchangeCounts(told, alone.counts)


def take_in(desk: DraftDesk, path: Path, progress: Progress | None = None, *, keep_others: bool) -> DraftCounts:
    """Let a draft hold what an exchange file holds, and nothing else unless it is to ``keep_others``.

    Raise ``InputFault`` with every fault of the file, and ``Cancelled`` where the progress asks to stop; the caller
    takes back what was written until then. The progress counts in percent how much of the file is read.
    """
    with ExchangeReader(path, _watch(progress)) as reader:
        if not keep_others:
            desk.families.keep_only(set(reader.families))
        desk.families.put(reader.families.values())
        desk.put(reader.entries())
        references = reader.references
        names: set[str] = set()
        for one in reader.price_lists():
            desk.price_lists.put((one,))
            names.add(one.id)
        if reader.problems:
            raise InputFault(tuple(reader.problems))
        for file, content in reader.contents():
            desk.keep_file(file, content)
        if not keep_others:
            desk.keep_only(reader.refs)
            desk.references.keep_only(set(references))
            desk.price_lists.keep_only(names)
        desk.references.put(references.values())
    _tell_end(progress)
    return replace(desk.counts, price_lists=desk.price_lists.changed)


def _watch(progress: Progress | None) -> Watch:
    told = -1

    def watch(done: int, total: int) -> None:
        nonlocal told
        if progress is None:
            return
        if progress.should_stop():
            raise Cancelled
        percent = min(_ALL * done // max(1, total), _ALL - 1)  # what follows the reading is the rest
        if percent != told:
            told = percent
            progress.on_progress(percent, _ALL)

    return watch


def _tell_end(progress: Progress | None) -> None:
    if progress is not None:
        if progress.should_stop():
            raise Cancelled
        progress.on_progress(_ALL, _ALL)
