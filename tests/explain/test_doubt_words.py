"""What is told of figures that nobody measured: values and distances in the reader's units and language, by hand."""

from __future__ import annotations

import pytest

from explain.test_what_differs import story
from spoutline.explain.plan.doubt_words import figure_text, visit_texts
from spoutline.model.check import CheckId
from spoutline.model.doubt import Flip, PositionDoubts, Reach, Standing, StationDoubts, UnmeasuredFigure
from spoutline.model.finding import Severity
from spoutline.model.language import Language
from spoutline.model.limit import LimitStatus
from spoutline.model.quantity import Dimension
from spoutline.model.requirement import RequirementId
from spoutline.model.site_figure import PlausibleRange, SiteFigure
from spoutline.units.accepted import UnitSystem

COLD = SiteFigure.CLIMATE_LOW
SI, US = UnitSystem.SI, UnitSystem.US


def unmeasured(*flips: Flip, reaches: tuple[Reach, ...] = (), assumed: float = -10.0) -> UnmeasuredFigure:
    plausible = PlausibleRange(
        figure=COLD, least=-40.0, most=5.0, source="engineering judgement", status=LimitStatus.JUDGEMENT
    )
    return UnmeasuredFigure(
        figure=COLD, assumed=assumed, least=-40.0, most=5.0, range=plausible, flips=flips, reaches=reaches
    )


def flip(after: Standing, at_value: float = -30.0, *, above: bool = False) -> Flip:
    return Flip(
        judged=RequirementId.TEMPERATURE,
        severity=Severity.MUST,
        before=Standing.HOLDS,
        after=after,
        at_value=at_value,
        above=above,
    )


def test_a_difference_of_temperatures_has_no_offset() -> None:
    # -30 C is -22 F; 20 K are 36 degrees of Fahrenheit and never 68 (exact by definition of the scale)
    text = figure_text(unmeasured(flip(Standing.FAILS)), story(system=US))
    assert text.effects == ("Temperature range (must) fails below -22 °F (36 °F less than assumed)",)
    assert text.assumed == "14 °F assumed, may be -40 °F up to 41 °F [engineering judgment]"
    assert text.musts


@pytest.mark.parametrize(
    ("after", "above", "words"),
    [
        (Standing.FAILS, True, "fails above"),
        (Standing.HOLDS, False, "holds below"),
        (Standing.HOLDS, True, "holds above"),
        (Standing.NOT_SHOWN, False, "cannot be shown below"),
        (Standing.NOT_SHOWN, True, "cannot be shown above"),
    ],
)
def test_each_turn_of_a_verdict_has_its_words(after: Standing, above: bool, words: str) -> None:
    (told,) = figure_text(unmeasured(flip(after, above=above)), story(system=SI)).effects
    assert f" {words} -30 °C" in told


def test_without_a_turn_the_nearest_check_is_told_and_without_one_that_it_moves_none() -> None:
    near = Reach(check=CheckId.FLOW_COLD, dimension=Dimension.FLOW, margin=1e-3, least_margin=5e-5, least_share=0.1)
    far = Reach(check=CheckId.FLOW_HOT, dimension=Dimension.FLOW, margin=1e-3, least_margin=4e-4, least_share=0.8)
    told = figure_text(unmeasured(reaches=(far, near)), story(system=SI))
    assert told.effects == ("changes no verdict; nearest: flow, cold, least margin 3 L/min",)  # 5e-5 m3/s x 60 000
    assert not told.flips
    assert figure_text(unmeasured(), story()).effects == ("moves no check",)


def test_positions_where_a_figure_does_the_same_stand_together() -> None:
    same = unmeasured(flip(Standing.FAILS))
    labels = [f"{number}A" for number in range(1, 9)]
    positions = [PositionDoubts(label=label, figures=(same,), checks=()) for label in labels]
    positions.append(PositionDoubts(label="9A", figures=(), checks=()))
    (line,) = visit_texts(StationDoubts(tuple(positions)), story())
    assert line.positions == "1A, 2A, 3A, 4A, 5A, 6A and 2 more"
    assert len(line.cases) == 1
    (alone,) = visit_texts(StationDoubts(tuple(positions[:8])), story())
    assert alone.positions == "every position"
    assert alone.labels == ()  # the station has its climate once


@pytest.mark.parametrize("language", list(Language))
def test_every_language_tells_it_whole(language: Language) -> None:
    text = figure_text(unmeasured(flip(Standing.FAILS)), story(language, SI))
    assert "-30 °C" in text.effects[0]
    assert "20 " in text.effects[0]  # kelvins, between -10 C and -30 C
    assert "{" not in text.assumed + text.effects[0]
