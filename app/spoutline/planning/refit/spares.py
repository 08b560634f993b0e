"""Spares of a kind of part: a percentage of what the station has of it, spread over its part numbers."""

from __future__ import annotations

from collections.abc import Mapping
from decimal import ROUND_CEILING, Decimal
from fractions import Fraction

from spoutline.model.part_ref import PartRef
from spoutline.model.quotation_terms import Singles, SparesRule


def spare_pieces(fitted: int, percent: Decimal) -> int:
    """Return how many spares ``percent`` of the pieces fitted makes, rounded up to whole pieces."""
    return int((Decimal(fitted) * percent / 100).to_integral_value(rounding=ROUND_CEILING))


def spread_spares(fitted: Mapping[PartRef, int], rule: SparesRule) -> dict[PartRef, int]:
    """Return the spares of every part of a kind; ``fitted`` counts the pieces of each at the station.

    The percentage of all pieces is rounded up once. Each of the spares goes where most pieces then hang for one spare,
    the one given counted in: the method of highest averages (D'Hondt), which gives the parts of which there are most
    theirs first; equal averages go to the part of which there are more, then to the earlier number. No part has more
    than the percentage of its own pieces, rounded up; one of which only one is fitted has none unless the rule lets it
    share. That spares go by the station and not by the line is common practice, no source.
    """
    sharing = [ref for ref in sorted(fitted) if fitted[ref] > 1 or rule.singles is Singles.SHARE]
    most = {ref: spare_pieces(fitted[ref], rule.percent) for ref in sharing}
    spares = dict.fromkeys(fitted, 0)
    for _ in range(spare_pieces(sum(fitted.values()), rule.percent)):
        still = [ref for ref in sharing if spares[ref] < most[ref]]
        if not still:
            break
        spares[max(still, key=lambda ref: (Fraction(fitted[ref], spares[ref] + 1), fitted[ref]))] += 1
    return spares
