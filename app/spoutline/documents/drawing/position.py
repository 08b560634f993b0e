"""A position drawn to scale from the geometry that was computed: the same shapes for screen and paper."""

from __future__ import annotations

import math
from collections.abc import Iterator
from dataclasses import replace

from spoutline.documents.drawing.chain_course import Course, chain_shapes, nozzle_shapes
from spoutline.documents.drawing.fit import POINTS_PER_METRE
from spoutline.documents.drawing.hose_faults import HoseFault, hose_faults
from spoutline.documents.drawing.hose_lines import (
    HoseLine,
    LineNote,
    before_nozzle,
    clamp_place,
    filler_place,
    hook_place,
    line_at_rest,
    line_in_use,
    outlet_place,
    wound_length_m,
)
from spoutline.documents.drawing.scenery import reel_drum, surroundings
from spoutline.documents.drawing.shapes import (
    Anchor,
    Balloon,
    Dot,
    Drawing,
    Ink,
    Label,
    Measure,
    PartMark,
    Path,
    Place,
    Shape,
    Weight,
    box_around,
)
from spoutline.explain.plan.story import Story
from spoutline.model.check import CheckId
from spoutline.model.part_ref import told_apart
from spoutline.model.plan import HangingSet, JudgedSet, PositionPlan
from spoutline.model.quantity import Dimension
from spoutline.model.requirement import Slot
from spoutline.model.survey import Position, Retrieval
from spoutline.rules.derive.hose import is_on_reel
from spoutline.units.accepted import UnitSystem

_FOOT_M = 0.3048  # exact, NIST SP 811
_NAME_ROW_PT = 9.0
_WORDS_PT = 6.6
# distance between rows of dimension lines, as a share of the drawing's size; a small one needs more of itself, so that
# the texts of two rows stand apart
_ROW_SHARE = 0.062
_SMALL_ROW_SHARE = 0.11
_SIGN_PT = 4.0  # width of a sign of that size with the room between two texts
_SMALL_SCALE = 100  # 1:100; the two heights over the ground are told apart down to that
_SIDES = 2  # at rest, in use
# a nozzle in its filler, drawn falling at 20 degrees; its inlet is at the place of the filler, as in the checks
_SPOUT_LEVEL = math.cos(math.radians(20.0))
_SPOUT_FALL = math.sin(math.radians(20.0))
_LONGEST_NAME = 30  # signs of a filler's name at its distance
_BALLOON_OFFSET_PT = (0.0, 26.0)  # straight up; a painter moves it where that is taken


def position_drawing(plan: PositionPlan, story: Story, *, with_clearances: bool = True) -> Drawing:
    """Return the drawing of a position: surroundings, hose at rest and in use, parts, dimensions, scale bar.

    Without a set only the surroundings are drawn. Shapes of a part carry its mark; balloon numbers follow the chain
    from 1. Texts are in the units of ``story``. ``with_clearances`` False leaves out the heights of the lowest
    points, for a small drawing beside a table of them.
    """
    position = plan.position
    around = surroundings(position)
    shapes: list[Shape] = list(around.shapes)
    notes: tuple[LineNote, ...] = ()
    faults: tuple[HoseFault, ...] = ()
    if plan.chosen is not None:
        hoses, faults, notes = _hoses(position, plan.chosen, story, with_clearances=with_clearances)
        shapes.extend(hoses)
    elif is_on_reel(position):
        shapes.extend(reel_drum(outlet_place(position), position.reel.drum_diameter_m))
    shapes.extend(_points(position))
    right = max(around.right_m, *(filler_place(filler).x_m for filler in position.fillers))
    size = max(right - around.left_m, position.outlet.height_m)
    beside, row = _ROW_SHARE * size, (_ROW_SHARE if with_clearances else _SMALL_ROW_SHARE) * size
    shapes.extend(_heights(position, around.left_m - beside, right + beside, story))
    # the heights of the lowest points are written below the ground, then what is wrong there, then the distances
    written = with_clearances and plan.chosen is not None
    floor = around.floor_m - row if written else around.floor_m
    words = tuple(_fault_words(faults, floor, row))
    floor -= row * len(words)
    below = _distances(position, floor, row, story)
    shapes.extend((*words, *below))
    shapes.extend(_scale_bar(around.left_m, floor - row * (len(below) + 1.6), story))
    return Drawing(
        title=position.label,
        description=_description(plan, story),
        shapes=tuple(shapes),
        box=box_around(shapes),
        true_scale=True,
        notes=tuple(story.drawing_note(note) for note in dict.fromkeys(notes)),
    )


def _hoses(
    position: Position, judged: JudgedSet, story: Story, *, with_clearances: bool
) -> tuple[tuple[Shape, ...], tuple[HoseFault, ...], tuple[LineNote, ...]]:
    """Return the set at rest, lightly, and in use with balloons; further fillers by their line alone.

    With them come what is wrong with how they hang, its marks among the shapes, and the notes.
    """
    hanging_set = judged.hanging_set
    rest, rest_line = _at_rest(position, hanging_set)
    use, use_line = _in_use(position, hanging_set)
    others: list[Shape] = []
    notes = (*rest_line.notes, *use_line.notes)
    for filler in position.other_fillers:
        line = line_in_use(position, [link for _, link in before_nozzle(hanging_set)], filler)
        others.append(Path(places=line.places, ink=Ink.HOSE_AT_REST, weight=Weight.THIN, dashed=True))
        notes = (*notes, *line.notes)
    drum: tuple[Shape, ...] = ()
    if is_on_reel(position):
        drum = reel_drum(outlet_place(position), position.reel.drum_diameter_m)
    clearances: tuple[Shape, ...] = ()
    if with_clearances:
        at_rest = _clearance(rest_line, _value_of(judged, CheckId.GROUND_CLEARANCE_AT_REST), story)
        in_use = _clearance(use_line, _value_of(judged, CheckId.GROUND_CLEARANCE_IN_USE), story)
        clearances = _apart((*at_rest, *in_use))
    faults = hose_faults(judged, rest_line, use_line, story)
    marks = (mark for fault in faults for mark in fault.marks)
    return (*others, *clearances, *rest, *drum, *use, *marks), faults, notes


def _fault_words(faults: tuple[HoseFault, ...], floor_m: float, row_m: float) -> Iterator[Label]:
    """Yield the words for what is wrong, each in a row of its own below its mark."""
    said = [(fault.x_m, words) for fault in faults for words in fault.words]
    for number, (x_m, words) in enumerate(said, start=1):
        yield Label(at=Place(x_m, floor_m - row_m * number), text=words, size_pt=_WORDS_PT, ink=Ink.FAULT, covers=True)


def _value_of(judged: JudgedSet, check_id: CheckId) -> float | None:
    return next((check.value for check in judged.checks if check.id is check_id), None)


def _apart(clearances: tuple[Path | Label, ...]) -> tuple[Shape, ...]:
    """Return heights over the ground; two texts that would meet on a small drawing grow away from each other."""
    labels = sorted((one for one in clearances if isinstance(one, Label)), key=lambda one: one.at.x_m)
    if len(labels) < _SIDES:
        return clearances
    left, right = labels
    wide_pt = (len(left.text) + len(right.text)) / 2 * _SIGN_PT
    if (right.at.x_m - left.at.x_m) * POINTS_PER_METRE / _SMALL_SCALE > wide_pt:
        return clearances
    turned = {left: replace(left, anchor=Anchor.END), right: replace(right, anchor=Anchor.START)}
    return tuple(turned.get(one, one) if isinstance(one, Label) else one for one in clearances)


def _clearance(line: HoseLine, clearance_m: float | None, story: Story) -> tuple[Path | Label, ...]:
    """Return the height of the lowest point, as the check has it; nothing where the hose reaches the ground."""
    lowest = min(line.places, key=lambda place: place.y_m)
    if clearance_m is None or clearance_m <= 0.0 or lowest.y_m <= 0.0:
        return ()
    foot = Place(lowest.x_m, 0.0)
    text = story.show(clearance_m, Dimension.LENGTH)
    return (
        Path(places=(foot, lowest), ink=Ink.MEASURE, weight=Weight.HAIR),
        Label(at=foot, text=text, offset_pt=(0.0, -8.5), size_pt=_WORDS_PT),
    )


def _at_rest(position: Position, hanging_set: HangingSet) -> tuple[tuple[Shape, ...], HoseLine]:
    indexed = before_nozzle(hanging_set)
    line = line_at_rest(position, [link for _, link in indexed])
    hook = hook_place(position)
    shapes: list[Shape] = []
    if position.retrieval is Retrieval.RETRACTOR:
        shapes.extend(_cord(position))
    course = Course(line.places)
    if is_on_reel(position):
        hose = next((index for index, link in indexed if link.slot is Slot.CURB_HOSE), 0)
        mark = PartMark(hose, hanging_set.links[hose].part.ref)
        shapes.append(Path(places=line.places, ink=Ink.HOSE_AT_REST, weight=Weight.MEDIUM, dashed=True, mark=mark))
    else:
        laid, _ = chain_shapes(indexed, course, ink=Ink.HOSE_AT_REST)
        shapes.extend(laid)
    for index, link in enumerate(hanging_set.links):
        if link.slot is Slot.NOZZLE:
            tip = Place(hook.x_m - 0.03, hook.y_m + link.part.length_m)
            shapes.extend(nozzle_shapes(hook, tip, PartMark(index, link.part.ref)))
    return tuple(shapes), line


def _in_use(position: Position, hanging_set: HangingSet) -> tuple[tuple[Shape, ...], HoseLine]:
    indexed = before_nozzle(hanging_set)
    line = line_in_use(position, [link for _, link in indexed], position.filler)
    shapes, middles = chain_shapes(indexed, Course(line.places), ink=Ink.HOSE, hidden_m=wound_length_m(position))
    nozzles: list[Shape] = []
    for index, link in enumerate(hanging_set.links):
        if link.slot is Slot.NOZZLE:
            inlet = line.places[-1]
            tip = Place(inlet.x_m + link.part.length_m * _SPOUT_LEVEL, inlet.y_m - link.part.length_m * _SPOUT_FALL)
            nozzles.extend(nozzle_shapes(inlet, tip, PartMark(index, link.part.ref)))
            middles[index] = Place((inlet.x_m + tip.x_m) / 2, (inlet.y_m + tip.y_m) / 2)
    balloons = tuple(
        Balloon(
            target=middles[index],
            offset_pt=_BALLOON_OFFSET_PT,
            text=str(index + 1),
            mark=PartMark(index, link.part.ref),
        )
        for index, link in enumerate(hanging_set.links)
    )
    return (*shapes, *nozzles, *balloons), line


def _cord(position: Position) -> tuple[Shape, ...]:
    """Return the retractor and the cord to its clamp, at rest."""
    clamp = clamp_place(position)
    above = Place(clamp.x_m, clamp.y_m + 0.25)
    return (
        Path(places=(above, clamp), ink=Ink.CORD, weight=Weight.THIN, dashed=True),
        Dot(centre=above, radius_pt=3.0, ink=Ink.STATION),
        Dot(centre=clamp, radius_pt=2.2, ink=Ink.CORD),
    )


def _points(position: Position) -> tuple[Shape, ...]:
    """Return the outlet and every filler; a filler's name stands at its distance below the ground."""
    shapes: list[Shape] = [Dot(centre=outlet_place(position), radius_pt=2.0, ink=Ink.STATION)]
    for row, filler in enumerate(position.fillers):
        place = filler_place(filler)
        shapes.append(Dot(centre=place, radius_pt=2.2, ink=Ink.VEHICLE))
        if place.x_m == 0.0:  # straight below the outlet there is no distance to write it at
            down = -17.0 - _NAME_ROW_PT * row
            shapes.append(Label(at=place, text=filler.label, anchor=Anchor.START, offset_pt=(10.0, down)))
    return tuple(shapes)


def _heights(position: Position, left_m: float, right_m: float, story: Story) -> tuple[Shape, ...]:
    """Return the heights of the outlet, on the left, and of the main filler, on the right."""
    height, filler = position.outlet.height_m, position.filler.height_m
    shapes: list[Shape] = [
        Measure(
            start=Place(left_m, 0.0),
            end=Place(left_m, height),
            text=story.show(height, Dimension.LENGTH),
            text_at=Anchor.END,
        ),
        Path(places=(Place(left_m, height), outlet_place(position)), ink=Ink.MEASURE, weight=Weight.HAIR, dashed=True),
    ]
    if filler != 0.0:
        low, high = sorted((0.0, filler))
        text = story.show(high - low, Dimension.LENGTH)
        shapes.append(Measure(start=Place(right_m, low), end=Place(right_m, high), text=text, text_at=Anchor.START))
        at_filler = filler_place(position.filler)
        shapes.append(
            Path(places=(at_filler, Place(right_m, filler)), ink=Ink.MEASURE, weight=Weight.HAIR, dashed=True)
        )
    return tuple(shapes)


def _distances(position: Position, floor_m: float, row_m: float, story: Story) -> tuple[Measure, ...]:
    """Return the way from the outlet to each filler with the filler's name, nearest on top.

    Names inside the vehicle would run into its lines and heights where the drawing is small.
    """
    fillers = sorted({filler_place(filler).x_m for filler in position.fillers} - {0.0})
    names = {x: _short(", ".join(one.label for one in position.fillers if filler_place(one).x_m == x)) for x in fillers}
    return tuple(
        Measure(
            start=Place(0.0, floor_m - row_m * (number + 1)),
            end=Place(distance, floor_m - row_m * (number + 1)),
            text=f"{names[distance]}{story.writing.colon} {story.show(distance, Dimension.LENGTH)}",
        )
        for number, distance in enumerate(fillers)
    )


def _short(name: str) -> str:
    """Return a name as there is room for it beside its distance."""
    return name if len(name) <= _LONGEST_NAME else f"{name[: _LONGEST_NAME - 1]}…"


def _scale_bar(left_m: float, y_m: float, story: Story) -> tuple[Shape, ...]:
    """Return a bar of one metre, or of three feet, halved."""
    length = 1.0 if story.display.system is UnitSystem.SI else 3 * _FOOT_M
    tick = 0.02
    dark = (Place(left_m, y_m), Place(left_m + length / 2, y_m))
    whole = (
        Place(left_m, y_m + tick),
        Place(left_m, y_m),
        Place(left_m + length, y_m),
        Place(left_m + length, y_m + tick),
    )
    return (
        Path(places=whole, ink=Ink.TEXT, weight=Weight.THIN),
        Path(places=dark, ink=Ink.TEXT, weight=Weight.HEAVY),
        Label(
            at=Place(left_m + length, y_m),
            text=story.show(length, Dimension.LENGTH),
            anchor=Anchor.START,
            offset_pt=(5.0, -1.0),
        ),
    )


def _description(plan: PositionPlan, story: Story) -> str:
    position = plan.position
    height = story.show(position.outlet.height_m, Dimension.LENGTH)
    reach = story.show(position.filler.distance_m, Dimension.LENGTH)
    return story.drawing_description(
        label=position.label,
        height=height,
        reach=reach,
        numbers=told_apart(plan.chosen.hanging_set.refs) if plan.chosen else (),
    )
