"""Plan and conversion of one station name the same parts at each position, and kept ones cost nothing."""

from __future__ import annotations

import re

from tests.planning.conversion_sites import PLAIN_CHAIN, installed, position, site_of

from spoutline.bootstrap.demos import demo_survey
from spoutline.bootstrap.workbench import Workbench
from spoutline.documents.content.totals import site_lines
from spoutline.documents.conversion.summary import result_rows
from spoutline.model.conversion import SiteConversion
from spoutline.model.conversion_answers import OptionKind
from spoutline.model.survey import Survey
from spoutline.planning.pack.pick_list import pick_list
from spoutline.planning.pack.picked import only_positions
from spoutline.units.accepted import UnitSystem
from spoutline.units.display import Display


def survey() -> Survey:
    """Return a station with one position whose parts all fit and one with an outlet of its own and nothing recorded."""
    return site_of(position("1A", installed=installed(*PLAIN_CHAIN)), position("1B"))


def test_a_plan_keeps_what_hangs_and_fits_at_no_price(workbench: Workbench) -> None:
    plan = workbench.plan_site(survey())
    kept, new = plan.positions
    assert kept.chosen is not None and new.chosen is not None
    links = kept.chosen.hanging_set.links
    stays = tuple(link for link in links if link.kept)
    assert stays
    assert all(link.price_minor("USD") == 0 for link in stays)
    assert kept.chosen.hanging_set.price_minor == sum(
        part.price_minor("USD") or 0 for part in kept.chosen.hanging_set.bought
    )
    assert kept.keeps_every_must
    assert not any(link.kept for link in new.chosen.hanging_set.links)


def test_what_stays_is_on_the_bill_at_nothing_and_is_not_loaded(workbench: Workbench) -> None:
    plan = only_positions(workbench.plan_site(survey()), ("1A",))
    chosen = plan.positions[0].chosen
    assert chosen is not None
    stays = sorted(link.part.number for link in chosen.hanging_set.links if link.kept)
    lines = [line for line in site_lines(plan) if line.kept]
    assert sorted(line.part.number for line in lines) == stays
    assert all(line.sum_minor == 0 for line in lines)
    loaded = {line.part.number for box in pick_list(plan) for line in box.lines}
    assert loaded.isdisjoint(stays)


def test_a_conversion_follows_the_sets_of_the_plan(workbench: Workbench) -> None:
    asked = survey()
    assert asked.conversion.follow is OptionKind.GOOD_PRACTICE
    chosen = workbench.plan_site(asked).positions[0].chosen
    option = workbench.converting().convert(asked).positions[0].followed(asked.conversion.follow)
    assert chosen is not None
    assert option is not None
    assert option.judged.hanging_set.identity == chosen.hanging_set.identity
    assert option.kept == tuple(n for n, link in enumerate(chosen.hanging_set.links) if link.kept)


def test_least_cost_says_what_it_gives_up_and_what_good_practice_costs(workbench: Workbench) -> None:
    demo = demo_survey("conversion_balance")
    display, service = Display(UnitSystem.SI), workbench.converting()

    def told(follow: OptionKind) -> tuple[SiteConversion, dict[str, str]]:
        answers = demo.conversion.model_copy(update={"follow": follow})
        conversion = service.convert(demo.model_copy(update={"conversion": answers}))
        return conversion, {row.label: row.text for row in result_rows(conversion, service.words(display))}

    conversion, rows = told(OptionKind.LEAST_COST)
    ways = [(one.way(OptionKind.LEAST_COST), one.way(OptionKind.GOOD_PRACTICE)) for one in conversion.positions]
    least, good = ([pair[place] for pair in ways if pair[place]] for place in (0, 1))
    departures, fewer = (sum(one.departures for one in found if one) for found in (least, good))
    more = sum(one.bought_minor for one in good if one) - sum(one.bought_minor for one in least if one)
    assert departures > fewer
    text = rows["Least cost gives up"]
    assert f"Departures from good practice: {departures} (" in text
    assert f"has {fewer} and buys" in text
    assert f"{more / 100:.2f} USD more" in text
    kinds = sum(int(one) for one in re.findall(r"(\d+) × ", text))
    worn = sum(item.condition == "worn" for one in demo.positions for item in one.installed)
    assert departures - worn <= kinds <= departures
    assert told(OptionKind.GOOD_PRACTICE)[1]["Least cost gives up"] == text, "it is told before anybody follows it"
