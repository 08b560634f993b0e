"""A part as its keeper enters it: who makes it, by what it is known, and as many of its figures as are known.

An entry whose figures are all there is a part that the search may choose. Any other is *not yet described*: a price
file has number, text and price, and more may follow.
"""

from __future__ import annotations

from datetime import date
from enum import StrEnum
from typing import Annotated, Self

from pydantic import BaseModel, ConfigDict, Field, StringConstraints, model_validator

from spoutline.model.field_faults import fault_in
from spoutline.model.part import PartKind, PartStatus, Price
from spoutline.model.part_file import MOST_FILES, PartFile
from spoutline.model.part_identity import Gtin, MakerName, MakerNumber, OwnItemNumber, ShownText
from spoutline.model.part_ref import PartRef
from spoutline.model.plain_values import PlainValues

NAME_LENGTH = 200
# a figure in the unit of its column: a number, a word, yes or no, words in order; a port in words
Cell = bool | int | float | str | tuple[str, ...]


class Origin(StrEnum):
    """Where a figure came from."""

    STATED = "stated"  # the maker's or supplier's table, or a person who read it there
    SIMILAR = "similar"  # taken over from a similar part
    FAMILY = "family"  # set once for a family of parts
    TEXT = "text"  # read out of the part's text by a pattern that the keeper confirmed


class FigureCell(BaseModel):
    """One figure of an entry under the name of its column."""

    model_config = ConfigDict(frozen=True, extra="forbid", defer_build=True, allow_inf_nan=False)

    column: str
    value: Cell
    origin: Origin = Origin.STATED
    source: Annotated[str, StringConstraints(max_length=200)] = ""  # the similar part, the family, the pattern


class EntryPrice(BaseModel):
    """A list price in minor units of a currency."""

    model_config = ConfigDict(frozen=True, extra="forbid", defer_build=True)

    currency: Annotated[str, StringConstraints(pattern=r"^[A-Z]{3}$")]
    minor: int = Field(ge=0, le=10_000_000_00)


class CatalogueEntry(PlainValues):
    """A part of a catalogue, described or not; ``kind`` is None where nobody said it yet.

    ``figures`` stand in the order of the kind's columns. ``name`` is what the part is in words, as its supplier writes
    it where nobody wrote better.
    """

    model_config = ConfigDict(frozen=True, extra="forbid", defer_build=True)

    number: MakerNumber
    maker: MakerName
    name: Annotated[ShownText, StringConstraints(max_length=NAME_LENGTH)] = ""
    kind: PartKind | None = None
    status: PartStatus = PartStatus.ACTIVE
    discontinued_from: date | None = None
    superseded_by: MakerNumber | None = None
    superseded_by_maker: MakerName | None = None
    item_number: OwnItemNumber = ""
    gtin: Gtin = ""
    supplier: Annotated[ShownText, StringConstraints(max_length=120)] = ""
    family: Annotated[ShownText, StringConstraints(max_length=120)] = ""
    lead_days: int | None = Field(None, ge=0, le=400)
    pack: int | None = Field(None, ge=1, le=1000)
    prices: tuple[EntryPrice, ...] = ()
    remark: Annotated[str, StringConstraints(strip_whitespace=True, max_length=300)] = ""
    figures: tuple[FigureCell, ...] = ()
    files: Annotated[tuple[PartFile, ...], Field(max_length=MOST_FILES)] = ()

    @model_validator(mode="after")
    def _holds_together(self) -> Self:
        self.check_together()
        return self

    def check_together(self) -> None:
        """Raise ``PydanticCustomError`` where values that are each right by themselves do not fit together."""
        if (self.status is PartStatus.SUPERSEDED) != (self.superseded_by is not None):
            wanted = "a superseded part names the part that took its place, and no other part does"
            raise fault_in("superseded_by", repr(self.superseded_by), wanted)
        if self.superseded_by_maker is not None and self.superseded_by is None:
            wanted = "only a part that has a successor names the maker of it"
            raise fault_in("superseded_by_maker", repr(self.superseded_by_maker), wanted)
        if self.superseded_by is not None and self.successor == self.ref:
            raise fault_in("superseded_by", repr(self.superseded_by), "a part cannot take its own place")
        titles = [file.title.casefold() for file in self.files]
        if len(set(titles)) != len(titles):
            raise fault_in("files", ", ".join(titles)[:80], "each file of a part has a title of its own")
        currencies = [price.currency for price in self.prices]
        if currencies != sorted(set(currencies)):
            raise fault_in("prices", ", ".join(currencies), "one price for each currency, sorted by currency")

    @property
    def ref(self) -> PartRef:
        """Maker and number: what tells the part from every other of its catalogue."""
        return PartRef(self.number, self.maker)

    @property
    def successor(self) -> PartRef | None:
        """The part that took its place; None where none did."""
        return PartRef(self.superseded_by, self.superseded_by_maker or self.maker) if self.superseded_by else None

    @property
    def list_prices(self) -> tuple[Price, ...]:
        """The prices as a part has them."""
        return tuple(Price(currency=price.currency, minor=price.minor) for price in self.prices)

    def figure(self, column: str) -> Cell | None:
        """Return the figure in a column; None where it is not known."""
        return next((cell.value for cell in self.figures if cell.column == column), None)
