"""Figures read out of a part's text by patterns, each kept with its pattern as origin, for the keeper to confirm.

Suppliers describe a hose as ``3/4" x 9' hardwall``: size, length, construction. That is only a proposal: it
fills no figure until the keeper says that the pattern holds for this supplier.
"""

from __future__ import annotations

import re
from collections.abc import Iterable, Iterator
from typing import Final

from spoutline.frozen import frozen
from spoutline.model.faults import InputFault
from spoutline.model.part import HOSES, PartKind
from spoutline.model.part_figures import figures_of
from spoutline.model.quantity import Dimension
from spoutline.planning.table_intake.cell_values import CellFault, Value, read_cell
from spoutline.planning.table_intake.intake_fields import BY_KEY
from spoutline.units.accepted import UnitSystem
from spoutline.units.quantities import parse

_INCH: Final = r"(?:\"|''|″|”|\s?inch(?:es)?\b|\s?in\.?(?=\W|$))"
_NUMBER: Final = r"(?:\d+[ -]\d+/\d+|\d+/\d+|\d+(?:\.\d+)?)"
_LENGTH_UNIT: Final = r"(?:'|′|’|\s?(?:ft\.?|feet|foot|m|metres?|meters?|cm)\b)"


@frozen
class TextPattern:
    """A pattern: ``id`` under which it is confirmed, the column that it fills, where it may hold.

    ``value`` is what it proposes; empty where the text found in the group ``value`` says it, with its unit behind.
    """

    id: str
    column: str
    expression: re.Pattern[str]
    value: str = ""
    kinds: tuple[PartKind, ...] = ()  # none named: every kind that has the figure


@frozen
class Proposal:
    """A figure that a text seems to state: column, value as a cell holds it, the words, and the pattern's id."""

    column: str
    value: Value
    words: str
    pattern: str


def _made(id_: str, column: str, expression: str, value: str = "", kinds: tuple[PartKind, ...] = ()) -> TextPattern:
    return TextPattern(id_, column, re.compile(expression, re.IGNORECASE), value, kinds)


# what the words mean: trade usage, from memory
PATTERNS: Final[tuple[TextPattern, ...]] = (
    _made("hose_bore", "bore_mm", rf"(?P<value>{_NUMBER}{_INCH})(?=\s*(?:x|×|id\b|i\.d\.|hose|bore))", "", HOSES),
    _made("hose_bore_first", "bore_mm", rf"^\W*(?P<value>{_NUMBER}{_INCH})", "", HOSES),
    _made("hose_bore_mm", "bore_mm", r"\b(?P<value>\d+(?:[.,]\d)?\s?mm)(?=\s*(?:x|×|id\b|bore))", "", HOSES),
    _made("hose_length", "length_m", rf"(?:x|×|by)\s*(?P<value>\d+(?:\.\d+)?{_LENGTH_UNIT})", "", HOSES),
    _made("hose_length_alone", "length_m", rf"(?<![\d/.])(?P<value>\d+(?:\.\d+)?{_LENGTH_UNIT})(?!\s*x)", "", HOSES),
    _made("hardwall", "construction", r"\bhard[ -]?wall\b", "hardwall"),
    _made("softwall", "construction", r"\bsoft[ -]?wall\b", "softwall"),
    _made("low_permeation", "low_permeation", r"\blow[ -]perm(?:eation)?\b", "yes"),
    _made("reconnectable", "reconnectable", r"\bre-?connect(?:able|ible)\b", "yes"),
    _made("single_use", "reconnectable", r"\bsingle[ -]use\b|\bone[ -]time\b", "no"),
    _made("automatic", "operation", r"\bauto(?:matic)?\b", "automatic"),
    _made("manual", "operation", r"\bmanual\b", "manual"),
    _made("hold_open", "hold_open", r"\bhold[ -]open\b|\bwith (?:latch|hold)\b", "yes"),
    _made("no_hold_open", "hold_open", r"\b(?:no|without|less) (?:latch|hold[ -]open)\b", "no"),
    _made("listing", "listings", r"\b(?P<value>E10|E25|E85|B5|B20|B100)\b"),
)
_KIND_WORDS: Final[tuple[tuple[str, PartKind], ...]] = (
    (r"\bswivel[ -]+break-?away\b|\bbreak-?away[ -]+swivel\b", PartKind.SWIVEL_BREAKAWAY),
    (r"\bbreak-?away\b", PartKind.BREAKAWAY),
    (r"\bwhip\b", PartKind.WHIP_HOSE),
    (r"\bhose clamp\b", PartKind.HOSE_CLAMP),
    (r"\b(?:curb|curbside|dispens\w+|pump) hose\b|\bhard[ -]?wall\b|\bsoft[ -]?wall\b", PartKind.CURB_HOSE),
    (r"\bnozzle\b", PartKind.NOZZLE),
    (r"\bsplitter\b", PartKind.SPLITTER),
    (r"\bswivel\b", PartKind.SWIVEL),
    (r"\badapt[eo]r\b|\bbushing\b|\breducer\b", PartKind.ADAPTOR),
    (r"\bsealant\b|\bthread paste\b", PartKind.SEALANT),
    (r"\bhose\b", PartKind.CURB_HOSE),
)
_KINDS: Final = tuple((re.compile(expression, re.IGNORECASE), kind) for expression, kind in _KIND_WORDS)
KIND_PATTERN: Final = "kind_word"
PATTERN_IDS: Final = (KIND_PATTERN, *(pattern.id for pattern in PATTERNS))


def proposed_kind(text: str) -> PartKind | None:
    """Return the kind of part that a text names; None where it names none, or an accessory of another."""
    return next((kind for expression, kind in _KINDS if expression.search(text[:400])), None)


def proposals(text: str, kind: PartKind, confirmed: Iterable[str] | None = None) -> tuple[Proposal, ...]:
    """Return the figures that a text seems to state for a part of a kind, one for each column.

    Parameters
    ----------
    text
        Description of the part.
    kind
        Kind of the part; only its figures are proposed.
    confirmed
        Ids of the patterns that may propose; all where None.
    """
    wanted = None if confirmed is None else frozenset(confirmed)
    columns = {figure.declared.column for figure in figures_of(kind)}
    found: dict[str, Proposal] = {}
    for pattern in PATTERNS:
        usable = pattern.column in columns and (not pattern.kinds or kind in pattern.kinds)
        if usable and pattern.column not in found and (wanted is None or pattern.id in wanted):
            for proposal in _read(pattern, text[:400]):
                found[proposal.column] = proposal
                break
    return tuple(found.values())


def _read(pattern: TextPattern, text: str) -> Iterator[Proposal]:
    for match in pattern.expression.finditer(text):
        words = match.group(0).strip()
        field = BY_KEY[pattern.column]
        if pattern.value:
            yield Proposal(pattern.column, read_cell(pattern.value, field), words, pattern.id)
            continue
        said = match["value"]
        try:
            if field.dimension is Dimension.LENGTH:
                value: Value = round(parse(_feet(said), field.dimension, UnitSystem.SI), 4)
            else:
                value = read_cell(re.sub(r"\s?in\.$", " in", said), field)
        except (InputFault, CellFault):
            continue
        yield Proposal(pattern.column, value, words, pattern.id)


def _feet(text: str) -> str:
    plain = re.sub(r"[′’]", "'", text)
    return re.sub(r"\s?(?:metres?|meters?)$", " m", re.sub(r"\s?(?:ft\.?|feet|foot)$", " ft", plain))


def found_by_patterns(texts: Iterable[str], kind: PartKind | None = None) -> tuple[Proposal, ...]:
    """Return the first find of each pattern in texts: what a keeper looks at before confirming one.

    ``kind`` is that of parts whose text names none.
    """
    found: dict[str, Proposal] = {}
    for text in texts:
        named = proposed_kind(text)
        if named is not None:
            found.setdefault(KIND_PATTERN, Proposal("kind", named.value, text[:60], KIND_PATTERN))
        if (known := named or kind) is not None:
            for one in proposals(text, known):
                found.setdefault(one.pattern, one)
    return tuple(found.values())
