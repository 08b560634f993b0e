"""The line in the head of a paper that says which sets it shows."""

from __future__ import annotations

from collections.abc import Sequence

from spoutline.explain.plan.words import Words
from spoutline.model.agreed_sets import SetBasis, SetsFrom, SetsSource
from spoutline.model.plan import SitePlan


def sets_head(site_plan: SitePlan, words: Words, missing: Sequence[str] = ()) -> str:
    """Return which sets a plan shows, and which of its positions rest on something else.

    ``missing`` are positions that the plan leaves to their own.
    """
    others = [plan.position.label for plan in site_plan.positions if plan.basis is SetBasis.NOT_AGREED]
    return sets_text(site_plan.sets_from, [*others, *missing], words)


def sets_text(shown: SetsFrom, others: Sequence[str], words: Words) -> str:
    """Return where sets are from; ``others`` are the labels of positions that are planned, not agreed."""
    text = _source(shown, words)
    if others:
        text = words.writing.listed((text, words.phrases.fill("sets_not_agreed", positions=", ".join(others))))
    return text


def _source(shown: SetsFrom, words: Words) -> str:
    phrases = words.phrases
    if shown.source is SetsSource.BUILT:
        day = words.day(shown.on) if shown.on and shown.recorded else ""
        built = phrases.fill("sets_built_on", day=day) if day else phrases.text["sets_built"]
        before = shown.model_copy(update={"source": SetsSource.AGREED if shown.kind else SetsSource.PLAN, "on": None})
        return words.writing.listed((built, _source(before, words)))
    if shown.source is SetsSource.PLAN:
        return phrases.text["sets_planned"]
    if shown.quotation is not None:
        quoted = shown.quotation
        key = "sets_quoted" if shown.source is SetsSource.QUOTATION else "sets_ordered"
        return phrases.fill(key, number=quoted.number, revision=quoted.revision, option=quoted.option)
    if shown.on is None:
        return phrases.fill("sets_agreed_by", by=shown.by)
    return phrases.fill("sets_agreed", by=shown.by, day=words.day(shown.on))
