"""Keep day, totals and margins of a quotation in its row, so that the list of quotations reads no documents."""

from __future__ import annotations

import sqlalchemy as sa
from alembic import op

from spoutline.book.quotation_amounts import amounts_in_document

revision = "book_0010"
down_revision = "book_0009"
_TEXTS = ("total_low", "total_high", "margin_low", "margin_high")


def upgrade() -> None:
    """Add the columns and fill them from the newest revision of each quotation; an order counts its option alone."""
    op.add_column("quotations", sa.Column("dated", sa.Date(), nullable=True))
    op.add_column("quotations", sa.Column("currency", sa.String(3), nullable=True))
    for name in _TEXTS:
        op.add_column("quotations", sa.Column(name, sa.String(60), nullable=True))
    connection = op.get_bind()
    newest = sa.text(
        "SELECT q.id, r.document FROM quotations q JOIN quotation_revisions r "
        "ON r.quotation_id = q.id AND r.revision = q.revision ORDER BY q.id"
    )
    ordered = sa.text(
        "SELECT quotation_id, option FROM quotation_events WHERE status = 'accepted' AND option <> '' ORDER BY id"
    )
    options = {row.quotation_id: row.option for row in connection.execute(ordered)}
    table = sa.table("quotations", sa.column("id"), sa.column("dated", sa.Date), *map(sa.column, ("currency", *_TEXTS)))
    for row in connection.execute(newest).all():
        amounts = amounts_in_document(row.document, options.get(row.id, ""))
        if amounts is not None:
            connection.execute(table.update().where(table.c.id == row.id).values(**amounts.columns))
