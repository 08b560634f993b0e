"""Terms of a quotation as text: exact both ways, complete in themselves, and with a person's own comments kept.

Expected values are the terms that go in; what a text means is read back with the standard library's own TOML reader
(TOML 1.0.0, https://toml.io/en/v1.0.0: escapes and line breaks of strings, order of keys and tables).
"""

from __future__ import annotations

import tomllib
from datetime import date
from decimal import Decimal
from pathlib import Path

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from examples import up_to
from spoutline import assets
from spoutline.book.terms_text import read_terms, usual_from_toml
from spoutline.book.terms_writing import terms_to_toml, usual_to_toml
from spoutline.model.charge import Charge, Per
from spoutline.model.faults import InputFault
from spoutline.model.part import PartKind
from spoutline.model.quotation_terms import (
    BreakawayWish,
    FreightMethod,
    HoseWish,
    RoundingMode,
    SellingMethod,
    TaxRounding,
    Terms,
)
from spoutline.model.usual_terms import UsualTerms
from stores.terms_in_hand import shared_of, terms_from_toml

JOB = """
[seller]
name = "Hedgerow Supply"
[customer]
name = "Hollow Ford Fuels"
[heading]
number = "HS-1"
dated = 2026-11-25
"""

# lone surrogates are no characters of a text; everything else a person can paste is
nasty = st.text(
    st.one_of(st.sampled_from("\"'\\\n\r\t\0\x7f#=[]{},.é\u2028\ufeff😀"), st.characters(exclude_categories=("Cs",))),
    max_size=60,
)
label = nasty.map(str.strip).filter(bool)
day = st.dates(date(2000, 1, 1), date(2099, 12, 31))
kinds = st.sampled_from(list(PartKind))


def decimals(most: int, places: int = 4) -> st.SearchStrategy[Decimal]:
    return st.decimals(0, most, places=places).map(lambda value: value.normalize()) | st.decimals(0, most, places=2)


percent = decimals(99)


def rows(
    fields: dict[str, st.SearchStrategy[object]], unique: str = "", most: int = 3
) -> st.SearchStrategy[list[dict[str, object]]]:
    one = st.fixed_dictionaries(fields)
    return st.lists(one, max_size=most, unique_by=(lambda row: row[unique]) if unique else None)


party = {
    "name": label,
    "address": nasty,
    "contact": nasty,
    "telephone": nasty,
    "email": nasty,
    "registration": nasty,
}
documents = st.fixed_dictionaries(
    {
        "seller": st.fixed_dictionaries({**party, "logo": nasty}),
        "customer": st.fixed_dictionaries(party),
        "heading": st.fixed_dictionaries(
            {
                "number": label,
                "title": label,
                "dated": day,
                "valid_days": st.integers(1, 730),
                "scope": nasty,
                "exclusions": st.lists(nasty, max_size=3),
                "conditions": nasty,
            }
        ),
    },
    optional={
        "currency": st.sampled_from(["USD", "EUR"]),
        "rounding": st.fixed_dictionaries(
            {
                "mode": st.sampled_from(list(RoundingMode)),
                "unit_step": decimals(5).filter(bool),
                "tax": st.sampled_from(list(TaxRounding)),
            }
        ),
        "exchange": rows(
            {
                "currency": st.sampled_from(["EUR", "GBP", "CAD"]),
                "rate": decimals(9, 9).filter(bool),
                "dated": day,
                "source": label,
            },
            "currency",
        ),
        "buying": rows({"maker": nasty, "group": nasty, "percent": percent}),
        "selling": st.fixed_dictionaries(
            {
                "method": st.sampled_from(list(SellingMethod)),
                "percent": percent,
                "exceptions": rows({"kind": kinds, "group": nasty, "percent": percent}),
            }
        ),
        "freight": st.fixed_dictionaries({"method": st.sampled_from(list(FreightMethod)), "amount": decimals(10**6)}),
        "labour": st.fixed_dictionaries(
            {
                "hourly_rate": decimals(500),
                "tasks": rows(
                    {
                        "title": label,
                        "per": st.sampled_from(list(Per)),
                        "hours": decimals(99),
                        "kinds": st.lists(kinds, max_size=3),
                    }
                ),
            }
        ),
        "taxes": rows({"name": label, "percent": percent, "on": st.lists(st.sampled_from(list(Charge)), unique=True)}),
        "spares": rows({"kind": kinds, "percent": percent}, "kind"),
        "consumables": st.fixed_dictionaries({"sealant_joints": st.none() | st.integers(1, 10_000)}),
        "stock_price": decimals(500),
        "service_lives": st.just([{"kind": "curb_hose", "years": Decimal("3.5")}]),
        "yearly": st.fixed_dictionaries(
            {"liquid_price": decimals(99), "liquid_unit": st.sampled_from(["gallon", "liter"])},
            optional={"interest_percent": decimals(9)},
        ),
        "drive_offs": st.fixed_dictionaries({"per_position_year": decimals(9), "years": st.integers(1, 30)}),
        "options": rows(
            {
                "title": label,
                "breakaway": st.sampled_from(list(BreakawayWish)),
                "hose": st.sampled_from(list(HoseWish)),
            },
            "title",
            4,
        ).filter(bool),
        "overrides": rows(
            {"part": label, "unit_price": st.none() | decimals(999), "by": label, "reason": nasty}, "part"
        ),
    },
)


def kept_unique(document: dict[str, object]) -> Terms | None:
    """Return the terms; None where two labels are one after the model has stripped them."""
    try:
        return Terms.model_validate(document)
    except ValueError:
        return None


any_terms = documents.map(kept_unique).filter(lambda terms: terms is not None)


@settings(max_examples=up_to(60), deadline=None)
@given(any_terms, any_terms)
def test_terms_written_and_read_are_the_same_terms(terms: Terms, others: Terms) -> None:
    fresh = terms_to_toml(terms)
    assert terms_from_toml(fresh, "text") == terms
    assert terms_from_toml(terms_to_toml(terms, over=terms_to_toml(others)), "text") == terms
    usual = shared_of(terms)
    assert usual_from_toml(usual_to_toml(usual), "text") == usual
    assert usual_from_toml(usual_to_toml(usual, over=usual_to_toml(shared_of(others))), "text") == usual


def test_decimals_keep_every_digit_and_their_zeros() -> None:
    job = JOB + "[freight]\namount = 123456789.987654320\n[labour]\nhourly_rate = 88.00\n"
    text = terms_to_toml(terms_from_toml(job, "job"))
    assert "amount = 123456789.987654320" in text
    assert "hourly_rate = 88.00" in text
    assert "dated = 2026-11-25" in text


@pytest.mark.parametrize("typed", ["0E+3", "1E+3", "-0", "1e-7"])
def test_numbers_that_toml_does_not_know_are_written_out(typed: str) -> None:
    terms = terms_from_toml(JOB, "job").model_copy(update={"stock_price": Decimal(typed)})
    assert terms_from_toml(terms_to_toml(terms), "text").stock_price == Decimal(typed)


def test_what_is_as_without_a_word_is_left_out_and_the_order_is_always_the_same() -> None:
    table = tomllib.loads(terms_to_toml(terms_from_toml(JOB, "job")))
    assert set(table) == {"complete", "format", "version", "currency", "seller", "customer", "heading", "options"}
    assert table["seller"] == {"name": "Hedgerow Supply"}
    ready = (assets.resources_folder() / "terms" / "refit.toml").read_text(encoding="utf-8")
    text = terms_to_toml(terms_from_toml(ready, "ready"))
    heads = [line for line in text.splitlines() if line.startswith("[")]
    first = list(dict.fromkeys(head.strip("[]").split(".")[0] for head in heads))
    assert first == [name for name in Terms.model_fields if name in first]
    assert text == terms_to_toml(terms_from_toml(text, "text"))


def test_a_written_file_does_not_take_from_the_usual_terms(tmp_path: Path) -> None:
    usual = tmp_path / "usual_terms.toml"
    usual.write_text('stock_price = 35\n[[taxes]]\nname = "Sales tax"\npercent = 6\n[labour]\nhourly_rate = 50\n')
    job = tmp_path / "job.toml"
    job.write_text(JOB)
    assert read_terms(job, usual).labour.hourly_rate == 50
    untaxed = read_terms(job, usual).model_copy(update={"taxes": (), "stock_price": None})
    job.write_text(terms_to_toml(untaxed, over=job.read_text()))
    assert read_terms(job, usual) == untaxed


def test_the_usual_heading_stands_field_by_field(tmp_path: Path) -> None:
    usual = tmp_path / "usual_terms.toml"
    usual.write_text('[heading]\nconditions = "Payment 30 days net."\nvalid_days = 45\nprepared_by = "Odile"\n')
    job = tmp_path / "job.toml"
    job.write_text(JOB + "valid_days = 10\n")
    heading = read_terms(job, usual).heading
    assert (heading.number, heading.conditions, heading.valid_days) == ("HS-1", "Payment 30 days net.", 10)
    assert heading.prepared_by == "Odile"


def test_every_other_table_is_the_jobs_alone(tmp_path: Path) -> None:
    usual = tmp_path / "usual_terms.toml"
    usual.write_text('[seller]\nname = "Usual Supply"\ntelephone = "555-0100"\n')
    job = tmp_path / "job.toml"
    job.write_text(JOB)
    assert read_terms(job, usual).seller.telephone == ""


OWN = """# Hedgerow's own file
currency = "EUR" # we quote abroad

[seller]
name = "Hedgerow Supply" # as in the register
[customer]
name = "Hollow Ford Fuels"
[heading]
number = "HS-1" # counts up
dated = 2026-11-25

# the long one
[labour]
hourly_rate = 88.00 # since spring
[[labour.tasks]]
title = "Journey" # there and back
per = "site"
hours = 4
[[labour.tasks]]
# the careful part
title = "Leak test"
hours = 0.25
[[taxes]]
name = "Sales tax"
percent = 6 # raised
"""


def test_comments_of_a_file_survive_where_the_values_did_not_change() -> None:
    terms = terms_from_toml(OWN, "own")
    tasks = terms.labour.tasks
    longer = tasks[1].model_copy(update={"hours": Decimal("0.5")})
    labour = terms.labour.model_copy(update={"hourly_rate": Decimal("91.50"), "tasks": (longer, tasks[0])})
    changed = terms.model_copy(update={"labour": labour, "taxes": (), "stock_price": Decimal(20)})
    text = terms_to_toml(changed, over=OWN)
    assert terms_from_toml(text, "text") == changed
    for comment in ("# Hedgerow's own file", "# we quote abroad", "# as in the register", "# counts up"):
        assert comment in text
    for comment in ("# the long one", "# since spring", "# there and back", "# the careful part"):
        assert comment in text
    assert "raised" not in text
    assert "hourly_rate = 91.50 # since spring" in text


@pytest.mark.parametrize(
    "old",
    ["not = [ toml", "seller = 5\nlabour = 'x'\n", 'seller.name = "A"\nheading.number = "B"\n', "[a]\n[b]\n[a.c]\n"],
)
def test_an_odd_file_is_written_over_all_the_same(old: str) -> None:
    terms = terms_from_toml(JOB, "job")
    assert terms_from_toml(terms_to_toml(terms, over=old), "text") == terms


def test_usual_terms_keep_what_quotations_do_not_share() -> None:
    old = '[customer]\nname = "Nobody" # a gap to fill\n[heading]\ntitle = "Our offer"\nvalid_days = 20\n'
    usual = shared_of(terms_from_toml(JOB + "valid_days = 60\n[labour]\nhourly_rate = 70.00\n", "job"))
    text = usual_to_toml(usual, over=old)
    table = tomllib.loads(text, parse_float=Decimal)
    assert table["customer"] == {"name": "Nobody"}
    assert table["heading"] == {"title": "Our offer", "valid_days": 60}
    assert table["labour"] == {"hourly_rate": Decimal("70.00")}
    assert "# a gap to fill" in text
    assert "complete" not in table
    assert "HS-1" not in text


@pytest.mark.parametrize(
    ("name", "written", "kept"),
    [
        ("number", '"HS-"', "HS-"),
        ("title", '"Our"', "Our"),
        ("dated", "2026-01-02", date(2026, 1, 2)),
        ("scope", '"All"', "All"),
    ],
)
def test_usual_terms_keep_each_entry_of_their_heading_that_quotations_do_not_share(
    name: str, written: str, kept: object
) -> None:
    usual = shared_of(terms_from_toml(JOB, "job"))
    table = tomllib.loads(usual_to_toml(usual, over=f"[heading]\n{name} = {written}\n"))
    assert table["heading"][name] == kept


def test_usual_terms_may_hold_any_part() -> None:
    assert usual_from_toml("", "nothing") == UsualTerms()
    assert usual_from_toml('[heading]\nconditions = "Net."', "part").heading.conditions == "Net."
    with pytest.raises(InputFault) as fault:
        usual_from_toml('[heading]\nvalid_days = 0\n[labour]\nrate = 5\ncurrency = "dollars"', "part")
    assert {problem.field for problem in fault.value.problems} == {
        "heading.valid_days",
        "labour.rate",
        "labour.currency",
    }


@pytest.mark.parametrize(
    ("more", "field", "value"),
    [
        ('[[options]]\ntitle = "A"\n[[options]]\ntitle = "A"\n', "options[1].title", "'A'"),
        ('[[spares]]\nkind = "cap"\npercent = 1\n[[spares]]\nkind = "cap"\npercent = 2\n', "spares[1].kind", "'cap'"),
        ('[selling]\nmethod = "margin_on_price"\npercent = 100\n', "selling.percent", "100"),
        ("[[selling.exceptions]]\npercent = 3\n", "selling.exceptions[0].kind", "nothing"),
        ('complete = "yes"\n' + JOB, "complete", "'yes'"),
    ],
)
def test_what_is_wrong_beside_other_values_is_named_by_its_field(more: str, field: str, value: str) -> None:
    with pytest.raises(InputFault) as fault:
        terms_from_toml(more if more.startswith("complete") else JOB + more, "job")
    assert [(one.field, one.value) for one in fault.value.problems] == [(field, value)]
