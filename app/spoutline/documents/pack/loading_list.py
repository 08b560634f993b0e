"""What to load: the boxes of the van with the positions or the kits that their parts are for, tools and protection."""

from __future__ import annotations

import math
from collections.abc import Iterable, Iterator, Mapping, Sequence
from itertools import zip_longest

from spoutline.documents.content.blocks import (
    Alignment,
    Block,
    Column,
    Heading,
    PageBreak,
    Paragraph,
    Role,
    Row,
    Table,
)
from spoutline.documents.pack.cover import sets_text
from spoutline.documents.pack.make_up import SpareSeal, spare_seals
from spoutline.explain.pack.words import PackWord as Word
from spoutline.explain.plan.part_name import part_name
from spoutline.explain.plan.story import Story
from spoutline.model.pack import BoxList, Kit, PickLine
from spoutline.model.part_ref import told_apart
from spoutline.model.plan import SitePlan
from spoutline.model.port import Seal
from spoutline.model.quantity import Dimension
from spoutline.planning.pack.pick_list import kits_of, pick_list, tools_for
from spoutline.rules.work.job_conditions import job_conditions

_ABREAST = 2  # things of the checklist side by side
_TICK = "☐"
# Names of positions are read beside a part while they are few. Of more, those that take the same parts share a kit,
# where that leaves few kits to tell apart (common practice, no source)
_MOST_NAMED = 60
_LEAST_SHARED = 3  # positions to a kit, on average


def loading_blocks(site_plan: SitePlan, story: Story) -> Iterator[Block]:
    """Return the loading list box by box, the kits of a big station, then tools and protection."""
    yield PageBreak()
    yield Heading(story.word(Word.LOADING), 1)
    boxes = pick_list(site_plan)
    kits = _worth_packing(kits_of(boxes))
    kit_of = {label: number for number, kit in enumerate(kits, start=1) for label in kit.positions}
    yield Paragraph(
        "\n".join((sets_text(site_plan, story), " ".join(_notes(boxes, story, with_kits=bool(kits))))), Role.NOTE
    )
    columns = (
        Column(story.word(Word.QUANTITY), 0.65, Alignment.RIGHT),
        Column(story.word(Word.PART_NUMBER), 1.1),
        Column(story.word(Word.PART_NAME), 3.2),
        Column(story.word(Word.FOR_KITS if kits else Word.FOR_POSITIONS), 2.3),
        Column(story.word(Word.WEIGHT), 0.9, Alignment.RIGHT),
        Column(story.word(Word.LOADED), 0.7, Alignment.RIGHT),
    )
    for number, box in enumerate(boxes, start=1):  # numbered as loaded, so that no number is missed
        title = story.phrases.fill("box", number=number, contents=story.word(box.box))
        yield Heading(f"{title} ({_weight(box.lines, story)})", 2)
        yield Table(columns, tuple(_pick_row(line, kit_of, story) for line in box.lines))
    if kits:
        yield Heading(story.word(Word.KITS), 2)
        yield _kit_table(kits, story)
    yield Heading(story.word(Word.TOOLS), 2)
    tools = [story.title(tool) for tool in tools_for(job_conditions(site_plan))]
    spares = [_spare(one, story) for one in spare_seals(site_plan.positions)]
    yield _checklist((*spares, *tools), story)


def _worth_packing(kits: tuple[Kit, ...]) -> tuple[Kit, ...]:
    positions = sum(len(kit.positions) for kit in kits)
    return kits if positions > max(_MOST_NAMED, _LEAST_SHARED * len(kits)) else ()


def _mark(number: int) -> str:
    return f"K{number}"


def _notes(boxes: Iterable[BoxList], story: Story, *, with_kits: bool) -> Iterator[str]:
    yield story.word(Word.LOADING_NOTE)
    if with_kits:
        yield story.word(Word.KITS_NOTE)
    elif any(count > 1 for box in boxes for line in box.lines for _, count in line.positions):
        yield story.word(Word.LOADING_COUNTS)


def _kit_table(kits: Sequence[Kit], story: Story) -> Table:
    columns = (
        Column(story.word(Word.KIT), 0.5),
        Column(story.word(Word.QUANTITY), 0.65, Alignment.RIGHT),
        Column(story.word(Word.WHAT), 2.3),
        Column(story.word(Word.FOR_POSITIONS), 4.7),
        Column(story.word(Word.DONE), 0.7, Alignment.RIGHT),
    )
    rows = []
    every = [part.ref for kit in kits for part, _ in kit.parts]
    for number, kit in enumerate(kits, start=1):
        names = told_apart((part.ref for part, _ in kit.parts), every)
        parts = ", ".join(_each(name, count, story) for name, (_, count) in zip(names, kit.parts, strict=True))
        rows.append(Row((_mark(number), str(len(kit.positions)), parts, ", ".join(kit.positions), _TICK)))
    return Table(columns, tuple(rows))


def _checklist(things: Sequence[str], story: Story) -> Table:
    """Return things to tick off when they are loaded, two in a row, read down the columns."""
    pair = (Column(story.word(Word.WHAT), 3.4), Column(story.word(Word.LOADED), 0.7, Alignment.RIGHT))
    deep = math.ceil(len(things) / _ABREAST)
    columns = [things[at : at + deep] for at in range(0, len(things), deep)]
    ticked = ([(thing, _TICK) if thing else ("", "") for thing in row] for row in zip_longest(*columns, fillvalue=""))
    rows = (Row(tuple(cell for entry in row for cell in entry)) for row in ticked)
    return Table(pair * len(columns), tuple(rows), dense=True, whole=True)


def _weight(lines: Iterable[PickLine], story: Story) -> str:
    return story.display.reading(math.fsum(line.part.mass_kg * line.quantity for line in lines), Dimension.MASS)


def _spare(spare: SpareSeal, story: Story) -> str:
    seal = story.title(Word.O_RING if spare.seal is Seal.O_RING else Word.GASKET)
    return story.phrases.fill("spare_seals", seal=seal, size=spare.thread_text(story), count=spare.count)


def _pick_row(line: PickLine, kit_of: Mapping[str, int], story: Story) -> Row:
    if kit_of:  # positions of a kit take the same number of a part, so that the kit is named once
        of_kits = {kit_of[label]: count for label, count in line.positions}
        places = [_each(_mark(number), count, story) for number, count in sorted(of_kits.items())]
    else:
        places = [_each(label, count, story) for label, count in line.positions]
    part = line.part
    return Row(
        (
            str(line.quantity),
            part.number,
            story.writing.listed((part_name(part, story), part.maker)),
            ", ".join(places),
            _weight((line,), story),
            _TICK,
        )
    )


def _each(name: str, count: int, story: Story) -> str:
    return name if count == 1 else story.phrases.fill("each_for", position=name, count=count)
