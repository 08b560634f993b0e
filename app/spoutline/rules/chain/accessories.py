"""The consumables and fittings that go with a set: sealant, clamp, label, caps for unused vapour openings."""

from __future__ import annotations

import itertools

from spoutline.frozen import frozen
from spoutline.model.limit import RuleTables
from spoutline.model.liquid import LiquidFamily, ListingClass
from spoutline.model.material import Material, Suitability
from spoutline.model.part import Part, PartKind
from spoutline.model.plan import JudgedSet
from spoutline.model.port import FlowPath, Seal
from spoutline.model.requirement import Requirement, Slot
from spoutline.model.survey import Retrieval
from spoutline.rules.declared.registry import AccessoryReason
from spoutline.rules.derive.hose import is_on_reel

_NAMED_ON_LABELS = (LiquidFamily.KEROSENE, LiquidFamily.FUEL_OIL)  # judged by diesel classes, but not diesel
_DIAMETER_TOLERANCE_M = 1e-9  # binary rounding of millimetres


@frozen(kw_only=True)
class AccessoryNeed:
    """One accessory that a set needs, and what it must fit. Diameter in m.

    ``listing_class`` is the class whose liquid it meets or names; None where any will do. ``for_def`` asks for the DEF
    label. ``barred_materials`` are those that the liquid attacks: a sealant without a listing has none of them.
    """

    kind: PartKind
    reason: AccessoryReason
    quantity: int
    diameter_m: float | None = None
    listing_class: ListingClass | None = None
    for_def: bool = False
    label_family: LiquidFamily | None = None
    barred_materials: frozenset[Material] = frozenset()

    def is_met_by(self, part: Part) -> bool:
        """Say whether ``part`` is of the kind and fits."""
        if part.kind is not self.kind:
            return False
        if self.kind is PartKind.LABEL:
            return self._names_the_liquid(part)
        return self._fits(part) and (self.kind is not PartKind.SEALANT or self._stands_the_liquid(part))

    def _names_the_liquid(self, part: Part) -> bool:
        data = part.accessory
        if data is None:
            return False
        if self.for_def:
            return data.label_def
        return self.listing_class in data.label_classes and data.label_family is self.label_family

    def _stands_the_liquid(self, part: Part) -> bool:
        if self.listing_class is not None:
            return self.listing_class in part.listings
        return self.barred_materials.isdisjoint(part.wetted_materials)

    def _fits(self, part: Part) -> bool:
        if self.diameter_m is None:
            return True
        data = part.accessory
        if data is None:
            return False
        low, high = data.fits_diameter_minimum_m, data.fits_diameter_maximum_m
        above = low is None or low <= self.diameter_m + _DIAMETER_TOLERANCE_M
        return above and (high is None or high >= self.diameter_m - _DIAMETER_TOLERANCE_M)


def accessory_needs(judged: JudgedSet, requirement: Requirement, tables: RuleTables) -> tuple[AccessoryNeed, ...]:
    """Return what goes with a set besides its chain.

    Sealant for taper threads of the set's class (gaskets and O-rings take none); a clamp where a retractor's cord holds
    the curb hose; a label that names the liquid; a cap where a vapour return pipe that was used is left open.
    Where every part hangs there and stays, nothing is sealed, clamped or labelled anew, but for another liquid.

    Parameters: ``judged``, the set with its joints; ``requirement`` of the position; ``tables``, the materials.
    Source: ASME B1.20.1 3.1 and ISO 228-1 for sealing; 16 CFR 306 and IFC 2306.8.3 for labels; the rest common
    practice.
    """
    if all(link.kept for link in judged.hanging_set.links):
        new_liquid = requirement.position.liquid_today not in (None, requirement.position.liquid)
        return (*((_label(requirement),) if new_liquid else ()), *_caps(judged, requirement))
    return (
        *_sealant(judged, requirement, tables),
        *_clamp(judged, requirement),
        _label(requirement),
        *_caps(judged, requirement),
    )


def joints_to_seal(judged: JudgedSet) -> int:
    """Return how many joints of a set are made up anew with sealant: not where parts stay or in an article.

    Parameters: ``judged``, the set with its joints. Source: ASME B1.20.1 3.1.
    """
    stays = [True, *(link.kept for link in judged.hanging_set.links)]  # the dispenser's outlet, then the parts
    made = (not (above and below) for above, below in itertools.pairwise(stays))
    return sum(joint.seal is Seal.SEALANT and is_made for joint, is_made in zip(judged.joints, made, strict=False))


def _sealant(judged: JudgedSet, requirement: Requirement, tables: RuleTables) -> tuple[AccessoryNeed, ...]:
    if not joints_to_seal(judged):
        return ()
    return (
        AccessoryNeed(
            kind=PartKind.SEALANT,
            reason=AccessoryReason.NPT_JOINTS,
            quantity=1,
            listing_class=requirement.listing_class,
            barred_materials=_barred(requirement, tables),
        ),
    )


def _barred(requirement: Requirement, tables: RuleTables) -> frozenset[Material]:
    return frozenset(
        entry.material
        for entry in tables.materials.entries
        if entry.column is requirement.material_column and entry.suitability is Suitability.UNSUITABLE
    )


def _clamp(judged: JudgedSet, requirement: Requirement) -> tuple[AccessoryNeed, ...]:
    position = requirement.position
    hose = judged.hanging_set.part_in(Slot.CURB_HOSE)
    if position.retrieval is not Retrieval.RETRACTOR or is_on_reel(position) or hose is None or hose.hose is None:
        return ()
    return (
        AccessoryNeed(
            kind=PartKind.HOSE_CLAMP,
            reason=AccessoryReason.RETRACTOR_CORD,
            quantity=1,
            diameter_m=hose.hose.outside_diameter_m,
        ),
    )


def _label(requirement: Requirement) -> AccessoryNeed:
    for_def = requirement.liquid.family is LiquidFamily.DEF
    return AccessoryNeed(
        kind=PartKind.LABEL,
        reason=AccessoryReason.DEF_LABEL if for_def else AccessoryReason.CLASS_LABEL,
        quantity=1,
        listing_class=requirement.listing_class,
        for_def=for_def,
        label_family=requirement.liquid.family if requirement.liquid.family in _NAMED_ON_LABELS else None,
    )


def _caps(judged: JudgedSet, requirement: Requirement) -> tuple[AccessoryNeed, ...]:
    """Ask for a cap on a return pipe that nothing joins any more; a coaxial outlet is closed by its adaptor."""
    outlet = requirement.position.outlet
    joined = judged.hanging_set.part_in(Slot.SPLITTER) is not None
    if outlet.path is not FlowPath.SINGLE or not outlet.vapour_return_available or joined:
        return ()
    return (AccessoryNeed(kind=PartKind.CAP, reason=AccessoryReason.VAPOUR_PORT_CAP, quantity=1),)
