"""Refusals and notes in one language: what was said in English, told by its words with the figures filled in anew."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass
from typing import Final

from spoutline.explain.phrases.reader import PhraseReader, placeholders
from spoutline.model.faults import InputFault, InputNote, InputProblem, StoreFault
from spoutline.model.worded import Worded

_TEXTS: Final = "texts"
_OF_A_PROBLEM: Final = ("field", "value")


@dataclass(frozen=True, slots=True)
class RefusalWords:
    """Texts of refusals by the English one, which stands in for those that a language lacks."""

    texts: Mapping[str, str]

    def told(self, text: str) -> str:
        """Return a text in this language, its figures too where they are something said themselves."""
        if not isinstance(text, Worded):
            return self.texts.get(text, text)
        figures = {name: self._figure(name, figure) for name, figure in text.figures.items()}
        return self.texts.get(text.template, text.template).format(**figures)

    def line(self, one: InputProblem | InputNote | StoreFault) -> str:
        """Return a problem, a note or a fault of the environment as one line."""
        return self.told(str(one) if isinstance(one, StoreFault) else one.worded())

    def lines(self, fault: InputFault | StoreFault) -> tuple[str, ...]:
        """Return a line for each thing that is wrong."""
        return tuple(self.line(one) for one in (fault.problems if isinstance(fault, InputFault) else (fault,)))

    def _figure(self, name: str, figure: object) -> object:
        """Return a figure told where the program said it.

        A single word may be a name that somebody gave; as field or value of a problem what was typed stands in quotes.
        """
        is_said = isinstance(figure, str) and (" " in figure or name in _OF_A_PROBLEM or isinstance(figure, Worded))
        return self.told(figure) if isinstance(figure, str) and is_said else figure


ENGLISH_REFUSALS: Final = RefusalWords({})


def refusal_words_from_toml(text: str, place: str) -> RefusalWords:
    """Return the words written in ``text``; raise ``InputFault`` with every fault, naming ``place``."""
    reader = PhraseReader(text, place)
    reader.names("table", reader.table, (_TEXTS,))
    texts = reader.strings(_TEXTS, reader.table.get(_TEXTS), None)
    for said, told in texts.items():
        if placeholders(told) != placeholders(said):
            reader.report(said, repr(told), "use the names in braces of the English text")
    reader.finish()
    return RefusalWords(texts)
