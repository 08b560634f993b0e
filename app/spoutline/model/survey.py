"""Everything recorded about a site before planning: the validated, versioned survey document."""

from __future__ import annotations

from collections.abc import Iterator
from decimal import Decimal
from enum import StrEnum
from typing import Annotated, Any, Literal, Self

from pydantic import BaseModel, ConfigDict, Field, StringConstraints, ValidationError, model_validator

from spoutline.model.catalogue_edition import CatalogueChoice
from spoutline.model.conversion_answers import ConversionAnswers
from spoutline.model.field_faults import fault_in
from spoutline.model.installed import InstalledPart
from spoutline.model.liquid import LiquidFamily
from spoutline.model.part_ref import PartRef
from spoutline.model.plain_values import PlainValues
from spoutline.model.port import FlowPath, Gender, ThreadStandard
from spoutline.model.port_size_field import SIZE_MEANING, PortSize, usual_size_beside
from spoutline.model.worded import Worded

Text = Annotated[str, StringConstraints(strip_whitespace=True, max_length=200)]
Label = Annotated[str, StringConstraints(strip_whitespace=True, min_length=1, max_length=60)]
IslandName = Annotated[str, StringConstraints(strip_whitespace=True, max_length=60)]
LongText = Annotated[str, StringConstraints(max_length=4000)]


class Duty(StrEnum):
    """What the hose serves."""

    CAR = "car"
    TRUCK = "truck"
    MARINE = "marine"
    REEL = "reel"


class VapourStatus(StrEnum):
    """How vapour is recovered at the nozzle."""

    NONE = "none"
    BALANCE = "balance"
    VACUUM_ASSIST = "vacuum_assist"


class Retrieval(StrEnum):
    """How the hose is taken up after use."""

    NONE = "none"
    RETRACTOR = "retractor"
    REEL = "reel"


class Service(StrEnum):
    """Who fuels: the customer, an attendant, or the customer with nobody on site."""

    SELF = "self"
    ATTENDED = "attended"
    UNATTENDED = "unattended"


class OutletDirection(StrEnum):
    """Which way the dispenser's outlet points."""

    DOWN = "down"
    SIDEWAYS = "sideways"


class _Document(PlainValues):
    model_config = ConfigDict(frozen=True, extra="forbid", defer_build=True, allow_inf_nan=False)


class SurveyLiquid(_Document):
    """The liquid sold at a position."""

    family: LiquidFamily = Field(LiquidFamily.GASOLINE, description="Liquid family.")
    blend_percent: float = Field(
        0.0, ge=0, le=100, description="Percent ethanol in gasoline or biodiesel in diesel; 0 for DEF."
    )

    @model_validator(mode="after")
    def _def_has_no_blend(self) -> Self:
        if self.family is LiquidFamily.DEF and self.blend_percent != 0:
            raise fault_in("blend_percent", f"{self.blend_percent:g}", "DEF has no blend: it must be 0")
        return self


class Outlet(_Document):
    """The dispenser's hose outlet."""

    thread: ThreadStandard = Field(ThreadStandard.NPT, description="Thread standard of the outlet.")
    size: PortSize = Field(
        default_factory=usual_size_beside, description=f"{SIZE_MEANING} Not given: 3/4, or the only size of the thread."
    )
    gender: Gender = Field(Gender.FEMALE, description="Gender of the outlet thread.")
    path: FlowPath = Field(FlowPath.SINGLE, description="Path of the outlet.")
    height_m: float = Field(
        2.1, gt=0, le=6, description="Height of the outlet above the ground the hose hangs over, m."
    )
    direction: OutletDirection = Field(OutletDirection.DOWN, description="Which way the outlet points.")
    pull_strength_n: float | None = Field(
        None, gt=0, le=20000, description="Pull that the outlet bears, N; empty where the maker's figure is unknown."
    )
    vapour_return_available: bool = Field(
        False, description="A separate vapor return pipe ends at a single-path outlet, so that a splitter can join it."
    )


class Filler(_Document):
    """One vehicle filler that the nozzle must reach, measured from the point below the outlet."""

    label: Text = Field("filler", description="Which filler this is: near side, far side, truck tank, boat deck.")
    distance_m: float = Field(2.0, ge=0, le=30, description="Horizontal distance from the outlet to the filler, m.")
    height_m: float = Field(
        0.9, ge=-5, le=5, description="Height of the filler above the same ground, m; negative below a dock."
    )
    plan_legs_m: tuple[Annotated[float, Field(gt=0, le=30)], ...] = Field(
        (), max_length=6, description="Legs of the way round the vehicle in plan, m; empty for the straight way."
    )


class Hook(_Document):
    """Where the nozzle rests on the dispenser."""

    distance_m: float = Field(
        0.35, ge=0, le=3, description="Horizontal distance from the outlet to the nozzle hook, m."
    )
    height_m: float = Field(1.1, ge=0, le=4, description="Height of the nozzle inlet on its hook, m.")


class Retractor(_Document):
    """The retrieving device and where its cord holds the hose."""

    height_m: float = Field(2.4, gt=0, le=8, description="Height of the point from which the cord pulls, m.")
    clamp_fraction: float = Field(
        0.5, gt=0, lt=1, description="Where along the curb hose the clamp sits, as a fraction of its length."
    )
    force_n: float = Field(40.0, ge=0, le=500, description="Pull of the cord at the clamp, N.")


class Reel(_Document):
    """The hose reel."""

    drum_diameter_m: float = Field(0.5, gt=0.05, le=3, description="Center-line diameter of the hose on the drum, m.")
    turns_left: float = Field(1.0, ge=0, le=100, description="Turns left on the drum when the filler is reached.")


class Supply(_Document):
    """What the dispenser gives at its outlet; empty fields take the jurisdiction's usual figure, and say so."""

    pressure_kpa: float | None = Field(None, gt=0, le=2000, description="Pressure at the outlet while flowing, kPa.")
    maximum_flow_l_min: float | None = Field(None, gt=0, le=500, description="Greatest flow of the dispenser, L/min.")
    wanted_flow_l_min: float | None = Field(None, gt=0, le=500, description="Flow wanted at the nozzle, L/min.")


class DispenserSupply(_Document):
    """What a type of dispenser gives at its outlet."""

    pressure_kpa: float | None = Field(None, gt=0, le=2000, description="Pressure at the outlet while flowing, kPa.")
    maximum_flow_l_min: float | None = Field(None, gt=0, le=500, description="Greatest flow of the dispenser, L/min.")


class DispenserType(_Document):
    """A type of dispenser as the firm knows it: what it answers, its positions need not be asked.

    Only what is given is said of the type; ``model.dispenser_type`` lets positions inherit it.
    """

    name: Label = Field(description="Name of the type, unique in the book.")
    maker: Text = Field("", description="Who makes the dispenser.")
    remark: LongText = Field("", description="What else is worth knowing of it.")
    outlet: Outlet = Field(default_factory=Outlet)
    hook: Hook = Field(default_factory=Hook)
    retrieval: Retrieval = Field(Retrieval.NONE, description="How the hose is taken up.")
    retractor: Retractor = Field(default_factory=Retractor, description="Read when retrieval is retractor.")
    reel: Reel = Field(default_factory=Reel, description="Read when retrieval is reel.")
    supply: DispenserSupply = Field(default_factory=DispenserSupply)
    overhead: bool = Field(False, description="The hose comes down from an overhead outlet.")


class Decisions(_Document):
    """What a person decided after seeing a result: it is an input to the next plan."""

    pinned: tuple[PartRef, ...] = Field((), description="Parts that the set must use: maker and number.")
    refused: tuple[PartRef, ...] = Field((), description="Parts that the set must not use: maker and number.")
    longest_lead_time_days: int | None = Field(None, ge=0, le=3650, description="Longest acceptable lead time, days.")


class Position(_Document):
    """One hose on one side of one dispenser."""

    label: Label = Field(description="Name of the position, unique on the site.")
    dispenser: Label = Field("1", description="Name of the dispenser that the position belongs to.")
    island: IslandName = Field("", description="Name of the island that the dispenser stands on; empty: not recorded.")
    liquid: SurveyLiquid = Field(default_factory=SurveyLiquid)
    duty: Duty = Field(Duty.CAR, description="What the hose serves.")
    vapour_today: VapourStatus = Field(VapourStatus.NONE, description="Vapor-recovery status today.")
    vapour_wanted: VapourStatus = Field(VapourStatus.NONE, description="Vapor-recovery status wanted.")
    outlet: Outlet = Field(default_factory=Outlet)
    filler: Filler = Field(default_factory=Filler)
    other_fillers: tuple[Filler, ...] = Field((), max_length=12, description="Further fillers to reach.")
    hook: Hook = Field(default_factory=Hook)
    retrieval: Retrieval = Field(Retrieval.NONE, description="How the hose is taken up.")
    retractor: Retractor = Field(default_factory=Retractor, description="Read when retrieval is retractor.")
    reel: Reel = Field(default_factory=Reel, description="Read when retrieval is reel.")
    supply: Supply = Field(default_factory=Supply)
    hold_open_wanted: bool = Field(False, description="A hold-open latch is wanted.")
    prepay: bool = Field(False, description="Flow is authorized or stopped elsewhere (prepay, card).")
    overhead: bool = Field(False, description="The hose comes down from an overhead outlet.")
    in_flammable_zone: bool | None = Field(
        None,
        description="DEF only: used inside the flammable zone around a fuel dispenser; empty = not answered.",
    )
    decisions: Decisions = Field(default_factory=Decisions)
    dispenser_type: DispenserType | None = Field(
        None,
        description="The dispenser's type as it was when it was chosen; what the position does not answer itself is "
        "inherited from it.",
    )
    tank: Text = Field(
        "", description="Name of the tank that feeds the position; of two that are blended: 1 + 2. Empty: not known."
    )
    grade: Text = Field("", description="Name of the grade sold; empty goes by liquid and blend.")
    installed: tuple[InstalledPart, ...] = Field(
        (), max_length=40, description="Parts that hang there today, dispenser first; read by a conversion."
    )
    liquid_today: SurveyLiquid | None = Field(
        None, description="Liquid sold today where a conversion changes it; empty: the same."
    )
    exists_today: bool = Field(True, description="False for a position that a conversion adds.")
    reconnectable_wanted: bool = Field(
        False, description="The set is to have a reconnectable breakaway; a requirement line of every plan."
    )
    notes: LongText = ""

    @model_validator(mode="after")
    def _inherits(self) -> Self:
        """Let the type of the dispenser answer what the position does not; the model is not handed out yet."""
        if self.dispenser_type is not None:
            for name, value in _answers_of_type(self, self.dispenser_type):
                self.__dict__[name] = value
                self.__pydantic_fields_set__.add(name)
        return self

    @property
    def tanks(self) -> tuple[str, ...]:
        """Names of the tanks that feed the position, in order; empty where nobody knows."""
        return tuple(sorted({name.strip() for name in self.tank.split("+")} - {""}))

    @property
    def fillers(self) -> tuple[Filler, ...]:
        """All fillers to reach, the main one first."""
        return (self.filler, *self.other_fillers)


_OF_TYPE_ALONE = frozenset({"name", "maker", "remark"})


def _answers_of_type(position: Position, said: DispenserType) -> Iterator[tuple[str, Any]]:
    """Yield the fields of a position that its dispenser's type answers, the position's own answers before it."""
    for name in DispenserType.model_fields:
        value, own = getattr(said, name), getattr(position, name, None)
        if name in _OF_TYPE_ALONE or name not in said.model_fields_set:
            continue
        if not isinstance(value, BaseModel) or not isinstance(own, BaseModel):
            if name not in position.model_fields_set:
                yield name, value
            continue
        told = value.model_dump(exclude_unset=True, exclude_none=True)
        mine = own.model_dump(exclude_unset=True) if name in position.model_fields_set else {}
        if told.keys() - mine.keys():
            try:
                yield name, type(own).model_validate({**told, **mine})
            except ValidationError as fault:
                wanted = Worded(
                    "what goes together with dispenser type {name} ({reason})",
                    name=said.name,
                    reason=fault.errors()[0]["msg"],
                )
                raise fault_in(name, str(mine), wanted) from fault


class Climate(_Document):
    """Lowest and highest temperature the hardware meets, degrees Celsius."""

    low_c: float = Field(-15.0, ge=-60, le=60, description="Lowest temperature, degrees Celsius.")
    high_c: float = Field(40.0, ge=-60, le=70, description="Highest temperature, degrees Celsius.")

    @model_validator(mode="after")
    def _low_below_high(self) -> Self:
        if self.low_c > self.high_c:
            raise fault_in(
                "low_c", f"{self.low_c:g}", Worded("it must not exceed high_c ({value:g})", value=self.high_c)
            )
        return self


class Site(_Document):
    """The station."""

    name: Label = Field(description="Name of the site.")
    address: LongText = ""
    customer: Text = ""
    jurisdiction: Label = Field("us_general", description="Rule profile: see `spoutline profile list`.")
    climate: Climate = Field(default_factory=Climate)
    currency: Annotated[str, StringConstraints(pattern=r"^[A-Z]{3}$")] = Field("USD", description="ISO 4217 code.")
    service: Service = Field(Service.SELF, description="Who fuels.")
    fenced: bool = Field(False, description="Fenced above-ground site, not open to the public.")
    stock_price: Decimal = Field(
        Decimal(0),
        ge=0,
        le=1_000_000,
        max_digits=12,
        decimal_places=4,
        description="What stocking one more part number is worth, in the site's currency; above 0 the sets of the "
        "station are chosen together.",
    )


class Survey(_Document):
    """A whole survey: one site and its positions."""

    format: Literal["spoutline-survey"] = "spoutline-survey"
    version: Literal[1] = 1
    site: Site
    positions: tuple[Position, ...] = Field(min_length=1, max_length=5000)
    survey_id: int | None = Field(
        None,
        ge=1,
        description="Number of this survey in the book: finds its agreed sets. Empty goes by name and content.",
    )
    catalogue: CatalogueChoice | None = Field(
        None, description="Catalog to plan with, NAME or NAME@EDITION; empty: the one that the book plans with."
    )
    conversion: ConversionAnswers = Field(
        default_factory=ConversionAnswers,
        description="Answers that a conversion asks for; a plan reads which parts may stay and what work costs.",
    )

    @model_validator(mode="after")
    def _labels_are_unique(self) -> Self:
        seen: set[str] = set()
        for place, position in enumerate(self.positions):
            if position.label in seen:
                wanted = "another position has this label; every label must be unique"
                raise fault_in(f"positions[{place}].label", repr(position.label), wanted)
            seen.add(position.label)
        return self

    def position(self, label: str) -> Position | None:
        """Return the position named ``label``; None where the survey has none."""
        return _by_label(self.positions).get(label)


_LOOKED_IN = 4  # surveys in hand at a time: one of the window, one of a job, those that an edit stands between
_looked_in: list[tuple[tuple[Position, ...], dict[str, Position]]] = []


def _by_label(positions: tuple[Position, ...]) -> dict[str, Position]:
    """Return positions by their labels.

    The window asks for every position of a station by its label, several times each. The last surveys asked are kept,
    by identity: one that was edited has other positions. It is put in place whole, so that any thread may ask.
    """
    for known, found in tuple(_looked_in):
        if known is positions:
            return found
    found = {position.label: position for position in reversed(positions)}  # the first of a label stands
    _looked_in[:] = [(positions, found), *_looked_in[: _LOOKED_IN - 1]]
    return found
