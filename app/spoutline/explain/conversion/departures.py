"""What a way gives up of good practice: the kinds of its departures, and the way with good practice beside it."""

from __future__ import annotations

from collections import Counter
from collections.abc import Iterable

from spoutline.explain.conversion.story import ConversionStory
from spoutline.explain.writing.money import amount
from spoutline.model.check import Outcome
from spoutline.model.conversion import SiteConversion
from spoutline.model.conversion_answers import OptionKind
from spoutline.model.finding import Severity, Verdict
from spoutline.model.position_conversion import ConversionOption, PositionOutcome


def departure_kinds(options: Iterable[ConversionOption], words: ConversionStory) -> tuple[tuple[str, int], ...]:
    """Return each kind of departure with how often it is met, the most frequent first."""
    story = words.story
    counts: Counter[str] = Counter()
    for option in options:
        counts.update(
            story.phrases.rule(one.rule_id).title
            for one in option.judged.findings
            if one.severity is Severity.SHOULD and one.verdict is Verdict.BROKEN
        )
        counts.update(
            story.check(one).title
            for one in option.judged.checks
            if one.severity is Severity.SHOULD and one.outcome in (Outcome.FAILS, Outcome.UNKNOWN)
        )
    return tuple(sorted(counts.items(), key=lambda item: (-item[1], item[0])))


def given_up(conversion: SiteConversion, words: ConversionStory) -> str:
    """Return what the least-cost way gives up, and what good practice costs beside it, before anybody follows it.

    Empty where it is not followed and gives up nothing, and where the sets shown are those of an agreement.
    """
    if conversion.shows_sets:
        return ""
    currency = conversion.survey.site.currency
    worked_on = [one for one in conversion.positions if one.outcome is not PositionOutcome.NOTHING_TO_DO]
    least, good = (
        [option for one in worked_on if (option := one.way(kind)) is not None]
        for kind in (OptionKind.LEAST_COST, OptionKind.GOOD_PRACTICE)
    )
    departures = sum(option.departures for option in least)
    if not departures and conversion.survey.conversion.follow is not OptionKind.LEAST_COST:
        return ""
    kinds = ", ".join(f"{count} × {title}" for title, count in departure_kinds(least, words))
    costs, saves = (sum(option.bought_minor for option in options) for options in (good, least))
    return words.say(
        "gives_up_text",
        departures=departures,
        kinds=kinds or words.say("gives_up_nothing"),
        good_departures=sum(option.departures for option in good),
        good=words.money(amount(costs, currency), currency),
        least=words.money(amount(saves, currency), currency),
        more=words.money(amount(costs - saves, currency), currency),
    )
