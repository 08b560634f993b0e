"""Files of terms: written whole, the picture beside them, usual terms kept and read again."""

from __future__ import annotations

from decimal import Decimal
from pathlib import Path

import pytest

from planning.quoting_terms import list_of, terms_of
from spoutline.book.terms_files import TermsFolders, read_usual_file, write_terms_file, write_usual_file
from spoutline.book.terms_text import read_terms
from spoutline.catalogue.price_lists import names_in
from spoutline.model.faults import InputFault, StoreFault
from spoutline.model.usual_terms import UsualTerms
from stores.terms_in_hand import shared_of

TEAL, GREY = b"teal picture", b"grey picture"


@pytest.fixture
def folders(tmp_path: Path) -> TermsFolders:
    (tmp_path / "jobs").mkdir()
    (tmp_path / "own").mkdir()
    return TermsFolders(tmp_path / "jobs", tmp_path / "own")


def test_terms_written_are_read_again_from_the_file(tmp_path: Path, folders: TermsFolders) -> None:
    terms = terms_of(labour={"hourly_rate": "88.00"})
    assert write_terms_file(terms, tmp_path / "job.toml", folders) == terms
    assert read_terms(tmp_path / "job.toml") == terms
    assert [path.name for path in tmp_path.iterdir() if path.is_file()] == ["job.toml"]


def test_comments_of_the_file_written_over_stay(tmp_path: Path, folders: TermsFolders) -> None:
    path = tmp_path / "job.toml"
    path.write_text('[seller]\nname = "Hedgerow Supply" # ours\n', encoding="utf-8")
    write_terms_file(terms_of(), path, folders)
    assert 'name = "Hedgerow Supply" # ours' in path.read_text(encoding="utf-8")


def test_the_picture_comes_along_into_another_folder(tmp_path: Path, folders: TermsFolders) -> None:
    (tmp_path / "jobs" / "logo.png").write_bytes(TEAL)
    (tmp_path / "else").mkdir()
    terms = terms_of(seller={"name": "Hedgerow Supply", "logo": "logo.png"})
    assert write_terms_file(terms, tmp_path / "else" / "job.toml", folders).seller.logo == "logo.png"
    assert (tmp_path / "else" / "logo.png").read_bytes() == TEAL
    write_terms_file(terms, tmp_path / "else" / "job.toml", folders)
    assert sorted(path.name for path in (tmp_path / "else").iterdir()) == ["job.toml", "logo.png"]


def test_another_picture_of_the_same_name_is_not_overwritten(tmp_path: Path, folders: TermsFolders) -> None:
    (tmp_path / "jobs" / "logo.png").write_bytes(TEAL)
    (tmp_path / "own" / "logo.png").write_bytes(GREY)
    terms = terms_of(seller={"name": "Hedgerow Supply", "logo": str(tmp_path / "jobs" / "logo.png")})
    written = write_usual_file(shared_of(terms), tmp_path / "own" / "usual_terms.toml", folders)
    assert written.seller is not None
    assert written.seller.logo == "logo-2.png"
    assert (tmp_path / "own" / "logo.png").read_bytes() == GREY
    assert (tmp_path / "own" / "logo-2.png").read_bytes() == TEAL


def test_a_picture_that_is_nowhere_keeps_its_name(tmp_path: Path, folders: TermsFolders) -> None:
    terms = terms_of(seller={"name": "Hedgerow Supply", "logo": "lost.png"})
    assert write_terms_file(terms, tmp_path / "job.toml", folders) == terms


def test_usual_terms_are_kept_in_a_folder_that_is_made_for_them(tmp_path: Path, folders: TermsFolders) -> None:
    path = tmp_path / "new" / "data" / "usual_terms.toml"
    assert read_usual_file(path) == UsualTerms()
    usual = shared_of(terms_of(stock_price="35", taxes=[{"name": "Sales tax", "percent": "6.25"}]))
    write_usual_file(usual, path, folders)
    assert read_usual_file(path) == usual
    assert read_usual_file(path).taxes[0].percent == Decimal("6.25")


def test_a_file_that_cannot_be_written_leaves_the_old_one(tmp_path: Path, folders: TermsFolders) -> None:
    path = tmp_path / "job.toml"
    path.mkdir()
    with pytest.raises(StoreFault, match="cannot be written"):
        write_terms_file(terms_of(), path, folders)
    with pytest.raises(StoreFault, match="cannot be written"):
        write_terms_file(terms_of(), tmp_path / "nowhere" / "job.toml", folders)
    assert sorted(one.name for one in tmp_path.iterdir()) == ["job.toml", "jobs", "own"]


@pytest.mark.parametrize("old", ["[labour\nhourly_rate = 80\n", "[labuor]\nhourly_rate = 80\n"])
def test_usual_terms_with_a_slip_in_them_are_not_written_over(old: str, tmp_path: Path, folders: TermsFolders) -> None:
    path = tmp_path / "usual_terms.toml"
    path.write_text(old, encoding="utf-8")
    with pytest.raises(InputFault):
        write_usual_file(shared_of(terms_of()), path, folders)
    assert path.read_text(encoding="utf-8") == old


def test_faulty_usual_terms_are_named(tmp_path: Path) -> None:
    path = tmp_path / "usual_terms.toml"
    path.write_text("[labour]\nhourly_rate = -1\n", encoding="utf-8")
    with pytest.raises(InputFault) as fault:
        read_usual_file(path)
    assert [(one.place, one.field) for one in fault.value.problems] == [(str(path), "labour.hourly_rate")]


def test_price_lists_tell_their_names() -> None:
    lists = (
        list_of({"B-2": {1: "3"}, "B-1": {1: "2"}}, maker="Larkspindle Couplings"),
        list_of({"H-1": {1: "9"}}, list_id="list-b", maker="Grimbleton Fittings", group="hoses", currency="EUR"),
    )
    names = names_in(lists)
    assert names.makers == ("Grimbleton Fittings", "Larkspindle Couplings")
    assert names.groups == ("couplings", "hoses")
    assert names.currencies == ("EUR", "USD")
    assert names.part_numbers == ("B-1", "B-2", "H-1")
