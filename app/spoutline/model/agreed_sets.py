"""The sets that people agreed on: a value of its own, never edited; agreeing anew or withdrawing adds the next."""

from __future__ import annotations

from datetime import date, datetime
from enum import StrEnum
from typing import Annotated, Literal

from pydantic import ConfigDict, Field, StringConstraints

from spoutline.model.catalogue_edition import DEMONSTRATION
from spoutline.model.part_ref import PartRef
from spoutline.model.plain_values import PlainValues
from spoutline.model.requirement import Slot

_Name = Annotated[str, StringConstraints(strip_whitespace=True, min_length=1, max_length=120)]
_Words = Annotated[str, StringConstraints(strip_whitespace=True, max_length=2000)]


class SetsSource(StrEnum):
    """Where the sets that a paper shows come from."""

    PLAN = "plan"
    AGREED = "agreed"
    BUILT = "built"
    QUOTATION = "quotation"
    FILE = "file"


class AgreementKind(StrEnum):
    """Who or what chose the sets that were agreed."""

    PERSON = "person"
    QUOTATION = "quotation"
    CONVERSION = "conversion"
    STATION = "station"


class EntryKind(StrEnum):
    """What an entry of the history does: it agrees, or it takes the one before it back."""

    AGREED = "agreed"
    WITHDRAWN = "withdrawn"


class SetBasis(StrEnum):
    """What the set of one position rests on."""

    PLANNED = "planned"
    AGREED = "agreed"
    NOT_AGREED = "not_agreed"  # planned, because the agreement does not know the position
    NOT_ORDERED = "not_ordered"  # left out of what was agreed
    BUILT = "built"


class AgreedStanding(StrEnum):
    """Whether the agreed set of a position still keeps every must, and whether the position was edited since."""

    HOLDS = "holds"
    EDITED_HOLDS = "edited_holds"
    BROKEN = "broken"
    EDITED_BROKEN = "edited_broken"
    NOT_AGREED = "not_agreed"
    NOT_ORDERED = "not_ordered"


class _Document(PlainValues):
    model_config = ConfigDict(frozen=True, extra="forbid", defer_build=True, allow_inf_nan=False)


class QuotedSource(_Document):
    """The option of a quotation that sets come from; ``option`` counts from 1."""

    id: int
    number: str
    revision: int
    option: int
    title: str


class AgreementOrigin(_Document):
    """Who agreed, why, and what chose the sets. ``way`` is the conversion way that was chosen.

    ``stock_price_minor`` is the price of one more part number where a station was chosen together.
    """

    kind: AgreementKind
    by: _Name
    reason: _Words = ""
    quotation: QuotedSource | None = None
    way: str = ""
    stock_price_minor: int | None = None


class AgreedPart(_Document):
    """A part word for word as it was agreed: everything that the catalogue stated, as JSON."""

    part_number: str
    maker: str
    stated: str

    @property
    def ref(self) -> PartRef:
        """The part; the catalogue's edition stands at the head of the agreed sets."""
        return PartRef(self.part_number, self.maker)


class AgreedLink(_Document):
    """One part in its place; ``kept`` where it hangs today and stays, and costs nothing."""

    slot: Slot
    part_number: str
    maker: str
    kept: bool = False

    @property
    def ref(self) -> PartRef:
        """The part; the catalogue's edition stands at the head of the agreed sets."""
        return PartRef(self.part_number, self.maker)


class AgreedAccessory(_Document):
    """What goes with the set; ``reason`` is the id of a phrase, empty where the source did not keep it."""

    part_number: str
    maker: str
    quantity: int = Field(1, ge=1)
    reason: str = ""

    @property
    def ref(self) -> PartRef:
        """The part; the catalogue's edition stands at the head of the agreed sets."""
        return PartRef(self.part_number, self.maker)


class AgreedPosition(_Document):
    """The set of one position, dispenser first; empty where the position was left out of what was agreed.

    ``question`` is the fingerprint of what the position asked then, so that a later edit can be told.
    """

    label: str
    set: tuple[AgreedLink, ...]
    accessories: tuple[AgreedAccessory, ...] = ()
    question: str

    @property
    def pieces(self) -> tuple[AgreedLink | AgreedAccessory, ...]:
        """The set, then what goes with it."""
        return (*self.set, *self.accessories)


class AgreedSets(_Document):
    """The agreed sets of a survey; ``serial`` counts the entries of the survey's history from 1.

    A withdrawal is an entry too: it carries the sets that hold again, none where nothing was agreed before.
    """

    format: Literal["spoutline-agreed-sets"] = "spoutline-agreed-sets"
    version: Literal[1] = 1
    serial: int = Field(ge=1)
    entry: EntryKind = EntryKind.AGREED
    site: str
    survey_id: int | None = None
    survey_revision: int | None = None
    survey_fingerprint: str
    currency: str
    catalogue_edition: str
    catalogue: str = DEMONSTRATION  # documents of old know no other
    edition: int | None = None
    rules_edition: str
    agreed_at: datetime
    origin: AgreementOrigin
    positions: tuple[AgreedPosition, ...]
    parts: tuple[AgreedPart, ...]

    @property
    def labels(self) -> tuple[str, ...]:
        """The labels of the positions, in survey order."""
        return tuple(position.label for position in self.positions)

    def position(self, label: str) -> AgreedPosition | None:
        """Return what was agreed for a position; None where the agreement does not know it."""
        return next((position for position in self.positions if position.label == label), None)


class SetsFrom(_Document):
    """Which sets a paper or document shows: what its head says, and what tells two apart.

    ``digest`` is that of the agreed sets and records shown: equal surveys with equal digests give equal papers.
    """

    source: SetsSource = SetsSource.PLAN
    serial: int | None = None
    kind: AgreementKind | None = None
    by: str = ""
    on: date | None = None
    quotation: QuotedSource | None = None
    way: str = ""
    catalogue: str = ""  # that the agreed parts are of; empty: that of the plan
    recorded: tuple[str, ...] = ()  # positions whose records a plan as built shows
    digest: str = ""
