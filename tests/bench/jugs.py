"""How often the jug check names the right cause for 1,000 simulated records of each fault: `python -m tests.bench --only jugs`.

The records are those of the tests (tests/engine/simulated_pumps.py). Clear ones should be named, unclear ones should not, and of pumps that
are well none should be called at fault.
"""

from __future__ import annotations

import time
from collections import Counter

from evenwater.engine.jug_check import AMBER_MARK, CANNOT_TELL, RED_MARK, JugCheck, check
from tests.engine.simulated_pumps import CLEAR, HEALTHY, UNCLEAR, case

RECORDS = 1000
# Apart from those of the tests and of every run in which the weights were chosen.
FIRST_SEED = 7_000_000


def judged(truth: str, count: int) -> list[JugCheck]:
    """Return what is said of so many records of one fault."""
    found = [check(case(truth, seed).record) for seed in range(FIRST_SEED, FIRST_SEED + count)]
    return [each for each in found if isinstance(each, JugCheck)]


def alarmed(found: JugCheck) -> bool:
    """Return whether a pump is called at fault: by a cause, by a mark, or by being stopped."""
    return found.cause not in ("well", CANNOT_TELL) or found.mark in (AMBER_MARK, RED_MARK) or found.stop


def main() -> None:
    """Print the confusion table, in percent."""
    columns = (*CLEAR, CANNOT_TELL)
    print(f"{'truth':16}" + "".join(f"{name:>15}" for name in columns))
    began = time.process_time()
    right, told = {}, 0
    for truth in dict.fromkeys((*CLEAR, *HEALTHY, *UNCLEAR)):
        found = judged(truth, RECORDS)
        counts = Counter(each.cause for each in found)
        print(f"{truth:16}" + "".join(f"{100.0 * counts[name] / len(found):15.1f}" for name in columns))
        right[truth] = counts[truth if truth in CLEAR else CANNOT_TELL] / len(found)
        told += len(found)
        if truth in HEALTHY:
            print(f"{'':16}false alarms {100.0 * sum(map(alarmed, found)) / len(found):.1f} %")
        if truth == "siphon":
            print(f"{'':16}stopped {100.0 * sum(each.stop for each in found) / len(found):.1f} %")
    taken = (time.process_time() - began) / told
    print(
        f"right in {100.0 * min(right[name] for name in CLEAR):.1f} % of the worst clear fault; {1000.0 * taken:.1f} ms a record"
    )


if __name__ == "__main__":
    main()
