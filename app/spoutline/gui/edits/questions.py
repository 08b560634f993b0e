"""The questions of the walk, declared: what is asked where, in which words, on which grounds."""

from __future__ import annotations

from spoutline.gui.edits.place_questions import OUTLET_QUESTIONS, filler_questions
from spoutline.gui.edits.question import Entry, Measure, Option, Question, Step
from spoutline.model.liquid import LiquidFamily
from spoutline.model.port import FlowPath
from spoutline.model.quantity import Dimension
from spoutline.model.survey import Duty, Position, Retrieval, VapourStatus

_KILO = Measure(Dimension.PRESSURE, 1e3)
_LITRE_PER_MINUTE = Measure(Dimension.FLOW, 1e-3 / 60.0)
_LENGTH = Measure(Dimension.LENGTH)


def _has_blend(position: Position) -> bool:
    return position.liquid.family is not LiquidFamily.DEF


def _is_def(position: Position) -> bool:
    return position.liquid.family is LiquidFamily.DEF


def _is_on_reel(position: Position) -> bool:
    return position.retrieval is Retrieval.REEL or position.duty is Duty.REEL


def _has_retractor(position: Position) -> bool:
    return position.retrieval is Retrieval.RETRACTOR


def _may_have_return_pipe(position: Position) -> bool:
    return position.outlet.path is FlowPath.SINGLE


LIQUID_QUESTIONS: tuple[Question, ...] = (
    Question(
        path=("liquid", "family"),
        step=Step.LIQUID,
        group="Liquid",
        title="Which &liquid is sold here?",
        help="The family decides which listing standards, seals and spouts come into question.",
        source="UL 2586, 567 and 330 with supplements A (ethanol) and B (diesel, biodiesel)",
        entry=Entry.CHOICE,
        options=(
            Option(LiquidFamily.GASOLINE, "Gasoline", "With or without ethanol"),
            Option(LiquidFamily.DIESEL, "Diesel", "With or without biodiesel"),
            Option(LiquidFamily.KEROSENE, "Kerosene", "Judged with the diesel family"),
            Option(LiquidFamily.FUEL_OIL, "Fuel oil", "Judged with the diesel family"),
            Option(LiquidFamily.DEF, "DEF", "Urea solution for diesel exhaust"),
        ),
    ),
    Question(
        path=("liquid", "blend_percent"),
        step=Step.LIQUID,
        group="Liquid",
        title="How much &blend is in it?",
        help="Percent by volume at most: ethanol in gasoline, biodiesel in diesel, kerosene or fuel oil. "
        "Take the highest figure the supplier may deliver.",
        source="Class limits: scopes of UL 2586A/B, 567A/B, 330A/B",
        entry=Entry.QUANTITY,
        measure=Measure(Dimension.PERCENT),
        asked=_has_blend,
    ),
    Question(
        path=("in_flammable_zone",),
        step=Step.LIQUID,
        group="Liquid",
        title="Is the DEF nozzle used inside the flammable &zone of a fuel dispenser?",
        help="DEF itself does not burn. Where its nozzle is used close to fuel, the nozzle has to be "
        "evaluated for that.",
        source="Outlines UL 87C and 2586C; zones: NFPA 30A and the local code",
        entry=Entry.YES_NO_OPEN,
        asked=_is_def,
    ),
)

DUTY_QUESTIONS: tuple[Question, ...] = (
    Question(
        path=("duty",),
        step=Step.DUTY,
        group="Duty",
        title="What d&oes the hose serve?",
        help="The duty decides spout, flow and how far the hose has to turn and reach.",
        source="Spouts: SAE J285; the flow wanted is common practice",
        entry=Entry.CHOICE,
        options=(
            Option(Duty.CAR, "Cars", "And light vans"),
            Option(Duty.TRUCK, "Trucks", "Large tanks, high flow"),
            Option(Duty.MARINE, "Boats", "From a dock or slip"),
            Option(Duty.REEL, "Hose reel", "Long hose, yard or delivery"),
        ),
    ),
    Question(
        path=("retrieval",),
        step=Step.DUTY,
        group="Hose take-up",
        title="How is the hose taken &up after use?",
        help="A retractor or a reel moves the breakaway to the nozzle.",
        source="Placement: breakaway makers' usual instructions, common practice",
        entry=Entry.CHOICE,
        options=(
            Option(Retrieval.NONE, "It hangs", "Back on the hook by hand"),
            Option(Retrieval.RETRACTOR, "Retractor", "A cord pulls the hose in"),
            Option(Retrieval.REEL, "Reel", "Wound on a drum"),
        ),
    ),
    Question(
        path=("retractor", "height_m"),
        step=Step.DUTY,
        group="Hose take-up",
        title="Heigh&t from which the cord pulls",
        help="Above the ground the hose hangs over.",
        source="Measured on site",
        entry=Entry.QUANTITY,
        measure=_LENGTH,
        asked=_has_retractor,
    ),
    Question(
        path=("retractor", "clamp_fraction"),
        step=Step.DUTY,
        group="Hose take-up",
        title="Where the cord's cla&mp sits on the hose",
        help="As a share of the hose's length from the dispenser: 0.5 is the middle.",
        source="Measured on site",
        entry=Entry.QUANTITY,
        measure=Measure(Dimension.RATIO),
        asked=_has_retractor,
    ),
    Question(
        path=("retractor", "force_n"),
        step=Step.DUTY,
        group="Hose take-up",
        title="Pu&ll of the cord",
        help="At the clamp, with the hose drawn out.",
        source="Spring balance on site, or the maker's data",
        entry=Entry.QUANTITY,
        measure=Measure(Dimension.FORCE),
        asked=_has_retractor,
    ),
    Question(
        path=("reel", "drum_diameter_m"),
        step=Step.DUTY,
        group="Hose take-up",
        title="Diameter of the hose on the &drum",
        help="From center line to center line of the hose.",
        source="Measured on site",
        entry=Entry.QUANTITY,
        measure=_LENGTH,
        asked=_is_on_reel,
    ),
    Question(
        path=("reel", "turns_left"),
        step=Step.DUTY,
        group="Hose take-up",
        title="Tur&ns left on the drum at the filler",
        help="Hose on the drum is curved and costs flow; it is counted.",
        source="Measured on site",
        entry=Entry.QUANTITY,
        measure=Measure(Dimension.COUNT),
        asked=_is_on_reel,
    ),
    Question(
        path=("hold_open_wanted",),
        step=Step.DUTY,
        group="Fueling",
        title="Is a hold-open l&atch wanted?",
        help="Allowed in some places only, and then together with a device that shuts the nozzle when "
        "pressure or flow ends.",
        source="NFPA 30A as reproduced by state agencies; local code",
        entry=Entry.YES_NO,
    ),
    Question(
        path=("prepay",),
        step=Step.DUTY,
        group="Fueling",
        title="Can the flow be started or stopped else&where?",
        help="Prepay, card or console. A latched nozzle would then spill at the next start.",
        source="NFPA 30A as reproduced by state agencies",
        entry=Entry.YES_NO,
    ),
    Question(
        path=("overhead",),
        step=Step.DUTY,
        group="Fueling",
        title="Does the hose come down from ove&rhead?",
        help="An overhead outlet restricts the latch.",
        source="International Fire Code, overhead dispensers (recalled; confirm in the adopted edition)",
        entry=Entry.YES_NO,
    ),
    Question(
        path=("supply", "pressure_kpa"),
        step=Step.DUTY,
        group="What the dispenser gives",
        title="Pressure at the outlet while flow&ing",
        help="Measured at the dispenser's outlet with the nozzle open.",
        source="Gauge on site, or the pump maker's data",
        entry=Entry.QUANTITY,
        measure=_KILO,
        empty_means="the usual figure of the local rules",
    ),
    Question(
        path=("supply", "maximum_flow_l_min"),
        step=Step.DUTY,
        group="What the dispenser gives",
        title="Greatest &flow of the dispenser",
        help="What meter and pump pass at most.",
        source="Dispenser's plate",
        entry=Entry.QUANTITY,
        measure=_LITRE_PER_MINUTE,
        empty_means="the usual figure for the duty",
    ),
    Question(
        path=("supply", "wanted_flow_l_min"),
        step=Step.DUTY,
        group="What the dispenser gives",
        title="Flow wanted at the no&zzle",
        help="The set is held against this flow at the coldest and the hottest temperature.",
        source="Owner's wish",
        entry=Entry.QUANTITY,
        measure=_LITRE_PER_MINUTE,
        empty_means="the usual figure for the duty",
    ),
)

_VAPOUR_OPTIONS = (
    Option(VapourStatus.NONE, "None", "Conventional hardware"),
    Option(VapourStatus.BALANCE, "Balance", "Bellows on the nozzle"),
    Option(VapourStatus.VACUUM_ASSIST, "Vacuum assist", "A pump draws vapor"),
)

VAPOUR_QUESTIONS: tuple[Question, ...] = (
    Question(
        path=("vapour_today",),
        step=Step.VAPOUR,
        group="Vapor recovery",
        title="How is vapor recovered &today?",
        help="What hangs there now decides which vapor openings have to be closed in a conversion.",
        source="Seen on site",
        entry=Entry.CHOICE,
        options=_VAPOUR_OPTIONS,
    ),
    Question(
        path=("vapour_wanted",),
        step=Step.VAPOUR,
        group="Vapor recovery",
        title="How is vapor to be recovered in f&uture?",
        help="Only gasoline has vapor recovery at the nozzle. Whether it may be taken out is for the "
        "local air agency to say.",
        source="EPA-457/B-12-001 and state rules; local air agency",
        entry=Entry.CHOICE,
        options=_VAPOUR_OPTIONS,
    ),
    Question(
        path=("outlet", "path"),
        step=Step.VAPOUR,
        group="Path at the dispenser",
        title="What passes through the dispenser's &outlet?",
        help="Look into the outlet: one bore, or one tube inside another.",
        source="Seen on site",
        entry=Entry.CHOICE,
        options=(
            Option(FlowPath.SINGLE, "Liquid only", "One bore"),
            Option(FlowPath.BALANCE, "Coaxial, balance", "Vapor in the outer ring"),
            Option(FlowPath.VACUUM_ASSIST, "Coaxial, vacuum assist", "Vapor in the inner tube"),
        ),
    ),
    Question(
        path=("outlet", "vapour_return_available"),
        step=Step.VAPOUR,
        group="Path at the dispenser",
        title="Does a separ&ate vapor return pipe end beside the outlet?",
        help="Then a splitter can join both to a coaxial hose.",
        source="Seen on site",
        entry=Entry.YES_NO,
        asked=_may_have_return_pipe,
    ),
)

SET_QUESTIONS: tuple[Question, ...] = (
    Question(
        path=("decisions", "longest_lead_time_days"),
        step=Step.SET,
        group="Wishes",
        title="&Longest lead time",
        help="No part of the set takes longer to come.",
        source="Owner's wish",
        entry=Entry.QUANTITY,
        measure=Measure(Dimension.DAYS),
        empty_means="any",
    ),
    Question(
        path=("notes",),
        step=Step.SET,
        group="Wishes",
        title="No&tes",
        help="Printed on the bill with this position.",
        source="Free text",
        entry=Entry.LONG_TEXT,
    ),
)


def questions_of(step: Step, position: Position) -> tuple[Question, ...]:
    """Return the questions that a step asks about this position, in order."""
    if step is Step.PLACE:
        extra = tuple(q for i in range(len(position.other_fillers)) for q in filler_questions(i))
        asked: tuple[Question, ...] = (*OUTLET_QUESTIONS, *filler_questions(None), *extra)
    else:
        asked = {
            Step.LIQUID: LIQUID_QUESTIONS,
            Step.DUTY: DUTY_QUESTIONS,
            Step.VAPOUR: VAPOUR_QUESTIONS,
            Step.SET: SET_QUESTIONS,
        }[step]
    return tuple(question for question in asked if question.is_asked(position))
