"""Run by alembic: migrate the book on the connection that it is given."""

from __future__ import annotations

from alembic import context

from spoutline.book import quotation_tables, record_tables  # noqa: F401 - their tables belong to the book
from spoutline.book.tables import BookTable

context.configure(
    connection=context.config.attributes["connection"],
    target_metadata=BookTable.metadata,
    version_table="book_version",
)
context.run_migrations()
