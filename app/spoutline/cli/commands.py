"""Every command of the command line: what it is called and does, and which module does it once it is asked for."""

from __future__ import annotations

from spoutline.cli.command import Command

COMMANDS: tuple[Command, ...] = (
    Command("plan", "plan every position of a survey and print the result", "plan"),
    Command("bill", "write the bill of a survey as PDF, HTML, CSV or XLSX", "bill"),
    Command("drawing", "write the drawing of a position as SVG or PNG, and tell it in words", "drawing"),
    Command("site", "plan a station together: positions, parts of the site, commonality", "site"),
    Command("pack", "write the installer's pack, form and inspection plan of a survey", "pack"),
    Command("record", "read filled forms; keep wear and inspections", "record"),
    Command("due", "list the inspections due at all stations of the book, overdue first", "due"),
    Command("stock", "keep the stock of van and store: count, take, what is short, what to order", "stock"),
    Command("swap", "find what of a stock list would do in place of a missing part", "swap"),
    Command("quote", "write the quotation of a survey: PDF, workbook, order lines, pick list", "quote"),
    Command("quotation", "the quotations in the book, from draft to answer", "quotation"),
    Command("customer", "keep the firm's customers, which quotations take theirs from", "customer"),
    Command("supplier", "keep how each supplier wants its order file, and write the files", "supplier"),
    Command("agree", "agree on the sets of a survey, or take the last agreement back", "agree", "AGREE"),
    Command("agreed", "print the sets agreed for a survey, their history and differences", "agree", "AGREED"),
    Command("convert", "plan the conversion of a site: report, sequence, emissions, money", "convert"),
    Command("programme", "rank the conversions of a folder of surveys over years", "programme"),
    Command("why", "say place by place why the parts of a position's set were chosen, or why it has none", "why"),
    Command(
        "measure", "say what to measure on site first: which verdicts rest on figures that nobody measured", "measure"
    ),
    Command("whynot", "say why a catalog part is not in a position's set", "whynot"),
    Command("whatif", "show what another answer would do to sets, checks, parts and money", "what_if"),
    Command("weigh", "show the sets that no other outdoes in price, lead time, flow and more", "weigh"),
    Command(
        "substitutes",
        "list every catalog part that could hang in a place of a position's set",
        "substitutes",
    ),
    Command(
        "catalogue",
        "keep the catalogs of the book; without an action, check prices against what parts of their kind cost",
        "catalog",
        also="catalog",
    ),
    Command(
        "dispenser-type",
        "keep the firm's types of dispensers, and choose them for the dispensers of a survey",
        "dispenser_type",
    ),
    Command("copy-answers", "give answers of one position of a survey to others", "copy_answers"),
    Command("import", "make a survey of a table, its faults told cell by cell", "table_import"),
    Command("schema", "print the JSON Schema of a survey", "schema"),
    Command(
        "profile",
        "jurisdictions: list, show, copy, change, compare, check, publish, export, import and remove them",
        "profile",
        also="rules",
    ),
    Command("book", "back the book up, restore and check it, print the roles of a shared one", "book"),
    Command("help", "read the manual: a page, words of the trade, the source of every rule, licenses", "manual"),
    Command("demo", "print a ready demo survey", "demo"),
)
