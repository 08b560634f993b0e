"""The folder of the person's data: which it is, and another one taken in its place, with a copy of everything."""

from __future__ import annotations

import shutil
from pathlib import Path
from typing import Final

from spoutline.bootstrap.preferences import Preference, home_folder, keep_preference
from spoutline.bootstrap.settings import user_folder
from spoutline.model.faults import InputFault, InputProblem, StoreFault
from spoutline.model.worded import Worded

_FOLDERS: Final = ("jurisdictions", "prices", "table_maps")
_FILES: Final = ("usual_terms.toml",)


def use_data_folder(folder: Path) -> bool:
    """Take another folder for data from the next start on, and say whether it held a book already.

    Where it holds none, everything is copied into it; what lies in the folder of today stays there. Raise
    ``InputFault`` for a folder that is none or cannot be written to, ``StoreFault`` where copying fails: nothing was
    chosen then.
    """
    from spoutline.book.address import DEFAULT_FILE
    from spoutline.book.backups import copy_book

    before = user_folder()
    if not folder.is_dir():
        raise InputFault((InputProblem("", "data folder", str(folder), "choose a folder that is there"),))
    if folder.resolve() == before.resolve():
        return (folder / DEFAULT_FILE).exists()
    held = (folder / DEFAULT_FILE).exists()
    if not held:
        try:
            for name in _FOLDERS:
                if (before / name).is_dir():
                    shutil.copytree(before / name, folder / name, dirs_exist_ok=True)
            for name in _FILES:
                if (before / name).is_file():
                    shutil.copy2(before / name, folder / name)
            if (before / DEFAULT_FILE).exists():
                copy_book(before / DEFAULT_FILE, folder / DEFAULT_FILE)
        except OSError as fault:
            raise StoreFault(
                Worded(
                    "Not everything could be copied into {folder}: {reason}.",
                    folder=folder,
                    reason=fault.strerror or fault,
                )
            ) from fault
    is_usual = folder.resolve() == home_folder().resolve()
    keep_preference(Preference.DATA_FOLDER, "" if is_usual else str(folder.resolve()))
    return held
