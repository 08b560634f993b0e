"""Bad rows are reported with file, line, column, value and what would be right; the database stays as it was."""

import csv
from pathlib import Path

import pytest
from sqlalchemy import text

from spoutline.catalogue.build import ensure_catalogue
from spoutline.catalogue.compile import compile_catalogue
from spoutline.catalogue.source import read_source
from spoutline.database.engine import open_engine
from spoutline.model.faults import InputFault, InputProblem
from spoutline.model.part_ref import PartRef


def cell_changed(source: Path, file: str, number: str, /, **cells: str) -> str:
    """Write ``cells`` into the row of the part ``number`` and return where that row stands."""
    path = source / file
    lines = path.read_text(encoding="utf-8").splitlines()
    rows = [(at, next(csv.reader([line]))) for at, line in enumerate(lines) if line and not line.startswith("#")]
    header = rows[0][1]
    for at, row in rows[1:]:
        if row[header.index("number")] == number:
            for column, value in cells.items():
                row[header.index(column)] = value
            lines[at] = ",".join(f'"{cell}"' for cell in row)
            path.write_text("\n".join(lines) + "\n", encoding="utf-8")
            return f"{file}:{at + 1}"
    raise LookupError(number)


def problems_of(source: Path) -> tuple[InputProblem, ...]:
    with pytest.raises(InputFault) as caught:
        read_source(source)
    return caught.value.problems


BAD_CELLS = [
    # file, number, column, value, words of the message
    ("nozzles.csv", "QW-N101", "spout_od_mm", "thick", "number"),
    ("nozzles.csv", "QW-N101", "spout_od_mm", "nan", "finite"),
    ("nozzles.csv", "QW-N101", "spout_od_mm", "-21", "greater than or equal to 5"),
    ("nozzles.csv", "QW-N101", "spout_od_mm", "", "a value is needed"),
    ("nozzles.csv", "QW-N101", "operation", "sometimes", "'automatic' or 'manual'"),
    ("nozzles.csv", "QW-N101", "hold_open", "true", "write yes or no"),
    ("nozzles.csv", "QW-N101", "inlet", "NPT 3/4 female", "thread standard, size, gender and path"),
    ("nozzles.csv", "QW-N101", "inlet", "NPT 7/8 female single", "1/2, 3/4, 1, 1-1/4"),
    ("nozzles.csv", "QW-N101", "inlet", "BSP 3/4 female single", "NPT, G, M, UN"),
    ("nozzles.csv", "QW-N101", "inlet", "NPT 3/4 neuter single", "male, female"),
    ("nozzles.csv", "QW-N101", "inlet", "NPT 3/4 female balance", "carries the path single"),
    ("nozzles.csv", "QW-N101", "listings", "E15", "'E10'"),
    ("nozzles.csv", "QW-N101", "listings", "E10 E10", "once"),
    ("nozzles.csv", "QW-N101", "listings", "B20", "service gasoline carries E10, E25, E85"),
    ("nozzles.csv", "QW-N101", "materials", "unobtainium", "'fkm'"),
    ("nozzles.csv", "QW-N101", "materials", "", "at least one"),
    ("nozzles.csv", "QW-N101", "schemes", "US", "'UL' or 'EN'"),
    ("nozzles.csv", "QW-N101", "liquids", "diesel", "service gasoline delivers gasoline"),
    ("nozzles.csv", "QW-N101", "min_flow_l_min", "55", "must not exceed max_flow_l_min (50)"),
    ("nozzles.csv", "QW-N101", "min_flow_l_min", "", "an automatic nozzle states it"),
    ("nozzles.csv", "QW-N101", "opening_pressure_kpa", "20", "with a no-pressure device"),
    ("nozzles.csv", "QW-N101", "bellows", "yes", "only a balance nozzle"),
    ("nozzles.csv", "QW-N101", "def_zone_evaluated", "yes", "DEF"),
    ("nozzles.csv", "QW-N101", "kv_m3_h", "", "states its flow coefficient"),
    ("nozzles.csv", "QW-N101", "temp_min_c", "55", "must not exceed temp_max_c (52)"),
    ("nozzles.csv", "QW-N101", "max_pressure_kpa", "0", "greater than 0"),
    ("nozzles.csv", "QW-N101", "price_usd", "12.345", "2 decimal places"),
    ("nozzles.csv", "QW-N101", "lead_days", "soon", "integer"),
    ("nozzles.csv", "QW-N101", "status", "retired", "'active'"),
    ("nozzles.csv", "QW-N102", "superseded_by", "QW-N101", "names the part that took its place"),
    ("nozzles.csv", "QW-N101", "name", "", "a value is needed"),
    ("nozzles.csv", "QW-N104", "enhanced_conventional", "maybe", "write yes or no"),
    ("swivels.csv", "LS-S101", "planes", "4", "less than or equal to 3"),
    ("breakaways.csv", "LS-B101", "separation_min_n", "900", "must not exceed separation_max_n (890)"),
    ("breakaways.csv", "LS-B101", "closes_vapour", "yes", "no vapor path"),
    ("breakaways.csv", "LS-B101", "placements", "halfway", "'dispenser_end' or 'nozzle_end'"),
    ("breakaways.csv", "LS-B101", "outlet", "UN 1-7/8-12 female balance", "one path"),
    ("curb_hoses.csv", "TH-H101", "length_m", "-3", "greater than 0"),
    ("curb_hoses.csv", "TH-H101", "bore_mm", "31", "less than outside_diameter_mm (30)"),
    ("curb_hoses.csv", "TH-H101", "mass_kg", "0.5", "hose alone"),
    ("curb_hoses.csv", "TH-H101", "inner_tube_od_mm", "9", "a single-path hose does not"),
    ("curb_hoses.csv", "TH-H101", "built_in_swivel", "yes", "only a coaxial hose"),
    ("whip_hoses.csv", "TH-W101", "construction", "stiffwall", "'hardwall' or 'softwall'"),
    ("adaptors.csv", "GR-A101", "closes_vapour", "yes", "coaxial"),
    ("adaptors.csv", "GR-A101", "outlet", "UN 1-7/8-12 female balance", "splitter"),
    ("splitters.csv", "GR-D101", "outlet", "NPT 3/4 female single", "coaxial outlet"),
    ("accessories.csv", "GR-K101", "kind", "nozzle", "cap, hose_clamp, sealant, label"),
    ("accessories.csv", "GR-K101", "fits_min_mm", "29", "must not exceed fits_max_mm (28)"),
    ("accessories.csv", "GR-L101", "label_classes", "", "names classes or DEF"),
]


@pytest.mark.parametrize(("file", "number", "column", "value", "words"), BAD_CELLS)
def test_a_bad_cell_is_reported_with_place_value_and_what_would_be_right(source, file, number, column, value, words):
    place = cell_changed(source, file, number, **{column: value})
    problems = [problem for problem in problems_of(source) if problem.field.partition(".")[0] == column]
    assert problems
    for problem in problems:
        assert problem.place == place
        assert problem.value == (repr(value) if value else "an empty cell")
    assert any(words in problem.wanted for problem in problems), problems


def test_every_fault_of_every_file_is_reported_together(source):
    places = {
        cell_changed(source, "nozzles.csv", "QW-N101", spout_od_mm="thick", hold_open="perhaps"),
        cell_changed(source, "swivels.csv", "LS-S101", planes="9"),
        cell_changed(source, "curb_hoses.csv", "TH-H102", length_m="0"),
    }
    problems = problems_of(source)
    assert {problem.place for problem in problems} == places
    assert len(problems) == 4


def test_a_number_used_twice_names_both_rows(source):
    place = cell_changed(source, "nozzles.csv", "QW-N102", number="QW-N101")
    (problem,) = [problem for problem in problems_of(source) if problem.field == "number"]
    assert problem.place == place
    assert problem.value == "'QW-N101'"
    assert "nozzles.csv:3" in problem.wanted


@pytest.mark.parametrize(
    ("number", "words"),
    [("qw-n101", "match"), ("ZZ-N101", "a maker's prefix: GR, LS"), ("QW-B999", "letter N after the hyphen")],
)
def test_a_number_outside_the_scheme_is_reported(source, number, words):
    place = cell_changed(source, "nozzles.csv", "QW-N103", number=number)
    problems = [problem for problem in problems_of(source) if problem.field == "number"]
    assert [(problem.place, problem.value) for problem in problems] == [(place, repr(number))]
    assert words in problems[0].wanted


@pytest.mark.parametrize(
    ("successor", "words"),
    [("QW-N109999", "in the catalog; the nearest is QW-N10"), ("LS-S101", "same kind (nozzle)"), ("QW-N101", "own")],
)
def test_a_successor_must_be_a_part_of_the_same_kind(source, successor, words):
    place = cell_changed(source, "nozzles.csv", "QW-N101", status="superseded", superseded_by=successor)
    problems = [problem for problem in problems_of(source) if problem.place == place]
    assert [problem.field for problem in problems] == ["superseded_by"]
    assert words in problems[0].wanted


def test_an_unknown_column_gets_the_nearest_known_one(source):
    path = source / "swivels.csv"
    path.write_text(path.read_text().replace("planes", "plains", 1))
    problems = {problem.value: problem for problem in problems_of(source)}
    assert problems["'plains'"].wanted == "the nearest known column is planes"
    assert problems["'plains'"].place == "swivels.csv:1"
    assert "a column planes" in problems["missing"].wanted


def test_a_row_with_too_few_cells_is_reported(source):
    path = source / "splitters.csv"
    path.write_text(path.read_text() + "GR-D999,too short\n")
    (problem,) = problems_of(source)
    assert problem.place == f"splitters.csv:{len(path.read_text().splitlines())}"
    assert problem.value == "2 cells"


def test_an_unclosed_quote_is_reported_with_its_file(source):
    path = source / "splitters.csv"
    path.write_text(path.read_text() + '"GR-D999,never closed\n')
    (problem,) = problems_of(source)
    assert problem.place.startswith("splitters.csv:")


@pytest.mark.parametrize("file", ["nozzles.csv", "makers.toml", "edition.toml"])
def test_a_missing_file_is_named(source, file):
    (source / file).unlink()
    assert (file, "file") in {(problem.place, problem.field) for problem in problems_of(source)}


def test_an_empty_table_says_which_columns_belong_there(source):
    (source / "swivels.csv").write_text("# nothing yet\n")
    (problem,) = [problem for problem in problems_of(source) if problem.place == "swivels.csv"]
    assert "planes" in problem.wanted


def test_a_file_in_another_encoding_is_named(source):
    (source / "splitters.csv").write_bytes("number,näme\n".encode("latin-1"))
    (problem,) = problems_of(source)
    assert (problem.place, problem.wanted) == ("splitters.csv", "save the file as UTF-8")


@pytest.mark.parametrize(
    ("file", "content", "field"),
    [
        ("makers.toml", "[[maker]]\nprefix = 'quill'\nname = 'Q'\n", "maker.0.prefix"),
        ("makers.toml", "maker = [", "file"),
        ("makers.toml", "[[maker]]\nprefix='QW'\nname='A'\n[[maker]]\nprefix='QW'\nname='B'\n", "prefix"),
        ("edition.toml", "edition = ''\n", "edition"),
        ("edition.toml", "edition = 'x'\nyear = 2026\n", "year"),
    ],
)
def test_bad_makers_and_editions_are_reported(source, file, content, field):
    (source / file).write_text(content)
    assert (file, field) in {(problem.place, problem.field) for problem in problems_of(source)}


def test_the_database_stays_as_it_was_when_a_row_is_bad(source, compiled_url):
    engine = open_engine(compiled_url)
    with engine.connect() as connection:
        before = connection.execute(text("SELECT id, number, name FROM catalogue_part ORDER BY id")).all()
    cell_changed(source, "nozzles.csv", "QW-N101", name="renamed")
    cell_changed(source, "swivels.csv", "LS-S101", planes="none")
    with pytest.raises(InputFault):
        compile_catalogue(source, engine)
    with pytest.raises(InputFault):
        ensure_catalogue(compiled_url, source)
    with engine.connect() as connection:
        assert connection.execute(text("SELECT id, number, name FROM catalogue_part ORDER BY id")).all() == before
    engine.dispose()


def test_formulas_and_quotes_in_names_are_data(source, url):
    name = "=1+1'; DROP TABLE catalogue_part; -- <b>%_\\"
    cell_changed(source, "nozzles.csv", "QW-N101", name=name)
    opened = ensure_catalogue(url, source)
    assert opened.part(PartRef("QW-N101")).name == name
    assert [part.number for part in opened.search("drop TABLE catalogue_part", None, 10)] == ["QW-N101"]
    assert list(opened.search("%_\\", None, 10)) == []  # signs alone are no words, and no wildcards either
    opened.close()
