"""Which constant the pressure decay test takes: it follows the nozzles that still recover vapor after the work."""

from __future__ import annotations

from collections.abc import Iterable
from typing import Final

from spoutline.model.position_conversion import PositionConversion
from spoutline.model.survey import VapourStatus
from spoutline.model.vapour_figures import VapourFigure, VapourFigureId, VapourTables

_Bands = tuple[tuple[int | None, VapourFigureId], ...]

# most nozzles of a band -> its constant
_ASSIST: Final[_Bands] = (
    (6, VapourFigureId.DECAY_ASSIST_6),
    (12, VapourFigureId.DECAY_ASSIST_12),
    (18, VapourFigureId.DECAY_ASSIST_18),
    (24, VapourFigureId.DECAY_ASSIST_24),
    (None, VapourFigureId.DECAY_ASSIST_MORE),
)
_BALANCE: Final[_Bands] = (
    (6, VapourFigureId.DECAY_BALANCE_6),
    (12, VapourFigureId.DECAY_BALANCE_12),
    (18, VapourFigureId.DECAY_BALANCE_18),
    (24, VapourFigureId.DECAY_BALANCE_24),
    (None, VapourFigureId.DECAY_BALANCE_MORE),
)


def decay_constant(positions: Iterable[PositionConversion], vapour: VapourTables) -> tuple[VapourFigure, int]:
    """Return the constant (US gallons) and the number of nozzles that recover when the work is done.

    Without any the station has delivery recovery only. Where both kinds stay, the constant of vacuum assist counts for
    all of them: it is the smaller one, so the test is the stricter one.

    Parameters: ``positions``, converted; ``vapour``, the tables. Source: CARB TP-201.3, certification exhibit; 40 CFR
    63 subpart CCCCCC; see the status of each row.
    """
    kinds = [one.vapour_afterwards for one in positions if one.vapour_afterwards is not VapourStatus.NONE]
    if not kinds:
        return vapour.figure(VapourFigureId.DECAY_STAGE_ONE), 0
    bands = _ASSIST if VapourStatus.VACUUM_ASSIST in kinds else _BALANCE
    row = next(row for most, row in bands if most is None or len(kinds) <= most)
    return vapour.figure(row), len(kinds)
