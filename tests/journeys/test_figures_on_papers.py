"""Every figure of every paper of every demo station stands in one of the forms that the one formatter gives.

The forms are those of the trade (common practice, no source): feet, inches and sixteenths as a tape is read in US
units, metres to the millimetre in SI units, a large resistance in kilo-ohm or megohm; nothing of the other system.
"""

from __future__ import annotations

import dataclasses
import re
from collections.abc import Iterator
from datetime import date

import pytest

from examples import stations
from planning.quoting_terms import terms_of
from spoutline.bootstrap import Workbench
from spoutline.bootstrap.demos import demo_survey
from spoutline.documents.content.blocks import CautionNote, Document, ScanCode, TextBox
from spoutline.documents.pdf import render
from spoutline.explain.plan.texts import WorkedText
from spoutline.model.language import Language
from spoutline.model.pack import PackJob
from spoutline.planning.protocols import Progress
from spoutline.units.accepted import UnitSystem
from spoutline.units.display import Display

pytestmark = pytest.mark.usefixtures("plans_once")
AS_FOUND = terms_of(options=[{"title": "As found"}])

_NUMBER = r"(?<![\w.,/-])[-+−]?\d+(?:[.,/]\d+)*"
_SI_UNITS = (
    r"(?:m|mm|cm|metres?|meters?|kPa|Pa|N|N/m|N·m|L|L/min|kg|kg/m|m²|m³|m/s|kg/m³|°C|K|Ω/m|kΩ/m|g/m²·day|g/day|mg/L)"
)
_US_UNITS = r"(?:ft|feet|psi|gpm|lbf|lbf/ft|lbf·ft|gal|lb|lb/ft|ft²|ft/s|lb/ft³|°F|Ω/ft|kΩ/ft|lb/day|lb/1000 gal)"
_END = r"(?![\w/²³·])"
FOREIGN = {
    UnitSystem.US: re.compile(rf"{_NUMBER} ?{_SI_UNITS}{_END}"),
    UnitSystem.SI: re.compile(rf"{_NUMBER} ?{_US_UNITS}{_END}"),
}
# in either system: decimals of a foot, a whole thousand of bare ohms, more digits than anybody measures
ILL_FORMED = {
    "decimals of a foot": re.compile(rf"\d\.\d+ ft{_END}"),
    "inches beyond a foot": re.compile(rf"(?<![\d./])(?:1[2-9]|[2-9]\d|\d{{3,}})(?: \d+/\d+)? in{_END}"),
    "a fraction no tape has": re.compile(r"\d/(?!2 |4 |8 |16 )\d+ in(?!\w)"),
    "a thousand ohms and more": re.compile(rf"(?<![\d.])\d{{4,}}(?:\.\d+)? Ω{_END}"),
    "a length beyond the millimetre": re.compile(rf"\d\.\d{{4,}} m{_END}"),
    "an exponent": re.compile(r"(?<![\w.])\d+(?:\.\d+)?[eE][+-]?\d+(?!\w)"),  # no fingerprint, which holds such signs
    "an unknown unit sign": re.compile(r"\bm[23]\b|\bohm\b|\(m2|\bdegC\b|\bdegF\b"),
}
# sources are cited as they are published
CITED = (
    "25 to 50 psi is usual",
    "spout, nominal 19 mm",
    "flash point above 38 °C (100 °F)",
    "CARB and UL 330, at 38 °C",
    "ε0 = 8.854187813e-12 F/m, CODATA 2018",
    "first 300 mm (12 in)",
)


# a coefficient of a published formula stands in the units of that formula
COEFFICIENT = re.compile(r"-?[\d.]+ (?:1/psi|1/°F|°F)")


def texts_in(value: object) -> Iterator[str]:
    """Yield every text of a content tree; cautions give their figures in both systems, and a formula has none."""
    if isinstance(value, str):
        yield value
    elif isinstance(value, ScanCode):
        yield value.caption
    elif isinstance(value, TextBox) and value.hidden:
        return
    elif isinstance(value, WorkedText):
        yield from (value.inputs, value.result, value.note)
    elif isinstance(value, CautionNote):
        return
    elif isinstance(value, tuple | list):
        for one in value:
            yield from texts_in(one)
    elif dataclasses.is_dataclass(value) and not isinstance(value, type):
        for field in dataclasses.fields(value):
            yield from texts_in(getattr(value, field.name))


def told(document: Document) -> list[str]:
    return [text for block in document.blocks for text in texts_in(block)]


def papers_of(bench: Workbench, name: str, display: Display, monkeypatch: pytest.MonkeyPatch) -> dict[str, Document]:
    """Return the content of each paper of a demo station, as it is handed to the setting."""
    found: dict[str, Document] = {}
    papers: list[Document] = []

    def caught(document: Document, _progress: Progress | None) -> bytes:
        papers.append(document)
        return b""

    monkeypatch.setattr(render, "pdf_bytes", caught)
    survey = demo_survey(name)
    plan = bench.plan_site(survey)
    packing, quoting, english = bench.packing(), bench.quoting(), Language.ENGLISH
    quotation = quoting.quote(survey, AS_FOUND, display).quotation
    conversion = bench.converting().convert_shown(survey)[0]
    made = {
        "bill": lambda: bench.bills().pdf(plan, display),
        "pack": lambda: packing.pack(plan, english, display, PackJob()),
        "form": lambda: packing.form(plan, english, display),
        "inspection": lambda: packing.inspection_plan(plan, packing.due(plan, date(2027, 1, 4)), english, display),
        "quotation": lambda: quoting.papers().pdf(quotation, 1, display),
        "pick list": lambda: quoting.papers().pick_list(quotation, 0, 1, display),
        "conversion": lambda: bench.converting().pdf(conversion, display),
    }
    for paper, make in made.items():
        papers.clear()
        make()
        (found[paper],) = papers
    return found


@pytest.mark.parametrize("system", list(UnitSystem))
@pytest.mark.parametrize("name", stations("refit_48"))
def test_every_figure_on_every_paper_stands_in_an_allowed_form(
    name: str, system: UnitSystem, workbench: Workbench, monkeypatch: pytest.MonkeyPatch
) -> None:
    faults: set[str] = set()
    # the keeper of a catalog names the parts
    named = sorted({part.name for part in workbench.parts().search("", None, 10_000)}, key=len, reverse=True)
    for paper, document in papers_of(workbench, name, Display(system), monkeypatch).items():
        for text in set(told(document)):
            plain = COEFFICIENT.sub("", text) if COEFFICIENT.fullmatch(text) else text
            for given in (*CITED, *named):
                plain = plain.replace(given, "")
            for what, pattern in {**ILL_FORMED, f"not {system}": FOREIGN[system]}.items():
                faults.update(f"{paper}: {what}: {found.group()} in {text[:160]}" for found in pattern.finditer(plain))
    assert not faults, "\n".join(sorted(faults))
