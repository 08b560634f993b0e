"""Elements, liquids and flows that hypothesis draws for the flow calculations."""

from __future__ import annotations

from hypothesis import strategies as st

from spoutline.calc.elements import AnnularRun, Element, FlowCoefficient, HoseRun, LossCoefficient
from spoutline.calc.liquids import LiquidState

FLOWS = st.floats(1e-7, 5e-3)
STATES = st.builds(
    lambda density, mm2_s: LiquidState(
        density_kg_m3=density, kinematic_viscosity_m2_s=mm2_s * 1e-6, temperature_c=20.0
    ),
    st.floats(650, 1110),
    st.floats(0.3, 40),
)
HOSES = st.builds(
    lambda length, bore, rough, coil, share: HoseRun(
        length_m=length,
        bore_m=bore,
        roughness_m=rough,
        coil_diameter_m=coil,
        coiled_length_m=0.0 if coil is None else share * length,
    ),
    st.floats(0.1, 60),
    st.floats(0.012, 0.04),
    st.floats(0, 1e-4),
    st.one_of(st.none(), st.floats(0.2, 2.0)),
    st.floats(0, 1),
)
RINGS = st.builds(
    lambda length, outer, ratio: AnnularRun(
        length_m=length, outer_diameter_m=outer, inner_diameter_m=ratio * outer, roughness_m=1e-5
    ),
    st.floats(0.1, 20),
    st.floats(0.015, 0.04),
    st.floats(0.1, 0.9),
)
ELEMENTS: st.SearchStrategy[Element] = st.one_of(
    HOSES,
    RINGS,
    st.builds(FlowCoefficient, st.floats(0.5, 50)),
    st.builds(LossCoefficient, st.floats(0.1, 10), st.floats(0.01, 0.04)),
)
