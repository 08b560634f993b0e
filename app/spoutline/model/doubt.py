"""How sure a verdict is: what could change it among the figures that nobody measured, at which value, how near."""

from __future__ import annotations

from collections.abc import Sequence
from enum import StrEnum

from spoutline.frozen import frozen
from spoutline.model.check import CheckId
from spoutline.model.finding import Severity
from spoutline.model.quantity import Dimension
from spoutline.model.requirement import RequirementId
from spoutline.model.site_figure import PlausibleRange, SiteFigure

Judged = CheckId | RequirementId  # a check, or a line that the parts are held to without one

MEASURE_FIRST = 3  # a person who has an hour at the station measures these


class Standing(StrEnum):
    """What is said of a check."""

    HOLDS = "holds"
    FAILS = "fails"
    NOT_SHOWN = "not_shown"  # it cannot be worked out, which is never a pass


@frozen(kw_only=True)
class Flip:
    """A verdict that is another beyond ``at_value``, a value of the figure in SI: above it, or below it.

    ``severity`` is that of the graver of both verdicts. All other figures are as surveyed or assumed, and the set is
    the same.
    """

    judged: Judged
    severity: Severity
    before: Standing
    after: Standing
    at_value: float
    above: bool


@frozen(kw_only=True)
class Reach:
    """How far a figure alone, anywhere in its range, lowers the margin of a check: SI, in the check's dimension.

    ``least_share`` is the least margin as a share of the limit; None where the limit is nothing.
    """

    check: CheckId
    dimension: Dimension
    margin: float
    least_margin: float
    least_share: float | None


@frozen(kw_only=True)
class UnmeasuredFigure:
    """A figure that nobody measured: what is assumed, where it may lie (SI), and what that does to the verdicts.

    ``least`` and ``most`` are the range with what is assumed taken in, as far as anything can be worked out in it.
    ``reaches`` are the checks whose margin it moves. ``filler`` is the label of a further filler that the figure is of;
    empty for the main one and for all other figures.
    """

    figure: SiteFigure
    filler: str = ""
    assumed: float
    least: float
    most: float
    range: PlausibleRange
    flips: tuple[Flip, ...]
    reaches: tuple[Reach, ...]

    @property
    def musts(self) -> int:
        """How many verdicts on musts could be others."""
        return sum(flip.severity is Severity.MUST for flip in self.flips)

    @property
    def nearest(self) -> Reach | None:
        """The check whose least margin is the smallest share of its limit; None where it moves none."""
        shares = [one for one in self.reaches if one.least_share is not None]
        return min(shares, key=lambda one: one.least_share or 0.0, default=None)

    @property
    def rank(self) -> tuple[float, ...]:
        """What it is sorted by: musts that could change, all verdicts that could, the least relative margin."""
        nearest = self.nearest
        share = nearest.least_share if nearest is not None and nearest.least_share is not None else float("inf")
        return -self.musts, -len(self.flips), share


@frozen(kw_only=True)
class CheckDoubt:
    """A check of a position: its margin, the least that one unmeasured figure leaves of it, and which one that is.

    Margins in SI, None of a check that has none. ``figure`` is None where none moves it; ``flips_by`` are the figures
    that could change its verdict.
    """

    check: CheckId
    severity: Severity
    dimension: Dimension
    margin: float | None
    least_margin: float | None
    figure: SiteFigure | None
    flips_by: tuple[SiteFigure, ...]


@frozen(kw_only=True)
class PositionDoubts:
    """What a position's verdicts rest on that nobody measured, what decides most first."""

    label: str
    figures: tuple[UnmeasuredFigure, ...]
    checks: tuple[CheckDoubt, ...]

    @property
    def first(self) -> tuple[UnmeasuredFigure, ...]:
        """What to measure first: figures that move a verdict or a margin."""
        return tuple(one for one in self.figures if one.flips or one.reaches)[:MEASURE_FIRST]


@frozen(kw_only=True)
class VisitLine:
    """One line of a list for a visit: a figure with all positions where nobody measured it, the gravest case first.

    ``filler`` as of ``UnmeasuredFigure``.
    """

    figure: SiteFigure
    filler: str = ""
    cases: tuple[tuple[str, UnmeasuredFigure], ...]  # the position's label, and the figure there

    @property
    def labels(self) -> tuple[str, ...]:
        """The positions, those whose verdicts could change first."""
        return tuple(label for label, _ in self.cases)

    @property
    def flips(self) -> int:
        """How many verdicts of the station could be others."""
        return sum(len(one.flips) for _, one in self.cases)

    @property
    def musts(self) -> int:
        """How many of them are on musts."""
        return sum(one.musts for _, one in self.cases)


@frozen
class StationDoubts:
    """What the verdicts of a station rest on that nobody measured; positions without a set have none."""

    positions: tuple[PositionDoubts, ...]

    @property
    def lines(self) -> tuple[VisitLine, ...]:
        """The list for a visit: what could change most verdicts first, musts before others, then the least margin."""
        fillers = sorted({found.filler for one in self.positions for found in one.figures})
        found = (_visit_line(figure, filler, self.positions) for figure in SiteFigure for filler in fillers)
        lines = [line for line in found if line is not None]
        return tuple(sorted(lines, key=lambda line: (-line.musts, -line.flips, line.cases[0][1].rank)))


def _visit_line(figure: SiteFigure, filler: str, positions: Sequence[PositionDoubts]) -> VisitLine | None:
    cases = [
        (one.label, found)
        for one in positions
        for found in one.figures
        if found.figure is figure and found.filler == filler
    ]
    if not cases:
        return None
    return VisitLine(figure=figure, filler=filler, cases=tuple(sorted(cases, key=lambda case: case[1].rank)))
