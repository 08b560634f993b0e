"""A book holds catalogues, each with a draft and published editions that share what did not change."""

from __future__ import annotations

from collections.abc import Iterator
from contextlib import contextmanager

import sqlalchemy as sa
from alembic import op

revision = "catalogue_0006"
down_revision = "catalogue_0005"
branch_labels = None
depends_on = None

_PART = "catalogue_part"
_FILTER = ("kind", "path", "status", "temperature_minimum_c", "temperature_maximum_c")
_OLD_FILTER = "ix_catalogue_part_kind_path_status_temperature_minimum_c_temperature_maximum_c"
_BELOW = (
    "accessory",
    "adaptor",
    "breakaway",
    "hose",
    "label_class",
    "listing",
    "material",
    "nozzle",
    "nozzle_liquid",
    "placement",
    "port",
    "price",
    "scheme",
    "swivel",
)
_OPEN = 2_147_483_647


def upgrade() -> None:
    """Make the tables of catalogues; the invented one is compiled anew from its source, as after every change."""
    for name in (*_BELOW, "part", "maker", "edition"):
        op.execute(f"DELETE FROM catalogue_{name}")  # noqa: S608  (a name of the schema)
    op.drop_table("catalogue_maker")
    op.drop_table("catalogue_edition")
    _make_catalogues()
    _make_entries()
    op.drop_index(op.f(_OLD_FILTER), table_name=_PART)
    op.drop_index("ix_catalogue_part_kind_status", table_name=_PART)
    with op.batch_alter_table(_PART) as table:
        table.drop_constraint("uq_catalogue_part_number_maker", type_="unique")
        table.drop_column("search_text")
        for name in ("catalogue_id", "first_edition", "last_edition"):
            table.add_column(sa.Column(name, sa.Integer(), nullable=False))
        for name, may_lack in (("number", False), ("superseded_by", True)):
            table.alter_column(
                name, type_=sa.String(length=80), existing_type=sa.String(length=40), existing_nullable=may_lack
            )
        table.create_foreign_key("fk_catalogue_part_id", "catalogue_entry", ["id"], ["id"], ondelete="CASCADE")
    op.create_index("ix_catalogue_part_filter", _PART, ["catalogue_id", *_FILTER])
    op.create_index("ix_catalogue_part_number", _PART, ["catalogue_id", "number"])


def _make_catalogues() -> None:
    op.create_table(
        "catalogue_catalogue",
        sa.Column("id", sa.Integer(), autoincrement=False, nullable=False),
        sa.Column("name", sa.String(length=60), nullable=False),
        sa.Column("folded_name", sa.String(length=120), nullable=False),
        sa.Column("last_edition", sa.Integer(), nullable=False),
        sa.Column("source_fingerprint", sa.String(length=64), nullable=False),
        sa.PrimaryKeyConstraint("id", name="pk_catalogue_catalogue"),
        sa.UniqueConstraint("folded_name", name="uq_catalogue_catalogue_folded_name"),
    )
    op.create_table(
        "catalogue_edition",
        sa.Column("catalogue_id", sa.Integer(), nullable=False),
        sa.Column("number", sa.Integer(), autoincrement=False, nullable=False),
        sa.Column("title", sa.String(length=200), nullable=False),
        sa.Column("fingerprint", sa.String(length=64), nullable=False),
        sa.Column("published_on", sa.Date(), nullable=True),
        sa.Column("publisher", sa.String(length=200), nullable=False),
        sa.Column("notes", sa.Text(), nullable=False),
        sa.Column("parts_count", sa.Integer(), nullable=False),
        sa.Column("described_count", sa.Integer(), nullable=False),
        sa.Column("currencies", sa.Text(), nullable=False),
        sa.ForeignKeyConstraint(["catalogue_id"], ["catalogue_catalogue.id"], name="fk_catalogue_edition_catalogue_id"),
        sa.PrimaryKeyConstraint("catalogue_id", "number", name="pk_catalogue_edition"),
    )
    op.create_table(
        "catalogue_state",
        sa.Column("id", sa.Integer(), autoincrement=False, nullable=False),
        sa.Column("last_entry_id", sa.Integer(), nullable=False),
        sa.Column("chosen", sa.String(length=120), nullable=False),
        sa.Column("demonstration_left_out", sa.Boolean(), nullable=False),
        sa.PrimaryKeyConstraint("id", name="pk_catalogue_state"),
    )


def _make_entries() -> None:
    op.create_table(
        "catalogue_entry",
        sa.Column("id", sa.Integer(), autoincrement=False, nullable=False),
        sa.Column("catalogue_id", sa.Integer(), nullable=False),
        sa.Column("first_edition", sa.Integer(), nullable=False),
        sa.Column("last_edition", sa.Integer(), nullable=False),
        sa.Column("number", sa.String(length=80), nullable=False),
        sa.Column("maker", sa.String(length=200), nullable=False),
        sa.Column("kind", sa.String(length=40), nullable=True),
        sa.Column("is_described", sa.Boolean(), nullable=False),
        sa.Column("item_number", sa.String(length=60), nullable=True),
        sa.Column("gtin", sa.String(length=14), nullable=True),
        sa.Column("digest", sa.String(length=32), nullable=False),
        sa.Column("search_text", sa.Text(), nullable=False),
        sa.Column("content", sa.Text(), nullable=False),
        sa.ForeignKeyConstraint(["catalogue_id"], ["catalogue_catalogue.id"], name="fk_catalogue_entry_catalogue_id"),
        sa.PrimaryKeyConstraint("id", name="pk_catalogue_entry"),
        sa.UniqueConstraint("catalogue_id", "number", "maker", "first_edition", name="uq_catalogue_entry_state"),
    )
    for column in ("first_edition", "last_edition", "item_number", "gtin"):
        op.create_index(f"ix_catalogue_entry_catalogue_id_{column}", "catalogue_entry", ["catalogue_id", column])


def downgrade() -> None:
    """Keep the newest state of the invented catalogue in the old tables; every other catalogue is lost."""
    connection = op.get_bind()
    query = (
        "SELECT c.id, e.title, c.source_fingerprint FROM catalogue_catalogue AS c JOIN catalogue_edition AS e "
        "ON e.catalogue_id = c.id AND e.number = c.last_edition WHERE c.name = 'Demonstration'"
    )
    kept = connection.execute(sa.text(query)).one_or_none()
    last_id = connection.execute(sa.text("SELECT last_entry_id FROM catalogue_state")).scalar() or 0
    condition = "catalogue_id <> :kept OR last_edition <> :open"
    for name in _BELOW:
        connection.execute(
            sa.text(
                f"DELETE FROM catalogue_{name} WHERE part_id IN "  # noqa: S608  (a name of the schema)
                f"(SELECT id FROM catalogue_part WHERE {condition})"
            ),
            {"kept": kept.id if kept else 0, "open": _OPEN},
        )
    connection.execute(
        sa.text(f"DELETE FROM catalogue_part WHERE {condition}"),  # noqa: S608
        {"kept": kept.id if kept else 0, "open": _OPEN},
    )
    _old_parts()
    for name in ("entry", "edition", "state", "catalogue"):
        op.drop_table(f"catalogue_{name}")
    _old_edition(kept, last_id)


def _old_parts() -> None:
    op.drop_index("ix_catalogue_part_filter", table_name=_PART)
    op.drop_index("ix_catalogue_part_number", table_name=_PART)
    with _rows_below_kept(), op.batch_alter_table(_PART) as table:
        table.drop_constraint("fk_catalogue_part_id", type_="foreignkey")
        for name in ("catalogue_id", "first_edition", "last_edition"):
            table.drop_column(name)
        for name, may_lack in (("number", False), ("superseded_by", True)):
            table.alter_column(
                name, type_=sa.String(length=40), existing_type=sa.String(length=80), existing_nullable=may_lack
            )
        table.add_column(sa.Column("search_text", sa.String(length=600), nullable=False, server_default=""))
        table.create_unique_constraint("uq_catalogue_part_number_maker", ["number", "maker"])
    with _rows_below_kept(), op.batch_alter_table(_PART) as table:
        table.alter_column("search_text", server_default=None, existing_type=sa.String(length=600))
    op.execute("UPDATE catalogue_part SET search_text = lower(number || ' ' || name || ' ' || maker)")
    op.create_index(op.f(_OLD_FILTER), _PART, list(_FILTER))
    op.create_index("ix_catalogue_part_kind_status", _PART, ["kind", "status"])


def _old_edition(kept: sa.Row[tuple[int, str, str]] | None, last_id: int) -> None:
    op.create_table(
        "catalogue_edition",
        sa.Column("id", sa.Integer(), autoincrement=False, nullable=False),
        sa.Column("edition", sa.String(length=200), nullable=False),
        sa.Column("fingerprint", sa.String(length=64), nullable=False),
        sa.Column("last_part_id", sa.Integer(), nullable=False),
        sa.PrimaryKeyConstraint("id", name="pk_catalogue_edition"),
    )
    op.create_table(
        "catalogue_maker",
        sa.Column("prefix", sa.String(length=2), nullable=False),
        sa.Column("name", sa.String(length=200), nullable=False),
        sa.PrimaryKeyConstraint("prefix", name="pk_catalogue_maker"),
        sa.UniqueConstraint("name", name="uq_catalogue_maker_name"),
    )
    if kept is not None:
        row = "INSERT INTO catalogue_edition VALUES (1, :title, :fingerprint, :last_id)"
        values = {"title": kept.title, "fingerprint": kept.source_fingerprint, "last_id": last_id}
        op.get_bind().execute(sa.text(row), values)


@contextmanager
def _rows_below_kept() -> Iterator[None]:
    """Keep the rows that hang on parts while SQLite makes the table anew: dropping the old one deletes them as well."""
    if op.get_bind().dialect.name != "sqlite":
        yield
        return
    below = [f"catalogue_{name}" for name in _BELOW]
    for name in below:
        op.execute(f'CREATE TEMPORARY TABLE "kept_{name}" AS SELECT * FROM "{name}"')  # noqa: S608  (names of tables)
    yield
    for name in below:
        op.execute(f'DELETE FROM "{name}"')  # noqa: S608  (a name of the schema)
        op.execute(f'INSERT INTO "{name}" SELECT * FROM "kept_{name}"')  # noqa: S608  (a name of the schema)
        op.execute(f'DROP TABLE "kept_{name}"')
