"""Give a step of a quotation the option that it orders."""

from __future__ import annotations

import sqlalchemy as sa
from alembic import op

revision = "book_0005"
down_revision = "book_0004"


def upgrade() -> None:
    """Add the column; steps that are there name no option."""
    op.add_column("quotation_events", sa.Column("option", sa.String(120), nullable=False, server_default=""))
