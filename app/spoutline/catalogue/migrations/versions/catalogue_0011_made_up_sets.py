"""Joints that were made up inside an article before it was sold."""

from __future__ import annotations

import sqlalchemy as sa
from alembic import op

revision = "catalogue_0011"
down_revision = "catalogue_0010"
branch_labels = None
depends_on = None


def upgrade() -> None:
    """Add the number of the article to the ends of parts; no end of an older catalogue is inside one."""
    op.add_column("catalogue_port", sa.Column("made_up_in", sa.String(201), nullable=False, server_default=""))


def downgrade() -> None:
    """Take the column back in place."""
    op.drop_column("catalogue_port", "made_up_in")
