"""A year of nine values under exchange, use, loss and daily doses, by the engine's course and by scipy's solver from dose to dose.

Both begin with the same conditions in arrays and end with every value on every day of the year; processor time is taken. The solver is given what is best for it: the method of
its own that is fastest among those that come within ``ERROR`` of the truth, at the loosest tolerance that does; the truth is the closed form in
decimal arithmetic of fifty digits. The engine's own error is held to the same, and printed.

    python -m tests.bench.product_year TIMES
"""

from __future__ import annotations

import json
import sys
import time
from collections.abc import Callable
from decimal import Decimal, localcontext

import numpy as np
from scipy.integrate import solve_ivp

from evenwater.assets import resources
from evenwater.engine import catalogue
from evenwater.engine.balance import Floats
from evenwater.engine.exchange import ExchangeAnswer, solve
from evenwater.engine.exchange_course import Stretches, course, stretches
from evenwater.engine.exchange_question import ExchangeQuestion, Moved, OneDose, Pair
from evenwater.engine.quantities import Water

DAYS, VOLUME_L = 365, 340.0
# The largest error of any value on any day, as a share of the value, that either may have.
ERROR = 1e-14
METHODS = ("DOP853", "LSODA", "RK45")
TOLERANCES = (1e-9, 1e-10, 1e-11, 1e-12, 1e-13, 2.5e-14)


def question() -> ExchangeQuestion:
    """Return the year: a tank of 340 L, 10 L exchanged a day, each value dosed once a day with what it uses."""
    values, doses = [], []
    for number, p in enumerate(catalogue.load(resources()).parameters.values()):
        natural = p.canonical(p.natural) or p.canonical(p.range_kept[1])
        use = 0.01 * natural
        loss = 0.002 * number if number % 3 == 0 else 0.0
        values.append(Moved(p, p.display_unit, 0.9 * natural, natural, use, 0.0, loss))
        doses += [OneDose(p, float(day), 0.8 * use) for day in range(1, DAYS + 1)]
    doses.sort(key=lambda dose: dose.at_day)
    return ExchangeQuestion("", VOLUME_L, 0.03, Water(), Pair(10.0, 9.9), float(DAYS), tuple(values), tuple(doses))


def by_the_course(start: Floats, conditions: Stretches) -> Floats:
    """Return every value on every day, right after its dose, by the engine, shape (9, 365)."""
    return course(start, conditions, np.arange(1.0, DAYS + 1.0))


def by_scipy(start: Floats, conditions: Stretches, method: str, rtol: float) -> Floats:
    """Return the same by one of scipy's methods, begun anew at every dose."""
    first = conditions[0]
    gain, loss = first.gain, first.loss
    values, out = start, np.empty((len(start), DAYS))
    for day in range(1, DAYS + 1):
        run = solve_ivp(
            lambda _, c: gain - loss * c, (day - 1.0, float(day)), values, method=method, rtol=rtol, atol=rtol * 1e-6
        )
        values = run.y[:, -1] + conditions.jump[:, day]
        out[:, day - 1] = values
    return out


def truth(q: ExchangeQuestion) -> Floats:
    """Return the same in closed form, in fifty decimal digits until the end."""
    out = np.empty((len(q.values), DAYS))
    daily = {dose.parameter.name: Decimal(dose.raises) for dose in q.doses}
    with localcontext() as digits:
        digits.prec = 50
        for row, v in enumerate(q.values):
            share_in, share_out = Decimal(q.share_in), Decimal(q.share_out)
            gain = share_in * Decimal(v.new_water) + Decimal(v.added) - Decimal(v.use)
            loss = share_out + Decimal(v.loss)
            stays, settled, value = (-loss).exp(), gain / loss, Decimal(v.now)
            for day in range(DAYS):
                value = settled + (value - settled) * stays + daily[v.parameter.name]
                out[row, day] = float(value)
    return out


def error(found: Floats, expected: Floats) -> float:
    """Return the largest error as a share of the value."""
    return float(np.max(np.abs(found / expected - 1.0)))


def best_of_scipy(start: Floats, conditions: Stretches, expected: Floats) -> tuple[str, float, float]:
    """Return the method and tolerance that are fastest within ``ERROR``, and the error they have."""
    found: list[tuple[float, str, float, float]] = []
    for method in METHODS:
        for rtol in TOLERANCES:
            began = time.thread_time()
            off = error(by_scipy(start, conditions, method, rtol), expected)
            took = time.thread_time() - began
            if off <= ERROR:
                found.append((took, method, rtol, off))
                break
    if not found:
        sys.exit(f"no method of scipy comes within {ERROR:g}")
    _, method, rtol, off = min(found)
    return method, rtol, off


def main() -> None:
    q, times = question(), int(sys.argv[1])
    start, conditions, expected = np.array([v.now for v in q.values]), stretches(q), truth(q)
    ours = error(by_the_course(start, conditions), expected)
    if ours > ERROR:
        sys.exit(f"the course is off by {ours:.1e}")
    method, rtol, off = best_of_scipy(start, conditions, expected)
    # Several at a time, so that a clock tick is no part of what is measured.
    works: dict[str, tuple[int, Callable[[], object]]] = {
        "course": (50, lambda: by_the_course(start, conditions)),
        "question": (10, lambda: by_the_course(start, stretches(q))),
        "answer": (1, lambda: solve(q)),
        "scipy": (1, lambda: by_scipy(start, conditions, method, rtol)),
    }
    taken: dict[str, list[float]] = {name: [] for name in works}
    for _ in range(times):
        for name, (count, work) in works.items():
            began = time.thread_time()
            for _again in range(count):
                made = work()
            taken[name].append((time.thread_time() - began) * 1000 / count)
            if name == "answer" and not isinstance(made, ExchangeAnswer):
                sys.exit(f"the year is refused: {made}")
    print(json.dumps({**taken, "method": f"{method} at {rtol:g}", "off": off, "ours": ours}))


if __name__ == "__main__":
    main()
