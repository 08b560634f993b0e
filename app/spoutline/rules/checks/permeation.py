"""Check of what leaves through the wall of gasoline hoses, standard against low-permeation."""

from __future__ import annotations

import math

from spoutline.calc.permeation import (
    HIGHEST_TEMPERATURE,
    LOWEST_TEMPERATURE,
    PermeationLoss,
    permeation_applies,
    permeation_loss,
)
from spoutline.model.check import Check, CheckId
from spoutline.model.finding import Severity
from spoutline.model.limit import LimitId
from spoutline.model.part import Part
from spoutline.model.quantity import Dimension, Fact, Quantity
from spoutline.rules.chain.set_view import SetView
from spoutline.rules.checks.holding import bound_of, held, stated


def permeation(view: SetView) -> Check | None:
    """Hold the hoses' permeation (kg/(m2.s)) against the limit where one is asked, else state it.

    The yearly loss is worked out at the middle of the climate, for the hoses chosen and for hoses at the limit of the
    low-permeation class. Source: UL 330, CARB (memory); temperature rule of the EPA model (memory).
    """
    requirement = view.requirement
    if not permeation_applies(requirement.liquid.family):
        return None
    hoses = [link.part for link in view.links if link.part.hose is not None]
    rates = [part.hose.permeation_kg_m2_s for part in hoses if part.hose is not None]
    unknown = tuple(
        Fact("unknown", part.number) for part in hoses if part.hose is not None and part.hose.permeation_kg_m2_s is None
    )
    worst = max((rate for rate in rates if rate is not None), default=None)
    facts, losses = _yearly(view, hoses)
    lines = tuple(line for loss in losses for line in loss.lines)
    value = None if unknown else worst
    if requirement.permeation_max_kg_m2_s is None:
        return stated(
            CheckId.PERMEATION, Severity.ADVICE, value, Dimension.PERMEATION, facts=(*facts, *unknown), lines=lines
        )
    return held(
        CheckId.PERMEATION,
        Severity.MUST,
        value,
        Dimension.PERMEATION,
        upper=bound_of(LimitId.HOSE_PERMEATION_MAX, view.jurisdiction),
        facts=(*facts, *unknown),
        lines=lines,
    )


def _yearly(view: SetView, hoses: list[Part]) -> tuple[tuple[Quantity, ...], list[PermeationLoss]]:
    """Return the yearly losses as facts; none where the climate's middle lies outside the temperature rule."""
    middle = (view.requirement.temperature_low_c + view.requirement.temperature_high_c) / 2.0
    if not LOWEST_TEMPERATURE.value <= middle <= HIGHEST_TEMPERATURE.value:
        return (), []
    losses = [loss for part in hoses if (loss := _stated_loss(view, part, middle)) is not None]
    temperature = Quantity("temperature", middle, Dimension.TEMPERATURE)
    facts = [temperature]
    if len(losses) == len(hoses):
        facts.append(Quantity("yearly_loss", math.fsum(loss.yearly_loss_kg for loss in losses), Dimension.MASS))
    limit = view.jurisdiction.optional_number(LimitId.HOSE_PERMEATION_MAX)
    at_limit = [loss for part in hoses if (loss := _loss_at(view, part, limit, middle)) is not None]
    if at_limit:
        low = math.fsum(loss.yearly_loss_kg for loss in at_limit)
        facts.append(Quantity("yearly_loss_low_permeation", low, Dimension.MASS))
    return tuple(facts), losses


def _stated_loss(view: SetView, part: Part, temperature_c: float) -> PermeationLoss | None:
    rate = None if part.hose is None else part.hose.permeation_kg_m2_s
    return view.of_part("permeation", part, lambda: _loss(part, rate, temperature_c))


def _loss_at(view: SetView, part: Part, limit: float | None, temperature_c: float) -> PermeationLoss | None:
    return view.of_part("permeation at its limit", part, lambda: _loss(part, limit, temperature_c))


def _loss(part: Part, rate_kg_m2_s: float | None, temperature_c: float) -> PermeationLoss | None:
    if part.hose is None or rate_kg_m2_s is None:
        return None
    return permeation_loss(
        rate_kg_m2_s=rate_kg_m2_s,
        bore_m=part.hose.bore_m,
        length_m=part.hose.length_m,
        temperature_c=temperature_c,
    )
