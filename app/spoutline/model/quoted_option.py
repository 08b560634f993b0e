"""What a quotation offers: options side by side, their lines, labor, taxes and positions, with exact amounts."""

from __future__ import annotations

from decimal import Decimal
from enum import StrEnum
from itertools import zip_longest

from spoutline.model.charge import Charge, Per
from spoutline.model.kept_record import KeptRecord
from spoutline.model.language import Language
from spoutline.model.margin import LowMargin, Margin, margin_of, sum_of
from spoutline.model.part import PartKind
from spoutline.model.part_ref import PartRef
from spoutline.model.plan import PlanStatus
from spoutline.model.price_gap import GapReason
from spoutline.model.quotation_terms import BreakawayWish, HoseWish
from spoutline.model.requirement import Slot


class PartName(KeptRecord):
    """What a part is called on a paper in another language than the catalog's, worded when the quotation was made."""

    language: Language
    name: str


class QuotedLine(KeptRecord):
    """One part number of an option. Money in the quotation's currency but for ``list_price``.

    ``fitted`` goes into sets and with them; ``spares`` follow the spares rule; ``pack_rest`` fills the last pack.
    A line without ``unit_price`` has a ``gap`` unless a person named in ``override_by`` lets the price follow.
    ``cost`` is what one piece costs the seller, None where no buying terms state it; ``buying_percent`` made it.
    """

    part_number: str
    maker: str
    kind: PartKind
    name: str
    fitted: int
    spares: int
    pack_rest: int
    pack: int
    unit_price: Decimal | None
    amount: Decimal | None
    cost: Decimal | None
    list_id: str
    list_currency: str
    list_price: Decimal | None
    from_quantity: int
    gap: GapReason | None
    gap_detail: str
    override_by: str
    override_reason: str
    lead_time_days: int
    mass_kg: float
    names: tuple[PartName, ...] = ()
    buying_percent: Decimal | None = None

    def name_in(self, language: str) -> str:
        """Return what the part is called in a language; the catalog's own name where it was worded in no other."""
        return next((one.name for one in self.names if one.language == language), self.name)

    @property
    def part(self) -> PartRef:
        """The part that the line is about."""
        return PartRef(self.part_number, self.maker)

    @property
    def ordered(self) -> int:
        """Pieces in all."""
        return self.fitted + self.spares + self.pack_rest

    @property
    def margin(self) -> Margin | None:
        """What the pieces ordered leave; None where price or cost is not known."""
        return margin_of(self.unit_price, self.cost, self.ordered)

    @property
    def is_open(self) -> bool:
        """True where no price stands and nobody answers for that."""
        return self.unit_price is None and not self.override_by


class QuotedAlternate(KeptRecord):
    """A part offered in place of that of a line; ``difference`` is what the line's amount would become more.

    ``ordered`` are whole packs for what the line has fitted and as spares. At ``misfits`` the part cannot hang with all
    others of the set as they are; where there are some it is not offered and has no price.
    """

    line_number: str
    line_maker: str
    part_number: str
    maker: str
    name: str
    names: tuple[PartName, ...] = ()
    note: str = ""
    ordered: int
    unit_price: Decimal | None
    difference: Decimal | None
    lead_time_days: int
    misfits: tuple[str, ...] = ()
    list_id: str = ""  # of the price list; empty in quotations of earlier programs
    list_currency: str = ""
    list_price: Decimal | None = None

    def name_in(self, language: str) -> str:
        """Return what the part is called in a language; the catalog's own name where it was worded in no other."""
        return next((one.name for one in self.names if one.language == language), self.name)

    @property
    def line(self) -> PartRef:
        """The part of the line."""
        return PartRef(self.line_number, self.line_maker)

    @property
    def part(self) -> PartRef:
        """The part offered in its place."""
        return PartRef(self.part_number, self.maker)


class LabourLine(KeptRecord):
    """One task of the labour table, worked out."""

    title: str
    per: Per
    count: int
    hours_each: Decimal
    hours: Decimal
    hourly_rate: Decimal
    amount: Decimal


class TaxLine(KeptRecord):
    """One tax, worked out."""

    name: str
    percent: Decimal
    on: tuple[Charge, ...]
    base: Decimal
    amount: Decimal


class QuotedPosition(KeptRecord):
    """One position of an option: its outcome and the parts of its set, dispenser first.

    ``slots`` are the places of ``part_numbers``, ``kept`` counts from 0 which of them hang there and stay; quantities
    and reasons follow ``accessories``. A quotation kept before these were has none of them.
    """

    label: str
    dispenser: str
    liquid: str
    status: PlanStatus
    keeps_every_must: bool
    part_numbers: tuple[str, ...]
    accessories: tuple[str, ...]
    slots: tuple[Slot, ...] = ()
    kept: tuple[int, ...] = ()
    accessory_quantities: tuple[int, ...] = ()
    accessory_reasons: tuple[str, ...] = ()
    makers: tuple[str, ...] = ()  # of the part numbers, one each; empty in quotations of earlier programs
    accessory_makers: tuple[str, ...] = ()

    @property
    def parts(self) -> tuple[PartRef, ...]:
        """The parts of the set, dispenser first."""
        return _refs(self.part_numbers, self.makers)

    @property
    def accessory_parts(self) -> tuple[PartRef, ...]:
        """The accessories."""
        return _refs(self.accessories, self.accessory_makers)


def _refs(numbers: tuple[str, ...], makers: tuple[str, ...]) -> tuple[PartRef, ...]:
    return tuple(PartRef(number, maker) for number, maker in zip_longest(numbers, makers[: len(numbers)], fillvalue=""))


class CommonalityFigures(KeptRecord):
    """What choosing sets together did, at the prices of the sets' quantities."""

    stock_price: Decimal
    sets_alone: Decimal
    sets_together: Decimal
    part_numbers_alone: int
    part_numbers_together: int
    changed: tuple[str, ...]
    left_open: Decimal = Decimal(0)  # what a better choice could at most still save; 0: proved best

    @property
    def costs(self) -> Decimal:
        """What the common sets cost more; below 0 where the quantities make them cheaper."""
        return self.sets_together - self.sets_alone

    @property
    def saves(self) -> Decimal:
        """What the part numbers no longer stocked are worth."""
        return self.stock_price * (self.part_numbers_alone - self.part_numbers_together)


class DriveOffEstimate(KeptRecord):
    """What separations are expected to cost; an estimate from the customer's own figures."""

    events_per_year: Decimal
    per_year: Decimal
    years: int
    over_years: Decimal


class SupersededPart(KeptRecord):
    """A part named in the survey and the one that took its place."""

    number_before: str
    number_now: str
    positions: tuple[str, ...]
    maker_before: str = ""
    maker_now: str = ""

    @property
    def before(self) -> PartRef:
        """The part that was replaced."""
        return PartRef(self.number_before, self.maker_before)

    @property
    def now(self) -> PartRef:
        """The part that took its place."""
        return PartRef(self.number_now, self.maker_now)


class UnlikeReason(StrEnum):
    """Why an option hangs other parts than the plan at list prices."""

    WISH = "wish"
    SUCCESSORS = "successors"
    STOCK = "stock"
    CURRENCY = "currency"
    PRICES = "prices"


class CommonAmounts(KeptRecord):
    """What the first option and this one come to for the hoses that both cover, reckoned as if no other were asked for.

    ``labels`` are those positions.
    """

    labels: tuple[str, ...]
    first_total: Decimal
    own_total: Decimal

    @property
    def difference(self) -> Decimal:
        """What this option costs more; below 0 where it is cheaper."""
        return self.own_total - self.first_total


class QuotedOption(KeptRecord):
    """One of the alternatives side by side, complete with its amounts.

    ``unlike_plan`` are the positions of a first option whose sets are not those that a plan of the survey shows, with
    what the terms say otherwise in ``unlike_because``.
    ``on_common`` compares it with the first option where the two do not cover the same hoses.
    """

    title: str
    breakaway: BreakawayWish
    hose: HoseWish
    positions: tuple[QuotedPosition, ...]
    lines: tuple[QuotedLine, ...]
    labour: tuple[LabourLine, ...]
    goods_amount: Decimal
    labour_amount: Decimal
    freight_amount: Decimal
    taxes: tuple[TaxLine, ...]
    rounding_amount: Decimal
    total: Decimal
    commonality: CommonalityFigures | None
    drive_offs: DriveOffEstimate | None
    superseded: tuple[SupersededPart, ...]
    unlike_plan: tuple[str, ...] = ()
    unlike_because: tuple[UnlikeReason, ...] = ()
    on_common: CommonAmounts | None = None
    alternates: tuple[QuotedAlternate, ...] = ()  # in no amount and no total

    @property
    def offered_alternates(self) -> tuple[QuotedAlternate, ...]:
        """The alternates that fit wherever their line hangs."""
        return tuple(one for one in self.alternates if not one.misfits)

    @property
    def net_amount(self) -> Decimal:
        """Goods, labour and freight before tax."""
        return self.goods_amount + self.labour_amount + self.freight_amount

    @property
    def margin(self) -> Margin:
        """What the materials leave whose price and cost are both known."""
        return sum_of(line.margin for line in self.lines)

    @property
    def uncosted_lines(self) -> tuple[QuotedLine, ...]:
        """The lines that are not in the margin, since price or cost is not known."""
        return tuple(line for line in self.lines if line.margin is None)

    def low_lines(self, floor_percent: Decimal | None) -> tuple[tuple[QuotedLine, LowMargin], ...]:
        """Return the lines sold below cost or below the least margin, with which of the two it is."""
        found = ((line, line.margin.low(floor_percent)) for line in self.lines if line.margin is not None)
        return tuple((line, low) for line, low in found if low is not None)

    @property
    def open_lines(self) -> tuple[QuotedLine, ...]:
        """The lines whose missing price nobody answers for."""
        return tuple(line for line in self.lines if line.is_open)

    @property
    def following_lines(self) -> tuple[QuotedLine, ...]:
        """The lines whose price is to follow, by a named person's word."""
        return tuple(line for line in self.lines if line.unit_price is None and not line.is_open)

    @property
    def without_set(self) -> tuple[QuotedPosition, ...]:
        """The positions for which nothing is offered."""
        return tuple(position for position in self.positions if not position.part_numbers)

    @property
    def covered(self) -> int:
        """How many hoses the option covers, out of as many as it has positions."""
        return len(self.positions) - len(self.without_set)

    @property
    def is_complete(self) -> bool:
        """Whether the option leaves no hose out."""
        return not self.without_set
