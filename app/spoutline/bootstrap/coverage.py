"""The coverage map of an edition: made once for each published edition and set of rules, and put on paper."""

from __future__ import annotations

import threading
from collections.abc import Callable
from datetime import date
from typing import TYPE_CHECKING

from spoutline.documents.paper_form import PaperForm
from spoutline.frozen import frozen
from spoutline.model.coverage_map import Combination, CoverageCell, CoverageMap, CoverageScope
from spoutline.model.faults import InputFault, InputProblem
from spoutline.model.worded import Worded

if TYPE_CHECKING:
    from spoutline.catalogue.store import CatalogueStore
    from spoutline.explain.plan.story import Story
    from spoutline.model.catalogue_edition import EditionRef
    from spoutline.model.limit import RuleTables
    from spoutline.model.plan import PositionPlan
    from spoutline.model.survey import Survey
    from spoutline.planning.keeping.coverage_map import CoverageWork
    from spoutline.planning.protocols import Progress

_USUAL_CURRENCY = "USD"
_Known = dict[Combination, CoverageCell]
_Key = tuple[str, str, str, str, str]


@frozen(kw_only=True)
class CoverageAsked:
    """Which map is wanted; an empty ``currency`` stands for the first in which the edition has prices."""

    edition: EditionRef
    jurisdiction: str
    scope: CoverageScope
    currency: str = ""


class CoverageService:
    """Makes coverage maps. Methods may be called from several threads; bad input raises ``InputFault``."""

    def __init__(self, edition: Callable[[EditionRef], CatalogueStore], tables: Callable[[str], RuleTables]) -> None:
        self._edition, self._tables = edition, tables
        self._answered: dict[_Key, _Known] = {}
        self._turns = threading.Lock()

    def map(
        self,
        asked: CoverageAsked,
        progress: Progress | None = None,
        each: Callable[[CoverageCell], None] | None = None,
    ) -> CoverageMap:
        """Return the map; ``each`` gets the answers as they are found. Raise ``Cancelled`` where asked to stop.

        What was answered for a published edition is not asked again, after a stop neither.
        """
        from spoutline.planning.keeping.coverage_map import coverage_cells

        work = self._work(asked)
        cells = {}
        for cell in coverage_cells(asked.scope, work, progress):
            cells[cell.combination] = cell
            if each is not None:
                each(cell)
        return CoverageMap(
            edition=work.parts.edition(),
            jurisdiction=work.tables.jurisdiction,
            rules_edition=_rules_edition(work.tables),
            scope=asked.scope,
            currency=work.currency,
            cells=tuple(cells[one] for one in asked.scope.combinations()),
        )

    def plan(self, asked: CoverageAsked, combination: Combination, progress: Progress | None = None) -> PositionPlan:
        """Return the whole plan of one combination: what would be chosen, or why nothing fits and what would help."""
        from spoutline.planning.keeping.coverage_map import plan_of

        return plan_of(combination, self._work(asked), progress)

    def currency(self, edition: EditionRef, wished: str) -> str:
        """Return the currency that is wished where the edition has prices in it, or else its usual one."""
        parts = self._edition(edition)
        return wished if wished in parts.currencies() else usual_currency(parts)

    def survey(self, asked: CoverageAsked, combination: Combination) -> Survey:
        """Return one combination as a survey, to be planned and changed like any other."""
        from spoutline.planning.keeping.coverage_map import survey_of

        return survey_of(combination, asked.jurisdiction, self._work(asked).currency)

    def pdf(
        self, found: CoverageMap, story: Story, dated: date | None = None, form: PaperForm = PaperForm.PDF
    ) -> bytes:
        """Return the map as PDF."""
        from spoutline.documents.coverage.papers import coverage_pdf

        return coverage_pdf(found, story, dated, form)

    def csv(self, found: CoverageMap, english: Story) -> bytes:
        """Return the map as CSV, in English in every language."""
        from spoutline.documents.coverage.papers import coverage_csv

        return coverage_csv(found, english)

    def json(self, found: CoverageMap, english: Story) -> bytes:
        """Return the map as a JSON document."""
        from spoutline.documents.coverage.papers import coverage_json

        return coverage_json(found, english)

    def _work(self, asked: CoverageAsked) -> CoverageWork:
        from spoutline.planning.keeping.coverage_map import CoverageWork

        parts, tables = self._edition(asked.edition), self._tables(asked.jurisdiction)
        currency = asked.currency or usual_currency(parts)
        if currency not in (parts.currencies() or (currency,)):
            wanted = Worded(
                "a currency in which the catalog has prices: {currencies}", currencies=", ".join(parts.currencies())
            )
            raise InputFault((InputProblem("", "currency", repr(currency), wanted),))
        edition = parts.edition()
        known: _Known = {}
        if edition.number is not None:  # a draft changes under whoever reads it
            key = (edition.catalogue, edition.fingerprint, tables.jurisdiction.id, _rules_edition(tables), currency)
            with self._turns:
                known = self._answered.setdefault(key, {})
        return CoverageWork(tables=tables, parts=parts, currency=currency, known=known)


def usual_currency(parts: CatalogueStore) -> str:
    """Return the currency in which a map is made where nobody says: dollars, or the first that has prices."""
    currencies = parts.currencies()
    return _USUAL_CURRENCY if _USUAL_CURRENCY in currencies or not currencies else currencies[0]


def _rules_edition(tables: RuleTables) -> str:
    return f"{tables.jurisdiction.edition}; materials {tables.materials.edition}"
