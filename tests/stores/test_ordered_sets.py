"""What stays at a station stays through order, agreement and record; expectations are promises of the docstrings."""

from __future__ import annotations

from collections.abc import Iterator
from decimal import Decimal
from pathlib import Path

import pytest

from planning.conversion_sites import PLAIN_CHAIN, installed, position, site_of
from planning.quoting_terms import terms_of
from spoutline.book.agreements import AgreementBook
from spoutline.book.quotation_records import StoredQuotation
from spoutline.bootstrap import Settings, Workbench, open_workbench
from spoutline.bootstrap.demos import demo_survey
from spoutline.documents.content.totals import site_lines
from spoutline.model.agreed_sets import AgreementKind
from spoutline.model.faults import InputFault, InputProblem
from spoutline.model.part import PartKind
from spoutline.model.plan import SitePlan
from spoutline.model.quotation import Quotation
from spoutline.model.quotation_status import QuotationStatus
from spoutline.model.record import CommissioningRecord
from spoutline.model.survey import Survey
from spoutline.planning.agreement.making import sets_of_option
from spoutline.planning.sets.plan_site import fingerprint_of
from stores.quotation_life import SI

pytestmark = pytest.mark.usefixtures("plans_once")  # what is kept is the matter here, not how it was planned

TERMS = terms_of(options=[{"title": "As found"}])


@pytest.fixture
def bench(own_database: Path) -> Iterator[Workbench]:
    opened = open_workbench(Settings(database=str(own_database)))
    yield opened
    opened.close()


@pytest.fixture
def survey() -> Survey:
    """Return a station with two positions: one whose parts fit but for a damaged nozzle, and a new one."""
    there = [*installed(*PLAIN_CHAIN[:4]), *installed(PLAIN_CHAIN[4], condition="damaged")]
    return site_of(position("1A", installed=there), position("1B"))


def issued(bench: Workbench, survey: Survey) -> StoredQuotation:
    service = bench.quoting()
    return service.life().issue(service.life().keep(service.quote(survey, TERMS, SI).quotation, "Odile"), "Odile", SI)


def sets_of(site_plan: SitePlan) -> list[list[tuple[str, str, bool]]]:
    return [
        [(link.slot, link.part.number, link.kept) for link in plan.chosen.hanging_set.links]
        for plan in site_plan.positions
        if plan.chosen is not None
    ]


def test_an_order_leaves_at_no_price_what_stays(bench: Workbench, survey: Survey) -> None:
    bench.quoting().life().answer(issued(bench, survey), QuotationStatus.ACCEPTED, "Merle", option="As found")
    planned, agreed = bench.plan_site(survey), bench.agreeing().sets_for(survey, "agreed").site_plan
    assert sets_of(agreed) == sets_of(planned)
    assert any(kept for links in sets_of(agreed) for _, _, kept in links)
    assert [(line.part.number, line.quantity, line.sum_minor) for line in site_lines(agreed)] == [
        (line.part.number, line.quantity, line.sum_minor) for line in site_lines(planned)
    ]
    reasons = [[(one.part.number, one.quantity, one.reason) for one in plan.accessories] for plan in agreed.positions]
    assert reasons == [
        [(one.part.number, one.quantity, one.reason) for one in plan.accessories] for plan in planned.positions
    ]


def test_an_order_that_cannot_be_agreed_is_no_order(
    bench: Workbench, survey: Survey, monkeypatch: pytest.MonkeyPatch
) -> None:
    stored = issued(bench, survey)

    def refuse(*_: object) -> int:
        raise InputFault((InputProblem("", "serial", "1", "somebody agreed in the meantime"),))

    monkeypatch.setattr(AgreementBook, "write", refuse)
    with pytest.raises(InputFault, match="in the meantime"):
        bench.quoting().life().answer(stored, QuotationStatus.ACCEPTED, "Merle", option="As found")
    assert bench.quoting().life().stored(stored.id) == stored
    assert [one.status.value for one in bench.quoting().life().history(stored.id)] == ["draft", "issued"]
    monkeypatch.undo()
    bench.quoting().life().answer(stored, QuotationStatus.ACCEPTED, "Merle", option="As found")
    assert bench.agreeing().sets_for(survey).site_plan.sets_from.quotation is not None


def test_what_goes_with_an_agreed_set_stays_word_for_word(bench: Workbench, survey: Survey, tmp_path: Path) -> None:
    agreed = bench.agreeing().agree(survey, "plan", by="Merle")
    first, *others = agreed.positions
    three = tuple(one.model_copy(update={"quantity": 3}) for one in first.accessories)
    assert three
    changed = agreed.model_copy(update={"positions": (first.model_copy(update={"accessories": three}), *others)})
    path = tmp_path / "sets.json"
    path.write_text(changed.model_dump_json())
    shown = bench.agreeing().sets_for(survey, f"file:{path}").site_plan
    assert {one.quantity for one in shown.positions[0].accessories} == {3}


def test_a_record_leaves_at_no_price_what_stayed(bench: Workbench, survey: Survey) -> None:
    planned = bench.plan_site(survey)
    chosen = planned.positions[0].chosen
    assert chosen is not None
    numbers = chosen.hanging_set.numbers
    other = next(number for number in ("QW-N104", "QW-N103") if number not in numbers)
    record = CommissioningRecord.model_validate(
        {
            "site": survey.site.name,
            "position": "1A",
            "plan_revision": planned.provenance.survey_fingerprint,
            "parts": numbers,
            "changes": [{"planned": numbers[-1], "fitted": [other], "reason": "wish_of_customer"}],
        }
    )
    bench.book().position_records.add_commissioning(record, {})
    built = bench.agreeing().sets_for(survey, "built").site_plan
    links = sets_of(built)[0]
    assert [number for _, number, _ in links] == [*numbers[:-1], other]
    assert [kept for _, _, kept in links] == [*(link.kept for link in chosen.hanging_set.links[:-1]), False]


def test_where_all_parts_stay_nothing_is_sealed_or_labelled(bench: Workbench) -> None:
    plan = bench.plan_site(site_of(position("1A", installed=installed(*PLAIN_CHAIN)))).positions[0]
    assert plan.chosen is not None
    assert all(link.kept for link in plan.chosen.hanging_set.links)
    assert {one.part.kind for one in plan.accessories}.isdisjoint({PartKind.SEALANT, PartKind.LABEL})
    assert plan.chosen.hanging_set.price_minor == 0


def test_a_survey_file_finds_its_agreement_by_the_number_in_the_book(bench: Workbench, survey: Survey) -> None:
    stored = bench.book().create(survey)
    bench.agreeing().agree(survey, "plan", by="Merle", survey_id=stored.id)
    moved = [one.model_copy(update={"label": f"new {one.label}"}) for one in survey.positions]
    from_file = survey.model_copy(update={"positions": tuple(moved), "survey_id": stored.id})
    assert bench.agreeing().match(from_file).line is not None
    unnumbered = bench.agreeing().match(from_file.model_copy(update={"survey_id": None}))
    assert (unnumbered.line, len(unnumbered.doubtful)) == (None, 1)
    elsewhere = bench.agreeing().sets_for(survey.model_copy(update={"survey_id": 99}))
    assert elsewhere.site_plan.sets_from.source == "plan"
    assert "it is not sure" in elsewhere.notes[0]


def test_the_number_in_the_book_says_nothing_about_the_station(bench: Workbench, survey: Survey) -> None:
    numbered = survey.model_copy(update={"survey_id": 7})
    assert fingerprint_of(numbered) == fingerprint_of(survey)
    stored = bench.book().create(numbered)
    assert stored.survey.survey_id is None
    assert bench.book().stored(stored.id).survey == survey


def part_numbers(site_plan: SitePlan) -> set[str]:
    return {number for links in sets_of(site_plan) for _, number, kept in links if not kept}


def test_a_price_of_one_more_part_number_chooses_the_station_together(bench: Workbench) -> None:
    alone = demo_survey("small_town")
    site = alone.site.model_copy(update={"stock_price": Decimal(35)})
    together = alone.model_copy(update={"site": site})
    one_by_one, common = bench.plan_site(alone), bench.plan_site(together)
    assert len(part_numbers(common)) < len(part_numbers(one_by_one))
    assert sets_of(bench.agreeing().sets_for(together).site_plan) == sets_of(common)
    assert sets_of(bench.plan_site(together)) == sets_of(common)
    label = together.positions[-1].label
    position = bench.plan_position(together, label)
    assert position.chosen is not None
    assert position.chosen.hanging_set.numbers == tuple(number for _, number, _ in sets_of(common)[-1])
    quoted = bench.quoting().quote(together, terms_of(options=[{"title": "As found"}]), SI).quotation.options[0]
    unlike = [
        one.label
        for one, links in zip(quoted.positions, sets_of(common), strict=True)
        if one.part_numbers != tuple(number for _, number, _ in links)
    ]
    assert tuple(unlike) == quoted.unlike_plan
    assert bool(unlike) == bool(quoted.unlike_because)
    agreed = bench.agreeing().agree(together, "plan", by="Merle")
    assert (agreed.origin.kind, agreed.origin.stock_price_minor) == (AgreementKind.STATION, 3500)
    assert bench.agreeing().agree(alone, "plan", by="Merle").origin.kind is AgreementKind.PERSON


def test_what_hangs_and_stays_is_no_part_number_to_stock(bench: Workbench) -> None:
    survey = site_of(position("1A", installed=installed(*PLAIN_CHAIN)))
    found = bench.quoting().plan_refit(survey, 3500).commonality
    assert found is not None
    assert (found.alone.part_numbers, found.alone.sets_minor) == (0, 0)
    assert (found.together.part_numbers, found.together.sets_minor) == (0, 0)


def test_a_quotation_of_an_earlier_program_orders_the_parts_that_it_pinned(bench: Workbench, survey: Survey) -> None:
    quotation = bench.quoting().quote(survey, TERMS, SI).quotation
    document = quotation.model_dump(mode="json")
    for placed in document["options"][0]["positions"]:
        for later in ("makers", "accessory_makers", "slots", "kept", "accessory_quantities", "accessory_reasons"):
            del placed[later]
    for pinned in document["pins"]["parts"]:
        del pinned["maker"]
    earlier = Quotation.model_validate(document)
    now, _ = sets_of_option(quotation.options[0], quotation.pins)
    then, parts = sets_of_option(earlier.options[0], earlier.pins)
    assert [[link.ref for link in one.set] for one in then] == [[link.ref for link in one.set] for one in now]
    assert all(part.maker for part in parts)


def test_a_successor_that_was_ordered_keeps_the_wish_for_the_part_before_it(bench: Workbench) -> None:
    whole = demo_survey("refit_48")
    kept = tuple(one for one in whole.positions if one.decisions.pinned)
    survey = whole.model_copy(update={"positions": kept[:1]})
    stored = issued(bench, survey)
    (succession,) = stored.quotation.options[0].superseded  # the demo station keeps a part that its maker replaced
    bench.quoting().life().answer(stored, QuotationStatus.ACCEPTED, "Merle", option="As found")
    (plan,) = bench.agreeing().sets_for(survey).site_plan.positions
    assert plan.chosen is not None
    assert plan.chosen.hanging_set.refs[3] == succession.now
    assert plan.keeps_every_must
