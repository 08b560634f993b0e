"""Damaged and hostile input given to every reader in one process; `python tests/reliability/fuzz_inputs.py --cases N`.

Every case is a sound file with a few mutations, or one of a list of attacks. A reader may take it or refuse it with
``InputFault``; anything else is a defect. Counted: cases, defects (exit 3 on the command line), cases over 5 s, and
whether the process ever held more than 300 MB above its start.
"""

from __future__ import annotations

import argparse
import io
import random
import resource
import sys
import tempfile
import time
import traceback
import zipfile
from collections import Counter
from collections.abc import Callable
from dataclasses import dataclass, field
from pathlib import Path

from spoutline.book.pack_job_text import read_pack_job
from spoutline.book.record_files import photo_of
from spoutline.book.stock_text import read_stock
from spoutline.book.survey_text import read_survey, survey_to_json
from spoutline.book.terms_text import file_text, terms_from_toml
from spoutline.bootstrap.demos import demo_survey
from spoutline.documents.pack.form_reading import records_from_form
from spoutline.model.faults import InputFault
from spoutline.planning.survey_import.sheet import read_sheet
from spoutline.ruletables.own_profiles import profile_from_toml

SLOW_S = 5.0
LARGE_MB = 300

_TOKENS = (
    b"1e-308", b"-0.0", b"1e308", b"NaN", b"Infinity", b"9" * 5000, b"0x" + b"f" * 900, b"1e99999999999999999999",
    b"[" * 3000, b"{" * 3000, b'{"a":' * 1500, b"a = " + b"[" * 2000, b"a." * 400 + b"b = 1\n", b"null", b"true", b'""',
    b"\x00", b"\xff\xfe", "\u202e".encode(), b'"\\ud800"', b'"\\u0000"', b"x" * 200_000, b'"', b"'", b"\r", b"\n", b",",
    b";", b"\t", "\u0664\u0662".encode(), b"1979-05-27T07:32:00Z", b"- ", b"=", b"\\", b"<c t='e'><v>#N/A</v></c>",
    b'<row r="99999999999">', b"<!DOCTYPE a>", b"(", b")", b"<<", b">>", b"/V 5", b"/T 7", b"endobj",
)  # fmt: skip


@dataclass
class Report:
    """What a run found."""

    cases: int = 0
    taken: int = 0
    refused: int = 0
    slow: int = 0
    peak_mb: float = 0.0
    defects: Counter[str] = field(default_factory=Counter)

    def __str__(self) -> str:
        lines = [
            f"cases {self.cases}: taken {self.taken}, refused {self.refused}, defects {sum(self.defects.values())}, "
            f"over {SLOW_S:g} s {self.slow}, memory above the start {self.peak_mb:.0f} MB (bound {LARGE_MB})"
        ]
        return "\n".join([*lines, *(f"{count} x {where}" for where, count in self.defects.most_common(20))])


def _survey(path: Path) -> None:
    read_survey(path)


def _terms(path: Path) -> None:
    terms_from_toml(file_text(path), str(path))


def _profile(path: Path) -> None:
    profile_from_toml(file_text(path), str(path))


def _form(path: Path) -> None:
    records_from_form(path.read_bytes(), str(path))


@dataclass(frozen=True)
class Target:
    """A reader, the name of its file, and sound content."""

    file: str
    read: Callable[[Path], object]
    sound: bytes


def targets() -> tuple[Target, ...]:
    """Return every reader of files from outside."""
    return (
        Target("survey.json", _survey, survey_to_json(demo_survey("small_town")).encode()),
        Target("terms.toml", _terms, _TERMS),
        Target("profile.toml", _profile, _PROFILE),
        Target("job.toml", read_pack_job, b'number = "7"\nremarks = "gate left"\n[contact]\nname = "N. Body"\n'),
        Target("stock.csv", read_stock, b"part_number,quantity\nQA-1,3\nQA-2,0\n"),
        Target("table.csv", read_sheet, b"Label;Duty;Hook height\n1;car;1.2\n2;truck;1.4\n"),
        Target("table.xlsx", read_sheet, workbook()),
        Target("form.pdf", _form, _pdf()),
        Target("photo.png", photo_of, b"\x89PNG\r\n\x1a\n" + bytes(64)),
    )


_PROFILE = b'id = "own"\ntitle = "Own"\nedition = "1"\n[[limit]]\nid = "x"\nvalue = 1.5\n'
_TERMS = (
    b'complete = true\n[heading]\nnumber = "Q-1"\ndate = 2026-01-31\ncurrency = "USD"\n'
    b'[heading.seller]\nname = "Invented"\n'
    b'[[tax]]\ntitle = "t"\npercent = 5.5\n'
)


def workbook(rows: int = 3, dimension: str = "") -> bytes:
    """Return a workbook of a few rows; ``dimension`` overrides the size that the sheet states."""
    import openpyxl

    book = openpyxl.Workbook()
    sheet = book.active
    sheet.append(["Label", "Duty", "Hook height"])
    for number in range(1, rows + 1):
        sheet.append([str(number), "car", 1.2])
    out = io.BytesIO()
    book.save(out)
    if not dimension:
        return out.getvalue()
    import re

    return rezipped(
        out.getvalue(),
        lambda name, text: re.sub(rb'<dimension ref="[^"]*"', b'<dimension ref="%s"' % dimension.encode(), text),
    )


def rezipped(content: bytes, change: Callable[[str, bytes], bytes]) -> bytes:
    """Return an archive with each of its files changed."""
    out = io.BytesIO()
    with zipfile.ZipFile(io.BytesIO(content)) as old, zipfile.ZipFile(out, "w", zipfile.ZIP_DEFLATED) as new:
        for name in old.namelist():
            new.writestr(name, change(name, old.read(name)))
    return out.getvalue()


def _pdf() -> bytes:
    from reportlab.pdfgen.canvas import Canvas

    out = io.BytesIO()
    canvas = Canvas(out, pageCompression=0)
    canvas.drawString(50, 700, "form")
    for place, name in enumerate(("p1_tag", "p1_language", "p1_units", "p1_planned", "p1_done_on")):
        canvas.acroForm.textfield(name=name, value="x", x=50, y=50 + 40 * place, width=200)
    canvas.showPage()
    canvas.save()
    return out.getvalue()


def mutated(sound: bytes, chance: random.Random) -> bytes:
    """Return content with a few places changed, dropped, doubled or replaced by a token that hurts readers."""
    content = bytearray(sound)
    for _ in range(chance.randint(1, 4)):
        place = chance.randrange(len(content) + 1)
        end = min(len(content), place + chance.choice((0, 1, 2, 8, 40)))
        match chance.randrange(4):
            case 0:
                content[place:end] = chance.choice(_TOKENS)
            case 1:
                content[place:end] = b""
            case 2:
                content[place:place] = content[place:end]
            case _:
                content[place:end] = bytes(chance.randrange(256) for _ in range(end - place))
    return bytes(content)


def case(target: Target, chance: random.Random) -> bytes:
    """Return one input for a reader; most of a workbook's mutations hit the texts inside the archive."""
    if target.file.endswith(".xlsx") and chance.random() < 0.9:
        names = zipfile.ZipFile(io.BytesIO(target.sound)).namelist()
        hit = chance.choice([*names, *["xl/worksheets/sheet1.xml"] * 6])
        return rezipped(target.sound, lambda name, text: mutated(text, chance) if name == hit else text)
    if target.sound.startswith(b"{") and chance.random() < 0.5:  # a number of the survey becomes an odd one
        import re

        numbers = list(re.finditer(rb": (-?[0-9.]+)", target.sound))
        one = chance.choice(numbers)
        odd = chance.choice((b"1e-308", b"-1e-308", b"1e308", b"5e-324", b"-0.0", b"0", b"9" * 5000, b"1e-12"))
        return target.sound[: one.start(1)] + odd + target.sound[one.end(1) :]
    return mutated(target.sound, chance)


def run(cases: int, seed: int, folder: Path) -> Report:
    """Give ``cases`` inputs to the readers in turn and return what happened."""
    chance = random.Random(seed)
    report = Report()
    readers = targets()
    start = _held_mb()
    for number in range(cases):
        target = readers[number % len(readers)]
        path = folder / target.file
        path.write_bytes(case(target, chance))
        begun = time.perf_counter()
        try:
            target.read(path)
            report.taken += 1
        except InputFault:
            report.refused += 1
        except Exception as fault:
            last = traceback.extract_tb(fault.__traceback__)[-1]
            report.defects[f"{target.file}: {type(fault).__name__} {str(fault)[:80]} ({last.name}:{last.lineno})"] += 1
        report.slow += time.perf_counter() - begun > SLOW_S
        report.cases += 1
        report.peak_mb = max(report.peak_mb, _held_mb() - start)
    return report


def _held_mb() -> float:
    """Return the most memory that this process has held, MB."""
    return resource.getrusage(resource.RUSAGE_SELF).ru_maxrss / 1024


def main() -> int:
    """Run on request, print the report, and fail where anything was found."""
    parser = argparse.ArgumentParser(description=__doc__)
    parser.add_argument("--cases", type=int, default=10_000)
    parser.add_argument("--seed", type=int, default=1)
    arguments = parser.parse_args()
    with tempfile.TemporaryDirectory() as folder:
        report = run(arguments.cases, arguments.seed, Path(folder))
    sys.stdout.write(f"{report}\n")
    return int(bool(report.defects or report.slow or report.peak_mb > LARGE_MB))


if __name__ == "__main__":
    sys.exit(main())
