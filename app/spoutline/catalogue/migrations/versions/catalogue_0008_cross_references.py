"""Old numbers, and the parts of a catalogue that they lead to."""

from __future__ import annotations

import sqlalchemy as sa
from alembic import op

revision = "catalogue_0008"
down_revision = "catalogue_0007"
branch_labels = None
depends_on = None

_TABLE = "catalogue_cross_reference"


def upgrade() -> None:
    """Make the table; no catalogue has a cross-reference yet."""
    op.create_table(
        _TABLE,
        sa.Column("id", sa.Integer(), autoincrement=False, nullable=False),
        sa.Column("catalogue_id", sa.Integer(), nullable=False),
        sa.Column("first_edition", sa.Integer(), nullable=False),
        sa.Column("last_edition", sa.Integer(), nullable=False),
        sa.Column("number", sa.String(length=80), nullable=False),
        sa.Column("maker", sa.String(length=200), nullable=False),
        sa.Column("folded_number", sa.String(length=160), nullable=False),
        sa.Column("part_number", sa.String(length=80), nullable=False),
        sa.Column("part_maker", sa.String(length=200), nullable=False),
        sa.Column("relation", sa.String(length=40), nullable=False),
        sa.Column("remark", sa.Text(), nullable=False),
        sa.ForeignKeyConstraint(
            ["catalogue_id"], ["catalogue_catalogue.id"], name="fk_catalogue_cross_reference_catalogue_id"
        ),
        sa.PrimaryKeyConstraint("id", name="pk_catalogue_cross_reference"),
        sa.UniqueConstraint("catalogue_id", "number", "maker", "first_edition", name="uq_catalogue_cross_reference"),
    )
    for column in ("folded_number", "first_edition", "last_edition"):
        op.create_index(f"ix_{_TABLE}_{column}", _TABLE, ["catalogue_id", column])


def downgrade() -> None:
    """Take the table away; cross-references are lost."""
    op.drop_table(_TABLE)
