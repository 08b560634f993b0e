"""A conversion told in sentences: standing, differences, emissions, sequence, money; figures in one unit system."""

from __future__ import annotations

from collections.abc import Sequence as Names
from datetime import date, timedelta
from decimal import Decimal
from enum import StrEnum
from typing import Final

from spoutline.explain.conversion.phrases import ConversionPhrases
from spoutline.explain.plan.sets_head import sets_text
from spoutline.explain.plan.story import Story
from spoutline.frozen import frozen
from spoutline.model.agreed_sets import SetBasis, SetsSource
from spoutline.model.conversion import SiteConversion
from spoutline.model.conversion_answers import OptionKind
from spoutline.model.conversion_sequence import Deadline, Moment, PlannedTask, Sequence, SequenceFinding, SequenceNote
from spoutline.model.difference_reason import DifferenceReason
from spoutline.model.installed import InstalledCondition, InstalledPart
from spoutline.model.liquid import Liquid
from spoutline.model.position_conversion import Closing, DifferenceLine, StaysLive
from spoutline.model.quantity import Dimension
from spoutline.model.removal_standing import RemovalStanding, Standing, StandingGround
from spoutline.model.survey import Position
from spoutline.model.tank_change import TankChange
from spoutline.model.vapour_figures import AgencyRow, VapourFigure, VapourFigureId
from spoutline.units.accepted import UnitSystem, dimension_of_unit
from spoutline.units.unit_lines import to_core

_DAY_STARTS = 8 * 60  # a working day is told as starting at eight, until another hour is answered
_MINUTES_PER_HOUR = 60

_MOST_NAMED: Final = 16  # positions whose names are read one by one; of more, sheets and tables name every one
_FIRST_NAMED: Final = 3
_ALL_FIGURES: Final = "figures"  # what a part lacks of which nothing is known


@frozen
class ConversionStory:
    """Makes sentences of a conversion; ``story`` tells what a conversion shares with a plan."""

    story: Story
    phrases: ConversionPhrases

    def word(self, term: StrEnum) -> str:
        """Return the trade word of a member of a conversion's lists."""
        return self.phrases.word(term)

    def title(self, term: StrEnum) -> str:
        """Return the trade word as used at the head of a row."""
        text = self.phrases.word(term)
        return text[:1].upper() + text[1:]

    def say(self, key: str, **parts: str | int) -> str:
        """Return a sentence with its placeholders filled."""
        return self.phrases.fill(key, **parts)

    def places(self, labels: Names[str]) -> str:
        """Return the names of positions: of many the first ones and the last, with how many they are."""
        if len(labels) <= _MOST_NAMED:
            return ", ".join(labels)
        first = ", ".join(labels[:_FIRST_NAMED])
        return self.say("many_places", first=first, last=labels[-1], count=len(labels))

    # figures

    def plain(self, value: float) -> str:
        """Return a figure with the digits that it carries, up to six, in the writing of the language."""
        return self.story.writing.figure(f"{value:g}")

    def money(self, value: Decimal | None, currency: str) -> str:
        """Return an amount with its currency; None reads as not known."""
        if value is None:
            return self.say("not_known")
        return self.story.writing.money(value, currency)

    def percent(self, share: float) -> str:
        """Return a share in percent, one decimal."""
        return f"{self.story.writing.decimal(share * 100, 1)} %"

    def signed_percent(self, share: float) -> str:
        """Return a share in percent with its sign."""
        return f"{self.story.writing.decimal(share * 100, 1, signed=True)} %"

    def mass(self, kg: float | None) -> str:
        """Return a yearly change of mass with its sign; None reads as not computed."""
        if kg is None:
            return self.say("not_computed")
        shown = self.story.display.number(kg, Dimension.MASS)
        return f"{self.story.writing.decimal(shown, 0, signed=True)} {self.story.display.unit(Dimension.MASS)}"

    def volume(self, volume_m3: float) -> str:
        """Return a yearly volume in cubic metres or gallons, digits grouped."""
        if self.story.display.system is UnitSystem.SI:
            return f"{self.story.writing.decimal(volume_m3, 0)} m³"
        return f"{self.story.writing.decimal(self.story.display.number(volume_m3, Dimension.VOLUME), 0)} gal"

    def published(self, figure: VapourFigure) -> str:
        """Return a published figure in the reader's units; as printed where it belongs to a formula or is an amount.

        Coefficients in degrees stay as printed too: they have no zero point.
        """
        is_temperature = figure.id is VapourFigureId.DEFAULT_AMBIENT
        dimension = Dimension.TEMPERATURE if is_temperature else dimension_of_unit(figure.unit)
        if dimension is None:
            return f"{self.plain(figure.value)} {figure.unit}".strip()
        value = to_core(figure.value, figure.unit, dimension)
        return self.volume(value) if dimension is Dimension.VOLUME else self.story.show(value, dimension)

    def hours(self, minutes: int) -> str:
        """Return working time in hours."""
        return self.say("hours", hours=self.decimal_hours(minutes))

    def decimal_hours(self, minutes: int) -> str:
        """Return working time in hours without the unit."""
        return self.story.writing.decimal(minutes / _MINUTES_PER_HOUR, 1)

    def day(self, moment: Moment, first_day: date | None) -> str:
        """Return a day of the plan: its date, or its number from the first day where no date is known."""
        if first_day is None:
            return self.say("day_number", day=moment.day + 1)
        return self.story.day(first_day + timedelta(days=moment.day))

    def time(self, moment: Moment, first_day: date | None) -> str:
        """Return day and hour of a moment."""
        hour, minute = divmod(_DAY_STARTS + moment.minute, _MINUTES_PER_HOUR)
        return f"{self.day(moment, first_day)} {hour:02d}:{minute:02d}"

    def table_time(self, moment: Moment, first_day: date | None) -> str:
        """Return day and hour as tables for other programs have them, ISO 8601 with a blank, in every language."""
        if first_day is None:
            return self.time(moment, first_day)
        hour, minute = divmod(_DAY_STARTS + moment.minute, _MINUTES_PER_HOUR)
        return f"{(first_day + timedelta(days=moment.day)).isoformat()} {hour:02d}:{minute:02d}"

    # standing

    def standing(self, standing: RemovalStanding) -> str:
        """Return what the rules say about taking recovery away, in one sentence."""
        return self.say(f"standing_{standing.standing.value}", positions=self.places(standing.positions))

    def kept_against_rule(self, standing: RemovalStanding) -> str:
        """Return which positions keep recovery although a rule asks for it to go; empty where none does."""
        return self.say("kept_against", positions=self.places(standing.kept)) if standing.kept else ""

    def ground(self, ground: StandingGround) -> str:
        """Return one ground of the standing with its source."""
        text = self.word(ground.reason)
        if ground.threshold is not None:
            text = f"{text} ({self.volume(ground.threshold.value)})"
        return f"{text}. {self.story.sourced(ground.source, ground.status)}"

    def what_to_do(self, standing: Standing) -> str:
        """Return what a person does about the standing."""
        return self.say(f"standing_do_{standing.value}")

    def way(self, kind: OptionKind | None) -> str:
        """Return the name of a way; None stands for sets that were handed in, such as agreed ones."""
        return self.say("shown_sets") if kind is None else self.title(kind)

    def sets_head(self, conversion: SiteConversion) -> str:
        """Return which sets a conversion shows: those handed in, else those of the way that it follows."""
        if not conversion.shows_sets and conversion.sets_from.source is SetsSource.PLAN:
            way = self.way(conversion.survey.conversion.follow)
            return f"{self.story.phrases.text['sets_planned']} ({self.say('way')}{self.story.writing.colon} {way})"
        plans = (one.shown_plan for one in conversion.positions)
        others = [one.position.label for one in plans if one is not None and one.basis is SetBasis.NOT_AGREED]
        return sets_text(conversion.sets_from, others, self.story)

    def agency(self, agency: AgencyRow) -> tuple[str, ...]:
        """Return what is known of the agency's rule, in ordered sentences."""
        found = []
        for name in ("notice_days", "test_notice_days", "finish_days"):
            days = getattr(agency, name)
            counted = f"{name}_working" if name == "test_notice_days" and agency.test_notice_working else name
            found.append(
                self.say(f"agency_{counted}", days=days) if days is not None else self.say(f"agency_no_{name}")
            )
        if agency.notice_lapses_days is not None:
            found.append(self.say("agency_notice_lapses_days", days=agency.notice_lapses_days))
        least, most = agency.second_notice_least_hours, agency.second_notice_most_hours
        if least is not None:
            found.append(self.say("agency_second_notice", least=least, most=most if most is not None else least))
        for name in ("approval_first", "same_day", "weekdays_only", "enhanced_nozzle", "low_permeation_hose"):
            if getattr(agency, name):
                found.append(self.say(f"agency_{name}"))
        if agency.tests:
            found.append(self.say("agency_tests", tests=", ".join(map(self.story.phrases.tell, agency.tests))))
        if agency.checklist:
            found.append(self.say("agency_checklist", checklist=self.story.phrases.tell(agency.checklist)))
        if agency.note:
            found.append(self.story.phrases.tell(agency.note))
        return tuple(found)

    def agency_source(self, agency: AgencyRow) -> str:
        """Return where the agency's rule stands, with its status unless the text itself was read."""
        title = self.story.phrases.tell(agency.title)
        return self.story.sourced(f"{title}{self.story.writing.colon} {agency.source}, {agency.clause}", agency.status)

    # positions

    def liquid_change(self, position: Position) -> str:
        """Return the liquid of a position, after that of today where it is another."""
        wanted = self.story.liquid(Liquid(position.liquid.family, position.liquid.blend_percent))
        if position.liquid_today is None or position.liquid_today == position.liquid:
            return wanted
        today = self.story.liquid(Liquid(position.liquid_today.family, position.liquid_today.blend_percent))
        return f"{today} → {wanted}"

    def vapour_change(self, position: Position) -> str:
        """Return how vapor is recovered, after how it is today where that is another."""
        today, wanted = self.story.word(position.vapour_today), self.story.word(position.vapour_wanted)
        return today if today == wanted else f"{today} → {wanted}"

    # differences

    def installed(self, item: InstalledPart | None) -> str:
        """Return what is known of an installed part: number or description, age, condition."""
        if item is None:
            return ""
        texts = [str(item.ref) if item.ref else item.description]
        if item.age_years is not None:
            texts.append(self.say("age", years=self.plain(item.age_years)))
        if item.condition is not InstalledCondition.UNKNOWN:
            texts.append(self.word(item.condition))
        return ", ".join(texts)

    def difference(self, line: DifferenceLine, currency: str) -> str:
        """Return why a part stays, goes or comes, with the rules that say so."""
        told = [self._reason(line, currency)]
        told.extend(self.story.finding(finding).sentence for finding in line.findings)
        return " ".join(told)

    def difference_source(self, line: DifferenceLine) -> str:
        """Return the sources behind a difference; empty for a decision of the owner."""
        if line.reason is DifferenceReason.STILL_FITS:
            return self.say("keep_source")
        sources = [finding.source for finding in line.findings]
        if line.asked_by is not None:
            sources.append(line.asked_by.source)
        return self.story.writing.listed(dict.fromkeys(map(self.story.cited, sources)))

    def _reason(self, line: DifferenceLine, currency: str) -> str:
        if line.reason is DifferenceReason.ASKED_FOR and line.asked_by is not None:
            asked = self.story.requirement_line(line.asked_by)
            return self.say("asked_for_by", title=asked.title, answer=asked.answer.removesuffix("."))
        if line.reason is DifferenceReason.ACCESSORY:
            return self.story.accessory_reason(line.accessory_reason)
        if line.reason is DifferenceReason.CHEAPER_WITHOUT and line.extra_minor is not None:
            return self.say("cheaper_without", extra=self.story.money(line.extra_minor, currency))
        if line.reason is DifferenceReason.NO_SET_WITH_IT and line.conflict:
            lines = ", ".join(self.story.word(one) for one in line.conflict)
            return self.say("no_set_with_it", requirements=lines)
        text = self.word(line.reason)
        named = [name.replace("_", " ") for name in line.missing if name != _ALL_FIGURES]
        if named and line.reason is DifferenceReason.FIGURES_UNKNOWN:
            text = f"{text} ({', '.join(named)})"
        return f"{text[:1].upper()}{text[1:]}."

    def closing(self, closing: Closing) -> str:
        """Return what is closed and where."""
        where = closing.position or (
            self.say("at_dispenser", dispenser=closing.dispenser) if closing.dispenser else self.say("at_site")
        )
        return f"{self.word(closing.opening)}, {where}"

    def live_place(self, one: StaysLive) -> str:
        """Return what is not closed and where."""
        where = self.say("at_dispenser", dispenser=one.dispenser) if one.dispenser else self.say("of_site")
        return f"{self.word(one.opening)}, {where}"

    def live(self, one: StaysLive) -> str:
        """Return what is not closed, where, who goes on needing it, and why."""
        return self.say(
            "live_line",
            place=self.live_place(one),
            needed_by=", ".join(one.needed_by),
            why=self.word(one.reason),
        )

    # sequence

    def note_subject(self, note: SequenceNote) -> str:
        """Return what a finding on the sequence is about; of many positions only some by name."""
        return self.places(note.positions) or note.subject

    def note(self, note: SequenceNote) -> str:
        """Return a finding on the sequence with its figures."""
        percent = note.finding is SequenceFinding.SHARE_TOO_SMALL

        def figure(value: float | None) -> str:
            if value is None:
                return ""
            return self.percent(value) if percent else self.plain(value)

        return self.say(
            f"note_{note.finding.value}",
            subject=self.note_subject(note),
            number=figure(note.number),
            limit=figure(note.limit),
        )

    def deadline(self, one: Deadline, first_day: date | None) -> str:
        """Return a day that a rule sets, and whether the plan keeps it."""
        day = self.day(Moment(day=one.day, minute=0), first_day)
        kept = "" if one.kept else f" {self.say('not_kept')}"
        return f"{day}: {self.word(one.kind).format(days=one.days)}{kept}"

    def task(self, task: PlannedTask) -> str:
        """Return the name of a task: its phase, what is done, what it is about."""
        name = self._what_is_done(task)
        return name if task.phase is None else f"{self.say('phase')} {task.phase}{self.story.writing.colon} {name}"

    def _what_is_done(self, task: PlannedTask) -> str:
        """Return the title of the step, in the language of the phrases where they hold it, with subject and tank."""
        title = self.phrases.steps.get(task.step_id, task.title)
        subject = ", ".join(map(self.story.phrases.tell, task.subject.split(", ")))
        name = f"{title}{self.story.writing.colon} {subject}" if subject else title
        return f"{name} ({self.say('of_tank', tank=task.tank)})" if task.tank else name

    def gantt_name(self, task: PlannedTask) -> str:
        """Return the name of a task as it stands beside its bar: the number of its phase goes first."""
        name = self._what_is_done(task)
        return name if task.phase is None else f"{task.phase} · {name}"

    # changes of liquid

    def tank_of(self, change: TankChange) -> str:
        """Return the tank of a change, or that it is not known."""
        return change.tank or self.say("tank_not_known")

    def liquids(self, change: TankChange) -> str:
        """Return the liquid of today and the one that comes."""
        today, wanted = (
            self.story.liquid(Liquid(one.family, one.blend_percent)) for one in (change.today, change.wanted)
        )
        return f"{today} → {wanted}"

    def why_within(self, change: TankChange) -> tuple[str, ...]:
        """Return why the new sets do not serve the liquid of today, each reason once."""
        told: dict[str, list[str]] = {}
        for one in change.hindered_by:
            if one.finding is not None:
                text = self.story.finding(one.finding).sentence
            else:
                text = one.check.replace("_", " ") or self.title(change.way)
            told.setdefault(text, []).append(one.position)
        return tuple(
            self.say("hindered", position=self.places(tuple(dict.fromkeys(labels))), why=text)
            for text, labels in told.items()
        )

    def asked_by_change(self, change: TankChange) -> tuple[str, ...]:
        """Return what the law asks for a change: proof, notice, label, each with its source."""
        found = [self.say("asks_proof")] if change.proof else []
        if change.notice is not None:
            source = self.story.sourced(change.notice.source, change.notice.status)
            found.append(self.say("asks_notice", days=change.notice_days, source=source))
        if change.label is not None:
            source = self.story.sourced(change.label.source, change.label.status)
            found.append(self.say("asks_label", label=self.story.phrases.tell(change.label.title), source=source))
        return tuple(found)

    def task_dates(self, task: PlannedTask, first_day: date | None) -> str:
        """Return when a task begins and ends, as short as can be."""
        if task.waits_days:
            return f"{self.day(task.start, first_day)} – {self.day(task.finish, first_day)}"
        start, finish = self.time(task.start, first_day), self.time(task.finish, first_day)
        if task.start.day == task.finish.day:
            return f"{start}–{finish.rpartition(' ')[2]}"
        return f"{start} – {finish}"

    def span(self, sequence: Sequence) -> str:
        """Return when the plan begins and ends."""
        return self.say(
            "span",
            start=self.day(Moment(day=0, minute=0), sequence.first_day),
            finish=self.day(sequence.finish, sequence.first_day),
        )
