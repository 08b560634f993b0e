"""The use cases of conversions wired to their stores: what window and command line call for an owner."""

from __future__ import annotations

import hashlib
from collections.abc import Callable
from contextlib import AbstractContextManager, nullcontext
from typing import TYPE_CHECKING

from spoutline.bootstrap.once import Once
from spoutline.documents.paper_form import PaperForm
from spoutline.frozen import frozen
from spoutline.model.faults import ReadOnlyStore
from spoutline.model.language import Language

if TYPE_CHECKING:
    from collections.abc import Sequence
    from datetime import date
    from pathlib import Path

    from spoutline.book.book import Book
    from spoutline.bootstrap.kept_answers import SharedAnswers
    from spoutline.bootstrap.phrase_tables import PhraseTables
    from spoutline.bootstrap.stores import EditionOf
    from spoutline.explain.conversion.story import ConversionStory
    from spoutline.explain.plan.story import Story
    from spoutline.model.catalogue_edition import CatalogueEdition
    from spoutline.model.conversion import SiteConversion
    from spoutline.model.conversion_case import ConversionCase
    from spoutline.model.conversion_step import StepTable
    from spoutline.model.limit import RuleTables
    from spoutline.model.plan import SitePlan
    from spoutline.model.programme import Programme
    from spoutline.model.survey import Survey
    from spoutline.model.vapour_figures import VapourTables
    from spoutline.planning.agreement.handed_in import HandedIn
    from spoutline.planning.conversion.cases import CaseResult
    from spoutline.planning.conversion.folder import OpenConverter
    from spoutline.planning.conversion.memory import ConversionMemory
    from spoutline.planning.conversion.programme_terms import ProgrammeTerms
    from spoutline.planning.conversion.run_log import RunLog
    from spoutline.planning.protocols import Progress
    from spoutline.units.display import Display
    from spoutline.whole_files import Staged


@frozen
class Sources:
    """How the stores are reached; each opens when first asked for."""

    tables: Callable[[Survey], RuleTables]
    catalogue: EditionOf
    story: Callable[[Display, Language | None], Story]
    phrases: PhraseTables
    book: Callable[[], Book]
    open_converter: OpenConverter
    close: Callable[[], None]
    sets_for: Callable[[Survey, str | None, Progress | None], HandedIn]  # those asked for; no plan where none is agreed
    made_with: Callable[[], str]  # fingerprint of what results rest on beside the survey
    rules_digest: Callable[[], bytes]  # of program and rule files


class ConversionService:
    """Conversions and their papers. Methods may be called from several threads; tables are read once."""

    def __init__(self, sources: Sources) -> None:
        self._sources = sources
        self._vapour = Once(_read_vapour_tables)
        self._steps = Once(_read_steps)
        self._rules_digest = Once(sources.rules_digest)
        self._memory: ConversionMemory | None = None
        self._answers: SharedAnswers | None = None

    def close(self) -> None:
        """Close the stores that this service was opened over; for one that was opened by itself."""
        if self._answers is not None:
            self._answers.close()
        self._sources.close()

    def vapour_tables(self) -> VapourTables:
        """Return figures, onboard shares and agencies; raise ``InputFault`` with every fault of the tables."""
        return self._vapour()

    def steps(self) -> StepTable:
        """Return the steps of a conversion; raise ``InputFault`` with every fault of the table."""
        return self._steps()

    def count_only(self, answers: Path | None = None, turns: Sequence[AbstractContextManager[object]] = ()) -> None:
        """From here on find of a site what a programme counts, and remember it of positions that ask the same.

        ``answers`` is a file of them, ``turns`` are locks over it that the processes of a run share.
        """
        from spoutline.bootstrap.kept_answers import SharedAnswers
        from spoutline.planning.conversion.memory import ConversionMemory

        self._answers = None if answers is None else SharedAnswers(answers, turns)
        self._memory = ConversionMemory(self._answers)

    def convert_shown(
        self, survey: Survey, choice: str | None = None, progress: Progress | None = None
    ) -> tuple[SiteConversion, tuple[str, ...]]:
        """Plan the conversion to the sets that every paper shows, and what is to be told of them.

        Without a ``choice`` those are the agreed ones, else the way that the survey names. Raise ``InputFault``, or
        ``Cancelled`` where ``progress`` asks to stop.
        """
        shown = self._sources.sets_for(survey, choice, progress)
        return self.convert(survey, progress, sets=shown.site_plan), shown.notes

    def convert(
        self, survey: Survey, progress: Progress | None = None, *, sets: SitePlan | None = None
    ) -> SiteConversion:
        """Plan the conversion of a site, to ``sets`` where they are given, else by the way that the survey names.

        Raise ``InputFault``, or ``Cancelled`` where ``progress`` asks to stop.
        """
        from spoutline.planning.conversion.agency_names import check_agency
        from spoutline.planning.conversion.convert_position import ConversionContext
        from spoutline.planning.conversion.convert_site import convert_site
        from spoutline.planning.sets.context import PlanningContext, stop_listener

        vapour = self.vapour_tables()
        check_agency(survey, vapour)
        parts = self._sources.catalogue(survey)
        planning = PlanningContext(self._sources.tables(survey), parts, stop_listener(progress))
        basis = None if self._memory is None else self._basis(parts.edition())
        context = ConversionContext(planning, vapour, self.steps(), self._memory, basis)
        return convert_site(survey, context, progress, sets=sets)

    def _basis(self, edition: CatalogueEdition) -> str | None:
        """Return what answers rest on beside the survey; None with a draft, which changes under whoever reads it."""
        if edition.number is None:
            return None
        return f"{self._rules_digest().hex()} {edition.catalogue}@{edition.number} {edition.fingerprint}"

    def cases(
        self,
        survey: Survey,
        base: SiteConversion,
        cases: tuple[ConversionCase, ...],
        progress: Progress | None = None,
    ) -> tuple[CaseResult, ...]:
        """Return what the survey asks, ``base``, and each case worked out whole by the way that the survey names.

        Raise ``InputFault`` where a case cannot be had at the station, ``Cancelled`` where ``progress`` asks to stop.
        """
        from spoutline.planning.conversion.cases import case_results

        return case_results(survey, base, cases, lambda other: self.convert(other, progress))

    def convert_folder(
        self,
        folder: Path,
        terms: ProgrammeTerms,
        progress: Progress | None = None,
        processes: int | None = None,
        write: Callable[[Programme], AbstractContextManager[Staged]] | None = None,
        *,
        resume: Path | None = None,
    ) -> tuple[int | None, Programme]:
        """Convert all surveys of a folder over all cores, rank them, keep the programme in the book.

        Return its id and the programme; a stopped run is kept too and says so. Raise ``InputFault``. ``write`` stages
        files that are written together with keeping it, or neither is done. The id is None where the person may only
        read the book: the programme is worked out and written all the same, and not kept. ``resume`` is a file in which
        each finished site is written down, and from which sites of an earlier run are taken that nothing changed for.
        """
        from spoutline.bootstrap.kept_answers import answers_for_run
        from spoutline.bootstrap.settings import cache_folder
        from spoutline.planning.conversion.folder import convert_files, surveys_of
        from spoutline.planning.conversion.programme import programme_of

        self._sources.catalogue()  # compiled once, before the workers read it
        surveys = surveys_of(folder)
        with self._log(resume) as log, answers_for_run(cache_folder() / "conversions") as answers:
            results, stopped = convert_files(
                surveys, self._sources.open_converter, progress, processes=processes, log=log, answers=answers
            )
        programme = programme_of(results, terms, stopped=stopped)
        programmes = self._sources.book().programmes
        with write(programme) if write is not None else nullcontext() as files:
            place = files.place if files is not None else None
            try:
                return programmes.add(programme, place), programme
            except ReadOnlyStore:
                if place is not None:
                    place()
                return None, programme

    def run_file(self, folder: Path) -> Path | None:
        """Return where runs over a folder write their sites down where no file is named; None where none can be.

        A file there that was damaged begins anew.
        """
        from spoutline.bootstrap.settings import user_folder
        from spoutline.planning.conversion.run_log import is_run

        name = hashlib.sha256(str(folder.resolve()).encode()).hexdigest()[:16]
        kept = user_folder() / "runs" / f"{name}.run"
        try:
            kept.parent.mkdir(parents=True, exist_ok=True)
            if not is_run(kept):
                kept.unlink()
        except OSError:
            return None
        return kept

    def _log(self, resume: Path | None) -> AbstractContextManager[RunLog | None]:
        from spoutline.planning.conversion.run_log import RunLog

        return nullcontext() if resume is None else RunLog(resume, self._sources.made_with())

    def words(self, display: Display, language: Language | None = None) -> ConversionStory:
        """Return the words of a conversion, with quantities shown in ``display``'s units; see ``Workbench.story``."""
        from spoutline.explain.conversion.story import ConversionStory

        story = self._sources.story(display, language)
        return ConversionStory(story, self._sources.phrases.conversion(Language(story.phrases.language)))

    def pdf(
        self,
        conversion: SiteConversion,
        display: Display,
        dated: date | None = None,
        language: Language | None = None,
        form: PaperForm = PaperForm.PDF,
        *,
        cases: Sequence[CaseResult] = (),
        progress: Progress | None = None,
    ) -> bytes:
        """Return the owner's report as PDF, or in another ``form``; the same bytes for the same arguments.

        ``cases`` are shown beside it; ``conversion`` is that of one of them, or of the survey. Raise ``Cancelled``
        where ``progress``, which hears how far it is, asks to stop.
        """
        from spoutline.documents.conversion.papers import conversion_pdf

        words = self.words(display, language)
        cautions = self._sources.phrases.cautions(Language(words.story.phrases.language))
        return conversion_pdf(conversion, words, cautions, dated=dated, form=form, cases=cases, progress=progress)

    def one_page(
        self,
        conversion: SiteConversion,
        display: Display,
        dated: date | None = None,
        language: Language | None = None,
        form: PaperForm = PaperForm.PDF,
        *,
        progress: Progress | None = None,
    ) -> bytes:
        """Return the station on one page, for a bank or an agency; every figure is one of the report's.

        Raise ``Cancelled`` where ``progress`` asks to stop.
        """
        from spoutline.documents.conversion.papers import one_page_pdf

        words = self.words(display, language)
        return one_page_pdf(conversion, words, dated=dated, form=form, progress=progress)

    def tasks_csv(self, conversion: SiteConversion, display: Display) -> bytes:
        """Return tasks and days to keep as CSV, in English in every language; days are counted without a first day."""
        from spoutline.documents.conversion.task_table import tasks_csv

        return tasks_csv(conversion, self.words(display, Language.ENGLISH))

    def tasks_xlsx(self, conversion: SiteConversion, display: Display) -> bytes:
        """Return tasks, closings, tanks and costs as a workbook."""
        from spoutline.documents.conversion.task_table import tasks_xlsx

        return tasks_xlsx(conversion, self.words(display, Language.ENGLISH))

    def calendar(self, conversion: SiteConversion, display: Display) -> bytes:
        """Return the sequence as a calendar file; raise ``InputFault`` where no first day is known."""
        from spoutline.documents.conversion.icalendar import conversion_calendar

        return conversion_calendar(conversion, self.words(display))

    def require_first_day(self, survey: Survey) -> None:
        """Raise ``InputFault`` where the survey names no first day, which a calendar needs."""
        from spoutline.documents.conversion.icalendar import require_first_day

        require_first_day(survey)

    # papers of a programme

    def programme_pdf(
        self,
        programme: Programme,
        display: Display,
        dated: date | None = None,
        language: Language | None = None,
        form: PaperForm = PaperForm.PDF,
    ) -> bytes:
        """Return a programme as PDF, or in another ``form``; the same bytes for the same arguments."""
        from spoutline.documents.conversion.programme_papers import programme_pdf

        return programme_pdf(programme, self.words(display, language), dated=dated, form=form)

    def programme_csv(self, programme: Programme) -> bytes:
        """Return one line for each site as CSV, in English in every language."""
        from spoutline.documents.conversion.programme_table import programme_csv

        return programme_csv(programme)

    def programme_xlsx(self, programme: Programme, display: Display) -> bytes:
        """Return years, sites, visits and terms as a workbook, in English in every language."""
        from spoutline.documents.conversion.programme_papers import programme_xlsx

        return programme_xlsx(programme, self.words(display, Language.ENGLISH))

    def programme_calendar(self, programme: Programme, display: Display) -> bytes:
        """Return visits and deadlines as a calendar file; raise ``InputFault`` where years are only counted."""
        from spoutline.documents.conversion.programme_calendar import programme_calendar

        return programme_calendar(programme, self.words(display))


def _read_vapour_tables() -> VapourTables:
    from spoutline import assets
    from spoutline.bootstrap.kept_tables import kept
    from spoutline.ruletables.load import load_vapour_tables

    return load_vapour_tables(assets.resources_folder(), kept)


def _read_steps() -> StepTable:
    from spoutline import assets
    from spoutline.ruletables.conversion_steps import load_step_table

    return load_step_table(assets.resources_folder())
