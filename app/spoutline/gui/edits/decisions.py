"""Decisions about parts, taken after a result was seen: they are inputs of the next plan."""

from __future__ import annotations

from collections.abc import Iterable

from spoutline.gui.edits.answers import with_position
from spoutline.model.part_ref import PartRef
from spoutline.model.survey import Decisions, Survey


def keep_parts(survey: Survey, label: str, parts: Iterable[PartRef]) -> Survey:
    """Return the survey in which the set of a position must use exactly these parts, besides free ones."""
    wanted = tuple(sorted(set(parts)))
    decisions = _decisions(survey, label)
    refused = tuple(known for known in decisions.refused if not any(map(known.names, wanted)))
    return _decided(survey, label, decisions.model_copy(update={"pinned": wanted, "refused": refused}))


def keep_part(survey: Survey, label: str, part: PartRef, instead_of: Iterable[PartRef] = ()) -> Survey:
    """Return the survey in which one more part is kept; kept parts that it takes the place of are let go."""
    let_go = (*instead_of, part)
    kept = [known for known in _decisions(survey, label).pinned if not any(map(known.names, let_go))]
    return keep_parts(survey, label, [*kept, part])


def refuse_part(survey: Survey, label: str, part: PartRef) -> Survey:
    """Return the survey in which the set of a position must not use a part."""
    decisions = _decisions(survey, label)
    pinned = tuple(known for known in decisions.pinned if not known.names(part))
    others = (known for known in decisions.refused if not known.names(part))
    refused = tuple(sorted({*others, part}))
    return _decided(survey, label, decisions.model_copy(update={"pinned": pinned, "refused": refused}))


def release_part(survey: Survey, label: str, part: PartRef) -> Survey:
    """Return the survey in which a part is neither kept nor refused."""
    decisions = _decisions(survey, label)
    return _decided(
        survey,
        label,
        decisions.model_copy(
            update={
                "pinned": tuple(known for known in decisions.pinned if not known.names(part)),
                "refused": tuple(known for known in decisions.refused if not known.names(part)),
            }
        ),
    )


def release_all(survey: Survey, label: str) -> Survey:
    """Return the survey in which no part of a position is kept or refused; the lead time stays."""
    return _decided(survey, label, _decisions(survey, label).model_copy(update={"pinned": (), "refused": ()}))


def _decisions(survey: Survey, label: str) -> Decisions:
    position = survey.position(label)
    if position is None:
        raise KeyError(label)
    return position.decisions


def _decided(survey: Survey, label: str, decisions: Decisions) -> Survey:
    position = survey.position(label)
    if position is None:
        raise KeyError(label)
    return with_position(survey, label, position.model_copy(update={"decisions": decisions}))
