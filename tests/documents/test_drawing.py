"""The drawing has the geometry of the survey, the curve of statics and a true scale."""

from __future__ import annotations

import math
from dataclasses import replace
from itertools import pairwise

import pytest

from documents import plan_factory as factory
from documents.readers import story
from spoutline.documents.drawing.balloons import BALLOON_RADIUS_PT, balloon_offsets
from spoutline.documents.drawing.fit import SCALES, fit
from spoutline.documents.drawing.flow_chart import flow_chart
from spoutline.documents.drawing.hose_lines import LineNote, before_nozzle, line_in_use
from spoutline.documents.drawing.position import position_drawing
from spoutline.documents.drawing.scenery import quay_edge_m
from spoutline.documents.drawing.shapes import (
    Balloon,
    Dot,
    Drawing,
    Ink,
    Label,
    Measure,
    Path,
    Place,
    Weight,
    places_of,
)
from spoutline.model.check import CheckId, Outcome
from spoutline.model.part import PartKind
from spoutline.model.plan import HangingSet, PositionPlan, SetLink
from spoutline.model.quantity import Dimension
from spoutline.model.requirement import Slot
from spoutline.model.survey import Duty, Filler, Outlet, Position
from spoutline.units.accepted import UnitSystem


def drawn(plan: PositionPlan | None = None, system: UnitSystem = UnitSystem.SI) -> Drawing:
    return position_drawing(plan or factory.fitting_plan(), story(system))


def length_of(places: tuple[Place, ...]) -> float:
    return math.fsum(a.distance_to(b) for a, b in pairwise(places))


def slim_hose_set(length_m: float) -> HangingSet:
    """Return one hose of a given length, limp enough to hang as a catenary, and a nozzle."""
    hose = factory.hose("QW-X", PartKind.CURB_HOSE, length_m, usd_minor=100)
    assert hose.hose is not None
    limp = replace(hose, hose=replace(hose.hose, minimum_bend_radius_m=0.01))
    links = (SetLink(slot=Slot.CURB_HOSE, part=limp), SetLink(slot=Slot.NOZZLE, part=factory.nozzle()))
    return HangingSet(links=links, price_minor=0, currency="USD")


def reference_position() -> Position:
    return factory.position(outlet=Outlet(height_m=2.0), filler=Filler(label="near side", distance_m=2.4, height_m=0.9))


def test_every_part_has_shapes_to_select_and_a_balloon_with_its_number() -> None:
    shapes = drawn().shapes
    marked = {shape.mark.part.number for shape in shapes if isinstance(shape, Path) and shape.mark}
    assert marked == set(factory.chain().numbers)
    balloons = [shape for shape in shapes if isinstance(shape, Balloon)]
    assert [(balloon.text, balloon.mark.part.number) for balloon in balloons] == [
        (str(number), part) for number, part in enumerate(factory.chain().numbers, start=1)
    ]


def test_the_hose_in_use_runs_from_the_outlet_to_the_filler_at_its_full_length() -> None:
    hanging_set = slim_hose_set(3.66)
    line = line_in_use(reference_position(), [link for _, link in before_nozzle(hanging_set)], Filler(distance_m=2.4))
    assert line.places[0] == Place(0.0, 2.0)
    assert (line.places[-1].x_m, line.places[-1].y_m) == pytest.approx((2.4, 0.9))
    assert length_of(line.places) == pytest.approx(3.66, rel=1e-3)


def test_the_hose_hangs_as_the_worked_reference_case() -> None:
    # catenary worked by hand in a hydraulics reference: d 2.4, h1 2.0, h2 0.9, L 3.66 m gives the low point 0.2209 m
    # at x 1.4394 m
    hanging_set = slim_hose_set(3.66)
    line = line_in_use(reference_position(), [link for _, link in before_nozzle(hanging_set)], Filler(distance_m=2.4))
    lowest = min(line.places, key=lambda place: place.y_m)
    assert lowest.y_m == pytest.approx(0.2209, abs=5e-4)
    assert lowest.x_m == pytest.approx(1.4394, abs=0.02)  # the nearest of the drawn points
    assert line.notes == ()


def test_a_chain_that_does_not_reach_is_drawn_straight_and_says_so() -> None:
    far = factory.position(filler=Filler(label="far side", distance_m=9.0, height_m=0.9))
    drawing = drawn(factory.fitting_plan(far))
    assert any("too short" in note for note in drawing.notes)


def test_a_hose_that_drags_is_laid_on_the_ground_and_says_so() -> None:
    hanging_set = slim_hose_set(6.0)
    links = [link for _, link in before_nozzle(hanging_set)]
    line = line_in_use(reference_position(), links, Filler(distance_m=2.4))
    assert min(place.y_m for place in line.places) == 0.0
    assert LineNote.ON_THE_GROUND in line.notes


@pytest.mark.parametrize("height_m", [-0.4, 0.3])
def test_a_hose_on_a_quay_lies_on_it_and_runs_straight_from_its_edge_to_the_boat(height_m: float) -> None:
    filler = Filler(label="boat deck", distance_m=7.5, height_m=height_m)
    place = factory.position("Q", duty=Duty.MARINE, outlet=Outlet(height_m=0.9), filler=filler)
    links = [link for _, link in before_nozzle(slim_hose_set(12.0))]
    places = line_in_use(place, links, filler).places
    edge = quay_edge_m(place)
    on_quay = [at for at in places if at.x_m <= edge]
    beyond = [at for at in places if at.x_m > edge]
    assert min(at.y_m for at in on_quay) == 0.0
    # similar triangles from the edge to the filler
    assert [at.y_m for at in beyond] == pytest.approx([height_m * (at.x_m - edge) / (7.5 - edge) for at in beyond])


def test_a_deck_below_the_quay_is_dimensioned_without_a_sign() -> None:
    filler = Filler(label="boat deck", distance_m=2.2, height_m=-0.4)
    drawing = drawn(factory.fitting_plan(factory.position("Q", duty=Duty.MARINE, filler=filler)))
    assert "0.4 m" in [shape.text for shape in drawing.shapes if isinstance(shape, Measure)]


def test_the_way_round_the_vehicle_is_called_unfolded() -> None:
    filler = Filler(label="far side", distance_m=2.4, height_m=0.9, plan_legs_m=(1.5, 1.2))
    links = [link for _, link in before_nozzle(slim_hose_set(3.66))]
    assert line_in_use(reference_position(), links, filler).notes == (LineNote.UNFOLDED,)


def test_turns_left_on_the_drum_shorten_the_hose_in_use() -> None:
    links = [link for _, link in before_nozzle(slim_hose_set(4.0))]
    place = factory.reel_position()
    line = line_in_use(place, links, place.filler)
    # half a turn on a drum of 0.5 m: pi x 0.5 x 0.5 = 0.785 m
    assert length_of(line.places) == pytest.approx(4.0 - 0.785398, rel=2e-3)


def test_a_reel_without_slack_is_drawn_taut_and_not_called_too_short() -> None:
    links = [link for _, link in before_nozzle(slim_hose_set(2.5))]
    place = factory.reel_position()
    # straight from 2.1 m high to 0.9 m high, 2.0 m away: 2.332 m; 2.5 m less half a turn, 0.785 m, does not hang
    line = line_in_use(place, links, place.filler)
    assert line.notes == (LineNote.TAUT_ON_REEL,)
    assert length_of(line.places) == pytest.approx(math.hypot(2.0, 1.2))


@pytest.mark.parametrize("system", list(UnitSystem))
def test_dimensions_carry_the_surveyed_figures(system: UnitSystem) -> None:
    name = "near side"  # of the filler, as the survey of these plans calls it
    texts = [shape.text for shape in drawn(system=system).shapes if isinstance(shape, Measure)]
    # 2.1, 0.9 and 2.0 m over 25.4 mm are 82.68, 35.43 and 78.74 in; to the sixteenth of a tape
    in_feet = ["6 ft 10 11/16 in", "2 ft 11 7/16 in", f"{name}: 6 ft 6 3/4 in"]
    wanted = ["2.1 m", "0.9 m", f"{name}: 2 m"] if system is UnitSystem.SI else in_feet
    assert texts == wanted


def test_heights_of_the_hose_are_not_written_over_by_distances() -> None:
    judged = factory.judged(slim_hose_set(3.0))
    clear = replace(
        factory.spout_check(),
        id=CheckId.GROUND_CLEARANCE_IN_USE,
        value=0.4,
        dimension=Dimension.LENGTH,
        text="near side",
    )
    drawing = drawn(factory.fitting_plan(chosen=replace(judged, checks=(*judged.checks, clear))))
    heights = [shape for shape in drawing.shapes if isinstance(shape, Label) and shape.at.y_m == 0.0]
    distances = [shape for shape in drawing.shapes if isinstance(shape, Measure) and shape.start.y_m == shape.end.y_m]
    assert heights
    scale = 1000 / 75 / 25.4 * 72  # points for a metre at 1:75; 72 points to the inch
    for label in heights:
        bottom_pt = label.at.y_m * scale + label.offset_pt[1]
        assert all(bottom_pt - 3 >= measure.start.y_m * scale + 3 for measure in distances)


def test_dimension_lines_are_as_long_as_they_say() -> None:
    outlet, filler, distance = (shape for shape in drawn().shapes if isinstance(shape, Measure))
    assert outlet.start.distance_to(outlet.end) == pytest.approx(2.1)
    assert filler.start.distance_to(filler.end) == pytest.approx(0.9)
    assert distance.start.distance_to(distance.end) == pytest.approx(2.0)


@pytest.mark.parametrize("duty", list(Duty))
def test_each_duty_is_drawn_with_every_place_inside_the_box(duty: Duty) -> None:
    height = -1.0 if duty is Duty.MARINE else 1.2
    where = factory.position(duty=duty, filler=Filler(label="tank", distance_m=2.5, height_m=height))
    drawing = drawn(factory.fitting_plan(where))
    for shape in drawing.shapes:
        for place in places_of(shape):
            assert drawing.box.left_m <= place.x_m <= drawing.box.right_m
            assert drawing.box.bottom_m <= place.y_m <= drawing.box.top_m


@pytest.mark.parametrize("points_per_m", [10.0, 28.0, 57.0, 142.0])
def test_balloons_stand_apart_at_any_scale(points_per_m: float) -> None:
    drawing = drawn()
    balloons = [shape for shape in drawing.shapes if isinstance(shape, Balloon)]
    places = [
        (balloon.target.x_m * points_per_m + dx, balloon.target.y_m * points_per_m + dy)
        for balloon, (dx, dy) in zip(balloons, balloon_offsets(drawing, points_per_m), strict=True)
    ]
    for number, first in enumerate(places):
        for second in places[number + 1 :]:
            assert math.dist(first, second) > 2 * BALLOON_RADIUS_PT


def test_a_retractor_holds_the_hose_above_the_outlet() -> None:
    drawing = drawn(factory.fitting_plan(factory.retractor_position()))
    assert any(isinstance(shape, Path) and shape.ink is Ink.CORD for shape in drawing.shapes)


def test_a_position_without_a_set_still_shows_dispenser_and_filler() -> None:
    drawing = drawn(factory.conflicting_plan())
    assert any(isinstance(shape, Path) and shape.ink is Ink.STATION for shape in drawing.shapes)
    assert not any(isinstance(shape, Balloon) for shape in drawing.shapes)


@pytest.mark.parametrize("width_pt", [200.0, 350.0, 490.0])
def test_the_scale_is_the_largest_standard_one_that_fits(width_pt: float) -> None:
    drawing = drawn()
    fitted = fit(drawing, width_pt=width_pt, height_pt=260.0)
    assert fitted.width_pt <= width_pt
    assert fitted.height_pt <= 260.0
    # 1 m is 1000/n mm on paper, and 72/25.4 points a millimetre
    assert fitted.points_per_m == pytest.approx(1000 / fitted.scale * 72 / 25.4)
    larger = [scale for scale in SCALES if scale < fitted.scale]
    if larger:
        points = 1000 / larger[-1] * 72 / 25.4
        wider = drawing.box.width_m * points + (fitted.width_pt - drawing.box.width_m * fitted.points_per_m)
        taller = drawing.box.height_m * points + (fitted.height_pt - drawing.box.height_m * fitted.points_per_m)
        assert wider > width_pt or taller > 260.0


def test_the_flow_chart_marks_the_working_points_of_the_checks() -> None:
    chart = flow_chart(factory.fitting_plan(), story())
    assert chart is not None
    texts = [shape.text for shape in chart.shapes if isinstance(shape, Label)]
    assert "cold 35 L/min" in texts
    assert "hot 37 L/min" in texts
    assert "pressure available 207 kPa" in texts


def test_pressure_rises_with_flow_along_each_curve() -> None:
    chart = flow_chart(factory.fitting_plan(), story())
    assert chart is not None
    curves = [shape for shape in chart.shapes if isinstance(shape, Path) and shape.ink in (Ink.COLD, Ink.HOT)]
    assert len(curves) == 2
    for curve in curves:
        assert all(b.x_m > a.x_m and b.y_m > a.y_m for a, b in pairwise(curve.places))


def test_curves_are_told_apart_without_colour() -> None:
    chart = flow_chart(factory.fitting_plan(), story())
    assert chart is not None
    curves = [shape for shape in chart.shapes if isinstance(shape, Path) and shape.ink in (Ink.COLD, Ink.HOT)]
    assert {curve.dashed for curve in curves} == {True, False}


def test_without_flow_data_there_is_no_chart() -> None:
    hanging_set = factory.chain(last=replace(factory.nozzle(), flow_coefficient_kv=None))
    assert flow_chart(factory.fitting_plan(chosen=factory.judged(hanging_set)), story()) is None


def test_every_filler_is_named_once_at_its_distance_and_a_long_name_is_cut() -> None:
    near, far = (
        Filler(label="near side", distance_m=1.8, height_m=0.9),
        Filler(label="far side of the second trailer behind it", distance_m=3.0, height_m=1.1),
    )
    where = factory.position(filler=near, other_fillers=(far,))
    texts = [shape.text for shape in drawn(factory.fitting_plan(where)).shapes if isinstance(shape, Measure | Label)]
    assert [text for text in texts if "side" in text] == ["near side: 1.8 m", "far side of the second traile…: 3 m"]


def test_a_hose_on_the_ground_is_marked_along_it_in_pattern_and_words() -> None:
    judged = factory.judged(slim_hose_set(6.0))
    failing = replace(factory.spout_check(), id=CheckId.GROUND_CLEARANCE_IN_USE, outcome=Outcome.FAILS)
    plan = factory.fitting_plan(reference_position(), chosen=replace(judged, checks=(failing,)))
    marks = [shape for shape in drawn(plan).shapes if getattr(shape, "ink", None) is Ink.FAULT]
    stretches = [shape for shape in marks if isinstance(shape, Path)]
    assert stretches
    assert all(path.dashed and path.weight is Weight.HEAVY for path in stretches)
    assert {place.y_m for path in stretches for place in path.places} == {0.0}
    texts = [shape.text for shape in marks if isinstance(shape, Label)]
    assert f"✗ {story().word(CheckId.GROUND_CLEARANCE_IN_USE)}" in texts


@pytest.mark.parametrize("check_id", [CheckId.GROUND_CLEARANCE_IN_USE, CheckId.BEND_RADIUS])
def test_a_hose_that_hangs_too_low_or_too_tight_is_marked_at_its_lowest_point(check_id: CheckId) -> None:
    judged = factory.judged(slim_hose_set(3.0))
    failing = replace(factory.spout_check(), id=check_id, outcome=Outcome.FAILS)
    plan = factory.fitting_plan(reference_position(), chosen=replace(judged, checks=(failing,)))
    marks = [shape for shape in drawn(plan).shapes if getattr(shape, "ink", None) is Ink.FAULT]
    (dot,) = (shape for shape in marks if isinstance(shape, Dot))
    links = [link for _, link in before_nozzle(slim_hose_set(3.0))]
    lowest = min(line_in_use(reference_position(), links, reference_position().filler).places, key=lambda one: one.y_m)
    assert dot.centre == lowest
    assert [shape.text for shape in marks if isinstance(shape, Label)] == [f"✗ {story().word(check_id)}"]


def test_a_hose_that_may_lie_on_the_ground_has_no_mark() -> None:
    plan = factory.fitting_plan(reference_position(), chosen=factory.judged(slim_hose_set(6.0)))  # no check forbids it
    assert [shape for shape in drawn(plan).shapes if getattr(shape, "ink", None) is Ink.FAULT] == []


def test_a_hose_that_hangs_well_has_no_mark() -> None:
    plan = factory.fitting_plan(reference_position(), chosen=factory.judged(slim_hose_set(3.0)))
    assert [shape for shape in drawn(plan).shapes if getattr(shape, "ink", None) is Ink.FAULT] == []
