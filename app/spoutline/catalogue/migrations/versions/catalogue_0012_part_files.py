"""Pictures and documents of parts: their contents, each kept once."""

from __future__ import annotations

import sqlalchemy as sa
from alembic import op

revision = "catalogue_0012"
down_revision = "catalogue_0011"
branch_labels = None
depends_on = None


def upgrade() -> None:
    """Make the table; no part has a file yet."""
    op.create_table(
        "catalogue_file",
        sa.Column("digest", sa.String(length=64), nullable=False),
        sa.Column("media", sa.String(length=40), nullable=False),
        sa.Column("content", sa.LargeBinary(), nullable=False),
        sa.PrimaryKeyConstraint("digest", name="pk_catalogue_file"),
    )


def downgrade() -> None:
    """Take the table away; files of parts are lost."""
    op.drop_table("catalogue_file")
