"""Exchanges to ask about: the frag bay of 340 L, and random systems of nine values."""

from __future__ import annotations

from collections.abc import Mapping
from typing import Any

import numpy as np
from scipy.integrate import solve_ivp

from evenwater.engine import exchange, exchange_intake
from evenwater.engine.exchange import ExchangeAnswer
from evenwater.engine.exchange_question import ExchangeQuestion, Moved, OneDose, Pair
from evenwater.engine.form import Unread
from evenwater.engine.quantities import Water
from evenwater.engine.reasons import Reason
from tests.engine.asking import known

Raw = dict[str, Any]
SODA = {"chemical": "sodium carbonate anhydrous", "dissolved": "106 g", "made_up_to": "1 L"}
BAY: Mapping[str, Any] = {
    "system": {"net_volume": "340 L", "evaporation": "4 L per day"},
    "exchange": {"out": "10 L per day", "in": "10 L per day", "days": 30},
    "value": [{"parameter": "alkalinity", "now": "9 dKH", "new_water": "7 dKH"}],
}
MIXING = {"volume": "80 L", "label_mass": "38 g", "label_water": "1 L", "label_salinity": "35"}


def raw(**changes: Any) -> Raw:
    """Return the frag bay's exchange with some tables replaced, or left out where None."""
    return {name: table for name, table in {**BAY, **changes}.items() if table is not None}


def question(**changes: Any) -> ExchangeQuestion:
    """Return the question; the test fails when it cannot be read."""
    found = exchange_intake.exchange(raw(**changes), known())
    assert isinstance(found, ExchangeQuestion), found
    return found


def answer(**changes: Any) -> ExchangeAnswer:
    """Return the answer; the test fails when it is refused."""
    found = exchange.solve(question(**changes))
    assert isinstance(found, ExchangeAnswer), found
    return found


def reasons(**changes: Any) -> tuple[Reason, ...]:
    """Return why it cannot be read, why it is refused, or what is remarked."""
    read = exchange_intake.exchange(raw(**changes), known())
    if isinstance(read, Unread):
        return read.reasons
    found = exchange.solve(read)
    return found.remarks if isinstance(found, ExchangeAnswer) else found.reasons


def random_system(seed: int) -> ExchangeQuestion:
    """Return nine values under an unmatched pair, additions, use, loss and a dozen single doses."""
    rng = np.random.default_rng(seed)
    volume, days = float(rng.uniform(20.0, 5000.0)), float(rng.uniform(2.0, 60.0))
    out_l = volume * float(rng.uniform(0.0, 0.3))
    values = []
    for p in known().parameters.values():
        natural = p.canonical(p.natural) or p.canonical(p.range_kept[1])
        now, new = natural * rng.uniform(0.5, 1.5, 2)
        use, added = natural * rng.uniform(0.0, 0.002, 2)
        loss = float(rng.choice([0.0, rng.uniform(0.0, 0.05)]))
        values.append(Moved(p, p.display_unit, float(now), float(new), float(use), float(added), loss))
    doses = []
    for _ in range(12):
        value = values[int(rng.integers(len(values)))]
        # Some at one instant, some at the very start.
        day = float(rng.choice([0.0, 1.0, rng.uniform(0.0, days)]))
        doses.append(OneDose(value.parameter, day, float(value.now * rng.uniform(0.0, 0.1))))
    pair = Pair(out_l, out_l * float(rng.uniform(0.8, 1.1)))
    return ExchangeQuestion("", volume, 0.05, Water(), pair, days, tuple(values), tuple(doses))


def integrated(q: ExchangeQuestion, rtol: float = 1e-12) -> np.ndarray:
    """Return every value on the last day by a Runge-Kutta method of order eight, from dose to dose, to ``rtol`` [1]."""
    amounts = np.array([v.now for v in q.values]) * q.volume_l
    inflow = np.array([q.pair.in_l * v.new_water + q.volume_l * (v.added - v.use) for v in q.values])
    leaves = np.array([q.pair.out_l / q.volume_l + v.loss for v in q.values])
    names = [v.parameter.name for v in q.values]
    at = 0.0
    for instant in [*sorted({dose.at_day for dose in q.doses}), q.days]:
        if instant > at:
            run = solve_ivp(
                lambda _, m: inflow - leaves * m, (at, instant), amounts, method="DOP853", rtol=rtol, atol=1e-14
            )
            assert run.success
            amounts, at = run.y[:, -1], instant
        for dose in q.doses:
            if dose.at_day == instant:
                amounts[names.index(dose.parameter.name)] += dose.raises * q.volume_l
    return amounts / q.volume_l
