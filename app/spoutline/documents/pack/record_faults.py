"""What is wrong with a record, in words: readings, trials, fields asked again, signature and day."""

from __future__ import annotations

from collections.abc import Iterator

from spoutline.documents.pack.commissioning_form import limit_text
from spoutline.documents.pack.record_sheet import entered_text, unread_text
from spoutline.explain.pack.words import PackWord as Word
from spoutline.explain.plan.story import Story
from spoutline.model.record import CommissioningRecord, JudgedRecord, ReadingVerdict


def entry_faults(judged: JudgedRecord, story: Story) -> Iterator[str]:
    """Yield each reading out of its limit and each failed trial, then each field that is asked for again."""
    for one in judged.entries:
        if one.verdict is ReadingVerdict.OUTSIDE:
            limit = limit_text(one.item, story)
            shown = f"{entered_text(one, story)} ({limit})" if limit else entered_text(one, story)
            yield f"{story.writing.colon} ".join((story.word(one.item.id), shown, story.word(one.verdict)))
    for field in judged.record.unread:
        yield f"{story.word(Word.ASKED_AGAIN)}{story.writing.colon} {unread_text(field, story)}"


def paper_faults(record: CommissioningRecord, story: Story) -> Iterator[str]:
    """Yield what makes a form no record that anybody answers for: no signature, no day."""
    if not record.signed_by:
        yield story.word(Word.UNSIGNED)
    if record.done_on is None:
        yield story.word(Word.UNDATED)
