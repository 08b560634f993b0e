"""The dated plan: phases against every grouping, times against linear programming, the calendar against real dates."""

from __future__ import annotations

import itertools
from collections.abc import Iterator
from datetime import date

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st
from scipy.optimize import linprog

from planning.conversion_sites import context_for, position, site_of, step_table
from spoutline.catalogue.store import CatalogueStore
from spoutline.model.conversion import SiteConversion
from spoutline.model.conversion_sequence import Moment, SequenceFinding
from spoutline.model.conversion_step import ConversionStep, StepCondition, StepRole, StepScope
from spoutline.model.limit import LimitStatus
from spoutline.model.survey import Survey
from spoutline.planning.conversion.convert_site import convert_site
from spoutline.planning.conversion.phases import DispenserLoad, grouped
from spoutline.planning.conversion.task_net import Task
from spoutline.planning.conversion.timing import timed
from spoutline.planning.conversion.work_calendar import WorkCalendar

# phases


def partitions(names: list[str]) -> Iterator[list[list[str]]]:
    """Yield every way to group names."""
    if not names:
        yield []
        return
    first, rest = names[0], names[1:]
    for rest_groups in partitions(rest):
        yield [[first], *rest_groups]
        for index in range(len(rest_groups)):
            yield [*rest_groups[:index], [first, *rest_groups[index]], *rest_groups[index + 1 :]]


loads_drawn = st.lists(st.tuples(st.integers(0, 2), st.integers(0, 2)), min_size=1, max_size=6)


@settings(deadline=None, max_examples=60)
@given(loads_drawn, st.sampled_from([0.34, 0.5, 0.75, 1.0]), st.integers(1, 3))
def test_the_phases_are_the_fewest_of_all_groupings(drawn: list[tuple[int, int]], share: float, crews: int) -> None:
    loads = [
        DispenserLoad(name=str(index), grades={"regular": one, "premium": other})
        for index, (one, other) in enumerate(drawn)
    ]
    total = {grade: sum(load.grades[grade] for load in loads) for grade in ("regular", "premium")}
    found = grouped(loads, total, most_share=share, crews=crews)
    allowed = {grade: int(share * count + 1e-9) for grade, count in total.items()}

    def fits(group: list[str]) -> bool:
        chosen = [load for load in loads if load.name in group]
        too_much = any(sum(one.grades[grade] for one in chosen) > allowed[grade] for grade in allowed)
        return len(group) <= crews and (len(group) == 1 or not too_much)

    alone = {one.dispenser for one in found.overloads}

    def keeps_apart(groups: list[list[str]]) -> bool:
        return all(fits(group) and (len(group) == 1 or alone.isdisjoint(group)) for group in groups)

    fewest = min(len(groups) for groups in partitions([load.name for load in loads]) if keeps_apart(groups))
    assert found.proved
    assert len(found.phases) == fewest
    assert sorted(itertools.chain.from_iterable(found.phases)) == sorted(load.name for load in loads)
    assert all(fits(list(phase)) for phase in found.phases)


def test_a_dispenser_that_alone_takes_too_much_says_which_share_would_do() -> None:
    loads = [DispenserLoad(name="1", grades={"diesel": 2}), DispenserLoad(name="2", grades={"diesel": 1})]
    found = grouped(loads, {"diesel": 3}, most_share=0.5, crews=1)
    assert [(one.dispenser, one.least_share) for one in found.overloads] == [("1", pytest.approx(2 / 3))]
    assert found.phases == (("1",), ("2",))


# times


def task(name: str, minutes: int, *after: str) -> Task:
    step = ConversionStep(
        id=name,
        title=name,
        detail="",
        scope=StepScope.SITE,
        role=StepRole.OWNER,
        minutes=minutes,
        after=after,
        conditions=(StepCondition.ALWAYS,),
        stops_sales=False,
        source="test",
        status=LimitStatus.JUDGEMENT,
    )
    return Task(
        id=name, step=step, phase=None, places=(), minutes=minutes, work_minutes=minutes, waits_days=0, after=after
    )


LONG_DAY = WorkCalendar(minutes_per_day=1_000_000)


def test_the_critical_path_of_a_net_worked_by_hand() -> None:
    # a net with the two paths A-C-E of 3+4+2 = 9 and B-D-E of 5+1+2 = 8: the first is critical, B and D may wait 1
    net = (task("A", 3), task("B", 5), task("C", 4, "A"), task("D", 1, "B"), task("E", 2, "C", "D"))
    times = timed(net, LONG_DAY)
    assert {name for name, one in times.items() if one.critical} == {"A", "C", "E"}
    assert times["E"].finish.minute == 9
    assert times["B"].slack_minutes == times["D"].slack_minutes == 1


nets = st.lists(st.tuples(st.integers(1, 60), st.sets(st.integers(0, 6), max_size=3)), min_size=1, max_size=7)


@settings(deadline=None, max_examples=60)
@given(nets)
def test_earliest_times_are_those_of_a_linear_programme(drawn: list[tuple[int, set[int]]]) -> None:
    net = tuple(
        task(str(index), minutes, *(str(earlier) for earlier in sorted(after) if earlier < index))
        for index, (minutes, after) in enumerate(drawn)
    )
    rows, limits = [], []
    for index, one in enumerate(net):
        for earlier in one.after:
            row = [0.0] * len(net)
            row[int(earlier)], row[index] = 1.0, -1.0
            rows.append(row)
            limits.append(-float(net[int(earlier)].minutes))
    # HiGHS: the least sum of starts gives the earliest start of each task
    solved = linprog([1.0] * len(net), A_ub=rows or None, b_ub=limits or None, bounds=(0, None), method="highs")
    times = timed(net, LONG_DAY)
    assert [times[one.id].start.minute for one in net] == pytest.approx(list(solved.x), abs=1e-6)
    finish = max(time.finish.minute for time in times.values())
    assert finish == pytest.approx(max(start + one.minutes for start, one in zip(solved.x, net, strict=True)))


@given(st.integers(0, 20), st.integers(0, 479), st.integers(1, 5000))
def test_working_minutes_add_up_between_start_and_end(day: int, minute: int, work: int) -> None:
    calendar = WorkCalendar(minutes_per_day=480, first_day=date(2027, 3, 1))
    start = calendar.opening(Moment(day=day, minute=minute))
    assert calendar.minutes_between(start, calendar.after_work(start, work)) == work


def test_weekends_are_left_out_of_work_but_count_as_calendar_days() -> None:
    # 1 March 2027 is a Monday
    calendar = WorkCalendar(minutes_per_day=480, first_day=date(2027, 3, 1))
    friday_noon = Moment(day=4, minute=240)
    assert calendar.after_work(friday_noon, 480).day == 7  # Monday 8 March
    assert calendar.after_days(friday_noon, 1).day == 7
    assert calendar.after_days(Moment(day=0, minute=0), 30).day == 30  # Wednesday 31 March


# the whole sequence

FOUR = tuple(
    position(f"{dispenser}{side}", today="balance", dispenser=str(dispenser), grade="regular")
    for dispenser in (1, 2, 3, 4)
    for side in "AB"
)


def sequenced(catalogue: CatalogueStore, *positions: dict[str, object], **answers: object) -> SiteConversion:
    survey: Survey = site_of(*positions, **answers)
    return convert_site(survey, context_for(survey, catalogue))


def test_no_phase_takes_more_of_a_grade_than_chosen(catalogue: CatalogueStore) -> None:
    found = sequenced(catalogue, *FOUR, agency="maryland", sequence={"crews": 4, "most_out_of_service": 0.5}).sequence
    assert found is not None
    assert len(found.phases) == 2
    for phase in found.phases:
        assert all(out <= 0.5 * of for _, out, of in phase.out_of_service)


def test_work_waits_for_the_notice_that_the_agency_asks_for(catalogue: CatalogueStore) -> None:
    # 30 TAC 115.241(b)(1)(A): notice at least 30 days before
    found = sequenced(catalogue, *FOUR, agency="texas", sequence={"start_date": "2027-03-01"}).sequence
    assert found is not None
    notice = next(one for one in found.tasks if one.step_id == "give_notice")
    first = min(phase.start.day for phase in found.phases)
    assert first - notice.finish.day >= 30


def test_tasks_follow_the_steps_that_they_wait_for(catalogue: CatalogueStore) -> None:
    found = sequenced(catalogue, *FOUR, agency="maryland", sequence={"crews": 2, "condensate_traps": 1}).sequence
    assert found is not None
    ends = {one.id: (one.finish.day, one.finish.minute) for one in found.tasks}
    for one in found.tasks:
        assert all(ends[earlier] <= (one.start.day, one.start.minute) for earlier in one.after)
    order = [one.step_id for one in sorted(found.tasks, key=lambda one: (one.start.day, one.start.minute))]
    for earlier, later in itertools.pairwise(
        ("ask_agency", "give_notice", "relieve_tanks", "drain_traps", "isolate", "drain_hoses", "remove_parts")
    ):
        assert order.index(earlier) < order.index(later)
    assert order.index("fit_parts") < order.index("bond_test") < order.index("leak_test")
    assert order.index("decay_test") < order.index("send_records") < order.index("amend_permit")


def test_steps_of_a_pump_are_left_out_where_there_is_none(catalogue: CatalogueStore) -> None:
    found = sequenced(catalogue, *FOUR, agency="maryland").sequence
    assert found is not None
    done = {one.step_id for one in found.tasks}
    assert "disable_pumps" not in done
    assert "flush_liquid" not in done
    assert {"close_vapour", "decay_test"} <= done


def test_a_phase_that_fits_into_a_day_is_not_left_open_overnight(catalogue: CatalogueStore) -> None:
    found = sequenced(catalogue, *FOUR, agency="maryland", sequence={"start_date": "2027-03-01"}).sequence
    assert found is not None
    assert all(phase.start.day == phase.finish.day for phase in found.phases)


def findings(conversion: SiteConversion) -> set[SequenceFinding]:
    assert conversion.sequence is not None
    return {note.finding for note in conversion.sequence.notes}


def test_what_is_not_known_is_said_and_not_guessed(catalogue: CatalogueStore) -> None:
    found = findings(sequenced(catalogue, *FOUR, agency="unknown"))
    assert {
        SequenceFinding.NO_START_DATE,
        SequenceFinding.NOTICE_UNKNOWN,
        SequenceFinding.PIPES_UNKNOWN,
        SequenceFinding.WHOLE_STATION_STOP,
    } <= found


def test_an_agency_that_asks_for_the_same_day_is_told_where_a_phase_takes_longer(catalogue: CatalogueStore) -> None:
    # OAR 340-244-0247: new hardware the same calendar day as the removal
    short = sequenced(catalogue, *FOUR[:2], agency="oregon", sequence={"hours_per_day": 1})
    assert SequenceFinding.NOT_WITHIN_DAY in findings(short)
    whole = sequenced(catalogue, *FOUR[:2], agency="oregon", sequence={"hours_per_day": 8})
    assert SequenceFinding.NOT_WITHIN_DAY not in findings(whole)


def test_a_time_limit_of_the_agency_is_held_against_the_plan(catalogue: CatalogueStore) -> None:
    # Connecticut: finished within 100 days after the start (secondary)
    slow = sequenced(catalogue, *FOUR, agency="connecticut", sequence={"hours_per_day": 1, "crews": 1})
    assert slow.sequence is not None
    days = slow.sequence.finish.day - min(phase.start.day for phase in slow.sequence.phases)
    assert (SequenceFinding.FINISH_LATE in findings(slow)) is (days > 100)


def test_closings_count_what_the_fact_sheet_counts(catalogue: CatalogueStore) -> None:
    # one plug per vapour opening: pump inlet and outlet and riser per dispenser, tank end if reachable; the outlet of a
    # coaxial dispenser is closed by the adaptor of the new set
    two = [position(f"1{side}", today="vacuum_assist", dispenser="1") for side in "AB"]
    found = sequenced(catalogue, *two, agency="maryland", sequence={"tank_end_reachable": True})
    counts = {(one.opening.value, one.position): one.quantity for one in found.closings}
    assert counts == {
        ("cabinet_pipe", "1A"): 1,
        ("cabinet_pipe", "1B"): 1,
        ("pump_inlet", ""): 2,
        ("pump_outlet", ""): 2,
        ("riser", ""): 1,
        ("tank_end", ""): 1,
    }


def test_a_pipe_of_each_grade_is_closed_at_the_dispenser_and_at_the_tank(catalogue: CatalogueStore) -> None:
    # every path that could release vapour is closed: two pipes below the dispenser and two ends at the tanks
    pair = [position(f"1{grade}", today="balance", dispenser="1", grade=grade) for grade in ("regular", "premium")]
    answers = {"tank_end_reachable": True, "dual_vapour_pipes": True}
    found = sequenced(catalogue, *pair, agency="maryland", sequence=answers)
    counts = {one.opening.value: one.quantity for one in found.closings if not one.position}
    assert counts == {"riser": 2, "tank_end": 2}


def test_a_central_unit_is_disconnected_before_a_dispenser_is_opened(catalogue: CatalogueStore) -> None:
    # of vacuum-assist systems the unit at the island's base or the central one is unwired and closed; from memory
    two = [position(f"1{side}", today="vacuum_assist", dispenser="1") for side in "AB"]
    found = sequenced(catalogue, *two, agency="maryland", sequence={"central_vacuum": True})
    assert found.sequence is not None
    (unit,) = (task for task in found.sequence.tasks if task.step_id == "disconnect_central_unit")
    opened = [task for task in found.sequence.tasks if task.step_id == "isolate"]
    assert all((unit.finish.day, unit.finish.minute) <= (task.start.day, task.start.minute) for task in opened)
    assert "central_unit" in {one.opening.value for one in found.closings}
    own_pumps = sequenced(catalogue, *two, agency="maryland").sequence
    assert own_pumps is not None
    assert "disconnect_central_unit" not in {task.step_id for task in own_pumps.tasks}


def test_the_table_of_steps_names_a_source_for_every_step() -> None:
    assert all(step.source and step.title and step.detail for step in step_table().steps)
