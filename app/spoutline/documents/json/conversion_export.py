"""A conversion written as the conversion document; nothing is computed here."""

from __future__ import annotations

from collections.abc import Iterable
from datetime import date, timedelta

from spoutline.documents.json import conversion as record
from spoutline.documents.json.head import ProvenanceRecord
from spoutline.explain.conversion.case_words import CaseWords, emission_change_kg
from spoutline.explain.conversion.story import ConversionStory
from spoutline.explain.writing.money import amount
from spoutline.model.answered import assumptions, site_assumptions
from spoutline.model.check import WorkedLine
from spoutline.model.conversion import SiteConversion
from spoutline.model.conversion_sequence import PlannedTask, Sequence
from spoutline.model.dispenser_type import inherited_fields
from spoutline.model.emission_sheet import EmissionSheet
from spoutline.model.position_conversion import ConversionOption, DifferenceLine, PositionConversion, PositionOutcome
from spoutline.model.tank_change import TankChange
from spoutline.planning.conversion.cases import CaseResult


def conversion_json(conversion: SiteConversion, words: ConversionStory, cases: Iterable[CaseResult] = ()) -> str:
    """Return the conversion document as indented JSON text, always the same for the same conversion and cases."""
    return conversion_document(conversion, words, cases).model_dump_json(indent=2) + "\n"


def conversion_document(
    conversion: SiteConversion, words: ConversionStory, cases: Iterable[CaseResult] = ()
) -> record.ConversionDocument:
    """Return the document of a conversion; ``words`` makes its sentences, ``cases`` stand beside it."""
    results = tuple(cases)
    return record.ConversionDocument(
        case="" if conversion.case is None else conversion.case.name,
        cases=tuple(_case(one, words) for one in results),
        **ProvenanceRecord.of(conversion.provenance).model_dump(),
        advice=words.say("defers"),
        site=conversion.survey.site.name,
        sets_from=conversion.sets_from,
        jurisdiction=conversion.jurisdiction.id,
        assumed=site_assumptions(conversion.survey.site),
        plan_complete=conversion.plan_complete,
        standing=_standing(conversion, words),
        positions=tuple(_position(one, conversion, words) for one in conversion.positions),
        closings=tuple(
            record.ClosingRecord(
                opening=one.opening,
                dispenser=one.dispenser,
                position=one.position,
                quantity=one.quantity,
                source=one.source,
                status=one.status,
            )
            for one in conversion.closings
        ),
        stays_live=tuple(
            record.LiveRecord(
                opening=one.opening,
                dispenser=one.dispenser,
                quantity=one.quantity,
                needed_by=one.needed_by,
                reason=one.reason,
                says=words.live(one),
                source=one.source,
                status=one.status,
            )
            for one in conversion.stays_live
        ),
        tank_changes=tuple(_tank_change(one, words) for one in conversion.tank_changes),
        decay=None if conversion.decay is None else _decay(conversion.decay),
        sequence=None if conversion.sequence is None else _sequence(conversion.sequence, words),
        emissions=None if conversion.emissions is None else _emissions(conversion.emissions, conversion),
        money=_money(conversion),
    )


def _case(one: CaseResult, words: ConversionStory) -> record.CaseRecord:
    conversion, told = one.conversion, CaseWords(words)
    worked_on = [position for position in conversion.positions if position.outcome is not PositionOutcome.NOTHING_TO_DO]
    followed = [position.followed(conversion.survey.conversion.follow) for position in worked_on]
    sequence = conversion.sequence
    return record.CaseRecord(
        name="" if one.case is None else one.case.name,
        changes=told.changes(one.case),
        positions=one.changed,
        cost=conversion.money.total,
        cost_complete=conversion.money.complete,
        net_present_value=conversion.money.net_present_value,
        years=conversion.survey.conversion.money.years,
        days=None if sequence is None else sequence.finish.day + 1,
        stopped_position_hours=0.0 if sequence is None else sequence.downtime_minutes / 60,
        change_kg=emission_change_kg(conversion),
        losing_recovery=sum(position.loses_recovery for position in conversion.positions),
        departures=sum(option.departures for option in followed if option is not None),
        without_set=sum(option is None for option in followed),
        plan_complete=conversion.plan_complete,
    )


def _tank_change(one: TankChange, words: ConversionStory) -> record.TankChangeRecord:
    return record.TankChangeRecord(
        tank=one.tank,
        positions=one.positions,
        family_today=one.today.family,
        blend_percent_today=one.today.blend_percent,
        family=one.wanted.family,
        blend_percent=one.wanted.blend_percent,
        way=one.way,
        why_within=words.why_within(one),
        others=one.others,
        problems=one.problems,
        notice_days=None if one.notice is None else one.notice_days,
        notice_status=None if one.notice is None else one.notice.status,
        label=None if one.label is None else one.label.title,
        asks=words.asked_by_change(one),
    )


def _decay(line: WorkedLine) -> record.DecayRecord:
    inputs = {item.name: item.value for item in line.inputs}
    return record.DecayRecord(
        least_pressure_pa=line.result.value,
        ullage_m3=inputs["V"],
        nozzles_recovering=round(inputs["N"]),
        formula=line.formula,
        source=line.source,
    )


def _standing(conversion: SiteConversion, words: ConversionStory) -> record.StandingRecord:
    standing = conversion.standing
    return record.StandingRecord(
        standing=standing.standing,
        positions=standing.positions,
        agency=standing.agency.id,
        agency_rule=standing.agency.removal,
        grounds=tuple(
            record.GroundRecord(
                reason=ground.reason,
                source=ground.source,
                status=ground.status,
                threshold_m3_per_year=ground.threshold.value if ground.threshold else None,
            )
            for ground in standing.grounds
        ),
        says=words.standing(standing),
        kept_against_rule=standing.kept,
    )


def _position(one: PositionConversion, conversion: SiteConversion, words: ConversionStory) -> record.PositionRecord:
    currency = conversion.survey.site.currency
    followed = one.followed(conversion.survey.conversion.follow)
    why_not: tuple[str, ...] = ()
    if one.renewal.refusal is not None:
        why_not = words.story.refusal(one.renewal.refusal)
    elif one.renewal.conflict is not None:
        why_not = words.story.conflict(one.renewal.conflict)
    return record.PositionRecord(
        label=one.position.label,
        dispenser=one.position.dispenser,
        outcome=one.outcome,
        kinds=one.kinds,
        follows=(followed.kind or "shown") if followed else None,
        options=tuple(_option(option, currency) for option in (*((one.shown,) if one.shown else ()), *one.options)),
        differences=tuple(_difference(line, currency, words) for line in one.differences),
        tanks=one.position.tanks,
        assumed=assumptions(one.position),
        inherited=tuple(".".join(map(str, path)) for path in inherited_fields(one.position)),
        dispenser_type=one.position.dispenser_type.name if one.position.dispenser_type else "",
        footing=one.renewal.requirement.footing if one.renewal.requirement else {},
        why_not=why_not,
    )


def _option(option: ConversionOption, currency: str) -> record.OptionRecord:
    parts = option.judged.hanging_set.refs
    return record.OptionRecord(
        kind=option.kind or "shown",
        part_numbers=tuple(part.number for part in parts),
        makers=tuple(part.maker for part in parts),
        kept_part_numbers=tuple(parts[place].number for place in option.kept),
        kept_makers=tuple(parts[place].maker for place in option.kept),
        bought=amount(option.bought_minor, currency),
        kept_value=None if option.kept_minor is None else amount(option.kept_minor, currency),
        departures=option.departures,
    )


def _difference(line: DifferenceLine, currency: str, words: ConversionStory) -> record.DifferenceRecord:
    rules = [
        record.RuleRecord(
            rule_id=finding.rule_id,
            severity=finding.severity,
            says=words.story.finding(finding).sentence,
            source=finding.source,
        )
        for finding in line.findings
    ]
    if line.asked_by is not None:
        asked = words.story.requirement_line(line.asked_by)
        rules.append(
            record.RuleRecord(
                rule_id=line.asked_by.rule_id,
                severity=line.asked_by.severity,
                says=f"{asked.title}: {asked.answer}",
                source=line.asked_by.source,
            )
        )
    kind = line.part.kind if line.part else (line.installed.kind if line.installed else None)
    return record.DifferenceRecord(
        action=line.action,
        reason=line.reason,
        slot=line.slot,
        kind=kind,
        part_number=line.part.number if line.part else None,
        maker=line.part.maker if line.part else None,
        installed=words.installed(line.installed),
        quantity=line.quantity,
        amount=None if line.amount_minor is None else amount(line.amount_minor, currency),
        extra_to_keep=None if line.extra_minor is None else amount(line.extra_minor, currency),
        missing=line.missing,
        conflict=line.conflict,
        rules=tuple(rules),
        says=words.difference(line, currency),
    )


def _sequence(sequence: Sequence, words: ConversionStory) -> record.SequenceRecord:
    return record.SequenceRecord(
        first_day=sequence.first_day,
        finish_day=sequence.finish.day,
        work_minutes=sequence.work_minutes,
        downtime_minutes=sequence.downtime_minutes,
        site_stop_minutes=sequence.site_stop_minutes,
        phases=tuple(
            record.PhaseRecord(
                number=phase.number,
                dispensers=phase.dispensers,
                positions=phase.positions,
                greatest_share_out_of_service=max((count / of for _, count, of in phase.out_of_service), default=0.0),
            )
            for phase in sequence.phases
        ),
        tasks=tuple(_task(task, sequence.first_day) for task in sequence.tasks),
        notes=tuple(record.NoteRecord(finding=note.finding, says=words.note(note)) for note in sequence.notes),
        deadlines=tuple(
            record.DeadlineRecord(
                kind=one.kind,
                day=one.day,
                date=None if sequence.first_day is None else sequence.first_day + timedelta(days=one.day),
                limit_days=one.days,
                kept=one.kept,
                says=words.deadline(one, sequence.first_day),
                source=one.source,
                status=one.status,
            )
            for one in sequence.deadlines
        ),
    )


def _task(task: PlannedTask, first_day: date | None) -> record.TaskRecord:
    def day(number: int) -> date | None:
        return None if first_day is None else first_day + timedelta(days=number)

    return record.TaskRecord(
        id=task.id,
        title=task.title,
        role=task.role,
        phase=task.phase,
        places=task.places,
        start_day=task.start.day,
        start_minute=task.start.minute,
        finish_day=task.finish.day,
        finish_minute=task.finish.minute,
        start_date=day(task.start.day),
        finish_date=day(task.finish.day),
        work_minutes=task.work_minutes,
        waits_days=task.waits_days,
        after=task.after,
        critical=task.critical,
        slack_minutes=task.slack_minutes,
        stops_sales=task.stops_sales,
        subject=task.subject,
        tank=task.tank,
    )


def _emissions(sheet: EmissionSheet, conversion: SiteConversion) -> record.EmissionRecord:
    return record.EmissionRecord(
        basis=conversion.survey.conversion.emissions.basis,
        removing=sheet.removing,
        break_even_share=sheet.break_even.result.value,
        crossing_year=sheet.crossing_year,
        reference_year=sheet.reference_year,
        assist_share=sheet.assist_share,
        shares_source=sheet.shares_source,
        years=tuple(
            record.EmissionYearRecord(
                year=one.year,
                onboard_share=one.onboard_share,
                origin=one.origin,
                increment=one.increment,
                displacement_kg=one.displacement_kg,
                spillage_kg=one.spillage_kg,
                permeation_kg=one.permeation_kg,
                total_kg=one.total_kg,
            )
            for one in sheet.years
        ),
        sensitivity=tuple(
            record.SensitivityRecord(
                input=row.input_name,
                low=row.low,
                high=row.high,
                increment_low=row.increment_low,
                increment_high=row.increment_high,
                change_low_kg=row.change_low_kg,
                change_high_kg=row.change_high_kg,
                crossing_low=row.crossing_low,
                crossing_high=row.crossing_high,
                source=row.source,
            )
            for row in sheet.sensitivity
        ),
        figures=tuple(
            record.FigureRecord(
                id=figure.id, value=figure.value, unit=figure.unit, source=figure.source, status=figure.status
            )
            for figure in sheet.figures
        ),
        gaps=sheet.gaps,
    )


def _money(conversion: SiteConversion) -> record.MoneyRecord:
    money = conversion.money
    return record.MoneyRecord(
        currency=money.currency,
        costs=tuple(record.CostRecord(kind=line.kind, label=line.label, amount=line.amount) for line in money.costs),
        total=money.total,
        complete=money.complete,
        yearly_saving=money.yearly_saving,
        payback_years=money.payback_years,
        discounted_payback_years=money.discounted_payback_years,
        net_present_value=money.net_present_value,
        grant_possible=money.grant_possible,
        renewal_parts=money.renewal_total,
        gaps=money.gaps,
    )
