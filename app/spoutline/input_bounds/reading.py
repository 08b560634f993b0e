"""Bytes and texts of files and streams, never more of them than a bound."""

from __future__ import annotations

from pathlib import Path
from typing import BinaryIO

from spoutline.input_bounds.refusal import refusal
from spoutline.model.worded import Worded


def bounded_bytes(path: Path, most: int, field: str, needed: str) -> bytes:
    """Return the bytes of a file without ever holding more than ``most`` of them.

    Parameters
    ----------
    path
        The file.
    most
        Largest size that is read, bytes.
    field
        What a fault names.
    needed
        What would be right, such as ``a readable survey file is needed``.

    Raises
    ------
    InputFault
        The file cannot be read or is larger.
    """
    try:
        with path.open("rb") as file:
            return bounded_stream(file, most, str(path), field, needed)
    except (OSError, ValueError) as fault:  # a path with a NUL is a value error
        reason = getattr(fault, "strerror", None) or fault
        raise refusal(
            str(path), field, "this path", Worded("{needed} ({reason})", needed=needed, reason=reason)
        ) from fault


def bounded_stream(stream: BinaryIO, most: int, place: str, field: str, needed: str) -> bytes:
    """Return all of a stream, such as standard input; see ``bounded_bytes``."""
    content = stream.read(most + 1)
    if len(content) > most:
        raise refusal(
            place,
            field,
            Worded("more than {most} bytes", most=most),
            Worded("{needed}; at most {most} bytes are read", needed=needed, most=most),
        )
    return content


def bounded_text(path: Path, most: int, field: str, needed: str) -> str:
    """Return the text of a UTF-8 file of at most ``most`` bytes, without byte order mark; raise ``InputFault``."""
    content = bounded_bytes(path, most, field, needed)
    try:
        return content.decode("utf-8-sig").replace("\r\n", "\n").replace("\r", "\n")
    except UnicodeDecodeError as fault:
        value = Worded("byte {start} (0x{content:02x})", start=fault.start, content=content[fault.start])
        raise refusal(str(path), field, value, Worded("{needed}, in UTF-8", needed=needed)) from fault
