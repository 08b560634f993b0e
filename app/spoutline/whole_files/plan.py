"""Which files a command or a button is about to write: checked before anything is done, then written all or none."""

from __future__ import annotations

from collections.abc import Callable, Iterable, Mapping, Sequence
from contextlib import AbstractContextManager
from pathlib import Path

from spoutline.frozen import frozen
from spoutline.model.faults import InputFault, InputProblem
from spoutline.model.worded import Worded
from spoutline.whole_files.places import Place, is_below, is_same_place, obstacle, place_of
from spoutline.whole_files.writing import Staged, staged, write_files

FORCE = "--force"
# the first bytes of a database of SQLite and of its write-ahead log, after https://www.sqlite.org/fileformat2.html
_DATABASE_STARTS = (b"SQLite format 3\x00", b"\x37\x7f\x06\x82", b"\x37\x7f\x06\x83")


@frozen
class InUse:
    """A file that the work draws on, in words; with ``holds_all`` a folder with everything below it."""

    path: Path
    words: str
    holds_all: bool = False


@frozen
class PlannedFile:
    """A file to be written: the option or button that names it, and how to tell that one there is the program's own."""

    option: str
    path: Path
    is_own: Callable[[Path], bool]


class OutputPlan:
    """The files that are written together.

    ``force`` lets them replace files that the program did not write; it never lets them replace what is in use, each
    other, a database, or what is no ordinary file.
    """

    def __init__(self, files: Sequence[PlannedFile], in_use: Iterable[InUse], *, force: bool = False) -> None:
        self._files, self._force = tuple(files), force
        self._in_use = tuple(in_use) if self._files else ()

    @property
    def paths(self) -> tuple[Path, ...]:
        """The files to be written."""
        return tuple(one.path for one in self._files)

    def check(self, further: Iterable[InUse] = ()) -> None:
        """Raise ``InputFault`` naming every file that must not be written; ``further`` is what came into use since."""
        self._in_use = (*self._in_use, *further)
        problems = list(self.clashes())
        if not problems and not self._force:
            problems = [
                InputProblem(
                    "",
                    one.option,
                    f"'{one.path}'",
                    Worded("{foreign_words}; {force} replaces it", foreign_words=_foreign_words(one), force=FORCE),
                )
                for one in self.foreign()
            ]
        if problems:
            raise InputFault(tuple(problems))

    def clashes(self) -> tuple[InputProblem, ...]:
        """Return what nothing may override: a file in use, two outputs in one, a link, pipe, device or database."""
        return tuple(
            InputProblem("", one.option, f"'{one.path}'", words)
            for one, words in ((one, self._clash(one)) for one in self._files)
            if words is not None
        )

    def foreign(self) -> tuple[PlannedFile, ...]:
        """Return the files that are there already and that the program did not write as what it writes there now."""
        return tuple(one for one in self._files if one.path.exists() and not _is_own(one))

    def write(self, contents: Mapping[Path, bytes]) -> None:
        """Check again, as time has passed, and write all files or none; raise ``InputFault`` or ``StoreFault``."""
        self.check()
        write_files(contents)

    def staged(self, contents: Mapping[Path, bytes]) -> AbstractContextManager[Staged]:
        """Check again and write all files beside their places, to be placed together; see ``writing.staged``."""
        self.check()
        return staged(contents)

    def _clash(self, file: PlannedFile) -> str | None:
        words = obstacle(file.path)
        if words is not None:
            return words
        place = place_of(file.path)
        for used in self._in_use:
            if is_same_place(place, place_of(used.path)) or (used.holds_all and is_below(place, used.path)):
                return Worded("this is {words}; name another file", words=used.words)
        for other in self._files[: self._files.index(file)]:
            if is_same_place(place, place_of(other.path)):
                return Worded("this is the file of {option}; name another file", option=other.option)
        return "this is a database, which is not replaced; name another file" if _is_database(place) else None


def _is_own(file: PlannedFile) -> bool:
    try:
        return file.is_own(file.path)
    except OSError:
        return False


def _foreign_words(file: PlannedFile) -> str:
    return Worded(
        "this file is there already and was not written by the program as its {option} file",
        option=file.option.lstrip("-"),
    )


def _is_database(place: Place) -> bool:
    try:
        with Path(place.path).open("rb") as stream:
            return stream.read(16).startswith(_DATABASE_STARTS)
    except OSError:
        return False
