"""The sheet of one position: it stands alone at the island."""

from __future__ import annotations

from collections.abc import Iterator

from spoutline.documents.content.blocks import (
    Alignment,
    Block,
    Bullets,
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
from spoutline.documents.pack.make_up import make_up_text, spare_seals
from spoutline.documents.pack.setting_words import liquid_text, tag_of
from spoutline.documents.pack.site_checks import site_check_table
from spoutline.explain.pack.open_points import broken_names, no_set_reasons, question_texts
from spoutline.explain.pack.words import PackWord as Word
from spoutline.explain.plan.part_name import part_name
from spoutline.explain.plan.story import Story, mark_of
from spoutline.explain.plan.texts import Named
from spoutline.model.finding import Severity
from spoutline.model.part import Part
from spoutline.model.part_ref import PartRef, told_apart
from spoutline.model.plan import HangingSet, JudgedSet, PositionPlan, SetLink, SitePlan
from spoutline.model.port import Seal
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
_SPARES = {Seal.O_RING: Word.O_RING, Seal.FLAT_GASKET: Word.GASKET}
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
    left, right = tuple(_assembly_blocks(plan.chosen, story)), tuple(_measure_blocks(plan, plan.chosen, story))
    yield Columns(left, right, _DRAWING_SHARE)
    notes = (
        make_up_text(plan, plan.chosen, story),
        *_orientations(plan.chosen.hanging_set, story),
        _removal(plan, story),
    )
    yield Paragraph("\n".join(filter(None, notes)), Role.NOTE)
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
        yield Paragraph(f"{mark_of(plan)} {story.sentence(story.word(plan.status))}. {story.word(Word.NO_SET)}")
        yield Bullets(tuple(no_set_reasons(plan, story)))
        return
    if not plan.keeps_every_must:
        text = ", ".join(broken_names(plan, Severity.MUST, story)) or story.word(plan.status)
        yield Paragraph(f"✗ {story.phrases.fill('must_broken', checks=text)}")
    texts = []
    lacking = ", ".join(broken_names(plan, Severity.SHOULD, story))
    if lacking:
        texts.append(story.phrases.fill("good_practice_open", lines=lacking))
    questions = question_texts(plan, story)
    if questions:
        texts.append(f"{story.phrases.fill('questions_open', count=len(questions))} {'; '.join(questions)}.")
    if texts:
        yield Paragraph(" ".join(texts), Role.NOTE)


def _assembly_blocks(judged: JudgedSet, story: Story) -> Iterator[Block]:
    yield Heading(story.word(Word.EXPLODED), 2)
    yield Figure(exploded_drawing(judged, story), story.word(Word.EXPLODED_NOTE))


def _measure_blocks(plan: PositionPlan, judged: JudgedSet, story: Story) -> Iterator[Block]:
    yield Heading(story.word(Word.DROOP), 2)
    drawing = position_drawing(plan, story, with_clearances=False)  # they stand in the table beside it
    hoses = ", ".join(
        story.phrases.fill(
            "hose_of", name=story.word(link.slot), length=story.display.reading(link.part.length_m, Dimension.LENGTH)
        )
        for link in judged.hanging_set.links
        if link.slot in _HOSES
    )
    caption = " ".join((f"{story.word(Word.HOSE_LENGTHS)}{story.writing.colon} {hoses}.", *drawing.notes))
    yield Figure(drawing, caption, story.word(Word.SCALE))
    yield Heading(story.word(Word.ON_SITE), 2)
    yield site_check_table(plan, judged, story)


def _parts_blocks(plan: PositionPlan, hanging_set: HangingSet, story: Story) -> Iterator[Block]:
    yield Heading(story.word(Word.PARTS), 2)
    columns = (
        Column(story.word(Word.NUMBER), 0.35),
        Column(story.word(Word.PLACE), 1.75),
        Column(story.word(Word.PART_NUMBER), 1.3),
        Column(story.word(Word.PART_NAME), 5.6),
        Column(story.word(Word.WEIGHT), 0.95, Alignment.RIGHT),
        Column(story.word(Word.QUANTITY), 0.7, Alignment.RIGHT),
    )
    shown = told_apart(hanging_set.refs)
    rows = [
        Row(
            (
                str(number),
                story.word(link.slot),
                shown[number - 1],
                _described(link, story),
                _weight(link.part, 1, story),
                "1",
            )
        )
        for number, link in enumerate(hanging_set.links, start=1)
    ]
    for spare in spare_seals((plan,)):
        seal = story.word(_SPARES[spare.seal])
        rows.append(Row(("", seal, "–", f"{story.word(Word.SPARE)}; {spare.thread_text(story)}", "", str(spare.count))))
    for line in plan.accessories:
        part = line.part
        name = story.writing.listed((part_name(part, story), story.accessory_reason(line.reason)))
        rows.append(
            Row(("", story.word(part.kind), part.number, name, _weight(part, line.quantity, story), str(line.quantity)))
        )
    yield Table(columns, tuple(rows), dense=True)


def _weight(part: Part, quantity: int, story: Story) -> str:
    return story.display.reading(part.mass_kg * quantity, Dimension.MASS)


def _described(link: SetLink, story: Story) -> str:
    """Return a part in words; its maker stands on the loading list."""
    stays = (story.word(Word.STAYS),) if link.kept else ()
    return story.writing.listed((part_name(link.part, story), *stays))


def _removal(plan: PositionPlan, story: Story) -> str:
    """Return what is taken off."""
    position = plan.position
    removed = f"{story.word(Word.REMOVED)}{story.writing.colon} {_removed(plan, story)}"
    if position.vapour_today is not VapourStatus.NONE and position.vapour_wanted is VapourStatus.NONE:
        removed = f"{removed.rstrip('.')}. {story.word(Word.VAPOUR_REMOVED)}"
    return removed


def _orientations(hanging_set: HangingSet, story: Story) -> Iterator[str]:
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
        yield f"{head}{story.writing.colon} {text} {story.word(Word.SEPARATES)} {window}."


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
