"""Labels that name kerosene or fuel oil."""

from __future__ import annotations

import sqlalchemy as sa
from alembic import op

revision = "catalogue_0002"
down_revision = "catalogue_0001"
branch_labels = None
depends_on = None


def upgrade() -> None:
    """Add the family that a label names; the catalogue is compiled anew from its changed source."""
    op.add_column("catalogue_accessory", sa.Column("label_family", sa.String(length=40), nullable=True))


def downgrade() -> None:
    """Take the column back."""
    with op.batch_alter_table("catalogue_accessory") as table:
        table.drop_column("label_family")
