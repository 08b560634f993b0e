"""Bills in CSV are known again as the program's own: those of today, and those from before the last two columns."""

from __future__ import annotations

import csv
from io import StringIO
from pathlib import Path

import pytest

from documents import plan_factory as factory
from documents.readers import story
from spoutline.documents.bill import bill_csv
from spoutline.documents.own_files import FileForm, is_own


@pytest.mark.parametrize("left_out", [0, 2])  # recalled limits and recorded faults came later
def test_a_bill_is_known_again_by_its_titles(left_out: int, tmp_path: Path) -> None:
    text = bill_csv(factory.site_plan(), story()).decode("utf-8-sig")
    rows = [row[: len(row) - left_out] for row in csv.reader(StringIO(text, newline=""))]
    written = StringIO(newline="")
    csv.writer(written).writerows(rows)
    path = tmp_path / "bill.csv"
    path.write_bytes(written.getvalue().encode("utf-8-sig"))
    assert is_own(path, FileForm.CSV)


def test_a_table_with_a_title_of_its_own_is_nobodys_bill(tmp_path: Path) -> None:
    path = tmp_path / "bill.csv"
    text = bill_csv(factory.site_plan(), story()).decode("utf-8-sig")
    path.write_bytes(text.replace("Position", "Place of mine", 1).encode("utf-8-sig"))
    assert not is_own(path, FileForm.CSV)
