"""The firm's customers in its book, by name; capitals do not count in one."""

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
from spoutline.model.customer import Customer, folded_customer_name
from spoutline.model.faults import InputFault, InputProblem
from spoutline.model.worded import Worded

MOST_CUSTOMERS = 20_000


class CustomerRow(BookTable):
    """A customer as last saved; ``removed`` takes it off the list, and one of its name put in later takes its row."""

    __tablename__ = "customers"

    id: Mapped[int] = mapped_column(Integer, primary_key=True)
    folded_name: Mapped[str] = mapped_column(String(240), unique=True)
    document: Mapped[str] = mapped_column(Text)
    changed_at: Mapped[datetime] = mapped_column(DateTime)
    removed: Mapped[bool] = mapped_column(Boolean)


class CustomerBook:
    """Customers by name. Safe to call from several threads and processes; what was put is on disk when it returns."""

    def __init__(
        self, engine: Engine, url: str, now: Callable[[], datetime], notes: ReadingNotes | None = None
    ) -> None:
        self._engine, self._url, self._now = engine, url, now
        self._notes = notes or ReadingNotes()

    def all(self) -> tuple[Customer, ...]:
        """Return every customer by name."""
        query = select(CustomerRow).where(CustomerRow.removed.is_(False)).order_by(CustomerRow.folded_name)
        with store_faults(self._url), Session(self._engine) as session:
            return tuple(self._read(row) for row in session.scalars(query))

    def named(self, name: str) -> Customer:
        """Return the customer of this name; raise ``InputFault`` where there is none."""
        with store_faults(self._url), Session(self._engine) as session:
            row = session.scalars(_of_name(name)).one_or_none()
            if row is None:
                wanted = "the book has no customer of this name: `customer list` names them, `customer add` puts one in"
                raise InputFault((InputProblem("", "customer", repr(name), wanted),))
            return self._read(row)

    def called(self, name: str) -> Customer | None:
        """Return the customer that has this name or, where none has it, the one that last had it; None for neither.

        Two that had it both are told apart by nobody, so that is None too.
        """
        had_another = CustomerRow.document.contains('"former_names":["', autoescape=True)
        folded = folded_customer_name(name)
        with store_faults(self._url), Session(self._engine) as session:
            row = session.scalars(_of_name(name)).one_or_none()
            if row is not None:
                return self._read(row)
            renamed = session.scalars(select(CustomerRow).where(CustomerRow.removed.is_(False), had_another))
            found = [
                customer
                for customer in map(self._read, renamed)
                if folded in map(folded_customer_name, customer.former_names)
            ]
        return found[0] if len(found) == 1 else None

    def add(self, customer: Customer) -> None:
        """Put a new customer in; raise ``InputFault`` where the name is taken or the book holds too many."""
        with self._writing() as session:
            rows = {row.folded_name: row for row in session.scalars(select(CustomerRow))}
            row = rows.get(folded_customer_name(customer.name))
            if row is not None and not row.removed:
                raise _taken(customer.name)
            if sum(not one.removed for one in rows.values()) >= MOST_CUSTOMERS:
                wanted = Worded("a book holds at most {most_customers} customers", most_customers=MOST_CUSTOMERS)
                raise InputFault((InputProblem("", "customer", repr(customer.name), wanted),))
            self._write(session, row or CustomerRow(), customer)
            session.commit()

    def change(self, before: Customer, customer: Customer) -> None:
        """Put a customer in the place of ``before``, as it was read; another name is taken where nobody has it.

        Raise ``InputFault`` where somebody changed or removed it in the meantime, or the new name is taken.
        """
        old, new = folded_customer_name(before.name), folded_customer_name(customer.name)
        with self._writing() as session:
            rows = {
                row.folded_name: row
                for row in session.scalars(select(CustomerRow).where(CustomerRow.folded_name.in_([old, new])))
            }
            row = rows.get(old)
            if row is None or row.removed or self._read(row) != before:
                wanted = "somebody changed this customer in the meantime: look again before you change it"
                raise InputFault((InputProblem("", "customer", repr(before.name), wanted),))
            other = rows.get(new)
            if other is not None and other is not row:
                if not other.removed:
                    raise _taken(customer.name)
                other.folded_name = Worded("{other_id} removed", other_id=other.id)
                session.flush()
            self._write(session, row, customer)
            session.commit()

    def remove(self, name: str) -> Customer:
        """Take a customer off the list and return it; quotations keep what they have of it. Raise ``InputFault``."""
        customer = self.named(name)
        with self._writing() as session:
            query = select(CustomerRow).where(CustomerRow.folded_name == folded_customer_name(name))
            session.scalars(query).one().removed = True
            session.commit()
        return customer

    @contextmanager
    def _writing(self) -> Iterator[Session]:
        with store_faults(self._url), Session(self._engine.execution_options(writes=True)) as session:
            queue_up(session, "spoutline customers")
            yield session

    def _write(self, session: Session, row: CustomerRow, customer: Customer) -> None:
        row.folded_name = folded_customer_name(customer.name)
        row.document = customer.model_dump_json()
        row.changed_at = self._now().astimezone(UTC).replace(tzinfo=None)
        row.removed = False
        session.add(row)

    def _read(self, row: CustomerRow) -> Customer:
        place, named = Worded("customer {row_id}", row_id=row.id), Worded("Customer {row_id}", row_id=row.id)
        return read_kept(row.document, Customer, place, self._notes, named=named, book=shown_url(self._url))


def _of_name(name: str) -> Select[CustomerRow]:
    return select(CustomerRow).where(
        CustomerRow.folded_name == folded_customer_name(name), CustomerRow.removed.is_(False)
    )


def _taken(name: str) -> InputFault:
    wanted = "the book has a customer of this name: change that one, or write another name"
    return InputFault((InputProblem("", "name", repr(name), wanted),))
