"""The other answers that a person can choose from, question by question."""

from __future__ import annotations

from collections.abc import Callable
from typing import TYPE_CHECKING

from spoutline.explain.plan.story import Story
from spoutline.gui.waiting import wait_for
from spoutline.model.coverage_kinds import OutletKind
from spoutline.model.faults import InputFault, StoreFault
from spoutline.model.liquid import LiquidFamily
from spoutline.model.survey import Duty, Survey, VapourStatus
from spoutline.model.what_if import WhatIfQuestion

if TYPE_CHECKING:
    from spoutline.bootstrap import Workbench

Choice = tuple[str, str]  # as it is written, and in words
WRITTEN = frozenset({WhatIfQuestion.BLEND, WhatIfQuestion.OUTLET})  # a person may write other answers too
# blends that fuel labels name: the greatest of each listing class, and E15 (UL 2586, scopes; 40 CFR 1090)
_BLENDS = {LiquidFamily.GASOLINE: ("E0", "E10", "E15", "E25", "E85"), LiquidFamily.DIESEL: ("B0", "B5", "B20", "B100")}


class AnswerChoices:
    """Offers answers; ``trouble`` says why a store could not be read, empty where all is well."""

    def __init__(self, workbench: Workbench, survey: Survey, story: Story) -> None:
        self._workbench, self._survey, self._story = workbench, survey, story
        self.trouble = ""

    def of(self, question: WhatIfQuestion) -> list[Choice]:
        """Return the answers to a question; none where a store cannot be read."""
        self.trouble = ""
        match question:
            case WhatIfQuestion.BLEND:
                return self._blends()
            case WhatIfQuestion.DUTY:
                return self._words(Duty)
            case WhatIfQuestion.OUTLET:
                return self._words(OutletKind)
            case WhatIfQuestion.VAPOUR:
                return self._words(VapourStatus)
            case WhatIfQuestion.JURISDICTION:
                return self._read(self._jurisdictions)
            case WhatIfQuestion.CATALOGUE:
                return self._read(self._editions)

    def _words(self, members: type[Duty] | type[OutletKind] | type[VapourStatus]) -> list[Choice]:
        return [(one.value, self._story.word(one)) for one in members]

    def _blends(self) -> list[Choice]:
        """Return the usual blends of what the station sells."""
        sold = {one.liquid.family for one in self._survey.positions}
        return [(name, name) for family, names in _BLENDS.items() if family in sold for name in names]

    def _jurisdictions(self) -> list[Choice]:
        """Return the rules of each jurisdiction, of own ones each published edition too."""
        service = self._workbench.jurisdictions()
        choices: list[Choice] = []
        for one in service.all():
            title = self._story.phrases.tell(one.title)
            choices.append((one.id, title))
            if not one.built_in:
                refs = (f"{one.id}@{edition.number}" for edition in service.editions(one.id))
                choices += ((ref, f"{title} ({ref})") for ref in refs)
        return choices

    def _editions(self) -> list[Choice]:
        found = self._workbench.catalogues().all()
        refs = [str(edition.ref) for one in found for edition in one.editions]
        return [(ref, ref) for ref in refs]

    def _read(self, read: Callable[[], list[Choice]]) -> list[Choice]:
        try:
            return wait_for(read)
        except (InputFault, StoreFault) as fault:
            self.trouble = str(fault)
            return []
