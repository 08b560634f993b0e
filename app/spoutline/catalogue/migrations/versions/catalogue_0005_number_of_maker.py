"""Two makers may give one number: a number is unique within its maker, and a successor may be of another maker."""

from __future__ import annotations

from collections.abc import Iterator
from contextlib import contextmanager

import sqlalchemy as sa
from alembic import op

revision = "catalogue_0005"
down_revision = "catalogue_0004"
branch_labels = None
depends_on = None

_PART = "catalogue_part"
_NUMBER = "uq_catalogue_part_number"
_NUMBER_AND_MAKER = "uq_catalogue_part_number_maker"


def upgrade() -> None:
    """Let a number stand once for each maker, and keep the maker of a successor where it is another."""
    with _rows_below_kept(), op.batch_alter_table(_PART) as table:
        table.add_column(sa.Column("superseded_by_maker", sa.String(length=200), nullable=True))
        table.drop_constraint(_NUMBER, type_="unique")
        table.create_unique_constraint(_NUMBER_AND_MAKER, ["number", "maker"])
    # so far a number named one part, so the maker of every successor is known; None stands for the same maker
    op.execute(
        "UPDATE catalogue_part SET superseded_by_maker = (SELECT successor.maker FROM catalogue_part AS successor "
        "WHERE successor.number = catalogue_part.superseded_by AND successor.maker <> catalogue_part.maker) "
        "WHERE superseded_by IS NOT NULL"
    )


def downgrade() -> None:
    """Take both back; this fails, and changes nothing, while two makers share a number."""
    with _rows_below_kept(), op.batch_alter_table(_PART) as table:
        table.drop_constraint(_NUMBER_AND_MAKER, type_="unique")
        table.create_unique_constraint(_NUMBER, ["number"])
        table.drop_column("superseded_by_maker")


@contextmanager
def _rows_below_kept() -> Iterator[None]:
    """Keep the rows that hang on parts while SQLite makes the table anew: dropping the old one deletes them as well."""
    connection = op.get_bind()
    if connection.dialect.name != "sqlite":
        yield
        return
    inspector = sa.inspect(connection)
    below = [
        name
        for name in inspector.get_table_names()
        if any(key["referred_table"] == _PART for key in inspector.get_foreign_keys(name))
    ]
    for name in below:
        op.execute(f'CREATE TEMPORARY TABLE "kept_{name}" AS SELECT * FROM "{name}"')  # noqa: S608  (names of tables)
    yield
    for name in below:
        op.execute(f'DELETE FROM "{name}"')  # noqa: S608  (a name of the schema)
        op.execute(f'INSERT INTO "{name}" SELECT * FROM "kept_{name}"')  # noqa: S608  (a name of the schema)
        op.execute(f'DROP TABLE "kept_{name}"')
