"""A quotation as it is kept: terms, options, what they were made from, and the words that persons gave for it."""

from __future__ import annotations

from datetime import date, timedelta
from typing import Literal

from spoutline.model.kept_record import KeptRecord
from spoutline.model.margin import LowMargin
from spoutline.model.part_ref import PartRef
from spoutline.model.quotation_pins import Pins
from spoutline.model.quotation_terms import Terms
from spoutline.model.quoted_option import QuotedAlternate, QuotedLine, QuotedOption
from spoutline.model.survey import Survey


class IncompleteWord(KeptRecord):
    """A named person's word that an option is issued although it leaves hoses out; ``labels`` are those positions."""

    option: str
    labels: tuple[str, ...]
    by: str
    reason: str


class MarginWord(KeptRecord):
    """A named person's word that lines are issued below cost or below the least margin; ``lines`` tells them.

    Each is the part with its price and its cost, so that the word holds for no other price.
    """

    option: str
    lines: tuple[str, ...]
    by: str
    reason: str


class Quotation(KeptRecord):
    """A whole quotation; ``logo`` holds the bytes of the letterhead's picture in base 64."""

    format: Literal["spoutline-quotation"] = "spoutline-quotation"
    version: Literal[1] = 1
    terms: Terms
    options: tuple[QuotedOption, ...]
    pins: Pins
    logo: str = ""
    incomplete_words: tuple[IncompleteWord, ...] = ()
    margin_words: tuple[MarginWord, ...] = ()  # never printed on what the customer gets

    def says_the_same_as(self, other: Quotation) -> bool:
        """Say whether the customer reads the same in both: whatever margins were answered and the book numbers."""
        numbers = {
            "survey": other.pins.survey,
            "survey_id": other.pins.survey_id,
            "survey_revision": other.pins.survey_revision,
        }
        pins = self.pins.model_copy(update=numbers)
        alike = self.model_copy(update={"pins": pins, "margin_words": other.margin_words})
        return alike == other and self.pins.survey.site == other.pins.survey.site

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

    def of_survey_revision(self, revision: int, survey: Survey) -> Quotation:
        """Return the quotation with another revision of the survey that it was made from, as it was answered there."""
        pins = self.pins.model_copy(update={"survey": survey, "survey_revision": revision})
        return self.model_copy(update={"pins": pins})

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
