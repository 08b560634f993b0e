"""Hoses that keep recovery: what a rule says of them, and the constant of the decay test that follows them."""

from __future__ import annotations

import math
from typing import Any

import pytest

from planning.conversion_sites import position, rule_tables, site_of, vapour_tables
from planning.test_conversion_closings import converted, going, kept
from spoutline.calc.vapour_decay import INCH_OF_WATER, pressure_decay_line
from spoutline.model.conversion_answers import ConversionAnswers, OptionKind
from spoutline.model.removal_standing import RemovalStanding, Standing
from spoutline.model.vapour_figures import VapourFigureId
from spoutline.rules.conversion.decay import decay_constant
from spoutline.rules.conversion.standing import removal_standing

GALLON_M3 = 3.785411784e-3


def standing_of(*positions: dict[str, Any], agency: str, jurisdiction: str = "us_general") -> RemovalStanding:
    survey = site_of(*positions, agency=agency, jurisdiction=jurisdiction)
    return removal_standing(survey, rule_tables(jurisdiction).jurisdiction, vapour_tables())


def test_a_hose_that_keeps_recovery_where_it_must_go_is_named() -> None:
    # 30 TAC 115.241: all recovery at the nozzle goes; Maryland lets the owner keep it (84 FR 3369)
    pair = (going("1A", "1"), kept("2A", "2"))
    assert standing_of(*pair, agency="texas").kept == ("2A",)
    assert standing_of(*pair, agency="maryland").kept == ()
    alone = standing_of(kept("2A", "2"), agency="texas")
    assert (alone.standing, alone.kept) == (Standing.NOT_CONCERNED, ("2A",))
    added = position("3A", wanted="balance", dispenser="3", exists_today=False)
    assert standing_of(going("1A", "1"), added, agency="texas").kept == ()  # it is brought in, and told as that


def test_the_way_that_is_followed_unasked_is_good_practice() -> None:
    assert ConversionAnswers().follow is OptionKind.GOOD_PRACTICE


@pytest.mark.parametrize(
    ("today", "nozzles", "gallons"),
    [
        # TP-201.3 as read in a CARB certification exhibit: constants of vacuum-assist systems by number of nozzles
        ("vacuum_assist", 1, 500.887),
        ("vacuum_assist", 6, 500.887),
        ("vacuum_assist", 7, 531.614),  # from memory: the scan prints 571.614, the even steps say 531.614
        ("vacuum_assist", 13, 562.455),
        ("vacuum_assist", 24, 593.412),
        ("vacuum_assist", 25, 624.483),
        ("balance", 2, 760.490),  # balance systems: from memory
        ("balance", 12, 792.196),
        ("balance", 25, 888.047),
    ],
)
def test_the_decay_constant_follows_the_nozzles_that_keep_recovery(today: str, nozzles: int, gallons: float) -> None:
    survey = site_of(going("1A", "1"), *(kept(f"k{number}", "2", today) for number in range(nozzles)))
    constant, counted = decay_constant(converted(survey), vapour_tables())
    assert counted == nozzles
    assert constant.value == pytest.approx(gallons)


def test_a_station_that_keeps_none_is_tested_as_one_with_delivery_recovery_only() -> None:
    constant, counted = decay_constant(converted(site_of(going("1A", "1"))), vapour_tables())
    assert (constant.id, counted) == (VapourFigureId.DECAY_STAGE_ONE, 0)
    mixed = site_of(going("1A", "1"), kept("2A", "2"), kept("3A", "3", "vacuum_assist"))
    strict, _ = decay_constant(converted(mixed), vapour_tables())
    assert strict.value == pytest.approx(500.887)  # the smaller constant asks for the higher pressure


def test_the_least_pressure_is_that_of_the_published_table() -> None:
    # TP-201.3: 13 to 18 nozzles, 5000 gal of vapor space, 1.787 inches of water after five minutes
    vapour = vapour_tables()
    line = pressure_decay_line(
        ullage_m3=5000 * GALLON_M3,
        start=vapour.figure(VapourFigureId.DECAY_START),
        decay=vapour.figure(VapourFigureId.DECAY_ASSIST_18),
        nozzles=15,
    )
    assert line.result.value / INCH_OF_WATER.value == pytest.approx(1.787, abs=5e-4)
    assert line.result.value / INCH_OF_WATER.value == pytest.approx(2 * math.exp(-562.455 / 5000))
    assert {item.name: item.value for item in line.inputs}["N"] == 15
