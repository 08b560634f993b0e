"""Named cases of a conversion told in words: what is otherwise in each, and its figures beside the others'."""

from __future__ import annotations

from collections.abc import Iterator

from spoutline.explain.conversion.story import ConversionStory
from spoutline.frozen import frozen
from spoutline.model.conversion import SiteConversion
from spoutline.model.conversion_case import ConversionCase
from spoutline.model.position_conversion import ConversionKind, PositionOutcome

_OF_RECOVERY = frozenset({ConversionKind.ADD_RECOVERY, ConversionKind.CHANGE_RECOVERY, ConversionKind.DECOMMISSION})


@frozen
class CaseWords:
    """Makes the words of cases."""

    words: ConversionStory

    def name(self, case: ConversionCase | None) -> str:
        """Return the name of a case; None is what the survey asks."""
        return self.words.say("case_survey") if case is None else case.name

    def changes(self, case: ConversionCase | None) -> str:
        """Return what is otherwise in a case; nothing for what the survey asks."""
        return "" if case is None else self.words.story.writing.listed(self._changes(case))

    def _changes(self, case: ConversionCase) -> Iterator[str]:
        say = self.words.say
        if case.keep_islands:
            yield say("case_keep", islands=", ".join(case.keep_islands))
        if case.retention:
            yield say("case_retention")
        if case.ethanol_percent is not None:
            yield say("case_ethanol", percent=self.words.plain(case.ethanol_percent))
        if case.biodiesel_percent is not None:
            yield say("case_biodiesel", percent=self.words.plain(case.biodiesel_percent))
        if case.sold_after_years is not None:
            yield say("case_sold", years=case.sold_after_years)

    # figures of a conversion, as the report tells them too

    def cost(self, conversion: SiteConversion) -> str:
        """Return the cost; at least so much where something is not priced."""
        money = conversion.money
        total = self.words.money(money.total, money.currency)
        return total if money.complete else self.words.say("at_least", amount=total)

    def value(self, conversion: SiteConversion) -> str:
        """Return the net present value with its years."""
        money = conversion.money
        if money.net_present_value is None:
            return self.words.say("not_known")
        value = self.words.money(money.net_present_value, money.currency)
        return self.words.say("case_over", value=value, years=conversion.survey.conversion.money.years)

    def days(self, conversion: SiteConversion) -> str:
        """Return the days from the notice to the end of the work."""
        sequence = conversion.sequence
        return self.words.say("case_nothing") if sequence is None else str(sequence.finish.day + 1)

    def stopped(self, conversion: SiteConversion) -> str:
        """Return position-hours out of service."""
        sequence = conversion.sequence
        return self.words.decimal_hours(0 if sequence is None else sequence.downtime_minutes)

    def emissions(self, conversion: SiteConversion) -> str:
        """Return the change of the reference year."""
        return self.words.mass(emission_change_kg(conversion))

    def loses(self, conversion: SiteConversion) -> str:
        """Return how many positions lose recovery, of how many."""
        return f"{sum(one.loses_recovery for one in conversion.positions)}/{len(conversion.positions)}"


def titled(text: str, conversion: SiteConversion, words: ConversionStory) -> str:
    """Return a title with the case that a conversion is of behind it."""
    case = conversion.case
    return text if case is None else f"{text} · {words.say('case_title', name=case.name)}"


def case_note(conversion: SiteConversion, words: ConversionStory) -> str:
    """Return which case a conversion is of and what is otherwise in it; nothing for what the survey asks."""
    case = conversion.case
    return "" if case is None else f"{words.say('case_title', name=case.name)} ({CaseWords(words).changes(case)})"


def emission_change_kg(conversion: SiteConversion) -> float | None:
    """Return the change of the reference year, kg: nothing where recovery stays as it is; None: not computed."""
    done = (one for one in conversion.positions if one.outcome is PositionOutcome.CONVERTS)
    kinds = {kind for one in done for kind in one.kinds}
    sheet = conversion.emissions
    if kinds.isdisjoint(_OF_RECOVERY):
        return 0.0
    if sheet is None:
        return None
    return next((one.total_kg for one in sheet.years if one.year == sheet.reference_year), None)
