"""Rounding: once, downwards, and no limit passed by what is really dosed.

Source: rounding down to the graduation is common practice in the pharmacy; the limits are common practice,
no source. The water is simulated here, at the resolution of single doses, from the hand reckoning's strength.
"""

from __future__ import annotations

from decimal import Decimal
from fractions import Fraction
from typing import Any

from hypothesis import given, settings
from hypothesis import strategies as st

from evenwater.engine.quantities import round_down
from tests.engine.reckoning import BOUNDS, CA_PER_MEQ, FACTORS, SALTS, canonical
from tests.property.plans import Drawn, plans

SLACK = 1.0 + 1e-9


def _path(drawn: Drawn) -> tuple[list[float], list[float]]:
    """Return the value just before and just after every dose, the start first; a day of upkeep follows."""
    doses, question = drawn.answer.doses, drawn.answer.question
    per_ml, use = float(drawn.by_hand.per_ml), question.use
    per_day = int(drawn.raw["pump"].get("doses_per_day", 24))
    value = question.measured
    before, behind = [value], [value]
    for number in range(doses.count + per_day):
        value -= use / per_day
        before.append(value)
        value += (doses.dose_ml if number < doses.count else doses.upkeep_ml) * per_ml
        behind.append(value)
    return before, behind


def _limit(raw: dict[str, Any], choice: str) -> float:
    change, bounds = raw["change"], BOUNDS[raw["change"]["parameter"]]
    size = float(FACTORS[bounds.unit])
    if choice == "jump":
        return float(bounds.jumps[1 if change.get("reason") else 0]) * size
    system = raw["system"]
    water = (float(system.get("salinity", "35").split()[0]), float(system.get("temperature", "25 degC").split()[0]))
    if "fastest_rise" in change:
        return float(canonical(change["fastest_rise"], water))
    return float(bounds.recommended) * size


@settings(max_examples=150)
@given(drawn=plans())
def test_no_limit_is_passed_by_the_rounded_doses(drawn: Drawn) -> None:
    raw, answer = drawn.raw, drawn.answer
    doses, question = answer.doses, answer.question
    per_day = int(raw["pump"].get("doses_per_day", 24))
    bounds = BOUNDS[raw["change"]["parameter"]]
    before, behind = _path(drawn)
    assert max(behind) <= question.target * SLACK
    day_apart = [later - earlier for earlier, later in zip(behind, behind[per_day:], strict=False)]
    day_apart += [later - earlier for earlier, later in zip(before, before[per_day:], strict=False)]
    rise = max(day_apart, default=behind[-1] - behind[0])
    assert rise <= _limit(raw, "rise") * SLACK + 1e-9 * question.target
    assert rise <= float(bounds.hard) * float(FACTORS[bounds.unit]) * SLACK + 1e-9 * question.target
    jump = max(later - earlier for earlier, later in zip(before, behind, strict=True))
    assert jump <= _limit(raw, "jump") * SLACK + 1e-9 * question.target
    flow = float(canonical(raw["pump"]["flow"]))
    share = float(raw["pump"].get("largest_share", "50 %").split()[0]) / 100.0
    assert per_day * doses.dose_ml / flow <= share * 1440.0 * SLACK
    assert doses.run_time_s * flow / 60.0 <= doses.dose_ml * SLACK
    assert doses.dose_ml >= float(raw["pump"].get("smallest_dose", "0 mL").split()[0])
    assert doses.in_24_hours_ml <= answer.never_more_ml * SLACK


@settings(max_examples=100)
@given(drawn=plans())
def test_nothing_else_rises_beyond_its_hard_limit(drawn: Drawn) -> None:
    additive = drawn.raw["additive"]
    if "chemical" not in additive:
        return
    salt, name = SALTS[additive["chemical"]], drawn.raw["change"]["parameter"]
    amounts = {**salt.raises, **salt.along}
    dosed = drawn.answer.doses.in_24_hours_ml * float(drawn.by_hand.per_ml)
    for other in set(amounts) - {name}:
        along = dosed * float(amounts[other] / amounts[name])
        # Calcium and alkalinity are used up together, as CaCO3; nothing else is taken to be used.
        use = drawn.answer.question.use
        used = {("alkalinity", "calcium"): use * float(CA_PER_MEQ), ("calcium", "alkalinity"): use / float(CA_PER_MEQ)}
        rise = along - used.get((name, other), 0.0)
        assert rise <= float(BOUNDS[other].hard) * float(FACTORS[BOUNDS[other].unit]) * SLACK


def _fall(drawn: Drawn) -> Fraction:
    """Return what is used between two doses."""
    return drawn.by_hand.upkeep * drawn.by_hand.per_ml / drawn.answer.doses.per_day


@settings(max_examples=150)
@given(drawn=plans())
def test_printed_dose_is_at_most_a_step_below_the_computed(drawn: Drawn) -> None:
    doses, by_hand = drawn.answer.doses, drawn.by_hand
    single = min(float(by_hand.single), float((by_hand.pace * by_hand.lasts + _fall(drawn)) / by_hand.per_ml))
    assert doses.dose_ml <= single * (1.0 + 1e-11)
    assert doses.dose_ml > single - doses.step_ml * SLACK
    assert Decimal(repr(doses.dose_ml)) % Decimal(repr(doses.step_ml)) == 0
    upkeep = float(by_hand.upkeep) / doses.per_day
    assert doses.upkeep_ml <= upkeep * (1.0 + 1e-11)
    # An upkeep dose below the pump's smallest is not ordered at all.
    smallest = float(drawn.raw["pump"].get("smallest_dose", "0 mL").split()[0])
    assert doses.upkeep_ml > upkeep - doses.step_ml * SLACK or (
        doses.upkeep_ml == 0.0 and upkeep < smallest + doses.step_ml
    )
    assert Decimal(repr(doses.upkeep_ml)) % Decimal(repr(doses.step_ml)) == 0


@settings(max_examples=100)
@given(drawn=plans())
def test_what_rounding_leaves_is_reported(drawn: Drawn) -> None:
    doses, question = drawn.answer.doses, drawn.answer.question
    _, behind = _path(drawn)
    left = question.target - behind[doses.count]
    assert abs(left - doses.shortfall) <= 1e-9 * question.target
    # Another dose would pass the target.
    one_more = doses.dose_ml * float(drawn.by_hand.per_ml) - question.use / doses.per_day
    assert left <= one_more * (1.0 + 1e-6) + 1e-9 * question.target


@settings(max_examples=100)
@given(drawn=plans())
def test_totals_are_sums_of_the_rounded_doses(drawn: Drawn) -> None:
    doses = drawn.answer.doses
    dose = Decimal(repr(doses.dose_ml))
    assert Decimal(repr(doses.total_ml)) == dose * doses.count
    assert Decimal(repr(doses.in_24_hours_ml)) == dose * doses.per_day


@settings(max_examples=300)
@given(
    steps=st.integers(0, 100_000),
    step=st.sampled_from(["0.001", "0.01", "0.05", "0.1", "0.25", "0.3", "0.5", "1", "2.5"]),
)
def test_a_whole_number_of_steps_stays_what_it_is(steps: int, step: str) -> None:
    exact = steps * Decimal(step)
    # The float product carries binary noise either way; the dose must not lose a step by it.
    assert Decimal(repr(round_down(steps * float(step), float(step)))) == exact
    assert Decimal(repr(round_down(float(exact), float(step)))) == exact


@settings(max_examples=300)
@given(value=st.floats(1e-6, 1e5), step=st.sampled_from(["0.001", "0.01", "0.05", "0.1", "0.25", "0.5", "1", "2.5"]))
def test_rounding_goes_down_by_less_than_a_step(value: float, step: str) -> None:
    rounded = round_down(value, float(step))
    assert rounded <= value * (1.0 + 1e-11)
    assert Decimal(value) - Decimal(repr(rounded)) < Decimal(step)
