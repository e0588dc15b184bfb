"""10,000 timetables, each held against its wishes by two checkers: `python -m tests.bench --only timetables`.

Besides them small days, in which every minute is tried: wherever that finds a timetable, the planner must. Any fault ends the
process with an error.
"""

from __future__ import annotations

import sys
import time
from collections import Counter

from evenwater.engine.timetable import Refused, TimetableQuestion, solve
from evenwater.engine.timetable_even import Budget
from evenwater.engine.timetable_order import ordered
from evenwater.engine.timetable_question import Apart, TimedPump
from tests.engine.timetables import drawn, every, faults, hourly, hourly_exists, small_places

DRAWN, SMALL, HOURLY = 10_000, 20_000, 1000


def thousands() -> None:
    """Plan questions of every sort and print how they ended and how long it took."""
    ended: Counter[str] = Counter()
    answered, refused = [], []
    for seed in range(DRAWN):
        question = drawn(seed)
        begun = time.process_time()
        result = solve(question)
        (refused if isinstance(result, Refused) else answered).append(time.process_time() - begun)
        if isinstance(result, Refused):
            ended.update({reason.code for reason in result.reasons})
            if "timetable_disagrees" in ended:
                sys.exit(f"question {seed}: the second opinion disagrees")
        elif found := faults(result):
            sys.exit(f"question {seed}: {found}")
    print(f"{DRAWN} questions: {len(answered)} answered, no fault by two checkers; {len(refused)} refused")
    for name, taken in (("answered", answered), ("refused", refused)):
        at = sorted(1000.0 * each for each in taken)
        print(
            f"{name:10} ms: median {at[len(at) // 2]:.1f}, 95 % {at[len(at) * 95 // 100]:.1f}, 99 % {at[len(at) * 99 // 100]:.1f}"
        )
    print(
        "refused for: " + ", ".join(f"{code.removeprefix('timetable_')} {count}" for code, count in ended.most_common())
    )


def complete() -> None:
    """Hold the search against one that tries every minute."""
    there = 0
    for seed in range(SMALL):
        places, budget = small_places(seed), Budget(500_000)
        found = every(places) is not None
        there += found
        if (ordered(places, budget) is not None) != found or budget.spent:
            sys.exit(f"small day {seed}: every minute says {found}")
    print(f"{SMALL} small days: {there} have a timetable, all found; of the others none")
    there = 0
    for seed in range(HOURLY):
        question = hourly(seed)
        found = hourly_exists(question)
        there += found
        if isinstance(solve(question), Refused) == found:
            sys.exit(f"hourly day {seed}: every hour says {found}")
    print(f"{HOURLY} days in whole hours: {there} have a timetable, all found; of the others none")


def eight_pumps() -> None:
    """Time eight pumps of 24 doses that all keep apart, and that run one at a time."""
    pumps = tuple(TimedPump(f"Pump {n}", 50.0 + 3.33 * n, 24.0) for n in range(8))
    pairs = tuple(Apart(i, j, 5.0) for j in range(8) for i in range(j))
    for name, question in (
        ("all pairs apart", TimetableQuestion(pumps, pairs)),
        ("one at a time", TimetableQuestion(pumps, pairs[:1], one_at_a_time=True)),
    ):
        taken = []
        for _ in range(20):
            begun = time.process_time()
            solve(question)
            taken.append(1000.0 * (time.process_time() - begun))
        print(f"8 pumps of 24 doses, {name}: median {sorted(taken)[10]:.1f} ms, the first {taken[0]:.1f} ms")


if __name__ == "__main__":
    eight_pumps()
    complete()
    thousands()
