"""How suppliers want their order files, kept in the book by the supplier's name; capitals do not count in one."""

from __future__ import annotations

from collections.abc import Callable, Iterator
from contextlib import contextmanager
from datetime import UTC, datetime

from sqlalchemy import Boolean, DateTime, Engine, Integer, Select, String, Text, select
from sqlalchemy.orm import Mapped, Session, mapped_column

from spoutline.book.schema import store_faults
from spoutline.book.stored_documents import ReadingNotes, read_kept
from spoutline.book.tables import BookTable
from spoutline.database.engine import queue_up, shown_url
from spoutline.model.faults import InputFault, InputProblem
from spoutline.model.supplier_layout import SupplierLayout, folded_supplier_name
from spoutline.model.worded import Worded

MOST_LAYOUTS = 5_000


class SupplierLayoutRow(BookTable):
    """A layout as last saved; ``removed`` takes it off the list, and one of its name put in later takes its row."""

    __tablename__ = "supplier_layouts"

    id: Mapped[int] = mapped_column(Integer, primary_key=True)
    folded_name: Mapped[str] = mapped_column(String(240), unique=True)
    document: Mapped[str] = mapped_column(Text)
    changed_at: Mapped[datetime] = mapped_column(DateTime)
    removed: Mapped[bool] = mapped_column(Boolean)


class SupplierLayoutBook:
    """Layouts by supplier. Safe to call from several threads and processes; what was put is on disk when it returns."""

    def __init__(
        self, engine: Engine, url: str, now: Callable[[], datetime], notes: ReadingNotes | None = None
    ) -> None:
        self._engine, self._url, self._now = engine, url, now
        self._notes = notes or ReadingNotes()

    def all(self) -> tuple[SupplierLayout, ...]:
        """Return every layout by name of its supplier."""
        query = select(SupplierLayoutRow).where(SupplierLayoutRow.removed.is_(False))
        with store_faults(self._url), Session(self._engine) as session:
            rows = session.scalars(query.order_by(SupplierLayoutRow.folded_name))
            return tuple(self._read(row) for row in rows)

    def of(self, supplier: str) -> SupplierLayout | None:
        """Return the layout of a supplier; None where the book has none."""
        with store_faults(self._url), Session(self._engine) as session:
            row = session.scalars(_of_name(supplier)).one_or_none()
            return None if row is None or row.removed else self._read(row)

    def keep(self, layout: SupplierLayout, before: SupplierLayout | None) -> None:
        """Put a layout in the place of ``before``, as it was read; None where the book had none.

        Raise ``InputFault`` where somebody kept another one in the meantime, a maker is ordered from another supplier,
        or the book holds too many.
        """
        with self._writing() as session:
            others = [
                self._read(row)
                for row in session.scalars(select(SupplierLayoutRow).where(SupplierLayoutRow.removed.is_(False)))
                if row.folded_name != folded_supplier_name(layout.supplier)
            ]
            row = session.scalars(_of_name(layout.supplier)).one_or_none()
            now = None if row is None or row.removed else self._read(row)
            if now != before:
                wanted = "somebody kept another layout for this supplier in the meantime: look again before you keep it"
                raise InputFault((InputProblem("", "supplier", repr(layout.supplier), wanted),))
            if now is None and len(others) >= MOST_LAYOUTS:
                wanted = Worded("a book holds at most {most_layouts} suppliers", most_layouts=MOST_LAYOUTS)
                raise InputFault((InputProblem("", "supplier", repr(layout.supplier), wanted),))
            _check_makers(layout, others)
            self._write(session, row or SupplierLayoutRow(), layout)
            session.commit()

    def remove(self, supplier: str) -> SupplierLayout:
        """Take a layout off the list and return it; raise ``InputFault`` where there is none."""
        with self._writing() as session:
            row = session.scalars(_of_name(supplier)).one_or_none()
            if row is None or row.removed:
                raise unknown(supplier)
            layout, row.removed = self._read(row), True
            session.commit()
        return layout

    @contextmanager
    def _writing(self) -> Iterator[Session]:
        with store_faults(self._url), Session(self._engine.execution_options(writes=True)) as session:
            queue_up(session, "spoutline supplier layouts")
            yield session

    def _write(self, session: Session, row: SupplierLayoutRow, layout: SupplierLayout) -> None:
        row.folded_name = folded_supplier_name(layout.supplier)
        row.document = layout.model_dump_json()
        row.changed_at = self._now().astimezone(UTC).replace(tzinfo=None)
        row.removed = False
        session.add(row)

    def _read(self, row: SupplierLayoutRow) -> SupplierLayout:
        place, named = Worded("supplier {row_id}", row_id=row.id), Worded("Supplier {row_id}", row_id=row.id)
        return read_kept(row.document, SupplierLayout, place, self._notes, named=named, book=shown_url(self._url))


def unknown(supplier: str) -> InputFault:
    """Return what is told of a supplier that the book has no layout for."""
    wanted = "the book keeps nothing for this supplier: `supplier list` names those it has"
    return InputFault((InputProblem("", "supplier", repr(supplier), wanted),))


def _of_name(supplier: str) -> Select[SupplierLayoutRow]:
    return select(SupplierLayoutRow).where(SupplierLayoutRow.folded_name == folded_supplier_name(supplier))


def _check_makers(layout: SupplierLayout, others: list[SupplierLayout]) -> None:
    taken = {folded_supplier_name(maker): one.supplier for one in others for maker in one.ordered_makers}
    problems = tuple(
        InputProblem("", "makers", repr(maker), Worded("its parts are ordered from {other} already", other=other))
        for maker in layout.ordered_makers
        if (other := taken.get(folded_supplier_name(maker))) is not None
    )
    if problems:
        raise InputFault(problems)
