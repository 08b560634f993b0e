"""What a person would rather give up, in one table; the order is common practice, no source."""

from __future__ import annotations

from typing import Final

from spoutline.model.no_set import AskedAnswer, Concession, Demand, DemandKind
from spoutline.model.requirement import RequirementId
from spoutline.model.survey import Position, Service, Site

# Common practice, no source. The lightest first: what was only decided, then what was wished, then what money or work
# at the station can change, then what the station sells; a rule, and how parts are made, nobody at the station changes.
ORDER: Final = (
    Concession.REFUSED_PART,
    Concession.ASKED_PART,
    Concession.LEAD_TIME,
    Concession.WISH,
    Concession.PURCHASE,
    Concession.SITE,
    Concession.SURVEY,
    Concession.BUSINESS,
    Concession.RULE,
    Concession.PARTS,
)
_LINES: Final = {
    RequirementId.LEAD_TIME: Concession.LEAD_TIME,
    RequirementId.HOLD_OPEN: Concession.WISH,
    RequirementId.RECONNECTABLE: Concession.WISH,
    RequirementId.NO_PRESSURE_DEVICE: Concession.WISH,
    RequirementId.STATUS: Concession.PURCHASE,
    RequirementId.PRICE: Concession.PURCHASE,
    RequirementId.DRIVE_OFF: Concession.SITE,
    RequirementId.SERVICE_LOAD: Concession.SITE,
    RequirementId.REACH: Concession.SITE,
    RequirementId.WHIP_LENGTH: Concession.SITE,
    RequirementId.GROUND_CLEARANCE: Concession.SITE,
    RequirementId.NOZZLE_FLOW: Concession.SITE,
    RequirementId.FLOW: Concession.SITE,
    RequirementId.VELOCITY: Concession.SITE,
    RequirementId.PRESSURE: Concession.SITE,
    RequirementId.TEMPERATURE: Concession.SITE,
    RequirementId.CHAIN: Concession.PARTS,
    RequirementId.JOINTS: Concession.PARTS,
}
_ANSWERS: Final = {
    AskedAnswer.LIQUID: Concession.BUSINESS,
    AskedAnswer.VAPOUR: Concession.BUSINESS,
    AskedAnswer.OUTLET: Concession.SURVEY,
    AskedAnswer.CLIMATE: Concession.SURVEY,
    AskedAnswer.FILLERS: Concession.SURVEY,
}
# One more of a lighter kind always comes before one of a heavier kind; there are fewer demands than this.
_WEIGHT: Final = 1024


def concession_of(demand: Demand, position: Position, site: Site) -> Concession:
    """Return what giving a demand up means.

    A no-pressure device that the way of paying asks for is a rule; where a latch asks for it, it goes with the wish.
    """
    if demand.kind is DemandKind.PINNED:
        return Concession.ASKED_PART
    if demand.kind is DemandKind.REFUSED:
        return Concession.REFUSED_PART
    if demand.answer is not None:
        return _ANSWERS[demand.answer]
    if demand.line is RequirementId.NO_PRESSURE_DEVICE and (position.prepay or site.service is Service.UNATTENDED):
        return Concession.RULE
    return _LINES.get(demand.line, Concession.RULE) if demand.line else Concession.RULE


def cost_of(concession: Concession) -> int:
    """Return what giving up one such demand weighs in the order of ways out."""
    return int(_WEIGHT ** ORDER.index(concession))
