"""The use cases of the installer wired to their stores: what window and command line call for a day of work."""

from __future__ import annotations

import threading
from dataclasses import dataclass, replace
from pathlib import Path
from typing import TYPE_CHECKING, Protocol

if TYPE_CHECKING:
    from datetime import date

    from spoutline.documents.pack.content import PackWords
    from spoutline.model.pack import PackJob, PackLanguage
    from spoutline.model.plan import SitePlan
    from spoutline.model.survey import Survey
    from spoutline.planning.protocols import Progress
    from spoutline.units.display import Display


class PlanSite(Protocol):
    """How a site is planned."""

    def __call__(self, survey: Survey, progress: Progress | None = None) -> SitePlan:
        """Return the plan of a survey."""
        ...


@dataclass(frozen=True, slots=True)
class Sources:
    """How the stores are reached; each opens when first asked for."""

    plan_site: PlanSite


class PackingDesk:
    """Packs, caution sheets and records. Methods may be called from several threads; tables are read once."""

    def __init__(self, sources: Sources) -> None:
        self._sources = sources
        self._reading = threading.Lock()
        self._words: dict[tuple[PackLanguage, Display], PackWords] = {}

    def read_job(self, path: Path) -> PackJob:
        """Return what a person wrote about the job in a TOML file; raise ``InputFault`` naming every faulty field."""
        from spoutline.book.pack_job_text import read_pack_job

        return read_pack_job(path)

    def words(self, language: PackLanguage, display: Display) -> PackWords:
        """Return the words of one language, figures in ``display``'s units; raise ``InputFault`` or ``StoreFault``."""
        with self._reading:
            known = self._words.get((language, display))
            if known is None:
                known = _read_words(language, display)
                self._words[language, display] = known
            return known

    def pack(
        self,
        site_plan: SitePlan,
        language: PackLanguage,
        display: Display,
        job: PackJob,
        dated: date | None = None,
    ) -> bytes:
        """Return the installer's pack as PDF; the same bytes for the same arguments."""
        from spoutline.documents.pack.papers import pack_pdf

        return pack_pdf(site_plan, self.words(language, display), job, dated=dated)

    def caution_sheet(
        self, site_plan: SitePlan, language: PackLanguage, display: Display, dated: date | None = None
    ) -> bytes:
        """Return the caution sheet by itself as PDF; the same bytes for the same arguments."""
        from spoutline.documents.pack.papers import caution_pdf

        return caution_pdf(site_plan, self.words(language, display), dated=dated)


def only_positions(site_plan: SitePlan, labels: tuple[str, ...]) -> SitePlan:
    """Return the plan with the positions named alone; all of them where none is named.

    Raises
    ------
    InputFault
        A label is none of the survey's.
    """
    from spoutline.book.choices import not_one_of

    known = tuple(plan.position.label for plan in site_plan.positions)
    for label in labels:
        if label not in known:
            raise not_one_of(label, known, field="position")
    if not labels:
        return site_plan
    return replace(site_plan, positions=tuple(plan for plan in site_plan.positions if plan.position.label in labels))


def _read_words(language: PackLanguage, display: Display) -> PackWords:
    from spoutline import assets
    from spoutline.documents.pack.content import PackWords
    from spoutline.explain.pack_phrases import pack_phrasebook_from_toml, pack_story
    from spoutline.ruletables.caution_signs import load_caution_signs
    from spoutline.ruletables.cautions import load_cautions
    from spoutline.ruletables.files import read_text

    resources = assets.resources_folder()
    path = resources / "pack" / f"{language}.toml"
    phrases = pack_phrasebook_from_toml(read_text(path), path.name)
    return PackWords(
        pack_story(phrases, display), load_cautions(resources, language.value), load_caution_signs(resources)
    )
