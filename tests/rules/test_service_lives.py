"""The table of service lives: every kind that hangs in a chain once, each figure with its footing; faults are told."""

from __future__ import annotations

import pytest

from spoutline import assets
from spoutline.model.faults import InputFault
from spoutline.model.limit import LimitStatus
from spoutline.model.part_kind import HANGING_KINDS
from spoutline.ruletables.service_lives import load_service_lives, service_lives_from_toml


def test_every_kind_of_a_chain_has_a_life_with_its_footing() -> None:
    lives = load_service_lives(assets.resources_folder())
    assert sorted(one.kind for one in lives) == sorted(HANGING_KINDS)
    assert {(one.source, one.status) for one in lives} == {("common practice, no source", LimitStatus.COMMON_PRACTICE)}


@pytest.mark.parametrize(
    ("text", "says"),
    [
        ('[[life]]\nkind = "nozzle"\nyears = 0\nsource = "x"\nstatus = "memory"', "years"),
        ('[[life]]\nkind = "nozle"\nyears = 5\nsource = "x"\nstatus = "memory"', "kind"),
        ('[[life]]\nkind = "nozzle"\nyears = 5\nstatus = "memory"', "source"),
        ("", "each kind stands once"),
    ],
)
def test_a_faulty_table_is_refused_by_name(text: str, says: str) -> None:
    with pytest.raises(InputFault) as caught:
        service_lives_from_toml(text, "lives.toml")
    assert says in str(caught.value)
