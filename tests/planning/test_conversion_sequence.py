"""The dated plan: phases against every grouping, times against linear programming, the calendar against real dates."""

from __future__ import annotations

import itertools
from collections.abc import Iterator
from datetime import date, timedelta

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st
from scipy.optimize import linprog

from examples import up_to
from planning.conversion_sites import context_for, position, site_of, step_table
from spoutline.catalogue.store import CatalogueStore
from spoutline.model.conversion import SiteConversion
from spoutline.model.conversion_money import CostKind
from spoutline.model.conversion_sequence import Moment, SequenceFinding
from spoutline.model.conversion_step import ConversionStep, StepCondition, StepRole, StepScope
from spoutline.model.limit import LimitStatus
from spoutline.model.survey import Survey
from spoutline.planning.conversion.convert_site import convert_site
from spoutline.planning.conversion.downtime import stopped_minutes
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


@settings(deadline=None, max_examples=up_to(60))
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


@settings(deadline=None, max_examples=up_to(60))
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


# permission, notices, tests


def starts(conversion: SiteConversion, step: str) -> Moment:
    assert conversion.sequence is not None
    return next(one.start for one in conversion.sequence.tasks if one.step_id == step)


def ends(conversion: SiteConversion, step: str) -> Moment:
    assert conversion.sequence is not None
    return next(one.finish for one in conversion.sequence.tasks if one.step_id == step)


def clock(moment: Moment) -> tuple[int, int]:
    return moment.day, moment.minute


@pytest.mark.parametrize("agency", ["maine", "unknown"])
def test_nothing_is_ordered_before_permission_where_it_is_open(catalogue: CatalogueStore, agency: str) -> None:
    # 06-096 CMR 118 appendix A: written approval first; where the rule is not known the agency is asked first
    found = sequenced(catalogue, *FOUR[:2], agency=agency, sequence={"permission_days": 45})
    assert ends(found, "await_permission").day - ends(found, "give_notice").day >= 45
    assert clock(starts(found, "order_parts")) >= clock(ends(found, "await_permission"))
    assert clock(starts(found, "isolate")) >= clock(ends(found, "await_permission"))
    assert SequenceFinding.PERMISSION_OPEN not in findings(found)
    silent = sequenced(catalogue, *FOUR[:2], agency=agency)
    assert SequenceFinding.PERMISSION_OPEN in findings(silent)
    assert clock(starts(silent, "order_parts")) >= clock(ends(silent, "await_permission"))


def test_parts_are_ordered_at_once_where_the_rules_let_recovery_go(catalogue: CatalogueStore) -> None:
    found = sequenced(catalogue, *FOUR[:2], agency="maryland")
    assert clock(starts(found, "order_parts")) == (0, 0)


def test_a_notice_that_lapses_gives_the_day_of_a_new_one(catalogue: CatalogueStore) -> None:
    # 30 TAC 115.241: a new notice where the work has not begun 180 days after receipt; 1 March 2027 and 180 days is
    # 28 August 2027
    found = sequenced(catalogue, *FOUR[:2], agency="texas", sequence={"start_date": "2027-03-01"})
    assert found.sequence is not None
    (lapse,) = found.sequence.deadlines
    assert date(2027, 3, 1) + timedelta(days=lapse.day) == date(2027, 8, 28)
    assert lapse.kept
    late = sequenced(catalogue, *FOUR[:2], agency="texas", sequence={"notice_days": 200})
    assert late.sequence is not None
    assert not late.sequence.deadlines[0].kept
    assert SequenceFinding.NOTICE_LAPSES in findings(late)


@pytest.mark.parametrize("first_day", ["2027-03-01", "2027-03-03", "2027-03-05"])
def test_the_second_notice_goes_out_one_to_three_days_before_the_work(
    catalogue: CatalogueStore, first_day: str
) -> None:
    # 30 TAC 115.241: 24 to 72 hours before, whatever day of the week
    found = sequenced(catalogue, *FOUR[:2], agency="texas", sequence={"start_date": first_day})
    sent, begun = ends(found, "second_notice"), starts(found, "relieve_tanks")
    hours = (begun.day - sent.day) * 24 + (begun.minute - sent.minute) / 60
    assert hours >= 24
    assert (hours <= 72) is (SequenceFinding.SECOND_NOTICE_EARLY not in findings(found))


def test_working_days_of_a_notice_leave_weekends_out(catalogue: CatalogueStore) -> None:
    # Connecticut: announced 7 business days before; from Monday 1 March 2027 that is Wednesday 10 March
    found = sequenced(catalogue, *FOUR[:2], agency="connecticut", sequence={"start_date": "2027-03-01"})
    assert starts(found, "announce_tests").day == 0
    assert ends(found, "await_tests").day == 9
    calendar = WorkCalendar(minutes_per_day=480, first_day=date(2027, 3, 1), weekend_work=True)
    assert calendar.after_weekdays(Moment(day=0, minute=0), 7).day == 9


def test_tests_that_an_agency_names_are_tasks(catalogue: CatalogueStore) -> None:
    # 06-096 CMR 118 appendix A: leak test, TP-201.3, TP-201.4
    found = sequenced(catalogue, *FOUR[:2], agency="maine")
    assert found.sequence is not None
    further = next(one for one in found.sequence.tasks if one.step_id == "further_tests")
    assert further.subject == "leak test, TP-201.4"
    assert further.stops_sales
    assert clock(starts(found, "send_records")) >= clock(further.finish)


@pytest.mark.parametrize("hours", [1, 2, 4, 5, 8])
def test_a_decay_test_is_not_interrupted_over_night(catalogue: CatalogueStore, hours: float) -> None:
    # TP-201.3: one test on one closed vapor space
    found = sequenced(catalogue, *FOUR[:2], agency="maryland", sequence={"hours_per_day": hours})
    start, end = starts(found, "decay_test"), ends(found, "decay_test")
    assert start.day == end.day
    assert end.minute - start.minute == 180
    assert (SequenceFinding.TEST_OVER_DAY in findings(found)) is (hours < 3)


# standing still


def test_a_stop_is_counted_once_and_nights_not_at_all() -> None:
    calendar = WorkCalendar(minutes_per_day=480, first_day=date(2027, 3, 1))
    first = (Moment(day=0, minute=60), Moment(day=0, minute=240))
    beside = (Moment(day=0, minute=180), Moment(day=0, minute=300))
    over_night = (Moment(day=4, minute=420), Moment(day=7, minute=30))  # Friday to Monday
    assert stopped_minutes((first, beside), calendar) == 240
    assert stopped_minutes((over_night,), calendar) == 60 + 30
    assert stopped_minutes((), calendar) == 0


def test_the_stop_of_the_station_and_lost_margin_count_what_the_schedule_shows(catalogue: CatalogueStore) -> None:
    found = sequenced(
        catalogue, *FOUR, agency="maryland", sequence={"hours_per_day": 24}, money={"margin_lost_per_hour": "10"}
    )
    assert found.sequence is not None
    tests = [one for one in found.sequence.tasks if one.phase is None and one.stops_sales]
    assert {one.step_id for one in tests} == {"decay_test", "vent_test", "tie_tank_test"}
    # vent and tie-tank test run side by side behind the decay test: 180 + 120 minutes, not 180 + 60 + 120
    assert found.sequence.site_stop_minutes == 300
    phases = sum(
        ((one.finish.day - one.start.day) * 1440 + one.finish.minute - one.start.minute) * len(one.positions)
        for one in found.sequence.phases
    )
    assert found.sequence.downtime_minutes == phases + 300 * len(FOUR)
    lost = next(one.amount for one in found.money.costs if one.kind is CostKind.LOST_MARGIN)
    assert float(lost or 0) == pytest.approx(found.sequence.downtime_minutes / 60 * 10, abs=0.01)
