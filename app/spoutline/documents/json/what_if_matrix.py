"""Several other answers as a stable JSON document: what `whatif --json` prints where several are named."""

from __future__ import annotations

from typing import Literal

from pydantic import Field

from spoutline.documents.json.head import HeadedDocument, ProvenanceRecord, Record
from spoutline.explain.plan.what_if_text import answer_written
from spoutline.model.agreed_sets import SetsFrom
from spoutline.model.requirement import Slot
from spoutline.model.what_if import PartFate, WhatIfEffect, WhatIfQuestion, WhatIfResult
from spoutline.model.what_if_matrix import MatrixCell, MatrixRow, MatrixSum, PartRow, WhatIfMatrix


class ColumnRecord(Record):
    """One answer; prices in minor units (cents), counts of positions and of pieces."""

    answer: str = Field(description="As it is written on the command line.")
    then: ProvenanceRecord
    then_jurisdiction: str
    price_minor: int
    difference_minor: int = Field(description="Against today, of the positions that have a set both times.")
    must_change: int
    may_stay: int
    without_set: int
    parts_coming: int


class CellRecord(Record):
    """A position under one answer; null where the answer is not for it, or where it has no set."""

    effect: WhatIfEffect | None
    price_minor: int | None


class RowRecord(Record):
    """A position; its cells in the order of the columns."""

    label: str
    price_today_minor: int | None
    cells: tuple[CellRecord, ...]


class PartRowRecord(Record):
    """A part of today; what becomes of it in the order of the columns, null where an answer tells nothing of it."""

    label: str
    slot: Slot
    part_number: str
    maker: str
    fates: tuple[PartFate | None, ...]


class WhatIfMatrixDocument(HeadedDocument):
    """What `whatif --json` prints of several answers. Fields are added in later versions, never renamed."""

    format: Literal["spoutline-what-if-matrix"] = "spoutline-what-if-matrix"
    jurisdiction: str
    sets_from: SetsFrom
    question: WhatIfQuestion
    labels: tuple[str, ...] = Field(description="Positions looked at; empty is the whole station.")
    currency: str
    price_today_minor: int
    without_set_today: int
    columns: tuple[ColumnRecord, ...]
    positions: tuple[RowRecord, ...]
    parts: tuple[PartRowRecord, ...]


def what_if_matrix_json(found: WhatIfMatrix) -> str:
    """Return the document as indented JSON, the same text for the same result."""
    before = found.before
    document = WhatIfMatrixDocument(
        **ProvenanceRecord.of(before.provenance).model_dump(),
        jurisdiction=before.jurisdiction.id,
        sets_from=before.sets_from,
        question=found.question,
        labels=found.columns[0].asked.labels,
        currency=found.currency,
        price_today_minor=found.today.price_minor,
        without_set_today=found.today.without_set,
        columns=tuple(map(_column, found.columns, found.sums)),
        positions=tuple(map(_row, found.rows)),
        parts=tuple(map(_part, found.part_rows)),
    )
    return document.model_dump_json(indent=2) + "\n"


def _column(one: WhatIfResult, figures: MatrixSum) -> ColumnRecord:
    return ColumnRecord(
        answer=answer_written(one.asked),
        then=ProvenanceRecord.of(one.made_from),
        then_jurisdiction=one.jurisdiction.id,
        price_minor=figures.price_minor,
        difference_minor=figures.difference_minor,
        must_change=figures.must_change,
        may_stay=figures.may_stay,
        without_set=figures.without_set,
        parts_coming=figures.parts_coming,
    )


def _row(row: MatrixRow) -> RowRecord:
    return RowRecord(label=row.label, price_today_minor=row.price_today_minor, cells=tuple(map(_cell, row.cells)))


def _cell(cell: MatrixCell) -> CellRecord:
    return CellRecord(effect=cell.effect, price_minor=cell.price_minor)


def _part(row: PartRow) -> PartRowRecord:
    return PartRowRecord(
        label=row.label, slot=row.slot, part_number=row.part.number, maker=row.part.maker, fates=row.fates
    )
