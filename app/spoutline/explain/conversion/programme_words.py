"""A programme of several sites told in sentences: its terms, each year, why each site lies where it does."""

from __future__ import annotations

from collections.abc import Iterator
from decimal import ROUND_HALF_UP, Decimal

from spoutline.explain.conversion.story import ConversionStory
from spoutline.frozen import frozen
from spoutline.model.programme import (
    LeftOut,
    Programme,
    ProgrammeYear,
    RankedSite,
    RankReason,
    SiteResult,
    Visit,
    Waiting,
    YearReason,
)

_HUNDREDTH = Decimal("0.01")


@frozen
class ProgrammeWords:
    """Makes sentences of one programme."""

    programme: Programme
    words: ConversionStory

    def money(self, amount: Decimal | None) -> str:
        """Return an amount in the currency of the programme; None reads as not known."""
        return self.words.money(amount, self.programme.currency).strip()

    def year(self, year: int) -> str:
        """Return a year as people call it: of the calendar, or counted from the first."""
        if self.programme.first_year is not None:
            return str(self.programme.calendar_year(year))
        return self.words.say("program_year", year=year)

    def terms(self) -> tuple[str, ...]:
        """Return what the owner set, in ordered sentences."""
        return tuple(self._terms())

    def _terms(self) -> Iterator[str]:
        one, say = self.programme, self.words.say
        if one.budget is None:
            yield say("program_no_budget")
        else:
            yield say("program_budget", amount=self.money(one.budget))
            yield say("program_carry" if one.carry_over else "program_no_carry")
        rise, interest = one.price_rise_percent, one.interest_percent
        yield say("program_no_rise") if rise is None else say("program_rise", percent=self._percent(rise))
        yield (
            say("program_no_interest") if interest is None else say("program_interest", percent=self._percent(interest))
        )

    def rules(self) -> tuple[str, ...]:
        """Return by which rules sites are ranked and split, and what stands for what is not known."""
        keys = ("program_rule", *(("program_split_rule",) if self.programme.budget is not None else ()), "program_held")
        return tuple(map(self.words.say, keys))

    def year_line(self, year: ProgrammeYear) -> str:
        """Return what a year does: sites, cash, what is left, lost margin and own hours apart, emissions."""
        return ", ".join(self._year(year))

    def _year(self, year: ProgrammeYear) -> Iterator[str]:
        say = self.words.say
        yield say("program_year_one") if year.sites == 1 else say("program_year_sites", count=year.sites)
        yield say("program_spent", amount=self.money(year.spent))
        if year.left is not None:
            yield say("program_left", amount=self.money(year.left))
        if year.present_value is not None:
            yield say("program_present", amount=self.money(year.present_value), year=self.year(1))
        if year.lost_margin:
            yield say("program_lost_margin", amount=self.money(year.lost_margin))
        if year.own_minutes:
            yield say("program_own_hours", hours=self.words.hours(year.own_minutes))
        yield say("program_emissions", mass=self.words.mass(year.after_kg))

    def visit_line(self, ranked: RankedSite, visit: Visit) -> str:
        """Return what a visit takes: cash, lost margin, own hours; of several, which one and its dispensers."""
        return ", ".join(self._visit(ranked, visit))

    def _visit(self, ranked: RankedSite, visit: Visit) -> Iterator[str]:
        say = self.words.say
        if len(ranked.visits) > 1:
            yield say("program_visit", number=ranked.visits.index(visit) + 1, count=len(ranked.visits))
            yield self.dispensers(visit)
        yield say("program_spent", amount=self._amount(visit.cash, ranked.site))
        if visit.lost_margin:
            yield say("program_lost_margin", amount=self._amount(visit.lost_margin, ranked.site))
        if visit.own_minutes:
            yield say("program_own_hours", hours=self.words.hours(visit.own_minutes))

    def dispensers(self, visit: Visit) -> str:
        """Return the dispensers of a visit; empty where it is to the whole site."""
        return self.words.say("program_dispensers", names=", ".join(visit.dispensers)) if visit.dispensers else ""

    def why(self, ranked: RankedSite) -> str:
        """Return in one sentence why a site lies in its year, or why it is in none."""
        if ranked.left_out is not None:
            return self.left_out(ranked)
        if ranked.year_reason is None:  # of a programme of an older version
            return ""
        text = self.words.say("program_why", reason=self._rank_reason(ranked), when=self._year_reason(ranked))
        return f"{text[:1].upper()}{text[1:]}"

    def _rank_reason(self, ranked: RankedSite) -> str:
        say, site = self.words.say, ranked.site
        if ranked.rank_reason is RankReason.DEADLINE:
            return say("program_why_deadline", year=ranked.deadline or "")
        value, cost = site.net_present_value, site.cost
        if ranked.rank_reason is RankReason.RETURN and value is not None and cost:
            share = (value / cost).quantize(_HUNDREDTH, rounding=ROUND_HALF_UP)
            shown = self.words.story.writing.decimal(share, 2)
            return say("program_why_return", value=shown, currency=site.currency)
        return say(f"program_why_{ranked.rank_reason.value}")

    def _year_reason(self, ranked: RankedSite) -> str:
        say, year = self.words.say, self.year(ranked.year or 1)
        match ranked.year_reason:
            case YearReason.IN_PARTS:
                return say("program_when_in_parts", count=len(ranked.visits), year=year)
            case YearReason.SAVED_UP:
                return say("program_when_saved_up", year=year)
            case YearReason.LATER if ranked.short is not None:
                left, asked = (self._amount(one, ranked.site) for one in (ranked.short.left, ranked.short.asked))
                return say("program_when_later", short=self.year(ranked.short.year), left=left, asked=asked, year=year)
            case YearReason.NO_LIMIT:
                return say("program_when_no_limit")
            case _:
                return say("program_when_first")

    def left_out(self, ranked: RankedSite) -> str:
        """Return why a ready site is in no year."""
        if ranked.left_out is None:
            return ""
        if ranked.left_out is LeftOut.PART_DEARER and ranked.dear_part is not None:
            part, work = ranked.dear_part, ranked.site.work
            cost = part.cash + (work.visit_cash if work is not None else 0)
            names = ", ".join(part.dispensers)
            words = "program_part_dearer" if len(part.dispensers) > 1 else "program_part_dearer_one"
            return self.words.say(words, names=names, amount=self._amount(cost, ranked.site))
        text = self.words.title(ranked.left_out)
        hindrance = ranked.site.work.hindrance if ranked.site.work is not None else None
        if ranked.left_out is LeftOut.DEARER_THAN_A_YEAR and hindrance is not None:
            return f"{text}{self.words.story.writing.colon} {self.words.word(hindrance)}."
        return f"{text}."

    def deadline(self, ranked: RankedSite) -> str:
        """Return the deadline of a site and whether it is kept; empty where it has none."""
        if ranked.deadline is None:
            return ""
        key = {True: "kept", False: "missed", None: "open"}[ranked.in_time]
        return self.words.say(f"program_deadline_{key}", year=ranked.deadline)

    def waiting(self, ranked: RankedSite) -> str:
        """Return what doing a site a year later costs, in money and in emissions; empty where its cost is not known."""
        if ranked.waiting is None:
            return ""
        kg = ranked.waiting.kg
        emissions = (
            self.words.say("program_wait_no_kg")
            if kg is None
            else self.words.say("program_wait_kg", mass=self.words.mass(kg))
        )
        return self.words.say(
            "program_waiting", money=self._waiting_money(ranked.waiting, ranked.site), emissions=emissions
        )

    def _waiting_money(self, one: Waiting, site: SiteResult) -> str:
        say = self.words.say
        parts = {"price": self._signed(one.price, site), "interest": self._signed(-one.interest, site)}
        if one.money is None or one.upkeep is None:
            return say("program_wait_open", **parts)
        key = "program_wait_money" if one.money >= 0 else "program_wait_less"
        money = self._amount(abs(one.money), site)
        return say(key, money=money, upkeep=self._signed(one.upkeep, site), **parts)

    def other(self, site: SiteResult) -> str:
        """Return why a site is not in the programme."""
        text = self.words.word(site.outcome)
        return f"{text}{self.words.story.writing.colon} {site.message}" if site.message else text

    def _amount(self, amount: Decimal, site: SiteResult) -> str:
        return self.words.money(amount, site.currency)

    def _signed(self, amount: Decimal, site: SiteResult) -> str:
        text = self.words.money(amount, site.currency)
        return f"+{text}" if amount > 0 else text

    def _percent(self, percent: Decimal) -> str:
        return self.words.story.writing.figure(f"{percent.normalize():f}")
