"""The outlet of a row: a size may name the thread, a thread may rule out the size before, a path may not fit either."""

from __future__ import annotations

from collections.abc import Iterator, Mapping

from spoutline.frozen import frozen
from spoutline.model.port import FlowPath, ThreadStandard
from spoutline.model.port_sizes import path_of_thread, sizes_of, thread_named, understood_words
from spoutline.model.survey import Outlet
from spoutline.model.worded import Worded

THREAD, SIZE, PATH = "outlet.thread", "outlet.size", "outlet.path"


@frozen
class OutletNote:
    """Something to be told at the cell of a field: how it was understood, or that no set can come of it."""

    field: str
    value: str
    told: str


def settle_outlet(document: dict[str, object], written: Mapping[str, str]) -> None:
    """Make thread and size of a position's document agree as far as the written cells leave one of them open.

    A size that names its thread (``1 G``) answers for it where no cell does. A new thread takes away a size that it
    does not have, unless a cell holds the size: that one is judged, never dropped.
    """
    outlet = document.get("outlet")
    if not isinstance(outlet, dict):
        return
    named = thread_named(written.get(SIZE, ""))
    if named is not None and THREAD not in written:
        outlet["thread"] = named.value
    thread = outlet.get("thread")
    if SIZE not in written and thread in list(ThreadStandard) and outlet.get("size") not in sizes_of(thread):
        outlet.pop("size", None)


def outlet_notes(outlet: Outlet, written: Mapping[str, str]) -> Iterator[OutletNote]:
    """Yield what a person should know about the outlet that came of the written cells (field to text)."""
    size, thread = written.get(SIZE), outlet.thread
    if size is not None and size.strip() != outlet.size:
        yield OutletNote(
            SIZE,
            repr(size),
            Worded("was read as {understood_words}", understood_words=understood_words(outlet.size, thread)),
        )
    carried = path_of_thread(thread)
    at = next((field for field in (PATH, THREAD, SIZE) if field in written), None)
    if at is not None and outlet.path is not carried:
        told = Worded(
            "thread and path contradict each other: {thread} carries the path {words}",
            thread=thread,
            words=_words(carried),
        )
        yield OutletNote(
            at,
            repr(written[at]),
            Worded(
                "({thread}, path {words}): {told}; no set will fit", thread=thread, words=_words(outlet.path), told=told
            ),
        )


def _words(path: FlowPath) -> str:
    return path.value.replace("_", " ")
