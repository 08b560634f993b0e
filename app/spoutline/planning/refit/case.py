"""One question that positions of a station ask, with everything needed to choose its set again."""

from __future__ import annotations

from spoutline.frozen import frozen
from spoutline.model.part_ref import PartRef
from spoutline.model.plan import HangingSet
from spoutline.model.requirement import Requirement
from spoutline.planning.sets.choice import Choice, Chooser
from spoutline.planning.sets.set_query import SetQuery


@frozen
class Case:
    """A distinct question and the number of positions that ask it; they all get the same set.

    ``choice`` is the set chosen for the question alone. Any other set must break no more should-rules than that one and
    give up the same should-lines, so that commonality never makes a position worse.
    """

    chooser: Chooser
    choice: Choice
    positions: int

    @property
    def requirement(self) -> Requirement:
        """What the question asks."""
        return self.chooser.search.requirement

    @property
    def installed(self) -> frozenset[PartRef]:
        """The parts that cost nothing and are not stocked: what hangs there and may stay, what comes in an article."""
        return self.chooser.installed_keys | self.chooser.search.pool.coming_with

    @property
    def query(self) -> SetQuery:
        """The query that every set of this case answers, its cost the plain price."""
        kept = self.chooser.query(self.choice.dropped)
        return SetQuery(kept.lines, kept.limits, regrets_weigh=False)

    @property
    def most_regrets(self) -> int:
        """How many broken should-rules of parts the chosen set has."""
        return self.regrets_of(self.choice.judged.hanging_set)

    def regrets_of(self, hanging_set: HangingSet) -> int:
        """Return the broken should-rules of the parts of a set."""
        return self.chooser.regrets_of(hanging_set)
