"""The conversion of a whole site: standing, positions, emissions, sequence and money together."""

from __future__ import annotations

from dataclasses import field

from spoutline.frozen import frozen
from spoutline.model.agreed_sets import SetsFrom
from spoutline.model.catalogue_edition import DEMONSTRATION
from spoutline.model.check import WorkedLine
from spoutline.model.conversion_case import ConversionCase
from spoutline.model.conversion_money import MoneySheet
from spoutline.model.conversion_sequence import Sequence
from spoutline.model.emission_sheet import EmissionSheet
from spoutline.model.limit import Jurisdiction
from spoutline.model.plan import Provenance
from spoutline.model.position_conversion import Closing, PositionConversion, PositionOutcome, StaysLive
from spoutline.model.removal_standing import RemovalStanding, Standing
from spoutline.model.survey import Survey
from spoutline.model.tank_change import TankChange


@frozen(kw_only=True)
class SiteConversion:
    """The whole conversion of a site; every part of it is made from the same survey and tables."""

    survey: Survey
    jurisdiction: Jurisdiction
    standing: RemovalStanding
    positions: tuple[PositionConversion, ...]
    closings: tuple[Closing, ...]
    emissions: EmissionSheet | None
    sequence: Sequence | None
    money: MoneySheet
    provenance: Provenance
    decay: WorkedLine | None = None
    stays_live: tuple[StaysLive, ...] = ()
    tank_changes: tuple[TankChange, ...] = ()
    sets_from: SetsFrom = field(default_factory=SetsFrom)
    case: ConversionCase | None = None  # what is otherwise than the owner's survey says

    @property
    def shows_invented_parts(self) -> bool:
        """Whether a part or price that it shows is of the invented catalogue."""
        return DEMONSTRATION in (self.sets_from.catalogue, self.provenance.catalogue)

    @property
    def shows_sets(self) -> bool:
        """True where the sets were handed in, so that no way is followed."""
        return any(item.shown_plan is not None for item in self.positions)

    @property
    def plan_complete(self) -> bool:
        """True where no rule read forbids what is wanted and every position has a set; it is no permission."""
        good = (PositionOutcome.CONVERTS, PositionOutcome.NOTHING_TO_DO)
        return self.standing.standing is not Standing.NOT_ALLOWED and all(
            item.outcome in good and (item.shown_plan is None or item.shown_plan.keeps_every_must)
            for item in self.positions
        )
