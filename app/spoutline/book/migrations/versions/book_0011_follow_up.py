"""Keep the day on which somebody asks the customer again beside a quotation, outside its documents."""

from __future__ import annotations

import sqlalchemy as sa
from alembic import op

revision = "book_0011"
down_revision = "book_0010"


def upgrade() -> None:
    """Add the column; no quotation has such a day yet."""
    op.add_column("quotations", sa.Column("follow_up", sa.Date(), nullable=True))
