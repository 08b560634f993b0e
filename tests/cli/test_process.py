"""The program as a process: exit codes, streams, a reader that leaves, no display, and the interrupt."""

from __future__ import annotations

import json
import os
import pty
import re
import signal
import subprocess
import sys
from collections.abc import Callable
from contextlib import suppress
from pathlib import Path
from typing import Any

import pytest

from spoutline.assets import demo_folder
from spoutline.bootstrap import Workbench
from spoutline.bootstrap.preferences import OpenWith
from spoutline.catalogue.exchange import exchange_bytes
from spoutline.cli.display_server import reason_against_window
from spoutline.cli.main import run
from spoutline.model.survey import Survey
from stores.catalogue.entries import priced_only

PROGRAM = [sys.executable, "-m", "spoutline"]
# A shell starts what runs in its background deaf to the interrupt, and children inherit that.
_HEAR = "import os, signal, sys; signal.signal(signal.SIGINT, signal.SIG_DFL); os.execv(sys.argv[1], sys.argv[1:])"
HEARING = [sys.executable, "-c", _HEAR]
MORE_THAN_A_PIPE_HOLDS = 4_000_000  # bytes; Linux holds 64 KiB unless asked, and at most 1 MiB


def without_display() -> dict[str, str]:
    return {
        name: value
        for name, value in os.environ.items()
        if name not in ("DISPLAY", "WAYLAND_DISPLAY", "QT_QPA_PLATFORM")
    }


def test_without_a_display_the_window_says_so_and_offers_the_command_line() -> None:
    done = subprocess.run(PROGRAM, capture_output=True, text=True, check=False, env=without_display())
    assert done.returncode == 2
    assert "no display" in done.stderr
    assert "spoutline plan station.json" in done.stderr
    assert "Traceback" not in done.stderr


def loaded_by(done: subprocess.CompletedProcess[str]) -> set[str]:
    return {line.rpartition("|")[2].strip() for line in done.stderr.splitlines()}


def test_a_plan_loads_nothing_that_it_does_not_use(shared_database: Path) -> None:
    """What a command imports is most of what it costs: Python itself tells (``-X importtime``)."""
    unused = (
        "sqlalchemy.orm",
        "alembic",
        "scipy",
        "reportlab",
        "spoutline.catalogue.descriptions",
        "spoutline.model.quotation",
        "spoutline.model.quoted_option",
        "spoutline.model.quotation_pins",
        "spoutline.model.quotation_terms",
        "spoutline.model.pricing",
        "spoutline.model.coverage_map",
        "spoutline.model.funnel",
        "spoutline.model.position_conversion",
        "spoutline.model.refit",
        "spoutline.ruletables.conversion_steps",
        "spoutline.book.tables",
    )
    command = [sys.executable, "-X", "importtime", "-m", "spoutline", "--database", str(shared_database), "plan"]
    survey = demo_folder() / "small_town.json"
    done = subprocess.run([*command, str(survey)], capture_output=True, text=True, check=True)
    loaded = loaded_by(done)
    assert "spoutline.planning.refit.station_plan" in loaded
    assert loaded.isdisjoint(unused), loaded & set(unused)


def test_the_version_is_told_without_a_survey_rules_or_a_store() -> None:
    command = [sys.executable, "-X", "importtime", "-m", "spoutline", "--version"]
    done = subprocess.run(command, capture_output=True, text=True, check=True)
    unused = {"pydantic", "numpy", "sqlalchemy", "spoutline.model.survey", "spoutline.bootstrap.workbench"}
    loaded = loaded_by(done)
    assert "spoutline.cli.main" in loaded
    assert loaded.isdisjoint(unused), loaded & unused


@pytest.mark.parametrize(
    ("environment", "word"),
    [
        ({}, "no display"),
        ({"DISPLAY": ""}, "no display"),
        ({"DISPLAY": ":54321"}, "does not answer"),
        ({"DISPLAY": "nonsense"}, "does not answer"),
        ({"DISPLAY": "127.0.0.1:54321"}, "does not answer"),
    ],
)
def test_the_reason_against_a_window_is_told(environment: dict[str, str], word: str) -> None:
    reason = reason_against_window(environment, "linux")
    assert reason is not None
    assert word in reason


@pytest.mark.parametrize(
    ("environment", "platform"),
    [
        ({"QT_QPA_PLATFORM": "offscreen"}, "linux"),
        ({"QT_QPA_PLATFORM": "vnc:size=800x600"}, "linux"),
        ({"WAYLAND_DISPLAY": "wayland-0"}, "linux"),
        ({}, "win32"),
        ({}, "darwin"),
    ],
)
def test_nothing_speaks_against_a_window_where_one_can_open(environment: dict[str, str], platform: str) -> None:
    assert reason_against_window(environment, platform) is None


def test_a_server_that_listens_on_the_display_is_found(tmp_path: Path) -> None:
    import socket

    # X.Org's convention: display n also listens on TCP port 6000 + n.
    with socket.socket() as server:
        server.bind(("127.0.0.1", 0))
        server.listen()
        number = server.getsockname()[1] - 6000
        reason = reason_against_window({"DISPLAY": f"127.0.0.1:{number}"}, "linux")
    assert reason is None or "does not answer" not in reason


def test_the_window_opens_as_it_was_left_on_a_demo_or_on_a_survey_file(written: Callable[..., Path]) -> None:
    opened: list[str | None] = []

    def open_window(_workbench: object, survey: Survey | None, trouble: str, open_with: OpenWith | None) -> int:
        opened.append(None if survey is None else survey.site.name)
        assert trouble == ""
        return 0

    assert run([], open_window) == 0
    assert run(["window"], open_window) == 0
    assert run(["window", "--demo"], open_window) == 0
    assert run(["window", "--demo", "marina"], open_window) == 0
    assert run(["window", str(written(name="Alder Bend"))], open_window) == 0
    marina = json.loads((demo_folder() / "marina.json").read_text(encoding="utf-8"))["site"]["name"]
    assert opened == [None, None, "Maple Ferry Fuels", marina, "Alder Bend"]


def test_what_the_window_shows_first_can_be_named(
    written: Callable[..., Path], capsys: pytest.CaptureFixture[str]
) -> None:
    asked: list[OpenWith | None] = []

    def open_window(_workbench: object, survey: Survey | None, trouble: str, open_with: OpenWith | None) -> int:
        asked.append(open_with)
        return 0

    assert run([], open_window) == 0
    assert run(["window", "--open-with", "start"], open_window) == 0
    assert run(["window", "--open-with", "last"], open_window) == 0
    assert asked == [None, OpenWith.START_VIEW, OpenWith.LAST_SURVEY]
    assert run(["window", "--open-with", "end"], open_window) == 2
    told = capsys.readouterr().err
    assert "--open-with" in told
    assert "last" in told
    assert "start" in told
    # a survey that is named is what is shown
    assert run(["window", str(written(name="Alder Bend")), "--open-with", "start"], open_window) == 2
    assert "not allowed with" in capsys.readouterr().err


def test_a_survey_file_that_cannot_be_read_opens_no_window(tmp_path: Path, capsys: pytest.CaptureFixture[str]) -> None:
    def open_window(_workbench: object, survey: Survey | None, trouble: str, open_with: OpenWith | None) -> int:
        raise AssertionError(survey, trouble)

    bad = tmp_path / "bad.json"
    bad.write_text('{"site": {"name": ""}, "positions": []}', encoding="utf-8")
    assert run(["window", str(bad)], open_window) == 2
    assert str(bad) in capsys.readouterr().err
    assert run(["window", str(bad), "--demo"], open_window) == 2
    assert "not allowed with" in capsys.readouterr().err


def test_a_reader_that_leaves_early_ends_the_program_quietly(shared_database: Path) -> None:
    shell = f"{sys.executable} -m spoutline schema --output | head -1"
    done = subprocess.run(["bash", "-o", "pipefail", "-c", shell], capture_output=True, text=True, check=False)
    assert done.stderr == ""
    assert done.stdout == "{\n"


def test_a_full_disk_behind_standard_output_is_bad_input_and_no_traceback() -> None:
    with Path("/dev/full").open("w") as full:
        done = subprocess.run([*PROGRAM, "schema"], stdout=full, stderr=subprocess.PIPE, text=True, check=False)
    assert done.returncode == 2
    assert done.stderr.startswith("spoutline: Standard output cannot be written")


def test_text_survives_a_terminal_that_knows_only_ascii(written: Callable[..., Path], shared_database: Path) -> None:
    environment = {**os.environ, "PYTHONIOENCODING": "ascii", "LC_ALL": "C", "PYTHONUTF8": "0"}
    done = subprocess.run(
        [*PROGRAM, "--database", str(shared_database), "plan", str(written(name="Größe Ω 加油"))],
        capture_output=True,
        check=False,
        env=environment,
    )
    assert done.returncode == 0, done.stderr
    assert "Größe Ω 加油" in done.stdout.decode()


def test_the_interrupt_key_ends_a_command_without_a_traceback(tmp_path: Path) -> None:
    program_call = [*PROGRAM, "--database", str(tmp_path / "x.sqlite3"), "plan", "-"]
    command = [*HEARING, *program_call]
    pipe = subprocess.PIPE
    with subprocess.Popen(command, stdin=pipe, stdout=pipe, stderr=pipe, text=True) as program:
        assert program.stdin is not None
        assert program.stderr is not None
        program.stdin.write(" " * MORE_THAN_A_PIPE_HOLDS)  # comes to its end once the program reads: it runs by then
        program.stdin.flush()
        program.send_signal(signal.SIGINT)  # while it waits for the rest of the survey
        program.stdin.close()  # between two reads Python looks for no interrupt: the last one gives it the time
        said = program.stderr.read()
    assert program.returncode == 130
    assert "Traceback" not in said
    assert "stopped" in said


def test_the_interrupt_key_leaves_the_draft_as_it_was_while_a_file_is_taken_in(
    own_workbench: Workbench, own_database: Path, tmp_path: Path
) -> None:
    """On a terminal the command says how far it is; the key is struck at the first word of that."""
    path = tmp_path / "parts.zip"
    path.write_bytes(exchange_bytes(priced_only(f"FW {number}") for number in range(20_000)))
    own_workbench.catalogues().create("Big")
    taking_in = ["catalog", "import", "--into", "Big", str(path), "--database", str(own_database)]
    ours, theirs = pty.openpty()
    pipe = subprocess.PIPE
    with subprocess.Popen([*HEARING, *PROGRAM, *taking_in], stdin=pipe, stdout=pipe, stderr=theirs) as program:
        os.close(theirs)
        said = os.read(ours, 1000)
        program.send_signal(signal.SIGINT)
        with suppress(OSError):  # Linux says by it that nobody writes there any more
            while more := os.read(ours, 1000):
                said += more
    os.close(ours)
    assert re.search(rb"[0-9]+ % of the file read", said)
    assert program.returncode == 130
    assert b"Traceback" not in said
    assert own_workbench.catalogues().shelf().catalogue("Big").draft_parts == 0


def test_the_interrupt_key_ends_a_coverage_map_soon_and_leaves_its_file_as_it_was(
    own_workbench: Workbench, own_database: Path, tmp_path: Path
) -> None:
    """The whole map takes many times as long as what is answered by the time the key is struck."""
    path = tmp_path / "map.csv"
    own_workbench.catalogues().shelf()
    asked = ["catalog", "coverage", "Demonstration", "--liquid", "e10", "--out", str(path)]
    assert subprocess.run(  # a file of the program's own, which the next map would replace
        [*PROGRAM, *asked, "--duty", "reel", "--climate", "mild", "--most", "1", "--database", str(own_database)],
        stdout=subprocess.DEVNULL,
        check=False,
    ).returncode in (0, 1)
    before = path.read_bytes()
    ours, theirs = pty.openpty()
    pipe = subprocess.PIPE
    everything = [*PROGRAM, *asked, "--most", "10000", "--database", str(own_database)]
    with subprocess.Popen([*HEARING, *everything], stdin=pipe, stdout=pipe, stderr=theirs) as program:
        os.close(theirs)
        said = os.read(ours, 1000)
        program.send_signal(signal.SIGINT)
        with suppress(OSError):
            while more := os.read(ours, 1000):
                said += more
    os.close(ours)
    told = [int(one) for one in re.findall(rb"([0-9]+) of 252 combinations asked", said)]
    assert told
    assert max(told) < 252 // 2
    assert program.returncode == 130
    assert b"stopped; nothing more was written" in said
    assert b"Traceback" not in said
    assert path.read_bytes() == before
    assert [one.name for one in tmp_path.iterdir() if "map" in one.name] == ["map.csv"]


def test_a_file_named_alone_opens_as_a_desktop_opens_it_and_its_faults_are_told_in_the_window(
    written: Callable[..., Path], tmp_path: Path
) -> None:
    opened: list[tuple[str | None, str]] = []

    def open_window(_workbench: object, survey: Survey | None, trouble: str, open_with: OpenWith | None) -> int:
        opened.append((None if survey is None else survey.site.name, trouble))
        return 0

    bad = tmp_path / "bad.spoutline.json"
    bad.write_text('{"site": {"name": ""}, "positions": []}', encoding="utf-8")
    assert run([str(written(name="Alder Bend"))], open_window) == 0
    assert run([str(bad)], open_window) == 0
    assert run([str(tmp_path / "gone.spoutline.json")], open_window) == 0
    assert opened[0] == ("Alder Bend", "")
    assert opened[1][0] is None
    assert str(bad) in opened[1][1]
    assert "site.name" in opened[1][1]
    assert opened[2][0] is None
    assert "gone.spoutline.json" in opened[2][1]
    # options of all commands may stand before it; whoever writes them sits at a shell and reads there what is wrong
    for options in (["--language", "es"], ["--units=si"], ["--language", "de", "--units", "us"]):
        assert run([*options, str(written(name="Alder Bend"))], open_window) == 0
        assert opened[-1] == ("Alder Bend", "")
    known = len(opened)
    assert run(["--units", "si", str(bad)], open_window) == 2
    assert len(opened) == known


def test_a_fault_of_the_program_is_noted_in_a_file_and_told_in_a_sentence(
    tmp_path: Path, monkeypatch: pytest.MonkeyPatch, capfd: pytest.CaptureFixture[str]
) -> None:
    monkeypatch.setenv("XDG_STATE_HOME", str(tmp_path))
    words = "Maple Ferry Fuels"

    def broken(_workbench: object, _survey: object, _trouble: str, _open_with: object) -> int:
        raise ZeroDivisionError(words)

    assert run([], broken) == 3
    err = capfd.readouterr().err
    assert "Traceback" not in err
    assert "please report it" in err
    noted = next(tmp_path.rglob("faults.log")).read_text()
    assert "builtins.ZeroDivisionError" in noted
    assert "Maple Ferry" not in noted


def test_two_first_starts_at_once_share_one_new_database(written: Callable[..., Path], tmp_path: Path) -> None:
    command = [*PROGRAM, "--database", str(tmp_path / "new.sqlite3"), "plan", str(written()), "--json"]
    running = [subprocess.Popen(command, stdout=subprocess.PIPE, stderr=subprocess.PIPE, text=True) for _ in range(3)]
    outcomes: list[Any] = [(*program.communicate(), program.returncode) for program in running]
    assert {outcome[1:] for outcome in outcomes} == {("", 0)}
    assert len({outcome[0] for outcome in outcomes}) == 1
