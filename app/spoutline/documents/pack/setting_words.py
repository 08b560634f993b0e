"""Texts that several of the installer's papers share."""

from __future__ import annotations

from spoutline.explain.plan.story import Story
from spoutline.model.limit import LimitStatus
from spoutline.model.liquid import Liquid
from spoutline.model.plan import PositionPlan, SitePlan
from spoutline.model.position_tag import PositionTag
from spoutline.model.survey import Position

# how tables that have no language of their own write a status inside a source
_WRITTEN_AS = {
    LimitStatus.COMMON_PRACTICE: "common practice, no source",
    LimitStatus.JUDGEMENT: "engineering judgement",
}
# and how they write the rest of a source that is no name or number
_PHRASE_OF = {
    "(title)": "source_title_only",
    "interval:": "source_interval",
    "makers' instructions": "source_makers",
    "decision in the survey": "source_decision",
}


def liquid_text(position: Position, story: Story) -> str:
    """Return the liquid of a position with its blend."""
    return story.liquid(Liquid(position.liquid.family, position.liquid.blend_percent))


def tag_of(plan: PositionPlan, site_plan: SitePlan) -> PositionTag:
    """Return the tag of a position's sheet."""
    return PositionTag(
        site=site_plan.survey.site.name,
        position=plan.position.label,
        revision=site_plan.provenance.survey_fingerprint,
    )


def written(source: str, story: Story) -> str:
    """Return a source with what is no name or number in the language of the paper."""
    for english, phrase in _PHRASE_OF.items():
        source = source.replace(english, story.phrases.text[phrase])
    return source


def sourced(source: str, status: LimitStatus, story: Story) -> str:
    """Return a source with its status in the language of the paper, unless the published text itself was read."""
    source = written(source, story)
    if status is LimitStatus.VERIFIED:
        return source
    word = story.word(status)
    for known in (LimitStatus.COMMON_PRACTICE, LimitStatus.JUDGEMENT):
        source = source.replace(_WRITTEN_AS[known], story.word(known))
    return source if word in source else f"{source} [{word}]"
