"""What nobody answered, told as an assumption: of a position by its questions, of the station in one line each."""

from __future__ import annotations

from collections.abc import Sequence
from typing import Final

from spoutline.explain.plan.words import Words
from spoutline.frozen import frozen
from spoutline.model.answered import AssumedTopic, assumed_topics, topic_of
from spoutline.model.dispenser_type import inherited_topics, overridden_fields
from spoutline.model.finding import Finding
from spoutline.model.plan import PositionPlan
from spoutline.model.quantity import Quantity
from spoutline.model.survey import Position
from spoutline.rules.declared.rule_ids import RuleId

# What nearly nobody surveys: the rule, its sentence, and the figure that the sentence shows.
_OF_STATION: Final = (
    (RuleId.OUTLET_STRENGTH_ASSUMED, "station_outlet", "outlet_pull_strength", "force"),
    (RuleId.SUPPLY_ASSUMED, "station_supply", "supply_pressure", "pressure"),
)
_STATION_RULES: Final = frozenset(rule for rule, *_ in _OF_STATION)


@frozen
class StationLine:
    """What was assumed of the station, in one sentence, with a finding that names its source."""

    text: str
    finding: Finding


def is_of_station(finding: Finding) -> bool:
    """Say whether a finding is told once for the station, and marks no position of its own."""
    return finding.rule_id in _STATION_RULES


def own_findings(findings: Sequence[Finding]) -> tuple[Finding, ...]:
    """Return the findings that belong to a position: all but those told once for the station."""
    return tuple(one for one in findings if not is_of_station(one))


def assumed_sentence(position: Position, words: Words) -> str:
    """Return what was assumed of a position; empty where everything was answered."""
    topics = assumed_topics(position)
    return words.phrases.fill("assumed", topics=", ".join(map(words.word, topics))) if topics else ""


def inherited_sentence(position: Position, words: Words) -> str:
    """Return what a position has from the type of its dispenser, and what it answers otherwise; empty without one."""
    if position.dispenser_type is None:
        return ""
    topics = inherited_topics(position)
    named = ", ".join(map(words.word, topics)) or words.phrases.text["nothing"]
    text = words.phrases.fill("inherited", name=position.dispenser_type.name, topics=named)
    found = (topic_of(path, position) for path in overridden_fields(position))
    other = [topic for topic in AssumedTopic if topic in set(found)]
    if not other:
        return text
    return f"{text} {words.phrases.fill('overridden', topics=', '.join(map(words.word, other)))}"


def origin_sentences(position: Position, words: Words) -> tuple[str, ...]:
    """Return from where the answers of a position are that nobody gave for it: assumed, or of its dispenser's type."""
    return tuple(filter(None, (inherited_sentence(position, words), assumed_sentence(position, words))))


def station_lines(plans: Sequence[PositionPlan], words: Words) -> tuple[StationLine, ...]:
    """Return one line for each thing of the station that was assumed, with the positions where it was."""
    lines = []
    of_station = [(plan.position.label, one) for plan in plans for one in plan.findings_of(_STATION_RULES)]
    for rule, key, fact, shown_as in _OF_STATION:
        found = [(label, one) for label, one in of_station if one.rule_id == rule]
        if not found:
            continue
        assumed = {
            item.value: item.dimension
            for _, one in found
            for item in one.facts
            if isinstance(item, Quantity) and item.name == fact
        }
        figures = {value: words.display.reading(value, dimension) for value, dimension in assumed.items()}
        everywhere = len(found) == len(plans)
        positions = words.phrases.text["every_position"] if everywhere else ", ".join(label for label, _ in found)
        shown = f" {words.phrases.text['or']} ".join(figures.values())
        text = words.phrases.fill(key, positions=positions, **{shown_as: shown})
        lines.append(StationLine(text, found[0][1]))
    return tuple(lines)
