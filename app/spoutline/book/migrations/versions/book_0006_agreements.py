"""Make the table of agreed sets."""

from __future__ import annotations

import sqlalchemy as sa
from alembic import op

revision = "book_0006"
down_revision = "book_0005"


def upgrade() -> None:
    """Make the table; a line holds each serial once, so that two who agree at once cannot both be next."""
    op.create_table(
        "agreements",
        sa.Column("line", sa.Integer(), primary_key=True, autoincrement=False),
        sa.Column("serial", sa.Integer(), primary_key=True, autoincrement=False),
        sa.Column("survey_id", sa.Integer(), nullable=True),
        sa.Column("site", sa.String(60), nullable=False),
        sa.Column("agreed_at", sa.DateTime(), nullable=False),
        sa.Column("document", sa.Text(), nullable=False),
    )
    op.create_index("ix_agreements_site", "agreements", ["site"])
    op.create_index("ix_agreements_survey_id", "agreements", ["survey_id"])
