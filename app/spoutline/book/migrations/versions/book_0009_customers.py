"""Make the table of customers."""

from __future__ import annotations

import sqlalchemy as sa
from alembic import op

revision = "book_0009"
down_revision = "book_0008"


def upgrade() -> None:
    """Make the table; a name is there once, whatever its capitals."""
    op.create_table(
        "customers",
        sa.Column("id", sa.Integer(), primary_key=True),
        sa.Column("folded_name", sa.String(240), nullable=False, unique=True),
        sa.Column("document", sa.Text(), nullable=False),
        sa.Column("changed_at", sa.DateTime(), nullable=False),
        sa.Column("removed", sa.Boolean(), nullable=False),
    )
