"""The sets that a conversion follows, as the plan of a site: what cautions and assumptions are read from."""

from __future__ import annotations

from dataclasses import replace

from spoutline.model.conversion import SiteConversion
from spoutline.model.plan import PlanStatus, PositionPlan, SitePlan


def followed_plan(conversion: SiteConversion) -> SitePlan:
    """Return the plan of the way that is followed: as a whole site."""
    follow = conversion.survey.conversion.follow
    plans: list[PositionPlan] = []
    for one in conversion.positions:
        option = one.followed(follow)
        if one.shown_plan is not None or option is None:
            plans.append(one.shown_plan or one.renewal)
        else:
            plans.append(
                replace(one.renewal, status=PlanStatus.FITS, chosen=option.judged, accessories=option.accessories)
            )
    return SitePlan(
        survey=conversion.survey,
        jurisdiction=conversion.jurisdiction,
        positions=tuple(plans),
        provenance=conversion.provenance,
    )
