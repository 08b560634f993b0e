"""What the book hands out: entries of its list, a stored survey, and the refusal of a stale save."""

from __future__ import annotations

from datetime import datetime
from enum import StrEnum

from spoutline.frozen import frozen
from spoutline.model.faults import InputFault, InputProblem
from spoutline.model.survey import Survey
from spoutline.model.worded import Worded


@frozen(kw_only=True)
class SurveyEntry:
    """One line of the list of surveys; ``changed_at`` is in UTC."""

    id: int
    name: str
    revision: int
    changed_at: datetime


@frozen(kw_only=True)
class StoredSurvey:
    """A survey as the book holds it. ``revision`` counts saves from 1 and guards against overwriting newer work."""

    id: int
    revision: int
    survey: Survey


class SettingName(StrEnum):
    """What the program remembers for the person between two starts."""

    UNIT_SYSTEM = "unit_system"
    LAST_SURVEY = "last_survey"
    JURISDICTION = "jurisdiction"  # whose limits a new survey begins with


class StaleSurvey(Exception):
    """Somebody saved the survey in the meantime; ``stored`` is what the book holds now. Nothing was written."""

    def __init__(self, stored: StoredSurvey) -> None:
        self.stored = stored
        super().__init__(
            Worded(
                "The survey '{site_name}' was saved by another window in the meantime (it is now "
                "revision {revision}). Nothing was overwritten.",
                site_name=stored.survey.site.name,
                revision=stored.revision,
            )
        )


class RemovedSurvey(InputFault):
    """The book holds no such survey, or it was taken off the list. Nothing was written."""

    def __init__(self, survey_id: int) -> None:
        wanted = "the book holds no such survey (it may have been removed)"
        super().__init__((InputProblem("", "survey", str(survey_id), wanted),))
