"""The cells of a check read as a person would say them."""

from __future__ import annotations

from dataclasses import replace

import pytest

from documents import plan_factory as factory
from documents.readers import story
from spoutline.explain.writing.numbering import number_ranges
from spoutline.model.check import Bound, Check, CheckId, Outcome, WorkedLine
from spoutline.model.finding import Severity
from spoutline.model.limit import LimitStatus
from spoutline.model.quantity import Dimension, Quantity
from spoutline.units.accepted import UnitSystem


def check(check_id: CheckId, value: float | None, dimension: Dimension, **fields: object) -> Check:
    values: dict[str, object] = {
        "id": check_id,
        "severity": Severity.MUST,
        "outcome": Outcome.PASSES,
        "value": value,
        "dimension": dimension,
        "lower": None,
        "upper": None,
        "margin": None,
    }
    return Check(**{**values, **fields})  # type: ignore[arg-type]


def bound(value: float) -> Bound:
    return Bound(value=value, source="a source", status=LimitStatus.VERIFIED)


def share_line(number: str, ohm_m: float) -> WorkedLine:
    # 70 kilohm per foot is the test limit of hose in PEI RP400 (memory): 70 000 / 0.3048 = 229 659 ohm/m
    most = 70_000 / 0.3048
    return WorkedLine(
        formula="share = R / R_max",
        inputs=(
            Quantity("R", ohm_m, Dimension.RESISTANCE_PER_LENGTH),
            Quantity("R_max", most, Dimension.RESISTANCE_PER_LENGTH),
        ),
        result=Quantity("share", ohm_m / most, Dimension.RATIO),
        source="a source",
        note=number,
    )


def test_the_part_nearest_to_its_own_limit_is_told_with_both_figures() -> None:
    lines = (share_line("QW-W18", 120.0), share_line("QW-C12", 30_000.0))
    text = story().check(
        check(
            CheckId.RESISTANCE_PARTS,
            0.1306,
            Dimension.RATIO,
            upper=bound(1.0),
            margin=0.8694,
            text="QW-C12",
            lines=lines,
        )
    )
    assert text.value == "30 kΩ/m of 230 kΩ/m (QW-C12)"
    assert text.limit == "own limit of each part"
    assert text.margin == "+86.9 %"  # 1 - 30 / 229.659 = 0.8694


def test_a_resistance_that_no_line_explains_is_told_as_it_stands() -> None:
    text = story().check(
        check(CheckId.RESISTANCE_PARTS, None, Dimension.RATIO, upper=bound(1.0), outcome=Outcome.UNKNOWN)
    )
    assert text.value == "cannot be shown"
    assert text.limit == "at most 1"


def test_the_word_of_a_value_follows_it() -> None:
    spout = replace(factory.spout_check(), text="gasoline")
    assert story().check(spout).value == "20.8 mm (gasoline filler)"
    strength = check(CheckId.BREAKAWAY_DRIVE_OFF, 1946.0, Dimension.FORCE, text="outlet")
    assert story().check(strength).value == "1946 N (dispenser outlet)"


def test_a_value_that_is_a_word_stands_alone() -> None:
    reel = check(CheckId.GROUND_CLEARANCE_AT_REST, None, Dimension.LENGTH, text="on_reel")
    assert story().check(reel).value == "taken up by the reel"


@pytest.mark.parametrize(
    ("text", "value", "caution"),
    [
        ("free", "4.2 m of the hose lies on the ground", "driven over"),
        ("on_reel", "pulled out, up to 4.2 m lies on the ground", "driven over"),
        ("filler_low", "4.2 m of the hose hangs below ground level", "between hull and pilings"),
    ],
)
def test_a_hose_on_the_ground_is_told_in_words_with_its_caution(text: str, value: str, caution: str) -> None:
    below = Quantity("length_below_ground", 4.2, Dimension.LENGTH)
    told = story().check(
        replace(
            check(CheckId.GROUND_CLEARANCE_AT_REST, -2.1, Dimension.LENGTH, lower=bound(0.1), margin=-2.2, text=text),
            facts=(below,),
        )
    )
    assert told.value == value
    assert told.margin == ""  # a clearance below nothing is no distance that could be made up
    assert caution in told.remark


def test_the_force_window_of_a_breakaway_is_told_whole() -> None:
    # UL 567 6.3 as reported: 100 to 350 lbf; 1 lbf = 4.4482216 N
    window = check(
        CheckId.BREAKAWAY_FORCE_CLASS,
        890.0,
        Dimension.FORCE,
        lower=bound(444.82),
        upper=bound(1556.88),
        margin=0.18,
        text="inside_window",
        facts=(
            Quantity("separation_minimum", 445.0, Dimension.FORCE),
            Quantity("separation_maximum", 890.0, Dimension.FORCE),
        ),
    )
    text = story().check(window)
    assert (text.value, text.limit) == ("445 N to 890 N", "445 N to 1557 N")
    assert story(UnitSystem.US).check(window).limit == "100 lbf to 350 lbf"


@pytest.mark.parametrize(
    ("planes", "word", "asked", "limit"),
    [(2.0, "two_plane", 1.0, "at least single-plane"), (1.0, "single_plane", 2.0, "at least two-plane")],
)
def test_a_swivel_is_told_by_its_type(planes: float, word: str, asked: float, limit: str) -> None:
    text = story().check(
        check(CheckId.SWIVEL_TYPE, planes, Dimension.COUNT, lower=bound(asked), margin=planes - asked, text=word)
    )
    assert (text.value, text.limit, text.margin) == (word.replace("_", "-"), limit, "")


def test_permeation_shows_the_yearly_loss_beside_low_permeation_hose() -> None:
    facts = (
        Quantity("temperature", 7.5, Dimension.TEMPERATURE),
        Quantity("yearly_loss", 0.67, Dimension.MASS),
        Quantity("yearly_loss_low_permeation", 0.08, Dimension.MASS),
    )
    text = story().check(check(CheckId.PERMEATION, 9.8e-7, Dimension.PERMEATION, facts=facts))
    assert "at 7.5 °C: 0.67 kg through these hoses, 0.08 kg through low-permeation hoses" in text.remark
    unknown = story().check(check(CheckId.PERMEATION, None, Dimension.PERMEATION, facts=facts[::2]))
    assert "not stated through these hoses" in unknown.remark


def test_other_checks_have_no_remark() -> None:
    assert story().check(factory.spout_check()).remark == ""


def test_a_margin_of_temperature_is_a_difference() -> None:
    # 5 K are 9 degrees Fahrenheit apart (NIST SP 811, B.8)
    cold = check(CheckId.RELAXATION_TIME, 10.0, Dimension.TEMPERATURE, lower=bound(5.0), margin=5.0)
    assert story(UnitSystem.US).check(cold).margin.startswith("+9 ")


@pytest.mark.parametrize(
    ("numbers", "told"),
    [([], ""), ([3], "3"), ([2, 1], "1, 2"), ([9, 7, 8, 3, 7], "3, 7–9"), ([1, 2, 4, 5, 6], "1, 2, 4–6")],
)
def test_numbers_in_a_row_are_told_as_a_range(numbers: list[int], told: str) -> None:
    assert number_ranges(numbers) == told


def test_numbers_carry_their_sign() -> None:
    assert number_ranges([1, 2, 3, 7], "L") == "L1–3, L7"


LBF_N = 4.4482216152605  # SP 811, B.8


@pytest.mark.parametrize(
    ("value", "limit", "dimension", "system", "told"),
    [
        # value, limit and difference by hand; the margin is read to the decimals of the two beside it
        (37.854 / 6e4, 30 / 6e4, Dimension.FLOW, UnitSystem.SI, ("37.9 L/min", "at least 30 L/min", "+7.9 L/min")),
        (2.618, 1.5, Dimension.RATIO, UnitSystem.SI, ("2.62", "at least 1.5", "+1.12")),
        (100.04 * LBF_N, 100 * LBF_N, Dimension.FORCE, UnitSystem.US,
         ("100 lbf", "at least 100 lbf", "less than 1 lbf")),
        (99.96 * LBF_N, 100 * LBF_N, Dimension.FORCE, UnitSystem.US,
         ("100 lbf", "at least 100 lbf", "short by less than 1 lbf")),
        (100 * LBF_N, 100 * LBF_N, Dimension.FORCE, UnitSystem.US, ("100 lbf", "at least 100 lbf", "+0 lbf")),
        (90.5 * LBF_N, 100 * LBF_N, Dimension.FORCE, UnitSystem.US, ("90.5 lbf", "at least 100 lbf", "-9.5 lbf")),
        # in inches of 25.4 mm, to the sixteenth: 3.31 m = 130.31 = 10 ft 10 5/16; 0.1 m = 3.937 = 3 15/16;
        # 3.21 m = 126.378 = 10 ft 6 3/8
        (3.31, 0.1, Dimension.LENGTH, UnitSystem.US,
         ("10 ft 10 5/16 in", "at least 3 15/16 in", "+10 ft 6 3/8 in")),
        # half a millimetre is under 1/32 in: a distance that is there is never told as none
        (3.3105, 3.31, Dimension.LENGTH, UnitSystem.US,
         ("10 ft 10 5/16 in", "at least 10 ft 10 5/16 in", "less than 1/16 in")),
        (3.3095, 3.31, Dimension.LENGTH, UnitSystem.US,
         ("10 ft 10 5/16 in", "at least 10 ft 10 5/16 in", "short by less than 1/16 in")),
        (3.31, 0.1, Dimension.LENGTH, UnitSystem.SI, ("3.31 m", "at least 0.1 m", "+3.21 m")),
        # spouts are given to the hundredth of a millimetre (40 CFR 1090.1550 prints 21.34 mm)
        (0.02134, 0.0205, Dimension.DIAMETER, UnitSystem.SI, ("21.34 mm", "at least 20.5 mm", "+0.84 mm")),
        # 1.126 in and 1.122 in (28.6 and 28.5 mm): diameters are read to the thousandth of an inch
        (0.0286, 0.0285, Dimension.DIAMETER, UnitSystem.US, ("1.126 in", "at least 1.122 in", "+0.004 in")),
        (999_668.0, 1e3, Dimension.RESISTANCE, UnitSystem.SI, ("1 MΩ", "at least 1 kΩ", "+999 kΩ")),
        # other prefixes: the difference stands by itself
        (2e6, 0.5e6, Dimension.RESISTANCE, UnitSystem.SI, ("2 MΩ", "at least 500 kΩ", "+1.5 MΩ")),
    ],
)  # fmt: skip
def test_a_margin_is_told_no_finer_than_the_figures_it_is_the_difference_of(
    value: float, limit: float, dimension: Dimension, system: UnitSystem, told: tuple[str, str, str]
) -> None:
    text = story(system).check(check(CheckId.HOSE_REACH, value, dimension, lower=bound(limit), margin=value - limit))
    assert (text.value, text.limit, text.margin) == told
