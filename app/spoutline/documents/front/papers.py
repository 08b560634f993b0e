"""Sets weighed against each other as bytes."""

from __future__ import annotations

from datetime import date

from spoutline.documents.paper_form import PaperForm
from spoutline.explain.plan.story import Story
from spoutline.model.front import PositionFront, StationFront
from spoutline.model.plan import Provenance
from spoutline.model.survey import Survey


def front_paper(
    found: PositionFront | StationFront,
    survey: Survey,
    made_from: Provenance,
    story: Story,
    *,
    dated: date | None = None,
    form: PaperForm = PaperForm.PDF,
) -> bytes:
    """Return the paper as PDF, or in another ``form``; equal arguments give equal bytes.

    Raise ``StoreFault`` where a font is missing.
    """
    from spoutline.documents.front.content import front_content
    from spoutline.documents.paper import paper_bytes

    return paper_bytes(front_content(found, survey, made_from, story, dated), form)
