"""The list of quotations tells totals and margins: those of the documents, for quotations of older books too."""

from __future__ import annotations

import sqlite3
from contextlib import closing
from pathlib import Path

from planning.quoting_terms import DAY
from spoutline.bootstrap import Settings, open_workbench
from spoutline.model.margin import percent_of
from spoutline.model.quotation_status import QuotationStatus
from stores.quotation_life import SI, quoted

_COLUMNS = ("dated", "currency", "total_low", "total_high", "margin_low", "margin_high")
_LATER_COLUMNS = ("follow_up",)
_TERMS = {
    "buying": [{"percent": 25}],
    "selling": {"percent": 10},
    "labour": {"hourly_rate": "80", "tasks": [{"title": "Exchange", "hours": "0.5"}]},
    "options": [
        {"title": "Single-use", "breakaway": "single_use"},
        {"title": "Reconnectable", "breakaway": "reconnectable"},
    ],
}


def test_the_list_tells_the_range_of_the_options_and_after_the_order_the_one_ordered(own_database: Path) -> None:
    bench = open_workbench(Settings(database=str(own_database)))
    service = bench.quoting()
    made = quoted(bench, **_TERMS)
    draft = service.life().keep(made, "Odile")
    (entry,) = service.life().quotations()
    totals = sorted(one.total for one in made.options)
    margins = sorted(percent_of(one.margin) or 0 for one in made.options)
    assert totals[0] < totals[1]
    assert (entry.total_low, entry.total_high) == (totals[0], totals[1])
    assert (entry.margin_low, entry.margin_high) == (margins[0], margins[1])
    assert (entry.dated, entry.currency) == (DAY, "USD")
    # bought at 75, sold at 90 of 100: 16.67 % but for prices rounded to the cent
    assert all(abs(float(one) - 16.67) < 0.05 for one in margins)
    issued = service.life().issue(draft, "Odile", SI)
    service.life().answer(issued, QuotationStatus.ACCEPTED, "Odile", "", "Reconnectable")
    (ordered,) = service.life().quotations()
    assert ordered.total_low == ordered.total_high == made.options[1].total
    sent = service.life().issued_papers(issued.id, 1)
    service.life().keep(quoted(bench, heading={"number": "HS-2", "dated": DAY}))
    before = service.life().quotations()
    assert before[0].margin_low is None, "no buying terms: no cost is known"
    bench.close()

    with closing(sqlite3.connect(own_database)) as raw, raw:
        raw.execute("UPDATE book_version SET version_num = 'book_0009'")
        for table in ("stock_entries", "stock_levels"):
            raw.execute(f"DROP TABLE {table}")
        for name in (*_COLUMNS, *_LATER_COLUMNS):
            raw.execute(f"ALTER TABLE quotations DROP COLUMN {name}")
        raw.execute("ALTER TABLE quotation_revisions DROP COLUMN html")
        raw.execute("DROP TABLE supplier_layouts")
        broken = "INSERT INTO quotation_revisions (quotation_id, revision, document) VALUES (99, 1, '{}')"
        columns = "id, number, customer, site, search_text, status, revision, version, valid_to, created_at, changed_at"
        values = "99, 'OLD', 'x', 'y', '', 'draft', 1, 1, '2020-01-01', '2020-01-01', '2020-01-01'"
        raw.execute(f"INSERT INTO quotations ({columns}) VALUES ({values})")
        raw.execute(broken)
    again = open_workbench(Settings(database=str(own_database)))
    *healed, unread = again.quoting().life().quotations()
    assert tuple(healed) == before
    assert (unread.number, unread.total_low, unread.dated) == ("OLD", None, None)
    # a book of before kept no HTML paper: it is made from the revision where it is wanted
    kept = again.quoting().life().issued_papers(issued.id, 1)
    assert (kept.pdf, kept.workbook, kept.html) == (sent.pdf, sent.workbook, b"")
    assert again.quoting().life().issued_html(issued.id, 1, SI) == sent.html
    again.close()
