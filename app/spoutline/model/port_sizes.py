"""Which sizes a thread standard has, which path it carries, and the one reader of what people write for a size.

A size is nominal: ``19 mm`` and ``DN 20`` stand for 3/4 because the trade calls it so, not because something measures
that much. What could mean two things is refused: a bare ``20`` is neither inches nor DN, and a thread named beside the
size must be the thread that was answered.
"""

from __future__ import annotations

import re
import unicodedata
from collections.abc import Iterator
from fractions import Fraction
from typing import Final

from spoutline.frozen import frozen
from spoutline.model.nominal_size import NominalSize
from spoutline.model.port import FlowPath, ThreadStandard
from spoutline.model.worded import Worded

_MM_PER_INCH = Fraction(254, 10)  # international yard and pound agreement, 1959
_NOMINAL_MM = Fraction(1, 2)  # people round to whole millimetres; sizes of one thread lie further apart
_LONGEST_TEXT = 40


@frozen
class ThreadSizes:
    """The sizes of a thread standard with their source; ``path`` is what a port with this thread carries."""

    sizes: tuple[NominalSize, ...]
    usual: NominalSize
    path: FlowPath
    source: str
    threads_per_inch: tuple[tuple[Fraction, NominalSize], ...] = ()  # from this size on, pipe threads only


_N = NominalSize
_EVERY_THREAD: Final[dict[ThreadStandard, ThreadSizes]] = {
    # sizes and threads per inch of both pipe threads: from memory; 1/2 to 1-1/4 agree with public tables
    ThreadStandard.NPT: ThreadSizes(
        sizes=(
            *(_N.INCH_1_16, _N.INCH_1_8, _N.INCH_1_4, _N.INCH_3_8, _N.INCH_1_2, _N.INCH_3_4, _N.INCH_1),
            *(_N.INCH_1_1_4, _N.INCH_1_1_2, _N.INCH_2, _N.INCH_2_1_2, _N.INCH_3, _N.INCH_3_1_2, _N.INCH_4),
        ),
        usual=_N.INCH_3_4,
        path=FlowPath.SINGLE,
        source="ASME B1.20.1, to 4 in",
        threads_per_inch=(
            (Fraction(27), _N.INCH_1_16),
            (Fraction(18), _N.INCH_1_4),
            (Fraction(14), _N.INCH_1_2),
            (Fraction(23, 2), _N.INCH_1),
            (Fraction(8), _N.INCH_2_1_2),
        ),
    ),
    ThreadStandard.G: ThreadSizes(
        sizes=(
            *(_N.INCH_1_16, _N.INCH_1_8, _N.INCH_1_4, _N.INCH_3_8, _N.INCH_1_2, _N.INCH_5_8, _N.INCH_3_4),
            *(_N.INCH_7_8, _N.INCH_1, _N.INCH_1_1_8, _N.INCH_1_1_4, _N.INCH_1_1_2, _N.INCH_1_3_4, _N.INCH_2),
            *(_N.INCH_2_1_4, _N.INCH_2_1_2, _N.INCH_2_3_4, _N.INCH_3, _N.INCH_3_1_2, _N.INCH_4),
        ),
        usual=_N.INCH_3_4,
        path=FlowPath.SINGLE,
        source="ISO 228-1, to 4 in",
        threads_per_inch=(
            (Fraction(28), _N.INCH_1_16),
            (Fraction(19), _N.INCH_1_4),
            (Fraction(14), _N.INCH_1_2),
            (Fraction(11), _N.INCH_1),
        ),
    ),
    ThreadStandard.M: ThreadSizes(
        sizes=(_N.METRIC_34_1_5,),
        usual=_N.METRIC_34_1_5,
        path=FlowPath.VACUUM_ASSIST,
        source="vacuum-assist coaxial, common practice, no source",
    ),
    ThreadStandard.UN: ThreadSizes(
        sizes=(_N.UNIFIED_1_7_8_12,),
        usual=_N.UNIFIED_1_7_8_12,
        path=FlowPath.BALANCE,
        source="balance coaxial, common practice, no source",
    ),
}

# DN of ISO 6708 beside the inch sizes, as ASME B36.10M and EN 10255 print them (memory)
_DN_OF: Final[dict[NominalSize, int]] = {
    _N.INCH_1_8: 6,
    _N.INCH_1_4: 8,
    _N.INCH_3_8: 10,
    _N.INCH_1_2: 15,
    _N.INCH_3_4: 20,
    _N.INCH_1: 25,
    _N.INCH_1_1_4: 32,
    _N.INCH_1_1_2: 40,
    _N.INCH_2: 50,
    _N.INCH_2_1_2: 65,
    _N.INCH_3: 80,
    _N.INCH_3_1_2: 90,
    _N.INCH_4: 100,
}

# Names of a thread beside a size. BSP names parallel and taper alike, so it agrees with G but cannot decide for it.
_NAMED: Final[dict[str, ThreadStandard]] = {
    "npt": ThreadStandard.NPT,
    "bspp": ThreadStandard.G,
    "bsp": ThreadStandard.G,
    "g": ThreadStandard.G,
    "un": ThreadStandard.UN,
    "m": ThreadStandard.M,
}
_UNDECIDED = "bsp"

_NUMBER = r"(?:\d+[ -]+\d+ ?/ ?\d+|\d+ ?/ ?\d+|\d*[.,]\d+|\d+)"
_INCH = r"(?:\"|inch(?:es)?|in\.?)"
_BEFORE = re.compile(r"^(npt|bspp|bsp|g|un|m) ?(?=[\d.,])(.+)$")
_AFTER = re.compile(r"^(.+?)[ -]?(npt|bspp|bsp|g|un)$")
_PIPE = re.compile(rf"^({_NUMBER}) ?({_INCH})?$")
_CALLOUT = re.compile(rf"^({_NUMBER}) ?(?:{_INCH})? ?- ?({_NUMBER})$")  # 3/4-14, as ASME B1.20.1 designates a thread
_METRIC = re.compile(r"^(\d+(?:[.,]\d+)?) ?x ?(\d+(?:[.,]\d+)?)(?: ?mm)?$")
_MILLIMETRES = re.compile(r"^(\d+(?:[.,]\d+)?) ?(?:mm|millimet(?:er|re)s?)$")
_DN = re.compile(r"^dn ?(\d{1,4})$")


def sizes_of(thread: ThreadStandard) -> tuple[NominalSize, ...]:
    """Return the sizes of a thread standard, small to large."""
    return _EVERY_THREAD[thread].sizes


def usual_size(thread: ThreadStandard) -> NominalSize:
    """Return the size that stands where nobody answered: 3/4 for pipe threads, the coaxial ones have one size."""
    return _EVERY_THREAD[thread].usual


def path_of_thread(thread: ThreadStandard) -> FlowPath:
    """Return the path that a port with this thread carries.

    A pipe thread holds one bore. The paths of the coaxial threads are common practice, no source.
    """
    return _EVERY_THREAD[thread].path


def sizes_told(thread: ThreadStandard) -> str:
    """Return the sizes of a thread with their source, for a message."""
    known = _EVERY_THREAD[thread]
    return f"the sizes of {thread} threads ({known.source}): {', '.join(known.sizes)}"


def dn_of(size: NominalSize, thread: ThreadStandard) -> int | None:
    """Return the DN (ISO 6708) that is printed beside a size of a pipe thread; None where there is none."""
    return _DN_OF.get(size) if size in sizes_of(thread) else None


def read_size(text: str, thread: ThreadStandard) -> NominalSize:
    """Return the size that a person means by ``text`` for a port of ``thread``.

    Raises
    ------
    ValueError
        The text means no size of this thread, or could mean several; the message lists the sizes of the thread.
    """
    written, named = _without_name(_normal(text))
    if named and _NAMED[named] is not thread:
        raise ValueError(
            Worded(
                "the text names {named} and the thread is {thread}: let both say the same; use one of {sizes}",
                named=_NAMED[named],
                thread=thread,
                sizes=sizes_told(thread),
            )
        )
    size = _size_in(written, thread)
    if size is None:
        others = [other for other in ThreadStandard if other is not thread and _size_in(written, other) is not None]
        if not others:
            raise ValueError(Worded("use one of {sizes}", sizes=sizes_told(thread)))
        raise ValueError(
            Worded(
                "it is a size of {others} threads, and this thread is {thread}; use one of {sizes}",
                others=", ".join(others),
                thread=thread,
                sizes=sizes_told(thread),
            )
        )
    return size


def thread_named(text: str) -> ThreadStandard | None:
    """Return the thread that a size names beside itself (``3/4 NPT``, ``M34x1.5``); None where it names none."""
    _, named = _without_name(_normal(text))
    return _NAMED[named] if named and named != _UNDECIDED else None


def understood_words(size: NominalSize, thread: ThreadStandard) -> str:
    """Return what a size was read as, such as ``3/4 NPT, nominal (DN 20)``."""
    dn = dn_of(size, thread)
    return f"{size} {thread}, nominal{f' (DN {dn})' if dn is not None else ''}"


def _normal(text: str) -> str:
    """Return a text with its signs made alike: fractions in full, one dash, one multiplication sign, one blank."""
    if len(text) > _LONGEST_TEXT:
        return ""
    whole = "".join(f" {unicodedata.normalize('NFKC', sign)} " if _is_fraction(sign) else sign for sign in text)
    for signs, plain in (("\u2044", "/"), ("\u201c\u201d\u2033", '"'), ("\u2010\u2011\u2012\u2013\u2212", "-")):
        for sign in signs:
            whole = whole.replace(sign, plain)
    whole = whole.replace("''", '"').replace("\u00d7", "x").replace("*", "x").casefold()
    return " ".join(whole.split())


def _is_fraction(sign: str) -> bool:
    return unicodedata.decomposition(sign).startswith("<fraction>")


def _without_name(text: str) -> tuple[str, str]:
    before = _BEFORE.match(text)
    if before:
        return before[2].strip(), before[1]
    after = _AFTER.match(text)
    return (after[1].strip(), after[2]) if after else (text, "")


def _size_in(text: str, thread: ThreadStandard) -> NominalSize | None:
    match thread:
        case ThreadStandard.M:
            return _metric_size(text)
        case ThreadStandard.UN:
            return _unified_size(text)
    return next(_pipe_sizes(text, thread), None)


def _pipe_sizes(text: str, thread: ThreadStandard) -> Iterator[NominalSize]:
    """Yield the size of a pipe thread that a text without the thread's name means; nothing where it means none."""
    sizes = sizes_of(thread)
    if found := _DN.match(text):
        yield from (size for size in sizes if _DN_OF.get(size) == int(found[1]))
    elif found := _MILLIMETRES.match(text):
        length = _number(found[1])
        yield from (size for size in sizes if abs(_inches(size) * _MM_PER_INCH - length) <= _NOMINAL_MM)
    elif found := _PIPE.match(text):
        yield from (size for size in sizes if _inches(size) == _number(found[1]))
    elif found := _CALLOUT.match(text):
        inches, threads = _number(found[1]), _number(found[2])
        yield from (size for size in sizes if _inches(size) == inches and _threads_per_inch(size, thread) == threads)


def _metric_size(text: str) -> NominalSize | None:
    found = _METRIC.match(text)
    if not found:
        return None  # a diameter alone would mean the coarse pitch (ISO 965-1), which no port here has
    written = f"{float(_number(found[1])):g}x{float(_number(found[2])):g}"
    return next((size for size in sizes_of(ThreadStandard.M) if size == written), None)


def _unified_size(text: str) -> NominalSize | None:
    found = _CALLOUT.match(text)  # a diameter alone leaves the threads per inch open
    if not found:
        return None
    for size in sizes_of(ThreadStandard.UN):
        inches, _, threads = size.rpartition("-")
        if (_number(inches), _number(threads)) == (_number(found[1]), _number(found[2])):
            return size
    return None


def _inches(size: NominalSize) -> Fraction:
    return _number(size)


def _threads_per_inch(size: NominalSize, thread: ThreadStandard) -> Fraction | None:
    rows = [count for count, least in _EVERY_THREAD[thread].threads_per_inch if _inches(least) <= _inches(size)]
    return rows[-1] if rows else None


def _number(text: str) -> Fraction:
    """Return a whole number, a fraction, both together, or a decimal (with point or comma)."""
    plain = text.replace(",", ".")
    if "/" not in plain:
        return Fraction(plain)
    above, below = (part.strip() for part in plain.split("/"))
    whole, _, above = " ".join(above.replace("-", " ").split()).rpartition(" ")
    return Fraction(int(whole or 0)) + (Fraction(int(above), int(below)) if int(below) else Fraction(0))
