"""What is known of a problem before anything is looked for: what bounds alone leave of it, and floors of the items."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass
from functools import cached_property

import numpy as np

from spoutline.search.columns import Columns
from spoutline.search.demand_bands import least
from spoutline.search.item_table import Floats, Mask
from spoutline.search.passes import Passes
from spoutline.search.sums import Sums


@dataclass(frozen=True, eq=False)
class Ground:
    """A trimmed problem, majors left aside, without the items that no chain within the limits holds.

    Parameters
    ----------
    columns
        The items left.
    sums
        Bound the chains; the limits are not priced.
    floors
        By item, a cost that no chain within the limits that holds it goes below.
    """

    columns: Columns
    sums: Sums
    floors: Floats

    @classmethod
    def of(cls, columns: Columns) -> Ground:
        """Return what is known of a problem."""
        trimmed = columns.trimmed()
        ground = cls(trimmed, Sums.of(trimmed.limits), np.zeros(len(trimmed)))
        return ground.raised(ground.sums.floor(trimmed, ground.passes)) if trimmed.can_be_filled() else ground

    @cached_property
    def passes(self) -> Passes:
        """The passes over the items left."""
        return Passes(self.columns)

    @cached_property
    def floor(self) -> float:
        """A cost that no chain goes below; infinite where there is none."""
        return least(self.columns, self.floors) if self.columns.can_be_filled() else np.inf

    def raised(self, floors: Floats) -> Ground:
        """Return the same with other floors of the items, those left out for which they are infinite."""
        holds = floors < np.inf
        return Ground(self.columns.only(holds), self.sums, floors[holds])

    def among(self, items: Mask) -> Iterator[Ground]:
        """Yield the same for some of the items each, their floors worked out for all of these questions by one pass.

        Parameters
        ----------
        items
            A row for each of those that the problem was made of, as ``Columns.row`` counts them; a column for each
            question, saying which may be used.
        """
        if not len(self.columns):
            yield from (self for _ in range(items.shape[1]))
            return
        costs = np.where(items[self.columns.row], self.columns.cost[:, None].astype(np.float64), np.inf)
        floors = self.passes.through(costs) - self.sums.most(0.0)[0]
        yield from (self.raised(np.maximum(self.floors, one)) for one in floors.T)
