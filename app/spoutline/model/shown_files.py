"""Pictures and documents of parts as papers and window show them."""

from __future__ import annotations

from collections.abc import Mapping

from spoutline.frozen import frozen
from spoutline.model.part_file import PartFile
from spoutline.model.part_ref import PartRef


@frozen
class ShownFile:
    """A file of a part; ``content`` is that of a picture, None of a document, which papers only name."""

    file: PartFile
    content: bytes | None


FilesOfParts = Mapping[PartRef, tuple[ShownFile, ...]]
