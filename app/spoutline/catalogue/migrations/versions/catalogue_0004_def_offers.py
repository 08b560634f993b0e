"""Parts that their maker offers for DEF."""

from __future__ import annotations

import sqlalchemy as sa
from alembic import op

revision = "catalogue_0004"
down_revision = "catalogue_0003"
branch_labels = None
depends_on = None


def upgrade() -> None:
    """Add the statement; the catalogue is compiled anew from its changed source."""
    op.add_column("catalogue_part", sa.Column("offered_for_def", sa.Boolean(), nullable=True))


def downgrade() -> None:
    """Take the column back."""
    with op.batch_alter_table("catalogue_part") as table:
        table.drop_column("offered_for_def")
