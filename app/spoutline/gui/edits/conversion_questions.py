"""The questions of a conversion: about the site as a whole, and about the position in focus."""

from __future__ import annotations

from spoutline.gui.edits.question import Entry, Measure, Option, Question, Step
from spoutline.model.conversion_answers import AfterTable, EmissionBasis, OptionKind, StationKind
from spoutline.model.quantity import Dimension

_OWNER = "The owner's own figure"
_LAW, _WAY, _AIR, _WORK, _MONEY = "Agency", "Which way", "Emissions", "Sequence", "Money"
_PIPES, _FLEET, _TANKS = "Vapour pipes and vacuum", "Vehicles and their onboard recovery", "Air, fills and tanks"
_NUMBER = Measure(Dimension.COUNT)
_SHARE = Measure(Dimension.RATIO)
_LITRE = Measure(Dimension.VOLUME, 1e-3)
_CUBIC_METRE = Measure(Dimension.VOLUME)
_KILOPASCAL = Measure(Dimension.PRESSURE, 1e3)


def _asked(  # noqa: PLR0917  (the columns of the table of questions below)
    path: str, group: str, title: str, help_text: str, source: str, entry: Entry, **more: object
) -> Question:
    return Question(
        path=tuple(path.split(".")),
        step=Step.CONVERSION,
        group=group,
        title=title,
        help=help_text,
        source=source,
        entry=entry,
        **more,  # type: ignore[arg-type]
    )


def conversion_questions(agencies: tuple[Option, ...]) -> tuple[Question, ...]:
    """Return the questions about the conversion of the site; the agencies come from the tables."""
    return (
        *_standing_questions(agencies),
        *_work_questions(),
        *_pipe_questions(),
        *_emission_questions(),
        *_fleet_questions(),
        *_tank_questions(),
        *_money_questions(),
    )


def _standing_questions(agencies: tuple[Option, ...]) -> tuple[Question, ...]:
    return (
        _asked(
            "agency",
            _LAW,
            "Whose &rule on removal applies?",
            "Ask in writing; what is not known is said in the report.",
            "Public texts, each with its status",
            Entry.CHOICE,
            options=agencies,
        ),
        _asked(
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
        _asked(
            "under_living_quarters",
            _LAW,
            "Does it stand under living or working &quarters?",
            "Lowers the threshold of a new station.",
            "Directive 2009/126/EC, EU summary",
            Entry.YES_NO,
        ),
        _asked(
            "follow",
            _WAY,
            "Which &way do lists, sequence and money follow?",
            "Each way keeps every must.",
            _OWNER,
            Entry.CHOICE,
            options=(
                Option(OptionKind.LEAST_COST, "Least cost", "Kept parts cost nothing"),
                Option(OptionKind.GOOD_PRACTICE, "Good practice", "Fewest departures"),
                Option(OptionKind.FULL_RENEWAL, "Full renewal", "Every part new"),
            ),
        ),
        _asked("keep_parts", _WAY, "May parts that still fit &stay?", "Each is judged again.", _OWNER, Entry.YES_NO),
        _asked(
            "retire_superseded",
            _WAY,
            "Do superseded parts &go?",
            "Superseded and discontinued ones.",
            _OWNER,
            Entry.YES_NO,
        ),
        _asked(
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
        _asked(
            "sequence.start_date",
            _WORK,
            "First &day of the plan",
            "Year-month-day, such as 2027-03-01: the day of the notice. A calendar needs it.",
            _OWNER,
            Entry.TEXT,
            empty_means="not dated",
        ),
        _asked(
            "sequence.notice_days",
            _WORK,
            "Days of &notice",
            "Empty takes the agency's figure.",
            "Agency table",
            Entry.QUANTITY,
            measure=Measure(Dimension.DAYS),
            empty_means="as the agency asks",
        ),
        _asked(
            "sequence.most_out_of_service",
            _WORK,
            "Greatest share of a grade out of ser&vice",
            "Between 0 and 1; the rest goes on selling.",
            _OWNER,
            Entry.QUANTITY,
            measure=_SHARE,
        ),
        _asked(
            "sequence.hours_per_day",
            _WORK,
            "Working &hours of a day",
            "Of a crew.",
            _OWNER,
            Entry.QUANTITY,
            measure=Measure(Dimension.COUNT),
        ),
        _asked(
            "sequence.crews",
            _WORK,
            "Crews side by side",
            "Each works at a dispenser of its own.",
            _OWNER,
            Entry.QUANTITY,
            measure=_NUMBER,
        ),
        _asked("sequence.weekend_work", _WORK, "Does work go on at week&ends?", "", _OWNER, Entry.YES_NO),
    )


def _pipe_questions() -> tuple[Question, ...]:
    return (
        _asked(
            "sequence.tank_end_reachable",
            _PIPES,
            "Can the vapour pipe be reached at the tan&k?",
            "Without breaking the ground.",
            "Georgia page",
            Entry.YES_NO_OPEN,
        ),
        _asked(
            "sequence.vapour_pipe_links_tanks",
            _PIPES,
            "Is the vapour pipe the only &link between the tanks?",
            "Then another link is needed, and a test shows it.",
            "Arizona test list",
            Entry.YES_NO_OPEN,
        ),
        _asked(
            "sequence.dual_vapour_pipes",
            _PIPES,
            "Does each grade have a vapour pipe of its own?",
            "Recorded for whoever closes the pipes.",
            "Pipe drawing of the station",
            Entry.YES_NO_OPEN,
        ),
        _asked(
            "sequence.central_vacuum",
            _PIPES,
            "Does one central unit make the vacuum?",
            "No where each position has a pump of its own; recorded for the installer.",
            "Equipment list of the station",
            Entry.YES_NO,
        ),
        _asked(
            "sequence.condensate_traps",
            _PIPES,
            "Condensate traps in the vapour pipes",
            "A whole number; each is emptied before its pipe is closed.",
            "Pipe drawing of the station",
            Entry.QUANTITY,
            measure=_NUMBER,
        ),
    )


def _emission_questions() -> tuple[Question, ...]:
    return (
        _asked(
            "emissions.gasoline_throughput_m3",
            _AIR,
            "Gasoline sold in a &year",
            "Such as 5700 m3. Without it masses are not computed.",
            _OWNER,
            Entry.QUANTITY,
            measure=_CUBIC_METRE,
            empty_means="not known",
        ),
        _asked(
            "emissions.basis",
            _AIR,
            "Whose emission &factors?",
            "One balance never mixes two.",
            "See the figures in the report",
            Entry.CHOICE,
            options=(
                Option(EmissionBasis.EPA_MODEL, "EPA's public model", ""),
                Option(EmissionBasis.AP42, "AP-42", "From memory"),
                Option(EmissionBasis.CARB, "CARB 2013", "From memory"),
            ),
        ),
        _asked(
            "emissions.in_use_efficiency",
            _AIR,
            "&Efficiency at the nozzle in use",
            "Between 0 and 1; empty takes the table's figure.",
            "Trade-association paper, 2020 (secondary)",
            Entry.QUANTITY,
            measure=_SHARE,
            empty_means="as in the table",
        ),
    )


def _fleet_questions() -> tuple[Question, ...]:
    return (
        _asked(
            "emissions.assist_works_with_onboard",
            _FLEET,
            "Does the vacuum assist stop at vehicles with onboard rec&overy?",
            "Then it does no harm there.",
            "OAR 340-244-0247(1)",
            Entry.YES_NO,
        ),
        _asked(
            "emissions.assist_share",
            _FLEET,
            "Share of gasoline pumped through vacuum assist",
            "Between 0 and 1; empty counts every gasoline position alike.",
            _OWNER,
            Entry.QUANTITY,
            measure=_SHARE,
            empty_means="by positions",
        ),
        _asked(
            "emissions.national_shares",
            _FLEET,
            "Use the table of the United States fleet?",
            "It ends in 2020. Own shares, further down, go before it.",
            "77 FR 28772 table 1 (memory)",
            Entry.YES_NO,
        ),
        _asked(
            "emissions.after_table",
            _FLEET,
            "&Beyond the years whose onboard share is known",
            "The table ends in 2020 and is never prolonged without being asked.",
            "77 FR 28772 table 1 (memory)",
            Entry.CHOICE,
            options=(Option(AfterTable.STOP, "Stop", ""), Option(AfterTable.HOLD_LAST, "Hold the last share", "")),
        ),
        _asked(
            "emissions.own_shares_source",
            _FLEET,
            "Where own shares come from",
            "Printed beside them in the report.",
            _OWNER,
            Entry.TEXT,
        ),
    )


def _tank_questions() -> tuple[Question, ...]:
    return (
        _asked(
            "emissions.reid_vapour_pressure_kpa",
            _TANKS,
            "Reid vapour &pressure",
            "Of the gasoline in the season that counts, such as 62 kPa.",
            "Supplier's sheet",
            Entry.QUANTITY,
            measure=_KILOPASCAL,
            empty_means="as in the worked example",
        ),
        _asked(
            "emissions.mean_ambient_c",
            _TANKS,
            "Mean temperature of the air",
            "Of the season that counts, such as 15 °C.",
            "Weather records of the place",
            Entry.QUANTITY,
            measure=Measure(Dimension.TEMPERATURE),
            empty_means="as in the worked example",
        ),
        _asked(
            "emissions.mean_fill_l",
            _TANKS,
            "Mean fill of a boat",
            "Only where boats are fuelled; such as 120 L.",
            _OWNER,
            Entry.QUANTITY,
            measure=_LITRE,
            empty_means="not known",
        ),
        _asked(
            "emissions.ullage_m3",
            _TANKS,
            "Vapour space of the tanks at the test",
            "Such as 15 m3. Decides the pressure that a tightness test allows.",
            "Tank gauge on the day",
            Entry.QUANTITY,
            measure=_CUBIC_METRE,
            empty_means="not known",
        ),
    )


def _money_questions() -> tuple[Question, ...]:
    def amount(path: str, title: str, help_text: str) -> Question:
        return _asked(f"money.{path}", _MONEY, title, help_text, _OWNER, Entry.TEXT, empty_means="not known")

    return (
        amount("labour_rate_per_hour", "Price of an hour of &work", "Without it no payback is shown."),
        amount("upkeep_today_per_year", "Yearly &upkeep today", "Tests, repairs, spare parts of the recovery system."),
        amount("upkeep_after_per_year", "Yearly upkeep &afterwards", "Of the converted hardware."),
        amount("margin_lost_per_hour", "&Margin lost per position and hour", "While out of service."),
        amount("grant", "Grant that was promised", "Taken off the cost of the conversion, in the site's currency."),
        _asked(
            "money.discount_percent",
            _MONEY,
            "Discount rate, percent a year",
            "Between 0 and 50, written without the sign.",
            _OWNER,
            Entry.TEXT,
        ),
        _asked(
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
            help="It can be put together again after it parted, where its maker says so.",
            source=_OWNER,
            entry=Entry.YES_NO,
        ),
    )
