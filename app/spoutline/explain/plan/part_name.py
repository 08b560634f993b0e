"""How a part is named on paper and screen: a catalogue's own name in English, else from its declared figures.

Names of a catalogue are text in the language of whoever keeps it. A paper in another language names the part by what
it is, with the words of that language: kind, thread, construction, classes. The number beside it says which one.
"""

from __future__ import annotations

from collections.abc import Iterator
from enum import StrEnum
from typing import Protocol

from spoutline.explain.phrases.part_terms import PartTerm
from spoutline.explain.phrases.phrasebook import Phrasebook
from spoutline.model.language import Language
from spoutline.model.liquid import ListingClass
from spoutline.model.part import AccessoryData, BreakawayData, HoseData, NozzleData, Part
from spoutline.model.port import FlowPath, Port
from spoutline.model.quantity import Dimension
from spoutline.rules.checks.spout import SwivelType


class Wording(Protocol):
    """What a name is made with: the words of one language, figures in one unit system."""

    @property
    def phrases(self) -> Phrasebook:
        """The phrases of the language."""

    def word(self, term: StrEnum) -> str:
        """Return the trade word of an enumeration member, as used inside a sentence."""

    def title(self, term: StrEnum) -> str:
        """Return the trade word of an enumeration member, as used at the head of a row."""

    def show(self, value: float | None, dimension: Dimension) -> str:
        """Return an SI value with its unit."""

    def window(self, low: float | None, high: float | None, dimension: Dimension) -> str:
        """Return a window of SI values."""


def part_name(part: Part, words: Wording) -> str:
    """Return the name of a part in the language of ``words``."""
    if words.phrases.language == Language.ENGLISH:
        return part.name
    return ", ".join((" ".join((words.title(part.kind), *_ends(part, words))), *_terms(part, words)))


def _ends(part: Part, words: Wording) -> Iterator[str]:
    """Return the thread of a part, both where its ends differ."""
    ends = list(dict.fromkeys(_thread(port, words) for port in (part.inlet, part.outlet) if port is not None))
    if ends:
        yield " – ".join(ends)


def _thread(port: Port, words: Wording) -> str:
    return f"{port.size} {words.word(port.thread)}"


def _terms(part: Part, words: Wording) -> Iterator[str]:
    if part.path not in (None, FlowPath.SINGLE):
        yield words.word(part.path)
    if part.nozzle is not None:
        yield from _of_nozzle(part.nozzle, words)
    if part.hose is not None:
        yield from _of_hose(part.hose, words)
    if part.swivel is not None:
        yield planes_word(part.swivel.planes, words)
    if part.breakaway is not None:
        yield from _of_breakaway(part.breakaway, words)
    if part.accessory is not None:
        yield from _of_accessory(part.accessory, words)
    if part.listings:
        yield classes_text(part.listings)


def _of_nozzle(nozzle: NozzleData, words: Wording) -> Iterator[str]:
    yield words.word(nozzle.operation)
    yield words.word(nozzle.service)
    yield words.word(PartTerm.WITH_LATCH if nozzle.hold_open else PartTerm.WITHOUT_LATCH)
    if nozzle.enhanced_conventional:
        yield words.word(PartTerm.LOW_SPILLAGE)


def _of_hose(hose: HoseData, words: Wording) -> Iterator[str]:
    yield words.word(hose.construction)
    if hose.low_permeation:
        yield words.word(PartTerm.LOW_PERMEATION)
    yield words.show(hose.length_m, Dimension.LENGTH)


def planes_word(planes: int, words: Wording) -> str:
    """Return how the trade calls a swivel that turns in so many planes."""
    of_type = {1: SwivelType.SINGLE_PLANE, 2: SwivelType.TWO_PLANE}.get(planes)
    return words.word(of_type) if of_type is not None else words.word(PartTerm.MULTI_PLANE)


def _of_breakaway(breakaway: BreakawayData, words: Wording) -> Iterator[str]:
    yield words.word(PartTerm.RECONNECTABLE if breakaway.reconnectable else PartTerm.SINGLE_USE)
    yield words.window(breakaway.separation_minimum_n, breakaway.separation_maximum_n, Dimension.FORCE)


def _of_accessory(accessory: AccessoryData, words: Wording) -> Iterator[str]:
    if accessory.label_def:
        yield "DEF"
    if accessory.label_family is not None:
        yield words.word(accessory.label_family)
    if accessory.label_classes:
        yield classes_text(accessory.label_classes)
    low, high = accessory.fits_diameter_minimum_m, accessory.fits_diameter_maximum_m
    if low is not None or high is not None:
        yield words.window(low, high, Dimension.DIAMETER)


def classes_text(classes: frozenset[ListingClass]) -> str:
    """Return listing classes in the order of their standards."""
    return " ".join(one for one in ListingClass if one in classes)
