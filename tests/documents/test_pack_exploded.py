"""The order of assembly as drawn: parts from the dispenser down, numbers and letters apart, seals told by shape."""

from __future__ import annotations

import itertools
import math
from dataclasses import replace

import pytest

from documents import plan_factory as factory
from documents.pack_words import words
from spoutline.documents.drawing.balloons import BALLOON_RADIUS_PT, balloon_offsets
from spoutline.documents.drawing.shapes import Balloon, Dot, Label, Path, Round, places_of
from spoutline.documents.pack.exploded import WANTED_HEIGHT_M, exploded_drawing
from spoutline.model.language import Language
from spoutline.model.part import AdaptorData, PartKind
from spoutline.model.plan import HangingSet, Joint, JudgedSet, SetLink
from spoutline.model.port import FlowPath, Gender, Port, Seal, ThreadStandard
from spoutline.model.requirement import Slot

POINTS_PER_M = 72 / 0.0254  # a point is 1/72 in, an inch 25.4 mm

COAXIAL_MALE = Port(ThreadStandard.M, "34x1.5", Gender.MALE, FlowPath.VACUUM_ASSIST)
COAXIAL_FEMALE = Port(ThreadStandard.M, "34x1.5", Gender.FEMALE, FlowPath.VACUUM_ASSIST)
PARALLEL_MALE = Port(ThreadStandard.G, "3/4", Gender.MALE, FlowPath.SINGLE)
PARALLEL_FEMALE = Port(ThreadStandard.G, "3/4", Gender.FEMALE, FlowPath.SINGLE)


def joint(up: Port, down: Port, seal: Seal) -> Joint:
    return Joint(upstream="a", downstream="b", upstream_port=up, downstream_port=down, seal=seal)


def long_chain() -> JudgedSet:
    """Return the longest chain that a search can make up: a fitting before each slot."""
    data = AdaptorData(closes_vapour=False, needs_vapour_return=False)
    adaptor = factory.part("QW-A1", PartKind.ADAPTOR, inlet=factory.MALE, outlet=factory.MALE, adaptor=data)
    links = []
    for link in factory.chain().links:
        links += [SetLink(slot=Slot.ADAPTOR, part=adaptor), link]
    joints = tuple(joint(factory.FEMALE, factory.MALE, Seal.SEALANT) for _ in links)
    chain = HangingSet(links=tuple(links), price_minor=0, currency="USD")
    return replace(factory.judged(chain), joints=joints)


CHAINS = {"usual": factory.judged(), "long": long_chain()}


@pytest.mark.parametrize("language", Language)
@pytest.mark.parametrize("name", CHAINS)
def test_balloons_number_the_chain_and_cover_neither_each_other_nor_a_label(name: str, language: Language) -> None:
    judged = CHAINS[name]
    drawing = exploded_drawing(judged, words(language).story)
    balloons = [shape for shape in drawing.shapes if isinstance(shape, Balloon)]
    assert [balloon.text for balloon in balloons] == [str(n + 1) for n in range(len(judged.hanging_set.links))]
    assert tuple(balloon.mark.part.number for balloon in balloons) == judged.hanging_set.numbers
    offsets = balloon_offsets(drawing, POINTS_PER_M)
    centres = [
        (balloon.target.x_m * POINTS_PER_M + dx, balloon.target.y_m * POINTS_PER_M + dy)
        for balloon, (dx, dy) in zip(balloons, offsets, strict=True)
    ]
    for one, other in itertools.combinations(centres, 2):
        assert math.dist(one, other) >= 2 * BALLOON_RADIUS_PT
    left = min(shape.at.x_m for shape in drawing.shapes if isinstance(shape, Label)) * POINTS_PER_M
    assert all(x + BALLOON_RADIUS_PT < left for x, _ in centres)
    assert all(x - BALLOON_RADIUS_PT >= 0 for x, _ in centres)


@pytest.mark.parametrize("name", CHAINS)
def test_everything_lies_inside_the_drawing(name: str) -> None:
    drawing = exploded_drawing(CHAINS[name], words().story)
    for shape in drawing.shapes:
        for place in places_of(shape):
            assert drawing.box.left_m <= place.x_m <= drawing.box.right_m
            assert drawing.box.bottom_m - 1e-6 <= place.y_m <= drawing.box.top_m + 1e-6


@pytest.mark.parametrize("name", CHAINS)
def test_no_line_of_text_runs_into_the_next(name: str) -> None:
    drawing = exploded_drawing(CHAINS[name], words().story)
    lines = sorted(
        (shape.at.y_m * POINTS_PER_M + shape.offset_pt[1], shape.size_pt)
        for shape in drawing.shapes
        if isinstance(shape, Label)
    )
    for (below, size), (above, _) in itertools.pairwise(lines):
        # capitals are about 0.73 of the size in this typeface
        assert above - below >= 0.73 * size


def test_the_usual_chain_leaves_room_for_its_parts_list_and_the_longest_still_fits_a_page() -> None:
    usual, longest = (exploded_drawing(CHAINS[name], words().story).box.height_m for name in ("usual", "long"))
    assert usual <= WANTED_HEIGHT_M
    assert longest < 0.2  # m; a page gives 0.236 m to its text


def test_parts_stand_in_the_order_of_assembly_from_the_top() -> None:
    drawing = exploded_drawing(factory.judged(), words().story)
    heights = [shape.target.y_m for shape in drawing.shapes if isinstance(shape, Balloon)]
    assert heights == sorted(heights, reverse=True)


def test_each_joint_names_thread_direction_and_seal() -> None:
    joints = (
        joint(factory.FEMALE, factory.MALE, Seal.SEALANT),
        joint(PARALLEL_MALE, PARALLEL_FEMALE, Seal.FLAT_GASKET),
        joint(COAXIAL_FEMALE, COAXIAL_MALE, Seal.O_RING),
    )
    links = factory.chain().links[:3]
    judged = replace(factory.judged(HangingSet(links=links, price_minor=0, currency="USD")), joints=joints)
    drawing = exploded_drawing(judged, words().story)
    texts = [shape.text for shape in drawing.shapes if isinstance(shape, Label)]
    assert "A  3/4 NPT  male ↑ female" in texts  # the part below carries the male thread: it goes up
    assert "B  3/4 G  male ↓ female" in texts
    assert "C  34x1.5 M  male ↑ female" in texts
    assert "vacuum-assist coaxial" in texts
    # ASME B1.20.1: taper threads take sealant; ISO 228-1: not made tight on the thread
    assert sum("SEALANT" in text for text in texts) == 1
    assert sum("NO sealant" in text for text in texts) == 2


def test_the_three_seals_have_three_shapes() -> None:
    def signs(seal: Seal) -> list[str]:
        judged = replace(factory.judged(), joints=(joint(factory.FEMALE, factory.MALE, seal),))
        plain = replace(factory.judged(), joints=())
        kinds = [Dot, Round, Path]

        def count(one: JudgedSet) -> list[int]:
            shapes = exploded_drawing(one, words().story).shapes
            return [sum(type(shape) is kind for shape in shapes) for kind in kinds]

        return [kind.__name__ for kind, a, b in zip(kinds, count(judged), count(plain), strict=True) if a > b]

    assert "Dot" in signs(Seal.SEALANT)
    assert "Round" in signs(Seal.O_RING)
    assert not {"Dot", "Round"} & set(signs(Seal.FLAT_GASKET))
