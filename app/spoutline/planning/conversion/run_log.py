"""What a long run over many surveys has worked out, kept site by site so that it can be taken up again."""

from __future__ import annotations

import hashlib
from collections.abc import Sequence
from pathlib import Path
from types import TracebackType
from typing import TextIO, TypeVar

from pydantic import BaseModel, ConfigDict, Field, ValidationError

from spoutline.input_bounds.bounds import BOUNDS
from spoutline.input_bounds.reading import bounded_bytes
from spoutline.model.faults import InputFault, InputProblem, StoreFault
from spoutline.model.programme import SiteOutcome, SiteResult
from spoutline.model.worded import Worded
from spoutline.whole_files import write_file

_FORMAT, _VERSION = "spoutline-run", 3  # 3: with the cost of a site by its parts, and whether prices are invented
_OPTION = "--resume"
_DRAFT = b"@draft"
_LONGEST_HEAD = 4096  # bytes
_ROOMY_SHARE = 0.25  # of the bound of a file: below that, lines that no longer count take no room that is missed
_M = TypeVar("_M", bound=BaseModel)


class _Head(BaseModel):
    model_config = ConfigDict(frozen=True, extra="forbid")

    format: str = _FORMAT
    version: int = _VERSION
    made_with: str = Field(description="Fingerprint of all that results rest on beside the surveys.")


class _Line(BaseModel):
    model_config = ConfigDict(frozen=True, extra="forbid")

    survey: str = Field(description="SHA-256 of the survey file.")
    result: SiteResult


class RunLog:
    """A file of one line for each finished site, written as results come in; use as a context manager.

    Parameters
    ----------
    path
        The file; it is made where there is none.
    made_with
        Fingerprint of what results rest on beside the surveys: editions, rules, agreed sets, program. Results of a run
        made with anything else are worked out anew.

    Raises
    ------
    InputFault
        The file is no such list; nothing is written then.
    StoreFault
        It cannot be read or written.
    """

    def __init__(self, path: Path, made_with: str) -> None:
        self._path, self._made_with = path, made_with
        self._known = _read(path, made_with)
        self._digests: dict[str, str] = {}
        self._file: TextIO | None = None

    def __enter__(self) -> RunLog:
        try:
            self._leave_what_counts()
            self._file = self._path.open("a", encoding="utf-8")
            self._write(_Head(made_with=self._made_with))
        except OSError as fault:
            raise _unwritable(self._path, fault) from fault
        return self

    def __exit__(
        self, kind: type[BaseException] | None, error: BaseException | None, trace: TracebackType | None
    ) -> None:
        if self._file is not None:
            self._file.close()

    def _leave_what_counts(self) -> None:
        """Take lines that no longer count out of a file that is on its way to its bound."""
        if not self._path.exists() or self._path.stat().st_size <= BOUNDS.run_bytes * _ROOMY_SHARE:
            return
        lines = [_Head(made_with=self._made_with), *self._known.values()]
        write_file(self._path, "".join(f"\n{line.model_dump_json()}" for line in lines).encode())

    def known(self, paths: Sequence[Path]) -> dict[int, SiteResult]:
        """Return the results of the files among ``paths`` that have not changed since, by place in ``paths``."""
        self._digests = {path.name: _digest(path) for path in paths}
        found = {}
        for index, path in enumerate(paths):
            line = self._known.get(path.name)
            # no digest: the file cannot be read, which is to be told anew
            if line is not None and line.survey and line.survey == self._digests[path.name]:
                found[index] = line.result
        return found

    def keep(self, result: SiteResult) -> None:
        """Write the result of a file down; a fault is not kept, as its cause may be gone the next time."""
        survey = self._digests.get(result.place, "")
        if result.outcome is SiteOutcome.FAULT or not survey:
            return
        try:
            self._write(_Line(survey=survey, result=result))
        except OSError as fault:
            raise _unwritable(self._path, fault) from fault

    def _write(self, line: BaseModel) -> None:
        if self._file is not None:
            self._file.write(f"\n{line.model_dump_json()}")  # a line that a fall of the machine cut off stays alone
            self._file.flush()  # whatever ends the run, what was finished stays


def is_run(path: Path) -> bool:
    """Say whether a file is one of a run, or none is there; one that cannot be read is none."""
    try:
        if not path.exists():
            return True
        with path.open("rb") as file:
            begun = file.read(_LONGEST_HEAD).lstrip()
        head = _parsed(_Head, begun.split(b"\n", 1)[0])
        return path.stat().st_size <= BOUNDS.run_bytes and (not begun or (head is not None and head.format == _FORMAT))
    except OSError:
        return False


def _read(path: Path, made_with: str) -> dict[str, _Line]:
    """Return the newest line of each file name below heads of the same making; raise ``InputFault``."""
    if not path.exists():
        return {}
    needed = "a file of an earlier run, or one that is not there yet, is needed"
    texts = [text for text in bounded_bytes(path, BOUNDS.run_bytes, _OPTION, needed).splitlines() if text.strip()]
    found: dict[str, _Line] = {}
    counts = False
    for number, text in enumerate(texts):
        head = _parsed(_Head, text)
        if head is not None and head.format == _FORMAT:
            counts = (head.version, head.made_with) == (_VERSION, made_with)
        elif number == 0:
            raise InputFault((InputProblem("", _OPTION, f"'{path}'", needed),))
        elif counts and (line := _parsed(_Line, text)) is not None:
            found[line.result.place] = line
    return found


def _parsed(kind: type[_M], text: bytes) -> _M | None:
    """Return a line as it was written; None for another kind of line, and for one that was cut off."""
    try:
        return kind.model_validate_json(text)
    except ValidationError:
        return None


def _digest(path: Path) -> str:
    """Return the SHA-256 of a survey file; nothing where it cannot be read or names a draft, which may change."""
    try:
        with path.open("rb") as file:
            content = file.read(BOUNDS.survey_bytes + 1)
    except OSError:
        return ""
    return "" if _DRAFT in content else hashlib.sha256(content).hexdigest()


def _unwritable(path: Path, fault: OSError) -> StoreFault:
    return StoreFault(
        Worded("The file of the run {path} cannot be written: {reason}.", path=path, reason=fault.strerror or fault)
    )
