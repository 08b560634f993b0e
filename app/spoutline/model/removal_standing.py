"""Whether recovery at the nozzle may be taken away at a site, and on what grounds."""

from __future__ import annotations

from enum import StrEnum

from spoutline.frozen import frozen
from spoutline.model.limit import LimitStatus
from spoutline.model.vapour_figures import AgencyRow, VapourFigure


class Standing(StrEnum):
    """What the rules say about taking recovery at the nozzle away, gravest first."""

    NOT_ALLOWED = "not_allowed"
    ASK = "ask"
    MAY_GO = "may_go"
    MUST_GO = "must_go"
    NOT_CONCERNED = "not_concerned"  # no position takes recovery away


class StandingReason(StrEnum):
    """Why the standing is what it is."""

    PROFILE_FORBIDS = "profile_forbids"
    PROFILE_ASKS = "profile_asks"
    PROFILE_ALLOWS = "profile_allows"
    PROFILE_PROHIBITS_RECOVERY = "profile_prohibits_recovery"
    AGENCY_FORBIDS = "agency_forbids"
    AGENCY_ALLOWS = "agency_allows"
    AGENCY_DEMANDS = "agency_demands"
    AGENCY_UNKNOWN = "agency_unknown"
    ABOVE_THRESHOLD = "above_threshold"
    BELOW_THRESHOLD = "below_threshold"
    THROUGHPUT_UNKNOWN = "throughput_unknown"


@frozen(kw_only=True)
class StandingGround:
    """One ground of the standing with its source."""

    reason: StandingReason
    source: str
    status: LimitStatus
    threshold: VapourFigure | None = None


@frozen(kw_only=True)
class RemovalStanding:
    """Whether recovery may be taken away here, told before anything else; the agency decides."""

    standing: Standing
    grounds: tuple[StandingGround, ...]
    agency: AgencyRow
    positions: tuple[str, ...]  # labels of the positions that take recovery away
    kept: tuple[str, ...] = ()  # labels of those that keep it although a rule asks for it to go
