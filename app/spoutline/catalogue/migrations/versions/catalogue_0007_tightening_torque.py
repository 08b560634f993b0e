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
    """Take the column back in place: a table made anew would take ports and prices with it."""
    op.drop_column("catalogue_part", "tightening_torque_n_m")
