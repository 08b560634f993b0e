"""A quotation as it is kept: options with exact amounts, and everything that they were made from."""

from __future__ import annotations

import json
from datetime import date, timedelta
from decimal import Decimal
from enum import StrEnum
from itertools import zip_longest
from typing import Literal

from pydantic import BaseModel, ConfigDict

from spoutline.model.catalogue_edition import DEMONSTRATION
from spoutline.model.charge import Charge, Per
from spoutline.model.language import Language
from spoutline.model.limit import LimitStatus
from spoutline.model.margin import LowMargin, Margin, margin_of, sum_of
from spoutline.model.part import PartKind
from spoutline.model.part_ref import PartRef
from spoutline.model.plan import PlanStatus
from spoutline.model.price_gap import GapReason
from spoutline.model.quotation_terms import BreakawayWish, HoseWish, Terms
from spoutline.model.requirement import Slot
from spoutline.model.survey import Survey


class _Record(BaseModel):
    model_config = ConfigDict(frozen=True, extra="forbid", defer_build=True, allow_inf_nan=False)


class PartName(_Record):
    """What a part is called on a paper in another language than the catalog's, worded when the quotation was made."""

    language: Language
    name: str


class QuotedLine(_Record):
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


class QuotedAlternate(_Record):
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


class LabourLine(_Record):
    """One task of the labour table, worked out."""

    title: str
    per: Per
    count: int
    hours_each: Decimal
    hours: Decimal
    hourly_rate: Decimal
    amount: Decimal


class TaxLine(_Record):
    """One tax, worked out."""

    name: str
    percent: Decimal
    on: tuple[Charge, ...]
    base: Decimal
    amount: Decimal


class QuotedPosition(_Record):
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


class CommonalityFigures(_Record):
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


class DriveOffEstimate(_Record):
    """What separations are expected to cost; an estimate from the customer's own figures."""

    events_per_year: Decimal
    per_year: Decimal
    years: int
    over_years: Decimal


class SupersededPart(_Record):
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


class CommonAmounts(_Record):
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


class IncompleteWord(_Record):
    """A named person's word that an option is issued although it leaves hoses out; ``labels`` are those positions."""

    option: str
    labels: tuple[str, ...]
    by: str
    reason: str


class MarginWord(_Record):
    """A named person's word that lines are issued below cost or below the least margin; ``lines`` tells them.

    Each is the part with its price and its cost, so that the word holds for no other price.
    """

    option: str
    lines: tuple[str, ...]
    by: str
    reason: str


class QuotedOption(_Record):
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


class PinnedPart(_Record):
    """A catalogue part as it was when it was quoted, written out in full as JSON."""

    number: str
    text: str
    maker: str = ""

    @property
    def ref(self) -> PartRef:
        """The part; earlier programs wrote its maker into the text only."""
        return PartRef(self.number, self.maker or json.loads(self.text).get("maker", ""))


class PinnedPrice(_Record):
    """A row of a price list as it was used."""

    list_id: str
    maker: str
    currency: str
    valid_from: date
    valid_to: date | None
    part_number: str
    discount_group: str
    breaks: tuple[tuple[int, Decimal], ...]


class PinnedLimit(_Record):
    """A row of the rule tables as it was used; ``value`` is the SI value written as JSON."""

    id: str
    value: str
    printed: str
    printed_unit: str
    source: str
    clause: str
    edition: str
    status: LimitStatus


class Pins(_Record):
    """What a quotation was made from, word for word, so that nothing that changes later can change it."""

    survey: Survey
    survey_id: int | None
    survey_revision: int | None
    survey_fingerprint: str
    catalogue_edition: str
    catalogue: str = DEMONSTRATION  # documents of old know no other
    edition: int | None = None
    rules_edition: str
    jurisdiction_id: str
    jurisdiction_title: str
    program_version: str
    parts: tuple[PinnedPart, ...]
    prices: tuple[PinnedPrice, ...]
    limits: tuple[PinnedLimit, ...]


class Quotation(_Record):
    """A whole quotation; ``logo`` holds the bytes of the letterhead's picture in base 64."""

    format: Literal["spoutline-quotation"] = "spoutline-quotation"
    version: Literal[1] = 1
    terms: Terms
    options: tuple[QuotedOption, ...]
    pins: Pins
    logo: str = ""
    incomplete_words: tuple[IncompleteWord, ...] = ()
    margin_words: tuple[MarginWord, ...] = ()  # never printed on what the customer gets

    @property
    def valid_to(self) -> date:
        """The last day on which the offer stands."""
        return self.terms.heading.dated + timedelta(days=self.terms.heading.valid_days)

    @property
    def open_lines(self) -> tuple[tuple[QuotedOption, QuotedLine], ...]:
        """What blocks the issue: lines without a price that nobody answers for, with their options."""
        return tuple((option, line) for option in self.options for line in option.open_lines)

    @property
    def parts(self) -> frozenset[PartRef]:
        """Every part in any option."""
        return frozenset(line.part for option in self.options for line in option.lines)

    @property
    def offered_parts(self) -> frozenset[PartRef]:
        """Every part in any option, and those offered in the place of one."""
        return self.parts | {one.part for option in self.options for one in option.offered_alternates}

    @property
    def offered_alternates(self) -> tuple[QuotedAlternate, ...]:
        """The alternates that any option offers, each pair of parts once, in the order of the options."""
        found: dict[tuple[PartRef, PartRef], QuotedAlternate] = {}
        for option in self.options:
            for one in option.offered_alternates:
                found.setdefault((one.line, one.part), one)
        return tuple(found.values())

    def of_survey_revision(self, revision: int) -> Quotation:
        """Return the quotation with another revision of the very survey that it was made from."""
        return self.model_copy(update={"pins": self.pins.model_copy(update={"survey_revision": revision})})

    @property
    def unanswered_options(self) -> tuple[QuotedOption, ...]:
        """What blocks the issue: options that leave hoses out, for which nobody gives a word."""
        answered = {(one.option, one.labels) for one in self.incomplete_words}
        return tuple(
            option
            for option in self.options
            if not option.is_complete and (option.title, tuple(one.label for one in option.without_set)) not in answered
        )

    def answered_by(self, by: str, reason: str) -> Quotation:
        """Return the quotation with a person's word for every option that leaves hoses out and has none yet."""
        words = tuple(
            IncompleteWord(
                option=option.title, labels=tuple(one.label for one in option.without_set), by=by, reason=reason
            )
            for option in self.unanswered_options
        )
        return self.model_copy(update={"incomplete_words": (*self.incomplete_words, *words)})

    @property
    def unanswered_margins(self) -> tuple[tuple[QuotedOption, tuple[tuple[QuotedLine, LowMargin], ...]], ...]:
        """What blocks the issue: options with lines below cost or the least margin, for which nobody gives a word."""
        answered = {(one.option, one.lines) for one in self.margin_words}
        found = ((option, option.low_lines(self.terms.selling.least_margin_percent)) for option in self.options)
        return tuple((option, low) for option, low in found if low and (option.title, _told(low)) not in answered)

    def margin_answered_by(self, by: str, reason: str) -> Quotation:
        """Return the quotation with a person's word for every option that sells too low and has none yet."""
        words = tuple(
            MarginWord(option=option.title, lines=_told(low), by=by, reason=reason)
            for option, low in self.unanswered_margins
        )
        return self.model_copy(update={"margin_words": (*self.margin_words, *words)})

    @property
    def part_numbers(self) -> tuple[str, ...]:
        """Every part number in any option, sorted."""
        return tuple(sorted({line.part_number for option in self.options for line in option.lines}))


def _told(lines: tuple[tuple[QuotedLine, LowMargin], ...]) -> tuple[str, ...]:
    return tuple(f"{line.part}, {low.value}: {line.unit_price}, {line.cost}" for line, low in lines)
