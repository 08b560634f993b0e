"""The figures that a nozzle adds to those of every part, each declared here and only here."""

from __future__ import annotations

from enum import StrEnum
from typing import Annotated

from spoutline.frozen import frozen
from spoutline.model.figure import Figure, TableUnit
from spoutline.model.liquid import LiquidFamily
from spoutline.model.quantity import Dimension

_MM = TableUnit.MILLIMETRE
_KPA = TableUnit.KILOPASCAL
_L_MIN = TableUnit.LITRE_PER_MINUTE


class NozzleOperation(StrEnum):
    """Whether the nozzle closes by itself at a full tank."""

    AUTOMATIC = "automatic"
    MANUAL = "manual"


class NozzleService(StrEnum):
    """The filler a nozzle is made for; decides its spout."""

    GASOLINE = "gasoline"
    DIESEL_CAR = "diesel_car"
    DIESEL_TRUCK = "diesel_truck"
    DEF = "def"


@frozen(kw_only=True)
class NozzleData:
    """What a nozzle adds. Flows in m3/s, pressures in Pa, lengths in m."""

    operation: Annotated[
        NozzleOperation,
        Figure(column="operation", holds="whether it closes by itself at a full tank", tells=2, bare=True),
    ]
    service: Annotated[
        NozzleService,
        Figure(column="service", holds="the filler it is made for", label="made_for", tells=1, bare=True),
    ]
    liquids: Annotated[
        frozenset[LiquidFamily],
        Figure(column="liquids", holds="liquid families it may deliver", at_least_one=True),
    ]
    spout_outside_diameter_m: Annotated[
        float,
        Figure(
            column="spout_od_mm",
            unit=_MM,
            dimension=Dimension.DIAMETER,
            least=5,
            most=60,
            holds="outside diameter of the spout",
            label="spout_outside_diameter",
        ),
    ]
    spout_straight_length_m: Annotated[
        float,
        Figure(
            column="spout_straight_mm",
            unit=_MM,
            dimension=Dimension.DIAMETER,
            above=0,
            most=400,
            holds="straight length at the spout's end",
            label="straight_end_of_the_spout",
        ),
    ]
    spring_distance_m: Annotated[
        float | None,
        Figure(
            column="spring_distance_mm",
            unit=_MM,
            dimension=Dimension.DIAMETER,
            above=0,
            most=400,
            holds="end of the spout spring from the tip",
            label="spring_ends_before_the_tip",
            where_stated=True,
        ),
    ]
    hold_open: Annotated[bool, Figure(column="hold_open", holds="hold-open latch", label="hold_open_latch", tells=30)]
    no_pressure_device: Annotated[
        bool, Figure(column="no_pressure_device", holds="closes by itself without pressure", tells=31)
    ]
    attitude_device: Annotated[bool, Figure(column="attitude_device", holds="closes when held upwards", tells=33)]
    bellows: Annotated[bool, Figure(column="bellows", holds="bellows over the spout")]
    misfill_interlock: Annotated[
        bool, Figure(column="misfill_interlock", holds="opens only inside the magnetic filler insert")
    ]
    enhanced_conventional: Annotated[
        bool,
        Figure(column="enhanced_conventional", holds="low-spillage single-path nozzle with boot interlock", tells=32),
    ]
    def_zone_evaluated: Annotated[
        bool,
        Figure(
            column="def_zone_evaluated",
            holds="evaluated for use in a flammable zone",
            label="evaluated_for_the_flammable_zone",
        ),
    ]
    minimum_flow_m3_s: Annotated[
        float | None,
        Figure(
            column="min_flow_l_min",
            unit=_L_MIN,
            dimension=Dimension.FLOW,
            above=0,
            most=400,
            up_to="maximum_flow_m3_s",
            holds="least flow at which it shuts off",
            label="least_flow_for_shut_off",
        ),
    ]
    maximum_flow_m3_s: Annotated[
        float,
        Figure(
            column="max_flow_l_min",
            unit=_L_MIN,
            dimension=Dimension.FLOW,
            above=0,
            most=400,
            holds="greatest flow",
            label="greatest_flow",
        ),
    ]
    opening_pressure_pa: Annotated[
        float | None,
        Figure(
            column="opening_pressure_kpa",
            unit=_KPA,
            dimension=Dimension.PRESSURE,
            above=0,
            most=400,
            holds="pressure at which it opens",
            label="opening_pressure",
            where_stated=True,
        ),
    ]
