"""What the JSON documents have in common: how records behave, and the head that says what a document was made from."""

from __future__ import annotations

from typing import Literal, Self

from pydantic import BaseModel, ConfigDict, Field

from spoutline.model.catalogue_edition import DEMONSTRATION
from spoutline.model.plan import Provenance


class Record(BaseModel):
    """One object of a document; it has these fields and no others, and every number in it is finite."""

    model_config = ConfigDict(frozen=True, extra="forbid", defer_build=True, allow_inf_nan=False)


class ProvenanceRecord(Record):
    """What a document was made from; the same provenance gives the same document."""

    program_version: str
    catalogue_edition: str
    catalogue: str = Field(DEMONSTRATION, description="Catalog that the parts are of.")
    edition: int | None = Field(None, description="Number of its edition; null for a draft and in documents of old.")
    rules_edition: str
    survey_fingerprint: str

    @classmethod
    def of(cls, provenance: Provenance) -> Self:
        """Return the record of what a result was made from."""
        return cls(
            program_version=provenance.program_version,
            catalogue_edition=provenance.catalogue_edition,
            catalogue=provenance.catalogue,
            edition=provenance.edition,
            rules_edition=provenance.rules_edition,
            survey_fingerprint=provenance.survey_fingerprint,
        )


class _Format(Record):
    format: str
    version: Literal[1] = 1


class HeadedDocument(ProvenanceRecord, _Format):
    """A document with its format and its provenance before everything else; the fields of the provenance lie flat."""
