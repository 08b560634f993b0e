"""A quotation names the revision of the survey that it was made from, with the same values and the same answers."""

from __future__ import annotations

from spoutline.book.records import StoredSurvey
from spoutline.bootstrap.demos import demo_survey
from spoutline.gui.pages.quotation.work import origin_in_book


def test_a_usual_value_that_was_answered_but_is_not_in_the_book_yet_is_another_state_of_the_survey() -> None:
    survey = demo_survey("small_town")
    first, *others = survey.positions
    answered = first.model_copy(update={"overhead": first.overhead})
    confirmed = survey.model_copy(update={"positions": (answered, *others)})
    assert confirmed == survey  # by their values
    stored = StoredSurvey(id=7, revision=3, survey=survey)
    assert origin_in_book(stored, survey) == (7, 3)
    assert origin_in_book(stored, confirmed) is None
