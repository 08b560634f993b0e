"""What hangs at a station under another number of the very part is that part; another part's number is not."""

from __future__ import annotations

from collections.abc import Mapping, Sequence

import pytest

from planning.stores import ListStore
from spoutline.catalogue.descriptions import describe
from spoutline.model.cross_reference import CrossReference, NumberStep, NumberStepKind, NumberTrace
from spoutline.model.faults import InputFault
from spoutline.model.installed import InstalledPart
from spoutline.model.part import Part
from spoutline.model.part_ref import PartRef
from spoutline.model.survey import Position
from spoutline.planning.part_names import installed_parts
from spoutline.planning.sets.installed_units import installed_units
from spoutline.planning.typed_numbers import followed, with_old_numbers
from stores.catalogue.entries import swivel

OLD = PartRef("OLD 1", "Aldertarn")


def part() -> Part:
    found = describe(swivel()).part
    assert found is not None
    return found


class NumberedStore(ListStore):
    """Parts, and where old numbers lead."""

    def __init__(self, parts: Sequence[Part], ways: Mapping[PartRef, tuple[NumberTrace, ...]]) -> None:
        super().__init__(parts)
        self._ways = ways

    def traces(self, asked: PartRef) -> tuple[NumberTrace, ...]:
        return self._ways.get(asked, ())

    def under_other_numbers(self, refs: Sequence[PartRef]) -> Mapping[PartRef, Part]:
        same = {ref: one for ref in refs for one in self.traces(ref) if one.is_same_part}
        return {ref: found for ref, one in same.items() if one.item and (found := self.part(one.item))}


def way(kind: NumberStepKind, to: PartRef, maker: str = OLD.maker) -> NumberTrace:
    step = NumberStep(kind, f"{maker} {OLD.number}", to)
    return NumberTrace(OLD.number, maker, (step,), to, to)


def test_a_part_under_another_number_of_its_own_can_be_judged() -> None:
    known = part()
    item = InstalledPart(kind=known.kind, number=OLD.number, maker=OLD.maker)
    position = Position(label="1", installed=(item,))
    for kind, expected in ((NumberStepKind.SAME, known), (NumberStepKind.EQUIVALENT, None)):
        store = NumberedStore([known], {OLD: (way(kind, known.ref),)})
        (unit,) = installed_units(position, installed_parts([OLD], store))
        assert unit.part == expected
        assert unit.missing == (() if expected else ("number",))


def test_a_typed_number_is_followed_and_several_parts_ask_for_the_maker() -> None:
    known, bare = part(), PartRef(OLD.number)
    other = PartRef("X", "Elsewhere")
    ways = {
        OLD: (way(NumberStepKind.EQUIVALENT, known.ref),),
        bare: (way(NumberStepKind.EQUIVALENT, known.ref), way(NumberStepKind.EQUIVALENT, other, "Brackwater")),
    }
    store = NumberedStore([known], ways)
    assert followed(known.ref, store) == (known.ref, None)
    assert followed(PartRef("?"), store) == (PartRef("?"), None)
    found, trace = followed(OLD, store)
    assert found == known.ref
    assert trace is not None
    assert trace.written == OLD
    with pytest.raises(
        InputFault, match=r"several makers have this number: Aldertarn .*name the maker too: 'Aldertarn OLD 1'"
    ):
        followed(bare, store)
    assert str(known.ref) in with_old_numbers({OLD: "unknown"}, store)[OLD]
    assert with_old_numbers({PartRef("?"): "unknown"}, store) == {PartRef("?"): "unknown"}


def test_a_cross_reference_leads_from_one_number_to_another() -> None:
    one = CrossReference(number="A", maker="Q", part_number="B", part_maker="Z")
    assert (one.ref, one.leads_to) == (PartRef("A", "Q"), PartRef("B", "Z"))
