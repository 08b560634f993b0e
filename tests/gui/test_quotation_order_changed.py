"""An alternate of what was ordered already: the order stands as it is, and the next revision opens beside it."""

from __future__ import annotations

from datetime import date

import pytest
from PySide6.QtWidgets import QDialog
from pytestqt.qtbot import QtBot

from gui.test_quotation_foreseen import answered, no_quotations_of_others, page
from planning.quoting_terms import terms_of
from spoutline.bootstrap import Workbench
from spoutline.bootstrap.demos import demo_survey
from spoutline.gui.pages.quotation.guidance import next_words
from spoutline.gui.pages.quotation.page import QuotationPage
from spoutline.gui.pages.quotation.terms import TermsInHand
from spoutline.model.quotation_status import QuotationStatus
from spoutline.model.survey import Survey

__all__ = ["no_quotations_of_others", "page"]


@pytest.fixture
def survey() -> Survey:
    """Return a station of a name of its own: what is ordered for it is agreed, and other tests show theirs."""
    demo = demo_survey("small_town")
    site = demo.site.model_copy(update={"name": "Ordered Twice Fuels"})
    return demo.model_copy(update={"site": site, "positions": demo.positions[:2]})


def test_an_alternate_of_an_order_opens_the_next_revision_and_the_order_stands(
    qtbot: QtBot, page: QuotationPage, bench: Workbench, monkeypatch: pytest.MonkeyPatch
) -> None:
    before = page.quotation
    alternates = [{"part": "LS-B101", "by": "QW-B101"}]
    page.terms.hold(TermsInHand(title="terms", base=terms_of(options=({"title": "Any"},), alternates=alternates)))
    page.make()
    qtbot.waitUntil(lambda: page.quotation is not before and not page.is_busy, timeout=30_000)
    page.panel.name_edit.setText("Odile")
    for step in (page.book_steps.keep, page.book_steps.issue, lambda: page.book_steps.answer(QuotationStatus.ACCEPTED)):
        step()
        qtbot.waitUntil(lambda: not page.is_busy, timeout=30_000)
    ordered = page.stored
    assert ordered is not None
    assert ordered.status is QuotationStatus.ACCEPTED
    papers = bench.quoting().life().issued_papers(ordered.id, ordered.revision)
    shown = answered(monkeypatch, QDialog.DialogCode.Accepted)
    page.panel.offer.alternate_button.choices.actions()[0].trigger()
    qtbot.waitUntil(lambda: bool(shown) and not page.is_busy, timeout=30_000)
    now = page.stored
    assert now is not None
    assert (now.id, now.revision, now.status) == (ordered.id, ordered.revision + 1, QuotationStatus.DRAFT)
    told = next_words(page._hand, date(2026, 11, 25), has_terms=True)
    assert f"Revision {ordered.revision} is ordered and stands" in told
    assert bench.quoting().life().at_revision(ordered.id, ordered.revision) == ordered.quotation
    assert bench.quoting().life().issued_papers(ordered.id, ordered.revision) == papers
    assert bench.quoting().life().ordered_revision(ordered.id) == ordered.revision
