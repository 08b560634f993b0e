"""Several other answers side by side: each column is that answer alone, and every figure adds up by hand."""

from __future__ import annotations

import pytest

from planning.surveys import CAR
from planning.test_what_if import STATION, asked_of, blend, duty
from spoutline.catalogue.store import CatalogueStore
from spoutline.model.faults import Cancelled, InputFault
from spoutline.model.limit import RuleTables
from spoutline.model.liquid import ListingClass
from spoutline.model.survey import Duty, Survey
from spoutline.model.what_if import PartFate, WhatIf, WhatIfEffect
from spoutline.model.what_if_matrix import WhatIfMatrix
from spoutline.planning.protocols import Progress
from spoutline.planning.sets.context import PlanningContext
from spoutline.planning.sets.plan_site import plan_site
from spoutline.planning.what_if.matrix import MOST_ANSWERS, check_several, what_if_matrix


def matrix(
    survey: Survey, answers: list[WhatIf], tables: RuleTables, parts: CatalogueStore, progress: Progress | None = None
) -> WhatIfMatrix:
    context = PlanningContext(tables, parts)
    return what_if_matrix(plan_site(survey, tables, parts), [(one, context) for one in answers], progress)


def test_each_column_is_the_answer_alone_and_its_figures_add_up(
    catalogue: CatalogueStore, us_tables: RuleTables
) -> None:
    answers = [blend("E10"), blend("E15"), blend("E85")]
    found = matrix(STATION, answers, us_tables, catalogue)
    assert [row.label for row in found.rows] == ["1", "2", "4"]
    for place, (asked, figures) in enumerate(zip(answers, found.sums, strict=True)):
        alone = asked_of(STATION, asked, us_tables, catalogue)
        cells = [row.cells[place] for row in found.rows]
        assert [cell.effect for cell in cells] == [one.effect for one in alone.positions]
        assert [cell.price_minor for cell in cells] == [one.price_after_minor for one in alone.positions]
        assert figures.price_minor == sum(one.price_after_minor or 0 for one in alone.positions)
        assert figures.difference_minor == alone.totals.difference_minor
        assert figures.must_change == [one.effect for one in alone.positions].count(WhatIfEffect.MUST_CHANGE)
        assert figures.without_set == [one.after.chosen for one in alone.positions].count(None)
        assert figures.parts_coming == sum(
            change.after is not None and change.fate is not PartFate.STAYS
            for one in alone.positions
            for change in one.parts
        )
    assert found.today.price_minor == sum(row.price_today_minor or 0 for row in found.rows)
    assert found.today.without_set == [row.price_today_minor for row in found.rows].count(None)


def test_an_answer_that_is_not_for_a_position_leaves_it_as_it_is(
    catalogue: CatalogueStore, us_tables: RuleTables
) -> None:
    found = matrix(STATION, [blend("E85"), blend("B20")], us_tables, catalogue)
    rows = {row.label: row for row in found.rows}
    assert set(rows) == {"1", "2", "3", "4"}
    assert (rows["1"].cells[1].effect, rows["1"].cells[1].price_minor) == (None, rows["1"].price_today_minor)
    assert (rows["3"].cells[0].effect, rows["3"].cells[0].price_minor) == (None, rows["3"].price_today_minor)
    diesel = [row for row in found.part_rows if row.label == "3"]
    assert diesel
    assert {row.fates[0] for row in diesel} == {PartFate.STAYS}


def test_a_part_must_go_from_the_first_blend_whose_class_it_does_not_carry(
    catalogue: CatalogueStore, us_tables: RuleTables
) -> None:
    """E15 and E25 ask for class E25, E85 for its own; the listing of each part is read in the catalog.

    Classes: UL 2586 and 2586A, scopes (secondary).
    """
    classes = (ListingClass.E10, ListingClass.E25, ListingClass.E25, ListingClass.E85)
    found = matrix(CAR, [blend("E10"), blend("E15"), blend("E25"), blend("E85")], us_tables, catalogue)
    plan = found.before.positions[0].chosen
    assert plan is not None
    assert [row.part for row in found.part_rows] == [link.part for link in plan.hanging_set.links]
    for row in found.part_rows:
        for needed, fate in zip(classes, row.fates, strict=True):
            if needed not in row.part.listings:
                assert fate is PartFate.MUST_GO
        assert row.fates[0] is PartFate.STAYS
    assert any(ListingClass.E25 not in row.part.listings for row in found.part_rows)


@pytest.mark.parametrize(
    "answers",
    [[], [blend("E15")] * (MOST_ANSWERS + 1), [blend("E15"), duty(Duty.TRUCK)]],
    ids=["none", "many", "mixed"],
)
def test_no_answers_too_many_and_those_of_two_questions_are_faults(answers: list[WhatIf]) -> None:
    with pytest.raises(InputFault, match=f"1 to {MOST_ANSWERS} answers to one question"):
        check_several(answers)


def test_the_work_tells_how_far_all_answers_are_and_can_be_stopped(
    catalogue: CatalogueStore, us_tables: RuleTables
) -> None:
    class Watcher:
        def __init__(self, stop_at: int) -> None:
            self.seen: list[tuple[int, int]] = []
            self._stop_at = stop_at

        def on_progress(self, done: int, total: int) -> None:
            self.seen.append((done, total))

        def should_stop(self) -> bool:
            return len(self.seen) >= self._stop_at

    patient = Watcher(99)
    matrix(CAR, [blend("E15"), blend("E85")], us_tables, catalogue, patient)
    assert patient.seen == [(0, 2), (1, 2), (1, 2), (2, 2)]
    with pytest.raises(Cancelled):
        matrix(CAR, [blend("E15"), blend("E85")], us_tables, catalogue, Watcher(3))
