"""Why a position has no set: all groups of demands that cannot be had together, and what would free a set."""

from __future__ import annotations

from enum import StrEnum

from spoutline.frozen import frozen
from spoutline.model.finding import Finding
from spoutline.model.part import Part
from spoutline.model.part_ref import PartRef
from spoutline.model.plan import HangingSet, Succession
from spoutline.model.quantity import Dimension, Quantity
from spoutline.model.requirement import RequirementId, Slot
from spoutline.model.survey import Position, Survey, SurveyLiquid, VapourStatus


class AskedAnswer(StrEnum):
    """An answer of the survey that several requirement lines follow from."""

    OUTLET = "outlet"
    CLIMATE = "climate"
    FILLERS = "fillers"
    LIQUID = "liquid"
    VAPOUR = "vapour"


class DemandKind(StrEnum):
    """What somebody could give up."""

    LINE = "line"
    PINNED = "pinned"  # a part that the set must use
    REFUSED = "refused"  # a part that the set must not use
    ANSWER = "answer"


@frozen(kw_only=True)
class Demand:
    """One thing that a position asks: a requirement line, a part asked for or refused, an answer of the survey."""

    kind: DemandKind
    line: RequirementId | None = None
    part: PartRef | None = None
    answer: AskedAnswer | None = None


class Concession(StrEnum):
    """What giving a demand up means for people."""

    REFUSED_PART = "refused_part"
    ASKED_PART = "asked_part"
    LEAD_TIME = "lead_time"
    WISH = "wish"
    PURCHASE = "purchase"
    SITE = "site"
    BUSINESS = "business"
    SURVEY = "survey"
    RULE = "rule"
    PARTS = "parts"


@frozen(kw_only=True)
class NearPart:
    """A part that nearly serves: what it breaks of a conflict, and by how much where that is a figure.

    ``misses`` are distances to the bound of a rule, a quantity for each finding that has one, named by its rule.
    ``others`` counts the musts that it breaks besides.
    """

    slot: Slot
    part: Part
    findings: tuple[Finding, ...]
    misses: tuple[Quantity, ...]
    others: int = 0


@frozen(kw_only=True)
class SlotReason:
    """What a conflict leaves of the parts of one slot: ``there`` in the catalogue, ``left`` that break none of it.

    ``broken`` counts parts by the line that they break; a part that breaks several counts at each. ``nearest`` are
    those that come nearest, the nearest first.
    """

    slot: Slot
    there: int
    broken: tuple[tuple[RequirementId, int], ...]
    left: int
    nearest: tuple[NearPart, ...]


@frozen(kw_only=True)
class FigureReason:
    """A line of a conflict that is a figure of the whole set: what is asked, and the nearest that the others allow.

    SI values in ``dimension``. ``nearest`` is the set that comes nearest.
    """

    line: RequirementId
    asked: float
    attained: float
    dimension: Dimension
    nearest: HangingSet


@frozen(kw_only=True)
class ConflictReasons:
    """Demands that cannot be had together, though any of them could go, and why.

    ``is_gap`` where nobody at the station could give any of them up: the catalogue lacks a part. ``findings`` are what
    contradicts itself in the answers; ``asked_for`` the parts asked for that break a line of the conflict themselves.
    ``by_checks`` where only the full checks of sets found it, which no bound of the search foresees.
    """

    demands: tuple[Demand, ...]
    slots: tuple[SlotReason, ...]
    figures: tuple[FigureReason, ...]
    findings: tuple[Finding, ...] = ()
    is_gap: bool = False
    asked_for: tuple[NearPart, ...] = ()
    by_checks: bool = False


@frozen(kw_only=True)
class OtherAnswer:
    """What another answer would be; None for one that the program cannot name."""

    answer: AskedAnswer
    liquid: SurveyLiquid | None = None
    vapour: VapourStatus | None = None


@frozen(kw_only=True)
class Trial:
    """Demands that, given up together, free a set; none of them could stay.

    Parameters
    ----------
    given_up, concession
        The demands, the heaviest last, and what the heaviest means for people.
    answers
        What other answers would be.
    line, asked, needed, dimension
        The line among those given up that is a figure: as asked, and the nearest that frees the set, SI; else None.
    freed
        The cheapest set that it frees.
    after
        The survey on trial; None where no answer makes it so, because it is measured or sold otherwise.
    successions
        Parts asked for that give way to those that took their place, instead of being given up.
    """

    given_up: tuple[Demand, ...]
    concession: Concession
    answers: tuple[OtherAnswer, ...]
    line: RequirementId | None
    asked: float | None
    needed: float | None
    dimension: Dimension | None
    freed: HangingSet
    after: Survey | None
    successions: tuple[Succession, ...] = ()


class NoSetEnding(StrEnum):
    """Why the search for reasons came to its end."""

    COMPLETE = "complete"
    ANSWERS = (
        "answers"  # contradictions and ways out are complete; what else is in the way shows once answers are right
    )
    CONFLICTS = "conflicts"
    WAYS = "ways"
    QUESTIONS = "questions"
    TIME = "time"
    UNDECIDED = "undecided"  # a question would have taken more work than one may


@frozen(kw_only=True)
class NoSetReasons:
    """Everything that keeps a position from a set.

    ``trials`` come in the order in which a person would rather give up; ``lacking`` are the corrections that nobody at
    the station can make: they ask for another part, or for another rule.
    """

    position: Position
    conflicts: tuple[ConflictReasons, ...]
    trials: tuple[Trial, ...]
    lacking: tuple[tuple[Demand, ...], ...]
    ending: NoSetEnding
