"""What a position is converted to, in the few words that are kept from site to site and from run to run.

Everything else that a programme counts is made of it again: prices, lead times and figures are those of the parts.
"""

from __future__ import annotations

from collections.abc import Iterator, Mapping

from pydantic import BaseModel, ConfigDict

from spoutline.model.conversion_answers import OptionKind
from spoutline.model.difference_reason import DifferenceReason
from spoutline.model.part import Part
from spoutline.model.part_ref import PartRef
from spoutline.model.plan import AccessoryLine, HangingSet, JudgedSet, PlanStatus, PositionPlan, SetLink
from spoutline.model.position_conversion import (
    ConversionKind,
    ConversionOption,
    DifferenceAction,
    DifferenceLine,
    PositionConversion,
    PositionOutcome,
)
from spoutline.model.requirement import Slot
from spoutline.model.survey import Position
from spoutline.planning.protocols import PartStore
from spoutline.planning.sets.installed_units import InstalledUnit


class _Record(BaseModel):
    model_config = ConfigDict(frozen=True, extra="forbid")


class AnsweredPart(_Record):
    """A part in its slot: a new one of the catalogue, or by its place among them one of those that hang there."""

    slot: Slot
    new: PartRef | None = None
    stays: int | None = None


class AnsweredAccessory(_Record):
    """What goes with a set."""

    ref: PartRef
    quantity: int
    reason: str


class PositionAnswer(_Record):
    """How a position is converted by the way that its survey follows; without a ``way`` it has no set."""

    outcome: PositionOutcome
    kinds: tuple[ConversionKind, ...]
    way: OptionKind | None = None
    parts: tuple[AnsweredPart, ...] = ()
    accessories: tuple[AnsweredAccessory, ...] = ()
    departures: int = 0


def answer_of(
    kinds: tuple[ConversionKind, ...], outcome: PositionOutcome, option: ConversionOption, stays: Mapping[int, int]
) -> PositionAnswer:
    """Return what is kept of a way; ``stays`` are the places in its chain of what stays, by place among what hangs."""
    index_at = {place: index for index, place in stays.items()}
    links = enumerate(option.judged.hanging_set.links)
    return PositionAnswer(
        outcome=outcome,
        kinds=kinds,
        way=option.kind,
        parts=tuple(
            AnsweredPart(slot=link.slot, stays=index_at[place])
            if place in index_at
            else AnsweredPart(slot=link.slot, new=link.part.ref)
            for place, link in links
        ),
        accessories=tuple(
            AnsweredAccessory(ref=line.part.ref, quantity=line.quantity, reason=line.reason)
            for line in option.accessories
        ),
        departures=option.departures,
    )


def conversion_of(
    answer: PositionAnswer, position: Position, currency: str, units: tuple[InstalledUnit, ...], parts: PartStore
) -> PositionConversion | None:
    """Return the conversion that an answer stands for, as far as a programme counts it; see ``counted_conversion``.

    Parameters
    ----------
    answer, position
        The answer to what this position asks.
    currency
        Of the site.
    units
        What hangs at the position.
    parts
        The catalogue that the answer was found in. Where it lacks a part there is no conversion.
    """
    option = None
    if answer.way is not None:
        option = _option(answer, answer.way, currency, units, parts)
        if option is None:
            return None
    stays = {one.stays: place for place, one in enumerate(answer.parts) if one.stays is not None}
    lines = () if option is None else tuple(counted_lines(option, units, stays))
    return counted_conversion(position, answer.kinds, answer.outcome, option, lines)


def counted_conversion(
    position: Position,
    kinds: tuple[ConversionKind, ...],
    outcome: PositionOutcome,
    option: ConversionOption | None = None,
    lines: tuple[DifferenceLine, ...] = (),
    *,
    shown: PositionPlan | None = None,
) -> PositionConversion:
    """Return a conversion with what a programme counts: the way that is followed, with its ``counted_lines``.

    It says nothing of what was found about the set, and ``renewal`` is empty. ``shown`` is the plan whose set was
    handed in.
    """
    kind = option.kind if option is not None and shown is None else None
    return PositionConversion(
        position=position,
        kinds=kinds,
        outcome=outcome,
        least_cost=option if kind is OptionKind.LEAST_COST else None,
        good_practice=option if kind is OptionKind.GOOD_PRACTICE else None,
        renewal=_empty_plan(position),
        renewal_option=option if kind is OptionKind.FULL_RENEWAL else None,
        differences=lines,
        shown=None if shown is None else option,
        shown_plan=shown,
    )


def counted_lines(
    option: ConversionOption, units: tuple[InstalledUnit, ...], stays: Mapping[int, int]
) -> Iterator[DifferenceLine]:
    """Yield what stays and goes, then what comes; why a part goes that might have stayed is not looked for."""
    links = option.judged.hanging_set.links
    for unit in units:
        place = stays.get(unit.index)
        yield DifferenceLine(
            action=DifferenceAction.REMOVE if place is None else DifferenceAction.KEEP,
            reason=DifferenceReason.CHEAPER_WITHOUT if place is None else DifferenceReason.STILL_FITS,
            slot=None if place is None else links[place].slot,
            part=unit.part,
            installed=unit.installed,
        )
    added = (link for place, link in enumerate(links) if place not in option.kept)
    for link in added:
        yield DifferenceLine(
            action=DifferenceAction.ADD, reason=DifferenceReason.ASKED_FOR, slot=link.slot, part=link.part
        )
    for line in option.accessories:
        yield DifferenceLine(
            action=DifferenceAction.ADD,
            reason=DifferenceReason.ACCESSORY,
            slot=None,
            part=line.part,
            quantity=line.quantity,
        )


def _option(
    answer: PositionAnswer, way: OptionKind, currency: str, units: tuple[InstalledUnit, ...], parts: PartStore
) -> ConversionOption | None:
    """Return the way with its parts at the prices of the catalogue; None where a part is not there."""
    wanted = {one.new for one in answer.parts if one.new is not None} | {one.ref for one in answer.accessories}
    found = {part.ref: part for part in parts.parts(sorted(wanted))}
    chain = [_part_of(one, found, units) for one in answer.parts]
    links = tuple(
        SetLink(slot=one.slot, part=part, kept=one.stays is not None)
        for one, part in zip(answer.parts, chain, strict=True)
        if part is not None
    )
    if len(links) < len(chain) or not wanted <= found.keys():
        return None
    lines = tuple(
        AccessoryLine(part=found[one.ref], quantity=one.quantity, reason=one.reason) for one in answer.accessories
    )
    price_minor = sum(link.price_minor(currency) or 0 for link in links)
    kept = [link.part.price_minor(currency) for link in links if link.kept]
    return ConversionOption(
        kind=way,
        judged=JudgedSet(
            hanging_set=HangingSet(links=links, price_minor=price_minor, currency=currency),
            joints=(),
            findings=(),
            checks=(),
        ),
        kept=tuple(place for place, link in enumerate(links) if link.kept),
        accessories=lines,
        parts_minor=price_minor,
        accessories_minor=sum((line.part.price_minor(currency) or 0) * line.quantity for line in lines),
        kept_minor=None if None in kept else sum(price or 0 for price in kept),
        departures=answer.departures,
    )


def _part_of(one: AnsweredPart, found: Mapping[PartRef, Part], units: tuple[InstalledUnit, ...]) -> Part | None:
    if one.new is not None:
        return found.get(one.new)
    return units[one.stays].part if one.stays is not None and 0 <= one.stays < len(units) else None


def _empty_plan(position: Position) -> PositionPlan:
    return PositionPlan(
        position=position,
        status=PlanStatus.NOT_ORDERED,
        requirement=None,
        refusal=None,
        chosen=None,
        alternatives=(),
        conflict=None,
        counts=(),
        accessories=(),
    )
