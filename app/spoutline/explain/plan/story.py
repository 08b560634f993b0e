"""Findings, checks, requirement lines and conflicts told in ordered sentences, figures in one unit system."""

from __future__ import annotations

from enum import StrEnum
from typing import TYPE_CHECKING

from spoutline.explain.plan import reasons
from spoutline.explain.plan.asked import asked_sentence
from spoutline.explain.plan.checks import check_limit, check_margin, check_remark, check_value, rests_on_memory
from spoutline.explain.plan.findings import by_severity, finding_text
from spoutline.explain.plan.no_set_text import (
    Reason,
    TrialText,
    closing_sentences,
    conflict_reason,
    obstacle_sentence,
    trial_text,
)
from spoutline.explain.plan.part_data import part_data
from spoutline.explain.plan.texts import CheckText, FindingText, LineText, Named, WorkedText, verdict_text
from spoutline.explain.plan.words import Words
from spoutline.explain.writing.formula import formula_text, symbol_text
from spoutline.frozen import frozen
from spoutline.model.check import Check, Outcome, WorkedLine
from spoutline.model.finding import Finding
from spoutline.model.limit import Limit, LimitStatus
from spoutline.model.part import Part
from spoutline.model.plan import (
    Alternative,
    Conflict,
    Exclusion,
    HangingSet,
    PartVerdict,
    PlanStatus,
    PositionPlan,
    Relaxation,
    SitePlan,
)
from spoutline.model.quantity import Dimension
from spoutline.model.requirement import Refusal, Requirement, RequirementId, RequirementLine, WayOut

if TYPE_CHECKING:
    from spoutline.explain.plan.why_set import PlaceReasons
    from spoutline.model.funnel import PlaceFunnel
    from spoutline.model.no_set import ConflictReasons, Demand, NoSetReasons, Trial
    from spoutline.model.substitute import Misfit, SlotChange
    from spoutline.model.survey import Position

_OUTCOME_MARKS = {Outcome.PASSES: "✓", Outcome.FAILS: "✗", Outcome.UNKNOWN: "?", Outcome.INFORMATION: "i"}


def mark_of(plan: PositionPlan) -> str:
    """Return the sign of a position's outcome, which reads without colour."""
    if plan.status is PlanStatus.NOT_DECIDED:
        return "?"
    return "✓" if plan.status is PlanStatus.FITS and plan.keeps_every_must else "✗"


@frozen
class Story(Words):
    """Makes sentences from results, given the phrases of one language and a display in one unit system.

    A sentence is made when it is shown; results never hold text. Nothing here computes: each figure shown is one that
    the result carries. One method for each kind of result keeps whoever shows it to a single object.
    """

    # outcomes and parts

    def verdict(self, plan: PositionPlan) -> str:
        """Return the outcome of a position, with how many lines of good practice its set leaves open.

        A set that was agreed or built is shown even where it breaks a must of today; it is never said to fit.
        """
        broken = plan.status is PlanStatus.FITS and not plan.keeps_every_must
        outcome = self.phrases.text["set_breaks_must"] if broken else self.word(plan.status)
        return self.writing.listed((outcome, *self.good_practice(plan)))

    def good_practice(self, plan: PositionPlan) -> tuple[str, ...]:
        """Return how many lines of good practice the chosen set does not meet, and how many cannot be shown."""
        counts = {"shoulds_not_met": plan.shoulds_not_met, "shoulds_not_shown": plan.shoulds_not_shown}
        return tuple(self.phrases.fill(key, count=count) for key, count in counts.items() if count)

    def still_to_save(self, site_plan: SitePlan) -> str:
        """Return that better sets chosen together may have been missed, and what they save at most; empty for none."""
        if not site_plan.still_to_save_minor:
            return ""
        amount = self.money(site_plan.still_to_save_minor, site_plan.survey.site.currency)
        return self.phrases.fill("terminal_left_open", amount=amount)

    def marked_verdict(self, plan: PositionPlan) -> str:
        """Return the outcome of a position with a mark that reads without colour."""
        return f"{mark_of(plan)} {self.verdict(plan)}"

    def marked_outcome(self, check: Check) -> str:
        """Return the outcome of a check with a mark that reads without colour; it says where its limit is recalled."""
        return f"{_OUTCOME_MARKS[check.outcome]} {verdict_text(self.word(check.outcome), self._check_footing(check))}"

    def part_data(self, part: Part) -> tuple[Named, ...]:
        """Return everything that the catalogue states about a part, as labelled texts."""
        return part_data(part, self)

    # what is asked, and what was found

    def requirement_line(self, line: RequirementLine) -> LineText:
        """Return a derived line: title, answer in one sentence, the reason, who asks it."""
        return LineText(
            title=self.title(line.id),
            answer=asked_sentence(line, self),
            reason=f"{self.phrases.rule(line.rule_id).says}.",
            severity=line.severity,
            severity_word=self.word(line.severity),
            source=self.source_told(line.source),
        )

    def finding(self, finding: Finding) -> FindingText:
        """Return a finding as title, sentence with its figures in parentheses, subject and source."""
        return finding_text(finding, self)

    def by_severity(self, findings: tuple[Finding, ...]) -> tuple[FindingText, ...]:
        """Return findings in words, the gravest first, otherwise in the order given."""
        return by_severity(findings, self)

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
            facts=tuple(self.sentence(self.fact(fact)) for fact in check.facts),
            remark=check_remark(check, self),
            footing=self._check_footing(check),
        )

    def _check_footing(self, check: Check) -> str:
        return self.phrases.text["recalled_limit"] if rests_on_memory(check) else ""

    def footing(self, requirement: Requirement) -> str:
        """Return how many limits of a position were read, reported and recalled, and how many are practice."""
        counts = {status.name.lower(): count for status, count in requirement.footing.items()}
        return self.phrases.fill("footing", **counts)

    def worked_line(self, line: WorkedLine) -> WorkedText:
        """Return one worked line: formula, ``with`` its inputs, the result, source and note."""
        inputs = ", ".join(f"{self.symbol(item.name)} = {self.display.show_quantity(item)}" for item in line.inputs)
        return WorkedText(
            formula=formula_text(line.formula),
            inputs=f"{self.phrases.text['with_inputs']} {inputs}" if inputs else "",
            result=f"{self.symbol(line.result.name)} = {self.display.show_quantity(line.result)}",
            source=self.source_told(line.source),
            note=formula_text(self.phrases.tell(line.note)),
        )

    def symbol(self, name: str) -> str:
        """Return the symbol of a quantity.

        One that is named by a place of the chain reads as that place; one of a component of the liquid, such as
        ``rho diesel_2d``, names that component as the trade does.
        """
        place = self.phrases.words["Slot"].get(name.replace(" ", "_"))
        if place is not None:
            return place
        letter, _, of = name.rpartition(" ")
        component = self.phrases.words["Component"].get(of) if letter else None
        return symbol_text(name) if component is None else f"{symbol_text(letter)} ({component})"

    def limit_title(self, limit: Limit) -> str:
        """Return what a limit row is about."""
        return self.phrases.tell(limit.title)

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
            return self.writing.listed(self._case(item) for item in value)
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
        return self.cited(", ".join(item for item in (limit.source, limit.clause, limit.edition) if item))

    def limit_note(self, limit: Limit) -> str:
        """Return the note beside a limit row; one that a keeper typed stays as it was typed."""
        return self.phrases.tell(limit.note)

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

    def conflict(self, conflict: Conflict, *, ways_may_come: bool = False) -> tuple[str, ...]:
        """Return why no set exists, in ordered sentences; the relaxations are told apart.

        With ``ways_may_come`` more of these are still looked for.
        """
        return reasons.conflict_sentences(conflict, self, ways_may_come=ways_may_come)

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

    def place_reasons(self, place: PlaceFunnel, currency: str) -> PlaceReasons:
        """Return why a part hangs in its place: counts that add up, then what decided between the last ones."""
        from spoutline.explain.plan.why_set import place_reasons  # asked for by few

        return place_reasons(place, currency, self)

    def conflict_reason(self, conflict: ConflictReasons) -> Reason:
        """Return a conflict with what stands behind it, sentences under sentences."""
        return conflict_reason(conflict, self)

    def obstacle(self, demands: tuple[Demand, ...]) -> str:
        """Return that demands cannot be had, or not together."""
        return obstacle_sentence(demands, self)

    def trial(self, trial: Trial, position: Position) -> TrialText:
        """Return what giving something up means for a position, what it frees, and at what price."""
        return trial_text(trial, position, self)

    def no_set_closing(self, found: NoSetReasons) -> tuple[str, ...]:
        """Return what else would free a set, and whether all of it was found."""
        return closing_sentences(found, self)

    def slot_change(self, change: SlotChange) -> str:
        """Return what goes and what comes in one place of a set."""
        return reasons.change_text(change, self)

    def line_names(self, requirements: tuple[RequirementId, ...]) -> str:
        """Return the names of requirement lines as one text, each once, with the number of times where it is more."""
        return reasons.counted_names(requirements, self)

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
        """Return why a consumable or fitting goes with a set; nothing for a reason that this version does not know.

        Agreed sets in a file or an older book name reasons as they were then.
        """
        return self.phrases.words["AccessoryReason"].get(reason, "")
