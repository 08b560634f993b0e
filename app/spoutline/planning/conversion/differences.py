"""What stays, goes and comes at one position, each with its reason."""

from __future__ import annotations

from collections.abc import Iterable, Iterator

from spoutline.model.conversion_answers import OptionKind
from spoutline.model.difference_reason import DifferenceReason
from spoutline.model.part import Part
from spoutline.model.position_conversion import ConversionOption, DifferenceAction, DifferenceLine
from spoutline.model.requirement import RequirementId
from spoutline.planning.conversion.options import PositionOptions
from spoutline.planning.sets.conflicts import ConflictFinder
from spoutline.planning.sets.installed_units import UnitVerdict
from spoutline.rules.conversion.asking import line_asking_for
from spoutline.search.effort import Exhausted


def difference_lines(options: PositionOptions, followed: ConversionOption | None) -> tuple[DifferenceLine, ...]:
    """Return every difference between today and the option that is followed: today's parts first, then new ones.

    Parameters
    ----------
    options
        The ways to convert the position.
    followed
        The way that is taken; None where no set exists, so that only what goes can be told.
    """
    return (
        *(_installed_line(verdict, options, followed) for verdict in options.verdicts),
        *(_added(options, followed) if followed else ()),
    )


def staying_places(followed: ConversionOption, verdicts: Iterable[UnitVerdict]) -> dict[int, int]:
    """Return which installed parts stay, by their index, with the place in the chain that each takes, from 0."""
    if followed.kind is OptionKind.FULL_RENEWAL:
        return {}
    links, kept = followed.judged.hanging_set.links, dict[int, int]()
    for place in followed.kept:
        for verdict in verdicts:
            unit = verdict.unit
            may_stay = verdict.candidates or followed.kind is None  # a set handed in says itself what stays
            if _is_same(unit.part, links[place].part) and may_stay and unit.index not in kept:
                kept[unit.index] = place
                break
    return kept


def _is_same(installed: Part | None, part: Part) -> bool:
    """Say whether both are one part; an agreed one is read from its words and so another value."""
    return installed is not None and (installed.maker, installed.number) == (part.maker, part.number)


def _installed_line(
    verdict: UnitVerdict, options: PositionOptions, followed: ConversionOption | None
) -> DifferenceLine:
    unit = verdict.unit
    place = staying_places(followed, options.verdicts).get(unit.index) if followed else None
    if followed is not None and place is not None:
        currency = options.requirement.site.currency
        return DifferenceLine(
            action=DifferenceAction.KEEP,
            reason=DifferenceReason.STILL_FITS,
            slot=followed.judged.hanging_set.links[place].slot,
            part=unit.part,
            installed=unit.installed,
            amount_minor=unit.part.price_minor(currency) if unit.part else None,
        )
    reason, extra_minor, conflict = _reason_to_go(verdict, options, followed)
    return DifferenceLine(
        action=DifferenceAction.REMOVE,
        reason=reason,
        slot=None,
        part=unit.part,
        installed=unit.installed,
        findings=verdict.findings,
        missing=unit.missing,
        extra_minor=extra_minor,
        conflict=conflict,
    )


def _reason_to_go(
    verdict: UnitVerdict, options: PositionOptions, followed: ConversionOption | None
) -> tuple[DifferenceReason, int | None, tuple[RequirementId, ...]]:
    """Return why an installed part goes; where no rule forbids it, what keeping it would add, or what excludes it."""
    if verdict.reason is not None:
        return verdict.reason, None, ()
    if followed is None:
        return DifferenceReason.NO_SET_AT_ALL, None, ()
    if followed.kind is OptionKind.FULL_RENEWAL:
        return DifferenceReason.RENEWED, None, ()
    try:
        return _without_reason(verdict, options)
    except Exhausted:
        return DifferenceReason.NOT_DECIDED, None, ()


def _without_reason(
    verdict: UnitVerdict, options: PositionOptions
) -> tuple[DifferenceReason, int | None, tuple[RequirementId, ...]]:
    """Return the same of a part that no rule forbids. Raise ``Exhausted`` where that takes too much work to say."""
    pool = options.forced(verdict.unit)
    if pool is None:
        return DifferenceReason.CHEAPER_WITHOUT, None, ()
    with_it, best = options.cheapest_in(pool), options.cheapest_in(options.pool)
    if with_it is None or best is None:
        conflict = ConflictFinder(options.search_over(pool)).conflict()
        return DifferenceReason.NO_SET_WITH_IT, None, conflict.requirements if conflict else ()
    return DifferenceReason.CHEAPER_WITHOUT, options.cost_minor(with_it) - options.cost_minor(best), ()


def _added(options: PositionOptions, followed: ConversionOption) -> Iterator[DifferenceLine]:
    currency = options.requirement.site.currency
    for place, link in enumerate(followed.judged.hanging_set.links):
        if place in followed.kept:
            continue
        yield DifferenceLine(
            action=DifferenceAction.ADD,
            reason=DifferenceReason.ASKED_FOR,
            slot=link.slot,
            part=link.part,
            asked_by=line_asking_for(link.slot, options.requirement),
            amount_minor=link.part.price_minor(currency),
        )
    for line in followed.accessories:
        price = line.part.price_minor(currency)
        yield DifferenceLine(
            action=DifferenceAction.ADD,
            reason=DifferenceReason.ACCESSORY,
            slot=None,
            part=line.part,
            quantity=line.quantity,
            amount_minor=None if price is None else price * line.quantity,
            accessory_reason=line.reason,
        )
