"""Run by alembic: migrate the book on the connection that it is given."""

from __future__ import annotations

from alembic import context

from spoutline.book.all_tables import BookTable

context.configure(
    connection=context.config.attributes["connection"],
    target_metadata=BookTable.metadata,
    version_table="book_version",
)
context.run_migrations()
