"""What the window shows first: the survey used last, and the units to show it in."""

from __future__ import annotations

from typing import TYPE_CHECKING

from spoutline.bootstrap.demos import demo_survey

if TYPE_CHECKING:
    from spoutline.book.records import StoredSurvey
    from spoutline.bootstrap import Workbench
    from spoutline.model.survey import Survey
    from spoutline.units.accepted import UnitSystem


def survey_to_show(workbench: Workbench, survey: Survey | None) -> StoredSurvey:
    """Return the survey to start with, put into the book if it is not there yet."""
    from spoutline.book.records import SettingName

    entries = workbench.book().entries()
    if survey is not None:
        # started twice with the same file: go on where it was
        return workbench.book().equal_to(survey) or workbench.book().create(survey)
    if not entries:
        return workbench.book().create(demo_survey())
    last = workbench.book().setting(SettingName.LAST_SURVEY)
    known = {str(entry.id): entry.id for entry in entries}
    return workbench.book().stored(known.get(last or "", entries[0].id))


def units_to_show(remembered: str | None, survey: Survey) -> UnitSystem:
    """Return the unit system used last; at the first start the one usual where the site lies."""
    from spoutline.units.accepted import UnitSystem

    if remembered in tuple(UnitSystem):
        return UnitSystem(str(remembered))
    return UnitSystem.US if survey.site.jurisdiction.startswith("us") else UnitSystem.SI
