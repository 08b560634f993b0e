"""What to measure on site as a stable JSON document: what `measure --json` prints."""

from __future__ import annotations

from typing import Literal

from pydantic import Field

from spoutline.documents.json.head import HeadedDocument, ProvenanceRecord, Record
from spoutline.model.doubt import CheckDoubt, Flip, PositionDoubts, Reach, Standing, StationDoubts, UnmeasuredFigure
from spoutline.model.finding import Severity
from spoutline.model.limit import LimitStatus
from spoutline.model.plan import Provenance
from spoutline.model.quantity import Dimension
from spoutline.model.site_figure import SiteFigure


class FlipRecord(Record):
    """A verdict that is another beyond ``at_value``: above it, or below it."""

    judged: str = Field(description="The check, or the line that parts are held to without one.")
    severity: Severity
    before: Standing
    after: Standing
    at_value: float
    above: bool


class ReachRecord(Record):
    """How far the figure alone, in its range, lowers the margin of a check; margins in SI."""

    check: str
    dimension: Dimension
    margin: float
    least_margin: float
    least_share_of_limit: float | None


class FigureRecord(Record):
    """A figure that nobody measured, in SI; ``range_*`` say where it may lie and how well that is founded."""

    figure: SiteFigure
    filler: str = Field("", description="Label of the further filler that it is of; empty for the main one.")
    dimension: Dimension
    assumed: float
    range_least: float
    range_most: float
    range_source: str
    range_status: LimitStatus
    flips: tuple[FlipRecord, ...]
    margins: tuple[ReachRecord, ...]


class CheckRecord(Record):
    """A check with the least margin that one unmeasured figure leaves; ``figure`` is null where none moves it."""

    check: str
    severity: Severity
    dimension: Dimension
    margin: float | None
    least_margin: float | None
    figure: SiteFigure | None
    flips_by: tuple[SiteFigure, ...]


class PositionRecord(Record):
    """One position with a set: its figures, what to measure first first, and its checks."""

    position: str
    figures: tuple[FigureRecord, ...]
    checks: tuple[CheckRecord, ...]


class VisitRecord(Record):
    """One line of the list for a visit, the most urgent first; ``positions`` those with the gravest case first."""

    figure: SiteFigure
    filler: str = Field("", description="Label of the further filler that it is of; empty for the main one.")
    positions: tuple[str, ...]
    verdicts: int = Field(description="How many verdicts of the station could be others.")
    musts: int


class MeasureDocument(HeadedDocument):
    """What `measure --json` prints. Fields are added in later versions, never renamed."""

    format: Literal["spoutline-measure"] = "spoutline-measure"
    jurisdiction: str
    visit: tuple[VisitRecord, ...]
    positions: tuple[PositionRecord, ...]


def measure_json(doubts: StationDoubts, provenance: Provenance) -> str:
    """Return the document as indented JSON, the same text for the same result."""
    document = MeasureDocument(
        **ProvenanceRecord.of(provenance).model_dump(),
        jurisdiction=provenance.jurisdiction_id,
        visit=tuple(
            VisitRecord(
                figure=line.figure,
                filler=line.filler,
                positions=line.labels,
                verdicts=line.flips,
                musts=line.musts,
            )
            for line in doubts.lines
        ),
        positions=tuple(map(_position, doubts.positions)),
    )
    return document.model_dump_json(indent=2) + "\n"


def _position(doubts: PositionDoubts) -> PositionRecord:
    return PositionRecord(
        position=doubts.label,
        figures=tuple(map(_figure, doubts.figures)),
        checks=tuple(map(_check, doubts.checks)),
    )


def _figure(one: UnmeasuredFigure) -> FigureRecord:
    return FigureRecord(
        figure=one.figure,
        filler=one.filler,
        dimension=one.figure.dimension,
        assumed=one.assumed,
        range_least=one.least,
        range_most=one.most,
        range_source=one.range.source,
        range_status=one.range.status,
        flips=tuple(map(_flip, one.flips)),
        margins=tuple(map(_reach, one.reaches)),
    )


def _flip(flip: Flip) -> FlipRecord:
    return FlipRecord(
        judged=flip.judged.value,
        severity=flip.severity,
        before=flip.before,
        after=flip.after,
        at_value=flip.at_value,
        above=flip.above,
    )


def _reach(reach: Reach) -> ReachRecord:
    return ReachRecord(
        check=reach.check,
        dimension=reach.dimension,
        margin=reach.margin,
        least_margin=reach.least_margin,
        least_share_of_limit=reach.least_share,
    )


def _check(one: CheckDoubt) -> CheckRecord:
    return CheckRecord(
        check=one.check,
        severity=one.severity,
        dimension=one.dimension,
        margin=one.margin,
        least_margin=one.least_margin,
        figure=one.figure,
        flips_by=one.flips_by,
    )
