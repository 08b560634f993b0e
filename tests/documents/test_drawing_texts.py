"""Texts of a drawing stay off its lines, and a figure stays on its page where one scale smaller is enough."""

from __future__ import annotations

from dataclasses import replace

import pytest
from reportlab.pdfbase.pdfmetrics import stringWidth

from documents import plan_factory as factory
from documents.test_drawing import drawn, reference_position, slim_hose_set, story
from spoutline.documents.content.blocks import Figure
from spoutline.documents.drawing.fit import SCALES, fit, next_smaller, paddings
from spoutline.documents.drawing.measure_text import TextSpot, measure_spot
from spoutline.documents.drawing.position import position_drawing
from spoutline.documents.drawing.shapes import Anchor, Ink, Label, Measure, Place
from spoutline.documents.pdf.figure import FigureFlowable
from spoutline.documents.pdf.fonts import REGULAR, register_fonts
from spoutline.documents.pdf.painter import MEASURE_SIZE
from spoutline.documents.pdf.styles import FIGURE_HEIGHT, FIGURE_HEIGHT_BESIDE
from spoutline.model.check import CheckId, Outcome
from spoutline.model.survey import Filler, Outlet

LEVEL = Measure(start=Place(0.0, 0.0), end=Place(1.0, 0.0), text="1 m")


def upright_measure(text_at: Anchor) -> Measure:
    return Measure(start=Place(0.0, 0.0), end=Place(0.0, 1.0), text="1 m", text_at=text_at)


def test_words_of_what_is_wrong_stand_below_the_ground_and_above_the_distances() -> None:
    judged = factory.judged(slim_hose_set(6.0))
    failing = replace(factory.spout_check(), id=CheckId.GROUND_CLEARANCE_IN_USE, outcome=Outcome.FAILS)
    shapes = drawn(factory.fitting_plan(reference_position(), chosen=replace(judged, checks=(failing,)))).shapes
    (words,) = (shape for shape in shapes if isinstance(shape, Label) and shape.ink is Ink.FAULT)
    distances = [shape for shape in shapes if isinstance(shape, Measure) and shape.start.y_m == shape.end.y_m]
    assert max(measure.start.y_m for measure in distances) < words.at.y_m < 0.0


@pytest.mark.parametrize(
    ("measure", "line", "width_pt", "spot"),
    [
        (LEVEL, ((0.0, 50.0), (100.0, 50.0)), 86.0, TextSpot(50.0, 50.0, Anchor.MIDDLE, in_gap=True)),
        (LEVEL, ((0.0, 50.0), (100.0, 50.0)), 86.1, TextSpot(104.0, 50.0, Anchor.START, in_gap=False)),
        (LEVEL, ((100.0, 50.0), (0.0, 50.0)), 99.0, TextSpot(104.0, 50.0, Anchor.START, in_gap=False)),
        (upright_measure(Anchor.END), ((20.0, 0.0), (20.0, 9.0)), 40.0, TextSpot(16.0, 4.5, Anchor.END, in_gap=False)),
        (
            upright_measure(Anchor.START),
            ((20.0, 0.0), (20.0, 9.0)),
            40,
            TextSpot(24.0, 4.5, Anchor.START, in_gap=False),
        ),
    ],
)
def test_the_text_of_a_dimension_never_covers_its_line(
    measure: Measure, line: tuple[tuple[float, float], tuple[float, float]], width_pt: float, spot: TextSpot
) -> None:
    """By hand: two arrow heads of 4 pt and 3 pt of line each side stay in sight, 4 pt lie between line and text."""
    assert measure_spot(measure, *line, width_pt) == spot


def test_heights_stand_outside_with_room_for_their_texts() -> None:
    drawing = drawn(factory.fitting_plan(reference_position(), chosen=factory.judged(slim_hose_set(3.0))))
    upright = [shape for shape in drawing.shapes if isinstance(shape, Measure) and shape.start.x_m == shape.end.x_m]
    assert [shape.text_at for shape in upright] == [Anchor.END, Anchor.START]
    longer = tuple(replace(shape, text="9" * 20) if shape in upright else shape for shape in drawing.shapes)
    left, right, _, _ = paddings(replace(drawing, shapes=longer))
    register_fonts()
    assert min(left, right) >= stringWidth("9" * 20, REGULAR, MEASURE_SIZE) - 5.0  # a row lies between line and edge


@pytest.mark.parametrize("height_m", [0.9, 1.4, 2.0, 2.6, 3.4, 4.2])
@pytest.mark.parametrize("away_m", [1.2, 2.4, 3.3, 5.0, 8.0, 14.0])
def test_the_texts_of_two_distances_stand_apart_in_a_small_drawing(height_m: float, away_m: float) -> None:
    fillers = (Filler(label="far side", distance_m=away_m * 1.4, height_m=0.8),)
    near = Filler(label="near side", distance_m=away_m, height_m=0.9)
    where = factory.position(outlet=Outlet(height_m=height_m), filler=near, other_fillers=fillers)
    drawing = position_drawing(factory.fitting_plan(where), story(), with_clearances=False)
    levels = [shape for shape in drawing.shapes if isinstance(shape, Measure) and shape.start.y_m == shape.end.y_m]
    first, second = sorted((shape.start.y_m for shape in levels), reverse=True)
    for width_pt in (230.0, 250.0):  # of half a page, A4 and Letter
        fitted = fit(drawing, width_pt=width_pt, height_pt=FIGURE_HEIGHT_BESIDE)
        assert (first - second) * fitted.points_per_m >= MEASURE_SIZE, (fitted.scale, width_pt)


def test_a_figure_is_set_one_scale_smaller_where_it_stays_on_its_page_by_that() -> None:
    drawing = drawn(factory.fitting_plan(reference_position(), chosen=factory.judged(slim_hose_set(3.0))))
    register_fonts()
    figure = FigureFlowable(Figure(drawing, "Side view.", "Scale 1:{n}"), 500.0)
    preferred = figure.wrap(500.0, 1000.0)[1]
    smaller = figure.wrap(500.0, preferred - 1.0)[1]
    assert smaller < preferred
    assert figure.wrap(500.0, smaller - 1.0)[1] == preferred  # on a page of its own it need not be small
    first = fit(drawing, width_pt=500.0, height_pt=FIGURE_HEIGHT)
    second = next_smaller(drawing, first)
    assert second is not None
    assert SCALES.index(second.scale) == SCALES.index(first.scale) + 1
    assert preferred - smaller == pytest.approx(first.height_pt - second.height_pt)
