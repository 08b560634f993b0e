"""The changes between two revisions in the words of the window."""

from __future__ import annotations

import pytest

from spoutline.gui.models.quotation_changes import change_nodes
from spoutline.planning.refit.revision_changes import Changed, RevisionChange


@pytest.mark.parametrize("label", ["site", "fingerprint", "3A: diesel, site: address"])
def test_no_label_of_a_position_is_taken_for_anything_else(label: str) -> None:
    dropped = RevisionChange(changed=Changed.POSITION_DROPPED, option="", subject=label, before="", after="")
    changed = RevisionChange(
        changed=Changed.POSITION, option="", subject="filler.distance_m", before="1.8", after="2.5", position=label
    )
    (head,) = change_nodes((dropped, changed))
    assert [node.cells for node in head.children] == [
        (f"Position {label}", "there", "–"),
        (f"Position {label}: filler, distance m", "1.8", "2.5"),
    ]


@pytest.mark.parametrize("changed", Changed)
def test_every_kind_of_change_has_words(changed: Changed) -> None:
    option = "Single-use" if changed in OF_AN_OPTION else ""
    (head,) = change_nodes((RevisionChange(changed=changed, option=option, subject="X-1", before="1", after="2"),))
    assert head.cells[0]
    assert head.children[0].cells[0]


OF_AN_OPTION = {
    Changed.OPTION_ADDED,
    Changed.OPTION_DROPPED,
    Changed.PART_ADDED,
    Changed.PART_DROPPED,
    Changed.QUANTITY,
    Changed.UNIT_PRICE,
    Changed.TOTAL,
    Changed.POSITION_SET,
}
