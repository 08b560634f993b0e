"""Columns of the parts at hand: what lies where, held against what a job takes."""

from __future__ import annotations

from collections.abc import Callable

from spoutline.gui.models.record_table import Column
from spoutline.gui.wording import tr
from spoutline.model.stock_entry import StockLine


def line_columns() -> tuple[Column[StockLine], ...]:
    """Return the columns of lines of a stock; nothing to tell is a dash."""
    return (
        Column(title=tr("Place"), text=lambda line: line.balance.place),
        Column(title=tr("Part"), text=lambda line: line.balance.part.number, hint=lambda line: str(line.balance.part)),
        Column(
            title=tr("At hand"),
            text=lambda line: str(line.balance.quantity),
            sort=lambda line: line.balance.quantity,
            is_number=True,
        ),
        _number(tr("Least"), lambda line: line.balance.level.least if line.balance.level is not None else 0),
        _number(tr("Taken already"), lambda line: line.taken, _taken_hint),
        _number(tr("To take"), lambda line: line.takes),
        _number(tr("Short"), lambda line: line.short),
        _number(tr("To order"), lambda line: line.order),
    )


def _taken_hint(line: StockLine) -> str:
    if line.too_many:
        return tr("{0} more than the job needs: bring them back.").format(line.too_many)
    return tr("{0} of {1} that the job needs").format(line.taken, line.needed) if line.taken else ""


def _number(
    title: str, value: Callable[[StockLine], int], hint: Callable[[StockLine], str] | None = None
) -> Column[StockLine]:
    return Column(title=title, text=lambda line: str(value(line) or "–"), sort=value, is_number=True, hint=hint)
