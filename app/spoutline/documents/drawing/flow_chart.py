"""Flow against pressure as a chart: what the set needs, cold and hot, and where it works."""

from __future__ import annotations

import math

from spoutline.calc.elements import Element
from spoutline.calc.flow import flow_curve
from spoutline.calc.liquids import LiquidState
from spoutline.calc.ranges import OutOfRange
from spoutline.documents.drawing.shapes import Anchor, Box, Dot, Drawing, Ink, Label, Path, Place, Shape, Weight
from spoutline.explain.phrases.paper_words import PaperWord
from spoutline.explain.plan.story import Story
from spoutline.frozen import frozen
from spoutline.model.check import CheckId
from spoutline.model.plan import HangingSet, JudgedSet, PositionPlan
from spoutline.model.quantity import Dimension
from spoutline.model.requirement import Requirement
from spoutline.rules.parts.figures import LiquidStates, elements_of, rise_m, states_for

_POINTS = 60
_HEADROOM = 1.25
_STEPS = (1.0, 2.0, 2.5, 5.0, 10.0)
_WANTED_TICKS = 4


@frozen
class ChartSize:
    """Size of the plotted field in metres on the paper; the texts beside the axes come to it.

    The axis of the flow goes on to ``flow_room`` times the greatest flow: the name of the last working point stands to
    its right.
    """

    width_m: float
    height_m: float
    flow_room: float


WHOLE_WIDTH = ChartSize(0.14, 0.044, 1.3)
HALF_WIDTH = ChartSize(0.066, 0.028, 1.6)


@frozen
class _Axis:
    """Maps a quantity to metres on the paper; ticks are round in the shown unit."""

    dimension: Dimension
    greatest: float
    length_m: float

    def at(self, value: float) -> float:
        return value / self.greatest * self.length_m

    def ticks(self, story: Story) -> tuple[float, ...]:
        """Return SI values of the ticks from 0."""
        shown = story.display.number(self.greatest, self.dimension)
        step = _round_step(shown / _WANTED_TICKS)
        count = math.floor(shown / step + 1e-9)
        return tuple(story.display.from_shown(step * number, self.dimension) for number in range(count + 1))


@frozen
class _Curve:
    """One temperature: its curve and the working point."""

    ink: Ink
    name: PaperWord
    state: LiquidState
    working_flow_m3_s: float | None


@frozen(kw_only=True)
class ChartedFlow:
    """All that a chart shows: equal ones are the same chart.

    ``elements`` make up the path, which rises by ``rise_m``; ``working`` are the flows (m3/s) at which the set works
    cold and hot, None where the liquid is colder than it moves.
    """

    elements: tuple[Element, ...]
    rise_m: float
    states: LiquidStates
    working: tuple[float | None, float | None]
    supply_flow_m3_s: float
    supply_pressure_pa: float


def flow_chart(plan: PositionPlan, story: Story, size: ChartSize = WHOLE_WIDTH) -> Drawing | None:
    """Return the chart of a chosen set; None without a set or where a part has no flow data.

    Curves come from the same elements and liquid states as the checks; the working points are the flows of the checks.
    """
    charted = charted_flow(plan)
    return None if charted is None else chart_of(charted, story, size)


def charted_flow(plan: PositionPlan) -> ChartedFlow | None:
    """Return what the chart of a chosen set shows; None without a set or where a part has no flow data."""
    if plan.chosen is None or plan.requirement is None:
        return None
    elements = _elements(plan.chosen.hanging_set, plan.requirement)
    if elements is None:
        return None
    return ChartedFlow(
        elements=elements,
        rise_m=rise_m(plan.requirement),
        states=states_for(plan.requirement),
        working=(_flow_of(plan.chosen, CheckId.FLOW_COLD), _flow_of(plan.chosen, CheckId.FLOW_HOT)),
        supply_flow_m3_s=plan.requirement.supply_flow_m3_s,
        supply_pressure_pa=plan.requirement.supply_pressure_pa,
    )


def chart_of(charted: ChartedFlow, story: Story, size: ChartSize) -> Drawing | None:
    """Return the chart; None where a loss lies beyond what is known of it."""
    states, (cold, hot) = charted.states, charted.working
    both = (
        _Curve(Ink.COLD, PaperWord.COLD, states.cold, cold),
        _Curve(Ink.HOT, PaperWord.HOT, states.hot, hot),
    )
    # a liquid colder than it moves has no working point and no curve
    curves = tuple(curve for curve in both if curve.working_flow_m3_s is not None)
    most_flow = max(charted.supply_flow_m3_s, *(curve.working_flow_m3_s or 0.0 for curve in curves))
    flow = _Axis(Dimension.FLOW, most_flow * size.flow_room, size.width_m)
    pressure = _Axis(Dimension.PRESSURE, charted.supply_pressure_pa * _HEADROOM, size.height_m)
    supply = _supply(charted.supply_pressure_pa, (flow, pressure), story)
    shapes: list[Shape] = [*_frame(flow, pressure, story), *supply]
    try:
        for curve in curves:
            shapes.extend(_curve_shapes(curve, charted.elements, charted.rise_m, (flow, pressure), story))
    except OutOfRange:
        return None
    shapes.extend(_legend(size, story))
    return Drawing(
        title=story.word(PaperWord.FLOW_CURVE),
        description=story.word(PaperWord.FLOW_DESCRIPTION),
        shapes=tuple(shapes),
        # room for the texts beside the axes
        box=Box(-0.016, -0.009, size.width_m + 0.002, size.height_m + 0.009),
        true_scale=False,
    )


def _elements(hanging_set: HangingSet, requirement: Requirement) -> tuple[Element, ...] | None:
    found: list[Element] = []
    for link in hanging_set.links:
        elements = elements_of(link.part, link.slot, requirement)
        if elements is None:
            return None
        found.extend(elements)
    return tuple(found)


def _flow_of(judged: JudgedSet, check_id: CheckId) -> float | None:
    return next((check.value for check in judged.checks if check.id is check_id), None)


def _curve_shapes(
    curve: _Curve, elements: tuple[Element, ...], rise: float, axes: tuple[_Axis, _Axis], story: Story
) -> tuple[Shape, ...]:
    flow, pressure = axes
    flows = tuple(flow.greatest * number / _POINTS for number in range(_POINTS + 1))
    points = flow_curve(elements, rise_m=rise, state=curve.state, flows=flows)
    # a filler below the outlet helps the flow: the part of the curve that needs no pressure lies below the axis
    inside = tuple(
        Place(flow.at(point.flow_m3_s), pressure.at(point.pressure_pa))
        for point in points
        if 0.0 <= point.pressure_pa <= pressure.greatest
    )
    shapes: list[Shape] = []
    if len(inside) > 1:
        # the cold curve is dashed, so that the two are told apart without colour
        dashed = curve.ink is Ink.COLD
        shapes.append(Path(places=inside, ink=curve.ink, weight=Weight.MEDIUM, dashed=dashed))
    if curve.working_flow_m3_s is not None:
        (point,) = flow_curve(elements, rise_m=rise, state=curve.state, flows=(curve.working_flow_m3_s,))
        place = Place(flow.at(point.flow_m3_s), pressure.at(max(point.pressure_pa, 0.0)))
        text = f"{story.word(curve.name)} {story.show(point.flow_m3_s, Dimension.FLOW)}"
        below = curve.ink is Ink.HOT
        shapes.append(Dot(centre=place, radius_pt=2.6, ink=curve.ink))
        shapes.append(
            Label(
                at=place,
                text=text,
                anchor=Anchor.START if below else Anchor.END,
                offset_pt=(5.0, -9.0) if below else (-5.0, 5.0),
                ink=curve.ink,
            )
        )
    return tuple(shapes)


def _frame(flow: _Axis, pressure: _Axis, story: Story) -> tuple[Shape, ...]:
    shapes: list[Shape] = []
    for value in flow.ticks(story):
        x = flow.at(value)
        grid = (Place(x, 0.0), Place(x, pressure.length_m))
        shapes.append(Path(places=grid, ink=Ink.GRID, weight=Weight.HAIR))
        shapes.append(Label(at=Place(x, 0.0), text=_tick(value, flow.dimension, story), offset_pt=(0.0, -10.0)))
    for value in pressure.ticks(story):
        y = pressure.at(value)
        grid = (Place(0.0, y), Place(flow.length_m, y))
        shapes.append(Path(places=grid, ink=Ink.GRID, weight=Weight.HAIR))
        text = _tick(value, pressure.dimension, story)
        shapes.append(Label(at=Place(0.0, y), text=text, anchor=Anchor.END, offset_pt=(-4.0, -2.5)))
    axes = (Place(0.0, pressure.length_m), Place(0.0, 0.0), Place(flow.length_m, 0.0))
    shapes.append(Path(places=axes, ink=Ink.AXIS, weight=Weight.THIN))
    flow_title = f"{story.word(PaperWord.FLOW_AXIS)}, {story.display.unit(Dimension.FLOW)}"
    pressure_title = f"{story.word(PaperWord.PRESSURE_AXIS)}, {story.display.unit(Dimension.PRESSURE)}"
    shapes.append(Label(at=Place(flow.length_m, 0.0), text=flow_title, anchor=Anchor.END, offset_pt=(0.0, -21.0)))
    shapes.append(
        Label(at=Place(0.0, pressure.length_m), text=pressure_title, anchor=Anchor.START, offset_pt=(-30.0, 8.0))
    )
    return tuple(shapes)


def _supply(pressure_pa: float, axes: tuple[_Axis, _Axis], story: Story) -> tuple[Shape, ...]:
    flow, pressure = axes
    y = pressure.at(pressure_pa)
    text = f"{story.word(PaperWord.SUPPLY)} {story.show(pressure_pa, Dimension.PRESSURE)}"
    return (
        Path(places=(Place(0.0, y), Place(flow.length_m, y)), ink=Ink.AXIS, weight=Weight.THIN, dashed=True),
        Label(at=Place(0.0, y), text=text, anchor=Anchor.START, offset_pt=(4.0, 4.0)),
    )


def _legend(size: ChartSize, story: Story) -> tuple[Shape, ...]:
    at = Place(size.width_m * 0.72, size.height_m + 0.005)
    text = story.word(PaperWord.WORKING_POINT)
    return (
        Dot(centre=at, radius_pt=2.6, ink=Ink.AXIS),
        Label(at=at, text=text, anchor=Anchor.START, offset_pt=(6.0, -2.5)),
    )


def _tick(value: float, dimension: Dimension, story: Story) -> str:
    return f"{story.display.number(value, dimension):.4g}"


def _round_step(rough: float) -> float:
    """Return the next step of 1, 2, 2.5, 5 times a power of ten."""
    power = 10.0 ** math.floor(math.log10(rough))
    return next(step * power for step in _STEPS if step * power >= rough * (1 - 1e-9))
