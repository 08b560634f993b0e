"""What a survey is planned by: rule tables whose names were checked, the catalogue, the steps of the work."""

from __future__ import annotations

from typing import TYPE_CHECKING

from spoutline.bootstrap.jurisdictions import JurisdictionService
from spoutline.bootstrap.stores import Stores

if TYPE_CHECKING:
    from collections.abc import Callable

    from spoutline.bootstrap.conversions import ConversionService
    from spoutline.model.conversion_step import StepTable
    from spoutline.model.limit import RuleTables
    from spoutline.model.survey import Survey
    from spoutline.planning.protocols import Progress
    from spoutline.planning.sets.context import PlanningContext
    from spoutline.planning.typed_numbers import NumberedParts


class SurveyBasis:
    """Gathers what only the stores together can check before a survey is planned."""

    def __init__(
        self, stores: Stores, jurisdictions: JurisdictionService, converting: Callable[[], ConversionService]
    ) -> None:
        self._stores = stores
        self._jurisdictions = jurisdictions
        self._converting = converting

    def context(self, survey: Survey, progress: Progress | None = None) -> PlanningContext:
        """Return what planning reads beside the survey; ``progress`` may ask it to stop."""
        from spoutline.planning.sets.context import PlanningContext, stop_listener

        parts = self._stores.parts_to_plan_with(survey)
        return PlanningContext(
            self.tables(survey, parts),
            parts,
            stop_listener(progress),
            survey.conversion,
            self.steps_for(survey),
        )

    def steps_for(self, survey: Survey) -> StepTable | None:
        """Return the steps that the work on a position is priced by; None where the survey gives work no price."""
        return None if survey.conversion.money.labour_rate_per_hour is None else self.steps()

    def tables(self, survey: Survey, catalogue: NumberedParts | None = None) -> RuleTables:
        """Return the rule tables of a survey whose jurisdiction, currency, agency and parts can be told.

        What the air agency of the survey asks for is among the rows of its jurisdiction.
        """
        from spoutline.book.survey_check import check_names
        from spoutline.planning.part_names import shared_numbers, wrong_refs
        from spoutline.planning.typed_numbers import with_old_numbers

        catalogue = catalogue or self._stores.parts_to_plan_with(survey)
        check_names(
            survey,
            jurisdictions=self._jurisdictions.ids_to_plan_with(),
            currencies=catalogue.currencies(),
            wrong_parts=lambda refs: with_old_numbers(wrong_refs(refs, catalogue), catalogue),
            shared_numbers=lambda refs: shared_numbers(refs, catalogue),
        )
        from spoutline.planning.conversion.agency_names import check_agency
        from spoutline.rules.conversion.demands import with_agency_demands
        from spoutline.rules.conversion.standing import agency_of

        vapour = self._converting().vapour_tables()
        check_agency(survey, vapour)
        tables = self._jurisdictions.tables(survey.site.jurisdiction)
        return with_agency_demands(tables, agency_of(survey, vapour))

    def steps(self) -> StepTable:
        """Return the steps of the work at a position."""
        return self._converting().steps()
