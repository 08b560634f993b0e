"""Make the table of dispenser types."""

from __future__ import annotations

import sqlalchemy as sa
from alembic import op

revision = "book_0007"
down_revision = "book_0006"


def upgrade() -> None:
    """Make the table; a name is there once, whatever its capitals."""
    op.create_table(
        "dispenser_types",
        sa.Column("id", sa.Integer(), primary_key=True),
        sa.Column("folded_name", sa.String(180), nullable=False, unique=True),
        sa.Column("document", sa.Text(), nullable=False),
        sa.Column("changed_at", sa.DateTime(), nullable=False),
        sa.Column("removed", sa.Boolean(), nullable=False),
    )
