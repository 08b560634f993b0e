"""A requirement line as one plain sentence that a newcomer understands."""

from __future__ import annotations

from spoutline.explain.phrases.asked_cases import CASES, LIQUID, Case
from spoutline.explain.plan.words import Words, liquid_of
from spoutline.model.nominal_size import NominalSize
from spoutline.model.port import FlowPath, Gender, Port, ThreadStandard
from spoutline.model.quantity import Fact, Quantity
from spoutline.model.requirement import RequirementLine

_EITHER = frozenset({"services"})  # any one of the items will do
_CODES = frozenset({"pinned", "refused", "currency", "filler"})  # what a person wrote, or a code: never worded


def asked_sentence(line: RequirementLine, words: Words) -> str:
    """Return what a derived line asks, in one sentence with its figures.

    A line that carries other facts than its rule declares is told by its rule, with the facts in parentheses.
    """
    bare = {fact.name: f"{fact.value:g}" if isinstance(fact, Quantity) else fact.value for fact in line.facts}
    told = {fact.name: _told(fact, words) for fact in line.facts}
    liquid = liquid_of(line.facts)
    if liquid is not None:
        told[LIQUID] = words.liquid_in_sentence(liquid)
    for case in CASES:
        if case.asked is line.id and _fits(case, bare, told):
            places = {name: told[name] for name in case.shows}
            return words.sentence(words.phrases.asks[case.key].format(**places))
    return words.with_figures(words.phrases.rule(line.rule_id).says, line.facts)


def _fits(case: Case, bare: dict[str, str], told: dict[str, str]) -> bool:
    if any(bare.get(name) != value for name, value in case.when.items()):
        return False
    if case.alike is not None and told.get(case.alike[0]) != told.get(case.alike[1]):
        return False
    return all(name in told for name in case.shows)


def _told(fact: Quantity | Fact, words: Words) -> str:
    if isinstance(fact, Quantity):
        return words.display.reading(fact.value, fact.dimension)
    if fact.name == "outlet":
        return _outlet(fact.value, words)
    if fact.name in _CODES:
        return fact.value
    text = words.phrases.fact_value(fact.name, fact.value)
    return text.replace(", ", f" {words.phrases.text['or']} ") if fact.name in _EITHER else text


def _outlet(text: str, words: Words) -> str:
    """Return a port that a rule wrote as its code as the trade writes it; another text stays as it is."""
    try:
        thread, *size, gender, path = text.split(" ")
        port = Port(ThreadStandard(thread), NominalSize(" ".join(size)), Gender(gender), FlowPath(path))
    except ValueError:
        return text
    return words.port(port)
