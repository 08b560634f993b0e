"""Local rules: the built-in jurisdictions and the person's own, with the tables that planning reads."""

from __future__ import annotations

import dataclasses
from pathlib import Path
from typing import TYPE_CHECKING

from spoutline.bootstrap.once import Once, OnceEach
from spoutline.bootstrap.settings import user_folder
from spoutline.documents.paper_form import PaperForm
from spoutline.model.faults import InputFault, InputProblem
from spoutline.model.worded import Worded

if TYPE_CHECKING:
    from datetime import date

    from spoutline.explain.plan.story import Story
    from spoutline.model.limit import Jurisdiction, RuleTables
    from spoutline.ruletables.editions import RowChange, RuleEdition
    from spoutline.ruletables.profiles import WrittenRow
    from spoutline.units.accepted import UnitSystem

_GENERAL = "us_general"


class JurisdictionService:
    """Jurisdictions by id. Methods may be called from several threads; built-in tables are read once.

    ``folder`` holds the person's own jurisdictions; None means one in the user's data folder.
    """

    def __init__(self, folder: Path | None) -> None:
        self._folder = folder
        self._tables = OnceEach(self._read_tables)
        self._built_in = Once(_read_built_in)

    def folder(self) -> Path:
        """Return the folder of the person's own jurisdictions."""
        return self._folder or user_folder() / "jurisdictions"

    def all(self) -> tuple[Jurisdiction, ...]:
        """Return the built-in jurisdictions, then the person's own, each sorted by id."""
        from spoutline.ruletables.own_profiles import own_profiles

        return (*self._built_in(), *own_profiles(self.folder()))

    def pdf(
        self, jurisdiction_id: str, story: Story, dated: date | None = None, form: PaperForm = PaperForm.PDF
    ) -> bytes:
        """Return the rules of a jurisdiction as a paper, an own one held against what it was copied from."""
        from spoutline.documents.keeper.rule_table import rule_table_content
        from spoutline.documents.paper import paper_bytes

        rules, parent = self.one(jurisdiction_id), self.parent(jurisdiction_id)
        return paper_bytes(rule_table_content(rules, parent, story, dated), form)

    def ids(self) -> tuple[str, ...]:
        """Return the ids of all jurisdictions without reading the person's own, built-in ones first."""
        from spoutline.ruletables.profile_files import own_profile_ids

        return (*(profile.id for profile in self._built_in()), *own_profile_ids(self.folder()))

    def one(self, jurisdiction_id: str) -> Jurisdiction:
        """Return one jurisdiction; raise ``InputFault`` with near names for an unknown id."""
        return self.tables(jurisdiction_id).jurisdiction

    def usual_units(self, jurisdiction_id: str) -> UnitSystem:
        """Return the units that are usual where a jurisdiction holds; of one that cannot be read, by its id."""
        from spoutline.units.accepted import usual_system

        try:
            edition = self.one(jurisdiction_id).edition
        except InputFault:
            edition = ""
        return usual_system(jurisdiction_id, edition)

    def tables(self, jurisdiction_id: str) -> RuleTables:
        """Return limits and materials of a jurisdiction; raise ``InputFault`` with near names for an unknown id.

        The person's own are read each time, as they may have been edited.
        """
        from spoutline.ruletables.profile_files import split_ref

        ref = split_ref(jurisdiction_id)
        if ref is not None:
            from spoutline.ruletables.editions import read_edition

            edition = read_edition(self.folder(), *ref)
            return dataclasses.replace(self._tables(_GENERAL), jurisdiction=edition.jurisdiction)
        is_built_in = any(profile.id == jurisdiction_id for profile in self._built_in())
        return self._tables(jurisdiction_id) if is_built_in else self._read_tables(jurisdiction_id)

    def ids_to_plan_with(self) -> tuple[str, ...]:
        """Return what a survey may name: every id, and every published edition as ``my_county@2``."""
        from spoutline.ruletables.profile_files import published_refs

        return (*self.ids(), *published_refs(self.folder()))

    def parent(self, jurisdiction_id: str) -> Jurisdiction | None:
        """Return the jurisdiction that one was copied from, as it is today; None for the general one or a lost one."""
        from spoutline.ruletables.editions import parent_id

        parent = parent_id(self.one(jurisdiction_id))
        return self.one(parent) if parent in self.ids() else None

    def changes(self, jurisdiction_id: str, other_id: str = "") -> tuple[RowChange, ...]:
        """Return the rows that differ from those of ``other_id``, or of the parent; nothing where there is none."""
        from spoutline.ruletables.editions import row_changes

        profile = self.one(jurisdiction_id)
        other = self.one(other_id) if other_id else self.parent(jurisdiction_id)
        return () if other is None else row_changes(other, profile)

    def editions(self, jurisdiction_id: str) -> tuple[RuleEdition, ...]:
        """Return the published editions of an own jurisdiction from the first on."""
        from spoutline.ruletables.editions import editions_of

        return tuple(editions_of(self.folder(), self.one(jurisdiction_id).id))

    def publish(self, jurisdiction_id: str, *, publisher: str, note: str, on: date) -> RuleEdition:
        """Publish an own jurisdiction as its next edition, which never changes any more; raise ``InputFault``."""
        from spoutline.ruletables.editions import publish

        return publish(self.folder(), self.one(jurisdiction_id), publisher=publisher, note=note, on=on)

    def change_row(self, jurisdiction_id: str, written: WrittenRow) -> Jurisdiction:
        """Change one row of an own jurisdiction and keep it; a row without a source is refused."""
        from spoutline.ruletables.profiles import with_row

        after = with_row(self.one(jurisdiction_id), written)
        self.save(after)
        return after

    def save(self, jurisdiction: Jurisdiction) -> Path:
        """Write one of the person's own jurisdictions and return its file.

        Raise ``InputFault`` for a built-in one, and for one that would hide a built-in one behind its id.
        """
        from spoutline.ruletables.own_profiles import save_own_profile

        built_in = tuple(profile.id for profile in self._built_in())
        if jurisdiction.id in built_in:
            wanted = Worded(
                "this is the id of a built-in jurisdiction; copy it under another id (not {built_in})",
                built_in=", ".join(built_in),
            )
            raise InputFault((InputProblem("", "profile, id", repr(jurisdiction.id), wanted),))
        return save_own_profile(self.folder(), jurisdiction)

    def remove(self, jurisdiction_id: str) -> None:
        """Delete one of the person's own jurisdictions; raise ``InputFault`` for a built-in or unknown one."""
        from spoutline.ruletables.own_profiles import remove_own_profile

        remove_own_profile(self.folder(), jurisdiction_id)

    def copy(self, jurisdiction_id: str, new_id: str, title: str) -> Jurisdiction:
        """Return an own jurisdiction with the rows of another; it is not saved yet. Raise ``InputFault``."""
        from spoutline.book.choices import taken
        from spoutline.ruletables.profiles import copy_profile

        if new_id in self.ids():
            raise taken(new_id, field="profile, id")
        return copy_profile(self.one(jurisdiction_id), new_id, title)

    def _read_tables(self, jurisdiction_id: str) -> RuleTables:
        from spoutline import assets
        from spoutline.bootstrap.kept_tables import kept
        from spoutline.ruletables.load import load_rule_tables

        resources = assets.resources_folder()
        return load_rule_tables(jurisdiction_id, resources=resources, own_profiles=self.folder(), keep=kept)


def _read_built_in() -> tuple[Jurisdiction, ...]:
    from spoutline import assets
    from spoutline.bootstrap.kept_tables import kept
    from spoutline.ruletables.load import built_in_profiles

    return built_in_profiles(assets.resources_folder(), kept)
