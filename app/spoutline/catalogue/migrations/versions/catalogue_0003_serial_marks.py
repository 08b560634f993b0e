"""Parts that their maker marks with a serial number or a date code."""

from __future__ import annotations

import sqlalchemy as sa
from alembic import op

revision = "catalogue_0003"
down_revision = "catalogue_0002"
branch_labels = None
depends_on = None


def upgrade() -> None:
    """Add the mark; the catalogue is compiled anew from its changed source."""
    op.add_column("catalogue_part", sa.Column("serial_or_date_code_marked", sa.Boolean(), nullable=True))


def downgrade() -> None:
    """Take the column back."""
    with op.batch_alter_table("catalogue_part") as table:
        table.drop_column("serial_or_date_code_marked")
