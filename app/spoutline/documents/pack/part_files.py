"""Pictures and documents of the parts that a pack is about, each part once, however many positions have it."""

from __future__ import annotations

from collections.abc import Iterator

from spoutline.documents.content.blocks import Block, Bullets, Heading, PageBreak, Picture, PictureRow
from spoutline.explain.pack.words import PackWord as Word
from spoutline.explain.plan.story import Story
from spoutline.model.part_ref import told_apart
from spoutline.model.plan import SitePlan
from spoutline.model.shown_files import FilesOfParts

_IN_A_ROW = 3


def file_blocks(site_plan: SitePlan, files: FilesOfParts, story: Story) -> Iterator[Block]:
    """Return the pictures of the parts, three in a row, and the names of their documents; nothing for none."""
    chosen = (plan.chosen.hanging_set.refs for plan in site_plan.positions if plan.chosen is not None)
    refs = tuple(dict.fromkeys(ref for set_refs in chosen for ref in set_refs))
    held = [(number, one) for ref, number in zip(refs, told_apart(refs), strict=True) for one in files.get(ref, ())]
    if not held:
        return
    yield PageBreak()
    yield Heading(story.word(Word.FILES), 1)
    pictures = [
        Picture(one.content, f"{number}{story.writing.colon} {one.file.title}")
        for number, one in held
        if one.content is not None
    ]
    for at in range(0, len(pictures), _IN_A_ROW):
        yield PictureRow(tuple(pictures[at : at + _IN_A_ROW]))
    documents = tuple(
        f"{number}{story.writing.colon} {one.file.title} ({story.word(one.file.matter)})"
        for number, one in held
        if one.content is None
    )
    if documents:
        yield Bullets(documents)
