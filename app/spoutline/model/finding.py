"""One rule's verdict on a requirement line, part, joint or set."""

from __future__ import annotations

from enum import StrEnum

from spoutline.frozen import frozen
from spoutline.model.limit import LimitId
from spoutline.model.part_ref import PartRef
from spoutline.model.quantity import Fact, Quantity


class Severity(StrEnum):
    """How much a broken rule weighs. Never hidden."""

    MUST = "must"
    SHOULD = "should"
    ADVICE = "advice"


class Verdict(StrEnum):
    """What the rule found; ``question`` means that a person must answer before it can be judged."""

    HOLDS = "holds"
    BROKEN = "broken"
    QUESTION = "question"
    NOTE = "note"


class SubjectKind(StrEnum):
    """What a finding is about."""

    POSITION = "position"
    PART = "part"
    JOINT = "joint"
    SET = "set"


@frozen(kw_only=True)
class Finding:
    """A verdict with the numbers it used; ``explain`` makes the sentence from the rule's phrase and the facts.

    ``rule_id`` is a member value of ``rules.declared.rule_ids.RuleId``; ``subject`` is a position label, part number
    or slot. ``part`` is the part that a finding on a part is about.
    """

    rule_id: str
    severity: Severity
    verdict: Verdict
    subject_kind: SubjectKind
    subject: str
    facts: tuple[Quantity | Fact, ...]
    limit_ids: tuple[LimitId, ...]
    source: str
    part: PartRef | None = None
