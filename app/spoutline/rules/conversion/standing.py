"""Whether recovery at the nozzle may be taken away: the profile, the agency's rule, the throughput threshold."""

from __future__ import annotations

from spoutline.model.conversion_answers import StationKind
from spoutline.model.limit import Jurisdiction, LimitId
from spoutline.model.removal_standing import RemovalStanding, Standing, StandingGround, StandingReason
from spoutline.model.survey import Position, Survey, VapourStatus
from spoutline.model.vapour_figures import AgencyRow, RemovalRule, VapourFigure, VapourFigureId, VapourTables
from spoutline.rules.derive.vapour import RECOVERY_PROHIBITED, REMOVAL_NOT_ALLOWED, REMOVAL_TO_ASK
from spoutline.rules.verdicts import limit_source

UNKNOWN_AGENCY = "unknown"


def takes_recovery_away(position: Position) -> bool:
    """Say whether a position has recovery today and is to have none.

    Parameters: ``position`` of the survey. Source: survey.
    """
    return (
        position.exists_today
        and position.vapour_today is not VapourStatus.NONE
        and position.vapour_wanted is VapourStatus.NONE
    )


def permission_is_open(standing: RemovalStanding) -> bool:
    """Say whether recovery may not be touched before the agency has answered: it is not known, or approval comes first.

    Parameters: ``standing`` of the site. Source: 06-096 CMR 118 appendix A for approval; the rest is common practice.
    """
    return standing.standing is Standing.ASK or standing.agency.approval_first


def agency_of(survey: Survey, vapour: VapourTables) -> AgencyRow:
    """Return the agency row that counts: the one answered, else the one that the profile brings, else the unknown one.

    Parameters: ``survey``; ``vapour``, the tables. ``KeyError`` for an agency that the table does not hold; names are
    checked where the survey comes in.
    """
    answered = survey.conversion.agency
    if answered == UNKNOWN_AGENCY:
        brought = vapour.agency_of_profile(survey.site.jurisdiction)
        if brought is not None:
            return brought
    row = vapour.agency(answered)
    if row is None:
        raise KeyError(answered)
    return row


def recovery_threshold(station: StationKind, *, under_living_quarters: bool, vapour: VapourTables) -> VapourFigure:
    """Return the yearly throughput (m3) above which the European directive asks for recovery at the nozzle.

    Parameters: ``station``, existing or new; ``under_living_quarters``; ``vapour``, the tables.
    Source: Directive 2009/126/EC, EU summary.
    """
    if station is StationKind.EXISTING:
        return vapour.figure(VapourFigureId.EU_THRESHOLD_EXISTING)
    if under_living_quarters:
        return vapour.figure(VapourFigureId.EU_THRESHOLD_UNDER_QUARTERS)
    return vapour.figure(VapourFigureId.EU_THRESHOLD_NEW)


def recovery_needed(throughput_m3: float, threshold: VapourFigure) -> bool:
    """Say whether a yearly throughput (m3) lies above a threshold; a throughput at the threshold does not.

    Parameters: ``throughput_m3``; ``threshold`` from ``recovery_threshold``. Source: "in excess of", EU summary.
    """
    return throughput_m3 > threshold.value


def removal_standing(survey: Survey, jurisdiction: Jurisdiction, vapour: VapourTables) -> RemovalStanding:
    """Return whether recovery may be taken away on this site, with every ground; the strictest ground decides.

    Parameters: ``survey``; ``jurisdiction``, the profile; ``vapour``, the tables. The answer of a known agency takes
    the place of a profile that only says whom to ask. Source: 40 CFR 51.126(b); Directive 2009/126/EC; rows used.
    """
    agency = agency_of(survey, vapour)
    labels = tuple(position.label for position in survey.positions if takes_recovery_away(position))
    kept = tuple(position.label for position in survey.positions if _keeps_recovery(position))
    if agency.removal is not RemovalRule.MUST_GO and not _prohibits(jurisdiction):
        kept = ()
    if not labels:
        return RemovalStanding(standing=Standing.NOT_CONCERNED, grounds=(), agency=agency, positions=(), kept=kept)
    found = [*_profile_grounds(jurisdiction), _agency_ground(survey, agency, vapour)]
    if agency.removal is not RemovalRule.UNKNOWN:
        found = [(standing, ground) for standing, ground in found if ground.reason is not StandingReason.PROFILE_ASKS]
    order = list(Standing)
    decided = min((standing for standing, _ in found), key=order.index)
    return RemovalStanding(
        standing=decided, grounds=tuple(ground for _, ground in found), agency=agency, positions=labels, kept=kept
    )


def _keeps_recovery(position: Position) -> bool:
    return (
        position.exists_today
        and position.vapour_today is not VapourStatus.NONE
        and position.vapour_wanted is not VapourStatus.NONE
    )


def _prohibits(jurisdiction: Jurisdiction) -> bool:
    return jurisdiction.limit(LimitId.VAPOUR_RECOVERY).value == RECOVERY_PROHIBITED


def _profile_grounds(jurisdiction: Jurisdiction) -> list[tuple[Standing, StandingGround]]:
    recovery = jurisdiction.limit(LimitId.VAPOUR_RECOVERY)
    removal = jurisdiction.limit(LimitId.VAPOUR_REMOVAL)
    if _prohibits(jurisdiction):
        ground = StandingGround(
            reason=StandingReason.PROFILE_PROHIBITS_RECOVERY, source=limit_source(recovery), status=recovery.status
        )
        return [(Standing.MUST_GO, ground)]
    standing, reason = {
        REMOVAL_NOT_ALLOWED: (Standing.NOT_ALLOWED, StandingReason.PROFILE_FORBIDS),
        REMOVAL_TO_ASK: (Standing.ASK, StandingReason.PROFILE_ASKS),
    }.get(str(removal.value), (Standing.MAY_GO, StandingReason.PROFILE_ALLOWS))
    return [(standing, StandingGround(reason=reason, source=limit_source(removal), status=removal.status))]


def _agency_ground(survey: Survey, agency: AgencyRow, vapour: VapourTables) -> tuple[Standing, StandingGround]:
    if agency.removal is RemovalRule.THRESHOLD:
        return _threshold_ground(survey, agency, vapour)
    standing, reason = {
        RemovalRule.MUST_GO: (Standing.MUST_GO, StandingReason.AGENCY_DEMANDS),
        RemovalRule.MAY_GO: (Standing.MAY_GO, StandingReason.AGENCY_ALLOWS),
        RemovalRule.NOT_ALLOWED: (Standing.NOT_ALLOWED, StandingReason.AGENCY_FORBIDS),
    }.get(agency.removal, (Standing.ASK, StandingReason.AGENCY_UNKNOWN))
    return standing, StandingGround(reason=reason, source=agency_source(agency), status=agency.status)


def _threshold_ground(survey: Survey, agency: AgencyRow, vapour: VapourTables) -> tuple[Standing, StandingGround]:
    answers = survey.conversion
    threshold = recovery_threshold(answers.station, under_living_quarters=answers.under_living_quarters, vapour=vapour)
    throughput = answers.emissions.gasoline_throughput_m3
    if throughput is None:
        standing, reason = Standing.ASK, StandingReason.THROUGHPUT_UNKNOWN
    elif recovery_needed(throughput, threshold):
        standing, reason = Standing.NOT_ALLOWED, StandingReason.ABOVE_THRESHOLD
    else:
        standing, reason = Standing.MAY_GO, StandingReason.BELOW_THRESHOLD
    source = agency_source(agency)
    return standing, StandingGround(reason=reason, source=source, status=agency.status, threshold=threshold)


def agency_source(agency: AgencyRow) -> str:
    """Return source, clause and edition of an agency row in one line.

    Parameters: ``agency``, the row.
    """
    return f"{agency.source}, {agency.clause} ({agency.edition})"
