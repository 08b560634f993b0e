"""What questions about the items of one problem have in common, made when first needed."""

from __future__ import annotations

from collections.abc import Callable, Sequence
from functools import cached_property
from typing import TYPE_CHECKING

from spoutline.search.graph import Problem

if TYPE_CHECKING:
    from spoutline.search.alone import LimitsAlone
    from spoutline.search.columns import Columns
    from spoutline.search.ground import Ground
    from spoutline.search.item_table import ItemsOf, Mask, Names


class SharedItems:
    """What problems that differ in their limits alone have in common, made when first needed.

    ``columns`` are made from those of other items where these are the same, or some of them. ``of`` are then the
    others, with none left out. ``alone`` is given where the loads are those of others.
    """

    def __init__(
        self,
        problem: Callable[[], Problem],
        columns: Callable[[], Columns | None],
        items: Callable[[], ItemsOf],
        of: SharedItems | None = None,
        alone: Callable[[], LimitsAlone | None] | None = None,
    ) -> None:
        self._make_problem, self._make_columns, self._make_items = problem, columns, items
        self._make_alone, self._of = alone, of

    @property
    def of(self) -> SharedItems:
        """The others; not kept where it is this one itself, or all it holds would wait for garbage to be collected."""
        return self._of or self

    @cached_property
    def problem(self) -> Problem:
        """The problem of the items."""
        return self._make_problem()

    @cached_property
    def items(self) -> ItemsOf:
        """The items by their numbers."""
        return self._make_items()

    @cached_property
    def names(self) -> Names:
        """Their keys."""
        from spoutline.search.item_table import Names

        return Names(self.items)

    @cached_property
    def rows(self) -> Columns | None:
        """The items as columns; None where a cost is too large for that."""
        return self._make_columns()

    @cached_property
    def alone(self) -> LimitsAlone | None:
        """What each limit tells by itself; None where there are no columns."""
        return self._alone() if self._make_alone is None else self._make_alone()

    def _alone(self) -> LimitsAlone | None:
        from spoutline.search.alone import LimitsAlone

        return None if self.rows is None else LimitsAlone(self.rows)

    @cached_property
    def columns(self) -> Columns | None:
        """The same where sums of costs are exact in them."""
        return self.rows if self.rows is not None and self.rows.is_exact() else None


class Together:
    """Questions about some of the items of one problem each: what bounds tell of them, worked out when first asked."""

    def __init__(self, lowest: Callable[[], Ground], questions: Sequence[Mask]) -> None:
        self._lowest, self._questions = lowest, questions

    def ground(self, at: int) -> Ground:
        """Return what is known of the items of one question."""
        return self._grounds[at]

    @cached_property
    def _grounds(self) -> list[Ground]:
        import numpy as np

        return list(self._lowest().among(np.column_stack(self._questions)))


def shared_of(problem: Problem) -> SharedItems:
    """Return what questions about a problem have in common."""

    def columns() -> Columns | None:
        from spoutline.search.columns import columns_of  # numpy is loaded where it is used

        return columns_of(problem)

    return SharedItems(lambda: problem, columns, lambda: items_of(problem))


def items_of(problem: Problem) -> ItemsOf:
    """Return the items of a problem by their numbers."""
    from spoutline.search.item_table import ItemsOf

    return ItemsOf(problem)
