"""Every paper of a station names the same parts at each position; expectations are relations between papers."""

from __future__ import annotations

import csv
import io
import json
from collections import Counter
from collections.abc import Iterator
from dataclasses import dataclass
from datetime import date
from decimal import Decimal
from pathlib import Path

import pytest
from hypothesis import HealthCheck, given, settings
from hypothesis import strategies as st

from examples import stations as demo_stations
from examples import up_to
from paper_text import text_of
from planning.conversion_sites import PLAIN_CHAIN, installed, position, site_of
from planning.quoting_terms import terms_of
from spoutline.bootstrap import Workbench
from spoutline.bootstrap.demos import demo_survey
from spoutline.documents.json.plan_export import plan_json
from spoutline.model.conversion_answers import OptionKind
from spoutline.model.language import Language
from spoutline.model.pack import PackJob
from spoutline.model.plan import SitePlan
from spoutline.model.position_conversion import PositionOutcome
from spoutline.model.quotation import Quotation
from spoutline.model.survey import Survey
from spoutline.planning.conversion.site_result import site_result
from spoutline.planning.pack.pick_list import pick_list
from stores.quotation_life import SI

pytestmark = pytest.mark.usefixtures("plans_once")
AS_FOUND = terms_of(options=[{"title": "As found"}])
Chains = dict[str, tuple[str, ...]]
Pieces = Counter[tuple[str, str]]  # by position and part number


@dataclass(frozen=True)
class Papers:
    """The papers of a station, read back."""

    chains: Chains
    bill: Pieces
    loaded: Pieces
    form: Chains
    pdf: str
    pack: str


def papers_of(bench: Workbench, plan: SitePlan, folder: Path, *, printed: bool = True) -> Papers:
    chains = {
        one.position.label: tuple(link.part.number for link in one.chosen.hanging_set.links)
        for one in plan.positions
        if one.chosen is not None
    }
    bill: Pieces = Counter()
    for row in csv.DictReader(io.StringIO(bench.bills().csv(plan, SI).decode("utf-8-sig"))):
        bill[row["Position"], row["Part number"]] += int(row["Qty"])
    loaded: Pieces = Counter()
    for box in pick_list(plan):
        for line in box.lines:
            for label, count in line.positions:
                loaded[label, line.part.number] += count
    service, path = bench.packing(), folder / "form.pdf"
    path.write_bytes(service.form(plan, Language.ENGLISH, SI))
    form = {one.position: tuple(ref.number for ref in one.parts) for one in service.read_form(path).records}
    return Papers(
        chains=chains,
        bill=bill,
        loaded=loaded,
        form=form,
        pdf=text_of(bench.bills().pdf(plan, SI, calculations=False)) if printed else "",
        pack=text_of(service.pack(plan, Language.ENGLISH, SI, PackJob())) if printed else "",
    )


def kept_pieces(plan: SitePlan) -> Pieces:
    return Counter(
        (one.position.label, link.part.number)
        for one in plan.positions
        if one.chosen is not None
        for link in one.chosen.hanging_set.links
        if link.kept
    )


def check_papers(papers: Papers, plan: SitePlan) -> None:
    hanging: Pieces = Counter((label, number) for label, chain in papers.chains.items() for number in chain)
    with_it: Pieces = Counter()
    for one in plan.positions:
        for line in one.accessories:
            with_it[one.position.label, line.part.number] += line.quantity
    assert papers.bill == hanging + with_it
    assert papers.loaded == papers.bill - kept_pieces(plan)
    assert papers.form == papers.chains
    for number in {number for chain in papers.chains.values() for number in chain}:
        for printed in filter(None, (papers.pdf, papers.pack)):
            assert number in printed, number


def ordered_pieces(quotation: Quotation) -> Counter[str]:
    return Counter({line.part_number: line.fitted for line in quotation.options[0].lines})


@pytest.mark.parametrize("name", demo_stations("refit_48", "truck_stop"))
def test_all_papers_of_a_demo_station_name_the_same_parts(name: str, own_workbench: Workbench, tmp_path: Path) -> None:
    bench, survey = own_workbench, demo_survey(name)
    plan = bench.plan_site(survey)
    papers = papers_of(bench, bench.agreeing().sets_for(survey).site_plan, tmp_path)
    check_papers(papers, plan)
    document = json.loads(plan_json(plan, bench.story(SI, Language.ENGLISH)))
    told = {
        one["label"]: tuple(link["part_number"] for link in one["set"]) for one in document["positions"] if one["set"]
    }
    assert told == papers.chains

    quotation = bench.quoting().quote(survey, AS_FOUND, SI).quotation
    first = quotation.options[0]
    quoted = {one.label: one.part_numbers for one in first.positions if one.part_numbers}
    unlike = {label for label in quoted if quoted[label] != papers.chains.get(label)}
    assert unlike <= set(first.unlike_plan), "where the first option is unlike the plan it says so"
    assert bool(first.unlike_plan) == bool(first.unlike_because)
    order = list(csv.DictReader(io.StringIO(bench.quoting().papers().order_csv(quotation, 1).decode("utf-8-sig"))))
    assert {row["part_number"] for row in order} == set(ordered_pieces(quotation))

    conversion = bench.converting().convert_shown(survey)[0]
    followed = {
        one.position.label: tuple(option.judged.hanging_set.numbers)
        for one in conversion.positions
        if (option := one.followed(OptionKind.GOOD_PRACTICE)) is not None
    }
    assert followed.items() <= papers.chains.items()
    result = site_result(conversion, name)
    assert result.known_cost == conversion.money.total
    assert result.converted == sum(one.outcome is PositionOutcome.CONVERTS for one in conversion.positions)

    service, day = bench.packing(), date(2027, 1, 4)
    inspection = text_of(service.inspection_plan(plan, service.due(plan, day), Language.ENGLISH, SI))
    assert "as planned, not agreed" in inspection


def test_a_programme_ranks_on_the_sets_that_the_papers_show(own_workbench: Workbench, tmp_path: Path) -> None:
    bench, survey = own_workbench, demo_survey("conversion_balance")
    planned = site_result(bench.converting().convert_shown(survey)[0], "a")
    cheaper = survey.model_copy(
        update={"conversion": survey.conversion.model_copy(update={"follow": OptionKind.LEAST_COST})}
    )
    bench.agreeing().agree(cheaper, "convert", by="O. Owner")
    conversion = bench.converting().convert_shown(survey)[0]  # what a programme works out for each file of a folder
    ranked = site_result(conversion, "a")
    agreed = bench.agreeing().sets_for(survey).site_plan
    papers = papers_of(bench, agreed, tmp_path, printed=False)
    assert ranked.known_cost < planned.known_cost, "the agreed way is the cheaper one"
    going = {
        one.position.label: tuple(one.shown.judged.hanging_set.numbers) for one in conversion.positions if one.shown
    }
    assert going
    assert going.items() <= papers.chains.items()


POSITIONS = (
    position("-"),
    position("-", filler={"distance_m": 1.9}),
    position("-", installed=installed(*PLAIN_CHAIN)),
    position("-", installed=[*installed(*PLAIN_CHAIN[:4]), *installed(PLAIN_CHAIN[4], condition="damaged")]),
    position("-", reconnectable_wanted=True, installed=installed(*PLAIN_CHAIN)),
    position("-", today="balance"),
    position("-", liquid={"family": "diesel", "blend_percent": 5}, prepay=True),
)


@st.composite
def stations(draw: st.DrawFn) -> Survey:
    chosen = draw(st.lists(st.sampled_from(POSITIONS), min_size=1, max_size=3))
    labelled = ({**one, "label": f"{number}A", "dispenser": str(number)} for number, one in enumerate(chosen, start=1))
    survey = site_of(*labelled, follow=draw(st.sampled_from([one.value for one in OptionKind])))
    stock = draw(st.sampled_from([0, 35]))
    name = draw(st.sampled_from(["Hollow Ford", "Maple Ferry"]))
    return survey.model_copy(
        update={"site": survey.site.model_copy(update={"stock_price": Decimal(stock), "name": name})}
    )


def choices(bench: Workbench, survey: Survey) -> Iterator[SitePlan]:
    """Yield the sets of a station by every way that there is to choose them."""
    agreeing = bench.agreeing()
    yield agreeing.sets_for(survey, "plan").site_plan
    agreeing.agree(survey, "plan", by="A")
    yield agreeing.sets_for(survey).site_plan
    agreeing.agree(survey, "convert", by="B")
    yield agreeing.sets_for(survey).site_plan
    service = bench.quoting()
    kept = service.life().keep(service.quote(survey, AS_FOUND, SI).quotation, "C")
    yield agreeing.sets_for(survey, f"quotation:{kept.id}").site_plan


@settings(max_examples=up_to(5, fewest=2), suppress_health_check=[HealthCheck.function_scoped_fixture])
@given(survey=stations())
def test_for_any_station_and_choice_bill_pack_order_and_forms_hold_the_same_parts(
    survey: Survey, own_workbench: Workbench, tmp_path: Path
) -> None:
    for plan in choices(own_workbench, survey):
        check_papers(papers_of(own_workbench, plan, tmp_path, printed=False), plan)
    service = own_workbench.quoting()
    quotation = service.quote(survey, AS_FOUND, SI).quotation
    stored = service.life().keep(quotation, "C")
    plan = own_workbench.agreeing().sets_for(survey, f"quotation:{stored.id}").site_plan
    papers = papers_of(own_workbench, plan, tmp_path, printed=False)
    fitted: Counter[str] = Counter()
    for (_, number), count in papers.loaded.items():
        fitted[number] += count
    assert fitted == ordered_pieces(quotation)
    rows = csv.DictReader(io.StringIO(service.papers().order_csv(quotation, 1).decode("utf-8-sig")))
    pack_rest = {line.part_number: line.pack_rest + line.spares for line in quotation.options[0].lines}
    assert Counter({row["part_number"]: int(row["quantity"]) - pack_rest[row["part_number"]] for row in rows}) == fitted
