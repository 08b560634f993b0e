"""Pictures and documents kept with the parts of a catalogue: attached, taken away, handed out."""

from __future__ import annotations

from collections.abc import Callable, Iterable
from pathlib import Path
from typing import TYPE_CHECKING

from spoutline.model.faults import InputFault, InputProblem
from spoutline.model.worded import Worded

if TYPE_CHECKING:
    from spoutline.catalogue.shelf import CatalogueShelf
    from spoutline.catalogue.shelf_lookup import EntryChange
    from spoutline.model.catalogue_edition import EditionRef
    from spoutline.model.part_file import FileMatter, PartFile
    from spoutline.model.part_ref import PartRef
    from spoutline.model.shown_files import FilesOfParts, ShownFile
    from spoutline.model.survey import Survey


class PartFileService:
    """Keeps files with parts of drafts. Bad input raises ``InputFault`` and changes nothing."""

    def __init__(self, shelf: Callable[[], CatalogueShelf], planned_with: Callable[[Survey], EditionRef]) -> None:
        self._shelf, self._planned_with = shelf, planned_with

    def attach(
        self, name: str, part: PartRef, path: Path, *, title: str = "", matter: FileMatter | None = None
    ) -> EntryChange:
        """Keep a picture or document with a part of the draft of a catalogue; one of the same title is replaced.

        A picture is written anew, a document checked.
        """
        from spoutline.catalogue.part_files import file_from_path

        file, content = file_from_path(path, title, matter)

        def with_it(held: tuple[PartFile, ...]) -> tuple[PartFile, ...]:
            return (*_without(held, file.title), file)

        return self._change(name, part, with_it, (file, content))

    def detach(self, name: str, part: PartRef, title: str) -> EntryChange:
        """Take a picture or document from a part of the draft; raise ``InputFault`` where it has none of this title."""

        def without_it(held: tuple[PartFile, ...]) -> tuple[PartFile, ...]:
            left = _without(held, title.strip())
            if len(left) == len(held):
                known = ", ".join(one.title for one in held) or "the part has no file"
                raise InputFault(
                    (InputProblem(str(part), "title", repr(title), Worded("one of: {known}", known=known)),)
                )
            return left

        return self._change(name, part, without_it)

    def shown(self, survey: Survey, part: PartRef) -> tuple[ShownFile, ...]:
        """Return the files of a part in the edition that a survey is planned with."""
        return self.of_parts(self._planned_with(survey), [part]).get(part, ())

    def of_parts(self, edition: EditionRef, parts: Iterable[PartRef]) -> FilesOfParts:
        """Return the files of those parts of an edition that have any."""
        found = {part: self._shown(edition, part) for part in parts}
        return {part: files for part, files in found.items() if files}

    def content(self, file: PartFile) -> bytes | None:
        """Return the content of a file; None where the book has it not."""
        return self._shelf().file_content(file.digest)

    def _shown(self, edition: EditionRef, part: PartRef) -> tuple[ShownFile, ...]:
        from spoutline.model.shown_files import ShownFile

        entry = self._shelf().entry(edition, part)
        files = () if entry is None else entry.files
        return tuple(ShownFile(file, self.content(file) if file.is_picture else None) for file in files)

    def _change(
        self,
        name: str,
        part: PartRef,
        change: Callable[[tuple[PartFile, ...]], tuple[PartFile, ...]],
        kept: tuple[PartFile, bytes] | None = None,
    ) -> EntryChange:
        from spoutline.catalogue.shelf_lookup import EntryChange
        from spoutline.model.part_file import MOST_FILES

        with self._shelf().draft(name) as desk:
            before = desk.entries([part]).get(part)
            if before is None:
                raise InputFault((InputProblem("", "part", repr(str(part)), "a part of the draft"),))
            files = change(before.files)
            if len(files) > MOST_FILES:
                wanted = Worded("at most {most_files} of a part", most_files=MOST_FILES)
                raise InputFault((InputProblem(str(part), "files", str(len(files)), wanted),))
            if kept is not None:
                desk.keep_file(*kept)
            after = before.model_copy(update={"files": files})
            desk.put([after])
        return EntryChange(part, before, after)


def _without(held: tuple[PartFile, ...], title: str) -> tuple[PartFile, ...]:
    return tuple(one for one in held if one.title.casefold() != title.casefold())
