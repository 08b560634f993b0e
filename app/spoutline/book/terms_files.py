"""Files of terms: written whole or not at all, with the letterhead's picture beside them."""

from __future__ import annotations

import base64
from pathlib import Path
from typing import TypeVar

from spoutline.book.terms_text import file_text, usual_from_toml
from spoutline.book.terms_writing import terms_to_toml, usual_to_toml
from spoutline.frozen import frozen
from spoutline.input_bounds.bounds import BOUNDS
from spoutline.input_bounds.picture import check_picture
from spoutline.input_bounds.reading import bounded_bytes
from spoutline.model.faults import InputFault, InputProblem, StoreFault
from spoutline.model.quotation_terms import Terms
from spoutline.model.usual_terms import UsualTerms
from spoutline.model.worded import Worded
from spoutline.whole_files import write_file

_TermsT = TypeVar("_TermsT", Terms, UsualTerms)


@frozen
class TermsFolders:
    """Where a picture's file name is looked for: beside the terms, then beside the usual terms."""

    beside: Path | None
    usual: Path

    def picture(self, name: str) -> Path | None:
        """Return the picture file that a name means; None where there is no such file, or another computer has it."""
        if _is_elsewhere(name):
            return None
        found = (folder / name for folder in (self.beside, self.usual) if folder is not None and name)
        return next((path for path in found if path.is_file()), None)


def read_logo(terms: Terms, folders: TermsFolders) -> str:
    """Return the letterhead's picture in base64; empty where the terms name none.

    Raises
    ------
    InputFault
        The picture cannot be read, lies on another computer, or is larger than 5 MB.
    """
    name = terms.seller.logo
    if not name:
        return ""
    if _is_elsewhere(name):
        raise _logo_fault(Path(name), name, "a picture beside the terms is needed; none is fetched from elsewhere")
    path = folders.picture(name) or (folders.beside or folders.usual) / name
    try:
        content = bounded_bytes(path, BOUNDS.letterhead_bytes, "seller.logo", "a readable picture file is needed")
    except InputFault as fault:
        raise _logo_fault(path, name, fault.problems[0].wanted) from fault
    check_picture(content, str(path), "seller.logo")
    return base64.b64encode(content).decode("ascii")


def _is_elsewhere(name: str) -> bool:
    """Say whether a name leads to another computer: a URL, or a share on a server, which Windows would ask for it."""
    return "://" in name or name.startswith(("//", "\\\\", "\\/", "/\\"))


def _logo_fault(path: Path, name: str, wanted: str) -> InputFault:
    return InputFault((InputProblem(str(path), "seller.logo", repr(name), wanted),))


def write_terms_file(terms: Terms, path: Path, folders: TermsFolders) -> Terms:
    """Write terms into a file and return them as they stand there.

    A picture that only ``folders`` lead to is put beside the file, so that the file can be read from anywhere.

    Raises
    ------
    StoreFault
        The file or picture cannot be written; an older file is as it was.
    """
    written = _with_picture(terms, path.parent, folders)
    write_file(path, terms_to_toml(written, _old_text(path)).encode("utf-8"))
    return written


def read_usual_file(path: Path) -> UsualTerms:
    """Return the usual terms in a file, empty ones where it is not there; raise ``InputFault`` with every fault."""
    return usual_from_toml(file_text(path), str(path)) if path.is_file() else UsualTerms()


def write_usual_file(usual: UsualTerms, path: Path, folders: TermsFolders) -> UsualTerms:
    """Write the shared part of usual terms into their file, and return them as they stand there.

    What the file says beyond that stays. Raise ``InputFault`` where the file that is there is faulty, so that nothing
    written by hand is lost, and ``StoreFault`` as ``write_terms_file`` does.
    """
    read_usual_file(path)
    try:
        path.parent.mkdir(parents=True, exist_ok=True)
    except OSError as fault:
        raise StoreFault(
            Worded("{parent} cannot be made: {reason}.", parent=path.parent, reason=fault.strerror)
        ) from fault
    written = _with_picture(usual, path.parent, folders)
    write_file(path, usual_to_toml(written, _old_text(path)).encode("utf-8"))
    return written


def _with_picture(terms: _TermsT, target: Path, folders: TermsFolders) -> _TermsT:
    """Return terms whose picture lies beside their file; it is copied there where it does not."""
    seller = terms.seller
    source = folders.picture(seller.logo) if seller is not None else None
    if seller is None or source is None:
        return terms
    name = source.name
    if source.parent.resolve() != target.resolve():
        try:
            content = bounded_bytes(source, BOUNDS.letterhead_bytes, "seller.logo", "a readable picture is needed")
            name = _free_name(target, source, content)
        except OSError as fault:
            raise StoreFault(
                Worded("The picture {source} cannot be read: {reason}.", source=source, reason=fault.strerror)
            ) from fault
        if not (target / name).exists():
            write_file(target / name, content)
    return terms.model_copy(update={"seller": seller.model_copy(update={"logo": name})})


def _free_name(folder: Path, source: Path, content: bytes) -> str:
    """Return the first name like the picture's own that is free in a folder, or holds the same picture already."""
    number = 1
    while True:
        name = source.name if number == 1 else f"{source.stem}-{number}{source.suffix}"
        taken = folder / name
        if not taken.exists() or (taken.is_file() and taken.read_bytes() == content):
            return name
        number += 1


def _old_text(path: Path) -> str:
    """Return the text that is written over; empty where there is none that can be read."""
    try:
        return file_text(path) if path.is_file() else ""
    except InputFault:
        return ""
