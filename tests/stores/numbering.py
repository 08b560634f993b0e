"""Two programs that keep quotations under one pattern of numbers at once, whatever database the book lies in."""

from __future__ import annotations

import os
import subprocess
import sys
from pathlib import Path

# each says that it is ready and waits for a line, so that both keep their quotations at the same time
_KEEPER = """
import sys
from planning.quoting_terms import DAY
from spoutline.bootstrap import Settings, open_workbench
from stores.quotation_life import quoted
bench = open_workbench(Settings(database=sys.argv[1]))
made = quoted(bench, heading={"number": "{year}-{serial:04}", "dated": DAY})
bench.quoting().life().quotations()
print("ready", flush=True)
sys.stdin.readline()
for _ in range(int(sys.argv[2])):
    print(bench.quoting().life().keep(made, "Ada").quotation.terms.heading.number)
"""


def numbers_kept_by_two_processes(database: str, each: int) -> list[str]:
    """Return every number that two processes were given, ``each`` of them as often, sorted."""
    environment = {**os.environ, "PYTHONPATH": str(Path(__file__).parents[1])}
    keepers = [
        subprocess.Popen(
            [sys.executable, "-c", _KEEPER, database, str(each)],
            env=environment,
            stdin=subprocess.PIPE,
            stdout=subprocess.PIPE,
            text=True,
        )
        for _ in range(2)
    ]
    for keeper in keepers:
        assert keeper.stdout is not None
        assert keeper.stdout.readline().strip() == "ready"
    for keeper in keepers:
        assert keeper.stdin is not None
        keeper.stdin.write("go\n")
        keeper.stdin.flush()
    told = [keeper.communicate(timeout=120)[0] for keeper in keepers]
    assert [keeper.returncode for keeper in keepers] == [0, 0]
    return sorted(number for text in told for number in text.split())
