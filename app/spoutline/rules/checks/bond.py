"""Checks of the electrical path: the whole, each part against its own limit, and how fast charge leaves the liquid."""

from __future__ import annotations

from spoutline.calc.bond import PartResistance, relaxation_time, residence_time, series_resistance
from spoutline.calc.liquid_hazards import conductivity_s_m, relative_permittivity
from spoutline.frozen import frozen
from spoutline.model.check import Check, CheckId, WorkedLine
from spoutline.model.finding import Severity
from spoutline.model.limit import LimitId
from spoutline.model.part import Part, PartKind
from spoutline.model.port import FlowPath
from spoutline.model.quantity import Dimension, Fact, Quantity
from spoutline.rules.chain.joints import facing_ports
from spoutline.rules.chain.set_view import SetView
from spoutline.rules.checks.holding import bound_of, held, stated
from spoutline.rules.parts.figures import liquid_passage_m, part_resistance_ohm

_DEVICES = (PartKind.BREAKAWAY, PartKind.SWIVEL, PartKind.SWIVEL_BREAKAWAY)


@frozen
class _Share:
    """A part's resistance over its own limit."""

    part: Part
    ratio: float
    line: WorkedLine


def resistance_total(view: SetView) -> Check:
    """Hold the resistance (ohm) from dispenser to spout tip against the guidance. Source: NFPA 77 (memory)."""
    series = series_resistance(
        tuple(
            PartResistance(link.part.number, figure.resistance_ohm)
            for link, figure in zip(view.links, view.figures, strict=True)
        ),
        joints=len(facing_ports(view.links, view.requirement.outlet)),
        joint_allowance_ohm=view.jurisdiction.number(LimitId.BOND_JOINT),
    )
    return held(
        CheckId.RESISTANCE_TOTAL,
        view.requirement.bonding_severity,
        series.total_ohm,
        Dimension.RESISTANCE,
        upper=bound_of(LimitId.BOND_TOTAL_MAX, view.jurisdiction),
        facts=tuple(Fact("unknown", number) for number in series.unknown),
        lines=series.lines,
    )


def resistance_parts(view: SetView) -> Check:
    """Hold each hose and device against its own limit; the value is the worst share (ratio, 1 is the limit).

    Source: UL 330 and PEI RP400 for hose (memory), UL 567A 12.2 for devices (secondary).
    """
    severity = view.requirement.bonding_severity
    unknown = tuple(Fact("unknown", link.part.number) for link in view.links if part_resistance_ohm(link.part) is None)
    shares = [share for link in view.links if (share := _share(link.part, view)) is not None]
    if not shares:
        return stated(CheckId.RESISTANCE_PARTS, severity, None, Dimension.RATIO, facts=unknown)
    worst = max(shares, key=lambda share: share.ratio)
    row = LimitId.BOND_HOSE_MAX if worst.part.hose is not None else LimitId.BOND_DEVICE_MAX
    bound = bound_of(row, view.jurisdiction)
    return held(
        CheckId.RESISTANCE_PARTS,
        severity,
        None if unknown and worst.ratio <= 1.0 else worst.ratio,
        Dimension.RATIO,
        upper=None if bound is None else type(bound)(value=1.0, source=bound.source, status=bound.status),
        text=worst.part.number,
        facts=unknown,
        lines=tuple(share.line for share in shares),
    )


def _share(part: Part, view: SetView) -> _Share | None:
    resistance = part_resistance_ohm(part)
    if resistance is None:
        return None
    if part.hose is not None:
        per_metre = part.hose.resistance_ohm_m
        value = resistance / part.hose.length_m if per_metre is None else per_metre
        return _over(part, value, LimitId.BOND_HOSE_MAX, Dimension.RESISTANCE_PER_LENGTH, view)
    if part.kind in _DEVICES:
        return _over(part, resistance, LimitId.BOND_DEVICE_MAX, Dimension.RESISTANCE, view)
    return None


def _over(part: Part, value: float, row: LimitId, dimension: Dimension, view: SetView) -> _Share | None:
    bound = bound_of(row, view.jurisdiction)
    if bound is None:
        return None
    line = WorkedLine(
        formula="share = R / R_max",
        inputs=(Quantity("R", value, dimension), Quantity("R_max", bound.value, dimension)),
        result=Quantity("share", value / bound.value, Dimension.RATIO),
        source=bound.source,
        note=part.number,
    )
    return _Share(part, value / bound.value, line)


def relaxation(view: SetView) -> Check | None:
    """State how fast charge leaves the liquid (s), with the time it spends in the curb hose. Source: NFPA 77."""
    conductivity = conductivity_s_m(view.requirement.liquid)
    if conductivity.low_s_m is None:
        return None
    tau = relaxation_time(
        relative_permittivity=relative_permittivity(view.requirement.liquid).value,
        conductivity_s_m=conductivity.low_s_m,
    )
    facts, lines = _residence(view)
    return stated(
        CheckId.RELAXATION_TIME,
        Severity.ADVICE,
        tau.time_s,
        Dimension.TIME,
        text=conductivity.conductivity_class,
        facts=facts,
        lines=(*tau.lines, *lines),
    )


def _residence(view: SetView) -> tuple[tuple[Quantity, ...], tuple[WorkedLine, ...]]:
    """Time in the curb hose of a single bore; a ring has no one bore to show."""
    part = view.curb_hose
    flow = 0.0 if view.delivered is None else view.delivered[0].flow_m3_s
    if part is None or part.hose is None or flow <= 0.0:
        return (), ()
    passage = liquid_passage_m(part.hose, part.path or FlowPath.SINGLE)
    if passage is None or passage[1] > 0.0:
        return (), ()
    time = residence_time(bore_m=passage[0], length_m=part.hose.length_m, flow_m3_s=flow)
    return (Quantity("residence_time", time.time_s, Dimension.TIME),), time.lines
