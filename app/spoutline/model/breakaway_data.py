"""The figures that a breakaway adds to those of every part, each declared here and only here."""

from __future__ import annotations

from enum import StrEnum
from typing import Annotated

from spoutline.frozen import frozen
from spoutline.model.figure import Figure, TableUnit
from spoutline.model.quantity import Dimension

_MM = TableUnit.MILLIMETRE


class Placement(StrEnum):
    """Where in the chain a breakaway may sit, by its marking."""

    DISPENSER_END = "dispenser_end"
    NOZZLE_END = "nozzle_end"


@frozen(kw_only=True)
class BreakawayData:
    """What a breakaway or swivel-breakaway adds. ``seal_diameter_m`` is None for a pressure-balanced coupling."""

    separation_minimum_n: Annotated[
        float,
        Figure(
            column="separation_min_n",
            dimension=Dimension.FORCE,
            above=0,
            most=20_000,
            up_to="separation_maximum_n",
            holds="least pull that separates it",
            label="least_pull_that_parts_it",
            range_label="parts_at_a_pull",
            tells=1,
            bare=True,
        ),
    ]
    separation_maximum_n: Annotated[
        float,
        Figure(
            column="separation_max_n",
            dimension=Dimension.FORCE,
            above=0,
            most=20_000,
            holds="greatest pull that it needs to separate",
            label="greatest_pull_that_parts_it",
        ),
    ]
    reconnectable: Annotated[
        bool,
        Figure(
            column="reconnectable",
            holds="can be put together again after a separation",
            label="can_be_reconnected",
            tells=2,
        ),
    ]
    closes_vapour: Annotated[
        bool,
        Figure(
            column="closes_vapour",
            holds="closes the vapor path when it separates",
            label="closes_the_vapour_path",
        ),
    ]
    omnidirectional: Annotated[
        bool,
        Figure(column="omnidirectional", holds="separates at any angle of pull", label="parts_at_any_angle"),
    ]
    placements: Annotated[
        frozenset[Placement],
        Figure(
            column="placements",
            holds="where it may sit: dispenser_end, nozzle_end",
            label="place",
            at_least_one=True,
            tells=4,
            bare=True,
        ),
    ]
    seal_diameter_m: Annotated[
        float | None,
        Figure(
            column="seal_diameter_mm",
            unit=_MM,
            dimension=Dimension.DIAMETER,
            above=0,
            most=100,
            holds="diameter that the pressure acts on",
            note="empty for a balanced coupling",
            label="seal_diameter",
            where_stated=True,
        ),
    ]
