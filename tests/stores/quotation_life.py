"""The life of a quotation as one story, told to whatever database the book lies in."""

from __future__ import annotations

from datetime import date, timedelta

import pytest

from planning.quoting_terms import DAY, terms_of
from spoutline.book.quotation_records import StaleQuotation
from spoutline.bootstrap import Workbench
from spoutline.bootstrap.demos import demo_survey
from spoutline.documents.paper_form import PaperForm
from spoutline.model.faults import InputFault
from spoutline.model.quotation import Quotation
from spoutline.model.quotation_status import QuotationStatus
from spoutline.planning.refit.revision_changes import Changed
from spoutline.units.accepted import UnitSystem
from spoutline.units.display import Display

SI = Display(UnitSystem.SI)


def quoted(bench: Workbench, **changes: object) -> Quotation:
    return bench.quoting().quote(demo_survey("marina"), terms_of(**changes), SI).quotation


def live_through(bench: Workbench) -> None:
    """Draft, issue, revise, compare, accept; papers stay byte for byte, and nobody overwrites another's step."""
    service = bench.quoting()
    first = quoted(bench)
    draft = service.life().keep(first, "Odile")
    assert service.life().stored(draft.id) == draft
    with pytest.raises(InputFault, match="only an issued revision has papers"):
        service.life().issued_papers(draft.id, 1)
    issued = service.life().issue(draft, "Odile", SI)
    papers = service.life().issued_papers(issued.id, 1)
    assert papers.pdf == service.papers().pdf(first, 1, SI)
    assert (
        papers.html
        == service.life().issued_html(issued.id, 1, SI)
        == service.papers().pdf(first, 1, SI, PaperForm.HTML)
    )
    assert papers.html.startswith(b"<!DOCTYPE html>")
    with pytest.raises(StaleQuotation):
        service.life().save_draft(draft, first)
    dearer = quoted(bench, selling={"method": "mark_up_on_cost", "percent": 10})
    second = service.life().revise(issued, dearer, "Odile")
    assert (second.revision, second.status) == (2, QuotationStatus.DRAFT)
    assert service.life().issued_papers(issued.id, 1) == papers
    changes = service.life().changes(issued.id, 1, 2)
    assert {one.changed for one in changes} == {Changed.TERMS, Changed.UNIT_PRICE, Changed.TOTAL}
    assert ("selling.percent", "0", "10") in [(one.subject, one.before, one.after) for one in changes]
    again = service.life().issue(second, "Odile", SI)
    accepted = service.life().answer(again, QuotationStatus.ACCEPTED, "Merle", "by letter")
    assert accepted.status is QuotationStatus.ACCEPTED
    with pytest.raises(InputFault, match="changes need a new quotation"):
        service.life().revise(accepted, first, "Odile")
    story = [(one.revision, one.status.value, one.by) for one in service.life().history(issued.id)]
    assert story == [
        (1, "draft", "Odile"),
        (1, "issued", "Odile"),
        (2, "draft", "Odile"),
        (2, "issued", "Odile"),
        (2, "accepted", "Merle"),
    ]
    assert [one.id for one in service.life().quotations("hollow hs-1")] == [issued.id]
    part = first.part_numbers[0]
    assert [one.id for one in service.life().quotations(part.lower())] == [issued.id]
    assert service.life().quotations("hollow", QuotationStatus.DRAFT) == ()


def follow_a_station(bench: Workbench) -> None:
    """A station's customer is found, under a former name too; its quotations are its own, and followed up by a day."""
    service, customers, demo = bench.quoting(), bench.customers(), demo_survey("marina")
    named = customers.add({"name": "Gannet Slip 100% Oil"})
    survey, customer = customers.with_site_customer(demo, "gannet slip 100% oil")
    assert customer == named
    customers.change(named, {"name": "Gannet Slip"})
    assert (found := customers.of_site(survey)) is not None
    assert found.name == "Gannet Slip"
    assert customers.of_site(demo) is None
    own, namesake = bench.book().create(survey), bench.book().create(survey)
    kept = []
    for stored in (own, namesake, own):
        made = service.quote(survey, terms_of(heading={"number": "GS-1", "dated": DAY}), SI, origin=(stored.id, 1))
        kept.append(service.life().keep(made.quotation, "Odile").id)
    assert [one.id for one in service.life().of_survey(own.id)] == [kept[2], kept[0]]
    assert [one.id for one in service.life().of_survey(namesake.id)] == [kept[1]]
    for one, day in ((kept[0], DAY), (kept[1], DAY + timedelta(days=1))):
        assert service.life().follow_up(one, day).follow_up == day
    assert [one.id for one in service.life().quotations("gs-1", None, DAY)] == [kept[0]]
    assert len(service.life().quotations("gs-1", None, DAY + timedelta(days=1))) == 2


def let_expire(bench: Workbench) -> None:
    """An offer stands on its last day and has expired the day after."""
    service = bench.quoting()
    issued = service.life().issue(
        service.life().keep(quoted(bench, heading={"number": "HS-2", "dated": DAY})), "Odile", SI
    )
    last = DAY + timedelta(days=30)
    assert issued.id not in service.life().expire(last)
    assert issued.id in service.life().expire(last + timedelta(days=1))
    expired = service.life().stored(issued.id)
    assert expired.status is QuotationStatus.EXPIRED
    with pytest.raises(InputFault, match="from expired it may become draft"):
        service.life().answer(expired, QuotationStatus.ACCEPTED, "Merle")


def block_the_issue(bench: Workbench) -> None:
    """A missing price blocks the issue until somebody answers for it by name."""
    service = bench.quoting()
    late = {"number": "HS-9", "dated": date(2028, 1, 1)}
    draft = service.life().keep(quoted(bench, heading=late))
    with pytest.raises(InputFault) as refused:
        service.life().issue(draft, "Odile", SI)
    numbers = [problem.field for problem in refused.value.problems]
    assert numbers == list(draft.quotation.part_numbers)
    assert service.life().stored(draft.id) == draft
    overrides = [{"part": number, "by": "Odile Farrow"} for number in numbers]
    answered = service.life().save_draft(draft, quoted(bench, heading=late, overrides=overrides))
    with pytest.raises(InputFault, match="name of the person"):
        service.life().issue(answered, " ", SI)
    assert service.life().issue(answered, "Odile", SI).status is QuotationStatus.ISSUED
