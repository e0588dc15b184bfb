"""H21 and H27: no overshoot in a day, and one rounding, downwards.

Limits: common practice, no source.
"""

from __future__ import annotations

import itertools
import random
import re
from decimal import ROUND_HALF_EVEN, Decimal
from functools import lru_cache

import pytest

from evenwater.engine.correction import Answer
from evenwater.engine.quantities import round_down
from evenwater.screens.answer import view
from evenwater.screens.dose_card import card
from evenwater.screens.shown import about, dose, seconds
from tests.engine.asking import NOW, answered, ask, known, worked
from tests.engine.generated import drawn
from tests.engine.reckoning import BOUNDS, FACTORS, canonical

PLANS = range(0, 300, 2)


@lru_cache(maxsize=300)
def _water(number: int) -> tuple[Answer, list[float], int]:
    """Return a plan, the value just after every dose (the start first), and the doses in a day."""
    raw, by_hand = drawn()[0][number]
    answer = answered(raw)
    doses, question = answer.doses, answer.question
    per_day = int(raw["pump"].get("doses_per_day", 24))
    values = [question.measured]
    for done in range(doses.count + 2 * per_day):
        dosed = (doses.dose_ml if done < doses.count else doses.upkeep_ml) * float(by_hand.per_ml)
        values.append(values[-1] - question.use / per_day + dosed)
    return answer, values, per_day


def test_H21_no_window_of_24_hours_rises_beyond_the_limit() -> None:
    for number in PLANS:
        answer, values, per_day = _water(number)
        bounds = BOUNDS[answer.question.parameter.name]
        hard = float(bounds.hard) * float(FACTORS[bounds.unit])
        recommended = float(bounds.recommended) * float(FACTORS[bounds.unit])
        allowed = min(hard, recommended if answer.question.fastest is None else answer.question.fastest)
        noise = 1e-9 * answer.question.target
        # Between any two instants of a day, not only between the two midnights: the rise to the end of the window and
        # to every dose inside it. Seen from just before a dose, the use of one interval has still been made good.
        owed = answer.question.use / per_day
        for begin in range(len(values) - 1):
            window = values[begin : begin + per_day + 1]
            assert max(window) - window[0] <= allowed + noise, number
            assert max(window[:-1]) - (values[begin] - owed) <= allowed + owed + noise, number
        assert max(values) <= answer.question.target + noise, number


def test_H21_after_the_ramp_nothing_rises_any_more() -> None:
    for number in PLANS:
        answer, values, _ = _water(number)
        noise = 1e-9 * answer.question.target
        for earlier, later in itertools.pairwise(values[answer.doses.count :]):
            assert later <= earlier + noise, number


def test_H21_the_next_test_is_due_half_way_at_the_latest() -> None:
    for number in PLANS:
        answer = _water(number)[0]
        assert answer.retest_at - NOW <= (answer.ends_at - NOW) / 2, number
        assert (answer.retest_at - NOW).total_seconds() <= 86400.0 * answer.question.parameter.stale_days, number
        assert NOW < answer.retest_at < answer.ends_at
        assert answer.stop_above > answer.question.target
        assert answer.valid_until > NOW


def test_H21_a_large_correction_takes_days() -> None:
    large = {"change__measured": "5 dKH", "change__target": "11 dKH"}
    answer = answered(worked(**large, change__fastest_rise=None))
    assert answer.lasts_days == pytest.approx(6.0, rel=1e-9)
    assert ask(worked(**large, change__fastest_rise="1.5 dKH per day", change__reason="x")) == ("rise_beyond_hard",)


def test_H21_never_more_than_is_the_hard_limit() -> None:
    for number in PLANS:
        by_hand, answer = drawn()[0][number][1], _water(number)[0]
        bounds = BOUNDS[answer.question.parameter.name]
        hard = float(bounds.hard) * float(FACTORS[bounds.unit])
        most = (hard + answer.question.use) / float(by_hand.per_ml)
        raw = drawn()[0][number][0]
        if raw["additive"].get("chemical") == "calcium hydroxide" and "evaporation" in raw["system"]:
            # Limewater is nearly all water: more than evaporates has no room in the tank.
            most = min(most, 1000.0 * float(canonical(raw["system"]["evaporation"])))
        assert answer.never_more_ml <= most * (1.0 + 1e-9), number
        assert answer.never_more_ml > most - answer.doses.step_ml * (1.0 + 1e-9), number
        assert answer.doses.in_24_hours_ml <= answer.never_more_ml, number


def test_H27_half_even_is_not_the_rule() -> None:
    # Python rounds half to even on binary figures; a dose goes down on decimal ones.
    assert round(2.675, 2) == 2.67
    assert Decimal("0.25").quantize(Decimal("0.1"), ROUND_HALF_EVEN) == Decimal("0.2")
    table = [
        (2.675, 0.01, 2.67), (2.679, 0.01, 2.67), (0.25, 0.1, 0.2), (0.35, 0.1, 0.3), (0.39999, 0.1, 0.3), (0.4, 0.1, 0.4),
        (0.1 + 0.2, 0.1, 0.3), (4.7, 0.1, 4.7), (4.79999, 0.25, 4.75), (0.99, 1.0, 0.0), (1.15, 0.05, 1.15), (8.2, 0.1, 8.2),
        (12.5, 0.3, 12.3),
    ]  # fmt: skip
    for value, step, expected in table:
        assert round_down(value, step) == expected, f"{value} in steps of {step}"


def test_H27_rounded_once_and_totals_are_sums() -> None:
    for number in PLANS:
        answer = _water(number)[0]
        doses = answer.doses
        single, step = Decimal(repr(doses.dose_ml)), Decimal(repr(doses.step_ml))
        assert single % step == 0, number
        assert doses.dose_ml <= answer.single_dose_ml * (1.0 + 1e-11), number
        assert Decimal(repr(doses.total_ml)) == single * doses.count, number
        assert Decimal(repr(doses.in_24_hours_ml)) == single * doses.per_day, number


def _number_in(text: str) -> Decimal:
    """Return the millilitres that a printed dose says."""
    found = re.fullmatch(r"([0-9]+(?:\.[0-9]+)?)\u00a0(mL|L \(litres\))", text)
    assert found, text
    return Decimal(found[1]) * (1000 if found[2].startswith("L") else 1)


def test_H27_what_is_printed_is_the_rounded_dose_itself() -> None:
    draw = random.Random(27)
    for _ in range(3000):
        step = draw.choice(("0.00001", "0.0001", "0.001", "0.01", "0.05", "0.1", "0.25", "0.5", "1", "2.5"))
        exact = draw.randint(1, 4000) * Decimal(step)
        assert _number_in(dose(float(exact))) == exact


def test_H27_what_is_only_said_about_is_never_said_larger() -> None:
    draw = random.Random(28)
    for _ in range(2000):
        value = 10.0 ** draw.uniform(-6.0, 5.0)
        said = _number_in(about(value))
        assert 0 < said <= Decimal(value) * (1 + Decimal("1e-9"))
        assert said >= Decimal(value) * Decimal("0.989")


HOURLY = {"mL per hour": 1, "L (litres) per hour": 1000}


def test_H27_headline_and_seconds_are_never_more_than_is_dosed() -> None:
    for number in PLANS:
        answer = _water(number)[0]
        doses, shown = answer.doses, view(answer, NOW)
        hourly = Decimal(repr(doses.dose_ml)) * doses.per_day / 24
        printed = Decimal(shown.figure) * HOURLY[shown.figure_unit]
        # Three digits are kept; what is cut off is cut off downwards.
        assert hourly * Decimal("0.99") <= printed <= hourly * (1 + Decimal("1e-9")), number
        said = seconds(doses.run_time_s)
        parts = re.fullmatch(r"(?:([0-9]+)\u00a0min)? ?(?:([0-9.]+)\u00a0s)?", said)
        assert parts, said
        total = 60 * Decimal(parts[1] or 0) + Decimal(parts[2] or 0)
        assert 0 < total <= Decimal(doses.run_time_s) * (1 + Decimal("1e-9")), number


def test_H27_the_card_prints_the_rounded_dose() -> None:
    answer = answered(worked())
    printed = card(answer, NOW)
    assert [row.dose for row in printed.rows] == ["4.7\u00a0mL", "2.2\u00a0mL"]
    assert "112.8\u00a0mL in 24 hours" in printed.totals
    assert "183.3\u00a0mL in all" in printed.totals
    assert view(answer, NOW).figure == "4.7"


def test_H27_the_default_step_keeps_two_digits() -> None:
    for grams, digits in (("106 g", 2), ("10 g", 2), ("150 g", 2)):
        answer = answered(worked(additive__dissolved=grams))
        assert answer.doses.dose_ml >= answer.single_dose_ml * 0.9
        assert len(str(Decimal(repr(answer.doses.dose_ml)).normalize().as_tuple().digits)) >= digits
    assert set(known().parameters) == set(BOUNDS)
