"""Tables of the book for quotations: each quotation, its revisions with their papers, its parts, its history."""

from __future__ import annotations

from datetime import date, datetime

from sqlalchemy import Date, DateTime, ForeignKey, Integer, LargeBinary, String, Text
from sqlalchemy.orm import Mapped, mapped_column

from spoutline.book.tables import BookTable


class QuotationRow(BookTable):
    """A quotation as it stands; ``version`` counts every change and guards against overwriting newer work."""

    __tablename__ = "quotations"

    id: Mapped[int] = mapped_column(Integer, primary_key=True)
    number: Mapped[str] = mapped_column(String(80), index=True)
    customer: Mapped[str] = mapped_column(String(80))
    site: Mapped[str] = mapped_column(String(60))
    search_text: Mapped[str] = mapped_column(Text)  # number, customer and site, case folded
    survey_id: Mapped[int | None] = mapped_column(Integer)
    status: Mapped[str] = mapped_column(String(20), index=True)
    revision: Mapped[int] = mapped_column(Integer)
    version: Mapped[int] = mapped_column(Integer)
    valid_to: Mapped[date] = mapped_column(Date)
    created_at: Mapped[datetime] = mapped_column(DateTime)
    changed_at: Mapped[datetime] = mapped_column(DateTime, index=True)
    dated: Mapped[date | None] = mapped_column(Date)  # these are None where an older document could not be read
    currency: Mapped[str | None] = mapped_column(String(3))
    total_low: Mapped[str | None] = mapped_column(String(60))
    total_high: Mapped[str | None] = mapped_column(String(60))
    margin_low: Mapped[str | None] = mapped_column(String(60))
    margin_high: Mapped[str | None] = mapped_column(String(60))
    follow_up: Mapped[date | None] = mapped_column(Date)  # when to ask the customer again; of no document


class QuotationSerialRow(BookTable):
    """The last serial that a series of numbers has given; it only rises, so that no number is given twice."""

    __tablename__ = "quotation_serials"

    series: Mapped[str] = mapped_column(String(80), primary_key=True)
    last: Mapped[int] = mapped_column(Integer)


class QuotationRevisionRow(BookTable):
    """One revision. From its issue on neither the document nor the papers change."""

    __tablename__ = "quotation_revisions"

    quotation_id: Mapped[int] = mapped_column(ForeignKey("quotations.id"), primary_key=True)
    revision: Mapped[int] = mapped_column(Integer, primary_key=True)
    document: Mapped[str] = mapped_column(Text)
    issued_at: Mapped[datetime | None] = mapped_column(DateTime)
    pdf: Mapped[bytes | None] = mapped_column(LargeBinary)
    workbook: Mapped[bytes | None] = mapped_column(LargeBinary)
    html: Mapped[bytes | None] = mapped_column(LargeBinary)


class QuotationPartRow(BookTable):
    """A part number in a revision, for search."""

    __tablename__ = "quotation_parts"

    quotation_id: Mapped[int] = mapped_column(ForeignKey("quotations.id"), primary_key=True)
    revision: Mapped[int] = mapped_column(Integer, primary_key=True)
    part_number: Mapped[str] = mapped_column(String(80), primary_key=True, index=True)


class QuotationEventRow(BookTable):
    """One step in the life of a quotation; rows are only ever added."""

    __tablename__ = "quotation_events"

    id: Mapped[int] = mapped_column(Integer, primary_key=True)
    quotation_id: Mapped[int] = mapped_column(ForeignKey("quotations.id"), index=True)
    revision: Mapped[int] = mapped_column(Integer)
    status: Mapped[str] = mapped_column(String(20))
    at: Mapped[datetime] = mapped_column(DateTime)
    by: Mapped[str] = mapped_column(String(80))
    note: Mapped[str] = mapped_column(Text)
    option: Mapped[str] = mapped_column(String(120), server_default="")
