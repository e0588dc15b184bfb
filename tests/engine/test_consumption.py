"""The use learned from a record: what must come out of records small enough to be seen through by eye."""

from __future__ import annotations

import time
from dataclasses import replace
from datetime import timedelta

import numpy as np
import pytest

from evenwater.engine.consumption import ConsumptionAnswer, ConsumptionQuestion, solve
from evenwater.engine.consumption_estimate import Estimate, estimate
from evenwater.engine.consumption_line import line
from evenwater.engine.consumption_log import Dose, Exchange, Reading, Record
from evenwater.engine.consumption_steps import Log, steps
from evenwater.engine.correction import Refused
from evenwater.engine.quantities import Water
from tests.engine.asking import known
from tests.engine.consumption_tanks import BEGIN, at

SD = 0.15
# Alkalinity in dKH, tested daily, falling by 0.3 a day; scatters as a kit does.
FALLING = (10.0 - 0.3 * np.arange(12) + np.random.default_rng(0).normal(0.0, 0.1, 12)).tolist()


def record(values: list[float], days: list[float] | None = None, **log: tuple[Dose | Exchange, ...]) -> Record:
    when = list(range(len(values))) if days is None else days
    readings = tuple(Reading(at(day), value, SD) for day, value in zip(when, values, strict=True))
    return Record(readings, **log)  # type: ignore[arg-type]


def learned(values: list[float], days: list[float] | None = None, **log: tuple[Dose | Exchange, ...]) -> Estimate:
    of = record(values, days, **log)
    return estimate(of, max(reading.at for reading in of.readings))


def lifted(places: dict[int, float]) -> list[float]:
    return [value + places.get(place, 0.0) for place, value in enumerate(FALLING)]


def odd_places(found: Estimate) -> list[int]:
    return [odd.index for odd in found.odd]


def question(of: Record, parameter: str = "alkalinity", later: timedelta = timedelta()) -> ConsumptionQuestion:
    p = known().parameters[parameter]
    return ConsumptionQuestion(max(r.at for r in of.readings) + later, p, p.display_unit, Water(), of)


def answered(of: Record, parameter: str = "alkalinity", later: timedelta = timedelta()) -> ConsumptionAnswer:
    result = solve(question(of, parameter, later))
    assert isinstance(result, ConsumptionAnswer), result
    return result


def codes(of: Record, parameter: str = "alkalinity", later: timedelta = timedelta()) -> list[str]:
    return [reason.code for reason in answered(of, parameter, later).remarks]


def test_steady_use_is_the_least_squares_slope() -> None:
    found = learned(FALLING)
    slope = -np.polyfit(np.arange(12), FALLING, 1)[0]
    assert found.use.value == pytest.approx(slope, abs=0.002)
    assert found.use.low < 0.3 < found.use.high
    assert (odd_places(found), found.jumps, found.changed, found.readings) == ([], (), None, 12)
    # Six days before the middle of the last period and six after it: both periods say the same.
    assert [period.use.value for period in found.by_period] == pytest.approx([slope, slope], abs=0.005)
    assert found.trend_per_week == pytest.approx(0.0, abs=0.005)


@pytest.mark.parametrize("place", range(12))
@pytest.mark.parametrize("off", [1.5, -1.0])
def test_one_bad_test_is_named_with_by_how_much_and_does_not_count(place: int, off: float) -> None:
    found = learned(lifted({place: off}))
    assert odd_places(found) == [place]
    assert found.odd[0].off == pytest.approx(off, abs=0.25)
    assert found.readings == 11
    assert found.use.low < 0.3 < found.use.high
    assert found.changed is None


def test_two_odd_readings_that_agree_are_a_real_change() -> None:
    """The last two, and still so when all that follow agree; a third opinion after one odd reading settles it either way."""
    for places in (range(10, 12), range(5, 12)):
        found = learned(lifted(dict.fromkeys(places, 1.5)))
        assert odd_places(found) == []
        (jump,) = found.jumps
        assert jump.index == places[0]
        assert jump.by == pytest.approx(1.5, abs=0.25)
        assert found.use.low < 0.3 < found.use.high, "what happened once is not used every day"


def test_testing_again_at_once_tells_a_bad_test_from_a_real_change() -> None:
    days = [0.0, 1.0, 2.0, 3.0, 4.0, 5.0, 6.0, 6.007]
    confirmed = learned([*FALLING[:6], FALLING[6] + 1.5, FALLING[6] + 1.55], days)
    assert (odd_places(confirmed), [jump.index for jump in confirmed.jumps]) == ([], [6])
    refuted = learned([*FALLING[:6], FALLING[6] + 1.5, FALLING[6] + 0.05], days)
    assert (odd_places(refuted), refuted.jumps) == ([6], ())


def test_use_that_stops_is_named_with_its_day() -> None:
    still = np.random.default_rng(1).normal(0.0, 0.1, 5) + 5.5
    falling = 10.0 - 0.5 * np.arange(10) + np.random.default_rng(2).normal(0.0, 0.1, 10)
    found = learned([*falling, *still])
    assert found.changed is not None
    assert abs(found.changed.at - at(9.5)) <= timedelta(days=1)
    assert found.changed.before == pytest.approx(0.5, abs=0.05)
    assert found.use.low < 0.0 < found.use.high < 0.2
    assert found.by_period[0].use.value == pytest.approx(0.5, abs=0.05)
    edges = {period.start for period in found.by_period} | {period.end for period in found.by_period}
    assert found.changed.at in edges, "periods break where use changed"


def test_periods_cover_the_record_without_a_gap() -> None:
    found = learned(FALLING, [3.0 * day for day in range(12)])
    assert found.by_period[0].start == at(0.0)
    assert found.by_period[-1].end == at(33.0)
    for before, after in zip(found.by_period[:-1], found.by_period[1:], strict=True):
        assert before.end == after.start
        assert timedelta(days=4) < before.end - before.start < timedelta(days=11)


def test_order_of_the_record_does_not_matter() -> None:
    doses = (Dose(at(8.3), 0.5), Dose(at(2.3), 0.4))
    days = [float(day) for day in range(12)]
    straight = learned(lifted({4: 2.0}), days, doses=doses)
    turned = learned(lifted({4: 2.0})[::-1], days[::-1], doses=doses[::-1])
    assert turned.use == straight.use
    assert (odd_places(straight), odd_places(turned)) == ([4], [7])


def test_readings_at_one_instant_are_both_used() -> None:
    found = learned([8.0, 8.1, 7.7, 7.6], [0.0, 0.0, 1.0, 1.0])
    single = learned([8.05, 7.65], [0.0, 1.0])
    assert found.use.value == pytest.approx(0.4, abs=0.01)
    assert found.use.high - found.use.low < 0.85 * (single.use.high - single.use.low)


def test_all_values_alike_mean_that_doses_are_used_up() -> None:
    doses = tuple(Dose(at(day + 0.5), 0.4) for day in range(11))
    found = learned([8.0] * 12, doses=doses)
    assert found.use.value == pytest.approx(0.4, abs=0.01)
    assert learned([8.0] * 12).use.value == pytest.approx(0.0, abs=0.01)


def test_water_made_all_new_begins_the_record_anew() -> None:
    """Before it the value ran down from 5, after it from 10: use is what both say."""
    new = (Exchange(at(2.0), 1.0, 10.0),)
    found = learned([5.0, 4.7, 9.7, 9.4, 9.1], [0.0, 1.0, 3.0, 4.0, 5.0], exchanges=new)
    assert found.use.value == pytest.approx(0.3, abs=0.01)
    started = learned([9.7, 9.4], [1.0, 2.0], exchanges=(Exchange(at(0.0), 1.0, 10.0),))
    alone = learned([9.7, 9.4], [1.0, 2.0])
    assert started.use.high - started.use.low < 0.7 * (alone.use.high - alone.use.low)


def test_value_now_is_carried_on_from_the_last_reading() -> None:
    of = record(FALLING, doses=(Dose(at(20.0), 2.0),))
    found = estimate(of, at(21.0))
    assert found.since_days == pytest.approx(10.0)
    assert found.value.value == pytest.approx(FALLING[-1] - 3.0 + 2.0, abs=0.4)
    assert found.value.high - found.value.low > 2.0 * (learned(FALLING).value.high - learned(FALLING).value.low)


def test_a_line_through_steps_of_every_kind_is_that_of_generalised_least_squares() -> None:
    """Against the whole covariance written out and inverted: use that wanders, leaps, gaps in the readings, exchanges."""
    r = np.random.default_rng(7)
    for _ in range(20):
        count = 12
        times = np.sort(r.uniform(0.0, 20.0, count))
        log = Log(
            np.sort(r.uniform(-1.0, 21.0, 6)), r.uniform(0.0, 1.0, 6),
            np.sort(r.uniform(-1.0, 21.0, 3)), r.uniform(0.0, 0.5, 3), r.uniform(6.0, 9.0, 3),
        )  # fmt: skip
        ways = steps(times, log)
        wander, leaps = r.uniform(0.0, 0.1, count), np.where(r.random(count) < 0.2, 4.0, 0.0)
        variances = np.where(r.random(count) < 0.2, np.inf, r.uniform(0.01, 0.1, count))
        values = r.normal(8.0, 1.0, count)
        found = line(values, variances, ways, wander, leaps)
        move, beginning, given = np.zeros((2 * count, 2)), np.zeros(2 * count), np.zeros((2 * count, 2 * count))
        move[:2] = np.eye(2)
        for i in range(1, count):
            here, there = slice(2 * i, 2 * i + 2), slice(2 * i - 2, 2 * i)
            way = np.array([[ways.kept[i], -ways.taken[i]], [0.0, 1.0]])
            spread = np.array([[ways.spread_value[i], ways.spread_both[i]], [ways.spread_both[i], ways.spread_use[i]]])
            move[here], beginning[here] = way @ move[there], way @ beginning[there] + [ways.gained[i], 0.0]
            given[here, : 2 * i] = way @ given[there, : 2 * i]
            given[: 2 * i, here] = given[here, : 2 * i].T
            given[here, here] = way @ given[there, there] @ way.T + wander[i] * spread + np.diag([leaps[i], 0.0])
        seen = 2 * np.flatnonzero(np.isfinite(variances))
        inverse = np.linalg.inv(given[np.ix_(seen, seen)] + np.diag(variances[np.isfinite(variances)]))
        slopes = move[seen]
        cov = np.linalg.inv(slopes.T @ inverse @ slopes)
        begun = cov @ slopes.T @ inverse @ (values[seen // 2] - beginning[seen])
        gain = given[:, seen] @ inverse
        left = values[seen // 2] - beginning[seen] - slopes @ begun
        state = beginning + move @ begun + gain @ left
        lever = move - gain @ slopes
        variance = np.diag(given - gain @ given[seen] + lever @ cov @ lever.T)
        assert found.value == pytest.approx(state[::2], rel=1e-8)
        assert found.use == pytest.approx(state[1::2], rel=1e-7, abs=1e-9)
        assert found.value_sd**2 == pytest.approx(variance[::2], rel=1e-6, abs=1e-10)
        assert found.use_sd**2 == pytest.approx(variance[1::2], rel=1e-6, abs=1e-10)


def test_no_line_through_readings_of_one_instant() -> None:
    nothing = np.array([])
    times, still = np.zeros(3), np.zeros(3)
    ways = steps(times, Log(nothing, nothing, nothing, nothing, nothing))
    with pytest.raises(ValueError, match="do not tell"):
        line(np.array([8.0, 8.1, 7.9]), np.full(3, SD**2), ways, still, still)


@pytest.mark.parametrize(
    ("of", "expected"),
    [
        (record([]), ["too_few_readings"]),
        (record([8.0]), ["too_few_readings"]),
        (record([8.0, 8.1, 7.9], [0.0, 0.01, 0.03]), ["readings_too_close"]),
        (record([8.0, float("nan")]), ["figure_unusable"]),
        (record([8.0, float("inf"), 7.0]), ["figure_unusable"]),
        (Record((Reading(at(0), 8.0, 0.0), Reading(at(1), 8.0, SD))), ["figure_unusable"]),
        (record([8.0, 7.0], doses=(Dose(at(0.5), float("nan")),)), ["figure_unusable"]),
        (record([8.0, 7.0], exchanges=(Exchange(at(0.5), 1.1, 8.0),)), ["figure_unusable"]),
        (record([8.0, 7.0], exchanges=(Exchange(at(0.5), 0.1, float("nan")),)), ["figure_unusable"]),
        (record([8.0, 7.0], [-3700.0, 1.0]), ["reading_too_old"]),
        (record([8.0, 7.0], doses=(Dose(at(3.0), 1.0),), exchanges=(Exchange(at(2.0), 0.1, 8.0),)), ["entry_in_the_future"] * 2),
        (record([8.0] * 20_001, [day / 10.0 for day in range(20_001)]), ["too_many_readings"]),
    ],
    ids=lambda x: x[0] if isinstance(x, list) else "",
)  # fmt: skip
def test_refused(of: Record, expected: list[str]) -> None:
    now = max((reading.at for reading in of.readings), default=BEGIN)
    asked = replace(question(record([8.0, 7.0])), record=of, now=now)
    result = solve(asked)
    assert isinstance(result, Refused)
    assert [reason.code for reason in result.reasons] == expected


def test_H7_use_known_from_an_old_reading_is_said_to_be_old() -> None:
    of = record(FALLING)
    assert "use_is_old" not in codes(of, later=timedelta(days=3))
    assert "use_is_old" in codes(of, later=timedelta(days=3, minutes=1))
    assert "use_is_old" not in codes(of, "magnesium", later=timedelta(days=13))
    assert answered(of, later=timedelta(days=5)).estimate.since_days == pytest.approx(5.0)


@pytest.mark.parametrize("ahead", [timedelta(minutes=5, seconds=1), timedelta(hours=12), timedelta(days=365)])
def test_H8_a_reading_from_the_future_is_refused(ahead: timedelta) -> None:
    result = solve(replace(question(record(FALLING)), now=at(11.0) - ahead))
    assert isinstance(result, Refused)
    assert {reason.code for reason in result.reasons} == {"reading_in_the_future"}
    assert result.reasons[-1].path == "reading.12.at"


def test_H8_a_clock_that_runs_a_little_ahead_is_forgiven() -> None:
    result = solve(replace(question(record(FALLING)), now=at(11.0) - timedelta(minutes=5)))
    assert isinstance(result, ConsumptionAnswer)
    assert result.estimate.since_days == 0.0


@pytest.mark.parametrize(
    ("values", "flat"),
    [
        ([8.0, 7.9, 7.8, 7.8, 7.8], True),
        ([8.0, 7.9, 7.8, 7.8], False),
        ([7.8, 7.8, 7.8, 7.7, 7.6], False),
        ([8.0, 8.0, 8.0], True),
        ([8.0, 8.0], False),
    ],
)
def test_H9_three_last_readings_alike_are_asked_about(values: list[float], flat: bool) -> None:
    assert ("flat_readings" in codes(record(values))) is flat


def test_what_a_tank_makes_is_said_so() -> None:
    rising = [2.0 + 0.3 * day for day in range(8)]
    assert codes(record(rising), "nitrate") == ["made_in_the_tank"]
    assert codes(record(rising), "phosphate") == ["made_in_the_tank"]
    assert codes(record(rising), "calcium") == ["rises_by_itself"]
    assert answered(record(rising), "nitrate").estimate.use.high < 0.0


def test_use_that_may_be_nothing_is_said_to_be_unclear() -> None:
    assert "use_unclear" in codes(record([8.0, 7.95, 8.05, 8.0]))
    assert "use_unclear" not in codes(record(FALLING))


@pytest.mark.parametrize("count", [299, 301, 350, 551, 900])
def test_a_record_that_is_looked_at_in_pieces_has_no_seam(count: int) -> None:
    """Every bad test is named and hardly a good one, wherever pieces begin and end."""
    r = np.random.default_rng(count)
    values = 8.0 - 0.3 * np.arange(count) + r.normal(0.0, SD, count)
    bad = np.flatnonzero(r.random(count) < 0.03)
    values[bad] += r.choice([-1.0, 1.0], len(bad)) * r.uniform(1.2, 3.0, len(bad))
    found = learned(values.tolist())
    assert set(odd_places(found)) >= set(bad.tolist())
    assert len(found.odd) <= len(bad) + 2
    assert (found.jumps, found.changed) == ((), None)
    assert found.use.value == pytest.approx(0.3, abs=0.002)


def use_then(day: float) -> float:
    return 1.0 if day < 1500.0 else 0.5 if day < 3000.0 else 1.2


def ten_years() -> tuple[Record, set[int]]:
    """Return a record with 20,000 readings, daily doses and weekly exchanges, and which readings are bad tests."""
    r = np.random.default_rng(3)
    events = [(float(day), "test") for day in np.sort(r.uniform(0.0, 3640.0, 20_000))]
    events += [(day + 0.5, "dose") for day in range(3640)] + [(7.0 * week + 0.1, "exchange") for week in range(520)]
    readings: list[Reading] = []
    doses: list[Dose] = []
    exchanges: list[Exchange] = []
    bad: set[int] = set()
    value, before = 8.0, 0.0
    for day, what in sorted(events):
        value -= use_then(before) * (day - before)
        before = day
        if what == "dose":
            doses.append(Dose(at(day), use_then(day)))
            value += doses[-1].rise
        elif what == "exchange":
            exchanges.append(Exchange(at(day), 0.1, 8.2))
            value = 0.9 * value + 0.1 * 8.2
        else:
            shown = value + r.normal(0.0, SD)
            if r.random() < 0.03:
                bad.add(len(readings))
                shown += r.choice([-1.0, 1.0]) * r.uniform(1.0, 3.0)
            readings.append(Reading(at(day), shown, SD))
    return Record(tuple(readings), tuple(doses), tuple(exchanges)), bad


def test_twenty_thousand_readings_of_ten_years_take_less_than_a_second() -> None:
    """And what changed years ago is found to the day, and the bad tests of all ten years, without taking good ones for bad."""
    of, bad = ten_years()
    taken = []
    for _ in range(3):
        began = time.process_time()
        found = estimate(of, at(3640.0))
        taken.append(time.process_time() - began)
        if taken[-1] < 1.0:
            break
    assert taken[-1] < 1.0
    assert found.use.low < 1.2 < found.use.high
    assert found.changed is not None
    assert abs(found.changed.at - at(3000.0)) < timedelta(days=2)
    for period in found.by_period:
        start, end = ((edge - BEGIN) / timedelta(days=1) for edge in (period.start, period.end))
        if not any(start - 2.0 < change < end + 2.0 for change in (1500.0, 3000.0)):
            assert period.use.value == pytest.approx(use_then(start), abs=0.02)
    assert found.jumps == ()
    assert len(bad - set(odd_places(found))) < 0.02 * len(bad)
    assert len(set(odd_places(found)) - bad) < 0.05 * len(bad)
