"""Each question of the walk: an edit changes exactly its answer, undo and redo swap the whole survey."""

from __future__ import annotations

from collections.abc import Iterator

import pytest

from spoutline.gui.edits.answers import set_answer
from spoutline.gui.edits.command import make_edit
from spoutline.gui.edits.question import WALK, AnswerValue, Entry, Option, Question, Step, answer_in
from spoutline.gui.edits.questions import questions_of
from spoutline.gui.edits.site_questions import site_questions
from spoutline.gui.session import Session
from spoutline.model.answered import answered, same_answers
from spoutline.model.faults import InputFault
from spoutline.model.liquid import LiquidFamily
from spoutline.model.survey import Filler, Position, Retrieval, SurveyLiquid
from spoutline.units.accepted import UnitSystem
from spoutline.units.display import Display

SI = Display(UnitSystem.SI)
# a position for which each question of the walk is asked in one of the two forms
HANGING = Position(label="A1", retrieval=Retrieval.RETRACTOR, other_fillers=(Filler(label="far side"),))
WOUND = Position(
    label="A1", retrieval=Retrieval.REEL, liquid=SurveyLiquid(family=LiquidFamily.DEF), in_flammable_zone=False
)


def every_question() -> Iterator[tuple[Position, Question]]:
    seen: set[str] = set()
    for position in (HANGING, WOUND):
        for step in WALK:
            for question in questions_of(step, position):
                if question.name not in seen:
                    seen.add(question.name)
                    yield position, question
    choices = (Option("us_general", "general"), Option("europe", "Europe"))
    for question in site_questions(choices, (Option("USD", "USD"), Option("EUR", "EUR"))):
        yield HANGING, question


def another_answer(question: Question, present: AnswerValue) -> AnswerValue:
    match question.entry:
        case Entry.CHOICE:
            return next(option.value for option in question.options if option.value != present)
        case Entry.YES_NO | Entry.YES_NO_OPEN:
            return not present
        case Entry.QUANTITY:
            return 5.0 if question.name.endswith("days") else 0.25 if question.name.endswith("fraction") else 1.75
        case Entry.QUANTITIES:
            return (1.0, 2.0)
        case _ if question.name == "outlet.size":
            return "3/4" if present != "3/4" else "1"  # sizes that every thread of an outlet has (ASME B1.20.1)
        case _ if question.name == "stock_price":
            return "35"
        case _:
            return "another text"


@pytest.mark.parametrize(("position", "question"), [pytest.param(*pair, id=pair[1].name) for pair in every_question()])
def test_edit_undo_and_redo_of_every_answer(session: Session, position: Position, question: Question) -> None:
    before = session.survey.model_copy(update={"positions": (position,)})
    session.replace_survey(before, "A1")
    owner = before.site if question in site_questions_of(question) else position
    wanted = another_answer(question, answer_in(owner, question))
    after = set_answer(session.survey, "A1", question, wanted, SI)
    assert make_edit(session, after, question.title)
    now = session.survey.site if owner is before.site else session.position
    assert answer_in(now, question) == wanted
    assert session.settle()
    assert session.workbench.book().stored(session.stored.id).survey == after
    session.undo_stack.undo()
    assert same_answers(session.survey, before)
    assert session.settle()
    assert same_answers(session.workbench.book().stored(session.stored.id).survey, before)
    session.undo_stack.redo()
    assert same_answers(session.survey, after)


def test_size_that_the_thread_does_not_have_is_refused(session: Session) -> None:
    """ASME B1.20.1 has no NPT thread of 5/8 in; what stands stays."""
    session.replace_survey(session.survey.model_copy(update={"positions": (HANGING,)}), "A1")
    before = session.survey
    size = next(question for _, question in every_question() if question.name == "outlet.size")
    with pytest.raises(InputFault, match=r"5/8.*NPT.*3/4"):
        set_answer(session.survey, "A1", size, "5/8", SI)
    assert session.survey == before


def site_questions_of(question: Question) -> tuple[Question, ...]:
    return (question,) if question.step == "site" else ()


def test_an_answer_that_is_the_usual_one_is_an_edit_and_saved(session: Session) -> None:
    bare = session.survey.model_copy(update={"positions": (Position(label="A1"),)})
    session.replace_survey(bare, "A1")
    question = next(one for one in questions_of(Step.PLACE, bare.positions[0]) if one.name == "outlet.height_m")
    after = set_answer(bare, "A1", question, bare.positions[0].outlet.height_m, SI)
    assert after == bare
    assert make_edit(session, after, question.title)
    assert session.settle()
    path = ("positions", 0, "outlet", "height_m")
    assert path in answered(session.workbench.book().stored(session.stored.id).survey)
    session.undo_stack.undo()
    assert session.settle()
    assert path not in answered(session.workbench.book().stored(session.stored.id).survey)
