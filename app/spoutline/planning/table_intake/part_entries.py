"""A line of a table as an entry of a catalogue: over what the draft holds of the part, or new.

What a table does not say stays as it was, so that a price file changes prices and nothing else.
"""

from __future__ import annotations

from collections.abc import Mapping
from functools import lru_cache
from typing import Any, Final

from pydantic import ValidationError

from spoutline.catalogue.descriptions import COLUMNS, figure_cells
from spoutline.frozen import frozen
from spoutline.model.catalogue_entry import CatalogueEntry, EntryPrice, FigureCell, Origin
from spoutline.model.field_faults import FAULT_BESIDE_OTHERS
from spoutline.model.part import PartKind, PartStatus
from spoutline.model.worded import Worded
from spoutline.planning.table_intake.cell_values import Money, Value
from spoutline.planning.table_intake.column_map import TableMap
from spoutline.planning.table_intake.intake import PartLine
from spoutline.planning.table_intake.intake_fields import BY_KEY
from spoutline.planning.table_intake.text_patterns import KIND_PATTERN, proposals, proposed_kind

_PLAIN: Final = (
    *("name", "status", "discontinued_from", "superseded_by", "superseded_by_maker", "item_number", "gtin"),
    *("supplier", "family", "lead_days", "pack", "remark"),
)
_LONGEST_SOURCE: Final = 200


@frozen
class LineFault:
    """What keeps a line from being an entry: the field, what it says, what would be right."""

    field: str
    value: str
    wanted: str


@frozen
class MergedLine:
    """The entry that a line makes of what was there, None where ``faults`` say why there is none."""

    entry: CatalogueEntry | None
    faults: tuple[LineFault, ...] = ()


def merged(line: PartLine, before: CatalogueEntry | None, table_map: TableMap) -> MergedLine:
    """Return the entry of a line.

    Parameters
    ----------
    line
        The line, each of its cells sound.
    before
        What the draft holds under its number and maker; None where nothing.
    table_map
        Who supplies the table, and which patterns the keeper confirmed for its texts.
    """
    kind, kind_is_read = _kind(line, before, table_map)
    stated = {key: value for key, value in line.values.items() if BY_KEY[key].is_figure}
    if stated and kind is None:
        wanted = "say the kind of the part in a column, a heading between rows or for all rows: it has figures"
        return MergedLine(None, (LineFault("kind", "nothing", wanted),))
    given: dict[str, Any] = {} if before is None else {name: getattr(before, name) for name in _PLAIN}
    given |= {name: line.values[name] for name in _PLAIN if name in line.values}
    if table_map.supplier and "supplier" not in line.values:
        given["supplier"] = table_map.supplier
    if given.get("superseded_by") and "status" not in line.values:
        given["status"] = PartStatus.SUPERSEDED
    figures, wrong = _figures(line, before, kind, stated, table_map)
    if wrong:
        return MergedLine(None, wrong)
    remark = str(given.get("remark", ""))
    if kind_is_read and kind is not None and not remark and before is None:
        given["remark"] = Worded("kind read out of its text: {kind}", kind=kind.value.replace("_", " "))
    try:
        entry = CatalogueEntry(
            number=line.number,
            maker=line.maker,
            kind=kind,
            prices=_prices(line.prices, before),
            figures=figures,
            **given,
        )
    except ValidationError as fault:
        return MergedLine(None, tuple(_fault(one) for one in fault.errors(include_url=False)))
    return MergedLine(entry)


def _kind(line: PartLine, before: CatalogueEntry | None, table_map: TableMap) -> tuple[PartKind | None, bool]:
    held = before.kind if before is not None else None
    known = line.kind if line.says_kind or held is None else held
    if known is None and KIND_PATTERN in table_map.pattern:
        return proposed_kind(str(line.values.get("name", ""))), True
    return known, False


def _prices(said: tuple[Money, ...], before: CatalogueEntry | None) -> tuple[EntryPrice, ...]:
    prices = {} if before is None else {price.currency: price.minor for price in before.prices}
    for money in said:
        if money.minor is None:
            prices.pop(money.currency, None)  # the table says that there is no list price
        else:
            prices[money.currency] = money.minor
    return tuple(EntryPrice(currency=currency, minor=minor) for currency, minor in sorted(prices.items()))


def _figures(
    line: PartLine,
    before: CatalogueEntry | None,
    kind: PartKind | None,
    stated: Mapping[str, Value],
    table_map: TableMap,
) -> tuple[tuple[FigureCell, ...], tuple[LineFault, ...]]:
    if kind is None:
        return (), ()
    cells: dict[str, FigureCell] = {}
    if before is not None and before.kind is kind:
        cells = {cell.column: cell for cell in before.figures}
    for cell in _read_out_of_text(line, before, kind, table_map):
        cells.setdefault(cell.column, cell)
    faults: list[LineFault] = []
    for column, value in stated.items():
        read, wrong = _stated_cell(kind, column, value)
        for cell in read:
            known = cells.get(cell.column)
            if known is None or known.value != cell.value or known.origin is not Origin.STATED:
                cells[cell.column] = cell
        faults += (LineFault(*one) for one in wrong)
    return tuple(cells[column] for column in COLUMNS[kind] if column in cells), tuple(faults)


@lru_cache(maxsize=20_000, typed=True)  # tables repeat themselves
def _stated_cell(
    kind: PartKind, column: str, value: Value
) -> tuple[tuple[FigureCell, ...], tuple[tuple[str, str, str], ...]]:
    return figure_cells(kind, {column: value})


def _read_out_of_text(
    line: PartLine, before: CatalogueEntry | None, kind: PartKind, table_map: TableMap
) -> list[FigureCell]:
    text = str(line.values.get("name", "") or (before.name if before is not None else ""))
    made: list[FigureCell] = []
    for one in proposals(text, kind, table_map.pattern):
        source = f"{one.pattern}: {one.words}"[:_LONGEST_SOURCE]
        made += figure_cells(kind, {one.column: one.value}, Origin.TEXT, source)[0]
    return made


def _fault(error: Any) -> LineFault:  # noqa: ANN401 - details of a validation error
    field = ".".join(str(step) for step in error["loc"]) or "row"
    if error["type"] == FAULT_BESIDE_OTHERS:
        context = error.get("ctx", {})
        return LineFault(str(context["field"]), str(context["value"]), str(context["wanted"]))
    return LineFault(field, repr(error["input"])[:60], error["msg"].removeprefix("Value error, "))
