"""Write down what the program answers, to hold another state of the program against it: nothing is expected of it.

    python tests/reliability/answers_record.py record FILE [--generated N] [--sweep whole|short|none]
    python tests/reliability/answers_record.py compare BEFORE AFTER

``record`` plans every cell of the sweep, every demonstration station and some kind and unkind positions over generated
parts, and writes chosen parts, alternatives with prices, and conflicts with their ways out as JSON, a line for each
position. It runs against whatever state of the program is installed where it is started: take the python of another
checkout for that one's answers. ``compare`` tells what differs, and ends with 1 where something does. It is a tool for
changes that should change no answer, and for explaining those that do; ``answers_record.md`` beside it keeps what was
found. It proves no answer right: that is what the tests against oracles are for.
"""

from __future__ import annotations

import argparse
import json
import sys
import tempfile
from collections import Counter
from collections.abc import Callable, Iterator, Mapping
from functools import partial
from pathlib import Path
from typing import TYPE_CHECKING, Any

TESTS = Path(__file__).parents[1]
sys.path.insert(0, str(TESTS))

if TYPE_CHECKING:
    from spoutline.model.plan import Conflict, HangingSet, PositionPlan, Relaxation
    from spoutline.model.survey import Survey

Answer = dict[str, Any]
_ASKED = (  # positions of ``planning.surveys`` that are asked over generated parts
    "CAR",
    "TRUCK",
    "MARINA",
    "LOW_HOOK",
    "LOW_PRESSURE",
    "SLIGHT_OUTLET",
    "CAR_E85",
    "TOO_FAR",
    "BALANCE",
    "REEL",
    "DEF",
    "NO_WANTED_FLOW",
    "THIRSTY_TRUCK",
    "JUST_WITHIN_REACH",
    "LONG_CORD",
    "CAR_RETRACTOR",
)
_SHOWN = 40  # differences that are told one by one


def answer_of(plan: PositionPlan) -> Answer:
    """Return what a plan answers, in words and whole numbers alone."""
    return {
        "status": str(plan.status),
        "chosen": plan.chosen and _set_of(plan.chosen.hanging_set),
        "alternatives": {
            str(one.kind): [*_set_of(one.judged.hanging_set), one.price_difference_minor] for one in plan.alternatives
        },
        "conflict": plan.conflict and _conflict_of(plan.conflict),
        "counts": {str(one.slot): [one.in_catalogue, one.remaining] for one in plan.counts},
    }


def _set_of(hanging_set: HangingSet) -> list[Any]:
    return [[str(ref) for ref in hanging_set.refs], hanging_set.price_minor]


def _conflict_of(conflict: Conflict) -> Answer:
    return {
        "lines": [str(line) for line in conflict.requirements],
        "excluded": [[str(one.slot), str(one.requirement), one.excluded] for one in conflict.exclusions],
        "ways": [_way_of(one) for one in conflict.relaxations],
    }


def _way_of(way: Relaxation) -> list[Any]:
    value = None if way.to_value is None else f"{way.to_value:.9g}"
    return [
        str(way.requirement),
        value,
        way.price_minor,
        [str(ref) for ref in way.parts],
        [str(one) for one in way.also],
    ]


def surveys(sweep: str) -> Iterator[tuple[str, Survey]]:
    """Yield the surveys of the sweep and the demonstration stations, each under a name."""
    from spoutline.model.survey import Survey
    from sweep.combinations import BLENDS, JURISDICTIONS, combinations, representative, survey_of

    for jurisdiction in JURISDICTIONS:
        for family in BLENDS:
            cells = list(combinations(family, jurisdiction))
            yield f"sweep {family} {jurisdiction}", survey_of(representative(cells) if sweep == "short" else cells)
    for path in sorted((TESTS.parent / "resources" / "demo").glob("*.json")):
        yield f"demo {path.stem}", Survey.model_validate(json.loads(path.read_text("utf-8")))


def answers(generated: int, sweep: str) -> Iterator[tuple[str, Answer]]:
    """Yield the answer to every position, under a name that tells where it comes from."""
    from spoutline.bootstrap import Settings, open_workbench

    with tempfile.TemporaryDirectory() as folder:
        bench = open_workbench(
            Settings(database=str(Path(folder) / "parts.sqlite3"), profiles=Path(folder) / "profiles")
        )
        for name, survey in surveys(sweep) if sweep != "none" else ():
            for position in survey.positions:
                yield f"{name} {position.label}", _told(partial(bench.plan_position, survey, position.label))
        bench.close()
    if generated:
        yield from _over_generated(generated)


def _told(plan: Callable[[], PositionPlan]) -> Answer:
    try:
        return answer_of(plan())
    except Exception as fault:  # what another state of the program cannot answer is told as well
        return {"fault": f"{type(fault).__name__}: {fault}"}


def _over_generated(count: int) -> Iterator[tuple[str, Answer]]:
    from bench.generated_parts import generated_parts
    from planning import surveys as known
    from planning.stores import ListStore
    from spoutline.planning.sets.context import PlanningContext
    from spoutline.planning.sets.plan_position import plan_position
    from spoutline.ruletables.load import load_rule_tables

    resources = TESTS.parent / "resources"
    tables = load_rule_tables("us_general", resources=resources, own_profiles=None)
    context = PlanningContext(tables, ListStore(generated_parts(count, seed=7)))
    for name in _ASKED:
        survey: Survey = getattr(known, name)
        position = survey.positions[0]
        yield f"generated {count} {name}", _told(partial(plan_position, position, survey.site, context))


def record(target: Path, generated: int, sweep: str) -> int:
    """Write the answers to a file; return how many there are."""
    written = 0
    with target.open("w", encoding="utf-8") as out:
        for name, answer in answers(generated, sweep):
            line = json.dumps({"at": name, **answer}, sort_keys=True, ensure_ascii=False, separators=(",", ":"))
            out.write(line + "\n")
            written += 1
    return written


def read(source: Path) -> dict[str, Answer]:
    """Return the answers of a file by position."""
    lines = (json.loads(line) for line in source.read_text("utf-8").splitlines())
    return {line.pop("at"): line for line in lines}


def differences(before: Mapping[str, Answer], after: Mapping[str, Answer]) -> Iterator[tuple[str, str, Any, Any]]:
    """Yield position, figure, and both values of what differs; an alternative of each kind is a figure."""
    for at in sorted(before.keys() | after.keys()):
        if at not in before or at not in after:
            yield at, "position", "there" if at in before else None, "there" if at in after else None
            continue
        one, other = _flat(before[at]), _flat(after[at])
        yield from (
            (at, what, one.get(what), other.get(what))
            for what in sorted(one.keys() | other.keys())
            if one.get(what) != other.get(what)
        )


def _flat(answer: Answer) -> dict[str, Any]:
    flat = {key: value for key, value in answer.items() if not isinstance(value, dict)}
    return flat | {
        f"{key}.{name}": value
        for key, whole in answer.items()
        if isinstance(whole, dict)
        for name, value in whole.items()
    }


def compare(before: Path, after: Path) -> int:
    """Print what differs; return 1 where something does."""
    one, other = read(before), read(after)
    found = list(differences(one, other))
    at = {position for position, _, _, _ in found}
    print(f"{len(one)} and {len(other)} positions, {len(at)} of which differ")
    for what, count in sorted(Counter(what for _, what, _, _ in found).items()):
        print(f"  {what}: {count}")
    for position, what, was, now in found[:_SHOWN]:
        print(f"{position}: {what}\n  - {was}\n  + {now}")
    if len(found) > _SHOWN:
        print(f"and {len(found) - _SHOWN} more")
    return 1 if found else 0


def main() -> int:
    """Run one of the two commands."""
    parser = argparse.ArgumentParser(description=__doc__, formatter_class=argparse.RawDescriptionHelpFormatter)
    commands = parser.add_subparsers(dest="command", required=True)
    recording = commands.add_parser("record")
    recording.add_argument("file", type=Path)
    recording.add_argument("--generated", type=int, default=1_000, help="generated parts; 0 for none")
    recording.add_argument(
        "--sweep",
        choices=("whole", "short", "none"),
        default="whole",
        help="short: a part that holds every pair of answers; none: without demonstration stations as well",
    )
    comparing = commands.add_parser("compare")
    comparing.add_argument("before", type=Path)
    comparing.add_argument("after", type=Path)
    asked = parser.parse_args()
    if asked.command == "compare":
        return compare(asked.before, asked.after)
    print(f"{record(asked.file, asked.generated, asked.sweep)} answers in {asked.file}")
    return 0


if __name__ == "__main__":
    sys.exit(main())
