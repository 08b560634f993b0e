"""A change of liquid goes by tank: hardware first where one set serves both liquids, else within the shutdown.

The order is common practice, no source. Notice: 40 CFR 280.32(b), from memory. Labels: 40 CFR 1090.1510, 16 CFR 306.
"""

from __future__ import annotations

from typing import Any

import pytest

from planning.conversion_sites import PLAIN_CHAIN, context_for, installed, position, site_of, step_table
from spoutline.catalogue.store import CatalogueStore
from spoutline.model.conversion import SiteConversion
from spoutline.model.conversion_sequence import Moment, PlannedTask, SequenceFinding
from spoutline.model.conversion_step import StepFigureId
from spoutline.model.limit import LimitStatus
from spoutline.model.survey import SurveyLiquid
from spoutline.model.tank_change import ChangeWay
from spoutline.planning.conversion.convert_site import convert_site
from spoutline.rules.conversion.tanks import label_row, notice_row

E10 = {"family": "gasoline", "blend_percent": 10}
E15 = {"family": "gasoline", "blend_percent": 15}
B5 = {"family": "diesel", "blend_percent": 5}


def changing(label: str, dispenser: str, liquid: dict[str, Any], today: dict[str, Any], **more: Any) -> dict[str, Any]:
    chain = installed(*PLAIN_CHAIN)
    return position(label, dispenser=dispenser, liquid=liquid, liquid_today=today, installed=chain, **more)


def converted(catalogue: CatalogueStore, *positions: dict[str, Any], **answers: Any) -> SiteConversion:
    survey = site_of(*positions, **answers)
    return convert_site(survey, context_for(survey, catalogue))


def tasks(conversion: SiteConversion, step: str) -> list[PlannedTask]:
    assert conversion.sequence is not None
    return [one for one in conversion.sequence.tasks if one.step_id == step]


def clock(moment: Moment) -> tuple[int, int]:
    return moment.day, moment.minute


def findings(conversion: SiteConversion) -> set[SequenceFinding]:
    assert conversion.sequence is not None
    return {note.finding for note in conversion.sequence.notes}


@pytest.fixture(scope="module")
def hardware_first(catalogue: CatalogueStore) -> SiteConversion:
    return converted(
        catalogue,
        changing("1A", "1", E15, E10, tank="2"),
        changing("2A", "2", E15, E10, tank="2"),
        changing("3A", "3", E15, E10, tank="4"),
        sequence={"tanks_underground": True, "crews": 1, "most_out_of_service": 1.0},
    )


def test_hardware_hangs_everywhere_on_the_tank_before_one_change_of_product(hardware_first: SiteConversion) -> None:
    first, second = hardware_first.tank_changes
    assert (first.tank, first.positions, first.way) == ("2", ("1A", "2A"), ChangeWay.HARDWARE_FIRST)
    assert (second.tank, second.positions) == ("4", ("3A",))
    reopened = {place: one.finish for one in tasks(hardware_first, "reopen") for place in one.places}
    change, other = tasks(hardware_first, "change_product")
    assert change.places == ("1A", "2A")
    assert all(clock(change.start) >= clock(reopened[dispenser]) for dispenser in ("1", "2"))
    assert clock(other.start) >= clock(reopened["3"])
    assert not tasks(hardware_first, "flush_liquid")  # nothing is flushed while the old liquid is still sold
    flushed = tasks(hardware_first, "flush_positions")
    assert [one.places for one in flushed] == [("1A", "2A"), ("3A",)]
    assert [one.work_minutes for one in flushed] == [90, 45]
    assert all(clock(one.start) >= clock(before.finish) for one, before in zip(flushed, (change, other), strict=True))


def test_the_tank_agency_is_told_30_days_before_the_tank_takes_the_blend(hardware_first: SiteConversion) -> None:
    told, change = tasks(hardware_first, "notify_tank_agency")[0], tasks(hardware_first, "change_product")[0]
    assert change.start.day - told.finish.day >= 30
    assert told.status is LimitStatus.MEMORY
    assert clock(tasks(hardware_first, "check_tank")[0].finish) <= clock(told.start)
    # the hardware need not wait for it
    assert min(one.start.day for one in tasks(hardware_first, "isolate")) < 30


def test_the_e15_label_is_a_task_of_the_change(hardware_first: SiteConversion) -> None:
    assert {one.subject for one in tasks(hardware_first, "label_positions")} == {"E15 label at the selector"}
    assert hardware_first.tank_changes[0].label is not None
    assert hardware_first.tank_changes[0].label.source == "40 CFR 1090.1510"


def test_a_position_stands_still_for_its_hardware_and_for_its_tank(hardware_first: SiteConversion) -> None:
    sequence = hardware_first.sequence
    assert sequence is not None
    assert sequence.site_stop_minutes == 0
    in_phases = sum(one.work_minutes for one in sequence.tasks if one.phase is not None)
    # 240 minutes for the tank, 45 + 5 + 15 for each position one after the other, felt by each position of the tank
    of_tanks = 2 * (240 + 2 * 65) + (240 + 65)
    assert sequence.downtime_minutes <= in_phases + of_tanks
    assert sequence.downtime_minutes >= of_tanks


def test_another_spout_is_hung_within_the_shutdown_of_the_change(catalogue: CatalogueStore) -> None:
    # a gasoline spout of 21.34 mm and a diesel spout of 23.6 mm are two spouts (SAE J285): no set serves both
    found = converted(
        catalogue,
        changing("1A", "1", B5, E10, tank="1"),
        changing("2A", "2", B5, E10, tank="1"),
        position("3A", dispenser="3", reconnectable_wanted=True, installed=installed(*PLAIN_CHAIN)),
        sequence={"tanks_underground": True, "most_out_of_service": 1.0},
    )
    (change,) = found.tank_changes
    assert change.way is ChangeWay.WITHIN_CHANGE
    assert {one.position for one in change.hindered_by} == {"1A", "2A"}
    (stop,) = tasks(found, "change_within")
    opened = {place: one for one in tasks(found, "isolate") for place in one.places}
    assert all(clock(opened[dispenser].start) >= clock(stop.finish) for dispenser in ("1", "2"))
    assert clock(opened["3"].finish) <= clock(stop.start)  # what is no part of the shutdown goes before it
    assert not tasks(found, "change_product")
    assert len(tasks(found, "flush_liquid")) == 2
    assert not tasks(found, "notify_tank_agency")  # B5 is no blend above B20
    assert found.sequence is not None
    phase = {label: one for one in found.sequence.phases for label in one.positions}
    assert phase["2A"].number == phase["1A"].number + 1
    shut = [(phase[label].finish.day, phase[label].finish.minute) for label in ("1A", "2A")]
    assert all(end > clock(stop.start) for end in shut)


def test_what_nobody_knows_of_the_tanks_is_asked(catalogue: CatalogueStore) -> None:
    two = (changing("1A", "1", E15, E10), changing("2A", "2", E15, E10))
    found = converted(catalogue, *two)
    (change,) = found.tank_changes  # put together by liquid
    assert (change.tank, change.positions) == ("", ("1A", "2A"))
    assert {SequenceFinding.TANK_UNKNOWN, SequenceFinding.UNDERGROUND_UNKNOWN} <= findings(found)
    assert tasks(found, "notify_tank_agency")  # not known counts as underground
    above = converted(catalogue, *two, sequence={"tanks_underground": False})
    assert SequenceFinding.UNDERGROUND_UNKNOWN not in findings(above)
    assert not tasks(above, "notify_tank_agency")
    assert tasks(above, "check_tank")
    stays = position("3A", dispenser="3", tank="2")
    mixed = converted(catalogue, {**two[0], "tank": "2"}, stays, sequence={"tanks_underground": False})
    assert SequenceFinding.TANK_MIXED in findings(mixed)
    assert mixed.tank_changes[0].others == ("3A",)


@pytest.mark.parametrize(
    ("family", "blend", "told", "label"),
    [
        ("gasoline", 10, False, None),
        ("gasoline", 15, True, StepFigureId.E15_LABEL),
        ("gasoline", 85, True, StepFigureId.FLEX_FUEL_LABEL),
        ("diesel", 5, False, None),
        ("diesel", 20, False, StepFigureId.BIODIESEL_LABEL),
        ("diesel", 99, True, StepFigureId.BIODIESEL_LABEL),
        ("kerosene", 0, False, None),
        ("def", 0, False, None),
    ],
)
def test_blends_that_the_tank_agency_is_told_of_and_labels_at_the_pump(
    family: str, blend: float, told: bool, label: StepFigureId | None
) -> None:
    # above E10 or B20: 40 CFR 280.32(b), from memory; labels: 40 CFR 1090.1510, 16 CFR 306 appendix A
    liquid = SurveyLiquid.model_validate({"family": family, "blend_percent": blend})
    figures = step_table().figures
    assert (notice_row(liquid, figures) is not None) is told
    row = label_row(liquid, figures)
    assert (row.id if row else None) == label


def test_american_notices_and_labels_are_not_asked_for_elsewhere(catalogue: CatalogueStore) -> None:
    found = converted(catalogue, changing("1A", "1", E15, E10), jurisdiction="europe", agency="european_union")
    assert all(one.notice is None and one.label is None for one in found.tank_changes)
