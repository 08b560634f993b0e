"""What an air agency asks of hoses and nozzles where no vapour is recovered, as rows of the jurisdiction."""

from __future__ import annotations

from dataclasses import replace

from spoutline.model.limit import Limit, LimitId, RuleTables
from spoutline.model.vapour_figures import AgencyRow


def with_agency_demands(tables: RuleTables, agency: AgencyRow) -> RuleTables:
    """Return the tables in which the demands of an agency are rows, so that every plan asks for them by their source.

    Parameters: ``tables`` of the jurisdiction, whose own demands stay; ``agency``, the row that counts for the survey.
    Result: the same tables where the agency adds nothing. Source: the agency's row.
    """
    jurisdiction = tables.jurisdiction
    wanted = {
        LimitId.HOSE_LOW_PERMEATION: agency.low_permeation_hose,
        LimitId.ENHANCED_CONVENTIONAL: agency.enhanced_nozzle,
    }
    added = frozenset(row for row, asked in wanted.items() if asked and not jurisdiction.flag(row))
    if not added:
        return tables
    limits = tuple(_asked_by(limit, agency) if limit.id in added else limit for limit in jurisdiction.limits)
    return replace(tables, jurisdiction=replace(jurisdiction, limits=limits), asked_with_removal=added)


def _asked_by(limit: Limit, agency: AgencyRow) -> Limit:
    return replace(
        limit,
        value=True,
        printed="yes",
        printed_unit="",
        source=f"air agency, {agency.title}: {agency.source}",
        clause=agency.clause,
        edition=agency.edition,
        status=agency.status,
        note=agency.note,
    )
