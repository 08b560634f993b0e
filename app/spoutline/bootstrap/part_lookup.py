"""Parts as persons and papers name them: looked for, found by whatever number is typed, and told apart."""

from __future__ import annotations

from typing import TYPE_CHECKING

from spoutline.bootstrap.stores import Stores
from spoutline.model.faults import InputFault, InputProblem

if TYPE_CHECKING:
    from collections.abc import Callable, Iterable

    from spoutline.model.cross_reference import NumberTrace
    from spoutline.model.limit import RuleTables
    from spoutline.model.part import Part, PartKind
    from spoutline.model.part_ref import PartRef
    from spoutline.model.survey import Survey
    from spoutline.planning.sets.usual_prices import PriceQuestion
    from spoutline.planning.typed_numbers import OldNumber


class PartLookup:
    """Finds parts in the catalogue that a survey is planned with; without a survey, in that of the book.

    Bad input raises ``InputFault``, a failing environment ``StoreFault``.
    """

    def __init__(self, stores: Stores, tables: Callable[[str], RuleTables]) -> None:
        self._stores = stores
        self._tables = tables

    def search(
        self, text: str, kind: PartKind | None = None, limit: int = 200, *, survey: Survey | None = None
    ) -> tuple[Part, ...]:
        """Return parts whose number, name or maker holds ``text``, sorted by number, of the survey's catalogue."""
        return self._stores.catalogue(survey).search(text, kind, limit)

    def part(self, named: PartRef | str, survey: Survey | None = None) -> Part:
        """Return the part that a reference, or a text such as a person types, names in the survey's catalogue.

        Another number of the very part stands for it, such as its item number or its GTIN. Raise ``InputFault`` with
        near numbers for an unknown one, with its makers for a number that several have, and with the part that is
        offered in the place of an old one.
        """
        from spoutline.planning.part_names import wrong_refs
        from spoutline.planning.typed_numbers import with_old_numbers

        catalogue, ref = self._stores.catalogue(survey), self.read_ref(named, survey)
        part = catalogue.part(ref)
        if part is None:
            told = with_old_numbers(wrong_refs((ref,), catalogue), catalogue)[ref]
            raise InputFault((InputProblem("", "part number", repr(str(ref)), told),))
        return part

    def parts_named(self, text: str, survey: Survey | None = None) -> tuple[Part, ...]:
        """Return the parts that a person names in one line; raise ``InputFault`` where one cannot be told."""
        return tuple(self.part(ref, survey) for ref in self._stores.catalogue(survey).read_refs(text))

    def catalogue_edition(self, survey: Survey | None = None) -> str:
        """Return what papers call the edition that a survey is planned with."""
        return self._stores.catalogue(survey).edition().title

    def price_questions(self, jurisdiction: str) -> tuple[PriceQuestion, ...]:
        """Return the catalogue prices that lie so far from what their kind costs that a jurisdiction asks about them.

        Raise ``InputFault`` for an unknown jurisdiction.
        """
        from spoutline.planning.sets.usual_prices import UsualPrices

        tables = self._tables(jurisdiction)
        return tuple(UsualPrices(self._stores.catalogue()).all_questions(tables))

    def read_ref(self, named: PartRef | str, survey: Survey | None = None) -> PartRef:
        """Return what a text refers to: a number, or a maker, a blank and a number."""
        catalogue = self._stores.catalogue(survey)
        if isinstance(named, str):
            return catalogue.read_ref(named)
        other = {} if catalogue.parts((named,)) else catalogue.under_other_numbers((named,))
        return other[named].ref if named in other else named

    def found_ref(self, named: PartRef | str, survey: Survey | None = None) -> tuple[PartRef, NumberTrace | None]:
        """Return the part that a typed number means today, and how it was found; see ``planning.typed_numbers``."""
        from spoutline.planning.typed_numbers import followed

        asked = self._stores.catalogue(survey).as_written(named) if isinstance(named, str) else named
        return followed(asked, self._stores.parts_to_plan_with(survey))

    def number_traces(self, named: PartRef | str, survey: Survey | None = None) -> tuple[NumberTrace, ...]:
        """Return every way that a number leads to a part of the survey's catalogue; none for its own numbers."""
        catalogue = self._stores.catalogue(survey)
        return catalogue.traces(catalogue.as_written(named) if isinstance(named, str) else named)

    def old_number(self, named: str, survey: Survey | None = None) -> OldNumber | None:
        """Return what an old number of another part leads to; None for a number of the catalogue, or an unknown one.

        Raise ``InputFault`` where it leads to several parts.
        """
        from spoutline.planning.typed_numbers import OldNumber

        current, trace = self.found_ref(named, survey)
        part = self._stores.catalogue(survey).part(current)
        if trace is None or trace.is_same_part or part is None:
            return None
        return OldNumber(trace.written, part, trace)

    def namesakes(self, refs: Iterable[PartRef], survey: Survey | None = None) -> tuple[PartRef, ...]:
        """Return every part that has the number of one of ``refs``; see ``model.part_ref.told_apart``."""
        from spoutline.planning.part_names import namesakes

        parts = self._stores.catalogue() if survey is None else self._stores.parts_to_plan_with(survey)
        return namesakes(refs, parts)
