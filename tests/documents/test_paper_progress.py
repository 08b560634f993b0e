"""Long papers say how far they are, and stop where a person asks to."""

from __future__ import annotations

from collections.abc import Callable
from itertools import groupby, pairwise

import pytest

from documents import plan_factory as factory
from documents.pack_words import words
from documents.readers import cautions, story
from spoutline.documents.bill import bill_pdf
from spoutline.documents.pack.papers import form_pdf, pack_pdf
from spoutline.model.faults import Cancelled
from spoutline.model.pack import PackJob
from spoutline.planning.protocols import Progress
from spoutline.units.accepted import UnitSystem

PAPERS: dict[str, Callable[[Progress | None], bytes]] = {
    "pack": lambda progress: pack_pdf(factory.site_plan(), words(), PackJob(), progress=progress),
    "form": lambda progress: form_pdf(factory.site_plan(), words(), progress=progress),
    "bill": lambda progress: bill_pdf(factory.site_plan(), story(UnitSystem.SI), cautions(), progress=progress),
}


class Listener:
    """Notes what it is told and asks to stop when it was told so often."""

    def __init__(self, most: int = 1_000_000) -> None:
        self.told: list[tuple[int, int]] = []
        self._most = most

    def on_progress(self, done: int, total: int) -> None:
        self.told.append((done, total))

    def should_stop(self) -> bool:
        return len(self.told) >= self._most


@pytest.mark.parametrize("name", PAPERS)
def test_a_paper_says_how_far_it_is_and_is_the_same_for_that(name: str) -> None:
    listener = Listener()
    assert PAPERS[name](listener) == PAPERS[name](None)
    stages = [[done for done, _ in told] for _, told in groupby(listener.told, key=lambda one: one[1])]
    assert all(before <= after for stage in stages for before, after in pairwise(stage))
    assert all(0 <= done <= total for done, total in listener.told)
    assert listener.told[-1][0] == listener.told[-1][1], "the last word is that all is done"


@pytest.mark.parametrize("name", PAPERS)
def test_a_paper_stops_where_it_is_asked_to(name: str) -> None:
    listener = Listener()
    PAPERS[name](listener)
    for most in (1, len(listener.told) // 2, len(listener.told)):
        impatient = Listener(most)
        with pytest.raises(Cancelled):
            PAPERS[name](impatient)
        assert len(impatient.told) == most, "nothing is done after it"
