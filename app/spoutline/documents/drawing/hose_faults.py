"""What is wrong with how a hose hangs, marked where it is: by pattern and words, never by color alone."""

from __future__ import annotations

from collections.abc import Iterator
from itertools import groupby

from spoutline.documents.drawing.hose_lines import HoseLine, LineNote
from spoutline.documents.drawing.shapes import Dot, Ink, Path, Place, Weight
from spoutline.explain.plan.story import Story
from spoutline.frozen import frozen
from spoutline.model.check import CheckId, Outcome
from spoutline.model.plan import JudgedSet

_ON_GROUND_M = 1e-6
_AT_REST = (CheckId.GROUND_CLEARANCE_AT_REST,)
_IN_USE = (CheckId.GROUND_CLEARANCE_IN_USE, CheckId.BEND_RADIUS, CheckId.HOSE_REACH)


@frozen
class HoseFault:
    """What is wrong with one line: its marks, where they are, and the words for each failed check."""

    marks: tuple[Path | Dot, ...]
    x_m: float
    words: tuple[str, ...]


def hose_faults(judged: JudgedSet, rest: HoseLine, use: HoseLine, story: Story) -> tuple[HoseFault, ...]:
    """Return what is wrong: stretches that lie on the ground, the point that hangs too low or too tight.

    A hose that must not lie on the ground is marked along it; any other failed check at the lowest point of its line.
    The words belong below the ground, where they cover nothing.
    """
    failed = {check.id for check in judged.checks if check.outcome is Outcome.FAILS}
    return (*_of_line(rest, _AT_REST, failed, story), *_of_line(use, _IN_USE, failed, story))


def _of_line(line: HoseLine, checks: tuple[CheckId, ...], failed: set[CheckId], story: Story) -> Iterator[HoseFault]:
    # a hose that lies on a quay or runs out along the ground from a reel is not at fault: its check says so
    drags = checks[0] in failed and LineNote.ON_THE_GROUND in line.notes
    lies = list(_stretches(line)) if drags else []
    wrong = [check for check in checks if check in failed]
    if not wrong:
        return
    at = lies[0][len(lies[0]) // 2] if lies else min(line.places, key=lambda place: place.y_m)
    marks: list[Path | Dot] = [
        Path(places=stretch, ink=Ink.FAULT, weight=Weight.HEAVY, dashed=True) for stretch in lies
    ]
    marks.append(Dot(centre=at, radius_pt=3.0, ink=Ink.FAULT))
    yield HoseFault(tuple(marks), at.x_m, tuple(f"✗ {story.word(check)}" for check in wrong))


def _stretches(line: HoseLine) -> Iterator[tuple[Place, ...]]:
    """Yield the stretches of a line that lie on the ground, each of two places at least."""
    for lies, places in groupby(line.places, key=lambda place: abs(place.y_m) <= _ON_GROUND_M):
        stretch = tuple(places)
        if lies and len(stretch) > 1:
            yield stretch
