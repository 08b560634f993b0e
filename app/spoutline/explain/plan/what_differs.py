"""What tells listed parts apart: the words and figures in which they differ, and nothing that all of them share.

A list of breakaways for one place is a list of much the same names. The figures by which people tell parts of a kind
apart are declared (``Figure.tells``): those in which the listed parts differ are told of every part, in their order.
Where that leaves parts alike, they are told by the first other figures that part them, to the last digit where it must
be. Parts alike in every figure are told by their numbers.
"""

from __future__ import annotations

from collections import Counter, defaultdict
from collections.abc import Callable, Hashable, Iterable, Iterator, Mapping, Sequence
from enum import Enum, StrEnum, auto
from typing import Final

from spoutline.explain.phrases.part_terms import PartTerm
from spoutline.explain.phrases.part_words import label_of
from spoutline.explain.plan.part_name import classes_text, planes_word
from spoutline.explain.plan.words import Words
from spoutline.model.liquid import ListingClass
from spoutline.model.part import Part, PartKind
from spoutline.model.part_figures import PartFigure, figures_of, number_at, value_at
from spoutline.model.part_ref import PartRef
from spoutline.model.port import FlowPath, Port
from spoutline.model.quantity import Dimension

_Tell = Callable[[Part], str]  # tells one figure of a part, or both ends of a range
_DEF: Final = "DEF"
# what the trade says where a figure holds, and where it does not
_YES_AND_NO: Final[Mapping[str, tuple[PartTerm | None, PartTerm | None]]] = {
    "breakaway.reconnectable": (PartTerm.RECONNECTABLE, PartTerm.SINGLE_USE),
    "nozzle.hold_open": (PartTerm.WITH_LATCH, PartTerm.WITHOUT_LATCH),
    "nozzle.enhanced_conventional": (PartTerm.LOW_SPILLAGE, None),
    "hose.low_permeation": (PartTerm.LOW_PERMEATION, None),
}


class _Manner(Enum):
    """How much of a figure is told."""

    BRIEF = auto()  # as the trade names parts: a thread, a class, a device that is there
    FULL = auto()  # with its label
    EXACT = auto()  # to the last digit


def what_differs(parts: Iterable[Part], words: Words, *, with_kind: bool = True) -> dict[PartRef, str]:
    """Return of each part what tells it from the other listed ones, the telling figures first.

    No two texts are equal; parts of which every declared figure is equal have their numbers in them. A part alone of
    its kind has its name. ``with_kind`` puts the kind before parts of several kinds; without it, which is for lists
    with a column of kinds, texts of two kinds may be equal.
    """
    kinds: dict[PartKind, dict[PartRef, Part]] = defaultdict(dict)
    for part in parts:
        kinds[part.kind].setdefault(part.ref, part)
    told: dict[PartRef, str] = {}
    for kind, listed in kinds.items():
        of_kind = _of_one_kind(kind, tuple(listed.values()), words)
        if with_kind and len(kinds) > 1 and len(listed) > 1:
            of_kind = {ref: f"{words.word(kind)}, {text}" for ref, text in of_kind.items()}
        told.update(of_kind)
    return _without_twins(told) if with_kind else told


class ListedParts:
    """The parts of one list, each with what tells it from the others."""

    def __init__(self, parts: Iterable[Part], words: Words) -> None:
        listed = tuple(parts)
        self._refs = frozenset(part.ref for part in listed)
        self._alike = Counter(ref.number for ref in self._refs)
        self._told = what_differs(listed, words)
        self._words = words

    def differs(self, part: Part) -> str:
        """Return in what a part differs from the others; the name of one that is not listed."""
        return self._told.get(part.ref) or self._words.part_name(part)

    def of(self, part: Part, *, with_name: bool = False) -> str:
        """Return number and differences of a part, its maker first where another has its number.

        ``with_name`` puts its name before the differences: for the part that the others are told against.
        """
        others = self._alike[part.number] - (part.ref in self._refs)
        number = str(part.ref) if others else part.number
        name, differs = self._words.part_name(part), self.differs(part)
        said = self._words.writing.listed(dict.fromkeys((name, differs))) if with_name else differs
        return f"{number} ({said})"


def _of_one_kind(kind: PartKind, parts: Sequence[Part], words: Words) -> dict[PartRef, str]:
    if len(parts) == 1:
        return {parts[0].ref: words.part_name(parts[0])}
    texts: dict[PartRef, tuple[str, ...]] = {part.ref: () for part in parts}
    for tell in _leading_tells(kind, words):
        _tell_where_it_parts(parts, texts, tell)
    _part_the_alike(parts, texts, _other_tells(kind, words))
    return _without_twins({part.ref: ", ".join(texts[part.ref]) or words.part_name(part) for part in parts})


def _tell_where_it_parts(parts: Sequence[Part], texts: dict[PartRef, tuple[str, ...]], tell: _Tell) -> bool:
    """Add to the texts what is told of each part, and say whether any of it differs; nothing is said twice of one."""
    told = [tell(part) for part in parts]
    if len(set(told)) == 1:
        return False
    for part, text in zip(parts, told, strict=True):
        if text and text not in texts[part.ref]:
            texts[part.ref] = (*texts[part.ref], text)
    return True


def _part_the_alike(parts: Sequence[Part], texts: dict[PartRef, tuple[str, ...]], tells: Sequence[_Tell]) -> None:
    """Tell parts with equal texts by the first figures that part them; each group has its own."""
    groups = [group for group in _grouped(parts, lambda part: texts[part.ref]) if len(group) > 1]
    for at, tell in enumerate(tells):
        for group in groups:
            if _tell_where_it_parts(group, texts, tell):
                _part_the_alike(group, texts, tells[at + 1 :])
        groups = [group for group in groups if len({texts[part.ref] for part in group}) == 1]


def _grouped(parts: Iterable[Part], key: Callable[[Part], Hashable]) -> list[list[Part]]:
    groups: dict[Hashable, list[Part]] = defaultdict(list)
    for part in parts:
        groups[key(part)].append(part)
    return list(groups.values())


def _without_twins(told: dict[PartRef, str]) -> dict[PartRef, str]:
    """Return the texts, the numbers of parts behind those that would stand there twice."""
    count = Counter(told.values())
    numbers = Counter(ref.number for ref, text in told.items() if count[text] > 1)
    return {
        ref: text if count[text] == 1 else f"{text}, {ref if numbers[ref.number] > 1 else ref.number}"
        for ref, text in told.items()
    }


def _leading_tells(kind: PartKind, words: Words) -> Iterator[_Tell]:
    leading = (figure for figure in figures_of(kind) if figure.declared.tells)
    for figure in sorted(leading, key=lambda one: one.declared.tells):
        yield _FigureTold(figure, _Manner.BRIEF, words)


def _other_tells(kind: PartKind, words: Words) -> tuple[_Tell, ...]:
    """Return what is asked of parts alike so far: ends, what the kind adds, what all have; then the last digits."""
    figures = [figure for figure in figures_of(kind) if figure.declared.tells or figure.is_labelled]
    figures.sort(key=lambda one: (not one.declared.leads, not one.block))
    full = (_FigureTold(one, _Manner.FULL, words) for one in figures if one.is_labelled)
    exact = (_FigureTold(one, _Manner.EXACT, words) for one in figures if one.is_number)
    return (*full, *exact)


class _FigureTold:
    """Tells one figure of parts; what is said of a value, or of both ends of a range, is put into words once."""

    def __init__(self, figure: PartFigure, manner: _Manner, words: Words) -> None:
        self._figure, self._manner, self._words = figure, manner, words
        up_to = figure.declared.up_to
        self._paths = (figure.path, figure.beside(up_to)) if up_to else (figure.path,)
        self._known: dict[tuple[Hashable, ...], str] = {}

    def __call__(self, part: Part) -> str:
        """Return what is told of a part."""
        values = [value_at(part, path) for path in self._paths]
        key = *values, *map(type, values)
        if key not in self._known:
            self._known[key] = _told(part, figure=self._figure, manner=self._manner, words=self._words)
        return self._known[key]


def _told(part: Part, *, figure: PartFigure, manner: _Manner, words: Words) -> str:
    value = value_at(part, figure.path)
    brief = manner is _Manner.BRIEF
    if isinstance(value, bool):
        return _device(figure, words, holds=value) if brief else _labelled(figure, words.yes_no(value), words)
    if isinstance(value, Port) and brief:
        return _thread(value, words)
    if value is None and brief:
        return ""
    text = _text(part, value, figure, manner, words)
    return text if brief and figure.declared.bare else _labelled(figure, text, words)


def _thread(port: Port, words: Words) -> str:
    path = "" if port.path is FlowPath.SINGLE else f" {words.word(port.path)}"
    return f"{port.size} {words.word(port.thread)}{path}"


def _labelled(figure: PartFigure, text: str, words: Words) -> str:
    if not figure.is_labelled:
        return text
    declared = figure.declared
    label = words.word(label_of(declared.range_label or figure.label))
    return f"{words.inside(label)}{words.writing.colon} {text}"


def _device(figure: PartFigure, words: Words, *, holds: bool) -> str:
    """Return how the trade tells that a part has something; what it lacks is told only where there is a word for it."""
    if figure.path in _YES_AND_NO:
        term = _YES_AND_NO[figure.path][not holds]
        return words.word(term) if term is not None else ""
    if not holds:
        return ""
    return words.inside(words.word(label_of(figure.label))) if figure.is_labelled else _DEF


def _text(part: Part, value: object, figure: PartFigure, manner: _Manner, words: Words) -> str:
    if figure.path == "swivel.planes" and isinstance(value, int):
        return planes_word(value, words)
    if isinstance(value, frozenset | tuple):
        if figure.value_type is ListingClass:
            return classes_text(frozenset(value))
        told = [words.word(term) for term in value]
        return " + ".join(told if isinstance(value, tuple) else sorted(told))  # a tuple has its maker's order
    if isinstance(value, Port):
        end = f"{_thread(value, words)} {words.word(value.gender)}"
        return f"{end}, {value.made_up_in}" if value.made_up_in else end
    if figure.is_number or value is None:
        return _number(part, figure, manner, words)
    return words.word(value) if isinstance(value, StrEnum) else str(value)


def _number(part: Part, figure: PartFigure, manner: _Manner, words: Words) -> str:
    declared, value = figure.declared, number_at(part, figure.path)
    dimension = declared.dimension or Dimension.RATIO
    ends = (value, number_at(part, figure.beside(declared.up_to)) if declared.up_to else None)
    is_range = bool(declared.up_to) and bool(declared.range_label or declared.bare)
    if manner is _Manner.EXACT:
        shown = (words.display.exact(end, dimension) for end in (ends if is_range else (value,)) if end is not None)
        return " – ".join(shown) or words.show(None, dimension)
    if not is_range:
        return words.show(value, dimension)
    told = words.window(*ends, dimension)
    return _short_range(*ends, dimension, words) or told if manner is _Manner.BRIEF else told


def _short_range(low: float | None, high: float | None, dimension: Dimension, words: Words) -> str:
    """Return a range with its unit once, as a narrow column has room for it; empty where it has none."""
    if low is None or high is None or words.display.on_a_tape(dimension):
        return ""
    ends = (words.display.reading(low, dimension), words.display.reading(high, dimension))
    (first, _, unit), (last, _, other) = (end.partition(" ") for end in ends)
    return f"{first}–{last} {unit}" if unit == other and first != last else ""
