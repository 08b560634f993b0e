"""The dispenser's outlet: whether its thread carries the path that was answered."""

from __future__ import annotations

from spoutline.model.finding import Verdict
from spoutline.model.port import FlowPath, ThreadStandard
from spoutline.model.port_sizes import path_of_thread
from spoutline.model.quantity import Fact
from spoutline.model.requirement import RefusalStatus, WayOut
from spoutline.rules.declared.registry import RuleId
from spoutline.rules.derive.refusal import Refused
from spoutline.rules.verdicts import Derivation


def contradicting(thread: ThreadStandard, path: FlowPath) -> tuple[Fact, ...]:
    """Return thread, path and the path that the thread carries where they contradict each other; else nothing.

    Parameters: ``thread`` and ``path`` of one port. Source: ``model.port_sizes``.
    """
    carried = path_of_thread(thread)
    if path is carried:
        return ()
    return (Fact("thread", thread), Fact("path", path), Fact("path_of_thread", carried))


def derive_outlet(notes: Derivation) -> tuple[Refused, ...]:
    """Return what keeps every part from the outlet: a path that its thread does not carry.

    Parameters: ``notes``, the derivation under way. Result: a refusal, empty where thread and path agree.
    """
    outlet = notes.position.outlet
    facts = contradicting(outlet.thread, outlet.path)
    if not facts:
        return ()
    found = notes.find(RuleId.PATH_ON_THREAD, *facts, verdict=Verdict.BROKEN)
    return (Refused(RefusalStatus.NO_SET, found, (WayOut.CORRECT_OUTLET,)),)
