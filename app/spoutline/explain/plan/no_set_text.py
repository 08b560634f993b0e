"""Why a position has no set, as a colleague would explain it: sentences under sentences, with the numbers."""

from __future__ import annotations

from collections.abc import Iterable, Iterator

from spoutline.explain.plan.findings import finding_text
from spoutline.explain.plan.words import Words
from spoutline.frozen import frozen
from spoutline.model.finding import Finding
from spoutline.model.liquid import Liquid
from spoutline.model.no_set import (
    Concession,
    ConflictReasons,
    Demand,
    DemandKind,
    FigureReason,
    NearPart,
    NoSetEnding,
    NoSetReasons,
    OtherAnswer,
    SlotReason,
    Trial,
)
from spoutline.model.part_ref import told_apart
from spoutline.model.quantity import Quantity
from spoutline.model.requirement import RequirementId
from spoutline.model.survey import Position, SurveyLiquid

_NEAR_OF_ONE, _NEAR_OF_MANY = 3, 1  # parts that came nearest told of a slot, where one slot is left empty, or several


@frozen
class Reason:
    """A sentence and what stands behind it."""

    text: str
    behind: tuple[Reason, ...] = ()


@frozen
class TrialText:
    """A way out: what is given up, what that means for people, the price, the set that it frees place by place."""

    text: str
    concession: str
    price: str
    parts: tuple[str, ...]


def conflict_reason(conflict: ConflictReasons, words: Words) -> Reason:
    """Return a conflict and what it leaves of the catalogue, slot by slot and figure by figure."""
    return Reason(obstacle_sentence(conflict.demands, words), tuple(_behind(conflict, words)))


def obstacle_sentence(demands: tuple[Demand, ...], words: Words) -> str:
    """Return that demands cannot be had, or not together."""
    key = "no_set_single" if len(demands) == 1 else "no_set_together"
    return words.phrases.fill(key, demands=demand_names(demands, words))


def trial_text(trial: Trial, position: Position, words: Words) -> TrialText:
    """Return a way out in words."""
    sentences = list(_given_up(trial, position, words))
    if trial.after is None:
        sentences.append(words.phrases.text["no_set_elsewhere"])
    freed = trial.freed
    return TrialText(
        text=" ".join(sentences),
        concession=words.word(trial.concession),
        price=words.money(freed.price_minor, freed.currency),
        parts=tuple(
            words.phrases.fill(
                "no_set_part",
                place=words.title(link.slot),
                part=words.part(link.part),
                price=words.money(link.price_minor(freed.currency), freed.currency),
            )
            for link in freed.links
        ),
    )


def closing_sentences(found: NoSetReasons, words: Words) -> tuple[str, ...]:
    """Return what else would help, and whether this is all."""
    text = words.phrases.text
    lacking = [words.phrases.fill("no_set_lacking", demands=demand_names(one, words)) for one in found.lacking]
    is_known = found.ending in (NoSetEnding.COMPLETE, NoSetEnding.ANSWERS) and not any(
        one.by_checks for one in found.conflicts
    )
    nothing = (text["no_set_no_way"],) if is_known and not found.trials else ()
    return (*nothing, *lacking, words.word(found.ending))


def demand_names(demands: Iterable[Demand], words: Words) -> str:
    """Return the names of demands as one text."""
    return ", ".join(_name(one, words) for one in demands)


def _name(demand: Demand, words: Words) -> str:
    if demand.line is not None:
        return words.word(demand.line)
    if demand.answer is not None:
        return words.word(demand.answer)
    key = "no_set_asked" if demand.kind is DemandKind.PINNED else "no_set_refused"
    return words.phrases.fill(key, part=str(demand.part))


def _behind(conflict: ConflictReasons, words: Words) -> Iterator[Reason]:
    yield from (Reason(_sentence(one, words)) for one in conflict.findings)
    yield from (_near(one, "no_set_itself", words) for one in conflict.asked_for)
    shown = _NEAR_OF_ONE if len(conflict.slots) == 1 else _NEAR_OF_MANY
    yield from (_slot(one, shown, words) for one in conflict.slots)
    yield from (Reason(_figure(one, words)) for one in conflict.figures)
    if conflict.is_gap:
        yield Reason(words.phrases.text["no_set_gap"])
    if conflict.by_checks:
        yield Reason(words.phrases.text["no_set_checks"])


def _slot(reason: SlotReason, shown: int, words: Words) -> Reason:
    slot, fill = words.title(reason.slot), words.phrases.fill
    if not reason.there:
        return Reason(fill("no_set_slot_empty", slot=slot))
    near = tuple(_near(one, "no_set_near", words) for one in reason.nearest[:shown])
    if any(line is RequirementId.JOINTS for line, _ in reason.broken):
        return Reason(fill("no_set_joints", slot=slot, there=reason.there), near)
    if reason.left:
        text = fill("no_set_slot_left", slot=slot, left=reason.left, there=reason.there)
    else:
        text = fill("no_set_slot", slot=slot, there=reason.there)
    counts = tuple(
        Reason(fill("no_set_line_one" if count == 1 else "no_set_line_many", count=count, line=words.word(line)))
        for line, count in reason.broken
        if len(reason.broken) > 1 or count < reason.there
    )
    return Reason(text, (*counts, *near))


def _near(near: NearPart, key: str, words: Words) -> Reason:
    missed = {one.name: one for one in near.misses}
    sentences = [Reason(_missed(one, missed.get(one.rule_id), words)) for one in near.findings]
    if near.others:
        others = "no_set_others_one" if near.others == 1 else "no_set_others_many"
        sentences.append(Reason(words.phrases.fill(others, count=near.others)))
    return Reason(words.phrases.fill(key, part=words.part(near.part)), tuple(sentences))


def _missed(finding: Finding, miss: Quantity | None, words: Words) -> str:
    sentence = _sentence(finding, words)
    if miss is None:
        return sentence
    return words.phrases.fill("no_set_missed", sentence=sentence, miss=words.show(miss.value, miss.dimension))


def _sentence(finding: Finding, words: Words) -> str:
    return finding_text(finding, words).sentence


def _figure(reason: FigureReason, words: Words) -> str:
    return words.phrases.fill(
        "no_set_figure",
        line=words.sentence(words.word(reason.line)),
        asked=words.show(reason.asked, reason.dimension),
        attained=words.show(reason.attained, reason.dimension),
        miss=words.show(abs(reason.asked - reason.attained), reason.dimension),
        numbers=", ".join(told_apart(reason.nearest.refs)),
    )


def _given_up(trial: Trial, position: Position, words: Words) -> Iterator[str]:
    if trial.successions:
        for one in trial.successions:
            before, now = told_apart((one.before, one.now))
            yield words.phrases.fill("relaxation_successor", before=before, now=now)
        return
    answers = {one.answer: one for one in trial.answers}
    for demand in trial.given_up:
        other = answers.get(demand.answer) if demand.answer is not None else None
        yield _answer(other, position, words) if other is not None else _demand(demand, trial, words)


def _answer(other: OtherAnswer, position: Position, words: Words) -> str:
    if other.liquid is not None:
        liquid, today = _liquid(other.liquid, words), _liquid(position.liquid, words)
        return words.phrases.fill("no_set_sell", liquid=liquid, today=today)
    if other.vapour is not None:
        wanted, today = words.word(other.vapour), words.word(position.vapour_wanted)
        return words.phrases.fill("no_set_recover", wanted=wanted, today=today)
    return words.phrases.fill("no_set_again", answer=words.word(other.answer))


def _demand(demand: Demand, trial: Trial, words: Words) -> str:
    fill = words.phrases.fill
    if demand.line is None:
        return fill("no_set_without" if demand.kind is DemandKind.PINNED else "no_set_allow", part=str(demand.part))
    line = words.sentence(words.word(demand.line))
    if demand.line is trial.line and trial.dimension is not None:
        asked, needed = (words.show(one, trial.dimension) for one in (trial.asked, trial.needed))
        if trial.line is RequirementId.LEAD_TIME:
            return fill("no_set_days", needed=needed, asked=asked)
        return fill("relaxation_value", requirement=line, from_value=asked, to_value=needed)
    if trial.after is not None and trial.concession in (Concession.WISH, Concession.LEAD_TIME):
        return fill("no_set_wish", line=line)
    return fill("relaxation_whole", requirement=line)


def _liquid(liquid: SurveyLiquid, words: Words) -> str:
    return words.liquid_in_sentence(Liquid(liquid.family, liquid.blend_percent))
