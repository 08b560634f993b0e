"""What another answer does, in words: the answer itself, what becomes of sets, parts, checks and money."""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from dataclasses import replace
from enum import StrEnum

from spoutline.explain.phrases.paper_words import PaperWord
from spoutline.explain.phrases.what_if_words import WhatIfWord as Word
from spoutline.explain.plan.agreed_words import broken_musts
from spoutline.explain.plan.story import Story
from spoutline.frozen import frozen
from spoutline.model.catalogue_edition import EditionRef
from spoutline.model.check import Check
from spoutline.model.limit import Jurisdiction
from spoutline.model.liquid import Liquid, LiquidFamily
from spoutline.model.part import Part
from spoutline.model.part_ref import told_apart
from spoutline.model.plan import PositionPlan
from spoutline.model.survey import Outlet, SurveyLiquid
from spoutline.model.what_if import (
    CheckChange,
    PartChange,
    PartCount,
    PartFate,
    WhatIf,
    WhatIfEffect,
    WhatIfPosition,
    WhatIfResult,
)

NOTHING = "–"
_BREAKING = frozenset(
    {WhatIfEffect.MUST_CHANGE, WhatIfEffect.LOSES_SET, WhatIfEffect.OTHER_LASTS, WhatIfEffect.NONE_LASTS}
)


@frozen
class SideBySide:
    """One row: what is compared, today, then, and what is to be said of it."""

    name: str
    today: str
    then: str
    remark: str = ""


def value_text(asked: WhatIf, jurisdiction: Jurisdiction, story: Story) -> str:
    """Return the other answer in words; ``jurisdiction`` is the one planned under."""
    value = asked.value
    if isinstance(value, SurveyLiquid):
        return story.liquid(Liquid(value.family, value.blend_percent))
    if isinstance(value, Outlet):
        return f"{value.size} {value.thread} {story.word(value.gender)}"
    if isinstance(value, EditionRef):
        return str(value)
    if isinstance(value, StrEnum):
        return story.word(value)
    return f"{story.phrases.tell(jurisdiction.title)} ({value})" if value == jurisdiction.id else str(value)


def answer_written(asked: WhatIf) -> str:
    """Return the other answer as it is written on the command line."""
    if isinstance(asked.value, SurveyLiquid):
        return f"{'E' if asked.value.family is LiquidFamily.GASOLINE else 'B'}{asked.value.blend_percent:g}"
    if isinstance(asked.value, Outlet):
        return f"{asked.value.size} {asked.value.thread} {asked.value.gender}"
    return str(asked.value)


def short_text(asked: WhatIf, jurisdiction: Jurisdiction, story: Story) -> str:
    """Return the other answer as the title of a column: a blend as fuel labels name it, all else in words."""
    if isinstance(asked.value, SurveyLiquid):
        return answer_written(asked)
    if asked.value == jurisdiction.id:
        return story.phrases.tell(jurisdiction.title)
    return value_text(asked, jurisdiction, story)


def title_text(result: WhatIfResult, story: Story) -> str:
    """Return what the result tells of, with question and answer."""
    return f"{story.word(Word.TITLE_LASTING if result.asked.lasting else Word.TITLE)} · {asked_text(result, story)}"


def then_word(result: WhatIfResult, story: Story) -> str:
    """Return what the other set is called: of then, or the lasting one of today."""
    return story.word(Word.LASTING if result.asked.lasting else Word.THEN)


def price_then_word(result: WhatIfResult, story: Story) -> str:
    """Return what the price of the other set is called."""
    return story.word(Word.PRICE_LASTING if result.asked.lasting else Word.PRICE_THEN)


def asked_text(result: WhatIfResult, story: Story) -> str:
    """Return question and other answer as one line."""
    value = value_text(result.asked, result.jurisdiction, story)
    return f"{story.title(result.asked.question)}{story.writing.colon} {value}"


def scope_text(result: WhatIfResult, story: Story) -> str:
    """Return which positions were looked at."""
    return ", ".join(result.asked.labels) or story.word(Word.WHOLE_STATION)


def summary_text(result: WhatIfResult, story: Story) -> str:
    """Return how many positions come to what, the gravest first."""
    counts = ((effect, result.count(effect)) for effect in WhatIfEffect)
    told = "; ".join(f"{count} × {story.word(effect)}" for effect, count in counts if count)
    return f"{story.word(PaperWord.POSITIONS)}{story.writing.colon} {told}." if told else ""


def notes(result: WhatIfResult, story: Story) -> Iterator[str]:
    """Yield what is to be said below the sums."""
    totals = result.totals
    if totals.lost_minor or totals.gained_minor:
        lost, gained = (story.money(one, result.currency) for one in (totals.lost_minor, totals.gained_minor))
        yield story.word(Word.LOST_AND_GAINED).format(lost=lost, gained=gained)
    if result.asked.lasting:
        yield story.word(Word.LASTING_NOTE)
    if result.untouched:
        yield story.word(Word.UNTOUCHED).format(count=result.untouched)


def set_text(plan: PositionPlan, story: Story) -> str:
    """Return the part numbers of a set, dispenser first; those of equal number with their maker."""
    if plan.chosen is None:
        return story.word(Word.NO_SET)
    return " – ".join(told_apart(plan.chosen.hanging_set.refs))


def price_text(minor: int | None, currency: str, story: Story) -> str:
    """Return the price of a set; a dash without one."""
    return NOTHING if minor is None else story.money(minor, currency)


def difference_text(minor: int | None, currency: str, story: Story) -> str:
    """Return a difference with its sign; a dash where there is none to tell."""
    return NOTHING if minor is None else story.signed_money(minor, currency)


def part_rows(position: WhatIfPosition, story: Story) -> Iterator[SideBySide]:
    """Yield the places of both chains with what becomes of the part of today."""
    for one in position.parts:
        refs = tuple(part.ref for part in (one.before, one.after) if part is not None)
        named = dict(zip(refs, told_apart(refs), strict=True))
        today, then = (NOTHING if part is None else named[part.ref] for part in (one.before, one.after))
        yield SideBySide(story.title(one.slot), today, then, _fate_text(one, story))


def _fate_text(change: PartChange, story: Story) -> str:
    fate = story.word(change.fate)
    if change.fate is not PartFate.MUST_GO:
        return fate
    told = (story.inside(story.finding(one).sentence.rstrip(".")) for one in change.findings)
    return f"{fate}{story.writing.colon} {'; '.join(told)}"


def check_rows(position: WhatIfPosition, story: Story) -> Iterator[SideBySide]:
    """Yield the checks that differ, those with another verdict first."""
    for one in sorted(position.checks, key=lambda change: not change.changes_outcome):
        check = one.after or one.before
        if check is not None:
            yield SideBySide(
                _check_name(one, check, story), *(_check_text(side, story) for side in (one.before, one.after))
            )


def _check_name(change: CheckChange, check: Check, story: Story) -> str:
    return f"◆ {story.check(check).title}" if change.changes_outcome else story.check(check).title


def _check_text(check: Check | None, story: Story) -> str:
    if check is None:
        return NOTHING
    told = story.check(check)
    return f"{told.value}, {told.limit} ({told.outcome_word})" if told.limit else f"{told.value} ({told.outcome_word})"


def checks_title(position: WhatIfPosition, story: Story) -> str:
    """Return what the checks are of: both sets or, where none is found, the set of today by both answers."""
    only_held = position.after.chosen is None and position.held is not None
    return story.word(Word.CHECKS_HELD if only_held else Word.CHECKS)


def broken_as_a_whole(position: WhatIfPosition, story: Story) -> tuple[str, ...]:
    """Return the musts that the set of today breaks as a whole by the other answer, each as a sentence.

    What a part breaks by itself is told with the part.
    """
    held = position.held
    if held is None or held.chosen is None or position.effect not in _BREAKING:
        return ()
    told = {finding for part in position.parts for finding in part.findings}
    others = tuple(one for one in held.chosen.findings if one not in told)
    whole = replace(held, chosen=replace(held.chosen, findings=others))
    return tuple(dict.fromkeys(broken_musts(whole, story, named=True)))


def no_set_reasons(position: WhatIfPosition, story: Story) -> tuple[str, ...]:
    """Return why there is no set under the other answer; nothing where there is one."""
    after = position.after
    if after.refusal is not None:
        return story.refusal(after.refusal)
    return story.conflict(after.conflict) if after.conflict is not None else ()


def practice_sentences(position: WhatIfPosition, story: Story) -> Iterator[str]:
    """Yield which lines of good practice are given up or kept in addition."""
    for word, lines in ((Word.GIVEN_UP, position.given_up), (Word.KEPT, position.kept)):
        if lines:
            yield story.word(word).format(lines=story.line_names(lines))


def counted_part(one: PartCount, currency: str, story: Story) -> tuple[str, str, str]:
    """Return quantity, part and price of one piece."""
    return str(one.quantity), _named(one.part, story), story.money(one.part.price_minor(currency), currency)


def _named(part: Part, story: Story) -> str:
    return f"{part.maker} {story.part(part)}"


def labels_text(group: Sequence[WhatIfPosition]) -> str:
    """Return the labels of positions of which the same is told."""
    return ", ".join(one.label for one in group)
