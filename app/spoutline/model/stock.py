"""What lies on a van or in a store, and what of it would do in place of a missing part."""

from __future__ import annotations

from spoutline.frozen import frozen
from spoutline.model.finding import Finding, Severity, Verdict
from spoutline.model.part import Part
from spoutline.model.part_ref import PartRef
from spoutline.model.plan import JudgedSet
from spoutline.model.requirement import RequirementId
from spoutline.model.substitute import Misfit


@frozen(kw_only=True)
class StockLine:
    """A part with the pieces at hand; a bare number serves where one maker has it."""

    part: PartRef
    quantity: int


@frozen(kw_only=True)
class Stock:
    """A stock list as entered; each part stands once."""

    lines: tuple[StockLine, ...]

    def quantity(self, part: PartRef) -> int:
        """Return the pieces at hand of a part; 0 where the list has none."""
        return next((line.quantity for line in self.lines if line.part.names(part)), 0)


@frozen(kw_only=True)
class SwapOption:
    """A stocked part in place of a missing one.

    ``judged`` is the best set that holds it, made of the planned parts and the stock, with all findings and checks;
    None where no set with it keeps every must. ``taken_out`` and ``put_in`` are the parts that then change.
    ``findings`` are the rules that the part itself breaks here; where none of them is a must, ``lines`` are the
    requirement lines that no set of the stock keeps together with it. ``left_open`` says what was not decided: where
    ``is_undecided`` whether a set with it would do, else why none would.
    """

    part: Part
    quantity: int
    judged: JudgedSet | None
    taken_out: tuple[PartRef, ...]
    put_in: tuple[PartRef, ...]
    findings: tuple[Finding, ...]
    lines: tuple[RequirementId, ...] = ()
    left_open: tuple[Finding, ...] = ()
    is_undecided: bool = False

    @property
    def misfit(self) -> Misfit:
        """Why the part would not do: the first must that it breaks by itself, else what no set with it keeps."""
        broken = (one for one in self.findings if one.severity is Severity.MUST and one.verdict is Verdict.BROKEN)
        return Misfit(part=self.part, finding=next(broken, None), lines=self.lines)
