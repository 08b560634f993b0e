"""Today and other answers side by side as bytes."""

from __future__ import annotations

from datetime import date

from spoutline.documents.paper_form import PaperForm
from spoutline.explain.plan.story import Story
from spoutline.model.what_if import WhatIfResult
from spoutline.model.what_if_matrix import WhatIfMatrix


def what_if_paper(
    found: WhatIfResult, story: Story, dated: date | None = None, form: PaperForm = PaperForm.PDF
) -> bytes:
    """Return the paper as PDF, or in another ``form``; equal arguments give equal bytes.

    Raise ``StoreFault`` where a font is missing.
    """
    from spoutline.documents.paper import paper_bytes
    from spoutline.documents.what_if.content import what_if_content

    return paper_bytes(what_if_content(found, story, dated), form)


def matrix_paper(
    found: WhatIfMatrix, story: Story, dated: date | None = None, form: PaperForm = PaperForm.PDF
) -> bytes:
    """Return several answers on one page as PDF, or in another ``form``; equal arguments give equal bytes.

    Raise ``StoreFault`` where a font is missing.
    """
    from spoutline.documents.paper import paper_bytes
    from spoutline.documents.what_if.matrix_content import matrix_content

    return paper_bytes(matrix_content(found, story, dated), form)
