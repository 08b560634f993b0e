"""The one reader of phrase tables: every language, every paper; all faults of a table at once."""

from __future__ import annotations

from collections.abc import Container, Iterable, Mapping
from enum import StrEnum
from string import Formatter
from types import MappingProxyType

from spoutline.model.claims import ADVICE_ONLY, claim_in
from spoutline.model.faults import InputFault, InputProblem


class PhraseReader:
    """Walks a table to its end, gathers every problem and raises them together.

    Parameters
    ----------
    text
        The table in TOML.
    place
        Where it came from, named in every fault.
    english
        The English table; its phrases stand in for those that ``text`` lacks. Empty: ``text`` must be complete.

    Raises
    ------
    InputFault
        The text is no TOML.
    """

    def __init__(self, text: str, place: str, english: str = "") -> None:
        self.place = place
        self.problems: list[InputProblem] = []
        own = _toml(text, place)
        self.table: Mapping[str, object] = own
        if english:
            base = _toml(english, "en.toml")
            self.table = _over(own, base)
            if "language" in _table(base.get("text")) and "language" not in _table(own.get("text")):
                self.report("text.language", "nothing", "write this phrase")

    def report(self, field: str, value: str, wanted: str) -> None:
        """Note a problem."""
        self.problems.append(InputProblem(self.place, field, value, wanted))

    def finish(self) -> None:
        """Raise ``InputFault`` where anything was noted."""
        if self.problems:
            raise InputFault(tuple(self.problems))

    def names(
        self, field: str, table: Mapping[str, object], known: Iterable[str], elsewhere: Container[str] = ()
    ) -> None:
        """Report names that are missing, those aside that are written ``elsewhere``, and names that are not known."""
        import difflib  # loaded where a table is read, which most starts spare

        expected, prefix = list(known), f"{field}." if field else ""
        for name in expected:
            if name not in table and name not in elsewhere:
                self.report(f"{prefix}{name}", "nothing", "write this phrase")
        for name in table:
            if name not in expected:
                near = difflib.get_close_matches(name, expected, n=1)
                wanted = f"did you mean {near[0]!r}?" if near else "remove it: not known"
                self.report(f"{prefix}{name}", repr(name), wanted)

    def strings(
        self, field: str, table: object, known: Iterable[str] | None, elsewhere: Container[str] = ()
    ) -> dict[str, str]:
        """Return the phrases of a table of strings; ``known`` None accepts any name, and ``elsewhere`` as of names."""
        if not isinstance(table, dict):
            self.report(field, repr(table), "write a table of phrases")
            return {}
        if known is not None:
            self.names(field, table, known, elsewhere)
        for name, phrase in table.items():
            self._check(f"{field}.{name}", phrase)
        return {name: phrase for name, phrase in table.items() if isinstance(phrase, str)}

    def sentences(
        self, field: str, filled: Mapping[str, tuple[str, ...]], elsewhere: Container[str] = ()
    ) -> dict[str, str]:
        """Return the sentences of the table ``field``; ``filled`` names the placeholders that get filled in each."""
        phrases = self.strings(field, self.table.get(field), filled, elsewhere)
        for name, sentence in phrases.items():
            wanted = set(filled.get(name, ()))
            if placeholders(sentence) != wanted:
                names = ", ".join(f"{{{item}}}" for item in sorted(wanted)) or "no placeholder"
                self.report(f"{field}.{name}", repr(sentence), f"use {names}")
        return phrases

    def words(
        self, vocabulary: Mapping[str, type[StrEnum]], elsewhere: Mapping[str, Container[str]] = MappingProxyType({})
    ) -> dict[str, dict[str, str]]:
        """Return the words of every list of a vocabulary, by list and value; ``elsewhere`` by list."""
        table = self.table.get("words")
        if not isinstance(table, dict):
            self.report("words", repr(table), "write a table of words for each list")
            return {}
        self.names("words", table, vocabulary, elsewhere)
        return {
            name: self.strings(f"words.{name}", table[name], [one.value for one in members], elsewhere.get(name, ()))
            for name, members in vocabulary.items()
            if name in table
        }

    def _check(self, field: str, phrase: object) -> None:
        if not isinstance(phrase, str) or not phrase.strip():
            self.report(field, repr(phrase), "write a text that is not empty")
        elif claim_in(phrase):
            self.report(field, repr(phrase), ADVICE_ONLY)


def placeholders(sentence: str) -> set[str]:
    """Return the names in braces; a brace that opens or closes nothing counts as a name that nobody fills."""
    try:
        return {name for _, name, _, _ in Formatter().parse(sentence) if name is not None}
    except ValueError:
        return {"{"}


def _toml(text: str, place: str) -> dict[str, object]:
    import tomllib

    try:
        return tomllib.loads(text)
    except tomllib.TOMLDecodeError as fault:
        raise InputFault((InputProblem(place, "table", str(fault), "write valid TOML"),)) from None


def _table(value: object) -> Mapping[str, object]:
    return value if isinstance(value, dict) else {}


def _over(own: Mapping[str, object], base: Mapping[str, object]) -> dict[str, object]:
    """Return ``own`` with what only ``base`` has filled in, table by table."""
    merged = dict(base)
    for name, value in own.items():
        below = base.get(name)
        merged[name] = _over(value, below) if isinstance(value, dict) and isinstance(below, dict) else value
    return merged
