"""Why there is no set, what would free one, why a part does not serve, how another set differs: ordered sentences."""

from __future__ import annotations

from collections import Counter
from collections.abc import Iterator
from typing import TYPE_CHECKING

from spoutline.explain.plan.findings import by_severity, finding_text
from spoutline.explain.plan.words import Words
from spoutline.model.finding import Finding, Verdict
from spoutline.model.part_ref import told_apart
from spoutline.model.plan import Alternative, Conflict, Exclusion, HangingSet, PartVerdict, Relaxation
from spoutline.model.requirement import Refusal, RefusalStatus, RequirementId
from spoutline.rules.declared.rule_ids import RuleId

if TYPE_CHECKING:
    from spoutline.model.substitute import Misfit, SlotChange


def refusal_sentences(refusal: Refusal, words: Words) -> tuple[str, ...]:
    """Return why no requirement can be derived; the ways out are told apart."""
    key = "undecided_opening" if refusal.status is RefusalStatus.NOT_DECIDED else "refusal_opening"
    opening = words.phrases.fill(key, status=words.word(refusal.status))
    return (opening, *(text.sentence for text in by_severity(refusal.findings, words)))


def conflict_sentences(conflict: Conflict, words: Words, *, ways_may_come: bool = False) -> tuple[str, ...]:
    """Return why no set exists; the relaxations are told apart, more of which may still be looked for."""
    names = requirement_names(conflict.requirements, words)
    key = "conflict_single" if len(conflict.requirements) == 1 else "conflict_together"
    sentences = [words.phrases.text["conflict_opening"]]
    sentences.extend(pinned_sentences(conflict, words))
    if conflict.requirements:
        sentences.append(words.phrases.fill(key, requirements=names))
    sentences.extend(exclusion_sentence(exclusion, words) for exclusion in conflict.exclusions)
    if not conflict.relaxations and not ways_may_come:
        sentences.append(words.phrases.text["conflict_no_relaxation"])
    return tuple(sentences)


def pinned_sentences(conflict: Conflict, words: Words) -> Iterator[str]:
    """Yield of each part that a person asked for the rule that it breaks, or what shuts it out."""
    if conflict.pinned and not any(one.findings or one.lines or not one.slots for one in conflict.pinned):
        numbers = ", ".join(told_apart(one.part.ref for one in conflict.pinned))
        key = "pinned_together" if len(conflict.pinned) > 1 else "pinned_no_set"
        yield words.phrases.fill(key, numbers=numbers)
        return
    for one in conflict.pinned:
        part = words.part(one.part)
        if not one.slots:
            yield words.phrases.fill("verdict_no_slot", part=part, kind=words.word(one.part.kind))
        elif one.lines:
            yield words.phrases.fill("pinned_lines", part=part, requirements=requirement_names(one.lines, words))
        elif one.findings:
            yield words.phrases.fill(_broken_key(one.findings), part=part, count=len(one.findings))
            yield from _broken_sentences(one.findings, words)


def exclusion_sentence(exclusion: Exclusion, words: Words) -> str:
    """Return how many parts of a slot a requirement line excludes, and the cheapest that only it excludes."""
    sentence = words.phrases.fill(
        "conflict_slot_one" if exclusion.excluded == 1 else "conflict_slot_many",
        slot=words.title(exclusion.slot),
        requirement=words.word(exclusion.requirement),
        count=exclusion.excluded,
        title=words.inside(words.phrases.rule(exclusion.rule_id).says),
    )
    if not exclusion.nearest:
        return sentence
    # at the outlet nothing fits at all, and the parts named are those whose ports come nearest
    key = "conflict_nearest" if exclusion.requirement is RequirementId.JOINTS else "conflict_only"
    return f"{sentence} {words.phrases.fill(key, numbers=', '.join(told_apart(exclusion.nearest)))}"


def relaxation_sentence(relaxation: Relaxation, currency: str, words: Words) -> str:
    """Return the smallest change that frees a set, and what that set costs."""
    requirement = words.sentence(requirement_names((relaxation.requirement, *relaxation.also), words))
    if relaxation.successions:
        change = " ".join(
            words.phrases.fill("relaxation_successor", before=before, now=now)
            for before, now in (told_apart((one.before, one.now)) for one in relaxation.successions)
        )
    elif relaxation.from_value is None or relaxation.to_value is None or relaxation.dimension is None:
        change = words.phrases.fill("relaxation_whole", requirement=requirement)
    else:
        change = words.phrases.fill(
            "relaxation_value",
            requirement=requirement,
            from_value=words.show(relaxation.from_value, relaxation.dimension),
            to_value=words.show(relaxation.to_value, relaxation.dimension),
        )
    numbers = ", ".join(told_apart(relaxation.parts))
    if relaxation.price_minor is not None:
        price = words.money(relaxation.price_minor, currency)
        return f"{change} {words.phrases.fill('relaxation_price', price=price, numbers=numbers)}"
    return f"{change} {words.phrases.fill('relaxation_numbers', numbers=numbers)}" if numbers else change


def alternative_sentence(alternative: Alternative, chosen: HangingSet, words: Words) -> str:
    """Return in what way an alternative differs from ``chosen``: kind, price, other parts."""
    difference = alternative.price_difference_minor
    currency = alternative.judged.hanging_set.currency
    if difference == 0:
        price = words.phrases.text["alternative_same"]
    else:
        key = "alternative_dearer" if difference > 0 else "alternative_cheaper"
        price = words.phrases.fill(key, difference=words.money(abs(difference), currency))
    others = words.other_parts(alternative.judged, chosen)
    text = f"{words.title(alternative.kind)}{words.writing.colon} {price}"
    return (
        words.writing.listed((text, words.phrases.fill("alternative_other_parts", numbers=", ".join(others))))
        if others
        else text
    )


def part_verdict_sentences(verdict: PartVerdict, words: Words) -> tuple[str, ...]:
    """Return the answer to *why not?*, one sentence for each broken rule."""
    part = words.part(verdict.part)
    broken = tuple(item for item in verdict.findings if item.verdict in (Verdict.BROKEN, Verdict.QUESTION))
    texts = by_severity(broken, words)
    if not verdict.slots:
        opening = words.phrases.fill("verdict_no_slot", part=part, kind=words.word(verdict.part.kind))
        return (opening, *(text.sentence for text in texts))
    if verdict.in_chosen_set:
        return (words.phrases.fill("verdict_in_set", part=part), *(text.sentence for text in texts))
    if broken:
        opening = words.phrases.fill(_broken_key(broken), part=part, count=len(broken))
        return (opening, *_broken_sentences(broken, words))
    return _serving(part, verdict, words)


def _broken_key(broken: tuple[Finding, ...]) -> str:
    return "verdict_broken_one" if len(broken) == 1 else "verdict_broken_many"


def _broken_sentences(broken: tuple[Finding, ...], words: Words) -> Iterator[str]:
    """Yield each broken rule with its weight and its source, the gravest first."""
    for text in by_severity(broken, words):
        yield f"{words.sentence(text.severity_word)}{words.writing.colon} {text.sentence} ({text.source})"


def misfit_sentence(misfit: Misfit, words: Words) -> str:
    """Return the first reason why a part could not hang in a place."""
    if misfit.finding is not None:
        return finding_text(misfit.finding, words).sentence
    if not misfit.lines:
        return words.phrases.text["misfit_checks"]
    key = "misfit_line" if len(misfit.lines) == 1 else "misfit_lines"
    return words.phrases.fill(key, requirements=requirement_names(misfit.lines, words))


def change_text(change: SlotChange, words: Words) -> str:
    """Return what goes and what comes in one place of a set."""
    slot = words.title(change.slot)
    if change.taken_out is None and change.put_in is not None:
        return words.phrases.fill("change_added", slot=slot, part=change.put_in.number)
    if change.put_in is None and change.taken_out is not None:
        return words.phrases.fill("change_left_out", slot=slot, part=change.taken_out.number)
    if change.taken_out is None or change.put_in is None:
        return ""
    before, after = told_apart((change.taken_out.ref, change.put_in.ref))
    return words.phrases.fill("change_exchanged", slot=slot, before=before, after=after)


def counted_names(requirements: tuple[RequirementId, ...], words: Words) -> str:
    """Return the names of requirement lines as one text, each once, with the number of times where there are more."""
    counts = Counter(requirements)
    return ", ".join(
        words.word(line) if count == 1 else words.phrases.fill("counted_line", line=words.word(line), count=count)
        for line, count in counts.items()
    )


def requirement_names(requirements: tuple[RequirementId, ...], words: Words) -> str:
    """Return the names of requirement lines as one text."""
    return ", ".join(words.word(requirement) for requirement in requirements)


def _serving(part: str, verdict: PartVerdict, words: Words) -> tuple[str, ...]:
    """Return how a part that breaks no rule could serve, or why no set holds it."""
    best, left_open = verdict.best_set_with_it, tuple(finding_text(one, words).sentence for one in verdict.left_open)
    if best is None and any(one.rule_id is RuleId.SETS_NOT_DECIDED for one in verdict.left_open):
        return (words.phrases.fill("verdict_not_decided", part=part), *left_open)
    if best is None:
        opening = words.phrases.fill("verdict_fits_no_set", part=part)
        return (opening, *(conflict_sentences(verdict.conflict, words)[1:] if verdict.conflict else left_open))
    price = words.money(best.price_minor, best.currency)
    opening = words.phrases.fill("verdict_fits", part=part, price=price, numbers=", ".join(told_apart(best.refs)))
    return (opening, *(left_open or (words.phrases.text["verdict_fits_not_chosen"],)))
