"""Certificates of bond and leak tests: what was measured last, refused where that is no longer what hangs there.

Days are those of the calendar.
"""

from __future__ import annotations

import json
from dataclasses import replace
from datetime import date

import pytest

from documents import plan_factory as factory
from documents.pack_words import words
from paper_text import pages_of
from spoutline.documents.pack.certificate import certificates_json
from spoutline.documents.pack.papers import certificate_pdf
from spoutline.documents.paper_form import PaperForm
from spoutline.model.certificate import CertifiedTest
from spoutline.model.check import Bound, CheckId
from spoutline.model.faults import InputFault
from spoutline.model.inspection import InspectionItemId as Item
from spoutline.model.language import Language
from spoutline.model.limit import LimitStatus
from spoutline.model.plan import PositionPlan, SitePlan
from spoutline.model.record import (
    ChangeReason,
    CommissioningRecord,
    InspectionEntry,
    ItemResult,
    ReadingVerdict,
    RecordedWork,
    RecordEntry,
    RecordItemId,
    WearEntry,
)
from spoutline.planning.pack.certificates import certificates

BOND, LEAK = CertifiedTest.BOND, CertifiedTest.LEAK
DAY, LATER = date(2026, 11, 20), date(2026, 11, 24)


def plan(*labels: str) -> SitePlan:
    """Return a plan whose positions stand on the dispenser that the first sign of their label names."""
    positions = (factory.position(label, dispenser=label[0]) for label in labels)
    return factory.site_plan(*(with_limit(factory.fitting_plan(one)) for one in positions))


def with_limit(plan: PositionPlan) -> PositionPlan:
    """Return a plan whose resistance is limited by a megohm, as NFPA 77 is reported to ask (secondary)."""
    assert plan.chosen is not None
    bound = Bound(value=1e6, source="NFPA 77", status=LimitStatus.SECONDARY)
    checks = tuple(
        replace(one, upper=bound) if one.id is CheckId.RESISTANCE_TOTAL else one for one in plan.chosen.checks
    )
    return replace(plan, chosen=replace(plan.chosen, checks=checks))


def form(position: str, ohm: float | None, leak: ItemResult | None, day: date | None = DAY) -> CommissioningRecord:
    bond = RecordEntry(item=RecordItemId.BOND, reading=ohm)
    return CommissioningRecord(
        site="S",
        position=position,
        plan_revision="0" * 16,
        entries=(bond, RecordEntry(item=RecordItemId.LEAK, result=leak)),
        done_on=day,
        done_by="Merle Ash",
        licence="HF-1",
        instruments="ohmmeter no. 4411",
    )


def inspected(item: Item, day: date, ohm: float | None = None, position: str = "1A") -> InspectionEntry:
    return InspectionEntry(
        site="S", position=position, item=item, done_on=day, reading=ohm, done_by="Bo Fen", instruments="no. 7"
    )


def worn(day: date) -> WearEntry:
    return WearEntry(site="S", position="1A", done_on=day, removed="A", fitted="B", reason=ChangeReason.WEAR)


def refusals(site_plan: SitePlan, *history: RecordedWork, test: CertifiedTest = BOND) -> dict[str, str]:
    with pytest.raises(InputFault) as refused:
        certificates(site_plan, history, test, {})
    return {one.place: one.wanted for one in refused.value.problems}


def test_each_dispenser_has_a_certificate_of_the_last_measurement_of_its_positions() -> None:
    site_plan = plan("1A", "1B", "2A")
    history = (form("1A", 900.0, ItemResult.PASSED), form("1B", 2e6, ItemResult.PASSED), form("2A", 80.0, None))
    again = inspected(Item.CONTINUITY, LATER, 1200.0)
    first, second = certificates(site_plan, (*history, again), BOND, {})
    assert (first.dispenser, second.dispenser) == ("1", "2")
    newest, out = first.rows
    assert newest.judged.entry is not None
    assert (newest.judged.entry.reading, newest.done_on, newest.done_by) == (1200.0, LATER, "Bo Fen")
    assert newest.judged.verdict is ReadingVerdict.WITHIN
    # 2 MΩ is more than the 1 MΩ of the limit
    assert out.judged.verdict is ReadingVerdict.OUTSIDE
    # an inspection noted without a reading measures nothing, so that the form still counts
    (row, _), _ = (one.rows for one in certificates(site_plan, (*history, inspected(Item.CONTINUITY, LATER)), BOND, {}))
    assert row.done_on == DAY


def test_a_leak_test_is_certified_by_its_result() -> None:
    history = (form("1A", None, ItemResult.FAILED), inspected(Item.AFTER_LEAK, LATER))
    (found,) = certificates(plan("1A"), history[:1], LEAK, {})
    assert found.rows[0].judged.verdict is ReadingVerdict.OUTSIDE
    (found,) = certificates(plan("1A"), history, LEAK, {})
    assert (found.rows[0].judged.verdict, found.rows[0].done_on) == (ReadingVerdict.WITHIN, LATER)


def test_what_cannot_be_certified_is_refused_with_every_position() -> None:
    site_plan = plan("1A", "1B")
    told = refusals(site_plan, form("1A", None, ItemResult.PASSED))
    assert set(told) == {"1A", "1B"}
    assert all("no reading of the bond test" in one for one in told.values())
    assert "no result of the leak test" in refusals(plan("1A"), form("1A", 1.0, ItemResult.NOT_DONE), test=LEAK)["1A"]
    assert "on which day" in refusals(plan("1A"), form("1A", 1.0, None, day=None))["1A"]
    assert "replaced on 2026-11-24" in refusals(plan("1A"), form("1A", 1.0, None), worn(LATER))["1A"]
    # replaced on the same day and recorded before the form: the form measured the new part
    assert certificates(plan("1A"), (worn(DAY), form("1A", 1.0, None)), BOND, {})
    assert "2026-11-20" in refusals(plan("1A"), form("1A", 1.0, None), worn(DAY))["1A"]
    bare = factory.site_plan(factory.refused_plan("3A"))
    assert "no position here" in refusals(bare)[""]


@pytest.mark.parametrize("language", Language)
@pytest.mark.parametrize("test", CertifiedTest)
def test_each_dispenser_takes_one_page_with_what_was_measured(language: Language, test: CertifiedTest) -> None:
    labels = [f"{dispenser}{side}" for dispenser in "12" for side in "ABCDEFGH"]
    site_plan, story = plan(*labels), words(language).story
    history = [form(label, 900.0, ItemResult.PASSED) for label in labels]
    found = certificates(site_plan, history, test, {})
    pages = pages_of(certificate_pdf(site_plan, words(language), found))
    assert len(pages) == 2
    for number, page in enumerate(pages, start=1):
        told = " ".join(page.split())
        assert f"{number}A" in told
        assert f"{3 - number}A" not in told
        assert "Merle Ash" in told
        assert "4411" in told
        assert story.day(DAY) in told
        assert not any(word in told.lower() for word in ("approved", "compliant", "zugelassen", "conforme", "aprobado"))
        if test is BOND:
            assert "900" in told
            assert "NFPA 77 [" in told
    html = certificate_pdf(site_plan, words(language), found, form=PaperForm.HTML).decode()
    assert html.count("Merle Ash") == len(labels)
    assert f'lang="{language}"' in html


def test_the_document_for_programs_is_in_si() -> None:
    site_plan = plan("1A")
    found = certificates(site_plan, (form("1A", 900.0, None),), BOND, {})
    (row,) = json.loads(certificates_json(found, site_plan, words().story))["certificates"][0]["positions"]
    assert (row["position"], row["reading"], row["most"], row["verdict"]) == ("1A", 900.0, 1e6, "within")
    assert (row["done_on"], row["instruments"], row["license"]) == ("2026-11-20", "ohmmeter no. 4411", "HF-1")
