"""A point that a person picked, as one change of the survey: its parts are asked for."""

from __future__ import annotations

from collections.abc import Mapping, Sequence

from spoutline.model.front import FrontPoint, StationFront, StationPoint
from spoutline.model.part_ref import PartRef
from spoutline.model.survey import Decisions, Survey
from spoutline.planning.weighing.station_front import points_taken


def survey_taking(survey: Survey, labels: Sequence[str], point: FrontPoint) -> Survey:
    """Return the survey in which some positions ask for the parts of a point."""
    return _asking(survey, dict.fromkeys(labels, point.judged.hanging_set.refs))


def station_taking(found: StationFront, point: StationPoint) -> Survey:
    """Return the survey in which every position asks for the parts of its set at a point of the station."""
    wanted = {label: one.judged.hanging_set.refs for group, one in points_taken(found, point) for label in group.labels}
    return _asking(found.survey, wanted)


def _asking(survey: Survey, wanted: Mapping[str, Sequence[PartRef]]) -> Survey:
    positions = (
        one.model_copy(update={"decisions": _deciding(one.decisions, wanted[one.label])})
        if one.label in wanted
        else one
        for one in survey.positions
    )
    return survey.model_copy(update={"positions": tuple(positions)})


def _deciding(decisions: Decisions, refs: Sequence[PartRef]) -> Decisions:
    """Return decisions that ask for exactly these parts; those refused before are refused no more."""
    refused = tuple(one for one in decisions.refused if not any(map(one.names, refs)))
    return decisions.model_copy(update={"pinned": tuple(sorted(set(refs))), "refused": refused})
