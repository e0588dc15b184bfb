"""An exchange reckoned by hand, and against scipy's integrator on random systems of nine values."""

from __future__ import annotations

import math
from collections.abc import Sequence
from dataclasses import replace

import numpy as np
import pytest
from scipy.integrate import solve_ivp

from evenwater.engine import exchange_check
from evenwater.engine.balance import after
from evenwater.engine.correction import Refused
from evenwater.engine.exchange import Course, ExchangeAnswer, disagreement, solve
from evenwater.engine.exchange_course import Stretch, course, stretches
from evenwater.engine.exchange_question import OneDose, as_much_as
from tests.engine.exchanges import MIXING, SODA, answer, integrated, question, random_system, reasons

DKH = 1.0 / 2.80386


def only(found: ExchangeAnswer) -> Course:
    (one,) = found.courses
    return one


@pytest.mark.parametrize("seed", range(60))
def test_random_system_is_as_integrated(seed: int) -> None:
    q = random_system(seed)
    found = solve(q)
    assert isinstance(found, ExchangeAnswer), found
    assert [each.end for each in found.courses] == pytest.approx(list(integrated(q)), rel=1e-9)


def test_conditions_that_change_are_as_integrated() -> None:
    """Two values, three stretches of other gains, losses and jumps."""
    rng = np.random.default_rng(7)
    begins, until = (0.0, 3.1, 9.7), 14.2
    parts = [Stretch(begin, rng.uniform(-1, 2, 2), rng.uniform(0, 0.3, 2), rng.uniform(0, 1, 2)) for begin in begins]
    start = np.array([8.0, 400.0])
    state = start.copy()
    for part, end in zip(parts, (*begins[1:], until), strict=True):
        state = state + part.jump
        run = solve_ivp(
            lambda _, c, part=part: part.gain - part.loss * c, (part.begin, end), state, method="DOP853", rtol=1e-12,
            atol=1e-14,
        )  # fmt: skip
        state = run.y[:, -1]
    ended = course(start, parts, np.array([until]))
    assert ended.shape == (2, 1)
    assert ended[:, 0] == pytest.approx(state, rel=1e-9)


def one_by_one(start: np.ndarray, parts: Sequence[Stretch], times: np.ndarray) -> np.ndarray:
    """Follow each value from stretch to stretch, one at a time."""
    out = np.empty((len(start), len(times)))
    for row in range(len(start)):
        value = float(start[row])
        for number, part in enumerate(parts):
            end = parts[number + 1].begin if number + 1 < len(parts) else np.inf
            value += part.jump[row]
            gain, loss = float(part.gain[row]), float(part.loss[row])
            inside = (times >= part.begin) & (times < end)
            out[row, inside] = after(value, times[inside] - part.begin, gain, loss)
            if end < np.inf:
                value = float(after(value, end - part.begin, gain, loss))
    return out


@pytest.mark.parametrize("losses", [(0.0, 0.0), (1e-300, 1e-13), (0.0, 0.3), (1e-9, 40.0), (25.0, 3000.0)], ids=str)
def test_many_stretches_are_as_followed_one_by_one(losses: tuple[float, float]) -> None:
    """With nothing lost, next to nothing, and so much that nothing of an earlier value is left, after some of them or after each."""
    rng = np.random.default_rng(3)
    begins = np.concatenate([[0.0], np.sort(rng.uniform(0.0, 60.0, 199))])
    parts = [
        Stretch(float(begin), rng.uniform(-1, 2, 2), np.array(losses) * rng.uniform(0.0, 1.0, 2), rng.uniform(-1, 1, 2))
        for begin in begins
    ]
    start, times = np.array([8.0, 400.0]), np.concatenate([begins, rng.uniform(0.0, 70.0, 100)])
    assert course(start, parts, times) == pytest.approx(one_by_one(start, parts, times), rel=1e-12, abs=1e-12 * 400.0)


def test_doses_at_one_instant_are_all_there() -> None:
    q = replace(question(), doses=())
    dose = OneDose(q.values[0].parameter, 2.0, 0.25)
    parts = stretches(replace(q, doses=(dose, dose, replace(dose, at_day=1.0), replace(dose, at_day=q.days + 1.0))))
    assert [(part.begin, part.jump[0]) for part in parts] == [(0.0, 0.0), (1.0, 0.25), (2.0, 0.5)]
    assert [part.begin for part in parts[1:]] == [1.0, 2.0]
    assert parts[-1].jump[0] == 0.5


def test_bay_by_hand() -> None:
    """10 L a day of 340 L for 30 days: exp(-300/340) of the old water is left, and of the 2 dKH above the new water."""
    found = answer()
    left = math.exp(-300.0 / 340.0)
    assert found.left == pytest.approx(left)
    assert found.batch_whole == pytest.approx(1.0 - left)
    assert found.batch_weekly == pytest.approx(1.0 - math.exp(-70.0 / 340.0))
    assert only(found).end == pytest.approx((7.0 + 2.0 * left) * DKH, rel=1e-5)
    assert only(found).settles == pytest.approx(7.0 * DKH, rel=1e-5)
    assert only(found).half_way == pytest.approx(34.0 * math.log(2.0))
    assert found.times == tuple(float(day) for day in range(31))
    low, high = found.left_band
    assert (low, high) == (pytest.approx(left ** (1 / 0.9)), pytest.approx(left ** (1 / 1.1)))


def test_as_much_as_a_batch_leaves_as_much() -> None:
    found = answer(exchange={"as_much_as": "20 %", "days": 7})
    assert found.left == pytest.approx(0.8)
    assert found.question.pair.out_l == pytest.approx(-340.0 / 7.0 * math.log(0.8))
    fortnight = answer(exchange={"as_much_as": "20 %", "every_days": 14, "days": 14})
    assert fortnight.left == pytest.approx(0.8)
    assert as_much_as(1e-12, 7.0, 700.0) == pytest.approx(1e-10)


def test_pair_that_is_not_matched_settles_where_the_ratio_says() -> None:
    """9.5 of 10 L come in: 35 times 0.95 in the end, and half a litre of top-off besides the 4 L that evaporate."""
    found = answer(
        exchange={"out": "10 L per day", "in": "9.5 L per day"}, value=[{"parameter": "salinity", "now": "35"}]
    )
    assert found.match.settles == pytest.approx(33.25)
    assert only(found).settles == pytest.approx(33.25)
    assert not found.match.holds
    assert (found.match.low, found.match.high) == (pytest.approx(1 - 0.5 / 35), pytest.approx(1 + 0.5 / 35))
    assert found.question.top_off_l == pytest.approx(4.5)
    assert found.match.level_l == pytest.approx(-0.5)


@pytest.mark.parametrize(("into", "holds"), [("9.86", True), ("9.85", False), ("10.14", True), ("10.15", False)])
def test_salinity_within_half_is_where_matched_ends(into: str, holds: bool) -> None:
    found = answer(exchange={"out": "10 L per day", "in": f"{into} L per day"})
    assert found.match.holds is holds
    assert (abs((found.match.settles or 0.0) - 35.0) <= 0.5) is holds


def test_jugs_last_and_are_sized_for_a_week() -> None:
    table = {"out": "10 L per day", "in": "8 L per day", "old_jug": "60 L", "new_jug": "60 L"}
    found = answer(exchange=table).jugs
    assert (found.old_lasts, found.new_lasts) == (pytest.approx(6.0), pytest.approx(7.5))
    assert (found.old_weekly_l, found.new_weekly_l) == (pytest.approx(70.0), pytest.approx(56.0))
    assert answer().jugs.old_lasts is None


def test_dosing_plan_changes_by_what_the_new_water_carries() -> None:
    """At 9 dKH the exchange takes 2/34 dKH a day, which at 0.0164952 dKH per mL is 3.566 mL more beside 54.56 mL."""
    value = {
        "parameter": "alkalinity",
        "now": "9 dKH",
        "new_water": "7 dKH",
        "daily_use": "0.9 dKH per day",
        "additive": SODA,
    }
    (change,) = answer(value=[value]).dosing
    assert change.without == pytest.approx(0.9 / 0.0164952, rel=1e-5)
    assert change.more == pytest.approx(2.0 / 34.0 / 0.0164952, rel=1e-5)
    (less,) = answer(value=[{**value, "new_water": "11 dKH"}]).dosing
    assert less.more == pytest.approx(-2.0 / 34.0 / 0.0164952, rel=1e-5)
    (none,) = answer(value=[{**value, "new_water": "60 dKH"}]).dosing
    assert none.with_exchange == 0.0
    assert none.spare == pytest.approx((51.0 / 34.0 - 0.9) * DKH, rel=1e-5)


def test_bucket_is_mixed_by_the_label_and_corrected_with_salt_or_water() -> None:
    """80 L at 38 g a litre; 0.4 short are 0.4 g in each of 80 L times 1.023 kg; 0.7 too much take a fiftieth more water."""
    short = answer(mixing={**MIXING, "measured": "34.6"}).bucket
    assert short is not None
    assert short.mix_g == pytest.approx(3040.0)
    assert short.salt_g == pytest.approx(0.4 * 80.0 * 1.0230, rel=1e-4)
    assert short.water_l == 0.0
    strong = answer(mixing={**MIXING, "measured": "35.7"}).bucket
    assert strong is not None
    assert (strong.salt_g, strong.water_l) == (0.0, pytest.approx(1.6))
    untested = answer(mixing=MIXING, new_water={"salinity": "33"}).bucket
    assert untested is not None
    assert untested.mix_g == pytest.approx(3040.0 * 33.0 / 35.0)
    assert untested.salt_g is None


def test_single_doses_count_from_their_instant() -> None:
    """Without exchange a dose stays; the greatest rise in a day holds two doses less than a day apart."""
    doses = [{"parameter": "nitrate", "after_days": day, "raises": "1 mg/L as NO3"} for day in ("3", "3.5", "9")]
    found = only(
        answer(
            exchange={"per_day": "0 L per day", "days": 10},
            value=[{"parameter": "nitrate", "now": "5 mg/L as NO3"}],
            dose=doses,
        )
    )
    assert found.end == pytest.approx(8.0)
    assert found.rise == pytest.approx(2.0)
    assert found.settles is None


def test_value_at_the_instant_of_a_dose_is_the_one_right_after_it() -> None:
    """Lengths that were summed up would miss some of these instants by the last digit."""
    days = [0.1 * step for step in range(1, 30)]
    doses = [{"parameter": "nitrate", "after_days": f"{day!r}", "raises": "1 mg/L as NO3"} for day in days]
    nitrate = [{"parameter": "nitrate", "now": "5 mg/L as NO3"}]
    found = answer(exchange={"per_day": "0 L per day", "days": 3}, value=nitrate, dose=doses)
    points = dict(zip(found.times, only(found).points, strict=True))
    assert [points[day] for day in days] == pytest.approx([5.0 + count for count in range(1, 30)])


def test_use_beyond_what_comes_runs_out() -> None:
    """2 mg/L at 0.5 a day and no exchange last 4 days; with a loss of a tenth a day ln(1 + 0.4)/0.1."""
    value = {
        "parameter": "nitrate",
        "now": "2 mg/L as NO3",
        "new_water": "0 mg/L as NO3",
        "daily_use": "0.5 mg/L as NO3 per day",
    }
    still = {"per_day": "0 L per day", "days": 3}
    assert only(answer(exchange=still, value=[value])).runs_out == pytest.approx(4.0)
    lossy = only(answer(exchange=still, value=[{**value, "loss_per_day": "10 %"}]))
    assert lossy.runs_out == pytest.approx(math.log(1.4) / 0.1)
    assert lossy.settles is None
    both = only(answer(exchange=still, value=[{**value, "daily_addition": "0.5 mg/L as NO3 per day"}]))
    assert (both.runs_out, both.settles, both.end) == (None, None, pytest.approx(2.0))


@pytest.mark.parametrize("wrong", ["value", "books"])
def test_answer_that_a_second_opinion_denies_is_not_given(monkeypatch: pytest.MonkeyPatch, wrong: str) -> None:
    if wrong == "value":
        monkeypatch.setattr(exchange_check, "value_at", lambda q, moved, day: moved.now)
    else:
        real = exchange_check.ledger
        monkeypatch.setattr(
            exchange_check, "ledger", lambda q, moved: replace(real(q, moved), came=real(q, moved).came * 1.0001 + 1e-3)
        )
    found = solve(question())
    assert isinstance(found, Refused)
    assert [reason.code for reason in found.reasons] == ["exchange_disagrees"]


def test_second_opinion_sees_a_course_that_is_off() -> None:
    found = answer()
    one = only(found)
    off = replace(one, points=(*one.points[:-1], one.end * (1.0 + 1e-7)))
    assert disagreement(found) is None
    assert disagreement(replace(found, courses=(off,))) is not None


def test_second_opinion_sees_where_it_settles_and_when_it_runs_out() -> None:
    found = answer()
    one = only(found)
    assert one.settles is not None
    assert disagreement(replace(found, courses=(replace(one, settles=one.settles * (1.0 + 1e-7)),))) is not None
    value = {"parameter": "alkalinity", "now": "9 dKH", "new_water": "7 dKH", "daily_use": "2 dKH per day"}
    found = answer(value=[value])
    one = only(found)
    assert one.runs_out is not None
    assert disagreement(found) is None
    assert disagreement(replace(found, courses=(replace(one, runs_out=one.runs_out * 1.001),))) is not None


def test_tank_that_would_run_over_is_refused() -> None:
    table = {"out": "10 L per day", "in": "15 L per day"}
    assert [reason.code for reason in reasons(exchange=table)] == ["exchange_floods"]
    unknown = reasons(exchange=table, system={"net_volume": "340 L"})
    assert "exchange_may_flood" in [reason.code for reason in unknown]
