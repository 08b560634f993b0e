"""What the form of a part says beside its fields: titles, where a figure came from, what a text is understood as."""

from __future__ import annotations

from spoutline.frozen import frozen
from spoutline.gui.wording import tr
from spoutline.model.catalogue_entry import CatalogueEntry, Origin
from spoutline.planning.keeping.entry_fields import PRICE, understood, unit_words
from spoutline.planning.table_intake.cell_values import CellFault
from spoutline.planning.table_intake.intake_fields import CellKind, IntakeField


@frozen
class Reading:
    """How the text of a field stands: what is wrong, else how it is understood where that is not as it stands."""

    fault: str = ""
    note: str = ""


def reading(text: str, field: IntakeField) -> Reading:
    """Return how a text stands in its field."""
    try:
        told = understood(text, field)
    except CellFault as fault:
        near = tr("Did you mean {0}?").format(fault.nearest) if fault.nearest else ""
        return Reading(fault=" ".join(filter(None, (fault.wanted, near))))
    return Reading(note=tr("Read as {0}.").format(told) if told else "")


def help_of(field: IntakeField) -> str:
    """Return what a field wants: bounds with their unit, or how it is written."""
    if field.key == PRICE:
        return tr("Such as 12.50 USD; 11.00 EUR.")
    if field.cell is CellKind.PORT:
        return tr("Thread standard, size, gender and path, such as NPT 3/4 male single.")
    if field.cell is CellKind.DATE:
        return tr("Written as YYYY-MM-DD.")
    if field.cell is CellKind.WORDS and field.keeps_order:
        return tr("Words between blanks, of: {0}").format(", ".join(choice.value for choice in field.choices))
    unit = unit_words(field)
    bounds = field.bounds.words if field.is_figure and field.cell in (CellKind.NUMBER, CellKind.WHOLE) else ""
    told = " ".join(filter(None, (bounds, unit)))
    told = f"{told[:1].upper()}{told[1:]}"
    return tr("{0}; another unit may stand behind the number.").format(told) if unit else told


def origin_words(entry: CatalogueEntry, column: str) -> str:
    """Return where a figure came from; empty where it is stated or there is none."""
    cell = next((one for one in entry.figures if one.column == column), None)
    if cell is None or cell.origin is Origin.STATED:
        return ""
    words = {
        Origin.SIMILAR: tr("from the similar part {0}"),
        Origin.FAMILY: tr("from the family {0}"),
        Origin.TEXT: tr("read out of its text: {0}"),
    }
    return words[cell.origin].format(cell.source)
