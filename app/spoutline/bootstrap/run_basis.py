"""What results of a long run rest on beside the surveys, as one fingerprint."""

from __future__ import annotations

import hashlib
import secrets
from collections.abc import Iterable
from pathlib import Path
from typing import TYPE_CHECKING

if TYPE_CHECKING:
    from spoutline.bootstrap.stores import Stores


def run_basis(stores: Stores, rules: bytes) -> str:
    """Return a fingerprint of program and rule files, whose digest is ``rules``, editions of the book and agreed sets.

    It never is the same twice where the book plans with a draft, which changes under whoever reads it. Raise
    ``InputFault`` or ``StoreFault`` as the stores do.
    """
    digest = hashlib.sha256(rules)
    shelf = stores.shelf()
    digest.update(repr([(one.name, one.editions) for one in shelf.catalogues()]).encode())
    edition = shelf.opened(stores.planned_with()).edition
    digest.update(repr((edition, stores.book().agreements.extent())).encode())
    return secrets.token_hex() if edition.number is None else digest.hexdigest()


def rule_files_digest(folders: Iterable[Path]) -> bytes:
    """Return the SHA-256 of the program's version, of its code that decides and of every rule file in some folders."""
    import spoutline
    from spoutline.bootstrap.deciding_code import deciding_code

    digest = hashlib.sha256(f"{spoutline.__version__} {deciding_code()}".encode())
    for folder in folders:
        for path in sorted(folder.rglob("*.toml")):
            digest.update(path.relative_to(folder).as_posix().encode() + b"\0" + path.read_bytes() + b"\0")
    return digest.digest()
