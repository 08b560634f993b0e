"""What planning and papers leave behind goes at once, and waits for no search for garbage.

A circle among objects stays until one is made. Of a big station that was a gigabyte in a command, which seldom looks
for garbage, and a second's standstill in the window, which looks for it when nobody does anything.
"""

from __future__ import annotations

import gc
from collections import Counter
from collections.abc import Callable, Iterator
from contextlib import contextmanager

import pytest

from bench.unlike_station import unlike_station
from documents import plan_factory as factory
from documents.pack_words import words
from documents.readers import cautions, story
from planning.surveys import TOO_FAR
from spoutline.bootstrap import Workbench
from spoutline.documents.bill import bill_pdf
from spoutline.documents.pack.papers import pack_pdf
from spoutline.model.faults import Cancelled
from spoutline.model.pack import PackJob
from spoutline.units.accepted import UnitSystem


@contextmanager
def garbage() -> Iterator[list[object]]:
    """Yield what holds, once it is left, all that lay in circles."""
    was_on, found = gc.isenabled(), list[object]()
    gc.collect()
    gc.disable()
    gc.set_debug(gc.DEBUG_SAVEALL)
    try:
        yield found
        gc.collect()
        found.extend(gc.garbage)
    finally:
        gc.set_debug(0)
        gc.garbage.clear()
        if was_on:
            gc.enable()


def ours(found: list[object]) -> Counter[str]:
    """Return how many objects of the program's own types there are."""
    names = (f"{type(one).__module__}.{type(one).__qualname__}" for one in found)
    return Counter(name for name in names if name.startswith("spoutline.") and not name.endswith("_NumberedCanvas"))


@pytest.mark.parametrize("with_alternatives", [True, False])
def test_a_planned_station_leaves_nothing_behind(workbench: Workbench, with_alternatives: bool) -> None:
    for survey, has_set in ((unlike_station(6), True), (TOO_FAR, False)):
        plan = workbench.plan_site(survey, with_alternatives=with_alternatives)
        assert [one.chosen is not None for one in plan.positions] == [has_set] * len(survey.positions)
        with garbage() as found:
            workbench.plan_site(survey, with_alternatives=with_alternatives)
        assert ours(found) == {}


class Impatient:
    def on_progress(self, done: int, total: int) -> None:
        pass

    def should_stop(self) -> bool:
        return True


def stopped_pack() -> None:
    with pytest.raises(Cancelled):
        pack_pdf(factory.site_plan(), words(), PackJob(), progress=Impatient())


@pytest.mark.parametrize(
    "make",
    [
        lambda: pack_pdf(factory.site_plan(), words(), PackJob()),
        lambda: bill_pdf(factory.site_plan(), story(UnitSystem.SI), cautions()),
        stopped_pack,
    ],
    ids=["pack", "bill", "stopped pack"],
)
def test_a_paper_leaves_nothing_of_its_content_behind(make: Callable[[], object]) -> None:
    make()
    with garbage() as found:
        make()
    assert ours(found) == {}
