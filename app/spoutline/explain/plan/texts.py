"""What the story hands back where one sentence is not enough: typed groups of ready texts."""

from __future__ import annotations

from spoutline.frozen import frozen
from spoutline.model.check import Outcome
from spoutline.model.finding import Severity, Verdict


@frozen(kw_only=True)
class LineText:
    """A requirement line in words: what is asked, the answer in one sentence, and who asks it."""

    title: str
    answer: str
    reason: str
    severity: Severity
    severity_word: str
    source: str


@frozen(kw_only=True)
class FindingText:
    """A finding in words. ``subject`` is the part, joint or position that it is about."""

    title: str
    sentence: str
    subject: str
    severity: Severity
    severity_word: str
    verdict: Verdict
    verdict_word: str
    source: str


@frozen(kw_only=True)
class CheckText:
    """A check in words: every cell that a table of checks shows; ``remark`` is a sentence beside it, empty for most."""

    title: str
    value: str
    limit: str
    margin: str
    outcome: Outcome
    outcome_word: str
    severity: Severity
    severity_word: str
    sources: tuple[str, ...]
    facts: tuple[str, ...]
    remark: str
    footing: str = ""  # that the limit is recalled; empty for one that is better founded

    @property
    def verdict(self) -> str:
        """The outcome, with what its limit rests on where that is weak."""
        return verdict_text(self.outcome_word, self.footing)


def verdict_text(outcome_word: str, footing: str) -> str:
    """Return an outcome, with what its limit rests on where that is weak."""
    return f"{outcome_word}, {footing}" if footing else outcome_word


@frozen(kw_only=True)
class WorkedText:
    """One worked line: the formula, the figures put in, and what comes out."""

    formula: str
    inputs: str
    result: str
    source: str
    note: str


@frozen
class Named:
    """A label and its text, for lists of data."""

    label: str
    text: str
