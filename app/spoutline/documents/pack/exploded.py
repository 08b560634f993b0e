"""The chain taken apart in the order of assembly: balloons for the parts, threads and seals at the joints."""

from __future__ import annotations

from collections.abc import Iterator
from itertools import pairwise
from typing import Final

from spoutline.documents.drawing.part_glyphs import (
    HEIGHTS_MM,
    MM,
    Frame,
    female_socket,
    male_stub,
    outlet_glyph,
    part_glyph,
    vehicle_arrow,
)
from spoutline.documents.drawing.shapes import (
    Anchor,
    Balloon,
    Box,
    Dot,
    Drawing,
    Ink,
    Label,
    PartMark,
    Path,
    Place,
    Round,
    Shape,
    Weight,
)
from spoutline.explain.pack.words import PackWord as Word
from spoutline.explain.plan.story import Story
from spoutline.model.part_ref import PartRef
from spoutline.model.plan import Joint, JudgedSet, SetLink
from spoutline.model.port import FlowPath, Gender, Seal
from spoutline.rules.chain.order import vehicle_side
from spoutline.rules.parts.figures import BREAKAWAY_SLOTS

WIDTH_M: Final = 80 * MM
WANTED_HEIGHT_M: Final = 104 * MM
_AXIS_M: Final = 18.5 * MM
_BALLOON_M: Final = 3.5 * MM
_TEXT_M: Final = 32 * MM
_OUTLET_MM: Final = 7.5
_GAP_MM: Final = 7.4
_PART_SIZE_PT: Final = 7.0
_JOINT_SIZE_PT: Final = 6.4
_LINE_PT: Final = 7.6
_LEAST_SQUEEZE: Final = 0.78  # closer, the texts of the shortest part and its joints would run into each other
_POINTS_PER_M: Final = 72 / 0.0254
_NO_MARK: Final = PartMark(-1, PartRef(""))
_LETTERS: Final = "ABCDEFGHIJKLMNOPQRSTUVWXYZ"


def exploded_drawing(judged: JudgedSet, story: Story) -> Drawing:
    """Return the chain from the dispenser outlet down to the nozzle, drawn apart.

    Balloons number the links from 1, joints are lettered from A. The drawing is in metres of paper at full size. A long
    chain is drawn closer to come to ``WANTED_HEIGHT_M``, as far as its lines of text stay apart.
    """
    links = judged.hanging_set.links
    heights = [_OUTLET_MM, *(HEIGHTS_MM[link.slot] for link in links)]
    natural = (sum(heights) + _GAP_MM * len(links)) * MM
    squeeze = min(1.0, max(_LEAST_SQUEEZE, WANTED_HEIGHT_M / natural))
    top = natural * squeeze
    frames: list[Frame] = []
    at = top
    for number, height in enumerate(heights):
        bottom = at - height * MM * squeeze
        mark = PartMark(number - 1, links[number - 1].part.ref) if number else _NO_MARK
        frames.append(Frame(_AXIS_M, at, bottom, mark))
        at = bottom - _GAP_MM * MM * squeeze
    shapes: list[Shape] = []
    for joint, (upper, lower), letter in zip(judged.joints, pairwise(frames), _LETTERS, strict=False):
        shapes.extend(_joint_shapes(joint, upper, lower, letter, story))
    shapes.extend(_outlet_shapes(frames[0], story))
    for place, (link, frame) in enumerate(zip(links, frames[1:], strict=True)):
        shapes.extend(_part_shapes(link, frame, story))
        toward = vehicle_side(judged.hanging_set, place)
        if link.slot in BREAKAWAY_SLOTS and toward is not None:
            shapes.extend(vehicle_arrow(frame, frames[1 + toward]))
    return Drawing(
        title=story.word(Word.EXPLODED),
        description=story.word(Word.EXPLODED_NOTE),
        shapes=tuple(shapes),
        box=Box(0.0, 0.0, WIDTH_M, top),
        true_scale=False,
    )


def _outlet_shapes(frame: Frame, story: Story) -> Iterator[Shape]:
    yield from outlet_glyph(frame)
    middle = Place(_TEXT_M, (frame.top_m + frame.bottom_m) / 2)
    text = story.word(Word.DISPENSER_OUTLET)
    yield Label(at=middle, text=text, anchor=Anchor.START, offset_pt=(0.0, 0.0), size_pt=_PART_SIZE_PT)


def _part_shapes(link: SetLink, frame: Frame, story: Story) -> Iterator[Shape]:
    port = link.part.outlet or link.part.inlet
    coaxial = port is not None and port.path is not FlowPath.SINGLE
    yield from part_glyph(link.slot, frame, coaxial=coaxial)
    middle = (frame.top_m + frame.bottom_m) / 2
    target = Place(_AXIS_M - 2.2 * MM, middle)
    offset = ((_BALLOON_M - target.x_m) * _POINTS_PER_M, 0.0)
    yield Balloon(target=target, offset_pt=offset, text=str(frame.mark.link + 1), mark=frame.mark)
    name = Place(_TEXT_M, middle)
    yield Label(at=name, text=story.title(link.slot), anchor=Anchor.START, offset_pt=(0.0, 0.6), size_pt=_PART_SIZE_PT)
    yield Label(at=name, text=link.part.number, anchor=Anchor.START, offset_pt=(0.0, -7.4), size_pt=_PART_SIZE_PT)


def _joint_shapes(joint: Joint, upper: Frame, lower: Frame, letter: str, story: Story) -> Iterator[Shape]:
    middle = (upper.bottom_m + lower.top_m) / 2
    axis = (Place(_AXIS_M, upper.bottom_m), Place(_AXIS_M, lower.top_m))
    yield Path(places=axis, ink=Ink.MEASURE, weight=Weight.HAIR, dashed=True)
    yield from _thread(joint.upstream_port.gender, upper.bottom_m, -1.0, upper.mark)
    yield from _thread(joint.downstream_port.gender, lower.top_m, 1.0, lower.mark)
    leader = (Place(_AXIS_M + 3.4 * MM, middle), Place(_TEXT_M - 5.4 * MM, middle))
    yield Path(places=leader, ink=Ink.MEASURE, weight=Weight.HAIR)
    yield from _seal_sign(joint.seal, Place(_TEXT_M - 3.2 * MM, middle))
    lines = [thread_text(joint, letter, story), story.word(joint.seal)]
    if joint.downstream_port.path is not FlowPath.SINGLE:
        lines.append(story.word(joint.downstream_port.path))
    at, first_pt = Place(_TEXT_M, middle), _LINE_PT * (len(lines) / 2 - 1) + 1.6
    for number, text in enumerate(lines):
        offset = (0.0, first_pt - _LINE_PT * number)
        yield Label(at=at, text=text, anchor=Anchor.START, offset_pt=offset, size_pt=_JOINT_SIZE_PT)


def thread_text(joint: Joint, letter: str, story: Story) -> str:
    """Return a joint's letter, its thread, and which way the male thread enters."""
    port = joint.downstream_port
    arrow = "↑" if port.gender is Gender.MALE else "↓"
    # where a joint is made of unlike thread standards or sizes both are named: the plan found them to mate
    upstream = joint.upstream_port
    alike = (upstream.thread, upstream.size) == (port.thread, port.size)
    threads = f"{port.size} {story.word(port.thread)}"
    if not alike:
        threads = f"{upstream.size} {story.word(upstream.thread)} / {threads}"
    return f"{letter}  {threads}  {story.word(Gender.MALE)} {arrow} {story.word(Gender.FEMALE)}"


def _thread(gender: Gender, end_m: float, direction: float, mark: PartMark) -> tuple[Shape, ...]:
    if gender is Gender.MALE:
        return male_stub(_AXIS_M, end_m, direction, mark)
    return female_socket(_AXIS_M, end_m, direction, mark)


def _seal_sign(seal: Seal, at: Place) -> Iterator[Shape]:
    """Return a filled drop for sealant, a ring for an O-ring, a bar for a gasket: told apart without colour."""
    match seal:
        case Seal.SEALANT:
            yield Dot(centre=at, radius_pt=3.2, ink=Ink.FITTING)
        case Seal.O_RING:
            yield Round(centre=at, radius_m=1.1 * MM, ink=Ink.FITTING, weight=Weight.MEDIUM, fill=Ink.PAPER)
        case Seal.FLAT_GASKET:
            bar = (Place(at.x_m - 1.3 * MM, at.y_m), Place(at.x_m + 1.3 * MM, at.y_m))
            yield Path(places=bar, ink=Ink.FITTING, weight=Weight.HEAVY)
        case Seal.MADE_UP:
            return  # there is nothing to do at it
