"""What is to be said of the agreed set of a position today."""

from __future__ import annotations

from spoutline.explain.plan.story import Story
from spoutline.model.agreed_sets import AgreedSets, AgreedStanding, AgreementKind, EntryKind
from spoutline.model.conversion_answers import OptionKind
from spoutline.model.finding import Severity, Verdict
from spoutline.model.plan import PositionPlan


def standing_sentence(standing: AgreedStanding, story: Story) -> str:
    """Return where an agreed set stands, as a sentence."""
    return story.phrases.text[f"standing_{standing.value}"]


def standing_short(standing: AgreedStanding, story: Story) -> str:
    """Return where an agreed set stands in a few words, for a list of positions."""
    return story.phrases.text[f"standing_short_{standing.value}"]


def entry_word(entry: AgreedSets, story: Story) -> str:
    """Return what an entry of the history does."""
    return story.phrases.text[f"entry_{entry.entry.value}"]


def entry_source(entry: AgreedSets, story: Story) -> str:
    """Return what chose the sets of an entry; empty where it takes the one before back."""
    if entry.entry is EntryKind.WITHDRAWN:
        return ""
    origin, phrases = entry.origin, story.phrases
    if origin.quotation is not None:
        quoted = origin.quotation
        return phrases.fill(
            "entry_quotation",
            number=quoted.number,
            revision=quoted.revision,
            option=quoted.option,
            title=quoted.title,
        )
    if origin.kind is AgreementKind.CONVERSION:
        return phrases.fill("entry_conversion", way=_way(origin.way, story))
    return phrases.text["entry_station" if origin.kind is AgreementKind.STATION else "entry_person"]


def _way(way: str, story: Story) -> str:
    """Return a way of conversion in words; one that no longer is one, as it was written."""
    return story.word(OptionKind(way)) if way in set(OptionKind) else way.replace("_", " ")


def broken_musts(plan: PositionPlan, story: Story, *, named: bool = False) -> tuple[str, ...]:
    """Return every must that a set breaks, by a rule or by a check, each as a sentence; a refusal as its sentences.

    ``named`` puts the part or joint before the sentence of a rule.
    """
    if plan.refusal is not None:
        return story.refusal(plan.refusal)
    broken = [
        f"{story.finding(one).subject}{story.writing.colon} {story.finding(one).sentence}"
        if named
        else story.finding(one).sentence
        for one in plan.findings
        if one.severity is Severity.MUST and one.verdict is Verdict.BROKEN
    ]
    checks = plan.chosen.checks if plan.chosen else ()
    cells = [story.check(one) for one in checks if one.severity is Severity.MUST and not one.passes]
    broken += [f"{one.title}{story.writing.colon} {one.value}, {one.limit} ({one.outcome_word})" for one in cells]
    return tuple(broken)
