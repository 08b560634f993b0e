"""How the sizes in a survey's document were understood, where they are not written as their thread writes them."""

from __future__ import annotations

from collections.abc import Iterator, Mapping

from spoutline.model.faults import InputNote
from spoutline.model.installed import InstalledPort
from spoutline.model.port_sizes import understood_words
from spoutline.model.survey import Outlet, Survey
from spoutline.model.worded import Worded


def size_notes(document: Mapping[str, object], survey: Survey, place: str) -> tuple[InputNote, ...]:
    """Return one note for each size of ``survey`` that ``document``, from which it was read, writes in another way.

    Arguments: ``document`` is the JSON object, ``place`` the file or source named in each note.
    """
    notes = []
    for path, port in _ports(survey):
        written = _at(document, (*path, "size"))
        if isinstance(written, str) and written != port.size:
            notes.append(InputNote(place, _words((*path, "size")), repr(written), read_as(port)))
    return tuple(notes)


def read_as(port: Outlet | InstalledPort) -> str:
    """Return how the size of a port was understood, as the end of a note."""
    return Worded("was read as {understood_words}", understood_words=understood_words(port.size, port.thread))


def _ports(survey: Survey) -> Iterator[tuple[tuple[str | int, ...], Outlet | InstalledPort]]:
    for place, position in enumerate(survey.positions):
        yield ("positions", place, "outlet"), position.outlet
        for index, part in enumerate(position.installed):
            at = ("positions", place, "installed", index, "figures")
            if part.figures is not None:
                yield (*at, "inlet"), part.figures.inlet
                if part.figures.outlet is not None:
                    yield (*at, "outlet"), part.figures.outlet


def _at(document: object, path: tuple[str | int, ...]) -> object:
    for step in path:
        if isinstance(step, str):
            document = document.get(step) if isinstance(document, Mapping) else None
        else:
            document = document[step] if isinstance(document, list) else None
    return document


def _words(path: tuple[str | int, ...]) -> str:
    return "".join(f"[{step}]" if isinstance(step, int) else f".{step}" for step in path).removeprefix(".")
