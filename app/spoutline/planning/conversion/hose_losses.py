"""What the hoses of a site lose through their walls in a year, today and afterwards."""

from __future__ import annotations

from collections.abc import Iterable

from spoutline.calc.constants import SECONDS_PER_DAY
from spoutline.calc.permeation import HIGHEST_TEMPERATURE, LOWEST_TEMPERATURE, permeation_applies, permeation_loss
from spoutline.frozen import frozen
from spoutline.model.conversion_answers import OptionKind
from spoutline.model.emission_sheet import EmissionGap
from spoutline.model.part import Part, PartKind
from spoutline.model.port import FlowPath
from spoutline.model.position_conversion import ConversionOption, DifferenceAction, PositionConversion
from spoutline.model.vapour_figures import VapourFigureId, VapourTables

_HOSES = (PartKind.CURB_HOSE, PartKind.WHIP_HOSE)


@frozen
class HoseChange:
    """Yearly change of the loss through hose walls [kg], positive is more; None where it cannot be told."""

    change_kg: float | None
    gaps: frozenset[EmissionGap]


def hose_change(
    positions: Iterable[PositionConversion], follow: OptionKind, vapour: VapourTables, *, temperature_c: float
) -> HoseChange:
    """Return what the conversion changes on the loss through hose walls of gasoline positions.

    Parameters
    ----------
    positions
        The converted positions.
    follow
        The way that the owner follows.
    vapour
        Rates of hoses that state none.
    temperature_c
        Mean temperature of the hoses, Celsius.
    """
    if not LOWEST_TEMPERATURE.value <= temperature_c <= HIGHEST_TEMPERATURE.value:
        return HoseChange(None, frozenset({EmissionGap.PERMEATION_TEMPERATURE}))
    gaps: set[EmissionGap] = set()
    change = 0.0
    for one in positions:
        option = one.followed(follow)
        if option is None or not permeation_applies(one.position.liquid.family):
            continue
        before, unknown = _hoses_today(one)
        after = _hoses_of(option)
        if unknown:
            return HoseChange(None, frozenset({EmissionGap.HOSE_RATES}))
        if any(part.hose and part.hose.permeation_kg_m2_s is None for part in (*before, *after)):
            gaps.add(EmissionGap.HOSE_RATES)
        change += sum(_yearly_kg(part, vapour, temperature_c) for part in after)
        change -= sum(_yearly_kg(part, vapour, temperature_c) for part in before)
    return HoseChange(change, frozenset(gaps))


def _hoses_today(one: PositionConversion) -> tuple[tuple[Part, ...], bool]:
    """Return today's hoses, and whether one of them is not known."""
    lines = [
        line
        for line in one.differences
        if line.action in (DifferenceAction.KEEP, DifferenceAction.REMOVE)
        and line.installed is not None
        and line.installed.kind in _HOSES
    ]
    parts = tuple(line.part for line in lines if line.part is not None)
    return parts, len(parts) < len(lines)


def _hoses_of(option: ConversionOption) -> tuple[Part, ...]:
    return tuple(link.part for link in option.judged.hanging_set.links if link.part.kind in _HOSES)


def _yearly_kg(part: Part, vapour: VapourTables, temperature_c: float) -> float:
    hose = part.hose
    if hose is None:
        return 0.0
    bore = hose.inner_tube_bore_m if part.path is FlowPath.BALANCE and hose.inner_tube_bore_m else hose.bore_m
    rate = hose.permeation_kg_m2_s
    if rate is None:
        wanted = VapourFigureId.HOSE_PERMEATION_LOW if hose.low_permeation else VapourFigureId.HOSE_PERMEATION
        rate = vapour.value(wanted) * 1e-3 / SECONDS_PER_DAY.value
    loss = permeation_loss(rate_kg_m2_s=rate, bore_m=bore, length_m=hose.length_m, temperature_c=temperature_c)
    return loss.yearly_loss_kg
