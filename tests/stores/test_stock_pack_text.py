"""Stock lists and job files as people write them."""

from __future__ import annotations

from datetime import date
from pathlib import Path

import pytest
from hypothesis import given
from hypothesis import strategies as st

from spoutline.book.pack_job_text import pack_job_from_toml, read_pack_job
from spoutline.book.stock_text import read_stock, stock_from_csv
from spoutline.model.faults import InputFault
from spoutline.model.part_ref import PartRef
from spoutline.model.position_tag import PositionTag, tag_from_text


@pytest.mark.parametrize(
    "text",
    [
        "part_number,quantity\nQW-N1,2\nQW-N2,0\n",
        "part_number;quantity;box\r\nQW-N1;2;van\r\nQW-N2;0;shelf\r\n",
        "\ufeffQuantity, Part_Number\n2, QW-N1\n0, QW-N2\n\n",
    ],
)
def test_a_stock_list_is_read_in_the_ways_that_spreadsheets_write_it(text: str, tmp_path: Path) -> None:
    path = tmp_path / "stock.csv"
    path.write_text(text, encoding="utf-8")
    stock = read_stock(path)
    assert [stock.quantity(PartRef(f"QW-N{at}")) for at in (1, 2, 3)] == [2, 0, 0]


@pytest.mark.parametrize(
    ("text", "words"),
    [
        ("", "part_number and quantity"),
        ("number,count\nA,1\n", "part_number and quantity"),
        ("part_number,quantity\nA,two\n", "line 2"),
        ("part_number,quantity\nA,-1\n", "whole number"),
        ("part_number,quantity\nA,1.5\n", "whole number"),
        ("part_number,quantity\n,1\n", "write the part number"),
        ("part_number,quantity\nA,1\nA,2\n", "line 3"),
        ("part_number,quantity\nA,999999999\n", "whole number"),
    ],
)
def test_a_faulty_stock_list_is_refused_with_its_line(text: str, words: str) -> None:
    with pytest.raises(InputFault, match=words):
        stock_from_csv(text, "stock.csv")


def test_a_stock_list_that_cannot_be_read_is_an_input_fault(tmp_path: Path) -> None:
    with pytest.raises(InputFault, match="readable"):
        read_stock(tmp_path / "none.csv")
    (tmp_path / "bytes.csv").write_bytes(b"\xff\xfe\x00")
    with pytest.raises(InputFault, match="readable"):
        read_stock(tmp_path / "bytes.csv")


def test_a_job_names_days_people_and_the_local_code(tmp_path: Path) -> None:
    path = tmp_path / "job.toml"
    path.write_text(
        'first_day = 2026-12-01\nlast_day = 2026-12-02\nauthority = "Fire office"\npermit_number = "P-1"\n'
        '[[contacts]]\nrole = "Operator"\nname = "Ada"\n',
        encoding="utf-8",
    )
    job = read_pack_job(path)
    assert (job.first_day, job.last_day) == (date(2026, 12, 1), date(2026, 12, 2))
    assert job.contacts[0].name == "Ada"


@pytest.mark.parametrize(
    ("text", "words"),
    [
        ("first_day = 2026-12-02\nlast_day = 2026-12-01\n", "must not come before"),
        ("permit = 'x'\n", "permit"),
        ("[[contacts]]\nrole = 'x'\n", "name"),
        ("first_day = [", "valid TOML"),
    ],
)
def test_a_faulty_job_is_refused_with_its_field(text: str, words: str) -> None:
    with pytest.raises(InputFault, match=words):
        pack_job_from_toml(text, "job.toml")


NAMES = st.text(min_size=1, max_size=60).filter(lambda text: text == text.strip() and text.isprintable())


@given(site=NAMES, position=NAMES, revision=st.text("0123456789abcdef", min_size=16, max_size=16))
def test_every_tag_reads_back_and_is_plain_text_for_any_scanner(site: str, position: str, revision: str) -> None:
    tag = PositionTag(site=site, position=position, revision=revision)
    text = str(tag)
    assert text.isascii()
    assert text.isprintable()
    assert " " not in text
    assert tag_from_text(f"  {text}\n") == tag


@pytest.mark.parametrize(
    "text",
    [
        "",
        "https://invented.invalid/",
        "spoutline:",
        "spoutline:site=a;position=b",
        "spoutline:site=a;position=b;revision=xyz",
        "spoutline:site=;position=b;revision=0123456789abcdef",
        "spoutline:site=a;position=b;revision=0123456789abcdef;more=1",
        "x" * 5000,
    ],
)
def test_any_other_code_is_refused(text: str) -> None:
    with pytest.raises(InputFault, match="code"):
        tag_from_text(text)
