"""A file that somebody sent is only read: not carried out, not followed to other computers, not written to."""

from __future__ import annotations

import hashlib
import json
import subprocess
import sys
from collections.abc import Callable
from pathlib import Path
from typing import Any

import pytest

# what a text may try once it gets into markup, formulas, a shell or a template
HOSTILE = "<img src='http://127.0.0.1:9/x.png'/>=cmd|'/c calc'!A1 $(touch {0}) `touch {0}` {{{{7*7}}}} %s"

# Python tells every such event to a hook (Python 3.11, audit events table)
WATCHED = """
import json, sys
folder, lines = sys.argv[1], json.loads(sys.argv[2])
def hook(event, arguments):
    if event == "pickle.find_class" and arguments[0].startswith(("babel.", "spoutline.model.", "spoutline.explain.")):
        return  # Babel keeps the data that it comes with so, and the program, as values alone, what its own tables mean
    if event in ("socket.connect", "socket.getaddrinfo", "subprocess.Popen", "os.system", "os.exec", "os.posix_spawn",
                 "urllib.Request", "webbrowser.open", "pickle.find_class"):
        sys.stderr.write(f"DONE {event} {arguments}\\n")
    if event == "open" and isinstance(arguments[1], str) and set(arguments[1]) & set("wxa+"):
        name = str(arguments[0])
        if name.startswith(folder) and "/out/" not in name:
            sys.stderr.write(f"DONE open {arguments}\\n")
sys.addaudithook(hook)
from spoutline.cli.main import run
for line in lines:
    code = run(line, lambda *_: 0)
    assert code in (0, 1), code
"""


def state_of(folder: Path) -> dict[Path, tuple[bytes, int]]:
    return {path: (hashlib.sha256(path.read_bytes()).digest(), path.stat().st_mtime_ns) for path in folder.iterdir()}


def test_the_watch_sees_what_it_is_there_for(tmp_path: Path) -> None:
    bad = "import os, socket; os.system('true'); open(folder + '/x', 'w'); socket.getaddrinfo('127.0.0.1', 9)\n"
    watched = WATCHED[: WATCHED.index("from spoutline")] + bad
    done = subprocess.run(
        [sys.executable, "-c", watched, str(tmp_path), "[]"], check=False, capture_output=True, text=True
    )
    assert [line.split()[1] for line in done.stderr.splitlines()] == ["os.system", "open", "socket.getaddrinfo"]


def test_a_received_survey_and_its_terms_do_nothing_but_become_papers(tmp_path: Path, shared_database: Path) -> None:
    received, out, touched = tmp_path / "received", tmp_path / "out", tmp_path / "touched"
    received.mkdir()
    out.mkdir()
    words = HOSTILE.format(touched)
    survey, terms = received / "survey.json", received / "terms.toml"
    position = {"label": "=1+1|x", "dispenser": "1", "liquid": {"family": "gasoline", "blend_percent": 10}}
    site = {"name": words[:60], "address": words[:100], "customer": words[:60]}
    survey.write_text(json.dumps({"site": site, "positions": [position]}))
    quoted = json.dumps(words[:60])
    terms.write_text(
        f"[seller]\nname = {quoted}\n[customer]\nname = {quoted}\n"
        f"[heading]\nnumber = 'R-1'\ndated = 2026-11-25\nconditions = {quoted}\n"
    )
    before = state_of(received)
    bill = [f"--{form}={out / 'bill'}.{form}" for form in ("pdf", "csv", "xlsx")]
    quote = [f"--{form}={out / 'quote'}.{form}" for form in ("pdf", "csv", "xlsx")]
    shared = ["--database", str(shared_database)]
    lines = [[*shared, "bill", str(survey), *bill], [*shared, "quote", str(survey), "--terms", str(terms), *quote]]
    command = [sys.executable, "-c", WATCHED, str(received), json.dumps(lines)]
    done = subprocess.run(command, check=False, capture_output=True, text=True)
    assert done.returncode == 0, done.stderr
    assert "DONE" not in done.stderr, done.stderr
    assert state_of(received) == before
    assert not touched.exists()
    assert len(list(out.iterdir())) == 6


def test_a_received_survey_goes_into_the_book_as_a_copy(written: Callable[..., Path], tmp_path: Path) -> None:
    from spoutline.book.book import open_book
    from spoutline.book.survey_text import read_survey

    survey = written()
    content = survey.read_bytes()
    survey.chmod(0o444)
    book = open_book(f"sqlite:///{tmp_path / 'b.db'}")
    stored = book.create(read_survey(survey))
    site = stored.survey.site.model_copy(update={"name": "Changed"})
    book.save(stored, stored.survey.model_copy(update={"site": site}))
    again = book.create(read_survey(survey))
    assert again.id != stored.id
    assert survey.read_bytes() == content
    book.close()


@pytest.mark.parametrize("name", ["http://127.0.0.1/x.png", "//server/share/x.png", "\\\\\\\\server\\\\share\\\\x.png"])
def test_no_picture_is_fetched_from_another_computer(
    name: str, spoutline: Any, written: Callable[..., Path], tmp_path: Path
) -> None:
    terms = tmp_path / "terms.toml"
    terms.write_text(
        f'[seller]\nname = "S"\nlogo = "{name}"\n[customer]\nname = "C"\n[heading]\nnumber = "1"\ndated = 2026-11-25\n'
    )
    done = spoutline("quote", written(), "--terms", terms, "--csv", tmp_path / "q.csv")
    assert done.code == 2
    assert "none is fetched from elsewhere" in done.err
