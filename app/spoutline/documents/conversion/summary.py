"""The first page: may it be done, what the ways cost, what it does, what must be told to whom."""

from __future__ import annotations

from collections.abc import Iterator
from datetime import date

from spoutline.documents.content.blocks import (
    Alignment,
    Block,
    Bullets,
    CautionNote,
    Column,
    Emphasis,
    Heading,
    KeyValues,
    Paragraph,
    Role,
    Row,
    Signal,
    Table,
)
from spoutline.documents.conversion.followed import followed_plan
from spoutline.explain.conversion.departures import given_up
from spoutline.explain.conversion.story import ConversionStory
from spoutline.explain.phrases.paper_words import PaperWord
from spoutline.explain.plan.agreed_words import broken_musts
from spoutline.explain.plan.assumed import station_lines
from spoutline.explain.plan.texts import Named
from spoutline.explain.writing.money import amount
from spoutline.model.answered import assumed_topics
from spoutline.model.conversion import SiteConversion
from spoutline.model.conversion_answers import OptionKind
from spoutline.model.position_conversion import ConversionKind, PositionConversion, PositionOutcome
from spoutline.model.removal_standing import Standing
from spoutline.model.vapour_figures import RemovalRule

_SIGNAL_OF = {
    Standing.NOT_ALLOWED: Signal.DANGER,
    Standing.ASK: Signal.WARNING,
    Standing.MAY_GO: Signal.NOTICE,
    Standing.MUST_GO: Signal.NOTICE,
}


def summary_blocks(conversion: SiteConversion, words: ConversionStory, dated: date | None) -> Iterator[Block]:
    """Return the first page. What is not allowed is said before anything else."""
    yield Heading(words.say("report_heading"), 1)
    yield from standing_blocks(conversion, words)
    yield KeyValues(tuple(_head(conversion, words, dated)))
    yield Heading(words.say("decision"), 2)
    yield _decision_table(conversion, words)
    yield Paragraph(words.say("decision_note"), Role.NOTE)
    yield KeyValues(result_rows(conversion, words))
    yield from _open_positions(conversion, words)
    yield Heading(words.say("tell_whom"), 2)
    yield Bullets(tuple(_to_be_told(conversion, words)))


def assumed_blocks(conversion: SiteConversion, words: ConversionStory) -> Iterator[Block]:
    """Return what was assumed of the station as a whole, because nobody answered it; nothing where all is answered."""
    lines = station_lines(followed_plan(conversion).positions, words.story)
    if lines:
        yield Heading(words.say("assumed_station"), 2)
        yield Bullets(tuple(f"{line.text} ({words.story.cited(line.finding.source)})" for line in lines))


def standing_blocks(conversion: SiteConversion, words: ConversionStory) -> Iterator[Block]:
    """Return whether recovery may be taken away, with the grounds; and whether it is brought in where it must go."""
    yield from _brought_in_blocks(conversion, words)
    standing = conversion.standing
    if standing.kept:
        yield _kept_note(conversion, words)
    if standing.standing is Standing.NOT_CONCERNED:
        if standing.kept:
            return
        yield Paragraph(words.say("standing_not_concerned"), Role.LEAD)
        return
    signal = _SIGNAL_OF[standing.standing]
    yield CautionNote(
        signal=signal,
        signal_word=words.story.word(PaperWord(signal.value)),
        hazard=words.standing(standing),
        why=" ".join(words.ground(ground) for ground in standing.grounds),
        what_to_do=words.what_to_do(standing.standing),
        source=words.say("defers"),
    )


def _kept_note(conversion: SiteConversion, words: ConversionStory) -> CautionNote:
    """Warn of positions that keep recovery although a rule asks for it to go."""
    agency = conversion.standing.agency
    return CautionNote(
        signal=Signal.WARNING,
        signal_word=words.story.word(PaperWord.WARNING),
        hazard=words.kept_against_rule(conversion.standing),
        why=words.story.sourced(f"{agency.title}: {agency.source}, {agency.clause}", agency.status),
        what_to_do=words.say("kept_do"),
        source=words.say("defers"),
    )


def _brought_in_blocks(conversion: SiteConversion, words: ConversionStory) -> Iterator[Block]:
    """Warn where recovery is brought in although the agency's rule asks for it to go."""
    agency = conversion.standing.agency
    brought_in = [one.position.label for one in conversion.positions if ConversionKind.ADD_RECOVERY in one.kinds]
    if brought_in and agency.removal is RemovalRule.MUST_GO:
        yield CautionNote(
            signal=Signal.WARNING,
            signal_word=words.story.word(PaperWord.WARNING),
            hazard=words.say("brought_in", positions=", ".join(brought_in)),
            why=words.story.sourced(f"{agency.title}: {agency.source}, {agency.clause}", agency.status),
            what_to_do=words.what_to_do(Standing.ASK),
            source=words.say("defers"),
        )


def _head(conversion: SiteConversion, words: ConversionStory, dated: date | None) -> Iterator[Named]:
    site, jurisdiction = conversion.survey.site, conversion.jurisdiction
    word = words.story.word
    yield Named(word(PaperWord.NAME), site.name)
    if site.address.strip():
        yield Named(word(PaperWord.ADDRESS), site.address.strip())
    if site.customer:
        yield Named(word(PaperWord.CUSTOMER), site.customer)
    if dated is not None:
        yield Named(word(PaperWord.DATE), words.story.day(dated))
    yield Named(words.story.phrases.text["sets_title"], words.sets_head(conversion))
    yield Named(
        word(PaperWord.JURISDICTION),
        words.story.writing.listed(
            map(words.story.phrases.tell, (jurisdiction.title, conversion.standing.agency.title))
        ),
    )
    assumed = [one.position.label for one in conversion.positions if assumed_topics(one.position)]
    if assumed:
        yield Named(word(PaperWord.ASSUMED), words.say("assumed_head", positions=", ".join(assumed)))
    counts: dict[str, int] = {}
    for one in conversion.positions:
        text = ", ".join(map(words.word, one.kinds)) or words.word(one.outcome)
        counts[text] = counts.get(text, 0) + 1
    yield Named(words.say("kinds"), words.story.writing.listed(f"{count} × {text}" for text, count in counts.items()))


def _decision_table(conversion: SiteConversion, words: ConversionStory) -> Table:
    columns = (
        Column(words.say("way"), 2.3),
        Column(words.say("bought"), 1.4, Alignment.RIGHT),
        Column(words.say("kept_parts"), 0.9, Alignment.RIGHT),
        Column(words.say("kept_value"), 1.4, Alignment.RIGHT),
        Column(words.say("departures"), 1.0, Alignment.RIGHT),
        Column(words.say("without_set"), 1.0, Alignment.RIGHT),
    )
    kinds = (*((None,) if conversion.shows_sets else ()), *OptionKind)
    return Table(columns, tuple(_way_row(kind, conversion, words) for kind in kinds))


def _way_row(kind: OptionKind | None, conversion: SiteConversion, words: ConversionStory) -> Row:
    currency = conversion.survey.site.currency
    worked_on = [one for one in conversion.positions if one.outcome is not PositionOutcome.NOTHING_TO_DO]
    options = [one.way(kind) if kind is not None else one.shown for one in worked_on]
    found = [option for option in options if option is not None]
    followed = kind is (None if conversion.shows_sets else conversion.survey.conversion.follow)
    title = words.way(kind)
    cells = (
        f"{title} ({words.say('followed')})" if followed else title,
        words.money(amount(sum(option.bought_minor for option in found), currency), currency),
        str(sum(len(option.kept) for option in found)),
        words.money(amount(sum(option.kept_minor or 0 for option in found), currency), currency),
        str(sum(option.departures for option in found)),
        str(len(options) - len(found)),
    )
    return Row(cells, Emphasis.TOTAL if followed else Emphasis.NONE)


def result_rows(conversion: SiteConversion, words: ConversionStory) -> tuple[Named, ...]:
    """Return cost, payback, emissions and time in words."""
    return tuple(_results(conversion, words))


def _results(conversion: SiteConversion, words: ConversionStory) -> Iterator[Named]:
    lost = given_up(conversion, words)
    if lost:
        yield Named(words.say("gives_up"), lost)
    money, sheet, sequence = conversion.money, conversion.emissions, conversion.sequence
    cost = words.money(money.total, money.currency)
    yield Named(words.say("cost"), cost if money.complete else words.say("at_least", amount=cost))
    if money.payback_years is not None and money.net_present_value is not None:
        value = words.money(money.net_present_value, money.currency)
        years = conversion.survey.conversion.money.years
        text = words.say("payback_text", years=f"{money.payback_years}", value=value, horizon=years)
        yield Named(words.say("payback"), text)
    else:
        yield Named(words.say("payback"), words.say("payback_unknown"))
    if sheet is not None:
        yield Named(words.say("emissions"), _emission_text(conversion, words))
    if sequence is not None:
        downtime = words.say(
            "downtime_text",
            phases=len(sequence.phases),
            hours=words.decimal_hours(sequence.downtime_minutes),
            stop=words.decimal_hours(sequence.site_stop_minutes),
        )
        yield Named(words.say("time"), f"{words.span(sequence)} {downtime}")
        if sequence.deadlines:
            days = "; ".join(words.deadline(one, sequence.first_day) for one in sequence.deadlines)
            yield Named(words.say("deadlines"), days)


def _emission_text(conversion: SiteConversion, words: ConversionStory) -> str:
    sheet = conversion.emissions
    if sheet is None or sheet.reference_year is None:
        return words.say("emissions_no_shares")
    year = next(one for one in sheet.years if one.year == sheet.reference_year)
    share = words.percent(year.onboard_share)
    break_even = words.percent(sheet.break_even.result.value)
    key = "emission_adds" if year.increment > 0 else "emission_nothing"
    text = words.say(
        key, year=year.year, share=share, break_even=break_even, increment=words.signed_percent(year.increment)
    )
    if year.total_kg is None:
        return f"{text} {words.say('emissions_no_throughput')}"
    if sheet.removing and not any(one.loses_recovery for one in conversion.positions):
        return f"{text} {words.say('emission_kept', year=year.year, change=words.mass(year.total_kg))}"
    return f"{text} {words.say('emission_change', year=year.year, change=words.mass(year.total_kg))}"


def _open_positions(conversion: SiteConversion, words: ConversionStory) -> Iterator[Block]:
    bad = (PositionOutcome.NO_SET, PositionOutcome.NOT_ALLOWED, PositionOutcome.REFUSED)
    found = [one for one in conversion.positions if one.outcome in bad or _breaks_a_must(one)]
    if found:
        yield Heading(words.say("open_positions"), 2)
        yield Bullets(tuple(f"{one.position.label}{words.story.writing.colon} {why_open(one, words)}" for one in found))


def _breaks_a_must(one: PositionConversion) -> bool:
    plan = one.shown_plan
    return plan is not None and plan.chosen is not None and not plan.keeps_every_must


def why_open(one: PositionConversion, words: ConversionStory) -> str:
    """Return why a position cannot be converted."""
    if one.shown_plan is not None and _breaks_a_must(one):
        return " ".join(broken_musts(one.shown_plan, words.story))
    plan = one.renewal
    if plan.refusal is not None:
        return " ".join(words.story.refusal(plan.refusal))
    if plan.conflict is not None:
        return " ".join(words.story.conflict(plan.conflict))
    return words.title(one.outcome)


def _to_be_told(conversion: SiteConversion, words: ConversionStory) -> Iterator[str]:
    agency = conversion.standing.agency
    if conversion.standing.standing is not Standing.NOT_CONCERNED:
        yield words.say("tell_agency", agency=agency.title, source=agency.source)
        yield from words.agency(agency)
        yield words.say("tell_metrology")
    yield words.say("tell_fire")
    yield words.say("tell_insurer")
    yield words.say("tell_customers")
