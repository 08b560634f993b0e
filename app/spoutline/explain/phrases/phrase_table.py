"""Phrases read from a table, every fault of it reported at once."""

from __future__ import annotations

import difflib
import re
from collections.abc import Iterable, Mapping

from spoutline.model.faults import InputProblem

_PLACEHOLDER = re.compile(r"\{([a-z_]*)\}")


class PhraseTable:
    """Walks a TOML table of phrases and gathers what is wrong with it in ``problems``."""

    def __init__(self, place: str) -> None:
        self.place = place
        self.problems: list[InputProblem] = []

    def strings(self, field: str, table: object, known: Iterable[str]) -> dict[str, str]:
        """Return the phrases of ``table``; a missing, empty or unknown one is a problem."""
        found = table if isinstance(table, dict) else {}
        expected = list(known)
        for name in expected:
            phrase = found.get(name)
            if not isinstance(phrase, str) or not phrase.strip():
                self._report(f"{field}.{name}", "nothing" if phrase is None else repr(phrase), "write this phrase")
        for name in found:
            if name not in expected:
                near = difflib.get_close_matches(name, expected, n=1)
                wanted = f"did you mean {near[0]}?" if near else "remove it: not known"
                self._report(f"{field}.{name}", repr(name), wanted)
        return {name: phrase for name, phrase in found.items() if isinstance(phrase, str)}

    def placeholders(self, field: str, phrases: Mapping[str, str], wanted: Mapping[str, tuple[str, ...]]) -> None:
        """Report phrases whose placeholders are not the ones that get filled."""
        for name, phrase in phrases.items():
            names = set(wanted.get(name, ()))
            if set(_PLACEHOLDER.findall(phrase)) != names:
                shown = ", ".join(f"{{{item}}}" for item in sorted(names)) or "no placeholder"
                self._report(f"{field}.{name}", repr(phrase), f"use {shown}")

    def _report(self, field: str, value: str, wanted: str) -> None:
        self.problems.append(InputProblem(self.place, field, value, wanted))
