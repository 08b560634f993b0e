"""How long a step waits for the database, and which failures pass: told apart by the codes of the drivers."""

from __future__ import annotations

import sqlite3
from collections.abc import Iterator
from contextlib import contextmanager
from enum import IntEnum
from typing import Any

from sqlalchemy import URL
from sqlalchemy.exc import DBAPIError, SQLAlchemyError

from spoutline.discretion import discreet
from spoutline.model.faults import BusyStore, ReadOnlyStore, StoreFault
from spoutline.model.worded import Worded


class Patience(IntEnum):
    """How long a step waits for a lock or an answer, in milliseconds."""

    USUAL = 15_000  # a command that would rather wait than fail
    LONG = 30_000  # while another window compiles the catalogue for the first time
    SHORT = 1_000  # a writer that shows its state and tries again by itself


# result codes of SQLite: https://www.sqlite.org/rescode.html
_SQLITE_PASSING = frozenset({sqlite3.SQLITE_BUSY, sqlite3.SQLITE_LOCKED, sqlite3.SQLITE_PROTOCOL})
_SQLITE_READ_ONLY = frozenset({sqlite3.SQLITE_READONLY, sqlite3.SQLITE_PERM})
# classes and codes of PostgreSQL: https://www.postgresql.org/docs/current/errcodes-appendix.html
_PASSING_CLASSES = ("08", "40", "53")  # connection, transaction rolled back, resources
_PASSING_STATES = frozenset({"57P01", "57P02", "57P03", "57014", "55P03", "25P03"})
_READ_ONLY_STATES = frozenset({"42501", "25006"})  # insufficient privilege, read-only transaction
# what a server says that refuses a person for good; libpq gives no code while it connects
_REFUSALS = ("does not exist", "authentication failed", "pg_hba.conf", "permission denied", "not permitted", "invalid")
_NO_SUCH_DATABASE = frozenset({"3D000", "28000", "28P01"})  # these stay as they are until a person acts


def connect_arguments(url: URL, patience: Patience) -> dict[str, Any]:
    """Return what the driver needs so that nothing waits longer than ``patience`` for a server that is silent."""
    if url.get_backend_name() != "postgresql":
        return {}
    seconds = max(2, patience.value // 1000)  # the least that libpq takes
    return {
        "connect_timeout": seconds,
        "tcp_user_timeout": patience.value * 2,
        "keepalives_idle": 5,
        "keepalives_interval": 2,
        "keepalives_count": 3,
        "options": f"-c lock_timeout={patience.value} -c idle_in_transaction_session_timeout=60000",
    }


@contextmanager
def store_faults(where: str, address: str) -> Iterator[None]:
    """Turn a failing database into a ``StoreFault`` that a person can read; arguments as for ``store_fault``."""
    try:
        yield
    except SQLAlchemyError as fault:
        cause = fault.orig if isinstance(fault, DBAPIError) else fault
        raise store_fault(cause or fault, where, address) from fault


def store_fault(cause: BaseException, where: str, address: str = "") -> StoreFault:
    """Return the fault that a person can read; ``where`` names the database, such as ``The database office.sqlite3``.

    It is a ``BusyStore`` where the same step may succeed later, a ``ReadOnlyStore`` where this person may not write.
    The secrets of its ``address`` are left out.
    """
    if _is_read_only(cause):
        return ReadOnlyStore(
            Worded(
                "{where} may be read by you but not written ({reason}). Nothing was changed. Ask its "
                "keeper for leave to write, or work on a copy of your own.",
                where=where,
                reason=first_line(cause, address),
            )
        )
    if _is_passing(cause):
        return BusyStore(
            Worded("{where} does not answer for now: {reason}.", where=where, reason=first_line(cause, address))
        )
    return StoreFault(Worded("{where} cannot be used: {reason}.", where=where, reason=first_line(cause, address)))


def _is_passing(cause: BaseException) -> bool:
    if isinstance(cause, sqlite3.Error):
        return _sqlite_code(cause) in _SQLITE_PASSING
    state = getattr(cause, "sqlstate", None)
    if isinstance(state, str):
        return state not in _NO_SUCH_DATABASE and (state.startswith(_PASSING_CLASSES) or state in _PASSING_STATES)
    # while connecting there is no state: a server that is not there says nothing, one that starts or refuses FATAL
    if type(cause).__name__ not in ("OperationalError", "ConnectionTimeout"):
        return False
    return "FATAL" not in str(cause) or not any(words in str(cause) for words in _REFUSALS)


def _is_read_only(cause: BaseException) -> bool:
    if isinstance(cause, sqlite3.Error):
        return _sqlite_code(cause) in _SQLITE_READ_ONLY
    return getattr(cause, "sqlstate", None) in _READ_ONLY_STATES


def _sqlite_code(cause: sqlite3.Error) -> int:
    """Return the primary result code: the extended one holds it in its lowest byte."""
    return int(getattr(cause, "sqlite_errorcode", 0) or 0) & 0xFF


def first_line(fault: BaseException, address: str) -> str:
    """Return the first line of what a driver says, without the secrets of its ``address``."""
    return discreet((str(fault).strip() or type(fault).__name__).splitlines()[0].rstrip("."), address)
