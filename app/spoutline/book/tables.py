"""Tables of the book: surveys, every revision ever saved, programmes, and what the program remembers."""

from __future__ import annotations

from datetime import datetime

from sqlalchemy import DateTime, ForeignKey, Integer, String, Text
from sqlalchemy.orm import DeclarativeBase, Mapped, mapped_column


class BookTable(DeclarativeBase):
    """Registry of the book's tables. Times are UTC without offset."""


class SurveyRow(BookTable):
    """A survey as last saved. ``removed_at`` takes it off the list without losing it."""

    __tablename__ = "surveys"

    id: Mapped[int] = mapped_column(Integer, primary_key=True)
    name: Mapped[str] = mapped_column(String(60))
    revision: Mapped[int] = mapped_column(Integer)
    document: Mapped[str] = mapped_column(Text)
    created_at: Mapped[datetime] = mapped_column(DateTime)
    changed_at: Mapped[datetime] = mapped_column(DateTime, index=True)
    removed_at: Mapped[datetime | None] = mapped_column(DateTime)


class RevisionRow(BookTable):
    """One saved revision; rows are only ever added."""

    __tablename__ = "survey_revisions"

    survey_id: Mapped[int] = mapped_column(ForeignKey("surveys.id"), primary_key=True)
    revision: Mapped[int] = mapped_column(Integer, primary_key=True)
    document: Mapped[str] = mapped_column(Text)
    saved_at: Mapped[datetime] = mapped_column(DateTime)


class ProgrammeRow(BookTable):
    """A programme of conversions over many sites, as it was worked out; rows are only ever added."""

    __tablename__ = "programmes"

    id: Mapped[int] = mapped_column(Integer, primary_key=True)
    name: Mapped[str] = mapped_column(String(120))
    document: Mapped[str] = mapped_column(Text)
    created_at: Mapped[datetime] = mapped_column(DateTime, index=True)


class SettingRow(BookTable):
    """One remembered choice."""

    __tablename__ = "settings"

    name: Mapped[str] = mapped_column(String(60), primary_key=True)
    value: Mapped[str] = mapped_column(Text)
