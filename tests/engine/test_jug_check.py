"""The jug check: real against expected delivery by hand, and the right cause of simulated faults."""

from __future__ import annotations

from dataclasses import replace
from datetime import UTC, datetime, timedelta
from functools import cache

import pytest

from evenwater.engine.jug_check import (
    AMBER_MARK,
    CANNOT_TELL,
    COARSE_MARK,
    LIKELY,
    RED_MARK,
    STEPS,
    WITHIN_MARK,
    JugCheck,
    LevelRead,
    Levels,
    Refill,
    Retest,
    check,
)
from evenwater.engine.jug_level import Draw
from evenwater.engine.reasons import Reason
from tests.bench.jugs import alarmed
from tests.engine.simulated_pumps import CLEAR, HEALTHY, UNCLEAR, Case, case

BEGIN = datetime(2026, 11, 1, 8, tzinfo=UTC)
DAY, HOUR = timedelta(days=1), timedelta(hours=1)
HOURLY = Draw("", 5.0, 24, BEGIN + HOUR)  # 120 mL a day


def levels(
    *drops: float, refills: tuple[Refill, ...] = (), draws: tuple[Draw, ...] = (HOURLY,), **more: object
) -> Levels:
    """Return a record of a jug read each day, from 4 L on."""
    readings, left = [LevelRead(BEGIN, 4000.0)], 4000.0
    for day, drop in enumerate(drops, start=1):
        left -= drop
        readings.append(LevelRead(BEGIN + day * DAY, left))
    record = Levels(tuple(readings), draws, 5000.0, 0.0, reading_sd=3.0, calibration_sd=0.025, refills=refills)
    return replace(record, **more)  # type: ignore[arg-type]


def said(record: Levels) -> JugCheck:
    found = check(record)
    assert isinstance(found, JugCheck), found
    return found


@cache
def simulated(truth: str, seed: int) -> tuple[Case, JugCheck]:
    """Return a case and what is said of it: several tests ask about the same ones."""
    made = case(truth, seed)
    return made, said(made.record)


def test_real_and_expected_delivery_by_hand() -> None:
    """Five days at 120 mL a day; 540 mL left the jug: 10 % less, give or take 2 * sqrt(2) * 3 mL = 8.49 mL."""
    found = said(levels(108, 108, 108, 108, 108))
    assert (found.real_ml, found.expected_ml) == (pytest.approx(540.0), pytest.approx(600.0))
    assert found.real_half_ml == pytest.approx(8.485, abs=1e-3)
    assert found.expected_half_ml == pytest.approx(30.0)
    assert found.ratio == pytest.approx(0.9)
    assert found.ratio_half == pytest.approx(8.485 / 600.0, abs=1e-5)
    assert (found.since, found.until) == (BEGIN, BEGIN + 5 * DAY)


def test_refill_counts_and_widens_the_interval() -> None:
    """A litre added on the second day: the level rises by 880 mL, and 120 mL were taken all the same."""
    found = said(levels(120, -880, 120, 120, refills=(Refill(BEGIN + 1.5 * DAY, 1000.0),)))
    assert found.real_ml == pytest.approx(480.0)
    assert found.real_half_ml == pytest.approx(2.0 * 3.0 * 3.0**0.5)
    assert (found.cause, found.mark) == ("well", WITHIN_MARK)
    assert found.remarks == ()


def test_refill_at_the_time_of_a_level_comes_after_it() -> None:
    found = said(levels(120, -880, 120, 120, refills=(Refill(BEGIN + DAY, 1000.0),)))
    assert (found.cause, found.real_ml) == ("well", pytest.approx(480.0))


@pytest.mark.parametrize("truth", CLEAR)
def test_right_cause_in_95_of_100_clear_cases(truth: str) -> None:
    found = [simulated(truth, seed)[1] for seed in range(100)]
    assert sum(each.cause == truth for each in found) >= 0.95 * len(found)


@pytest.mark.parametrize("truth", UNCLEAR)
def test_nothing_is_named_where_it_cannot_be_told(truth: str) -> None:
    found = [simulated(truth, seed)[1] for seed in range(100)]
    assert sum(each.cause == CANNOT_TELL for each in found) >= 0.95 * len(found)
    assert all(each.candidates for each in found)


@pytest.mark.parametrize("truth", HEALTHY)
def test_false_alarms_are_below_2_in_100(truth: str) -> None:
    assert sum(alarmed(simulated(truth, seed)[1]) for seed in range(200)) < 4


def test_every_siphon_is_stopped() -> None:
    assert all(simulated(truth, seed)[1].stop for truth in ("siphon", "high_once") for seed in range(100))


def test_real_delivery_is_that_of_the_simulation() -> None:
    """Within the interval in 95 of 100 records of pumps that are well, whose levels were read with the error stated."""
    made = [simulated("well", seed) for seed in range(200)]
    held = [abs(found.real_ml - of.delivered_ml) <= found.real_half_ml for of, found in made]
    assert 0.92 * len(held) <= sum(held)


def test_hours_tell_a_worn_head_from_a_wrong_factor() -> None:
    """The same levels, steadily 15 % low: an old head is worn, a new one was not calibrated, and else nobody can tell."""
    low = levels(*[102.0] * 8)
    assert said(replace(low, hours=700.0)).cause == "worn_head"
    assert said(replace(low, hours=10.0)).cause == "wrong_factor"
    unknown = said(low)
    assert unknown.cause == CANNOT_TELL
    assert {name for name, _ in unknown.candidates} == {"worn_head", "wrong_factor"}


def test_factor_is_proposed_with_its_interval_and_nothing_is_changed() -> None:
    record = levels(*[102.0] * 8)
    before = repr(record)
    found = said(record).factor
    assert found is not None
    assert found.value == pytest.approx(0.85)
    assert (found.low, found.high) == (
        pytest.approx(0.85 - 8.485 / 960.0, abs=1e-4),
        pytest.approx(0.85 + 8.485 / 960.0, abs=1e-4),
    )
    assert repr(record) == before


@pytest.mark.parametrize(
    "record",
    [
        levels(*[119.0] * 8),
        levels(120, 120, 0, 0, 0, 0),
        levels(120, 120, 120, 700, 120, 120),
        levels(*[102.0] * 8, draws=(replace(HOURLY, dose_ml=2.0), replace(HOURLY, dose_ml=3.0))),
    ],
)
def test_no_factor_where_a_factor_does_not_help(record: Levels) -> None:
    assert said(record).factor is None


def test_pump_that_stops_delivering_is_blocked() -> None:
    found = said(levels(120, 121, 40, 0, 1))
    assert (found.cause, found.mark, found.stop) == ("blocked", RED_MARK, False)
    assert found.steps[:2] == ("watch_outlet", "look_for_air")


def test_blocked_pump_of_two_is_found_by_its_share() -> None:
    """One takes 80 mL a day and the other 40 mL; the second stops after the third day."""
    two = (replace(HOURLY, dose_ml=10.0 / 3.0), replace(HOURLY, dose_ml=5.0 / 3.0))
    found = said(levels(120, 120, 120, 80, 80, 80, 80, draws=two))
    assert found.candidates[0][0] in ("blocked", "crust")
    assert "several_pumps" in [reason.code for reason in found.remarks]
    assert found.mark == RED_MARK


def test_water_that_disagrees_with_good_levels_speaks_of_the_batch() -> None:
    good = levels(*[120.0] * 6)
    assert said(good).cause == "well"
    half = said(replace(good, retest=Retest(360.0, 40.0)))
    assert half.cause == "wrong_strength"
    assert half.steps == ("check_label", "test_again")
    agrees = said(replace(good, retest=Retest(700.0, 40.0)))
    assert agrees.cause == "well"


def test_water_that_agrees_with_low_levels_does_not_speak_of_the_batch() -> None:
    found = said(levels(*[102.0] * 8, retest=Retest(816.0, 40.0)))
    assert dict(found.candidates).keys() == {"worn_head", "wrong_factor"}


def test_level_that_rises_unnoted_is_asked_about() -> None:
    found = said(levels(120, 120, -900, 120, 120))
    assert found.cause == "level_misread"
    assert found.steps == ("read_again", "refill_noted")
    assert [reason.code for reason in found.remarks] == ["level_rose"]


def test_two_levels_far_too_low_are_a_siphon_that_is_stopped() -> None:
    found = said(levels(900.0))
    assert found.stop
    assert found.steps[0] == "lift_outlet"
    assert found.mark == RED_MARK


def test_first_step_is_the_safest_and_every_cause_has_one() -> None:
    assert next(iter(STEPS)) == "lift_outlet"
    assert {cause for causes in STEPS.values() for cause in causes} == set(CLEAR) - {"well"}


def test_levels_too_coarse_say_so_and_what_would_tell() -> None:
    """Read to 30 mL: 5 % of what is dosed must be 2 * sqrt(2) * 15 mL, so 849 mL."""
    found = said(levels(110.0, reading_sd=15.0))
    assert (found.mark, found.cause) == (COARSE_MARK, CANNOT_TELL)
    assert found.clear_from_ml == pytest.approx(848.5, abs=0.1)


def test_jug_found_dry_expects_no_more_than_it_held() -> None:
    """230 mL at 120 mL a day are empty after two days; on the third morning nothing is amiss with the pump."""
    readings = (LevelRead(BEGIN, 230.0), LevelRead(BEGIN + DAY, 110.0), LevelRead(BEGIN + 3 * DAY, 0.0))
    found = said(replace(levels(0.0), readings=readings))
    assert found.ratio == pytest.approx(1.0)
    assert [reason.code for reason in found.remarks] == ["jug_ran_dry"]


def test_levels_that_nothing_explains_name_nothing() -> None:
    found = said(levels(300, -150, 10, 420, -60, 250))
    assert found.cause == CANNOT_TELL
    assert "nothing_fits" in [reason.code for reason in found.remarks]


@pytest.mark.parametrize(
    ("record", "code"),
    [
        (levels(), "one_level_only"),
        (levels(*[20.0] * 60), "too_many_levels"),
        (replace(levels(0.0), readings=(LevelRead(BEGIN, 1.0), LevelRead(BEGIN, 2.0))), "levels_at_one_time"),
        (levels(0.0, draws=(replace(HOURLY, first=BEGIN + 9 * DAY),)), "no_dose_between"),
        (levels(100.0, draws=(replace(HOURLY, first=BEGIN + 9 * DAY),)), "fell_without_doses"),
    ],
)
def test_nothing_is_said_of_too_little(record: Levels, code: str) -> None:
    found = check(record)
    assert isinstance(found, Reason)
    assert found.code == code


def test_order_of_the_levels_does_not_matter() -> None:
    record = levels(120, 100, 90, 80)
    assert check(record) == check(replace(record, readings=record.readings[::-1]))


def test_marks_at_5_and_10_percent() -> None:
    """Read finely over a long time, so that the marks alone decide; the calibration is known to 1 %."""
    fine = {"reading_sd": 0.5, "calibration_sd": 0.005}
    marks = [
        said(levels(*[120.0 * share] * 10, **fine)).mark
        for share in (0.88, 0.91, 0.94, 0.96, 1.0, 1.04, 1.06, 1.09, 1.12)
    ]
    assert marks == [
        RED_MARK, AMBER_MARK, AMBER_MARK, WITHIN_MARK, WITHIN_MARK, WITHIN_MARK, AMBER_MARK, AMBER_MARK, RED_MARK,
    ]  # fmt: skip


def test_levels_read_worse_than_stated_make_no_fault() -> None:
    """Read with two and a half times the error that the keeper states: at most something is left open."""
    for seed in range(100):
        record = case("well", seed).record
        found = said(replace(record, reading_sd=record.reading_sd / 2.5))
        assert found.cause in ("well", CANNOT_TELL, "blocked", "level_misread")


def test_weights_add_up_and_a_likely_one_is_named() -> None:
    for truth in CLEAR:
        found = said(case(truth, 3).record)
        assert sum(weight for _, weight in found.candidates) <= 1.0 + 1e-9
        assert list(found.candidates) == sorted(found.candidates, key=lambda item: -item[1])
        assert found.cause == CANNOT_TELL or dict(found.candidates)[found.cause] >= LIKELY
