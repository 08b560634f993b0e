"""A named case of a conversion: what the owner would do otherwise, beside what the survey asks."""

from __future__ import annotations

from typing import Annotated, Self

from pydantic import ConfigDict, Field, StringConstraints, model_validator

from spoutline.model.plain_values import PlainValues

_Name = Annotated[str, StringConstraints(strip_whitespace=True, min_length=1, max_length=60)]


class ConversionCase(PlainValues):
    """One case. What is not named in it stays as the survey has it; at least one thing is changed."""

    model_config = ConfigDict(frozen=True, extra="forbid", defer_build=True, allow_inf_nan=False)

    name: _Name = Field(description="What the case is called.")
    keep_islands: tuple[_Name, ...] = Field(
        (), max_length=100, description="Islands, or dispensers that name none, whose hoses keep recovery."
    )
    retention: bool = Field(False, description="The agency demands that recovery stays everywhere.")
    ethanol_percent: float | None = Field(
        None, gt=0, le=100, description="Gasoline with less ethanol becomes this blend; not marine, not without any."
    )
    biodiesel_percent: float | None = Field(
        None, gt=0, le=100, description="Diesel with less biodiesel becomes this blend."
    )
    sold_after_years: int | None = Field(None, ge=1, le=50, description="The station is sold after so many years.")

    @model_validator(mode="after")
    def _changes_something(self) -> Self:
        changes = (self.keep_islands, self.retention, self.ethanol_percent, self.biodiesel_percent)
        if not any(changes) and self.sold_after_years is None:
            raise ValueError("name: the case changes nothing; say what would be otherwise")
        return self
