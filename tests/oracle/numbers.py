"""The inspector's own figures per jurisdiction, copied from the published texts and not from the rule tables.

Each figure names its source. ``secondary`` and ``memory`` mean that the standard itself was not read. Trade rules of
thumb are marked ``common practice, no source``; margins are ``engineering judgement``. All values are SI.
"""

from __future__ import annotations

from dataclasses import dataclass, replace

INCH_M = 0.0254  # exact, NIST SP 811
FOOT_M = 0.3048  # exact, NIST SP 811
POUND_FORCE_N = 4.4482216152605  # exact, NIST SP 811
POUND_PER_SQUARE_INCH_PA = 6894.757293168  # NIST SP 811
GALLON_PER_MINUTE_M3_S = 3.785411784e-3 / 60  # exact, NIST SP 811
LITRE_PER_MINUTE_M3_S = 1e-3 / 60
GRAVITY_M_S2 = 9.80665  # exact, NIST SP 811
GRAM_PER_SQUARE_METRE_DAY_KG_M2_S = 1e-3 / 86400


@dataclass(frozen=True, slots=True)
class SpoutBand:
    """Outside diameters of one kind of spout, m."""

    least_m: float
    greatest_m: float


@dataclass(frozen=True, slots=True, kw_only=True)
class Numbers:
    """Every figure that the inspector holds a set against in one jurisdiction."""

    scheme: str = "UL"
    oxygenate_max_percent: float | None = None
    # SAE J285:2007 (secondary): 0.807-0.840 in, 0.929-0.937 in, 1.122-1.250 in
    gasoline_spout: SpoutBand = SpoutBand(0.807 * INCH_M, 0.840 * INCH_M)
    diesel_car_spout: SpoutBand = SpoutBand(0.929 * INCH_M, 0.937 * INCH_M)
    diesel_truck_spout: SpoutBand = SpoutBand(1.122 * INCH_M, 1.250 * INCH_M)
    # ISO 22241-4 (memory): 19 mm nominal; the half millimetre is ours (engineering judgement)
    def_spout: SpoutBand = SpoutBand(0.0185, 0.0195)
    gasoline_straight_m: float | None = 2.5 * INCH_M  # 40 CFR 1090.1550 (memory)
    gasoline_spring_m: float | None = 3.0 * INCH_M  # 40 CFR 1090.1550 (memory)
    gasoline_road_flow_m3_s: float | None = 10 * GALLON_PER_MINUTE_M3_S  # EPA fact sheet on 40 CFR 80.22(j), verified
    hose_length_max_m: float | None = 18 * FOOT_M  # Okla. 165:26-2-92(a)(1), verified
    hose_length_max_fenced_m: float | None = 50 * FOOT_M  # Okla. 165:26-2-92(a)(3), verified
    hose_length_max_marine_m: float | None = 50 * FOOT_M  # NIST HB 44 UR.1.1.2 (memory)
    marine_long_m: float = 26 * FOOT_M  # NIST HB 44 UR.1.1.2 (memory)
    low_permeation: bool = False
    # UL 330 low-permeation marking, CARB (memory): 10 g/m2.day at 38 C
    permeation_max_kg_m2_s: float = 10 * GRAM_PER_SQUARE_METRE_DAY_KG_M2_S
    enhanced_conventional: bool = False
    separation_least_n: float = 100 * POUND_FORCE_N  # UL 567:2021 6.3 (secondary)
    separation_greatest_n: float = 350 * POUND_FORCE_N
    pressure_rating_pa: float = 50 * POUND_PER_SQUARE_INCH_PA  # UL 2586 1.1, verified
    hose_resistance_max_ohm_m: float | None = 70_000 / FOOT_M  # UL 330 (memory)
    device_resistance_max_ohm: float = 0.5e6  # UL 567A 12.2 (secondary)
    total_resistance_max_ohm: float = 1e6  # NFPA 77 guidance (memory)
    joint_resistance_ohm: float = 1.0  # engineering judgement
    vapour_recovery: str = "optional"
    vapour_removal: str = "ask"  # 77 FR 28772: a state revises its plan first
    hold_open_unattended: bool = True  # Oregon State Fire Marshal page on card sites, verified
    hold_open_marine: bool = False  # 29 CFR 1910.106(g)(4), NFPA 30A ch. 11 (memory)
    fuel_hose_is_hardwall: bool = True  # common practice, no source
    hold_open_overhead: bool = False  # IFC 2304/2306 (memory)
    hold_open_overhead_device: bool = (
        True  # the exception there: a nozzle that shuts when it leaves the filler (memory)
    )
    # engineering judgement from here
    service_margin: float = 1.5
    strength_margin: float = 1.25
    velocity_max_m_s: float = 7.0  # guidance for pipes (memory)
    user_tug_n: float = 100.0
    outlet_strength_n: float = 1.25 * 350 * POUND_FORCE_N
    slack_fraction: float = 0.05
    slack_least_m: float = 0.15
    whip_margin: float = 1.2
    # common practice, no source from here
    ground_clearance_m: float = 0.10
    supply_pressure_pa: float = 30 * POUND_PER_SQUARE_INCH_PA
    planes_car: int = 1
    planes_other: int = 2
    wanted_flow_l_min: tuple[tuple[str, float], ...] = (
        ("car", 30.0),
        ("truck", 110.0),
        ("marine", 38.0),
        ("reel", 60.0),
        ("def", 25.0),
    )
    supply_flow_m3_s: tuple[tuple[str, float], ...] = (
        ("car", 10 * GALLON_PER_MINUTE_M3_S),
        ("truck", 40 * GALLON_PER_MINUTE_M3_S),
        ("marine", 25 * GALLON_PER_MINUTE_M3_S),
        ("reel", 25 * GALLON_PER_MINUTE_M3_S),
        ("def", 40 * LITRE_PER_MINUTE_M3_S),
    )


GENERAL_UNITED_STATES = Numbers()
# A district that keeps Stage II for gasoline cars and asks for NVR-1 hose and nozzle where single path stays
# (CARB FAQ, verified that these parts are certified for exempt sites).
VAPOUR_RULES_UNITED_STATES = replace(
    GENERAL_UNITED_STATES,
    low_permeation=True,
    enhanced_conventional=True,
    vapour_recovery="required",
    vapour_removal="not_allowed",
)
# A state that lets Stage II go and asks for both in its place (N.J.A.C. 7:27-16.3, read in the EPA's proposed rule).
WITHOUT_RECOVERY_UNITED_STATES = replace(
    GENERAL_UNITED_STATES, low_permeation=True, enhanced_conventional=True, vapour_removal="allowed"
)
EUROPE = replace(
    GENERAL_UNITED_STATES,
    scheme="EN",
    fuel_hose_is_hardwall=False,  # EN 1360 knows textile hose as well
    oxygenate_max_percent=15.0,  # EN 1360:2013 scope, verified
    # ISO 9158 (memory): 21.3 mm at most; ISO 9159 (memory, weak): 23.6 to about 25.5 mm
    gasoline_spout=SpoutBand(0.0, 0.0213),
    diesel_car_spout=SpoutBand(0.0236, 0.0255),
    diesel_truck_spout=SpoutBand(0.0285, 0.03175),
    gasoline_straight_m=None,
    gasoline_spring_m=None,
    gasoline_road_flow_m3_s=200 * LITRE_PER_MINUTE_M3_S,  # EN 13012:2021 scope, verified; 10 gpm is a US rule
    hose_length_max_m=None,  # no European figure found
    hose_length_max_fenced_m=None,
    hose_length_max_marine_m=None,
    separation_least_n=800.0,  # EN 13617-2 (memory)
    separation_greatest_n=1500.0,
    outlet_strength_n=1.25 * 1500.0,
    pressure_rating_pa=350e3,  # 3.5 bar (memory)
    hose_resistance_max_ohm_m=None,  # EN ISO 8031 grades the assembly: 1 Mohm for grade ohm (memory)
    device_resistance_max_ohm=1e6,
    marine_long_m=8.0,
    hold_open_unattended=False,  # national rules differ: the careful reading
    supply_pressure_pa=200e3,
    supply_flow_m3_s=(
        ("car", 40 * LITRE_PER_MINUTE_M3_S),
        ("truck", 130 * LITRE_PER_MINUTE_M3_S),
        ("marine", 80 * LITRE_PER_MINUTE_M3_S),
        ("reel", 80 * LITRE_PER_MINUTE_M3_S),
        ("def", 40 * LITRE_PER_MINUTE_M3_S),
    ),
)

NUMBERS: dict[str, Numbers] = {
    "us_general": GENERAL_UNITED_STATES,
    "us_vapour_rules": VAPOUR_RULES_UNITED_STATES,
    "us_without_recovery": WITHOUT_RECOVERY_UNITED_STATES,
    "europe": EUROPE,
}
