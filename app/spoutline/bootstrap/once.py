"""What is made when first asked for and then kept, whichever thread asks first."""

from __future__ import annotations

import threading
from collections.abc import Callable, Hashable
from typing import Generic, TypeVar

_K = TypeVar("_K", bound=Hashable)
_T = TypeVar("_T")


class OnceEach(Generic[_K, _T]):
    """One value for each key, made when first asked for. Where making it fails, the next who asks tries again.

    Threads take turns at making; ``turns`` is a lock shared with other values that must not be made meanwhile.
    """

    def __init__(self, make: Callable[[_K], _T], turns: threading.RLock | None = None) -> None:
        self._make = make
        self._turns = turns or threading.RLock()
        self._made: dict[_K, _T] = {}

    def __call__(self, key: _K) -> _T:
        """Return the value of ``key``; raise what making it raises."""
        with self._turns:
            if key not in self._made:
                self._made[key] = self._make(key)
            return self._made[key]

    def kept(self, key: _K) -> _T | None:
        """Return the value of ``key`` where it is kept; None where it was not made."""
        with self._turns:
            return self._made.get(key)

    def __len__(self) -> int:
        """Return how many values are kept."""
        return len(self._made)

    def forget(self) -> tuple[_T, ...]:
        """Make every value anew when next asked for; return those that were kept."""
        with self._turns:
            kept = tuple(self._made.values())
            self._made.clear()
            return kept


class Once(Generic[_T]):
    """One value, made when first asked for; otherwise as ``OnceEach``."""

    def __init__(self, make: Callable[[], _T], turns: threading.RLock | None = None) -> None:
        self._only: OnceEach[None, _T] = OnceEach(lambda _: make(), turns)

    def __call__(self) -> _T:
        """Return the value; raise what making it raises."""
        return self._only(None)

    def forget(self) -> tuple[_T, ...]:
        """Make the value anew when next asked for; return the one that was kept, if one was."""
        return self._only.forget()

    @property
    def is_made(self) -> bool:
        """Whether the value is kept."""
        return bool(self._only)
