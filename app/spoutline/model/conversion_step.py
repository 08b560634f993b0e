"""The table of steps from which the sequence of a conversion is made."""

from __future__ import annotations

from collections.abc import Mapping
from enum import StrEnum

from spoutline.frozen import frozen
from spoutline.model.limit import LimitStatus


class StepScope(StrEnum):
    """What a step of the table is done once for."""

    SITE = "site"
    DISPENSER = "dispenser"
    POSITION = "position"
    PART_REMOVED = "part_removed"
    PART_FITTED = "part_fitted"
    CLOSING = "closing"
    TANK = "tank"  # once for each change of a tank's liquid
    TANK_POSITION = "tank_position"  # for each position that such a tank feeds


class StepRole(StrEnum):
    """Who does a step."""

    OWNER = "owner"
    CONTRACTOR = "contractor"
    TESTER = "tester"
    AGENCY = "agency"


class StepCondition(StrEnum):
    """When a step belongs into the plan."""

    ALWAYS = "always"
    DECOMMISSION = "decommission"
    ASSIST = "assist"
    BALANCE = "balance"
    ADDS_RECOVERY = "adds_recovery"
    CHANGES_LIQUID = "changes_liquid"
    HARDWARE_FIRST = "hardware_first"  # the new sets serve both liquids
    WITHIN_CHANGE = "within_change"  # they do not: the old liquid is gone before they hang
    TANK_NOTICE = "tank_notice"
    CENTRAL_VACUUM = "central_vacuum"  # one vacuum unit for the site instead of a pump at each position
    TRAPS = "traps"
    TANK_END = "tank_end"
    LINKED_TANKS = "linked_tanks"  # the vapour pipe is the only link between the tanks
    LINK_TO_PROVE = "link_to_prove"  # it is, or nobody knows
    PERMISSION_OPEN = "permission_open"  # not known whether it is allowed, or approval comes first
    SECOND_NOTICE = "second_notice"
    FURTHER_TESTS = "further_tests"
    ORDERS_PARTS = "orders_parts"


@frozen(kw_only=True)
class ConversionStep:
    """One row of the table of steps. ``minutes`` is work per unit of its scope; ``after`` are ids of earlier steps."""

    id: str
    title: str
    detail: str
    scope: StepScope
    role: StepRole
    minutes: int
    after: tuple[str, ...]
    conditions: tuple[StepCondition, ...]
    stops_sales: bool
    source: str
    status: LimitStatus
    within_day: bool = False  # it is not interrupted over night
    hands_on: bool = True  # where it does not apply, what waits for it waits for its predecessors


class StepFigureId(StrEnum):
    """Every figure that decides whether a step applies or how long it waits. The table must hold each one."""

    ETHANOL_NOTICE_ABOVE = "ethanol_notice_above"
    BIODIESEL_NOTICE_ABOVE = "biodiesel_notice_above"
    TANK_NOTICE_DAYS = "tank_notice_days"
    E15_LABEL = "e15_label"
    FLEX_FUEL_LABEL = "flex_fuel_label"
    BIODIESEL_LABEL = "biodiesel_label"


@frozen(kw_only=True)
class StepFigure:
    """One row: its value in the printed ``unit``. A label row holds the blend above which the label is asked for."""

    id: StepFigureId
    title: str
    value: float
    unit: str
    source: str
    status: LimitStatus
    note: str = ""


@frozen
class StepTable:
    """All steps in the order of the work, and the figures that they rest on."""

    edition: str
    steps: tuple[ConversionStep, ...]
    rows: tuple[StepFigure, ...]

    @property
    def figures(self) -> Mapping[StepFigureId, StepFigure]:
        """The figures by their id; a loaded table holds each."""
        return {row.id: row for row in self.rows}

    def minutes_per(self, scope: StepScope) -> int:
        """Return the minutes of all steps that are done once per unit of ``scope``."""
        return sum(step.minutes for step in self.steps if step.scope is scope)
