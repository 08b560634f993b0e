"""The change of the liquid in a tank: every position that it feeds changes with it, in one of two ways."""

from __future__ import annotations

from enum import StrEnum

from spoutline.frozen import frozen
from spoutline.model.conversion_step import StepFigure
from spoutline.model.finding import Finding
from spoutline.model.survey import SurveyLiquid


class ChangeWay(StrEnum):
    """How hardware and product follow each other."""

    HARDWARE_FIRST = "hardware_first"  # the new sets serve both liquids: they hang everywhere, then the product changes
    WITHIN_CHANGE = "within_change"  # they serve the new liquid only: they are hung while the tank is changed


class TankProblem(StrEnum):
    """What is not known of a change or speaks against it."""

    TANK_UNKNOWN = "tank_unknown"
    UNDERGROUND_UNKNOWN = "underground_unknown"
    MIXED = "mixed"  # positions of one tank are to sell different liquids
    NO_SET = "no_set"  # a position of the tank cannot be converted


@frozen(kw_only=True)
class Hindrance:
    """Why the new set of a position does not serve the liquid of today; ``check`` is the name of a failed check."""

    position: str
    finding: Finding | None = None
    check: str = ""


@frozen(kw_only=True)
class TankChange:
    """One change. ``tank`` is empty where nobody knows which tank feeds the positions.

    ``others`` are positions of the tank whose liquid would be another one afterwards. ``notice`` is the row after which
    the tank agency is told of the blend, None where it is not asked for; ``proof`` says whether the law asks to show
    that the tank system suits the blend; ``label`` the row of the label at the pump.
    """

    number: int
    tank: str
    today: SurveyLiquid
    wanted: SurveyLiquid
    positions: tuple[str, ...]
    dispensers: tuple[str, ...]
    way: ChangeWay
    hindered_by: tuple[Hindrance, ...]
    others: tuple[str, ...]
    problems: tuple[TankProblem, ...]
    notice: StepFigure | None
    notice_days: int
    proof: bool
    label: StepFigure | None
