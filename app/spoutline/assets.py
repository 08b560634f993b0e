"""Where the data that come with the program lie: ``resources/``, the catalogue's source in ``catalog/``, a stamp."""

from __future__ import annotations

from pathlib import Path

from spoutline.model.faults import StoreFault
from spoutline.model.worded import Worded

_PACKAGE = Path(__file__).parent
_PACKAGED = "_data"  # where a built wheel carries both folders; see pyproject.toml


def resources_folder() -> Path:
    """Return the folder of rule tables, words, fonts and icons; raise ``StoreFault`` where it is missing."""
    return _folder("resources")


def catalogue_folder() -> Path:
    """Return the folder of the catalogue's source tables; raise ``StoreFault`` where it is missing."""
    return _folder("catalog")


def demo_folder() -> Path:
    """Return the folder of the ready demo surveys; raise ``StoreFault`` where it is missing."""
    folder = resources_folder() / "demo"
    if not folder.is_dir():
        raise StoreFault(Worded("The folder of demo surveys is missing: {folder}", folder=folder))
    return folder


def code_stamp() -> Path:
    """Return where a frozen program carries the fingerprint of its code; nothing lies there beside sources."""
    return _PACKAGE / _PACKAGED / "code_stamp"


def _folder(name: str) -> Path:
    """Find the folder inside an installed wheel, or beside ``app/`` in a source checkout."""
    installed = _PACKAGE / _PACKAGED / name
    checkout = Path(__file__).resolve().parents[2] / name
    for folder in (installed, checkout):
        if folder.is_dir():
            return folder
    raise StoreFault(
        Worded(
            "The folder {name!r} that comes with the program is missing: neither {installed} nor {checkout}",
            name=name,
            installed=installed,
            checkout=checkout,
        )
    )
