"""A fingerprint of the code that decides what the program answers, for whatever is kept from one run to the next.

The version alone does not tell one state of the program from the next while somebody works on it.
"""

from __future__ import annotations

import hashlib
import secrets
from functools import cache
from pathlib import Path
from typing import Final

DECIDING: Final = ("calc", "catalogue", "explain", "model", "planning", "rules", "ruletables", "search", "units")
"""Packages: those that work an answer out and whatever they import of others, rounding of money and units among it."""


@cache
def deciding_code() -> str:
    """Return the fingerprint of this program's code; worked out once in a process.

    A frozen program carries it beside its modules, whose sources it lacks. Where there is neither, it is another one
    in each process, so that nothing kept counts.
    """
    from spoutline import assets

    stamp, package = assets.code_stamp(), Path(__file__).parents[1]
    if stamp.is_file():
        return stamp.read_text(encoding="ascii").strip()
    return fingerprint_of(package) or secrets.token_hex()


def fingerprint_of(package: Path) -> str:
    """Return the SHA-256 of the sources of the deciding packages below ``package``; nothing where one lacks them.

    Ends of lines do not count, which a checkout may turn.
    """
    digest = hashlib.sha256()
    for name in DECIDING:
        if not (package / name / "__init__.py").is_file():
            return ""
        for path in sorted((package / name).rglob("*.py"), key=Path.as_posix):
            content = path.read_bytes().replace(b"\r\n", b"\n")
            digest.update(path.relative_to(package).as_posix().encode() + b"\0" + content + b"\0")
    return digest.hexdigest()
