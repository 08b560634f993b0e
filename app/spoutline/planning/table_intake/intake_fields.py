"""What a column of a supplier's table may hold: what tells a part from others, prices, and every declared figure.

The figures come from the declarations of ``model.part``: a figure declared there is a column here.
"""

from __future__ import annotations

import re
from collections.abc import Callable, Mapping
from enum import StrEnum
from functools import cache
from typing import Final

from spoutline.frozen import frozen
from spoutline.model.cross_reference import NumberRelation
from spoutline.model.figure import Bounds, TableUnit
from spoutline.model.part import PartKind, PartStatus
from spoutline.model.part_figures import FIGURES, PartFigure, widest_of
from spoutline.model.port import Port
from spoutline.model.quantity import Dimension
from spoutline.model.type_columns import TEXT_COLUMNS, TYPE_COLUMNS, TypeColumn
from spoutline.planning.survey_import.fields import FIELDS as QUESTIONS
from spoutline.planning.survey_import.fields import ImportField, normal
from spoutline.planning.survey_import.words import liquid_word


class CellKind(StrEnum):
    """How the text of a cell is read."""

    TEXT = "text"
    NUMBER = "number"
    WHOLE = "whole"
    MONEY = "money"
    WORD = "word"
    WORDS = "words"
    YES_NO = "yes_no"
    PORT = "port"
    DATE = "date"


@frozen(kw_only=True)
class IntakeField:
    """One thing that a column may hold; ``names`` are what it may be called besides its title.

    A number is kept in ``unit``; ``word_of`` knows what else people write for a word; ``figures`` are the declarations
    of a figure, one or several by kind of part.
    """

    key: str
    title: str
    cell: CellKind
    names: tuple[str, ...] = ()
    choices: tuple[StrEnum, ...] = ()
    keeps_order: bool = False
    dimension: Dimension | None = None
    unit: TableUnit = TableUnit.SI
    figures: tuple[PartFigure, ...] = ()
    word_of: Callable[[str], str] | None = None  # the word that a text stands for

    @property
    def is_figure(self) -> bool:
        """Whether it is a declared figure of a part."""
        return bool(self.figures)

    @property
    def bounds(self) -> Bounds:
        """The range that holds those of all kinds of part, in ``unit``; the part's own is checked with its kind."""
        return widest_of([one.declared.bounds for one in self.figures])

    @property
    def needs_unit(self) -> bool:
        """Whether a number of it means nothing without a unit."""
        return self.cell is CellKind.NUMBER and self.dimension not in (None, Dimension.COUNT, Dimension.RATIO)


_TEXT: Final = CellKind.TEXT
# names besides the title: trade usage, from memory; German and French ones as price files print them
_OWN: Final[tuple[IntakeField, ...]] = (
    IntakeField(
        key="number",
        title="Number",
        cell=_TEXT,
        names=(
            *(
                "part number",
                "part no",
                "part",
                "catalog number",
                "catalogue number",
                "cat no",
                "model",
                "model number",
            ),
            *("maker number", "manufacturer part number", "mfr part no", "mpn", "article", "article number", "sku"),
            *("item code", "order code", "artikelnummer", "artikel nr", "bestellnummer", "référence", "réf"),
        ),
    ),
    IntakeField(
        key="maker",
        title="Maker",
        cell=_TEXT,
        names=("manufacturer", "mfr", "mfg", "brand", "make", "vendor name", "hersteller", "fabricant"),
    ),
    IntakeField(
        key="name",
        title="Name",
        cell=_TEXT,
        names=(
            *("description", "text", "part description", "item description", "product", "designation", "bezeichnung"),
            *("beschreibung", "désignation", "désignation article", "long description"),
        ),
    ),
    IntakeField(
        key="kind",
        title="Kind",
        cell=CellKind.WORD,
        names=("kind of part", "type", "category", "group", "product group", "part type", "warengruppe", "catégorie"),
        choices=tuple(PartKind),
    ),
    IntakeField(
        key="status",
        title="Status",
        cell=CellKind.WORD,
        names=("state", "life cycle", "lifecycle status"),
        choices=tuple(PartStatus),
    ),
    IntakeField(key="discontinued_from", title="Discontinued from", cell=CellKind.DATE, names=("end of sale", "eol")),
    IntakeField(
        key="superseded_by",
        title="Superseded by",
        cell=_TEXT,
        names=("replaced by", "successor", "replacement", "new number", "nachfolger", "remplacé par"),
    ),
    IntakeField(key="superseded_by_maker", title="Superseded by maker", cell=_TEXT),
    IntakeField(
        key="item_number",
        title="Item number",
        cell=_TEXT,
        names=("own item number", "our number", "our item", "item no", "internal number", "stock number"),
    ),
    IntakeField(
        key="gtin", title="GTIN", cell=_TEXT, names=("ean", "upc", "barcode", "bar code", "ean upc", "gtin ean")
    ),
    IntakeField(
        key="supplier", title="Supplier", cell=_TEXT, names=("vendor", "supplied by", "lieferant", "fournisseur")
    ),
    IntakeField(key="family", title="Family", cell=_TEXT, names=("series", "range", "product family", "baureihe")),
    IntakeField(
        key="lead_days",
        title="Lead days",
        cell=CellKind.WHOLE,
        names=("lead time", "lead time days", "delivery days", "lieferzeit tage", "délai"),
    ),
    IntakeField(
        key="pack",
        title="Pack",
        cell=CellKind.WHOLE,
        names=(
            "pack quantity",
            "pack size",
            "pieces in a pack",
            "pack qty",
            "packing unit",
            "verpackungseinheit",
            "ve",
        ),
    ),
    IntakeField(key="remark", title="Remark", cell=_TEXT, names=("remarks", "note", "notes", "comment", "bemerkung")),
    IntakeField(
        key="price",
        title="Price",
        cell=CellKind.MONEY,
        names=(
            *("list price", "unit price", "price each", "net price", "list", "each", "cost", "preis", "listenpreis"),
            *("prix", "prix unitaire", "tarif", "msrp", "price per piece"),
        ),
    ),
)
_SYNONYMS: Final[dict[str, tuple[str, ...]]] = {
    "listings": ("listing", "listing class", "listing classes", "listed for", "fuel rating"),
    "schemes": ("scheme", "standard", "standards", "listing scheme"),
    "materials": ("material", "wetted materials", "wetted parts"),
    "temp_min_c": ("minimum temperature", "min temp", "temperature min", "lowest temperature"),
    "temp_max_c": ("maximum temperature", "max temp", "temperature max", "highest temperature"),
    "max_pressure_kpa": ("working pressure", "max working pressure", "pressure", "max pressure", "wp"),
    "kv_m3_h": ("kv", "flow coefficient", "cv"),
    "made_up_length_mm": ("made up length", "overall length", "body length"),
    "mass_kg": ("mass", "weight", "net weight", "gewicht", "poids", "masse"),
    "resistance_ohm": ("resistance", "electrical resistance", "continuity"),
    "pull_strength_n": ("pull strength", "tensile strength", "proof load"),
    "inlet": ("inlet thread", "inlet port", "inlet connection", "dispenser end"),
    "outlet": ("outlet thread", "outlet port", "outlet connection", "vehicle end"),
    "bore_mm": ("bore", "id", "i d", "inside diameter", "inner diameter", "nominal bore"),
    "length_m": ("length", "hose length", "länge", "longueur"),
    "outside_diameter_mm": ("outside diameter", "od", "o d", "outer diameter"),
    "min_bend_radius_mm": ("bend radius", "minimum bend radius", "min bend radius"),
    "mass_kg_m": ("mass per length", "weight per length", "mass per metre", "weight per foot", "mass per meter"),
    "resistance_ohm_m": ("resistance per length", "resistance per metre", "resistance per meter"),
    "permeation_g_m2_day": ("permeation",),
    "separation_min_n": ("separation force min", "least separation force", "min separation", "break force min"),
    "separation_max_n": ("separation force max", "greatest separation force", "max separation", "separation force"),
    "spout_od_mm": ("spout od", "spout diameter", "spout outside diameter", "spout"),
    "min_flow_l_min": ("minimum flow", "min flow"),
    "max_flow_l_min": ("maximum flow", "max flow", "flow rate", "flow"),
    "fits_min_mm": ("fits from", "fits diameter min"),
    "fits_max_mm": ("fits to", "fits diameter max"),
}
# unit endings of column names, longest first: a title that is a column's own name says its unit
_ENDINGS: Final = re.compile(r"_(?:g_m2_day|m3_h|l_min|ohm_m|kg_m|mm|kpa|ohm|kg|n|c|m)$")


def _of_figures(figures: tuple[PartFigure, ...]) -> IntakeField:
    figure = figures[0]
    declared, column = figure.declared, figure.declared.column
    many = figure.many is not None
    if figure.choices:
        cell = CellKind.WORDS if many else CellKind.WORD
    elif figure.value_type is bool:
        cell = CellKind.YES_NO
    elif figure.value_type is Port:
        cell = CellKind.PORT
    else:
        cell = CellKind.WHOLE if figure.value_type is int else CellKind.NUMBER
    bare = _ENDINGS.sub("", column).replace("_", " ")
    title = f"{bare[:1].upper()}{bare[1:]}"
    words = (column, figure.label.replace("_", " "), declared.holds, *_SYNONYMS.get(column, ()))
    return IntakeField(
        key=column,
        title=title,
        cell=cell,
        names=words,
        choices=figure.choices,
        keeps_order=figure.many is tuple,
        dimension=declared.dimension,
        unit=declared.unit,
        figures=figures,
    )


def _figures() -> tuple[IntakeField, ...]:
    found: dict[str, list[PartFigure]] = {}
    for figure in FIGURES:
        if figure.declared.column:
            found.setdefault(figure.declared.column, []).append(figure)
    return tuple(_of_figures(tuple(figures)) for figures in found.values())


FIELDS: Final[tuple[IntakeField, ...]] = (*_OWN, *_figures())
BY_KEY: Final = {field.key: field for field in FIELDS}


class TableSubject(StrEnum):
    """What the rows of a table are."""

    PARTS = "parts"
    CROSS_REFERENCES = "cross_references"
    DISPENSER_TYPES = "dispenser_types"
    POSITIONS = "positions"


@frozen
class FieldSet:
    """What the columns of tables of one subject may hold.

    A row is named by its ``key``, with its maker beside it where it ``has_maker``; ``what`` says what the key is. Where
    it ``needs_titles`` some must be known; else the first row gives them. A text that stands alone in a row is a
    heading where the column ``alone_is_heading`` is there.
    """

    by_key: Mapping[str, IntakeField]
    key: str = "number"
    has_maker: bool = True
    what: str = "the maker's number of each part"
    needs_titles: bool = True
    alone_is_heading: str = ""


# names besides the title: trade usage, from memory
_REFERENCES: Final[tuple[IntakeField, ...]] = (
    IntakeField(
        key="number",
        title="Old number",
        cell=_TEXT,
        names=(
            *("their number", "their part number", "other number", "competitor number", "competitor part number"),
            *("discontinued number", "obsolete number", "from number", "interchange number", "cross reference"),
            *("old part number", "alte nummer", "fremdnummer", "ancienne référence", "replaces"),
        ),
    ),
    IntakeField(
        key="maker",
        title="Old maker",
        cell=_TEXT,
        names=("their maker", "competitor", "competitor name", "other maker", "manufacturer", "mfr", "brand", "from"),
    ),
    IntakeField(
        key="part_number",
        title="Part number",
        cell=_TEXT,
        names=(
            *("our number", "our part number", "new number", "new part number", "to number", "replacement"),
            *("replacement number", "replaced by", "equivalent", "substitute", "neue nummer", "nouvelle référence"),
        ),
    ),
    IntakeField(
        key="part_maker",
        title="Part maker",
        cell=_TEXT,
        names=("our maker", "new maker", "replacement maker", "to maker", "maker of part"),
    ),
    IntakeField(
        key="relation",
        title="Relation",
        cell=CellKind.WORD,
        names=("kind", "type", "match", "kind of match"),
        choices=tuple(NumberRelation),
    ),
    IntakeField(key="remark", title="Remark", cell=_TEXT, names=("remarks", "note", "notes", "comment", "bemerkung")),
)


def _of_type_column(column: TypeColumn) -> IntakeField:
    if column.choices is not None:
        cell = CellKind.WORD
    elif column.yes_no:
        cell = CellKind.YES_NO
    else:
        cell = _TEXT if column.key in TEXT_COLUMNS else CellKind.NUMBER
    return IntakeField(
        key=column.key,
        title=column.title,
        cell=cell,
        names=column.names,
        choices=tuple(column.choices or ()),
        dimension=column.dimension,
        unit=column.unit,
    )


DISPENSER_TYPE: Final = "dispenser_type"
_FACTORS: Final = {1.0: TableUnit.SI, 1e3: TableUnit.KILOPASCAL, 1e-3 / 60.0: TableUnit.LITRE_PER_MINUTE}


def _of_question(field: ImportField) -> IntakeField:
    if field.choices is not None:
        cell = CellKind.WORD
    elif field.yes_no:
        cell = CellKind.YES_NO
    else:
        cell = CellKind.TEXT if field.dimension is None else CellKind.NUMBER
    return IntakeField(
        key=field.key,
        title=field.title,
        cell=cell,
        names=field.words,
        choices=tuple(field.choices or ()),
        dimension=field.dimension,
        unit=_FACTORS[field.factor],
        word_of=liquid_word if field.key == "liquid.family" else None,
    )


_POSITIONS: Final[tuple[IntakeField, ...]] = (
    *map(_of_question, QUESTIONS),
    IntakeField(
        key=DISPENSER_TYPE,
        title="Dispenser type",
        cell=_TEXT,
        names=("type of dispenser", "dispenser model", "pump type", "pump model"),
    ),
)

_FIELD_SETS: Final[dict[TableSubject, FieldSet]] = {
    TableSubject.PARTS: FieldSet(BY_KEY),
    TableSubject.CROSS_REFERENCES: FieldSet(
        {field.key: field for field in _REFERENCES}, what="the old number of each row"
    ),
    TableSubject.DISPENSER_TYPES: FieldSet(
        {column.key: _of_type_column(column) for column in TYPE_COLUMNS},
        key="name",
        has_maker=False,
        what="the name of each type",
    ),
    TableSubject.POSITIONS: FieldSet(
        {field.key: field for field in _POSITIONS},
        key="label",
        has_maker=False,
        what="the name of each position",
        needs_titles=False,
        alone_is_heading="liquid.family",
    ),
}


def fields_of(subject: TableSubject) -> FieldSet:
    """Return what the columns of tables of a subject may hold."""
    return _FIELD_SETS[subject]


@cache
def known_names(subject: TableSubject = TableSubject.PARTS) -> dict[str, IntakeField]:
    """Return every name that a column may have, without case and signs, with its field; the first claim holds."""
    found: dict[str, IntakeField] = {}
    for words in ((lambda one: (one.title, one.key)), (lambda one: one.names)):
        for field in fields_of(subject).by_key.values():
            for word in words(field):
                name = normal(word)
                if name:
                    found.setdefault(name, field)
    return found


def names_its_unit(title: str, field: IntakeField) -> bool:
    """Say whether a title is the column's own name, which says in what unit its numbers are (``bore_mm``)."""
    return normal(title) == normal(field.key)


@cache
def kind_words() -> dict[str, PartKind]:
    """Return what a heading or a cell may call a kind of part, without case: one or several of them."""
    found: dict[str, PartKind] = {}
    more = {
        PartKind.BREAKAWAY: ("break away", "break-away coupling", "breakaway coupling"),
        PartKind.SWIVEL_BREAKAWAY: ("swivel break away", "breakaway swivel"),
        PartKind.CURB_HOSE: ("dispensing hose", "curb pump hose"),  # a hose alone could be a whip hose too
        PartKind.WHIP_HOSE: ("whip", "whip line"),
        PartKind.ADAPTOR: ("adapter", "reducer", "bushing"),
        PartKind.HOSE_CLAMP: ("clamp",),
        PartKind.SEALANT: ("thread sealant",),
        PartKind.CAP: ("plug",),
        PartKind.LABEL: ("decal", "sticker"),
    }
    for kind in PartKind:
        for word in (kind.value.replace("_", " "), *more.get(kind, ())):
            name = normal(word)
            for form in (name, f"{name}s", f"{name}es"):
                found.setdefault(form, kind)
    return found
