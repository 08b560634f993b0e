"""What stations ask for, kept from one look at the due work to the next, so that none is planned anew unasked.

A station is known by a key over all that its answer rests on: its survey, its catalogue edition, what is agreed, its
forms and replacements, rules and program. Where anything of these changes the key is another one.
"""

from __future__ import annotations

import hashlib
from collections.abc import Sequence
from contextlib import suppress
from functools import cache
from pathlib import Path
from typing import TYPE_CHECKING

from spoutline.model.inspection_needs import PositionNeeds
from spoutline.model.record import InspectionEntry, RecordedWork

if TYPE_CHECKING:
    from pydantic import TypeAdapter

    from spoutline.bootstrap.stores import Stores
    from spoutline.model.survey import Survey

_LARGEST = 64 * 1024 * 1024  # bytes; a larger file is none of the program's
_Needs = tuple[PositionNeeds, ...]


class NeedsKeys:
    """Makes the keys of stations; rule files are read once for all of them."""

    def __init__(self, stores: Stores, own_rules: Path) -> None:
        from spoutline import assets
        from spoutline.bootstrap.run_basis import rule_files_digest

        resources = assets.resources_folder()
        folders = (*(resources / name for name in ("rules", "inspection", "conversion")), own_rules)
        self._stores, self._rules = stores, rule_files_digest(folders)

    def key(self, survey_id: int, survey: Survey, history: Sequence[RecordedWork]) -> str | None:
        """Return the key of a station; None where it is planned with a draft, which changes under whoever reads it."""
        edition = self._stores.shelf().opened(self._stores.planned_with(survey)).edition
        if edition.number is None:
            return None
        digest = hashlib.sha256(self._rules)
        lines = self._stores.book().agreements.lines(survey.site.name, survey_id)
        agreed = sorted((line, len(entries)) for line, entries in lines.items())
        for text in (repr((survey_id, edition.ref, edition.fingerprint, agreed)), survey.model_dump_json()):
            digest.update(text.encode() + b"\0")
        for entry in history:
            if not isinstance(entry, InspectionEntry):  # an inspection changes no set
                digest.update(entry.model_dump_json().encode() + b"\0")
        return digest.hexdigest()


class KeptNeeds:
    """The needs of the stations of one book in a file of the cache; a file that cannot be used counts as none."""

    def __init__(self, folder: Path, database: str) -> None:
        self._path = folder / f"{hashlib.sha256(database.encode()).hexdigest()[:24]}.json"
        self._known = _read(self._path)
        self._used: dict[str, _Needs] = {}

    def needs(self, key: str) -> _Needs | None:
        """Return the needs of the station with this key; None where they are not known."""
        found = self._used.get(key, self._known.get(key))
        if found is not None:
            self._used[key] = found
        return found

    def keep(self, key: str, needs: _Needs) -> None:
        """Keep the needs of a station."""
        self._used[key] = needs

    def write(self, *, is_whole: bool) -> None:
        """Write what was used, without the others where the look was ``is_whole``; in silence where it cannot be."""
        from spoutline.model.faults import StoreFault
        from spoutline.whole_files import write_file

        kept = self._used if is_whole else {**self._known, **self._used}
        if kept == self._known:
            return
        with suppress(OSError, StoreFault):
            self._path.parent.mkdir(parents=True, exist_ok=True)
            write_file(self._path, _adapter().dump_json(kept))


def _read(path: Path) -> dict[str, _Needs]:
    with suppress(OSError, ValueError):
        if path.stat().st_size <= _LARGEST:
            return _adapter().validate_json(path.read_bytes())
    return {}


@cache
def _adapter() -> TypeAdapter[dict[str, _Needs]]:
    from pydantic import TypeAdapter

    return TypeAdapter(dict[str, _Needs])
