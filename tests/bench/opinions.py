"""100,000 drawn corrections, two opinions on each: plans lived through dose by dose, refusals tried by force.

Ends with an error on the first violation found, after the chunk it lies in, and prints the question as it is to be asked again.

    python -m tests.bench --only opinions [--count N] [--seed S]
"""

from __future__ import annotations

import argparse
import sys
import time

from tests.engine.opinion_tally import CODES, Tally, examine

CHUNK = 500


def shown(found: Tally) -> list[str]:
    """Return the table: what was asked, answered and refused, what force says of it, and how near the plans come to each limit."""
    refused = sum(found.forced.values())
    lines = [
        f"questions {found.asked}, answered {found.answered}, refused {found.asked - found.answered}, tried by force {refused}",
        f"violations {len(found.violations)}",
        "what set the pace: " + ", ".join(f"{code} {times}" for code, times in found.set_by.most_common()),
        "refused for" + " " * 29 + "questions   alone  no plan",
    ]
    for code, times in found.refused.most_common():
        alone, none = (found.forced[f"{code}: {why}"] for why in ("alone", "no plan"))
        lines.append(f"  {code:<38}{times:9}" + (f"{alone:8}{none:9}" if alone or none else ""))
    lines += [f"  never reached: {code}" for code in sorted(CODES - found.refused.keys())]
    lines.append("largest part of a limit that a plan took" + " " * 6 + "part     left  question")
    lines += [
        f"  {limit:<38}{part:12.9f}{1.0 - part:9.0e}{number:10}"
        for limit, (part, number) in sorted(found.worst.items(), key=lambda item: -item[1][0])
    ]
    lines += [f"a dose below the smallest, advised {what}: {times}" for what, times in sorted(found.advised.items())]
    lines += [f"not promised, {what}: {times} plans" for what, times in found.not_promised.items()]
    return lines


def main() -> None:
    """Ask, live through, try by force; print, and end with an error when anything is violated."""
    parser = argparse.ArgumentParser()
    parser.add_argument("--count", type=int, default=100_000)
    parser.add_argument("--seed", type=int, default=1)
    chosen = parser.parse_args()
    found, began = Tally(), time.perf_counter()
    for first in range(0, chosen.count, CHUNK):
        found.add(examine(chosen.seed, range(first, min(first + CHUNK, chosen.count))))
        if found.violations:
            break
    took = time.perf_counter() - began
    print(f"seed {chosen.seed}, {took:.0f} s, {1000.0 * took / max(found.asked, 1):.1f} ms each")
    print("\n".join(shown(found)))
    for line in found.violations[:10]:
        print(line)
    if found.violations:
        sys.exit(1)


if __name__ == "__main__":
    main()
