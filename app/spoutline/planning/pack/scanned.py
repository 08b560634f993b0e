"""The survey and position that a scanned code of a position sheet names."""

from __future__ import annotations

from spoutline.book.book import Book
from spoutline.book.records import StoredSurvey
from spoutline.frozen import frozen
from spoutline.model.faults import InputFault, InputProblem
from spoutline.model.position_tag import tag_from_text
from spoutline.model.worded import Worded
from spoutline.planning.sets.plan_site import fingerprint_of


@frozen(kw_only=True)
class FoundPosition:
    """A survey of the book that holds the position of a code; ``is_as_printed`` where it has not changed since."""

    stored: StoredSurvey
    position: str
    is_as_printed: bool


def scanned_position(code: str, book: Book) -> FoundPosition:
    """Return the survey and position that a scanned code names; one that is as printed goes before a changed one.

    Raises
    ------
    InputFault
        The text is no code of a position sheet, or the book has no such site or position.
    """
    tag = tag_from_text(code)
    found: list[FoundPosition] = []
    for entry in book.entries():
        if entry.name != tag.site:
            continue
        stored = book.stored(entry.id)
        if stored.survey.position(tag.position) is not None:
            same = fingerprint_of(stored.survey) == tag.revision
            found.append(FoundPosition(stored=stored, position=tag.position, is_as_printed=same))
    if not found:
        wanted = Worded(
            "the book holds no survey of {site!r} with the position {position!r}", site=tag.site, position=tag.position
        )
        raise InputFault((InputProblem("", "code", repr(code[:80]), wanted),))
    return next((one for one in found if one.is_as_printed), found[0])
