"""Make the tables of quotations, their revisions, parts and history."""

from __future__ import annotations

import sqlalchemy as sa
from alembic import op

revision = "book_0002"
down_revision = "book_0001"


def upgrade() -> None:
    """Make the four tables."""
    op.create_table(
        "quotations",
        sa.Column("id", sa.Integer(), primary_key=True),
        sa.Column("number", sa.String(80), nullable=False),
        sa.Column("customer", sa.String(80), nullable=False),
        sa.Column("site", sa.String(60), nullable=False),
        sa.Column("search_text", sa.Text(), nullable=False),
        sa.Column("survey_id", sa.Integer(), nullable=True),
        sa.Column("status", sa.String(20), nullable=False),
        sa.Column("revision", sa.Integer(), nullable=False),
        sa.Column("version", sa.Integer(), nullable=False),
        sa.Column("valid_to", sa.Date(), nullable=False),
        sa.Column("created_at", sa.DateTime(), nullable=False),
        sa.Column("changed_at", sa.DateTime(), nullable=False),
    )
    for column in ("number", "status", "changed_at"):
        op.create_index(f"ix_quotations_{column}", "quotations", [column])
    op.create_table(
        "quotation_revisions",
        sa.Column("quotation_id", sa.Integer(), sa.ForeignKey("quotations.id"), primary_key=True),
        sa.Column("revision", sa.Integer(), primary_key=True),
        sa.Column("document", sa.Text(), nullable=False),
        sa.Column("issued_at", sa.DateTime(), nullable=True),
        sa.Column("pdf", sa.LargeBinary(), nullable=True),
        sa.Column("workbook", sa.LargeBinary(), nullable=True),
    )
    op.create_table(
        "quotation_parts",
        sa.Column("quotation_id", sa.Integer(), sa.ForeignKey("quotations.id"), primary_key=True),
        sa.Column("revision", sa.Integer(), primary_key=True),
        sa.Column("part_number", sa.String(80), primary_key=True),
    )
    op.create_index("ix_quotation_parts_part_number", "quotation_parts", ["part_number"])
    op.create_table(
        "quotation_events",
        sa.Column("id", sa.Integer(), primary_key=True),
        sa.Column("quotation_id", sa.Integer(), sa.ForeignKey("quotations.id"), nullable=False),
        sa.Column("revision", sa.Integer(), nullable=False),
        sa.Column("status", sa.String(20), nullable=False),
        sa.Column("at", sa.DateTime(), nullable=False),
        sa.Column("by", sa.String(80), nullable=False),
        sa.Column("note", sa.Text(), nullable=False),
    )
    op.create_index("ix_quotation_events_quotation_id", "quotation_events", ["quotation_id"])
