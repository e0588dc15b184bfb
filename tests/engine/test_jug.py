"""Until when a jug lasts, what it does if it runs in, and what a line holds, reckoned by hand."""

from __future__ import annotations

import math
from dataclasses import replace
from datetime import UTC, datetime, timedelta

import pytest

from evenwater.engine import jug, jug_intake
from evenwater.engine.correction import Refused
from evenwater.engine.jug import JugAnswer, JugQuestion, Line
from evenwater.engine.jug_level import Draw, Filled, doses_lost, drawn_ml, forecast
from evenwater.engine.jug_siphon import Setting, Tank, dangers, largest_ml, run_in
from evenwater.engine.recipe import Bottle
from evenwater.engine.stock import Dissolved, Labelled
from tests.engine.asking import known

NOW = datetime(2026, 11, 25, 8, tzinfo=UTC)
HOUR, DAY = timedelta(hours=1), timedelta(days=1)
HOURLY = Draw("", 4.8, 24, NOW + HOUR)
SODA = Dissolved(known().chemicals["sodium carbonate anhydrous"], 106.0, 1.0)
TANK = Tank(340.0, values={"alkalinity": 8.0 / 2.80386})
EVERYTHING = tuple(known().parameters.values())


def at(hours: float) -> datetime:
    return NOW + timedelta(hours=hours)


def test_a_hundred_doses_last_until_the_hundredth() -> None:
    """480 mL are 100 doses of 4.8 mL, the first an hour after the reading: the last whole one after 100 h, none after 101 h."""
    found = forecast(Filled(NOW, 480.0), [HOURLY], NOW)
    assert (found.last_full, found.refill_before) == (at(100), at(101))
    assert found.days_left == pytest.approx(100.0 / 24.0)
    assert (found.level_ml, found.per_day_ml) == (480.0, pytest.approx(115.2))


@pytest.mark.parametrize(("ml", "doses"), [(479.9, 99), (480.0, 100), (484.7, 100), (484.9, 101), (4.7, 0), (0.0, 0)])
def test_only_whole_doses_count(ml: float, doses: int) -> None:
    found = forecast(Filled(NOW, ml), [HOURLY], NOW)
    assert found.last_full == at(doses)
    assert found.refill_before == at(doses + 1)


def test_what_the_intake_does_not_reach_is_not_dosed() -> None:
    assert forecast(Filled(NOW, 580.0, 100.0), [HOURLY], NOW).last_full == at(100)
    assert forecast(Filled(NOW, 90.0, 100.0), [HOURLY], NOW).last_full == NOW


def test_several_pumps_draw_from_one_jug() -> None:
    """Each day 115.2 mL and twice 42.4 mL, together 200 mL: after 4 days 200 mL of the litre are left, which are the fifth day's."""
    twice = Draw("", 42.4, 2, NOW + 12 * HOUR)
    found = forecast(Filled(NOW, 1000.0), [HOURLY, twice], NOW)
    assert found.last_full == at(120)
    assert found.refill_before == at(121)
    assert drawn_ml([HOURLY, twice], NOW, NOW + DAY) == pytest.approx(200.0)


def test_level_now_is_what_was_read_less_what_was_dosed_since() -> None:
    found = forecast(Filled(NOW, 480.0), [HOURLY], at(10.5))
    assert found.level_ml == pytest.approx(480.0 - 10 * 4.8)
    assert found.days_left == pytest.approx(89.5 / 24.0)


def test_a_jug_that_ran_dry_stays_at_its_rest() -> None:
    found = forecast(Filled(NOW, 482.0), [HOURLY], at(400))
    assert found.level_ml == pytest.approx(2.0)
    assert (found.empty, found.low, found.days_left) == (True, True, 0.0)


def test_nothing_dosed_lasts() -> None:
    found = forecast(Filled(NOW, 10.0), [replace(HOURLY, dose_ml=1e-9)], NOW)
    assert (found.last_full, found.days_left, found.low) == (None, None, False)


def test_first_dose_may_lie_days_ahead() -> None:
    found = forecast(Filled(NOW, 9.6), [replace(HOURLY, first=at(72))], NOW)
    assert (found.last_full, found.refill_before) == (at(73), at(74))


@pytest.mark.parametrize("per_day", [1, 7, 24, 1000, 1440])
def test_doses_of_a_day_are_as_many_as_it_has(per_day: int) -> None:
    draw = Draw("", 1.0, per_day, NOW)
    assert [draw.doses(NOW + n * DAY, NOW + (n + 1) * DAY) for n in range(5)] == [per_day] * 5
    last = draw.last(NOW + 3 * DAY)
    assert last == NOW + 3 * DAY
    assert draw.last(NOW - HOUR) is None


def test_line_of_4_mm_and_2_m_holds_25_mL() -> None:
    """With pi / 4 * 0.4^2 cm2 * 200 cm = 25.13 cm3; of doses of 2 mL thirteen do not arrive whole."""
    assert Line(4.0, 2000.0).volume_ml == pytest.approx(math.pi / 4.0 * 0.4**2 * 200.0)
    assert doses_lost(Line(4.0, 2000.0).volume_ml, 2.0) == 13
    assert doses_lost(24.0, 2.0) == 12
    assert doses_lost(24.1, 2.0) == 13


def test_whole_jug_of_soda_ash_by_hand() -> None:
    """106 g of Na2CO3 (105.9875 g/mol) in a litre carry 2.00024 meq per mL; one mL raises 340 L by 0.0164952 dKH."""
    (found,) = run_in(SODA, EVERYTHING, TANK, 5000.0)
    assert found.parameter.name == "alkalinity"
    assert 2.80386 * found.after == pytest.approx(8.0 + 5000.0 * 0.0164952, rel=1e-4)
    assert found.safe_ml == pytest.approx((14.0 - 8.0) / 0.0164952, rel=1e-4)
    assert found.advised_ml == pytest.approx(2.0 * 1.4 / 0.0164952, rel=1e-4)
    assert (found.harms, found.assumed) == (True, False)
    assert largest_ml((found,)) == (found.safe_ml, found.advised_ml)
    assert run_in(SODA, EVERYTHING, TANK, found.safe_ml * 0.999)[0].harms is False
    assert run_in(SODA, EVERYTHING, TANK, found.safe_ml * 1.001)[0].harms is True


def test_value_not_tested_counts_at_the_top_of_its_usual_range() -> None:
    (found,) = run_in(SODA, EVERYTHING, replace(TANK, values={}), 100.0)
    assert found.assumed
    assert 2.80386 * found.before == pytest.approx(11.0, rel=1e-4)
    assert found.safe_ml < run_in(SODA, EVERYTHING, TANK, 100.0)[0].safe_ml


def test_every_value_that_a_stock_raises_is_looked_at() -> None:
    """Limewater raises calcium and alkalinity; the largest jug is the one that both stand."""
    lime = Dissolved(known().chemicals["calcium hydroxide"], 1.7, 1.0)
    found = run_in(lime, EVERYTHING, TANK, 20_000.0)
    assert {each.parameter.name for each in found} == {"alkalinity", "calcium"}
    safe, advised = largest_ml(found) or (0.0, 0.0)
    assert safe == min(each.safe_ml for each in found)
    assert advised <= safe


def test_value_that_is_too_high_already_leaves_no_jug() -> None:
    (found,) = run_in(SODA, EVERYTHING, replace(TANK, values={"alkalinity": 14.5 / 2.80386}), 1.0)
    assert (found.safe_ml, found.harms) == (0.0, True)
    assert largest_ml((found,)) == (0.0, 0.0)


def test_bottle_by_its_label() -> None:
    """5 mL raise 100 L by 1 dKH: 1 mL raises 340 L by 0.0588 dKH, so that 102 mL take 8 to 14 dKH."""
    alkalinity = known().parameters["alkalinity"]
    bottle = Bottle(Labelled(5.0, 100.0, alkalinity.canonical(1.0), "alkalinity"), alkalinity)
    (found,) = run_in(bottle, EVERYTHING, TANK, 500.0)
    assert found.safe_ml == pytest.approx(6.0 * 5.0 * 3.4, rel=1e-3)


@pytest.mark.parametrize(
    ("setting", "expected"),
    [
        (Setting(True, True), []),
        (Setting(False, True), ["outlet_under_water"]),
        (Setting(True, False), ["jug_above_outlet"]),
        (Setting(False, False), ["jug_above_outlet", "outlet_under_water"]),
        (Setting(None, True), ["siphon_not_checked"]),
        (Setting(), ["siphon_not_checked"]),
        (Setting(None, False), ["jug_above_outlet", "siphon_not_checked"]),
    ],
)
def test_how_a_jug_stands(setting: Setting, expected: list[str]) -> None:
    assert [reason.code for reason in dangers(setting)] == expected


RAW = {
    "now": NOW,
    "jug": {"holds": "1 L"},
    "system": {"net_volume": "340 L", "alkalinity": "8 dKH"},
    "additive": {"chemical": "sodium carbonate anhydrous", "dissolved": "106 g", "made_up_to": "1 L"},
    "pump": [{"single_dose": "4.8 mL", "doses_per_day": 24, "first_dose_at": NOW + HOUR}],
    "level": [{"at": NOW, "level": "480 mL"}],
}


def question(**changes: object) -> JugQuestion:
    read = jug_intake.jug({**RAW, **changes}, known(), NOW)
    assert isinstance(read, JugQuestion), [(r.code, r.path) for r in read.reasons]
    return read


def answer(**changes: object) -> JugAnswer:
    found = jug.solve(question(**changes))
    assert isinstance(found, JugAnswer), found
    return found


def test_refill_after_the_last_level_counts() -> None:
    added = answer(refill=[{"at": NOW, "added": "96 mL"}], now=at(0.5))
    assert added.forecast.level_ml == pytest.approx(576.0)
    assert added.forecast.last_full == at(120)


def test_level_in_centimetres_of_a_known_cross_section() -> None:
    """32 mm of 150 mL in each centimetre are 480 mL."""
    shaped = {"holds": "1 L", "cross_section": "150 mL/cm", "level_accuracy": "2 mm"}
    for text in ("3.2 cm", "32 mm"):
        found = question(jug=shaped, level=[{"at": NOW, "level": text}])
        assert found.levels[0].ml == pytest.approx(480.0)
        assert found.accuracy_ml == pytest.approx(30.0)
    square = question(jug={**shaped, "cross_section": "150 cm2"}, level=[{"at": NOW, "level": "3.2 cm"}])
    assert square.levels[0].ml == pytest.approx(480.0)


def test_first_dose_comes_one_interval_after_the_first_level_when_nobody_says() -> None:
    found = question(pump=[{"single_dose": "4.8 mL", "doses_per_day": 6}])
    assert found.draws[0].first == at(4)


@pytest.mark.parametrize(
    ("changes", "code"),
    [
        ({"level": []}, "no_level"),
        ({"level": [{"at": NOW, "level": "1.2 L"}]}, "level_above_full"),
        ({"level": [{"at": at(1), "level": "480 mL"}]}, "level_in_the_future"),
        ({"refill": [{"at": at(1), "added": "100 mL"}]}, "refill_in_the_future"),
        ({"refill": [{"at": NOW, "added": "2 L"}]}, "refill_above_full"),
        ({"jug": {"holds": "1 L", "unreachable": "1 L"}}, "nothing_reachable"),
        ({"away_until": NOW}, "back_already"),
    ],
)
def test_refused(changes: dict[str, object], code: str) -> None:
    found = jug.solve(question(**changes))
    assert isinstance(found, Refused)
    assert [reason.code for reason in found.reasons] == [code]


def test_retest_is_turned_into_millilitres_of_the_stock() -> None:
    """Half a dKH below what was expected are 30.3 mL of this stock that did not arrive, of 115.2 mL dosed in the day."""
    levels = [{"at": NOW - DAY, "level": "600 mL"}, {"at": NOW, "level": "480 mL"}]
    pump = [{"single_dose": "4.8 mL", "first_dose_at": NOW - DAY + HOUR}]
    asked = question(
        level=levels, pump=pump, retest={"parameter": "alkalinity", "expected": "8.4 dKH", "measured": "7.9 dKH"}
    )
    retest = jug._retest(asked)
    assert retest is not None
    assert retest.arrived_ml == pytest.approx(115.2 - 0.5 / 0.0164952, rel=1e-4)
    assert retest.sd_ml == pytest.approx(math.sqrt(2.0) * 0.15 / 0.0164952, rel=1e-4)
