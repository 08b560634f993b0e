"""Why each part of a set hangs in its place: counts that add up, what decided at the end, what others would bring."""

from __future__ import annotations

from collections.abc import Iterator

from spoutline.explain.plan.reasons import counted_names
from spoutline.explain.plan.what_differs import ListedParts
from spoutline.explain.plan.words import Words
from spoutline.frozen import frozen
from spoutline.model.cuts import Cut, Decider
from spoutline.model.funnel import FunnelStep, PlaceFunnel, Rival
from spoutline.model.quantity import Dimension
from spoutline.model.requirement import RequirementId

_LINES, _CUTS = tuple(RequirementId), tuple(Cut)
_LAST = 1 + len(_LINES) + len(_CUTS)
_KG = 0.005  # less is no difference on a scale for freight
_M3_S = 1e-6  # 0.06 L/min, less than any flow meter at a nozzle tells


@frozen
class Count:
    """A row of the counts: what happens to so many parts; ``taken`` where it takes them out.

    ``rank`` is the place of the row in the one order in which all places are asked.
    """

    rank: int
    text: str
    count: int
    taken: bool


@frozen
class PlaceReasons:
    """One place in words: its title, the counts from the catalogue to what was left, sentences about the last ones."""

    title: str
    counts: tuple[Count, ...]
    sentences: tuple[str, ...]


def place_reasons(place: PlaceFunnel, currency: str, words: Words) -> PlaceReasons:
    """Return why the part hangs in its place, in words."""
    counts = (
        Count(0, words.phrases.text["why_there"], place.there, taken=False),
        *(Count(_rank(step), _step_text(step, words), step.removed, taken=True) for step in place.steps),
        Count(_LAST, words.phrases.text["why_left"], place.left, taken=False),
    )
    title = words.phrases.fill("why_place", place=words.title(place.slot), part=words.part(place.chosen))
    return PlaceReasons(title, counts, tuple(_sentences(place, currency, words)))


def _rank(step: FunnelStep) -> int:
    if step.line is not None:
        return 1 + _LINES.index(step.line)
    return 1 + len(_LINES) + _CUTS.index(step.cut)


def _step_text(step: FunnelStep, words: Words) -> str:
    if step.line is not None:
        return words.phrases.fill("why_line", line=words.word(step.line))
    return words.word(step.cut)


def _sentences(place: PlaceFunnel, currency: str, words: Words) -> Iterator[str]:
    runner_up = place.runner_up
    named = _listed(place, words)
    if runner_up is None:
        yield words.word(Decider.ALONE)
    else:
        difference = words.signed_money(runner_up.price_difference_minor, currency)
        told = words.phrases.fill("why_next", part=named.of(runner_up.part), difference=difference)
        yield f"{told} {words.word(place.decider)}"
        yield from _gains(runner_up, words)
    for rival in place.rivals:
        if runner_up is None or rival.part.ref != runner_up.part.ref:
            difference = words.signed_money(rival.price_difference_minor, currency)
            told = words.phrases.fill("why_also", part=named.of(rival.part), difference=difference)
            yield " ".join((told, *_gains(rival, words)))
    if place.cheaper is not None:
        yield words.phrases.fill(
            "why_cheaper",
            part=named.of(place.cheaper.part),
            difference=words.signed_money(place.cheaper.price_difference_minor, currency),
            lines=counted_names(place.cheaper.given_up, words),
        )


def _listed(place: PlaceFunnel, words: Words) -> ListedParts:
    """Return the parts told of in one place, the chosen one among them."""
    last = (place.runner_up.part,) if place.runner_up else ()
    cheaper = (place.cheaper.part,) if place.cheaper else ()
    return ListedParts((place.chosen, *(rival.part for rival in place.rivals), *last, *cheaper), words)


def _gains(rival: Rival, words: Words) -> Iterator[str]:
    """Yield in what else the set of a rival differs, each in a sentence; nothing where it does not."""
    differences: list[str] = []
    if abs(rival.mass_kg) >= _KG:
        key = "why_heavier" if rival.mass_kg > 0 else "why_lighter"
        differences.append(words.phrases.fill(key, amount=words.show(abs(rival.mass_kg), Dimension.MASS)))
    if rival.flow_m3_s is not None and abs(rival.flow_m3_s) >= _M3_S:
        key = "why_more_flow" if rival.flow_m3_s > 0 else "why_less_flow"
        differences.append(words.phrases.fill(key, amount=words.show(abs(rival.flow_m3_s), Dimension.FLOW)))
    if rival.lead_time_days:
        key = "why_later" if rival.lead_time_days > 0 else "why_sooner"
        differences.append(words.phrases.fill(key, amount=words.days(abs(rival.lead_time_days))))
    if rival.substitute.changes:
        count = len(rival.substitute.changes)
        key = "why_changes_one" if count == 1 else "why_changes_many"
        differences.append(words.phrases.fill(key, count=count))
    if differences:
        yield words.phrases.fill("why_differs", differences=words.writing.listed(differences))
