"""The material table against what the public texts say of materials and fuels."""

from __future__ import annotations

import pytest

from spoutline import assets
from spoutline.model.faults import InputFault
from spoutline.model.limit import LimitStatus
from spoutline.model.material import Material, MaterialColumn, Suitability
from spoutline.ruletables.materials import materials_from_toml

TEXT = (assets.resources_folder() / "rules" / "materials.toml").read_text(encoding="utf-8")
TABLE = materials_from_toml(TEXT, "materials.toml")
FUELS = [column for column in MaterialColumn if column is not MaterialColumn.DEF]


def verdict(material: Material, column: MaterialColumn) -> Suitability:
    return TABLE.verdict(material, column).suitability


def test_every_material_has_a_verdict_with_basis_and_status_for_every_liquid() -> None:
    assert len(TABLE.entries) == len(Material) * len(MaterialColumn)
    assert {(entry.material, entry.column) for entry in TABLE.entries} == {
        (m, c) for m in Material for c in MaterialColumn
    }
    for entry in TABLE.entries:
        assert entry.source
        assert entry.status in [status.value for status in LimitStatus]


@pytest.mark.parametrize(
    "metal",
    # ISO 22241-3 annex, from memory: carbon steel, zinc, copper and its alloys, aluminium, lead and solder
    [
        Material.CARBON_STEEL,
        Material.ZINC,
        Material.BRASS,
        Material.COPPER_BRONZE,
        Material.ALUMINIUM,
        Material.LEAD_TIN,
    ],
)
def test_def_bars_the_metals_that_its_standard_bars(metal: Material) -> None:
    assert verdict(metal, MaterialColumn.DEF) is Suitability.UNSUITABLE


@pytest.mark.parametrize(
    "material",
    # ISO 22241-3 annex, from memory: austenitic stainless steel, PE, PP, PTFE, EPDM
    [Material.STAINLESS_STEEL, Material.HDPE, Material.POLYPROPYLENE, Material.PTFE, Material.EPDM],
)
def test_def_admits_what_its_standard_names(material: Material) -> None:
    assert verdict(material, MaterialColumn.DEF) is Suitability.SUITABLE


@pytest.mark.parametrize(
    "metal",
    # DOE/NREL biodiesel guide text on a public page: brass, bronze, copper, lead, tin, zinc speed up oxidation
    [Material.BRASS, Material.COPPER_BRONZE, Material.LEAD_TIN, Material.ZINC],
)
def test_b100_bars_the_metals_that_oxidise_it(metal: Material) -> None:
    assert verdict(metal, MaterialColumn.B100) is Suitability.UNSUITABLE
    assert TABLE.verdict(metal, MaterialColumn.B100).status == LimitStatus.SECONDARY


@pytest.mark.parametrize("metal", [Material.STAINLESS_STEEL, Material.CARBON_STEEL, Material.ALUMINIUM])
def test_b100_admits_the_metals_named_as_their_substitutes(metal: Material) -> None:
    # same guide text: swap for stainless, carbon steel or aluminium
    assert verdict(metal, MaterialColumn.B100) is Suitability.SUITABLE


@pytest.mark.parametrize("rubber", [Material.NBR, Material.NATURAL_RUBBER, Material.POLYPROPYLENE])
def test_b100_bars_what_the_guide_calls_vulnerable(rubber: Material) -> None:
    assert verdict(rubber, MaterialColumn.B100) is Suitability.UNSUITABLE


@pytest.mark.parametrize(
    "material",
    # DOE handbook on E85, from memory: zinc, brass, lead, aluminium, cork, leather, polyurethane, natural rubber
    [
        Material.ZINC,
        Material.BRASS,
        Material.LEAD_TIN,
        Material.ALUMINIUM,
        Material.CORK_LEATHER,
        Material.POLYURETHANE,
        Material.NATURAL_RUBBER,
    ],
)
def test_e85_bars_what_the_handbook_names(material: Material) -> None:
    assert verdict(material, MaterialColumn.E85) is Suitability.UNSUITABLE


def test_fluorocarbon_and_ptfe_stand_every_fuel() -> None:
    # ORNL elastomer study, abstract: fluorocarbon swells least of all in E0 to E25; PTFE: B100 little reaction
    for material in (Material.FKM, Material.PTFE, Material.STAINLESS_STEEL):
        assert all(verdict(material, column) is Suitability.SUITABLE for column in FUELS)


def test_more_ethanol_or_biodiesel_never_makes_a_material_more_suitable() -> None:
    rank = list(Suitability)
    for material in Material:
        for columns in (("E10", "E25", "E85"), ("B5", "B20", "B100")):
            ranks = [rank.index(verdict(material, MaterialColumn(column))) for column in columns]
            assert ranks == sorted(ranks), material


def faults_of(text: str) -> list[str]:
    with pytest.raises(InputFault) as caught:
        materials_from_toml(text, "materials.toml")
    return [str(problem) for problem in caught.value.problems]


@pytest.mark.parametrize(
    ("old", "new", "words"),
    [
        ('id = "fkm"', 'id = "fkmm"', ("row 1 (fkmm), id", "did you mean fkm")),
        ('id = "nbr"', 'id = "fkm"', ("each material stands once",)),
        (
            'E25 = "caution"',
            'E25 = "cautious"',
            ("row 2 (fluorosilicone), verdicts", "'cautious'", "did you mean caution"),
        ),
        (', DEF = "caution" }', " }", ("verdict for DEF",)),
        ('columns = ["DEF"]', 'columns = ["UREA"]', ("basis", "'UREA'")),
        ('status = "memory"', 'status = "sure"', ("status", "memory")),
        ('edition = "2026-11"', "", ("edition",)),
        ('edition = "2026-11"', 'edition = "2026-11"\nsource = "x"', ("source",)),
    ],
)
def test_a_fault_names_material_field_and_what_would_be_right(old: str, new: str, words: tuple[str, ...]) -> None:
    assert old in TEXT
    faults = faults_of(TEXT.replace(old, new, 1))
    assert any(all(word in fault for word in words) for fault in faults), faults


def test_a_material_without_a_row_is_named() -> None:
    start = TEXT.index('[[material]]\nid = "epdm"')
    end = TEXT.index('[[material]]\nid = "ptfe"')
    (fault,) = faults_of(TEXT[:start] + TEXT[end:])
    assert "epdm" in fault
