"""What the window shows first: the survey used last, and the units to show it in."""

from __future__ import annotations

from typing import TYPE_CHECKING

from spoutline.bootstrap.demos import demo_survey
from spoutline.model.faults import InputNote

if TYPE_CHECKING:
    from collections.abc import Sequence

    from spoutline.book.records import StoredSurvey, SurveyEntry
    from spoutline.bootstrap import Workbench
    from spoutline.model.survey import Survey
    from spoutline.units.accepted import UnitSystem


def is_first_start(workbench: Workbench) -> bool:
    """Say whether the book holds no survey yet: the window then asks how to begin."""
    return not workbench.book_to_read().entries()


def begin_own(workbench: Workbench, catalogue: str, site: str, *, without_demonstration: bool) -> StoredSurvey:
    """Let the book plan with a catalogue of the person's own and begin the survey of a first site.

    Raise ``InputFault`` for a name that cannot stand; nothing was begun then.
    """
    from spoutline.gui.edits.positions import new_survey

    survey = new_survey(site, workbench.usual_jurisdiction())
    workbench.catalogues().begin(catalogue, without_demonstration=without_demonstration)
    return workbench.book().create(survey)


def survey_to_show(workbench: Workbench, survey: Survey | None) -> StoredSurvey:
    """Return the survey to start with, put into the book if it is not there yet."""
    from spoutline.book.records import SettingName

    if survey is not None:
        # started twice with the same file: go on where it was
        return workbench.book().equal_to(survey) or workbench.book().create(survey)
    book = workbench.book_to_read()
    entries = book.entries()
    if not entries:
        return workbench.book().create(demo_survey())
    last = book.setting(SettingName.LAST_SURVEY)
    return _first_readable(workbench, sorted(entries, key=lambda entry: str(entry.id) != last))


def _first_readable(workbench: Workbench, entries: Sequence[SurveyEntry]) -> StoredSurvey:
    """Return the first survey that can be read; of those before it the notes of the book tell.

    Where none can be read, the ready station is shown: whoever wants the others repaired needs a window that opens.
    """
    from spoutline.book.stored_documents import UnreadableDocument

    for entry in entries:
        try:
            return workbench.book_to_read().stored(entry.id)
        except UnreadableDocument as fault:
            told = f"needs repair and was not opened. {fault}"
            workbench.book().reading_notes.add([InputNote("", f"survey {entry.id}", f"“{entry.name}”", told)])
    demo, book = demo_survey(), workbench.book()
    return book.equal_to(demo) or book.create(demo)


def units_to_show(remembered: str | None, usual: UnitSystem) -> UnitSystem:
    """Return the unit system used last; at the first start the one ``usual`` where the site lies."""
    from spoutline.units.accepted import UnitSystem

    if remembered in tuple(UnitSystem):
        return UnitSystem(str(remembered))
    return usual
