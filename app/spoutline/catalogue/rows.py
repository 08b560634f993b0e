"""What a row of each source table must hold, in the units its reviewers read, and how it becomes a part in SI.

The columns of figures are made from the declarations of ``model.part``; written here are only the columns that are no
figure: number, name, status, prices, remark.
"""

from __future__ import annotations

from collections.abc import Callable, Iterator
from typing import Any, ClassVar, Self

from pydantic import ConfigDict, Field, create_model, model_validator
from pydantic_core import PydanticCustomError

from spoutline.catalogue.cells import MakerPrefix, Name, PartNumber, PortCell, PriceCell, YesNo, words_cell
from spoutline.catalogue.source_files import KINDS_OF_TABLE
from spoutline.catalogue.table_rules import table_faults
from spoutline.model.figure import plain_number
from spoutline.model.part import Part, PartKind, PartStatus, Price
from spoutline.model.part_figures import BLOCKS, BLOCKS_OF_KIND, PartFigure, figures_of
from spoutline.model.part_ref import PartRef
from spoutline.model.plain_values import PlainValues
from spoutline.model.port import Port

KIND_LETTERS: dict[PartKind, str] = {
    PartKind.NOZZLE: "N",
    PartKind.SWIVEL: "S",
    PartKind.SWIVEL_BREAKAWAY: "J",
    PartKind.CURB_HOSE: "H",
    PartKind.WHIP_HOSE: "W",
    PartKind.BREAKAWAY: "B",
    PartKind.ADAPTOR: "A",
    PartKind.SPLITTER: "D",
    PartKind.CAP: "C",
    PartKind.HOSE_CLAMP: "K",
    PartKind.SEALANT: "P",
    PartKind.LABEL: "L",
}
CROSS_FAULT = "cross_fault"  # error type of a rule between cells; its context holds the faults
CrossFault = tuple[str, str]  # column, what would be right


class PartRow(PlainValues):
    """The columns that every source table has beside figures. A description says what the cell holds."""

    model_config = ConfigDict(
        frozen=True, extra="forbid", defer_build=True, allow_inf_nan=False, str_strip_whitespace=True
    )

    kinds: ClassVar[tuple[PartKind, ...]] = ()  # of the parts in the table

    number: PartNumber = Field(description="part number: maker's prefix, hyphen, kind letter, serial")
    name: Name = Field(description="what the part is, in trade words")
    status: PartStatus = Field(description="where the part stands in its maker's range")
    superseded_by: PartNumber | None = Field(None, description="number of the part that took its place")
    maker: MakerPrefix | None = Field(
        None, description="prefix of its maker; empty: the one that the number starts with"
    )
    superseded_by_maker: MakerPrefix | None = Field(
        None, description="prefix of the successor's maker; empty: that of maker, or as the successor's number starts"
    )
    price_usd: PriceCell | None = Field(None, description="list price, US dollars; empty where there is none")
    price_eur: PriceCell | None = Field(None, description="list price, euros; empty where there is none")
    lead_days: int = Field(ge=0, le=400, description="lead time, calendar days from the order")
    pack: int = Field(1, ge=1, le=1000, description="pieces in a pack; the price is for one piece")
    remark: str = Field("", max_length=300, description="for reviewers: why this row exists")

    @property
    def part_kind(self) -> PartKind:
        """The kind of part that this row describes."""
        return PartKind(getattr(self, "kind", self.kinds[0]))

    def to_part(self, maker: str) -> Part:
        """Return the part in SI units; ``maker`` is the full name of its maker."""
        kind = self.part_kind
        return Part(
            number=self.number,
            maker=maker,
            kind=kind,
            name=self.name,
            status=self.status,
            superseded_by=self.superseded_by,
            prices=self.prices,
            lead_time_days=self.lead_days,
            pack_quantity=self.pack,
            **figures_in_si(kind, lambda column: getattr(self, column)),
        )

    def cross_faults(self) -> Iterator[CrossFault]:
        """Yield what is wrong between cells that are each right by themselves."""
        kind = self.part_kind
        if kind not in self.kinds:
            yield "kind", f"one of {', '.join(self.kinds)}"
            return
        letter = KIND_LETTERS[kind]
        if self.number[3] != letter:
            yield "number", f"a {kind} has the letter {letter} after the hyphen"
        if (self.status is PartStatus.SUPERSEDED) != (self.superseded_by is not None):
            yield "superseded_by", "a superseded part names the part that took its place, and no other part does"
        if self.superseded_by_maker is not None and self.superseded_by is None:
            yield "superseded_by_maker", "only a part that has a successor names the maker of it"
        if self.successor == self.source_ref:
            yield "superseded_by", "a part cannot take its own place"
        columns = {figure.path: figure.declared.column for figure in figures_of(kind)}
        for fault in table_faults(self.to_part("")):
            yield columns[fault.path], fault.told(lambda path: self._named(columns[path]))

    def _named(self, column: str) -> str:
        return f"{column} ({plain_number(getattr(self, column))})"

    @model_validator(mode="after")
    def _hold_together(self) -> Self:
        faults = tuple(self.cross_faults())
        if faults:
            raise PydanticCustomError(CROSS_FAULT, "the cells do not fit together", {"faults": faults})
        return self

    @property
    def source_ref(self) -> PartRef:
        """Number and prefix of the maker: what the source tables know the part by."""
        return PartRef(self.number, self.maker or self.number[:2])

    @property
    def successor(self) -> PartRef | None:
        """Number and prefix of the part that took its place."""
        if self.superseded_by is None:
            return None
        return PartRef(self.superseded_by, self.superseded_by_maker or self.maker or self.superseded_by[:2])

    @property
    def prices(self) -> tuple[Price, ...]:
        """List prices, sorted by currency."""
        listed_prices = (("EUR", self.price_eur), ("USD", self.price_usd))
        return tuple(
            Price(currency=currency, minor=int(price * 100)) for currency, price in listed_prices if price is not None
        )


# what ``Part`` asks for and some kind does not have
_LEFT_OUT: dict[str, Any] = {
    "outlet": None,
    "schemes": frozenset(),
    "flow_coefficient_kv": None,
    "resistance_ohm": None,
    "length_m": 0.0,
    "pull_strength_n": None,
}


def figures_in_si(kind: PartKind, cell_of: Callable[[str], Any]) -> dict[str, Any]:
    """Return the figures of a part as ``Part`` takes them; ``cell_of`` returns what stands in a column, typed."""
    blocks: dict[str, dict[str, Any]] = {block: {} for block in ("", *BLOCKS_OF_KIND[kind])}
    for figure in figures_of(kind):
        if figure.declared.column:
            blocks[figure.block][figure.name] = value_in_si(cell_of(figure.declared.column), figure)
    return with_blocks(kind, blocks)


def with_blocks(kind: PartKind, blocks: dict[str, dict[str, Any]]) -> dict[str, Any]:
    """Return the figures of a part as ``Part`` takes them.

    ``blocks`` holds those that columns tell, in SI by the name of their field, those of every part under an empty name.
    """
    for block, added in _implied(kind, blocks).items():
        blocks[block].update(added)
    own = _LEFT_OUT | blocks.pop("")
    return own | {block: BLOCKS[block][0](**values) for block, values in blocks.items()}


def value_in_si(cell: Any, figure: PartFigure) -> Any:  # noqa: ANN401  (a cell holds what its declaration says)
    """Return what stands in the column of a figure, typed, as a part holds it."""
    if cell is None:
        return None
    if figure.many:
        return figure.many(cell)
    return figure.declared.unit.to_si(cell) if figure.value_type is float else cell


def _implied(kind: PartKind, blocks: dict[str, dict[str, Any]]) -> dict[str, dict[str, Any]]:
    """Return the figures that no column holds because others or the kind decide them."""
    if "hose" in blocks:
        hose = blocks["hose"]
        length_m, per_metre = hose["length_m"], hose["resistance_ohm_m"]
        whole = None if per_metre is None else per_metre * length_m
        return {"": {"length_m": length_m, "resistance_ohm": whole}}
    if kind is PartKind.ADAPTOR:
        return {"adaptor": {"needs_vapour_return": False}}
    if kind is PartKind.SPLITTER:
        return {"adaptor": {"closes_vapour": False, "needs_vapour_return": True}}
    return {}


def columns_of(kinds: tuple[PartKind, ...]) -> dict[str, PartFigure]:
    """Return the figures that a table of these kinds writes, by column."""
    found: dict[str, PartFigure] = {}
    for kind in kinds:
        for figure in figures_of(kind):
            if figure.declared.column:
                found.setdefault(figure.declared.column, figure)
    return found


def figure_cell(figure: PartFigure) -> tuple[Any, Any]:
    """Return type and field of the cell that holds a figure."""
    declared, kept = figure.declared, figure.value_type
    words: dict[str, Any] = {"description": figure.column_meaning}
    if figure.many:
        least = int(declared.at_least_one)
        return words_cell(kept, least), Field(**words) if least else Field((), **words)
    if kept is bool:
        kept = YesNo
    elif kept is Port:
        kept = PortCell
    elif figure.is_number:
        words |= {"gt": declared.above, "ge": declared.least, "le": declared.most}
    return (kept | None, Field(None, **words)) if figure.may_lack else (kept, Field(**words))


def _row_type(table: str, kinds: tuple[PartKind, ...]) -> type[PartRow]:
    columns: dict[str, Any] = {column: figure_cell(figure) for column, figure in columns_of(kinds).items()}
    if len(kinds) > 1:
        columns["kind"] = (PartKind, Field(description=f"{', '.join(kinds[:-1])} or {kinds[-1]}"))
    row_type = create_model(f"Row of {table}", __base__=PartRow, __doc__=f"A row of ``{table}``.", **columns)
    row_type.kinds = kinds
    return row_type


TABLES: dict[str, type[PartRow]] = {table: _row_type(table, kinds) for table, kinds in KINDS_OF_TABLE.items()}
