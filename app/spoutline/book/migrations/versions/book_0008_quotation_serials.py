"""Make the table of the serials that patterns of quotation numbers have given."""

from __future__ import annotations

import sqlalchemy as sa
from alembic import op

revision = "book_0008"
down_revision = "book_0007"


def upgrade() -> None:
    """Make the table; a series is there once."""
    op.create_table(
        "quotation_serials",
        sa.Column("series", sa.String(80), primary_key=True),
        sa.Column("last", sa.Integer(), nullable=False),
    )
