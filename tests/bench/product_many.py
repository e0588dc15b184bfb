"""500 systems planned in one go: for each another correction of its own, read from what was typed, solved, checked and put into words.

The other column is one system planned so often that nothing has to be loaded any more; what a room costs beyond that is the ratio.

    python -m tests.bench.product_many TIMES
"""

from __future__ import annotations

import copy
import json
import sys
import time
import tomllib
from datetime import UTC, datetime
from typing import Any

from evenwater.assets import resources
from evenwater.engine import catalogue, correction, intake
from evenwater.engine.question import CorrectionQuestion
from evenwater.screens import correct

SYSTEMS = 500


def questions() -> list[dict[str, Any]]:
    """Return the example correction for 500 systems, each with another volume and another reading."""
    raw = tomllib.loads((resources() / "questions" / "correction.toml").read_text(encoding="utf-8"))
    out = []
    for number in range(SYSTEMS):
        one = copy.deepcopy(raw)
        one["system"]["net_volume"] = f"{120 + 3 * number} L"
        one["change"]["measured"] = f"{6.4 + 0.001 * number:.3f} dKH"
        out.append(one)
    return out


def main() -> None:
    known, rows, now = catalogue.load(resources()), questions(), datetime.now(UTC)
    taken: dict[str, list[float]] = {"solved": [], "shown": [], "one_solved": [], "one_shown": []}

    def solved(raw: dict[str, Any]) -> None:
        read = intake.correction(raw, known, now)
        if not isinstance(read, CorrectionQuestion) or isinstance(correction.solve(read), correction.Refused):
            sys.exit("a system was not planned")

    def shown(raw: dict[str, Any]) -> None:
        if correct.evaluate(raw, known, now).plan is None:
            sys.exit("a system was not planned")

    for number in range(int(sys.argv[1]) + 1):
        for name, work, asked in (
            ("solved", solved, rows),
            ("one_solved", solved, rows[:1] * 50),
            ("shown", shown, rows),
            ("one_shown", shown, rows[:1] * 50),
        ):
            began = time.perf_counter()
            for raw in asked:
                work(raw)
            if number:  # the first round loads what is loaded late
                taken[name].append((time.perf_counter() - began) * 1e6 / len(asked))
    print(json.dumps(taken))


if __name__ == "__main__":
    main()
