"""Reads the rows of contingency cards back as a person would, and gives their doses one by one."""

from __future__ import annotations

import re
from dataclasses import dataclass
from functools import cache

from evenwater.engine.correction import Answer
from evenwater.engine.quantities import from_canonical, to_canonical
from evenwater.screens.contingency import contingencies
from evenwater.screens.contingency_views import ContingencyCard
from evenwater.screens.views import DoseRow
from tests.screens.asked import NOW, grid
from tests.screens.lint import NBSP, millilitres
from tests.screens.reckoned import canonical, parameters, per_ml

HIGH, MISSED, FAILED, BATCH = range(4)
BATCH_ID = "soda:1234abcd"
SLACK = 1.0 + 1e-6
_RANGE = re.compile(r"^(?:Reads ([\d.]+) to|Above ([\d.]+), up to) ([\d.]+)(?:\u00a0[^:]+?)?(?:: (\d+) doses?)?$")


@dataclass(frozen=True)
class Given:
    """What a row allows: from ``low`` to ``high`` [canonical unit] so many doses of ``ml`` [mL]; ``count`` is 0 by hand."""

    low: float
    high: float
    ml: float
    count: int
    row: DoseRow


@cache
def made(name: str) -> tuple[Answer, tuple[ContingencyCard, ...]]:
    """Return a plan of the grid with its cards."""
    plan = grid()[name]
    return plan, contingencies(plan, NOW, BATCH_ID, "2026-11-24")


def given(card: ContingencyCard, plan: Answer) -> list[Given]:
    """Return the rows of a card that begin with a reading."""
    q = plan.question
    found = []
    for row in card.rows:
        for line in row.when.splitlines():
            match = _RANGE.match(line)
            if match:
                low = match[1] or match[2]
                ends = [to_canonical(float(text), q.parameter.kind, q.unit, q.system.water) for text in (low, match[3])]
                found.append(Given(*ends, float(millilitres(row.dose)), int(match[4] or 0), row))
    return found


def hours(row: DoseRow) -> list[int]:
    """Return the hours at which a row is given by hand."""
    return [int(hour) for hour in re.findall(r"(\d\d):00", row.when.splitlines()[1])]


def path(start: float, plan: Answer, ml: float, count: int) -> list[float]:
    """Return the value right after each of so many doses of the plan's pump, the start first."""
    q, raised = plan.question, per_ml(plan)
    values = [start]
    for _ in range(count):
        values.append(values[-1] - q.use / q.pump.doses_per_day + ml * raised)
    return values


def by_hand(start: float, plan: Answer, rows: list[Given], days: int, used: float) -> list[tuple[float, float]]:
    """Follow the card of the failed pump from a reading on: (hour, value right after each dose), reading every morning."""
    value, at, followed = start, 7.0, []
    for day in range(days):
        morning = 24.0 * day + 7.0
        value -= used * (morning - at) / 24.0
        at = morning
        row = next((row for number, row in enumerate(rows) if inside(value, row, number == 0)), None)
        for hour in hours(row.row) if row is not None else []:
            value -= used * (24.0 * day + hour - at) / 24.0
            at = 24.0 * day + hour
            value += row.ml * per_ml(plan)
            followed.append((at, value))
    return followed


def inside(value: float, row: Given, first: bool) -> bool:
    """Return whether a row is meant for a reading."""
    return (row.low <= value if first else row.low < value) and value <= row.high


def steepest(values: list[float], per_day: int) -> float:
    """Return the largest rise between two doses a day apart, or within less than a day."""
    if len(values) <= per_day:
        return max(values) - values[0]
    return max(later - earlier for earlier, later in zip(values, values[per_day:], strict=False))


def allowed_rise(plan: Answer) -> float:
    """Return the fastest rise a day that the plan was asked for [canonical unit]."""
    q = plan.question
    recommended = canonical(q.parameter.name, parameters()[q.parameter.name]["rise_per_day"]["recommended"])
    return recommended if q.fastest is None else q.fastest


def allowed_jump(plan: Answer) -> float:
    """Return the most that one dose may raise [canonical unit]."""
    q = plan.question
    kind = "hard" if q.reason.strip() else "recommended"
    return canonical(q.parameter.name, parameters()[q.parameter.name]["rise_per_dose"][kind])


def plain(text: str) -> str:
    """Return a text with ordinary spaces."""
    return text.replace(NBSP, " ")


def steps(card: ContingencyCard) -> str:
    """Return all steps of a card as one text."""
    return plain(" | ".join(f"{step.when}: {step.what}" for step in card.steps))


def shown(value: float, plan: Answer) -> float:
    """Return a canonical value as the keeper's figure."""
    q = plan.question
    return from_canonical(value, q.parameter.kind, q.unit, q.system.water)
