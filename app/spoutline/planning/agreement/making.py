"""Agreed sets made of a plan, of the option of a quotation, or of a conversion, parts word for word."""

from __future__ import annotations

import hashlib
import itertools
from collections.abc import Iterable, Mapping
from datetime import datetime

from spoutline.model.agreed_sets import (
    AgreedAccessory,
    AgreedLink,
    AgreedPart,
    AgreedPosition,
    AgreedSets,
    AgreementOrigin,
)
from spoutline.model.faults import InputFault, InputProblem
from spoutline.model.part import Part, PartKind
from spoutline.model.part_ref import PartRef
from spoutline.model.plan import PositionPlan, SitePlan
from spoutline.model.quotation_pins import Pins
from spoutline.model.quoted_option import QuotedOption, QuotedPosition
from spoutline.model.survey import Position
from spoutline.planning.agreement.stated_parts import part_from_text
from spoutline.planning.refit.pins import part_text
from spoutline.planning.sets.pool import SLOT_KINDS
from spoutline.planning.sets.relabel import same_question

_SLOT_OF = {kind: slot for slot, kind in SLOT_KINDS.items()}

# fields that came after sets were first agreed, and that have no bearing on them
_LATER_FIELDS = {"tank", "dispenser_type"}


def part_of(agreed: AgreedPart) -> Part:
    """Return a part as it was agreed; raise ``ValueError`` where its text is none that this version writes."""
    return part_from_text(agreed.stated)


def question_of(position: Position) -> str:
    """Return the fingerprint of what a position asks, whatever it is called."""
    return hashlib.sha256(same_question(position).model_dump_json(exclude=_LATER_FIELDS).encode()).hexdigest()[:16]


def digest_of(agreed: AgreedSets) -> str:
    """Return the first 16 hex digits of the SHA-256 of the agreed sets and parts: equal sets have equal digests."""
    lines = [one.model_dump_json() for one in (*agreed.positions, *agreed.parts)]
    return hashlib.sha256("\n".join(lines).encode()).hexdigest()[:16]


def sets_of_plan(site_plan: SitePlan) -> tuple[tuple[AgreedPosition, ...], tuple[AgreedPart, ...]]:
    """Return the sets of every position of a plan that has one, and their parts."""
    plans = [plan for plan in site_plan.positions if plan.chosen is not None]
    return tuple(map(_position, plans)), agreed_parts(part for plan in plans for part in _parts(plan))


def sets_of_option(option: QuotedOption, pins: Pins) -> tuple[tuple[AgreedPosition, ...], tuple[AgreedPart, ...]]:
    """Return the sets of an option; a position that it leaves out has an empty set.

    Where one container of sealant was ordered for the joints of several positions it goes with the first of them, so
    that bill and loading list name as many as were ordered.

    Raise ``InputFault`` where a set names a part that is not pinned.
    """
    parts = {one.ref: part_from_text(one.text) for one in pins.parts}
    found: list[AgreedPosition] = []
    hung: set[PartRef] = set()
    for quoted in option.positions:
        asked = pins.survey.position(quoted.label)
        chain = [part for ref in quoted.parts for part in _pinned(ref, parts)]
        slots = quoted.slots or tuple(_SLOT_OF[part.kind] for part in chain)
        with_it = [part for ref in quoted.accessory_parts for part in _pinned(ref, parts, needed=False)]
        hung.update(part.ref for part in (*chain, *with_it))
        found.append(
            AgreedPosition(
                label=quoted.label,
                set=tuple(
                    AgreedLink(slot=slot, part_number=part.number, maker=part.maker, kept=place in quoted.kept)
                    for place, (slot, part) in enumerate(zip(slots, chain, strict=True))
                ),
                accessories=tuple(_quoted_accessories(quoted, parts)),
                question=question_of(asked) if asked is not None else "",
            )
        )
    shared = {PartRef(one.part_number, one.maker): one.fitted for one in option.lines if one.kind is PartKind.SEALANT}
    positions = tuple(_with_shared(found, shared))
    return positions, agreed_parts(part for ref, part in parts.items() if ref in hung)


def _with_shared(positions: Iterable[AgreedPosition], ordered: Mapping[PartRef, int]) -> Iterable[AgreedPosition]:
    """Yield the positions with no more pieces of what they share than were ordered, the first ones served first.

    More than one for each was ordered where a container does not reach for the joints of a position; what is over goes
    with the last one.
    """
    positions = tuple(positions)
    left = dict(ordered)
    last = {line.ref: place for place, one in enumerate(positions) for line in one.accessories}
    for place, one in enumerate(positions):
        kept = []
        for line in one.accessories:
            if line.ref not in left:
                kept.append(line)
                continue
            pieces = left[line.ref] if last[line.ref] == place else min(line.quantity, left[line.ref])
            left[line.ref] -= pieces
            if pieces:
                kept.append(line.model_copy(update={"quantity": pieces}))
        yield one.model_copy(update={"accessories": tuple(kept)})


def _quoted_accessories(quoted: QuotedPosition, parts: Mapping[PartRef, Part]) -> Iterable[AgreedAccessory]:
    refs = quoted.accessory_parts
    rows = itertools.zip_longest(refs, quoted.accessory_quantities[: len(refs)], quoted.accessory_reasons[: len(refs)])
    for ref, quantity, reason in rows:
        for part in _pinned(ref, parts, needed=False):
            yield AgreedAccessory(
                part_number=part.number, maker=part.maker, quantity=quantity or 1, reason=reason or ""
            )


def agreed_sets(site_plan: SitePlan, origin: AgreementOrigin, at: datetime, survey_id: int | None = None) -> AgreedSets:
    """Return the sets that a plan shows as the first entry of a history."""
    positions, parts = sets_of_plan(site_plan)
    made_from = site_plan.provenance
    return AgreedSets(
        serial=1,
        site=site_plan.survey.site.name,
        survey_id=survey_id,
        survey_fingerprint=made_from.survey_fingerprint,
        currency=site_plan.survey.site.currency,
        catalogue_edition=made_from.catalogue_edition,
        catalogue=made_from.catalogue,
        edition=made_from.edition,
        rules_edition=made_from.rules_edition,
        agreed_at=at,
        origin=origin,
        positions=positions,
        parts=parts,
    )


def agreed_parts(parts: Iterable[Part]) -> tuple[AgreedPart, ...]:
    """Return each part once, word for word."""
    found = {(part.maker, part.number): part for part in parts}
    return tuple(
        AgreedPart(part_number=part.number, maker=part.maker, stated=part_text(part))
        for _, part in sorted(found.items())
    )


def _pinned(ref: PartRef, parts: Mapping[PartRef, Part], *, needed: bool = True) -> tuple[Part, ...]:
    """Return the pinned part that a quotation names; earlier programs wrote no maker beside the number."""
    found = next((part for known, part in parts.items() if ref.names(known)), None)
    if found is None and needed:
        raise InputFault(
            (InputProblem("quotation", "part number", repr(str(ref)), "it must be among the pinned parts"),)
        )
    return () if found is None else (found,)


def _parts(plan: PositionPlan) -> Iterable[Part]:
    if plan.chosen is not None:
        yield from (link.part for link in plan.chosen.hanging_set.links)
    yield from (line.part for line in plan.accessories)


def links_of(plan: PositionPlan) -> tuple[AgreedLink, ...]:
    """Return the set of a position as it is agreed on; empty where it has none."""
    links = plan.chosen.hanging_set.links if plan.chosen else ()
    return tuple(
        AgreedLink(slot=one.slot, part_number=one.part.number, maker=one.part.maker, kept=one.kept) for one in links
    )


def _position(plan: PositionPlan) -> AgreedPosition:
    return AgreedPosition(
        label=plan.position.label,
        set=links_of(plan),
        accessories=tuple(
            AgreedAccessory(part_number=one.part.number, maker=one.part.maker, quantity=one.quantity, reason=one.reason)
            for one in plan.accessories
        ),
        question=question_of(plan.position),
    )
