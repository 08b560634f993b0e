"""An exchange file taken into the draft of a catalogue, and what it would do there told before."""

from __future__ import annotations

from dataclasses import replace
from pathlib import Path
from typing import TYPE_CHECKING, Final

from spoutline.catalogue.draft import DraftCounts, in_chunks
from spoutline.catalogue.draft_look import DraftLook, look_at
from spoutline.catalogue.exchange_archive import Watch
from spoutline.catalogue.exchange_reader import ExchangeReader
from spoutline.catalogue.list_store import list_text
from spoutline.catalogue.set_aside import SetAside
from spoutline.frozen import frozen
from spoutline.model.faults import Cancelled, InputFault, InputProblem

if TYPE_CHECKING:
    from spoutline.catalogue.draft import DraftDesk
    from spoutline.catalogue.shelf import CatalogueShelf
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


def take_in(
    shelf: CatalogueShelf, name: str, path: Path, progress: Progress | None = None, *, keep_others: bool
) -> DraftCounts:
    """Let the draft of a catalogue hold what an exchange file holds, and nothing else unless it is to ``keep_others``.

    The file is read and checked to its end before anything is written: others can write to the book meanwhile. Raise
    ``InputFault`` with every fault of the file, or where somebody changed the draft meanwhile, and ``Cancelled`` where
    the progress asks to stop; nothing changed then. The progress counts in percent how much of the file is read.
    """
    with SetAside() as entries, SetAside() as lists, ExchangeReader(path, _watch(progress)) as reader:
        with shelf.looking(name) as desk:
            stamp, families = desk.stamp(), reader.families
            if keep_others:
                families = desk.families.all() | families
            for chunk in in_chunks(reader.entries()):
                for prepared in desk.prepared(chunk, families):
                    entries.add(prepared)
        references = reader.references
        for one in reader.price_lists():
            lists.add((one.id, list_text(one)))
        if reader.problems:
            raise InputFault(tuple(reader.problems))
        for _content in reader.contents():
            pass  # checked
        with shelf.draft(name) as desk:
            if desk.stamp() != stamp:
                wanted = "somebody changed its draft while the file was read: look at it, then import the file again"
                raise InputFault((InputProblem("", "catalogue", repr(name), wanted),))
            _begin(progress)
            desk.families.keep_only(set(families))
            desk.families.put(families.values())
            for rows in in_chunks(entries):
                _begin(progress)
                desk.put_prepared(rows)
            for list_name, text in lists:
                desk.price_lists.put_text(list_name, text)
            for file, content in reader.contents():
                desk.keep_file(file, content)
            if not keep_others:
                desk.keep_only(reader.refs)
                desk.references.keep_only(set(references))
                desk.price_lists.keep_only({list_name for list_name, _text in lists})
            desk.references.put(references.values())
            _tell_end(progress)
            return replace(desk.counts, price_lists=desk.price_lists.changed)


def _begin(progress: Progress | None) -> None:
    """Raise ``Cancelled`` where no further step is to be begun."""
    if progress is not None and progress.should_stop():
        raise Cancelled


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
    _begin(progress)
    if progress is not None:
        progress.on_progress(_ALL, _ALL)
