"""Roles of a shared book on a PostgreSQL server, as SQL that its administrator reads and runs.

Three roles without a login of their own, each holding what the one before may do: *reader* looks, *estimator* surveys,
quotes and records, *keeper* compiles the catalogue and migrates the tables. Row rules keep what was issued: nobody, the
keeper included, changes or deletes a quotation's revision once it was sent.
"""

from __future__ import annotations

from collections.abc import Iterable

READER, ESTIMATOR, KEEPER = "spoutline_reader", "spoutline_estimator", "spoutline_keeper"
_ADDED_ONLY = frozenset(
    {
        "survey_revisions",
        "programmes",
        "quotation_events",
        "position_records",
        "position_record_photos",
        "agreements",
        "stock_entries",
        "stock_levels",
    }
)
_REWRITTEN = frozenset({"quotation_parts"})  # the parts of a draft are listed anew when it is saved over
_KEPT_BY_THE_KEEPER = frozenset({"book_version"})


def roles_sql(book_tables: Iterable[str], catalogue_tables: Iterable[str], schema: str = "public") -> str:
    """Return the SQL that makes the roles and their rights; run twice it changes nothing more.

    Arguments: the names of the tables of book and catalogue, and the schema in which they lie. It is run once by the
    database's administrator after the book was opened first, and again after each migration.
    """
    book, catalogue = sorted(set(book_tables) - _KEPT_BY_THE_KEEPER), sorted(set(catalogue_tables))
    every = [*book, *sorted(_KEPT_BY_THE_KEEPER), *catalogue]
    place = _quoted(schema)
    lines = [
        "-- Roles of a shared Spoutline book. Run as the administrator of the database, for instance:",
        "--   spoutline book roles --sql | psql --single-transaction --set ON_ERROR_STOP=1 DATABASE",
        "-- Where it ends with a deadlock (the server was tidying a table), nothing has changed: run it again.",
        "-- Then give each person a login and one role, for instance:",
        f"--   CREATE ROLE ada LOGIN; GRANT {ESTIMATOR} TO ada;",
        "",
        *(_make_role(role) for role in (READER, ESTIMATOR, KEEPER)),
        f"GRANT {READER} TO {ESTIMATOR};",
        f"GRANT {ESTIMATOR} TO {KEEPER};",
        f"GRANT {KEEPER} TO CURRENT_USER;",
        f"GRANT USAGE ON SCHEMA {place} TO {READER};",
        f"GRANT USAGE, CREATE ON SCHEMA {place} TO {KEEPER};",
        "",
    ]
    for table in every:
        name = f"{place}.{_quoted(table)}"
        lines += [f"REVOKE ALL ON {name} FROM PUBLIC;", f"GRANT SELECT ON {name} TO {READER};"]
        if table in book:
            lines.append(f"GRANT {_rights(table)} ON {name} TO {ESTIMATOR};")
        lines.append(f"ALTER TABLE {name} OWNER TO {KEEPER};")
    lines += ["", f"GRANT USAGE ON ALL SEQUENCES IN SCHEMA {place} TO {ESTIMATOR};", ""]
    if "quotation_revisions" in book:
        lines += _issued_stays(f"{place}.quotation_revisions")
    return "\n".join(lines) + "\n"


def _rights(table: str) -> str:
    if table in _ADDED_ONLY:
        return "INSERT"
    return "INSERT, DELETE" if table in _REWRITTEN else "INSERT, UPDATE"


def _make_role(role: str) -> str:
    return f"DO $$ BEGIN CREATE ROLE {role} NOLOGIN; EXCEPTION WHEN duplicate_object THEN NULL; END $$;"


def _issued_stays(name: str) -> list[str]:
    rules = (
        ("read", "SELECT", READER, "USING (true)"),
        ("add", "INSERT", ESTIMATOR, "WITH CHECK (true)"),
        ("change_drafts", "UPDATE", ESTIMATOR, "USING (issued_at IS NULL) WITH CHECK (true)"),
    )
    lines = [f"ALTER TABLE {name} ENABLE ROW LEVEL SECURITY;", f"ALTER TABLE {name} FORCE ROW LEVEL SECURITY;"]
    for rule, what, role, text in rules:
        lines += [
            f"DROP POLICY IF EXISTS spoutline_{rule} ON {name};",
            f"CREATE POLICY spoutline_{rule} ON {name} FOR {what} TO {role} {text};",
        ]
    return lines


def _quoted(name: str) -> str:
    return '"' + name.replace('"', '""') + '"'
