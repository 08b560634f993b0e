"""Cost of a conversion against the upkeep of today's hardware: exact decimals, nothing guessed."""

from __future__ import annotations

from collections.abc import Iterator
from decimal import ROUND_HALF_UP, Decimal, localcontext

from spoutline.explain.writing.money import amount, decimals
from spoutline.model.conversion_answers import MoneyAnswers, OptionKind
from spoutline.model.conversion_money import CashYear, CostKind, CostLine, MoneyGap, MoneySheet
from spoutline.model.conversion_sequence import Sequence
from spoutline.model.part import Part
from spoutline.model.position_conversion import ConversionOption, PositionConversion, PositionOutcome
from spoutline.model.survey import Survey
from spoutline.model.vapour_figures import AgencyRow, VapourFigureId, VapourTables

_SIXTY = Decimal(60)
_PRECISION = 34
_TENTH = Decimal("0.1")


def money_sheet(
    survey: Survey,
    positions: tuple[PositionConversion, ...],
    sequence: Sequence | None,
    agency: AgencyRow,
    vapour: VapourTables,
) -> MoneySheet:
    """Return cost, saving, payback and value of a conversion.

    Payback and value are shown only where the owner gave upkeep and the price of work; a cost that is not known is a
    gap and never zero.

    Parameters
    ----------
    survey, positions, sequence
        The conversion.
    agency
        Whether a grant exists there.
    vapour
        The figures of the grant.
    """
    answers, currency = survey.conversion.money, survey.site.currency
    followed = [one.followed(survey.conversion.follow) for one in positions if _is_converted(one)]
    options = [option for option in followed if option is not None]
    costs = tuple(_costs(options, sequence, answers, currency))
    gaps = tuple(_gaps(positions, options, sequence, answers, currency))
    total = sum((line.amount for line in costs if line.amount is not None), Decimal(0))
    complete = not {MoneyGap.LABOUR_RATE, MoneyGap.UNPRICED_PARTS, MoneyGap.POSITIONS_OPEN}.intersection(gaps)
    saving = _saving(answers)
    comparable = complete and saving is not None
    years = cash_years(total, saving or Decimal(0), answers.discount_percent, answers.years) if comparable else ()
    return MoneySheet(
        currency=currency,
        costs=costs,
        total=total,
        complete=complete,
        yearly_saving=saving,
        payback_years=simple_payback(total, saving) if comparable and saving is not None else None,
        discounted_payback_years=next((one.year for one in years if one.balance >= 0), None),
        net_present_value=_rounded(years[-1].balance, currency) if years else None,
        discount_percent=answers.discount_percent,
        years=years,
        gaps=gaps,
        grant_possible=_grant(costs, currency, agency, vapour),
        renewal_total=_renewal(positions, currency),
    )


def simple_payback(cost: Decimal, yearly_saving: Decimal) -> Decimal | None:
    """Return the years until the saving has paid the cost, to a tenth; None where nothing is saved."""
    if yearly_saving <= 0:
        return None
    return (cost / yearly_saving).quantize(_TENTH, rounding=ROUND_HALF_UP)


def cash_years(cost: Decimal, yearly_saving: Decimal, discount_percent: Decimal, years: int) -> tuple[CashYear, ...]:
    """Return the flows of the years: the cost at once, the same saving at the end of each year.

    Parameters
    ----------
    cost
        Paid in year 0.
    yearly_saving
        Received at the end of years 1 to ``years``.
    discount_percent
        Percent a year.
    years
        Years of the comparison.
    """
    found: list[CashYear] = []
    balance = Decimal(0)
    with localcontext() as context:
        context.prec = _PRECISION
        growth = 1 + discount_percent / 100
        for year in range(years + 1):
            flow = yearly_saving if year else -cost
            discounted = flow / growth**year
            balance += discounted
            found.append(CashYear(year=year, flow=flow, discounted=discounted, balance=balance))
    return tuple(found)


def grant_of(eligible: Decimal, share: Decimal, maximum: Decimal) -> Decimal:
    """Return the lesser of a share of the eligible cost and a maximum."""
    return min(eligible * share, maximum)


def _is_converted(one: PositionConversion) -> bool:
    return one.outcome is PositionOutcome.CONVERTS


def _costs(
    options: list[ConversionOption], sequence: Sequence | None, answers: MoneyAnswers, currency: str
) -> Iterator[CostLine]:
    yield CostLine(
        kind=CostKind.PARTS,
        label="",
        amount=amount(sum(option.parts_minor for option in options), currency),
        eligible=True,
    )
    yield CostLine(
        kind=CostKind.ACCESSORIES,
        label="",
        amount=amount(sum(option.accessories_minor for option in options), currency),
        eligible=True,
    )
    if sequence is not None:
        rate = answers.labour_rate_per_hour
        hours = Decimal(sequence.work_minutes) / _SIXTY
        labour = None if rate is None else _rounded(rate * hours, currency)
        yield CostLine(kind=CostKind.LABOUR, label=f"{hours.quantize(_TENTH)} h", amount=labour, eligible=True)
        if answers.margin_lost_per_hour is not None:
            down = Decimal(sequence.downtime_minutes) / _SIXTY
            lost = _rounded(answers.margin_lost_per_hour * down, currency)
            yield CostLine(kind=CostKind.LOST_MARGIN, label=f"{down.quantize(_TENTH)} h", amount=lost)
    for own in answers.own_costs:
        yield CostLine(kind=CostKind.OWN, label=own.label, amount=own.amount, eligible=own.eligible)
    if answers.grant is not None:
        yield CostLine(kind=CostKind.GRANT, label="", amount=-answers.grant)


def _gaps(
    positions: tuple[PositionConversion, ...],
    options: list[ConversionOption],
    sequence: Sequence | None,
    answers: MoneyAnswers,
    currency: str,
) -> Iterator[MoneyGap]:
    if sequence is not None and answers.labour_rate_per_hour is None:
        yield MoneyGap.LABOUR_RATE
    if answers.upkeep_today_per_year is None or answers.upkeep_after_per_year is None:
        yield MoneyGap.UPKEEP
    if sequence is not None and answers.margin_lost_per_hour is None:
        yield MoneyGap.MARGIN
    if any(part.price_minor(currency) is None for option in options for part in _bought(option)):
        yield MoneyGap.UNPRICED_PARTS
    good = (PositionOutcome.CONVERTS, PositionOutcome.NOTHING_TO_DO)
    if any(one.outcome not in good for one in positions):
        yield MoneyGap.POSITIONS_OPEN


def _bought(option: ConversionOption) -> Iterator[Part]:
    for place, link in enumerate(option.judged.hanging_set.links):
        if place not in option.kept:
            yield link.part
    for line in option.accessories:
        yield line.part


def _saving(answers: MoneyAnswers) -> Decimal | None:
    today, after = answers.upkeep_today_per_year, answers.upkeep_after_per_year
    return None if today is None or after is None else today - after


def _grant(costs: tuple[CostLine, ...], currency: str, agency: AgencyRow, vapour: VapourTables) -> Decimal | None:
    """Return what the agency's grant could pay, for information; its figures are in US dollars."""
    if not agency.grant or currency != vapour.figure(VapourFigureId.GRANT_MAXIMUM).unit:
        return None
    eligible = sum((line.amount for line in costs if line.eligible and line.amount is not None), Decimal(0))
    share, most = (
        Decimal(str(vapour.value(one))) for one in (VapourFigureId.GRANT_SHARE, VapourFigureId.GRANT_MAXIMUM)
    )
    return _rounded(grant_of(eligible, share, most), currency)


def _renewal(positions: tuple[PositionConversion, ...], currency: str) -> Decimal:
    renewals = [one.way(OptionKind.FULL_RENEWAL) for one in positions if _is_converted(one)]
    return amount(sum(option.bought_minor for option in renewals if option), currency)


def _rounded(value: Decimal, currency: str) -> Decimal:
    return value.quantize(Decimal(1).scaleb(-decimals(currency)), rounding=ROUND_HALF_UP)
