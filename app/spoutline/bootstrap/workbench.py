"""Everything the program can do, wired to stores that open when first used."""

from __future__ import annotations

import threading
from pathlib import Path
from typing import TYPE_CHECKING

from spoutline.bootstrap.settings import Settings, user_folder
from spoutline.model.faults import InputFault, InputProblem

if TYPE_CHECKING:
    from datetime import date

    from spoutline.book.book import Book
    from spoutline.book.programmes import Programmes
    from spoutline.book.quotations import QuotationBook
    from spoutline.book.record_book import RecordBook
    from spoutline.book.records import SettingName, StoredSurvey, SurveyEntry
    from spoutline.bootstrap.conversions import ConvertingDesk
    from spoutline.bootstrap.installer import PackingDesk
    from spoutline.bootstrap.quotations import QuotingDesk
    from spoutline.catalogue.store import CatalogueStore
    from spoutline.explain.phrasebook import Phrasebook
    from spoutline.explain.story import Story
    from spoutline.model.limit import Jurisdiction, RuleTables
    from spoutline.model.part import Part, PartKind
    from spoutline.model.plan import PartVerdict, PositionPlan, SitePlan, SlotCount
    from spoutline.model.programme import Programme
    from spoutline.model.survey import Position, Survey
    from spoutline.planning.conversion.programme import ProgrammeTerms
    from spoutline.planning.desk import Desk
    from spoutline.planning.protocols import Progress
    from spoutline.ruletables.cautions import Caution
    from spoutline.units.display import Display

DEFAULT_DEMO = "small_town"


def open_workbench(settings: Settings) -> Workbench:
    """Return the wired use cases. Nothing is opened yet: each store opens when first used, and then stays open."""
    return Workbench(settings)


class Workbench:
    """Everything the program can do, for whoever asks: window, command line, tests.

    Methods may be called from several threads. Bad input raises ``InputFault``, a failing environment ``StoreFault``.
    """

    def __init__(self, settings: Settings) -> None:
        self._settings = settings
        self._opening = threading.RLock()
        self._book: Book | None = None
        self._catalogue: CatalogueStore | None = None
        self._tables: dict[str, RuleTables] = {}
        self._built_in_profiles: tuple[Jurisdiction, ...] = ()
        self._phrasebook: Phrasebook | None = None
        self._quoting: QuotingDesk | None = None
        self._converting: ConvertingDesk | None = None
        self._packing: PackingDesk | None = None

    # the book of surveys

    def surveys(self) -> tuple[SurveyEntry, ...]:
        """Return all surveys of the book, last changed first."""
        return self._opened_book().entries()

    def open_survey(self, survey_id: int) -> StoredSurvey:
        """Return the survey with this id; raise ``InputFault`` where the book has none."""
        return self._opened_book().stored(survey_id)

    def create_survey(self, survey: Survey) -> StoredSurvey:
        """Put a new survey into the book and return it with its id and revision 1."""
        return self._opened_book().create(survey)

    def save_survey(self, stored: StoredSurvey, survey: Survey) -> StoredSurvey:
        """Save ``survey`` over ``stored`` durably; raise ``StaleSurvey`` where the book holds a newer revision."""
        return self._opened_book().save(stored, survey)

    def remove_survey(self, survey_id: int) -> None:
        """Take a survey off the list. Its past revisions stay in the database."""
        self._opened_book().remove(survey_id)

    def setting(self, name: SettingName) -> str | None:
        """Return what the program remembered under ``name``; None where nothing was."""
        return self._opened_book().setting(name)

    def remember(self, name: SettingName, value: str) -> None:
        """Remember ``value`` under ``name`` for the next start."""
        self._opened_book().remember(name, value)

    # survey files

    def read_survey(self, path: Path) -> Survey:
        """Return the survey in a JSON file; raise ``InputFault`` naming every faulty field."""
        from spoutline.book import survey_text

        return survey_text.read_survey(path)

    def survey_from_json(self, text: str, place: str) -> Survey:
        """Return the survey in a JSON text; ``place`` names its origin in faults."""
        from spoutline.book import survey_text

        return survey_text.survey_from_json(text, place)

    def survey_from_bytes(self, raw: bytes, place: str) -> Survey:
        """Return the survey in UTF-8 JSON bytes; ``place`` names their origin in faults."""
        from spoutline.book import survey_text

        return survey_text.survey_from_bytes(raw, place)

    def survey_to_json(self, survey: Survey) -> str:
        """Return the survey as JSON text, always the same for the same survey."""
        from spoutline.book import survey_text

        return survey_text.survey_to_json(survey)

    def demo_names(self) -> tuple[str, ...]:
        """Return the names of the ready demo surveys, sorted."""
        from spoutline import assets

        return tuple(sorted(path.stem for path in assets.demo_folder().glob("*.json")))

    def demo_survey(self, name: str = DEFAULT_DEMO) -> Survey:
        """Return a ready demo survey; raise ``InputFault`` where there is none of that name."""
        from spoutline import assets
        from spoutline.book import survey_text
        from spoutline.book.choices import not_one_of

        if name not in self.demo_names():
            raise not_one_of(name, self.demo_names(), field="demo")
        return survey_text.read_survey(assets.demo_folder() / f"{name}.json")

    # jurisdictions

    def profiles(self) -> tuple[Jurisdiction, ...]:
        """Return the built-in jurisdictions, then the person's own, each sorted by id."""
        from spoutline.ruletables.own_profiles import own_profiles

        return (*self._built_in(), *own_profiles(self.profiles_folder()))

    def profile_ids(self) -> tuple[str, ...]:
        """Return the ids of all jurisdictions without reading the person's own, built-in ones first."""
        from spoutline.ruletables.own_profiles import own_profile_ids

        return (*(profile.id for profile in self._built_in()), *own_profile_ids(self.profiles_folder()))

    def profile(self, jurisdiction_id: str) -> Jurisdiction:
        """Return one jurisdiction; raise ``InputFault`` with near names for an unknown id."""
        return self.tables(jurisdiction_id).jurisdiction

    def save_profile(self, jurisdiction: Jurisdiction) -> Path:
        """Write one of the person's own jurisdictions and return its file.

        Raise ``InputFault`` for a built-in one, and for one that would hide a built-in one behind its id.
        """
        from spoutline.ruletables.own_profiles import save_own_profile

        built_in = tuple(profile.id for profile in self._built_in())
        if jurisdiction.id in built_in:
            wanted = f"this is the id of a built-in jurisdiction; copy it under another id (not {', '.join(built_in)})"
            raise InputFault((InputProblem("", "profile, id", repr(jurisdiction.id), wanted),))
        return save_own_profile(self.profiles_folder(), jurisdiction)

    def remove_profile(self, jurisdiction_id: str) -> None:
        """Delete one of the person's own jurisdictions; raise ``InputFault`` for a built-in or unknown one."""
        from spoutline.ruletables.own_profiles import remove_own_profile

        remove_own_profile(self.profiles_folder(), jurisdiction_id)

    def profile_from_toml(self, text: str, place: str) -> Jurisdiction:
        """Return the jurisdiction in a profile text; raise ``InputFault`` with every fault of it."""
        from spoutline.ruletables.profiles import profile_from_toml

        return profile_from_toml(text, place)

    def profile_to_toml(self, jurisdiction: Jurisdiction) -> str:
        """Return a jurisdiction as self-contained text, always the same for the same jurisdiction."""
        from spoutline.ruletables.profiles import profile_to_toml

        return profile_to_toml(jurisdiction)

    def copy_profile(self, jurisdiction_id: str, new_id: str, title: str) -> Jurisdiction:
        """Return an own jurisdiction with the rows of another; it is not saved yet. Raise ``InputFault``."""
        from spoutline.book.choices import taken
        from spoutline.ruletables.profiles import copy_profile

        if new_id in self.profile_ids():
            raise taken(new_id, field="profile, id")
        return copy_profile(self.profile(jurisdiction_id), new_id, title)

    def tables(self, jurisdiction_id: str) -> RuleTables:
        """Return limits and materials of a jurisdiction; raise ``InputFault`` with near names for an unknown id.

        Built-in tables are read once; the person's own are read each time, as they may have been edited.
        """
        from spoutline import assets
        from spoutline.ruletables.load import load_rule_tables

        with self._opening:
            known = self._tables.get(jurisdiction_id)
        if known is not None:
            return known
        tables = load_rule_tables(
            jurisdiction_id, resources=assets.resources_folder(), own_profiles=self.profiles_folder()
        )
        if tables.jurisdiction.built_in:
            with self._opening:
                self._tables[jurisdiction_id] = tables
        return tables

    def profiles_folder(self) -> Path:
        """Return the folder of the person's own jurisdictions."""
        return self._settings.profiles or user_folder() / "jurisdictions"

    # planning

    def plan_position(self, survey: Survey, label: str, progress: Progress | None = None) -> PositionPlan:
        """Plan one position of a survey; raise ``InputFault``, or ``Cancelled`` where ``progress`` asks to stop."""
        from spoutline.planning.plan_position import plan_position

        return plan_position(self._position(survey, label), survey.site, self._desk(survey, progress))

    def plan_site(self, survey: Survey, progress: Progress | None = None) -> SitePlan:
        """Plan every position of a survey; raise ``InputFault``, or ``Cancelled`` where ``progress`` asks to stop."""
        from spoutline.planning.plan_site import plan_site

        return plan_site(survey, self._checked_tables(survey), self._opened_catalogue(), progress)

    def counts(self, survey: Survey, label: str) -> tuple[SlotCount, ...]:
        """Return how many parts remain per slot of a position's chain; empty where no requirement can be derived."""
        from spoutline.planning.plan_position import counts_for

        return counts_for(self._position(survey, label), survey.site, self._desk(survey))

    def why_not(self, survey: Survey, label: str, number: str, progress: Progress | None = None) -> PartVerdict:
        """Return every rule that a catalogue part breaks at a position, or how it could serve there."""
        from spoutline.planning.why_not import why_not

        position, part = self._position(survey, label), self.part(number)
        return why_not(position, survey.site, part, self._desk(survey, progress))

    # the catalogue

    def search_parts(self, text: str, kind: PartKind | None = None, limit: int = 200) -> tuple[Part, ...]:
        """Return parts whose number, name or maker holds ``text``, sorted by number."""
        return self._opened_catalogue().search(text, kind, limit)

    def part(self, number: str) -> Part:
        """Return one part by number; raise ``InputFault`` with near numbers for an unknown one."""
        from spoutline.book.choices import unknown_number

        catalogue = self._opened_catalogue()
        part = catalogue.part(number)
        if part is None:
            wanted = unknown_number(number, catalogue.nearest_numbers(number))
            raise InputFault((InputProblem("", "part number", repr(number), wanted),))
        return part

    # words and paper

    def story(self, display: Display) -> Story:
        """Return the words for findings, checks and conflicts, with quantities shown in ``display``'s units."""
        from spoutline.explain.story import Story

        return Story(self._read_phrasebook(), display)

    def cautions(self) -> tuple[Caution, ...]:
        """Return the rows from which installer caution sheets are made."""
        from spoutline import assets
        from spoutline.ruletables.cautions import load_cautions

        return load_cautions(assets.resources_folder())

    def bill_pdf(
        self, site_plan: SitePlan, display: Display, dated: date | None = None, *, calculations: bool = True
    ) -> bytes:
        """Return the bill with checks, drawings and caution sheet as PDF; the same bytes for the same arguments.

        ``calculations`` False leaves the calculation sheets out.
        """
        from spoutline.documents.bill import bill_pdf

        return bill_pdf(site_plan, self.story(display), self.cautions(), dated=dated, calculations=calculations)

    def bill_csv(self, site_plan: SitePlan, display: Display) -> bytes:
        """Return the parts list as CSV; the same bytes for the same arguments."""
        from spoutline.documents.bill import bill_csv

        return bill_csv(site_plan, self.story(display))

    def bill_xlsx(self, site_plan: SitePlan, display: Display) -> bytes:
        """Return the bill as a workbook; the same bytes for the same arguments."""
        from spoutline.documents.bill import bill_xlsx

        return bill_xlsx(site_plan, self.story(display))

    # quotations

    def quoting(self) -> QuotingDesk:
        """Return the use cases of quotations, wired to the stores of this workbench."""
        from spoutline import assets
        from spoutline.bootstrap.quotations import QuotingDesk, Sources

        with self._opening:
            if self._quoting is None:
                own = user_folder() / "prices"
                folders = (
                    assets.catalogue_folder() / "prices",
                    *((own,) if own.is_dir() else ()),
                    *self._settings.price_lists,
                )
                self._quoting = QuotingDesk(
                    Sources(
                        tables=self._checked_tables,
                        catalogue=self._opened_catalogue,
                        story=self.story,
                        price_folders=folders,
                        quotations=self._quotations,
                        usual_terms=user_folder() / "usual_terms.toml",
                    )
                )
            return self._quoting

    # the installer's papers

    def packing(self) -> PackingDesk:
        """Return the use cases of the installer, wired to the stores of this workbench."""
        from spoutline.bootstrap.installer import PackingDesk, Sources

        with self._opening:
            if self._packing is None:
                self._packing = PackingDesk(
                    Sources(
                        plan_site=self.plan_site,
                        tables=self._checked_tables,
                        catalogue=self._opened_catalogue,
                        records=self._position_records,
                        surveys=self.surveys,
                        open_survey=self.open_survey,
                    )
                )
            return self._packing

    # conversions

    def converting(self) -> ConvertingDesk:
        """Return the use cases of conversions, wired to the stores of this workbench."""
        from spoutline.bootstrap.conversions import ConvertingDesk, Sources

        with self._opening:
            if self._converting is None:
                self._converting = ConvertingDesk(
                    Sources(self._checked_tables, self._opened_catalogue, self.story, self.cautions)
                )
            return self._converting

    def convert_folder(
        self, folder: Path, terms: ProgrammeTerms, progress: Progress | None = None, processes: int | None = None
    ) -> tuple[int, Programme]:
        """Convert all surveys of a folder over all cores, rank them, keep the programme in the book.

        Return its id and the programme; a stopped run is kept too and says so. Raise ``InputFault``.
        """
        from functools import partial

        from spoutline.bootstrap.conversion_folder import convert_files, surveys_of
        from spoutline.planning.conversion.programme import programme_of

        self._opened_catalogue()  # compiled once, before the workers read it
        paths = surveys_of(folder)
        open_desk = partial(open_converting, self._settings)
        results, stopped = convert_files(paths, open_desk, progress, processes=processes)
        programme = programme_of(results, terms, stopped=stopped)
        return self._opened_book().programmes.add(programme), programme

    def programmes(self) -> Programmes:
        """Return the programmes kept in the book."""
        return self._opened_book().programmes

    def close(self) -> None:
        """Close the stores that were opened."""
        with self._opening:
            if self._book is not None:
                self._book.close()
            if self._catalogue is not None:
                self._catalogue.close()
            self._book = None
            self._catalogue = None

    # opening the stores

    def _opened_book(self) -> Book:
        with self._opening:
            if self._book is None:
                from spoutline.book.book import open_book

                self._book = open_book(self._database_url())
            return self._book

    def _position_records(self) -> RecordBook:
        return self._opened_book().position_records

    def _quotations(self) -> QuotationBook:
        return self._opened_book().quotations()

    def _opened_catalogue(self) -> CatalogueStore:
        with self._opening:
            if self._catalogue is None:
                from spoutline import assets
                from spoutline.catalogue.build import ensure_catalogue

                self._catalogue = ensure_catalogue(self._database_url(), assets.catalogue_folder())
            return self._catalogue

    def _built_in(self) -> tuple[Jurisdiction, ...]:
        with self._opening:
            if not self._built_in_profiles:
                from spoutline import assets
                from spoutline.ruletables.load import built_in_profiles

                self._built_in_profiles = built_in_profiles(assets.resources_folder())
            return self._built_in_profiles

    def _read_phrasebook(self) -> Phrasebook:
        with self._opening:
            if self._phrasebook is None:
                from spoutline import assets
                from spoutline.explain.phrasebook import phrasebook_from_toml

                path = assets.resources_folder() / "phrases" / "en.toml"
                self._phrasebook = phrasebook_from_toml(path.read_text(encoding="utf-8"), path.name)
            return self._phrasebook

    def _database_url(self) -> str:
        from spoutline.book.address import database_url

        return database_url(self._settings.database, user_folder())

    # what only the stores together can check

    def _position(self, survey: Survey, label: str) -> Position:
        from spoutline.book.choices import not_one_of

        position = survey.position(label)
        if position is None:
            labels = tuple(known.label for known in survey.positions)
            raise not_one_of(label, labels, field="position")
        return position

    def _desk(self, survey: Survey, progress: Progress | None = None) -> Desk:
        from spoutline.planning.desk import Desk, stop_listener

        listener = stop_listener(progress)
        return Desk(self._checked_tables(survey), self._opened_catalogue(), listener)

    def _checked_tables(self, survey: Survey) -> RuleTables:
        """Return the rule tables of a survey whose jurisdiction, currency and decided parts exist."""
        from spoutline.book.survey_check import check_names

        catalogue = self._opened_catalogue()
        check_names(
            survey,
            jurisdictions=self.profile_ids(),
            currencies=catalogue.currencies(),
            unknown_parts=self._unknown_parts,
        )
        return self.tables(survey.site.jurisdiction)

    def _unknown_parts(self, numbers: tuple[str, ...]) -> dict[str, tuple[str, ...]]:
        catalogue = self._opened_catalogue()
        known = {part.number for part in catalogue.parts(numbers)}
        return {number: catalogue.nearest_numbers(number) for number in numbers if number not in known}


def open_converting(settings: Settings) -> ConvertingDesk:
    """Open the use cases of conversions in a worker process."""
    return open_workbench(settings).converting()
