"""Search as one types: tokens of every entry, a full-text table over them; families of parts."""

from __future__ import annotations

import json
from collections.abc import Callable
from typing import Any

import sqlalchemy as sa
from alembic import op

from spoutline.catalogue.search_words import tokens_text

revision = "catalogue_0010"
down_revision = "catalogue_0009"
branch_labels = None
depends_on = None

_ENTRY = "catalogue_entry"
_CHUNK = 5_000
_OLD_INDEX = "ix_catalogue_entry_catalogue_id_last_edition"
_LISTED = "ix_catalogue_entry_listed"
_TOKENS = "ix_catalogue_entry_tokens"
_SQLITE = (
    "CREATE VIRTUAL TABLE catalogue_find USING fts5(search_text, content='catalogue_entry', content_rowid='id', "
    "tokenize=\"ascii tokenchars '/.-+=#@!&_'\", prefix='1 2 3 4 5 6 7 8 9 10', detail='none')",
    "INSERT INTO catalogue_find(catalogue_find) VALUES ('rebuild')",
    "CREATE TRIGGER catalogue_find_put AFTER INSERT ON catalogue_entry BEGIN "
    "INSERT INTO catalogue_find(rowid, search_text) VALUES (new.id, new.search_text); END",
    "CREATE TRIGGER catalogue_find_gone AFTER DELETE ON catalogue_entry BEGIN "
    "INSERT INTO catalogue_find(catalogue_find, rowid, search_text) VALUES ('delete', old.id, old.search_text); END",
    "CREATE TRIGGER catalogue_find_changed AFTER UPDATE OF search_text ON catalogue_entry BEGIN "
    "INSERT INTO catalogue_find(catalogue_find, rowid, search_text) VALUES ('delete', old.id, old.search_text); "
    "INSERT INTO catalogue_find(rowid, search_text) VALUES (new.id, new.search_text); END",
)


def upgrade() -> None:
    """Write the tokens of every entry that there is, and let the database look them up."""
    op.create_table(
        "catalogue_family",
        sa.Column("id", sa.Integer(), autoincrement=False, nullable=False),
        sa.Column("catalogue_id", sa.Integer(), nullable=False),
        sa.Column("first_edition", sa.Integer(), nullable=False),
        sa.Column("last_edition", sa.Integer(), nullable=False),
        sa.Column("name", sa.String(length=120), nullable=False),
        sa.Column("content", sa.Text(), nullable=False),
        sa.ForeignKeyConstraint(["catalogue_id"], ["catalogue_catalogue.id"], name="fk_catalogue_family_catalogue_id"),
        sa.PrimaryKeyConstraint("id", name="pk_catalogue_family"),
        sa.UniqueConstraint("catalogue_id", "name", "first_edition", name="uq_catalogue_family"),
    )
    _rewrite(_tokens)
    op.drop_index(_OLD_INDEX, table_name=_ENTRY)
    op.create_index(_LISTED, _ENTRY, ["catalogue_id", "last_edition", "is_described", "number", "maker"])
    if op.get_bind().dialect.name == "sqlite":
        for statement in _SQLITE:
            op.execute(sa.text(statement.replace(":", r"\:")))
    else:
        op.execute(
            f"CREATE INDEX {_TOKENS} ON {_ENTRY} USING gin (array_to_tsvector(string_to_array(search_text, ' ')))"
        )


def downgrade() -> None:
    """Keep what entries are known by as one plain text again; families are lost, what parts have of them stays."""
    op.drop_table("catalogue_family")
    if op.get_bind().dialect.name == "sqlite":
        for name in ("put", "gone", "changed"):
            op.execute(f"DROP TRIGGER catalogue_find_{name}")
        op.execute("DROP TABLE catalogue_find")
    else:
        op.drop_index(_TOKENS, table_name=_ENTRY)
    op.drop_index(_LISTED, table_name=_ENTRY)
    op.create_index(_OLD_INDEX, _ENTRY, ["catalogue_id", "last_edition"])
    _rewrite(_plain)


def _tokens(
    row: Any,  # noqa: ANN401  (a row of the table)
    entry: dict[str, Any],
) -> str:
    texts = tuple(entry.get(name, "") for name in ("name", "maker", "supplier"))
    numbers = tuple(entry.get(name, "") for name in ("number", "item_number", "gtin"))
    return tokens_text(row.catalogue_id, row.kind or "", texts, numbers, described=bool(row.is_described))


def _plain(_row: object, entry: dict[str, Any]) -> str:
    names = ("number", "name", "maker", "item_number", "gtin", "supplier")
    return " ".join(filter(None, (entry.get(name, "") for name in names))).casefold()


def _rewrite(known_by: Callable[[Any, dict[str, Any]], str]) -> None:
    connection = op.get_bind()
    table = sa.table(_ENTRY, *map(sa.column, ("id", "catalogue_id", "kind", "is_described", "search_text", "content")))
    columns = table.c
    last = 0
    while True:
        query = sa.select(columns.id, columns.catalogue_id, columns.kind, columns.is_described, columns.content)
        rows = connection.execute(query.where(columns.id > last).order_by(columns.id).limit(_CHUNK)).all()
        if not rows:
            return
        last = rows[-1].id
        values = [{"key": row.id, "known_by": known_by(row, json.loads(row.content))} for row in rows]
        change = sa.update(table).where(columns.id == sa.bindparam("key"))
        connection.execute(change.values(search_text=sa.bindparam("known_by")), values)
