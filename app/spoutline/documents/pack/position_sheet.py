"""The sheet of one position: it stands alone at the island."""

from __future__ import annotations

from collections.abc import Iterator

from spoutline.documents.content.blocks import (
    Alignment,
    Block,
    Column,
    Columns,
    Figure,
    Heading,
    KeyValues,
    PageBreak,
    Paragraph,
    Role,
    Row,
    ScanCode,
    Table,
)
from spoutline.documents.drawing.position import position_drawing
from spoutline.documents.pack.exploded import exploded_drawing
from spoutline.documents.pack.setting_words import liquid_text, tag_of
from spoutline.documents.pack.site_checks import site_check_table
from spoutline.explain.pack.words import PackWord as Word
from spoutline.explain.plan.part_name import part_name
from spoutline.explain.plan.story import Story
from spoutline.explain.plan.texts import Named
from spoutline.model.finding import Verdict
from spoutline.model.part_ref import PartRef
from spoutline.model.plan import HangingSet, JudgedSet, PositionPlan, SetLink, SitePlan
from spoutline.model.quantity import Dimension
from spoutline.model.requirement import Slot
from spoutline.model.survey import VapourStatus
from spoutline.rules.chain.order import vehicle_side

_HOSES = (Slot.WHIP_HOSE, Slot.CURB_HOSE)
_ORIENTATIONS = {
    Slot.WHIP_HOSE: Word.ORIENTATION_OUTLET,
    Slot.CURB_HOSE: Word.ORIENTATION_WHIP,
    Slot.NOZZLE: Word.ORIENTATION_NOZZLE,
}
_HEAD_SHARE = 0.82
_DRAWING_SHARE = 0.46


def position_blocks(plan: PositionPlan, site_plan: SitePlan, story: Story) -> Iterator[Block]:
    """Return the sheet of a position, on a page of its own."""
    yield PageBreak()
    yield Heading(f"{story.word(Word.POSITION)} {plan.position.label}", 1)
    code = ScanCode(str(tag_of(plan, site_plan)), story.word(Word.SCAN))
    head = (KeyValues(tuple(_head_rows(plan, story))), *_warnings(plan, story))
    yield Columns(head, (code,), _HEAD_SHARE)
    if plan.chosen is None:
        return
    left = (*_assembly_blocks(plan.chosen, story), *_orientation_blocks(plan.chosen.hanging_set, story))
    right = (*_measure_blocks(plan, plan.chosen, story), *_removal_blocks(plan, story))
    yield Columns(left, right, _DRAWING_SHARE)
    yield from _parts_blocks(plan, plan.chosen.hanging_set, story)


def _head_rows(plan: PositionPlan, story: Story) -> Iterator[Named]:
    position = plan.position
    duty = f"{story.word(position.duty)}, {story.word(position.retrieval)}"
    yield Named(story.word(Word.DISPENSER), story.writing.listed((position.dispenser, duty)))
    liquid = liquid_text(position, story)
    listing = plan.requirement.listing_class if plan.requirement is not None else None
    yield Named(
        story.word(Word.LIQUID),
        story.writing.listed((liquid, f"{story.word(Word.LISTING_CLASS)} {listing}")) if listing else liquid,
    )
    today, wanted = position.vapour_today, position.vapour_wanted
    if (today, wanted) != (VapourStatus.NONE, VapourStatus.NONE):
        change = story.word(today) if today is wanted else f"{story.word(today)} → {story.word(wanted)}"
        yield Named(story.word(Word.VAPOUR), change)
    if position.notes.strip():
        yield Named(story.word(Word.NOTES), position.notes.strip())


def _warnings(plan: PositionPlan, story: Story) -> Iterator[Block]:
    """Return what must be settled before anything is fitted."""
    if plan.chosen is None:
        yield Paragraph(f"✗ {story.word(plan.status)}. {story.word(Word.NO_SET)}")
        return
    if not plan.keeps_every_must:
        broken = [story.word(check.id) for check in plan.chosen.checks if not check.passes]
        text = ", ".join(broken) or story.word(plan.status)
        yield Paragraph(f"✗ {story.phrases.fill('must_broken', checks=text)}")
    questions = sum(finding.verdict is Verdict.QUESTION for finding in plan.chosen.findings)
    if questions:
        yield Paragraph(story.phrases.fill("questions_open", count=questions), Role.NOTE)


def _assembly_blocks(judged: JudgedSet, story: Story) -> Iterator[Block]:
    yield Heading(story.word(Word.EXPLODED), 2)
    yield Figure(exploded_drawing(judged, story), story.word(Word.EXPLODED_NOTE))


def _measure_blocks(plan: PositionPlan, judged: JudgedSet, story: Story) -> Iterator[Block]:
    yield Heading(story.word(Word.DROOP), 2)
    drawing = position_drawing(plan, story, with_clearances=False)  # they stand in the table beside it
    hoses = ", ".join(
        story.phrases.fill(
            "hose_of", name=story.word(link.slot), length=story.show(link.part.length_m, Dimension.LENGTH)
        )
        for link in judged.hanging_set.links
        if link.slot in _HOSES
    )
    caption = " ".join((f"{story.word(Word.HOSE_LENGTHS)}{story.writing.colon} {hoses}.", *drawing.notes))
    yield Figure(drawing, caption, story.word(Word.SCALE))
    yield Heading(story.word(Word.ON_SITE), 2)
    yield site_check_table(judged, story)


def _parts_blocks(plan: PositionPlan, hanging_set: HangingSet, story: Story) -> Iterator[Block]:
    yield Heading(story.word(Word.PARTS), 2)
    columns = (
        Column(story.word(Word.NUMBER), 0.35),
        Column(story.word(Word.PLACE), 1.55),
        Column(story.word(Word.PART_NUMBER), 1.1),
        Column(story.word(Word.PART_NAME), 5.2),
        Column(story.word(Word.QUANTITY), 0.6, Alignment.RIGHT),
    )
    rows = [
        Row((str(number), story.word(link.slot), link.part.number, _described(link, story), "1"))
        for number, link in enumerate(hanging_set.links, start=1)
    ]
    for line in plan.accessories:
        part = line.part
        name = story.writing.listed((part_name(part, story), part.maker, story.accessory_reason(line.reason)))
        rows.append(Row(("", story.word(part.kind), part.number, name, str(line.quantity))))
    yield Table(columns, tuple(rows), dense=True)


def _described(link: SetLink, story: Story) -> str:
    stays = (story.word(Word.STAYS),) if link.kept else ()
    return story.writing.listed((part_name(link.part, story), link.part.maker, *stays))


def _removal_blocks(plan: PositionPlan, story: Story) -> Iterator[Block]:
    """Return what is taken off."""
    position = plan.position
    removed = f"{story.word(Word.REMOVED)}{story.writing.colon} {_removed(plan, story)}"
    if position.vapour_today is not VapourStatus.NONE and position.vapour_wanted is VapourStatus.NONE:
        removed = f"{removed}. {story.word(Word.VAPOUR_REMOVED)}"
    yield Paragraph(removed, Role.NOTE)


def _orientation_blocks(hanging_set: HangingSet, story: Story) -> Iterator[Block]:
    for number, link in enumerate(hanging_set.links, start=1):
        data = link.part.breakaway
        if data is None:
            continue
        toward = vehicle_side(hanging_set, number - 1)
        if toward is None:
            continue  # nothing hangs below it: the chain itself is refused elsewhere
        text = story.word(_ORIENTATIONS[hanging_set.links[toward].slot])
        window = story.window(data.separation_minimum_n, data.separation_maximum_n, Dimension.FORCE)
        head = f"{story.word(Word.ORIENTATION)} ({number})"
        yield Paragraph(f"{head}{story.writing.colon} {text} {story.word(Word.SEPARATES)} {window}.", Role.NOTE)


def _removed(plan: PositionPlan, story: Story) -> str:
    """Return what hangs there today, dispenser first; it is taken off where it does not stay in the new set."""
    links = plan.chosen.hanging_set.links if plan.chosen is not None else ()
    kept = [link.part.ref for link in links if link.kept]
    taken = []
    for item in plan.position.installed:
        named = item.ref or PartRef(item.description[:60])
        stays = next((ref for ref in kept if named.names(ref)), None)
        if stays is None:
            taken.append(f"{story.word(item.kind)} {item.ref or item.description}".strip())
        else:
            kept.remove(stays)
    if not plan.position.installed:
        return story.word(Word.REMOVED_NOT_RECORDED)
    return "; ".join(taken) or story.phrases.text["nothing"]
