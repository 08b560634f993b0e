"""Tables of the book for an installer's records: the documents as entered, and the photos that belong to them."""

from __future__ import annotations

from datetime import date, datetime

from sqlalchemy import Date, DateTime, ForeignKey, Integer, LargeBinary, String, Text
from sqlalchemy.orm import Mapped, mapped_column

from spoutline.book.tables import BookTable


class RecordRow(BookTable):
    """One record; rows are only ever added. ``kind`` is commissioning, wear or inspection."""

    __tablename__ = "position_records"

    id: Mapped[int] = mapped_column(Integer, primary_key=True)
    kind: Mapped[str] = mapped_column(String(20))
    site: Mapped[str] = mapped_column(String(60), index=True)
    position: Mapped[str] = mapped_column(String(60))
    done_on: Mapped[date | None] = mapped_column(Date)
    document: Mapped[str] = mapped_column(Text)
    recorded_at: Mapped[datetime] = mapped_column(DateTime)


class RecordPhotoRow(BookTable):
    """One photo of a record, known by its SHA-256."""

    __tablename__ = "position_record_photos"

    record_id: Mapped[int] = mapped_column(ForeignKey("position_records.id"), primary_key=True)
    sha256: Mapped[str] = mapped_column(String(64), primary_key=True)
    content: Mapped[bytes] = mapped_column(LargeBinary)
