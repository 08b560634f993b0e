"""Make the tables of the stock: its movements and its levels."""

from __future__ import annotations

import sqlalchemy as sa
from alembic import op

revision = "book_0014"
down_revision = "book_0013"


def upgrade() -> None:
    """Make the tables; an entry is undone once at most."""
    op.create_table(
        "stock_entries",
        sa.Column("id", sa.Integer(), primary_key=True),
        sa.Column("place", sa.String(60), nullable=False),
        sa.Column("document", sa.Text(), nullable=False),
        sa.Column("undoes", sa.Integer(), nullable=True, unique=True),
        sa.Column("recorded_at", sa.DateTime(), nullable=False),
    )
    op.create_table(
        "stock_levels",
        sa.Column("id", sa.Integer(), primary_key=True),
        sa.Column("place", sa.String(60), nullable=False),
        sa.Column("document", sa.Text(), nullable=False),
        sa.Column("recorded_at", sa.DateTime(), nullable=False),
    )
    op.create_index(op.f("ix_stock_entries_place"), "stock_entries", ["place"])
    op.create_index(op.f("ix_stock_levels_place"), "stock_levels", ["place"])
