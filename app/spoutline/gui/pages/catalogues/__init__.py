"""The keeper's page: catalogues, suppliers' tables, entries, health."""
