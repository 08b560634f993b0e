"""Keep the HTML paper of an issued revision beside its PDF and its workbook, as it was sent."""

from __future__ import annotations

import sqlalchemy as sa
from alembic import op

revision = "book_0013"
down_revision = "book_0012"


def upgrade() -> None:
    """Add the column; what was issued before has no such paper, and it is made from the revision where it is wanted."""
    op.add_column("quotation_revisions", sa.Column("html", sa.LargeBinary(), nullable=True))
