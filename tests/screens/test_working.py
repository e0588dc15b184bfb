"""How it was worked out: every line can be checked with a pocket calculator, to the digits it shows."""

from __future__ import annotations

import math
import re

import pytest

from evenwater.screens.answer import shown_of
from evenwater.screens.views import WorkLine
from evenwater.screens.working import working
from tests.screens.asked import grid, over_everything
from tests.screens.lint import NBSP, numbers

# Rises are written to four significant digits, what a millilitre raises to five, doses to so many decimals.
FOUR, FIVE = 5.1e-4, 5.1e-5


def lines(name: str) -> dict[str, WorkLine]:
    found = working(grid()[name], shown_of(grid()[name].question))
    named = {line.what.replace(NBSP, " "): line for line in found}
    assert len(named) == len(found), "every line has a name of its own, or is the one without"
    return named


def figures(text: str) -> list[float]:
    """Return the numbers of a text, without those in the names of units."""
    return numbers(re.sub(r"SG \d\d/\d\d|CaCO3|NO3|PO4", "", text))


@over_everything
def test_what_a_millilitre_raises(name: str) -> None:
    found = lines(name)
    (carried,) = figures(found["1 mL of stock carries"].gives)
    factors = figures(found["1 mL raises"].how)
    (raises,) = figures(found["1 mL raises"].gives)
    divided = factors[0] if "(" not in found["1 mL raises"].how else factors[0] * factors[1]
    times = factors[1] if "×" in found["1 mL raises"].how and "(" not in found["1 mL raises"].how else 1.0
    assert carried / divided * times == pytest.approx(raises, rel=4 * FIVE)


@over_everything
def test_what_the_stock_carries(name: str) -> None:
    plan = grid()[name]
    line = lines(name)["1 mL of stock carries"]
    (carried,) = figures(line.gives)
    if "label" in line.how:
        dose, water, rise = figures(line.how)
        assert carried == pytest.approx(rise * water / dose, rel=2 * FOUR)
        return
    additive = plan.question.additive
    bags = [(additive.grams, additive.purity), *((bag.grams, bag.purity) for bag in additive.also)]
    litres = re.search(r"in ([\d.]+)\u00a0L", line.how)
    assert litres
    made_up = float(litres.group(1))
    # Grams of each, times its purity, times what a gram carries.
    weighed = re.findall(r"([\d.]+)\u00a0g(?!\u00a0per| per)(.*?) × ([\d.]+)", line.how)
    found = []
    for (grams, between, per_gram), (given, purity) in zip(weighed, bags, strict=True):
        assert float(grams) / made_up == pytest.approx(given / additive.made_up_l, rel=2 * FOUR)
        share = re.search(r"([\d.]+)\u00a0% pure", between)
        assert (float(share.group(1)) / 100.0 if share else 1.0) == purity
        found.append(float(grams) / made_up / 1000.0 * purity * float(per_gram))
    assert sum(found) == pytest.approx(carried, rel=3 * FOUR)


@over_everything
def test_rise_use_and_what_is_given(name: str) -> None:
    found = lines(name)
    plan = grid()[name]
    (climb,) = figures(found["Rise wanted"].gives)
    if not plan.question.unit.startswith("SG"):
        high, low = figures(found["Rise wanted"].how)
        assert high - low == pytest.approx(climb, abs=2 * 5.1e-3 * high)
    parts = figures(found["To be given in 24 hours"].how)
    (to_give,) = figures(found["To be given in 24 hours"].gives)
    assert sum(parts) == pytest.approx(to_give, rel=2 * FOUR)
    assert len(parts) == (2 if plan.question.use > 0.0 else 1)
    assert figures(found["Pace"].gives) == parts[:1]


@over_everything
def test_dose_in_a_day_and_each_dose(name: str) -> None:
    found = lines(name)
    doses = grid()[name].doses
    give, per_ml = figures(found[""].how)
    (in_day,) = figures(found[""].gives)
    assert give / per_ml == pytest.approx(in_day, rel=FOUR + FIVE, abs=6e-4)
    per_day, step = figures(found["Each dose"].how)[:2]
    exact, chosen = figures(found["Each dose"].gives)[:2]
    if "litres" in found["Each dose"].gives:
        chosen *= 1000.0
    if "litres" in found["Each dose"].how:
        step *= 1000.0
    assert per_day == doses.per_day
    assert in_day / per_day == pytest.approx(exact, abs=6e-4 / per_day + 6e-5)
    assert chosen <= exact + 6e-5
    # A climb of less than one dose takes a smaller one, which the line then says.
    assert chosen > exact - step - 6e-5 or (doses.count == 1 and "fits" in found["Each dose"].how)
    assert chosen / step == pytest.approx(round(chosen / step), abs=1e-6)


@over_everything
def test_number_of_doses(name: str) -> None:
    found = lines(name)
    climb, left = figures(found["Number of doses"].how)
    (count,) = figures(found["Number of doses"].gives)
    assert figures(found["Left after use"].gives) == [left]
    exact = climb / left
    assert math.floor(exact * (1 - 2 * FOUR)) <= count <= math.floor(exact * (1 + 2 * FOUR))


@over_everything
def test_seconds_of_the_pump(name: str) -> None:
    line = lines(name)["Pump runs"]
    dose, flow = figures(line.how)
    if "litres" in line.how:
        dose *= 1000.0
    units = {"min": 60.0, "s": 1.0}
    parts = re.findall(r"([\d.]+)\u00a0(min|s)\b", line.gives)
    runs = sum(float(number) * units[unit] for number, unit in parts)
    exact = dose / flow * 60.0
    resolution = 1.0 if exact >= 60.0 else 0.1 if exact >= 1.0 else exact / 10.0
    assert exact * (1 - FOUR) - resolution <= runs <= exact * (1 + FOUR)


@over_everything
def test_upkeep_line(name: str) -> None:
    found = lines(name)
    if grid()[name].question.use == 0.0:
        assert "Afterwards" not in found
        return
    factors = figures(found["Afterwards"].how)
    (hourly,) = figures(found["Afterwards"].gives)
    assert len(factors) == 3, "use, what a millilitre raises, and 24 hours"
    assert factors[2] == 24.0
    assert factors[0] / factors[1] / 24.0 == pytest.approx(hourly, rel=FOUR + FIVE, abs=6e-5)


@over_everything
def test_the_second_reckoning_ends_where_the_first_does(name: str) -> None:
    plan = grid()[name]
    found = lines(name)
    (left,) = figures(found["Left to the target"].gives)
    (end,) = figures(found["Second reckoning"].gives)
    target = figures(found["Rise wanted"].how)[0]
    if plan.question.unit.startswith("SG"):
        assert end <= target
    else:
        assert target - left == pytest.approx(end, rel=1.1e-2)
    low, high = figures(found["9 times in 10 it ends"].gives)
    assert low <= end <= high
