"""What the doses of a plan do to pH and saturation, seen through PyCO2SYS, an independent program.

Limits: common practice, no source. What an additive brings and what a millilitre raises is the hand reckoning's; what is
taken from the product is the plan itself. PyCO2SYS is told the hand reckoning's constant of water, since it converts that
one from the seawater scale in a way of its own.
"""

from __future__ import annotations

import random
from collections import Counter
from collections.abc import Iterable, Mapping
from dataclasses import dataclass
from functools import cache
from typing import Any

import numpy as np
import pytest

from evenwater.engine import correction
from evenwater.engine.correction import Answer, Refused
from tests.engine.asking import read
from tests.engine.generated import DISSOLVES, short
from tests.engine.reckoning import SALTS, WATER_LIMITS, canonical, held_and_brought, strength_of
from tests.engine.reckoning_ph import ASSUMED, CEILING, RISE, SATURATION, Amounts, constants

pyco2sys = pytest.importorskip("PyCO2SYS")

Raw = dict[str, Any]
COUNT = 700
SHARES = np.linspace(0.0, 1.0, 4)
# Both solvers end their search nearer than that.
SLACK = 1e-8
# Every way to raise alkalinity or calcium, and phosphate, which lowers pH.
WAYS = [
    (name, chemical)
    for name in ("alkalinity", "calcium", "phosphate")
    for chemical in (*(salt for salt in SALTS if name in SALTS[salt].raises), "label")
    # A bottle of phosphate is not taken to bring anything else.
    if (name, chemical) != ("phosphate", "label")
]
SPAN = {"alkalinity": (1.5, 4.6, 0.5), "calcium": (320.0, 500.0, 40.0), "phosphate": (0.01, 0.3, 0.05)}
UNIT = {"alkalinity": "meq/L", "calcium": "mg/L", "phosphate": "mg/L as PO4"}


def drawn(draw: random.Random, name: str, chemical: str) -> Raw:
    """Return a correction of any tank, with a pump that does not hold it back."""
    low, high, step = SPAN[name]
    measured = draw.uniform(low, high)
    system: Raw = {
        "net_volume": f"{short(10.0 ** draw.uniform(1.5, 3.5), 4)} L",
        "salinity": f"{draw.uniform(25.0, 40.0):.1f}",
        "temperature": f"{draw.uniform(18.0, 30.0):.1f} degC",
    }
    if draw.random() < 0.75:
        system["ph"] = f"{draw.uniform(7.6, 8.5):.2f}"
    if draw.random() < 0.7:
        system["alkalinity"] = f"{draw.uniform(1.5, 5.0):.2f} meq/L"
    if draw.random() < 0.7:
        system["calcium"] = f"{draw.uniform(350.0, 550.0):.1f} mg/L"
    additive: Raw = {
        "chemical": chemical,
        "dissolved": f"{short(0.9 * DISSOLVES.get(chemical, 1.0), 4)} g",
        "made_up_to": "1 L",
    }
    if chemical == "label":
        additive = {"label": {"dose": "5 mL", "water": "100 L", "raises": f"{short(step, 3)} {UNIT[name]}"}}
    return {
        "system": system,
        "change": {
            "parameter": name,
            "measured": f"{measured:.4f} {UNIT[name]}",
            "target": f"{measured + step * draw.uniform(0.2, 3.0):.4f} {UNIT[name]}",
            "daily_use": f"{short(draw.choice((0.0, 0.2, 0.6, 1.0)) * step, 3)} {UNIT[name]} per day",
            "reason": "a test of large doses",
        },
        "additive": additive,
        "pump": {
            "flow": "90000 mL/min",
            "doses_per_day": draw.choice((1, 2, 3, 4, 6, 12, 24, 25, 30, 48, 60, 96, draw.randint(1, 240))),
        },
    }


@dataclass(frozen=True)
class Seen:
    """One plan; what its water holds and a rise by one unit brings; what the doses of the fullest hour raise."""

    raw: Raw
    answer: Answer
    held: Amounts
    one: Amounts
    rise: float
    unrounded: float


@cache
def plans() -> tuple[tuple[Seen, ...], Counter[tuple[str, ...]]]:
    """Return the plans for random tanks, and how often the others were refused for what."""
    draw = random.Random(8105)
    seen: list[Seen] = []
    refused: Counter[tuple[str, ...]] = Counter()
    while len(seen) < COUNT:
        raw = drawn(draw, *WAYS[len(seen) % len(WAYS)])
        question = read(raw)
        answer = correction.solve(question)
        if isinstance(answer, Refused):
            codes = tuple(reason.code for reason in answer.reasons)
            assert "check_disagrees" not in codes, raw
            refused[codes] += 1
            continue
        water = (question.system.water.salinity, question.system.water.temperature_c)
        by_hand = held_and_brought(raw, water)
        assert by_hand is not None
        per_ml = strength_of(raw["additive"], raw["change"]["parameter"], water)[0] / canonical(
            raw["system"]["net_volume"]
        )
        at_once = float(per_ml) * -(-raw["pump"]["doses_per_day"] // 24)
        seen.append(Seen(raw, answer, *by_hand, answer.doses.dose_ml * at_once, answer.single_dose_ml * at_once))
    return tuple(seen), refused


@dataclass(frozen=True)
class Looked:
    """pH (NBS) before and after the doses of the fullest hour, and saturation after; a row a plan, a column a share.

    ``unrounded`` and ``full`` are pH and saturation after doses that were not rounded down.
    """

    before: np.ndarray
    after: np.ndarray
    saturation: np.ndarray
    unrounded: np.ndarray
    full: np.ndarray


@cache
def looked() -> Looked:
    """Ask PyCO2SYS, in three calls for all plans, what the water is along the ramp and at once after doses."""
    some, _ = plans()
    waters = [s.answer.question.system.water for s in some]
    k = [constants(water.salinity, water.temperature_c) for water in waters]
    water = {
        "salinity": column(water.salinity for water in waters),
        "temperature": column(water.temperature_c for water in waters),
        "k_water": column(c.water for c in k),
        **{f"k_phosphoric_{n + 1}": column(c.phosphoric[n] for c in k) for n in range(3)},
    }

    def solved(held: np.ndarray, second: np.ndarray, kind: Any) -> Mapping[str, Any]:
        totals = {"total_borate": held[:, 3], "total_calcium": held[:, 2], "total_phosphate": held[:, 4]}
        in_umol = {name: 1e6 * amount for name, amount in totals.items()}
        found: dict[str, Any] = pyco2sys.sys(1e6 * held[:, 0], second, ALKALINITY, kind, **water, **in_umol, **SOURCES)
        return found

    offset, known_ph = column(c.nbs for c in k), measured()[:, None]
    one = np.array([[getattr(s.one, name) for name in FIELDS] for s in some])[:, :, None]
    start = np.array([[getattr(s.held, name) for name in FIELDS] for s in some])[:, :, None]
    ph = column(float(s.raw["system"].get("ph", ASSUMED)) for s in some) - offset
    first = solved(start, ph, PH)
    climb = column(s.answer.question.target - s.answer.question.measured for s in some)
    bases = start + one * (climb * SHARES)[:, None, :]
    # The air brings carbon dioxide back to what it was; where pH is not known it is taken to stay as it is.
    stays = np.broadcast_to(np.where(known_ph, first["pCO2"], ph), bases[:, 0].shape)
    base = solved(bases, stays, np.where(known_ph, PCO2, PH) * np.ones_like(SHARES, dtype=int))
    # Both sorts of dose in one call, one beside the other.
    rises = np.array([[s.rise] * SHARES.size + [s.unrounded] * SHARES.size for s in some])[:, None, :]
    after = np.concatenate((bases, bases), axis=2) + one * rises
    carbon = np.concatenate((base["dic"], base["dic"]), axis=1) + 1e6 * (one * rises)[:, 1]
    end = solved(after, carbon, DIC)
    ph_after, saturation = end["pH_total"] + offset, end["saturation_aragonite"]
    rounded, unrounded = slice(SHARES.size), slice(SHARES.size, None)
    return Looked(
        base["pH_total"] + offset,
        ph_after[:, rounded],
        saturation[:, rounded],
        ph_after[:, unrounded],
        saturation[:, unrounded],
    )


FIELDS = ("alkalinity", "carbon", "calcium", "boron", "phosphate")
SOURCES = {"opt_k_carbonic": 10, "opt_total_borate": 1, "opt_k_fluoride": 1, "opt_pH_scale": 1}
ALKALINITY, DIC, PH, PCO2 = 1, 2, 3, 4
ENDS = [0, -1]


def column(figures: Iterable[float]) -> np.ndarray:
    return np.array(list(figures))[:, None]


def measured() -> np.ndarray:
    """Return of which tanks pH was measured."""
    return np.array(["ph" in s.raw["system"] for s in plans()[0]])


def test_no_plan_passes_a_limit_of_the_water_at_its_start_its_target_or_in_between() -> None:
    seen = looked()
    assert np.isfinite(seen.after).all()
    assert (seen.after - seen.before).max() <= RISE + SLACK
    # What lies above the ceiling already may only be brought down.
    highest = np.maximum(seen.before, CEILING)
    assert (seen.after - highest)[measured()].max() <= SLACK
    assert seen.saturation[measured()].max() <= SATURATION * (1.0 + SLACK)


def test_the_sample_comes_to_every_limit() -> None:
    some, refused = plans()
    binding = Counter(s.answer.set_by for s in some)
    assert all(binding[code] >= 5 for code in WATER_LIMITS), binding
    assert all(refused[(f"{code}_forbids",)] >= 5 for code in WATER_LIMITS), refused
    assert 100 <= measured().sum() <= COUNT - 100


@pytest.mark.parametrize("code", WATER_LIMITS)
def test_a_limit_that_sets_the_pace_is_used_up(code: str) -> None:
    seen = looked()
    reached = {
        "ph_rise": (seen.unrounded - seen.before)[:, ENDS].max(axis=1) / RISE,
        "ph_ceiling": seen.unrounded[:, ENDS].max(axis=1) / CEILING,
        "saturation": seen.full[:, ENDS].max(axis=1) / SATURATION,
    }[code]
    by_it = [s.answer.set_by == code for s in plans()[0]]
    assert np.abs(reached[by_it] - 1.0).max() <= 1e-7


def test_bars_show_what_the_computed_dose_does() -> None:
    seen = looked()
    for number, s in enumerate(plans()[0]):
        shown = {item.code: item for item in s.answer.limits if item.code in WATER_LIMITS}
        assert set(shown) == (set(WATER_LIMITS) if "ph" in s.raw["system"] else {"ph_rise"})
        rise = float((seen.unrounded - seen.before)[number, ENDS].max())
        assert shown["ph_rise"].value == pytest.approx(max(rise, 0.0), abs=SLACK)
        assert (shown["ph_rise"].bound, shown["ph_rise"].share) == (RISE, shown["ph_rise"].value / RISE)
        if "ph" in s.raw["system"]:
            bar, saturation = shown["ph_ceiling"], shown["saturation"]
            assert bar.value == pytest.approx(float(seen.unrounded[number, ENDS].max()), abs=SLACK)
            # Full is the way from the 7.8 to the 8.5 usually kept.
            share = max(bar.value - 7.8, 0.0) / (CEILING - 7.8)
            assert (bar.bound, bar.share) == (CEILING, pytest.approx(share, abs=1e-9))
            assert bar.over == (bar.share > 1.0 + 1e-9)
            assert saturation.value == pytest.approx(float(seen.full[number, ENDS].max()), rel=1e-7)
            assert (saturation.bound, saturation.share) == (SATURATION, saturation.value / SATURATION)


def test_the_second_opinion_sees_what_the_doses_do() -> None:
    seen = looked()
    for number, s in enumerate(plans()[0]):
        water = s.answer.seen.water
        assert water is not None
        assert water.highest_ph_rise == pytest.approx(float((seen.after - seen.before)[number, ENDS].max()), abs=SLACK)
        if "ph" in s.raw["system"]:
            assert water.highest_ph == pytest.approx(float(seen.after[number, ENDS].max()), abs=SLACK)
            assert water.highest_saturation == pytest.approx(float(seen.saturation[number, ENDS].max()), rel=1e-7)
        else:
            assert water.highest_ph is water.highest_saturation is None


def test_an_assumed_ph_is_said() -> None:
    for s in plans()[0]:
        said = {reason.code: reason for reason in s.answer.remarks}
        lifts = s.raw["change"]["parameter"] == "alkalinity" or s.raw["additive"].get("chemical") == "calcium hydroxide"
        assert ("ph_assumed" in said) == (lifts and "ph" not in s.raw["system"]), s.raw
        assert ("bottle_like_hydroxide" in said) == (lifts and "label" in s.raw["additive"])
        if "ph_assumed" in said:
            assert said["ph_assumed"].params["ph"] == ASSUMED


def test_what_lies_high_afterwards_is_said() -> None:
    seen, counted = looked(), Counter[str]()
    for number, s in enumerate(plans()[0]):
        remarks = {reason.code: reason.params for reason in s.answer.remarks}
        known_ph, ph = "ph" in s.raw["system"], float(seen.before[number, -1])
        if abs(ph - CEILING) > 1e-6:
            assert ("ph_above_afterwards" in remarks) == (known_ph and ph > CEILING), s.raw
        if "ph_above_afterwards" in remarks:
            assert remarks["ph_above_afterwards"]["ph"] == pytest.approx(ph, abs=1e-7)
        highest = float(seen.full[number, ENDS].max())
        if abs(highest - 7.0) > 1e-6:
            assert ("may_precipitate" in remarks) == (known_ph and highest > 7.0), s.raw
        if "may_precipitate" in remarks:
            assert remarks["may_precipitate"] == {"saturation": pytest.approx(highest, rel=1e-7), "most": 7.0}
        counted.update(remarks.keys())
    assert counted["ph_above_afterwards"] >= 1
    assert counted["may_precipitate"] >= 50
