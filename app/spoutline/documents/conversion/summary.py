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
from spoutline.documents.conversion.way_figures import followed_way, way_figures
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
    yield from _open_blocks(conversion, words)
    yield Heading(words.say("tell_whom"), 2)
    yield Bullets((*agency_asks(conversion, words), *others_to_tell(conversion, words)))


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
        why=words.agency_source(agency),
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
            hazard=words.say("brought_in", positions=words.places(brought_in)),
            why=words.agency_source(agency),
            what_to_do=words.what_to_do(Standing.ASK),
            source=words.say("defers"),
        )


def site_rows(conversion: SiteConversion, words: ConversionStory, dated: date | None) -> tuple[Named, ...]:
    """Return name, address, customer and, where it is given, the date."""
    site, word = conversion.survey.site, words.story.word
    rows = (
        (PaperWord.NAME, site.name),
        (PaperWord.ADDRESS, site.address.strip()),
        (PaperWord.CUSTOMER, site.customer),
        (PaperWord.DATE, words.story.day(dated) if dated is not None else ""),
    )
    return tuple(Named(word(name), text) for name, text in rows if text)


def sets_rows(conversion: SiteConversion, words: ConversionStory) -> tuple[Named, ...]:
    """Return which sets are shown, and whose rules are read."""
    titles = (conversion.jurisdiction.title, conversion.standing.agency.title)
    return (
        Named(words.story.phrases.text["sets_title"], words.sets_head(conversion)),
        Named(
            words.story.word(PaperWord.JURISDICTION),
            words.story.writing.listed(map(words.story.phrases.tell, titles)),
        ),
    )


def assumed_rows(conversion: SiteConversion, words: ConversionStory) -> Iterator[Named]:
    """Yield at which positions usual values stand for what nobody answered; they are not named where it is all."""
    assumed = [one.position.label for one in conversion.positions if assumed_topics(one.position)]
    if assumed:
        at_all = len(assumed) == len(conversion.positions)
        told = words.say("assumed_everywhere") if at_all else words.say("assumed_head", positions=words.places(assumed))
        yield Named(words.story.word(PaperWord.ASSUMED), told)


def _head(conversion: SiteConversion, words: ConversionStory, dated: date | None) -> Iterator[Named]:
    yield from site_rows(conversion, words, dated)
    yield from sets_rows(conversion, words)
    yield from assumed_rows(conversion, words)
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
    figures = way_figures(kind, conversion)
    followed = kind is followed_way(conversion)
    title = words.way(kind)
    cells = (
        f"{title} ({words.say('followed')})" if followed else title,
        words.money(amount(figures.bought_minor, currency), currency),
        str(figures.kept),
        words.money(amount(figures.kept_minor, currency), currency),
        str(figures.departures),
        str(figures.without_set),
    )
    return Row(cells, Emphasis.TOTAL if followed else Emphasis.NONE)


def result_rows(conversion: SiteConversion, words: ConversionStory) -> tuple[Named, ...]:
    """Return cost, payback, emissions and time in words."""
    return tuple(_results(conversion, words))


def _results(conversion: SiteConversion, words: ConversionStory) -> Iterator[Named]:
    lost = given_up(conversion, words)
    if lost:
        yield Named(words.say("gives_up"), lost)
    money = conversion.money
    cost = words.money(money.total, money.currency)
    yield Named(words.say("cost"), cost if money.complete else words.say("at_least", amount=cost))
    yield payback_row(conversion, words)
    yield from emission_rows(conversion, words)
    yield from time_rows(conversion, words)


def payback_row(conversion: SiteConversion, words: ConversionStory) -> Named:
    """Return after how many years the cost is paid back and what it is worth; or what that lacks."""
    money = conversion.money
    if money.payback_years is None or money.net_present_value is None:
        return Named(words.say("payback"), words.say("payback_unknown"))
    value = words.money(money.net_present_value, money.currency)
    years = conversion.survey.conversion.money.years
    text = words.say(
        "payback_text", years=words.story.writing.figure(f"{money.payback_years}"), value=value, horizon=years
    )
    return Named(words.say("payback"), text)


def emission_rows(conversion: SiteConversion, words: ConversionStory) -> tuple[Named, ...]:
    """Return what the conversion does to emissions; empty where recovery stays as it is."""
    return () if conversion.emissions is None else (Named(words.say("emissions"), _emission_text(conversion, words)),)


def time_rows(conversion: SiteConversion, words: ConversionStory) -> tuple[Named, ...]:
    """Return when it begins and ends with what stands still meanwhile, and the days to keep; empty without work."""
    sequence = conversion.sequence
    if sequence is None:
        return ()
    downtime = words.say(
        "downtime_text",
        phases=len(sequence.phases),
        hours=words.decimal_hours(sequence.downtime_minutes),
        stop=words.decimal_hours(sequence.site_stop_minutes),
    )
    time = Named(words.say("time"), f"{words.span(sequence)} {downtime}")
    if not sequence.deadlines:
        return (time,)
    days = "; ".join(words.deadline(one, sequence.first_day) for one in sequence.deadlines)
    return (time, Named(words.say("deadlines"), days))


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


def open_positions(conversion: SiteConversion) -> tuple[PositionConversion, ...]:
    """Return the positions that cannot be converted as asked, and those whose set breaks a must."""
    bad = (
        PositionOutcome.NO_SET,
        PositionOutcome.NOT_DECIDED,
        PositionOutcome.NOT_ALLOWED,
        PositionOutcome.REFUSED,
    )
    return tuple(one for one in conversion.positions if one.outcome in bad or _breaks_a_must(one))


def _open_blocks(conversion: SiteConversion, words: ConversionStory) -> Iterator[Block]:
    found = open_positions(conversion)
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


def agency_asks(conversion: SiteConversion, words: ConversionStory) -> tuple[str, ...]:
    """Return which agency is told and what its rule asks, in ordered sentences; empty where it is not concerned."""
    if conversion.standing.standing is Standing.NOT_CONCERNED:
        return ()
    agency = conversion.standing.agency
    return (
        words.say(
            "tell_agency", agency=words.story.phrases.tell(agency.title), source=words.story.cited(agency.source)
        ),
        *words.agency(agency),
    )


def others_to_tell(conversion: SiteConversion, words: ConversionStory) -> tuple[str, ...]:
    """Return who is told beside the agency, in ordered sentences."""
    concerned = conversion.standing.standing is not Standing.NOT_CONCERNED
    first = ("tell_metrology",) if concerned else ()
    return tuple(map(words.say, (*first, "tell_fire", "tell_insurer", "tell_customers")))
