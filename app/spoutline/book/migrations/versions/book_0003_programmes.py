"""Make the table of programmes: the conversions of many sites, ranked over years."""

from __future__ import annotations

import sqlalchemy as sa
from alembic import op

revision = "book_0003"
down_revision = "book_0002"


def upgrade() -> None:
    """Make the table."""
    op.create_table(
        "programmes",
        sa.Column("id", sa.Integer(), primary_key=True),
        sa.Column("name", sa.String(120), nullable=False),
        sa.Column("document", sa.Text(), nullable=False),
        sa.Column("created_at", sa.DateTime(), nullable=False),
    )
    op.create_index("ix_programmes_created_at", "programmes", ["created_at"])
