"""Make the tables of surveys, their revisions and settings."""

from __future__ import annotations

import sqlalchemy as sa
from alembic import op

revision = "book_0001"
down_revision = None


def upgrade() -> None:
    """Make the three tables."""
    op.create_table(
        "surveys",
        sa.Column("id", sa.Integer(), primary_key=True),
        sa.Column("name", sa.String(60), nullable=False),
        sa.Column("revision", sa.Integer(), nullable=False),
        sa.Column("document", sa.Text(), nullable=False),
        sa.Column("created_at", sa.DateTime(), nullable=False),
        sa.Column("changed_at", sa.DateTime(), nullable=False),
        sa.Column("removed_at", sa.DateTime(), nullable=True),
    )
    op.create_index("ix_surveys_changed_at", "surveys", ["changed_at"])
    op.create_table(
        "survey_revisions",
        sa.Column("survey_id", sa.Integer(), sa.ForeignKey("surveys.id"), primary_key=True),
        sa.Column("revision", sa.Integer(), primary_key=True),
        sa.Column("document", sa.Text(), nullable=False),
        sa.Column("saved_at", sa.DateTime(), nullable=False),
    )
    op.create_table(
        "settings",
        sa.Column("name", sa.String(60), primary_key=True),
        sa.Column("value", sa.Text(), nullable=False),
    )
