"""The trade words, figures and small texts from which every sentence of a plan is made."""

from __future__ import annotations

import re
from datetime import date
from decimal import Decimal
from enum import StrEnum
from typing import Final

from spoutline.explain.phrases.phrasebook import Phrasebook
from spoutline.explain.plan.part_name import part_name
from spoutline.explain.writing.money import money_text
from spoutline.frozen import frozen
from spoutline.model.check import Bound
from spoutline.model.cross_reference import NumberTrace
from spoutline.model.finding import Finding, Severity
from spoutline.model.language import Language
from spoutline.model.limit import LimitStatus
from spoutline.model.liquid import Liquid, LiquidFamily
from spoutline.model.part import Part
from spoutline.model.part_ref import told_apart
from spoutline.model.plan import HangingSet, JudgedSet
from spoutline.model.port import Port
from spoutline.model.quantity import Dimension, Fact, Quantity
from spoutline.units.display import Display
from spoutline.units.writing import Writing

# a word is never made small there: most titles open with a noun
_LARGE_NOUNS = frozenset({Language.GERMAN.value})
# how tables write a source that is none
_FOOTING_WRITTEN = {
    "common practice, no source": LimitStatus.COMMON_PRACTICE,
    "engineering judgement of this program": LimitStatus.JUDGEMENT,
    "engineering judgement": LimitStatus.JUDGEMENT,
}
# how the catalogue names its editions and drafts, and the one of the invented catalogue
_EDITION_TITLES: Final = (
    (re.compile(r"(?P<kept>.+), edition (?P<number>\d+)"), "edition_published"),
    (re.compile(r"(?P<kept>.+), draft"), "edition_draft"),
    (re.compile(r"(?P<kept>.+), draft after edition (?P<number>\d+)"), "edition_draft_after"),
    (re.compile(r"Invented catalog (?P<edition>\S+)"), "edition_invented"),
)
# facts that are a price: an amount with its currency behind it
_PRICES: Final = frozenset({"set_price", "price_floor", "set_price_with_work", "price_floor_with_work"})
_SEVERITY_ORDER = (Severity.MUST, Severity.SHOULD, Severity.ADVICE)


@frozen
class Words:
    """Words of one language, with figures in one unit system; nothing here computes."""

    phrases: Phrasebook
    display: Display

    @property
    def writing(self) -> Writing:
        """How the language of the phrases writes numbers, amounts and days."""
        return self.display.writing

    def day(self, day: date) -> str:
        """Return a day of the calendar."""
        return self.writing.day(day)

    def word(self, term: StrEnum) -> str:
        """Return the trade word of an enumeration member, as used inside a sentence."""
        return self.phrases.word(term)

    def title(self, term: StrEnum) -> str:
        """Return the trade word of an enumeration member, as used at the head of a row."""
        return _capital(self.phrases.word(term))

    def sentence(self, text: str) -> str:
        """Return a text as it opens a sentence."""
        return _capital(text)

    def inside(self, text: str) -> str:
        """Return a text that opens a sentence or a row as it reads inside a sentence.

        Abbreviations stay as they are, and so does every text of a language that writes its nouns large.
        """
        if self.phrases.language in _LARGE_NOUNS or text[1:2].isupper():
            return text
        return text[:1].lower() + text[1:]

    def yes_no(self, value: bool) -> str:
        """Return the word for yes or no."""
        return self.phrases.text["yes" if value else "no"]

    def show(self, value: float | None, dimension: Dimension) -> str:
        """Return an SI value with its unit; None reads as not stated. Whole days are counted in words."""
        if value is not None and dimension is Dimension.DAYS and float(value).is_integer():
            return self.phrases.fill("days_one" if value == 1 else "days_many", count=int(value))
        return self.phrases.text["no_answer"] if value is None else self.display.show(value, dimension)

    def height(self, height_m: float) -> str:
        """Return a height (m) against the ground in words: so far above it, or so far below it."""
        key = "height_below" if height_m < 0.0 else "height_above"
        return self.phrases.fill(key, height=self.show(abs(height_m), Dimension.LENGTH))

    def days(self, days: int) -> str:
        """Return a lead time; 0 days reads as from stock."""
        if days == 0:
            return self.phrases.text["in_stock"]
        return self.phrases.fill("days_one" if days == 1 else "days_many", count=days)

    def money(self, minor: int | None, currency: str) -> str:
        """Return a price in ``currency`` from its minor units; None reads as no price."""
        if minor is None:
            return self.phrases.fill("price_missing", currency=currency)
        return money_text(minor, currency, writing=self.writing)

    def bare_money(self, minor: int, currency: str) -> str:
        """Return a price whose currency stands elsewhere, such as in the title of its column."""
        return money_text(minor, currency, with_currency=False, writing=self.writing)

    def signed_money(self, minor: int, currency: str) -> str:
        """Return a difference of prices with its sign."""
        return f"{'+' if minor > 0 else ''}{self.money(minor, currency)}"

    def liquid(self, liquid: Liquid) -> str:
        """Return a liquid with its blend; 0 percent and DEF are named by the family alone."""
        name = self.word(liquid.family)
        if liquid.blend_percent == 0:
            return name
        key = "blend_ethanol" if liquid.family is LiquidFamily.GASOLINE else "blend_biodiesel"
        return self.phrases.fill(key, liquid=name, percent=self.show(liquid.blend_percent, Dimension.PERCENT))

    def liquid_in_sentence(self, liquid: Liquid) -> str:
        """Return a liquid with its blend as it reads in the middle of a sentence."""
        name = self.word(liquid.family)
        if liquid.blend_percent == 0:
            return name
        key = "liquid_with_ethanol" if liquid.family is LiquidFamily.GASOLINE else "liquid_with_biodiesel"
        return self.phrases.fill(key, liquid=name, percent=self.show(liquid.blend_percent, Dimension.PERCENT))

    def edition(self, title: str) -> str:
        """Return the title of a catalog's edition in this language, where the program gave it; else as it is."""
        for pattern, key in _EDITION_TITLES:
            if (named := pattern.fullmatch(title)) is not None:
                return self.phrases.fill(key, **named.groupdict())
        return title

    def part(self, part: Part) -> str:
        """Return how a part is named in a sentence: number and name."""
        return f"{part.number} ({self.part_name(part)})"

    def part_name(self, part: Part) -> str:
        """Return the name of a part in the language of the phrases; the catalogue's own in English."""
        return part_name(part, self)

    def port(self, port: Port) -> str:
        """Return a port as the trade writes it: size, thread, gender, path."""
        return f"{port.size} {self.word(port.thread)} {self.word(port.gender)}, {self.word(port.path)}"

    def number_trace(self, trace: NumberTrace) -> str:
        """Return how a typed number leads to a part: every step, why, and what the cross-reference says of it."""
        steps = "; ".join(
            self.phrases.fill(
                "number_step",
                before=one.before,
                after=str(one.after),
                why=", ".join(filter(None, (self.word(one.kind), one.remark))),
            )
            for one in trace.steps
        )
        return self.phrases.fill("number_leads", asked=trace.asked, steps=steps)

    def superseded(self, status: str, number: str | None) -> str:
        """Return the status of a part with the number that takes its place, where there is one."""
        return self.phrases.fill("superseded", status=status, number=number) if number else status

    def fact(self, fact: Quantity | Fact) -> str:
        """Return one fact as ``name value``."""
        if isinstance(fact, Quantity) and fact.dimension is Dimension.DAYS:
            return f"{self.phrases.fact_name(fact.name)} {self.show(fact.value, fact.dimension)}"
        if isinstance(fact, Quantity):
            return f"{self.phrases.fact_name(fact.name)} {self.display.reading(fact.value, fact.dimension)}"
        if fact.name in _PRICES:
            major, currency = fact.value.split(" ")
            return f"{self.phrases.fact_name(fact.name)} {self.writing.money(Decimal(major), currency)}"
        return f"{self.phrases.fact_name(fact.name)} {self.phrases.fact_value(fact.name, fact.value)}"

    def facts(self, facts: tuple[Quantity | Fact, ...]) -> str:
        """Return facts as one text, family and blend as one liquid; empty where there are none."""
        liquid = liquid_of(facts)
        told = [self.fact(fact) for fact in facts if liquid is None or fact.name not in ("family", "blend_percent")]
        return self.writing.listed([self.liquid_in_sentence(liquid), *told] if liquid is not None else told)

    def with_figures(self, sentence: str, facts: tuple[Quantity | Fact, ...]) -> str:
        """Return a sentence with its figures behind it in parentheses."""
        figures = self.facts(facts)
        return f"{sentence} ({figures})." if figures else f"{sentence}."

    def window(self, low: float | None, high: float | None, dimension: Dimension, *, typed: bool = False) -> str:
        """Return a window of SI values: at least, at most, from-to, or that no limit is set.

        ``typed`` is for what somebody measures and writes down: as many digits as ``Display.show`` gives, so that an
        entry equal to the printed limit keeps it.
        """
        low_text, high_text = (
            "" if value is None else self._bound(value, dimension, typed=typed, at_most=at_most)
            for value, at_most in ((low, False), (high, True))
        )
        if low_text and high_text:
            return low_text if low_text == high_text else self.phrases.fill("between", low=low_text, high=high_text)
        if low_text:
            return f"{self.phrases.text['at_least']} {low_text}"
        if high_text:
            return f"{self.phrases.text['at_most']} {high_text}"
        return self.phrases.text["no_limit"]

    def _bound(self, value: float, dimension: Dimension, *, typed: bool, at_most: bool) -> str:
        if not typed:
            return self.display.reading(value, dimension)
        return (self.display.at_most if at_most else self.display.at_least)(value, dimension)

    def bound_source(self, bound: Bound) -> str:
        """Return where one side of a limit comes from, with its status unless the text itself was read."""
        return self.sourced(bound.source, bound.status)

    def sourced(self, source: str, status: LimitStatus) -> str:
        """Return a source with its status behind, unless the published text itself was read."""
        cited, mark = self.cited(source), self._mark(status)
        if status is LimitStatus.VERIFIED or mark in cited:
            return cited
        return f"{cited} [{mark}]" if cited else f"[{mark}]"

    def cited(self, source: str) -> str:
        """Return a source as tables write it, with what it says of its own footing in the language of the phrases.

        Titles of published texts stay as they were published.
        """
        if self.phrases.language == Language.ENGLISH:  # what tables say is English, in their own spelling
            return source.replace(LimitStatus.JUDGEMENT, self.word(LimitStatus.JUDGEMENT))
        for status in LimitStatus:
            source = source.replace(f"[{status}]", f"[{self._mark(status)}]")
        for written, status in _FOOTING_WRITTEN.items():
            source = source.replace(written, self.word(status))
        return self.phrases.cite(source)

    def source_told(self, source: str) -> str:
        """Return a source in the language of the phrases; in English as the tables write it."""
        return source if self.phrases.language == Language.ENGLISH else self.cited(source)

    def _mark(self, status: LimitStatus) -> str:
        written = self.phrases.language == Language.ENGLISH and status is not LimitStatus.JUDGEMENT
        return status.value if written else self.word(status)  # tables spell judgment their own way

    def severity_note(self, severity: Severity) -> str:
        """Return what a severity means to the reader."""
        return self.phrases.severity_notes[severity]

    def gravest_first(self, findings: tuple[Finding, ...]) -> tuple[Finding, ...]:
        """Return findings in the order in which they are told: the gravest first, otherwise as given."""
        return tuple(sorted(findings, key=lambda finding: _SEVERITY_ORDER.index(finding.severity)))

    def other_parts(self, judged: JudgedSet, chosen: HangingSet) -> tuple[str, ...]:
        """Return the part numbers of a set that ``chosen`` does not hold, in chain order."""
        return told_apart((ref for ref in judged.hanging_set.refs if ref not in chosen.refs), chosen.refs)


def liquid_of(facts: tuple[Quantity | Fact, ...]) -> Liquid | None:
    """Return the liquid that the facts family and blend_percent name; None where one of them is not there."""
    family = next((fact.value for fact in facts if isinstance(fact, Fact) and fact.name == "family"), None)
    blend = next((fact.value for fact in facts if isinstance(fact, Quantity) and fact.name == "blend_percent"), None)
    return None if family is None or blend is None else Liquid(LiquidFamily(family), blend)


def _capital(text: str) -> str:
    return text[:1].upper() + text[1:]
