"""An exchange file opened within its bounds: its tables row by row, its other members as they are."""

from __future__ import annotations

import csv
import io
import json
import zipfile
import zlib
from collections import Counter
from collections.abc import Callable, Iterator
from contextlib import contextmanager
from pathlib import Path
from typing import BinaryIO, Final, NamedTuple, cast

from spoutline.catalogue.exchange_format import DESCRIPTOR, FILE_MEMBER, FORMAT, MEMBERS, VERSION, columns_of
from spoutline.input_bounds.bounds import BOUNDS
from spoutline.input_bounds.reading import bounded_stream
from spoutline.input_bounds.tables import csv_rows
from spoutline.model.faults import InputFault, InputProblem
from spoutline.model.worded import Worded

# told how many bytes of the tables are read, of how many; what it raises ends the reading
Watch = Callable[[int, int], None]
_ROWS_A_LOOK: Final = 500  # between two words on how far the file is read


class TableRow(NamedTuple):
    """One row of a table: the line that it ends with, and its cells by column."""

    line: int
    cells: dict[str, str]


class ExchangeArchive:
    """The tables and files of an exchange file that is open; what is wrong with rows is added to ``problems``."""

    def __init__(self, path: Path, problems: list[InputProblem], watch: Watch) -> None:
        size = path.stat().st_size
        if size > BOUNDS.exchange_bytes:
            wanted = Worded("{needed}; at most {most} bytes are read", needed=_NEEDED, most=BOUNDS.exchange_bytes)
            raise refused(path, Worded("{size} bytes", size=size), wanted)
        self._path = path
        self._archive = zipfile.ZipFile(path)
        self._problems = problems
        self._watch = watch
        self._rows = 0
        try:
            self._names = self._checked_names()
        except BaseException:
            self.close()
            raise
        tables = (one for one in self._archive.infolist() if one.filename.endswith(".csv"))
        self._bytes = {one.filename: one.file_size for one in tables}
        self._bytes_read = 0

    def close(self) -> None:
        """Close the file."""
        self._archive.close()

    def place(self, table: str, line: int | None = None) -> str:
        """Return what a table is called to a person, or one of its lines."""
        if line is None:
            return Worded("{path}, {file}", path=self._path, file=f"{table}.csv")
        return Worded("{path}, {file}, line {line_num}", path=self._path, file=f"{table}.csv", line_num=line)

    def rows(self, table: str) -> Iterator[TableRow]:
        """Yield the rows of a table, none where the file has it not; raise ``InputFault`` beyond the bounds.

        A row that has not as many cells as there are columns is told and left out.
        """
        file = f"{table}.csv"
        if file not in self._names:
            return
        known = columns_of(table)
        with self._archive.open(file) as stream:
            reader = csv.reader(io.TextIOWrapper(stream, encoding="utf-8-sig", newline=""), strict=True)
            rows = csv_rows(reader, lambda: self.place(table, reader.line_num))
            try:
                head = next(rows, None)
                if head is None or not self._is_head(head, known, table, reader.line_num):
                    return
                for cells in rows:
                    self._count_row(stream.tell)
                    if len(self._problems) > BOUNDS.problems:
                        return
                    if len(cells) == len(head):
                        yield TableRow(reader.line_num, dict(zip(head, cells, strict=True)))
                    else:
                        self._tell_cells(self.place(table, reader.line_num), len(cells), len(head))
            except UnicodeDecodeError as fault:
                value = Worded("{file}, byte {start}", file=file, start=fault.start)
                raise refused(self._path, value, "its tables are UTF-8") from fault
        self._bytes_read += self._bytes.get(file, 0)

    def content(self, member: str, most: int, what: str) -> bytes | None:
        """Return a member of at most so many bytes; None where the file has it not."""
        if member not in self._names:
            return None
        with self._archive.open(member) as stream:
            return bounded_stream(cast(BinaryIO, stream), most, f"{self._path}, {member}", "file", what)

    def _is_head(self, head: list[str], known: tuple[str, ...], table: str, line: int) -> bool:
        if sorted(head) == sorted(known):
            return True
        lacking = ", ".join(sorted(set(known) - set(head)) or sorted(set(head) - set(known)))
        wanted = Worded("name exactly: {known}", known=", ".join(known))
        self._problems.append(InputProblem(self.place(table, line), "columns", lacking[:200], wanted))
        return False

    def _tell_cells(self, place: str, count: int, columns: int) -> None:
        wanted = Worded("{count} cells, one for each column", count=columns)
        self._problems.append(InputProblem(place, "row", Worded("{count} cells", count=count), wanted))

    def _count_row(self, bytes_of_table: Callable[[], int]) -> None:
        self._rows += 1
        if self._rows > BOUNDS.exchange_rows:
            raise refused(
                self._path,
                Worded("more than {most} rows", most=BOUNDS.exchange_rows),
                Worded("at most {most} rows are read", most=BOUNDS.exchange_rows),
            )
        if self._rows % _ROWS_A_LOOK == 0:
            self._watch(self._bytes_read + bytes_of_table(), sum(self._bytes.values()))

    def _checked_names(self) -> frozenset[str]:
        members = self._archive.infolist()
        names = [member.filename for member in members]
        counts = Counter(names)
        strange = next(
            (name for name in names if counts[name] > 1 or not (name in MEMBERS or FILE_MEMBER.fullmatch(name))), None
        )
        if strange is not None:
            wanted = Worded(
                "an exchange file holds each of {descriptor} and its tables once, and nothing else",
                descriptor=DESCRIPTOR,
            )
            raise refused(self._path, repr(strange[:80]), wanted)
        unpacked = sum(member.file_size for member in members)
        if unpacked > BOUNDS.exchange_unpacked_bytes:
            wanted = Worded("at most {most} bytes, unpacked, are read", most=BOUNDS.exchange_unpacked_bytes)
            raise refused(self._path, Worded("{unpacked} bytes", unpacked=unpacked), wanted)
        self._check_descriptor(frozenset(names))
        return frozenset(names)

    def _check_descriptor(self, names: frozenset[str]) -> None:
        wanted = Worded(
            "its {descriptor} must say format {format}, version {version}",
            descriptor=DESCRIPTOR,
            format=FORMAT,
            version=VERSION,
        )
        if DESCRIPTOR not in names or self._archive.getinfo(DESCRIPTOR).file_size > BOUNDS.document_bytes:
            raise refused(self._path, DESCRIPTOR, wanted)
        try:
            said = json.loads(self._archive.read(DESCRIPTOR))
        except (ValueError, RecursionError):
            said = None
        if not isinstance(said, dict) or (said.get("format"), said.get("formatVersion")) != (FORMAT, VERSION):
            raise refused(self._path, DESCRIPTOR, wanted)


_NEEDED: Final = "an exchange file that `spoutline catalog export` wrote is needed"


@contextmanager
def told_faults(path: Path) -> Iterator[None]:
    """Let a file that cannot be read or unpacked inside be an ``InputFault``."""
    try:
        yield
    except (OSError, ValueError) as fault:
        reason = getattr(fault, "strerror", None) or fault
        raise refused(path, "this path", Worded("{needed} ({reason})", needed=_NEEDED, reason=reason)) from fault
    except (zipfile.BadZipFile, NotImplementedError, RuntimeError, EOFError, zlib.error) as fault:
        raise refused(path, "the archive", Worded("{needed} ({reason})", needed=_NEEDED, reason=fault)) from fault


def refused(path: Path, value: str, wanted: str) -> InputFault:
    """Return the fault of a file that cannot be taken in."""
    return InputFault((InputProblem(str(path), "file", value, wanted),))
