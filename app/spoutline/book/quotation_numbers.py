"""Numbers of quotations: the next one of a pattern that nobody has had, and none that was sent out twice."""

from __future__ import annotations

from sqlalchemy import func, select
from sqlalchemy.orm import Session

from spoutline.book.quotation_tables import QuotationRevisionRow, QuotationRow, QuotationSerialRow
from spoutline.model.faults import InputFault, InputProblem
from spoutline.model.number_pattern import is_pattern, number_in, series_of
from spoutline.model.quotation import Quotation
from spoutline.model.worded import Worded


def numbered(session: Session, quotation: Quotation) -> Quotation:
    """Return the quotation with the next free number of its pattern; as it is where its number is none.

    The serial and the draft are kept together. SQLite lets only one write at a time; on a server the second of two
    people waits here until the first has the number or has given it up.
    """
    heading = quotation.terms.heading
    if not is_pattern(heading.number):
        return quotation
    series = series_of(heading.number, heading.dated)
    if session.get_bind().dialect.name == "postgresql":
        session.execute(select(func.pg_advisory_xact_lock(func.hashtext(f"spoutline serial {series}"))))
    row = session.get(QuotationSerialRow, series, populate_existing=True)
    if row is None:
        row = QuotationSerialRow(series=series, last=0)
        session.add(row)
    row.last += 1
    while session.scalars(select(QuotationRow.id).where(QuotationRow.number == number_in(series, row.last))).first():
        row.last += 1  # somebody wrote this number by hand
    return _with_number(quotation, number_in(series, row.last))


def keeping_number(quotation: Quotation, row: QuotationRow) -> Quotation:
    """Return a quotation with the number of its row where its own is a pattern only."""
    return _with_number(quotation, row.number) if is_pattern(quotation.terms.heading.number) else quotation


def check_number(session: Session, row: QuotationRow) -> None:
    """Raise ``InputFault`` where another quotation was sent under the same number.

    On a server two people may issue two drafts of one number at the same instant, and neither sees the other's step
    before it is committed; so the second waits here for the first. SQLite lets only one write at a time.
    """
    if session.get_bind().dialect.name == "postgresql":
        session.execute(select(func.pg_advisory_xact_lock(func.hashtext(f"spoutline quotation {row.number}"))))
    other = sent_under(session, row.number, row.id)
    if other is not None:
        wanted = Worded(
            "another was sent under this number, to {customer} for {site}: give this one its own",
            customer=other.customer,
            site=other.site,
        )
        raise InputFault((InputProblem("", "heading.number", row.number, wanted),))


def sent_under(session: Session, number: str, besides: int | None) -> QuotationRow | None:
    """Return the first quotation that was sent under a number; that with the id ``besides`` does not count."""
    sent = (
        select(QuotationRow)
        .join(QuotationRevisionRow, QuotationRevisionRow.quotation_id == QuotationRow.id)
        .where(QuotationRow.number == number, QuotationRevisionRow.issued_at.is_not(None))
        .order_by(QuotationRow.id)
    )
    return session.scalars(sent if besides is None else sent.where(QuotationRow.id != besides)).first()


def _with_number(quotation: Quotation, number: str) -> Quotation:
    heading = quotation.terms.heading.model_copy(update={"number": number})
    return quotation.model_copy(update={"terms": quotation.terms.model_copy(update={"heading": heading})})
