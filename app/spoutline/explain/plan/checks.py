"""The cells of a check in words: value, limit, margin, and what a reader should know beside them."""

from __future__ import annotations

from spoutline.explain.plan.words import Words
from spoutline.model.check import Check, CheckId, WorkedLine
from spoutline.model.limit import LimitStatus
from spoutline.model.part import NozzleService
from spoutline.model.quantity import Dimension, Quantity
from spoutline.rules.checks.flow import FlowText
from spoutline.rules.checks.holding import TOLERANCE
from spoutline.rules.checks.reach import BELOW_GROUND, HangText
from spoutline.rules.checks.spout import SwivelType

_PLANES = {1.0: SwivelType.SINGLE_PLANE, 2.0: SwivelType.TWO_PLANE}
_OUTLET = "outlet"
_BELOW = {HangText.FILLER_LOW.value: "hangs_below_ground", HangText.ON_REEL.value: "reel_on_ground"}
_CLEARANCES = (CheckId.GROUND_CLEARANCE_AT_REST, CheckId.GROUND_CLEARANCE_IN_USE)


def check_value(check: Check, words: Words) -> str:
    """Return the value of a check with the word that belongs to it behind, in parentheses."""
    share = _share_line(check)
    if share is not None:
        value, limit = (words.display.reading(item.value, item.dimension) for item in share.inputs)
        return words.phrases.fill("value_of_part", value=value, limit=limit, part=check.text)
    if check.id is CheckId.BREAKAWAY_FORCE_CLASS:
        low, high = (_figure(check, name) for name in ("separation_minimum", "separation_maximum"))
        if low is not None and high is not None:
            return words.window(low, high, check.dimension)
    below = below_ground_text(check, words)
    if below:
        return below
    if check.text == FlowText.SOLID:
        solid_c = _figure(check, "solid_point")
        return words.phrases.fill("does_not_move", temperature=words.show(solid_c, Dimension.TEMPERATURE))
    word = _word(check, words)
    if check.value is None or (check.id is CheckId.SWIVEL_TYPE and word):
        return word or words.phrases.text["unknown_value"]
    shown = words.display.reading(check.value, check.dimension)
    return f"{shown} ({word})" if word else shown


def check_limit(check: Check, words: Words) -> str:
    """Return the window that a check is held against."""
    if _share_line(check) is not None:
        return words.phrases.text["own_limit"]
    if check.id is CheckId.SWIVEL_TYPE and check.lower is not None and check.lower.value in _PLANES:
        return f"{words.phrases.text['at_least']} {words.word(_PLANES[check.lower.value])}"
    low = None if check.lower is None else check.lower.value
    high = None if check.upper is None else check.upper.value
    return words.window(low, high, check.dimension)


def check_margin(check: Check, words: Words) -> str:
    """Return the distance to the nearer limit with its sign; empty where there is none, or none to measure."""
    if check.margin is None or below_ground(check) is not None or (check.id is CheckId.SWIVEL_TYPE and check.text):
        return ""
    if _share_line(check) is not None:
        return _signed(words.display.show(check.margin * 100.0, Dimension.PERCENT, digits=3))
    # the distance between two temperatures is no temperature: it has no zero point
    difference = check.dimension is Dimension.TEMPERATURE
    dimension = Dimension.TEMPERATURE_DIFFERENCE if difference else check.dimension
    decimals = _decimals(check, words)
    margin = 0.0 if abs(check.margin) <= TOLERANCE * _scale(check) else check.margin
    if step := words.display.least_step(margin, dimension):
        return _less_than_a_step(margin, step, words)
    if decimals is None:
        return _signed(words.display.reading(margin, dimension))
    own = words.display.read_decimals(margin, dimension)
    decimals = decimals if own is None else min(decimals, own)
    text = words.display.to_decimals(margin, dimension, decimals)
    if margin and text == words.display.to_decimals(0.0, dimension, decimals):
        # a distance that is there is never told as none
        step = words.display.to_decimals(words.display.from_shown(10.0**-decimals, dimension), dimension, decimals)
        return _less_than_a_step(margin, step, words)
    return _signed(text)


def _less_than_a_step(margin: float, step: str, words: Words) -> str:
    return words.phrases.fill("margin_less" if margin > 0 else "margin_short", step=step)


def _signed(text: str) -> str:
    return text if text.startswith("-") else f"+{text}"


def _scale(check: Check) -> float:
    return max((abs(bound.value) for bound in (check.lower, check.upper) if bound is not None), default=0.0)


def _decimals(check: Check, words: Words) -> int | None:
    """Return the most decimals to which value and limits are read; None where they are read with different prefixes."""
    read = [check.value, *(bound.value for bound in (check.lower, check.upper) if bound is not None)]
    if check.id is CheckId.BREAKAWAY_FORCE_CLASS:
        read += [_figure(check, name) for name in ("separation_minimum", "separation_maximum")]
    found = [words.display.read_decimals(value, check.dimension) for value in read if value is not None]
    known = [decimals for decimals in found if decimals is not None]
    return max(known) if known and len(known) == len(found) else None


def rests_on_memory(check: Check) -> bool:
    """Say whether a check was held against a limit that is recalled and was not read anywhere."""
    bounds = (check.lower, check.upper)
    return check.margin is not None and any(one is not None and one.status is LimitStatus.MEMORY for one in bounds)


def check_remark(check: Check, words: Words) -> str:
    """Return a sentence that goes beside a check; empty for most."""
    if below_ground(check) is not None:
        return words.phrases.text["below_ground_caution" if check.text == HangText.FILLER_LOW else "on_ground_caution"]
    loss, low, temperature = (
        _figure(check, name) for name in ("yearly_loss", "yearly_loss_low_permeation", "temperature")
    )
    if check.id is not CheckId.PERMEATION or temperature is None or (loss is None and low is None):
        return ""
    return words.phrases.fill(
        "permeation_year",
        temperature=words.show(temperature, Dimension.TEMPERATURE),
        loss=words.show(loss, Dimension.MASS),
        low=words.show(low, Dimension.MASS),
    )


def below_ground(check: Check) -> float | None:
    """Return how much hose lies on the ground or hangs below it, in metres; None where it hangs clear."""
    return _figure(check, BELOW_GROUND) if check.id in _CLEARANCES else None


def below_ground_text(check: Check, words: Words) -> str:
    """Return in words how much hose lies on the ground or hangs below it; empty where it hangs clear."""
    below = below_ground(check)
    if below is None:
        return ""
    return words.phrases.fill(
        _BELOW.get(check.text, "lies_on_ground"), length=words.display.reading(below, Dimension.LENGTH)
    )


def _word(check: Check, words: Words) -> str:
    if not check.text:
        return ""
    if check.id is CheckId.SPOUT_DIAMETER and check.text in set(NozzleService):
        return words.word(NozzleService(check.text))
    return words.phrases.text["outlet"] if check.text == _OUTLET else words.phrases.fact_value("", check.text)


def _share_line(check: Check) -> WorkedLine | None:
    """Return the line of the part that comes nearest to its own limit, with its figure and that limit."""
    if check.id is not CheckId.RESISTANCE_PARTS or check.value is None:
        return None
    return next((line for line in check.lines if line.note == check.text and len(line.inputs) == 2), None)


def _figure(check: Check, name: str) -> float | None:
    return next((fact.value for fact in check.facts if isinstance(fact, Quantity) and fact.name == name), None)
