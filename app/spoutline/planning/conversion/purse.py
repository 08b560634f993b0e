"""The money of the years: what each still has, with or without carrying over what an earlier one left."""

from __future__ import annotations

from dataclasses import dataclass, field
from decimal import Decimal
from itertools import accumulate


@dataclass
class Purse:
    """The budgets of ``years`` years, counted from 1, each of ``budget``."""

    budget: Decimal
    years: int
    carry_over: bool = False
    spent: list[Decimal] = field(default_factory=list)

    def __post_init__(self) -> None:
        self.spent = self.spent or [Decimal(0)] * self.years

    def copy(self) -> Purse:
        """Return a purse of its own with the same money."""
        return Purse(self.budget, self.years, self.carry_over, list(self.spent))

    def pay(self, year: int, amount: Decimal) -> None:
        """Spend money in a year."""
        self.spent[year - 1] += amount

    def room(self, year: int) -> Decimal:
        """Return what can still be spent in a year without taking from a later one what is planned there."""
        if not self.carry_over:
            return self.budget - self.spent[year - 1]
        spent = accumulate(self.spent)
        return min(self.budget * at - so_far for at, so_far in enumerate(spent, start=1) if at >= year)

    def left(self, year: int) -> Decimal:
        """Return what a year leaves at its end; what earlier ones left is counted where it is carried over."""
        if not self.carry_over:
            return self.budget - self.spent[year - 1]
        return self.budget * year - sum(self.spent[:year], Decimal(0))

    def available(self, year: int) -> Decimal:
        """Return what a year has at its beginning."""
        carried = self.left(year - 1) if self.carry_over and year > 1 else Decimal(0)
        return self.budget + carried
