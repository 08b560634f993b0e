"""What to load into the van, box by box, and which tools the work asks for."""

from __future__ import annotations

import math
from collections.abc import Iterable, Iterator
from collections.abc import Set as AbstractSet
from dataclasses import replace

from spoutline.model.caution import CautionCondition as Condition
from spoutline.model.pack import BoxList, Kit, PickLine, Tool, VanBox
from spoutline.model.part import Part, PartKind
from spoutline.model.part_ref import PartRef
from spoutline.model.plan import PositionPlan, SitePlan

_BOX_OF = {
    PartKind.WHIP_HOSE: VanBox.HOSES,
    PartKind.CURB_HOSE: VanBox.HOSES,
    PartKind.BREAKAWAY: VanBox.COUPLINGS,
    PartKind.SWIVEL: VanBox.COUPLINGS,
    PartKind.SWIVEL_BREAKAWAY: VanBox.COUPLINGS,
    PartKind.NOZZLE: VanBox.NOZZLES,
    PartKind.ADAPTOR: VanBox.FITTINGS,
    PartKind.SPLITTER: VanBox.FITTINGS,
    PartKind.CAP: VanBox.FITTINGS,
    PartKind.HOSE_CLAMP: VanBox.FITTINGS,
    PartKind.SEALANT: VanBox.CONSUMABLES,
    PartKind.LABEL: VanBox.CONSUMABLES,
}
_ALWAYS = (
    Tool.LOCK_OUT_KIT,
    Tool.BARRIERS,
    Tool.EXTINGUISHER,
    Tool.SPILL_KIT,
    Tool.WRENCHES,
    Tool.CALLIPER,
    Tool.TAPE_MEASURE,
    Tool.GLOVES,
)
_WHERE = (
    (Condition.FLAMMABLE, (Tool.METAL_CONTAINER, Tool.METAL_FUNNEL, Tool.OHMMETER, Tool.TEST_CAN)),
    (Condition.DEF, (Tool.DEF_CONTAINER,)),
    (Condition.VAPOUR_REMOVED, (Tool.GAS_TESTER,)),
    (Condition.OVERHEAD, (Tool.PLATFORM,)),
    (Condition.MARINE, (Tool.FLOATING_BOOM,)),
)


def box_of(part: Part) -> VanBox:
    """Return the box in which a part travels. Source: common practice, no source."""
    return _BOX_OF[part.kind]


def pick_list(site_plan: SitePlan) -> tuple[BoxList, ...]:
    """Return every part of the site by box, sorted by part number and maker, with the positions that it is for.

    Quantities add up to those that the bill asks for; a part that stays is not loaded, and positions without a set need
    nothing.
    """
    parts: dict[PartRef, Part] = {}
    wanted: dict[PartRef, dict[str, int]] = {}
    for plan in site_plan.positions:
        for part, quantity in parts_of(plan):
            parts[part.ref] = part
            places = wanted.setdefault(part.ref, {})
            places[plan.position.label] = places.get(plan.position.label, 0) + quantity
    lines = [
        PickLine(part=parts[ref], quantity=sum(places.values()), positions=tuple(places.items()))
        for ref, places in sorted(wanted.items())
    ]
    boxes = ((box, tuple(line for line in lines if box_of(line.part) is box)) for box in VanBox)
    return tuple(BoxList(box=box, lines=inside) for box, inside in boxes if inside)


def kits_of(boxes: Iterable[BoxList]) -> tuple[Kit, ...]:
    """Return what positions take alike, in the order in which the boxes name them first; every position is in one."""
    taken: dict[str, list[tuple[Part, int]]] = {}
    for line in (line for box in boxes for line in box.lines):
        for label, count in line.positions:
            taken.setdefault(label, []).append((line.part, count))
    alike: dict[tuple[tuple[PartRef, int], ...], list[str]] = {}
    for label, parts in taken.items():
        alike.setdefault(tuple((part.ref, count) for part, count in parts), []).append(label)
    return tuple(Kit(parts=tuple(taken[labels[0]]), positions=tuple(labels)) for labels in alike.values())


def parts_of(plan: PositionPlan) -> Iterator[tuple[Part, int]]:
    """Yield what is brought to a position, with quantities: new parts, dispenser first, then what goes with them."""
    if plan.chosen is None:
        return
    for part in plan.chosen.hanging_set.bought:
        if part.comes_with is None:  # else it is brought in the article that another part of the set stands for
            yield _with_all_in_it(part, plan.chosen.hanging_set.bought), 1
    for line in plan.accessories:
        yield line.part, line.quantity


def _with_all_in_it(part: Part, bought: Iterable[Part]) -> Part:
    """Return a part as it is carried: an article with the mass of all its parts."""
    inside = [one.mass_kg for one in bought if one.comes_with == part.ref]
    return replace(part, mass_kg=math.fsum((part.mass_kg, *inside))) if inside else part


def tools_for(conditions: AbstractSet[Condition]) -> tuple[Tool, ...]:
    """Return the tools of a job with these conditions, in the order of ``Tool``. Source: common practice, no source."""
    wanted = {*_ALWAYS, *(tool for condition, tools in _WHERE if condition in conditions for tool in tools)}
    return tuple(tool for tool in Tool if tool in wanted)
