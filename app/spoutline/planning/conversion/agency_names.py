"""The agency that a survey names, held against the table of agencies; every plan asks for it."""

from __future__ import annotations

from spoutline.model.faults import InputFault, InputProblem
from spoutline.model.survey import Survey
from spoutline.model.vapour_figures import VapourTables
from spoutline.model.worded import Worded
from spoutline.rules.conversion.standing import UNKNOWN_AGENCY


def check_agency(survey: Survey, vapour: VapourTables) -> None:
    """Raise ``InputFault`` where the agency is no row of the table."""
    answered = survey.conversion.agency
    if vapour.agency(answered) is None:
        known = ", ".join(row.id for row in vapour.agencies)
        wanted = Worded(
            "write one of {known}; {unknown_agency} is a fair answer", known=known, unknown_agency=UNKNOWN_AGENCY
        )
        raise InputFault((InputProblem("", "conversion, agency", repr(answered), wanted),))
