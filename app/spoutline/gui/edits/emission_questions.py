"""The questions about the emissions of a conversion: sales, vehicles, air and tanks."""

from __future__ import annotations

from spoutline.gui.edits.conversion_question import conversion_question
from spoutline.gui.edits.question import Entry, Measure, Option, Question
from spoutline.model.conversion_answers import AfterTable, EmissionBasis
from spoutline.model.quantity import Dimension

_OWNER = "The owner's own figure"
_AIR, _FLEET, _TANKS = "Emissions", "Vehicles and their onboard recovery", "Air, fills and tanks"
_SHARE = Measure(Dimension.RATIO)
_LITRE = Measure(Dimension.VOLUME, 1e-3)
_CUBIC_METRE = Measure(Dimension.VOLUME)
_KILOPASCAL = Measure(Dimension.PRESSURE, 1e3)


def emission_questions() -> tuple[Question, ...]:
    """Return the questions about the emissions of the conversion."""
    return (*_sales_questions(), *_fleet_questions(), *_tank_questions())


def _sales_questions() -> tuple[Question, ...]:
    return (
        conversion_question(
            "emissions.gasoline_throughput_m3",
            _AIR,
            "Gasoline sold in a &year",
            "Such as 5700 m3. Without it masses are not computed.",
            _OWNER,
            Entry.QUANTITY,
            measure=_CUBIC_METRE,
            empty_means="not known",
        ),
        conversion_question(
            "emissions.basis",
            _AIR,
            "Whose e&mission factors?",
            "One balance never mixes two.",
            "See the figures in the report",
            Entry.CHOICE,
            options=(
                Option(EmissionBasis.EPA_MODEL, "EPA's public model", ""),
                Option(EmissionBasis.AP42, "AP-42", "From memory"),
                Option(EmissionBasis.CARB, "CARB 2013", "From memory"),
            ),
        ),
        conversion_question(
            "emissions.in_use_efficiency",
            _AIR,
            "Efficiency at the no&zzle in use",
            "Between 0 and 1; empty takes the table's figure.",
            "Trade-association paper, 2020 (secondary)",
            Entry.QUANTITY,
            measure=_SHARE,
            empty_means="as in the table",
        ),
    )


def _fleet_questions() -> tuple[Question, ...]:
    return (
        conversion_question(
            "emissions.assist_works_with_onboard",
            _FLEET,
            "Does the vacuum assist stop at vehicles with onboard recovery?",
            "Then it does no harm there.",
            "OAR 340-244-0247(1)",
            Entry.YES_NO,
        ),
        conversion_question(
            "emissions.assist_share",
            _FLEET,
            "Share of gasoline pumped through vacuum assist",
            "Between 0 and 1; empty counts every gasoline position alike.",
            _OWNER,
            Entry.QUANTITY,
            measure=_SHARE,
            empty_means="by positions",
        ),
        conversion_question(
            "emissions.national_shares",
            _FLEET,
            "Use the table of the United States fleet?",
            "It ends in 2020. Own shares, further down, go before it.",
            "77 FR 28772 table 1 (memory)",
            Entry.YES_NO,
        ),
        conversion_question(
            "emissions.after_table",
            _FLEET,
            "&Beyond the years whose onboard share is known",
            "The table ends in 2020 and is never prolonged without being asked.",
            "77 FR 28772 table 1 (memory)",
            Entry.CHOICE,
            options=(Option(AfterTable.STOP, "Stop", ""), Option(AfterTable.HOLD_LAST, "Hold the last share", "")),
        ),
        conversion_question(
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
        conversion_question(
            "emissions.reid_vapour_pressure_kpa",
            _TANKS,
            "&Reid vapor pressure",
            "Of the gasoline in the season that counts, such as 62 kPa.",
            "Supplier's sheet",
            Entry.QUANTITY,
            measure=_KILOPASCAL,
            empty_means="as in the worked example",
        ),
        conversion_question(
            "emissions.mean_ambient_c",
            _TANKS,
            "Mean temperature of the air",
            "Of the season that counts, such as 15 °C.",
            "Weather records of the place",
            Entry.QUANTITY,
            measure=Measure(Dimension.TEMPERATURE),
            empty_means="as in the worked example",
        ),
        conversion_question(
            "emissions.mean_fill_l",
            _TANKS,
            "Mean fill of a boat",
            "Only where boats are fueled; such as 120 L.",
            _OWNER,
            Entry.QUANTITY,
            measure=_LITRE,
            empty_means="not known",
        ),
        conversion_question(
            "emissions.ullage_m3",
            _TANKS,
            "Vapor space of the tanks at the test",
            "Such as 15 m3. Decides the pressure that a tightness test allows.",
            "Tank gauge on the day",
            Entry.QUANTITY,
            measure=_CUBIC_METRE,
            empty_means="not known",
        ),
    )
