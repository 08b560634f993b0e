"""Every family, blend, duty, vapour status, retrieval and jurisdiction, each as a position a person could survey."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass
from itertools import product

from spoutline.model.survey import Position, Survey

BLENDS: dict[str, tuple[float, ...]] = {
    # both sides of every boundary of the published scopes (UL 2586 1.4, 2586A 1.3, 2586B 1.3), and the gaps
    "gasoline": (0, 10, 10.1, 15, 25, 30, 85, 90),
    "diesel": (0, 5, 6, 20, 21, 50, 99, 99.9, 100),
    "kerosene": (0,),
    "fuel_oil": (0,),
    "def": (0,),
}
DUTIES = ("car", "truck", "marine", "reel")
VAPOUR = ("none", "balance", "vacuum_assist")
RETRIEVALS = ("none", "retractor", "reel")
JURISDICTIONS = ("us_general", "us_vapour_rules", "us_without_recovery", "europe")

FILLERS: dict[str, dict[str, float]] = {
    "car": {"distance_m": 1.9, "height_m": 0.9},
    "truck": {"distance_m": 2.4, "height_m": 1.2},
    "marine": {"distance_m": 4.5, "height_m": 0.6},
    "reel": {"distance_m": 2.2, "height_m": 1.0},
}


@dataclass(frozen=True, slots=True)
class Combination:
    """One cell of the sweep."""

    family: str
    blend_percent: float
    duty: str
    vapour: str
    retrieval: str
    jurisdiction: str
    in_flammable_zone: bool | None

    def position(self, label: str) -> Position:
        """Return the position with an outlet that suits the duty, the vapour path and the thread of the place."""
        return Position.model_validate(
            {
                "label": label,
                "liquid": {"family": self.family, "blend_percent": self.blend_percent},
                "duty": self.duty,
                "vapour_today": self.vapour,
                "vapour_wanted": self.vapour,
                "outlet": self._outlet(),
                "filler": FILLERS[self.duty],
                "retrieval": self.retrieval,
                "in_flammable_zone": self.in_flammable_zone,
            }
        )

    def _outlet(self) -> dict[str, object]:
        if self.family == "gasoline" and self.vapour == "balance":
            return {"thread": "UN", "size": "1-7/8-12", "path": "balance", "height_m": 2.1}
        if self.family == "gasoline" and self.vapour == "vacuum_assist":
            return {"thread": "M", "size": "34x1.5", "path": "vacuum_assist", "height_m": 2.1}
        small = self.duty == "car" or self.family == "def"
        thread = "G" if self.jurisdiction == "europe" else "NPT"
        return {"thread": thread, "size": "3/4" if small else "1", "height_m": 2.1}


def combinations(family: str, jurisdiction: str) -> Iterator[Combination]:
    """Yield every cell of one family in one jurisdiction."""
    zones: tuple[bool | None, ...] = (True, False) if family == "def" else (None,)
    for blend, duty, vapour, retrieval, zone in product(BLENDS[family], DUTIES, VAPOUR, RETRIEVALS, zones):
        yield Combination(family, blend, duty, vapour, retrieval, jurisdiction, zone)


def representative(cells: list[Combination]) -> list[Combination]:
    """Return a part of the cells of one family that holds every pair of answers.

    Where a family has several blends, each blend meets each duty, and these two decide vapour status and retrieval: an
    orthogonal array of strength two (Rao 1947), shifted from one jurisdiction to the next, so that over these other
    triples are met. Where it has one, any two of the other three decide the third.
    """
    single = len(BLENDS[cells[0].family]) == 1
    chosen = []
    for cell in cells:
        duty, vapour = DUTIES.index(cell.duty), VAPOUR.index(cell.vapour)
        retrieval, where = RETRIEVALS.index(cell.retrieval), JURISDICTIONS.index(cell.jurisdiction)
        blend = BLENDS[cell.family].index(cell.blend_percent)
        if single:
            wanted = (duty + vapour + retrieval + where) % 3 == 0
        else:
            wanted = vapour == (blend + duty + where) % 3 and retrieval == (blend + 2 * duty + where) % 3
        if wanted:
            chosen.append(cell)
    return chosen


def survey_of(cells: list[Combination]) -> Survey:
    """Return one survey with a position per cell; the cells share their jurisdiction."""
    jurisdiction = cells[0].jurisdiction
    currency = "EUR" if jurisdiction == "europe" else "USD"
    site = {
        "name": "Sweep",
        "jurisdiction": jurisdiction,
        "currency": currency,
        "climate": {"low_c": -10, "high_c": 38},
    }
    positions = [cell.position(str(number)) for number, cell in enumerate(cells, 1)]
    return Survey.model_validate({"site": site, "positions": positions})
