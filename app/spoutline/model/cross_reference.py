"""Numbers that lead to a part: those of another maker, of a part no longer made, of the firm's own stock list.

Nothing here changes what a survey or a quotation says: a number that somebody typed is followed, and every step of the
way is kept so that it can be shown.
"""

from __future__ import annotations

from enum import StrEnum
from typing import Annotated, Final, Self

from pydantic import ConfigDict, Field, StringConstraints, model_validator

from spoutline.frozen import frozen
from spoutline.model.field_faults import fault_in
from spoutline.model.part_identity import MakerName, MakerNumber
from spoutline.model.part_ref import PartRef
from spoutline.model.plain_values import PlainValues

COLUMNS: Final = ("number", "maker", "part_number", "part_maker", "relation", "remark")  # of a table of references


class NumberRelation(StrEnum):
    """What an old number has to do with the number that it leads to."""

    SAME = "same"  # the very part under another number: renumbered, or of a dealer's own list
    EQUIVALENT = "equivalent"  # another part, in whose place this one is offered


class CrossReference(PlainValues):
    """A number of some maker, and the part that it leads to."""

    model_config = ConfigDict(frozen=True, extra="forbid", defer_build=True)

    number: MakerNumber
    maker: MakerName
    part_number: MakerNumber
    part_maker: MakerName
    relation: NumberRelation = NumberRelation.EQUIVALENT
    remark: Annotated[str, StringConstraints(strip_whitespace=True, max_length=300)] = Field("")

    @model_validator(mode="after")
    def _leads_elsewhere(self) -> Self:
        if self.ref == self.leads_to:
            raise fault_in("part_number", repr(self.part_number), "a number cannot lead to itself")
        return self

    @property
    def ref(self) -> PartRef:
        """The old number."""
        return PartRef(self.number, self.maker)

    @property
    def leads_to(self) -> PartRef:
        """The number that it leads to: that of a part, or another old one."""
        return PartRef(self.part_number, self.part_maker)


class NumberStepKind(StrEnum):
    """Why one number leads to the next."""

    ITEM_NUMBER = "item_number"  # the firm's own item number of a part
    GTIN = "gtin"
    SAME = "same"
    EQUIVALENT = "equivalent"
    SUCCESSOR = "successor"


@frozen
class NumberStep:
    """One step of the way from a typed number; ``remark`` is what the cross-reference says of it."""

    kind: NumberStepKind
    before: str
    after: PartRef
    remark: str = ""


@frozen
class NumberTrace:
    """The way of a typed number to a part of the catalogue.

    ``maker`` has the number: empty where it is an item number or a GTIN. ``item`` is the part that stands for it
    before its successors are followed, ``current`` the one at their end; both None where the way ends outside the
    catalogue.
    """

    asked: str
    maker: str
    steps: tuple[NumberStep, ...]
    item: PartRef | None
    current: PartRef | None

    @property
    def written(self) -> PartRef:
        """The old number as its maker writes it."""
        number = self.steps[0].before
        return PartRef(number.removeprefix(self.maker).strip(), self.maker) if self.maker else PartRef(number)

    @property
    def is_same_part(self) -> bool:
        """Whether the number is another number of the very part ``item``."""
        return self.item is not None and all(step.kind is not NumberStepKind.EQUIVALENT for step in self.steps)


def folded_number(number: str) -> str:
    """Return a number as old ones are compared: letters and digits alone, capitals do not count."""
    return "".join(sign for sign in number.casefold() if sign.isalnum())
