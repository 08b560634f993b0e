"""The fields of an entry as a person fills them in: made from the declared figures, read as cells are read."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import replace
from datetime import date
from functools import cache
from typing import Final

from spoutline.catalogue.cells import port_from
from spoutline.catalogue.descriptions import COLUMNS
from spoutline.explain.writing.money import amount
from spoutline.model.catalogue_entry import CatalogueEntry, Cell
from spoutline.model.part import PartKind
from spoutline.model.port import Port
from spoutline.planning.table_intake.cell_values import CellFault, Money, Value, read_cell, read_money
from spoutline.planning.table_intake.column_map import own_unit
from spoutline.planning.table_intake.intake_fields import BY_KEY, CellKind, IntakeField
from spoutline.planning.table_intake.table_look import shown_value

OWN_FIELDS: Final = (
    *("name", "kind", "item_number", "gtin", "supplier", "family", "lead_days", "pack", "price", "status"),
    *("discontinued_from", "superseded_by", "superseded_by_maker", "remark"),
)
PRICE: Final = "price"
_BETWEEN_PRICES: Final = ";"


@cache
def entry_fields(kind: PartKind | None) -> tuple[IntakeField, ...]:
    """Return the fields of a part of this kind: what every entry has, then the kind's figures with their own bounds."""
    own = tuple(BY_KEY[key] for key in OWN_FIELDS)
    return own if kind is None else (*own, *(_of_kind(BY_KEY[column], kind) for column in COLUMNS[kind]))


def _of_kind(field: IntakeField, kind: PartKind) -> IntakeField:
    return replace(field, figures=tuple(figure for figure in field.figures if kind in figure.kinds))


def field_named(key: str, kind: PartKind | None) -> IntakeField | None:
    """Return one field of a part of this kind; None where it has none of this name."""
    return next((field for field in entry_fields(kind) if field.key == key), None)


def unit_words(field: IntakeField) -> str:
    """Return the unit in which a number without one is read; empty where it needs none."""
    return own_unit(field) if field.cell is CellKind.NUMBER else ""


def shown_texts(entry: CatalogueEntry) -> dict[str, str]:
    """Return what the fields of an entry show; empty where it says nothing."""
    return {field.key: _shown(entry, field) for field in entry_fields(entry.kind)}


def _shown(entry: CatalogueEntry, field: IntakeField) -> str:
    if field.key == PRICE:
        return f"{_BETWEEN_PRICES} ".join(f"{amount(one.minor, one.currency)} {one.currency}" for one in entry.prices)
    value: Cell | date | None = entry.figure(field.key) if field.is_figure else getattr(entry, field.key)
    if value is None:
        return ""
    is_whole = field.cell is CellKind.NUMBER and isinstance(value, int) and not isinstance(value, bool)
    return shown_value(float(value) if is_whole and isinstance(value, int) else value, field)


def read_text(text: str, field: IntakeField) -> Value | None:
    """Return what a text of a field says, but for prices; None where it is empty.

    A number without a unit is in the field's own. Raise ``CellFault`` where it is not usable or could mean two things.
    """
    plain = text.strip()
    return read_cell(plain, field, unit_words(field)) if plain else None


def read_prices(text: str) -> Iterator[Money]:
    """Yield the amounts of a text such as ``12.50 USD; 11.00 EUR``; raise ``CellFault`` as ``read_text`` does."""
    for piece in filter(None, (one.strip() for one in text.split(_BETWEEN_PRICES))):
        yield read_money(piece, "")


def understood(text: str, field: IntakeField) -> str:
    """Return how a text is understood; empty where it stands as it is. Raise ``CellFault`` as reading does."""
    if field.key == PRICE:
        told = f"{_BETWEEN_PRICES} ".join(shown_value(one, field) for one in read_prices(text))
    else:
        value = read_text(text, field)
        told = "" if value is None else shown_value(value, field)
    return "" if told == text.strip() else told


def port_in(text: str, field: IntakeField) -> Port | None:
    """Return the port that a text of a field says; None where it is empty or says none yet."""
    try:
        value = read_text(text, field)
        read = None if value is None else port_from(value)
    except (CellFault, ValueError):
        return None
    return read if isinstance(read, Port) else None
