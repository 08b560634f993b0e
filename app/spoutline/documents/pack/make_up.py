"""In which order the joints of a set are made up, where the clamp goes, and which seals are brought along."""

from __future__ import annotations

from collections import Counter
from collections.abc import Iterable, Iterator
from itertools import pairwise
from typing import Final

from spoutline.explain.plan.story import Story
from spoutline.frozen import frozen
from spoutline.model.part import PartKind
from spoutline.model.plan import Joint, JudgedSet, PositionPlan
from spoutline.model.port import Seal
from spoutline.model.quantity import Dimension
from spoutline.model.requirement import Slot
from spoutline.model.survey import Retrieval

JOINT_LETTERS: Final = "ABCDEFGHIJKLMNOPQRSTUVWXYZ"


@frozen(kw_only=True)
class SpareSeal:
    """Seals of one kind for joints of one size, one for each joint that is made up anew."""

    seal: Seal
    joint: Joint
    count: int

    def thread_text(self, story: Story) -> str:
        """Return the size of the joint as the drawing writes it."""
        port = self.joint.downstream_port
        return f"{port.size} {story.word(port.thread)}"


def new_joints(judged: JudgedSet) -> Iterator[tuple[str, Joint]]:
    """Yield the joints that are made up anew with their letters: not where parts stay or in an article."""
    stays = [True, *(link.kept for link in judged.hanging_set.links)]  # the outlet, then the parts
    for letter, joint, (above, below) in zip(JOINT_LETTERS, judged.joints, pairwise(stays), strict=False):
        if not ((above and below) or joint.seal is Seal.MADE_UP):
            yield letter, joint


def spare_seals(plans: Iterable[PositionPlan]) -> tuple[SpareSeal, ...]:
    """Return the O-rings and gaskets to bring: a seal is fitted new in each joint. Source: common practice, no source.

    A parallel or coaxial thread is tight on its seal (ISO 228-1 scope); a taper thread has none.
    """
    counts: Counter[tuple[Seal, str, str]] = Counter()
    first: dict[tuple[Seal, str, str], Joint] = {}
    for plan in plans:
        for _, joint in new_joints(plan.chosen) if plan.chosen is not None else ():
            if joint.seal is Seal.SEALANT:
                continue
            key = (joint.seal, joint.downstream_port.thread.value, str(joint.downstream_port.size))
            counts[key] += 1
            first.setdefault(key, joint)
    return tuple(SpareSeal(seal=key[0], joint=first[key], count=counts[key]) for key in sorted(counts))


def make_up_text(plan: PositionPlan, judged: JudgedSet, story: Story) -> str:
    """Return the order of make-up: what hangs below the curb hose on the bench, the rest from the outlet down.

    With a retractor it says where the clamp goes. Source: common practice, no source; Okla. 165:26-2-91(d) for the
    breakaway between the clamp and the nozzle.
    """
    links = judged.hanging_set.links
    curb = next((at for at, link in enumerate(links) if link.slot is Slot.CURB_HOSE), len(links))
    letters = [letter for letter, _ in new_joints(judged)]
    bench = [letter for letter in letters if JOINT_LETTERS.index(letter) > curb]
    at_dispenser = [letter for letter in letters if JOINT_LETTERS.index(letter) <= curb]
    texts = []
    if bench and at_dispenser:
        filled = {"bench": ", ".join(reversed(bench)), "dispenser": ", ".join(at_dispenser)}
        texts.append(story.phrases.fill("make_up_both", **filled))
    elif letters:
        texts.append(story.phrases.fill("make_up_one", joints=", ".join(letters)))
    if letters:
        texts.append(_torque_text(judged, story))
    hose = judged.hanging_set.part_in(Slot.CURB_HOSE)
    has_clamp = any(line.part.kind is PartKind.HOSE_CLAMP for line in plan.accessories)
    if plan.position.retrieval is Retrieval.RETRACTOR and hose is not None and has_clamp:
        at = story.display.reading(hose.length_m * plan.position.retractor.clamp_fraction, Dimension.LENGTH)
        texts.append(story.phrases.fill("clamp_place", length=at))
    return " ".join(texts)


def _torque_text(judged: JudgedSet, story: Story) -> str:
    """Return the torques that makers state, by the numbers of the parts in the drawing; else that makers are asked."""
    torques = [
        story.phrases.fill("torque_of", number=number, torque=story.display.reading(torque, Dimension.TORQUE))
        for number, link in enumerate(judged.hanging_set.links, start=1)
        if not link.kept and (torque := link.part.tightening_torque_n_m) is not None
    ]
    if not torques:
        return story.phrases.text["torque_by_makers"]
    return story.phrases.fill("torque_stated", torques=", ".join(torques))
