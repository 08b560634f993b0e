"""The torque to which the joints of a part are tightened, where its maker states one."""

from __future__ import annotations

import sqlalchemy as sa
from alembic import op

revision = "catalogue_0007"
down_revision = "catalogue_0006"
branch_labels = None
depends_on = None


def upgrade() -> None:
    """Add the figure; the catalogue is compiled anew from its changed source."""
    op.add_column("catalogue_part", sa.Column("tightening_torque_n_m", sa.Double(), nullable=True))


def downgrade() -> None:
    """Take the column back."""
    with op.batch_alter_table("catalogue_part") as table:
        table.drop_column("tightening_torque_n_m")
