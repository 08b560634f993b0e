"""`spoutline help`: the pages, one of them, where words stand."""

from __future__ import annotations

import shutil
from pathlib import Path

import pytest

from program_runs import Spoutline
from spoutline import assets


def test_pages_are_listed_printed_and_searched(spoutline: Spoutline) -> None:
    listed = spoutline("help")
    assert listed.code == 0
    assert "glossary" in listed.out
    page = spoutline("help", "quotations")
    assert page.code == 0
    assert page.out.startswith("# Quotations")
    found = spoutline("help", "--search", "hold-open")
    assert found.code == 0
    assert "glossary: " in found.out
    assert spoutline("help", "--search", "zzz zzz").code == 1


def test_pages_are_printed_in_the_language_asked_for(spoutline: Spoutline) -> None:
    assert spoutline("--language", "es", "help", "quotations").out.startswith("# Cotizaciones")
    assert spoutline("--language", "de", "help", "glossary").out.startswith("# Wörter des Fachs")


def test_a_page_without_a_translation_says_so(
    spoutline: Spoutline, monkeypatch: pytest.MonkeyPatch, tmp_path: Path
) -> None:
    for name in ("contents.toml", "glossary.toml", "quotations.md"):
        shutil.copy(assets.resources_folder() / "help" / name, tmp_path)
    monkeypatch.setattr("spoutline.bootstrap.manual._folder", lambda: tmp_path)
    page = spoutline("--language", "es", "help", "quotations")
    assert page.out.startswith("Esta página existe solo en inglés.\n\n# Quotations")


def test_an_unknown_page_is_refused_with_the_names(spoutline: Spoutline) -> None:
    done = spoutline("help", "nozles")
    assert done.code == 2
    assert "topic" in done.err
    assert "quotations" in done.err


def test_the_page_of_rules_shows_the_limits_of_a_jurisdiction(spoutline: Spoutline) -> None:
    general, europe = spoutline("help", "rules").out, spoutline("help", "rules", "--jurisdiction", "europe").out
    assert general != europe
    assert "EN 13012" in europe  # the European standard for automatic nozzles
