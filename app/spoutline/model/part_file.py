"""Pictures and documents that a keeper keeps with a part of a catalogue."""

from __future__ import annotations

from enum import StrEnum
from typing import Annotated, Final

from pydantic import ConfigDict, Field, StringConstraints

from spoutline.model.part_identity import ShownText
from spoutline.model.plain_values import PlainValues

MOST_FILES: Final = 12  # of one part
TITLE_LENGTH: Final = 120


class FileMatter(StrEnum):
    """What a file of a part is."""

    PICTURE = "picture"
    INSTRUCTIONS = "instructions"
    DATA_SHEET = "data_sheet"
    CERTIFICATE = "certificate"


class MediaType(StrEnum):
    """What kind of file is kept, by its registered media type."""

    PNG = "image/png"
    JPEG = "image/jpeg"
    PDF = "application/pdf"

    @property
    def ending(self) -> str:
        """The ending of a file of this kind."""
        return {MediaType.PNG: ".png", MediaType.JPEG: ".jpg", MediaType.PDF: ".pdf"}[self]


class PartFile(PlainValues):
    """A picture or document of a part; ``digest`` is SHA-256 of its content, which is kept once for all parts."""

    model_config = ConfigDict(frozen=True, extra="forbid", defer_build=True)

    title: Annotated[ShownText, StringConstraints(min_length=1, max_length=TITLE_LENGTH)]
    matter: FileMatter
    media: MediaType
    digest: Annotated[str, StringConstraints(pattern=r"^[0-9a-f]{64}$")]
    size: int = Field(ge=1, le=100_000_000)

    @property
    def is_picture(self) -> bool:
        """Whether it can be shown on paper beside the part."""
        return self.media is not MediaType.PDF
