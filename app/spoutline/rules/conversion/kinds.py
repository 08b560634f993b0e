"""In which ways a position is converted, read from what is there today and what is wanted."""

from __future__ import annotations

from collections.abc import Mapping

from spoutline.model.conversion_answers import ConversionAnswers
from spoutline.model.part import Part, PartStatus
from spoutline.model.part_ref import PartRef
from spoutline.model.position_conversion import ConversionKind
from spoutline.model.survey import Position, VapourStatus


def conversion_kinds(
    position: Position, answers: ConversionAnswers, known: Mapping[PartRef, Part]
) -> tuple[ConversionKind, ...]:
    """Return every way in which a position is converted; empty where nothing about it changes.

    Parameters: ``position``; ``answers`` of the owner; ``known``, the catalogue parts by what names them.
    Source: survey.
    """
    if not position.exists_today:
        return (ConversionKind.NEW_POSITION,)
    today, wanted = position.vapour_today, position.vapour_wanted
    found: list[ConversionKind] = []
    if today is not wanted:
        if wanted is VapourStatus.NONE:
            found.append(ConversionKind.DECOMMISSION)
        elif today is VapourStatus.NONE:
            found.append(ConversionKind.ADD_RECOVERY)
        else:
            found.append(ConversionKind.CHANGE_RECOVERY)
    if position.liquid_today is not None and position.liquid_today != position.liquid:
        found.append(ConversionKind.CHANGE_LIQUID)
    parts = [part for item in position.installed if item.ref and (part := known.get(item.ref))]
    if position.reconnectable_wanted and any(part.breakaway and not part.breakaway.reconnectable for part in parts):
        found.append(ConversionKind.RECONNECTABLE)
    if answers.retire_superseded and any(part.status is not PartStatus.ACTIVE for part in parts):
        found.append(ConversionKind.RETIREMENT)
    return tuple(found)
