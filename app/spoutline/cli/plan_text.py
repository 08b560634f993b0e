"""A site plan as plain text for a terminal: what is asked, what was chosen, what was found, what was checked."""

from __future__ import annotations

import textwrap
from collections.abc import Iterable, Iterator, Sequence

from spoutline.cli.answer import printable
from spoutline.cli.sources import SourceNotes
from spoutline.documents.content.grouping import like_positions
from spoutline.explain.phrases.paper_words import PaperWord
from spoutline.explain.plan.assumed import origin_sentences, own_findings, station_lines
from spoutline.explain.plan.story import Story
from spoutline.model.check import Outcome
from spoutline.model.finding import Finding, Severity, SubjectKind, Verdict
from spoutline.model.part import Part
from spoutline.model.part_ref import PartRef, told_apart
from spoutline.model.plan import JudgedSet, PositionPlan, SitePlan
from spoutline.model.requirement import RequirementLine

_WIDTH = 110
_INDENT = "    "


def site_text(site_plan: SitePlan, story: Story, namesakes: tuple[PartRef, ...] = ()) -> str:
    """Return the plan of a whole site as text that ends with a line break.

    A part is told by its maker too where another one of the site or of ``namesakes`` has its number.
    """
    lines = list(_SiteText(site_plan, story, namesakes).lines())
    return "\n".join(printable(line).rstrip() for line in lines) + "\n"


class _SiteText:
    """Tells one site plan; sources are numbered across all its positions."""

    def __init__(self, site_plan: SitePlan, story: Story, namesakes: tuple[PartRef, ...]) -> None:
        self.site_plan = site_plan
        self.known = (*site_plan.refs, *namesakes)
        self.story = story
        self.currency = site_plan.survey.site.currency
        self.notes = SourceNotes()
        self.text = story.phrases.text

    def lines(self) -> Iterator[str]:
        jurisdiction = self.site_plan.jurisdiction
        yield self.site_plan.survey.site.name
        phrases, title = self.story.phrases, self.story.phrases.tell(jurisdiction.title)
        yield phrases.fill("terminal_jurisdiction", title=title, id=jurisdiction.id, edition=jurisdiction.edition)
        yield phrases.fill(
            "terminal_catalogue", edition=self.story.edition(self.site_plan.provenance.catalogue_edition)
        )
        yield from self.positions()
        yield from ("", self.text["terminal_sum"], *self.sum())
        assumed = station_lines(self.site_plan.positions, self.story)
        told = (f"{one.text} {self.notes.mark(self.story.source_told(one.finding.source))}" for one in assumed)
        questions = (*told, *map(phrases.tell, jurisdiction.questions))
        yield from ("", self.text["terminal_ask_before"], *_bullets(questions)) if questions else ()
        yield from ("", self.text["terminal_sources"], *self.notes.lines(_WIDTH))
        yield from ("", *_wrapped(self.text["advice"], ""))

    def positions(self) -> Iterator[str]:
        """Yield every position in survey order; one that asks and gets the same as an earlier one refers to it."""
        told_at = {
            position.label: like.plan.position.label
            for like in like_positions(self.site_plan.positions)
            for position in like.positions[1:]
        }
        referred = False
        for plan in self.site_plan.positions:
            first = told_at.get(plan.position.label)
            if first is None or not referred:
                yield ""
            referred = first is not None
            yield from self.position(plan) if first is None else (self.head(plan, first),)

    def head(self, plan: PositionPlan, like: str = "") -> str:
        """Return the head of a position; ``like`` is the label of the one that asks and gets the same."""
        phrases = self.story.phrases
        place = phrases.fill("terminal_position", position=plan.position.label, dispenser=plan.position.dispenser)
        texts = (place, phrases.fill("terminal_as_position", position=like) if like else "", self.story.verdict(plan))
        return f"{self.story.writing.colon} ".join(text for text in texts if text)

    def sum(self) -> Iterator[str]:
        kept = [plan for plan in self.site_plan.positions if plan.keeps_every_must]
        total = sum(plan.chosen.hanging_set.price_minor for plan in kept if plan.chosen)
        count = len(self.site_plan.positions)
        key = "terminal_kept_one" if count == 1 else "terminal_kept_many"
        yield f"  {self.story.phrases.fill(key, kept=len(kept), count=count)}"
        if kept:
            price = self.story.money(total, self.currency)
            yield f"  {self.story.phrases.fill('terminal_sets_price', price=price)}"
        if left_open := self.story.still_to_save(self.site_plan):
            yield from _wrapped(left_open, "  ")

    def position(self, plan: PositionPlan) -> Iterator[str]:
        head = self.head(plan)
        yield head
        yield "=" * min(len(head), _WIDTH)
        for origin in origin_sentences(plan.position, self.story):
            yield from _wrapped(origin, "  ")
        if plan.refusal:
            yield from self.refusal(plan)
        if plan.conflict:
            yield from self.conflict(plan)
        if plan.requirement:
            yield f"  {self.text['terminal_asked']}"
            yield from _table([self.line(line) for line in plan.requirement.lines])
            footing = self.story.footing(plan.requirement)
            yield from _wrapped(self.story.phrases.fill("terminal_limits", footing=footing), _INDENT)
        if plan.chosen:
            yield from self.chosen(plan, plan.chosen)
        yield from self.findings(own_findings(plan.findings))
        if plan.chosen and plan.chosen.checks:
            yield from (f"  {self.story.word(PaperWord.CHECKS)}", *self.checks(plan.chosen))
        if plan.chosen and plan.alternatives:
            yield f"  {self.story.word(PaperWord.ALTERNATIVES)}"
            told = (self.story.alternative(item, plan.chosen.hanging_set) for item in plan.alternatives)
            yield from _bullets(told)

    def line(self, line: RequirementLine) -> tuple[str, ...]:
        text = self.story.requirement_line(line)
        return text.severity_word, text.title, f"{text.answer} {self.notes.mark(text.source)}"

    def refusal(self, plan: PositionPlan) -> Iterator[str]:
        if plan.refusal is None:
            return
        for sentence in self.story.refusal(plan.refusal)[:1]:
            yield from _wrapped(sentence, "  ")
        if plan.refusal.ways_out:
            yield f"  {self.story.word(PaperWord.WAYS_OUT)}"
            yield from _bullets(_capital(self.story.way_out(way)) for way in plan.refusal.ways_out)

    def conflict(self, plan: PositionPlan) -> Iterator[str]:
        if plan.conflict is None:
            return
        yield f"  {self.text['terminal_why_nothing']}"
        for sentence in self.story.conflict(plan.conflict):
            yield from _wrapped(sentence, _INDENT)
        if plan.conflict.relaxations:
            yield f"  {self.text['terminal_would_free']}"
            yield from _bullets(self.story.relaxation(item, self.currency) for item in plan.conflict.relaxations)

    def number(self, part: Part) -> str:
        return told_apart((part.ref,), self.known)[0]

    def chosen(self, plan: PositionPlan, chosen: JudgedSet) -> Iterator[str]:
        story = self.story
        yield f"  {self.text['terminal_chosen']}"
        yield from _table(
            [
                (
                    story.title(link.slot),
                    self.number(link.part),
                    story.word(PaperWord.STAYS)
                    if link.kept
                    else story.money(link.price_minor(self.currency), self.currency),
                    "" if link.kept else story.days(link.part.lead_time_days),
                    story.part_name(link.part),
                )
                for link in chosen.hanging_set.links
            ]
        )
        price = story.money(chosen.hanging_set.price_minor, self.currency)
        yield f"{_INDENT}{story.phrases.fill('terminal_set_price', price=price)}"
        if plan.accessories:
            yield f"  {self.text['terminal_goes_with']}"
            yield from _table(
                [
                    (
                        f"{line.quantity} x",
                        self.number(line.part),
                        story.part_name(line.part),
                        story.accessory_reason(line.reason),
                    )
                    for line in plan.accessories
                ]
            )

    def checks(self, chosen: JudgedSet) -> Iterator[str]:
        rows, remarks = [], []
        for check in chosen.checks:
            text = self.story.check(check)
            # a check that asks for nothing weighs nothing
            severity = "" if check.outcome is Outcome.INFORMATION else text.severity_word
            margin = self.story.phrases.fill("terminal_margin", margin=text.margin) if text.margin else ""
            marks = " ".join(self.notes.mark(source) for source in text.sources)
            rows.append((text.verdict, severity, text.title, text.value, text.limit, margin, marks))
            if text.remark:
                remarks.append(f"{text.title}{self.story.writing.colon} {text.remark}")
        yield from _table(rows)
        for remark in remarks:
            yield from _wrapped(remark, _INDENT)

    def findings(self, findings: Sequence[Finding]) -> Iterator[str]:
        told = [finding for finding in findings if finding.verdict is not Verdict.HOLDS]
        if not told:
            return
        yield f"  {self.story.word(PaperWord.FINDINGS)}"
        for finding in sorted(told, key=lambda finding: list(Severity).index(finding.severity)):
            text = self.story.finding(finding)
            about = "" if finding.subject_kind is SubjectKind.POSITION else f" ({text.subject})"
            yield from _bullets(
                [
                    f"{text.severity_word}, {text.verdict_word}: {text.sentence.rstrip('.')}{about}. "
                    f"{self.notes.mark(text.source)}"
                ]
            )


def _table(rows: Sequence[tuple[str, ...]]) -> Iterator[str]:
    """Yield rows with their columns aligned; the last column wraps under itself."""
    if not rows:
        return
    widths = [max(len(row[column]) for row in rows) for column in range(len(rows[0]) - 1)]
    for row in rows:
        lead = _INDENT + "".join(f"{cell:<{width}}  " for cell, width in zip(row, widths, strict=False))
        first, *more = textwrap.wrap(row[-1], max(_WIDTH - len(lead), 40), break_on_hyphens=False) or [""]
        yield lead + first
        for line in more:
            yield " " * len(lead) + line


def _bullets(texts: Iterable[str]) -> Iterator[str]:
    for text in texts:
        yield from _wrapped(f"- {text}", _INDENT)


def _wrapped(text: str, indent: str) -> Iterator[str]:
    hanging = indent + ("  " if text.startswith("- ") else "")
    yield from textwrap.wrap(
        text, _WIDTH, initial_indent=indent, subsequent_indent=hanging, break_on_hyphens=False
    ) or [indent]


def _capital(text: str) -> str:
    return text[:1].upper() + text[1:]
