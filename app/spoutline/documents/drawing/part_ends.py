"""One part upright with its two ends: thread, size, male or female, and what each end carries."""

from __future__ import annotations

from collections.abc import Iterator
from typing import Final

from spoutline.documents.drawing.part_glyphs import HEIGHTS_MM, MM, Frame, female_socket, male_stub, part_glyph
from spoutline.documents.drawing.shapes import Anchor, Box, Drawing, Ink, Label, PartMark, Path, Place, Shape, Weight
from spoutline.explain.plan.story import Story
from spoutline.model.part import PartKind
from spoutline.model.part_ref import PartRef
from spoutline.model.port import FlowPath, Gender, Port
from spoutline.model.requirement import Slot

_MARGIN_M: Final = 9 * MM  # above and below the part: room for a thread and its words
_HALF_M: Final = 15 * MM
_LINE_PT: Final = 12.5  # farther apart than a line is high, so that the window sets none above another
_SIZE_PT: Final = 8.0
_INNER_HALF_M: Final = 0.7 * MM  # of the second path of a coaxial end
_NO_MARK: Final = PartMark(-1, PartRef(""))
_SLOTS: Final = {slot.value: slot for slot in Slot}
_NO_OUTLET: Final = frozenset({PartKind.NOZZLE})  # its spout joins nothing


def part_ends_drawing(kind: PartKind, inlet: Port | None, outlet: Port | None, story: Story) -> Drawing | None:
    """Return a part of a kind with the ends that are known, dispenser at the top; None for one that hangs in no chain.

    An end that nobody stated is drawn without a thread and says so. Metres are those of paper; nothing is to scale.
    """
    slot = _SLOTS.get(kind.value)
    if slot is None:
        return None
    height = HEIGHTS_MM[slot] * MM
    frame = Frame(0.0, _MARGIN_M + height, _MARGIN_M, _NO_MARK)
    known = [port for port in (inlet, outlet) if port is not None]
    shapes: list[Shape] = list(part_glyph(slot, frame, coaxial=any(port.path is not FlowPath.SINGLE for port in known)))
    shapes += _end(inlet, frame.top_m, 1.0, story)
    told = [_told(inlet, story)]
    if kind not in _NO_OUTLET:
        shapes += _end(outlet, frame.bottom_m, -1.0, story)
        told.append(_told(outlet, story))
    return Drawing(
        title=story.title(kind),
        description=f"{story.title(kind)}{story.writing.colon} {'; '.join(told)}",
        shapes=tuple(shapes),
        box=Box(-_HALF_M, 0.0, _HALF_M, height + 2 * _MARGIN_M),
        true_scale=False,
    )


def _end(port: Port | None, end_m: float, direction: float, story: Story) -> Iterator[Shape]:
    """Yield the thread of an end and its words; ``direction`` 1 is the upper end."""
    if port is not None:
        thread = male_stub if port.gender is Gender.MALE else female_socket
        yield from thread(0.0, end_m, direction, _NO_MARK)
        if port.path is not FlowPath.SINGLE:
            far = end_m + direction * 3 * MM
            for side in (-1.0, 1.0):
                places = (Place(side * _INNER_HALF_M, end_m - direction * 1.5 * MM), Place(side * _INNER_HALF_M, far))
                yield Path(places=places, ink=Ink.HOSE, weight=Weight.THIN, dashed=True)
    lines = _lines(port, story)
    at = Place(0.0, end_m + direction * 4 * MM)
    for number, text in enumerate(lines if direction < 0 else reversed(lines)):
        offset = direction * (number + 0.5) * _LINE_PT + (0 if direction > 0 else -_SIZE_PT / 2)
        yield Label(at=at, text=text, anchor=Anchor.MIDDLE, offset_pt=(0.0, offset), size_pt=_SIZE_PT)


def _lines(port: Port | None, story: Story) -> tuple[str, ...]:
    if port is None:
        return ("?",)
    return (f"{port.size} {story.word(port.thread)} {story.word(port.gender)}", story.word(port.path))


def _told(port: Port | None, story: Story) -> str:
    return ", ".join(_lines(port, story))
