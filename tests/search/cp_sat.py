"""An oracle for chains too large to enumerate: CP-SAT of OR-tools, with loads as whole numbers.

Loads are scaled by a million and rounded, with a slack of ten units: at larger scales CP-SAT was seen to return wrong
answers, and a chain this near to a limit would be a matter of rounding in any program.
"""

from __future__ import annotations

import math
from collections import defaultdict
from collections.abc import Iterable
from typing import Any

from search.problems import arcs_of
from spoutline.search.graph import MAJOR, Item, Problem

SCALE = 1_000_000
SLACK = 10
LARGEST = 1e9


def cp_sat_optimum(problem: Problem, without: Iterable[tuple[Item | None, ...]] = ()) -> int | None:
    """Return the least cost of any chain but some, no cost negative; None where there is none."""
    from ortools.sat.python import cp_model

    model = cp_model.CpModel()
    depth_end = len(problem.layers)
    out_of: dict[tuple[int, int], list[Any]] = defaultdict(list)
    into: dict[tuple[int, int], list[Any]] = defaultdict(list)
    taken = []
    for depth, before, after, item in arcs_of(problem):
        if item is not None and item.demands > problem.start_bears:
            continue
        arc = model.new_bool_var("")
        taken.append((depth, item, arc))
        out_of[depth, before].append(arc)
        into[depth + 1, after].append(arc)
    model.add(sum(out_of[0, problem.start]) == 1)
    for node in out_of.keys() | into.keys():
        if node[0] == 0 and node != (0, problem.start):
            model.add(sum(out_of[node]) == 0)
        elif 0 < node[0] < depth_end:
            model.add(sum(out_of[node]) == sum(into[node]))
    for index, limit in enumerate(problem.limits):
        if limit == math.inf:
            continue
        if limit == -math.inf:
            return None
        terms = [(round(_clipped(item.loads[index]) * SCALE), arc) for _, item, arc in taken if item is not None]
        model.add(sum(load * arc for load, arc in terms) <= round(limit * SCALE) + SLACK)
    for asked in sorted({item.demands for _, item, _ in taken if item is not None and item.demands > 0}):
        for layer in range(depth_end):
            asks = [arc for depth, item, arc in taken if item is not None and depth == layer and item.demands >= asked]
            weak = [arc for depth, item, arc in taken if item is not None and depth != layer and item.bears < asked]
            if asks and weak:
                # at most one item of the layer is taken, and it stands beside no weaker one
                model.add(sum(weak) <= depth_end * (1 - sum(asks)))
    for chain in without:
        model.add(sum(arc for depth, item, arc in taken if item == chain[depth]) <= depth_end - 1)
    costs = [(*divmod(item.cost, MAJOR), arc) for _, item, arc in taken if item is not None]
    weight = 1 + depth_end * max((cost for _, cost, _ in costs), default=0)
    model.minimize(sum((major * weight + cost) * arc for major, cost, arc in costs))
    solver = cp_model.CpSolver()
    solver.parameters.num_workers = 1
    status = solver.solve(model)
    if status == cp_model.INFEASIBLE:
        return None
    assert status == cp_model.OPTIMAL
    major, cost = divmod(round(solver.objective_value), weight)
    return major * MAJOR + cost


def _clipped(load: float) -> float:
    """Return a load, no larger either way than suffices to exceed or to free any sum in these tests."""
    return max(-LARGEST, min(load, LARGEST))
