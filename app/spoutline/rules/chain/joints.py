"""Whether two ports make up, and the joints of a whole chain: a matter of ports, never of part pairs."""

from __future__ import annotations

from spoutline.frozen import frozen
from spoutline.model.finding import Finding, SubjectKind
from spoutline.model.limit import RuleTables
from spoutline.model.plan import Joint, SetLink
from spoutline.model.port import Port, seal_of
from spoutline.model.quantity import Fact
from spoutline.rules.declared.registry import RuleId
from spoutline.rules.verdicts import finding

OUTLET = ""  # the name of the dispenser outlet as the upstream end of the first joint


@frozen
class JointPair:
    """Two ports that face each other, whether or not they make up."""

    upstream: str
    downstream: str
    upstream_port: Port
    downstream_port: Port


def mates(upstream: Port, downstream: Port) -> bool:
    """Say whether two ports make up: same thread standard, size and path, opposite genders.

    A joint that was made up inside an article is never undone: its two ports meet each other alone.

    NPT never mates with G: 60 against 55 degrees and, at other sizes, other pitches; near equal numbers do not count.

    Parameters: ``upstream``, the port nearer the dispenser; ``downstream``, the port that faces it.
    Source: ASME B1.20.1; ISO 228-1.
    """
    return (
        upstream.thread is downstream.thread
        and upstream.size == downstream.size
        and upstream.gender is not downstream.gender
        and upstream.path is downstream.path
        and upstream.made_up_in == downstream.made_up_in
    )


def facing_ports(links: tuple[SetLink, ...], outlet: Port) -> tuple[JointPair, ...]:
    """Return the pairs of ports along a chain, dispenser outlet first.

    A part without the port that its place asks for ends the chain there; the chain rule reports it.

    Parameters: ``links``, the parts in order; ``outlet``, the dispenser's port.
    """
    pairs: list[JointPair] = []
    name: str = OUTLET
    port: Port | None = outlet
    for link in links:
        if port is None or link.part.inlet is None:
            break
        pairs.append(JointPair(name, link.part.number, port, link.part.inlet))
        name, port = link.part.number, link.part.outlet
    return tuple(pairs)


def joints_of(links: tuple[SetLink, ...], outlet: Port) -> tuple[Joint, ...]:
    """Return the joints of a chain with the way each is made tight.

    Parameters: ``links``, the parts in order; ``outlet``, the dispenser's port.
    """
    return tuple(
        Joint(
            upstream=pair.upstream,
            downstream=pair.downstream,
            upstream_port=pair.upstream_port,
            downstream_port=pair.downstream_port,
            seal=seal_of(pair.downstream_port),
        )
        for pair in facing_ports(links, outlet)
    )


def joint_findings(links: tuple[SetLink, ...], outlet: Port, tables: RuleTables) -> tuple[Finding, ...]:
    """Return what keeps the ports along a chain from making up; empty where every joint mates.

    Parameters: ``links``, the parts in order; ``outlet``, the dispenser's port; ``tables``, the profile.
    """
    return tuple(found for pair in facing_ports(links, outlet) for found in pair_findings(pair, tables))


def pair_findings(pair: JointPair | Joint, tables: RuleTables) -> tuple[Finding, ...]:
    """Return what keeps two ports from making up, one finding for each property that differs; empty where they mate.

    Parameters: ``pair``, the two ports with the names of their parts; ``tables``, the profile.
    """
    up, down = pair.upstream_port, pair.downstream_port
    found: list[Finding] = []

    def differs(rule_id: RuleId, *facts: Fact) -> None:
        ends = (Fact("upstream", pair.upstream), Fact("downstream", pair.downstream))
        subject = f"{pair.upstream} > {pair.downstream}"
        found.append(finding(rule_id, tables, SubjectKind.JOINT, subject, *ends, *facts))

    if up.thread is not down.thread:
        differs(RuleId.JOINT_THREAD, Fact("upstream_thread", up.thread), Fact("downstream_thread", down.thread))
    if up.size != down.size:
        differs(RuleId.JOINT_SIZE, Fact("upstream_size", up.size), Fact("downstream_size", down.size))
    if up.gender is down.gender:
        differs(RuleId.JOINT_GENDER, Fact("gender", up.gender))
    if up.path is not down.path:
        differs(RuleId.JOINT_PATH, Fact("upstream_path", up.path), Fact("downstream_path", down.path))
    if up.made_up_in != down.made_up_in:
        differs(RuleId.JOINT_MADE_UP, Fact("article", up.made_up_in or down.made_up_in))
    return tuple(found)
