"""The questions of a conversion: about the site as a whole, and about the position in focus."""

from __future__ import annotations

from spoutline.gui.edits.conversion_question import conversion_question
from spoutline.gui.edits.emission_questions import emission_questions
from spoutline.gui.edits.question import Entry, Measure, Option, Question, Step
from spoutline.model.conversion_answers import OptionKind, StationKind
from spoutline.model.quantity import Dimension

_OWNER = "The owner's own figure"
_LAW, _WAY, _WORK, _MONEY = "Agency", "Which way", "Sequence", "Money"
_PIPES = "Vapor pipes and vacuum"
_NUMBER = Measure(Dimension.COUNT)
_SHARE = Measure(Dimension.RATIO)


def conversion_questions(agencies: tuple[Option, ...]) -> tuple[Question, ...]:
    """Return the questions about the conversion of the site; the agencies come from the tables."""
    return (
        *_agency_questions(agencies),
        *_way_questions(),
        *_work_questions(),
        *_pipe_questions(),
        *emission_questions(),
        *_money_questions(),
    )


def _agency_questions(agencies: tuple[Option, ...]) -> tuple[Question, ...]:
    return (
        conversion_question(
            "agency",
            _LAW,
            "Whose rule on removal applies?",
            "Ask in writing; what is not known is said in the report.",
            "Public texts, each with its status",
            Entry.CHOICE,
            options=agencies,
        ),
        conversion_question(
            "station",
            _LAW,
            "What is the s&tation?",
            "Decides the throughput threshold in Europe.",
            "Directive 2009/126/EC, EU summary",
            Entry.CHOICE,
            options=(
                Option(StationKind.EXISTING, "Existing", ""),
                Option(StationKind.NEW_OR_REFURBISHED, "New or refurbished", ""),
            ),
        ),
        conversion_question(
            "under_living_quarters",
            _LAW,
            "Does it stand under living or working &quarters?",
            "Lowers the threshold of a new station.",
            "Directive 2009/126/EC, EU summary",
            Entry.YES_NO,
        ),
        conversion_question(
            "deadline_year",
            _LAW,
            "Year in which the agency wants it done",
            "A program of several sites puts the site before those without one.",
            "The agency's own word",
            Entry.TEXT,
            empty_means="none is known",
        ),
    )


def _way_questions() -> tuple[Question, ...]:
    return (
        conversion_question(
            "follow",
            _WAY,
            "Which way do lists, sequence and money follow?",
            "Each way keeps every must.",
            _OWNER,
            Entry.CHOICE,
            options=(
                Option(OptionKind.LEAST_COST, "Least cost", "Kept parts cost nothing"),
                Option(OptionKind.GOOD_PRACTICE, "Good practice", "Fewest departures"),
                Option(OptionKind.FULL_RENEWAL, "Full renewal", "Every part new"),
            ),
        ),
        conversion_question(
            "keep_parts", _WAY, "May parts that still fit stay?", "Each is judged again.", _OWNER, Entry.YES_NO
        ),
        conversion_question(
            "retire_superseded",
            _WAY,
            "Do superseded parts go?",
            "Superseded and discontinued ones.",
            _OWNER,
            Entry.YES_NO,
        ),
        conversion_question(
            "longest_age_years",
            _WAY,
            "Oldest age at which a part may stay, years",
            "Ages are given at each position, under what hangs there today.",
            _OWNER,
            Entry.QUANTITY,
            measure=_NUMBER,
            empty_means="no age limit",
        ),
    )


def _work_questions() -> tuple[Question, ...]:
    return (
        conversion_question(
            "sequence.start_date",
            _WORK,
            "First &day of the plan",
            "Year-month-day, such as 2027-03-01: the day of the notice. A calendar needs it.",
            _OWNER,
            Entry.TEXT,
            empty_means="not dated",
        ),
        conversion_question(
            "sequence.notice_days",
            _WORK,
            "Days of noti&ce",
            "Empty takes the agency's figure.",
            "Agency table",
            Entry.QUANTITY,
            measure=Measure(Dimension.DAYS),
            empty_means="as the agency asks",
        ),
        conversion_question(
            "sequence.permission_days",
            _WORK,
            "Days until the permission is expected",
            "Where permission is open, nothing is ordered before it.",
            "The agency's own word",
            Entry.QUANTITY,
            measure=Measure(Dimension.DAYS),
            empty_means="not known, none counted",
        ),
        conversion_question(
            "sequence.most_out_of_service",
            _WORK,
            "Greatest share of a grade out of service",
            "Between 0 and 1; the rest goes on selling.",
            _OWNER,
            Entry.QUANTITY,
            measure=_SHARE,
        ),
        conversion_question(
            "sequence.hours_per_day",
            _WORK,
            "Working hours o&f a day",
            "Of a crew.",
            _OWNER,
            Entry.QUANTITY,
            measure=Measure(Dimension.COUNT),
        ),
        conversion_question(
            "sequence.crews",
            _WORK,
            "Crews side by side",
            "Each works at a dispenser of its own.",
            _OWNER,
            Entry.QUANTITY,
            measure=_NUMBER,
        ),
        conversion_question("sequence.weekend_work", _WORK, "Does wor&k go on at weekends?", "", _OWNER, Entry.YES_NO),
    )


def _pipe_questions() -> tuple[Question, ...]:
    return (
        conversion_question(
            "sequence.tank_end_reachable",
            _PIPES,
            "Can the vapor pipe be reached at the tank?",
            "Without breaking the ground.",
            "Georgia page",
            Entry.YES_NO_OPEN,
        ),
        conversion_question(
            "sequence.vapour_pipe_links_tanks",
            _PIPES,
            "Is the vapor pipe the only link between the tanks?",
            "Then another link is needed, and a test shows it.",
            "Arizona test list",
            Entry.YES_NO_OPEN,
        ),
        conversion_question(
            "sequence.tanks_underground",
            _PIPES,
            "Do the tanks lie underground?",
            "Then the tank agency is told before some blends; not answered counts as yes.",
            "40 CFR 280.32(b), from memory",
            Entry.YES_NO_OPEN,
        ),
        conversion_question(
            "sequence.dual_vapour_pipes",
            _PIPES,
            "Does each grade have a vapor pipe of its own?",
            "Where yes, one riser at the dispenser and one end at the tank are closed for each grade.",
            "Pipe drawing of the station",
            Entry.YES_NO_OPEN,
        ),
        conversion_question(
            "sequence.central_vacuum",
            _PIPES,
            "Does one central unit make the vacuum?",
            "Where yes, the unit is disconnected and its power isolated before the first dispenser is opened.",
            "Equipment list of the station",
            Entry.YES_NO,
        ),
        conversion_question(
            "sequence.condensate_traps",
            _PIPES,
            "Condensate traps in the vapor pipes",
            "A whole number; each is emptied before its pipe is closed.",
            "Pipe drawing of the station",
            Entry.QUANTITY,
            measure=_NUMBER,
        ),
    )


def _money_questions() -> tuple[Question, ...]:
    def amount(path: str, title: str, help_text: str) -> Question:
        return conversion_question(
            f"money.{path}", _MONEY, title, help_text, _OWNER, Entry.TEXT, empty_means="not known"
        )

    return (
        amount("labour_rate_per_hour", "Price of an hour of &work", "Without it no payback is shown."),
        amount("upkeep_today_per_year", "Yearly &upkeep today", "Tests, repairs, spare parts of the recovery system."),
        amount("upkeep_after_per_year", "Yearly upkeep &afterwards", "Of the converted hardware."),
        amount("margin_lost_per_hour", "Margin lost per position and hour", "While out of service."),
        amount("grant", "Grant that was promised", "Taken off the cost of the conversion, in the site's currency."),
        conversion_question(
            "money.discount_percent",
            _MONEY,
            "Discount rate, percent a year",
            "Between 0 and 50, written without the sign.",
            _OWNER,
            Entry.TEXT,
        ),
        conversion_question(
            "money.years",
            _MONEY,
            "Years that are compared",
            "A whole number from 1 to 50.",
            _OWNER,
            Entry.QUANTITY,
            measure=_NUMBER,
        ),
    )


def position_conversion_questions() -> tuple[Question, ...]:
    """Return the questions about the position in focus."""
    group = "Position"
    return (
        Question(
            path=("grade",),
            step=Step.VAPOUR,
            group=group,
            title="Name of the g&rade",
            help="Keeps the grade on sale; empty goes by liquid and blend.",
            source=_OWNER,
            entry=Entry.TEXT,
        ),
        Question(
            path=("tank",),
            step=Step.VAPOUR,
            group=group,
            title="Which &tank feeds the position?",
            help="A change of liquid goes by tank, and a vapor pipe ends at one. For a blend of two write 1 + 2.",
            source="Pipe drawing of the station",
            entry=Entry.TEXT,
            empty_means="not known",
        ),
        Question(
            path=("exists_today",),
            step=Step.VAPOUR,
            group=group,
            title="Does the position e&xist today?",
            help="No for one that the conversion adds.",
            source=_OWNER,
            entry=Entry.YES_NO,
        ),
        Question(
            path=("reconnectable_wanted",),
            step=Step.VAPOUR,
            group=group,
            title="Is a re&connectable breakaway wanted?",
            help="It can be put together again after it separated, where its maker says so.",
            source=_OWNER,
            entry=Entry.YES_NO,
        ),
    )
