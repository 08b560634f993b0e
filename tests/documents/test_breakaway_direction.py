"""A breakaway's vehicle end faces what hangs below it: text and arrow of the sheet agree for every shape of chain.

Which way it is fitted: common practice, no source; makers mark the vehicle end or the direction of flow.
"""

from __future__ import annotations

from dataclasses import replace
from itertools import product

import pytest

from documents import plan_factory as factory
from documents.pack_words import words
from spoutline.documents.content.blocks import Paragraph
from spoutline.documents.drawing.shapes import Balloon, Path, Weight
from spoutline.documents.pack.exploded import exploded_drawing
from spoutline.documents.pack.position_sheet import position_blocks
from spoutline.model.part import AdaptorData, PartKind
from spoutline.model.plan import HangingSet, JudgedSet, SetLink
from spoutline.model.port import FlowPath
from spoutline.model.requirement import Slot
from spoutline.rules.derive.requirement import chain_for

BREAKAWAYS = (Slot.BREAKAWAY, Slot.SWIVEL_BREAKAWAY)
SHAPES = {
    f"{path.value}, {'nozzle' if at_nozzle else 'whip'}": chain_for(path, breakaway_at_nozzle=at_nozzle)
    for path, at_nozzle in product(FlowPath, (False, True))
} | {"at the outlet": (Slot.BREAKAWAY, Slot.WHIP_HOSE, Slot.CURB_HOSE, Slot.NOZZLE)}
# what a person would write above each, by the only thing that counts: what is dragged away with the vehicle
FACES = {
    "single, whip": "vehicle end toward the curb hose",
    "single, nozzle": "at the nozzle, vehicle end toward the nozzle",
    "balance, whip": "vehicle end toward the curb hose",
    "balance, nozzle": "at the nozzle, vehicle end toward the nozzle",
    "vacuum_assist, whip": "vehicle end toward the curb hose",
    "vacuum_assist, nozzle": "at the nozzle, vehicle end toward the nozzle",
    "at the outlet": "vehicle end toward the whip hose",
}
_MAKE = {
    Slot.WHIP_HOSE: factory.whip_hose,
    Slot.BREAKAWAY: factory.breakaway,
    Slot.SWIVEL_BREAKAWAY: factory.breakaway,
    Slot.CURB_HOSE: factory.curb_hose,
    Slot.SWIVEL: factory.swivel,
    Slot.NOZZLE: factory.nozzle,
}


def judged(shape: tuple[Slot, ...], *, with_adaptors: bool) -> JudgedSet:
    data = AdaptorData(closes_vapour=False, needs_vapour_return=False)
    adaptor = factory.part("QW-A1", PartKind.ADAPTOR, inlet=factory.MALE, outlet=factory.MALE, adaptor=data)
    links = []
    for slot in shape:
        links.append(SetLink(slot=slot, part=_MAKE[slot]()))
        if with_adaptors and slot is not Slot.NOZZLE:
            links.append(SetLink(slot=Slot.ADAPTOR, part=adaptor))
    chain = HangingSet(links=tuple(links), price_minor=0, currency="USD")
    return replace(factory.judged(chain), joints=())


def orientation_of(chosen: JudgedSet) -> str:
    plan = factory.fitting_plan(chosen=chosen)
    blocks = position_blocks(plan, factory.site_plan(plan), words().story)
    (notes,) = [one.text for one in blocks if isinstance(one, Paragraph) and "Breakaway (" in one.text]
    return notes[notes.index("Breakaway (") :]


@pytest.mark.parametrize("with_adaptors", [False, True])
@pytest.mark.parametrize("name", SHAPES)
def test_text_and_arrow_turn_the_vehicle_end_to_what_hangs_below(name: str, with_adaptors: bool) -> None:
    chosen = judged(SHAPES[name], with_adaptors=with_adaptors)
    links = chosen.hanging_set.links
    (place,) = [at for at, link in enumerate(links) if link.slot in BREAKAWAYS]
    assert orientation_of(chosen).startswith(f"Breakaway ({place + 1}): {FACES[name]}")
    drawing = exploded_drawing(chosen, words().story)
    middles = {shape.mark.link: shape.target.y_m for shape in drawing.shapes if isinstance(shape, Balloon)}
    faced = next(at for at in range(place + 1, len(links)) if links[at].slot.value.replace("_", " ") in FACES[name])
    shafts = [
        shape
        for shape in drawing.shapes
        if isinstance(shape, Path) and shape.mark.link == place and shape.weight is Weight.MEDIUM
        and not shape.closed and not shape.dashed and len(shape.places) == 2
    ]  # fmt: skip
    (shaft,) = shafts
    start, tip = shaft.places
    assert abs(tip.y_m - middles[faced]) < abs(start.y_m - middles[faced])
    # the arrow lies beside the half that stays on the vehicle
    assert (start.y_m < middles[place]) == (middles[faced] < middles[place])
