"""What a quotation draws on: tables, parts, prices, and words for paper."""

from __future__ import annotations

from collections.abc import Callable

from spoutline.frozen import frozen
from spoutline.model.conversion_step import StepTable
from spoutline.model.limit import RuleTables
from spoutline.model.part import Part
from spoutline.model.pricing import PriceList
from spoutline.model.quoted_option import PartName
from spoutline.model.survey import Position
from spoutline.planning.protocols import PartStore


@frozen(kw_only=True)
class QuoteSources:
    """What a quotation draws on.

    ``liquid_text`` words the liquid of a position for paper, ``part_names`` a part in languages that the catalog is
    not written in.
    """

    tables: RuleTables
    parts: PartStore
    steps: StepTable
    price_lists: tuple[PriceList, ...]
    liquid_text: Callable[[Position], str]
    part_names: Callable[[Part], tuple[PartName, ...]] = lambda _: ()
