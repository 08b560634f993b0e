"""The base of documents that are kept word for word."""

from __future__ import annotations

from pydantic import BaseModel, ConfigDict


class KeptRecord(BaseModel):
    """One object of a kept document; it has its fields and no others, and every number in it is finite."""

    model_config = ConfigDict(frozen=True, extra="forbid", defer_build=True, allow_inf_nan=False)
