"""Make the tables of an installer's records and their photos."""

from __future__ import annotations

import sqlalchemy as sa
from alembic import op

revision = "book_0004"
down_revision = "book_0003"


def upgrade() -> None:
    """Make both tables."""
    op.create_table(
        "position_records",
        sa.Column("id", sa.Integer(), primary_key=True),
        sa.Column("kind", sa.String(20), nullable=False),
        sa.Column("site", sa.String(60), nullable=False),
        sa.Column("position", sa.String(60), nullable=False),
        sa.Column("done_on", sa.Date(), nullable=True),
        sa.Column("document", sa.Text(), nullable=False),
        sa.Column("recorded_at", sa.DateTime(), nullable=False),
    )
    op.create_index("ix_position_records_site", "position_records", ["site"])
    op.create_table(
        "position_record_photos",
        sa.Column("record_id", sa.Integer(), sa.ForeignKey("position_records.id"), primary_key=True),
        sa.Column("sha256", sa.String(64), primary_key=True),
        sa.Column("content", sa.LargeBinary(), nullable=False),
    )
