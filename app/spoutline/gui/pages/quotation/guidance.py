"""Where the quotation in hand stands and what can be done next, in words."""

from __future__ import annotations

from collections import Counter
from datetime import date

from spoutline.book.quotation_records import QuotationEntry, StoredQuotation
from spoutline.documents.quotation.figures import money
from spoutline.documents.quotation.margin_figures import in_coin
from spoutline.explain.phrases.quotation_words import QuotationWord as Word
from spoutline.explain.plan.story import Story
from spoutline.gui.local_days import day_text
from spoutline.gui.pages.quotation.in_hand import InHand
from spoutline.gui.roles import Tone
from spoutline.gui.wording import tr
from spoutline.model.quotation import Quotation
from spoutline.model.quotation_status import QuotationStatus


def status_words(hand: InHand, today: date, story: Story) -> str:
    """Return number, revision and status of what is shown."""
    made, stored = hand.quotation, hand.stored
    if made is None:
        return tr("No quotation yet")
    number = made.terms.heading.number
    if stored is None:
        return tr("{0}: not in the book yet").format(number)
    if hand.is_older:
        return tr("{0} r{1}: an older revision").format(number, hand.revision)
    ordered = f": {hand.ordered}" if hand.ordered else ""
    state = f"{story.word(stored.status)}{ordered}"
    words = tr("{0} r{1}: {2}").format(number, stored.revision, state)
    if not hand.is_kept:
        return words + " – " + tr("quoted again, not kept yet")
    if hand.is_over(today) and stored.status is not QuotationStatus.EXPIRED:
        return words + " – " + tr("its last day is over")
    return words


def status_tone(hand: InHand, today: date) -> Tone:
    """Return the mark beside the status."""
    if hand.is_older or hand.is_over(today):
        return Tone.CAUTION
    if not hand.is_kept:
        return Tone.NOTE
    tones = {QuotationStatus.ACCEPTED: Tone.GOOD, QuotationStatus.DECLINED: Tone.BAD}
    return tones.get(hand.status, Tone.NOTE) if hand.status is not None else Tone.NOTE


def next_words(hand: InHand, today: date, *, has_terms: bool, survey_changed: bool = False) -> str:
    """Return what a person can do next.

    ``has_terms`` tells whether terms are in hand, ``survey_changed`` whether the survey that is open is that of the
    quotation, changed since.
    """
    if hand.sent_before is not None:
        return number_words(hand.sent_before)
    words = _next_words(hand, today, has_terms=has_terms, survey_changed=survey_changed)
    return f"{tr('Revision {0} is ordered and stands as it is.').format(hand.order)} {words}" if hand.order else words


def _next_words(hand: InHand, today: date, *, has_terms: bool, survey_changed: bool) -> str:
    made, stored = hand.quotation, hand.stored
    if made is None and has_terms:
        return tr("Quote the survey that is open; or look a quotation up in the book.")
    if made is None:
        return tr("Take terms, then quote the survey; or look a quotation up in the book.")
    if hand.is_older:
        return (
            tr("To be read only. The papers are those that were sent.") if hand.was_issued else tr("To be read only.")
        )
    if not hand.is_kept:
        return _keeping(hand)
    if survey_changed and stored is not None and stored.status is not QuotationStatus.ACCEPTED:
        return tr("The survey has been changed since: quote this survey for that. Requoted, it stays as it was.")
    return _kept_words(stored, made, is_over=hand.is_over(today)) if stored is not None else ""


def number_words(other: QuotationEntry) -> str:
    """Return why no paper goes out under the number of a quotation, and what to do."""
    words = tr(
        "Another quotation was sent under the number {0}, to {1} for {2}. Give this one its own in its terms; no paper "
        "of it can be saved before."
    )
    return words.format(other.number, other.customer, other.site)


def gap_words(quotation: Quotation, story: Story) -> str:
    """Return how many prices block the issue, and why; empty where none does."""
    lines = {line.part: line for _, line in quotation.open_lines}
    if not lines:
        return ""
    reasons = Counter(story.word(line.gap or Word.NO_PRICE) for line in lines.values())
    told = "; ".join(reason for reason, _ in reasons.most_common())
    words = tr("{0} prices are missing") if len(lines) > 1 else tr("{0} price is missing")
    return f"{words.format(len(lines))}, {tr('which blocks the issue')}: {told}"


_MOST_LOW = 8  # lines told in a question, so that it stays readable


def low_texts(quotation: Quotation, story: Story) -> tuple[str, ...]:
    """Return the lines sold below cost or the least margin for which nobody has given a word, the first few of them."""
    terms, writing = quotation.terms, story.writing
    found = [
        f"{option.title}: {line.part_number}, {money(line.unit_price, terms.currency, writing)} "
        f"({story.word(Word.UNIT_COST)} {money(in_coin(line.cost, terms), terms.currency, writing)}), "
        f"{story.word(Word(low.value))}"
        for option, lines in quotation.unanswered_margins
        for line, low in lines
        if line.unit_price is not None and line.cost is not None
    ]
    more = tr("and {0} more").format(len(found) - _MOST_LOW)
    return (*found[:_MOST_LOW], more) if len(found) > _MOST_LOW else tuple(found)


def older_words(hand: InHand) -> str:
    """Return the mark of an older revision; empty for the newest."""
    if hand.older is None or hand.stored is None:
        return ""
    sent = next(
        (one for one in hand.events if one.revision == hand.older and one.status is QuotationStatus.ISSUED), None
    )
    newest = tr("the newest is revision {0}").format(hand.stored.revision)
    if sent is None:
        return tr("Revision {0}, never issued; {1}.").format(hand.older, newest)
    return tr("Revision {0} as it was sent on {1}; {2}.").format(
        hand.older, day_text(sent.at.astimezone().date()), newest
    )


def _keeping(hand: InHand) -> str:
    stored = hand.stored
    if stored is None:
        return tr("Save it in the book as a draft.")
    if stored.status is QuotationStatus.DRAFT:
        return tr("Save it: it takes the place of the draft in the book.")
    if stored.status is QuotationStatus.ACCEPTED:
        return tr("The order stands; kept, this becomes a quotation of its own. Give it another number in its terms.")
    return tr("Save it: revision {0} opens as a draft, what was sent stays.").format(stored.revision + 1)


def _kept_words(stored: StoredQuotation, made: Quotation, *, is_over: bool) -> str:  # noqa: PLR0911 - one line per status
    day = day_text(made.valid_to)
    match stored.status:
        case QuotationStatus.DRAFT if made.open_lines:
            return tr("Answer for the missing prices; then it can be issued.")
        case QuotationStatus.DRAFT if is_over:
            return tr("The offer ended on {0}: requote it before it is issued.").format(day)
        case QuotationStatus.DRAFT if made.unanswered_margins:
            return tr("Lines are sold below cost or the least margin: issuing it asks why. See Prices.")
        case QuotationStatus.DRAFT if made.unanswered_options:
            return tr("Options leave hoses out: issuing it asks why. Check the paper first.")
        case QuotationStatus.DRAFT:
            return tr("Check the paper, then issue it: its papers are kept as they are sent.")
        case QuotationStatus.ISSUED:
            return tr("It is valid through {0}. Note the customer's answer, or requote it.").format(day)
        case QuotationStatus.EXPIRED:
            words = tr("It expired after {0}. Requote it and keep it: revision {1} opens.")
            return words.format(day, stored.revision + 1)
        case QuotationStatus.DECLINED:
            return tr("Declined. Requote it and keep it: revision {0} opens.").format(stored.revision + 1)
        case QuotationStatus.ACCEPTED:
            words = tr("The order stands. What changes now needs a quotation of its own.")
            if made.offered_alternates:
                more = tr("An alternate that is taken opens revision {0} beside it.").format(stored.revision + 1)
                return f"{words} {more}"
            return words
