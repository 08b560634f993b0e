"""What the liquid passes: hose, ring of a coaxial hose, a part with Kv, a fitting with a loss coefficient."""

from __future__ import annotations

from spoutline.calc.friction import GREATEST_RELATIVE_ROUGHNESS, LEAST_COIL_RATIO
from spoutline.calc.ranges import OutOfRange, RangeReason, require_between, require_positive
from spoutline.frozen import frozen
from spoutline.model.quantity import Dimension


@frozen(kw_only=True)
class HoseRun:
    """Liquid in a round bore; ``coiled_length_m`` of it lies on a drum of centre-line diameter ``coil_diameter_m``."""

    length_m: float
    bore_m: float
    roughness_m: float
    coil_diameter_m: float | None = None
    coiled_length_m: float = 0.0

    def __post_init__(self) -> None:
        require_positive("length_m", self.length_m, Dimension.LENGTH)
        require_positive("bore_m", self.bore_m, Dimension.DIAMETER)
        _require_roughness(self.roughness_m, self.bore_m)
        require_between("coiled_length_m", self.coiled_length_m, Dimension.LENGTH, low=0.0, high=self.length_m)
        if self.coil_diameter_m is not None:
            least = LEAST_COIL_RATIO.value * self.bore_m
            require_between("coil_diameter_m", self.coil_diameter_m, Dimension.DIAMETER, low=least)
        elif self.coiled_length_m > 0.0:
            raise OutOfRange(
                field="coiled_length_m",
                value=self.coiled_length_m,
                low=0.0,
                high=0.0,
                dimension=Dimension.LENGTH,
                reason=RangeReason.CONTRADICTS,
            )


@frozen(kw_only=True)
class AnnularRun:
    """Liquid in the ring between an outer tube (its inside diameter) and an inner tube (its outside diameter)."""

    length_m: float
    outer_diameter_m: float
    inner_diameter_m: float
    roughness_m: float

    def __post_init__(self) -> None:
        require_positive("length_m", self.length_m, Dimension.LENGTH)
        require_positive("inner_diameter_m", self.inner_diameter_m, Dimension.DIAMETER)
        require_positive("gap", self.outer_diameter_m - self.inner_diameter_m, Dimension.DIAMETER)
        _require_roughness(self.roughness_m, self.outer_diameter_m - self.inner_diameter_m)


@frozen
class FlowCoefficient:
    """A part whose maker states Kv: m3/h of water at 1 bar."""

    kv: float

    def __post_init__(self) -> None:
        require_positive("kv", self.kv, Dimension.FLOW_COEFFICIENT)


@frozen
class LossCoefficient:
    """A fitting with a loss coefficient that belongs to the velocity in ``bore_m``."""

    k: float
    bore_m: float

    def __post_init__(self) -> None:
        require_between("k", self.k, Dimension.RATIO, low=0.0)
        require_positive("bore_m", self.bore_m, Dimension.DIAMETER)


Element = HoseRun | AnnularRun | FlowCoefficient | LossCoefficient


def _require_roughness(roughness_m: float, diameter_m: float) -> None:
    greatest = GREATEST_RELATIVE_ROUGHNESS.value * diameter_m
    require_between("roughness_m", roughness_m, Dimension.LENGTH, low=0.0, high=greatest)
