"""An alternate taken by the shell in one step: seen in money, kept in the survey, quoted as the next revision.

A person's prices make the difference: four breakaways at 95.50 instead of 40.00 come to 222.00 more.
"""

from __future__ import annotations

import csv
import io
import json
from decimal import Decimal
from pathlib import Path

import pytest

from program_runs import Run
from short_terms import short_terms
from spoutline.bootstrap import Settings, open_workbench
from spoutline.bootstrap.demos import demo_survey
from spoutline.model.answered import answered_document, assumptions, same_answers

MORE = """
[[overrides]]
part = "LS-B101"
unit_price = 40.00
by = "Odile"
reason = "agreed"
[[overrides]]
part = "QW-B101"
unit_price = 95.50
by = "Odile"
reason = "agreed"
[[alternates]]
part = "LS-B101"
by = "QW-B101"
note = "goes together again after a pull"
[[options]]
title = "Only"
"""


@pytest.fixture
def run(own_run: Run) -> Run:
    Path("survey.json").write_text(demo_survey("small_town").model_dump_json(round_trip=True))
    Path("terms.toml").write_text(short_terms("TA-1", MORE))

    own_run("quotation", "keep", "survey.json", "--terms", "terms.toml", "--by", "R. Example")
    return own_run


def kept(run: Run) -> tuple[int, str, Decimal]:
    (one,) = json.loads(run("quotation", "list", "--json"))["quotations"]
    return one["revision"], one["status"], Decimal(one["total_low"])


def test_the_money_is_told_first_and_nothing_is_kept(run: Run) -> None:
    before = kept(run)
    told = json.loads(run("quotation", "alternate", "TA-1", "QW-B101", "--preview", "--json"))
    (option,) = told["options"]
    assert Decimal(option["total"]["difference"]) == Decimal("222.00")
    changed = {line["part_number"]: (line["pieces_before"], line["pieces_after"]) for line in option["lines"]}
    assert changed == {"LS-B101": (4, 0), "QW-B101": (0, 4)}
    assert kept(run) == before
    assert "+222.00" in run("quotation", "alternate", "TA-1", "QW-B101", "--preview")


def test_one_step_pins_the_part_and_opens_the_next_revision(run: Run) -> None:
    run("quotation", "issue", "TA-1", "--by", "Odile")
    _, _, total = kept(run)
    run("quotation", "alternate", "TA-1", "QW-B101", "--by", "Odile")
    assert kept(run) == (2, "draft", total + Decimal("222.00"))
    changes = run("quotation", "changes", "TA-1", 1, 2)
    assert "Wishes · Part asked for" in changes
    assert "QW-B101" in changes
    again = run("quotation", "alternate", "TA-1", "QW-B101", expect=2)
    assert "offers none" in again  # it is a line of its own now


def test_a_draft_is_saved_over(run: Run) -> None:
    run("quotation", "alternate", "TA-1", "QW-B101", "--by", "Odile")
    assert kept(run)[:2] == (1, "draft")


def test_an_order_stands_and_the_alternate_opens_the_next_revision_beside_it(run: Run) -> None:
    run("quotation", "issue", "TA-1", "--by", "Odile")
    run("quotation", "answer", "TA-1", "accepted", "--by", "Odile")
    before = kept(run)
    run("quotation", "print", "TA-1", "--revision", 1, "--pdf", "ordered.pdf")
    assert "+222.00" in run("quotation", "alternate", "TA-1", "QW-B101", "--preview")
    assert kept(run) == before
    assert "revision 1 is ordered and stands" in run("quotation", "alternate", "TA-1", "QW-B101", "--by", "Odile")
    assert kept(run) == (2, "draft", before[2] + Decimal("222.00"))
    # what was ordered is byte for byte what it was, and it is what suppliers are asked for
    run("quotation", "print", "TA-1", "--revision", 1, "--pdf", "again.pdf")
    assert Path("again.pdf").read_bytes() == Path("ordered.pdf").read_bytes()
    assert ordered_parts(run) >= {"LS-B101"}
    for sets in ((), ("--sets", "quotation:TA-1")):  # what was ordered is agreed, and is what its papers show
        assert ("LS-B101" in hung(run, *sets), "QW-B101" in hung(run, *sets)) == (True, False)
    run("quotation", "issue", "TA-1", "--by", "Odile")
    told = run("quotation", "answer", "TA-1", "declined", "--by", "Odile", "--note", "too dear")
    assert "revision 1 is ordered and stands" in told
    assert "QW-B101" not in ordered_parts(run)


def test_the_customer_orders_the_alternate_too(run: Run) -> None:
    for part in ("", "QW-B101"):
        if part:
            run("quotation", "alternate", "TA-1", part, "--by", "Odile")
        run("quotation", "issue", "TA-1", "--by", "Odile")
        told = run("quotation", "answer", "TA-1", "accepted", "--by", "Odile")
        assert "stands as it is" not in told
    assert kept(run)[:2] == (2, "accepted")
    assert {"QW-B101"} <= ordered_parts(run)
    assert "LS-B101" not in ordered_parts(run)
    assert "order stands" in run("quotation", "revise", "TA-1", "survey.json", "--terms", "terms.toml", expect=2)


def hung(run: Run, *sets: str) -> set[str]:
    run("bill", "survey.json", *sets, "--csv", "hung.csv", "--force")
    rows = csv.DictReader(io.StringIO(Path("hung.csv").read_text(encoding="utf-8-sig")))
    return {row["Part number"] for row in rows}


def ordered_parts(run: Run) -> set[str]:
    document = json.loads(run("supplier", "orders", "TA-1", "--json"))
    return {cell for one in document["suppliers"] for row in one["rows"] for cell in row}


def test_what_is_not_offered_is_told_with_what_is(run: Run) -> None:
    assert "QW-B101" in run("quotation", "alternate", "TA-1", "QW-N143", expect=2)


def test_the_survey_of_the_book_keeps_what_nobody_answered_and_what_was_answered_since(
    run: Run, own_database: Path
) -> None:
    """The quotation holds the survey as it was; the usual value is confirmed at one position after that."""
    bench = open_workbench(Settings(database=str(own_database)))
    try:
        book = bench.book()
        survey = demo_survey("small_town")
        stored = book.create(survey)
        numbered = survey.model_copy(update={"survey_id": stored.id})
        Path("survey.json").write_text(json.dumps(answered_document(numbered)))
        Path("own.toml").write_text(short_terms("TA-2", MORE))
        run("quotation", "keep", "survey.json", "--terms", "own.toml", "--by", "Odile")
        pinned = bench.quoting().life().stored(2).quotation.pins
        assert (pinned.survey_id, pinned.survey_revision) == (stored.id, stored.revision)
        assert same_answers(pinned.survey, survey)

        first, *others = survey.positions
        confirmed = survey.model_copy(
            update={"positions": (first.model_copy(update={"overhead": first.overhead}), *others)}
        )
        assert confirmed == survey
        assert not same_answers(confirmed, survey)
        book.save(book.stored(stored.id), confirmed)
        run("quotation", "alternate", "TA-2", "QW-B101", "--by", "Odile")

        kept, quoted = book.stored(stored.id), bench.quoting().life().stored(2).quotation.pins
        assert any(one.decisions.pinned for one in kept.survey.positions)
        assert [assumptions(one) for one in kept.survey.positions] == [assumptions(one) for one in confirmed.positions]
        assert quoted.survey_revision == kept.revision
        assert same_answers(quoted.survey, kept.survey)
    finally:
        bench.close()


def test_an_alternate_is_taken_in_an_option_that_wishes_for_other_parts(own_run: Run) -> None:
    """What the customer asks for stands before the wish of the option: four pieces at 55.50 more, no hose lost."""
    Path("survey.json").write_text(demo_survey("small_town").model_dump_json(round_trip=True))
    Path("terms.toml").write_text(short_terms("TA-1", f'{MORE}breakaway = "single_use"\n'))
    own_run("quotation", "keep", "survey.json", "--terms", "terms.toml", "--by", "R. Example")
    told = json.loads(own_run("quotation", "alternate", "TA-1", "QW-B101", "--preview", "--json"))
    (option,) = told["options"]
    changed = {line["part_number"]: (line["pieces_before"], line["pieces_after"]) for line in option["lines"]}
    assert changed == {"LS-B101": (4, 0), "QW-B101": (0, 4)}
    assert Decimal(option["total"]["difference"]) == Decimal("222.00")
