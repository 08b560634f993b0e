"""What changed between two revisions: the expectations follow from what was changed by hand, no figure of the trade."""

from __future__ import annotations

from datetime import date

import pytest

from planning.quoting_terms import terms_of
from spoutline.model.quotation import Quotation
from spoutline.model.quotation_pins import PinnedPrice, Pins
from spoutline.model.survey import Position, Site, Survey
from spoutline.planning.refit.revision_changes import Changed, revision_changes

SURVEY = Survey(site=Site(name="Hollow Ford"), positions=(Position(label="1A"), Position(label="1B")))


def pinned(survey: Survey = SURVEY, *lists: str) -> Quotation:
    """Return a quotation without options over a survey, a price of one part pinned from each list."""
    prices = tuple(
        PinnedPrice(
            list_id=one, maker=f"Maker of {one[0]}", currency="USD", valid_from=date(2026, 1, 1), valid_to=None,
            part_number=f"X-{number}", discount_group="", breaks=(),
        )
        for number, one in enumerate(lists)
    )  # fmt: skip
    pins = Pins(
        survey=survey, survey_id=None, survey_revision=None, survey_fingerprint=str(hash(survey)),
        catalogue_edition="1", rules_edition="1", jurisdiction_id="us_general", jurisdiction_title="",
        program_version="0", parts=(), prices=prices, limits=(),
    )  # fmt: skip
    return Quotation(terms=terms_of(), options=(), pins=pins)


def told(before: Quotation, after: Quotation, kind: Changed) -> list[tuple[str, str, str]]:
    return [(one.subject, one.before, one.after) for one in revision_changes(before, after) if one.changed is kind]


def test_equal_revisions_differ_in_nothing() -> None:
    assert revision_changes(pinned(), pinned()) == ()


def test_positions_added_dropped_and_surveyed_otherwise_are_named_with_their_fields() -> None:
    first, second = SURVEY.positions
    changed = first.model_copy(update={"prepay": True})
    after = SURVEY.model_copy(update={"positions": (changed, Position(label="2A"))})
    found = [one for one in revision_changes(pinned(), pinned(after)) if one.changed is not Changed.SURVEY]
    assert [(one.changed, one.position, one.subject, one.before, one.after) for one in found] == [
        (Changed.POSITION, "1A", "prepay", "False", "True"),
        (Changed.POSITION_DROPPED, "", second.label, "", ""),
        (Changed.POSITION_ADDED, "", "2A", "", ""),
    ]
    elsewhere = SURVEY.model_copy(update={"site": Site(name="Hollow Ford", address="Mill Lane")})
    assert told(pinned(), pinned(elsewhere), Changed.SITE) == [("address", "", "Mill Lane")]


@pytest.mark.parametrize("label", ["site", "fingerprint", "3A: diesel, site: address"])
def test_no_label_of_a_position_is_taken_for_anything_else(label: str) -> None:
    before = Survey(site=SURVEY.site, positions=(Position(label="1A"), Position(label=label)))
    without = Survey(site=SURVEY.site, positions=(Position(label="1A"),))
    prepaid = Survey(site=SURVEY.site, positions=(Position(label="1A"), Position(label=label, prepay=True)))
    assert told(pinned(before), pinned(without), Changed.POSITION_DROPPED) == [(label, "", "")]
    (change,) = (one for one in revision_changes(pinned(before), pinned(prepaid)) if one.changed is Changed.POSITION)
    assert (change.position, change.subject) == (label, "prepay")


def test_another_price_list_is_told_by_its_maker() -> None:
    before, after = pinned(SURVEY, "a-spring", "b-spring"), pinned(SURVEY, "a-autumn", "b-spring")
    assert told(before, after, Changed.PRICE_LIST) == [("Maker of a", "a-spring", "a-autumn")]
    assert told(before, pinned(SURVEY, "b-spring"), Changed.PRICE_LIST) == [("Maker of a", "a-spring", "")]
