"""Make the table of suppliers' layouts."""

from __future__ import annotations

import sqlalchemy as sa
from alembic import op

revision = "book_0012"
down_revision = "book_0011"


def upgrade() -> None:
    """Make the table; a supplier is there once, whatever the capitals of its name."""
    op.create_table(
        "supplier_layouts",
        sa.Column("id", sa.Integer(), primary_key=True),
        sa.Column("folded_name", sa.String(240), nullable=False, unique=True),
        sa.Column("document", sa.Text(), nullable=False),
        sa.Column("changed_at", sa.DateTime(), nullable=False),
        sa.Column("removed", sa.Boolean(), nullable=False),
    )
