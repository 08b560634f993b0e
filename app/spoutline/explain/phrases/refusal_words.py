"""Answers, refusals and notes in one language: what was said in English, told by its words, figures filled in anew."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import field
from typing import Final

from spoutline.explain.phrases.reader import PhraseReader, placeholders
from spoutline.frozen import frozen
from spoutline.model.faults import InputFault, InputNote, InputProblem, StoreFault, Undecided
from spoutline.model.worded import Worded

_TABLES: Final = ("texts", "answers")
_OF_A_PROBLEM: Final = ("field", "value")


@frozen
class RefusalWords:
    """Texts by the English one, which stands in for those that a language lacks.

    ``texts`` are those of refusals and notes, told wherever they stand. ``answers`` are lines that commands answer,
    told where they are ``Worded`` alone: some are single words that also name fields.
    """

    texts: Mapping[str, str]
    answers: Mapping[str, str] = field(default_factory=dict)

    def told(self, text: str) -> str:
        """Return a text in this language, its figures too where they are something said themselves."""
        if not isinstance(text, Worded):
            return self.texts.get(text, text)
        figures = {name: self._figure(name, figure) for name, figure in text.figures.items()}
        template = self.answers.get(text.template) or self.texts.get(text.template, text.template)
        return template.format(**figures)

    def line(self, one: InputProblem | InputNote | StoreFault | Undecided) -> str:
        """Return a problem, a note or a fault of the environment as one line."""
        return self.told(str(one) if isinstance(one, StoreFault | Undecided) else one.worded())

    def lines(self, fault: InputFault | StoreFault | Undecided) -> tuple[str, ...]:
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
    reader.names("table", reader.table, _TABLES)
    texts, answers = (reader.strings(name, reader.table.get(name), None) for name in _TABLES)
    for said, told in (*texts.items(), *answers.items()):
        if placeholders(told) != placeholders(said):
            reader.report(said, repr(told), "use the names in braces of the English text")
    reader.finish()
    return RefusalWords(texts, answers)
