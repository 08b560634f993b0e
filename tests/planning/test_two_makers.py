"""One number from two makers through plan, pin, why not, conversion and the exchange of a part: never mixed up."""

from __future__ import annotations

from dataclasses import replace

import pytest

from planning.stores import ListStore
from spoutline.catalogue.store import CatalogueStore
from spoutline.documents.pack.form_fields import planned_refs, planned_text
from spoutline.model.faults import InputFault
from spoutline.model.installed import InstalledPart
from spoutline.model.limit import RuleTables
from spoutline.model.part import Part, PartKind
from spoutline.model.part_ref import PartRef, told_apart
from spoutline.model.record import ChangeReason, CommissioningRecord, PartChange
from spoutline.model.stock import Stock, StockLine
from spoutline.model.survey import Decisions, Position, Site
from spoutline.planning.pack.picked import with_makers
from spoutline.planning.pack.swap import swap_options
from spoutline.planning.part_names import wrong_refs
from spoutline.planning.sets.context import PlanningContext
from spoutline.planning.sets.plan_position import plan_position
from spoutline.planning.sets.substitutes import substitutes
from spoutline.planning.sets.why_not import why_not

OTHER = "Another Maker"
SITE, POSITION = Site(name="S"), Position(label="1A")


@pytest.fixture(name="chosen", scope="module")
def _chosen(catalogue: CatalogueStore, us_tables: RuleTables) -> tuple[Part, ...]:
    plan = plan_position(POSITION, SITE, PlanningContext(us_tables, catalogue), with_alternatives=False)
    assert plan.chosen is not None
    return tuple(link.part for link in plan.chosen.hanging_set.links)


@pytest.fixture(name="context", scope="module")
def _context(chosen: tuple[Part, ...], us_tables: RuleTables) -> PlanningContext:
    """The chosen parts, and the nozzle once more under the same number from another maker."""
    return PlanningContext(us_tables, ListStore((*chosen, replace(chosen[-1], maker=OTHER))))


def test_a_pin_by_maker_hangs_that_makers_part(chosen: tuple[Part, ...], context: PlanningContext) -> None:
    for maker in (chosen[-1].maker, OTHER):
        pinned = PartRef(chosen[-1].number, maker)
        position = POSITION.model_copy(update={"decisions": Decisions(pinned=(pinned,))})
        plan = plan_position(position, SITE, context, with_alternatives=False)
        assert plan.chosen is not None
        assert plan.chosen.hanging_set.refs[-1] == pinned


def test_a_refused_part_leaves_the_other_makers_part(chosen: tuple[Part, ...], context: PlanningContext) -> None:
    position = POSITION.model_copy(update={"decisions": Decisions(refused=(chosen[-1].ref,))})
    plan = plan_position(position, SITE, context, with_alternatives=False)
    assert plan.chosen is not None
    assert plan.chosen.hanging_set.refs[-1] == PartRef(chosen[-1].number, OTHER)


def test_a_renamed_maker_never_serves_for_the_one_named(chosen: tuple[Part, ...], us_tables: RuleTables) -> None:
    renamed = ListStore((*chosen[:-1], replace(chosen[-1], maker="Renamed")))
    assert renamed.part(chosen[-1].ref) is None
    assert "this number is of Renamed" in wrong_refs((chosen[-1].ref,), renamed)[chosen[-1].ref]
    position = POSITION.model_copy(update={"decisions": Decisions(pinned=(chosen[-1].ref,))})
    plan = plan_position(position, SITE, PlanningContext(us_tables, renamed), with_alternatives=False)
    assert plan.chosen is None


def test_a_bare_number_of_two_makers_lists_them(chosen: tuple[Part, ...], context: PlanningContext) -> None:
    bare = PartRef(chosen[-1].number)
    assert context.parts.part(bare) is None
    told = wrong_refs((bare,), context.parts)[bare]
    assert chosen[-1].maker in told
    assert OTHER in told


def test_why_not_tells_the_two_apart(chosen: tuple[Part, ...], context: PlanningContext) -> None:
    plan = plan_position(POSITION, SITE, context, with_alternatives=False)
    assert plan.chosen is not None
    hanging = plan.chosen.hanging_set.refs[-1]
    for part in (chosen[-1], replace(chosen[-1], maker=OTHER)):
        verdict = why_not(POSITION, SITE, part, context)
        assert verdict.in_chosen_set is (part.ref == hanging)
        assert verdict.best_set_with_it is not None
        assert verdict.best_set_with_it.refs[-1] == part.ref


def test_the_other_makers_part_is_a_substitute_and_a_swap(chosen: tuple[Part, ...], context: PlanningContext) -> None:
    plan = plan_position(POSITION, SITE, context, with_alternatives=False)
    assert plan.chosen is not None
    hanging = plan.chosen.hanging_set.refs[-1]
    other = next(PartRef(hanging.number, maker) for maker in (OTHER, chosen[-1].maker) if maker != hanging.maker)
    assert [one.part.ref for one in substitutes(plan, hanging, context).fitting] == [other]
    swaps = swap_options(plan, hanging, Stock(lines=(StockLine(part=other, quantity=1),)), context)
    assert [(one.part.ref, one.put_in, one.taken_out) for one in swaps] == [(other, (other,), (hanging,))]


def test_a_survey_writes_a_maker_beside_the_number_and_reads_bare_numbers() -> None:
    decisions = Decisions(pinned=("A-1",), refused=({"maker": "Maker", "number": "A-1"},))
    assert decisions.pinned == (PartRef("A-1"),)
    assert decisions.refused == (PartRef("A-1", "Maker"),)
    written = decisions.model_dump(mode="json")
    assert written["pinned"] == ["A-1"]
    assert written["refused"] == [{"maker": "Maker", "number": "A-1"}]
    assert Decisions.model_validate(written) == decisions
    assert "maker" not in InstalledPart(kind=PartKind.NOZZLE, number="A-1").model_dump(mode="json")
    assert InstalledPart(kind=PartKind.NOZZLE, number="A-1", maker="M").model_dump(mode="json")["maker"] == "M"


def test_makers_are_told_where_numbers_alone_do_not_tell() -> None:
    assert told_apart((PartRef("A", "M"), PartRef("B", "M"))) == ("A", "B")
    assert told_apart((PartRef("A", "M"), PartRef("A", "N"))) == ("M A", "N A")
    assert sorted((PartRef("A-10", "A"), PartRef("A-1", "Z")), key=lambda ref: ref.key)[0].number == "A-1"


def test_a_record_takes_makers_from_its_plan_and_says_which_edition_they_are_of(
    chosen: tuple[Part, ...], context: PlanningContext
) -> None:
    pinned = PartRef(chosen[-1].number, OTHER)
    position = POSITION.model_copy(update={"decisions": Decisions(pinned=(pinned,))})
    plan = plan_position(position, SITE, context, with_alternatives=False)
    bare = tuple(PartRef(part.number) for part in chosen)
    record = CommissioningRecord(site="S", position="1A", plan_revision="0" * 16, parts=bare)
    named = with_makers(record, plan, context.parts)
    assert named.parts == (*(part.ref for part in chosen[:-1]), pinned)
    assert named.catalogue_edition == context.parts.edition().title != ""
    later = named.model_copy(update={"catalogue_edition": "an edition before"})
    assert with_makers(later, plan, context.parts).catalogue_edition == "an edition before"
    change = PartChange(planned=bare[0], fitted=(PartRef(chosen[-1].number),), reason=ChangeReason.DAMAGED)
    with pytest.raises(InputFault, match="several makers") as refused:
        with_makers(record.model_copy(update={"changes": (change,)}), plan, context.parts)
    assert OTHER in str(refused.value)


@pytest.mark.parametrize(
    ("refs", "read"),
    [
        ((PartRef("A-1", "M"), PartRef("B-1", "N")), (PartRef("A-1"), PartRef("B-1"))),
        ((PartRef("A-1", "M"), PartRef("A-1", "N N")), (PartRef("A-1", "M"), PartRef("A-1", "N N"))),
        (
            (PartRef("old hose; 10 ft, [worn]"), PartRef("A-1", "M")),
            (PartRef("old hose; 10 ft, [worn]"), PartRef("A-1")),
        ),
        ((), ()),
    ],
)
def test_the_planned_parts_of_a_form_read_back(refs: tuple[PartRef, ...], read: tuple[PartRef, ...]) -> None:
    assert planned_refs(planned_text(refs)) == read
