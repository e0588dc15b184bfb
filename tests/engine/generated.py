"""Corrections drawn at random, as people would write them: every parameter, chemical, label and unit."""

from __future__ import annotations

import random
from decimal import Decimal
from functools import lru_cache
from typing import Any

from tests.engine.reckoning import (
    BOUNDS,
    FACTORS,
    GRAVITIES,
    MASSES,
    SALTS,
    UNITS,
    VOLUMES,
    WATER_LIMITS,
    Plan,
    gravity,
    plain,
    reckon,
)

Raw = dict[str, Any]
FIRST = 20261127
COUNT = 300

# Grams of the chemical as weighed that surely dissolve in a litre at 20 degC; handbook figures, from memory.
DISSOLVES = {
    "sodium carbonate anhydrous": 180, "sodium carbonate monohydrate": 200, "sodium carbonate decahydrate": 450,
    "sodium bicarbonate": 80, "sodium hydroxide": 400, "calcium hydroxide": 1.5, "sodium tetraborate decahydrate": 40,
    "calcium chloride anhydrous": 500, "calcium chloride dihydrate": 650, "calcium chloride hexahydrate": 900,
    "magnesium chloride hexahydrate": 800, "magnesium sulfate heptahydrate": 500, "potassium chloride": 280,
    "strontium chloride hexahydrate": 500, "potassium iodide": 400, "sodium nitrate": 500, "potassium nitrate": 200,
    "potassium dihydrogen phosphate": 150, "sodium chloride": 300,
}  # fmt: skip
# Every way to raise every parameter; a label is one of them.
WAYS = [(name, chemical) for name in BOUNDS for chemical in (*(s for s in SALTS if name in SALTS[s].raises), "label")]


def short(value: float, digits: int) -> str:
    """Write a number with so many significant digits, without exponent."""
    return plain(format(Decimal(f"{value:.{digits}g}"), "f"))


def _in_unit(draw: random.Random, canonical: float, units: tuple[str, ...], digits: int) -> str:
    unit = draw.choice(units)
    if unit in GRAVITIES:
        return f"{short(gravity(canonical, GRAVITIES[unit]), 7)} {unit}"
    return f"{short(canonical / float(FACTORS.get(unit, 1)), digits)} {unit}"


def _change(draw: random.Random, name: str) -> Raw:
    bounds = BOUNDS[name]
    size = float(FACTORS[bounds.unit])
    hard, top = float(bounds.hard), float(bounds.targets[1])
    bottom = max(float(bounds.plausible[0]), float(bounds.targets[0]))
    measured = draw.uniform(bottom, bottom + 0.7 * (top - bottom))
    target = min(measured + hard * draw.uniform(0.3, 8.0), bottom + 0.98 * (top - bottom))
    out: Raw = {
        "parameter": name,
        "measured": _in_unit(draw, measured * size, UNITS[name], 5),
        "target": _in_unit(draw, target * size, UNITS[name], 5),
    }
    rises = tuple(u for u in UNITS[name] if u not in GRAVITIES)
    if draw.random() < 0.75:
        out["daily_use"] = _in_unit(draw, draw.uniform(0.05, 1.2) * hard * size, rises, 3) + " per day"
    choice = draw.random()
    if choice < 0.4:
        fastest = draw.uniform(0.2, 0.99) * float(bounds.recommended)
        out["fastest_rise"] = _in_unit(draw, fastest * size, rises, 3) + " per day"
    elif choice < 0.6:
        fastest = draw.uniform(float(bounds.recommended), 0.99 * hard)
        out["fastest_rise"] = _in_unit(draw, fastest * size, rises, 4) + " per day"
        out["reason"] = "a dip after a power cut"
    return out


def _additive(draw: random.Random, name: str, chemical: str) -> Raw:
    if chemical == "label":
        raises = float(BOUNDS[name].hard) * draw.uniform(0.2, 3.0) * float(FACTORS[BOUNDS[name].unit])
        units = tuple(u for u in UNITS[name] if u not in GRAVITIES)
        label = {
            "dose": _in_unit(draw, draw.uniform(0.001, 0.05), VOLUMES, 4),
            "water": _in_unit(draw, draw.uniform(20.0, 500.0), VOLUMES, 4),
            "raises": _in_unit(draw, raises, units, 4),
        }
        return {"label": label}
    litres = draw.uniform(0.4, 20.0)
    # Trace chemicals are made up dilute, since their doses are milligrams.
    thin = 0.01 if name in ("iodide", "phosphate") else 1.0
    grams = DISSOLVES[chemical] * thin * draw.uniform(0.05, 0.95) * litres
    out = {
        "chemical": chemical,
        "dissolved": _in_unit(draw, grams, MASSES, 5),
        "made_up_to": _in_unit(draw, litres, VOLUMES, 5),
    }
    if draw.random() < 0.5:
        out["purity"] = f"{draw.choice(('99.5', '97', '94.0', '78', '100'))} %"
    return out


def _pump(draw: random.Random) -> Raw:
    out: Raw = {"flow": f"{short(10.0 ** draw.uniform(0.3, 2.6), 4)} mL/min"}
    if draw.random() < 0.8:
        out["doses_per_day"] = draw.choice((draw.randint(1, 96), 24, 1, 96, 12))
    if draw.random() < 0.5:
        out["step"] = f"{draw.choice(('0.01', '0.05', '0.1', '0.25', '0.5'))} mL"
    if draw.random() < 0.3:
        out["smallest_dose"] = f"{draw.choice(('0.1', '0.2', '0.5'))} mL"
    if draw.random() < 0.3:
        out["largest_share"] = f"{draw.choice(('5', '20', '80', '100'))} %"
    return out


def _chemistry(draw: random.Random) -> Raw:
    """Return what a keeper may have measured besides: pH, and perhaps alkalinity and calcium."""
    out: Raw = {"ph": f"{draw.uniform(7.7, 8.5):.2f}"}
    if draw.random() < 0.5:
        out["alkalinity"] = _in_unit(draw, draw.uniform(1.8, 4.3), UNITS["alkalinity"], 4)
    if draw.random() < 0.5:
        out["calcium"] = _in_unit(draw, draw.uniform(350.0, 500.0), UNITS["calcium"], 4)
    return out


def draw_one(draw: random.Random, name: str, chemical: str) -> Raw:
    """Return one question at random for a way to raise a parameter."""
    litres = 10.0 ** draw.uniform(1.3, 3.7)
    system: Raw = {"net_volume": _in_unit(draw, litres, VOLUMES, 5)}
    if draw.random() < 0.5:
        system["salinity"] = f"{draw.choice(('33.5', '35', '36.2'))} ppt"
        system["temperature"] = f"{draw.choice(('22', '25', '27.5'))} degC"
    if draw.random() < 0.4:
        system |= _chemistry(draw)
    if draw.random() < 0.3:
        # A hundredth to a tenth of the tank in a day.
        system["evaporation"] = f"{short(litres * draw.uniform(0.01, 0.1), 4)} L per day"
    return {
        "system": system,
        "change": _change(draw, name),
        "additive": _additive(draw, name, chemical),
        "pump": _pump(draw),
    }


@lru_cache(maxsize=1)
def drawn() -> tuple[tuple[tuple[Raw, Plan], ...], tuple[tuple[Raw, str], ...]]:
    """Return the questions that the hand reckoning answers, with its plans, and those it refuses, with the codes.

    A plan that stands on the edge of a rounding is left out: there the last bits of a float decide.
    """
    draw = random.Random(FIRST)
    answered: list[tuple[Raw, Plan]] = []
    refused: list[tuple[Raw, str]] = []
    while len(answered) < COUNT:
        name, chemical = WAYS[len(answered) % len(WAYS)]
        raw = draw_one(draw, name, chemical)
        plan = reckon(raw)
        if isinstance(plan, str):
            refused.append((raw, plan))
        elif plan.margin > (1e-6 if plan.set_by in WATER_LIMITS else 1e-9):
            answered.append((raw, plan))
    return tuple(answered), tuple(refused)
