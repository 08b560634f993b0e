"""What a set costs in a year, as a sum of parts each of which rests on stated figures."""

from __future__ import annotations

from decimal import Decimal
from enum import StrEnum

from spoutline.frozen import frozen
from spoutline.model.limit import LimitStatus
from spoutline.model.part_kind import PartKind


class LiquidUnit(StrEnum):
    """What the price of the liquid is the price of."""

    GALLON = "gallon"  # US, 231 cubic inches
    LITER = "liter"


class YearlyPart(StrEnum):
    """What is added up, where figures for it are stated."""

    WEAR = "yearly_wear"  # list price over service life, part by part
    DRIVE_OFFS = "yearly_drive_offs"  # what separations are expected to cost
    PERMEATION = "yearly_permeation"  # liquid lost through the walls of hoses, at its price
    SPARES = "yearly_spares"  # interest on the list price of spares kept


@frozen(kw_only=True)
class ServiceLife:
    """After how many years a kind of part is expected to be replaced; ``status`` is None where terms state it."""

    kind: PartKind
    years: Decimal
    source: str
    status: LimitStatus | None = None


@frozen(kw_only=True)
class YearlyBasis:
    """The stated figures that a yearly cost rests on; what is None or empty is stated nowhere and left out.

    ``permeates`` says whether liquid lost through hoses can be worked out at the position.
    """

    lives: tuple[ServiceLife, ...]
    drive_offs_per_position: Decimal | None = None
    liquid_price: Decimal | None = None
    liquid_unit: LiquidUnit = LiquidUnit.GALLON
    interest_percent: Decimal | None = None
    spares: tuple[tuple[PartKind, Decimal], ...] = ()
    permeates: bool = False

    @property
    def parts(self) -> tuple[YearlyPart, ...]:
        """What is added up."""
        stated = {
            YearlyPart.WEAR: bool(self.lives),
            YearlyPart.DRIVE_OFFS: self.drive_offs_per_position is not None,
            YearlyPart.PERMEATION: self.liquid_price is not None and self.permeates,
            YearlyPart.SPARES: bool(self.spares) and self.interest_percent is not None,
        }
        return tuple(part for part in YearlyPart if stated[part])

    @property
    def left_out(self) -> tuple[YearlyPart, ...]:
        """What is not added up: nothing states it, or it is not worked out here."""
        return tuple(part for part in YearlyPart if part not in self.parts)

    def years_of(self, kind: PartKind) -> Decimal | None:
        """Return the service life of a kind of part in years; None where nothing states it."""
        return next((one.years for one in self.lives if one.kind is kind), None)
