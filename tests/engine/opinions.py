"""Corrections drawn as widely as the product reads them: dead simple to extreme, and with everything that may be wrong.

A question is known by its seed and number, so that any of them can be asked again alone. About half are ordinary ones;
in the others one thing or several are driven to where the planner has to refuse.
"""

from __future__ import annotations

import math
import random
from collections.abc import Mapping
from dataclasses import dataclass, replace
from datetime import datetime, timedelta
from typing import Any

from evenwater.engine import intake
from evenwater.engine.question import CorrectionQuestion
from tests.engine.asking import NOW, known
from tests.engine.generated import DISSOLVES, WAYS, short
from tests.engine.reckoning import BOUNDS, FACTORS, GRAVITIES, MASSES, SALTS, UNITS, VOLUMES, Bounds, gravity

Raw = dict[str, Any]

# Besides what a chemical is meant for: what it raises along, and pairs that may stand in one jug or may not.
ALONG = tuple((name, chemical) for chemical, salt in SALTS.items() for name in salt.along)
PAIRS = (
    ("magnesium", "magnesium chloride hexahydrate", "magnesium sulfate heptahydrate"),
    ("alkalinity", "sodium carbonate anhydrous", "sodium bicarbonate"),
    ("alkalinity", "sodium bicarbonate", "sodium tetraborate decahydrate"),
    ("alkalinity", "sodium carbonate monohydrate", "boric acid"),
    ("nitrate", "potassium nitrate", "sodium nitrate"),
    ("phosphate", "potassium dihydrogen phosphate", "potassium nitrate"),
    ("calcium", "calcium chloride dihydrate", "strontium chloride hexahydrate"),
    ("salinity", "sodium chloride", "potassium chloride"),
    ("potassium", "potassium chloride", "potassium iodide"),
)
# What lifts pH most.
BASES = tuple(
    ("alkalinity", base) for base in ("sodium hydroxide", "calcium hydroxide", "sodium carbonate anhydrous", "label")
)
CHEMICALS = (*SALTS, "boric acid")
# A litre of seawater weighs about so much.
SIZES = {**{unit: float(factor) for unit, factor in FACTORS.items()}, "mg/kg": 1.0233}
VOLUME_KNOWN = ("", "measured by filling", "dose and test", "dimensions", "unknown")
# Figures of a question that no field would have let through, as another caller of the engine might hand them over.
FIGURES = (
    ("system", "volume_l"), ("system", "volume_uncertainty"), ("system", "ph"), ("system", "alkalinity"),
    ("system", "calcium"), ("system", "evaporation_l"), ("pump", "flow_ml_per_min"), ("pump", "smallest_ml"),
    ("pump", "step_ml"), ("pump", "largest_share"), ("pump", "doses_per_day"), ("", "measured"), ("", "target"),
    ("", "use"), ("", "fastest"), ("", "untested"), ("", "lately"),
)  # fmt: skip
NO_FIGURES = (math.nan, math.inf, -math.inf, 2e9, -2e9)


@dataclass(frozen=True)
class Drawn:
    """A question as a question file has it, and perhaps one figure that is broken once it has been read."""

    seed: int
    number: int
    raw: Raw
    broken: tuple[str, str, float] | None = None

    def read(self) -> CorrectionQuestion | intake.Unread:
        """Return the question as the product reads it."""
        question = intake.correction(self.raw, known(), NOW)
        if self.broken is None or not isinstance(question, CorrectionQuestion):
            return question
        holder, name, value = self.broken
        figure: Any = value
        if not holder:
            return replace(question, **{name: figure})
        return replace(question, **{holder: replace(getattr(question, holder), **{name: figure})})


def drawn(seed: int, number: int) -> Drawn:
    """Return one question of a seed."""
    draw = random.Random(f"{seed}/{number}")
    litres = 10.0 ** draw.uniform(0.5, 4.5)
    name, additive = _additive(draw)
    raw = {
        "system": _system(draw, litres),
        "change": _change(draw, name),
        "additive": additive,
        "pump": _pump(draw, name, litres, additive),
    }
    if draw.random() < 0.1:
        raw = _dead_simple(raw)
    broken = (*draw.choice(FIGURES), draw.choice(NO_FIGURES)) if draw.random() < 0.01 else None
    return Drawn(seed, number, raw, broken)


def _dead_simple(raw: Mapping[str, Any]) -> Raw:
    """Return the question without anything that may be left out."""
    needed = {"net_volume", "parameter", "measured", "target", "flow"}
    bare = {table: {k: v for k, v in raw[table].items() if k in needed} for table in ("system", "change", "pump")}
    optional = ("purity", "temperature")
    return {**bare, "additive": {k: v for k, v in raw["additive"].items() if k not in optional}}


def _text(draw: random.Random, value: float, units: tuple[str, ...], digits: int, tail: str = "") -> str:
    """Write a canonical value in one of some units, with so many digits."""
    unit = draw.choice(units)
    if unit in GRAVITIES:
        return f"{short(gravity(value, GRAVITIES[unit]), 7)} {unit}"
    return f"{short(value / SIZES[unit], digits)} {unit}{tail}"


def _slopes(name: str) -> tuple[str, ...]:
    """Return the units in which rises of a parameter are written."""
    return tuple(unit for unit in UNITS[name] if unit not in GRAVITIES)


def _system(draw: random.Random, litres: float) -> Raw:
    out: Raw = {"net_volume": _text(draw, litres, VOLUMES, 5)}
    if draw.random() < 0.6:
        out["volume_known"] = draw.choice(VOLUME_KNOWN)
    if draw.random() < 0.4:
        out["volume_uncertainty"] = f"{draw.choice((0, 2, 5, 10, 25, 40, 50))} %"
    if draw.random() < 0.6:
        out["salinity"] = draw.choice(("33.5", "35 ppt", "36.2", "30", "25.5 ppt", "40", "1.0264 SG 25/25 degC"))
    if draw.random() < 0.6:
        out["temperature"] = draw.choice(("22 degC", "25 degC", "27.5 degC", "18 degC", "78 degF", "82.5 degF"))
    if draw.random() < 0.55:
        out["ph"] = f"{draw.uniform(*draw.choice(((7.7, 8.4), (7.7, 8.4), (7.0, 8.7), (8.45, 9.9)))):.2f}"
    if draw.random() < 0.4:
        top = draw.choice((5.0, 5.0, 10.0))
        out["alkalinity"] = _text(draw, draw.uniform(0.3, top), UNITS["alkalinity"], 4)
    if draw.random() < 0.4:
        out["calcium"] = _text(draw, draw.uniform(100.0, draw.choice((500.0, 900.0))), UNITS["calcium"], 4)
    if draw.random() < 0.35:
        out["evaporation"] = f"{short(litres * 10.0 ** draw.uniform(-3.0, -0.9), 4)} L per day"
    return out


def _change(draw: random.Random, name: str) -> Raw:
    bounds, units = BOUNDS[name], UNITS[name]
    size, hard = float(FACTORS[bounds.unit]), float(bounds.hard)
    measured, target = _reading_and_target(draw, bounds)
    out: Raw = {"parameter": name, "measured": _text(draw, measured * size, units, 5)}
    out["target"] = _text(draw, target * size, units, 5) if draw.random() < 0.985 else out["measured"]
    if draw.random() < 0.6:
        hours = draw.uniform(*draw.choice((*((0.0, 60.0), (0.0, 24.0), (0.0, 24.0)) * 4, (0.0, 500.0), (-0.2, 0.0))))
        out["measured_at"] = _instant(draw, NOW - timedelta(hours=hours))
    if draw.random() < 0.7:
        use = draw.choice((draw.uniform(0.05, 1.0),) * 4 + (draw.uniform(1.0, 9.0), 0.0)) * hard
        out["daily_use"] = _text(draw, use * size, _slopes(name), 3, " per day")
    if draw.random() < 0.1:
        out["untested"] = _text(draw, draw.choice((0.1, 0.3, 0.5, 2.0)) * draw.random() * hard * size, _slopes(name), 3)
    if draw.random() < 0.1:
        out["raised_lately"] = _text(draw, draw.choice((0.9, 1.3)) * draw.random() * hard * size, _slopes(name), 3)
    return out | _wish(draw, name, bounds)


def _reading_and_target(draw: random.Random, bounds: Bounds) -> tuple[float, float]:
    """Return a reading and a target [display unit], which may be out of every range."""
    hard, top = float(bounds.hard), float(bounds.targets[1])
    least, most = (float(v) for v in bounds.plausible)
    bottom = max(least, float(bounds.targets[0]))
    measured = draw.uniform(bottom, bottom + 0.75 * (top - bottom))
    target = min(measured + hard * 10.0 ** draw.uniform(-2.5, 1.1), bottom + draw.uniform(0.9, 1.0) * (top - bottom))
    chance = draw.random()
    if chance < 0.02:
        measured = draw.choice((draw.uniform(0.0, least), draw.uniform(most, 1.5 * most)))
    elif chance < 0.04:
        target = draw.choice((draw.uniform(top, 1.4 * top), draw.uniform(0.0, bottom)))
    elif chance < 0.06:
        target = draw.uniform(bottom, measured)
    elif chance < 0.08:
        measured = draw.uniform(least, min(top, most))
    if bounds.unit == "ppt":
        # What the fields take of a salinity.
        measured, target = (min(max(v, 5.5), 44.9) for v in (measured, target))
    return measured, target


def _instant(draw: random.Random, at: datetime) -> Any:
    """Return an instant as a file or a form hands it over, perhaps with the offset of another place."""
    other = at.astimezone(draw.choice(ZONES))
    return other.isoformat() if draw.random() < 0.5 else other


ZONES = tuple(
    datetime.fromisoformat(f"2026-11-25T09:00:00{offset}").tzinfo for offset in ("+00:00", "-09:30", "+13:00")
)


def _wish(draw: random.Random, name: str, bounds: Bounds) -> Raw:
    """Return the fastest rise that is wished for, and perhaps a reason to go beyond the recommended one."""
    recommended, hard = float(bounds.recommended), float(bounds.hard)
    reason = {"reason": draw.choice(("a dip after a power cut", "advice"))} if draw.random() < 0.12 else {}
    chance = draw.random()
    if chance < 0.42:
        return reason
    if chance < 0.72:
        fastest = recommended * draw.uniform(0.1, 1.0)
    elif chance < 0.8:
        fastest = recommended * 10.0 ** draw.uniform(-4.0, -1.0)
    elif chance < 0.9:
        fastest, reason = draw.uniform(recommended, hard), {"reason": "a dip after a power cut"}
    elif chance < 0.94:
        # Right at a bound, in the unit that the bound is written in.
        return {"fastest_rise": f"{draw.choice((bounds.recommended, bounds.hard))} {bounds.unit} per day", **reason}
    else:
        fastest = draw.choice((draw.uniform(recommended, hard), draw.uniform(hard, 9.9 * hard), 0.0))
    return {"fastest_rise": _text(draw, fastest * float(FACTORS[bounds.unit]), _slopes(name), 4, " per day"), **reason}


def _additive(draw: random.Random) -> tuple[str, Raw]:
    """Return what is to be raised, and with what."""
    chance = draw.random()
    if chance < 0.06:
        return draw.choice(("alkalinity", "calcium", "alkalinity", "magnesium")), _limewater(draw)
    if chance < 0.16:
        name, first, second = (
            draw.choice(PAIRS) if draw.random() < 0.85 else (draw.choice(tuple(BOUNDS)), *_any_two(draw))
        )
        out = _bag(draw, name, first)
        return name, out | {"also": _portion(draw, name, second, _litres(out))}
    if chance < 0.175:
        return draw.choice(tuple(BOUNDS)), _bag(draw, "", draw.choice(CHEMICALS))
    name, chemical = draw.choice(ALONG if chance < 0.2 else BASES if chance < 0.27 else WAYS)
    return name, _label(draw, name) if chemical == "label" else _bag(draw, name, chemical)


def _any_two(draw: random.Random) -> tuple[str, ...]:
    return tuple(draw.sample(CHEMICALS, 2))


def _limewater(draw: random.Random) -> Raw:
    out: Raw = {
        "chemical": "calcium hydroxide",
        "saturated": True,
        "made_up_to": _text(draw, 10.0 ** draw.uniform(0.0, 2.5), VOLUMES, 4),
    }
    if draw.random() < 0.5:
        out["temperature"] = draw.choice(("12 degC", "25 degC", "0 degC", "30 degC", "72 degF"))
    return out


def _litres(bag: Mapping[str, Any]) -> float:
    number, _, unit = bag["made_up_to"].partition(" ")
    return float(number) * float(FACTORS[unit])


def _bag(draw: random.Random, name: str, chemical: str) -> Raw:
    """Return a jug of one chemical: mostly as people mix it, at times far too thin or more than dissolves."""
    out: Raw = {"made_up_to": _text(draw, draw.uniform(0.4, 20.0), VOLUMES, 5)}
    out |= _portion(draw, name, chemical, _litres(out))
    if draw.random() < 0.3:
        out["temperature"] = draw.choice(("5 degC", "12.5 degC", "18 degC", "25 degC", "30 degC", "68 degF"))
    return out


def _portion(draw: random.Random, name: str, chemical: str, litres: float) -> Raw:
    thin = 0.01 if name in {"iodide", "phosphate"} else 1.0
    part = draw.choice((draw.uniform(0.05, 0.9),) * 12 + (10.0 ** draw.uniform(-3.0, 0.0), draw.uniform(0.9, 2.5)))
    out: Raw = {
        "chemical": chemical,
        "dissolved": _text(draw, DISSOLVES.get(chemical, 40.0) * thin * part * litres, MASSES, 5),
    }
    if draw.random() < 0.5:
        out["purity"] = f"{draw.choice(('99.5', '97', '94.0', '78', '100', '30'))} %"
    return out


def _label(draw: random.Random, name: str) -> Raw:
    raises = float(BOUNDS[name].hard) * draw.uniform(0.05, 4.0) * float(FACTORS[BOUNDS[name].unit])
    if draw.random() < 0.005:
        raises *= 1e-11
    label = {
        "dose": _text(draw, 10.0 ** draw.uniform(-3.3, -0.7), VOLUMES, 4),
        "water": _text(draw, 10.0 ** draw.uniform(1.0, 3.0), VOLUMES, 4),
        "raises": _text(draw, raises, _slopes(name), 4),
    }
    return {"label": label}


def _pump(draw: random.Random, name: str, litres: float, additive: Mapping[str, Any]) -> Raw:
    """Return a pump: mostly one that fits the tank, at times one that is far too small or too coarse."""
    fits = litres * 0.02 / 1440.0 / 0.2 if "saturated" in additive else litres / 200.0
    flow = fits * 10.0 ** draw.uniform(-0.7, 1.3) if draw.random() < 0.92 else 10.0 ** draw.uniform(-3.0, 3.0)
    out: Raw = {"flow": f"{short(max(flow, 1e-4), 4)} mL/min"}
    if draw.random() < 0.75:
        most = draw.choice((24, 24, 24, 96, 96, 96, 96, 1440))
        out["doses_per_day"] = draw.choice((draw.randint(1, most), draw.randint(1, most), 24, 12, 1))
    if draw.random() < 0.55:
        out["step"] = f"{draw.choice(('0.001', '0.01', '0.01', '0.05', '0.05', '0.1', '0.1', '0.25', '0.5', '2'))} mL"
    if draw.random() < 0.4:
        out["smallest_dose"] = f"{draw.choice(('0', '0.02', '0.1', '0.2', '0.5', '0.5', '1', '2', '10'))} mL"
    if draw.random() < 0.4:
        out["largest_share"] = f"{draw.choice(('1', '5', '20', '33.3', '80', '100'))} %"
    return out
