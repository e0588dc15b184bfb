"""How well the use is learned from the logs of 1,000 simulated tanks: `python -m tests.bench --only consumption`.

The tanks are those of the tests (tests/engine/consumption_tanks.py); a change is noticed when the 90 % interval of the present use leaves
the old use out, or when the change is named about where it was.
"""

from __future__ import annotations

import math
import statistics
import time
from collections.abc import Sequence

import numpy as np

from evenwater.engine.consumption_estimate import Estimate, estimate
from tests.engine.consumption_tanks import COURSES, Tank, holds, noticed_after, tank

TANKS, LOOKED_AT = 1000, 12
Learned = tuple[Tank, Estimate]


def share(of: Sequence[Learned]) -> str:
    """Return how many intervals hold the true use, and how wide they are at the median, over the use."""
    width = statistics.median((found.use.high - found.use.low) / abs(tank_.use_before) for tank_, found in of)
    held = statistics.mean(holds(found, tank_) for tank_, found in of)
    return f"{len(of):5} tanks   the 90 % interval holds the true use in {100.0 * held:5.1f} %   median width {100.0 * width:5.1f} % of the use"


def main() -> None:
    """Print the figures."""
    made = [tank(seed) for seed in range(TANKS)]
    began = time.process_time()
    learned = [(of, estimate(*of.until(len(of.days)))) for of in made]
    taken = (time.process_time() - began) / TANKS
    print(f"{'all':12}{share(learned)}")
    for name in COURSES:
        print(f"{name:12}{share([(of, found) for of, found in learned if of.course == name])}")
    for name in ("alkalinity", "calcium", "nitrate"):
        print(f"{name:12}{share([(of, found) for of, found in learned if of.parameter == name])}")
    halved = [noticed_after(of, LOOKED_AT) or math.inf for of in made if of.course == "halved"]
    quarter, median, three = (np.quantile(halved, q, method="nearest") for q in (0.25, 0.5, 0.75))
    print(
        f"{len(halved)} halved uses noticed after a median of {median:.0f} readings (quartiles {quarter:.0f} and {three:.0f})"
    )
    steady = [found.changed is not None for of, found in learned if of.course == "steady"]
    print(f"{sum(steady)} changes named in {len(steady)} steady tanks")
    pairs = [({odd.index for odd in found.odd}, set(np.flatnonzero(of.bad).tolist())) for of, found in learned]
    hits, missed, wrong = (
        sum(len(x) for x in column) for column in zip(*((a & b, b - a, a - b) for a, b in pairs), strict=True)
    )
    print(f"{hits} bad tests named, {missed} not, {wrong} good ones taken for bad")
    print(f"{1000.0 * taken:.1f} ms for each tank of {statistics.median(len(of.days) for of in made):.0f} readings")


if __name__ == "__main__":
    main()
