"""Findings, checks, requirement lines and conflicts told in ordered sentences, figures in one unit system."""

from __future__ import annotations

from dataclasses import dataclass
from enum import StrEnum

from spoutline.explain.phrases.phrasebook import Phrasebook
from spoutline.explain.plan import reasons
from spoutline.explain.plan.asked import asked_sentence, liquid_of
from spoutline.explain.plan.checks import check_limit, check_margin, check_remark, check_value
from spoutline.explain.plan.part_data import part_data, port_text
from spoutline.explain.plan.texts import CheckText, FindingText, LineText, Named, WorkedText
from spoutline.explain.writing.formula import formula_text, symbol_text
from spoutline.explain.writing.money import money_text
from spoutline.model.check import Bound, Check, Outcome, WorkedLine
from spoutline.model.finding import Finding, Severity, SubjectKind, Verdict
from spoutline.model.limit import Limit, LimitStatus
from spoutline.model.liquid import Liquid, LiquidFamily
from spoutline.model.part import Part
from spoutline.model.plan import (
    Alternative,
    Conflict,
    Exclusion,
    HangingSet,
    JudgedSet,
    PartVerdict,
    PlanStatus,
    PositionPlan,
    Relaxation,
)
from spoutline.model.port import Port
from spoutline.model.quantity import Dimension, Fact, Quantity
from spoutline.model.requirement import Refusal, RequirementId, RequirementLine, WayOut
from spoutline.model.substitute import Misfit, SlotChange
from spoutline.units.display import Display

_OUTCOME_MARKS = {Outcome.PASSES: "✓", Outcome.FAILS: "✗", Outcome.UNKNOWN: "?", Outcome.INFORMATION: "i"}
_SEVERITY_ORDER = (Severity.MUST, Severity.SHOULD, Severity.ADVICE)


@dataclass(frozen=True, slots=True)
class Story:
    """Makes sentences from results, given the phrases of one language and a display in one unit system.

    A sentence is made when it is shown; results never hold text. Nothing here computes: each figure shown is one that
    the result carries. One method for each kind of result keeps whoever shows it to a single object.
    """

    phrases: Phrasebook
    display: Display

    # words and figures

    def word(self, term: StrEnum) -> str:
        """Return the trade word of an enumeration member, as used inside a sentence."""
        return self.phrases.word(term)

    def title(self, term: StrEnum) -> str:
        """Return the trade word of an enumeration member, as used at the head of a row."""
        return _capital(self.phrases.word(term))

    def sentence(self, text: str) -> str:
        """Return a text as it opens a sentence."""
        return _capital(text)

    def yes_no(self, value: bool) -> str:
        """Return the word for yes or no."""
        return self.phrases.text["yes" if value else "no"]

    def show(self, value: float | None, dimension: Dimension) -> str:
        """Return an SI value with its unit; None reads as not stated."""
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
        return money_text(minor, currency)

    def signed_money(self, minor: int, currency: str) -> str:
        """Return a difference of prices with its sign."""
        return f"+{money_text(minor, currency)}" if minor > 0 else money_text(minor, currency)

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

    def verdict(self, plan: PositionPlan) -> str:
        """Return the outcome of a position, with how many lines of good practice its set leaves open."""
        return "; ".join((self.word(plan.status), *self.good_practice(plan)))

    def good_practice(self, plan: PositionPlan) -> tuple[str, ...]:
        """Return how many lines of good practice the chosen set does not meet, and how many cannot be shown."""
        counts = {"shoulds_not_met": plan.shoulds_not_met, "shoulds_not_shown": plan.shoulds_not_shown}
        return tuple(self.phrases.fill(key, count=count) for key, count in counts.items() if count)

    def marked_verdict(self, plan: PositionPlan) -> str:
        """Return the outcome of a position with a mark that reads without colour."""
        return f"{'✓' if plan.status is PlanStatus.FITS else '✗'} {self.verdict(plan)}"

    def marked_outcome(self, outcome: Outcome) -> str:
        """Return the outcome of a check with a mark that reads without colour."""
        return f"{_OUTCOME_MARKS[outcome]} {self.word(outcome)}"

    def port(self, port: Port) -> str:
        """Return a port as the trade writes it."""
        return port_text(port, self)

    def part(self, part: Part) -> str:
        """Return how a part is named in a sentence: number and name."""
        return f"{part.number} ({part.name})"

    def superseded(self, status: str, number: str | None) -> str:
        """Return the status of a part with the number that takes its place, where there is one."""
        return self.phrases.fill("superseded", status=status, number=number) if number else status

    def part_data(self, part: Part) -> tuple[Named, ...]:
        """Return everything that the catalogue states about a part, as labelled texts."""
        return part_data(part, self)

    def fact(self, fact: Quantity | Fact) -> str:
        """Return one fact as ``name value``."""
        if isinstance(fact, Quantity):
            return f"{self.phrases.fact_name(fact.name)} {self.display.reading(fact.value, fact.dimension)}"
        return f"{self.phrases.fact_name(fact.name)} {self.phrases.fact_value(fact.name, fact.value)}"

    def facts(self, facts: tuple[Quantity | Fact, ...]) -> str:
        """Return facts as one text, family and blend as one liquid; empty where there are none."""
        liquid = liquid_of(facts)
        told = [self.fact(fact) for fact in facts if liquid is None or fact.name not in ("family", "blend_percent")]
        return "; ".join([self.liquid_in_sentence(liquid), *told] if liquid is not None else told)

    def with_figures(self, sentence: str, facts: tuple[Quantity | Fact, ...]) -> str:
        """Return a sentence with its figures behind it in parentheses."""
        figures = self.facts(facts)
        return f"{sentence} ({figures})." if figures else f"{sentence}."

    # what is asked, and what was found

    def requirement_line(self, line: RequirementLine) -> LineText:
        """Return a derived line: title, answer in one sentence, the reason, who asks it."""
        return LineText(
            title=self.title(line.id),
            answer=asked_sentence(line, self),
            reason=f"{self.phrases.rule(line.rule_id).says}.",
            severity=line.severity,
            severity_word=self.word(line.severity),
            source=line.source,
        )

    def finding(self, finding: Finding) -> FindingText:
        """Return a finding as title, sentence with its figures in parentheses, subject and source."""
        phrase = self.phrases.rule(finding.rule_id)
        opening = f"{phrase.title}: {self.word(finding.verdict)}" if finding.verdict is Verdict.HOLDS else phrase.says
        return FindingText(
            title=phrase.title,
            sentence=self.with_figures(opening, finding.facts),
            subject=self._subject(finding),
            severity=finding.severity,
            severity_word=self.word(finding.severity),
            verdict=finding.verdict,
            verdict_word=self.word(finding.verdict),
            source=finding.source,
        )

    def by_severity(self, findings: tuple[Finding, ...]) -> tuple[FindingText, ...]:
        """Return findings in words, the gravest first, otherwise in the order given."""
        return tuple(self.finding(finding) for finding in self.gravest_first(findings))

    def gravest_first(self, findings: tuple[Finding, ...]) -> tuple[Finding, ...]:
        """Return findings in the order in which they are told: the gravest first, otherwise as given."""
        return tuple(sorted(findings, key=lambda finding: _SEVERITY_ORDER.index(finding.severity)))

    def severity_note(self, severity: Severity) -> str:
        """Return what a severity means to the reader."""
        return self.phrases.severity_notes[severity]

    def check(self, check: Check) -> CheckText:
        """Return a check as the cells of a table row."""
        bounds = [bound for bound in (check.lower, check.upper) if bound is not None]
        return CheckText(
            title=self.title(check.id),
            value=check_value(check, self),
            limit=check_limit(check, self),
            margin=check_margin(check, self),
            outcome=check.outcome,
            outcome_word=self.word(check.outcome),
            severity=check.severity,
            severity_word=self.word(check.severity),
            sources=tuple(dict.fromkeys(self.bound_source(bound) for bound in bounds)),
            facts=tuple(_capital(self.fact(fact)) for fact in check.facts),
            remark=check_remark(check, self),
        )

    def worked_line(self, line: WorkedLine) -> WorkedText:
        """Return one worked line: formula, ``with`` its inputs, the result, source and note."""
        inputs = ", ".join(f"{symbol_text(item.name)} = {self.display.show_quantity(item)}" for item in line.inputs)
        return WorkedText(
            formula=formula_text(line.formula),
            inputs=f"{self.phrases.text['with_inputs']} {inputs}" if inputs else "",
            result=f"{symbol_text(line.result.name)} = {self.display.show_quantity(line.result)}",
            source=line.source,
            note=formula_text(line.note),
        )

    def window(self, low: float | None, high: float | None, dimension: Dimension, *, prefixed: bool = True) -> str:
        """Return a window of SI values: at least, at most, from-to, or that no limit is set.

        ``prefixed`` False is for a field into which a reading is written: a resistance in ohm, however large, and as
        many digits as ``Display.show`` gives, so that an entry equal to the printed limit keeps it.
        """
        low_text, high_text = (
            "" if value is None else self._bound(value, dimension, prefixed=prefixed) for value in (low, high)
        )
        if low_text and high_text:
            return low_text if low_text == high_text else self.phrases.fill("between", low=low_text, high=high_text)
        if low_text:
            return f"{self.phrases.text['at_least']} {low_text}"
        if high_text:
            return f"{self.phrases.text['at_most']} {high_text}"
        return self.phrases.text["no_limit"]

    def _bound(self, value: float, dimension: Dimension, *, prefixed: bool) -> str:
        if prefixed:
            return self.display.reading(value, dimension)
        return self.display.show(value, dimension, prefixed=False)

    def bound_source(self, bound: Bound) -> str:
        """Return where one side of a limit comes from, with its status unless the text itself was read."""
        return self.sourced(bound.source, bound.status)

    def sourced(self, source: str, status: LimitStatus) -> str:
        """Return a source with its status behind, unless the published text itself was read."""
        if status is LimitStatus.VERIFIED or status.value in source:
            return source
        return f"{source} [{status}]" if source else f"[{status}]"

    def limit_value(self, limit: Limit) -> str:
        """Return the value of a limit row in words or figures."""
        value = limit.value
        if value is None:
            return self.phrases.text["no_limit"]
        if isinstance(value, bool):
            return self.yes_no(value)
        if isinstance(value, str):
            return self.phrases.fact_value("", value)
        if isinstance(value, tuple):
            return "; ".join(self._case(item) for item in value)
        return self.show(value, limit.dimension or Dimension.RATIO)

    def _case(self, text: str) -> str:
        """Return a case of a list row in words; rows name cases as ``service:duty:liquid family``."""
        names = ("service", "duty", "family")
        parts = text.split(":")
        if len(parts) != len(names):
            return text
        return ", ".join(self.phrases.fact_value(name, part) for name, part in zip(names, parts, strict=True))

    def limit_source(self, limit: Limit) -> str:
        """Return source, clause and edition of a limit row."""
        return ", ".join(item for item in (limit.source, limit.clause, limit.edition) if item)

    def limit_status(self, status: LimitStatus) -> str:
        """Return what the status of a figure means to the reader."""
        return self.word(status)

    # when there is no set, or another one

    def refusal(self, refusal: Refusal) -> tuple[str, ...]:
        """Return why no requirement can be derived, in ordered sentences; the ways out are told apart."""
        return reasons.refusal_sentences(refusal, self)

    def way_out(self, way: WayOut) -> str:
        """Return what a person can do about a refusal."""
        return self.word(way)

    def conflict(self, conflict: Conflict) -> tuple[str, ...]:
        """Return why no set exists, in ordered sentences; the relaxations are told apart."""
        return reasons.conflict_sentences(conflict, self)

    def exclusion(self, exclusion: Exclusion) -> str:
        """Return how many parts of a slot a requirement line excludes, and the nearest of them."""
        return reasons.exclusion_sentence(exclusion, self)

    def relaxation(self, relaxation: Relaxation, currency: str) -> str:
        """Return the smallest change that frees a set, and what that set costs."""
        return reasons.relaxation_sentence(relaxation, currency, self)

    def alternative(self, alternative: Alternative, chosen: HangingSet) -> str:
        """Return in what way an alternative differs from ``chosen``: kind, price, other parts."""
        return reasons.alternative_sentence(alternative, chosen, self)

    def misfit(self, misfit: Misfit) -> str:
        """Return the first reason why a part could not hang in a place, in one sentence."""
        return reasons.misfit_sentence(misfit, self)

    def slot_change(self, change: SlotChange) -> str:
        """Return what goes and what comes in one place of a set."""
        return reasons.change_text(change, self)

    def line_names(self, requirements: tuple[RequirementId, ...]) -> str:
        """Return the names of requirement lines as one text, each once, with the number of times where it is more."""
        return reasons.counted_names(requirements, self)

    def other_parts(self, judged: JudgedSet, chosen: HangingSet) -> tuple[str, ...]:
        """Return the part numbers of a set that ``chosen`` does not hold, in chain order."""
        return tuple(number for number in judged.hanging_set.numbers if number not in chosen.numbers)

    def part_verdict(self, verdict: PartVerdict) -> tuple[str, ...]:
        """Return the answer to *why not?* in ordered sentences, one for each broken rule."""
        return reasons.part_verdict_sentences(verdict, self)

    def drawing_note(self, note: StrEnum) -> str:
        """Return what a drawing leaves open; ``note`` is the key of a phrase ``drawing_...``."""
        return self.phrases.text[f"drawing_{note.value}"]

    def drawing_description(self, *, label: str, height: str, reach: str, numbers: tuple[str, ...]) -> str:
        """Return what a position drawing shows, for those who cannot see it."""
        parts = ", ".join(numbers) or self.phrases.text["nothing"]
        return self.phrases.fill("drawing_description", label=label, height=height, reach=reach, parts=parts)

    def accessory_reason(self, reason: str) -> str:
        """Return why a consumable or fitting goes with a set."""
        return self.phrases.words["AccessoryReason"][reason]

    def _subject(self, finding: Finding) -> str:
        if finding.subject_kind is not SubjectKind.JOINT:
            return finding.subject
        return finding.subject.removeprefix(" > ").strip() or finding.subject


def _capital(text: str) -> str:
    return text[:1].upper() + text[1:]
