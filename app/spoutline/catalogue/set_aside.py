"""What is worked out before it is written, kept meanwhile in a file of the system's own: no room in memory."""

from __future__ import annotations

import marshal
from collections.abc import Iterator
from tempfile import SpooledTemporaryFile
from types import TracebackType
from typing import Any, Final, Self

_IN_MEMORY: Final = 1 << 20  # bytes; what is more goes into the file, which has no name and goes with the program
_LENGTH: Final = 8  # bytes that say how long a value is


class SetAside:
    """Values of Python's plain types (tuples, texts, numbers, bytes), handed out again in the order in which they came.

    Use it as a context manager: what was set aside is gone behind it.
    """

    def __init__(self) -> None:
        self._file = SpooledTemporaryFile(max_size=_IN_MEMORY)  # noqa: SIM115  (closed by ``__exit__``)

    def __enter__(self) -> Self:
        """Return it."""
        return self

    def __exit__(
        self, _kind: type[BaseException] | None, _fault: BaseException | None, _at: TracebackType | None
    ) -> None:
        """Let go of everything."""
        self._file.close()

    def add(self, value: Any) -> None:  # noqa: ANN401  (of whatever plain types)
        """Set a value aside behind the others."""
        written = marshal.dumps(value)
        self._file.write(len(written).to_bytes(_LENGTH, "little"))
        self._file.write(written)

    def __iter__(self) -> Iterator[Any]:
        """Yield every value, one held at a time."""
        self._file.seek(0)
        while length := self._file.read(_LENGTH):
            yield marshal.loads(self._file.read(int.from_bytes(length, "little")))  # noqa: S302  (what ``add`` wrote)
