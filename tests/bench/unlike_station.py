"""A station of any number of positions no two of which ask the same, for the benches of planning and paper."""

from __future__ import annotations

from spoutline.bootstrap.demos import demo_survey
from spoutline.model.survey import Survey

STEP_M = 0.004  # every position is that much farther from the vehicle than the one before
STEPS = 200  # after so many the distance starts again, so that hoses still reach, and the outlet hangs higher
HIGHER_M = 0.005


def unlike_station(count: int) -> Survey:
    """Return the demo refit over and over, dispensers renamed, no two positions alike in distance and outlet."""
    demo = demo_survey("refit_48")
    positions = []
    for number in range(count):
        copy, place = divmod(number, len(demo.positions))
        one = demo.positions[place]
        times, step = divmod(number, STEPS)
        distance = round(one.filler.distance_m + STEP_M * step, 3)
        height = round(one.outlet.height_m + HIGHER_M * times, 3)
        changes = {
            "label": f"{copy}/{one.label}",
            "dispenser": f"{copy}/{one.dispenser}",
            "filler": one.filler.model_copy(update={"distance_m": distance}),
            "outlet": one.outlet.model_copy(update={"height_m": height}),
        }
        positions.append(one.model_copy(update=changes))
    return demo.model_copy(update={"positions": tuple(positions)})
