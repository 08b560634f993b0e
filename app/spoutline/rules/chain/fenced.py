"""What a hose longer than the general limit is allowed under on a fenced site."""

from __future__ import annotations

import math
from collections.abc import Iterator

from spoutline.model.finding import Finding, SubjectKind, Verdict
from spoutline.model.limit import LimitId, RuleTables
from spoutline.model.plan import HangingSet
from spoutline.model.quantity import Dimension, Quantity
from spoutline.model.requirement import Requirement
from spoutline.rules.declared.registry import RuleId
from spoutline.rules.derive.hose import is_on_reel, length_limit_id
from spoutline.rules.verdicts import finding

_TOLERANCE_M = 1e-6  # stock lengths are typed in rounded feet or metres


def fenced_length_findings(hanging_set: HangingSet, requirement: Requirement, tables: RuleTables) -> Iterator[Finding]:
    """Yield the condition of the greater length: on a reel it is kept, otherwise somebody secures the hose.

    Parameters: ``hanging_set``, hoses in m; ``requirement`` of the position; ``tables``, both length limits.
    Source: Okla. 165:26-2-92(a)(3), one state's code; elsewhere it is a question for the authority.
    """
    row = length_limit_id(requirement.position, requirement.site)
    general = tables.jurisdiction.optional_number(LimitId.HOSE_LENGTH_MAX)
    length = math.fsum(link.part.hose.length_m for link in hanging_set.links if link.part.hose is not None)
    if row is not LimitId.HOSE_LENGTH_MAX_FENCED or general is None or length <= general + _TOLERANCE_M:
        return
    on_reel = is_on_reel(requirement.position)
    yield finding(
        RuleId.FENCED_HOSE_ON_REEL if on_reel else RuleId.FENCED_HOSE_TO_SECURE,
        tables,
        SubjectKind.SET,
        requirement.position.label,
        Quantity("length", length, Dimension.LENGTH),
        Quantity("length_general", general, Dimension.LENGTH),
        verdict=Verdict.NOTE if on_reel else Verdict.QUESTION,
        limits=(LimitId.HOSE_LENGTH_MAX_FENCED,),
    )
