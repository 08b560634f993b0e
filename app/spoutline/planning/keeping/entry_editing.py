"""Entries as a person changes them: one by its form, several by one field, one by the figures of a similar part."""

from __future__ import annotations

from collections.abc import Iterator, Mapping
from typing import Any, Final

from pydantic import ValidationError

from spoutline.catalogue.descriptions import COLUMNS, describe, figure_cells
from spoutline.frozen import frozen
from spoutline.model.catalogue_entry import CatalogueEntry, EntryPrice, FigureCell, Origin
from spoutline.model.faults import InputFault, InputProblem
from spoutline.model.field_faults import FAULT_BESIDE_OTHERS
from spoutline.model.part import PartKind, PartStatus
from spoutline.model.worded import Worded
from spoutline.planning.keeping.entry_fields import (
    PRICE,
    entry_fields,
    field_named,
    read_prices,
    read_text,
    shown_texts,
)
from spoutline.planning.table_intake.cell_values import CellFault
from spoutline.planning.table_intake.intake_fields import IntakeField

_WORDS: Final = frozenset({"name", "item_number", "gtin", "supplier", "family", "remark"})  # empty, never None


@frozen
class _Filled:
    """What the texts of a form say: fields of the entry, figures, and what is not usable."""

    own: dict[str, Any]
    figures: tuple[FigureCell, ...]
    problems: tuple[InputProblem, ...]


def edited(before: CatalogueEntry, texts: Mapping[str, str]) -> CatalogueEntry:
    """Return an entry with what its form says.

    Parameters
    ----------
    before
        The entry, of a new part one with maker and number alone.
    texts
        Texts by the keys of the fields of the kind that they say. A text that stands as it was shown keeps its value
        and where it came from; any other figure is stated by the person.

    Raises
    ------
    InputFault
        Texts are not usable; ``place`` of each problem is the key of its field, empty for the whole.
    """
    kind = PartKind(texts["kind"]) if texts.get("kind") else None
    filled = _filled(before, kind, texts)
    if filled.problems:
        raise InputFault(filled.problems)
    if "superseded_by" in filled.own and "status" not in filled.own:  # one goes with the other
        filled.own["status"] = PartStatus.SUPERSEDED if filled.own["superseded_by"] else PartStatus.ACTIVE
    own = {name: getattr(before, name) for name in CatalogueEntry.model_fields} | filled.own
    try:
        entry = CatalogueEntry(**own | {"kind": kind, "figures": filled.figures})
    except ValidationError as fault:
        raise InputFault(tuple(_problem(error) for error in fault.errors(include_url=False))) from fault
    wrong = tuple(InputProblem(one.column, one.column, one.value, one.wanted) for one in describe(entry).faults)
    if wrong:
        raise InputFault(wrong)
    return entry


def _filled(before: CatalogueEntry, kind: PartKind | None, texts: Mapping[str, str]) -> _Filled:
    shown = shown_texts(before)
    own: dict[str, Any] = {}
    cells = {cell.column: cell for cell in before.figures}
    problems: list[InputProblem] = []
    for field in entry_fields(kind):
        text = texts.get(field.key, shown.get(field.key, ""))
        if text.strip() == shown.get(field.key, ""):
            continue
        try:
            if field.is_figure:
                cells.pop(field.key, None)
                cells |= {cell.column: cell for cell in _stated(field, kind, text)}
            else:
                own |= _own_value(field, text)
        except CellFault as fault:
            problems.append(InputProblem(field.key, field.key, f"“{text}”", fault.wanted))
    columns = () if kind is None else COLUMNS[kind]
    return _Filled(own, tuple(cells[column] for column in columns if column in cells), tuple(problems))


def _stated(field: IntakeField, kind: PartKind | None, text: str) -> tuple[FigureCell, ...]:
    value = read_text(text, field)
    if value is None or kind is None:
        return ()
    read, wrong = figure_cells(kind, {field.key: value})
    if wrong:
        raise InputFault((InputProblem(field.key, field.key, wrong[0][1], wrong[0][2]),))
    return read


def _own_value(field: IntakeField, text: str) -> dict[str, Any]:
    if field.key == PRICE:
        prices = {one.currency: one.minor for one in read_prices(text) if one.minor is not None}
        return {
            "prices": tuple(EntryPrice(currency=currency, minor=minor) for currency, minor in sorted(prices.items()))
        }
    value = read_text(text, field)
    if value is None and field.key == "status":
        return {}
    return {field.key: "" if value is None and field.key in _WORDS else value}


def _problem(error: Any) -> InputProblem:  # noqa: ANN401 - details of a validation error
    if error["type"] == FAULT_BESIDE_OTHERS:
        context = error.get("ctx", {})
        field = str(context["field"])
        return InputProblem(field, field, str(context["value"]), str(context["wanted"]))
    field = str(error["loc"][0]) if error["loc"] else ""
    return InputProblem(field, field or "part", repr(error["input"])[:60], error["msg"].removeprefix("Value error, "))


def with_field(entry: CatalogueEntry, key: str, text: str) -> CatalogueEntry:
    """Return an entry with one field filled anew; raise ``InputFault`` where the text is not usable in it."""
    if field_named(key, entry.kind) is None:
        kind = "part of no kind" if entry.kind is None else str(entry.kind)
        raise InputFault(
            (InputProblem(str(entry.ref), key, f"“{text}”", Worded("a {kind} has no such field", kind=kind)),)
        )
    kind_text = "" if entry.kind is None else entry.kind.value
    try:
        return edited(entry, {"kind": kind_text, key: text})
    except InputFault as fault:
        told = (InputProblem(str(entry.ref), one.field, one.value, one.wanted) for one in fault.problems)
        raise InputFault(tuple(told)) from fault


def with_figures_of(entry: CatalogueEntry, similar: CatalogueEntry) -> CatalogueEntry:
    """Return an entry with every figure that it lacks as a similar part has it, each saying from which part.

    An entry of no kind becomes one of the kind of the similar part. Raise ``InputFault`` where the kinds differ, or the
    figures taken over do not go with those that stand.
    """
    kind = entry.kind or similar.kind
    if kind is None or kind is not similar.kind:
        wanted = (
            Worded("take the figures of a {kind}", kind=kind)
            if kind
            else "take the figures of a part whose kind is known"
        )
        raise InputFault((InputProblem(str(entry.ref), "kind", str(similar.kind or "nothing"), wanted),))
    cells = {cell.column: cell for cell in _copied(similar)} | {cell.column: cell for cell in entry.figures}
    figures = tuple(cells[column] for column in COLUMNS[kind] if column in cells)
    after = entry.model_copy(update={"kind": kind, "figures": figures})
    wrong = describe(after).faults
    if wrong:
        told = (InputProblem(str(one.ref), one.column, one.value, one.wanted) for one in wrong)
        raise InputFault(tuple(told))
    return after


def _copied(similar: CatalogueEntry) -> Iterator[FigureCell]:
    for cell in similar.figures:
        yield FigureCell(column=cell.column, value=cell.value, origin=Origin.SIMILAR, source=str(similar.ref)[:200])
