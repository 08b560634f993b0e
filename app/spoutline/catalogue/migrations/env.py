"""Run by alembic: migrate the catalogue on the connection that it is given."""

from __future__ import annotations

from alembic import context

from spoutline.catalogue.tables import CatalogueTable

context.configure(
    connection=context.config.attributes["connection"],
    target_metadata=CatalogueTable.metadata,
    version_table="catalogue_version",
)
context.run_migrations()
