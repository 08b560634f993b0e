"""What is remembered of tables: how each was read, for the next one with its titles."""

from __future__ import annotations

from typing import TYPE_CHECKING

from spoutline.model.faults import InputFault, InputProblem
from spoutline.model.worded import Worded

if TYPE_CHECKING:
    from collections.abc import Callable, Sequence
    from pathlib import Path

    from spoutline.planning.table_intake.column_map import TableMap
    from spoutline.planning.table_intake.into_draft import OpenedTable
    from spoutline.planning.table_intake.raw_table import TextEncoding
    from spoutline.planning.table_intake.table_look import TableFile


class TableMaps:
    """A folder of maps; ``folder`` is only asked for when it is needed."""

    def __init__(self, folder: Callable[[], Path]) -> None:
        self._folder = folder

    def all(self) -> tuple[TableMap, ...]:
        """Return what is remembered; a file that is no map is passed over."""
        from spoutline.planning.table_intake.column_map import read_map

        found = []
        for path in sorted(self._folder().glob("*.toml")):
            try:
                found.append(read_map(path))
            except InputFault:
                continue  # mended or deleted by a person; the table can be read without it
        return tuple(found)

    def open(self, path: Path, sheet: str, encoding: TextEncoding | None, plain: TableMap) -> TableFile:
        """Return a table as it was read last time where its titles are known, else as ``plain`` and they suggest."""
        from spoutline.planning.table_intake.table_look import open_file

        return open_file(path, self.all(), sheet, encoding, plain)

    def open_rows(self, place: str, rows: Sequence[Sequence[str]], plain: TableMap) -> OpenedTable:
        """Return rows of texts, such as those of a clipboard, as ``open`` does; raise ``InputFault``."""
        from spoutline.planning.table_intake.raw_table import pasted_table
        from spoutline.planning.table_intake.table_look import opened_rows

        return opened_rows(pasted_table(place, rows), self.all(), plain)

    def remember(self, opened: OpenedTable) -> Path:
        """Remember how a table was read for the next one with its titles; return the file."""
        from spoutline.planning.table_intake.column_map import map_to_toml
        from spoutline.planning.table_intake.intake_fields import TableSubject
        from spoutline.whole_files import write_file

        kept = opened.remembered
        folder = self._folder()
        subject = "" if kept.subject is TableSubject.PARTS else f"{kept.subject}_"  # two kinds may have equal titles
        path = folder / f"{subject}{kept.fingerprint}.toml"
        try:
            folder.mkdir(parents=True, exist_ok=True)
        except OSError as fault:
            wanted = Worded("a folder that can be made is needed ({reason})", reason=fault.strerror)
            raise InputFault((InputProblem(str(folder), "folder", "this path", wanted),)) from fault
        write_file(path, map_to_toml(kept).encode())
        return path
