"""The use cases of agreed sets wired to their stores: the one door through which papers and commands get their sets."""

from __future__ import annotations

from collections.abc import Callable, Sequence
from dataclasses import replace
from functools import partial
from pathlib import Path
from typing import TYPE_CHECKING

from spoutline.frozen import frozen
from spoutline.model.agreed_sets import (
    AgreedSets,
    AgreementKind,
    AgreementOrigin,
    EntryKind,
    SetsSource,
)
from spoutline.model.conversion_answers import OptionKind
from spoutline.model.faults import InputFault, InputProblem
from spoutline.model.plain_values import hidden_sign
from spoutline.model.worded import Worded

if TYPE_CHECKING:
    from sqlalchemy.orm import Session

    from spoutline.book.book import Book
    from spoutline.book.quotation_records import StoredQuotation
    from spoutline.bootstrap.conversions import ConversionService
    from spoutline.bootstrap.quotations import QuotationService
    from spoutline.bootstrap.stores import PlannedWith
    from spoutline.model.conversion import SiteConversion
    from spoutline.model.conversion_step import StepTable
    from spoutline.model.limit import RuleTables
    from spoutline.model.plan import SitePlan
    from spoutline.model.survey import Survey
    from spoutline.planning.agreement.handed_in import HandedIn
    from spoutline.planning.agreement.matching import AgreementLine, AgreementMatch
    from spoutline.planning.protocols import Progress

_WAYS = "plan, agreed, built, quotation:ID, quotation:ID:OPTION or file:PATH"


@frozen
class Sources:
    """How the stores are reached; each opens when first asked for."""

    tables: Callable[[Survey], RuleTables]
    catalogue: PlannedWith
    book: Callable[[], Book]
    agreed_lines: Callable[[str, int | None], dict[int, tuple[AgreedSets, ...]]]
    quoting: Callable[[], QuotationService]
    converting: Callable[[], ConversionService]
    plan: Callable[[Survey, Progress | None, bool], SitePlan]  # with alternatives, or without
    steps: Callable[[], StepTable]


@frozen(kw_only=True)
class ShownSets:
    """The sets asked for; ``notes`` tell of an agreement that may be the survey's and was not used."""

    site_plan: SitePlan
    notes: tuple[str, ...] = ()


@frozen(kw_only=True)
class SetsInHand:
    """What the book holds of the sets of a survey, judged by the survey and rules of today.

    ``line`` is the survey's history, ``doubts`` tell of others that may be; ``agreed`` and ``built`` show what holds,
    None where nothing does or it was not asked for. Unless built sets are asked for too, positions that the agreement
    does not know are left out of ``agreed``.
    """

    line: AgreementLine | None
    doubts: tuple[str, ...] = ()
    agreed: SitePlan | None = None
    built: SitePlan | None = None


class AgreementService:
    """Agreed sets. Methods may be called from several threads."""

    def __init__(self, sources: Sources) -> None:
        self._sources = sources

    # reading

    def match(self, survey: Survey, survey_id: int | None = None) -> AgreementMatch:
        """Return the history of agreements that is the survey's, or those that may be.

        ``survey_id`` is that of the survey of the book; else the one that the survey itself names.
        """
        return self._match(survey, survey_id, self._lines(survey, survey_id))

    def _lines(self, survey: Survey, survey_id: int | None) -> dict[int, tuple[AgreedSets, ...]]:
        return self._sources.agreed_lines(survey.site.name, _number(survey, survey_id))

    @staticmethod
    def _match(survey: Survey, survey_id: int | None, found: dict[int, tuple[AgreedSets, ...]]) -> AgreementMatch:
        from spoutline.planning.agreement.matching import AgreementLine, AgreementMatch, match
        from spoutline.planning.sets.plan_site import fingerprint_of

        named = _number(survey, survey_id)
        lines = [AgreementLine(id=number, entries=entries) for number, entries in found.items()]
        matched = match(survey, named, fingerprint_of(survey), lines)
        if matched.line is None and not matched.doubtful and survey_id is None and named is not None:
            # agreed for another number: that may be one of another book
            others = match(survey, None, fingerprint_of(survey), lines)
            return AgreementMatch(line=None, doubtful=(*((others.line,) if others.line else ()), *others.doubtful))
        return matched

    def sets_for(
        self,
        survey: Survey,
        choice: str | None = None,
        progress: Progress | None = None,
        survey_id: int | None = None,
        *,
        with_alternatives: bool = True,
    ) -> ShownSets:
        """Return the plan of a survey with the sets of a source: plan, agreed, built, a quotation's option, a file.

        Without a ``choice``, what is agreed, else the plan. Without ``with_alternatives`` no other sets are looked for,
        which takes a third of the time.

        Raises
        ------
        InputFault
            The source is none, or has no sets for this survey.
        Cancelled
            If ``progress`` asks to stop.
        """
        kind, _, rest = (choice or "").partition(":")
        agreed_plan = partial(self._agreed, survey, progress=progress, with_alternatives=with_alternatives)
        if kind == SetsSource.QUOTATION and rest:
            return ShownSets(site_plan=agreed_plan(self.quoted_sets(rest), SetsSource.QUOTATION))
        if kind == SetsSource.FILE and rest:
            return ShownSets(site_plan=agreed_plan(self.read_file(Path(rest)), SetsSource.FILE))
        if choice not in (None, SetsSource.PLAN, SetsSource.AGREED, SetsSource.BUILT):
            raise InputFault((InputProblem("", "--sets", repr(choice), Worded("write one of {ways}", ways=_WAYS)),))
        if choice == SetsSource.PLAN:
            return ShownSets(site_plan=self._planned(survey, progress, with_alternatives))
        matched = self.match(survey, survey_id)
        agreed = matched.line.agreed if matched.line else None
        notes = () if matched.line else _doubts(matched)
        if agreed is None and choice == SetsSource.AGREED:
            wanted = "nothing is agreed for this survey; use `spoutline agree`, or --sets plan"
            raise InputFault((InputProblem("", "--sets", "agreed", "; ".join((wanted, *notes))),))
        if agreed is None:
            site_plan = self._planned(survey, progress, with_alternatives)
        else:
            site_plan = agreed_plan(agreed, SetsSource.AGREED)
        if choice == SetsSource.BUILT:
            site_plan = self._built(site_plan)
        return ShownSets(site_plan=site_plan, notes=notes)

    def handed_in(self, survey: Survey, choice: str | None, progress: Progress | None) -> HandedIn:
        """Return the sets that a conversion is to follow; see ``sets_for``.

        Without a ``choice`` and an agreement there are none: the conversion goes the way that the survey names.
        """
        from spoutline.planning.agreement.handed_in import HandedIn

        matched = self.match(survey) if choice is None else None
        if matched is not None and (matched.line is None or matched.line.agreed is None):
            together = survey.site.stock_price and survey.conversion.follow is OptionKind.GOOD_PRACTICE
            planned = self._planned(survey, progress) if together else None
            return HandedIn(site_plan=planned, notes=() if matched.line else _doubts(matched))
        shown = self.sets_for(survey, choice, progress)
        return HandedIn(site_plan=shown.site_plan, notes=shown.notes)

    def in_hand(
        self, survey: Survey, survey_id: int | None, progress: Progress | None = None, *, with_built: bool = False
    ) -> SetsInHand:
        """Return what is agreed for a survey, and what is built where that is wanted; raise ``Cancelled``."""
        matched = self.match(survey, survey_id)
        holds = matched.line.agreed if matched.line else None
        agreed = None
        if holds is not None:
            agreed = self._agreed(survey, holds, SetsSource.AGREED, progress, with_others=with_built)
        built = self._built(agreed or self._planned(survey, progress)) if with_built else None
        doubts = () if matched.line else _doubts(matched)
        return SetsInHand(line=matched.line, doubts=doubts, agreed=agreed, built=built)

    def converted_plan(self, conversion: SiteConversion) -> SitePlan:
        """Return the plan of the way that a conversion follows, kept parts marked."""
        from spoutline.model.plan import PlanStatus, SetLink, SitePlan

        plans = []
        for one in conversion.positions:
            option, plan = one.followed(conversion.survey.conversion.follow), one.renewal
            if plan is None:
                continue
            if option is not None:
                kept = set(option.kept)
                whole = option.judged.hanging_set
                links = tuple(
                    SetLink(slot=link.slot, part=link.part, kept=place in kept)
                    for place, link in enumerate(whole.links)
                )
                judged = replace(option.judged, hanging_set=replace(whole, links=links))
                plan = replace(plan, status=PlanStatus.FITS, chosen=judged, accessories=option.accessories)
            plans.append(plan)
        return SitePlan(
            survey=conversion.survey,
            jurisdiction=conversion.jurisdiction,
            positions=tuple(plans),
            provenance=conversion.provenance,
        )

    def read_file(self, path: Path) -> AgreedSets:
        """Return the agreed sets in a file as ``spoutline agreed --json`` writes it; raise ``InputFault``."""
        from spoutline.book.agreed_file import read_agreed_file

        return read_agreed_file(path)

    def quoted_sets(self, text: str) -> AgreedSets:
        """Return the sets of an option of a quotation, ``ID`` or ``ID:OPTION`` (title, or its number from 1).

        They are those of the revision that was ordered, also while a later one is being made. Without an option: the
        one that was ordered, else the only one. Raise ``InputFault``.
        """
        name, _, option = text.partition(":")
        service = self._sources.quoting()
        stored = service.life().standing(name)
        return self._of_option(stored, option or service.life().option_ordered(stored), "-", "")

    # agreeing

    def agree(
        self,
        survey: Survey,
        source: str,
        *,
        by: str,
        reason: str = "",
        only: Sequence[str] = (),
        survey_id: int | None = None,
        progress: Progress | None = None,
    ) -> AgreedSets:
        """Agree on the sets of a source: ``plan``, ``convert`` or ``quotation:ID[:OPTION]``; return the entry.

        ``only`` names positions; the others stay as agreed before. Raise ``InputFault``.
        """
        _check_name(by, reason)
        if source.startswith(f"{SetsSource.QUOTATION}:"):
            quoted = self.quoted_sets(source.partition(":")[2])
            found = quoted.model_copy(update={"origin": quoted.origin.model_copy(update={"by": by, "reason": reason})})
            return self._add(survey, found, only, survey_id)
        if source not in (SetsSource.PLAN, "convert"):
            wanted = "write plan, convert, quotation:ID or quotation:ID:OPTION"
            raise InputFault((InputProblem("", "--from", repr(source), wanted),))
        is_plan = source == SetsSource.PLAN
        shown = self._planned(survey, progress) if is_plan else self._sources.converting().convert(survey, progress)
        return self.agree_on(shown, by=by, reason=reason, only=only, survey_id=survey_id)

    def agree_on(
        self,
        shown: SitePlan | SiteConversion,
        *,
        by: str,
        reason: str = "",
        only: Sequence[str] = (),
        survey_id: int | None = None,
    ) -> AgreedSets:
        """Agree on sets that a person looked at: those of a plan, or of the way that a conversion follows.

        ``only`` names positions; the others stay as agreed before. Raise ``InputFault``.
        """
        from spoutline.model.plan import SitePlan

        _check_name(by, reason)
        if isinstance(shown, SitePlan):
            price = _stock_price(shown.survey)
            kind = AgreementKind.PERSON if price is None else AgreementKind.STATION
            origin = AgreementOrigin(kind=kind, by=by, reason=reason, stock_price_minor=price)
            return self.agree_plan(shown, origin, only, survey_id)
        way = shown.survey.conversion.follow.value
        origin = AgreementOrigin(kind=AgreementKind.CONVERSION, by=by, reason=reason, way=way)
        return self.agree_plan(self.converted_plan(shown), origin, only, survey_id)

    def agree_picked(
        self,
        picked: SitePlan,
        *,
        by: str,
        reason: str = "",
        only: Sequence[str] = (),
        survey_id: int | None = None,
    ) -> AgreedSets:
        """Agree on sets that a person picked among others, whatever would be planned; other positions stay as agreed.

        ``only`` names some of those picked. Raise ``InputFault``.
        """
        _check_name(by, reason)
        origin = AgreementOrigin(kind=AgreementKind.PERSON, by=by, reason=reason)
        return self.agree_plan(picked, origin, only or [one.position.label for one in picked.positions], survey_id)

    def agree_plan(
        self, site_plan: SitePlan, origin: AgreementOrigin, only: Sequence[str] = (), survey_id: int | None = None
    ) -> AgreedSets:
        """Agree on the sets that a plan shows, those of the positions ``only`` where any is named."""
        from spoutline.planning.agreement.making import agreed_sets

        made = agreed_sets(site_plan, origin, self._sources.book().agreements.now(), survey_id)
        return self._add(site_plan.survey, made, only, survey_id)

    def agree_order(self, stored: StoredQuotation, option: str, by: str, note: str) -> Callable[[Session], object]:
        """Return what agrees on the sets of the option ordered, inside a unit of work, for the survey quoted."""
        _check_name(by, note)
        made = self._of_option(stored, option, by, note)
        line, entry, known = self._next(stored.quotation.pins.survey, made, (), stored.quotation.pins.survey_id)
        agreements = self._sources.book().agreements
        return lambda session: agreements.write(session, line, entry, known)

    def withdraw(self, survey: Survey, by: str, reason: str = "", survey_id: int | None = None) -> AgreedSets:
        """Take the last agreement back by a following entry; raise ``InputFault`` where nothing is agreed."""
        _check_name(by, reason)
        line = self.match(survey, survey_id).line
        agreed = line.agreed if line else None
        if line is None or agreed is None:
            raise InputFault((InputProblem("", "survey", survey.site.name, "nothing is agreed that could be undone"),))
        entry = agreed.model_copy(
            update={
                "serial": line.entries[-1].serial + 1,
                "entry": EntryKind.WITHDRAWN,
                "agreed_at": self._sources.book().agreements.now(),
                "origin": AgreementOrigin(kind=AgreementKind.PERSON, by=by, reason=reason),
                "positions": (),
                "parts": (),
            }
        )
        self._sources.book().agreements.add(line.id, entry)
        return entry

    # inside

    def _planned(self, survey: Survey, progress: Progress | None, with_alternatives: bool = True) -> SitePlan:
        return self._sources.plan(survey, progress, with_alternatives)

    def _agreed(
        self,
        survey: Survey,
        agreed: AgreedSets,
        source: SetsSource,
        progress: Progress | None,
        *,
        with_others: bool = True,
        with_alternatives: bool = True,
    ) -> SitePlan:
        from spoutline.planning.agreement.sets_for import agreed_plan
        from spoutline.planning.sets.context import PlanningContext

        context = PlanningContext(
            self._sources.tables(survey),
            self._sources.catalogue(survey),
            answers=survey.conversion,
            steps=self._sources.steps(),
        )
        if source is not SetsSource.AGREED and not set(agreed.labels) & {one.label for one in survey.positions}:
            wanted = Worded("these sets are of {site}: none of their positions is in the survey", site=agreed.site)
            raise InputFault((InputProblem("", "--sets", source.value, wanted),))
        return agreed_plan(
            survey, agreed, source, context, progress, with_others=with_others, with_alternatives=with_alternatives
        )

    def _built(self, site_plan: SitePlan) -> SitePlan:
        from spoutline.planning.agreement.sets_for import built_plan
        from spoutline.planning.sets.context import PlanningContext

        records, site = self._sources.book().position_records, site_plan.survey.site.name
        context = PlanningContext(self._sources.tables(site_plan.survey), self._sources.catalogue(site_plan.survey))
        commissioned = [one.record for one in records.commissioning(site)]
        return built_plan(site_plan, commissioned, records.wear(site), context)

    def _of_option(self, stored: StoredQuotation, named: str, by: str, reason: str) -> AgreedSets:
        from spoutline.planning.agreement.quoted import sets_of_quotation

        return sets_of_quotation(stored, named, by, reason, self._sources.book().agreements.now())

    def _add(self, survey: Survey, made: AgreedSets, only: Sequence[str], survey_id: int | None) -> AgreedSets:
        """Add what was made as the next entry of the survey's history; a doubtful one starts a history of its own."""
        line, entry, known = self._next(survey, made, only, survey_id)
        self._sources.book().agreements.add(line, entry, known)
        return entry

    def _next(
        self, survey: Survey, made: AgreedSets, only: Sequence[str], survey_id: int | None
    ) -> tuple[int | None, AgreedSets, frozenset[int]]:
        """Return the line of the survey's history, None for a new one, what was made as its next entry, all lines."""
        from spoutline.book.choices import not_one_of

        for label in only:
            if label not in made.labels:
                raise not_one_of(label, made.labels, field="position")
        lines = self._lines(survey, survey_id)
        line = self._match(survey, survey_id, lines).line
        known_id = _number(survey, survey_id)
        before = line.agreed if line else None
        taken = {one.label: one for one in made.positions if not only or one.label in only}
        old = before.positions if before and only else ()
        both = {**{one.label: one for one in old}, **taken}
        order = [one.label for one in survey.positions if one.label in both]
        known = {one.ref: one for one in (*(before.parts if before else ()), *made.parts)}
        positions = tuple(both[label] for label in order)
        used = {one.ref for place in positions for one in place.pieces}
        entry = made.model_copy(
            update={
                "serial": line.entries[-1].serial + 1 if line else 1,
                "survey_id": known_id if known_id is not None else (line.survey_id if line else made.survey_id),
                "positions": positions,
                "parts": tuple(known[key] for key in sorted(used, key=lambda ref: (ref.maker, ref.number))),
            }
        )
        return (line.id if line else None), entry, frozenset(lines)


def _doubts(matched: AgreementMatch) -> tuple[str, ...]:
    return tuple(
        Worded(
            "sets were agreed for a survey of the name {site} (by {by}), but it is not sure that "
            "this is the same survey; they are not used. Name them with --sets file:PATH or "
            "agree again",
            site=line.site,
            by=line.entries[-1].origin.by,
        )
        for line in matched.doubtful
    )


def _number(survey: Survey, survey_id: int | None) -> int | None:
    """Return the number of a survey in the book: the one that is known, else the one that its file names."""
    return survey_id if survey_id is not None else survey.survey_id


def _stock_price(survey: Survey) -> int | None:
    from spoutline.planning.refit.station_plan import stock_price_minor

    return stock_price_minor(survey)


def _check_name(by: str, reason: str) -> None:
    """Refuse an entry of the history that names nobody, or that says what nobody sees."""
    if not by.strip():
        raise InputFault((InputProblem("", "by", "nothing", "the name of the person who agrees is needed"),))
    for field, text, most in (("by", by, 120), ("reason", reason, 2000)):
        told = hidden_sign(text) or (Worded("write at most {most} characters", most=most) if len(text) > most else "")
        if told:
            raise InputFault((InputProblem("", field, repr(text[:60]), told),))
