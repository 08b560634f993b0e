"""The installer's words for tests, and a site whose every caution applies."""

from __future__ import annotations

from functools import cache

from documents import plan_factory as factory
from spoutline import assets
from spoutline.bootstrap.phrase_tables import PhraseTables
from spoutline.documents.pack.content import PackWords
from spoutline.explain.plan.story import Story
from spoutline.model.language import Language
from spoutline.model.liquid import LiquidFamily
from spoutline.model.plan import PositionPlan
from spoutline.model.survey import SurveyLiquid
from spoutline.ruletables.caution_signs import load_caution_signs
from spoutline.ruletables.cautions import load_cautions
from spoutline.units.accepted import UnitSystem
from spoutline.units.display import Display


@cache
def words(language: Language = Language.ENGLISH, system: UnitSystem = UnitSystem.SI) -> PackWords:
    resources = assets.resources_folder()
    story = Story(PhraseTables(assets.resources_folder).pack(language), Display(system).written(language))
    return PackWords(story, load_cautions(resources, language.value), load_caution_signs(resources))


def every_kind_of_position() -> tuple[PositionPlan, ...]:
    """Return plans that together bring up every condition of the caution table but a reconnectable breakaway."""
    e85 = SurveyLiquid(family=LiquidFamily.GASOLINE, blend_percent=70)
    b100 = SurveyLiquid(family=LiquidFamily.DIESEL, blend_percent=100)
    positions = (
        factory.position("E", liquid=e85, overhead=True, hold_open_wanted=True),
        factory.position("B", liquid=b100, duty="marine"),
        factory.position("D", liquid=SurveyLiquid(family=LiquidFamily.DEF, blend_percent=0)),
        factory.position("V", vapour_today="balance", vapour_wanted="balance"),
        factory.vapour_removed_position(),
        factory.retractor_position(),
        factory.reel_position(),
    )
    return tuple(factory.fitting_plan(position) for position in positions)
