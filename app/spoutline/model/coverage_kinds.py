"""The outlets and climates that the coverage map of an edition asks about."""

from __future__ import annotations

from enum import StrEnum


class OutletKind(StrEnum):
    """Outlets that dispensers usually have (common practice, no source)."""

    NPT_3_4 = "npt_3_4"
    NPT_1 = "npt_1"
    G_3_4 = "g_3_4"
    G_1 = "g_1"
    BALANCE = "coaxial_balance"
    VACUUM_ASSIST = "coaxial_assist"
    WITH_RETURN = "npt_3_4_return"  # 3/4 NPT with a separate vapour return beside it


class ClimateBand(StrEnum):
    """Lowest and highest temperature that a station meets."""

    MILD = "mild"  # -10 to +40 °C; common practice, no source
    MODERATE = "moderate"  # -20 to +40 °C; EN 13012:2021, scope
    WIDE = "wide"  # -29 to +52 °C; UL 2586A, 1.1
