"""Sets weighed against each other as a stable JSON document: what `weigh --json` prints."""

from __future__ import annotations

from decimal import Decimal
from typing import Literal

from pydantic import Field

from spoutline.documents.json.head import HeadedDocument, ProvenanceRecord, Record
from spoutline.model.front import (
    MONEY,
    UNIT_OF,
    Alike,
    FrontAxis,
    FrontGroup,
    FrontPoint,
    PositionFront,
    StationFront,
    shown_figure,
)
from spoutline.model.limit import LimitStatus
from spoutline.model.part_kind import PartKind
from spoutline.model.plan import Provenance
from spoutline.model.requirement import RequirementId, Slot
from spoutline.model.yearly_cost import LiquidUnit, YearlyBasis, YearlyPart

_UNITS = {
    FrontAxis.LEAD: "d",
    FrontAxis.FLOW: "Pa",
    FrontAxis.MASS: "kg",
    FrontAxis.PERMEATION: "kg",
    FrontAxis.PRACTICE: "",
}


class AxisRecord(Record):
    """One axis; less is better on each."""

    axis: FrontAxis
    unit: str = Field(description="Minor units of the currency are `minor`; a count has no unit.")
    gap: float = Field(description="How much better at most a set that is not shown may be; 0 where it is exact.")


class AlikeRecord(Record):
    """Another maker's part that differs in nothing else."""

    slot: Slot
    part_number: str
    maker: str
    other_part_number: str
    other_maker: str


class LifeRecord(Record):
    """After how many years a kind of part is expected to be replaced."""

    kind: PartKind
    years: float
    source: str = Field(description="Empty where the terms state it.")
    status: LimitStatus | None = Field(description="How well it is founded; null where the terms state it.")


class YearlyRecord(Record):
    """The figures that a yearly cost rests on; null where nothing states one."""

    adds_up: tuple[YearlyPart, ...]
    left_out: tuple[YearlyPart, ...]
    service_lives: tuple[LifeRecord, ...]
    drive_offs_per_position: float | None
    liquid_price: float | None
    liquid_unit: LiquidUnit
    interest_percent: float | None
    spares_percent: dict[PartKind, float]


class PointRecord(Record):
    """A set that no other outdoes; ``figures`` by axis, all axes that the position has, null where none is stated."""

    number: int
    figures: dict[FrontAxis, float | None]
    set: tuple[str, ...]
    set_makers: tuple[str, ...]
    price_minor: int = Field(description="What is bought.")
    flow_m3_s: float | None = Field(description="Delivered with the liquid hot.")
    yearly: dict[YearlyPart, int] = Field({}, description="Parts of the yearly cost in minor units, where it has one.")
    gives_up: tuple[RequirementId, ...]
    alike: tuple[AlikeRecord, ...]


class LeftOutRecord(Record):
    """Parts that state no figure for an axis: sets with them are left out."""

    axis: FrontAxis
    slot: Slot
    count: int


class FrontRecord(Record):
    """The front of one position, or of several that ask the same."""

    positions: tuple[str, ...]
    axes: tuple[AxisRecord, ...]
    exact: bool
    planned: int | None = Field(description="Number of the plan's own set; null where another set outdoes it.")
    planned_figures: dict[FrontAxis, float | None] | None
    most_departures: int | None = Field(description="From good practice, of sets that count; null for any number.")
    turned_down: int = Field(description="Sets that full checks alone forbade.")
    open: int = Field(description="Of them those in whose place nothing was looked for any more.")
    left_out: tuple[LeftOutRecord, ...]
    yearly: YearlyRecord | None = Field(None, description="What a yearly cost rests on, where one was reckoned.")
    points: tuple[PointRecord, ...]


class FrontDocument(HeadedDocument):
    """What `weigh SURVEY POSITION --json` prints. Fields are added in later versions, never renamed."""

    format: Literal["spoutline-front"] = "spoutline-front"
    jurisdiction: str
    currency: str
    front: FrontRecord


class CombinationRecord(Record):
    """Sets of all positions together; ``choices`` are numbers of points, in the order of ``groups``."""

    number: int
    price_minor: int
    other: float
    choices: tuple[int, ...]


class StationFrontDocument(HeadedDocument):
    """What `weigh SURVEY --json` prints. Fields are added in later versions, never renamed."""

    format: Literal["spoutline-station-front"] = "spoutline-station-front"
    jurisdiction: str
    currency: str
    axis: FrontAxis
    unit: str
    exact: bool
    gap_minor: int = Field(description="By how much a combination no worse on the axis may be cheaper at most.")
    planned_price_minor: int | None
    planned_other: float | None
    without_set: tuple[str, ...]
    combinations: tuple[CombinationRecord, ...]
    groups: tuple[FrontRecord, ...]


def front_json(found: PositionFront, provenance: Provenance) -> str:
    """Return the document of a position as indented JSON, the same text for the same result."""
    document = FrontDocument(
        **ProvenanceRecord.of(provenance).model_dump(),
        jurisdiction=provenance.jurisdiction_id,
        currency=found.currency,
        front=_front((found.label,), found),
    )
    return document.model_dump_json(indent=2) + "\n"


def station_front_json(found: StationFront) -> str:
    """Return the document of a station as indented JSON, the same text for the same result."""
    planned = found.planned
    document = StationFrontDocument(
        **ProvenanceRecord.of(found.made_from).model_dump(),
        jurisdiction=found.made_from.jurisdiction_id,
        currency=found.currency,
        axis=found.axis,
        unit=_unit(found.axis),
        exact=found.is_exact,
        gap_minor=found.gap_minor,
        planned_price_minor=planned[0] if planned else None,
        planned_other=_figure(found.axis, planned[1]) if planned else None,
        without_set=found.without_set,
        combinations=tuple(
            CombinationRecord(
                number=at + 1,
                price_minor=one.price,
                other=_figure(found.axis, one.other),
                choices=tuple(choice + 1 for choice in one.choices),
            )
            for at, one in enumerate(found.points)
        ),
        groups=tuple(map(_group, found.groups)),
    )
    return document.model_dump_json(indent=2) + "\n"


def _group(group: FrontGroup) -> FrontRecord:
    return _front(group.labels, group.front)


def _front(labels: tuple[str, ...], found: PositionFront) -> FrontRecord:
    mine = found.planned_figures
    return FrontRecord(
        positions=labels,
        axes=tuple(
            AxisRecord(axis=axis, unit=_unit(axis), gap=_figure(axis, gap))
            for axis, gap in zip(found.axes, found.gap, strict=True)
        ),
        exact=found.is_exact,
        planned=None if found.planned is None else found.planned + 1,
        planned_figures=None
        if mine is None
        else {axis: _figure(axis, one) for axis, one in zip(found.axes, mine, strict=True)},
        most_departures=found.most_departures,
        turned_down=found.turned_down,
        open=len(found.open_figures),
        left_out=tuple(LeftOutRecord(axis=one.axis, slot=one.slot, count=one.count) for one in found.left_out),
        yearly=None if found.yearly is None else _yearly(found.yearly),
        points=tuple(_point(at + 1, one) for at, one in enumerate(found.points)),
    )


def _yearly(basis: YearlyBasis) -> YearlyRecord:
    return YearlyRecord(
        adds_up=basis.parts,
        left_out=basis.left_out,
        service_lives=tuple(
            LifeRecord(kind=one.kind, years=float(one.years), source=one.source, status=one.status)
            for one in basis.lives
        ),
        drive_offs_per_position=_float(basis.drive_offs_per_position),
        liquid_price=_float(basis.liquid_price),
        liquid_unit=basis.liquid_unit,
        interest_percent=_float(basis.interest_percent),
        spares_percent={kind: float(share) for kind, share in basis.spares},
    )


def _float(value: Decimal | None) -> float | None:
    return None if value is None else float(value)


def _point(number: int, point: FrontPoint) -> PointRecord:
    hanging_set = point.judged.hanging_set
    return PointRecord(
        number=number,
        figures={axis: None if one is None else _figure(axis, one) for axis, one in point.all_figures.items()},
        set=hanging_set.numbers,
        set_makers=tuple(part.maker for part in hanging_set.refs),
        price_minor=point.price_minor,
        flow_m3_s=point.flow_m3_s,
        yearly=dict(point.yearly),
        gives_up=point.given_up,
        alike=tuple(map(_alike, point.alike)),
    )


def _alike(one: Alike) -> AlikeRecord:
    return AlikeRecord(
        slot=one.slot,
        part_number=one.part.number,
        maker=one.part.maker,
        other_part_number=one.other.number,
        other_maker=one.other.maker,
    )


def _unit(axis: FrontAxis) -> str:
    return "minor" if axis in MONEY else _UNITS[axis]


def _figure(axis: FrontAxis, figure: int) -> float:
    return float(figure) if axis in MONEY or axis not in UNIT_OF else round(shown_figure(axis, figure), 9)
