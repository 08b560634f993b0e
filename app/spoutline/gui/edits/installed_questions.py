"""The questions about a described part: its plate and every figure that a re-check in a new set needs."""

from __future__ import annotations

from collections.abc import Callable, Iterable
from dataclasses import dataclass
from enum import StrEnum

from spoutline.gui.edits.question import Entry, Measure, Option, Question, Step
from spoutline.model.liquid import LiquidFamily, ListingClass, ListingScheme
from spoutline.model.material import Material
from spoutline.model.part import HoseConstruction, NozzleOperation, NozzleService, PartKind, Placement
from spoutline.model.port import FlowPath, Gender, ThreadStandard
from spoutline.model.quantity import Dimension

NO_LISTING = "none"  # the plate was read and carries no listing; nothing ticked means that it was not read
_SHEET = "Plate or maker's sheet"
_HOSES = (PartKind.CURB_HOSE, PartKind.WHIP_HOSE)
Word = Callable[[StrEnum], str]


@dataclass(frozen=True, slots=True, kw_only=True)
class FigureQuestion:
    """A question with its bounds in SI; ``above`` and ``least`` are the lower one, itself left out or taken in."""

    question: Question
    above: float | None = None
    least: float | None = None
    most: float | None = None

    def admits(self, value_si: float) -> bool:
        """Say whether an SI value lies within the bounds."""
        return (
            (self.above is None or value_si > self.above)
            and (self.least is None or value_si >= self.least)
            and (self.most is None or value_si <= self.most)
        )


def described_questions(kind: PartKind, word: Word) -> tuple[FigureQuestion, ...]:
    """Return the questions about a described part of this kind; ``word`` gives the trade word of a choice."""
    asked = [*_plate_questions(word), *_port_questions(kind, word), *_common_questions(kind, word)]
    if kind is PartKind.NOZZLE:
        asked += _nozzle_questions(word)
    if kind in _HOSES:
        asked += _hose_questions(word)
    if kind in (PartKind.BREAKAWAY, PartKind.SWIVEL_BREAKAWAY):
        asked += _breakaway_questions(word)
    if kind in (PartKind.SWIVEL, PartKind.SWIVEL_BREAKAWAY):
        asked.append(_number("figures.swivel.planes", "Swivel", "Planes of rotation", Dimension.COUNT, least=1, most=3))
    if kind in (PartKind.ADAPTOR, PartKind.SPLITTER):
        asked += [
            _yes_no("figures.adaptor.closes_vapour", "Adaptor", "Closes the vapour path"),
            _yes_no("figures.adaptor.needs_vapour_return", "Adaptor", "Needs a vapour return"),
        ]
    return tuple(asked)


def _plate_questions(word: Word) -> list[FigureQuestion]:
    classes = (*_options(ListingClass, word), Option(NO_LISTING, "no listing"))
    return [
        _asked("description", "Plate", "Description", Entry.TEXT, "What it is and what its plate says."),
        _choice("path", "Plate", "Path, where known", _options(FlowPath, word), empty_means="not known"),
        _several("listings", "Plate", "Listing classes", classes, "Nothing ticked: the plate was not read."),
    ]


def _port_questions(kind: PartKind, word: Word) -> list[FigureQuestion]:
    ends = [("inlet", "End towards the dispenser")]
    if kind is not PartKind.NOZZLE:
        ends.append(("outlet", "End towards the vehicle"))
    found = []
    for end, group in ends:
        found += [
            _choice(f"figures.{end}.thread", group, f"Thread, {end}", _options(ThreadStandard, word)),
            _asked(
                f"figures.{end}.size",
                group,
                f"Size, {end}",
                Entry.TEXT,
                "Nominal, such as 3/4, 19 mm, DN 20 or 34x1.5.",
            ),
            _choice(f"figures.{end}.gender", group, f"Gender, {end}", _options(Gender, word)),
            _choice(f"figures.{end}.path", group, f"Path, {end}", _options(FlowPath, word)),
        ]
    return found


def _common_questions(kind: PartKind, word: Word) -> list[FigureQuestion]:
    group = "Ratings"
    found = [
        _several("figures.schemes", group, "Whose listings", _options(ListingScheme, word), "None where unlisted."),
        _number("figures.temperature_minimum_c", group, "Coldest", Dimension.TEMPERATURE, least=-100, most=100),
        _number("figures.temperature_maximum_c", group, "Hottest", Dimension.TEMPERATURE, least=-100, most=200),
        _number("figures.maximum_pressure_pa", group, "Pressure rating", Dimension.PRESSURE, above=0, most=1e8),
        _number("figures.mass_kg", group, "Mass", Dimension.MASS, above=0, most=200),
        _number("figures.resistance_ohm", group, "Resistance end to end", Dimension.RESISTANCE, least=0, may_lack=True),
        _number("figures.pull_strength_n", group, "Pull it bears", Dimension.FORCE, above=0, most=1e6, may_lack=True),
    ]
    if kind not in _HOSES:
        flow = Dimension.FLOW_COEFFICIENT
        found += [
            _number("figures.length_m", group, "Made-up length", Dimension.DIAMETER, least=0, most=60),
            _number("figures.flow_coefficient_kv", group, "Flow coefficient", flow, above=0, most=1e4, may_lack=True),
        ]
    materials = _options(Material, word)
    found.append(
        _several("figures.wetted_materials", "Materials that get wet", "Materials", materials, "At least one.")
    )
    return found


def _nozzle_questions(word: Word) -> list[FigureQuestion]:
    group, at = "Nozzle", "figures.nozzle"
    width, flow = Dimension.DIAMETER, Dimension.FLOW
    most_flow = 400e-3 / 60  # 400 L/min, the catalogue's own bound
    return [
        _choice(f"{at}.operation", group, "How it closes", _options(NozzleOperation, word)),
        _choice(f"{at}.service", group, "Filler it is made for", _options(NozzleService, word)),
        _several(f"{at}.liquids", group, "Liquids it may deliver", _options(LiquidFamily, word), "At least one."),
        _number(f"{at}.spout_outside_diameter_m", group, "Spout, outside diameter", width, least=0.005, most=0.06),
        _number(f"{at}.spout_straight_length_m", group, "Straight length of the spout", width, above=0, most=0.4),
        _number(f"{at}.spring_distance_m", group, "Spring from the tip", width, above=0, most=0.4, may_lack=True),
        _number(
            f"{at}.minimum_flow_m3_s", group, "Least flow to shut off", flow, above=0, most=most_flow, may_lack=True
        ),
        _number(f"{at}.maximum_flow_m3_s", group, "Greatest flow", flow, above=0, most=most_flow),
        _number(
            f"{at}.opening_pressure_pa",
            group,
            "Opening pressure",
            Dimension.PRESSURE,
            above=0,
            most=4e5,
            may_lack=True,
        ),
        _yes_no(f"{at}.hold_open", group, "Hold-open latch"),
        _yes_no(f"{at}.no_pressure_device", group, "Closes by itself without pressure"),
        _yes_no(f"{at}.attitude_device", group, "Closes when held upwards"),
        _yes_no(f"{at}.bellows", group, "Bellows over the spout"),
        _yes_no(f"{at}.misfill_interlock", group, "Opens only inside the magnetic filler insert"),
        _yes_no(f"{at}.enhanced_conventional", group, "Low-spillage, single path, interlock"),
        _yes_no(f"{at}.def_zone_evaluated", group, "Evaluated for use in a flammable zone"),
    ]


def _hose_questions(word: Word) -> list[FigureQuestion]:
    group, at, width = "Hose", "figures.hose", Dimension.DIAMETER
    per_length, through = Dimension.RESISTANCE_PER_LENGTH, Dimension.PERMEATION
    most_through = 1000e-3 / 86400  # 1000 g/(m2.day), the catalogue's own bound
    return [
        _choice(f"{at}.construction", group, "Construction", _options(HoseConstruction, word)),
        _number(f"{at}.length_m", group, "Length", Dimension.LENGTH, above=0, most=40),
        _number(f"{at}.bore_m", group, "Bore", width, above=0.005, most=0.08),
        _number(f"{at}.outside_diameter_m", group, "Outside diameter", width, above=0.005, most=0.12),
        _number(f"{at}.minimum_bend_radius_m", group, "Smallest bend radius", width, above=0, most=1),
        _number(f"{at}.mass_kg_m", group, "Mass per length", Dimension.MASS_PER_LENGTH, above=0, most=5),
        _number(f"{at}.resistance_ohm_m", group, "Resistance per length", per_length, least=0, most=1e8, may_lack=True),
        _number(f"{at}.permeation_kg_m2_s", group, "Permeation", through, least=0, most=most_through, may_lack=True),
        _number(f"{at}.inner_tube_bore_m", group, "Inner tube, bore", width, above=0, most=0.06, may_lack=True),
        _number(
            f"{at}.inner_tube_outside_diameter_m",
            group,
            "Inner tube, outside diameter",
            width,
            above=0,
            most=0.06,
            may_lack=True,
        ),
        _yes_no(f"{at}.low_permeation", group, "Marked low-permeation"),
        _yes_no(f"{at}.built_in_swivel", group, "Turns at its end by itself"),
    ]


def _breakaway_questions(word: Word) -> list[FigureQuestion]:
    group, at, force = "Breakaway", "figures.breakaway", Dimension.FORCE
    places = _options(Placement, word)
    return [
        _number(f"{at}.separation_minimum_n", group, "Least pull that parts it", force, above=0, most=2e4),
        _number(f"{at}.separation_maximum_n", group, "Greatest pull it needs", force, above=0, most=2e4),
        _number(f"{at}.seal_diameter_m", group, "Seal diameter", Dimension.DIAMETER, above=0, most=0.1, may_lack=True),
        _several(f"{at}.placements", group, "Where it may sit", places, "At least one."),
        _yes_no(f"{at}.reconnectable", group, "Can be put together again"),
        _yes_no(f"{at}.closes_vapour", group, "Closes the vapour path"),
        _yes_no(f"{at}.omnidirectional", group, "Parts at any angle of pull"),
    ]


def _options(terms: Iterable[StrEnum], word: Word) -> tuple[Option, ...]:
    return tuple(Option(term.value, word(term)) for term in terms)


def _asked(
    path: str,
    group: str,
    title: str,
    entry: Entry,
    help_text: str = "",
    *,
    options: tuple[Option, ...] = (),
    empty_means: str = "",
) -> FigureQuestion:
    question = Question(
        path=tuple(path.split(".")),
        step=Step.VAPOUR,
        group=group,
        title=title,
        help=help_text,
        source=_SHEET,
        entry=entry,
        options=options,
        empty_means=empty_means,
    )
    return FigureQuestion(question=question)


def _choice(path: str, group: str, title: str, options: tuple[Option, ...], *, empty_means: str = "") -> FigureQuestion:
    return _asked(path, group, title, Entry.CHOICE, options=options, empty_means=empty_means)


def _several(path: str, group: str, title: str, options: tuple[Option, ...], help_text: str) -> FigureQuestion:
    return _asked(path, group, title, Entry.SEVERAL, help_text, options=options)


def _yes_no(path: str, group: str, title: str) -> FigureQuestion:
    return _asked(path, group, title, Entry.YES_NO, options=(Option("yes", "yes"), Option("no", "no")))


def _number(
    path: str,
    group: str,
    title: str,
    dimension: Dimension,
    *,
    above: float | None = None,
    least: float | None = None,
    most: float | None = None,
    may_lack: bool = False,
) -> FigureQuestion:
    question = Question(
        path=tuple(path.split(".")),
        step=Step.VAPOUR,
        group=group,
        title=title,
        help="",
        source=_SHEET,
        entry=Entry.QUANTITY,
        measure=Measure(dimension),
        empty_means="not stated" if may_lack else "",
    )
    return FigureQuestion(question=question, above=above, least=least, most=most)
