"""What the code on a printed sheet says: site, position and plan revision, as one line of text that reads back."""

from __future__ import annotations

import re
from urllib.parse import quote, unquote

from spoutline.frozen import frozen
from spoutline.model.faults import InputFault, InputProblem

_SCHEME = "spoutline:"
_FIELDS = ("site", "position", "revision")
_REVISION = re.compile(r"[0-9a-f]{16}")


@frozen(kw_only=True)
class PositionTag:
    """A position of a site as one plan knew it; ``revision`` is the fingerprint of the survey behind the plan."""

    site: str
    position: str
    revision: str

    def __str__(self) -> str:
        """Return the text of the code; every character outside letters and digits is percent-encoded (RFC 3986)."""
        texts = (self.site, self.position, self.revision)
        return _SCHEME + ";".join(f"{name}={quote(text, safe='')}" for name, text in zip(_FIELDS, texts, strict=True))


def tag_from_text(text: str) -> PositionTag:
    """Return the tag that a code holds.

    Raises
    ------
    InputFault
        The text is no tag of this program.
    """
    written = text.strip()
    values: dict[str, str] = {}
    for piece in written.removeprefix(_SCHEME).split(";"):
        name, equals, value = piece.partition("=")
        if equals:
            values[name] = unquote(value)
    revision = values.get("revision", "")
    complete = written.startswith(_SCHEME) and set(values) == set(_FIELDS) and all(values.values())
    if not complete or not _REVISION.fullmatch(revision):
        shown = repr(text if len(text) <= 80 else f"{text[:79]}…")
        wanted = "scan the code of a position sheet, or type spoutline:site=...;position=...;revision=..."
        raise InputFault((InputProblem("", "code", shown, wanted),))
    return PositionTag(site=values["site"], position=values["position"], revision=revision)
