"""What a keeper is told before publishing: what lacks, what joins nothing, what can never be chosen, which prices."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import replace
from datetime import date
from decimal import Decimal
from pathlib import Path

import pytest

from spoutline.catalogue.descriptions import describe, entry_of
from spoutline.catalogue.store import CatalogueStore
from spoutline.model.candidate_filter import CandidateFilter
from spoutline.model.catalogue_entry import CatalogueEntry
from spoutline.model.finding import Severity, Verdict
from spoutline.model.limit import RuleTables
from spoutline.model.liquid import LiquidFamily
from spoutline.model.part import Part, PartKind, PartStatus
from spoutline.model.pricing import PriceBreak, PriceList, PriceRow
from spoutline.model.requirement import Requirement, Slot
from spoutline.planning.keeping import health
from spoutline.planning.keeping.health import HealthNote, Matter, health_of
from spoutline.planning.keeping.questions import requirements
from spoutline.planning.sets.pool import SLOT_KINDS
from spoutline.rules.declared.rule_ids import RuleId
from spoutline.rules.parts.part_rules import judge_part
from spoutline.ruletables.load import load_rule_tables
from stores.catalogue.entries import MAKER, priced_only, swivel

TODAY = date(2026, 11, 28)


@pytest.fixture(scope="module")
def tables() -> RuleTables:
    return load_rule_tables("us_general", resources=Path(__file__).parents[2] / "resources", own_profiles=None)


@pytest.fixture(scope="module", autouse=True)
def asked_once(tables: RuleTables) -> Iterator[None]:
    """Derive the questions once for all tests of this module."""
    known = requirements((tables,))
    with pytest.MonkeyPatch.context() as patch:
        patch.setattr(health, "requirements", lambda _: known)
        yield


def notes(
    tables: RuleTables, *entries: CatalogueEntry, lists: tuple[PriceList, ...] = ()
) -> dict[Matter, list[HealthNote]]:
    found: dict[Matter, list[HealthNote]] = {matter: [] for matter in Matter}
    for note in health_of(entries, (tables,), lists, TODAY):
        found[note.matter].append(note)
    return found


def price_list(name: str, until: date | None, currency: str = "USD") -> PriceList:
    row = PriceRow(part_number="FW 1", discount_group="", breaks=(PriceBreak(1, Decimal("17.65")),))
    return PriceList(id=name, maker=MAKER, currency=currency, valid_from=date(2026, 1, 1), valid_to=until, rows=(row,))


def test_what_is_not_yet_described_is_listed_with_what_it_lacks(tables: RuleTables) -> None:
    found = notes(tables, swivel(), swivel("FW 2", mass_kg=None, pull_strength_n=None), priced_only())
    listed = {note.ref.number: note.columns for note in found[Matter.NOT_DESCRIBED] if note.ref}
    assert listed == {"FW 2": ("mass_kg",), "FW 900": ("kind",)}  # a maker may leave the pull strength out


def test_an_end_that_no_other_kind_of_part_joins_is_told(tables: RuleTables) -> None:
    """NPT and G threads never mate: 60 against 55 degrees (ASME B1.20.1, ISO 228-1)."""
    adaptor_like = swivel("FW 3", inlet="G 1 female single", outlet="G 1 male single")
    found = notes(tables, swivel(), adaptor_like)
    assert {note.ref.number: [str(port) for port in note.ports] for note in found[Matter.NO_MATE] if note.ref} == {
        "FW 1": ["NPT 3/4 female single", "NPT 3/4 male single"],  # two swivels are no chain
        "FW 3": ["G 1 female single", "G 1 male single"],
    }


def test_a_part_that_breaks_a_must_of_every_question_is_told_with_the_rule(tables: RuleTables) -> None:
    """A swivel's resistance is limited to 500 kilohms (UL 567A 12.2, secondary source)."""
    found = notes(tables, swivel(), swivel("FW 4", resistance_ohm="620000"), swivel("FW 5", status="discontinued"))
    never = {note.ref.number: [one.rule_id for one in note.findings] for note in found[Matter.NEVER_CHOSEN] if note.ref}
    assert never == {"FW 4": [RuleId.PART_RESISTANCE]}


def test_a_part_is_told_of_at_the_questions_that_it_is_made_for(
    tables: RuleTables, monkeypatch: pytest.MonkeyPatch
) -> None:
    """A fuel swivel that breaks one rule is told of it, though DEF, asked first, breaks one as well: it is not offered.

    DEF conducts: no limit on resistance holds for it, and stainless steel serves (ISO 22241-3, from memory).
    """
    def_first = sorted(requirements((tables,)), key=lambda one: one.liquid.family is not LiquidFamily.DEF)
    monkeypatch.setattr(health, "requirements", lambda _: def_first)
    faulty = swivel("FW 6", resistance_ohm="620000", materials="stainless_steel fkm")
    (told,) = notes(tables, swivel(), faulty)[Matter.NEVER_CHOSEN]
    assert [one.rule_id for one in told.findings] == [RuleId.PART_RESISTANCE]


def musts_broken(part: Part, slot: Slot, requirement: Requirement, tables: RuleTables) -> list[RuleId]:
    """Judge one part at one question, leaving out what a survey or an offer decides."""
    elsewhere = {RuleId.PART_PRICE, RuleId.PART_REFUSED, RuleId.PART_LEAD_TIME}
    return [
        one.rule_id
        for one in judge_part(part, slot, requirement, tables)
        if (one.verdict, one.severity) == (Verdict.BROKEN, Severity.MUST) and one.rule_id not in elsewhere
    ]


def test_whole_kinds_are_judged_as_each_part_is_at_each_question(catalogue: CatalogueStore, tables: RuleTables) -> None:
    """Oracle: each part judged by itself at every question whose path and listing class it has, one after the other."""
    meant_for_others = {RuleId.PART_CLASS, RuleId.PART_SCHEME, RuleId.PART_DEF_OFFER}
    kinds = (PartKind.NOZZLE, PartKind.BREAKAWAY, PartKind.ADAPTOR)
    parts = [part for kind in kinds for part in catalogue.candidates(CandidateFilter(kind=kind))[::79]]
    hot = [
        replace(part, number=f"{part.number}-X", temperature_minimum_c=60.0, temperature_maximum_c=61.0)
        for part in parts[::2]
    ]
    sold = [part for part in (*parts, *hot) if part.status is PartStatus.ACTIVE]
    expected = {}
    for part in sold:
        slot = next(one for one, kind in SLOT_KINDS.items() if kind is part.kind)
        fitting = slot in (Slot.ADAPTOR, Slot.SPLITTER)
        asked = [one for one in requirements((tables,)) if fitting or slot in one.chain]
        suited = [
            one for one in asked if one.path is part.path and (fitting or one.listing_class in (None, *part.listings))
        ]
        told = [musts_broken(part, slot, one, tables) for one in suited or asked[:1]]
        expected[part.ref] = min(told, key=lambda broken: (sum(one in meant_for_others for one in broken), len(broken)))
    found = notes(tables, *map(entry_of, sold))[Matter.NEVER_CHOSEN]
    assert {note.ref: [one.rule_id for one in note.findings] for note in found} == {
        ref: broken for ref, broken in expected.items() if broken
    }
    assert found


def test_a_price_far_from_its_kind_a_missing_price_and_a_missing_scheme_are_told(tables: RuleTables) -> None:
    usual = [swivel(f"FW {number}", price=1700 + number) for number in range(10, 20)]
    found = notes(
        tables, *usual, swivel("FW 7", price=99_000), swivel("FW 8", price=None), swivel("FW 9", schemes=None)
    )
    assert [note.ref.number for note in found[Matter.PRICE_UNUSUAL] if note.ref] == ["FW 7"]
    assert [note.ref.number for note in found[Matter.NO_PRICE] if note.ref] == ["FW 8"]
    assert [note.ref.number for note in found[Matter.NO_SCHEME] if note.ref] == ["FW 9"]


def test_a_price_list_that_has_ended_or_soon_will_is_told_unless_another_follows(tables: RuleTables) -> None:
    ended, soon, later = date(2026, 11, 27), date(2026, 12, 20), date(2027, 6, 30)
    lists = (price_list("usd", ended), price_list("eur", soon, "EUR"), price_list("cad", later, "CAD"))
    found = notes(tables, swivel(price=None), lists=lists)
    assert [(note.price_list, note.day) for note in found[Matter.LIST_EXPIRED]] == [("usd", ended)]
    assert [(note.price_list, note.day) for note in found[Matter.LIST_EXPIRES]] == [("eur", soon)]
    assert found[Matter.NO_PRICE] == []  # the list has it
    followed = notes(tables, swivel(), lists=(price_list("usd", ended), price_list("next", later)))
    assert followed[Matter.LIST_EXPIRED] == []


def test_a_sound_part_is_described_and_an_impossible_figure_is_told(tables: RuleTables) -> None:
    assert describe(swivel()).part is not None
    hot_below_cold = swivel("FW 6", temp_min_c="60", temp_max_c="-10")
    found = notes(tables, hot_below_cold)
    assert [fault.column for note in found[Matter.FAULTY] for fault in note.faults] == ["temp_min_c"]
