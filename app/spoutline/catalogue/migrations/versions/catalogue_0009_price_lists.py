"""Price lists of a catalogue: makers' prices with validity, discount groups and quantity breaks."""

from __future__ import annotations

import sqlalchemy as sa
from alembic import op

revision = "catalogue_0009"
down_revision = "catalogue_0008"
branch_labels = None
depends_on = None

_TABLE = "catalogue_price_list"


def upgrade() -> None:
    """Make the table; no catalogue has a price list yet."""
    op.create_table(
        _TABLE,
        sa.Column("id", sa.Integer(), autoincrement=False, nullable=False),
        sa.Column("catalogue_id", sa.Integer(), nullable=False),
        sa.Column("first_edition", sa.Integer(), nullable=False),
        sa.Column("last_edition", sa.Integer(), nullable=False),
        sa.Column("name", sa.String(length=60), nullable=False),
        sa.Column("content", sa.Text(), nullable=False),
        sa.ForeignKeyConstraint(
            ["catalogue_id"], ["catalogue_catalogue.id"], name="fk_catalogue_price_list_catalogue_id"
        ),
        sa.PrimaryKeyConstraint("id", name="pk_catalogue_price_list"),
        sa.UniqueConstraint("catalogue_id", "name", "first_edition", name="uq_catalogue_price_list"),
    )


def downgrade() -> None:
    """Take the table away; price lists of catalogues are lost."""
    op.drop_table(_TABLE)
