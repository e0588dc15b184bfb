"""1,000 exchanges at random, of nine values with doses, production, use and loss, against scipy's integrator of order eight.

Printed are the largest relative error, and how long both take; an error above ``MOST`` ends it with an error. The suite does the same
with 60 of them.

    python -m tests.bench --only exchange
"""

from __future__ import annotations

import statistics
import sys
import time

import numpy as np

from evenwater.engine.exchange import ExchangeAnswer, solve
from evenwater.engine.exchange_course import course, stretches
from tests.engine.exchanges import integrated, random_system

SYSTEMS = 1_000
MOST = 1e-9
# Near what an adaptive method can be asked for in double precision.
RTOL = 1e-13


def main() -> None:
    """Reckon, integrate, compare and print."""
    worst, where, doses = 0.0, 0, 0
    answered: list[float] = []
    alone: list[float] = []
    integrating: list[float] = []
    for seed in range(SYSTEMS):
        q = random_system(seed)
        doses += len(q.doses)
        began = time.process_time()
        found = solve(q)
        answered.append(time.process_time() - began)
        if not isinstance(found, ExchangeAnswer):
            sys.exit(f"system {seed} is refused: {found}")
        began = time.process_time()
        ends = course(np.array([v.now for v in q.values]), stretches(q), np.array([q.days]))[:, 0]
        alone.append(time.process_time() - began)
        began = time.process_time()
        expected = integrated(q, RTOL)
        integrating.append(time.process_time() - began)
        for got in (ends, np.array([each.end for each in found.courses])):
            off = float(np.max(np.abs(got / expected - 1.0)))
            if off > worst:
                worst, where = off, seed
    print(
        f"{SYSTEMS} systems of {len(q.values)} values, {doses} doses: largest relative error {worst:.2e} (system {where})"
    )
    scipys = statistics.median(integrating)
    for name, times in (("the course alone", alone), ("the whole answer with its checks", answered)):
        took = statistics.median(times)
        print(
            f"  {name}: {took * 1e3:.2f} ms; scipy {scipys * 1e3:.1f} ms, {scipys / took:.0f} times as long (medians of CPU time)"
        )
    if worst > MOST:
        sys.exit(f"an error above {MOST:g}")


if __name__ == "__main__":
    main()
