"""`drawing`: a position as SVG and PNG, its words, and what it refuses."""

from __future__ import annotations

from collections.abc import Callable
from pathlib import Path
from typing import Any
from xml.etree import ElementTree

import pytest
from PIL import Image

from cli.test_substitutes_command import TOO_FAR

# Scalable Vector Graphics (SVG) 2, W3C, 1.2: the namespace
_SVG = "{http://www.w3.org/2000/svg}"


def _words(path: Path) -> str:
    return " ".join(" ".join("".join(one.itertext()).split()) for one in ElementTree.parse(path).iter(f"{_SVG}text"))


def _points(path: Path) -> tuple[float, float]:
    root = ElementTree.parse(path).getroot()
    assert root.tag == f"{_SVG}svg"
    width, height = (float(root.attrib[side].removesuffix("pt")) for side in ("width", "height"))
    return width, height


def test_both_forms_show_the_position_as_large_as_on_paper(
    spoutline: Any, written: Callable[..., Path], tmp_path: Path
) -> None:
    path, svg, png = written(), tmp_path / "one.svg", tmp_path / "one.png"
    assert spoutline("drawing", path, "1", "--out", svg).code == 0
    assert spoutline("drawing", path, "1", "--out", png, "--dpi", "144").code == 0
    width, height = _points(svg)
    with Image.open(png) as image:
        # ISO 32000-1, 8.3.2.3: a point is 1/72 in; a raster holds whole dots, so each side may gain up to one
        assert image.size == (pytest.approx(width * 2, abs=1.01), pytest.approx(height * 2, abs=1.01))
        assert image.info["dpi"] == pytest.approx((144, 144), abs=0.1)
        grey = image.convert("L")
        darkest, lightest = grey.getextrema()
        assert lightest == 255
        assert darkest < 128  # lines are drawn
        drawn = grey.point(lambda value: 255 if value < 200 else 0).getbbox()
        assert drawn is not None
        assert drawn[2] - drawn[0] > image.width / 2
    again = tmp_path / "again.png"
    assert spoutline("drawing", path, "1", "--out", again, "--dpi", "144").code == 0
    assert again.read_bytes() == png.read_bytes()


def test_words_follow_the_units_and_the_language_asked_for(
    spoutline: Any, written: Callable[..., Path], tmp_path: Path
) -> None:
    path, metric, feet = written(), tmp_path / "metric.svg", tmp_path / "feet.svg"
    told = spoutline("--units", "si", "--language", "es", "drawing", path, "1", "--out", metric)
    in_feet = spoutline("--units", "us", "--language", "en", "drawing", path, "1", "--out", feet)
    assert told.code == in_feet.code == 0
    assert " ft" in _words(feet)
    assert " ft" not in _words(metric)
    description = "".join(ElementTree.parse(metric).getroot().find(f"{_SVG}desc").itertext())  # type: ignore[union-attr]
    assert " ".join(told.out.split("\n", 1)[1].split()) == " ".join(description.split())
    assert told.out != in_feet.out


def test_without_a_set_the_surroundings_are_drawn_and_the_code_tells_it(
    spoutline: Any, written: Callable[..., Path], tmp_path: Path
) -> None:
    svg = tmp_path / "far.svg"
    done = spoutline("drawing", written(TOO_FAR), "far", "--out", svg)
    assert done.code == 1
    assert "✗" in done.out
    assert _points(svg)[0] > 0


def test_words_alone_write_nothing(spoutline: Any, written: Callable[..., Path], tmp_path: Path) -> None:
    path = written()
    before = sorted(tmp_path.rglob("*.svg")) + sorted(tmp_path.rglob("*.png"))
    done = spoutline("drawing", path, "1")
    assert done.code == 0
    assert done.out.startswith("1: ✓")
    assert sorted(tmp_path.rglob("*.svg")) + sorted(tmp_path.rglob("*.png")) == before


@pytest.mark.parametrize(
    ("more", "named"),
    [
        (("--out", "drawing.jpg"), ("--out", ".svg or .png")),
        (("--out", "drawing.png", "--dpi", "6000"), ("--dpi", "from 36 to 600")),
    ],
)
def test_what_cannot_be_written_is_refused(
    spoutline: Any, written: Callable[..., Path], tmp_path: Path, more: tuple[str, ...], named: tuple[str, ...]
) -> None:
    words = [str(tmp_path / word) if word.startswith("drawing.") else word for word in more]
    done = spoutline("drawing", written(), "1", *words)
    assert done.code == 2
    assert all(word in done.err for word in named)
    assert not list(tmp_path.glob("drawing.*"))


def test_a_picture_that_is_there_is_kept(spoutline: Any, written: Callable[..., Path], tmp_path: Path) -> None:
    svg = tmp_path / "mine.svg"
    svg.write_text("<svg>drawn on by hand</svg>")
    done = spoutline("drawing", written(), "1", "--out", svg)
    assert done.code == 2
    assert svg.read_text() == "<svg>drawn on by hand</svg>"
    assert spoutline("drawing", written(), "1", "--out", svg, "--force").code == 0
    assert _points(svg)[0] > 0
